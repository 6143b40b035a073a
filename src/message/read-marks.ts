// Services as a manual lists them: "600, 4,000, 8,000 mi", "600 mi / 1,000 km, 4,000 mi / 6,000 km".

import type { Columns } from "../core/plan/plan.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { readDial } from "./read-dial.ts";

const LEAST = 50;
const MOST = 200_000;
const MOST_MARKS = 40;

/** The services in rising order as typed; a bare figure has the unit named behind the last, else `unit`. Null when one is no distance, they do not rise, or there are too many. */
export function readMarks(text: string, known: Pick<Known, "numbers" | "vocabulary">, unit: DistanceUnit): readonly Columns[] | null {
  const pieces = text
    .split(/,\s+|;/u)
    .flatMap((piece) => apart(piece.trim().split(/\s+/u), known.vocabulary.joins))
    .filter((piece) => piece !== "");
  const last = readDial(pieces.at(-1)?.split("/").at(-1) ?? "", known, unit);
  const marks = pieces.map((piece) => columnsOf(piece, known, last?.unit ?? unit));
  if (marks.length === 0 || marks.length > MOST_MARKS || !marks.every((mark) => mark !== null)) return null;
  return marks.every((mark, n) => n === 0 || isBeyond(mark, marks[n - 1] as Columns)) ? marks : null;
}

/** "8,000 and 12,000" are two. */
function apart(words: readonly string[], joins: readonly string[]): readonly string[] {
  const at = words.findIndex((word) => joins.includes(word.toLowerCase()));
  return at < 0 ? [words.join(" ")] : [words.slice(0, at).join(" "), ...apart(words.slice(at + 1), joins)];
}

function columnsOf(piece: string, known: Pick<Known, "numbers" | "vocabulary">, unit: DistanceUnit): Columns | null {
  const read = piece.split("/").map((one) => readDial(one, known, unit));
  if (read.length > 2 || !read.every((dial) => dial !== null && Number.isInteger(dial.value) && dial.value >= LEAST && dial.value <= MOST)) return null;
  const figure = (column: DistanceUnit): number | null => read.find((dial) => dial?.unit === column)?.value ?? null;
  // Both in one unit: not two columns.
  if (read.length === 2 && (figure("mi") === null || figure("km") === null)) return null;
  return { miles: figure("mi"), km: figure("km") };
}

/** Further in each column that both print; in the same columns. */
const isBeyond = (a: Columns, b: Columns): boolean =>
  (a.miles === null) === (b.miles === null) && (a.km === null) === (b.km === null) && (a.miles ?? 1) > (b.miles ?? 0) && (a.km ?? 1) > (b.km ?? 0);
