// Plots of readings: every mark where its figures put it, held against the library's scales as a general library; nothing out of the page, whatever was read.

import { scaleLinear } from "d3-scale";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, localDate } from "../../src/core/calendar/arithmetic.ts";
import { INK, WIDE } from "../../src/picture/look.ts";
import { drawOdometer, type OdometerDrawing } from "../../src/picture/odometer-drawing.ts";
import { runsThrough, upward } from "../../src/picture/plot.ts";
import { render } from "../../src/picture/render.ts";
import { drawWear, type WearDrawing } from "../../src/picture/wear-drawing.ts";
import { circlesOf, linesOf, pathsOf, polygonsOf, soundly, textsOf } from "./read-svg.ts";

const today = localDate("2026-11-26");
const month = (first: string): string => first.slice(2, 7);
const day = (on: string): string => `day ${on.slice(8)}`;
const figure = (value: number): string => Math.round(value).toLocaleString("en-GB");

const odometer = (more: Partial<OdometerDrawing> = {}): OdometerDrawing => ({
  ...{ title: "Heron's odometer", name: "Odometer, mi", today, todayText: "today", until: addDays(today, 180), month, day, figure, notes: [] },
  points: [0, 100, 200].map((n) => ({ on: addDays(today, n - 300), at: 10_000 + n * 20 })),
  ahead: [0, 90, 280].map((n) => ({ on: addDays(today, n - 100), low: 14_000 + n * 10, likely: 14_000 + n * 20, high: 14_000 + n * 30 })),
  layUps: [{ from: addDays(today, -150), to: addDays(today, -120) }],
  meaning: { read: "read", likely: "likely", range: "eight times in ten", rest: "laid up" },
  ...more,
});
/** Filled points of readings; the ring that keeps them apart from lines is the ground's. */
const points = (svg: string) => circlesOf(svg).filter(({ color, r }) => color === INK.first && r === 8);
const corners = (d: string) => [...d.matchAll(/(-?[\d.]+),(-?[\d.]+)/gu)].map(([, x, y]) => [Number(x), Number(y)] as const);

