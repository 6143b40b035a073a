// "60-80 in-lb in Nm?", "what's 7/16 in metric", "2.5 bar psi": a question about units, and its answer as data.

import type { AskingWords } from "./asking.ts";
import type { NumberStyle } from "./number.ts";
import { foldUnit, type ParsedAmount, parseAmount, parseUnit, type UnitNames } from "./parse.ts";
import { honestDecimals, roundTo, windowInward } from "./print.ts";
import { stripped, tidied, type Words, wordsOf } from "./question-words.ts";
import { convert, type Dimension, dimensionOf, symbolOf, UNITS, type UnitId } from "./units.ts";
import { ALSO, INCH, METRIC, USUAL } from "./usual-units.ts";

/** One converted answer. `exact` is as exact as a double; `from` and `to` are what the figure typed supports; a window is rounded inward. */
export type Answer = {
  readonly unit: UnitId;
  readonly from: number;
  readonly to: number;
  readonly middle: number | null;
  readonly exact: readonly [number, number];
  readonly decimals: number;
};

export type Conversion =
  | {
      readonly is: "converted";
      readonly typed: string;
      /** Figure and unit as typed, where they are more than one decimal figure: "5 ft 3 in", "7/16". */
      readonly said: string | null;
      readonly from: number;
      readonly to: number;
      readonly middle: number | null;
      readonly decimals: number;
      readonly fraction: number | null;
      readonly unit: UnitId;
      readonly answers: readonly Answer[];
      /** The unit that was taken for a bare fraction or a bare "lb". */
      readonly taken: UnitId | null;
      /** A unit to turn it into was named: certainly a question. */
      readonly named: boolean;
      /** Every digit was asked for. */
      readonly exactly: boolean;
    }
  | {
      readonly is: "refused";
      readonly why:
        | "not a quantity"
        | "unknown unit"
        | "unit missing"
        | "other dimension"
        | "out of range"
        | "below absolute zero"
        | "below zero"
        | "ambiguous number";
      /** What it could be, where it could be several things. */
      readonly candidates: readonly string[];
      /** The word that was not understood, or names what it cannot become. */
      readonly word: string | null;
      /** Figure and unit as typed, where they were found. */
      readonly said: string | null;
      readonly named: boolean;
    };

type Refused = Extract<Conversion, { is: "refused" }>;
type Amount = Extract<ParsedAmount, { is: "amount" }>;
/** The words people type in one language: names of units, and what stands around them. */
export type Typed = { readonly units: UnitNames; readonly asking: AskingWords };

/** Of these there is none below zero. */
const NEVER_NEGATIVE: readonly Dimension[] = ["torque", "volume", "mass", "power", "consumption", "engine hours", "distance", "speed"];

/**
 * Answers a question about units.
 * @param text the figure with its unit; a unit to turn it into may follow or go before ("in Nm", "to psi", "how many bar is")
 * @param to the unit wanted, as typed; null when the text says it or nobody does
 */
export function askConvert(text: string, to: string | null, typed: Typed, style: NumberStyle): Conversion {
  const words = wordsOf(typed.asking);
  const { asked, exactly, hint } = tidied(text, words);
  const start = asked.search(FIGURE);
  if (start < 0) return refused("not a quantity");
  const { amount, said: found, rest } = amountAt(asked.slice(start), typed, style, words);
  const wanted = to === null ? wantedIn(rest, asked.slice(0, start), typed, words) : wantedTyped(tidied(to, words).asked, typed, words);
  const named = wanted.is === "system" || (wanted.is === "units" && wanted.sure);
  const no = (refusal: Refused): Refused => ({ ...refusal, named: named || (wanted.is === "unknown" && wanted.asked), said: found });
  if (amount.is === "ambiguous") return no(refused("unknown unit", amount.candidates.map(String)));
  if (amount.is === "refused") return no(refused(amount.why, [], amount.why === "unknown unit" ? amount.word : null));
  if (amount.other !== null) return no(refused("ambiguous number", [String(amount.from), String(amount.other)]));
  if (wanted.is === "unknown") return no(refused("unknown unit", [], wanted.word));
  const settled = settle(amount, wanted, hint);
  if (settled.is === "refused") return no(settled);
  if (amount.from < 0 && NEVER_NEGATIVE.includes(dimensionOf(settled.unit))) return no(refused("below zero"));
  const answers = answersIn(amount, settled.unit, settled.targets);
  if ("why" in answers) return no(answers);
  const { from, to: end, middle, decimals, fraction, compound, said } = amount;
  const asTyped = { typed: amount.typed, said: compound || fraction !== null ? said : null, from, to: end, middle, decimals, fraction };
  return { is: "converted", ...asTyped, unit: settled.unit, answers, taken: settled.taken, named, exactly };
}

