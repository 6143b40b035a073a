// The service chart's grid: what is not in it is said under it.

import { expect, test } from "vitest";
import { drawChart } from "../../src/picture/chart-drawing.ts";
import { boxOf, soundly, textsOf } from "./read-svg.ts";

const chart = {
  ...{ title: "Heron's service chart to 8,000 mi", corner: "× 1,000 mi", marks: ["4", "8"], last: "or every", legend: ["R = replace", "I = inspect"] },
  rows: [
    { name: "Engine oil and filter", cells: ["R", "R"], last: "12 months" },
    { name: "Brake hoses", cells: ["", "I"], last: "" },
  ],
};

test("a note stands under the letters, in lines within the picture", () => {
  const note = "19 items come round beside the services and are not drawn; the text names them, and how often.";
  const [without, { svg }] = [drawChart({ ...chart, notes: [] }).svg, drawChart({ ...chart, notes: [note] })];
  soundly(svg);
  const texts = textsOf(svg);
  const from = texts.findIndex(({ text }) => text.startsWith("19 items"));
  expect(
    texts
      .slice(from)
      .map(({ text }) => text)
      .join(" "),
  ).toBe(note);
  expect(texts[from]?.top).toBeGreaterThan(texts.find(({ text }) => text.startsWith("R = replace"))?.bottom ?? 0);
  expect(boxOf(svg)[3]).toBeGreaterThan(boxOf(without)[3]);
});
