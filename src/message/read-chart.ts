// A pasted service chart, read: services, lines with their letters, the legend it brings. What cannot be read is named with its line.
// Not here: what the letters are taken for in the end, nor which items of a plan are meant (usecases/read-chart).

import type { PrintedBeside } from "../core/plan/from-chart.ts";
import type { Columns } from "../core/plan/plan.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { Meaning } from "../core/reading/chart-words.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { type ChartHead, headOf } from "./chart-head.ts";
import { type Cell, cellsOf, linesOf, type TableLine } from "./chart-table.ts";
import { besideIn, type Footnote, footnoteIn, legendIn } from "./chart-words.ts";

/** One line of a chart. `cells`: the letters at each service; `beside`: what the last column says, with a letter of its own where it has one. */
export type ChartRowSaid = {
  readonly line: number;
  readonly name: string;
  readonly cells: readonly (readonly string[])[];
  readonly beside: (PrintedBeside & { readonly letter: string | null }) | null;
};
/** A line, or what stood in it, that was not understood. */
export type Unread = { readonly line: number; readonly text: string };
export type ChartSaid = {
  readonly marks: readonly Columns[];
  /** Units named; none: the services were taken in the bike's column. */
  readonly units: readonly DistanceUnit[];
  readonly rows: readonly ChartRowSaid[];
  /** Letters in the order in which they come. */
  readonly letters: readonly string[];
  /** What the chart itself says of letters; several: it names more than one kind of work. */
  readonly legend: Readonly<Record<string, readonly Meaning[]>>;
  /** Has it a column for words? Without one it says nothing of calendar legs. */
  readonly besideColumn: boolean;
  readonly unread: readonly Unread[];
};

type Reader = Pick<Known, "numbers" | "vocabulary">;
const MOST_ROWS = 100;

/** Reads a chart; null when no line names two services or more, or no line below it could be read. @param column unit of services that name none */
export function readChart(pasted: string, column: DistanceUnit, known: Reader): ChartSaid | null {
  const { chart } = known.vocabulary;
  const all = linesOf(pasted);
  const legends = all.map((line) => ({ line, legend: legendIn(line.text, chart) }));
  const legend = Object.fromEntries(legends.flatMap((each) => Object.entries(each.legend ?? {})));
  const lines = legends.filter((each) => each.legend === null).map((each) => each.line);
  const head = headOf(lines, column, known);
  if (head === null) return null;
  const printed: ChartRowSaid[] = [];
  const unread: Unread[] = [];
  const below = lines.filter((each) => !head.lines.includes(each.line));
  const footnotes = below.flatMap((line) => (line.line < (head.lines[0] ?? 0) ? [] : [{ line, note: footnoteIn(line.text, known) }]));
  const noted = (mark: string): Footnote | null => {
    const all = footnotes.flatMap(({ note }) => (note?.mark === mark ? [note] : []));
    return all.length === 1 ? (all[0] ?? null) : null;
  };
  const rows: ChartRowSaid[] = [];
  const used = new Set<string>();
  for (const line of below) {
    const read = printed.length >= MOST_ROWS || line.line < (head.lines[0] ?? 0) ? null : markedRow(line, head, legend, known);
    if (read === null) {
      unread.push({ line: line.line, text: line.text.trim() });
      continue;
    }
    printed.push(read.row);
    const note = read.mark === null || read.row.beside !== null ? null : noted(read.mark);
    const letter = note === null ? null : letterFor(note.action, legend, chart.letters);
    if (note !== null && letter !== null) used.add(note.mark);
    rows.push(note === null || letter === null ? read.row : { ...read.row, beside: { ...note.beside, letter } });
  }
  if (rows.length === 0) return null;
  // A footnote that a line goes by is read; any other is not.
  const told = footnotes.flatMap(({ line, note }) => (note !== null && used.has(note.mark) ? [line.line] : []));
  const letters = [...new Set(rows.flatMap((row) => [...row.cells.flat(), ...(row.beside?.letter == null ? [] : [row.beside.letter])]))];
  return {
    marks: head.marks,
    units: head.units,
    rows,
    letters,
    legend,
    besideColumn: head.beside || printed.some((row) => row.beside !== null),
    unread: unread.filter(({ line }) => !told.includes(line)),
  };
}

/** A line with the mark of a footnote behind its name, where it has one: what stands under the services is read without it. */
function markedRow(
  line: TableLine,
  head: ChartHead,
  legend: Readonly<Record<string, unknown>>,
  known: Reader,
): { readonly row: ChartRowSaid; readonly mark: string | null } | null {
  const whole = rowIn(line, head, legend, known);
  const marked = /^(.*[\p{L})])\s*(\*+|†|‡)$/u.exec(whole?.name ?? "");
  if (whole !== null) return { row: marked === null ? whole : { ...whole, name: marked[1] ?? whole.name }, mark: marked?.[2] ?? null };
  const [, before = "", mark] = /^(\s*[^*†‡]*[\p{L})])\s*(\*+|†|‡)(?=\s)/u.exec(line.text) ?? [];
  if (mark === undefined) return null;
  const at = line.text.indexOf(mark, before.length);
  const row = rowIn({ ...line, text: line.text.slice(0, at) + " ".repeat(mark.length) + line.text.slice(at + mark.length) }, head, legend, known);
  return row === null ? null : { row, mark };
}

