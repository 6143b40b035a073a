// A new dial: where the old one ended, where the new one begins. The bike's own distance goes on.

import type { LocalDate } from "../core/calendar/dates.ts";
import { type Dial, type DistanceUnit, dialOf, TENTHS_OF_MM } from "../core/quantity/distance.ts";
import { judgeReading } from "../core/usage/judge-reading.ts";
import { buildTrack, type EpochCause } from "../core/usage/track.ts";
import { readDial } from "../message/read-dial.ts";
import type { ReadingRecord } from "../store/readings.ts";
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
  // The slip's own readings go with it; nothing is written before all is known to fit.
  const slips = again === null ? [] : await slipsOf(q, again.id);
  const old = buildTrack(
    epochs,
    g.odometers.filter((reading) => !slips.some((slip) => slip.id === reading.id)),
  );
  const last = old.points.at(-1);
  const lastOfOld = said === null ? (last === undefined ? null : ((last.ridden - (old.epochs.at(-1)?.offset ?? 0)) as Dial)) : dialOf(said.value, said.unit);
  const judged = lastOfOld === null ? { is: "fine" as const } : judgeReading(old, lastOfOld, input.on, []);
  if (judged.is !== "fine")
    return refused({
      why: judged.is === "implausible jump" ? "implausible jump" : "runs backwards",
      typed: typed === "" ? String(figureOfLast(g) ?? "") : typed,
      last: last === undefined ? null : { figure: (last.ridden - (old.epochs.at(-1)?.offset ?? 0)) / TENTHS_OF_MM[unit], unit },
    });
  if (again !== null) await q.bikes.withdrawEpochs({ id: again.id }, ctx.now);
  for (const slip of slips) await withdrawReading(q, ctx, slip, correctedBy(input.source));
  const epoch = { id: ctx.newId(), from: input.on, lastOfOld, firstOfNew: input.firstOfNew, unit: input.unit, cause: input.cause };
  await q.bikes.addEpoch(g.bike.id, epoch, input.source, ctx.who.member, ctx.now);
  return done({ replaced: again !== null });
}

/** The odometer readings logged with the dial that gives way. */
async function slipsOf(q: Repos, epoch: string): Promise<readonly ReadingRecord[]> {
  const source = await q.bikes.sourceOfEpoch(epoch);
  return source === null ? [] : (await q.readings.ofMessage(source)).filter((reading) => reading.kind === "odometer");
}
