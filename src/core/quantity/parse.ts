// Quantities as people write them: "14,820 mi", "2,1 bar", "60-80 in-lb", "10 ± 1 Nm", "1 1/2 in", "5 ft 3 in", "23.9k km".
// What was typed is kept; what cannot be settled is named, never guessed. Time is linear in the length of the text.

import { type NumberStyle, type ParsedNumber, parseNumber, plain } from "./number.ts";
import { spanAt } from "./span.ts";
import { dimensionOf, fromCanonical, toCanonical, UNIT_IDS, type UnitId } from "./units.ts";

/** The names that people type for each unit, in one language. */
export type UnitNames = Readonly<Record<UnitId, readonly string[]>>;

export type ParsedAmount =
  | {
      readonly is: "amount";
      readonly typed: string;
      /** The part of it that is figure and unit. */
      readonly said: string;
      readonly from: number;
      /** Equal to `from` for a single value. */
      readonly to: number;
      /** A single value given with a tolerance: the value itself, wherever in the window it lies. */
      readonly nominal: number | null;
      readonly unit: UnitId | null;
      readonly decimals: number;
      /** What the last digit typed is worth, in `unit`. */
      readonly step: number;
      /** Two units stand for one quantity: "5 ft 3 in". */
      readonly compound: boolean;
      readonly fraction: number | null;
      readonly other: number | null;
      /** Text behind the amount that belongs to neither number nor unit. */
      readonly rest: string;
    }
  | { readonly is: "refused"; readonly why: "not a quantity" | "out of range" }
  | { readonly is: "ambiguous"; readonly why: "unit"; readonly candidates: readonly UnitId[] }
  | { readonly is: "refused"; readonly why: "unknown unit"; readonly word: string };

const LONGEST = 200;

type Index = {
  readonly byName: ReadonlyMap<string, readonly UnitId[]>;
  readonly longest: number /** The longest name that begins with each letter. */;
  readonly firsts: ReadonlyMap<string, number>;
};
const indexes = new WeakMap<UnitNames, Index>();

/** Names folded for comparing: case, dots, middle dots and doubled spaces do not matter. */
export const foldUnit = (name: string): string =>
  (/[·⋅*]|\s\s|[^\S ]/u.test(name) ? name.toLowerCase().replace(/[·⋅*]/gu, ".").replace(/\s+/gu, " ") : name.toLowerCase()).trim();

/** Letters and digits make words; asked for every place a unit's name could end, so the plain ones are told without a pattern. */
function isOfWord(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code < 128) return (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || (code >= 48 && code <= 57);
  return /[\p{L}\p{N}]/u.test(text[at] ?? "");
}

function indexOf(names: UnitNames): Index {
  const known = indexes.get(names);
  if (known !== undefined) return known;
  const byName = new Map<string, UnitId[]>();
  for (const unit of UNIT_IDS) {
    for (const name of new Set([unit, ...names[unit]].map(foldUnit))) {
      const list = byName.get(name);
      if (list === undefined) byName.set(name, [unit]);
      else list.push(unit);
    }
  }
  const all = [...byName.keys()];
  const firsts = new Map<string, number>();
  for (const name of all) firsts.set(name[0] ?? "", Math.max(firsts.get(name[0] ?? "") ?? 0, name.length));
  const made = { byName, longest: Math.max(...all.map((name) => name.length)), firsts };
  indexes.set(names, made);
  return made;
}

const isSpace = (text: string, at: number): boolean => text.charCodeAt(at) <= 32 || /\s/u.test(text[at] ?? "");

/** The longest unit name at `start`, with the units it can mean; a name must end where its word ends. */
export function parseUnit(text: string, start: number, names: UnitNames): { readonly units: readonly UnitId[]; readonly end: number } | null {
  const index = indexOf(names);
  const limit = Math.min(text.length, start + index.longest + 2);
  const ahead = text.slice(start, limit);
  // Where nothing but plain letters and marks follow, they are folded once for every length, and most begin no unit at all.
  const folded = PLAIN.test(ahead) && !ahead.includes("  ") ? ahead.toLowerCase() : null;
  const longest = folded === null || folded[0] === " " ? null : (index.firsts.get(folded[0] ?? "") ?? 0);
  for (let end = longest === null ? limit : Math.min(limit, start + longest); end > start; end--) {
    if (isSpace(text, end - 1) || (end < text.length && isOfWord(text, end - 1) && isOfWord(text, end))) continue;
    const units = index.byName.get(folded === null || folded[0] === " " ? foldUnit(text.slice(start, end)) : folded.slice(0, end - start));
    if (units !== undefined) return { units, end };
  }
  return null;
}
/** All of ASCII that is printed, but for the star that multiplies. */
const PLAIN = /^[ -)+-~]*$/u;

/** Every unit a word can mean; empty when it means none. */
export const unitsNamed = (word: string, names: UnitNames): readonly UnitId[] => indexOf(names).byName.get(foldUnit(word)) ?? [];

