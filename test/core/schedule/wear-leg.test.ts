// What comes next is the earlier of the plan and the wear line: worked examples in figures that can be checked by hand, and the law that holds for all.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween, localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { LocalDate } from "../../../src/core/calendar/dates.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import { figureIn, type Ridden, riddenOf, stretchOf } from "../../../src/core/quantity/distance.ts";
import type { Facts, Wearing } from "../../../src/core/schedule/facts.ts";
import { lookAgainAt } from "../../../src/core/schedule/look-again.ts";
import { outlook, rangeOf } from "../../../src/core/schedule/outlook.ts";
import type { Forecast } from "../../../src/core/usage/forecast.ts";
import { aJob, anItem, every, facts, moment, noForecast, only } from "./builders.ts";

const KEY = "rear-tread.measure";
const mi = (figure: number): Ridden => riddenOf(figure, "mi");

/** Read on 1 November; the line reaches the limit at these figures of the odometer. */
const wearing = (low: number, likely: number, high: number | null, over: Partial<Wearing> = {}): Wearing => ({
  ...{ item: KEY as ItemKey, since: "first", on: localDate("2026-11-01") },
  reaches: { low: mi(low), likely: mi(likely), high: high === null ? null : mi(high) },
  ...over,
});

/** Measured every 2,000 mi, last at 14,000 mi: the plan comes round at 16,000 mi. */
const bike = (worn: readonly Wearing[], over: Partial<Facts> = {}): Facts =>
  facts([anItem({ key: KEY, action: "measure", anchor: "last done", repeat: { by: "interval", every: every(2000, null) } })], {
    jobs: [aJob(KEY, "2026-11-01", 14_000)],
    wearing: worn,
    ...over,
  });

/** So many miles a day from a figure on a day, without any doubt. */
const steady = (from: number, on: string, aDay: number): Forecast => {
  const day = (point: Ridden): LocalDate => addDays(localDate(on), Math.ceil((figureIn(point, "mi") - from) / aDay));
  return {
    basis: { from: "readings", readings: 5, days: 100 },
    perWeek: null,
    dateOf: (point) => ({ on: day(point), from: day(point), to: day(point) }),
    riddenOn: (date) => {
      const at = mi(from + aDay * daysBetween(localDate(on), date));
      return { low: at, likely: at, high: at };
    },
  };
};

const wearOf = (f: Facts, ridden: number | null, forecast = noForecast, today = "2026-11-25") => {
  const due = only(f, moment(today, ridden, "mi", forecast), KEY);
  const leg = due.legs.find(({ by }) => by === "wear");
  return { status: due.status, governs: due.governs === null ? null : due.legs[due.governs]?.by, leg: leg?.by === "wear" ? leg : null };
};

