// The figures and units of the corpora's own texts, as typed, against two general libraries: mathjs 15 and js-quantities 1.8, wherever they can parse them.

import Qty from "js-quantities";
import { create, all as everything } from "mathjs";
import { expect, test } from "vitest";
import { type Dimension, dimensionOf, fromCanonical, toCanonical, type UnitId } from "../../src/core/quantity/units.ts";
import { ownWords, scan } from "../../src/message/scan.ts";
import { GERMAN, NOTHING_GERMAN } from "./german-corpus.ts";
import { CORPUS, TALK } from "./report.ts";
import { STRANGERS } from "./strangers.ts";
import { STRANGERS_AGAIN } from "./strangers-again.ts";

const math = create(everything ?? {});

/** In what each dimension is compared: our unit, and what the libraries call it. */
const REFERENCE: Partial<Record<Dimension, readonly [ours: UnitId, mathjs: string, quantities: string]>> = {
  distance: ["km", "km", "km"],
  length: ["mm", "mm", "mm"],
  pressure: ["kPa", "kPa", "kPa"],
  temperature: ["°C", "degC", "tempC"],
  volume: ["L", "L", "L"],
  mass: ["kg", "kg", "kg"],
  voltage: ["V", "V", "V"],
  torque: ["N·m", "N m", "N*m"],
  speed: ["km/h", "km/h", "kph"],
};

const german = new Set([...GERMAN.map(({ say }) => say), ...NOTHING_GERMAN]);
const SAID = [...CORPUS, ...TALK].map(({ say, known }) => {
  const spoken = german.has(say) ? (known.also?.[0] ?? known) : known;
  return { say, vocabulary: spoken.vocabulary, numbers: spoken.numbers };
});
const [english] = SAID;
const ALL = [...SAID, ...[...STRANGERS, ...STRANGERS_AGAIN].flatMap(({ say }) => (english === undefined ? [] : [{ ...english, say }]))];
const FIGURES = ALL.flatMap(({ say, vocabulary, numbers }) =>
  scan(ownWords(say), vocabulary.units, numbers).flatMap((token) => (token.is === "number" ? [{ say, token, group: numbers.group }] : [])),
);

/** As the libraries want it typed, which know no marks for thousands and no decimal comma. */
const forThem = (typed: string, group: string): string =>
  typed.replace(group === "." ? /(?<=\d)\.(?=\d{3}(?!\d))/gu : /(?<=\d)[, '](?=\d{3}(?!\d))/gu, "").replace(/(?<=\d),(?=\d)/gu, ".");

/** What a library makes of a text; null where it cannot parse it. */
function parsed(parse: () => number): number | null {
  try {
    const value = parse();
    return Number.isFinite(value) ? value : null;
  } catch {
    return null;
  }
}
const isClose = (ours: number, theirs: number, within = 1e-9): boolean => Math.abs(ours - theirs) <= within * Math.max(1, Math.abs(theirs));

test.each([
  ["mathjs", 1e-9, (text: string, [, unit]: readonly [UnitId, string, string]) => math.unit(text).toNumber(unit)],
  // Its pound a square inch is 6894.76 Pa, six digits of the 6894.757… of the 1959 pound (NIST SP 811).
  ["js-quantities", 1e-6, (text: string, [, , unit]: readonly [UnitId, string, string]) => Qty(text).to(unit).scalar],
] as const)("quantities are what %s makes of them, within a share of %d", (name, within, theirs) => {
  let compared = 0;
  const otherwise: string[] = [];
  for (const { say, token, group } of FIGURES) {
    const [unit, ...others] = token.units;
    const reference = unit === undefined || others.length > 0 ? undefined : REFERENCE[dimensionOf(unit)];
    if (unit === undefined || reference === undefined) continue;
    const value = parsed(() => theirs(forThem(token.text, group), reference));
    if (value === null) continue;
    compared++;
    const ours = [token.value, token.other ?? token.value].map((each) => fromCanonical(toCanonical(each, unit), reference[0]));
    if (!ours.some((each) => isClose(each, value, within))) otherwise.push(`${token.text} in “${say}”: ${ours[0]} ${reference[0]}, theirs ${value}`);
  }
  expect(otherwise).toEqual([]);
  console.info(`${name}: ${compared} quantities compared`);
  expect(compared).toBeGreaterThanOrEqual(500);
});

test("bare figures and fractions are what mathjs makes of them", () => {
  let compared = 0;
  const otherwise: string[] = [];
  for (const { say, token, group } of FIGURES) {
    const typed = forThem(ownWords(say).slice(token.start, token.numberEnd), group);
    // What it takes for a product or a list is no figure to it.
    const value = /^[\d./]+$/u.test(typed) ? parsed(() => Number(math.evaluate(typed))) : null;
    if (value === null) continue;
    compared++;
    if (![token.value, token.other].some((each) => each !== null && isClose(each, value)))
      otherwise.push(`${typed} in “${say}”: ${token.value}, theirs ${value}`);
  }
  expect(otherwise).toEqual([]);
  console.info(`mathjs: ${compared} figures compared`);
  expect(compared).toBeGreaterThanOrEqual(1200);
});
