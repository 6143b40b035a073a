// A new dial: where the old one ended, where the new one begins. The bike's own distance goes on.

import type { LocalDate } from "../core/calendar/dates.ts";
import { type Dial, type DistanceUnit, dialOf, TENTHS_OF_MM } from "../core/quantity/distance.ts";
import { judgeReading } from "../core/usage/judge-reading.ts";
import { endOfDial } from "../core/usage/roll-over.ts";
import { buildTrack, type EpochCause, type Track } from "../core/usage/track.ts";
import { readDial } from "../message/read-dial.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import { correctedBy, withdrawReading } from "./corrections.ts";
import { figureOfLast, type Garaged } from "./garage.ts";
import { knownOf } from "./own-garage.ts";
import { done, type Result, refused } from "./refusals.ts";

export type NewDial = {
  /** What the new dial shows now. */
  readonly firstOfNew: Dial;
  readonly unit: DistanceUnit;
  readonly cause: Exclude<EpochCause, "as bought">;
  readonly on: LocalDate;
  /** What the old dial last showed, as typed; left out, see OldDial. */
  readonly last: string | undefined;
  /** The message or event that said so: undone with it. */
  readonly source: string;
};

/**
 * Where the old dial ended, and how that is known: as typed; at the end of its digits, where it rolled over; at the same distance, where only the unit changed and the
 * new figure is no step back; else at its last reading, which may be less than it showed.
 */
export type OldDial = { readonly figure: number; readonly unit: DistanceUnit; readonly how: "typed" | "rolled over" | "same distance" | "last reading" };

/** Begins the new dial. A dial begun on the same day was a slip of this one: it gives way. Refused when the old dial's last figure does not fit its readings. */
export async function beginDial(
  q: Repos,
  ctx: Ctx,
  all: readonly Garaged[],
  g: Garaged,
  input: NewDial,
): Promise<Result<{ readonly replaced: boolean; readonly old: OldDial | null }>> {
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
  const read = last === undefined ? null : ((last.ridden - (old.epochs.at(-1)?.offset ?? 0)) as Dial);
  const shown = said === null ? read : dialOf(said.value, said.unit);
  const { lastOfOld, how } = endOf(input, shown, said === null ? "last reading" : "typed", unit, old);
  // Where it rolled over, all that was ridden since then counts too.
  const reached = lastOfOld === null ? null : how === "rolled over" ? ((lastOfOld + input.firstOfNew) as Dial) : lastOfOld;
  const judged = reached === null ? { is: "fine" as const } : judgeReading(old, reached, input.on, []);
  if (judged.is !== "fine")
    return refused({
      why: judged.is === "implausible jump" ? "implausible jump" : "runs backwards",
      typed: typed === "" ? String(figureOfLast(g) ?? "") : typed,
      last: last === undefined ? null : { figure: (last.ridden - (old.epochs.at(-1)?.offset ?? 0)) / TENTHS_OF_MM[unit], unit },
    });
  if (again !== null) await q.bikes.withdrawEpochs({ id: again.id }, ctx.now);
  for (const slip of slips) await withdrawReading(q, ctx, slip, correctedBy(input.source));
  const rolled = how === "rolled over";
  const epoch = {
    ...{ id: ctx.newId(), from: input.on, lastOfOld, cause: input.cause },
    // A dial that rolled over starts at zero in the unit that it always had.
    ...(rolled ? { firstOfNew: dialOf(0, unit), unit } : { firstOfNew: input.firstOfNew, unit: input.unit }),
  };
  await q.bikes.addEpoch(g.bike.id, epoch, input.source, ctx.who.member, ctx.now);
  return done({ replaced: again !== null, old: lastOfOld === null ? null : { figure: lastOfOld / TENTHS_OF_MM[unit], unit, how } });
}

/** The last figure of the old dial. @param shown what it last showed, as typed or read */
function endOf(
  { cause, firstOfNew, on, last }: NewDial,
  shown: Dial | null,
  known: "typed" | "last reading",
  unit: DistanceUnit,
  old: Track,
): { readonly lastOfOld: Dial | null; readonly how: OldDial["how"] } {
  if (cause === "rolled over" && shown !== null) return { lastOfOld: endOfDial(shown, unit), how: "rolled over" };
  // Another unit on the same dial shows the same distance: it goes on from there, and from nowhere else.
  if (cause === "unit changed" && (last?.trim() ?? "") === "" && judgeReading(old, firstOfNew, on, []).is === "fine")
    return { lastOfOld: firstOfNew, how: "same distance" };
  return { lastOfOld: shown, how: known };
}

/** The odometer readings logged with the dial that gives way. */
async function slipsOf(q: Repos, epoch: string): Promise<readonly ReadingRecord[]> {
  const source = await q.bikes.sourceOfEpoch(epoch);
  return source === null ? [] : (await q.readings.ofMessage(source)).filter((reading) => reading.kind === "odometer");
}
