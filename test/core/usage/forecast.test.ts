import { describe, expect, test } from "vitest";
import { addDays, daysBetween, localDate } from "../../../src/core/calendar/arithmetic.ts";
import { ahead, dialOf, figureIn, stretchOf } from "../../../src/core/quantity/distance.ts";
import { forecast } from "../../../src/core/usage/forecast.ts";
import { buildTrack, type Track } from "../../../src/core/usage/track.ts";

const start = localDate("2025-01-04");
const bought = { id: "e1", from: start, lastOfOld: null, firstOfNew: dialOf(1000, "mi"), unit: "mi", cause: "as bought" } as const;
const none = { layUps: [], trips: [] };

/** A rider logging every week; miles a week by month. */
function weekly(weeks: number, milesIn: (month: number) => number): Track {
  let total = 1000;
  const readings = [];
  for (let week = 0; week <= weeks; week++) {
    const on = addDays(start, week * 7);
    readings.push({ id: `r${week}`, on, order: week, dial: dialOf(Math.round(total), "mi") });
    total += milesIn(Number(on.slice(5, 7)));
  }
  return buildTrack([bought], readings);
}

describe("a steady rider of 100 miles a week", () => {
  const track = weekly(40, () => 100);
  const last = track.points.at(-1);
  if (last === undefined) throw new Error("no points");
  const f = forecast(track, none, { perYear: null }, null, last.on);

  test("rides 400 miles in about four weeks", () => {
    const reached = f.dateOf(ahead(last.ridden, stretchOf(400, "mi")));
    expect(Math.abs(daysBetween(last.on, reached?.on ?? last.on) - 28)).toBeLessThanOrEqual(2);
    expect(reached !== null && reached.from <= reached.on && (reached.to === null || reached.on <= reached.to)).toBe(true);
    // Forty weeks outweigh what riders ride on average.
    expect(Math.abs(figureIn(f.perWeek ?? stretchOf(0, "mi"), "mi") - 100)).toBeLessThan(2);
  });

  test("says how it knows", () => {
    expect(f.basis).toEqual({ from: "readings", readings: 41, days: 280 });
  });

  test("the odometer ahead never falls with time, nor below the last reading", () => {
    let before = 0;
    for (let days = 0; days < 800; days += 5) {
      const on = f.riddenOn(addDays(last.on, days));
      if (on === null) throw new Error("no answer");
      expect(on.low).toBeGreaterThanOrEqual(last.ridden);
      expect(on.low).toBeLessThanOrEqual(on.likely);
      expect(on.likely).toBeLessThanOrEqual(on.high);
      expect(on.likely).toBeGreaterThanOrEqual(before);
      before = on.likely;
    }
  });

  test("a lay-up rides nothing, so the date moves behind it", () => {
    const parked = { layUps: [{ from: last.on, to: addDays(last.on, 150) }], trips: [] };
    const reached = forecast(track, parked, { perYear: null }, null, last.on).dateOf(ahead(last.ridden, stretchOf(400, "mi")));
    expect(daysBetween(last.on, reached?.on ?? last.on)).toBeGreaterThan(170);
  });

  test("days laid up between two readings do not thin the pace, wherever in the gap they lie", () => {
    // A hundred miles a week, read in September and again in May, laid up from October to April.
    const read = (on: string, miles: number, order: number) => ({ id: on, on: localDate(on), order, dial: dialOf(miles, "mi") });
    const gap = buildTrack([bought], [read("2025-06-01", 1000, 0), read("2025-09-03", 2343, 1), read("2026-05-01", 3143, 2), read("2026-05-29", 3543, 3)]);
    const layUps = [{ from: localDate("2025-10-01"), to: localDate("2026-04-03") }];
    const pace = (laid: typeof layUps) =>
      figureIn(forecast(gap, { layUps: laid, trips: [] }, { perYear: null }, null, localDate("2026-05-29")).perWeek ?? (0 as never), "mi");
    // Without the lay-up the winter looks like riding seldom; with it, nothing was ever seen but a hundred a week.
    const inAYear = (laid: typeof layUps) => {
      const f = forecast(gap, { layUps: laid, trips: [] }, { perYear: null }, null, localDate("2026-05-29"));
      return figureIn(((f.riddenOn(localDate("2027-05-29"))?.likely ?? 0) - (gap.points.at(-1)?.ridden ?? 0)) as never, "mi");
    };
    expect(Math.abs(pace(layUps) - 100)).toBeLessThan(10);
    expect(inAYear(layUps)).toBeGreaterThan(1.25 * inAYear([]));
  });

  test("a planned trip rides its own distance", () => {
    const trip = { layUps: [], trips: [{ from: addDays(last.on, 7), to: addDays(last.on, 16), distance: stretchOf(2000, "mi") }] };
    const reached = forecast(track, trip, { perYear: null }, null, last.on).dateOf(ahead(last.ridden, stretchOf(1000, "mi")));
    expect(daysBetween(last.on, reached?.on ?? last.on)).toBeLessThanOrEqual(13);
  });
});

