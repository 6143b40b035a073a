// What was wrong with a part that came off is wrong no more: a new one closes it without a question.

import type { Defect } from "../core/defect.ts";
import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { foldWord } from "../message/scan.ts";
import type { WorkRecord } from "../store/work.ts";
import { defectRow } from "../trade/defects.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, itemOf } from "./garage.ts";

/** Did this job fit a new one of what the defect was found on? */
export function isOfOld(
  ctx: Ctx,
  g: Garaged,
  { kind, words }: Pick<Defect, "kind" | "words">,
  { items, detail }: Pick<WorkRecord, "items" | "detail">,
): boolean {
  const fits = defectRow(kind)?.ofOld ?? [];
  const renewed = items.filter(({ item, outcome }) => isNew(outcome, itemOf(g, item)?.action ?? null)).map(({ item }) => item as string);
  const those = fits.filter((item) => renewed.includes(item));
  if (those.length === 0) return false;
  const said = ` ${words
    .split(/[^\p{L}]+/u)
    .map(foldWord)
    .join(" ")} `;
  const says = (of: (vocabulary: Ctx["vocabulary"]) => readonly string[]): boolean =>
    [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].some((vocabulary) => of(vocabulary).some((word) => said.includes(` ${foldWord(word)} `)));
  // A chain may be new and the sprocket that was found worn have stayed on.
  if (says(({ refitted }) => refitted.some)) return false;
  if (fits.length === those.length) return true;
  const [front, rear] = [says(({ places }) => places.front), says(({ places }) => places.rear)];
  return front !== rear && those.some((item) => item.startsWith(front ? "front-" : "rear-")) && detail.end !== (front ? "rear" : "front");
}

/** Is a new one on by that? */
const isNew = (outcome: Outcome, action: WorkAction | null): boolean => outcome === "replaced" || (outcome === "done" && action === "replace");

/** Can what was found be mended in these items by a new one alone? */
export const isOnlyRenewed = (kind: string | null, items: readonly ItemKey[]): boolean => {
  const row = defectRow(kind);
  return row?.recovers !== true && items.length > 0 && items.every((item) => row?.ofOld?.some((each) => each === (item as string)) === true);
};

/** May it be a new one, or the old one made right, by the words alone? */
export const isEither = (kind: string | null, items: readonly ItemKey[]): boolean => {
  const row = defectRow(kind);
  return row?.recovers === true && items.some((item) => row.ofOld?.some((each) => each === (item as string)) === true);
};
