// "36 psi, garage 20 °C, road 2 °C": how warm it was where a tyre was read, and how warm it is where the ride starts, told apart by the words beside.

import { dimensionOf, toCanonical, type UnitId } from "../core/quantity/units.ts";
import type { AirSaid } from "../core/reading/detail.ts";
import type { Vocabulary } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import type { Part } from "./clauses.ts";
import { beginsAt, type Phrases } from "./phrases.ts";
import type { NumberToken, Token } from "./scan.ts";

/** `unsure`: several temperatures, and no words that say which is which, or bare ones that may be in either unit. `spans`: tokens that say nothing else. */
export type Airs =
  | { readonly is: "said"; readonly air: AirSaid; readonly spans: readonly Part[] }
  | { readonly is: "unsure"; readonly because: "two temperatures" | "which degrees"; readonly spans: readonly Part[] };

type Side = "garage" | "road";
type Warmth = { readonly at: number; readonly value: number; readonly unit: UnitId; side: Side | null };

/** Null where a message says nothing of a garage, or nothing of a pressure: one temperature alone is the air's. */
export function airsIn(tokens: readonly Token[], phrases: Phrases, { measuring }: Vocabulary, ofTyre: ReadonlySet<number>, byKilometres: boolean): Airs | null {
  const { garage, road, wants, sets } = measuring.airs;
  const isGarage = (token: Token): boolean => token.is === "word" && among(garage, token.folded);
  if (!tokens.some((token, at) => (isWarmth(token) && !ofTyre.has(at)) || isGarage(token))) return null;
  const sideAt = (at: number): Side | null => {
    const token = tokens[at];
    return token?.is !== "word" ? null : among(garage, token.folded) ? "garage" : among(road, token.folded) ? "road" : null;
  };
  const ends = phrases.place.some(({ are }) => are.some((place) => place === "front" || place === "rear"));
  const spoken =
    ends ||
    tokens.some(
      (token) =>
        (token.is === "number" && token.units.some((unit) => dimensionOf(unit) === "pressure")) ||
        (token.is === "word" && (among(wants, token.folded) || among(sets, token.folded))),
    );
  if (!spoken) return null;
  const coolant = phrases.kind.filter(({ are }) => are.some((kind) => kind === "coolant strength"));
  const isPlace = (at: number): boolean => phrases.place.some((place) => place.at === at);
  const bare = bareIn(tokens, measuring.airs, sideAt, isPlace);
  const bareUnit = bare.length === 0 ? null : degreesOf(tokens, bare, byKilometres);
  const warmths: Warmth[] = [];
  const spans: Part[] = [];
  // A place said in a segment of its own, "set in the garage, 20 C".
  let carried: Side | null = null;
  for (const segment of segmentsOf(tokens)) {
    const ats = tokensIn(segment);
    const sides = ats.flatMap((at) => sideAt(at) ?? []);
    const own = coolant.some(({ at }) => at >= segment.from && at <= segment.to)
      ? []
      : ats.flatMap((at): Warmth[] => {
          const token = tokens[at];
          const unit = token === undefined || ofTyre.has(at) ? null : bare.includes(at) ? (bareUnit ?? "°C") : isWarmth(token);
          return token?.is === "number" && unit !== null ? [{ at, value: signed(tokens, at, token), unit, side: null }] : [];
        });
    const one = new Set(sides).size === 1 ? (sides[0] ?? null) : null;
    for (const [n, each] of own.entries())
      each.side = own.length === sides.length ? (sides[n] ?? null) : own.length > 1 ? null : sides.length === 0 ? carried : one;
    carried = own.length === 0 ? (one ?? carried) : null;
    for (const each of own) spans.push(spanOf(tokens, segment, each.at, measuring.airs));
    warmths.push(...own);
  }
  const of = (side: Side): readonly Warmth[] => warmths.filter((each) => each.side === side);
  const [inside, outside] = [of("garage"), of("road")];
  const [first, second] = [inside[0], outside[0]];
  if (bare.length > 0 && bareUnit === null) return { is: "unsure", because: "which degrees", spans };
  // "Front 33 psi at 10 °C, rear 36 psi at 10 °C": the same air, said at each end.
  const isOne = warmths.every(({ value, unit, side }) => value === warmths[0]?.value && unit === warmths[0]?.unit && side === null);
  if (warmths.length > 1 && isOne) return null;
  if (warmths.length === 1) return first === undefined ? null : { is: "said", air: { garage: amount(first), road: null }, spans };
  if (warmths.length === 2 && first !== undefined && second !== undefined) return { is: "said", air: { garage: amount(first), road: amount(second) }, spans };
  return warmths.length === 0 ? null : { is: "unsure", because: "two temperatures", spans };
}

