// How something was read: cold, upright, rested, two-up; said beside the figure, or by itself behind it or before it: "12.6 V, rested", "two-up: rear 42 psi".

import { daysBetween } from "../core/calendar/arithmetic.ts";
import type { BikeId } from "../core/ids.ts";
import { dimensionOf } from "../core/quantity/units.ts";
import type { ConditionRead } from "../core/reading/detail.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import type { SpecUse } from "../core/spec/spec.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { bikeAt, inside, isSince, type Layout, phrasesInside } from "./layout.ts";
import type { Phrase } from "./phrases.ts";
import { isAnd, oncePerPart, tokensOf } from "./pieces.ts";

/**
 * The conditions that hold for what a part says.
 * @param last the last of the parts that speak of the same kind: what stands by itself behind it is said of all of them
 */
export const conditionsOf = (layout: Layout, part: Part, last: Part = part): readonly ConditionRead[] => [
  ...new Set([...beside(layout, part), ...[part, last].flatMap((each) => behind(layout, each).flatMap((other) => beside(layout, other)))]),
];

/** Was a tyre read warm, by what a message says of it? "Front 34 psi cold, rear 44 psi hot": what is said of one figure is of no other. */
export function isWarmAt(layout: Layout, part: Part, at: number): boolean {
  if (layout.warm.length === 0) return false;
  const said = phrasesInside(layout.phrases.condition, part).filter(({ are }) => are.includes("cold") || are.includes("warm"));
  if (said.length === 0) return true;
  if (said.every(({ are }) => are.includes("cold"))) return layout.warm.some((warm) => !isOfOtherFigure(layout, part, warm));
  const figures = tokensOf(part).filter((each) => isFigure(layout, each));
  const next = figures.find((each) => each > at) ?? part.to + 1;
  const before = figures.findLast((each) => each < at) ?? part.from - 1;
  const leads = (said[0]?.at ?? 0) < (figures[0] ?? 0);
  const own = leads ? said.findLast((each) => each.at > before && each.at < at) : said.find((each) => each.at > at && each.at < next);
  return own?.are.includes("cold") !== true;
}

/** Does a word stand in another part than one, beside a figure of its own? */
function isOfOtherFigure(layout: Layout, part: Part, at: number): boolean {
  const own = layout.clauses.flatMap(({ parts }) => parts).find(({ from, to }) => at >= from && at <= to);
  return own !== undefined && own !== part && tokensOf(own).some((each) => isFigure(layout, each));
}

const beside = oncePerPart((layout: Layout, part: Part): readonly ConditionRead[] => {
  const phrases = phrasesInside(layout.phrases.condition, part);
  const charged = phrases.filter((phrase) => isPastCharge(layout, part, phrase));
  const isOfCharge = ({ to, are }: Phrase<"condition">): boolean =>
    are.includes("rested") && charged.some((phrase) => phrase.at === to + 1 && phrase.are.includes("on the charger"));
  return [...new Set(phrases.flatMap((phrase): readonly ConditionRead[] => (charged.includes(phrase) ? ["charged"] : isOfCharge(phrase) ? [] : phrase.are)))];
});

/** "After a night on the charger": it was charged then, and has not rested since. */
const isPastCharge = ({ tokens, known }: Layout, part: Part, { at, are }: Phrase<"condition">): boolean =>
  are.includes("charged") ||
  (are.includes("on the charger") &&
    tokensOf({ from: Math.max(part.from, at - REACH), to: at - 1 }).some((each) => among(known.vocabulary.measuring.stood.after, wordAt(tokens, each))));

/** Was a battery charged just before it was read, by what a part says? */
export const saysCharged = (layout: Layout, part: Part): boolean => beside(layout, part).includes("charged");

/** "12.8 V after charging": what was done before it, and not what it shows while it charges. */
export const isOfCharging = ({ tokens, phrases, known }: Layout, { at, are }: { readonly at: number; readonly are: readonly ReadingKind[] }): boolean =>
  (are.includes("charging voltage") && among(known.vocabulary.measuring.stood.before, wordAt(tokens, at - 1))) ||
  phrases.condition.some((phrase) => phrase.are.includes("charged") && at >= phrase.at && at <= phrase.to);

/** The parts that say how a part was read: itself, and those behind it. */
export const howParts = (layout: Layout, part: Part, last: Part): readonly Part[] => [part, ...behind(layout, part), ...behind(layout, last)];

/**
 * How the bike is loaded by what a part says of the figure at a token; null where nothing does.
 * @param last as for conditions
 */
export function loadOf(layout: Layout, part: Part, at: number, last: Part = part): SpecUse | null {
  const own = loadsOf(layout, part);
  const leads = own[0] !== undefined && own[0].at < firstFigure(layout, part);
  const beside = leads ? own.findLast((load) => load.at < at) : own.find((load) => load.at > at);
  const said = beside ?? own.at(-1) ?? loadIn(layout, [...behind(layout, part), ...behind(layout, last)]) ?? loadIn(layout, before(layout, part));
  return said?.are[0] ?? loadOfAll(layout, at);
}

