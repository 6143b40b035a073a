// The numbers of a part that can be values measured on the bike: single figures, ranges, pairs behind a stroke, figures below zero.

import { dimensionOf, type UnitId } from "../core/quantity/units.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { figureAt, isStroked } from "./figures.ts";
import { type Layout, phrasesInside } from "./layout.ts";
import { beginsAt, standsBeside } from "./phrases.ts";
import { isAnd, oncePerPart, tokensOf } from "./pieces.ts";
import type { NumberToken } from "./scan.ts";

/** One value. `ofRange`: the other end of the range that it is an end of. */
export type Measurable = {
  readonly at: number;
  readonly token: NumberToken;
  readonly part: Part;
  readonly value: number;
  readonly units: readonly UnitId[];
  /** The other way to read it, "14.820". */
  readonly other: number | null;
  readonly rangeTo: number | null;
  /** The value and its unit as typed. */
  readonly typed: string;
  /** "33 f": what looks like a unit is a place. */
  readonly place: "front" | "rear" | null;
};

/** In order. Numbers that count something else (a valve's number, pitches, revolutions) are left out. */
export function measurablesIn(layout: Layout, part: Part, used: ReadonlySet<number>, kindNamed: boolean): readonly Measurable[] {
  const found: Measurable[] = [];
  for (let at = part.from; at <= part.to; at++) {
    const token = layout.tokens[at];
    if (token?.is !== "number" || used.has(at) || layout.taken.has(at) || layout.indexes.has(at) || counts(layout, at)) continue;
    const pair = pairOf(token, kindNamed || token.units.length > 0 || isPairAlone(layout, part)) ?? rowOf(layout, part, token);
    if (pair !== null && figureStands(layout, at)) {
      for (const value of pair) found.push({ at, token, part, value, units: token.units, other: null, rangeTo: null, typed: String(value), place: null });
      continue;
    }
    const figure =
      figureAt(layout, at) ?? (kindNamed || token.units.length > 0 || isPairAlone(layout, part) || leadsPair(layout, at) ? joinedFigure(layout, at) : null);
    if (figure === null) continue;
    const end = rangeEnd(layout, at, part);
    const of = end === null ? token : end.token;
    found.push({
      at,
      token,
      part,
      value: signOf(layout, at) * token.value,
      units: end === null ? (leadsPair(layout, at) ? unitsBehind(layout, at) : figure.place === null ? figure.units : token.units) : end.token.units,
      other: token.other,
      rangeTo: end === null ? null : end.token.value,
      typed: layout.text.slice(token.start - (signOf(layout, at) < 0 && layout.text[token.start - 1] === "-" ? 1 : 0), of.end),
      place: figure.place,
    });
    if (end !== null) at = end.at;
  }
  return found;
}

/** "20 pitches", "4000 rpm", "10 min". */
const counts = (layout: Layout, at: number): boolean => {
  const { measuring } = layout.known.vocabulary;
  const next = wordAt(layout.tokens, at + 1) ?? "";
  if (among(measuring.pitches, next) || among(measuring.rpm, next)) return true;
  // "Rested 10 min"; "pads 4.6 min 4.5" is a figure and its limit.
  const token = layout.tokens[at];
  return token?.is === "number" && token.units.length === 0 && among(measuring.minutes, next) && layout.tokens[at + 2]?.is !== "number";
};

/** "33/36": two values where no ruler has such a fraction. */
function pairOf(token: NumberToken, likely: boolean): readonly number[] | null {
  if (!likely || token.fraction === null) return null;
  const [, above, below] = /^(\d{1,3})\/(\d{1,3})(?!\d)/u.exec(token.text) ?? [];
  // "36/32" is more than the whole that a ruler is divided into.
  if ([2, 4, 8, 16, 32, 64].includes(token.fraction) && Number(above) < token.fraction) return null;
  // A size such as 120/70 has more than any two pressures or depths typed so.
  return above === undefined || below === undefined || Number(above) > MOST_PAIR || Number(below) > MOST_PAIR ? null : [Number(above), Number(below)];
}

const unitsBehind = ({ tokens }: Layout, at: number): readonly UnitId[] => {
  const second = tokens[at + 2];
  return second?.is === "number" ? second.units : [];
};

/** "2.3/2.5 bar": the unit behind the second is that of both. */
function leadsPair({ tokens }: Layout, at: number): boolean {
  const [first, stroke, second] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (first?.is !== "number" || stroke?.is !== "break" || stroke.mark !== "/" || second?.is !== "number") return false;
  return first.decimals > 0 && second.units.some((unit) => dimensionOf(unit) === "pressure");
}