/** The letter by which a kind of work goes in this chart, or usually. */
function letterFor(action: Meaning, legend: Readonly<Record<string, readonly Meaning[]>>, usual: Readonly<Record<string, readonly Meaning[]>>): string | null {
  const first = (of: Readonly<Record<string, readonly Meaning[]>>): string | undefined => Object.keys(of).find((letter) => of[letter]?.[0] === action);
  const own = first(legend) ?? first(usual);
  // A letter that the chart uses for something else would say that instead.
  return own === undefined || (legend[own] !== undefined && legend[own]?.[0] !== action) ? null : own;
}

function rowIn({ line, text }: TableLine, head: ChartHead, legend: Readonly<Record<string, unknown>>, known: Reader): ChartRowSaid | null {
  const placed = placedIn(text, head, legend, known);
  if (placed === null || !/\p{L}/u.test(placed.name)) return null;
  const cells = placed.cells.map((cell) => lettersIn(cell, legend, known));
  if (cells.some((cell) => cell === null)) return null;
  const beside = besideIn(placed.beside, known);
  return beside === undefined ? null : { line, name: placed.name, cells: cells.filter((cell) => cell !== null), beside };
}

type Placed = { readonly name: string; readonly cells: readonly string[]; readonly beside: string };

/** The cells of a line under the services of the head; null when it is not sure which is under which. */
function placedIn(text: string, head: ChartHead, legend: Readonly<Record<string, unknown>>, known: Reader): Placed | null {
  const count = head.marks.length;
  const [name, ...rest] = cellsOf(text, head.separator);
  if (name === undefined) return null;
  if (head.separator !== "spaces") {
    const texts = rest.map((cell) => cell.text);
    if (texts.length === 0 || texts.slice(count + 1).some((cell) => cell !== "")) return null;
    return { name: name.text, cells: Array.from({ length: count }, (_, n) => texts[n] ?? ""), beside: texts[count] ?? "" };
  }
  // As many cells as services leave no blank: they stand in order. Else each must stand under its service.
  const cells = rest.slice(0, count).map((cell) => cell.text);
  const beside = rest[count]?.text ?? "";
  if (rest.length >= count && rest.length <= count + 1 && cells.every((cell) => lettersIn(cell, legend, known) !== null))
    return { name: name.text, cells, beside };
  return lined(name, rest, head) ?? single(text, count, legend, known);
}

/** Lined up by spaces: each letter stands under its service, or it is not read. */
function lined(name: Cell, rest: readonly Cell[], head: ChartHead): Placed | null {
  const cells = head.marks.map(() => "");
  let beside = "";
  for (const cell of rest) {
    const under = head.at.findIndex((service) => cell.from < service.to && cell.to > service.from);
    if (under !== -1 && cells[under] === "" && beside === "") cells[under] = cell.text;
    else if (under === -1 && beside === "" && cell.from >= (head.at.at(-1)?.to ?? 0)) beside = cell.text;
    else return null;
  }
  return rest.length === 0 || name.to > (head.at[0]?.from ?? 0) ? null : { name: name.text, cells, beside };
}

/** Parted by single spaces: a name, then exactly as many letters or dashes as there are services. */
function single(text: string, count: number, legend: Readonly<Record<string, unknown>>, known: Reader): Placed | null {
  const words = text.trim().split(/\s+/u);
  const isCell = (word: string | undefined): boolean =>
    word !== undefined && lettersIn(word, legend, known) !== null && word.length <= 3 && word === word.toUpperCase();
  const begin = words.findIndex((_, n) => n > 0 && words.slice(n, n + count).length === count && words.slice(n, n + count).every(isCell));
  if (begin === -1 || isCell(words[begin + count])) return null;
  return { name: words.slice(0, begin).join(" "), cells: words.slice(begin, begin + count), beside: words.slice(begin + count).join(" ") };
}

/** The letters of one cell; null when it holds anything else. "I/R", "I, R" and "IR" are two letters, unless the legend has "IR". */
function lettersIn(text: string, legend: Readonly<Record<string, unknown>>, known: Reader): readonly string[] | null {
  const { chart } = known.vocabulary;
  const cell = text.trim();
  if (chart.nothing.includes(cell)) return [];
  if (legend[cell] !== undefined) return [cell];
  const upper = cell.toUpperCase();
  const parts = upper.split(/[\s,/+&]+/u).flatMap((part) => (legend[part] !== undefined ? [part] : /^\p{Lu}{1,3}$/u.test(part) ? [...part] : [part]));
  const isLetter = (part: string): boolean => legend[part] !== undefined || chart.letters[part] !== undefined || /^\p{Lu}$/u.test(part);
  return parts.every(isLetter) && parts.length <= 4 ? [...new Set(parts)] : null;
}
