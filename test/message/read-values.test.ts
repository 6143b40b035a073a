// Values found and left, and what a bill came to, as they are typed.

import { describe, expect, test } from "vitest";
import { readCost, readValues } from "../../src/message/read-values.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";

const known = { numbers: { decimal: ".", group: "," }, vocabulary: ENGLISH_VOCABULARY } as const;

describe("values", () => {
  test.each([
    ["0.09 mm", null, [{ value: 0.09, unit: "mm", place: null }], null],
    ["0.09", "mm", [{ value: 0.09, unit: "mm", place: null }], null],
    ["12.6 V", "mm", [{ value: 12.6, unit: "V", place: null }], null],
    [
      "0.09 mm intake 1, 0.15 mm exhaust 2",
      null,
      [
        { value: 0.09, unit: "mm", place: "intake 1" },
        { value: 0.15, unit: "mm", place: "exhaust 2" },
      ],
      null,
    ],
    ["low", "mm", [], "low"],
    ["0.09", null, [], "0.09"],
    ["0.1-0.2 mm", null, [], "0.1-0.2 mm"],
    ["4 mm, worn at the edge", null, [{ value: 4, unit: "mm", place: null }], "worn at the edge"],
    ["", "mm", [], null],
    [
      "4.5 mm inner, 0.8 outer",
      "mm",
      [
        { value: 4.5, unit: "mm", place: "inner" },
        { value: 0.8, unit: "mm", place: "outer" },
      ],
      null,
    ],
    // The unit that was typed is the other's too, not the usual one.
    [
      "0.18 exhaust, 0.004 in intake 1",
      "mm",
      [
        { value: 0.18, unit: "in", place: "exhaust" },
        { value: 0.004, unit: "in", place: "intake 1" },
      ],
      null,
    ],
    ["4 mm, 3 cracked", "mm", [{ value: 4, unit: "mm", place: null }], "3 cracked"],
  ] as const)("%s, bare in %s", (typed, usual, values, words) => {
    expect(readValues(typed, known, usual)).toEqual({ values, words });
  });
});

describe("money", () => {
  test.each([
    ["380", 38_000, null],
    ["€ 412.50", 41_250, "€"],
    ["38,60 CHF", 3860, "CHF"],
    ["1,240", 124_000, null],
    ["1 240.5 kr", 124_050, "kr"],
    ["£95", 9500, "£"],
  ])("%s", (typed, minor, currency) => {
    expect(readCost(typed)).toEqual({ minor, currency, typed });
  });
  test.each(["", "a lot", "380 and a coffee", "12/13"])("“%s” is no figure of money", (typed) => {
    expect(readCost(typed)).toBeNull();
  });
});

test("a share is no value in the unit of the item: it is kept as it was typed", () => {
  for (const text of ["1.5 %", "2 percent", "0,8%"]) expect(readValues(text, known, "mm")).toEqual({ values: [], words: text });
});