/** "34/38", "Heron 33/36, Bramble 1.8/2.0": a clause of nothing but pairs of figures that tyres may have, and names, days and loads. */
export const isPairAlone = oncePerPart((layout: Layout, part: Part): boolean => {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);
  if (clause === undefined) return false;
  if ((layout.clauses.length === 1 || layout.named.length > 0) && isOfPairs(layout, clause)) return true;
  // "Lubed the chain, 33/36 cold, front pads 3.5": among what else was read or done.
  const isAmong = phrasesInside(layout.phrases.kind, clause).length > 0 && clause.parts.length > 1;
  return isAmong && isOfPairs(layout, part);
});

const isOfPairs = oncePerPart((layout: Layout, clause: Part): boolean => {
  const { tokens, phrases, taken, known } = layout;
  const isLoaded = phrasesInside(phrases.load, clause).length > 0;
  let pairs = 0;
  for (let at = clause.from; at <= clause.to; at++) {
    const token = tokens[at];
    if (taken.has(at) || token === undefined || token.is === "break" || isAnd(layout, at)) continue;
    if (token.is === "word") {
      // "Set 38/44 for two up".
      const isPlain = isLoaded && standsBeside(token.folded, known.vocabulary);
      if (!isPlain && ![phrases.load, phrases.condition, phrases.place].some((list) => list.some((phrase) => at >= phrase.at && at <= phrase.to))) return false;
      continue;
    }
    const [stroke, second] = [tokens[at + 1], tokens[at + 2]];
    const isDecimal = token.decimals > 0 && stroke?.is === "break" && stroke.mark === "/" && second?.is === "number" && second.decimals > 0;
    const values = token.fraction !== null ? token.text.split("/").map(Number) : isDecimal ? [token.value, second.value] : [];
    const [least, most] = isDecimal ? BAR : PSI;
    if (values.length !== 2 || !values.every((each) => each >= least && each <= most)) return false;
    if (isDecimal) at += 2;
    pairs++;
  }
  return pairs > 0;
});
/** What tyres have; in whole figures a month of the year is less. */
const [PSI, BAR] = [
  [13, 60],
  [0.8, 4],
] as const;

/** What two pressures or depths typed as a pair have at most. */
const MOST_PAIR = 60;

/** "150 155 148 psi": a row of compressions, where the spaces group no thousands. */
export function rowOf(layout: Layout, part: Part, token: NumberToken): readonly number[] | null {
  if (!/^\d{2,3}( \d{3})+$/u.test(layout.text.slice(token.start, token.numberEnd))) return null;
  if (!phrasesInside(layout.phrases.kind, part).some(({ are }) => are.includes("compression"))) return null;
  return layout.text.slice(token.start, token.numberEnd).split(" ").map(Number);
}

const figureStands = (layout: Layout, at: number): boolean => {
  const token = layout.tokens[at];
  return token !== undefined && !/[-/\p{L}\p{N}_+.]/u.test(layout.text[token.start - 1] ?? " ") && !/[-/\p{L}\p{N}_]/u.test(layout.text[token.end] ?? " ");
};

