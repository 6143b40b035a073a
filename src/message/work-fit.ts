// Which lines of the plan a verb can mean by a thing on one bike.

import type { ItemKey } from "../core/ids.ts";
import type { Known, KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import { chosen, type ItemPhrase, looksOnly, nearby, sameAction } from "./read-items.ts";
import { actionsOf, bothSaid, endSaid, isWorkshop, saysNew } from "./work-words.ts";

/** `asks`: the verb fits none of the items, so the member is asked what was meant. `end`: one end alone was named of what is one line for both. */
export type Phrase = ItemPhrase & { readonly part: Part; readonly verb: string; readonly asks: boolean; readonly end?: "front" | "rear" };

export function push(found: Phrase[], phrase: ItemPhrase, part: Part, verbs: readonly string[], layout: Layout, fitting: Fitting): void {
  const isOne = phrase.from === phrase.to && among(layout.known.vocabulary.singular, wordAt(layout.tokens, phrase.from));
  const { items, together, near } = fitting(phrase.items, verbs, isOne || isOfBothEnds(phrase.items) ? endSaid(layout, part) : null);
  const verb = verbs[0] ?? "";
  if (isOfBrakes(phrase.items) && !verbs.some((each) => actionsOf(layout.known, each).includes("bleed"))) {
    found.push({ ...phrase, together: false, part, verb, asks: true });
    return;
  }
  // "Both bikes got oil": changed, or topped up?
  if (items.length > 0 && among(layout.known.vocabulary.gets, verb) && !saysNew(layout, part)) {
    found.push({ ...phrase, items: phrase.items, together: false, part, verb: "", asks: true });
    return;
  }
  if (items.length > 0 && mayBeWorn(layout, phrase, part, verb, items)) {
    found.push({ ...phrase, items, together: false, part, verb: "", asks: true });
    return;
  }
  const renewed = items.length === 0 && actionsOf(layout.known, verb)[0] === "replace" ? renewedAt(layout, phrase) : undefined;
  if (renewed !== undefined && phrase.items.includes(renewed)) {
    found.push({ ...phrase, items: [renewed], together: true, part, verb, asks: false });
    return;
  }
  const end = items.length > 0 ? halfOf(layout, part, items) : null;
  if (end !== null) found.push({ ...phrase, items, together: false, part, verb, asks: true, end });
  else if (items.length > 0)
    found.push({ ...phrase, items, together: (together && !isOne) || (isOfBothEnds(items) && bothSaid(layout, part)), part, verb, asks: false });
  else if (isWorkshop(layout.known, verb)) found.push({ ...phrase, items: near, together: false, part, verb, asks: true });
}

/** "Rear tyre is done": finished, or seen to? And "coolant at 14,600 ok" was looked at, if at all. */
function mayBeWorn({ tokens, known }: Layout, phrase: ItemPhrase, part: Part, verb: string, items: readonly ItemKey[]): boolean {
  const { done, is, ok } = known.vocabulary.maybe;
  if (verb === "") return tokensOf(part).some((at) => among(ok, wordAt(tokens, at)));
  return among(done, verb) && among(is, wordAt(tokens, phrase.to + 1)) && items.some((item) => WORN.test(item));
}

/** "Did the brakes": their fluid or their pads; only who bled them has said which. */
const isOfBrakes = (items: readonly ItemKey[]): boolean =>
  items.includes("brake-fluid.replace" as ItemKey) && items.some((item) => /^(?:front|rear)-(?:pads|shoes)\./u.test(item));

/** What riders call done when it is worn out. */
const WORN = /tyre|pads|shoes|chain\.|belt|battery|plugs|discs/u;

/** "New clutch cable": what no line renews is renewed at the line that sets it. */
const renewedAt = ({ tokens, known }: Layout, { from, to }: ItemPhrase): ItemKey | undefined =>
  under(known.vocabulary.renewedAt, [...tokens.slice(from, to + 1)].map((token) => (token.is === "word" ? token.folded : "")).join(" ")) as ItemKey | undefined;

type Fit = {
  /** What the verbs can mean of the phrase's items; where that is nothing, `near` is what they may have meant. */
  readonly items: readonly ItemKey[];
  readonly together: boolean;
  readonly near: readonly ItemKey[];
};

type Fitting = (items: readonly ItemKey[], verbs: readonly string[], end: "front" | "rear" | null) => Fit;

/** What verbs mean of a phrase's items on one bike, worked out once for each of them: a message may say one thing many times over. */
export function fittingOf(known: Known, bike: KnownBike): Fitting {
  const ready = new Map<readonly ItemKey[], Map<string, Fit>>();
  return (meant, verbs, end) => {
    const ofItems = ready.get(meant) ?? new Map<string, Fit>();
    ready.set(meant, ofItems);
    const key = `${end ?? ""} ${verbs.join(" ")}`;
    const before = ofItems.get(key);
    if (before !== undefined) return before;
    const each = verbs.map((verb) => actionsOf(known, verb));
    const actions = each.some((one) => one.length === 0) ? [] : each.flat();
    const all = chosen(meant, bike, actions);
    const items = end === null ? all : ofEnd(end, all);
    // "Checked the pads" looks at all of them; "changed the pads" renews those of one end more often than both, and the other end's wear must not begin anew.
    const together = sameAction(items, bike) && !(actions[0] === "replace" && looksOnly(items, bike));
    const fit = { items, together, near: items.length > 0 ? items : nearby(meant, bike, actions) };
    ofItems.set(key, fit);
    return fit;
  };
}

/** One line of the plan for both ends of the bike. */
const OF_BOTH = ["brake-fluid.replace", "brake-hoses.replace"] as readonly string[] as readonly ItemKey[];

/** "Front brake hose" typed at a command: of such a line only one end is named. */
export function isHalfNamed(typed: string, items: readonly ItemKey[], { places }: Known["vocabulary"]): boolean {
  return endNamed(typed, places) !== null && items.some((item) => OF_BOTH.includes(item));
}

/** The only end that words name. */
export function endNamed(typed: string, places: Known["vocabulary"]["places"]): "front" | "rear" | null {
  const words = typed.toLowerCase().split(/[^\p{L}]+/u);
  const [end, ...others] = (["front", "rear"] as const).filter((each) => places[each].some((name) => words.includes(name)));
  return end === undefined || others.length > 0 ? null : end;
}

/** "Changed the front brake fluid": one end of what the plan has in one line, so its clock must not start anew for both unasked. */
const halfOf = (layout: Layout, part: Part, items: readonly ItemKey[]): "front" | "rear" | null =>
  items.some((item) => OF_BOTH.includes(item)) ? endSaid(layout, part) : null;

/** "A new tyre on the rear": of the items for either end those of the one that is said. */
function ofEnd(end: "front" | "rear", items: readonly ItemKey[]): readonly ItemKey[] {
  const own = items.filter((item) => item.startsWith(`${end}-`));
  return own.length > 0 ? own : items;
}

const isOfBothEnds = (items: readonly ItemKey[]): boolean => ["front-", "rear-"].every((end) => items.some((item) => item.startsWith(end)));
