// A value against its limit: one end or two, near, at and beyond.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { callsForWork, graver, judge, VERDICTS } from "../../../src/core/judgement/verdict.ts";

const tread = { min: 1.6, max: null, near: 0.5, source: "StVZO section 36" };
const slack = { min: 25, max: 35, near: 1, source: "the manual" };

describe("one end", () => {
  test.each([
    [4, "within", null],
    [2.2, "within", null],
    [2.1, "near limit", "low"],
    [1.7, "near limit", "low"],
    [1.6, "at limit", "low"],
    [1.55, "at limit", "low"],
    [1.5, "beyond limit", "low"],
  ] as const)("%d mm of tread where 1.6 are asked for is %s", (value, is, side) => expect(judge(value, tread, 0.1)).toMatchObject({ is, side }));
  test("1/32 in is the bar of 0.8 mm, read by another gauge", () => {
    expect(judge(0.79375, { ...tread, min: 0.8 }, 0.1).is).toBe("at limit");
    expect(judge(0.8, { ...tread, min: 0.79375 }, 0.1).is).toBe("at limit");
  });
});

describe("two ends", () => {
  test.each([
    [30, "within", null],
    [26, "near limit", "low"],
    [25, "near limit", "low"],
    [24, "beyond limit", "low"],
    [35, "near limit", "high"],
    [37, "beyond limit", "high"],
  ] as const)("%d mm of slack where 25 to 35 are asked for is %s", (value, is, side) => expect(judge(value, slack, 1)).toMatchObject({ is, side }));
});

test("moving towards the limit never makes a verdict better", () => {
  const rank = (value: number) => VERDICTS.indexOf(judge(value, tread, 0.1).is);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 10, noNaN: true }), fc.double({ min: 0, max: 3, noNaN: true }), (value, less) => rank(value - less) >= rank(value)),
  );
});

test("the graver of two, and what calls for work", () => {
  const [good, near, worn] = [judge(5, tread, 0.1), judge(2, tread, 0.1), judge(1, tread, 0.1)];
  expect(graver(good, near)).toBe(near);
  expect(graver(worn, near)).toBe(worn);
  expect([good, near, worn].map(callsForWork)).toEqual([false, false, true]);
});

test("half a step of the tool beyond a limit is still at it, and of two ends equally near the low one tells", () => {
  const least = { min: 10, max: null, near: null, source: "" };
  expect(judge(9.5, least, 1).is).toBe("at limit");
  expect(judge(9.49, least, 1).is).toBe("beyond limit");
  expect(judge(12, { min: 10, max: 14, near: 2, source: "" }, 0.1)).toMatchObject({ is: "near limit", side: "low" });
});

test("of two judgements equally grave the first stands", () => {
  const [a, b] = [
    { is: "at limit" as const, of: "a" },
    { is: "at limit" as const, of: "b" },
  ];
  expect(graver(a, b)).toBe(a);
});
