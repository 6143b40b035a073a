// How figures, distances and dates are printed for one member. The only place where numbers and days become text.

import type { Grain } from "../core/calendar/arithmetic.ts";
import { addMonths, dayOf, daysBetween, grainOf, isUndated, monthOf, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import { type Dial, type DistanceUnit, figureIn, type Ridden, type Stretch } from "../core/quantity/distance.ts";
import { honestDecimals, printFigure, roundTo } from "../core/quantity/print.ts";
import { convert, decimalsOf, fromCanonical, symbolOf, type UnitId } from "../core/quantity/units.ts";

/** What decides how figures look. */
export type PrintStyle = {
  readonly locale: string /** unit wanted for distances; null prints each as its dial counts */;
  readonly distance: DistanceUnit | null;
  /** Is spring in September? */
  readonly south?: boolean;
};

export type Printer = ReturnType<typeof makePrinter>;

/** A printer for one member's locale and units. */
export function makePrinter(style: PrintStyle) {
  const { monthNames, shortMonths, lists } = formatsOf(style.locale);
  const monthName = (date: LocalDate): string => monthNames[monthOf(date) - 1] ?? "";
  const figure = (value: number, decimals = 1): string => printFigure(roundTo(value, decimals), decimals, style.locale);

  const inUnit = (d: Dial | Ridden | Stretch, unit: DistanceUnit): string => {
    const value = figureIn(d, unit);
    // A dial shows whole units; below ten the tenth matters.
    return `${figure(value, Math.abs(value) < 10 ? 1 : 0)} ${unit}`;
  };
  /** A stretch of road in the member's unit, else in that of the dial. For lists of several bikes, and where no point of a dial stands beside it. */
  const distance = (d: Stretch, of: { readonly unit: DistanceUnit }): string => inUnit(d, style.distance ?? of.unit);

  /** "8 December"; the year is added when the day is more than eleven months from today. */
  const date = (on: LocalDate, today?: LocalDate): string => {
    const near = today !== undefined && on < addMonths(today, 11) && on > addMonths(today, -11);
    return `${dayOf(on)} ${monthName(on)}${near ? "" : ` ${yearOf(on)}`}`;
  };

  /** A day as coarsely as it is known: "8 December", "May 2027", "spring 2027", "2027". */
  const coarse = (on: LocalDate, grain: Grain, today?: LocalDate): string => {
    switch (grain) {
      case "day":
        return date(on, today);
      case "month":
        return `${monthName(on)} ${yearOf(on)}`;
      case "season":
        return seasonOf(on, style.south === true);
      case "year":
        return String(yearOf(on));
    }
  };

  return {
    figure,
    distance,
    /** The unit that a member reads stretches of road in. */
    roadUnit: (of: { readonly unit: DistanceUnit }): DistanceUnit => style.distance ?? of.unit,
    /** A point on a dial, in the unit that the dial counts whatever the member reads distances in: no other figure stands there. */
    point: (d: Dial | Ridden, dial: DistanceUnit): string => inUnit(d, dial),
    /** A stretch of road told beside points of a dial, in the dial's unit whatever the member reads distances in: the rider adds the one to the other. */
    onDial: (d: Stretch, dial: DistanceUnit): string => inUnit(d, dial),
    date,
    coarse,
    /** A month where there is little room, "Apr"; a January as its year. */
    axisMonth: (first: LocalDate): string => (monthOf(first) === 1 ? String(yearOf(first)) : (shortMonths[monthOf(first) - 1] ?? "")),
    /** A day where there is little room, "25 Nov". */
    axisDay: (on: LocalDate): string => `${dayOf(on)} ${shortMonths[monthOf(on) - 1] ?? ""}`,
    /** A day as a day, or the one up to which something was done where no more is known; a vague date as it was typed if it names its year ("spring 2023"), since "last May" means another May next year. */
    vague: (v: VagueDate, today?: LocalDate): string =>
      isUndated(v)
        ? `some day up to ${date(v.to, today)}`
        : v.from === v.to
          ? date(v.from, today)
          : /\b\d{4}\b/u.test(v.typed)
            ? v.typed.trim()
            : coarse(v.from, grainOf(v)),
    /** A canonical value in a unit, with no more digits than its tools show. @param decimals always printed, where a kind of reading names its own */
    amount: (canonical: number, unit: UnitId, decimals?: number): string => {
      const value = fromCanonical(canonical, unit);
      const shown = decimals === undefined ? figure(value, decimalsOf(unit)) : printFigure(roundTo(value, decimals), decimals, style.locale, true);
      return `${shown}${symbolOf(unit).startsWith("/") ? "" : " "}${symbolOf(unit)}`;
    },
    /** A figure typed in one unit, in another; null when it cannot be. */
    inUnit: (value: number, from: UnitId, to: UnitId): string | null => {
      const converted = convert(value, from, to);
      return converted.is === "refused" ? null : `${figure(converted.value, honestDecimals(1, to))} ${symbolOf(to)}`;
    },
    list: (items: readonly string[]): string => lists.format(items),
    /** "in 3 weeks", "tomorrow", "12 days ago". */
    gap: (from: LocalDate, to: LocalDate): string => gapWords(daysBetween(from, to)),
  };
}

type Formats = { readonly monthNames: readonly string[]; readonly shortMonths: readonly string[]; readonly lists: Intl.ListFormat };
const formats = new Map<string, Formats>();

/** Formatters cost far more to make than to use, so each locale's are made once. */
function formatsOf(locale: string): Formats {
  const ready = formats.get(locale);
  if (ready !== undefined) return ready;
  const named = (month: "long" | "short"): string[] => {
    const months = new Intl.DateTimeFormat(locale, { month, timeZone: "UTC" });
    return Array.from({ length: 12 }, (_, n) => months.format(Date.UTC(2000, n, 15)));
  };
  const made: Formats = {
    ...{ monthNames: named("long"), shortMonths: named("short") },
    lists: new Intl.ListFormat(locale, { type: "conjunction" }),
  };
  formats.set(locale, made);
  return made;
}

const SEASONS = ["winter", "spring", "summer", "autumn"] as const;

/** The season of a day, named with the year in which it begins. */
function seasonOf(on: LocalDate, south: boolean): string {
  const month = monthOf(on);
  const year = month <= 2 ? yearOf(on) - 1 : yearOf(on);
  return `${SEASONS[(Math.floor((month % 12) / 3) + (south ? 2 : 0)) % 4]} ${year}`;
}

function gapWords(days: number): string {
  if (days === 0) return "today";
  if (days === 1) return "tomorrow";
  if (days === -1) return "yesterday";
  const n = Math.abs(days);
  const span = n < 21 ? `${n} days` : n < 70 ? `${Math.round(n / 7)} weeks` : n < 730 ? `${Math.round(n / 30.44)} months` : `${Math.round(n / 365.25)} years`;
  return days > 0 ? `in ${span}` : `${span} ago`;
}
