// What must not be lost or saved in silence: figures of a job that nothing else accounts for, and two values for one place.

import type { LogReading, RecordWork } from "../core/reading/intent.ts";
import { among } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";

/** Kinds that a message may well give twice for one day: out and home again, two fills. */
const OFTEN: readonly LogReading["kind"][] = ["odometer", "engine hours", "fuel", "ambient temperature"];

/** Jobs with the words of their clause as a note, where it holds a figure that neither the jobs nor its readings take up: "chain adjusted, 45 mm found". */
export function withFiguresKept(
  layout: Layout,
  clause: Clause,
  work: readonly RecordWork[],
  used: ReadonlySet<number>,
  readings: readonly LogReading[],
): readonly RecordWork[] {
  const [first] = work;
  if (first === undefined || first.note !== undefined) return work;
  const typed = readings.map((reading) => reading.typed.text).join(" ");
  const lost = tokensOf(clause).some((at) => {
    const token = layout.tokens[at];
    return token?.is === "number" && !used.has(at) && !layout.taken.has(at) && !layout.indexes.has(at) && !typed.includes(token.text);
  });
  // "Oil changed without the filter": what was left out is kept in its own words.
  const { without } = layout.known.vocabulary.details;
  if (!lost && !tokensOf(clause).some((at) => among(without, wordAt(layout.tokens, at)))) return work;
  const note = layout.text.slice(layout.tokens[clause.from]?.start, layout.tokens[clause.to]?.end).trim();
  return work.map((intent, n) => (n === 0 ? { ...intent, note } : intent));
}

/** Two values for one place of one bike on one day: which of them holds is asked, as neither may be saved in silence. */
export function withTwiceAsked(readings: readonly LogReading[]): readonly LogReading[] {
  if (readings.length < 2) return readings;
  const falls = fallingDial(readings);
  if (falls !== null)
    return readings.flatMap((each) =>
      each === falls.to ? [] : [each === falls.from ? { ...each, gaps: [{ need: "number", options: [each.value, falls.to.value] }] } : each],
    );
  const oneOnly = (reading: LogReading): boolean => !OFTEN.includes(reading.kind) && reading.gaps.length === 0 && !mayBeSeveral(reading);
  const groups = new Map<string, LogReading[]>();
  for (const reading of readings.filter(oneOnly)) {
    const group = groups.get(keyOf(reading));
    if (group === undefined) groups.set(keyOf(reading), [reading]);
    else group.push(reading);
  }
  return readings.flatMap((reading): readonly LogReading[] => {
    const all = oneOnly(reading) ? (groups.get(keyOf(reading)) ?? []) : [reading];
    if (all[0] !== reading) return [];
    const values = [...new Set(all.map(({ value }) => value))];
    return values.length < 2 ? [reading] : [{ ...reading, gaps: [{ need: "number", options: values }] }];
  });
}

/** What two readings of one thing have in common. */
const keyOf = ({ kind, place, bike, on, unit, detail }: LogReading): string => JSON.stringify([kind, place, bike, on, unit, detail]);

/** "Intake 0.10, intake 0.12": two valves of several, and two calipers in front. */
const mayBeSeveral = ({ kind, place }: LogReading): boolean =>
  (kind === "valve clearance" && (place === "intake" || place === "exhaust")) || ((kind === "pad thickness" || kind === "disc thickness") && place === "front");

/** "Heron 14,820, no, 14,280": of one bike on one day a dial does not fall. */
function fallingDial(readings: readonly LogReading[]): { readonly from: LogReading; readonly to: LogReading } | null {
  const dials = readings.filter(({ kind, gaps }) => kind === "odometer" && gaps.length === 0);
  for (const [n, from] of dials.entries()) {
    const to = dials[n + 1];
    if (to !== undefined && to.bike === from.bike && to.on === from.on && to.unit === from.unit && to.value < from.value) return { from, to };
  }
  return null;
}