/** A figure that touches a stroke, a dash or a minus, where the figures around it say that it is one of several or below zero. */
function joinedFigure(layout: Layout, at: number): ReturnType<typeof figureAt> {
  const { tokens, text } = layout;
  const token = tokens[at];
  if (token?.is !== "number" || token.fraction !== null) return null;
  const earlier = tokens[at - 2];
  // "120/70-17" is a tyre's size.
  if (earlier?.is === "number" && earlier.fraction !== null && Number.parseInt(earlier.text, 10) > MOST_PAIR) return null;
  const before = text[token.start - 1] ?? " ";
  const after = text[token.numberEnd] ?? " ";
  const joins = (mark: string, other: number): boolean => "/-".includes(mark) && tokens[other]?.is === "number";
  const left = isFreeMark(before) || joins(before, at - 2) || (before === "-" && /[\s(:]/u.test(text[token.start - 2] ?? " "));
  const right = isFreeMark(after) || joins(after, at + 2) || token.units.length > 0;
  if (!left || !right || isStroked(layout, at)) return null;
  return figureAt(layout, at, true);
}
const isFreeMark = (mark: string): boolean => !/[-/\p{L}\p{N}_+]/u.test(mark);

/** "25-30 mm": the second figure of a range that rises. */
function rangeEnd(layout: Layout, at: number, part: Part): { readonly at: number; readonly token: NumberToken } | null {
  const [first, dash, second] = [layout.tokens[at], layout.tokens[at + 1], layout.tokens[at + 2]];
  if (first?.is !== "number" || second?.is !== "number" || at + 2 > part.to || first.units.length > 0) return null;
  const { and, asking, measuring } = layout.known.vocabulary;
  // "Between 33 and 35", "tread 3 to 4 mm".
  const ranges =
    dash?.is === "break"
      ? dash.mark === "-"
      : dash?.is === "word" &&
        ((among(and, dash.folded) && among(asking.between, wordAt(layout.tokens, at - 1))) ||
          (among(measuring.upTo, dash.folded) && (isOfWear(layout, part, at) || isOfWindow(layout, part, at, [first, second]))));
  return ranges && second.value > first.value && second.value <= first.value * 2 ? { at: at + 2, token: second } : null;
}

/** What only wears does not go up: "3 to 4 mm" is a range, where nothing changed it. */
const isOfWear = (layout: Layout, part: Part, at: number): boolean => isOfKind(layout, part, WEARS) && !isChanged(layout, part, at);

/** "Intake 0.10 to 0.15 mm": of a clearance a rise is the window that it has, where nothing is said to have changed it. */
function isOfWindow(layout: Layout, part: Part, at: number, ends: readonly NumberToken[]): boolean {
  const isValve = phrasesInside(layout.phrases.place, part).some(({ are }) => are.includes("intake") || are.includes("exhaust"));
  const isClearance = isOfKind(layout, part, ["valve clearance"]) || isValve;
  return isClearance && ends.every(({ decimals, value }) => decimals >= 2 && value < 1) && !isChanged(layout, part, at);
}

const isOfKind = (layout: Layout, part: Part, kinds: readonly ReadingKind[]): boolean =>
  phrasesInside(layout.phrases.kind, part).some(({ are }) => are.some((kind) => kinds.includes(kind)));

/** Is it said before a figure that something was changed, found or done? */
function isChanged(layout: Layout, { from }: Pick<Part, "from">, at: number): boolean {
  const { measuring, workDone, renewed } = layout.known.vocabulary;
  return !tokensOf({ from, to: at - 1 }).every((each) => {
    const word = wordAt(layout.tokens, each);
    return ![measuring.change.changed, measuring.found, renewed].some((list) => among(list, word)) && under(workDone, word) === undefined;
  });
}
const WEARS: readonly ReadingKind[] = ["tread", "pad thickness", "shoe thickness", "disc thickness"];

/** "28 -> 34". */
const isDash = (token: Layout["tokens"][number] | undefined): boolean => token?.is === "break" && token.mark === "-";

/** "Less than 1 mm", "< 20 psi": a figure that what was read is only said to be less or more than; null of one that was read. "28 > 33" is a change. */
export function boundOf(layout: Layout, { at, part }: Pick<Measurable, "at" | "part">): "less than" | "more than" | null {
  const { tokens, known } = layout;
  const { under, over } = known.vocabulary.measuring.bounds;
  const marks = [at - 1, at - 2].map((n) => (tokens[n]?.is === "break" ? tokens[n].mark : null));
  const mark = marks[0] === "=" ? marks[1] : marks[0];
  const first = marks[0] === "=" ? at - 3 : at - 2;
  const last = wordAt(tokens, at - 1);
  const isIn = (list: readonly string[]): boolean =>
    (mark != null && among(list, mark) && tokens[first]?.is !== "number" && !isDash(tokens[first])) ||
    (last !== null &&
      (endingIn(list).get(last) ?? []).some((phrase) => {
        const from = at - phrase.split(" ").length;
        return from >= part.from && beginsAt(tokens, from, phrase);
      }));
  return isIn(under) ? "less than" : isIn(over) ? "more than" : null;
}

const endings = new WeakMap<readonly string[], ReadonlyMap<string, readonly string[]>>();

/** Phrases by their last word, made once a list: most figures have none of them before them. */
function endingIn(list: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const ready = endings.get(list);
  if (ready !== undefined) return ready;
  const made = new Map<string, string[]>();
  for (const phrase of list) {
    const last = phrase.split(" ").at(-1) ?? "";
    made.set(last, [...(made.get(last) ?? []), phrase]);
  }
  endings.set(list, made);
  return made;
}

/** -1 for "-35" and "minus 35". */
function signOf(layout: Layout, at: number): number {
  const token = layout.tokens[at];
  const before = layout.tokens[at - 1];
  if (token === undefined) return 1;
  const dash = before?.is === "break" && before.mark === "-" && before.end === token.start && /[\s(:]/u.test(layout.text[before.start - 1] ?? " ");
  const said = phrasesInside(layout.phrases.sign, { from: at - 1, to: at - 1 }).some(({ are }) => are.includes("minus"));
  return dash || said ? -1 : 1;
}