describe("when it is coming up and when it is due", () => {
  const worn = bike([wearing(15_000, 15_650, 16_500)]);
  test("coming up from 500 mi before the low end of its range: 15,000 − 500 = 14,500 mi", () => {
    expect(wearOf(worn, 14_499)).toMatchObject({ status: "good", leg: { state: "ahead" } });
    expect(wearOf(worn, 14_500)).toMatchObject({ status: "soon", governs: "wear", leg: { state: "soon" } });
  });
  test("in a bike of kilometres from 800 km before it: 24,000 − 800 = 23,200 km", () => {
    const km = (figure: number): Ridden => riddenOf(figure, "km");
    const metric = bike([{ ...wearing(0, 0, null), reaches: { low: km(24_000), likely: km(25_000), high: null } }], { column: "km", jobs: [] });
    const state = (at: number) => only(metric, moment("2026-11-25", at, "km"), KEY).legs.find(({ by }) => by === "wear")?.state;
    expect([state(23_199), state(23_200)]).toEqual(["ahead", "soon"]);
  });
  test("what is left is said by the likely figure: 15,650 − 14,700 = 950 mi", () => {
    expect(wearOf(worn, 14_700).leg?.toGo).toBe(stretchOf(950, "mi"));
  });
  test("due where the odometer is read at the likely figure, and never overdue: only measuring tells how far beyond", () => {
    expect(wearOf(worn, 15_649).leg?.state).toBe("soon");
    expect(wearOf(worn, 15_650).leg?.state).toBe("due");
    expect(wearOf(worn, 30_000).leg?.state).toBe("due");
  });
  test("coming up 30 days before the low end too: 17,000 − 14,700 = 2,300 mi, at 76 mi a day in 31 days, at 77 in 30", () => {
    const far = bike([wearing(17_000, 18_000, 19_000)]);
    expect(wearOf(far, 14_700, steady(14_700, "2026-11-25", 76)).leg?.state).toBe("ahead");
    expect(wearOf(far, 14_700, steady(14_700, "2026-11-25", 77)).leg?.state).toBe("soon");
  });
  test("it is looked at again on the day on which that is reached: 2,300 mi at 10 mi a day are 230 days, less 30", () => {
    const far = bike([wearing(17_000, 18_000, 19_000)], { jobs: [aJob(KEY, "2026-11-01", 40_000)] });
    expect(lookAgainAt(far, moment("2026-11-25", 14_700, "mi", steady(14_700, "2026-11-25", 10)))).toBe(addDays(localDate("2026-11-25"), 200));
  });
  test("without a reading of the odometer it cannot tell", () => expect(wearOf(worn, null).leg?.state).toBe("cannot tell"));
  test("of two parts at one item the one that is first at its limit tells", () => {
    const both = bike([wearing(17_000, 18_000, null), wearing(15_000, 15_650, null)]);
    expect(wearOf(both, 14_000).leg?.dueAt).toBe(mi(15_650));
  });
});

describe("what ends it", () => {
  const worn = wearing(15_000, 15_650, 16_500);
  const stillWears = (outcome: "done" | "replaced" | "adjusted", on: string, item = KEY) =>
    wearOf(bike([worn], { jobs: [aJob(item, on, 14_600, { outcome })] }), 14_700).leg !== null;
  test("a new part put on since it was last read", () => {
    expect(stillWears("replaced", "2026-11-10")).toBe(false);
    expect(stillWears("replaced", "2026-10-31")).toBe(true);
  });
  test("measuring it, or setting something, does not make it new", () => {
    expect(stillWears("done", "2026-11-10")).toBe(true);
    expect(stillWears("adjusted", "2026-11-10")).toBe(true);
  });
  test("the work that covers it does", () => {
    const items = [anItem({ key: KEY, action: "measure" }), anItem({ key: "rear-tyre.replace", covers: [KEY] })];
    const covered = facts(items, { jobs: [aJob("rear-tyre.replace", "2026-11-10", 14_600)], wearing: [worn] });
    expect(wearOf(covered, 14_700).leg).toBeNull();
  });
});

