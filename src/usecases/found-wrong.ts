// What was found in words at the items of a job: a fault is noted on the bike, whatever is ticked, and where it is not certain that it is one the member says.

import type { ItemKey } from "../core/ids.ts";
import type { Fault, Gap, Intent, RecordWork } from "../core/reading/intent.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { isLook } from "../core/schedule/mending.ts";
import { type FoundAt, type FoundSaid, foundSaid } from "../message/found-said.ts";
import type { Repos } from "../store/store.ts";
import { defectRow } from "../trade/defects.ts";
import { faultAt, isLookedAtFirst, isToBeTight, outlivesRenewal } from "../trade/found-faults.ts";
import { chainShareAt } from "./chain-share.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, itemOf } from "./garage.ts";
import { knownOf } from "./own-garage.ts";
import type { ValuesSaid } from "./values-said.ts";

/** What the words come to. */
export type FoundWrong = Pick<RecordWork, "outcome" | "fault"> & { readonly gaps: readonly Gap[] };

/** What puts a thing right by its name, whatever was found. */
const MENDING: readonly Outcome[] = ["adjusted", "replaced", "topped up"];

/**
 * @param said the outcome that was chosen; undefined where none was
 * @param usual what comes of it where the words say nothing
 */
export async function foundWrong(
  q: Repos,
  ctx: Ctx,
  g: Garaged,
  items: readonly ItemKey[],
  words: ValuesSaid["words"],
  said: Outcome | undefined,
  usual: Outcome,
): Promise<FoundWrong> {
  // What was left is how it is now; without it, what was found.
  const text = words.left ?? (words.leftTyped ? null : words.found);
  const outcome = said ?? usual;
  const nothing: FoundWrong = { outcome, gaps: [] };
  if (text === null) return said === "found wrong" ? { outcome, fault: faultOf(ctx, g, items, words.found ?? "", []), gaps: [] } : nothing;
  if (said !== undefined && MENDING.includes(said) && words.left === null) return nothing;
  const [only, ...others] = items;
  const share = only === undefined || others.length > 0 || (said !== undefined && said !== "done") ? null : await chainShareAt(q, g, only, text);
  if (share !== null) {
    const kind = share.is === "beyond limit" ? "worn chain" : share.is === "at limit" ? "chain at its end" : null;
    const fault = faultOf(ctx, g, items, text, [{ kind }]);
    // Beyond some limits and short of others it may be at its end.
    if (share.is === "cannot tell" || share.limit.unsettled !== undefined) return { outcome, fault: { ...fault, kind: null, grade: null }, gaps: [ASK] };
    return kind === null ? { outcome: "inspected, within limits", gaps: [] } : { outcome: "found wrong", fault, gaps: [] };
  }
  const looks = items.some((item) => isLook(itemOf(g, item)?.action ?? "replace"));
  const heard = items.map((item): FoundSaid => foundSaid(text, { ...foundAt(ctx, g, item), left: words.left !== null }, knownOf(ctx, [g])));
  const faults = heard.filter((each) => each.is === "fault");
  const fault = faultOf(ctx, g, items, text, faults);
  if (said === "found wrong") return { outcome, fault, gaps: [] };
  if (faults.length === 0) {
    if (heard.length > 0 && heard.every(({ is }) => is === "fine"))
      return { outcome: said ?? (isFoundWell(g, items, words) ? "inspected, within limits" : usual), gaps: [] };
    if (heard.every(({ is }) => is === "fine" || is === "put right")) return nothing;
    // Of what is measured first, a note says no more than that it was looked at.
    const noted = said === undefined && words.left === null && items.some(isLookedAtFirst) ? "inspected" : outcome;
    return said === undefined || said === "done" ? { outcome: noted, fault, gaps: [ASK] } : nothing;
  }
  // What was renewed is no longer as it was found; what else was wrong stays so.
  if (!looks && items.every((item) => itemOf(g, item)?.action === "replace"))
    return outlivesRenewal(fault.kind) ? { outcome, fault, gaps: [ASK] } : isMended(fault, items) ? nothing : { ...nothing, fault };
  if (said === "could not do") return { outcome, fault, gaps: [] };
  // A look that was ticked as well done beside a fault: one of the two is a slip.
  return said === undefined ? { outcome: "found wrong", fault, gaps: [] } : { outcome, fault, gaps: [ASK] };
}

