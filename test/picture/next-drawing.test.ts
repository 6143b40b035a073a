// What comes next: marks on their days, figures where they are likely reached, and everything readable however much there is.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween, localDate } from "../../src/core/calendar/arithmetic.ts";
import { EDGE, INK, WIDE } from "../../src/picture/look.ts";
import { drawNext, type NextDrawing, roundFigures } from "../../src/picture/next-drawing.ts";
import { circlesOf, linesOf, polygonsOf, soundly, textsOf } from "./read-svg.ts";

const today = localDate("2026-11-26");
const until = localDate("2027-11-26");
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sept", "Oct", "Nov", "Dec"];
const drawing = (more: Partial<NextDrawing> = {}): NextDrawing => ({
  ...{ title: "What comes next for Heron", today, until, todayText: "today", odometerName: "Odometer, likely, mi", distanceName: "By the odometer, mi" },
  month: (first) => MONTHS[Number(first.slice(5, 7)) - 1] ?? "",
  andMore: (n) => `and ${n} more`,
  figure: (value) => value.toLocaleString("en-GB"),
  ...{ byDay: [], byDistance: [], likely: [], layUps: [], now: 14_000, notes: [] },
  first: [],
  meaning: { now: "due now", soon: "coming up", later: "later", range: "likely between", onward: "or later still", rest: "laid up" },
  ...more,
});
/** Where a day must lie: today at the left, the last day at the right, straight between. */
const placeOf = (day: string): number => EDGE + 16 + ((WIDE - 2 * EDGE - 32) * daysBetween(today, localDate(day))) / daysBetween(today, until);
const item = (on: string, more: Partial<NextDrawing["byDay"][number]> = {}): NextDrawing["byDay"][number] => {
  const day = localDate(on);
  return { names: ["Brake fluid"], beside: "then", on: day, from: day, to: day, is: "later", ...more };
};

