// Quantities as people write them: "14,820 mi", "2,1 bar", "60-80 in-lb", "10 ± 1 Nm", "1 1/2 in", "5 ft 3 in", "23.9k km".
// What was typed is kept; what cannot be settled is named, never guessed. Time is linear in the length of the text.

import { dimensionOf, fromCanonical, toCanonical, UNIT_IDS, type UnitId } from "./units.ts";

/** How a member writes numbers. */
export type NumberStyle = { readonly decimal: "." | ","; readonly group: "," | "." | " " | "'" };
/** The names that people type for each unit, in one language. */
export type UnitNames = Readonly<Record<UnitId, readonly string[]>>;

/** A number as typed. `decimals` as typed; for a fraction the denominator says how fine it was. `other` is the second way to read "14.820". */
export type ParsedNumber = {
  readonly value: number;
  readonly decimals: number;
  readonly significant: number;
  readonly fraction: number | null;
  readonly other: number | null;
  readonly end: number;
};

export type ParsedAmount =
  | {
      readonly is: "amount";
      readonly typed: string;
      readonly from: number;
      /** Equal to `from` for a single value. */
      readonly to: number;
      /** A single value given with a tolerance: the middle. */
      readonly middle: number | null;
      readonly unit: UnitId | null;
      readonly decimals: number;
      readonly significant: number;
      readonly fraction: number | null;
      readonly other: number | null;
      /** Text behind the amount that belongs to neither number nor unit. */
      readonly rest: string;
    }
  | { readonly is: "refused"; readonly why: "not a quantity" | "out of range" }
  | { readonly is: "ambiguous"; readonly why: "unit"; readonly candidates: readonly UnitId[] }
  | { readonly is: "refused"; readonly why: "unknown unit"; readonly word: string };

const VULGAR: Readonly<Record<string, readonly [number, number]>> = {
  "½": [1, 2],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
  "⅓": [1, 3],
  "⅔": [2, 3],
};
const SPACES = /[\u00a0\u2007\u2009\u202f\u200a]/gu;
const LONGEST = 200;

/** Thin and no-break spaces as plain ones, minus and multiplication signs as people's keyboards have them. Lengths stay the same. */
export const plain = (text: string): string => text.replace(SPACES, " ").replace(/[−–—]/gu, "-").replace(/’/gu, "'");

/** Reads a number at `start`; null when there is none. Negative numbers carry a "-" directly before the first digit. */
export function parseNumber(text: string, start: number, style: NumberStyle): ParsedNumber | null {
  let at = start;
  const negative = text[at] === "-";
  if (negative || text[at] === "+") at++;
  const vulgar = VULGAR[text[at] ?? ""];
  if (vulgar !== undefined) return number(sign(negative) * (vulgar[0] / vulgar[1]), 0, 2, vulgar[1], null, at + 1);
  const run = digitsAndMarks(text, at);
  if (run === "") return null;
  const end = at + run.length;
  const slash = fractionAt(text, end);
  if (slash !== null && /^\d+$/.test(run))
    return number(sign(negative) * (Number(run) / slash.below), 0, Math.max(2, run.length), slash.below, null, slash.end);
  const whole = readMarks(run, style);
  if (whole === null) return null;
  // "1 1/2" and "1½": a whole number with a fraction behind it.
  const mixed = /^\d+$/.test(run) ? mixedAt(text, end) : null;
  if (mixed !== null) return number(sign(negative) * (whole.value + mixed.value), 0, 3, mixed.below, null, mixed.end);
  const thousand = /^[kK](?![a-zA-Z/])/.test(text.slice(end, end + 2));
  const scale = thousand ? 1000 : 1;
  const decimals = Math.max(0, whole.decimals - (thousand ? 3 : 0));
  const significant = run.replace(/\D/g, "").replace(/^0+/, "").length || 1;
  return number(
    sign(negative) * whole.value * scale,
    decimals,
    significant,
    null,
    whole.other === null ? null : sign(negative) * whole.other * scale,
    end + (thousand ? 1 : 0),
  );
}

const sign = (negative: boolean): number => (negative ? -1 : 1);
const number = (value: number, decimals: number, significant: number, fraction: number | null, other: number | null, end: number): ParsedNumber => ({
  value,
  decimals,
  significant,
  fraction,
  other,
  end,
});