/**
 * Looks told in a plain message beside a sign that something was wrong, and no defect heard in it: "checked the brake hoses, found them cracked".
 * Nobody says so of what is well, and it is no note to be passed over: it is asked. So are words beside a look that nobody understood: "checked the valves, one needs a shim".
 */
export function askedOfFaults(ctx: Ctx, all: readonly Garaged[], intents: readonly Intent[], text: string): readonly Intent[] {
  const [work, ...more] = intents.filter((intent) => intent.do === "record work");
  if (work === undefined || more.length > 0 || work.fault !== undefined || intents.some((intent) => intent.do === "note defect")) return intents;
  const g = work.bike === null ? null : (all.find(({ bike }) => bike.id === work.bike) ?? null);
  const isLookAlone =
    work.outcome === "inspected, within limits" ||
    (g !== null && work.items.length > 0 && work.items.every((item) => isLook(itemOf(g, item)?.action ?? "replace")));
  if (g === null || !isLookAlone || MENDING.includes(work.outcome)) return intents;
  const said = text.replace(work.words, " ").replace(/\s+/gu, " ").trim();
  const at: FoundAt = { names: [], action: "inspect", tight: work.items.every(isToBeTight) };
  const heard = foundSaid(said, at, knownOf(ctx, [g]));
  const isUnclear = work.beside !== undefined && foundSaid(work.beside, at, knownOf(ctx, [g])).is === "unclear";
  if (heard.is !== "fault" && !isUnclear) return intents;
  return intents.map((intent) =>
    intent === work
      ? { ...work, fault: { ...faultOf(ctx, g, work.items, said, heard.is === "fault" ? [heard] : []), words: text.trim() }, gaps: [...work.gaps, ASK] }
      : intent,
  );
}

/** Found well, and left so: looked at. What is changed whatever its state is changed. */
function isFoundWell(g: Garaged, items: readonly ItemKey[], words: ValuesSaid["words"]): boolean {
  const [only, ...more] = items;
  const action = only === undefined || more.length > 0 ? null : (itemOf(g, only)?.action ?? null);
  return action !== null && (isLook(action) || (action === "adjust" && words.left === null));
}

/** What is typed at an item is said of this. */
const foundAt = (ctx: Ctx, g: Garaged, item: ItemKey): FoundAt => {
  const action = itemOf(g, item)?.action ?? "inspect";
  return { names: namesOf(ctx, g, item), action: isLookedAtFirst(item) ? "measure" : action, tight: isToBeTight(item) };
};

const isMended = ({ kind }: Fault, items: readonly ItemKey[]): boolean =>
  kind === null || items.some((item) => defectRow(kind)?.mends.some((each) => each === item));

const ASK: Gap = { need: "found", options: ["found wrong", "only a note"] };

/** The fault as the bike's defect: of the kind that the words name; with a sign alone, of that of the item; graded as the trade does. Where no sign was heard, how bad it is is asked. */
function faultOf(ctx: Ctx, g: Garaged, items: readonly ItemKey[], text: string, heard: readonly { readonly kind: string | null }[]): Fault {
  const ofItem = heard.length === 0 ? [] : items.map(faultAt);
  const kind = [...heard.map((each) => each.kind), ...ofItem].find((each) => each !== null) ?? null;
  const names = items.map((item) => ctx.itemName(item, itemOf(g, item)?.called ?? null)).join(", ");
  return { kind, words: text === "" ? names : `${names}: ${text}`, grade: defectRow(kind)?.usual ?? null };
}

/** An item's own name and what else it is called, in every language that is read. */
function namesOf(ctx: Ctx, g: Garaged, item: ItemKey): readonly string[] {
  const { vocabulary, also = [] } = knownOf(ctx, [g]);
  const called = ctx.itemName(item, itemOf(g, item)?.called ?? null);
  return [called, ...[vocabulary, ...also.map((each) => each.vocabulary)].flatMap(({ items }) => items[item] ?? [])];
}
