// What a group's season asks of a bike, and when it has to be looked at again for it.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, localDate } from "../../../src/core/calendar/arithmetic.ts";
import { nextSeasonEdge, type Seasonal, seasonWant, USUAL_WINDOWS, windowOf } from "../../../src/core/season/season.ts";
import { readSeason } from "../../../src/message/read-season.ts";
import { ENGLISH_VOCABULARY } from "../../../src/words/en/vocabulary.ts";

const bike = (more: Partial<Seasonal> = {}): Seasonal => ({
  ...{ window: USUAL_WINDOWS.north, laidUp: false, lastLogged: localDate("2026-10-20"), lastOut: null, lastAway: null },
  ...more,
});
const wants = (of: Seasonal, day: string) => seasonWant(of, localDate(day));

describe("a season from 15 March to 31 October", () => {
  test("asks a bike laid up out of storage from three weeks before, until it was checked", () => {
    const stored = bike({ laidUp: true });
    expect(wants(stored, "2027-02-21")).toBeNull();
    expect(wants(stored, "2027-02-22")).toEqual({ want: "out of storage", on: "2027-03-15" });
    expect(wants(stored, "2027-04-12")).toEqual({ want: "out of storage", on: "2027-03-15" });
    expect(wants(stored, "2027-04-13")).toBeNull();
    expect(wants({ ...stored, lastOut: localDate("2027-03-01") }, "2027-03-02")).toBeNull();
    expect(wants({ ...stored, lastOut: localDate("2026-03-01") }, "2027-03-02")).not.toBeNull();
  });
  test("asks one that is ridden for lay-up from two weeks before the end", () => {
    expect(wants(bike(), "2026-10-16")).toBeNull();
    expect(wants(bike(), "2026-10-17")).toEqual({ want: "lay-up", on: "2026-10-31" });
    expect(wants(bike({ lastAway: localDate("2026-10-12") }), "2026-10-20")).toBeNull();
  });
  test("asks whether one that nobody logs was put away, a month after it was last logged, and not in the season", () => {
    const quiet = bike({ lastLogged: localDate("2026-10-12"), lastAway: localDate("2026-10-13") });
    expect(wants(quiet, "2026-11-13")).toBeNull();
    expect(wants(quiet, "2026-11-14")).toEqual({ want: "silent", on: "2026-10-12" });
    expect(wants({ ...quiet, lastLogged: localDate("2026-12-01") }, "2026-12-20")).toBeNull();
    expect(wants(quiet, "2027-06-01")).toBeNull();
  });
});

test("south of the line the season runs over the new year", () => {
  const stored = bike({ window: USUAL_WINDOWS.south, laidUp: true });
  expect(wants(stored, "2026-08-26")).toEqual({ want: "out of storage", on: "2026-09-15" });
  expect(wants({ ...stored, laidUp: false, lastLogged: localDate("2027-01-02") }, "2027-04-20")).toEqual({ want: "lay-up", on: "2027-04-30" });
  expect(wants({ ...stored, laidUp: false, lastLogged: localDate("2026-11-01") }, "2027-01-10")).toBeNull();
});

test("a bike looked at only on the days named misses nothing", () => {
  const days = fc.integer({ min: 0, max: 800 }).map((n) => addDays(localDate("2026-01-01"), n));
  const windows = fc.constantFrom(USUAL_WINDOWS.north, USUAL_WINDOWS.south, { from: "04-01", to: "10-15" }, { from: "12-20", to: "01-10" });
  fc.assert(
    fc.property(days, windows, fc.boolean(), fc.option(days), (from, window, laidUp, lastLogged) => {
      const of = bike({ window, laidUp, lastLogged });
      const edge = nextSeasonEdge(of, from);
      const until = edge ?? addDays(from, 400);
      const now = seasonWant(of, from);
      for (let day = addDays(from, 1); day < until; day = addDays(day, 1)) {
        const want = seasonWant(of, day);
        // Between two edges nothing new comes up; what was told may lapse.
        if (want !== null) expect(want).toEqual(now);
      }
    }),
  );
});

test.each([
  ["north", "03-15/10-31"],
  ["South", "09-15/04-30"],
  ["none", "none"],
  ["1 April to 15 October", "04-01/10-15"],
  ["April 1 - Oct 15", "04-01/10-15"],
  ["1st of April", null],
  ["31 February to 1 May", null],
  ["1 April to 1 April", null],
])("/group riding:%s", (typed, stored) => {
  expect(readSeason(typed, ENGLISH_VOCABULARY)).toBe(stored);
});

test("only what is a window is read from the database", () => {
  expect([windowOf(null), windowOf("none"), windowOf("04-01/10-15"), windowOf("04-31/10-15"), windowOf("04-01")]).toEqual([
    null,
    null,
    { from: "04-01", to: "10-15" },
    null,
    null,
  ]);
});
