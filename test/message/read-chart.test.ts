// Service charts as people paste them: what is read, and what is named as not read. All invented.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chartOf } from "../../src/core/plan/chart.ts";
import type { DistanceUnit } from "../../src/core/quantity/distance.ts";
import { readChart } from "../../src/message/read-chart.ts";
import { csvOf } from "../../src/words/csv.ts";
import { english } from "../../src/words/en/english.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";
import { anItem, every } from "../core/schedule/builders.ts";

const known = { numbers: { decimal: ".", group: "," }, vocabulary: ENGLISH_VOCABULARY } as const;
const read = (text: string, column: DistanceUnit = "mi") => readChart(text, column, known);
/** Services, and each line as its name with a letter or a dash for each service. */
const grid = (text: string, column: DistanceUnit = "mi") => {
  const chart = read(text, column);
  return chart === null
    ? null
    : [chart.marks.map((mark) => mark.miles ?? mark.km), ...chart.rows.map((row) => `${row.name}: ${row.cells.map((cell) => cell.join("") || "-").join(" ")}`)];
};
const EXPECTED = [[600, 4000, 8000], "Engine oil and filter: R R R", "Valve clearance: I - I", "Spark plugs: - - R"];

describe("the same chart, pasted in many ways", () => {
  test.each([
    ["commas", "item,600 mi,4000,8000\nEngine oil and filter,R,R,R\nValve clearance,I,,I\nSpark plugs,,,R"],
    ["commas, figures quoted", 'service at,"600 mi","4,000 mi","8,000 mi"\r\n"Engine oil and filter",R,R,R\r\nValve clearance,I,,I\r\nSpark plugs,,,R\r\n'],
    ["semicolons", "item;600;4.000;8.000\nEngine oil and filter;R;R;R\nValve clearance;I;-;I\nSpark plugs;-;-;R"],
    ["tabs", "mi\t600\t4,000\t8,000\nEngine oil and filter\tR\tR\tR\nValve clearance\tI\t\tI\nSpark plugs\t\t\tR"],
    [
      "strokes",
      "| mi | 600 | 4,000 | 8,000 |\n|---|---|---|---|\n| Engine oil and filter | R | R | R |\n| Valve clearance | I | | I |\n| Spark plugs | | | R |",
    ],
    ["spaces, each cell filled", "mi  600  4,000  8,000\nEngine oil and filter  R  R  R\nValve clearance  I  -  I\nSpark plugs  -  -  R"],
    [
      "lined up by spaces",
      "miles                  600  4,000  8,000\nEngine oil and filter   R     R      R\nValve clearance         I            I\nSpark plugs                          R",
    ],
    ["single spaces", "600 mi 4,000 8,000\nEngine oil and filter R R R\nValve clearance I - I\nSpark plugs - - R"],
    ["thousands", "x 1000 mi\t0.6\t4\t8\nEngine oil and filter\tR\tR\tR\nValve clearance\tI\t\tI\nSpark plugs\t\t\tR"],
    ["in one line", "item;600;4000;8000\\nEngine oil and filter;R;R;R\\nValve clearance;I;;I\\nSpark plugs;;;R"],
  ])("%s", (_how, text) => {
    expect(grid(text)).toEqual(EXPECTED);
  });
});

describe("the head", () => {
  test("in both columns", () => {
    const chart = read("x 1000 mi;0.6;4;8\nx 1000 km;1;6;12\nOil;R;R;R");
    expect([chart?.marks, chart?.units]).toEqual([
      [
        { miles: 600, km: 1000 },
        { miles: 4000, km: 6000 },
        { miles: 8000, km: 12_000 },
      ],
      ["mi", "km"],
    ]);
  });
  test("without a unit is taken in the bike's column, and names none", () => {
    const chart = read("item;1000;6000\nOil;R;R", "km");
    expect([chart?.marks, chart?.units]).toEqual([
      [
        { miles: null, km: 1000 },
        { miles: null, km: 6000 },
      ],
      [],
    ]);
  });
  test.each([["hello there"], ["item;600\nOil;R"], ["item;8000;4000\nOil;R;R"], ["item;4000;8000"], [""]])("of %j there is none", (text) => {
    expect(read(text)).toBeNull();
  });
});

