// When reminders may come, checked against the calendar of the proposed standard Temporal (polyfill from the registry).

import { Temporal } from "@js-temporal/polyfill";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isQuiet, type ReminderWishes } from "../../src/core/bike.ts";
import { instant, localDateAt, localTimeAt, zone } from "../../src/core/calendar/zones.ts";
import { nextWindow, notQuiet } from "../../src/reminders/windows.ts";

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