const loadIn = (layout: Layout, parts: readonly Part[]): Phrase<"load"> | undefined => parts.flatMap((part) => loadsOf(layout, part)).at(0);

/** The loads that a part names. "Two up with panniers" is the fuller of the two. */
const loadsOf = oncePerPart((layout: Layout, part: Part): readonly Phrase<"load">[] => {
  const merged: Phrase<"load">[] = [];
  for (const load of phrasesInside(layout.phrases.load, part)) {
    const before = merged.at(-1);
    const joins = before !== undefined && load.at - before.to <= 3 && tokensOf({ from: before.to + 1, to: load.at - 1 }).every((at) => !isFigure(layout, at));
    if (joins && (before.are.includes("loaded") || load.are.includes("loaded"))) merged[merged.length - 1] = { at: before.at, to: load.to, are: ["loaded"] };
    else merged.push(load);
  }
  return merged;
});

const isFigure = (layout: Layout, at: number): boolean => layout.tokens[at]?.is === "number" && !layout.taken.has(at);

/** The one load that a message names of a bike is how it was loaded at both ends: nobody loads one of them. Of several none is of all. */
function loadOfAll(layout: Layout, at: number): SpecUse | null {
  if (layout.phrases.load.length === 0) return null;
  const known = loads.get(layout) ?? loadsByBike(layout);
  loads.set(layout, known);
  return known.get(bikeAt(layout, { from: at, to: at }).bike?.id ?? null) ?? null;
}
const loads = new WeakMap<Layout, ReadonlyMap<BikeId | null, SpecUse | null>>();

/** Null where a bike has several. */
function loadsByBike(layout: Layout): ReadonlyMap<BikeId | null, SpecUse | null> {
  const said = new Map<BikeId | null, Set<SpecUse>>();
  for (const { parts } of layout.clauses)
    for (const part of parts) {
      const here = loadsOf(layout, part);
      if (here.length === 0 || !(saysOnlyHow(layout, part) || saysPressure(layout, part))) continue;
      for (const { at, to, are } of here) {
        const bike = bikeAt(layout, { from: at, to }).bike?.id ?? null;
        said.set(bike, new Set([...(said.get(bike) ?? []), ...are]));
      }
    }
  return new Map(
    [...said].map(([bike, uses]) => {
      // "Front 38 psi, rear 44 psi, two-up, with panniers".
      if (uses.has("loaded")) uses.delete("two-up");
      const [only, ...others] = uses;
      return [bike, others.length > 0 ? null : (only ?? null)];
    }),
  );
}

/** A part with a figure that can be a pressure, of one end of the bike or in its unit; the passenger's footrests are no load. */
const saysPressure = oncePerPart((layout: Layout, part: Part): boolean => {
  const figures = tokensOf(part).flatMap((at) => {
    const token = layout.tokens[at];
    return token?.is === "number" && !layout.taken.has(at) ? [token] : [];
  });
  if (figures.some(({ units }) => units.some((unit) => dimensionOf(unit) === "pressure"))) return true;
  return figures.some(({ units }) => units.length === 0) && phrasesInside(layout.phrases.place, part).length > 0;
});

const firstFigure = (layout: Layout, part: Part): number =>
  tokensOf(part).find(
    (at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at) && !layout.phrases.load.some((load) => at >= load.at && at <= load.to),
  ) ?? part.to;

/** The parts that follow and say nothing else; how warm it was may stand between: "12.6 V, 5 °C, rested 10 h". */
const behind = oncePerPart((layout: Layout, part: Part): readonly Part[] => {
  const after = clauseOf(layout, part)?.parts.filter(({ from }) => from > part.to) ?? [];
  const other = after.findIndex((each) => !saysOnlyHow(layout, each) && !saysOnlyWarmth(layout, each));
  return other < 0 ? after : after.slice(0, other);
});

/** The part that opens its clause, or the line above it, where it says nothing else. */
const before = oncePerPart((layout: Layout, part: Part): readonly Part[] => {
  const clause = clauseOf(layout, part);
  const above = clause === undefined ? undefined : layout.clauses[layout.clauses.indexOf(clause) - 1];
  const [first] = clause?.parts ?? [];
  const openers = [...(first !== undefined && first.to < part.from ? [first] : []), ...(above?.parts.length === 1 ? above.parts : [])];
  return openers.filter((each) => saysOnlyHow(layout, each));
});

const clauseOf = (layout: Layout, part: Part) => layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);

/** "5 °C", "at 40 °F". */
const saysOnlyWarmth = oncePerPart((layout: Layout, part: Part): boolean => {
  const { at: atWords, articles } = layout.known.vocabulary;
  return tokensOf(part).every((at) => {
    const token = layout.tokens[at];
    if (token?.is === "number") return token.units.length > 0 && token.units.every((unit) => dimensionOf(unit) === "temperature");
    return token?.is === "break" || [atWords, articles].some((list) => among(list, wordAt(layout.tokens, at)));
  });
});