const refused = (why: Refused["why"], candidates: readonly string[] = [], word: string | null = null): Refused => ({
  is: "refused",
  why,
  candidates,
  word,
  said: null,
  named: false,
});

/** A figure that is no part of a word before it ("M8", "5w40"). */
const FIGURE = /(?<![\p{L}\p{N}_.,/])[-+]?[.,]?[\d½¼¾⅛⅜⅝⅞⅓⅔]/u;

type Found = { readonly amount: ParsedAmount; readonly said: string; readonly rest: string };

/** The amount at the beginning, and what stands behind it. */
function amountAt(text: string, { units }: Typed, style: NumberStyle, words: Words): Found {
  const amount = parseAmount(text, units, style);
  if (amount.is === "amount") {
    // "24 lb in Nm": the "in" asks for a unit; it does not make the pounds inch-pounds.
    const asks = /^(.*\S)\s+(\p{L}+)$/u.exec(amount.said);
    const [, shorter = "", word = ""] = asks ?? [];
    if (words.into.words.has(word.toLowerCase()) && parseUnit(amount.rest, 0, units) !== null) {
      const without = parseAmount(shorter, units, style);
      if (without.is === "amount" && without.unit !== null && without.rest === "") return { amount: without, said: shorter, rest: `${word} ${amount.rest}` };
    }
    return { amount, said: amount.said, rest: amount.rest };
  }
  if (amount.is === "refused" && amount.why === "unknown unit" && words.into.words.has(amount.word.toLowerCase())) {
    // "7/16 to mm": the word behind the figure is no unit, it asks for one.
    const at = text.indexOf(amount.word);
    return { amount: parseAmount(text.slice(0, at), units, style), said: text.slice(0, at).trim(), rest: text.slice(at) };
  }
  const at = amount.is === "ambiguous" ? unitEnd(text, units) : text.length;
  return { amount, said: text.slice(0, at).trim(), rest: text.slice(at) };
}

/** Where the first unit of a text ends. */
function unitEnd(text: string, units: UnitNames): number {
  for (const found of text.matchAll(/(?<=\d\s*)\p{L}/gu)) {
    const unit = parseUnit(text, found.index, units);
    if (unit !== null) return unit.end;
  }
  return text.length;
}

type Wanted =
  | { readonly is: "nothing" }
  | { readonly is: "system"; readonly system: "metric" | "imperial" }
  /** `sure`: nothing but the asking stands between amount and unit. */
  | { readonly is: "units"; readonly units: readonly UnitId[]; readonly word: string; readonly sure: boolean }
  /** `asked`: a word such as "in" asked for it. */
  | { readonly is: "unknown"; readonly word: string; readonly asked: boolean };

/** The unit wanted: behind the amount ("in Nm"), else before it ("how many Nm is"). */
function wantedIn(rest: string, before: string, typed: Typed, words: Words): Wanted {
  if (rest.trim() !== "") {
    const behind = wantedTyped(rest, typed, words);
    if (behind.is !== "unknown") return behind;
    // "24 lbs of torque": what is left asks for nothing.
    if (stripped(rest, words.equals) === "") return { is: "nothing" };
    // "3 m of hose in feet".
    const last = words.lastInto.exec(rest)?.[1];
    const wanted = last === undefined ? behind : wantedTyped(last, typed, words);
    return wanted.is === "units" ? { ...wanted, sure: false } : behind;
  }
  const left = stripped(before, words.opening);
  for (const from of [left, stripped(left, words.into)]) {
    const found = parseUnit(from, 0, typed.units);
    if (found !== null && stripped(from.slice(found.end), words.equals) === "")
      return { is: "units", units: found.units, word: from.slice(0, found.end), sure: true };
  }
  return { is: "nothing" };
}

function wantedTyped(text: string, typed: Typed, words: Words): Wanted {
  const left = stripped(text, words.asks, text);
  const word = foldUnit(left);
  if (words.metric.has(word)) return { is: "system", system: "metric" };
  const units: UnitId[] = [];
  for (let at = left; at !== ""; ) {
    const found = parseUnit(at, 0, typed.units);
    if (found === null) return words.imperial.has(word) ? { is: "system", system: "imperial" } : { is: "unknown", word: left, asked: isAsked(text, left) };
    units.push(...found.units);
    at = stripped(at.slice(found.end), words.joins).trim();
  }
  return { is: "units", units, word: left, sure: true };
}

