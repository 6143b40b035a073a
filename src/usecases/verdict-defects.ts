// What must not be ridden on by a measured value is noted as a defect, once, and closed by the work that mends it.

import type { Defect } from "../core/defect.ts";
import { mends as canMend } from "../core/schedule/mending.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { defectRow } from "../trade/defects.ts";
import { endOf, judgedRow } from "../trade/judged.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, itemOf, pick } from "./garage.ts";
import type { JudgedOn } from "./judge.ts";
import { defectRecord } from "./records.ts";
import { closedByWork } from "./revise-defects.ts";

/**
 * Notes and closes inside the transaction that logged them, which touches the bikes.
 * @param first where to go on counting the records of the source
 */
export async function noteVerdicts(
  q: Repos,
  ctx: Ctx,
  all: readonly Garaged[],
  logged: { readonly judged: readonly JudgedOn[]; readonly readings: readonly ReadingRecord[]; readonly work: readonly WorkRecord[] },
  source: string,
  first: number,
): Promise<{ readonly noted: readonly Defect[]; readonly closed: readonly Defect[] }> {
  const closed: Defect[] = [];
  for (const work of logged.work) {
    const changed = changedIn(all, work);
    const open = pick(all, work.bike)?.defects.filter((defect) => defect.from === "verdict" && mends(defect, changed)) ?? [];
    closed.push(
      ...(await closedByWork(
        q,
        ctx,
        open.filter(({ id }) => !closed.some((each) => each.id === id)),
        work.id,
      )),
    );
  }
  const noted: Defect[] = [];
  for (const judged of logged.judged.filter(({ doNotRide }) => doNotRide)) {
    const { bike, place, on } = judged;
    const kind = defectOf(judged);
    const standing = all.find((g) => g.bike.id === bike)?.defects.some((defect) => defect.kind === kind && !closed.some(({ id }) => id === defect.id)) === true;
    // What was left after work is how it is now.
    const left = logged.readings.find(({ id }) => id === judged.id)?.detail?.state === "left";
    const mended = !left && logged.work.some((work) => work.bike === bike && work.on.from === on && mends({ kind }, changedIn(all, work)));
    if (kind === null || standing || mended || noted.some((each) => each.bike === bike && each.kind === kind)) continue;
    const typed = logged.readings.find(({ id }) => id === judged.id)?.typed ?? "";
    const words = [place, judged.kind, typed].filter((part) => part !== null && part !== "").join(" ");
    noted.push(defectRecord(ctx, { bike, kind, words, grade: "do not ride", on, dial: null, from: "verdict" }, source, first + noted.length));
  }
  if (noted.length > 0) await q.defects.note(noted);
  return { noted, closed };
}

/** The kind of defect that a reading beyond its limit notes; null for what the next reading shows mended. */
export const defectOf = ({ kind, place }: Pick<JudgedOn, "kind" | "place">): string | null =>
  judgedRow(kind).defects[endOf(place)] ?? judgedRow(kind).defects.any ?? null;

/** The items of a job that may be right again by it. */
const changedIn = (all: readonly Garaged[], { bike, items }: WorkRecord): readonly string[] => {
  const g = pick(all, bike);
  return items.filter(({ item, outcome }) => canMend(outcome, (g === null ? null : itemOf(g, item))?.action ?? null)).map(({ item }) => item);
};

const mends = ({ kind }: Pick<Defect, "kind">, items: readonly string[]): boolean => defectRow(kind)?.mends.some((item) => items.includes(item)) === true;