describe("the earlier of plan and wear", () => {
  const falls = (worn: readonly Wearing[], forecast: Forecast) => {
    const at = moment("2026-11-25", 14_700, "mi", forecast);
    const until = addDays(at.today, 1000);
    const [first] = outlook(bike(worn), at, { on: until, ridden: forecast.riddenOn(until) ?? { low: mi(40_000), likely: mi(40_000), high: mi(40_000) } });
    if (first === undefined) throw new Error("falls due");
    return { at: first.at === null ? null : figureIn(first.at, "mi"), on: first.on, by: first.by, range: rangeOf(first, at) };
  };
  test("wear at 15,650 mi comes before the plan's 16,000 mi: at 10 mi a day (15,650 − 14,700) / 10 = 95 days from 25 November", () => {
    expect(falls([wearing(15_000, 15_650, 16_500)], steady(14_700, "2026-11-25", 10))).toEqual({
      ...{ at: 15_650, on: "2027-02-28", by: "wear" },
      // 300 mi are 30 days, 1,800 mi are 180: the road itself is without doubt here.
      range: { on: "2027-02-28", from: "2026-12-25", to: "2027-05-24" },
    });
  });
  test("wear at 16,400 mi comes after it", () => {
    expect(falls([wearing(15_500, 16_400, 17_500)], steady(14_700, "2026-11-25", 10))).toMatchObject({ at: 16_000, by: "plan" });
  });
  test("and so it is where no day is known", () => {
    expect(falls([wearing(15_000, 15_650, 16_500)], noForecast)).toMatchObject({ at: 15_650, on: null, by: "wear", range: null });
    expect(falls([wearing(15_500, 16_400, 17_500)], noForecast)).toMatchObject({ at: 16_000, on: null, by: "plan" });
  });
  test("with too few readings for a line the plan tells alone", () => {
    expect(falls([], steady(14_700, "2026-11-25", 10))).toMatchObject({ at: 16_000, by: "plan" });
  });
  test("what is looked at between rides is told of once it is coming up by wear, and foreseen before", () => {
    const habit = (worn: readonly Wearing[]) =>
      facts([anItem({ key: KEY, anchor: "last done", repeat: { by: "interval", every: every(500, null) } })], { wearing: worn });
    expect(only(habit([wearing(16_000, 17_000, null)]), moment("2026-11-25", 14_700), KEY).habit).toBe(true);
    expect(only(habit([wearing(15_000, 15_650, null)]), moment("2026-11-25", 14_700), KEY)).toMatchObject({ habit: false, status: "soon" });
    const horizon = { on: localDate("2027-11-25"), ridden: { low: mi(18_000), likely: mi(18_000), high: mi(18_000) } };
    expect(outlook(habit([wearing(16_000, 17_000, null)]), moment("2026-11-25", 14_700), horizon)).toHaveLength(1);
    expect(outlook(habit([]), moment("2026-11-25", 14_700), horizon)).toHaveLength(0);
  });
  test("for any plan and any line, what comes next is never later than either", () => {
    const RANK = { "no record": 0, good: 1, soon: 2, due: 3, overdue: 4 } as const;
    fc.assert(
      fc.property(
        fc.record({
          ...{ miles: fc.option(fc.integer({ min: 1000, max: 20_000 }), { nil: null }), months: fc.option(fc.integer({ min: 2, max: 36 }), { nil: null }) },
          ...{ low: fc.integer({ min: 14_000, max: 30_000 }), more: fc.integer({ min: 0, max: 8000 }), aDay: fc.integer({ min: 1, max: 200 }) },
          ...{ done: fc.integer({ min: 9000, max: 14_700 }), knows: fc.boolean() },
        }),
        ({ miles, months, low, more, aDay, done, knows }) => {
          const forecast = knows ? steady(14_700, "2026-11-25", aDay) : noForecast;
          const at = moment("2026-11-25", 14_700, "mi", forecast);
          const until = addDays(at.today, 30_000);
          const far = mi(200_000);
          const item = anItem({ key: KEY, action: "measure", anchor: "last done", repeat: { by: "interval", every: every(miles, months) } });
          const plan = facts([item], { jobs: [aJob(KEY, "2026-06-01", done)] });
          const both: Facts = { ...plan, wearing: [wearing(low, low + more, null)] };
          const next = (f: Facts) => outlook(f, at, { on: until, ridden: { low: far, likely: far, high: far } })[0];
          const [combined, alone] = [next(both), next(plan)];
          const worn = low + more <= 14_700 ? at.today : (forecast.dateOf(mi(low + more))?.on ?? null);
          expect(combined).toBeDefined();
          for (const other of [alone?.on ?? null, worn]) if (combined?.on != null && other !== null) expect(combined.on <= other).toBe(true);
          // Where no day is known, or both come on one day, it is the nearer of two distances.
          if (alone?.at != null && combined?.at != null) expect(combined.at <= Math.min(alone.at, mi(low + more))).toBe(true);
          expect(RANK[only(both, at, KEY).status]).toBeGreaterThanOrEqual(RANK[only(plan, at, KEY).status]);
        },
      ),
      { numRuns: 400 },
    );
  });
});
