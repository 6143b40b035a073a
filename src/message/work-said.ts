// Work that a message says was done: verbs, the plan items they govern, and the figure at which it was done.

import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import type { Gap, RecordWork } from "../core/reading/intent.ts";
import type { Known, KnownBike } from "../core/reading/vocabulary.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { type Figure, figureAt, measures } from "./figures.ts";
import { asSpan, bikeAt, dayAt, type Layout, type MeantBike } from "./layout.ts";
import { chosen, type ItemPhrase, itemPhrases, nearby, sameAction } from "./read-items.ts";

/** The work of one clause, and which tokens it accounts for. */
export type WorkSaid = {
  readonly intents: readonly RecordWork[];
  /** Work on something that is not in the plan. */
  readonly missing: readonly RecordWork[];
  readonly used: ReadonlySet<number>;
  readonly heard: boolean;
};

/** `asks`: the verb fits none of the items, so the member is asked what was meant. */
type Phrase = ItemPhrase & { readonly part: Part; readonly verb: string; readonly asks: boolean };

const AROUND = [
  "and",
  "&",
  "with",
  "again",
  "too",
  "also",
  "myself",
  "out",
  "up",
  "the",
  "my",
  "a",
  "an",
  "new",
  "both",
  "all",
  "its",
  "it's",
  "her",
  "his",
  "was",
  "were",
  "got",
  "have",
  "has",
  "had",
  "been",
  "just",
  "i",
  "i've",
  "ive",
  "we",
  "we've",
  "as",
  "well",
  "off",
];

export function workSaid(layout: Layout, clause: Clause): WorkSaid {
  const used = new Set<number>();
  const intents: RecordWork[] = [];
  const missing: RecordWork[] = [];
  for (const group of byBike(layout, clause)) {
    const { bike, phrases } = phrasesOf(layout, group);
    if (phrases.length === 0) {
      const unknown = unknownWork(layout, group, bike);
      if (unknown !== null) missing.push(unknown);
      continue;
    }
    for (const phrase of phrases) for (let at = phrase.from; at <= phrase.to; at++) used.add(at);
    const parts = [...new Set(phrases.map((phrase) => phrase.part))];
    const odometer = odometerOf(layout, parts, bike.bike);
    if (odometer !== null) used.add(odometer.figure.at);
    intents.push(...intentsOf(layout, phrases, bike, odometer, parts));
  }
  const heard = clause.parts.some((part) => tokensOf(part).some((at) => isVerb(layout, at)));
  return { intents, missing, used, heard };
}

/** "Replaced the flux hose": work, but on nothing that the plan names. Kept to be asked about where a reading of the same clause would else be logged alone. */
function unknownWork(layout: Layout, parts: readonly Part[], bike: MeantBike): RecordWork | null {
  for (const part of parts) {
    const at = tokensOf(part).find((each) => isVerb(layout, each) && isWorkshop(layout.known, wordAt(layout.tokens, each) ?? ""));
    if (at === undefined) continue;
    const words = layout.text.slice(layout.tokens[at]?.start, layout.tokens[part.to]?.end);
    const day = dayAt(layout, part, [part]);
    const gaps: readonly Gap[] = [...(bike.gap === null ? [] : [bike.gap]), { need: "item", options: [] }];
    return { do: "record work", bike: bike.bike?.id ?? null, items: [], words, on: asSpan(day), odometer: null, outcome: "done", how: "did it", gaps };
  }
  return null;
}

/** Parts that speak of one bike, in order: "lubed the chain on Heron, changed the oil on Otter" are two. */
function byBike(layout: Layout, clause: Clause): readonly (readonly Part[])[] {
  const groups: Part[][] = [];
  let last: string | null = null;
  for (const part of clause.parts) {
    const bike = bikeAt(layout, part).bike?.id ?? "";
    if (bike === last) groups.at(-1)?.push(part);
    else groups.push([part]);
    last = bike;
  }
  return groups;
}

const isVerb = (layout: Layout, at: number): boolean => layout.known.vocabulary.workDone[wordAt(layout.tokens, at) ?? ""] !== undefined;

const tokensOf = (part: Part): number[] => Array.from({ length: part.to - part.from + 1 }, (_, n) => part.from + n);

/** The bike meant, and the phrases on it. With no bike named, a job that only one bike can have settles it. */
function phrasesOf(layout: Layout, parts: readonly Part[]): { readonly bike: MeantBike; readonly phrases: readonly Phrase[] } {
  const [first = { from: 0, to: 0 }] = parts;
  const meant = bikeAt(layout, first);
  if (meant.bike !== null) return { bike: meant, phrases: governed(layout, parts, meant.bike) };
  const able = layout.known.bikes.map((each) => ({ each, phrases: governed(layout, parts, each) })).filter(({ phrases }) => phrases.length > 0);
  const [only] = able;
  if (only === undefined) return { bike: meant, phrases: [] };
  if (able.length === 1 && meant.gap?.named === null) return { bike: { bike: only.each, gap: null }, phrases: only.phrases };
  const options = able.map(({ each }) => each.id);
  return { bike: { bike: null, gap: meant.gap === null || meant.gap.named !== null ? meant.gap : { ...meant.gap, options } }, phrases: only.phrases };
}

