// Which of several specs stands: a named page before a manual, a manual before a word; pressures, brakes and axles by a page only.

import { describe, expect, test } from "vitest";
import type { Instant } from "../../../src/core/calendar/dates.ts";
import type { BikeId, MemberId } from "../../../src/core/ids.ts";
import { isSame, modelKey, type Spec, settledSpec } from "../../../src/core/spec/spec.ts";

const HERON = "heron" as BikeId;
const at = (day: number): Instant => `2026-11-${String(day).padStart(2, "0")}T09:00:00.000Z` as Instant;
const aSpec = (id: string, kPa: number, more: Partial<Spec> = {}): Spec => ({
  ...{ id, rev: 1, bike: HERON, key: "front tyre pressure", use: null, typed: `${kPa} kPa`, source: null, by: "ines" as MemberId, at: at(1) },
  holds: { is: "figure", low: kPa, high: kPa, nominal: null, unit: "kPa", step: 1 },
  ...more,
});
const PAGE = { manual: "Owner's manual", edition: null, page: "88" };
const NO_PAGE = { manual: "Owner's manual", edition: null, page: null };
const OTHER = "wren" as BikeId;
const settle = (specs: readonly Spec[], byPage = true, use: Spec["use"] = null) => {
  const settled = settledSpec(specs, "front tyre pressure", use, HERON, byPage);
  return settled.is === "one"
    ? [settled.spec.id, ...settled.others.map(({ id }) => id)]
    : settled.is === "several"
      ? settled.specs.map(({ id }) => `?${id}`)
      : [];
};

describe("two members differ", () => {
  test("a named page settles it; the other is still shown", () => {
    expect(settle([aSpec("word", 250), aSpec("page", 230, { source: PAGE, bike: OTHER })])).toEqual(["page", "word"]);
  });
  test("of a pressure, a manual without its page settles nothing, nor does the bike's own entry", () => {
    expect(settle([aSpec("own", 250), aSpec("book", 230, { source: NO_PAGE, bike: OTHER })])).toEqual(["?book", "?own"]);
    expect(settle([aSpec("own", 250), aSpec("theirs", 230, { bike: OTHER })])).toEqual(["?own", "?theirs"]);
  });
  test("two pages that differ settle nothing", () => {
    expect(settle([aSpec("a", 250, { source: PAGE }), aSpec("b", 230, { source: PAGE, bike: OTHER })])).toEqual(["?a", "?b"]);
  });
  test("of two pages the one that was entered anew after the other was there counts, with the other beside it", () => {
    const [a, b] = [aSpec("a", 250, { source: PAGE }), aSpec("b", 230, { source: PAGE, bike: OTHER, at: at(3) })];
    // Entered later, and not looked at again: nothing is settled.
    expect(settle([a, b])).toEqual(["?a", "?b"]);
    expect(settle([{ ...a, rev: 2, at: at(5) }, b])).toEqual(["a", "b"]);
    expect(
      settle([
        { ...a, rev: 2, at: at(5) },
        { ...b, rev: 2, at: at(6) },
      ]),
    ).toEqual(["b", "a"]);
    // Looked at before the other was there, or entered anew without its page.
    expect(settle([{ ...a, rev: 2, at: at(2) }, b])).toEqual(["?a", "?b"]);
    expect(settle([{ ...a, rev: 2, at: at(5), source: NO_PAGE }, b])).toEqual(["b", "a"]);
  });
  test("of anything else the bike's own entry goes first among equals", () => {
    expect(settle([aSpec("theirs", 230, { bike: OTHER, at: at(9) }), aSpec("own", 250)], false)).toEqual(["own", "theirs"]);
  });
  test("values that agree are one, in whatever unit they were typed: 36 psi and 2.48 bar", () => {
    const bar = aSpec("bar", 248, { bike: OTHER });
    expect(settle([aSpec("psi", 248.21), bar])).toEqual(["psi"]);
    expect(isSame(aSpec("a", 248.21), aSpec("b", 255.1))).toBe(false);
  });
});

describe("by load", () => {
  const solo = aSpec("solo", 230, { use: "solo" });
  test("neither a value for riding solo nor one with no load named answers for two-up", () => {
    expect(settle([solo], true, "two-up")).toEqual([]);
    expect(settle([solo, aSpec("any", 250)], true, "two-up")).toEqual([]);
    expect(settle([solo, aSpec("two", 280, { use: "two-up" })], true, "two-up")).toEqual(["two"]);
  });
  test("one with no load named answers for riding solo, where none is entered for that", () => {
    expect(settle([aSpec("any", 250)], true, "solo")).toEqual(["any"]);
    expect(settle([solo, aSpec("any", 250)], true, "solo")).toEqual(["solo"]);
  });
});

test.each([
  ["Ostler Tarn-650", "OSTLER  tarn 650"],
  ["Ostler Ｔarn 650", "ostler tarn 650"],
])("%s and %s are one model", (a, b) => {
  expect(modelKey(a)).toBe(modelKey(b));
});