describe("what comes next", () => {
  test("each mark lies on its day, its range about it, and each nearness has a shape of its own", () => {
    const svg = drawNext(
      drawing({
        byDay: [
          item("2026-11-26", { is: "now" }),
          item("2027-01-15", { is: "soon", from: localDate("2026-12-20"), to: localDate("2027-03-02") }),
          item("2027-05-27"),
        ],
      }),
    );
    soundly(svg);
    const lanes = linesOf(svg)
      .filter(({ x1, x2 }) => x1 === EDGE && x2 === WIDE - EDGE)
      .map(({ y1 }) => y1);
    expect(lanes).toHaveLength(3);
    const [now] = polygonsOf(svg).filter(({ points }) => points.length === 4);
    expect(now?.points[1]?.[0]).toBeCloseTo(placeOf("2026-11-26"), 0);
    const soon = circlesOf(svg).filter(({ y }) => y === lanes[1]);
    expect(soon.map(({ x }) => Math.round(x))).toEqual([Math.round(placeOf("2027-01-15")), Math.round(placeOf("2027-01-15"))]);
    expect(soon.at(-1)?.color).toBe(INK.first);
    // Open: the ground over the ink.
    expect(
      circlesOf(svg)
        .filter(({ y }) => y === lanes[2])
        .map(({ color }) => color),
    ).toEqual([INK.first, INK.ground]);
    const range = linesOf(svg).find(({ color, y1, width }) => color === INK.first && y1 === lanes[1] && width === 5);
    expect([range?.x1, range?.x2].map((x) => Math.round(x ?? 0))).toEqual([placeOf("2026-12-20"), placeOf("2027-03-02")].map(Math.round));
    expect(textsOf(svg).map(({ text }) => text)).toEqual(expect.arrayContaining(["due now", "coming up", "later", "likely between"]));
    expect(textsOf(svg).map(({ text }) => text)).not.toContain("laid up");
  });
  test("a range that does not end on the page has an arrow at its edge and one in the key, one that does has none", () => {
    const arrows = (to: string | null): number =>
      polygonsOf(drawNext(drawing({ byDay: [item("2027-05-27", { from: localDate("2027-03-01"), to: to === null ? null : localDate(to) })] }))).filter(
        ({ points }) => points.length === 3,
      ).length;
    expect([arrows("2027-08-01"), arrows("2027-11-26"), arrows("2027-11-27"), arrows(null)]).toEqual([0, 0, 2, 2]);
  });
  test("round figures stand where a straight pace reaches them", () => {
    const svg = drawNext(
      drawing({
        byDay: [item("2027-05-27")],
        likely: [
          { on: today, at: 14_000 },
          { on: until, at: 18_000 },
        ],
      }),
    );
    soundly(svg);
    const figure = textsOf(svg).find(({ text }) => text === "16,000");
    expect(((figure?.left ?? 0) + (figure?.right ?? 0)) / 2).toBeCloseTo((placeOf("2026-11-26") + placeOf("2027-11-26")) / 2, 0);
    expect(
      roundFigures([
        { x: 0, value: 0 },
        { x: 10, value: 1000 },
        { x: 110, value: 2000 },
      ]),
    ).toContainEqual({ x: 60, value: 1500 });
    expect(
      roundFigures([
        { x: 0, value: 5 },
        { x: 10, value: 5 },
      ]),
    ).toEqual([]);
    expect(roundFigures([])).toEqual([]);
  });
  test("without a forecast what goes by distance lies along the odometer, from where it stands", () => {
    const by = (at: number) => ({ names: ["Engine oil"], beside: "", at, is: "later" as const });
    const svg = drawNext(drawing({ now: 14_210, byDistance: [by(15_000), by(16_000)] }));
    soundly(svg);
    const share = (15_000 - 14_210) / (16_000 - 14_210);
    expect(circlesOf(svg)[0]?.x).toBeCloseTo(EDGE + 16 + share * (WIDE - 2 * EDGE - 32), 0);
    expect(textsOf(svg).map(({ text }) => text)).toEqual(expect.arrayContaining(["14,210", "By the odometer, mi"]));
  });
  test("nothing to draw is still a page that says so", () => {
    const svg = drawNext(drawing({ title: "Nothing on record falls due on Heron", notes: ["Of 19 more nothing is known."] }));
    soundly(svg);
    expect(textsOf(svg).map(({ text }) => text)).toEqual(["Nothing on record falls due on Heron", "Of 19 more nothing is known."]);
  });
  test("what must be told first stands over the title, framed and whole, however long it is", () => {
    const first = ["Do not ride: “front brake feels spongy”, “belt teeth missing” and 4 more on /due.", `Found wrong, not graded yet: “${"W".repeat(90)}”.`];
    const svg = drawNext(drawing({ first, byDay: [item("2027-05-27")] }));
    soundly(svg);
    const texts = textsOf(svg);
    const title = texts.find(({ text }) => text === "What comes next for Heron");
    const above = texts.filter(({ top }) => top < (title?.top ?? 0));
    expect(
      above
        .map(({ text }) => text)
        .join(" ")
        .replaceAll(" ", ""),
    ).toBe(first.join(" ").replaceAll(" ", ""));
    expect(svg.match(new RegExp(`stroke="${INK.second}" stroke-width="4"`, "gu"))).toHaveLength(2);
  });
  test("the names of one lane that find no room are counted, and all that stand there are whole", () => {
    const names = Array.from({ length: 30 }, (_, n) => `Coolant hoses and radiator ${n + 1}`);
    const svg = drawNext(drawing({ byDay: [item("2027-05-27", { names })] }));
    soundly(svg);
    const said = textsOf(svg)
      .map(({ text }) => text)
      .join(" ");
    const shown = names.filter((name) => new RegExp(`${name}\\b`, "u").test(said)).length;
    expect(shown).toBeGreaterThan(2);
    expect(said).toContain(`and ${30 - shown} more`);
  });
  test("whatever the names, the days and the figures, nothing lies over anything or leaves the page", () => {
    const name = fc.string({ minLength: 1, maxLength: 60, unit: fc.constantFrom(..."aWi m,é&<") });
    const day = fc.integer({ min: 0, max: 365 }).map((n) => addDays(today, n));
    const row = fc.record({
      ...{
        names: fc.array(name, { minLength: 1, maxLength: 20 }),
        beside: name,
        on: day,
        from: day,
        to: fc.option(fc.integer({ min: 0, max: 900 }).map((n) => addDays(today, n))),
      },
      is: fc.constantFrom("now" as const, "soon" as const, "later" as const),
    });
    fc.assert(
      fc.property(
        fc.array(row, { maxLength: 12 }),
        name,
        fc.integer({ min: 0, max: 200_000 }),
        fc.integer({ min: 0, max: 60_000 }),
        (byDay, title, from, more) => {
          soundly(
            drawNext(
              drawing({
                title,
                byDay,
                likely: [
                  { on: today, at: from },
                  { on: until, at: from + more },
                ],
                layUps: [{ from: today, to: addDays(today, 100) }],
              }),
            ),
          );
        },
      ),
      { numRuns: 30 },
    );
  });
  test("drawn as it was", () => {
    expect(
      drawNext(
        drawing({
          byDay: [item("2026-11-26", { is: "now", beside: "overdue" }), item("2027-03-31", { names: ["Engine oil and filter", "spark plugs"], to: null })],
          likely: [
            { on: today, at: 14_000 },
            { on: until, at: 18_000 },
          ],
          layUps: [{ from: today, to: localDate("2027-03-01") }],
        }),
      ).replaceAll("><", ">\n<"),
    ).toMatchSnapshot();
  });
});
