// "60-80 in-lb in Nm?", "what's 7/16 in metric", "2.5 bar psi": a question about units, and its answer as data.

import { answersIn } from "./answers.ts";
import type { Typed } from "./asking.ts";
import { type Conversion, type Refused, refused } from "./conversion.ts";
import type { NumberStyle } from "./number.ts";
import { type ParsedAmount, parseAmount, parseUnit, type UnitNames } from "./parse.ts";
import { stripped, type Tidied, tidied, type Words, wordsOf } from "./question-words.ts";
import { settle } from "./settle.ts";
import { otherTask, unreadable } from "./unanswerable.ts";
import { type Dimension, dimensionOf } from "./units.ts";
import { type Wanted, wantedIn, wantedTyped } from "./wanted.ts";

/** Of these there is none below zero. */
const NEVER_NEGATIVE: readonly Dimension[] = ["torque", "volume", "mass", "power", "consumption", "engine hours", "distance", "speed"];

/**
 * Answers a question about units.
 * @param text the figure with its unit; a unit to turn it into may follow or go before ("in Nm", "to psi", "how many bar is")
 * @param to the unit wanted, as typed; null when the text says it or nobody does
 */
export function askConvert(text: string, to: string | null, typed: Typed, style: NumberStyle): Conversion {
  const words = wordsOf(typed.asking);
  const question = tidied(text, words);
  const answer = answerTo(question, to, typed, style, words);
  const task = otherTask(question, text, answer);
  return task === null ? answer : { ...refused(task), said: answer.is === "refused" ? answer.said : answer.typed, named: true };
}

function answerTo({ asked, said: roles, hint, bound }: Tidied, to: string | null, typed: Typed, style: NumberStyle, words: Words): Conversion {
  const start = asked.search(FIGURE);
  if (start < 0) return refused("not a quantity");
  const figure = asked.slice(start);
  const found = amountAt(figure, typed, style, words);
  const flipped = to === null ? unitsFirst(asked.slice(0, start), found, typed, words) : null;
  if (flipped !== null) return answerTo({ asked: flipped, said: roles, hint, bound }, null, typed, style, words);
  const { amount, said } = found;
  const { turn, rest } = angleAfter(found, typed.units, style, words);
  const wanted = to === null ? wantedIn(rest, asked.slice(0, start), typed, words) : wantedTyped(tidied(to, words).asked, typed, words);
  const named = wanted.is === "system" || (wanted.is === "units" && wanted.sure);
  const isAsked = named || (wanted.is === "unknown" && wanted.asked) || (amount.is === "refused" && asksFor(figure, amount, typed, words));
  const no = (refusal: Refused): Refused => ({ ...refusal, named: isAsked, said });
  const why = unreadable(figure, amount, rest);
  if (why !== null) return { ...no(refused(why)), named: isAsked || why === "exponent" };
  if (amount.is === "ambiguous") return no(refused("unknown unit", amount.candidates.map(String)));
  if (amount.is === "refused") return no(refused(amount.why, [], amount.why === "unknown unit" ? amount.word : null));
  if (amount.other !== null) return no(refused("ambiguous number", [String(amount.from), String(amount.other)]));
  if (wanted.is === "unknown") return no(refused("unknown unit", [], wanted.word));
  const settled = settle(amount, wanted, hint);
  if (settled.is === "refused") return no(settled);
  if (amount.from < 0 && NEVER_NEGATIVE.includes(dimensionOf(settled.unit))) return no(refused("below zero"));
  const single = amount.from === amount.to ? bound : null;
  const answers = answersIn(amount, single, settled.unit, settled.targets);
  if ("why" in answers) return no(answers);
  const { from, to: end, nominal, decimals, fraction, compound } = amount;
  const asTyped = { typed: amount.typed, said: compound || fraction !== null ? amount.said : null, from, to: end, nominal, decimals, fraction, bound: single };
  return { is: "converted", ...asTyped, turn, unit: settled.unit, answers, taken: settled.taken, named, exactly: roles.has("exactly") };
}

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

/** "psi to bar 36" as "36 psi to bar"; null where the units do not stand first. */
function unitsFirst(before: string, { amount, said }: Found, typed: Typed, words: Words): string | null {
  if (amount.is !== "amount" || amount.unit !== null || amount.rest !== "" || before === "") return null;
  const left = stripped(before, words.opening).replace(/[\s:=,]+$/u, "");
  const unit = parseUnit(left, 0, typed.units);
  if (unit === null) return null;
  const tail = left.slice(unit.end).trim();
  const into: Wanted | null = stripped(tail, words.into) === tail ? null : wantedTyped(tail, typed, words);
  return into?.is === "units" ? `${said} ${left}` : null;
}

/** "20 Nm + 90° in ft-lb": the degrees turned after a torque, and what stands behind them. */
function angleAfter({ amount, rest }: Found, units: UnitNames, style: NumberStyle, words: Words): { readonly turn: number | null; readonly rest: string } {
  const none = { turn: null, rest };
  if (rest === "" || amount.is !== "amount" || amount.unit === null || dimensionOf(amount.unit) !== "torque") return none;
  const angle = parseAmount(stripped(rest, words.plus), units, style);
  if (angle.is !== "amount" || (angle.unit !== "°" && angle.unit !== "turn") || angle.from !== angle.to || angle.from <= 0) return none;
  return { turn: angle.unit === "turn" ? angle.from * 360 : angle.from, rest: angle.rest };
}

/** "5 furlongs in km", "9 N/mm": the unit typed is not known, yet another was asked for or this one is nearly a unit. */
function asksFor(text: string, amount: Extract<ParsedAmount, { is: "refused" }>, typed: Typed, words: Words): boolean {
  if (amount.why === "unknown unit" && /[/·⋅*.^ ]/u.test(amount.word)) return true;
  const last = words.lastInto.exec(text)?.[1];
  return last !== undefined && wantedTyped(last, typed, words).is !== "unknown";
}
