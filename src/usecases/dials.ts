// A new dial: where the old one ended, where the new one begins. The bike's own distance goes on.

import type { LocalDate } from "../core/calendar/dates.ts";
import { type Dial, type DistanceUnit, dialOf } from "../core/quantity/distance.ts";
import { judgeReading } from "../core/usage/judge-reading.ts";
import { buildTrack, type EpochCause } from "../core/usage/track.ts";
import { readDial } from "../message/read-dial.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import { correctedBy, withdrawReading } from "./corrections.ts";
import { figureOfLast, type Garaged } from "./garage.ts";
import { knownOf } from "./messages.ts";
import { done, type Result, refused } from "./refusals.ts";

export type NewDial = {
  readonly firstOfNew: Dial;
  readonly unit: DistanceUnit;
  readonly cause: Exclude<EpochCause, "as bought">;
  readonly on: LocalDate;
  /** What the old dial last showed, as typed; left out, its last reading stands for it. */
  readonly last: string | undefined;
  /** The message or event that said so: undone with it. */
  readonly source: string;
};

/** Begins the new dial. A dial begun on the same day was a slip of this one: it gives way. Refused when the old dial's last figure does not fit its readings. */
export async function beginDial(q: Repos, ctx: Ctx, all: readonly Garaged[], g: Garaged, input: NewDial): Promise<Result<{ readonly replaced: boolean }>> {
  const present = g.track.epochs.at(-1);
  const again = present !== undefined && present.cause !== "as bought" && present.from === input.on ? present : null;
  const epochs = g.track.epochs.filter((epoch) => epoch !== again);
  const unit = epochs.at(-1)?.unit ?? g.unit;
  const typed = input.last?.trim() ?? "";
  const said = typed === "" ? null : readDial(typed, knownOf(ctx, all), unit);
  if (typed !== "" && said === null) return refused({ why: "not a distance", typed, unit });
  // The slip's own readings go with it.
  const slips = again === null ? [] : await slipsOf(q, ctx, again.id, input.source);
  const old = buildTrack(
    epochs,
    g.odometers.filter((reading) => !slips.includes(reading.id)),
  );
  const last = old.points.at(-1);
  const lastOfOld = said === null ? (last === undefined ? null : ((last.ridden - (old.epochs.at(-1)?.offset ?? 0)) as Dial)) : dialOf(said.value, said.unit);
  const judged = lastOfOld === null ? { is: "fine" as const } : judgeReading(old, lastOfOld, input.on, []);
  if (judged.is !== "fine")
    return refused({
      why: judged.is === "implausible jump" ? "implausible jump" : "runs backwards",
      typed,
      last: String(figureOfLast(g) ?? ""),
      on: last?.on ?? input.on,
    });
  const epoch = { id: ctx.newId(), from: input.on, lastOfOld, firstOfNew: input.firstOfNew, unit: input.unit, cause: input.cause };
  await q.bikes.addEpoch(g.bike.id, epoch, input.source, ctx.who.member, ctx.now);
  return done({ replaced: again !== null });
}

async function slipsOf(q: Repos, ctx: Ctx, epoch: string, source: string): Promise<readonly string[]> {
  const [gone] = await q.bikes.withdrawEpochs({ id: epoch }, ctx.now);
  const readings = gone?.source == null ? [] : (await q.readings.ofMessage(gone.source)).filter((reading) => reading.kind === "odometer");
  for (const reading of readings) await withdrawReading(q, ctx, reading, correctedBy(source));
  return readings.map((reading) => reading.id);
}
