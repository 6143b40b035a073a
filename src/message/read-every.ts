// An interval as people type it: "4,000 mi or 12 months", "4,000 mi / 6,000 km", "every 2 years", "50 engine hours".

import type { Interval } from "../core/plan/plan.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { readDial } from "./read-dial.ts";
import { foldWord } from "./scan.ts";

const LEAST = 50;
const MOST = 200_000;
const MOST_MONTHS = 240;
const MOST_HOURS = 5_000;

/** Reads the whole of a text; null when a part of it is no leg, has no unit, comes twice or is beyond reason. */
export function readEvery(text: string, known: Pick<Known, "numbers" | "vocabulary">): Interval | null {
  let interval: Interval = { miles: null, km: null, months: null, hours: null };
  const parts = foldWord(text)
    .replace(/^every\s+/u, "")
    .replace(/,?\s*whichever\b.*$/u, "")
    .split(/\s*(?:,\s|;|\/|\bor\b|\band\b)\s*/u);
  for (const part of parts) {
    const leg = legOf(part.replace(/^every\s+/u, ""), known);
    if (leg === null || interval[leg.by] !== null) return null;
    interval = { ...interval, [leg.by]: leg.value };
  }
  return interval;
}

function legOf(part: string, known: Pick<Known, "numbers" | "vocabulary">): { readonly by: keyof Interval; readonly value: number } | null {
  const { calendarSpans, units, kinds } = known.vocabulary;
  const [, count, word] = /^(\d{1,3})?\s*-?\s*(\p{L}+)$/u.exec(part) ?? [];
  const months = word === undefined ? undefined : calendarSpans[word];
  if (months !== undefined) {
    const value = months * Number(count ?? 1);
    return value >= 1 && value <= MOST_MONTHS ? { by: "months", value } : null;
  }
  const [, hours, unit] = /^(\d{1,4})\s*-?\s*(\p{L}+(?: \p{L}+)?)$/u.exec(part) ?? [];
  // "50 h", "50 engine hours": the hour meter is the only clock that an interval is counted by.
  if (hours !== undefined && unit !== undefined && (units.h.includes(unit) || kinds["engine hours"].includes(unit))) {
    const value = Number(hours);
    return value >= 1 && value <= MOST_HOURS ? { by: "hours", value } : null;
  }
  const dial = readDial(part, known, "mi");
  if (dial === null || !dial.unitTyped || !Number.isInteger(dial.value) || dial.value < LEAST || dial.value > MOST) return null;
  return { by: dial.unit === "mi" ? "miles" : "km", value: dial.value };
}
