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
    ["Australia/Sydney", "2027-10-03", "02:30", "2027-10-02T16:00:00.000Z"],
    ["Europe/London", "2026-03-29", "01:30", "2026-03-29T01:00:00.000Z"],
    ["Europe/London", "2027-03-28", "01:00", "2027-03-28T01:00:00.000Z"],
  ])("inside the gap of %s on %s at %s it is the first instant after", (where, date, time, expected) => {
    expect(instantOf(localDate(date), time as LocalTime, zone(where))).toBe(expected);
  });

  // Rows transition/* where the clock goes back: of an hour that comes twice the first is taken, so many minutes before the clock is changed.
  test.each([
    ["America/New_York", "2026-11-01", "01:00", "2026-11-01T06:00:00.000Z"],
    ["America/New_York", "2027-11-07", "01:00", "2027-11-07T06:00:00.000Z"],
    ["Europe/Berlin", "2026-10-25", "02:00", "2026-10-25T01:00:00.000Z"],
    ["Europe/Berlin", "2027-10-31", "02:00", "2027-10-31T01:00:00.000Z"],
    ["Australia/Sydney", "2026-04-05", "02:00", "2026-04-04T16:00:00.000Z"],
    ["Australia/Sydney", "2027-04-04", "02:00", "2027-04-03T16:00:00.000Z"],
    ["Europe/London", "2026-10-25", "01:00", "2026-10-25T01:00:00.000Z"],
    ["Europe/London", "2027-10-31", "01:00", "2027-10-31T01:00:00.000Z"],
  ])("in %s on %s %s comes again when the clock is changed", (where, date, time, changed) => {
    const first = instantOf(localDate(date), time as LocalTime, zone(where));
    expect(Date.parse(changed) - Date.parse(first)).toBe(3_600_000);
    expect(localTimeAt(instant(changed), zone(where))).toBe(time);
  });

  // Rows day-length/*: hours from one midnight to the next.
  test.each([
    ["America/New_York", "2026-03-08", "2026-03-09", 23],
    ["America/New_York", "2026-11-01", "2026-11-02", 25],
    ["Europe/Berlin", "2026-03-29", "2026-03-30", 23],
    ["Europe/Berlin", "2026-10-25", "2026-10-26", 25],
    ["Australia/Sydney", "2026-04-05", "2026-04-06", 25],
    ["Australia/Sydney", "2026-10-04", "2026-10-05", 23],
    // No summer time.
    ["America/Phoenix", "2026-03-08", "2026-03-09", 24],
  ])("in %s the day %s to %s has %d hours", (where, date, next, hours) => {
    const midnight = (on: string): number => Date.parse(instantOf(localDate(on), "00:00" as LocalTime, zone(where)));
    expect((midnight(next) - midnight(date)) / 3_600_000).toBe(hours);
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