describe("the odometer's track", () => {
  test("readings lie straight by day and by figure, the line joins them, the range holds the likely line and begins with the last of them", () => {
    const svg = drawOdometer(odometer());
    soundly(svg);
    const [a, b, c] = points(svg);
    if (a === undefined || b === undefined || c === undefined) throw new Error("three readings, three points");
    expect([b.x - a.x, a.y - b.y]).toEqual([expect.closeTo(c.x - b.x, 0), expect.closeTo(b.y - c.y, 0)]);
    const [range, , , likely, joined] = pathsOf(svg).map(({ d }) => corners(d));
    expect(joined).toEqual([a, b, c].map(({ x, y }) => [x, y]));
    expect(likely?.[0]).toEqual([c.x, c.y]);
    // Down the page is less: the upper edge comes first, then back along the lower.
    const n = likely?.length ?? 0;
    for (const [at, [x, y]] of (likely ?? []).entries()) {
      const edges = (range ?? []).filter(([rx]) => rx === x).map(([, ry]) => ry);
      expect([Math.min(...edges) <= y, Math.max(...edges) >= y, at]).toEqual([true, true, at]);
    }
    expect(n).toBe(3);
  });
  test("figures at the left stand where a scale of the same ends puts them, lay-ups on their days", () => {
    const svg = drawOdometer(odometer({ ahead: [], layUps: [{ from: addDays(today, -200), to: addDays(today, -100) }] }));
    const [first, , last] = points(svg);
    const y = scaleLinear([10_000, 14_000], [first?.y ?? 0, last?.y ?? 0]);
    const twelve = textsOf(svg).find(({ text }) => text === "12,000");
    expect((twelve?.bottom ?? 0) - 5.5 - 25 * 0.35).toBeCloseTo(y(12_000), 0);
    const laid = /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"[^>]*fill="#eae6dd"/u.exec(svg);
    expect([Number(laid?.[1]), Number(laid?.[1]) + Number(laid?.[2])]).toEqual([points(svg)[1]?.x, points(svg)[2]?.x].map((x) => expect.closeTo(x ?? 0, 0)));
  });
  test("one reading has figures apart and no line; none is a page of words; without a forecast nothing is drawn of it", () => {
    const one = drawOdometer(odometer({ points: [{ on: today, at: 8000 }], ahead: [], layUps: [] }));
    soundly(one);
    const figures = textsOf(one).map(({ text }) => text);
    expect(new Set(figures).size).toBe(figures.length);
    expect(figures).not.toContain("likely");
    expect(circlesOf(drawOdometer(odometer({ points: [], ahead: [] })))).toEqual([]);
  });
  test("a bike that rests has a line ahead and no range, neither drawn nor in the key", () => {
    const resting = drawOdometer(odometer({ ahead: [0, 180].map((n) => ({ on: addDays(today, n), low: 14_000, likely: 14_000, high: 14_000 })) }));
    soundly(resting);
    const said = textsOf(resting).map(({ text }) => text);
    expect([said.includes("likely"), said.includes("eight times in ten"), resting.includes(INK.firstArea)]).toEqual([true, false, false]);
  });
  test("figures that would print alike are fewer", () => {
    expect(upward([32, 33.5], figure).ticks.map(({ text }) => text)).toEqual(
      ["32", "33", "34"].filter((text) => upward([32, 33.5], figure).ticks.some((tick) => tick.text === text)),
    );
    for (const values of [[8000], [0], [0.1, 0.2], [-3, 5], [1e6, 1e6 + 1], [33, 34.3]]) {
      const { ticks, scale } = upward(values, figure);
      expect(new Set(ticks.map(({ text }) => text)).size).toBe(ticks.length);
      // There are always two to read a value between.
      expect(ticks.length).toBeGreaterThan(1);
      for (const value of values) expect([scale(value) >= 0, scale(value) <= 1]).toEqual([true, true]);
    }
  });
  test("whatever was read, nothing lies over anything or leaves the page", () => {
    const history = fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 3000 })), { maxLength: 40 }).map((steps) => {
      let [day, at] = [addDays(today, -1000), 0];
      return steps.map(([days, more]) => {
        [day, at] = [addDays(day, days), at + more];
        return { on: day < today ? day : today, at };
      });
    });
    fc.assert(
      fc.property(history, fc.integer({ min: 0, max: 30_000 }), fc.integer({ min: 1, max: 400 }), (read, more, days) => {
        const last = read.at(-1);
        const until = addDays(today, days);
        const ahead =
          last === undefined
            ? []
            : [
                { on: last.on, low: last.at, likely: last.at, high: last.at },
                { on: until, low: last.at, likely: last.at + more / 2, high: last.at + more },
              ];
        soundly(drawOdometer(odometer({ points: read, ahead, until, layUps: [] })));
      }),
      { numRuns: 40 },
    );
  });
});

const wear = (more: Partial<WearDrawing> = {}): WearDrawing => ({
  ...{ title: "Heron's tread", now: null, odometerName: "Odometer, mi", figure, depth: (value) => value.toFixed(1), notes: [] },
  panels: [
    {
      name: "Rear tread, mm",
      points: [10_000, 12_000, 14_000].map((x, n) => ({ x, value: 6 - n })),
      line: { from: 10_000, start: 6, likely: 20_000, low: 19_000, high: 21_500 },
      limit: { value: 1, text: "limit 1.0 mm, the law here" },
      behind: false,
    },
  ],
  meaning: { read: "measured", line: "wear line", range: "limit likely reached", onward: "or further on still", behind: "the bike stands here, past it" },
  ...more,
});

