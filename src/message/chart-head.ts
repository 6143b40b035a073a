// The head of a pasted chart: the services, in miles or kilometres or both, as figures or in thousands.

import type { Columns } from "../core/plan/plan.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { type NumberStyle, parseNumber, plain } from "../core/quantity/number.ts";
import { parseUnit } from "../core/quantity/parse.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { type Cell, cellsOf, SEPARATORS, type Separator, type TableLine } from "./chart-table.ts";
import { foldWord } from "./scan.ts";

/** `at`: the cells of the services, for charts lined up by spaces; `named`: does the head begin with a cell above the names? */
export type ChartHead = {
  readonly marks: readonly Columns[];
  /** Null where no unit is named. */
  readonly units: readonly DistanceUnit[];
  readonly separator: Separator;
  readonly at: readonly Cell[];
  /** Lines that belong to it. */
  readonly lines: readonly number[];
  /** Is there a last column for words? */
  readonly beside: boolean;
};

type Reader = Pick<Known, "numbers" | "vocabulary">;
type Services = { readonly figures: readonly number[]; readonly unit: DistanceUnit | null; readonly at: readonly Cell[]; readonly beside: boolean };

const MOST = 200_000;
const LEAST = 50;
export const MOST_COLUMNS = 40;

/** The first line that holds rising services, and the one after it where it is the other column. Null when there is none. */
export function headOf(lines: readonly TableLine[], column: DistanceUnit, known: Reader): ChartHead | null {
  for (const [n, line] of lines.entries()) {
    const above = lines.slice(0, n).map(({ text }) => text);
    for (const separator of SEPARATORS) {
      const first = servicesIn(line.text, separator, above, known);
      if (first === null || first.figures.length < 2) continue;
      const next = lines[n + 1];
      const second = next === undefined ? null : servicesIn(next.text, separator, above, known);
      if (second === null || next === undefined || second.figures.length !== first.figures.length || second.unit === null || second.unit === first.unit)
        return headWith([first], [line.line], separator, column);
      return headWith(
        [first.unit === null ? { ...first, unit: second.unit === "mi" ? "km" : "mi" } : first, second],
        [line.line, next.line],
        separator,
        column,
      );
    }
  }
  return null;
}

function headWith(rows: readonly Services[], lines: readonly number[], separator: Separator, column: DistanceUnit): ChartHead {
  const [first] = rows;
  const of = (unit: DistanceUnit) => rows.find((row) => (row.unit ?? column) === unit)?.figures ?? null;
  const marks = (first?.figures ?? []).map((_, n): Columns => ({ miles: of("mi")?.[n] ?? null, km: of("km")?.[n] ?? null }));
  const units = rows.map((row) => row.unit).filter((unit) => unit !== null);
  return { marks, units, separator, at: first?.at ?? [], lines, beside: first?.beside === true };
}

/** Services of one line, whole and rising; null when it is no line of services. */
function servicesIn(text: string, separator: Separator, above: readonly string[], known: Reader): Services | null {
  const cells = cellsOf(plain(text), separator);
  const own = cells.length > 2 ? cells : (loose(plain(text), separator) ?? cells);
  const read = own.map((cell) => serviceIn(cell.text, known));
  // Before the figures the head of the names, after them the head of a column for words.
  const begin = read.findIndex((each) => each !== null);
  if (begin === -1 || begin > 1) return null;
  const ended = read.findIndex((each, n) => n >= begin && each === null);
  const figures = read.slice(begin, ended === -1 ? undefined : ended).filter((each) => each !== null);
  if (ended !== -1 && ended < own.length - 1) return null;
  const unit =
    unitIn([...figures.map((each) => each.unit), ...(begin === 1 ? [unitNamed(own[0]?.text ?? "", known)] : [])]) ??
    unitIn(above.map((each) => unitNamed(each, known)));
  const scale = [own[0]?.text ?? "", ...above].some((each) => inThousands(each, known)) ? 1000 : 1;
  const values = figures.map(({ value }) => Math.round(value * scale * 1000) / 1000);
  const rising = values.every((value, n) => Number.isInteger(value) && value >= LEAST && value <= MOST && value > (values[n - 1] ?? 0));
  if (!rising || values.length > MOST_COLUMNS) return null;
  return { figures: values, unit, at: own.slice(begin, begin + values.length), beside: ended !== -1 };
}

/** "Service 600 mi 4,000 8,000", parted by single spaces: every figure is a cell. */
function loose(text: string, separator: Separator): readonly Cell[] | null {
  if (separator !== "spaces") return null;
  const found = [...text.matchAll(/\d[\d.,]*\s?k?(?:\s?(?:mi|miles|km)\b)?|[^\d\s]+(?: [^\d\s]+)*/giu)];
  return found.length < 2 ? null : found.map((each) => ({ text: each[0].trim(), from: each.index, to: each.index + each[0].trimEnd().length }));
}

function serviceIn(text: string, known: Reader): { readonly value: number; readonly unit: DistanceUnit | null } | null {
  const style: NumberStyle = known.numbers;
  const figure = /^\d/u.test(text) ? parseNumber(text, 0, style) : null;
  if (figure === null || figure.fraction !== null) return null;
  const rest = text.slice(figure.end).trim();
  const unit = rest === "" ? null : unitNamed(rest, known);
  return rest !== "" && unit === null ? null : { value: figure.value, unit };
}

function unitNamed(text: string, known: Reader): DistanceUnit | null {
  for (const found of text.matchAll(/\p{L}+/gu)) {
    const read = parseUnit(found[0], 0, known.vocabulary.units);
    if (read === null || read.end !== found[0].length) continue;
    if (read.units.includes("mi")) return "mi";
    if (read.units.includes("km")) return "km";
  }
  return null;
}

/** The one unit that is named; null where none is, or two are. */
function unitIn(units: readonly (DistanceUnit | null)[]): DistanceUnit | null {
  const named = [...new Set(units.filter((unit) => unit !== null))];
  return named.length === 1 ? (named[0] ?? null) : null;
}

const inThousands = (text: string, known: Reader): boolean =>
  known.vocabulary.chart.thousands.some((word) =>
    new RegExp(`(?:^|[^\\p{L}\\d.,])${word.replace(/[.]/gu, "\\.")}(?![\\p{L}\\d.,])`, "iu").test(foldWord(text)),
  );
