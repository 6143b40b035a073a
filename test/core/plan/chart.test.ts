// The service chart of a plan, and the way back from a chart to triggers.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isFitted } from "../../../src/core/equipment.ts";
import { chartOf, MOST_SERVICES } from "../../../src/core/plan/chart.ts";
import { triggerOf } from "../../../src/core/plan/from-chart.ts";
import type { Columns, PlanItem } from "../../../src/core/plan/plan.ts";
import { isHabit } from "../../../src/core/schedule/intervals.ts";
import { KINDS, type KindId } from "../../../src/trade/kinds.ts";
import { STARTER_PLANS } from "../../../src/trade/starter-plans.ts";
import { anItem, every } from "../schedule/builders.ts";

const grid = (items: readonly PlanItem[], end: number | null = null) => {
  const { marks, rows } = chartOf(items, "mi", [], end);
  return [marks, ...rows.map((row) => [row.item, ...row.at])];
};
const nth = (n: number, miles: number): PlanItem["repeat"] => ({ by: "nth mark", nth: n, base: { miles, km: null }, months: null });

describe("a chart", () => {
  const oil = anItem({ first: every(600, null) });
  test("shows one whole cycle, running-in and all", () => {
    expect(grid([oil, anItem({ key: "plugs", repeat: nth(3, 4000) })])).toEqual([
      [600, 4000, 8000, 12_000],
      ["oil.replace", 600, 4000, 8000, 12_000],
      ["plugs", 12_000],
    ]);
  });
  test("goes as far as asked; what falls due later stands below, in words", () => {
    const chart = chartOf([oil, anItem({ key: "plugs", repeat: nth(3, 4000) })], "mi", [], 8000);
    expect(chart.marks).toEqual([600, 4000, 8000]);
    expect(chart.below.map((row) => [row.item, row.beside?.repeat])).toEqual([["plugs", nth(3, 4000)]]);
  });
  test("has a calendar leg beside the marks, and what goes from the last time or is a habit below", () => {
    const chart = chartOf(
      [
        oil,
        anItem({ key: "fluid", anchor: "last done", repeat: { by: "interval", every: every(null, 24) } }),
        anItem({ key: "lube", repeat: { by: "interval", every: every(300, null) } }),
      ],
      "mi",
      [],
      null,
    );
    expect(chart.rows.map((row) => row.beside?.repeat)).toEqual([{ by: "interval", every: every(null, 12) }]);
    expect(chart.below.map((row) => [row.item, row.habit, row.beside?.anchor])).toEqual([
      ["fluid", false, "last done"],
      ["lube", true, "marks"],
    ]);
  });
  test("is shortened by the bike's use", () => {
    const dusty = anItem({ shortened: { dust: every(2000, null) } });
    expect(chartOf([dusty], "mi", ["dust"], 8000).marks).toEqual([2000, 4000, 6000, 8000]);
    expect(chartOf([dusty], "mi", [], 8000).marks).toEqual([4000, 8000]);
  });
  test("takes the bike's own column, and says what is converted from the other", () => {
    const both = anItem({ repeat: { by: "interval", every: every(4000, null, 6000) } });
    const miles = anItem({ key: "miles" });
    const { marks, rows } = chartOf([both, miles], "km", [], 13_000);
    expect([marks, rows.map((row) => row.converted)]).toEqual([
      [6000, 6437, 12_000, 12_875],
      [false, true],
    ]);
  });
  test("of too many services is cut, and says so", () => {
    const often = anItem({ repeat: { by: "interval", every: every(1000, null) } });
    const chart = chartOf([often], "mi", [], 100_000);
    expect([chart.marks.length, chart.cut]).toEqual([MOST_SERVICES, true]);
  });
});