/** One word behind an "in" or a "to" was meant as a unit. */
const isAsked = (text: string, word: string): boolean => text.trim() !== word && /^[\p{L}\d/²³·-]+$/u.test(word);

type Settled = { readonly is: "settled"; readonly unit: UnitId; readonly taken: UnitId | null; readonly targets: readonly UnitId[] };

/** Which unit was typed and which are wanted, once each is held against the other. */
function settle(amount: Amount, wanted: Wanted, hint: Dimension | null): Settled | Refused {
  // A bare fraction is a spanner or a drill: inches.
  const typed = amount.unit ?? (amount.fraction === null ? null : "in");
  if (typed === null) return refused("unit missing");
  const bare = amount.unit === null ? typed : null;
  const dimension = wanted.is === "units" ? (wanted.units.find((unit) => dimensionOf(unit) === dimensionOf(typed)) ?? wanted.units[0]) : undefined;
  const asked = hint !== null && ALSO[typed]?.[hint] !== undefined ? hint : dimension === undefined ? null : dimensionOf(dimension);
  const also = asked === null || asked === dimensionOf(typed) ? undefined : ALSO[typed]?.[asked];
  if (also !== undefined && also.length > 1) return refused("unknown unit", also.map(String));
  const unit = also?.[0] ?? typed;
  const taken = also === undefined ? bare : asked === "temperature difference" ? null : unit;
  if (wanted.is !== "units") return { is: "settled", unit, taken, targets: wanted.is === "system" ? inSystem(unit, wanted.system) : usual(unit) };
  const targets = wanted.units.flatMap((each) => (dimensionOf(each) === dimensionOf(unit) ? [each] : (ALSO[each]?.[dimensionOf(unit)] ?? [])));
  if (targets.length > 0) return { is: "settled", unit, taken, targets: [...new Set(targets)] };
  // "24 in Nm": the word before the unit wanted was no inch.
  return amount.unit === "in" && /\bin$/u.test(amount.said) ? refused("unit missing") : refused("other dimension", [], wanted.word);
}

const inSystem = (unit: UnitId, system: "metric" | "imperial"): readonly UnitId[] => {
  const named = (system === "metric" ? METRIC : INCH)[dimensionOf(unit)];
  return named ?? usual(unit);
};

/** What a unit is usually turned into; into itself only where there is nothing else. */
function usual(unit: UnitId): readonly UnitId[] {
  const all = USUAL[UNITS[unit].dimension].find(([from]) => from.includes(unit))?.[1] ?? [unit];
  const others = all.filter((each) => each !== unit);
  return others.length > 0 ? others : all;
}

function answersIn(amount: Amount, unit: UnitId, targets: readonly UnitId[]): readonly Answer[] | Refused {
  const answers: Answer[] = [];
  for (const target of targets) {
    const [a, b, middle] = [convert(amount.from, unit, target), convert(amount.to, unit, target), convert(amount.middle ?? amount.from, unit, target)];
    if (a.is === "refused") return refused(a.why);
    if (b.is === "refused") return refused(b.why);
    const [low, high] = [Math.min(a.value, b.value), Math.max(a.value, b.value)];
    const between = amount.middle === null || middle.is === "refused" ? null : middle.value;
    answers.push(answerOf(low, high, between, stepIn(amount, unit, target), target));
  }
  return answers;
}

function answerOf(from: number, to: number, middle: number | null, step: number, unit: UnitId): Answer {
  // A made size that comes out whole is printed so: 3/32 in is 6/64, not 6.00/64.
  const whole = step > 0 && from === to && Math.abs(from - Math.round(from)) < 1e-9 && symbolOf(unit).startsWith("/");
  const decimals = whole ? 0 : honestDecimals(step, unit);
  if (from === to) return { unit, from: roundTo(from, decimals), to: roundTo(to, decimals), middle: null, exact: [from, to], decimals };
  const window = windowInward(from, to, decimals);
  return {
    unit,
    from: window.from,
    to: window.to,
    middle: middle === null ? null : roundTo(middle, window.decimals),
    exact: [from, to],
    decimals: window.decimals,
  };
}

/** What one step of the last digit typed is worth in the unit asked for. */
function stepIn(amount: Amount, unit: UnitId, target: UnitId): number {
  const [at, beside] = [convert(amount.to, unit, target), convert(amount.to + amount.step, unit, target)];
  return at.is === "converted" && beside.is === "converted" ? Math.abs(beside.value - at.value) : amount.step;
}
