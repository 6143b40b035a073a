// Laws of the schedule over generated plans and histories.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { PlanItem } from "../../../src/core/plan/plan.ts";
import { between, type Ridden, riddenOf, stretchOf } from "../../../src/core/quantity/distance.ts";
import { distanceLeg } from "../../../src/core/schedule/distance-leg.ts";
import type { Facts, Job, Moment, Status } from "../../../src/core/schedule/facts.ts";
import { lookAgainAt } from "../../../src/core/schedule/look-again.ts";
import { dueList } from "../../../src/core/schedule/status.ts";
import type { Forecast } from "../../../src/core/usage/forecast.ts";
import { aJob, anItem, every, facts, moment, noForecast, only } from "./builders.ts";

const RANK: Record<Status, number> = { "no record": 0, good: 0, soon: 1, due: 2, overdue: 3 };
const start = localDate("2025-01-01");
const on = (day: number) => addDays(start, day);

const interval = fc
  .record({ miles: fc.option(fc.integer({ min: 300, max: 30_000 }), { nil: null }), months: fc.option(fc.integer({ min: 1, max: 60 }), { nil: null }) })
  .filter((i) => i.miles !== null || i.months !== null);
const months = fc.option(fc.integer({ min: 1, max: 60 }), { nil: null });
/** Where the gaps of a list differ, none is more than three times its neighbour: a service table has no others. */
const markList = fc
  .record({
    base: fc.integer({ min: 500, max: 6000 }),
    factors: fc.array(fc.integer({ min: 100, max: 170 }), { minLength: 1, maxLength: 5 }),
    beyond: fc.option(fc.record({ factor: fc.integer({ min: 100, max: 170 }), months }), { nil: null }),
    thenFrom: fc.constantFrom("zero", "last mark"),
  })
  .map(({ base, factors, beyond, thenFrom }): PlanItem["repeat"] => {
    const gaps = factors.map((factor) => Math.round((base * factor) / 100));
    const at = gaps.map((_, n) => ({ miles: gaps.slice(0, n + 1).reduce((sum, gap) => sum + gap, 0), km: null }));
    return {
      by: "mark list",
      at,
      thenEvery: beyond === null ? null : every(Math.round((base * beyond.factor) / 100), beyond.months),
      thenFrom: thenFrom as "zero" | "last mark",
    };
  });
const repeat: fc.Arbitrary<{ readonly repeat: PlanItem["repeat"]; readonly anchor: PlanItem["anchor"] }> = fc.oneof(
  fc.record({ i: interval, anchor: fc.constantFrom("marks" as const, "last done" as const) }).map(({ i, anchor }) => ({
    anchor,
    repeat: { by: "interval" as const, every: every(i.miles, i.months) },
  })),
  fc.record({ nth: fc.integer({ min: 2, max: 5 }), miles: fc.integer({ min: 500, max: 8000 }), months }).map(({ nth, miles, months }) => ({
    anchor: "marks" as const,
    repeat: { by: "nth mark" as const, nth, base: { miles, km: null }, months },
  })),
  markList.map((list) => ({ anchor: "marks" as const, repeat: list })),
);
/** Running-in, where there is one, comes before the first regular mark. */
const item: fc.Arbitrary<PlanItem> = fc
  .record({
    r: repeat,
    parked: fc.constantFrom("counts" as const, "pauses" as const),
    noLateWindow: fc.boolean(),
    first: fc.option(fc.constant(every(200, null)), { nil: null }),
    dust: fc.option(interval, { nil: null }),
  })
  .map(({ r, parked, noLateWindow, first, dust }) =>
    anItem({
      ...r,
      parked,
      noLateWindow,
      first: r.anchor === "marks" ? first : null,
      shortened: dust === null ? {} : { dust: every(dust.miles, dust.months) },
    }),
  );