describe("cells and words", () => {
  test("several letters in a cell are several kinds of work, unless the legend has them as one", () => {
    expect(read("item;4000;8000\nPlugs;I;I/R\nOil;R;IR")?.rows.map((row) => row.cells)).toEqual([
      [["I"], ["I", "R"]],
      [["R"], ["I", "R"]],
    ]);
    expect(read("CL = clean\nitem;4000;8000\nFilter;CL;R")?.rows[0]?.cells).toEqual([["CL"], ["R"]]);
  });
  test("marks of other kinds are letters too", () => {
    expect(read("item;4000;8000\nOil;x;•\nPlugs;-;X")?.letters).toEqual(["X", "•"]);
  });
  test("the last column: by the calendar, from the last time, with a letter of its own", () => {
    const rows = read("item;4000;8000;\nOil;R;R;or 12 months\nBrake fluid;;;R every 2 years\nCoolant;;;R: every 24,000 mi from the last time")?.rows;
    expect(rows?.map((row) => row.beside)).toEqual([
      { every: every(null, 12), fromLast: false, letter: null },
      { every: every(null, 24), fromLast: false, letter: "R" },
      { every: every(24_000, null), fromLast: true, letter: "R" },
    ]);
  });
  test("the legend is read where it stands; a letter may stand for more than one kind of work", () => {
    const chart = read("I = inspect and clean, adjust, lubricate or replace if necessary, R = replace\nT: check tightness\nitem;4000;8000\nOil;R;R");
    expect(chart?.legend).toEqual({ I: ["inspect", "clean", "adjust", "lubricate", "replace"], R: ["replace"], T: ["check tightness"] });
  });
  test("what cannot be read is named with its line, and left out whole", () => {
    const chart = read("Chart of the invented bike\nitem;4000;8000\nENGINE\nOil;R;R\nValves;see note;I\nPlugs;I;I;every full moon");
    expect(chart?.rows.map((row) => row.name)).toEqual(["Oil"]);
    expect(chart?.unread.map(({ line }) => line)).toEqual([1, 3, 5, 6]);
  });
  test("lined up by spaces, a letter between two services is not guessed at", () => {
    const chart = read("miles          4,000     8,000     12,000\nOil              R         R          R\nPlugs                R");
    expect([chart?.rows.map((row) => row.name), chart?.unread.map(({ line }) => line)]).toEqual([["Oil"], [3]]);
  });
  test("a figure of speech of any length is read in no time", () => {
    expect(read("R ".repeat(2000))).toBeNull();
    expect(read(`item;4000;8000\n${'"'.repeat(3999)}`)).toBeNull();
  });
});

describe("what /plan chart prints is read back as it was", () => {
  const words = english({ locale: "en-GB", distance: null }, "2026-11-25" as never);
  const plan = fc
    .array(
      fc.record({
        miles: fc.integer({ min: 10, max: 90 }).map((n) => n * 100),
        first: fc.boolean(),
        months: fc.option(fc.constantFrom(6, 12, 24), { nil: null }),
        last: fc.boolean(),
        action: fc.constantFrom("replace", "inspect", "top up", "check tightness"),
      }),
      { minLength: 2, maxLength: 7 },
    )
    .map((rows) =>
      rows.map((row, n) =>
        anItem({
          key: `item.${n}`,
          called: `=Part "${n}", the ${n}th`,
          action: row.action as "replace",
          anchor: row.last ? "last done" : "marks",
          first: row.first ? every(600, null) : null,
          repeat: { by: "interval", every: every(row.miles, row.months) },
        }),
      ),
    );
  const separators: readonly (readonly [string, (rows: readonly (readonly string[])[]) => string])[] = [
    ["as its own table", csvOf],
    ["with tabs", (rows) => rows.map((row) => row.join("\t")).join("\n")],
    ["with strokes", (rows) => rows.map((row) => row.join(" | ")).join("\n")],
    [
      "lined up by spaces",
      (rows) =>
        rows
          .map((row) =>
            row
              .map((cell, n) => (row.length === 1 ? cell : cell.padEnd(n === 0 ? 30 : 9)))
              .join("")
              .trimEnd(),
          )
          .join("\n"),
    ],
  ];
  test.each(separators)("%s", (_how, print) => {
    fc.assert(
      fc.property(plan, (items) => {
        const chart = chartOf(items, "mi", [], 20_000);
        fc.pre(chart.marks.length >= 2);
        const named = (rows: typeof chart.rows) => rows.map((row) => ({ ...row, name: items.find((item) => item.key === row.item)?.called ?? "" }));
        const table = words.chart.table({ ...chart, rows: named(chart.rows), below: named(chart.below) });
        const again = read(print(table));
        expect(again?.marks.map((mark) => mark.miles)).toEqual(chart.marks);
        expect(again?.unread).toEqual([]);
        expect(again?.rows.map((row) => [row.name, chart.marks.filter((_, n) => row.cells[n]?.length === 1), row.beside?.every ?? null])).toEqual(
          [...named(chart.rows), ...named(chart.below)].map((row) => [row.name, row.at, row.beside?.repeat.by === "interval" ? row.beside.repeat.every : null]),
        );
      }),
      { numRuns: 300 },
    );
  });
});
