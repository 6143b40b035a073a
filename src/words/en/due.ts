// What is due, in English: one sentence a rider can check by hand for every item.

import { unreachable } from "../../core/brand.ts";
import { addMonths, daysBetween } from "../../core/calendar/arithmetic.ts";
import type { LocalDate } from "../../core/calendar/dates.ts";
import type { DistanceUnit, Ridden, Stretch } from "../../core/quantity/distance.ts";
import { isQuantity } from "../../core/reading/value.ts";
import type { Anchor, Due, Leg, Recheck, Status, Verdict } from "../../core/schedule/facts.ts";
import { isTyreAge, type TyreMade } from "../../core/tyre/age.ts";
import type { Basis } from "../../core/usage/forecast.ts";
import type { Printer } from "../printer.ts";
import { coarse, pointAbout } from "./coarse.ts";
import { dialPoint } from "./dial-point.ts";
import { englishItemName } from "./item-names.ts";
import { SIDES, sideOf } from "./judge.ts";
import { isNoLifeLeft, lookAgainAt } from "./look-again.ts";
import { pressureJudged, valueAsTyped } from "./reading-detail.ts";
import { readingWords } from "./readings.ts";
import { recheckBecause } from "./rechecks.ts";
import { CONDITION_WORDS, capital, lowered } from "./text.ts";

/** What a sentence about an item needs to know of its bike. */
export type OnBike = {
  readonly unit: DistanceUnit;
  /** Ridden distance less this is what the dial shows. */
  readonly offset: number;
  readonly today: LocalDate;
  readonly perWeek: Stretch | null;
  /** How the pace is known. */
  readonly basis: Basis;
  readonly odometer: { readonly figure: number; readonly on: LocalDate } | null;
};
type Named = Due & { readonly name: string };
type Unknown = { readonly name: string; readonly next: Ridden; readonly on: LocalDate | null };
type DistanceLeg = Extract<Leg, { by: "distance" }>;
type WearLeg = Extract<Leg, { by: "wear" }>;
type DateLeg = Extract<Leg, { by: "date" }>;

/** A pace makes a day when it comes within so many days of it, or within such a share of the way there. */
const NEAR_DAYS = 3;
const NEAR_SHARE = 0.05;

export const STATUS_WORDS = { "no record": "no record", good: "good", soon: "coming up", due: "due", overdue: "overdue" } as const satisfies Record<
  Status,
  string
>;

