// A million printed quantities read back. The figure is known beforehand as whole digits and a power of ten (ECMA-262, Number of a decimal literal);
// it is printed by Intl.NumberFormat with the separators of Unicode CLDR, so that reader and printer share no code.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { NumberStyle } from "../../src/core/quantity/number.ts";
import { parseAmount } from "../../src/core/quantity/parse.ts";
import { printFigure } from "../../src/core/quantity/print.ts";
import { convert, dimensionOf, UNIT_IDS, type UnitId } from "../../src/core/quantity/units.ts";
import { ENGLISH_UNIT_NAMES as NAMES } from "../../src/words/en/unit-names.ts";

const ROUND_TRIPS = 1_000_000;
const LONGEST_MS = 180_000;

const STYLES: readonly (readonly [locale: string, style: NumberStyle])[] = [
  ["en-GB", { decimal: ".", group: "," }],
  ["en-US", { decimal: ".", group: "," }],
  ["de-DE", { decimal: ",", group: "." }],
  ["fr-FR", { decimal: ",", group: " " }],
  ["de-CH", { decimal: ".", group: "'" }],
];

/** How often a name is given, whatever its case: a name of two units is asked about, not read. */
const given = new Map<string, number>();
for (const unit of UNIT_IDS) for (const name of new Set(NAMES[unit].map((each) => each.toLowerCase()))) given.set(name, (given.get(name) ?? 0) + 1);
/** A name that begins with a stroke belongs to a fraction ("3/32"), which is typed, not printed as a decimal. */
const NAMED: readonly (readonly [UnitId, string])[] = UNIT_IDS.flatMap((unit) =>
  NAMES[unit].filter((name) => given.get(name.toLowerCase()) === 1 && !name.startsWith("/")).map((name) => [unit, name] as const),
);

const quantity = fc.record({
  digits: fc.oneof(fc.nat(9999), fc.nat(999_999_999)),
  decimals: fc.nat(4),
  below: fc.boolean(),
  named: fc.constantFrom(...NAMED),
  written: fc.constantFrom(...STYLES),
  gap: fc.constantFrom(" ", "\u00a0", "\u202f"),
  into: fc.nat(),
});

describe("what is printed is read back as it was", () => {
  test(
    `${ROUND_TRIPS.toLocaleString("en-GB")} figures in ${NAMED.length} names of units and ${STYLES.length} ways to write numbers`,
    () => {
      const seen = new Set<UnitId>();
      let trips = 0;
      fc.assert(
        fc.property(quantity, ({ digits, decimals, below, named: [unit, name], written: [locale, style], gap, into }) => {
          const sign = below && dimensionOf(unit).startsWith("temperature") && digits > 0 ? "-" : "";
          const value = Number(`${sign}${digits}e-${decimals}`);
          const text = `${printFigure(value, decimals, locale, true)}${gap}${name}`;
          const read = parseAmount(text, NAMES, style);
          if (read.is !== "amount") throw new Error(`${text}: ${read.is}, ${read.why}`);
          const asPrinted = hasTwoReadings(text, style) ? read.other === value : read.from === value && read.to === value && read.decimals === decimals;
          if (!asPrinted || read.unit !== unit || read.rest !== "" || read.typed !== text) throw new Error(`${text}: ${JSON.stringify(read)}`);

          const others = UNIT_IDS.filter((each) => dimensionOf(each) === dimensionOf(unit));
          const other = others[into % others.length] ?? unit;
          const there = convert(value, unit, other);
          const back = there.is === "converted" ? convert(there.value, other, unit) : there;
          if (back.is === "converted") {
            // Temperatures pass through an offset of up to 460 degrees, so the error is taken against that.
            const scale = Math.max(Math.abs(value), dimensionOf(unit) === "temperature" ? 460 : 0);
            if (Math.abs(back.value - value) > scale * 1e-12) throw new Error(`${text} in ${other} and back is ${back.value}`);
          } else if (!isBeyondReach(value, unit)) throw new Error(`${text} in ${other}: ${back.why}`);
          seen.add(unit);
          trips++;
        }),
        { numRuns: ROUND_TRIPS },
      );
      expect(trips).toBe(ROUND_TRIPS);
      expect(seen.size).toBe(new Set(NAMED.map(([unit]) => unit)).size);
    },
    LONGEST_MS,
  );
});

/** "14.820" is 14.82 to one rider and 14,820 to another: three decimals behind one mark must come back as the second reading, never be settled silently. */
const hasTwoReadings = (text: string, style: NumberStyle): boolean =>
  style.group !== " " && new RegExp(`^-?[1-9]\\d{0,2}\\${style.decimal}\\d{3}(?!\\d)`).test(text);

/** Below absolute zero (-273.15 °C, -459.67 °F, 0 K: SI brochure, 9th edition, 2.3.1); nothing a distance goes into; or larger than is answered. */
function isBeyondReach(value: number, unit: UnitId): boolean {
  const zero: Partial<Record<UnitId, number>> = { "°C": -273.15, "°F": -459.67, K: 0 };
  return value < (zero[unit] ?? Number.NEGATIVE_INFINITY) || (dimensionOf(unit) === "consumption" && value === 0);
}
