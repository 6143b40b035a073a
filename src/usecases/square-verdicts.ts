// What a measured value noted stands while figures say so: after a reading or a limit is taken back or put right, it is squared with what is left.

import type { Defect } from "../core/defect.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import { JUDGED, type JudgedKind, judgedRow } from "../trade/judged.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { judgeTaken } from "./judge.ts";
import type { JudgedOn } from "./judged.ts";
import { revised } from "./revise-defects.ts";
import { defectOf, noteVerdicts } from "./verdict-defects.ts";

/** What was taken back. */
export type Gone = { readonly defects: readonly Defect[]; readonly readings: readonly ReadingRecord[] };

/** `lapsed`: no figure says so any more. `noted`: figures that are left say so still, where the defect went with the reading that first said it. */
export type Squared = { readonly lapsed: readonly Defect[]; readonly noted: readonly Defect[] };

/**
 * Inside the transaction that took something back, which touches the bikes.
 * @param after the bikes as they are now
 * @param gone what was withdrawn: verdict defects, and readings
 * @param source what the defects noted anew are kept under
 * @throws Conflict
 */
export async function squareVerdicts(q: Repos, ctx: Ctx, after: readonly Garaged[], gone: Gone, source: string, first = 0): Promise<Squared> {
  const lapsed: Defect[] = [];
  const noted: Defect[] = [];
  for (const g of after) {
    for (const defect of g.defects.filter(({ from }) => from === "verdict"))
      if (!(await isBorneOut(q, g, defect))) lapsed.push(await revised(q, ctx, defect, { state: "withdrawn", why: "its figures say so no longer" }));
    const still = leftOf(g, gone);
    const readings = await readingsOf(q, still);
    const again = await noteVerdicts(q, ctx, [g], { judged: still, readings, work: [] }, source, first + noted.length);
    noted.push(...again.noted);
  }
  return { lapsed, noted };
}

/**
 * What stands read, looked at again after its limit changed, inside the transaction that changed it, which touches the bikes: what must not be ridden on by it is noted, what is set by adjusting and was read right since is closed, and what no figure speaks for any more lapses.
 * @param which the judgements whose limit changed
 * @param first where to go on counting the records of the source
 * @throws Conflict
 */
export async function judgedAnew(
  q: Repos,
  ctx: Ctx,
  after: readonly Garaged[],
  which: (judged: Garaged["judged"][number]) => boolean,
  source: string,
  first = 0,
): Promise<Squared & { readonly closed: readonly Defect[] }> {
  const noted: Defect[] = [];
  const closed: Defect[] = [];
  for (const g of after) {
    const grave = unanswered(g);
    const judged = g.judged
      .map((each) => ({ ...each, bike: g.bike.id, first: false }))
      .filter((each) => which(each) && (!each.doNotRide || grave.some(({ id }) => id === each.id)));
    const readings = await readingsOf(q, judged);
    const anew = await noteVerdicts(q, ctx, [g], { judged, readings, work: [] }, source, first + noted.length);
    noted.push(...anew.noted);
    closed.push(...anew.closed);
  }
  const open = after.map((g) => ({ ...g, defects: g.defects.filter(({ id }) => !closed.some((each) => each.id === id)) }));
  const { lapsed } = await squareVerdicts(q, ctx, open, { defects: [], readings: [] }, source, first + noted.length);
  return { noted, lapsed, closed };
}

async function readingsOf(q: Repos, judged: readonly JudgedOn[]): Promise<ReadingRecord[]> {
  const readings: ReadingRecord[] = [];
  for (const { id } of judged) {
    const reading = await q.readings.byId(id);
    if (reading !== null) readings.push(reading);
  }
  return readings;
}

/** Does a reading that stands, of its day or later, still say so? */
async function isBorneOut(q: Repos, g: Garaged, { kind, on }: Defect): Promise<boolean> {
  const kinds = (Object.keys(JUDGED) as JudgedKind[]).filter((each) => Object.values(judgedRow(each).defects).some((defect) => defect === kind));
  // Not of a reading, such as a fluid put in: nothing read speaks against it.
  if (kinds.length === 0) return true;
  const taken = (await q.readings.everyTaken([g.bike.id], kinds)).get(g.bike.id) ?? [];
  return taken.some((each) => {
    const judged = each.on >= on ? judgeTaken(each, g.rig) : null;
    return judged?.doNotRide === true && defectOf(judged) === kind;
  });
}

/** What stands read of the same things, must not be ridden on, and no work has answered. */
const leftOf = (g: Garaged, gone: Gone): readonly JudgedOn[] => unanswered(g).filter((judged) => wentWith(judged, g, gone));

/** What stands read, must not be ridden on, and no work has answered. */
const unanswered = (g: Garaged): readonly JudgedOn[] =>
  g.judged
    .filter(({ doNotRide }) => doNotRide)
    .filter(({ id, item }) => item === null || g.facts.verdicts.some(({ reading }) => reading === id))
    .map((judged) => ({ ...judged, bike: g.bike.id, first: false }));

/** Did what noted it go, or the reading that had shown it right again? */
const wentWith = (judged: Garaged["judged"][number], g: Garaged, { defects, readings }: Gone): boolean =>
  defects.some(({ bike, kind, from }) => bike === g.bike.id && from === "verdict" && kind === defectOf(judged)) ||
  (judgedRow(judged.kind).setRight && readings.some(({ bike, kind, place }) => bike === g.bike.id && kind === judged.kind && place === judged.place));

/** Judged otherwise than before its bike was fitted otherwise. */
export const isJudgedOtherwise =
  (before: Garaged) =>
  (judged: Garaged["judged"][number]): boolean =>
    !before.judged.some(({ id, judgement, doNotRide }) => id === judged.id && judgement.is === judged.judgement.is && doNotRide === judged.doNotRide);
