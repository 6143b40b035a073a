// Zones and instants: where a wall clock meets UTC. The only module that knows luxon.
// A local time inside a daylight-saving gap means the first instant after the gap; one that comes twice means the first.

import { DateTime, Duration, IANAZone, Settings } from "luxon";
import { fromDayNumber } from "./arithmetic.ts";
import type { Instant, LocalDate, LocalTime, Zone } from "./dates.ts";

// Luxon's failed dates would else be values that flow on in silence.
Settings.throwOnInvalid = true;

/** Is this a time zone of the IANA database? */
export const isZone = (text: string): text is Zone => text === "UTC" || (text.includes("/") && IANAZone.isValidZone(text));

/** Places south of the equator that have seasons, by the beginning of their zone's name (IANA time zone database, zone.tab). */
const SOUTHERN = [
  ...["Antarctica/", "Australia/", "Pacific/Auckland", "Pacific/Chatham", "Pacific/Norfolk", "America/Argentina/", "America/Santiago", "America/Punta_Arenas"],
  ...["America/Montevideo", "America/Asuncion", "America/Sao_Paulo", "America/La_Paz", "America/Lima", "Atlantic/Stanley", "Africa/Johannesburg"],
  ...["Africa/Windhoek", "Africa/Gaborone", "Africa/Maputo", "Africa/Harare", "Africa/Lusaka", "Africa/Maseru", "Africa/Mbabane", "Indian/Antananarivo"],
  ...["Indian/Mauritius", "Indian/Reunion"],
];

/** Is spring in September there? */
export const isSouthern = (name: Zone): boolean => SOUTHERN.some((begins) => name.startsWith(begins));

/** Zones under the names of today where the runtime lists only the old ones (IANA time zone database, file "backward"). */
const RENAMED: Readonly<Record<string, string>> = {
  "Africa/Asmera": "Africa/Asmara",
  "America/Buenos_Aires": "America/Argentina/Buenos_Aires",
  "America/Coral_Harbour": "America/Atikokan",
  "America/Godthab": "America/Nuuk",
  "America/Indianapolis": "America/Indiana/Indianapolis",
  "America/Louisville": "America/Kentucky/Louisville",
  "Asia/Calcutta": "Asia/Kolkata",
  "Asia/Katmandu": "Asia/Kathmandu",
  "Asia/Rangoon": "Asia/Yangon",
  "Asia/Saigon": "Asia/Ho_Chi_Minh",
  "Atlantic/Faeroe": "Atlantic/Faroe",
  "Europe/Kiev": "Europe/Kyiv",
  "Pacific/Enderbury": "Pacific/Kanton",
  "Pacific/Ponape": "Pacific/Pohnpei",
  "Pacific/Truk": "Pacific/Chuuk",
};

/** Names of zones to suggest; any other name of the database is taken as well. */
export const zoneNames = (): readonly string[] => [...new Set([...Intl.supportedValuesOf("timeZone").map((name) => RENAMED[name] ?? name), "UTC"])].sort();

/** Zones to offer to who typed no zone's name, but that of its city or the beginning of it: three at most. */
export function zonesLike(typed: string): readonly string[] {
  const city = typed
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/gu, "_");
  if (city.length < 3) return [];
  const cities = zoneNames().map((name) => ({ name, city: (name.split("/").at(-1) as string).toLowerCase() }));
  const exact = cities.filter((each) => each.city === city);
  return (exact.length > 0 ? exact : cities.filter((each) => each.city.startsWith(city))).slice(0, 3).map(({ name }) => name);
}

/** The zone of that name. @throws RangeError when there is none */
export function zone(text: string): Zone {
  if (!isZone(text)) throw new RangeError(`not a time zone: ${text}`);
  return text;
}

/** An instant in its one spelling, `2026-11-25T08:59:45.000Z`. @throws RangeError when the text names no instant */
export function instant(text: string): Instant {
  let read: DateTime;
  try {
    read = DateTime.fromISO(text, { zone: "UTC" });
  } catch (cause) {
    throw new RangeError(`not an instant: ${text}`, { cause });
  }
  return write(read.toMillis());
}

/** The instant that many milliseconds after 1 January 1970 UTC. */
export const instantOfMillis = (millis: number): Instant => write(millis);
export const millisOf = (at: Instant): number => Date.parse(at);

/** The calendar day in a zone at an instant. */
export function localDateAt(at: Instant, where: Zone): LocalDate {
  const millis = millisOf(at);
  return fromDayNumber(Math.floor((millis + offsetAt(millis, where)) / 86_400_000));
}

/** The wall clock in a zone at an instant, `09:00`. */
export function localTimeAt(at: Instant, where: Zone): LocalTime {
  const millis = millisOf(at);
  const ofDay = (((millis + offsetAt(millis, where)) % 86_400_000) + 86_400_000) % 86_400_000;
  const minutes = Math.floor(ofDay / 60_000);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}` as LocalTime;
}

/** The instant at which a wall clock in a zone shows a date and time: after a gap, the first time of two. */
export function instantOf(date: LocalDate, time: LocalTime, where: Zone): Instant {
  const wall = Date.parse(`${date}T${time}:00.000Z`);
  // The offsets in force a day before and a day after are the only candidates around a transition.
  const offsets = [...new Set([offsetAt(wall - 86_400_000, where), offsetAt(wall + 86_400_000, where)])];
  const candidates = offsets.map((offset) => wall - offset).filter((millis) => millis + offsetAt(millis, where) === wall);
  if (candidates.length > 0) return write(Math.min(...candidates));
  return write(firstAfterGap(wall, offsets, where));
}

/** `at` moved on by an ISO 8601 duration ("P30D", "PT2H"); days and months in UTC. @throws RangeError when it is not a duration */
export function addDuration(at: Instant, duration: string): Instant {
  try {
    return write(DateTime.fromISO(at, { zone: "UTC" }).plus(Duration.fromISO(duration)).toMillis());
  } catch (cause) {
    throw new RangeError(`not a duration: ${duration}`, { cause });
  }
}

/** `at` moved on by minutes. */
export const addMinutes = (at: Instant, minutes: number): Instant => write(millisOf(at) + minutes * 60_000);

/** The gap's end is where the earlier offset stops: found by halving between the two readings of the wall clock. */
function firstAfterGap(wall: number, offsets: readonly number[], where: Zone): number {
  let before = wall - Math.max(...offsets);
  let after = wall - Math.min(...offsets);
  const was = offsetAt(before, where);
  while (after - before > 1000) {
    const middle = Math.floor((before + after) / 2000) * 1000;
    if (middle <= before) break;
    if (offsetAt(middle, where) === was) before = middle;
    else after = middle;
  }
  return after;
}

/** A zone, and what its offset was found to be at some instants: the same ones are asked for again and again (now, the next midnight), and finding one out is slow. */
type Known = { readonly zone: IANAZone; readonly offsets: Map<number, number> };
const zones = new Map<string, Known>();
const OFFSETS_KEPT = 1000;

function offsetAt(millis: number, where: Zone): number {
  if (where === "UTC") return 0;
  let known = zones.get(where);
  if (known === undefined) {
    known = { zone: IANAZone.create(where), offsets: new Map() };
    zones.set(where, known);
  }
  const before = known.offsets.get(millis);
  if (before !== undefined) return before;
  const offset = known.zone.offset(millis) * 60_000;
  if (known.offsets.size >= OFFSETS_KEPT) known.offsets.clear();
  known.offsets.set(millis, offset);
  return offset;
}

function write(millis: number): Instant {
  return new Date(millis).toISOString() as Instant;
}
