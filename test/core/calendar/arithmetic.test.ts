import { Temporal } from "@js-temporal/polyfill";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  addMonths,
  daysBetween,
  fromDayNumber,
  grainOf,
  isLocalDate,
  localDate,
  monthFrom,
  vagueDate,
  weekdayOf,
} from "../../../src/core/calendar/arithmetic.ts";

const anyDate = fc.integer({ min: -25_000, max: 60_000 }).map(fromDayNumber);

test("a day's month and the next one's beginning agree with Temporal", () => {
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), (days) => {
      const on = Temporal.PlainDate.from("1970-01-01").add({ days });
      const next = on.with({ day: 1 }).add({ months: 1 });
      expect(monthFrom(days)).toEqual({ month: on.month, next: Temporal.PlainDate.from("1970-01-01").until(next, { largestUnit: "days" }).days });
    }),
  );
});

describe("calendar months run from the anchor day", () => {
  // time-arithmetic check values: IANA tz database and RFC 5545 reference pack, rows months-clamp/*.
  test.each([
    ["2026-01-31", 1, "2026-02-28"],
    ["2026-01-31", 3, "2026-04-30"],
    ["2028-01-31", 1, "2028-02-29"],
    ["2024-02-29", 12, "2025-02-28"],
    ["2024-02-29", 48, "2028-02-29"],
    ["2026-08-31", 6, "2027-02-28"],
    ["2026-03-30", 11, "2027-02-28"],
    ["2026-12-15", 1, "2027-01-15"],
    ["2026-05-31", -3, "2026-02-28"],
    ["2026-01-31", 2, "2026-03-31"],
  ])("%s and %i months is %s", (from, months, to) => {
    expect(addMonths(localDate(from), months)).toBe(to);
  });

  test("agrees with Temporal on random dates and month counts", () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: -600, max: 600 }), (date, months) => {
        expect(addMonths(date, months)).toBe(Temporal.PlainDate.from(date).add({ months }, { overflow: "constrain" }).toString());
      }),
      { numRuns: 3000 },
    );
  });
});

describe("days", () => {
  test("agree with Temporal on random dates", () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: -40_000, max: 40_000 }), (date, days) => {
        const later = Temporal.PlainDate.from(date).add({ days });
        if (later.year < 1 || later.year > 9999) return;
        expect(addDays(date, days)).toBe(later.toString());
        expect(daysBetween(date, addDays(date, days))).toBe(days);
        expect(weekdayOf(date)).toBe(Temporal.PlainDate.from(date).dayOfWeek);
      }),
      { numRuns: 3000 },
    );
  });

  test.each(["2026-02-29", "2026-13-01", "2026-00-10", "2026-1-1", "26-01-01", "", "2100-02-29"])("%s is no day", (text) => {
    expect(isLocalDate(text)).toBe(false);
  });

  test.each(["2028-02-29", "2000-02-29", "2026-12-31"])("%s is a day", (text) => {
    expect(isLocalDate(text)).toBe(true);
  });
});

test("a vague date is as coarse as its span", () => {
  const grain = (from: string, to: string) => grainOf(vagueDate(localDate(from), localDate(to), ""));
  expect(grain("2026-05-03", "2026-05-03")).toBe("day");
  expect(grain("2026-05-01", "2026-05-31")).toBe("month");
  expect(grain("2023-03-01", "2023-05-31")).toBe("season");
  expect(grain("2023-01-01", "2023-12-31")).toBe("year");
});
