// The service chart's grid: what is not in it is said under it.

import { expect, test } from "vitest";
import { drawChart } from "../../src/picture/chart-drawing.ts";
import { boxOf, soundly, textsOf } from "./read-svg.ts";

const chart = {
  ...{ title: "Heron's service chart to 8,000 mi", corner: "× 1,000 mi", marks: ["4", "8"], last: "or every", legend: ["R = replace", "I = inspect"] },
  ...{ belowTitle: "Beside the services", below: [] },
  rows: [
    { name: "Engine oil and filter", cells: ["R", "R"], last: "12 months" },
    { name: "Brake hoses", cells: ["", "I"], last: "" },
  ],
};

test("a note stands under the letters, in lines within the picture", () => {
  const note = "More services than fit; this shows those to 8,000 mi, which is as far as a phone is wide.";
  const [without, { svg }] = [drawChart({ ...chart, notes: [] }).svg, drawChart({ ...chart, notes: [note] })];
  soundly(svg);
  const texts = textsOf(svg);
  const from = texts.findIndex(({ text }) => text.startsWith("More services"));
  expect(
    texts
      .slice(from)
      .map(({ text }) => text)
      .join(" "),
  ).toBe(note);
  expect(texts[from]?.top).toBeGreaterThan(texts.find(({ text }) => text.startsWith("R = replace"))?.bottom ?? 0);
  expect(boxOf(svg)[3]).toBeGreaterThan(boxOf(without)[3]);
});

test("what goes by no service stands under the grid, each with how often beside its name, whole and off every other", () => {
  const below = [
    { name: "Fork oil", said: "R every 24,000 mi or 3 years from the last time, sooner where the bike is ridden in dust" },
    { name: "A name that is longer than any in the grid", said: "R every 2 years" },
  ];
  const { svg } = drawChart({ ...chart, below, notes: [] });
  soundly(svg);
  const texts = textsOf(svg);
  const at = (begins: string) => texts.find(({ text }) => text.startsWith(begins));
  const hoses = at("Brake hoses");
  for (const { name, said } of below) {
    const named = at(name);
    const first = texts.find(({ text, left, top }) => said.startsWith(text) && Math.abs(top - (named?.top ?? 0)) < 1 && left > (named?.right ?? 0));
    expect([name, (named?.top ?? 0) > (hoses?.bottom ?? 0), first === undefined]).toEqual([name, true, false]);
  }
  const joined = texts.map(({ text }) => text).join(" ");
  expect(joined).toContain(below[0]?.said);
  expect(at("Beside the services")?.top).toBeGreaterThan(hoses?.bottom ?? 0);
  expect(at("R = replace")?.top).toBeGreaterThan(at("A name")?.bottom ?? 0);
  expect(textsOf(drawChart({ ...chart, notes: [] }).svg).some(({ text }) => text === "Beside the services")).toBe(false);
});
