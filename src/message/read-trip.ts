// A trip as a member writes it: "2,800 mi from 12 June to 30 June", "900 km from next Friday for ten days".

import { addDays, addMonths, daysBetween } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { readDial } from "./read-dial.ts";
import { readUntil } from "./read-until.ts";

export type ReadTrip = { readonly value: number; readonly unit: DistanceUnit; readonly from: LocalDate; readonly to: LocalDate };

const COUNTS: Readonly<Record<string, number>> = {
  a: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
  fourteen: 14,
};

/** Null when distance or days cannot be read; the end may come before the start, which the caller refuses. */
export function readTrip(text: string, known: Known, unit: DistanceUnit): ReadTrip | null {
  const found = /^(.+?)\s+(?:from|starting|on)\s+(.+?)(?:\s+(to|until|till|for)\s+(.+))?$/iu.exec(text.trim());
  if (found === null) return null;
  const [, far = "", first = "", how, rest = ""] = found;
  const distance = readDial(far, known, unit);
  const from = dayOf(first, known, unit);
  if (distance === null || from === null) return null;
  const to = how === undefined ? from : how.toLowerCase() === "for" ? lasting(from, rest) : endOf(from, dayOf(rest, known, unit, from), rest);
  return to === null ? null : { value: distance.value, unit: distance.unit, from, to };
}

/** An end without a year is the next such day; one that lies most of a year ahead was meant before the start, and the two are the wrong way round. */
function endOf(from: LocalDate, to: LocalDate | null, text: string): LocalDate | null {
  return to === null || /\b20\d\d\b/u.test(text) || daysBetween(from, to) <= LONGEST_UNSAID ? to : addMonths(to, -12);
}

/** Days; a longer trip names its year. */
const LONGEST_UNSAID = 200;

function dayOf(text: string, known: Known, unit: DistanceUnit, after?: LocalDate): LocalDate | null {
  if (/^today$/iu.test(text.trim())) return known.today;
  const day = readUntil(text, after === undefined ? known : { ...known, today: after }, unit);
  return day?.is === "day" ? day.on : null;
}

function lasting(from: LocalDate, text: string): LocalDate | null {
  const found = /^(\d{1,3}|[a-z]+)\s+(day|week)s?$/iu.exec(text.trim());
  const count = found === null ? undefined : (COUNTS[(found[1] ?? "").toLowerCase()] ?? Number(found[1]));
  if (found === null || count === undefined || !(count >= 1)) return null;
  return addDays(from, count * (found[2]?.toLowerCase() === "week" ? 7 : 1) - 1);
}
