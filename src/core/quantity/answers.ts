// An amount in the units asked for: each answer as fine as the figure typed supports (the rule stands in print.ts).

import { type Answer, type Bound, type Refused, refused } from "./conversion.ts";
import type { ParsedAmount } from "./parse.ts";
import { figureRounded, honestDecimals, roundTo, windowInward } from "./print.ts";
import { convert, symbolOf, type UnitId } from "./units.ts";

type Amount = Extract<ParsedAmount, { is: "amount" }>;

/** `amount`, which is of `unit`, in each of `targets`; a bound holds for a single figure only. */
export function answersIn(amount: Amount, bound: Bound | null, unit: UnitId, targets: readonly UnitId[]): readonly Answer[] | Refused {
  const answers: Answer[] = [];
  for (const target of targets) {
    const [a, b] = [convert(amount.from, unit, target), convert(amount.to, unit, target)];
    if (a.is === "refused") return refused(a.why);
    if (b.is === "refused") return refused(b.why);
    const nominal = amount.nominal === null ? null : convert(amount.nominal, unit, target);
    const beside = convert(amount.to + amount.step, unit, target);
    const step = beside.is === "converted" ? beside.value - b.value : amount.step;
    if (a.value !== b.value) answers.push(windowOf(a.value, b.value, nominal?.is === "converted" ? nominal.value : null, Math.abs(step), target));
    else answers.push(singleOf(a.value, step, bound, target));
  }
  return answers;
}

function singleOf(exact: number, step: number, bound: Bound | null, unit: UnitId): Answer {
  // A made size that comes out whole is printed so: 3/32 in is 6/64, not 6.00/64.
  const whole = Math.abs(exact - Math.round(exact)) < 1e-9 && symbolOf(unit).startsWith("/");
  // Of reciprocal units the larger figure is the smaller amount.
  const inUnit = bound === null || step >= 0 ? bound : bound === "at most" ? "at least" : "at most";
  const way = inUnit === null ? "nearest" : inUnit === "at most" ? "down" : "up";
  const { value, decimals } = whole ? { value: Math.round(exact), decimals: 0 } : figureRounded(exact, Math.abs(step), unit, way);
  return { unit, from: value, to: value, nominal: null, exact: [exact, exact], decimals, bound: inUnit };
}

function windowOf(a: number, b: number, nominal: number | null, step: number, unit: UnitId): Answer {
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  const { from, to, decimals } = windowInward(low, high, honestDecimals(step, unit));
  const rounded = nominal === null ? null : roundTo(nominal, decimals);
  // Rounded to the nearest, the value of "25 +0/-3" would lie outside its own window; at an end it says nothing new.
  const inside = rounded !== null && rounded > from && rounded < to ? rounded : null;
  return { unit, from, to, nominal: inside, exact: [low, high], decimals, bound: null };
}
