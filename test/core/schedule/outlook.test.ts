// Looking ahead: what falls due until a day or an odometer, and what of it goes together.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween, localDate } from "../../../src/core/calendar/arithmetic.ts";
import { ahead, type Ridden, riddenOf, stretchOf } from "../../../src/core/quantity/distance.ts";
import { evenings, type Horizon, outlook } from "../../../src/core/schedule/outlook.ts";
import { dueList } from "../../../src/core/schedule/status.ts";
import type { Forecast } from "../../../src/core/usage/forecast.ts";
import { aJob, anItem, every, facts, moment, noForecast } from "./builders.ts";

const TODAY = localDate("2026-11-25");
const at = riddenOf(14_000, "mi");
/** Ten miles a day, give or take a fifth. */
const daily: Forecast = {
  basis: { from: "nothing" },
  perWeek: stretchOf(70, "mi"),
  dateOf(ridden) {
    const days = Math.ceil((ridden - at) / stretchOf(10, "mi"));
    return { on: addDays(TODAY, days), from: addDays(TODAY, Math.ceil(days * 0.8)), to: addDays(TODAY, Math.ceil(days * 1.2)) };
  },
  riddenOn(date) {
    const gone = stretchOf(10 * daysBetween(TODAY, date), "mi");
    const by = (factor: number) => ahead(at, Math.round(gone * factor) as typeof gone);
    return { low: by(0.8), likely: by(1), high: by(1.2) };
  },
};
const items = [
  anItem({ key: "oil.replace", repeat: { by: "interval", every: every(4000, 12) } }),
  anItem({ key: "fluid.replace", anchor: "last done", repeat: { by: "interval", every: every(null, 24) } }),
  anItem({ key: "valves.inspect", repeat: { by: "interval", every: every(8000, null) } }),
  anItem({ key: "plugs.replace", anchor: "last done", repeat: { by: "interval", every: every(9000, null) } }),
  anItem({ key: "chain.lubricate", anchor: "last done", repeat: { by: "interval", every: every(300, null) } }),
];
const bike = facts(items, {
  jobs: [
    aJob("oil.replace", "2026-05-10", 12_000),
    aJob("fluid.replace", "2025-03-01", 9000),
    aJob("valves.inspect", "2026-05-10", 8000),
    aJob("plugs.replace", "2026-02-01", 7400),
    aJob("chain.lubricate", "2026-11-01", 13_990),
  ],
});
const now = { ...moment("2026-11-25", 14_000), forecast: daily };
const until = (day: string): Horizon => ({ on: localDate(day), ridden: daily.riddenOn(localDate(day)) });
const seen = (horizon: Horizon) =>
  outlook(bike, now, horizon).map(({ item, likely, on, at: point }) => [
    item,
    likely ? "likely" : "perhaps",
    on,
    point === null ? null : point / riddenOf(1, "mi"),
  ]);

describe("until midsummer", () => {
  test("each item that falls due, in order, with its day and its odometer; habits are left out", () => {
    // 208 days at ten miles a day: 16,080 mi, and 16,496 at most.
    expect(seen(until("2027-06-21"))).toEqual([
      ["fluid.replace", "likely", "2027-03-01", null],
      ["oil.replace", "likely", "2027-05-10", null],
      ["valves.inspect", "likely", "2027-06-13", 16_000],
      ["plugs.replace", "perhaps", "2027-06-21", 16_400],
    ]);
  });
  test("nothing, when all of it lies beyond", () => {
    expect(seen(until("2027-02-28"))).toEqual([]);
  });
  test("what is due already is due today", () => {
    const late = { ...now, today: localDate("2027-03-05") };
    expect(outlook(bike, late, until("2027-03-10"))[0]).toMatchObject({ item: "fluid.replace", on: "2027-03-05", likely: true });
  });
  test("without a forecast, by date alone", () => {
    const blind = { ...now, forecast: noForecast };
    expect(outlook(bike, blind, { on: localDate("2027-06-21"), ridden: null }).map(({ item }) => item)).toEqual(["fluid.replace", "oil.replace"]);
  });
  test("until an odometer, as if it had been read", () => {
    const point = riddenOf(16_000, "mi");
    const on = daily.dateOf(point)?.on ?? TODAY;
    expect(outlook(bike, now, { on, ridden: { low: point, likely: point, high: point } }).map(({ item }) => item)).toContain("valves.inspect");
    const before = (point - 1) as Ridden;
    expect(outlook(bike, now, { on, ridden: { low: before, likely: before, high: before } }).map(({ item }) => item)).not.toContain("valves.inspect");
  });
});

describe("evenings", () => {
  const falling = (on: string | null, mi: number | null) => ({
    item: `i${on}${mi}` as never,
    now: {} as never,
    likely: true,
    on: on === null ? null : localDate(on),
    at: mi === null ? null : riddenOf(mi, "mi"),
    by: "plan" as const,
  });
  const sizes = (...all: ReturnType<typeof falling>[]) => evenings(all, "mi").map((group) => group.length);
  test("within four weeks of the first of them, not of the last", () => {
    expect(sizes(falling("2027-03-01", null), falling("2027-03-29", null), falling("2027-03-30", null))).toEqual([2, 1]);
    expect(sizes(falling("2027-03-01", null), falling("2027-03-25", null), falling("2027-04-15", null))).toEqual([2, 1]);
  });
  test("within 500 mi of the first of them, however long that takes", () => {
    expect(sizes(falling("2027-03-01", 16_000), falling("2027-06-01", 16_500), falling("2027-06-02", 16_501))).toEqual([2, 1]);
    expect(sizes(falling(null, 16_000), falling(null, 16_400))).toEqual([2]);
  });
});

test("looking further ahead never loses an item, and each that falls due is due then by the schedule itself", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 700 }), fc.integer({ min: 0, max: 300 }), (days, more) => {
      const [near, far] = [until(addDays(TODAY, days)), until(addDays(TODAY, days + more))];
      const likely = (horizon: Horizon) => outlook(bike, now, horizon).flatMap((each) => (each.likely ? [each.item] : []));
      expect(likely(far)).toEqual(expect.arrayContaining(likely(near)));
      const then = dueList(bike, { today: near.on, ridden: near.ridden?.likely ?? null, hours: null, forecast: noForecast });
      const due = then.flatMap(({ item, status, habit }) => (!habit && (status === "due" || status === "overdue") ? [item] : []));
      expect(likely(near).toSorted()).toEqual(due.toSorted());
    }),
  );
});