describe.each(Object.keys(KINDS) as KindId[])("the starter plan of a %s", (kind) => {
  const items = STARTER_PLANS[kind].items.filter((item) => isFitted(item.fits, KINDS[kind].equipment));
  test.each(["mi", "km"] as const)("has every item in its chart once, none at an empty service, in %s", (column) => {
    const chart = chartOf(items, column, [], null);
    const [inGrid, below] = [chart.rows.map((row) => row.item), chart.below.map((row) => row.item)];
    expect([...inGrid, ...below].sort()).toEqual(items.map((item) => item.key).sort());
    const byMarks = items.filter((item) => item.anchor === "marks" && !isHabit(item, column)).map((item) => item.key);
    expect(byMarks.filter((key) => !inGrid.includes(key))).toEqual([]);
    expect(byMarks.length).toBeGreaterThan(10);
    expect(chart.marks.filter((mark) => !chart.rows.some((row) => row.at.includes(mark)))).toEqual([]);
  });
  test.each(["mi", "km"] as const)("comes round anew behind its chart, or the chart says that it is cut, in %s", (column) => {
    const chart = chartOf(items, column, [], null);
    const end = chart.marks.at(-1) ?? 0;
    const longer = chartOf(items, column, [], 2 * end);
    const comesRound = longer.rows.every(({ item, at }) => {
      const first = items.find(({ key }) => key === item)?.first?.[column === "mi" ? "miles" : "km"];
      const [before, behind] = [at.filter((mark) => mark <= end && mark !== first), at.filter((mark) => mark > end)];
      return JSON.stringify(behind.map((mark) => mark - end)) === JSON.stringify(before);
    });
    // Twice as many services as a chart can hold cannot be looked at.
    if (!longer.cut) expect([column, comesRound]).toEqual([column, !chart.cut]);
    else expect(chart.cut).toBe(true);
  });
});

test("a chart goes on until every service has come round, and no farther", () => {
  const plan = [4000, 6000].map((miles) => anItem({ key: `every${miles}`, repeat: { by: "interval", every: every(miles, null) } }));
  // 4, 8, 12 and 6, 12: the least number that is a whole number of both, and neither 6 nor 24.
  expect(chartOf(plan, "mi", [], null)).toMatchObject({ marks: [4000, 6000, 8000, 12_000], cut: false });
  const seldom = [...plan, anItem({ key: "seldom", repeat: { by: "interval", every: every(7000, null) } })];
  // Only after 84,000: the chart is begun, with each in it, and says so.
  expect(chartOf(seldom, "mi", [], null)).toMatchObject({ marks: [4000, 6000, 7000], cut: true });
});

/** What a row prints, read back: a plan item again. */
function readBack(item: PlanItem, at: readonly number[], marks: readonly number[], months: number | null): PlanItem {
  const columns = marks.map((miles): Columns => ({ miles, km: null }));
  const beside = months === null ? null : { every: every(null, months), fromLast: false };
  const trigger = triggerOf(columns, { at: at.map((mark) => marks.indexOf(mark)), beside }, null);
  if (typeof trigger === "string") throw new Error(trigger);
  return { ...item, first: trigger.first ?? null, repeat: trigger.repeat, anchor: trigger.anchor ?? item.anchor };
}

const months = fc.option(fc.constantFrom(6, 12, 24), { nil: null });
const step = fc.integer({ min: 10, max: 80 }).map((n) => n * 100);
const repeat: fc.Arbitrary<PlanItem["repeat"]> = fc.oneof(
  fc.record({ miles: step, months }).map((r) => ({ by: "interval" as const, every: every(r.miles, r.months) })),
  fc.record({ n: fc.integer({ min: 2, max: 5 }), miles: step, months }).map((r) => ({ ...nth(r.n, r.miles), months: r.months }) as PlanItem["repeat"]),
  fc
    .record({
      gaps: fc.array(step, { minLength: 1, maxLength: 5 }),
      beyond: fc.option(step, { nil: null }),
      months,
      from: fc.constantFrom("zero", "last mark"),
    })
    .map((r): PlanItem["repeat"] => ({
      by: "mark list",
      at: r.gaps.map((_, n) => ({ miles: r.gaps.slice(0, n + 1).reduce((sum, gap) => sum + gap, 0), km: null })),
      thenEvery: r.beyond === null && r.months === null ? null : every(r.beyond, r.months),
      thenFrom: r.from as "zero" | "last mark",
    })),
);
const somePlan = fc
  .array(fc.record({ repeat, first: fc.option(fc.constantFrom(300, 600, 1000), { nil: null }) }), { minLength: 1, maxLength: 6 })
  .map((rows) => rows.map((row, n) => anItem({ key: `item.${n}`, repeat: row.repeat, first: row.first === null ? null : every(row.first, null) })));