/** Phrases that a verb governs, part by part. A part without a verb goes on with the list before it when it holds nothing else. */
function governed(layout: Layout, parts: readonly Part[], bike: KnownBike): readonly Phrase[] {
  // Most messages hold no verb of work: their words need not be looked up.
  if (!parts.some((part) => tokensOf(part).some((at) => isVerb(layout, at)) || isRenewed(layout, part.from))) return [];
  const found: Phrase[] = [];
  let carried: readonly string[] | null = null;
  for (const part of parts) {
    const all = itemPhrases(layout.tokens.slice(part.from, part.to + 1), layout.known, bike).map((phrase) => ({
      ...phrase,
      from: phrase.from + part.from,
      to: phrase.to + part.from,
    }));
    const verbs = tokensOf(part).filter((at) => isVerb(layout, at) && !all.some((phrase) => at >= phrase.from && at <= phrase.to));
    const [firstVerb] = verbs;
    // "New battery, 14,260": nothing but the thing is said, so it is the thing that was fitted.
    if (firstVerb === undefined && isRenewed(layout, part.from) && all.length > 0 && holdsOnlyItems(layout, part, all)) {
      for (const phrase of all) push(found, phrase, part, [wordAt(layout.tokens, part.from) ?? ""], layout, bike);
      carried = [wordAt(layout.tokens, part.from) ?? ""];
      continue;
    }
    if (firstVerb === undefined) {
      if (carried !== null && all.length > 0 && holdsOnlyItems(layout, part, all)) for (const phrase of all) push(found, phrase, part, carried, layout, bike);
      continue;
    }
    // "Oil changed and chain lubed": when the thing comes first, each belongs to the verb behind it.
    const verbBehind = (all[0]?.from ?? Number.POSITIVE_INFINITY) < firstVerb;
    for (const phrase of all) {
      const at = verbBehind ? (verbs.find((verb) => verb > phrase.to) ?? verbs.at(-1)) : (verbs.findLast((verb) => verb < phrase.from) ?? firstVerb);
      if (standsFree(layout, phrase, part)) push(found, phrase, part, verbGroup(layout, at ?? firstVerb, part), layout, bike);
    }
    carried = verbBehind ? null : verbGroup(layout, verbs.at(-1) ?? firstVerb, part);
  }
  return found;
}

function push(found: Phrase[], phrase: ItemPhrase, part: Part, verbs: readonly string[], layout: Layout, bike: KnownBike): void {
  const each = verbs.map((verb) => actionsOf(layout.known, verb));
  const actions = each.some((one) => one.length === 0) ? [] : each.flat();
  const items = chosen(phrase.items, bike, actions);
  const verb = verbs[0] ?? "";
  if (items.length > 0) found.push({ ...phrase, items, together: sameAction(items, bike), part, verb, asks: false });
  else if (isWorkshop(layout.known, verb)) found.push({ ...phrase, items: nearby(phrase.items, bike, actions), together: false, part, verb, asks: true });
}

const isRenewed = (layout: Layout, at: number): boolean => layout.known.vocabulary.renewed.includes(wordAt(layout.tokens, at) ?? "");

/** Verbs of the workshop and little else: who bled, greased or replaced something worked on the bike. */
const isWorkshop = (known: Known, verb: string): boolean =>
  actionsOf(known, verb).some((action) => action === "replace" || action === "bleed" || action === "lubricate");

/** "Cleaned and oiled": verbs joined to the one at a token, the first first. */
function verbGroup(layout: Layout, at: number, part: Part): readonly string[] {
  const found = [wordAt(layout.tokens, at) ?? ""];
  for (let before = at - 2; before >= part.from && ["and", "&"].includes(joinAt(layout, before + 1)) && isVerb(layout, before); before -= 2)
    found.unshift(wordAt(layout.tokens, before) ?? "");
  return found;
}

function joinAt(layout: Layout, at: number): string {
  const token = layout.tokens[at];
  return token?.is === "break" ? token.mark : (wordAt(layout.tokens, at) ?? "");
}

const actionsOf = (known: Known, verb: string): readonly WorkAction[] =>
  known.vocabulary.workDone[verb] ?? (known.vocabulary.renewed.includes(verb) ? ["replace"] : []);

function holdsOnlyItems(layout: Layout, part: Part, phrases: readonly ItemPhrase[]): boolean {
  return tokensOf(part).every((at) => layout.taken.has(at) || phrases.some((phrase) => at >= phrase.from && at <= phrase.to) || mayStandBeside(layout, at));
}

/** The words either side must be ones that can stand beside a job: "oil cooler" is not oil, "chain guard" is no chain. */
function standsFree(layout: Layout, phrase: ItemPhrase, part: Part): boolean {
  const [before, after] = [phrase.from - 1, phrase.to + 1];
  return (before < part.from || mayStandBeside(layout, before)) && (after > part.to || mayStandBeside(layout, after));
}

