import { Temporal } from "@js-temporal/polyfill";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromDayNumber, localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { LocalTime } from "../../../src/core/calendar/dates.ts";
import { addDuration, instant, instantOf, isZone, localDateAt, localTimeAt, zone, zoneNames } from "../../../src/core/calendar/zones.ts";

// Source of the instants: IANA tz database 2025b, reference rows local-to-utc/* (transitions 2026-2027).
test("zones are suggested under the names of today, and each is one", () => {
  const names = zoneNames();
  for (const name of ["UTC", "Europe/Kyiv", "Asia/Kolkata", "America/Argentina/Buenos_Aires", "Europe/Berlin"]) expect(names).toContain(name);
  for (const old of ["Europe/Kiev", "Asia/Calcutta"]) expect(names).not.toContain(old);
  expect(names.filter((name) => !isZone(name))).toEqual([]);
});

describe("a wall-clock time as an instant", () => {
  test.each([
    ["America/New_York", "2026-03-08", "01:59", "2026-03-08T06:59:00.000Z"],
    ["America/New_York", "2026-03-08", "03:00", "2026-03-08T07:00:00.000Z"],
    ["America/New_York", "2026-11-01", "01:30", "2026-11-01T05:30:00.000Z"],
    ["America/New_York", "2027-11-07", "01:00", "2027-11-07T05:00:00.000Z"],
    ["Europe/Berlin", "2026-10-25", "02:30", "2026-10-25T00:30:00.000Z"],
    ["Europe/Berlin", "2027-10-31", "02:59", "2027-10-31T00:59:00.000Z"],
    ["Australia/Sydney", "2026-04-05", "02:30", "2026-04-04T15:30:00.000Z"],
    ["Australia/Sydney", "2027-04-04", "02:00", "2027-04-03T15:00:00.000Z"],
  ])("%s %s %s", (where, date, time, expected) => {
    expect(instantOf(localDate(date), time as LocalTime, zone(where))).toBe(expected);
  });

  // Rows transition/*: the first instant after each gap.
  test.each([
    ["America/New_York", "2026-03-08", "02:30", "2026-03-08T07:00:00.000Z"],
    ["America/New_York", "2027-03-14", "02:15", "2027-03-14T07:00:00.000Z"],
    ["Europe/Berlin", "2026-03-29", "02:30", "2026-03-29T01:00:00.000Z"],
    ["Europe/Berlin", "2027-03-28", "02:00", "2027-03-28T01:00:00.000Z"],
    ["Australia/Sydney", "2026-10-04", "02:30", "2026-10-03T16:00:00.000Z"],
  ])("inside the gap of %s on %s at %s it is the first instant after", (where, date, time, expected) => {
    expect(instantOf(localDate(date), time as LocalTime, zone(where))).toBe(expected);
  });

  test("agrees with Temporal away from gaps, in zones with odd offsets too", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 18_000, max: 25_000 }),
        fc.integer({ min: 0, max: 1439 }),
        fc.constantFrom("Europe/Berlin", "America/Chicago", "Asia/Kolkata", "Australia/Lord_Howe", "Pacific/Auckland", "UTC"),
        (day, minute, where) => {
          const date = fromDayNumber(day);
          const time = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
          const theirs = Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime(where, { disambiguation: "earlier" });
          // In a gap "earlier" shows another wall time; our answer there is checked above.
          if (theirs.toPlainTime().toString().slice(0, 5) !== time) return;
          const ours = instantOf(date, time as LocalTime, zone(where));
          expect(ours).toBe(new Date(theirs.epochMilliseconds).toISOString());
          expect(localDateAt(ours, zone(where))).toBe(date);
          expect(localTimeAt(ours, zone(where))).toBe(time);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

test("an instant has one spelling of 24 characters", () => {
  expect(instant("2026-11-25T09:59:45+01:00")).toBe("2026-11-25T08:59:45.000Z");
  expect(() => instant("yesterday")).toThrow(RangeError);
});

test("durations move an instant by the calendar in UTC", () => {
  expect(addDuration(instant("2026-01-31T00:00:00Z"), "P1M")).toBe("2026-02-28T00:00:00.000Z");
  expect(addDuration(instant("2026-01-31T00:00:00Z"), "P60D")).toBe("2026-04-01T00:00:00.000Z");
  expect(() => addDuration(instant("2026-01-31T00:00:00Z"), "soon")).toThrow(RangeError);
});

test("zones are IANA names; abbreviations and offsets are not", () => {
  for (const name of ["Europe/Kyiv", "Asia/Kolkata", "UTC", "America/Argentina/Ushuaia"]) expect(isZone(name)).toBe(true);
  for (const name of ["CET+1", "Nowhere/Land", "+02:00", "", "berlin"]) expect(isZone(name)).toBe(false);
});