/** Digits with the marks that may stand between them; a space only before exactly three digits. */
function digitsAndMarks(text: string, start: number): string {
  let at = start;
  while (at < text.length) {
    const c = text[at] ?? "";
    if (isDigit(c)) at++;
    else if ((c === "." || c === "," || c === "'") && isDigit(text[at + 1]) && at > start) at++;
    else if ((c === "." || c === ",") && isDigit(text[at + 1]) && at === start) at++;
    else if (
      c === " " &&
      at > start &&
      at - start <= 3 + 4 * 3 &&
      [1, 2, 3].every((n) => isDigit(text[at + n])) &&
      !isDigit(text[at + 4]) &&
      groupedSoFar(text.slice(start, at))
    )
      at++;
    else break;
  }
  return text.slice(start, at);
}

const isDigit = (c: string | undefined): boolean => c !== undefined && c >= "0" && c <= "9";
const groupedSoFar = (run: string): boolean => /^\d{1,3}( \d{3}){0,3}$/.test(run);

/** Which marks group and which one is the decimal point. */
function readMarks(run: string, style: NumberStyle): { value: number; decimals: number; other: number | null } | null {
  const marks = [...new Set(run.replace(/\d/g, ""))];
  const bare = (text: string): number => Number(text.replace(/[ ']/g, ""));
  if (marks.length === 0 || marks.every((mark) => mark === " " || mark === "'")) return { value: bare(run), decimals: 0, other: null };
  const last = Math.max(run.lastIndexOf("."), run.lastIndexOf(","));
  const point = run[last] ?? ".";
  const tail = run.length - last - 1;
  const others = marks.filter((mark) => mark !== point);
  const asDecimal = (): number => Number(`${run.slice(0, last).replace(/[.,' ]/g, "")}.${run.slice(last + 1)}`);
  const asGroups = (): number => Number(run.replace(/[.,' ]/g, ""));
  const grouped = groupsOfThree(run, point);
  // Two kinds of mark: the last is the decimal point.
  if (others.length > 0) return groupsOfThree(run.slice(0, last), others[0] ?? ",") ? { value: asDecimal(), decimals: tail, other: null } : null;
  if (run.split(point).length > 2) return grouped ? { value: asGroups(), decimals: 0, other: null } : null;
  if (!grouped) return { value: asDecimal(), decimals: tail, other: null };
  // One mark before exactly three digits: the member's own way of writing settles it; where it is the other mark, both readings are named.
  if (point === style.group) return { value: asGroups(), decimals: 0, other: null };
  return point === style.decimal && style.group === " "
    ? { value: asDecimal(), decimals: tail, other: null }
    : { value: asGroups(), decimals: 0, other: asDecimal() };
}

function groupsOfThree(run: string, mark: string): boolean {
  const parts = run.split(mark === " " ? " " : mark);
  return parts.length > 1 && /^[1-9]\d{0,2}$/.test(parts[0] ?? "") && parts.slice(1).every((part) => /^\d{3}$/.test(part));
}

function fractionAt(text: string, at: number): { below: number; end: number } | null {
  const found = /^\/(\d{1,4})(?![\d/])/.exec(text.slice(at, at + 6));
  const below = Number(found?.[1] ?? 0);
  return found === null || below === 0 ? null : { below, end: at + found[0].length };
}

function mixedAt(text: string, at: number): { value: number; below: number; end: number } | null {
  const vulgar = VULGAR[text[at] ?? ""] ?? (text[at] === " " ? VULGAR[text[at + 1] ?? ""] : undefined);
  if (vulgar !== undefined) return { value: vulgar[0] / vulgar[1], below: vulgar[1], end: at + (text[at] === " " ? 2 : 1) };
  const found = /^[ -](\d{1,3})\/(\d{1,3})(?![\d/])/.exec(text.slice(at, at + 9));
  if (found === null || Number(found[2]) === 0 || Number(found[1]) >= Number(found[2])) return null;
  return { value: Number(found[1]) / Number(found[2]), below: Number(found[2]), end: at + found[0].length };
}

type Index = { readonly byName: ReadonlyMap<string, readonly UnitId[]>; readonly longest: number };
const indexes = new WeakMap<UnitNames, Index>();

/** Names folded for comparing: case, dots, middle dots and doubled spaces do not matter. */
export const foldUnit = (name: string): string => name.toLowerCase().replace(/[·⋅*]/gu, ".").replace(/\s+/gu, " ").trim();

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
  const made = { byName, longest: Math.max(...[...byName.keys()].map((name) => name.length)) };
  indexes.set(names, made);
  return made;
}

/** The longest unit name at `start`, with the units it can mean; a name must end where its word ends. */
export function parseUnit(text: string, start: number, names: UnitNames): { readonly units: readonly UnitId[]; readonly end: number } | null {
  const index = indexOf(names);
  const limit = Math.min(text.length, start + index.longest + 2);
  for (let end = limit; end > start; end--) {
    if (/[\p{L}\p{N}]/u.test(text[end] ?? "") && /[\p{L}\p{N}]/u.test(text[end - 1] ?? "")) continue;
    if (/\s/u.test(text[end - 1] ?? "")) continue;
    const units = index.byName.get(foldUnit(text.slice(start, end)));
    if (units !== undefined) return { units, end };
  }
  return null;
}

/** Every unit a word can mean; empty when it means none. */
export const unitsNamed = (word: string, names: UnitNames): readonly UnitId[] => indexOf(names).byName.get(foldUnit(word)) ?? [];

/** Reads one quantity at the beginning of a text, leading chatter such as "about" left to the caller. */
export function parseAmount(text: string, names: UnitNames, style: NumberStyle): ParsedAmount {
  if (text.length > LONGEST) return { is: "refused", why: "not a quantity" };
  const all = plain(text).trim();
  const first = parseNumber(all, 0, style);
  if (first === null) return { is: "refused", why: "not a quantity" };
  if (!Number.isFinite(first.value) || Math.abs(first.value) > 1e12) return { is: "refused", why: "out of range" };
  const joined = compound(all, first, names, style);
  if (joined !== null) return joined;
  const span = spanAt(all, first, names, style);
  const [from, to, middle, last, beforeUnit] = span ?? [first.value, first.value, null, first, first.end];
  const unit = unitAfter(all, beforeUnit, names);
  if (unit === null) {
    const word = /^\s*([\p{L}°/µ]+)/u.exec(all.slice(beforeUnit))?.[1];
    if (word !== undefined) return { is: "refused", why: "unknown unit", word };
  }
  if (unit !== null && unit.units.length > 1) return { is: "ambiguous", why: "unit", candidates: unit.units };
  const end = unit?.end ?? beforeUnit;
  return {
    is: "amount",
    typed: text.trim(),
    from,
    to,
    middle,
    unit: unit?.units[0] ?? null,
    decimals: Math.max(first.decimals, last.decimals),
    significant: Math.max(first.significant, last.significant),
    fraction: last.fraction ?? first.fraction,
    other: first.other,
    rest: all.slice(end).trim(),
  };
}

function unitAfter(text: string, at: number, names: UnitNames): ReturnType<typeof parseUnit> {
  let start = at;
  while (text[start] === " ") start++;
  if (text[start] === "-" && /\p{L}/u.test(text[start + 1] ?? "")) start++;
  return parseUnit(text, start, names);
}

/** "60-80", "60 to 80", "10 ± 1", "10 +/- 1"; a unit may stand behind the first figure too if it is the same. */
function spanAt(text: string, first: ParsedNumber, names: UnitNames, style: NumberStyle): [number, number, number | null, ParsedNumber, number] | null {
  const between = unitAfter(text, first.end, names);
  for (const at of between === null ? [first.end] : [first.end, between.end]) {
    const found = /^ *(-|to|bis|\.\.\.?|…|±|\+\/-|\+-) *(?=[\d.,½¼¾])/u.exec(text.slice(at, at + 12));
    if (found === null) continue;
    const second = parseNumber(text, at + found[0].length, style);
    if (second === null) continue;
    const word = found[1] ?? "";
    if (word === "±" || word.startsWith("+")) return [first.value - second.value, first.value + second.value, first.value, second, second.end];
    if (second.value < first.value) continue;
    return [first.value, second.value, null, second, second.end];
  }
  return null;
}

/** "5 ft 3 in", "6 lb 2 oz": two units of one dimension, the second the smaller; given in the first. */
function compound(text: string, first: ParsedNumber, names: UnitNames, style: NumberStyle): ParsedAmount | null {
  const unit = unitAfter(text, first.end, names);
  const [big] = unit?.units ?? [];
  if (unit === null || big === undefined || unit.units.length > 1) return null;
  const gap = /^ *(?=[\d½¼¾⅛⅜⅝⅞])/u.exec(text.slice(unit.end, unit.end + 4));
  if (gap === null) return null;
  const second = parseNumber(text, unit.end + gap[0].length, style);
  const small = second === null ? null : unitAfter(text, second.end, names);
  const [least] = small?.units ?? [];
  if (second === null || small === null || least === undefined || dimensionOf(least) !== dimensionOf(big) || dimensionOf(big) === "temperature") return null;
  const added = fromCanonical(toCanonical(second.value, least), big);
  if (added >= 1 || first.decimals > 0) return null;
  const value = first.value + added;
  return {
    is: "amount",
    typed: text,
    from: value,
    to: value,
    middle: null,
    unit: big,
    decimals: 0,
    significant: first.significant + second.significant,
    fraction: second.fraction,
    other: null,
    rest: text.slice(small.end).trim(),
  };
}
