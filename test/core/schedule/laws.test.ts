// Laws of the schedule over generated plans and histories.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { PlanItem } from "../../../src/core/plan/plan.ts";
import { between, type Ridden, riddenOf, stretchOf } from "../../../src/core/quantity/distance.ts";
import type { Facts, Job, Moment, Status } from "../../../src/core/schedule/facts.ts";
import { lookAgainAt } from "../../../src/core/schedule/look-again.ts";
import { dueList } from "../../../src/core/schedule/status.ts";
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
  })
  .map(({ r, parked, noLateWindow, first }) => anItem({ ...r, parked, noLateWindow, first: r.anchor === "marks" ? first : null }));
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
const known = fc.record({ miles: fc.integer({ min: 0, max: 20_000 }), whole: fc.boolean() });
const factsOf = (i: PlanItem, jobs: readonly Job[], k: { miles: number; whole: boolean }): Facts =>
  facts([i], { jobs, knownFrom: { date: start, ridden: riddenOf(k.whole ? 0 : k.miles, "mi"), wholeSinceNew: k.whole } });
const at = (days: number, ridden: Ridden): Moment => ({ today: on(days), ridden, hours: null, forecast: noForecast });

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
        (i, jobs, k, day, miles, more) => {
          const f = factsOf(i, jobs, k);
          const [now, then] = [dueList(f, at(day, riddenOf(miles, "mi")))[0], dueList(f, at(day, riddenOf(miles + more, "mi")))[0]];
          expect(RANK[then?.status ?? "good"]).toBeGreaterThanOrEqual(RANK[now?.status ?? "good"]);
        },
      ),
      { numRuns: 1500 },
    );
  });

  test("the next due never falls as the last job's odometer rises", () => {
    fc.assert(
      fc.property(item, fc.integer({ min: 0, max: 50_000 }), fc.integer({ min: 0, max: 3000 }), (i, miles, more) => {
        const due = (job: number) =>
          only(facts([i], { jobs: [aJob("oil.replace", "2026-01-01", job)] }), moment("2026-01-02", job)).legs.find((leg) => leg.by === "distance");
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
        expect(RANK[after?.status ?? "good"]).toBeLessThanOrEqual(RANK[before?.status ?? "good"]);
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
    const f = facts([anItem({ anchor: "last done", repeat: { by: "interval", every: every(4000, null, 6000) } })]);
    for (const column of ["mi", "km"] as const) {
      const reach = column === "mi" ? 4000 : 6000;
      for (let last = 0; last <= 200_000 - reach; last += 7) {
        const jobs = [aJob("oil.replace", "2026-01-01", last, {}, column)];
        const statuses = [-0.1, 0].map((off) => dueList({ ...f, column, jobs }, moment("2026-01-02", last + reach + off, column))[0]?.status);
        if (statuses[0] !== "soon" || statuses[1] !== "due") throw new Error(`${last} ${column}: ${statuses.join()}`);
      }
    }
  });

  test("the next look is the first day on which a status changes by itself (by brute force, day by day)", () => {
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 4 }), history, known, fc.integer({ min: 0, max: 1500 }), (items, jobs, k, day) => {
        const named = items.map((i, n) => ({ ...i, key: `item${n}` as never }));
        const f: Facts = {
          ...factsOf(
            anItem(),
            jobs.map((job, n) => ({ ...job, item: `item${n % items.length}` as never })),
            k,
          ),
          plan: { items: named },
        };
        const ridden = lastOf(jobs)?.ridden ?? riddenOf(0, "mi");
        const statuses = (d: number) =>
          JSON.stringify(
            dueList(f, at(d, ridden))
              .map((due) => [due.item, due.status])
              .sort(),
          );
        const look = lookAgainAt(f, at(day, ridden));
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
