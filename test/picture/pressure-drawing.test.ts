// Cold pressures over time: each load has a mark and a dash of its own, what is wanted is written where no mark stands, and the weather is taken out by figures held against a general library's scales.

import { scaleLinear } from "d3-scale";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween, localDate } from "../../src/core/calendar/arithmetic.ts";
import { SPEC_USES } from "../../src/core/spec/spec.ts";
import { INK, WIDE } from "../../src/picture/look.ts";
import { runsThrough } from "../../src/picture/plot.ts";
import { drawPressure, type PressureDrawing } from "../../src/picture/pressure-drawing.ts";
import { render } from "../../src/picture/render.ts";
import { circlesOf, linesOf, pathsOf, polygonsOf, soundly, textsOf } from "./read-svg.ts";

const today = localDate("2026-11-26");
const month = (first: string): string => first.slice(2, 7);
const day = (on: string): string => `day ${on.slice(8)}`;
const figure = (value: number): string => Math.round(value).toLocaleString("en-GB");
const corners = (d: string) => [...d.matchAll(/(-?[\d.]+),(-?[\d.]+)/gu)].map(([, x, y]) => [Number(x), Number(y)] as const);
/** Readings solo: open as they were, filled at the one temperature. */
const asRead = (svg: string) => circlesOf(svg).filter(({ color }) => color === INK.ground);
const levelled = (svg: string) => circlesOf(svg).filter(({ color }) => color === INK.first);

const MEANING = {
  ...{ read: "as read", levelled: "at 20 °C", open: "open: as read", filled: "filled: at 20 °C" },
  ...{ solo: "solo", "two-up": "two-up", loaded: "loaded" },
} as const;
const pressure = (more: Partial<PressureDrawing> = {}): PressureDrawing => ({
  ...{ title: "Heron's cold tyre pressures", month, day, figure, notes: [], meaning: MEANING },
  panels: [
    {
      name: "Front, psi",
      points: [
        { on: localDate("2026-01-10"), read: 33, levelled: 36, load: "solo" },
        { on: localDate("2026-04-10"), read: 34, levelled: 35, load: "solo" },
        { on: localDate("2026-07-10"), read: 35, levelled: null, load: "solo" },
      ],
      wanted: [{ load: "solo", value: 36, text: "wanted 36 psi cold" }],
    },
  ],
  ...more,
});

describe("the pressure trend", () => {
  test("what was read and what it comes to at one temperature have shapes of their own, on the same day", () => {
    const svg = drawPressure(pressure());
    soundly(svg);
    // The last of each is the legend's.
    const open = asRead(svg)
      .map(({ x, y }) => [x, y] as const)
      .slice(0, -1);
    const [first, second] = levelled(svg);
    expect([open.length, levelled(svg).length - 1]).toEqual([3, 2]);
    expect([first?.x, second?.x]).toEqual([open[0]?.[0], open[1]?.[0]].map((x) => expect.closeTo(x ?? 0, 0)));
    const y = scaleLinear([33, 35], [open[0]?.[1] ?? 0, open[2]?.[1] ?? 0]);
    expect([first?.y, second?.y]).toEqual([y(36), y(35)].map((at) => expect.closeTo(at, 0)));
    expect(linesOf(svg).find(({ color }) => color === INK.second)?.y1).toBeCloseTo(y(36), 0);
    expect(daysBetween(localDate("2026-01-10"), localDate("2026-04-10")) / daysBetween(localDate("2026-01-10"), localDate("2026-07-10"))).toBeCloseTo(
      ((open[1]?.[0] ?? 0) - (open[0]?.[0] ?? 0)) / ((open[2]?.[0] ?? 0) - (open[0]?.[0] ?? 0)),
      2,
    );
  });
  test("without a temperature no such mark is explained; one day alone is drawn", () => {
    const svg = drawPressure(pressure({ panels: [{ name: "Rear, psi", points: [{ on: today, read: 40, levelled: null, load: "solo" }], wanted: [] }] }));
    soundly(svg);
    const texts = textsOf(svg).map(({ text }) => text);
    expect(texts).not.toContain("at 20 °C");
    expect(texts).toContain("day 26");
    expect(textsOf(svg).find(({ text }) => text === "day 26")?.left).toBeGreaterThan(WIDE / 3);
    soundly(drawPressure(pressure({ panels: [] })));
  });
  test.each([
    ["falling from what is wanted", [34, 33.6, 33.2, 32.8, 32.4, 31.2], 34],
    ["rising to it", [31.2, 32.4, 33.2, 33.6, 34], 34],
    ["above it all the time", [36, 35.5, 35, 34.6, 34.2], 34],
    ["on it", [34, 34, 34], 34],
  ])("what is wanted is written where no reading stands on it: %s", (_, values, value) => {
    const points = values.map((read, n) => ({ on: addDays(today, n * 30 - 200), read, levelled: null, load: "solo" as const }));
    soundly(drawPressure(pressure({ panels: [{ name: "Front, psi", points, wanted: [{ load: "solo", value, text: "wanted 34 psi cold" }] }] })));
  });
});