/** Reads one quantity at the beginning of a text, leading chatter such as "about" left to the caller. */
export function parseAmount(text: string, names: UnitNames, style: NumberStyle): ParsedAmount {
  if (text.length > LONGEST) return { is: "refused", why: "not a quantity" };
  const all = plain(text).trim();
  const first = parseNumber(all, 0, style);
  if (first === null) return { is: "refused", why: "not a quantity" };
  if (!Number.isFinite(first.value) || Math.abs(first.value) > 1e12) return { is: "refused", why: "out of range" };
  const behind = unitAfter(all, first.end, names);
  // With nothing behind its unit it is one figure.
  const single = behind !== null && behind.end === all.length;
  const joined = single ? null : compound(all, first, behind, names, style);
  if (joined !== null) return joined;
  const span = single ? null : spanAt(all, first, behind?.end ?? null, style);
  const { from, to, nominal, last, end: beforeUnit } = span ?? { from: first.value, to: first.value, nominal: null, last: first, end: first.end };
  const unit = span === null ? behind : unitOf(all, behind, beforeUnit, names);
  const end = Math.max(beforeUnit, unit?.end ?? 0);
  const word = unit === null ? /^\s*([\p{L}°/µ]+)/u.exec(all.slice(beforeUnit))?.[1] : wholeWord(all, beforeUnit, unit.end);
  if (word != null) return { is: "refused", why: "unknown unit", word };
  if (unit !== null && unit.units.length > 1) return { is: "ambiguous", why: "unit", candidates: unit.units };
  return {
    is: "amount",
    typed: text.trim(),
    said: all.slice(0, end),
    from,
    to,
    nominal,
    unit: unit?.units[0] ?? null,
    decimals: Math.max(first.decimals, last.decimals),
    step: stepOf(Math.min(first.step, last.step), last.fraction ?? first.fraction, unit?.units[0] ?? null),
    compound: false,
    fraction: last.fraction ?? first.fraction,
    other: first.other,
    rest: all.slice(end).trim(),
  };
}

type UnitAt = ReturnType<typeof parseUnit>;

function unitAfter(text: string, at: number, names: UnitNames): UnitAt {
  let start = at;
  while (text[start] === " ") start++;
  if (text[start] === "-" && /\p{L}/u.test(text[start + 1] ?? "")) start++;
  return parseUnit(text, start, names);
}

/** "9 N/mm", "5 L per min", "5 N·mm": a unit with more of its word behind it is another unit, and none that is known. Gives the word whole, else null. */
function wholeWord(text: string, start: number, end: number): string | null {
  if (end >= text.length) return null;
  // "33 psi/36 psi" are two figures, and "10 mm-ish" is ten of them.
  const more = /^(?:[/·⋅*.]\p{L}|\^)[^\s?!,;]*|^ per +[^\s?!,;]+/u.exec(text.slice(end));
  return more === null ? null : `${text.slice(start, end).trimStart()}${more[0]}`;
}

/** A fraction of an inch is a made size, known far finer than its denominator; a fraction of anything else is as fine as it says. */
const stepOf = (step: number, fraction: number | null, unit: UnitId | null): number =>
  fraction === null || unit === null || dimensionOf(unit) === "length" ? step : 1 / fraction;

/** The unit behind a span, or the one behind its first figure: "10 Nm ± 1 in in-lb" is of newton metres. */
function unitOf(text: string, inside: UnitAt, end: number, names: UnitNames): UnitAt {
  const behind = unitAfter(text, end, names);
  const alike = inside === null || behind === null || behind.units.some((unit) => inside.units.some((other) => dimensionOf(unit) === dimensionOf(other)));
  return alike ? (behind ?? inside) : inside;
}

/** "5 ft 3 in", "6 lb 2 oz": two units of one dimension, the second the smaller; given in the first. */
function compound(text: string, first: ParsedNumber, unit: UnitAt, names: UnitNames, style: NumberStyle): ParsedAmount | null {
  const [big] = unit?.units ?? [];
  if (unit === null || big === undefined || unit.units.length > 1) return null;
  const gap = /^ *(?=[\d½¼¾⅛⅜⅝⅞])/u.exec(text.slice(unit.end, unit.end + 4));
  if (gap === null) return null;
  const second = parseNumber(text, unit.end + gap[0].length, style);
  const named = second === null ? null : unitAfter(text, second.end, names);
  // 5'3 is feet and inches without the second mark.
  const marked = text[unit.end - 1] === "'" || text[unit.end - 1] === "′";
  const small = second !== null && named === null && marked ? { units: ["in"] as const, end: second.end } : named;
  const [least] = small?.units ?? [];
  if (second === null || small === null || least === undefined || dimensionOf(least) !== dimensionOf(big) || dimensionOf(big) === "temperature") return null;
  const added = fromCanonical(toCanonical(second.value, least), big);
  if (added >= 1 || first.decimals > 0) return null;
  const value = first.value + added;
  return {
    is: "amount",
    typed: text,
    said: text.slice(0, small.end),
    from: value,
    to: value,
    nominal: null,
    unit: big,
    decimals: 0,
    step: fromCanonical(toCanonical(second.step, least), big),
    compound: true,
    fraction: second.fraction,
    other: null,
    rest: text.slice(small.end).trim(),
  };
}