type AirWords = Vocabulary["measuring"]["airs"];

/** "Garage 20, road 2": figures without a unit right behind their places, beside a pressure that is said otherwise. */
function bareIn(tokens: readonly Token[], { beside }: AirWords, sideAt: (at: number) => Side | null, isPlace: (at: number) => boolean): readonly number[] {
  const behind = tokens.flatMap((_token, at): readonly { readonly at: number; readonly side: Side }[] => {
    const side = sideAt(at);
    if (side === null) return [];
    let next = at + 1;
    const isBetween = (token: Token | undefined): boolean =>
      token?.is === "word" ? among(beside, token.folded) : token?.is === "break" && ":=-".includes(token.mark);
    while (next < at + 4 && isBetween(tokens[next])) next++;
    return tokens[next]?.is === "number" ? [{ at: next, side }] : [];
  });
  const isBare = (at: number): boolean => {
    const token = tokens[at];
    return token?.is === "number" && token.units.length === 0 && token.fraction === null && token.code === undefined && token.value <= MOST_BARE;
  };
  // "Rear: garage 36 psi, road 33".
  if (!behind.every(({ at }) => isBare(at) || isWarmth(tokens[at] as Token) !== null)) return [];
  // "In the garage 33 front 36 rear".
  if (!behind.some(({ side }) => side === "garage") || behind.some(({ at }) => isPlace(at + 1))) return [];
  const own = new Set(behind.map(({ at }) => at));
  const others = tokens.some((token, at) => token.is === "number" && !own.has(at) && isWarmth(token) === null);
  return others ? behind.map(({ at }) => at).filter(isBare) : [];
}
/** No air is warmer, in any unit. */
const MOST_BARE = 120;

/** The unit of bare temperatures: the one that is typed with another, else the one in which somebody rides off; null where both may be. @param byKilometres does every dial count them? */
function degreesOf(tokens: readonly Token[], bare: readonly number[], byKilometres: boolean): UnitId | null {
  const typed = new Set(tokens.flatMap((token) => isWarmth(token) ?? []));
  const [only, ...others] = typed;
  if (only !== undefined) return others.length === 0 ? only : null;
  const values = bare.map((at) => (tokens[at]?.is === "number" ? signed(tokens, at, tokens[at]) : 0));
  if (values.some((value) => value > HOT_CELSIUS)) return "°F";
  return byKilometres || values.some((value) => value < COLD_FAHRENHEIT) ? "°C" : null;
}
/** Hotter than any air, in °C, and, in °F, colder than anybody rides off in or a garage is. */
const [HOT_CELSIUS, COLD_FAHRENHEIT] = [50, 25];

