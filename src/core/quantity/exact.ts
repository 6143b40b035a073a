// The exact value of a conversion: whole-number arithmetic on the figures of the definitions, no rounding anywhere.

import { figuresOf, type UnitId } from "./units.ts";

/** A decimal as text. `whole`: these are all its digits; else it goes on for ever or for longer than is of use, and these are the first fifteen. */
export type Exact = { readonly digits: string; readonly whole: boolean };

type Ratio = { readonly above: bigint; readonly below: bigint };

/** Digits behind the point beyond which nobody reads on. */
const MOST = 24;
const SIGNIFICANT = 15;

/**
 * `value` of `from` in `to`, exactly. Both must measure the same thing.
 * @param value finite; its shortest decimal is taken as what was typed
 * @param fraction the denominator when it was typed as a fraction, so that a third stays one
 * @throws RangeError when the value is not finite or a reciprocal unit is asked about zero
 */
export function exactly(value: number, fraction: number | null, from: UnitId, to: UnitId): Exact {
  if (!Number.isFinite(value)) throw new RangeError(`not a figure: ${value}`);
  const typed = fraction === null ? ratioOf(value) : reduced({ above: BigInt(Math.round(value * fraction)), below: BigInt(fraction) });
  const [into, out] = [figuresOf(from), figuresOf(to)];
  const canonical = into.reciprocal ? divided(factorOf(into), typed) : added(times(typed, factorOf(into)), offsetOf(into));
  const answer = out.reciprocal ? divided(factorOf(out), canonical) : divided(added(canonical, negative(offsetOf(out))), factorOf(out));
  return printed(answer);
}

type Figures = ReturnType<typeof figuresOf>;
const factorOf = ({ factor: [above, below] }: Figures): Ratio => divided(product(above), product(below));
const offsetOf = ({ offset }: Figures): Ratio => (offset === null ? { above: 0n, below: 1n } : divided(ratioOf(offset[0]), ratioOf(offset[1])));
const product = (figures: readonly number[]): Ratio => figures.map(ratioOf).reduce(times, { above: 1n, below: 1n });

/** A figure by its shortest decimal: 0.45359237 is that many hundred-millionths, not the double beside it. */
function ratioOf(figure: number): Ratio {
  const [mantissa = "0", exponent = "0"] = String(figure).split("e");
  const [whole = "0", behind = ""] = mantissa.split(".");
  const power = Number(exponent) - behind.length;
  const digits = BigInt(whole + behind);
  return reduced(power >= 0 ? { above: digits * 10n ** BigInt(power), below: 1n } : { above: digits, below: 10n ** BigInt(-power) });
}

const times = (a: Ratio, b: Ratio): Ratio => reduced({ above: a.above * b.above, below: a.below * b.below });
const added = (a: Ratio, b: Ratio): Ratio => reduced({ above: a.above * b.below + b.above * a.below, below: a.below * b.below });
const negative = ({ above, below }: Ratio): Ratio => ({ above: -above, below });
function divided(a: Ratio, b: Ratio): Ratio {
  if (b.above === 0n) throw new RangeError("nothing divides by zero");
  return reduced({ above: a.above * b.below, below: a.below * b.above });
}

function reduced({ above, below }: Ratio): Ratio {
  let [a, b] = [above < 0n ? -above : above, below < 0n ? -below : below];
  while (b !== 0n) [a, b] = [b, a % b];
  const by = (a === 0n ? 1n : a) * (below < 0n ? -1n : 1n);
  return { above: above / by, below: below / by };
}

function printed({ above, below }: Ratio): Exact {
  const places = finitePlaces(below);
  const sign = above < 0n ? "-" : "";
  const size = above < 0n ? -above : above;
  if (places !== null && places <= MOST) return { digits: sign + decimal((size * 10n ** BigInt(places)) / below, places), whole: true };
  // The first digits, cut and not rounded, so that every one printed is right.
  let behind = 0;
  while ((size * 10n ** BigInt(behind)) / below < 10n ** BigInt(SIGNIFICANT - 1)) behind++;
  return { digits: sign + decimal((size * 10n ** BigInt(behind)) / below, behind), whole: false };
}

function decimal(scaled: bigint, places: number): string {
  const text = String(scaled).padStart(places + 1, "0");
  return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
}

/** Decimals of a ratio that ends: its denominator holds twos and fives only. Null when it never ends. */
function finitePlaces(below: bigint): number | null {
  let [twos, fives, left] = [0, 0, below];
  for (; left % 2n === 0n; left /= 2n) twos++;
  for (; left % 5n === 0n; left /= 5n) fives++;
  return left === 1n ? Math.max(twos, fives) : null;
}
