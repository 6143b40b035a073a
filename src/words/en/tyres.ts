// Tyres in English: what is left of them, what is moulded on them, what to set indoors.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { DistanceUnit, Stretch } from "../../core/quantity/distance.ts";
import type { UnitId } from "../../core/quantity/units.ts";
import { symbolOf } from "../../core/quantity/units.ts";
import type { AgeWord, TyreEnd } from "../../core/tyre/age.ts";
import type { TyreDate } from "../../core/tyre/date-code.ts";
import type { Construction, TyreMarking } from "../../core/tyre/marking.ts";
import type { Wear } from "../../core/wear/wear.ts";
import type { Printer } from "../printer.ts";
import { coarse } from "./coarse.ts";
import { MARKS_SOURCE } from "./look-up.ts";
import { capital } from "./text.ts";

type Worn = {
  readonly part: string;
  readonly place: string | null;
  readonly wear: Wear;
  /** Ridden on it since it was last read. */
  readonly since: Stretch;
  readonly likely: { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null } | null;
};
export type LeakTold =
  | { readonly is: "sound" | "leaks"; readonly per30days: number; readonly usual: number; readonly days: number }
  | {
      readonly is: "leak likely";
      readonly lost: number;
      readonly days: number;
      readonly fills: number;
      readonly explained: number;
      readonly fall: number;
    };
type Indoors = {
  readonly want: Amount;
  readonly garage: Amount;
  readonly road: Amount;
  readonly garageIs: "warmer" | "as warm" | "colder" | "too far apart";
  readonly set: number;
};
type BuiltEnd = { readonly construction: Construction; readonly typed: string; readonly by: "fitted" | "size entered" };
type BuiltEnds = { readonly nickname: string; readonly front: BuiltEnd | null; readonly rear: BuiltEnd | null };
/** "180/55ZR17 (radial)", and the word alone where it is all that was typed. */
const builtAs = ({ construction, typed, by }: BuiltEnd): string => {
  const is = by === "fitted" ? construction : `${construction} by the size entered for it`;
  return /\d/u.test(typed) ? `${typed.replace(/(?<=\d) \p{Ll}[\p{L} -]*$/u, "")} (${is})` : is;
};

type Amount = { readonly value: number; readonly unit: UnitId };

type Age = { readonly date: Exclude<TyreDate, { is: "refused" }>; readonly months: number; readonly replaceAt: number; readonly age: AgeWord };
type Aged = Age & { readonly place: TyreEnd };

/** "At ten at the latest", or sooner by the bike's own plan. */
const atTheLatest = ({ replaceAt }: Pick<Age, "replaceAt">): string => (replaceAt === 120 ? "at ten at the latest" : `at ${ageOf(replaceAt)} by your plan`);
const whatAge = (aged: Omit<Age, "date">): string =>
  ({
    within: "",
    "look yearly": `Past five years: have it looked at once a year for cracks and hard rubber, and replace it ${atTheLatest(aged)}.`,
    replace: aged.months >= 120 ? TOO_OLD : `Replace it whatever its tread: ${ageOf(aged.replaceAt)} by your plan; ten at the latest by common practice.`,
  })[aged.age];
/** What an age of so many years, said without a code, calls for. */
export const adviceAt = (years: number): string =>
  whatAge({ months: years * 12, replaceAt: 120, age: years >= 10 ? "replace" : years >= 5 ? "look yearly" : "within" });
