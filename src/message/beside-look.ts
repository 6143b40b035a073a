// What a message says beside a look at something: "checked the valves, one needs a shim". Nobody who says more than that they looked has said that all was well.

import type { ItemKey } from "../core/ids.ts";
import type { LogReading, RecordWork } from "../core/reading/intent.ts";
import { among } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { joinAt, tokensOf } from "./pieces.ts";
import { mayStandBeside } from "./work-words.ts";

/** More words than this are talk. */
const MOST_WORDS = 12;

/** Kinds that say nothing of what was looked at. */
const OF_THE_DAY: readonly LogReading["kind"][] = ["odometer", "engine hours", "fuel", "ambient temperature"];

/**
 * Looks with the words of their clause that nothing accounts for, and without the praise that nobody spoke where a value was read: its own judgement says how that is.
 * @param used tokens that work and defects account for
 */
export function withBeside(
  layout: Layout,
  clause: Clause,
  jobs: readonly RecordWork[],
  used: ReadonlySet<number>,
  readings: readonly LogReading[],
): readonly RecordWork[] {
  if (!jobs.some(isLook)) return jobs;
  const strength = isOfStrength(layout, clause, readings);
  const looks = strength ? jobs.filter((job) => !isLook(job) || !job.items.every((item) => item === LEVEL)) : jobs;
  const measured = readings.some(({ kind }) => !OF_THE_DAY.includes(kind));
  const beside = piecesOf(layout, clause, used, readings).join(", ");
  return looks.map((job) => (isLook(job) ? { ...job, ...(measured ? { outcome: "inspected" as const } : {}), ...(beside === "" ? {} : { beside }) } : job));
}

/** The line that looks how full the coolant is. */
const LEVEL = "coolant.inspect" as ItemKey;

/** "Coolant tested -37 °C": how much frost it stands, and nothing of how full it is. */
const isOfStrength = (layout: Layout, { from, to }: Clause, readings: readonly LogReading[]): boolean => {
  const { levelWords } = layout.known.vocabulary.measuring;
  if (!readings.some(({ kind }) => kind === "coolant strength") || readings.some(({ kind }) => kind === "coolant level")) return false;
  return !tokensOf({ from, to }).some((at) => among(levelWords, wordAt(layout.tokens, at)));
};

const isLook = ({ outcome }: RecordWork): boolean => outcome === "inspected, within limits";

/** The pieces between commas that nothing accounts for, and what follows the job behind "and" or "but". */
function piecesOf(layout: Layout, clause: Clause, used: ReadonlySet<number>, readings: readonly LogReading[]): readonly string[] {
  const pieces: string[] = [];
  const said = readings.map(({ typed }) => typed.text);
  let from = clause.from;
  for (let at = clause.from; at <= clause.to + 1; at++) {
    const token = layout.tokens[at];
    if (at <= clause.to && !(token?.is === "break" && [",", ":", "(", ")"].includes(token.mark))) continue;
    const piece = pieceOf(layout, from, at - 1, used);
    if (piece !== null && !said.some((typed) => piece.includes(typed))) pieces.push(piece);
    from = at + 1;
  }
  return pieces;
}

function pieceOf(layout: Layout, from: number, to: number, used: ReadonlySet<number>): string | null {
  let start = from;
  for (let at = from; at <= to; at++) if (used.has(at)) start = at + 1;
  const { vocabulary } = layout.known;
  if (start > from) {
    // "Checked the chain with Tess": what goes on without a join says how it was done.
    while (start <= to && !among(vocabulary.joins, joinAt(layout, start)) && !among(vocabulary.measuring.found, wordAt(layout.tokens, start))) start++;
  }
  let words = 0;
  let more = false;
  for (let at = start; at <= to; at++) {
    if (wordAt(layout.tokens, at) === null) continue;
    words++;
    more ||= !mayStandBeside(layout, at);
  }
  return more && words <= MOST_WORDS ? layout.text.slice(layout.tokens[start]?.start, layout.tokens[to]?.end).trim() : null;
}
