// A service chart as a grid: services along the top, items down the side, letters in the cells. Thin rules, no colours that judge.

import { widthOf, wrapped } from "./letters.ts";
import { INK } from "./look.ts";
import { type Label, line, type Point, picture } from "./svg.ts";

/** Texts as they stand in the drawing. `cells`: one for each of `marks`; `last`: what stands beside them. */
export type ChartDrawing = {
  readonly title: string;
  readonly corner: string;
  readonly marks: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly string[]; readonly last: string }[];
  /** Head of the last column. */
  readonly last: string;
  /** What goes by no service, and how often it comes round: under the grid. */
  readonly belowTitle: string;
  readonly below: readonly { readonly name: string; readonly said: string }[];
  readonly legend: readonly string[];
  /** Under the legend: what the grid has no room for. */
  readonly notes: readonly string[];
};

const TEXT = 26;
const ROW = 40;
/** A grid of few services is not drawn narrower than this: letters would fill the screen. */
const LEAST = 900;
const wide = (texts: readonly string[]): number => Math.max(0, ...texts.map((text) => widthOf(text, TEXT)));

/** The drawing as SVG, with its width in pixels at which the letters have their size. */
export function drawChart(chart: ChartDrawing): { readonly svg: string; readonly width: number } {
  const names = wide([chart.corner, ...[...chart.rows, ...chart.below].map((row) => row.name)]) + 16;
  const column = chart.rows.some((row) => row.last !== "") ? wide([chart.last, ...chart.rows.map((row) => row.last)]) + 24 : 0;
  const cell = Math.max(wide(chart.marks) + 14, 46, (LEAST - names - column) / Math.max(1, chart.marks.length));
  const grid = names + cell * chart.marks.length;
  const right = grid + column;
  const title = wrapped(chart.title, TEXT, right);
  const head = ROW * (title.length + 1.2);
  const foot = head + ROW * chart.rows.length;
  const text = (at: Point, said: string, anchor: Label["anchor"], color: string = INK.line): Label => ({ text: said, at, anchor, size: TEXT, color });
  const middle = (n: number): number => names + cell * (n + 0.5);
  const base = (n: number): number => head + ROW * (n + 0.7);
  const beside = belowOf(chart, names, right, foot);
  const { bottom } = beside;
  const legend = lines(chart.legend, ", ", right);
  const notes = chart.notes.flatMap((each) => wrapped(each, TEXT, right));
  const under = bottom + ROW * (legend.length + (notes.length === 0 ? 0 : 0.4));
  const labels = [
    ...title.map((said, n) => text({ x: 0, y: ROW * (n + 0.4) }, said, "start")),
    text({ x: 0, y: head - 12 }, chart.corner, "start", INK.quiet),
    ...chart.marks.map((mark, n) => text({ x: middle(n), y: head - 12 }, mark, "middle")),
    ...(column === 0 ? [] : [text({ x: grid + 14, y: head - 12 }, chart.last, "start", INK.quiet)]),
    ...chart.rows.flatMap((row, r) => [
      ...(row.last === "" ? [] : [text({ x: grid + 14, y: base(r) }, row.last, "start")]),
      text({ x: 0, y: base(r) }, row.name, "start"),
      ...row.cells.flatMap((letter, n) => (letter === "" ? [] : [text({ x: middle(n), y: base(r) }, letter, "middle")])),
    ]),
    ...beside.labels,
    ...legend.map((said, n) => text({ x: 0, y: bottom + ROW * (n + 1.2) }, said, "start")),
    ...notes.map((said, n) => text({ x: 0, y: under + ROW * (n + 1.2) }, said, "start", INK.quiet)),
  ];
  const rules = [
    ...chart.rows.map((_, r) => line({ x: 0, y: head + ROW * r }, { x: right, y: head + ROW * r }, r === 0 ? INK.line : INK.faint, r === 0 ? 2 : 1)),
    line({ x: 0, y: foot }, { x: right, y: foot }, INK.line, 2),
    ...beside.rules,
    ...[...chart.marks, ...(column === 0 ? [] : [chart.last])].map((_, n) => {
      const x = names + cell * n;
      return line({ x, y: head - ROW }, { x, y: foot }, INK.faint, 1);
    }),
  ];
  const svg = picture(rules, labels, [
    { x: 0, y: -ROW / 2 },
    { x: right, y: under + ROW * notes.length },
  ]);
  return { svg, width: Number(/viewBox="\S+ \S+ ([\d.]+)/u.exec(svg)?.[1] ?? LEAST) };
}

/** Lines of a row's second column stand so close. */
const LINE = 32;

/** What stands under the grid: a head, and a line an item with what is said of it beside its name. `bottom`: where it ends. */
function belowOf({ belowTitle, below }: ChartDrawing, names: number, right: number, top: number) {
  if (below.length === 0) return { labels: [] as Label[], rules: [] as string[], bottom: top };
  const label = (x: number, y: number, text: string, color: string = INK.line): Label => ({ text, at: { x, y }, anchor: "start", size: TEXT, color });
  const labels = [label(0, top + ROW * 1.3, belowTitle, INK.quiet)];
  const rules: string[] = [];
  let y = top + ROW * 1.6;
  for (const { name, said } of below) {
    const lines = wrapped(said, TEXT, right - names);
    rules.push(line({ x: 0, y }, { x: right, y }, INK.faint, 1));
    labels.push(label(0, y + ROW * 0.7, name), ...lines.map((each, n) => label(names, y + ROW * 0.7 + LINE * n, each)));
    y += ROW + LINE * (lines.length - 1);
  }
  return { labels, rules: [...rules, line({ x: 0, y }, { x: right, y }, INK.line, 2)], bottom: y };
}

/** Pieces put together into lines no wider than the grid; a piece that is wider is parted at spaces. */
function lines(pieces: readonly string[], join: string, right: number): readonly string[] {
  const found: string[] = [];
  for (const piece of pieces.flatMap((each) => wrapped(each, TEXT, right))) {
    const last = found.at(-1);
    if (last !== undefined && widthOf(`${last}${join}${piece}`, TEXT) <= right) found[found.length - 1] = `${last}${join}${piece}`;
    else found.push(piece);
  }
  return found;
}
