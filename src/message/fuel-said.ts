// A fill of fuel: how much, to the mark or not, what it cost, how far since the last one.

import { dimensionOf, type UnitId } from "../core/quantity/units.ts";
import type { ReadingDetail } from "../core/reading/detail.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { asDial } from "./dial-said.ts";
import { bikeAt, dayAt, type Layout, phrasesInside, type SaidAt } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import type { NumberToken } from "./scan.ts";
import { figuresOf } from "./work-when.ts";

/** Fuel is read where a volume stands with a word for it; other volumes are oil or coolant. */
export function fuelSaid(
  layout: Layout,
  clause: Clause,
  used: ReadonlySet<number>,
): { readonly readings: readonly SaidAt[]; readonly taken: ReadonlySet<number> } {
  if (layout.phrases.fill.length === 0 && layout.phrases.kind.length === 0 && !layout.tokens.some((_token, at) => isTaken(layout, at)))
    return { readings: [], taken: new Set() };
  const whole: Part = { from: clause.from, to: clause.to };
  const nothing = { readings: [], taken: new Set<number>() };
  const named = phrasesInside(layout.phrases.kind, whole).some(({ are }) => are.includes("fuel"));
  const fill = phrasesInside(layout.phrases.fill, whole).flatMap(({ are }) => are);
  const took = tokensOf(whole).some((each) => isTaken(layout, each)) && phrasesInside(layout.phrases.kind, whole).every(({ are }) => are.includes("odometer"));
  if (!named && fill.length === 0 && !took) return nothing;
  const numbers = clause.parts.flatMap((part) => tokensOf(part)).filter((at) => layout.tokens[at]?.is === "number" && !used.has(at) && !layout.taken.has(at));
  const volumes = numbers.filter((at) => isVolume(tokenAt(layout, at)));
  const [at] = volumes;
  const part = clause.parts.find((each) => at !== undefined && at >= each.from && at <= each.to);
  // Two volumes are two fills, or one of something else: which, cannot be told.
  if (at === undefined || part === undefined || volumes.length > 1) return nothing;
  const token = tokenAt(layout, at);
  const units = token.units.filter((unit) => dimensionOf(unit) === "volume");
  const meant = bikeAt(layout, { from: at, to: at });
  const day = dayAt(layout, part, clause.parts);
  const price = priceAmong(layout, numbers);
  const ofTrip = (each: number): boolean =>
    tokenAt(layout, each).units.length === 0 &&
    tokenAt(layout, each).value < 1000 &&
    layout.known.vocabulary.measuring.trip.some((phrase) => phrase.split(" ")[0] === wordAt(layout.tokens, each - 1));
  const trip = numbers.find((each) => isStretch(tokenAt(layout, each)) || ofTrip(each));
  const tripUnit = trip === undefined ? null : ((tokenAt(layout, trip).units[0] as "mi" | "km" | undefined) ?? meant.bike?.unit ?? null);
  const full = fill.includes("not full") ? false : fill.includes("full") ? true : null;
  const detail: ReadingDetail = {
    ...(full === null ? {} : { full }),
    ...(price === null ? {} : { price: price.price }),
    ...(trip === undefined ? {} : { trip: { value: tokenAt(layout, trip).value, unit: tripUnit, typed: tokenAt(layout, trip).text } }),
  };
  const [unit, ...others] = units;
  const gaps: Gap[] = [
    ...(meant.gap === null ? [] : [meant.gap]),
    ...(others.length === 0 ? [] : [{ need: "unit" as const, options: units }]),
    ...(day.gap === null ? [] : [day.gap]),
  ];
  const reading: LogReading = {
    do: "log reading",
    bike: meant.bike?.id ?? null,
    kind: "fuel",
    place: null,
    value: token.value,
    unit: others.length === 0 ? (unit ?? null) : null,
    typed: { text: token.text, unit: token.unitText },
    on: day.on,
    ...(Object.keys(detail).length === 0 ? {} : { detail }),
    gaps,
  };
  const taken = new Set([at, ...(price === null ? [] : [price.at]), ...(trip === undefined ? [] : [trip])]);
  // "Tank full, 10 L at 15,000": behind the at-word stands the dial.
  const dials = figuresOf(layout, clause.parts, meant.bike).flatMap(({ figure, part: its }): readonly SaidAt[] => {
    const dial = taken.has(figure.at) || used.has(figure.at) ? null : asDial(layout, its, figure, used, true);
    return dial === null ? [] : [{ at: figure.at, reading: dial }];
  });
  for (const dial of dials) taken.add(dial.at);
  return { readings: [{ at, reading }, ...dials], taken };
}

const tokenAt = (layout: Layout, at: number): NumberToken => layout.tokens[at] as NumberToken;
const VOLUMES: readonly UnitId[] = ["L", "US gal", "imp gal"];
const isVolume = ({ units, fraction }: NumberToken): boolean => fraction === null && units.some((unit) => VOLUMES.includes(unit));
/** A distance that no dial of use shows: since the last fill. */
const isStretch = ({ units, value }: NumberToken): boolean => (units[0] === "mi" || units[0] === "km") && value < 1000;

/** The figure with a currency beside it; else the only bare one with two decimals. */
function priceAmong(layout: Layout, numbers: readonly number[]): { readonly at: number; readonly price: NonNullable<ReadingDetail["price"]> } | null {
  const { currencies } = layout.known.vocabulary.measuring;
  const markAt = (at: number): string | null => {
    const token = layout.tokens[at];
    const mark = token?.is === "break" ? token.mark : (wordAt(layout.tokens, at) ?? "");
    return among(currencies, mark) ? mark : null;
  };
  // "14,600mi £19.80": a sign belongs to the figure that it touches.
  const bareOf = (at: number): boolean => tokenAt(layout, at).units.length === 0;
  const touches = (at: number): boolean => layout.tokens[at + 1]?.end === layout.tokens[at + 2]?.start && layout.tokens[at + 2]?.is === "number";
  const marked = numbers.find((at) => bareOf(at) && markAt(at - 1) !== null) ?? numbers.find((at) => bareOf(at) && markAt(at + 1) !== null && !touches(at));
  const bare = numbers.filter((at) => tokenAt(layout, at).units.length === 0 && tokenAt(layout, at).decimals === 2 && !isPerUnit(layout, at));
  const at = marked ?? (bare.length === 1 ? bare[0] : undefined);
  if (at === undefined || isPerUnit(layout, at)) return null;
  const token = tokenAt(layout, at);
  return { at, price: { minor: Math.round(token.value * 100), currency: markAt(at - 1) ?? markAt(at + 1), typed: token.text } };
}

/** "Took 13.4 litres": with no fluid named, it is what the tank took. */
const isTaken = ({ tokens, known }: Layout, at: number): boolean => {
  const next = tokens[at + 1];
  return next?.is === "number" && isVolume(next) && among(known.vocabulary.measuring.took, wordAt(tokens, at));
};

/** "1.62 a litre": what each of them cost, and no price of the fill. */
function isPerUnit({ text, tokens, known }: Layout, at: number): boolean {
  const behind = text.slice(tokens[at]?.end, (tokens[at]?.end ?? 0) + 24).toLowerCase();
  return known.vocabulary.measuring.perUnit.some((phrase) => behind.trimStart().startsWith(phrase));
}