describe("the wear line", () => {
  test("goes through what was measured and meets the limit at the likely odometer, within its range", () => {
    const svg = drawWear(wear());
    soundly(svg);
    const [a, b, c] = points(svg);
    const limit = linesOf(svg).find(({ color }) => color === INK.second);
    const worn = linesOf(svg).find(({ color, dashes, width }) => color === INK.first && dashes !== "" && width === 3);
    const across = scaleLinear([10_000, 14_000], [a?.x ?? 0, c?.x ?? 0]);
    expect([worn?.x1, worn?.y1, worn?.x2, worn?.y2]).toEqual([a?.x, a?.y, across(20_000), limit?.y1].map((at) => expect.closeTo(at ?? 0, 0)));
    // The middle reading lies on that line: 1 mm in 2,000 mi.
    expect(b?.y).toBeCloseTo(scaleLinear([worn?.x1 ?? 0, worn?.x2 ?? 0], [worn?.y1 ?? 0, worn?.y2 ?? 0])(b?.x ?? 0), 0);
    const range = linesOf(svg).find(({ color, width }) => color === INK.first && width === 6);
    expect([range?.x1, range?.x2, range?.y1]).toEqual([across(19_000), across(21_500), limit?.y1].map((at) => expect.closeTo(at ?? 0, 0)));
    expect(textsOf(svg).map(({ text }) => text)).toContain("limit 1.0 mm, the law here");
  });
  test("a range without an end has an arrow; words of the limit keep out of it", () => {
    const panel = wear().panels[0];
    if (panel?.line == null) throw new Error("a line");
    const open = drawWear(wear({ panels: [{ ...panel, line: { ...panel.line, high: null } }] }));
    soundly(open);
    // One at the range, and one in the key that says what it means.
    expect(polygonsOf(open)).toHaveLength(2);
    expect(textsOf(open).map(({ text }) => text)).toContain("or further on still");
    expect(polygonsOf(drawWear(wear()))).toHaveLength(0);
    expect(textsOf(drawWear(wear())).map(({ text }) => text)).not.toContain("or further on still");
    const near = drawWear(
      wear({
        panels: [
          { ...panel, line: { ...panel.line, likely: 14_500, low: 14_200, high: 15_000 } },
          { ...panel, line: { ...panel.line, high: 40_000, likely: 39_000 } },
        ],
      }),
    );
    const label = textsOf(near).find(({ text }) => text.startsWith("limit"));
    const range = linesOf(near).find(({ width, color }) => width === 6 && color === INK.first);
    expect(label?.left).toBeGreaterThan(range?.x2 ?? WIDE);
  });
  test("the words of the limit are drawn over the line that leads to it, with a rim of the ground's ink", () => {
    const svg = drawWear(wear()).replaceAll("\u00a0", " ");
    expect(svg).toMatch(/stroke-dasharray="10 8".*<text paint-order="stroke" stroke="#faf8f4" stroke-width="7" [^>]*>limit 1\.0 mm/u);
  });
  test.each([
    ["at the left, under the line's end", 17_400, 15_800, 20_400],
    ["in the middle", 20_000, 14_000, 26_000],
    ["early", 15_000, 14_700, 15_700],
  ])("the words of the limit keep off the wear line and the mark at its end, wherever that is: %s", (_, likely, low, high) => {
    const panel = wear().panels[0];
    if (panel?.line == null) throw new Error("a line");
    const front = { ...panel, points: [8000, 12_300].map((x, n) => ({ x, value: 4 - n * 1.5 })), line: { from: 8000, start: 3.9, likely, low, high } };
    const rear = { ...panel, line: { ...panel.line, likely: 22_700, low: 19_600, high: 28_800 } };
    const svg = drawWear(wear({ panels: [front, rear] }));
    soundly(svg);
    const labels = textsOf(svg).filter(({ text }) => text.startsWith("limit 1.0"));
    const lines = linesOf(svg).filter(({ color, dashes, width }) => color === INK.first && dashes !== "" && width === 3);
    expect(labels).toHaveLength(2);
    for (const label of labels) for (const { x1, y1, x2, y2 } of lines) expect(runsThrough({ x: x1, y: y1 }, { x: x2, y: y2 }, label)).toBe(false);
  });
  test("where a line runs through every place beside the limit, its words stand beside the plot's name, behind a piece of it", () => {
    const panel = wear().panels[0];
    if (panel?.line == null) throw new Error("a line");
    // So low that there is room over the limit alone, and the line runs close over it from end to end.
    const flat = {
      ...{ ...panel, points: [10_000, 30_000].map((x, n) => ({ x, value: 8 - n * 7 })), limit: { value: 0.5, text: "limit 0.5 mm, the law here" } },
      line: { from: 10_000, start: 1.2, likely: 60_000, low: 40_000, high: null },
    };
    const svg = drawWear(wear({ panels: [flat] }));
    soundly(svg);
    const [name, label] = ["Rear tread", "limit 0.5"].map((begins) => textsOf(svg).find(({ text }) => text.startsWith(begins)));
    expect(label?.bottom).toBe(name?.bottom);
    expect(label?.text).toBe("limit 0.5 mm, the law here");
    const piece = linesOf(svg).filter(({ color }) => color === INK.second)[1];
    expect(piece?.x2).toBeLessThan(label?.left ?? 0);
    expect(piece?.x1).toBeGreaterThan(name?.right ?? WIDE);
  });
  test("wherever the line runs, the words of the limit lie on none of it and on no mark", () => {
    const least = { min: 1.05, max: 1.9, noNaN: true } as const;
    fc.assert(
      fc.property(
        fc.record({
          start: fc.double(least),
          steps: fc.array(fc.integer({ min: 200, max: 9000 }), { minLength: 2, maxLength: 8 }),
          left: fc.integer({ min: 50, max: 40_000 }),
        }),
        ({ start, steps, left }) => {
          const xs = steps.map((_, n) => 10_000 + steps.slice(0, n).reduce((sum, each) => sum + each, 0));
          const [first = 0, last = 0] = [xs[0], xs.at(-1)];
          const likely = last + left;
          const on = (x: number): number => start + ((1 - start) * (x - first)) / (likely - first);
          const panel = {
            ...{ name: "Rear tread, mm", behind: false, limit: { value: 1, text: "limit 1.0 mm, the law here" }, points: xs.map((x) => ({ x, value: on(x) })) },
            line: { from: first, start, likely, low: last + left / 2, high: last + left * 2 },
          };
          const svg = drawWear(wear({ panels: [panel] }));
          soundly(svg);
          const label = textsOf(svg).find(({ text }) => text.startsWith("limit 1.0"));
          const run = linesOf(svg).find(({ color, dashes, width }) => color === INK.first && dashes !== "" && width === 3);
          if (label === undefined || run === undefined) throw new Error("both are drawn");
          expect(runsThrough({ x: run.x1, y: run.y1 }, { x: run.x2, y: run.y2 }, label)).toBe(false);
        },
      ),
      { numRuns: 100 },
    );
  });
  test("a line touches a box, or passes it", () => {
    const box = { left: 10, right: 20, top: 10, bottom: 20 };
    const through = (x1: number, y1: number, x2: number, y2: number) => runsThrough({ x: x1, y: y1 }, { x: x2, y: y2 }, box);
    expect([through(0, 0, 30, 30), through(12, 12, 13, 13), through(0, 15, 30, 15), through(15, 0, 15, 11)]).toEqual([true, true, true, true]);
    expect([through(0, 0, 9, 9), through(0, 15, 9, 15), through(0, 25, 30, 25), through(0, 12, 12, 0), through(21, 0, 21, 30)]).toEqual(Array(5).fill(false));
  });
  test("one reading, no limit, or none at all are drawn as far as they go", () => {
    const single = drawWear(wear({ panels: [{ name: "Front tread, mm", points: [{ x: 10_000, value: 4 }], line: null, limit: null, behind: false }] }));
    soundly(single);
    const odometers = textsOf(single).flatMap(({ text }) => (/^\d\d,\d{3}$/u.test(text) ? [text] : []));
    expect([odometers.length > 1, new Set(odometers).size]).toEqual([true, odometers.length]);
    // The other point explains itself in the legend.
    expect([points(single).length - 1, linesOf(single).some(({ color }) => color === INK.second)]).toEqual([1, false]);
    soundly(drawWear(wear({ panels: [] })));
  });
});