/** "Six years", "six and a half". */
const ageOf = (months: number): string => (months % 12 === 0 ? `${SMALL[months / 12] ?? months / 12} years` : `${months} months`);
const SMALL = ["", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const NEVER_ABOVE = "Never above the maximum moulded on the sidewall.";
const CHECK_AGAIN = "Check it again cold where the ride starts.";
const TOO_OLD = "Replace it whatever its tread: at ten years rubber is too hard to trust.";

export const tyreWords = (p: Printer) => {
  /** Distances left are guesses: two digits of them are honest. */
  const about = (distance: Stretch, unit: DistanceUnit): string => p.onDial(coarse(distance, unit), unit);
  const again = (unit: DistanceUnit): string => `Read it again in some ${unit === "mi" ? "500 mi" : "1,000 km"}.`;
  const name = ({ part, place }: Worn): string =>
    capital(place === null ? part : part.endsWith("tread") ? `${place} tyre` : `${place} ${part.endsWith("shoes") ? "shoes" : "pads"}`);
  /** The days as the distance: eight chances in ten. */
  const between = ({ from, to }: NonNullable<Worn["likely"]>, today: LocalDate): string =>
    to === null
      ? `not before ${p.date(from, today)} with nine chances in ten`
      : `between ${p.date(from, today)} and ${p.date(to, today)} with eight chances in ten`;
  const amount = ({ value, unit }: Amount, decimals = 1): string => `${p.figure(value, decimals)} ${symbolOf(unit)}`;
  return {
    heading: (nickname: string): string => `${nickname}, tyres`,
    nothing: (): string => "Nothing read yet. Say tread 4.5 mm front 5 mm rear, or 33 psi front 36 rear, before a ride.",
    /** "Rear tyre: about 2,400 mi left (2,000 mi to 2,900 mi with eight chances in ten), likely until 3 May (between …); from 4 readings." */
    left: (worn: Worn, unit: DistanceUnit, today: LocalDate): string => {
      const { wear } = worn;
      if (wear.is === "worn") return `${name(worn)}: worn to its limit.`;
      if (wear.is === "too few") {
        return wear.readings < 2
          ? `${name(worn)}: one reading is too few to say how far it goes. ${again(unit)}`
          : `${name(worn)}: ${wear.readings} readings are too few to say how far it goes. ${again(unit)}`;
      }
      // The line was drawn to the last reading: what was ridden since is off it.
      const now = (stretch: Stretch): Stretch => Math.max(0, stretch - worn.since) as Stretch;
      const [likely, low, high] = [now(wear.left.likely), now(wear.left.low), wear.left.high === null ? null : now(wear.left.high)];
      if (likely === 0) return `${name(worn)}: by its wear it has reached its limit since it was last read. Measure it before you ride on.`;
      const range = high === null ? `at least ${about(low, unit)}` : `${about(low, unit)} to ${about(high, unit)} with eight chances in ten`;
      const when = worn.likely === null ? "" : `, likely until ${p.date(worn.likely.on, today)} (${between(worn.likely, today)})`;
      return `${name(worn)}: about ${about(likely, unit)} left (${range})${when}; from ${wear.readings} readings.`;
    },
    lasted: ({ place, went }: { readonly place: string; readonly went: Stretch }, unit: DistanceUnit): string =>
      `The last ${place} tyre lasted ${p.onDial(went, unit)}.`,
    lookFirst: (): string => "Look before you measure: cracks, cuts, a squared-off middle, plugs. None is noted; write one such as “rear tyre squared off”.",
    /** "Rear tyre: made in week 37 of 2015, 11 years old. Replace it whatever its tread." */
    aged: (tyre: Aged): string => {
      const { place, date, months } = tyre;
      const years = Math.floor(months / 12);
      const old = years === 0 ? "less than a year old" : years === 1 ? "one year old" : `${years} years old`;
      const made = date.is === "made" ? `made in week ${date.week} of ${date.year}, ${old}` : `made before 2000, at least ${old}`;
      return `${capital(place)} tyre: ${made}. ${whatAge(tyre)}`.trimEnd();
    },
    /** "Front and rear tyre: their age is not known. Read ..." */
    undated: (ends: readonly TyreEnd[]): string =>
      ends.length > 1
        ? `${capital(p.list(ends))} tyre: their age is not known. Read the last four digits behind DOT off each sidewall, week and year, and write them such as “${ends[0]} 2223 ${ends[1]} 1822 date codes”.`
        : `${capital(ends[0] ?? "")} tyre: its age is not known. Read the last four digits behind DOT off its sidewall, week and year, and write them such as “${ends[0]} tyre DOT 2223”.`,
    leak: (place: string, leak: LeakTold, unit: UnitId): string => {
      // As finely as a gauge is read.
      const fine = (kPa: number): string => p.amount(kPa, unit, unit === "kPa" ? 0 : decimalsFor(unit) + (unit === "psi" ? 1 : 0));
      if (leak.is === "leak likely") {
        const over = `${leak.days === 1 ? "one day" : `${leak.days} days`}${leak.fills === 1 ? "" : `, from ${leak.fills} fills`}`;
        return `${capital(place)} tyre: lost ${fine(leak.lost)} in ${over}. The air temperature was not noted each time; had it grown colder by ${p.figure(leak.fall, 0)} °C, that alone would take about ${fine(leak.explained)}. So a slow leak is likely: valve, bead or a nail. Look before you ride, and note the temperature beside the next readings, such as “${place} 36 psi at 12 °C”.`;
      }
      const lost = fine(leak.per30days);
      if (leak.is === "leaks")
        return `${capital(place)} tyre: loses about ${lost} in 30 days once the weather is taken out. That is a slow leak: valve, bead or a nail.`;
      if (leak.per30days <= 0 || lost === fine(0)) return `${capital(place)} tyre: no loss over ${leak.days} days once the weather is taken out.`;
      return `${capital(place)} tyre: loses about ${lost} in 30 days over ${leak.days} days once the weather is taken out, within what a sound tyre loses (up to ${fine(leak.usual)} in 30 days, common practice). Top it up cold.`;
    },
    /** The same in a word, for where there is little room. */
    leakShort: (place: string, leak: LeakTold): string => `${capital(place)} tyre: a slow leak${leak.is === "leak likely" ? " is likely" : ""}.`,
    dated: (tyre: Age): readonly string[] => {
      const { date, months } = tyre;
      const years = Math.floor(months / 12);
      const old = years === 0 ? "less than a year old" : years === 1 ? "one year old" : `${years} years old`;
      const made =
        date.is === "made"
          ? `Made in week ${date.week} of ${date.year}: ${old}.`
          : `Three digits: made before 2000, week ${date.week} of a year ending in ${date.digit}; which decade is not in it. At least ${years} years old.`;
      const what =
        tyre.age === "within" ? `From five years on have it looked at once a year, whatever its tread, and replace it ${atTheLatest(tyre)}.` : whatAge(tyre);
      return [made, `${what} Common practice; its maker may ask for less.`];
    },
    noteIt: (): string => "To note it for a tyre that is on: with its end, or say “rear tyre DOT 2223”.",
    marked: (marking: TyreMarking): string => {
      const parts = [
        ...(marking.construction === null ? [] : [`${marking.construction} construction`]),
        ...(marking.load === null
          ? []
          : [`load index ${marking.load.index}: ${p.inUnit(marking.load.kilograms, "kg", "kg")} (${p.inUnit(marking.load.kilograms, "kg", "lb")})`]),
        ...(marking.speed === null
          ? []
          : [
              marking.speed.above
                ? `${marking.speed.symbol}: above ${p.inUnit(marking.speed.kmh, "km/h", "km/h")}, how much stands in brackets behind it`
                : `speed symbol ${marking.speed.symbol}: ${p.inUnit(marking.speed.kmh, "km/h", "km/h")} (${p.inUnit(marking.speed.kmh, "km/h", "mph")})`,
            ]),
      ];
      return `${marking.size === "" ? "" : `${marking.size}: `}${parts.length === 0 ? "no load or speed on it" : p.list(parts)}.`;
    },
    alike: (alike: boolean | null): string =>
      alike === null
        ? "Whether both ends are built alike I cannot tell from that."
        : alike
          ? "Both ends are built alike."
          : "The ends are built differently: mix constructions only where the bike's maker names that pair.",
    oneEndNew: (built: BuiltEnds, named: boolean): string => {
      const { front, rear } = built;
      const known = (["front", "rear"] as const).flatMap((end) => (built[end] === null ? [] : [{ end, ...built[end] }]));
      const said = p.list(known.map((each) => `${each.end} ${builtAs(each)}`));
      const of = named ? `${built.nickname}: ` : "";
      if (front !== null && rear !== null && front.construction !== rear.construction)
        return `${of}The ends are built differently: ${said}. Ride such a mix only where the bike's maker names that pair; else have one end changed first. Take new tyres gently at first.`;
      if (known.length === 2) return `${of}Both ends are built alike: ${said}. Still a pair that the bike's maker names. Take the new tyre gently at first.`;
      const [one] = known;
      const other = one === undefined ? "" : ` Known is the ${said}; how the ${one.end === "front" ? "rear" : "front"} is built stands on its sidewall.`;
      return `${of}One end is new: keep both of one construction, and of a pair that the bike's maker names.${other} Take it gently at first.`;
    },
    notNoted: (mayPress: boolean): string =>
      `Nothing of it is noted yet. ${mayPress ? "If it is the size that your papers or the manual name, press to keep it" : "To keep the size that your papers or the manual name: /spec what:rear tyre size value:…"}; for a tyre just fitted say it so, such as “new rear tyre 150/70R17 69V at 14,200”.`,
    least: (): string => "Load and speed at least as the bike's papers ask; a pair, an approved one.",
    marksBy: (): string => `Load and speed by ${MARKS_SOURCE}.`,
    indoors: ({ want, garage, road, garageIs, set }: Indoors): readonly string[] => {
      const wanted = amount(want, decimalsFor(want.unit));
      const [inside, outside] = [amount(garage, 0), amount(road, 0)];
      switch (garageIs) {
        case "warmer":
          return [
            `Set ${amount({ value: set, unit: want.unit }, decimalsFor(want.unit))} indoors at ${inside}: on the road at ${outside} that is the ${wanted} wanted.`,
            `By the gas law on absolute pressure, tyre as warm as the garage. ${NEVER_ABOVE} ${CHECK_AGAIN}`,
          ];
        case "as warm":
          return [`Set the ${wanted} wanted: garage and road are equally warm, so there is nothing to correct.`, `${NEVER_ABOVE} ${CHECK_AGAIN}`];
        case "colder":
          return [
            `Set the ${wanted} wanted where the ride starts, at ${outside}, with the tyre cold from standing there.`,
            `In a garage of ${inside}, which is colder, set it no lower than ${wanted}: never underfill a tyre by arithmetic. ${NEVER_ABOVE} ${CHECK_AGAIN}`,
          ];
        case "too far apart":
          return [
            `Set the ${wanted} wanted where the ride starts, at ${outside}. From a garage of ${inside} that is too far to correct: the tyre would stand far over its pressure.`,
            `${NEVER_ABOVE} ${CHECK_AGAIN}`,
          ];
      }
    },
  };
};

const decimalsFor = (unit: UnitId): number => (unit === "bar" || unit === "kgf/cm²" ? 2 : 0);