/** Jobs that go forward in time and distance together. */
const history = fc.array(fc.record({ days: fc.integer({ min: 0, max: 400 }), miles: fc.integer({ min: 0, max: 9000 }) }), { maxLength: 6 }).map((steps) => {
  let [day, miles] = [0, 0];
  return steps.map((step, n): Job => {
    day += step.days;
    miles += step.miles;
    return aJob("oil.replace", on(day), miles, { id: `j${n}` });
  });
});
const lastOf = (jobs: readonly Job[]) => jobs.at(-1);
const book: fc.Arbitrary<Facts["byTheBook"]> = fc.oneof(
  { weight: 3, arbitrary: fc.constant(null) },
  { weight: 1, arbitrary: fc.constant({ firstRegistered: null }) },
  { weight: 1, arbitrary: fc.integer({ min: -900, max: 0 }).map((days) => ({ firstRegistered: on(days) })) },
);
/** Lay-ups may overlap, and the last may still go on. */
const layUps = fc.array(fc.record({ from: fc.integer({ min: 0, max: 2400 }), days: fc.option(fc.integer({ min: 1, max: 250 }), { nil: null, freq: 8 }) }), {
  maxLength: 4,
});
const known = fc.record({ miles: fc.integer({ min: 0, max: 20_000 }), whole: fc.boolean(), book, layUps, dusty: fc.boolean() });
type Known = { miles: number; whole: boolean; book: Facts["byTheBook"]; layUps: readonly { from: number; days: number | null }[]; dusty: boolean };
const factsOf = (i: PlanItem, jobs: readonly Job[], k: Known): Facts =>
  facts([i], {
    jobs,
    knownFrom: { date: start, ridden: riddenOf(k.whole ? 0 : k.miles, "mi"), wholeSinceNew: k.whole },
    byTheBook: k.book,
    layUps: k.layUps.map(({ from, days }) => ({ from: on(from), to: days === null ? null : on(from + days) })),
    conditions: k.dusty ? ["dust"] : [],
  });
const at = (days: number, ridden: Ridden, forecast: Forecast = noForecast): Moment => ({ today: on(days), ridden, hours: null, forecast });
/** So many miles a day from a day and an odometer on. */
const steady = (day: number, from: Ridden, perDay: number): Forecast => ({
  ...noForecast,
  dateOf(ridden) {
    const likely = on(day + Math.max(0, Math.ceil((ridden - from) / stretchOf(perDay, "mi"))));
    return { on: likely, from: likely, to: null };
  },
});
const pace = fc.option(fc.integer({ min: 1, max: 60 }), { nil: null });