test("what grows until its limit is drawn upward to it: a chain, in per cent longer than new", () => {
  const svg = drawWear(
    wear({
      panels: [
        {
          name: "Longer than new, %",
          points: [10_000, 12_000, 14_000].map((x, n) => ({ x, value: 0.2 + n * 0.2 })),
          line: { from: 10_000, start: 0.2, likely: 18_000, low: 17_000, high: 19_000 },
          ...{ limit: { value: 1, text: "limit 1 %" }, behind: false },
        },
      ],
    }),
  );
  soundly(svg);
  const worn = linesOf(svg).find(({ color, dashes, width }) => color === INK.first && dashes !== "" && width === 3);
  expect(worn?.y2).toBeLessThan(worn?.y1 ?? 0);
  expect(worn?.y2).toBeCloseTo(linesOf(svg).find(({ color }) => color === INK.second)?.y1 ?? 0, 0);
});

test("a line that would begin under nothing begins where it crosses it", () => {
  const from = (start: number) =>
    drawWear(
      wear({
        panels: [
          {
            name: "Longer than new, %",
            points: [10_000, 12_000, 14_000].map((x, n) => ({ x, value: 0.02 + n * 0.2 })),
            line: { from: 10_000, start, likely: 20_000, low: 19_000, high: 21_000 },
            ...{ limit: { value: 1, text: "limit 1 %" }, behind: false },
          },
        ],
      }),
    );
  const worn = (svg: string) => linesOf(svg).find(({ color, dashes, width }) => color === INK.first && dashes !== "" && width === 3);
  const [under, at] = [worn(from(-0.25)), worn(from(0))];
  // A fifth of the way from -0.25 % to 1 % lies under nothing.
  expect((under?.x1 ?? 0) - (at?.x1 ?? 0)).toBeCloseTo(((at?.x2 ?? 0) - (at?.x1 ?? 0)) / 5, 0);
  expect(under?.y1).toBeCloseTo(at?.y1 ?? 0, 0);
  expect(textsOf(from(-0.25)).some(({ text }) => text.startsWith("-") || text.startsWith("−"))).toBe(false);
});