test("a rider who parks for the winter is not expected to ride through the next one", () => {
  const track = weekly(92, (month) => (month >= 4 && month <= 10 ? 120 : 0));
  const last = track.points.at(-1);
  if (last === undefined) throw new Error("no points");
  const f = forecast(track, none, { perYear: null }, null, last.on);
  const winter = (f.riddenOn(localDate("2027-03-01"))?.likely ?? 0) - (f.riddenOn(localDate("2026-12-01"))?.likely ?? 0);
  const summer = (f.riddenOn(localDate("2027-08-01"))?.likely ?? 0) - (f.riddenOn(localDate("2027-05-01"))?.likely ?? 0);
  expect(winter).toBeLessThan(summer / 4);
});

describe("with too little to learn from", () => {
  const track = weekly(1, () => 100);
  const at = track.points.at(-1)?.on ?? start;
  test("the member's own yearly figure comes first, then the group's, then nothing", () => {
    const own = { perYear: stretchOf(5200, "mi") };
    expect(forecast(track, none, own, { perYear: stretchOf(999, "mi") }, at).basis.from).toBe("yearly figure");
    expect(forecast(track, none, { perYear: null }, { perYear: stretchOf(5200, "mi") }, at).basis.from).toBe("group median");
    const blank = forecast(track, none, { perYear: null }, null, at);
    expect(blank.basis.from).toBe("nothing");
    expect(blank.dateOf(ahead(track.points[0]?.ridden ?? (0 as never), stretchOf(10, "mi")))).toBeNull();
  });
});

describe("the member's own yearly figure", () => {
  /** What is expected of a year at 100 miles a week, said to be 10,400 miles, beside what is expected when nothing is said. */
  const sway = (weeks: number): number => {
    const track = weekly(weeks, () => 100);
    const last = track.points.at(-1);
    if (last === undefined) throw new Error("no points");
    const inAYear = (perYear: ReturnType<typeof stretchOf> | null): number =>
      (forecast(track, none, { perYear }, null, last.on).riddenOn(addDays(last.on, 364))?.likely ?? 0) - last.ridden;
    return inAYear(stretchOf(10_400, "mi")) / inAYear(null);
  };
  test("still counts with readings a few weeks apart, and fades with more of them", () => {
    expect(sway(3)).toBeGreaterThan(1.1);
    expect(sway(60)).toBeLessThan(1.05);
    expect(sway(60)).toBeLessThan(sway(20));
    expect(sway(20)).toBeLessThan(sway(3));
  });
});

test("a few still weeks of a rider who has stated nothing do not speak for the whole year", () => {
  const track = weekly(6, () => 2);
  const last = track.points.at(-1);
  if (last === undefined) throw new Error("no points");
  const f = forecast(track, none, { perYear: null }, null, last.on);
  const high = (days: number) => figureIn(f.riddenOn(addDays(last.on, days))?.high ?? last.ridden, "mi") - figureIn(last.ridden, "mi");
  // At that pace 180 days are 51 miles; riders ride about 2,000 a year, most of it in a season that may be to come.
  expect(high(180)).toBeGreaterThan(1000);
  expect(high(180)).toBeLessThan(3000);
});

test("one long trip a year is expected about the same time next year, and not again this year", () => {
  let total = 1000;
  const readings = Array.from({ length: 80 }, (_, week) => {
    const on = addDays(start, week * 7);
    total += week === 26 || week === 78 ? 2000 : 40;
    return { id: `r${week}`, on, order: week, dial: dialOf(total, "mi") };
  });
  const after = (weeks: number, days: number): number => {
    const track = buildTrack([bought], readings.slice(0, weeks));
    const last = track.points.at(-1);
    if (last === undefined) throw new Error("no points");
    return figureIn(((forecast(track, none, { perYear: null }, null, last.on).riddenOn(addDays(last.on, days))?.likely ?? 0) - last.ridden) as never, "mi");
  };
  // In spring a trip of 2,000 miles is still to come; after it, the rest of the summer holds none.
  expect(after(66, 150)).toBeGreaterThan(2000);
  expect(after(30, 150)).toBeLessThan(1200);
});