export const dueWords = (p: Printer) => {
  const at = (ridden: Ridden, b: OnBike): string => dialPoint(p, ridden, b);
  const road = (stretch: number, b: OnBike): string => p.onDial(Math.abs(stretch) as Stretch, b.unit);

  /** "last done at about 7,870 mi, counts for 8,000 mi". */
  const since = (
    anchor: Anchor,
    by: "distance" | "date",
    b: OnBike,
    {
      onMarks = false,
      beside = null,
      tooEarlyFor = null,
    }: { readonly onMarks?: boolean; readonly beside?: string | null; readonly tooEarlyFor?: Ridden | null } = {},
  ): string => {
    switch (anchor.from) {
      case "job": {
        const when = p.vague(anchor.on, b.today);
        // A year later to the day: without its year it would read as the same day.
        if (by === "date") return `last done ${when === beside ? p.vague(anchor.on) : when}`;
        if (anchor.ridden === null) return `last done ${when}, at what odometer is not known`;
        const where = `${anchor.about ? "about " : ""}${at(anchor.ridden, b)}`;
        const off = anchor.off === 0 ? "" : `, and ${road(anchor.off, b)} since were on others`;
        const early = tooEarlyFor === null ? "" : `, too early to count for ${at(tooEarlyFor, b)}`;
        return `last done at ${where}${anchor.countsFor === null ? early : `, counts for ${at(anchor.countsFor, b)}`}${off}`;
      }
      case "new":
        return "counted from new";
      case "known from":
        return onMarks ? "the first such mark since it came to you" : "counted from when it came to you";
      case "made":
        return `counted from ${madeIn(anchor)}, its date code`;
      case "first registration":
        return `counted from first registration, ${p.date(anchor.on)}`;
    }
  };

  /** Done between two marks, so that it is no whole interval from there to the next. */
  const isEarly = ({ anchor, dueAt, interval }: DistanceLeg): boolean => anchor.from === "job" && anchor.ridden !== null && dueAt - anchor.ridden < interval;
  const distanceMain = (leg: DistanceLeg, b: OnBike, onMarks: boolean, byTheBook: boolean, whose: string): string => {
    const point = `${at(leg.dueAt, b)}${atTheLatest(leg)}`;
    // By the book the marks never move: work well before the first of them counts for none.
    const from = since(leg.anchor, "distance", b, { onMarks, tooEarlyFor: byTheBook && isEarly(leg) ? leg.dueAt : null });
    if (leg.toGo === null) return `due${whose} at ${point}, ${from}; no odometer reading yet`;
    if (leg.toGo < 0) return `was due${whose} at ${point}, ${from}; now ${road(leg.toGo, b)} past`;
    if (leg.toGo === 0) return `due now${whose} at ${point}, ${from}`;
    return `due${whose} at ${point}, ${from}; ${road(leg.toGo, b)} to go${leg.likely === null ? "" : likelyOn(leg.toGo, leg.likely.on, b)}`;
  };

  /** The pace that makes the day: the present one where it does, else the one reckoned with until then, which seasons and lay-ups make another. */
  const likelyOn = (toGo: Stretch, on: LocalDate, b: OnBike): string => {
    if (b.perWeek === null) return `, likely about ${p.date(on, b.today)}`;
    const read = b.odometer?.on ?? b.today;
    const days = Math.max(1, daysBetween(read, on));
    const near = Math.max(NEAR_DAYS, days * NEAR_SHARE);
    const holds = b.perWeek > 0 && Math.abs((toGo / b.perWeek) * 7 - days) <= near;
    const whose = b.basis.from === "group median" ? "the group's usual" : "your";
    const pace = holds ? `${whose} ${road(b.perWeek, b)} a week` : `about ${road(Math.round((toGo * 7) / days), b)} a week until then`;
    const from = daysBetween(read, b.today) > near ? `, counted from ${p.date(read, b.today)},` : "";
    return `; at ${pace}${from} that is about ${p.date(on, b.today)}`;
  };

  const about = (leg: DistanceLeg): string => (leg.anchor.from === "job" && leg.anchor.about ? "about " : "");
  const atTheLatest = (leg: DistanceLeg): string => (leg.anchor.from === "job" && leg.anchor.ridden === null ? " at the latest" : "");

  const dateMain = (leg: DateLeg, b: OnBike, whose: string, ofTyre: boolean): string => {
    // Three digits leave the decade open: there is no day to tell.
    if (leg.anchor.from === "made" && leg.anchor.year === null && leg.daysToGo < 0) return `due long since${whose}: made before 2000 by its date code`;
    const on = p.coarse(leg.dueOn, leg.grain, b.today);
    const last = since(leg.anchor, "date", b, { beside: on });
    // A tyre ages from its making: one fitted new may have lain for years.
    const from =
      leg.anchor.from === "made"
        ? `${years(leg.months)} by plan from ${madeIn(leg.anchor)}, its date code${leg.daysToGo > 0 && leg.anchor.lookFrom <= b.today ? ", and past five it is looked at once a year for cracks and hard rubber" : ""}`
        : ofTyre && leg.anchor.from === "job"
          ? `${last}, counted from then as its date code is not noted: it may be older, so read it off the sidewall`
          : last;
    // A span as wide as a season begins before most of it is over: while it lasts, the day it counts from is named.
    if (leg.daysToGo <= 0 && leg.grain !== "day" && p.coarse(b.today, leg.grain) === p.coarse(leg.dueOn, leg.grain))
      return `due${whose} since ${p.date(leg.dueOn, b.today)}, ${from}, counted from the first day of that`;
    const paused = leg.pausedDays > 0 ? `, ${leg.pausedDays} days laid up not counted` : "";
    if (leg.daysToGo < 0)
      return leg.grain === "day" ? `was due${whose} on ${on}, ${from}${paused}; ${p.gap(b.today, leg.dueOn)}` : `was due${whose} ${on}, ${from}${paused}`;
    if (leg.daysToGo === 0) return `due today${whose}, ${from}${paused}`;
    return leg.grain === "day" ? `due${whose} on ${on}, ${from}${paused}; ${p.gap(b.today, leg.dueOn)}` : `due${whose} ${on}, ${from}${paused}`;
  };

  /** "100 mi after the work at 14,820 mi, since a new chain settles". */
  const again = ({ dueAt, after, because }: Recheck, b: OnBike): string =>
    `${road(dueAt - after, b)} after the work at ${at(after, b)}, ${recheckBecause(because)}`;

  /** "rear tread depth 1.4 mm on 3 November: beyond limit, 1.6 mm". */
  const verdictMain = ({ on, is, measured, made, seen }: Verdict, b: OnBike): string => {
    if (made !== undefined) return `made ${made.year === null ? "" : "in "}${madeIn(made)}, ${tooOld(made)}`;
    const when = on === b.today ? "today" : `on ${p.date(on, b.today)}`;
    if (seen !== undefined) return `“${seen}”, found ${when}`;
    if (measured === undefined) return `measured ${when} and ${is}`;
    const { unit, limit } = measured;
    const what = readingWords(p).judged(measured);
    // A pressure is not worn to a limit: it is off, and is set where it stands.
    if (measured.kind === "cold pressure" && limit !== null && isQuantity(unit)) {
      const fine = (kPa: number): string => pressureJudged(p, kPa, limit, { ...measured, unit });
      // Held against no figure of the bike's own: so little is flat on any.
      if (measured.bySpec !== true) return `${what}, read ${when}: flat, under the ${fine(limit)} that no road motorcycle is ridden on; not to be ridden on`;
      return `${what}, read ${when}: ${fine(Math.abs(measured.value - limit))} ${measured.side === "low" ? "below" : "above"} spec, ${fine(limit)}${is === "beyond limit" ? "; not to be ridden before it is set" : ""}`;
    }
    const sided = measured.side === null ? "" : sideOf(SIDES[measured.kind], measured.side, is);
    return `${what}, read ${when}: ${is}${sided}${limit === null || unit === "level" ? "" : `, ${valueAsTyped(p, limit, unit, "", measured.kind)}`}`;
  };

  /** "by wear at its limit at about 14,850 mi; about 650 mi left (at least 350 mi with nine chances in ten), likely about 3 February". */
  const wearMain = ({ dueAt, wearing, toGo, likely }: WearLeg, b: OnBike): string => {
    const point = `by wear at its limit at ${pointAbout(p, dueAt, b)}`;
    if (toGo === null) return `${point}, which needs an odometer reading`;
    if (toGo <= 0) return `by wear it has reached its limit since it was last read, at ${pointAbout(p, dueAt, b)}; measure it before you ride on`;
    const gone = dueAt - toGo;
    const least = coarse(Math.max(0, wearing.reaches.low - gone) as Stretch, b.unit);
    const sure = least === 0 ? "perhaps none" : `at least ${road(least, b)} with nine chances in ten`;
    return `${point}; ${leftBy(toGo, b)} (${sure})${likely === null ? "" : `, likely ${p.date(likely.on, b.today)}`}`;
  };

  /** "about 650 mi left"; what is left under half of what is told at the finest is nearly nothing. */
  const leftBy = (toGo: Stretch, b: OnBike): string => {
    const left = coarse(toGo, b.unit);
    return left === 0 ? "next to nothing left" : `about ${road(left, b)} left`;
  };

  /** @param whose " by plan" of an item that has a wear line too */
  const main = (leg: Leg, b: OnBike, onMarks: boolean, byTheBook: boolean, whose: string, ofTyre: boolean): string => {
    switch (leg.by) {
      case "distance":
        return distanceMain(leg, b, onMarks, byTheBook, whose);
      case "date":
        return dateMain(leg, b, whose, ofTyre);
      case "hours":
        return leg.toGo === null
          ? `due at ${p.figure(leg.dueAt)} engine hours; no hours read yet`
          : leg.toGo <= 0
            ? `was due at ${p.figure(leg.dueAt)} engine hours, now ${p.figure(-leg.toGo)} h past`
            : `due at ${p.figure(leg.dueAt)} engine hours, ${p.figure(leg.toGo)} h to go`;
      case "times":
        return leg.done >= leg.nth
          ? `due now, with every ${ordinal(leg.nth)} ${itemNamed(leg.of)}, and ${leg.done} were done since`
          : `due with every ${ordinal(leg.nth)} ${itemNamed(leg.of)}, ${leg.done} done since`;
      case "verdict":
        return `${verdictMain(leg.verdict, b)}${lookAgainAt(p, leg, b)}`;
      case "wear":
        return wearMain(leg, b);
      case "recheck":
        return leg.toGo === null || leg.toGo > 0
          ? `look again at ${at(leg.recheck.dueAt, b)}, ${again(leg.recheck, b)}${leg.toGo === null ? "" : `; ${road(leg.toGo, b)} to go`}`
          : `look again now: due at ${at(leg.recheck.dueAt, b)}, ${again(leg.recheck, b)}`;
      default:
        return unreachable(leg);
    }
  };

  /** Where a leg that does not govern stands. @param wears the item has a wear line too, beside which both of these are the plan's */
  const beside = (leg: Leg, b: OnBike, wears: boolean): string | null => {
    const [byDistance, byDate] = wears ? ["by plan", "by plan"] : ["by distance", "by date"];
    switch (leg.by) {
      case "distance":
        if (leg.anchor.from === "job" && leg.anchor.ridden === null)
          return `${byDistance} it cannot tell, since the odometer then is not known: ${at(leg.dueAt, b)} at the latest`;
        if (leg.toGo === null) return `${byDistance} at ${at(leg.dueAt, b)}, which needs an odometer reading`;
        return leg.toGo <= 0
          ? `${byDistance} it was due at ${about(leg)}${at(leg.dueAt, b)}`
          : `${byDistance} at ${about(leg)}${at(leg.dueAt, b)}${leg.anchor.from === "job" && leg.anchor.countsFor !== null ? `, since it counts for ${at(leg.anchor.countsFor, b)}` : ""}, ${road(leg.toGo, b)} to go`;
      case "date":
        if (leg.anchor.from === "made") return `by age, from ${madeIn(leg.anchor)}, ${leg.daysToGo <= 0 ? "it was due " : ""}${p.date(leg.dueOn, b.today)}`;
        if (leg.state === "cannot tell") return `${byDate} it cannot tell, since the day then is not known: ${p.date(leg.dueOn, b.today)} at the latest`;
        return leg.daysToGo <= 0 ? `${byDate} it was due ${p.coarse(leg.dueOn, leg.grain, b.today)}` : `${byDate} ${p.coarse(leg.dueOn, leg.grain, b.today)}`;
      case "hours":
        return leg.toGo === null ? "by engine hours it cannot tell" : `by engine hours at ${p.figure(leg.dueAt)}`;
      case "verdict":
        return leg.verdict.made === undefined ? `${verdictMain(leg.verdict, b)}${lookAgainAt(p, leg, b)}` : tooOld(leg.verdict.made);
      case "wear":
        return leg.toGo === null || leg.toGo <= 0 ? wearMain(leg, b) : `by wear at ${pointAbout(p, leg.dueAt, b)}, ${leftBy(leg.toGo, b)}`;
      default:
        return null;
    }
  };

  /** "at 16,000 mi or on 25 May, whichever comes first"; null when neither is near. A day more than a year off would read as leave to wait. */
  const nextOf = (point: Ridden | null, day: LocalDate | null, b: OnBike): string | null => {
    const on = day === null || day > addMonths(b.today, 12) ? null : p.date(day, b.today);
    if (point === null) return on === null ? null : `on ${on}`;
    return on === null ? `at ${at(point, b)}` : `at ${at(point, b)} or on ${on}`;
  };

  /** The reason of one item as one sentence, without its full stop. */
  const reason = (due: Due, b: OnBike): string => {
    const { because } = due;
    switch (because.why) {
      case "no reading":
        return because.needs === "odometer" ? "no odometer reading to judge by" : "no engine hours read of late to judge by";
      case "never recorded": {
        if (isTyreAge(due.item)) return NO_CODE;
        const passed = because.passedAt === null ? "nothing is known of the last time" : `${at(because.passedAt, b)} passed before it came to you`;
        const next = nextOf(because.nextMark, because.nextOn, b);
        return `${passed}; ${next === null ? "record when it was done, or do it" : `next ${next} unless you record when it was done`}`;
      }
      case "unplaced": {
        const leg = due.legs[because.leg];
        if (leg?.by !== "distance") return "";
        return `${since(leg.anchor, "distance", b)}; due at ${at(leg.dueAt, b)} at the latest, or record it with its figure`;
      }
      case "undated": {
        const leg = due.legs[because.leg];
        if (leg?.by !== "date") return "";
        return `${since(leg.anchor, "date", b)}; due on ${p.date(leg.dueOn, b.today)} at the latest, or record it with its day`;
      }
      case "leg": {
        const governs = due.legs[because.leg];
        if (governs === undefined) return "";
        const notes = [
          because.runningIn ? "running-in" : null,
          because.shortenedBy === null ? null : `shortened for ${CONDITION_WORDS[because.shortenedBy]}`,
          because.byTheBook ? "by the book" : null,
          governs.by === "distance" && governs.converted ? `only the ${b.unit === "mi" ? "km" : "mi"} column is printed; converted` : null,
        ].filter((note) => note !== null);
        const wears = due.legs.some(({ by }) => by === "wear");
        const others = due.legs
          .filter((_, n) => n !== because.leg)
          .filter((leg) => !isNoLifeLeft(leg, governs))
          // Older than ten is said once: by what it is due by.
          .filter(
            (leg) =>
              !(
                governs.by === "verdict" &&
                governs.verdict.made !== undefined &&
                governs.verdict.is !== "near limit" &&
                leg.by === "date" &&
                leg.anchor.from === "made"
              ),
          )
          .toSorted(nearerFirst)
          .map((leg) => beside(leg, b, wears))
          .filter((text) => text !== null);
        if (because.askOdometer && governs.by === "wear") return `${wearMain(governs, b)}; what does the odometer say`;
        if (because.askOdometer && governs.by === "distance" && governs.likely !== null) {
          return `${at(governs.dueAt, b)} was probably reached about ${p.date(governs.likely.on, b.today)}, ${since(governs.anchor, "distance", b, { onMarks: due.mark !== null })}; what does the odometer say`;
        }
        const first = main(governs, b, due.mark !== null, because.byTheBook, wears ? " by plan" : "", isTyreAge(due.item));
        return [`${first}${notes.length === 0 ? "" : ` (${notes.join(", ")})`}`, ...others].join("; ");
      }
      default:
        return unreachable(because);
    }
  };

  const end = (due: Due): string => (due.because.why === "leg" && due.because.askOdometer ? "?" : ".");

  /** A line under a mixed list, where no heading says the status. */
  const lineWithStatus = (due: Named, b: OnBike): string => `${due.name}: ${reason(due, b)}${end(due)} ${capital(STATUS_WORDS[due.status])}.`;
  const together = (all: readonly Named[], b: OnBike): string => {
    const [first] = all;
    if (first === undefined) return "";
    if (all.length === 1) return lineWithStatus(first, b);
    const named = p.list(all.map(({ name }) => lowered(name)));
    return `${capital(reason(first, b))}${end(first) === "?" ? "? Due there:" : ":"} ${named}. ${capital(STATUS_WORDS[first.status])}.`;
  };

  return {
    status: (status: Status): string => STATUS_WORDS[status],
    reason,
    /** "Engine oil and filter: due at 12,000 mi, last done ...". The reason leads; the heading above says the status. */
    line: (due: Named, b: OnBike): string => `${due.name}: ${reason(due, b)}${end(due)}`,
    lineWithStatus,
    /**
     * The same of things told together: what shares a status and a reason is one line, its reason first.
     * Each with how many things it names.
     */
    told: (dues: readonly Named[], b: OnBike): readonly { readonly text: string; readonly items: number }[] => {
      const alike = new Map<string, Named[]>();
      for (const due of dues) {
        const key = `${due.status} ${reason(due, b)}`;
        alike.set(key, [...(alike.get(key) ?? []), due]);
      }
      return [...alike.values()].map((all) => ({ text: together(all, b), items: all.length }));
    },
    heading: (status: Status, n: number): string => `${capital(STATUS_WORDS[status])}: ${n}`,
    bike: (nickname: string, b: OnBike): string =>
      b.odometer === null
        ? `${nickname}, no odometer reading yet`
        : `${nickname} at ${p.figure(b.odometer.figure, 0)} ${b.unit}, ${b.odometer.on === b.today ? "today" : p.date(b.odometer.on, b.today)}`,
    nothingDue: (): string => "Nothing is due or coming up.",
    /** Items under 1,000 mi or two months: one line, between rides. */
    habits: (names: readonly string[]): string => `Between rides: ${p.list(names.map(lowered))}.`,
    first: (names: readonly string[]): string => `With nothing on record, do these first: ${p.list(names.map(lowered))}.`,
    /** Items that share one reason: "8,000 mi passed before it came to you; next at 16,000 mi ...: valve clearance and spark plugs." */
    shared: (reason: string, names: readonly string[]): string => `${capital(reason)}: ${p.list(names.map(lowered))}.`,
    /** Items of which nothing is known, each with a next point or day of its own: "...; next: tread depth at 16,210 mi or on 25 May." */
    unknown: (items: readonly Unknown[], b: OnBike): string =>
      `Nothing is known of the last time; unless you record it, next: ${p.list(items.map((item) => `${lowered(item.name)} ${nextOf(item.next, item.on, b)}`))}.`,
    more: (n: number, status: Status): string => `and ${n} more ${STATUS_WORDS[status]}`,
    laidUp: (): string => "Laid up: until it is riding again I only tell of what ages while it stands, such as fluids and the battery.",
    basis: (b: OnBike): string | null => {
      const { basis } = b;
      switch (basis.from) {
        case "readings":
          // Nothing is ridden while it stands: the pace of such a week says nothing.
          return b.perWeek === null
            ? null
            : `Likely dates from ${basis.readings} readings over ${spanOf(basis.days)}${b.perWeek === 0 ? "" : `, about ${road(b.perWeek, b)} a week now`}.`;
        case "yearly figure":
          return `Likely dates from your own figure, ${road(basis.perYear, b)} a year.`;
        case "group median":
          return `Likely dates from the group's usual ${road(basis.perYear, b)} a year.`;
        case "nothing":
          return b.odometer === null
            ? null
            : `No likely dates yet: until readings over some weeks show how you ride, one interval counts as a year. Say yours with /bike change yearly:${b.unit === "mi" ? "3,000 mi" : "5,000 km"}.`;
      }
    },
  };
};

