// Which items of a plan a line of a pasted chart means: by the name as people say it, and by what is done.

import { nicknameKey } from "../core/bike.ts";
import type { PlanItem, WorkAction } from "../core/plan/plan.ts";
import type { Meaning } from "../core/reading/chart-words.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { chosen, itemPhrases } from "../message/read-items.ts";
import { foldWord, scan } from "../message/scan.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { nameIn } from "./record-work.ts";

/** `exact`: the work named is the item's own; else it is work of the same kind, as looking at a thing and measuring it are. */
export type LineMatch =
  | { readonly is: "items"; readonly items: readonly PlanItem[]; readonly exact: boolean }
  | { readonly is: "several"; readonly items: readonly PlanItem[] }
  | { readonly is: "none" };

/** Manuals say "inspect" of what a plan measures, tests or adjusts: work after which the thing is the same thing. */
const LOOKING: readonly WorkAction[] = ["inspect", "measure", "test", "adjust", "check tightness", "top up"];
const RENEWING: readonly WorkAction[] = ["replace", "bleed"];
const isKin = (a: WorkAction, b: WorkAction): boolean => [LOOKING, RENEWING].some((kin) => kin.includes(a) && kin.includes(b));

/** @param meaning what is done; null where the line does not say */
export function itemsOfLine(ctx: Ctx, known: Known, g: Garaged, name: string, meaning: Meaning | null): LineMatch {
  const byName = g.plan.items.filter((item) => nicknameKey(nameIn(ctx, g, item.key)) === nicknameKey(name));
  const byPhrase = namedBy(known, g, name);
  if (meaning === null || meaning === "as the item" || meaning === "nothing") {
    if (byName.length === 1) return { is: "items", items: byName, exact: true };
    const bike = known.bikes.find((each) => each.id === g.bike.id);
    const keys =
      bike === undefined
        ? []
        : chosen(
            [...byName, ...byPhrase].map((item) => item.key),
            bike,
            [],
          );
    return outOf(
      g.plan.items.filter((item) => keys.includes(item.key)),
      true,
    );
  }
  for (const found of [byName, byPhrase]) {
    const same = found.filter((item) => item.action === meaning);
    if (same.length > 0) return outOf(same, true);
  }
  for (const found of [byName, byPhrase]) {
    const kin = found.filter((item) => isKin(item.action, meaning));
    if (kin.length > 0) return outOf(kin, false);
  }
  return { is: "none" };
}

/** Several items of one kind of work under one name are meant together: front and rear pads. */
function outOf(items: readonly PlanItem[], exact: boolean): LineMatch {
  if (items.length === 0) return { is: "none" };
  return new Set(items.map((item) => item.action)).size === 1 ? { is: "items", items, exact } : { is: "several", items };
}

/** Items that a name can mean where all of its words are accounted for. */
function namedBy(known: Known, g: Garaged, name: string): readonly PlanItem[] {
  const { vocabulary } = known;
  const bike = known.bikes.find((each) => each.id === g.bike.id);
  if (bike === undefined) return [];
  const tokens = scan(name, vocabulary.units, known.numbers);
  const phrases = itemPhrases(tokens, known, bike);
  const beside = [
    ...vocabulary.around,
    ...vocabulary.joins,
    ...vocabulary.articles,
    ...Object.keys(vocabulary.workDone),
    ...Object.keys(vocabulary.chart.actions),
  ];
  const whole = tokens.every(
    (token, at) =>
      token.is === "break" || phrases.some((phrase) => at >= phrase.from && at <= phrase.to) || (token.is === "word" && beside.includes(foldWord(token.text))),
  );
  // Two things in one line ("hoses, cables") are two lines of a plan, and not settled by one name.
  const keys = whole && phrases.length === 1 ? (phrases[0]?.items ?? []) : [];
  return g.plan.items.filter((item) => keys.includes(item.key));
}

/** As many as a pick list takes, with one more for leaving the line out. */
const MOST = 24;

/** The items that a line which names none may mean: those that share a word with it first, then those of its kind of work. */
export function nearestItems(ctx: Ctx, g: Garaged, name: string, meaning: Meaning | null): readonly PlanItem[] {
  const words = wordsOf(name);
  const shared = (item: PlanItem): number => {
    const names = [nameIn(ctx, g, item.key), ...(ctx.vocabulary.items[item.key] ?? [])];
    return Math.max(0, ...names.map((each) => wordsOf(each).filter((word) => words.includes(word)).length));
  };
  const isOfKind = ({ action }: PlanItem): number =>
    action === meaning ? 2 : meaning !== null && meaning !== "as the item" && meaning !== "nothing" && isKin(action, meaning) ? 1 : 0;
  return g.plan.items
    .map((item, n) => ({ item, n, shared: shared(item), kind: isOfKind(item) }))
    .sort((a, b) => b.shared - a.shared || b.kind - a.kind || a.n - b.n)
    .slice(0, MOST)
    .map(({ item }) => item);
}

/** Words that can tell one thing from another. */
const wordsOf = (text: string): readonly string[] => [...text.matchAll(/\p{L}{3,}/gu)].map(([word]) => foldWord(word).replace(/s$/u, ""));
