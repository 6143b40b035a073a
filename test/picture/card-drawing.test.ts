// A roadside card and a group's picture: all that is known stands there, what is not is a line to write on, and no bike where it does not belong.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, localDate } from "../../src/core/calendar/arithmetic.ts";
import { type CardDrawing, drawCard } from "../../src/picture/card-drawing.ts";
import { drawGroup, type GroupDrawing } from "../../src/picture/group-drawing.ts";
import { EDGE, INK, WIDE } from "../../src/picture/look.ts";
import { circlesOf, linesOf, polygonsOf, soundly, textsOf } from "./read-svg.ts";

const card: CardDrawing = {
  title: "Roadside card: Heron",
  rows: [
    { name: "Recovery", value: "0800 555 0142" },
    { name: "Front tyre size", value: "120/70 ZR 17 M/C 58W, tubeless; with the off-road set 110/80 B 19 M/C 59Q and a tube" },
    { name: "Fuses", value: null },
  ],
  notes: ["The maker's plate and manual have the last word."],
};

describe("a roadside card", () => {
  test("says every value whole, and has a dotted line for each that is not known, and for no other", () => {
    const svg = drawCard(card);
    soundly(svg);
    const said = textsOf(svg).map(({ text }) => text);
    for (const { name, value } of card.rows)
      for (const word of `${name} ${value ?? ""}`.split(" ").filter((each) => each !== "")) expect(said.join(" ")).toContain(word);
    const blanks = linesOf(svg).filter(({ dashes }) => dashes !== "");
    expect(blanks).toHaveLength(1);
    expect([(blanks[0]?.x2 ?? 0) - (blanks[0]?.x1 ?? 0) > 400, blanks[0]?.color]).toEqual([true, INK.quiet]);
    expect(Math.min(...said.map((_, at) => textsOf(svg)[at]?.left ?? 0))).toBe(EDGE);
  });
  test("whatever is entered stays on the card", () => {
    const text = fc.string({ minLength: 1, maxLength: 120, unit: fc.constantFrom(..."Wi 1/-&<é") }).filter((each) => each.trim() !== "");
    fc.assert(
      fc.property(fc.array(fc.record({ name: text, value: fc.option(text) }), { maxLength: 20 }), text, (rows, title) =>
        soundly(drawCard({ title, rows, notes: [] })),
      ),
      { numRuns: 40 },
    );
  });
  test("drawn as it was", () => {
    expect(drawCard(card).replaceAll("><", ">\n<")).toMatchSnapshot();
  });
});

const today = localDate("2026-11-26");
const group = (more: Partial<GroupDrawing> = {}): GroupDrawing => ({
  ...{ title: "When the group's bikes fall due", today, until: addDays(today, 180), todayText: "today", month: (first) => first.slice(2, 7), notes: [] },
  rows: [
    {
      name: "Heron, Ines",
      beside: "2 due now; next about 25 January",
      marks: [
        { on: addDays(today, 60), is: "soon" },
        { on: today, is: "now" },
      ],
      layUps: [],
    },
    { name: "Wren, Odo", beside: "laid up", marks: [{ on: addDays(today, 90), is: "later" }], layUps: [{ from: today, to: addDays(today, 90) }] },
  ],
  meaning: { now: "due or overdue", soon: "coming up", later: "later", range: "likely between", rest: "laid up" },
  ...more,
});

describe("a group's picture", () => {
  test("has a lane a bike, marks on their days, lay-ups where they last", () => {
    const svg = drawGroup(group());
    soundly(svg);
    const half = EDGE + 16 + (WIDE - 2 * EDGE - 32) / 2;
    const lanes = linesOf(svg).filter(({ x1, x2 }) => x1 === EDGE && x2 === WIDE - EDGE);
    expect(lanes).toHaveLength(2);
    expect(circlesOf(svg).find(({ y, color }) => y === lanes[1]?.y1 && color === INK.first)?.x).toBeCloseTo(half, 0);
    const laid = /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)" height="18" fill="#eae6dd"/u.exec(svg);
    expect(Number(laid?.[1]) + Number(laid?.[2])).toBeCloseTo(half, 0);
    // One on the lane, one in the legend.
    expect(polygonsOf(svg)).toHaveLength(2);
    expect(textsOf(svg).map(({ text }) => text)).toEqual(expect.arrayContaining(["Heron, Ines", "Wren, Odo", "due or overdue", "coming up", "later"]));
  });
  test("without a bike it is a page of words; with many and long names all stay on it", () => {
    expect(linesOf(drawGroup(group({ rows: [] })))).toEqual([]);
    const rows = Array.from({ length: 25 }, (_, n) => ({
      ...(group().rows[n % 2] ?? { marks: [], layUps: [], beside: "" }),
      name: `Bramble of the long northern moor, Wilhelmina of Ottershaw ${n}`,
    }));
    soundly(drawGroup(group({ rows })));
  });
  test("drawn as it was", () => {
    expect(drawGroup(group()).replaceAll("><", ">\n<")).toMatchSnapshot();
  });
});
