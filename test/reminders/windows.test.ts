// When reminders may come, checked against the calendar of the proposed standard Temporal (polyfill from the registry).

import { Temporal } from "@js-temporal/polyfill";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isQuiet, type ReminderWishes } from "../../src/core/bike.ts";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { Instant, LocalTime } from "../../src/core/calendar/dates.ts";
import { addDuration, addMinutes, instant, instantOf, localDateAt, localTimeAt, zone } from "../../src/core/calendar/zones.ts";
import { nextHour, nextWindow, notQuiet } from "../../src/reminders/windows.ts";
import { putOffDate } from "../../src/usecases/put-off.ts";

const wishes = (weekday: number, time: string, from = "21:00", to = "08:00"): ReminderWishes => ({ by: "direct message", weekday, time, quiet: { from, to } });

describe("the next window", () => {
  test("is the weekday and hour named, in the member's zone", () => {
    // 25 November 2026 is a Wednesday; Saturday at 9 in Berlin is 8 UTC in winter.
    expect(nextWindow(wishes(6, "09:00"), zone("Europe/Berlin"), instant("2026-11-25T10:00:00Z"))).toBe("2026-11-28T08:00:00.000Z");
    expect(nextWindow(wishes(6, "09:00"), zone("Europe/Berlin"), instant("2026-11-28T08:00:00Z"))).toBe("2026-11-28T08:00:00.000Z");
    expect(nextWindow(wishes(6, "09:00"), zone("Europe/Berlin"), instant("2026-11-28T08:00:01Z"))).toBe("2026-12-05T08:00:00.000Z");
  });
  test("moves out of quiet hours, over midnight too", () => {
    expect(nextWindow(wishes(6, "22:00"), zone("UTC"), instant("2026-11-25T10:00:00Z"))).toBe("2026-11-29T08:00:00.000Z");
    expect(nextWindow(wishes(6, "22:00"), zone("UTC"), instant("2026-11-29T07:00:00Z"))).toBe("2026-11-29T08:00:00.000Z");
    expect(nextWindow(wishes(6, "06:00"), zone("UTC"), instant("2026-11-25T10:00:00Z"))).toBe("2026-11-28T08:00:00.000Z");
  });
  test("a time inside the gap of summer time is the first moment after it", () => {
    // Sunday 28 March 2027, 02:30 does not exist in Berlin.
    expect(nextWindow(wishes(7, "02:30", "00:00", "00:00"), zone("Europe/Berlin"), instant("2027-03-25T00:00:00Z"))).toBe("2027-03-28T01:00:00.000Z");
  });
  test("is never earlier than asked, never quiet, at most eight days on, and on the right weekday by Temporal's calendar", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 7 }),
        fc.integer({ min: 8 * 60, max: 20 * 60 }),
        fc.constantFrom("Europe/Berlin", "America/Chicago", "Australia/Lord_Howe", "Asia/Kathmandu", "UTC"),
        fc.date({ min: new Date("2026-01-01"), max: new Date("2030-01-01"), noInvalidDate: true }),
        (weekday, minutes, where, date) => {
          const time = `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
          const after = instant(date.toISOString());
          const at = nextWindow(wishes(weekday, time), zone(where), after);
          expect(at >= after).toBe(true);
          const theirs = Temporal.Instant.from(at).toZonedDateTimeISO(where);
          expect(theirs.dayOfWeek).toBe(weekday);
          expect(`${theirs.toPlainTime().toString({ smallestUnit: "minute" })}`).toBe(time);
          expect(Temporal.Instant.from(after).until(Temporal.Instant.from(at)).total("hours")).toBeLessThanOrEqual(7 * 24 + 1);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe("quiet hours", () => {
  test.each([
    ["21:00", true],
    ["07:59", true],
    ["08:00", false],
    ["20:59", false],
  ])("%s quiet: %s", (time, quiet) => {
    expect(isQuiet(wishes(6, "09:00").quiet, time)).toBe(quiet);
  });
  test("equal ends are never quiet; a late message waits for their end", () => {
    expect(isQuiet(wishes(6, "09:00", "00:00", "00:00").quiet, "03:00")).toBe(false);
    const later = notQuiet(wishes(6, "09:00"), zone("Europe/Berlin"), instant("2026-11-25T23:00:00Z"));
    expect([localDateAt(later, zone("Europe/Berlin")), localTimeAt(later, zone("Europe/Berlin"))]).toEqual(["2026-11-26", "08:00"]);
  });
});

// Source of the transitions: IANA tz database 2025b, all rows transition/* of the reference pack: zone, instant, and the wall clock before and after it.
const TRANSITIONS = [
  ["America/New_York", "2026-03-08T07:00:00Z", "02:00", "03:00"],
  ["America/New_York", "2026-11-01T06:00:00Z", "02:00", "01:00"],
  ["America/New_York", "2027-03-14T07:00:00Z", "02:00", "03:00"],
  ["America/New_York", "2027-11-07T06:00:00Z", "02:00", "01:00"],
  ["Europe/Berlin", "2026-03-29T01:00:00Z", "02:00", "03:00"],
  ["Europe/Berlin", "2026-10-25T01:00:00Z", "03:00", "02:00"],
  ["Europe/Berlin", "2027-03-28T01:00:00Z", "02:00", "03:00"],
  ["Europe/Berlin", "2027-10-31T01:00:00Z", "03:00", "02:00"],
  ["Australia/Sydney", "2026-04-04T16:00:00Z", "03:00", "02:00"],
  ["Australia/Sydney", "2026-10-03T16:00:00Z", "02:00", "03:00"],
  ["Australia/Sydney", "2027-04-03T16:00:00Z", "03:00", "02:00"],
  ["Australia/Sydney", "2027-10-02T16:00:00Z", "02:00", "03:00"],
  ["Europe/London", "2026-03-29T01:00:00Z", "01:00", "02:00"],
  ["Europe/London", "2026-10-25T01:00:00Z", "02:00", "01:00"],
  ["Europe/London", "2027-03-28T01:00:00Z", "01:00", "02:00"],
  ["Europe/London", "2027-10-31T01:00:00Z", "02:00", "01:00"],
] as const;

describe("on the days on which the clocks change", () => {
  /** Every moment that a weekly or daily wish names from two days before a transition to eight days after. */
  const named = (at: string, next: (after: Instant) => Instant): Instant[] => {
    const all: Instant[] = [];
    const end = addDuration(instant(at), "P8D");
    for (let from = addDuration(instant(at), "-P2D"); ; ) {
      const found = next(from);
      if (found > end) return all;
      all.push(found);
      from = addMinutes(found, 1);
    }
  };
  const halfPast = (time: string): string => time.replace(":00", ":30");

  test.each(TRANSITIONS)(
    "%s %s: a half hour that is left out, or comes twice, is named once on that day, and at its own time a day and a week later",
    (where, at, before, after) => {
      const gap = after > before;
      const time = halfPast(gap ? before : after);
      const day = localDateAt(instant(at), zone(where));
      // Inside the gap: its end. Of two times the first, which is half an hour before the clocks go back.
      const expected = gap ? instant(at) : addMinutes(instant(at), -30);
      const wish = wishes(7, time, "12:00", "12:00");
      const daily = named(at, (from) => nextHour(wish, zone(where), from));
      expect(daily.filter((each) => localDateAt(each, zone(where)) === day)).toEqual([expected]);
      expect(new Set(daily.map((each) => localDateAt(each, zone(where)))).size).toBe(daily.length);
      const weekly = named(at, (from) => nextWindow(wish, zone(where), from));
      expect(weekly[0]).toBe(expected);
      expect(weekly.slice(1).map((each) => [localTimeAt(each, zone(where)), Temporal.PlainDate.from(localDateAt(each, zone(where))).dayOfWeek])).toEqual([
        [time, 7],
      ]);
    },
  );

  test.each(TRANSITIONS)("%s %s: quiet hours that end in it end once, and what is late waits for that", (where, at, before, after) => {
    const gap = after > before;
    const ends = halfPast(gap ? before : after);
    const wish = wishes(7, "20:00", "21:00", ends);
    const expected = gap ? instant(at) : addMinutes(instant(at), -30);
    for (const minutes of [-235, -180, -90, -61]) expect(notQuiet(wish, zone(where), addMinutes(instant(at), minutes))).toBe(expected);
    // Over: also in the half hour that comes again.
    for (const minutes of [0, 1, 15, 29, 45])
      expect(notQuiet(wish, zone(where), addMinutes(instant(at), minutes)) <= addMinutes(instant(at), minutes)).toBe(true);
  });

  // Row transition/America/Phoenix/none-2026-2027, and rows same-wall-clock-next-day/*: 23 and 25 hours apart.
  test("from one day to the next are 23 or 25 hours where the clocks change, and 24 where they do not", () => {
    const apart = (where: string, from: string, time: string): number => {
      const first = nextHour(wishes(7, time, "00:00", "00:00"), zone(where), instant(from));
      const second = nextHour(wishes(7, time, "00:00", "00:00"), zone(where), addMinutes(first, 1));
      return (Date.parse(second) - Date.parse(first)) / 3_600_000;
    };
    expect(apart("America/New_York", "2026-03-07T12:00:00Z", "09:00")).toBe(23);
    expect(apart("Europe/Berlin", "2026-10-24T12:00:00Z", "18:00")).toBe(25);
    expect(apart("America/Phoenix", "2026-03-07T12:00:00Z", "09:00")).toBe(24);
    expect(apart("America/Phoenix", "2026-10-31T12:00:00Z", "09:00")).toBe(24);
  });

  test("a day that begins without its midnight begins when Temporal says, and is that day", () => {
    for (const [where, date] of [
      ["America/Santiago", "2026-09-06"],
      ["Africa/Cairo", "2026-04-24"],
      ["Asia/Beirut", "2026-03-29"],
    ] as const) {
      const ours = instantOf(localDate(date), "00:00" as LocalTime, zone(where));
      expect(ours).toBe(new Date(Temporal.PlainDate.from(date).toZonedDateTime(where).startOfDay().epochMilliseconds).toISOString());
      expect([localDateAt(ours, zone(where)), localTimeAt(ours, zone(where))]).toEqual([date, "01:00"]);
    }
  });

  // Rows leap/2028 (true) and leap/2026 (false): the day after 28 February.
  test("the 29th of February is a day like any other, and where there is none no day is left out", () => {
    expect(nextWindow(wishes(2, "09:00"), zone("UTC"), instant("2028-02-28T12:00:00Z"))).toBe("2028-02-29T09:00:00.000Z");
    expect(nextHour(wishes(2, "09:00"), zone("UTC"), instant("2028-02-29T12:00:00Z"))).toBe("2028-03-01T09:00:00.000Z");
    expect(nextHour(wishes(2, "09:00"), zone("UTC"), instant("2026-02-28T12:00:00Z"))).toBe("2026-03-01T09:00:00.000Z");
    expect(putOffDate(localDate("2028-01-31"), "a month")).toBe("2028-02-29");
    expect(putOffDate(localDate("2026-01-31"), "a month")).toBe("2026-02-28");
  });
});