describe("back from a chart", () => {
  test("charts to triggers and back are inverse", () => {
    fc.assert(
      fc.property(somePlan, fc.integer({ min: 8000, max: 40_000 }), (items, end) => {
        const before = chartOf(items, "mi", [], end);
        fc.pre(before.rows.length > 0);
        const last = before.marks.at(-1) ?? 0;
        const again = before.rows.map((row) =>
          readBack(
            items.find((item) => item.key === row.item) ?? anItem(),
            row.at,
            before.marks,
            row.beside?.repeat.by === "interval" ? row.beside.repeat.every.months : null,
          ),
        );
        const after = chartOf(again, "mi", [], last);
        expect([after.marks, after.rows]).toEqual([before.marks, before.rows]);
      }),
      { numRuns: 2000 },
    );
  });

  const marks = (...miles: number[]): Columns[] => miles.map((each) => ({ miles: each, km: null }));
  const SERVICES = marks(600, 4000, 8000, 12_000, 16_000);
  test("multiples to the end are an interval, the first short service is running-in", () => {
    expect(triggerOf(SERVICES, { at: [0, 2, 4], beside: null }, 12)).toEqual({
      ...{ anchor: "marks", first: every(600, null), after: "same again" },
      repeat: { by: "interval", every: every(8000, 12) },
    });
    expect(triggerOf(SERVICES, { at: [3], beside: null }, null)).toMatchObject({ first: null, repeat: { by: "interval", every: every(12_000, null) } });
  });
  test("what is uneven is a list; its last gap again is named as taken, and not where the chart itself denies it", () => {
    expect(triggerOf(SERVICES, { at: [1, 3], beside: null }, null)).toMatchObject({
      after: "last gap again",
      repeat: { by: "mark list", at: marks(4000, 12_000), thenEvery: every(8000, null), thenFrom: "last mark" },
    });
    expect(triggerOf(SERVICES, { at: [1, 2], beside: null }, null)).toMatchObject({ after: "nothing", repeat: { thenEvery: null } });
    expect(triggerOf(SERVICES, { at: [0], beside: null }, null)).toMatchObject({ after: "nothing", first: null, repeat: { at: marks(600) } });
  });
  test("a service at which the part is replaced is one at which its lesser work is done: C C R C is cleaning at every service", () => {
    expect(triggerOf(SERVICES, { at: [1, 2, 4], beside: null, replacedAt: [3] }, null)).toEqual({
      ...{ anchor: "marks", first: null, after: "same again, replacements counted" },
      repeat: { by: "interval", every: every(4000, null) },
    });
    // I R I R: looked at where it is not replaced.
    expect(triggerOf(SERVICES, { at: [1, 3], beside: null, replacedAt: [2, 4] }, null)).toMatchObject({ repeat: { by: "interval", every: every(4000, null) } });
    // What is even by itself stays what it is, and what both together leave uneven stays a list.
    expect(triggerOf(SERVICES, { at: [1, 2, 3, 4], beside: null, replacedAt: [2, 4] }, null)).toMatchObject({ after: "same again" });
    expect(triggerOf(SERVICES, { at: [1, 3], beside: null, replacedAt: [4] }, null)).toMatchObject({ repeat: { by: "mark list", at: marks(4000, 12_000) } });
  });
  test("two printed columns are kept side by side, and an interval must be one in both", () => {
    const both = [
      { miles: 4000, km: 6000 },
      { miles: 8000, km: 12_000 },
    ];
    expect(triggerOf(both, { at: [0, 1], beside: null }, null)).toMatchObject({ repeat: { by: "interval", every: every(4000, null, 6000) } });
    expect(
      triggerOf(
        [
          { miles: 4000, km: 6000 },
          { miles: 8000, km: 13_000 },
        ],
        { at: [0, 1], beside: null },
        null,
      ),
    ).toMatchObject({ repeat: { by: "mark list" } });
  });
  test("in words beside the grid it goes from the last time where it says so; grid and words cannot both say how far", () => {
    expect(triggerOf(SERVICES, { at: [], beside: { every: every(null, 24), fromLast: true } }, null)).toMatchObject({ anchor: "last done" });
    expect(triggerOf(SERVICES, { at: [0], beside: { every: every(12_000, null), fromLast: true } }, null)).toMatchObject({ first: every(600, null) });
    expect(triggerOf(SERVICES, { at: [1], beside: { every: every(12_000, null), fromLast: true } }, null)).toBe("distance twice");
    expect(triggerOf(SERVICES, { at: [], beside: null }, 12)).toBe("nothing printed");
  });
});