function mayStandBeside(layout: Layout, at: number): boolean {
  const token = layout.tokens[at];
  if (token === undefined || token.is !== "word" || layout.taken.has(at)) return true;
  const word = token.text.toLowerCase();
  const { vocabulary } = layout.known;
  return (
    AROUND.includes(word) ||
    vocabulary.workDone[word] !== undefined ||
    vocabulary.beside.includes(word) ||
    vocabulary.at.includes(word) ||
    vocabulary.onBike.includes(word) ||
    vocabulary.dateWords.includes(word)
  );
}

type AtFigure = { readonly figure: Figure; readonly unit: "mi" | "km" | null };

/** "At 14,820": the figure behind an at-word in the same parts. */
function odometerOf(layout: Layout, parts: readonly Part[], bike: KnownBike | null): AtFigure | null {
  for (const part of parts) {
    for (const at of tokensOf(part)) {
      const figure = figureAt(layout, at);
      if (figure === null) continue;
      const of = measures(figure);
      const unit = of === "distance" ? (figure.units[0] as "mi" | "km") : null;
      const mark = layout.tokens[at - 1];
      const behindAt = layout.known.vocabulary.at.includes(wordAt(layout.tokens, at - 1) ?? "") || (mark?.is === "break" && mark.mark === "@");
      const long = figure.token.value >= 100 && of === null;
      if (behindAt && (unit !== null || long)) return { figure, unit: unit ?? (bike === null ? null : bike.unit) };
    }
  }
  return null;
}

const OUTCOME_OF: Partial<Record<WorkAction, Outcome>> = {
  replace: "replaced",
  adjust: "adjusted",
  inspect: "inspected, within limits",
  measure: "inspected, within limits",
  test: "inspected, within limits",
};

function outcomeOf(known: Known, verb: string): Outcome {
  const [action] = actionsOf(known, verb);
  return (action === undefined ? undefined : OUTCOME_OF[action]) ?? "done";
}

/** One record for all that is sure and had one outcome; one each for what must be asked about. */
function intentsOf(layout: Layout, phrases: readonly Phrase[], bike: MeantBike, odometer: AtFigure | null, parts: readonly Part[]): RecordWork[] {
  const day = dayAt(layout, parts[0] ?? { from: 0, to: 0 }, parts);
  const bikeGaps: readonly Gap[] = bike.gap === null ? [] : [bike.gap];
  const tail = [...unitGaps(odometer, bike.bike), ...numberGaps(odometer, bike.bike), ...(day.gap === null || day.span !== null ? [] : [day.gap])];
  const make = (items: readonly ItemKey[], verb: string, words: string, gaps: readonly Gap[]): RecordWork => ({
    do: "record work",
    bike: bike.bike?.id ?? null,
    items,
    words,
    on: asSpan(day),
    odometer:
      odometer === null
        ? null
        : { value: odometer.figure.token.value, unit: odometer.unit, typed: { text: odometer.figure.token.text, unit: odometer.figure.token.unitText } },
    outcome: outcomeOf(layout.known, verb),
    how: "did it",
    gaps: [...bikeGaps, ...gaps, ...tail],
  });
  const made: RecordWork[] = [];
  const sure = new Map<Outcome, { verb: string; items: ItemKey[]; words: string[] }>();
  for (const phrase of phrases) {
    const words = layout.text.slice(layout.tokens[phrase.from]?.start, layout.tokens[phrase.to]?.end);
    if (phrase.asks || (!phrase.together && phrase.items.length > 1)) {
      made.push(make([], phrase.verb, words, [{ need: "item", options: phrase.items }]));
      continue;
    }
    const group = sure.get(outcomeOf(layout.known, phrase.verb)) ?? { verb: phrase.verb, items: [], words: [] };
    group.items.push(...phrase.items.filter((item) => !group.items.includes(item)));
    group.words.push(words);
    sure.set(outcomeOf(layout.known, phrase.verb), group);
  }
  return [...[...sure.values()].map((group) => make(group.items, group.verb, group.words.join(", "), [])), ...made];
}

function unitGaps(odometer: AtFigure | null, bike: KnownBike | null): readonly Gap[] {
  return odometer === null || odometer.unit === null || bike === null || odometer.unit === bike.unit
    ? []
    : [{ need: "unit", options: [odometer.unit, bike.unit] }];
}

function numberGaps(odometer: AtFigure | null, bike: KnownBike | null): readonly Gap[] {
  const other = odometer?.figure.token.other ?? null;
  if (odometer === null || other === null) return [];
  // A figure that only one way of reading puts near the dial is read that way.
  if (bike?.lastFigure !== null && bike !== null && other < bike.lastFigure / 10 && odometer.figure.token.value > bike.lastFigure / 10) return [];
  return [{ need: "number", options: [odometer.figure.token.value, other] }];
}
