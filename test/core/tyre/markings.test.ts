// What is moulded on a sidewall: dates by 49 CFR 574.5, loads and speeds by UN Regulation No. 75.

import { describe, expect, test } from "vitest";
import { localDate } from "../../../src/core/calendar/arithmetic.ts";
import { holdsSeveralCodes, readTyreDate } from "../../../src/core/tyre/date-code.ts";
import { builtAlike, markingsApart, readMarking } from "../../../src/core/tyre/marking.ts";
import { LOAD_KILOGRAMS, SPEED_KMH } from "../../../src/trade/tyres.ts";

const TODAY = localDate("2026-11-26");
const TABLES = { loads: LOAD_KILOGRAMS, speeds: SPEED_KMH };

describe("the date of a tyre", () => {
  // Published readings of codes: 0712 week 7 of 2012, 2501 week 25 of 2001, 3109 week 31 of 2009; 3500 by the rule.
  test.each([
    ["0712", 7, 2012],
    ["2501", 25, 2001],
    ["3109", 31, 2009],
    ["3500", 35, 2000],
    ["DOT 4B9X ABCD 0712", 7, 2012],
    ["dot xyz 2223.", 22, 2023],
  ])("%s is week %d of %d", (typed, week, year) => {
    expect(readTyreDate(typed, TODAY)).toMatchObject({ is: "made", week, year });
  });
  test.each([
    ["317", 31, 7],
    ["DOT ABCD 237", 23, 7],
  ])("%s has three digits: before 2000, and which decade is not in it", (typed, week, digit) => {
    expect(readTyreDate(typed, TODAY)).toMatchObject({ is: "before 2000", week, digit });
  });
  test("weeks that do not exist, weeks to come and texts without a code are refused", () => {
    expect(readTyreDate("0012", TODAY)).toEqual({ is: "refused", why: "no such week" });
    expect(readTyreDate("5412", TODAY)).toEqual({ is: "refused", why: "no such week" });
    expect(readTyreDate("5026", TODAY)).toEqual({ is: "refused", why: "to come" });
    expect(readTyreDate("DOT", TODAY)).toEqual({ is: "refused", why: "no code" });
  });
  test("week 53 is a week of some years, and the last that a code can have", () => {
    // ISO 8601: 2020 has 53 weeks; its last one begins on 28 December. Week 54 does not exist (49 CFR 574.5).
    expect(readTyreDate("5320", TODAY)).toMatchObject({ is: "made", week: 53, year: 2020, from: "2020-12-28" });
    expect(readTyreDate("5420", TODAY)).toEqual({ is: "refused", why: "no such week" });
    expect(readTyreDate("537", TODAY)).toMatchObject({ is: "before 2000", week: 53, digit: 7 });
  });
  test("the week begins where ISO 8601 begins it", () => {
    expect(readTyreDate("0712", TODAY)).toMatchObject({ from: "2012-02-13" });
    expect(readTyreDate("0121", TODAY)).toMatchObject({ from: "2021-01-04" });
  });
});

describe("load index and speed symbol", () => {
  // UN Regulation No. 75, Annex 4 and 2.33; the first two are printed as examples: 73W is 365 kg at 270 km/h, 58W is 236 kg, 80H 450 kg at 210 km/h.
  test.each([
    ["73W", 73, 365, 270],
    ["58W", 58, 236, 270],
    ["80H", 80, 450, 210],
    ["120/90-18 65S", 65, 290, 180],
    ["120/70ZR17 M/C (58W)", 58, 236, 270],
    ["180/55 ZR 17 M/C (73W)", 73, 365, 270],
    ["42J", 42, 150, 100],
    ["85Y", 85, 515, 300],
  ])("%s", (typed, index, kilograms, kmh) => {
    const marking = readMarking(typed, TABLES);
    expect(marking?.load).toEqual({ index, kilograms });
    expect(marking?.speed?.kmh).toBe(kmh);
  });
  test("construction, and whether both ends are built alike", () => {
    const built = (typed: string) => readMarking(typed, TABLES)?.construction ?? null;
    expect(built("120/70ZR17 M/C (58W)")).toBe("radial");
    expect(built("120/70R17 58V")).toBe("radial");
    expect(built("130/90B16 67H")).toBe("bias belted");
    expect(built("4.00-18 64S")).toBe("bias ply");
    expect(builtAlike(built("120/70R17 58V"), built("4.00-18 64S"))).toBe(false);
    expect(builtAlike(built("120/70R17 58V"), built("180/55ZR17"))).toBe(true);
    expect(builtAlike(null, "radial")).toBeNull();
  });
  test("ZR alone promises more than 240 km/h and says no more", () => {
    expect(readMarking("180/55ZR17", TABLES)?.speed).toEqual({ symbol: "Z", kmh: 240, above: true });
    expect(readMarking("hello", TABLES)).toBeNull();
  });
});

test("of three digits the last year that they can mean is of the nineties", () => {
  // Published reading of 317: week 31 of 1997; 1987 and 1977 cannot be excluded (49 CFR 574.5 before 1999).
  const read = readTyreDate("317", localDate("2026-11-26"));
  expect(read.is === "before 2000" && read.latest.slice(0, 4)).toBe("1997");
});

test("a tyre of this very week is made, and one of the next is a slip of the eye", () => {
  // 23 November 2026 is the Monday of week 48 (ISO 8601).
  expect(readTyreDate("4826", localDate("2026-11-23"))).toMatchObject({ is: "made", from: "2026-11-23" });
  expect(readTyreDate("4826", localDate("2026-11-22"))).toEqual({ is: "refused", why: "to come" });
});

describe("more than one tyre in a text", () => {
  test.each([
    ["front 120/70ZR17 58W rear 180/55ZR17 73W", 2],
    ["110/90-19 62H 4.00-18 64S", 2],
    ["3.25-19 54H, 4.00-18 64S", 2],
    ["120/70ZR17 M/C (58W)", 1],
    ["4.00-18 64S (110/90-18)", 1],
    ["130/90B16 MT90B16 67H", 1],
    ["58W", 1],
  ])("%s: %d", (typed, count) => {
    expect(markingsApart(typed)).toHaveLength(count);
  });
  test("two codes of week and year are two tyres; other figures of a sidewall are none", () => {
    expect(holdsSeveralCodes("front 1223 rear 1417", TODAY)).toBe(true);
    expect(holdsSeveralCodes("DOT 4B9X 9934 ABCD 0712", TODAY)).toBe(false);
    expect(holdsSeveralCodes("0712 0712", TODAY)).toBe(false);
  });
});