const NO_CODE = "its age is not known: read the last four digits behind DOT off its sidewall, week and year, and write them such as “rear tyre DOT 2223”";

/** "week 24 of 2017"; three digits tell no decade. */
const madeIn = ({ week, year }: Pick<TyreMade, "week" | "year">): string => (year === null ? "before 2000" : `week ${week} of ${year}`);
const years = (months: number): string => (months % 12 === 0 ? (months === 12 ? "a year" : `${months / 12} years`) : `${months} months`);
const tooOld = ({ year, months }: NonNullable<Verdict["made"]>): string =>
  `${year === null ? "at least " : ""}${Math.floor(months / 12)} years old: at ten it is replaced whatever its tread, by common practice`;

/** Of plan and wear, told beside what governs, the nearer comes first; all else stays where it is. */
function nearerFirst(a: Leg, b: Leg): number {
  const at = (leg: Leg): number | null => (leg.by === "wear" || leg.by === "distance" ? leg.dueAt : null);
  const [one, other] = [at(a), at(b)];
  if (one !== null && other !== null) return one - other;
  const on = (leg: Leg): LocalDate | null => (leg.by === "date" ? leg.dueOn : leg.by === "wear" || leg.by === "distance" ? (leg.likely?.on ?? null) : null);
  const [day, later] = [on(a), on(b)];
  return (a.by === "wear" || b.by === "wear") && day !== null && later !== null ? daysBetween(later, day) : 0;
}

const itemNamed = (key: string): string => lowered(englishItemName(key, null));
const spanOf = (days: number): string => (days < 60 ? `${days} days` : `${Math.round(days / 30.44)} months`);
const ordinal = (n: number): string => ["", "first", "second", "third", "fourth", "fifth", "sixth"][n] ?? `${n}th`;
