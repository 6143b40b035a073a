// What is the same thing to tell, and what is a new one.

import { expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { BikeId } from "../../src/core/ids.ts";
import { dialOf, riddenOf } from "../../src/core/quantity/distance.ts";
import { buildTrack } from "../../src/core/usage/track.ts";
import { noticeKey } from "../../src/reminders/keys.ts";
import { aJob, anItem, every, facts, moment, only } from "../core/schedule/builders.ts";

const HERON = "heron" as BikeId;
const oil = (miles: number, months: number | null = null) => anItem({ anchor: "last done", repeat: { by: "interval", every: every(miles, months) } });

/** The name of what is to tell after a job, with an odometer read on some days. @param at the figure noted with it, null when none was */
function key(at: number | null, readings: readonly (readonly [day: string, miles: number])[], item = oil(4000)): string {
  const epochs = [{ id: "e", from: localDate("2025-01-01"), lastOfOld: null, firstOfNew: dialOf(0, "mi"), unit: "mi", cause: "as bought" }] as const;
  const track = buildTrack(
    epochs,
    readings.map(([on, miles], order) => ({ id: on, on: localDate(on), order, dial: dialOf(miles, "mi") })),
  );
  const known = facts([item], {
    odometer: track,
    jobs: [aJob("oil.replace", "2026-03-10", at)],
    knownFrom: { date: localDate("2025-01-01"), ridden: riddenOf(0, "mi"), wholeSinceNew: true },
  });
  return noticeKey(HERON, only(known, moment("2026-09-01", 12_000)), "soon", null);
}
const EARLY = ["2026-03-01", 8000] as const;
const BETWEEN = ["2026-03-09", 8400] as const;
const LATE = ["2026-08-01", 12_000] as const;

test("a job without a figure stands at an estimate: a reading that moves it a little makes no new thing of it", () => {
  expect(key(null, [EARLY, BETWEEN, LATE])).toBe(key(null, [EARLY, LATE]));
});

test("another figure noted with the job, another interval or another job is a new thing", () => {
  expect(key(8400, [EARLY, LATE])).not.toBe(key(8300, [EARLY, LATE]));
  expect(key(8400, [EARLY, BETWEEN, LATE])).toBe(key(8400, [EARLY, LATE]));
  expect(key(null, [EARLY, LATE], oil(5000))).not.toBe(key(null, [EARLY, LATE]));
  expect(key(null, [EARLY, LATE], oil(4000, 24))).not.toBe(key(null, [EARLY, LATE], oil(4000, 12)));
});

test("a wear line makes a new thing of it once it is coming up, and its readings do not: each moves the line a little", () => {
  const worn = (low: number, likely: number, since = "first") => {
    const reaches = { low: riddenOf(low, "mi"), likely: riddenOf(likely, "mi"), high: null };
    const known = facts([oil(4000)], {
      jobs: [aJob("oil.replace", "2026-03-10", 8400)],
      wearing: low === 0 ? [] : [{ item: oil(4000).key, since, on: localDate("2026-08-01"), reaches }],
    });
    return noticeKey(HERON, only(known, moment("2026-09-01", 12_000)), "soon", null);
  };
  expect(worn(14_000, 15_000)).toBe(worn(0, 0));
  expect(worn(12_400, 13_000)).not.toBe(worn(0, 0));
  expect(worn(12_300, 12_800)).toBe(worn(12_400, 13_000));
  expect(worn(12_400, 13_000, "another")).not.toBe(worn(12_400, 13_000));
});