describe("a pressure that crosses what is wanted", () => {
  const points = [2.5, 2.45, 2.4, 2.4, 2.5].map((read, n) => ({
    on: addDays(today, n * 30 - 120),
    read,
    levelled: [2.5, 2.547, 2.545, 2.584, 2.561][n] ?? read,
    load: "solo" as const,
  }));
  const svg = drawPressure(
    pressure({
      figure: (value) => value.toFixed(2),
      panels: [{ name: "Front, bar", points, wanted: [{ load: "solo", value: 2.5, text: "wanted 2.5 bar as read cold" }] }],
    }),
  );
  test("has the words of what is wanted where no line runs", () => {
    soundly(svg);
    const label = textsOf(svg).find(({ text }) => text.startsWith("wanted"));
    const path = corners(pathsOf(svg).find(({ stroke, fill }) => stroke === INK.first && fill === "none")?.d ?? "");
    expect(path).toHaveLength(5);
    for (const [n, [x, y]] of path.entries()) {
      const [fx, fy] = path[n - 1] ?? [x, y];
      expect(label !== undefined && runsThrough({ x: fx, y: fy }, { x, y }, label)).toBe(false);
    }
  });
  test("has its lowest mark off the axis", () => {
    const open = asRead(svg)
      .slice(0, -1)
      .map(({ y }) => y + 9);
    const axis = linesOf(svg).find(({ color, width, y1, y2, x1, x2 }) => color === INK.quiet && width === 2 && y1 === y2 && x2 - x1 > WIDE / 2);
    expect(Math.max(...open)).toBeLessThan((axis?.y1 ?? 0) - 8);
  });
});

test("days within a month are named at both ends, since no first of a month lies between", () => {
  const [early, late] = ["2026-06-03", "2026-06-21"].map(localDate) as [typeof today, typeof today];
  const panels = [{ name: "Front, psi", points: [early, late].map((on) => ({ on, read: 33, levelled: null, load: "solo" as const })), wanted: [] }];
  const svg = drawPressure(pressure({ panels }));
  soundly(svg);
  expect(textsOf(svg).map(({ text }) => text)).toEqual(expect.arrayContaining(["day 03", "day 21"]));
  // A day apart there is room for one.
  const next = drawPressure(pressure({ panels: [{ ...panels[0], points: [{ on: early, read: 33, levelled: null, load: "solo" }] } as never] }));
  expect(textsOf(next).filter(({ text }) => text.startsWith("day"))).toHaveLength(1);
});