const saysOnlyHow = oncePerPart((layout: Layout, part: Part): boolean => {
  const phrases = [...phrasesInside(layout.phrases.condition, part), ...phrasesInside(layout.phrases.load, part)];
  if (phrases.length === 0 && stoodHours(layout, [part]) === null) return false;
  const { onBike, around, articles, measuring } = layout.known.vocabulary;
  const { hours, minutes, forces, spans, stood } = measuring;
  const isAmount = (at: number): boolean => {
    const token = layout.tokens[at];
    const next = token?.is === "number" && token.unitText !== null ? token.unitText.toLowerCase() : (wordAt(layout.tokens, at + 1) ?? "");
    return under(spans, next) !== undefined || [hours, minutes, forces].some((list) => among(list, next));
  };
  const lists = [onBike, hours, minutes, forces, ...(phrases.length > 0 ? [] : [around, articles, stood.words, stood.after, stood.not, stood.used])];
  return tokensOf(part).every((at) => {
    if (phrases.some((phrase) => at >= phrase.at && at <= phrase.to) || isAnd(layout, at)) return true;
    if (layout.dates.some((dated) => at >= dated.from && at <= dated.to && isSince(layout, dated))) return true;
    const word = wordAt(layout.tokens, at);
    if (layout.tokens[at]?.is === "number") return isAmount(at);
    return !layout.taken.has(at) && (word === null || under(spans, word) !== undefined || lists.some((list) => among(list, word)));
  });
});

/** How long a battery had stood, in hours, where the words beside "rested" or "stood" say so; 0 where they say only that it was minutes. Null where nothing is said. */
export function stoodHours(layout: Layout, parts: readonly Part[]): number | null {
  for (const part of parts) {
    const hours = stoodIn(layout, part);
    if (hours !== null) return hours;
  }
  return null;
}

const stoodIn = oncePerPart((layout: Layout, part: Part): number | null => {
  const { hours, minutes, spans } = layout.known.vocabulary.measuring;
  const since = layout.dates.find((dated) => inside(dated, part) && isSince(layout, dated));
  const day = since?.options[0] ?? since?.span?.to;
  if (day !== undefined) return daysBetween(day, layout.known.today) * 24;
  const rested = beside(layout, part).includes("rested") ? phrasesInside(layout.phrases.condition, part).filter(({ are }) => are.includes("rested")) : [];
  for (const at of tokensOf(part)) {
    const near = rested.some((phrase) => at >= phrase.at - REACH && at <= phrase.to + REACH);
    const token = layout.tokens[at];
    const word = token?.is === "number" ? (token.unitText?.toLowerCase() ?? "") : (wordAt(layout.tokens, at) ?? "");
    const unit = among(hours, word) ? 1 : among(minutes, word) ? 1 / 60 : (under(spans, word) ?? null);
    if (unit === null || layout.taken.has(at)) continue;
    const before = layout.tokens[at - 1];
    const counted = token?.is === "number" ? token : before?.is === "number" ? before : null;
    if (!near && !saysStood(layout, part, { from: counted === null || counted === token ? at : at - 1, to: at })) continue;
    // "After a week", "overnight, after the ride": a span without a figure is one of it, hours without one are none.
    return counted === null ? (under(spans, word) ?? 0) : counted.value * unit;
  }
  return null;
});

/** "Stood 2 days", "after a week", "3 weeks off the charger"; not "after 2 hours riding". */
function saysStood(layout: Layout, part: Part, span: Pick<Part, "from" | "to">): boolean {
  const { articles, measuring } = layout.known.vocabulary;
  const { words, after, ran } = measuring.stood;
  const isSaid = (list: readonly string[], from: number, to: number): boolean =>
    tokensOf(part).some((at) => at >= from && at <= to && among(list, wordAt(layout.tokens, at)));
  if (isSaid(words, span.from - REACH, span.to + 1)) return true;
  const first = among(articles, wordAt(layout.tokens, span.from - 1)) ? span.from - 1 : span.from;
  return among(after, wordAt(layout.tokens, first - 1)) && !isSaid(ran, part.from, part.to);
}

/** How many words may stand between "rested" and how long. */
const REACH = 4;

/** With what force a belt was pressed, as typed: "100 N". @param own the token of the reading itself */
export function forceSaid(layout: Layout, parts: readonly Part[], own: number): string | null {
  const { forces } = layout.known.vocabulary.measuring;
  for (const at of parts.flatMap(tokensOf)) {
    const token = layout.tokens[at];
    if (token?.is !== "number" || at === own || layout.taken.has(at)) continue;
    if (token.unitText !== null && among(forces, token.unitText.toLowerCase())) return token.text;
    const next = layout.tokens[at + 1];
    if (token.unitText === null && next?.is === "word" && among(forces, next.folded)) return layout.text.slice(token.start, next.end);
  }
  return null;
}
