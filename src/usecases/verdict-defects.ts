// What must not be ridden on by a measured value is noted as a defect, once, and closed by the work that mends it.

import type { Defect } from "../core/defect.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { defectRow } from "../trade/defects.ts";
import { endOf, judgedRow, WORN_DEFECTS } from "../trade/judged.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
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
    const open = all.find(({ bike }) => bike.id === work.bike)?.defects.filter((defect) => defect.from === "verdict" && mends(defect, work)) ?? [];
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
    const kind = judgedRow(judged.kind).defects[endOf(place)] ?? judgedRow(judged.kind).defects.any ?? null;
    const standing = all.find((g) => g.bike.id === bike)?.defects.some((defect) => defect.kind === kind && !closed.some(({ id }) => id === defect.id)) === true;
    const mended = logged.work.some((work) => work.bike === bike && work.on.from === on && mends({ kind }, work));
    if (kind === null || standing || mended || noted.some((each) => each.bike === bike && each.kind === kind)) continue;
    const typed = logged.readings.find(({ id }) => id === judged.id)?.typed ?? "";
    const words = [place, judged.kind, typed].filter((part) => part !== null && part !== "").join(" ");
    noted.push(defectRecord(ctx, { bike, kind, words, grade: "do not ride", on, dial: null, from: "verdict" }, source, first + noted.length));
  }
  if (noted.length > 0) await q.defects.note(noted);
  return { noted, closed };
}

/** What is worn is mended by a new part alone: an item that replaces it, or one that says it was replaced. */
function mends({ kind }: Pick<Defect, "kind">, { items }: Pick<WorkRecord, "items">): boolean {
  const named: readonly string[] = defectRow(kind)?.mends ?? [];
  const worn = kind !== null && WORN_DEFECTS.has(kind);
  return items.some(
    ({ item, outcome }) =>
      named.includes(item) && outcome !== "could not do" && (!worn || outcome === "replaced" || (outcome === "done" && item.endsWith(".replace"))),
  );
}