describe("where the bike stands", () => {
  const panel = wear().panels[0];
  if (panel?.line == null) throw new Error("a line");
  const past = { ...panel, behind: true, line: { ...panel.line, likely: 16_000, low: 15_000, high: 17_000 } };
  const now = { x: 18_000, text: "now 18,000 mi" };
  test("is a line with its figure over it, and where the limit is behind a mark on the limit, of a shape of its own", () => {
    const svg = drawWear(wear({ now, panels: [past, panel] }));
    soundly(svg);
    const [a, , c] = points(svg);
    const x = scaleLinear([10_000, 14_000], [a?.x ?? 0, c?.x ?? 0])(18_000);
    const stands = linesOf(svg).filter(({ x1, x2, color, dashes }) => x1 === x2 && color === INK.quiet && dashes !== "");
    expect(stands.map(({ x1 }) => x1)).toEqual([x, x].map((at) => expect.closeTo(at, 0)));
    expect(textsOf(svg).filter(({ text }) => text === now.text)).toHaveLength(2);
    const limits = linesOf(svg).filter(({ color, width }) => color === INK.second && width === 4);
    const marks = polygonsOf(svg).map(({ points: [first, second] }) => ({ x: second?.[0], y: first?.[1] }));
    // One on the panel whose limit is behind, one in the legend.
    expect(marks).toHaveLength(2);
    expect(marks[0]).toEqual({ x: expect.closeTo(x, 0), y: expect.closeTo(limits[0]?.y1 ?? 0, 0) });
    expect(textsOf(svg).map(({ text }) => text)).toContain("the bike stands here, past it");
  });
  test("is not drawn where it was measured there, and explains no mark while no limit is behind", () => {
    const ahead = drawWear(wear({ now: { x: 15_000, text: "now 15,000 mi" } }));
    soundly(ahead);
    expect([
      polygonsOf(ahead).length,
      textsOf(ahead)
        .map(({ text }) => text)
        .includes("the bike stands here, past it"),
    ]).toEqual([0, false]);
    expect(textsOf(drawWear(wear())).some(({ text }) => text.startsWith("now"))).toBe(false);
  });
  test("wherever it is, its figure stays on the page and off every other word and mark", () => {
    fc.assert(
      fc.property(fc.integer({ min: 14_001, max: 60_000 }), fc.integer({ min: 14_100, max: 40_000 }), fc.boolean(), (x, likely, two) => {
        if (panel.line === null) return;
        const here = { ...panel, behind: likely <= x, line: { ...panel.line, likely, low: likely - 90, high: likely + 4000 } };
        soundly(drawWear(wear({ now: { x, text: `now ${figure(x)} mi` }, panels: two ? [here, here] : [here] })));
      }),
      { numRuns: 60 },
    );
  });
});

describe("as they were", () => {
  test.each([
    ["odometer", drawOdometer(odometer())],
    ["tread", drawWear(wear())],
  ] as const)("%s", async (_, svg) => {
    expect(svg.replaceAll("><", ">\n<")).toMatchSnapshot();
    const png = Buffer.from(await render(svg, WIDE, ""));
    expect([png.readUInt32BE(16), png.length < 200_000]).toEqual([WIDE, true]);
  });
});