describe("readings at several loads", () => {
  const point = (n: number, load: (typeof SPEC_USES)[number], read: number) => ({ on: addDays(today, n * 20 - 200), read, levelled: read + 0.05, load });
  const wanted = SPEC_USES.map((load, n) => ({ load, value: [2.5, 2.9, 2.7][n] ?? 0, text: `wanted ${[2.5, 2.9, 2.7][n]} bar ${load} as read cold` }));
  const rear = {
    ...{ name: "Rear, bar", wanted },
    points: [point(0, "solo", 2.5), point(1, "two-up", 2.9), point(2, "loaded", 2.7), point(3, "solo", 2.4), point(4, "two-up", 2.8)],
  };
  const svg = drawPressure(pressure({ panels: [rear], figure: (value) => value.toFixed(2) }));
  test("have a shape a load, open and filled, which the legend explains", () => {
    soundly(svg);
    // In the plot and a pair in the legend; two more circles there explain open and filled.
    expect([asRead(svg).length, levelled(svg).length]).toEqual([2 + 1 + 1, 2 + 1 + 1]);
    expect(polygonsOf(svg).map(({ points, color }) => [points.length, color])).toEqual(
      [INK.ground, INK.ground, INK.first, INK.first, INK.ground, INK.first].map((color) => [3, color]),
    );
    expect((svg.match(/<rect [^>]*width="16"/gu) ?? []).length).toBe(2 + 2);
    for (const text of ["solo", "two-up", "loaded", "open: as read", "filled: at 20 °C"]) expect(textsOf(svg).map((each) => each.text)).toContain(text);
  });
  test("are joined within their load, never from one to another", () => {
    const paths = pathsOf(svg).filter(({ stroke, fill }) => stroke === INK.first && fill === "none");
    expect(paths.map(({ d }) => corners(d).length)).toEqual([2, 2]);
  });
  test("have a wanted line a load, each with dashes of its own, and its words beside the same dashes over the plot, where no mark stands", () => {
    const lines = linesOf(svg).filter(({ color }) => color === INK.second);
    const across = lines.filter(({ x1, x2 }) => x2 - x1 > WIDE / 2);
    expect(new Set(across.map(({ dashes }) => dashes)).size).toBe(3);
    for (const { text } of wanted) {
      const label = textsOf(svg).find((each) => each.text === text);
      const piece = lines.find(({ x2, y1 }) => label !== undefined && x2 < label.left && label.left - x2 < 20 && y1 > label.top && y1 < label.bottom);
      const level = across.find(({ dashes }) => dashes === piece?.dashes);
      // The lines stand in the order of the pressures: 2.9 over 2.7 over 2.5.
      expect(across.filter(({ y1 }) => y1 < (level?.y1 ?? 0)).length).toBe(
        [...wanted].sort((a, b) => b.value - a.value).findIndex((each) => each.text === text),
      );
      for (const { x, y, r } of [...asRead(svg), ...levelled(svg)])
        expect(label !== undefined && x + r > label.left && x - r < label.right && y + r > label.top && y - r < label.bottom).toBe(false);
    }
  });
  test("whatever was read at whatever load, no mark lies on words and nothing leaves the page", () => {
    const some = fc.record({ n: fc.integer({ min: -30, max: 9 }), load: fc.constantFrom(...SPEC_USES), read: fc.double({ min: 1.2, max: 3.4, noNaN: true }) });
    fc.assert(
      fc.property(fc.array(some, { minLength: 1, maxLength: 30 }), fc.subarray(wanted), fc.boolean(), (points, held, air) => {
        const panel = {
          ...{ name: "Rear, bar", wanted: held },
          points: points.map(({ n, load, read }) => ({ ...point(n, load, read), ...(air ? {} : { levelled: null }) })).sort((a, b) => (a.on < b.on ? -1 : 1)),
        };
        soundly(drawPressure(pressure({ panels: [panel, panel], figure: (value) => value.toFixed(2) })));
      }),
      { numRuns: 80 },
    );
  });
  test("two-up alone says so, with its own mark", () => {
    const alone = drawPressure(pressure({ panels: [{ name: "Rear, psi", points: [{ on: today, read: 42, levelled: null, load: "two-up" }], wanted: [] }] }));
    soundly(alone);
    expect([polygonsOf(alone).length, textsOf(alone).map(({ text }) => text)]).toEqual([3, expect.arrayContaining(["two-up", "as read"])]);
  });
  test("as they were drawn", async () => {
    expect(svg.replaceAll("><", ">\n<")).toMatchSnapshot();
    expect(drawPressure(pressure()).replaceAll("><", ">\n<")).toMatchSnapshot();
    const png = Buffer.from(await render(svg, WIDE, ""));
    expect([png.readUInt32BE(16), png.length < 200_000]).toEqual([WIDE, true]);
  });
});
