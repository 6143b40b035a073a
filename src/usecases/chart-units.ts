// A line of a chart taken apart by its letters: "I" at some services and "R" at others are two jobs.

import type { PrintedLine } from "../core/plan/from-chart.ts";
import type { Meaning } from "../core/reading/chart-words.ts";
import type { ChartRowSaid, ChartSaid } from "../message/read-chart.ts";

/** One job of a line. `meaning` null: the line has no letter. `unclear`: several letters, and an interval beside them that names none. */
export type ChartUnit = PrintedLine & {
  readonly n: number;
  readonly line: number;
  readonly name: string;
  readonly meaning: Meaning | null;
  readonly unclear: boolean;
};

/** @param legend what each letter is taken for */
export function unitsOf(said: ChartSaid, legend: Readonly<Record<string, Meaning>>): readonly ChartUnit[] {
  return said.rows.flatMap((row) => partsOf(row, legend)).map((unit, n) => ({ ...unit, n }));
}

function partsOf({ line, name, cells, beside }: ChartRowSaid, legend: Readonly<Record<string, Meaning>>): readonly Omit<ChartUnit, "n">[] {
  const meaningOf = (letter: string): Meaning => legend[letter] ?? "nothing";
  const besideMeaning = beside?.letter == null ? null : meaningOf(beside.letter);
  const inGrid = cells.flat().map(meaningOf);
  const meanings = [...new Set([...inGrid, ...(besideMeaning === null ? [] : [besideMeaning])])].filter((meaning) => meaning !== "nothing");
  if (meanings.length === 0)
    return inGrid.length > 0 || besideMeaning !== null ? [] : [{ line, name, meaning: null, at: [], replacedAt: [], beside, unclear: false }];
  const unclear = beside !== null && besideMeaning === null && meanings.length > 1;
  const servicesOf = (meaning: Meaning): number[] => cells.flatMap((letters, n) => (letters.some((letter) => meaningOf(letter) === meaning) ? [n] : []));
  return meanings.map((meaning) => ({
    ...{ line, name, meaning, unclear },
    at: servicesOf(meaning),
    replacedAt: meaning === "replace" ? [] : servicesOf("replace"),
    beside: besideMeaning === null || besideMeaning === meaning ? beside : null,
  }));
}