/** "At 45 °C tyre temperature": how warm a tyre itself was, where it is warmer than air is; else it is as cold as the air. */
export function tyreWarmthIn(tokens: readonly Token[], { measuring }: Vocabulary): readonly Part[] {
  if (!tokens.some((token) => isWarmth(token))) return [];
  const said = tokens.flatMap((_token, at) =>
    measuring.tyreWarmth.filter((phrase) => beginsAt(tokens, at, phrase)).map((phrase): Part => ({ from: at, to: at + phrase.split(" ").length - 1 })),
  );
  return said.flatMap(({ from, to }): readonly Part[] => {
    // "Tyre temperature was 45 °C".
    const isBeside = (n: number): boolean => {
      const token = tokens[n];
      return token?.is === "word" ? among(measuring.airs.beside, token.folded) : token?.is === "break" && ":=(".includes(token.mark);
    };
    let behind = to + 1;
    while (behind <= to + 2 && isBeside(behind)) behind++;
    const at = [from - 1, behind].find((n) => isWarm(tokens[n]));
    return at === undefined ? [] : [{ from: Math.min(at, from), to: Math.max(at, to) }];
  });
}

function isWarm(token: Token | undefined): boolean {
  const unit = token === undefined ? null : isWarmth(token);
  return token?.is === "number" && unit !== null && toCanonical(token.value, unit) >= WARM;
}
/** °C; common practice: a tyre that stood in the shade is no warmer, one that was ridden is. */
const WARM = 30;

const amount = ({ value, unit }: Warmth) => ({ value, unit });

function isWarmth(token: Token): UnitId | null {
  const [unit] = token.is === "number" ? token.units : [];
  return unit !== undefined && dimensionOf(unit) === "temperature" ? unit : null;
}

/** "-5 °C", "minus" is a word of the season's and seldom typed. */
const signed = (tokens: readonly Token[], at: number, token: NumberToken): number => {
  const before = tokens[at - 1];
  return before?.is === "break" && before.mark === "-" && before.end === token.start ? -token.value : token.value;
};

/** Between commas and ends. */
function segmentsOf(tokens: readonly Token[]): readonly Part[] {
  const parts: Part[] = [];
  let from = 0;
  for (let at = 0; at <= tokens.length; at++) {
    const token = tokens[at];
    if (token !== undefined && !(token.is === "break" && MARKS.includes(token.mark))) continue;
    if (at > from) parts.push({ from, to: at - 1 });
    from = at + 1;
  }
  return parts;
}
const MARKS = [",", ";", ".", ":", "(", ")", "\n", "!", "?"];

const tokensIn = ({ from, to }: Part): readonly number[] => Array.from({ length: to - from + 1 }, (_, n) => from + n);

/** The temperature with the words of its place around it. */
function spanOf(tokens: readonly Token[], { from, to }: Part, at: number, { garage, road, beside }: Vocabulary["measuring"]["airs"]): Part {
  const isBeside = (n: number): boolean => {
    const token = tokens[n];
    if (token?.is === "break") return token.mark === "-" || token.mark === "=";
    return token?.is === "word" && [garage, road, beside].some((list) => among(list, token.folded));
  };
  const span = { from: at, to: at };
  while (span.from > from && isBeside(span.from - 1)) span.from--;
  while (span.to < to && isBeside(span.to + 1)) span.to++;
  return span;
}

/** "Want 36 on the road, garage 20 C, road 2 C": what is wanted, where that is the only figure that a message has of a pressure. */
export function wantedIn(tokens: readonly Token[], airs: Airs | null, taken: ReadonlySet<number>, { measuring }: Vocabulary): NumberToken | null {
  if (airs?.is !== "said" || airs.air.road === null) return null;
  const figures = tokens.flatMap((token, at) => (token.is === "number" && !taken.has(at) ? [{ token, at }] : []));
  const [only] = figures;
  if (only === undefined || figures.length > 1) return null;
  const isPressure = only.token.units.length === 0 || only.token.units.some((unit) => dimensionOf(unit) === "pressure");
  const isWanted = [1, 2, 3].some((n) => {
    const token = tokens[only.at - n];
    return token?.is === "word" && among(measuring.airs.wants, token.folded);
  });
  return isPressure && isWanted ? only.token : null;
}