describe("laws", () => {
  test("more distance never makes an item less urgent on a fixed day", () => {
    fc.assert(
      fc.property(
        item,
        history,
        known,
        fc.integer({ min: 0, max: 2500 }),
        fc.integer({ min: 0, max: 60_000 }),
        fc.integer({ min: 0, max: 20_000 }),
        pace,
        (i, jobs, k, day, miles, more, perDay) => {
          const f = factsOf(i, jobs, k);
          const ahead = perDay === null ? noForecast : steady(day, riddenOf(miles, "mi"), perDay);
          const [now, then] = [dueList(f, at(day, riddenOf(miles, "mi"), ahead))[0], dueList(f, at(day, riddenOf(miles + more, "mi"), ahead))[0]];
          expect(RANK[then?.status ?? "good"]).toBeGreaterThanOrEqual(RANK[now?.status ?? "good"]);
        },
      ),
      { numRuns: 1500 },
    );
  });

  test("the next due never falls as the last job's odometer rises", () => {
    fc.assert(
      fc.property(item, fc.integer({ min: 0, max: 50_000 }), fc.integer({ min: 0, max: 3000 }), book, (i, miles, more, byTheBook) => {
        const due = (job: number) =>
          only(facts([i], { byTheBook, jobs: [aJob("oil.replace", "2026-01-01", job)] }), moment("2026-01-02", job)).legs.find((leg) => leg.by === "distance");
        const [a, b] = [due(miles), due(miles + more)];
        if (a?.by !== "distance" || b?.by !== "distance") return;
        expect(b.dueAt).toBeGreaterThanOrEqual(a.dueAt);
      }),
      { numRuns: 1500 },
    );
  });

  test("the next due lies ahead of the last job, and at most an interval and its window away", () => {
    fc.assert(
      fc.property(item, fc.integer({ min: 0, max: 100_000 }), (i, miles) => {
        const leg = only(facts([i], { jobs: [aJob("oil.replace", "2026-01-01", miles)] }), moment("2026-01-02", miles)).legs.find(
          (each) => each.by === "distance",
        );
        if (leg?.by !== "distance") return;
        const gap = between(riddenOf(miles, "mi"), leg.dueAt);
        const interval = leg.interval / stretchOf(1, "mi");
        expect(gap).toBeGreaterThan(0);
        expect(gap).toBeLessThanOrEqual(stretchOf(interval + Math.min(500, Math.floor(interval / 10)), "mi"));
      }),
      { numRuns: 1500 },
    );
  });

  test("recording a job today never makes its item more urgent", () => {
    fc.assert(
      fc.property(item, history, known, fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 9000 }), (i, jobs, k, days, more) => {
        const f = factsOf(i, jobs, k);
        const last = lastOf(jobs);
        const day = on(days + 2500);
        const ridden = riddenOf((last?.ridden ?? 0) / riddenOf(1, "mi") + more, "mi");
        const m: Moment = { today: day, ridden, hours: null, forecast: noForecast };
        const [before, after] = [
          dueList(f, m)[0],
          dueList({ ...f, jobs: [...f.jobs, aJob("oil.replace", day, ridden / riddenOf(1, "mi"), { id: "new" })] }, m)[0],
        ];
        // "No record" stands outside the order: by the book, early work that does not count leaves the mark where it is, coming up.
        if (before?.status !== "no record") expect(RANK[after?.status ?? "good"]).toBeLessThanOrEqual(RANK[before?.status ?? "good"]);
        else expect(after?.status === "due" || after?.status === "overdue").toBe(false);
      }),
      { numRuns: 1500 },
    );
  });

  test("converting the unit of a bike whose columns are converted changes no status", () => {
    fc.assert(
      fc.property(item, history, known, fc.integer({ min: 0, max: 2500 }), fc.integer({ min: 0, max: 60_000 }), (i, jobs, k, day, miles) => {
        const f = factsOf(i, jobs, k);
        // Only miles are printed: a kilometre bike goes by them converted.
        const status = (column: "mi" | "km") => dueList({ ...f, column }, at(day, riddenOf(miles, "mi")))[0]?.status;
        expect(status("km")).toBe(status("mi"));
      }),
      { numRuns: 1500 },
    );
  });

  test("the order in which records arrive does not matter", () => {
    fc.assert(
      fc.property(item, history, known, fc.integer({ min: 0, max: 2500 }), fc.integer({ min: 0, max: 60_000 }), (i, jobs, k, day, miles) => {
        const m = at(day, riddenOf(miles, "mi"));
        expect(dueList(factsOf(i, [...jobs].reverse(), k), m)).toEqual(dueList(factsOf(i, jobs, k), m));
      }),
      { numRuns: 500 },
    );
  });

  test("an item is due at exactly its distance, for every whole mile and kilometre to 200,000", () => {
    const exact = anItem({ anchor: "last done", repeat: { by: "interval", every: every(4000, null, 6000) } });
    const f = facts([exact]);
    for (const column of ["mi", "km"] as const) {
      const reach = column === "mi" ? 4000 : 6000;
      const [once, then] = [aJob("oil.replace", "2026-01-01", 0, {}, column), moment("2026-01-02", 0, column)];
      for (let last = 0; last <= 200_000 - reach; last++) {
        const ridden = riddenOf(last, column);
        const jobs = [{ job: once, ridden, atMost: ridden, about: false, off: stretchOf(0, column) }];
        const state = (odometer: number) => distanceLeg(exact, jobs, { ...f, column }, { ...then, ridden: riddenOf(odometer, column) })?.leg.state;
        const states = [state(last + reach - 0.1), state(last + reach)];
        if (states[0] !== "soon" || states[1] !== "due") throw new Error(`${last} ${column}: ${states.join()}`);
      }
    }
  });

  test("the next look is the first day on which a status changes by itself (by brute force, day by day)", () => {
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 4 }), history, known, fc.integer({ min: 0, max: 1500 }), pace, (items, jobs, k, day, perDay) => {
        const named = items.map((i, n) => ({ ...i, key: `item${n}` as never }));
        const f: Facts = {
          ...factsOf(
            anItem(),
            jobs.map((job, n) => ({ ...job, item: `item${n % items.length}` as never })),
            // A lay-up begins and ends by being said: none does by itself.
            { ...k, layUps: k.layUps.filter(({ from, days }) => from + (days ?? 0) <= day) },
          ),
          plan: { items: named },
        };
        const ridden = lastOf(jobs)?.ridden ?? riddenOf(0, "mi");
        const ahead = perDay === null ? noForecast : steady(day - 20, ridden, perDay);
        const statuses = (d: number) =>
          JSON.stringify(
            dueList(f, at(d, ridden, ahead))
              .map((due) => [due.item, due.status])
              .sort(),
          );
        const look = lookAgainAt(f, at(day, ridden, ahead));
        const now = statuses(day);
        for (let d = day + 1; d < day + 400; d++) {
          if (statuses(d) === now) continue;
          // It may look earlier than a change, never later.
          expect(look !== null && look <= on(d)).toBe(true);
          return;
        }
      }),
      { numRuns: 200 },
    );
  });
});
