// Looking ahead, in English: until when, what falls due, and what of it is one evening's work.

import { yearOf } from "../../core/calendar/arithmetic.ts";
import type { LocalDate } from "../../core/calendar/dates.ts";
import { type Ridden, type Stretch, TENTHS_OF_MM } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";
import { pointAbout } from "./coarse.ts";
import { dialPoint } from "./dial-point.ts";
import type { OnBike } from "./due.ts";
import { lowered } from "./text.ts";

type Until = {
  readonly on: LocalDate | null;
  readonly byDistance: boolean;
  readonly ridden: { readonly low: Ridden; readonly likely: Ridden; readonly high: Ridden } | null;
};
type Blind = {
  readonly until: "day" | "point";
  readonly next: { readonly mark: Ridden; readonly away: Stretch; readonly counted: boolean } | null;
};
type When = { readonly on: LocalDate | null; readonly at: Ridden | null; readonly by: "plan" | "wear" };

export const outlookWords = (p: Printer) => {
  const at = (ridden: Ridden, b: OnBike): string => dialPoint(p, ridden, b);
  /** A forecast to the single mile would say more than it knows: tens, or hundreds where its range is wide. */
  const about = (ridden: Ridden, range: number, b: OnBike): string => {
    const step = TENTHS_OF_MM[b.unit] * (range > 500 * TENTHS_OF_MM[b.unit] ? 100 : 10);
    return p.point((Math.round((ridden - b.offset) / step) * step) as Ridden, b.unit);
  };
  return {
    /** "Heron until 21 June, then at about 16,900 mi (15,800 mi to 18,300 mi)". */
    until: (nickname: string, { on, byDistance, ridden }: Until, b: OnBike & { readonly laidUp: boolean }): string => {
      if (byDistance && ridden !== null)
        return `${nickname} until ${at(ridden.likely, b)}${on === null ? ". Nothing says when that comes, so what falls due by date is left out." : `, likely about ${p.date(on, b.today)}.`}`;
      const until = `${nickname} until ${on === null ? "then" : p.date(on, b.today)}`;
      if (ridden === null) return `${until}, by date alone: there are too few readings to say how far it will have gone.`;
      if (ridden.low === ridden.high && b.laidUp)
        return `${until}, then at ${at(ridden.likely, b)} still: it is laid up, and while it stands no distance is forecast.`;
      if (ridden.low === ridden.high) return `${until}, then at ${at(ridden.likely, b)}.`;
      const [low, likely, high] = [ridden.low, ridden.likely, ridden.high].map((each) => about(each, ridden.high - ridden.low, b));
      return b.laidUp
        ? `${until}: laid up, so no distance is forecast while it stands. As ridden until then it likely stands at about ${likely} (${low} to ${high}); what its dial shows tells better.`
        : `${until}, then likely at about ${likely} (${low} to ${high}).`;
    },
    /** What a list of work ahead cannot know, and what to do about it. */
    blind: ({ until, next }: Blind, b: Pick<OnBike, "unit" | "offset">): string => {
      if (until === "point") return `Nothing says when that comes, so what falls due by date is left out, but for what is due today. ${sayRate(b)}`;
      const alone = "By date alone: nothing says yet how far it will have gone by then";
      if (next === null) return `${alone}, so what falls due by distance is left out. ${sayRate(b)}`;
      const service = `the ${dialPoint(p, next.mark, b)} service, ${p.onDial(next.away, b.unit)} away`;
      return next.counted
        ? `${alone}. Near enough to be done with it, and counted in: ${service}. What falls due by distance beyond that is left out. ${sayRate(b)}`
        : `${alone}, so what falls due by distance is left out, first of all ${service}. ${sayRate(b)}`;
    },
    nothing: (): string => "Nothing falls due until then.",
    /** Not to be read as leave to ride on. */
    nothingKnown: (n: number): string =>
      `Nothing on record falls due until then, but of ${n} ${n === 1 ? "item" : "items"} nothing is known, so I cannot say for ${n === 1 ? "it" : "them"}; /due names ${n === 1 ? "it" : "them"}, and what to do first.`,
    count: (items: number, evenings: number): string =>
      `${items} ${items === 1 ? "item falls" : "items fall"} due by then${evenings < 2 ? "" : "; what can be done together is listed together"}.`,
    /** "Now, about 1 h 20 min:", "About 12 April, at 16,000 mi:". */
    evening: (when: When, items: number, minutes: number | null, b: OnBike): string => {
      const point = when.at === null ? null : `at ${when.by === "wear" ? pointAbout(p, when.at, b) : at(when.at, b)}`;
      const day = when.on === null ? null : when.on <= b.today ? "now" : `about ${p.date(when.on, b.today)}`;
      // What nothing else dates is due some time until then.
      const lead = day === null && point === null ? "until then" : [day, day === "now" ? null : point].filter((each) => each !== null).join(", ");
      const time = minutes === null || minutes === 0 ? "" : ` (${items > 1 ? "together " : ""}about ${hours(minutes)})`;
      return `${lead.charAt(0).toUpperCase()}${lead.slice(1)}${time}:`;
    },
    perhaps: (names: readonly string[]): string => `Only if you ride more than is likely: ${p.list(names.map(lowered))}.`,
    unknown: (n: number): string => `Of ${n} more ${n === 1 ? "item" : "items"} nothing is known; /due names ${n === 1 ? "it" : "them"}.`,
    standing: (): string => "All of this can be done while it stands.",
    /** "While it stands, by 1 March, brake fluid and coolant fall due: ..." */
    whileItStands: ({ items: names, until, charge }: Standing, today: LocalDate): string[] => [
      ...(names.length === 0
        ? []
        : [
            `By ${p.date(until)}, while it stands, ${names.length === 1 ? "this falls" : "these fall"} due: ${p.list(names.map(lowered))}. Do ${names.length === 1 ? "it" : "them"} before it stands, or in spring before the first ride.`,
          ]),
      ...(charge === null ? [] : [chargeLine(p, charge, today)]),
    ],
  };
};

const sayRate = ({ unit }: Pick<OnBike, "unit">): string =>
  `Say how far you ride in a year and it is complete: /bike change yearly:${unit === "mi" ? "3,000 mi" : "5,000 km"}.`;

export type Standing = {
  readonly until: LocalDate;
  readonly items: readonly string[];
  readonly charge: {
    readonly on: LocalDate;
    readonly by: "days" | "flat part" | "volts";
    readonly readings: number;
    readonly low: { readonly on: LocalDate; readonly typed: string } | null;
    readonly lithium: boolean;
    readonly riding: boolean;
  } | null;
};

export const hours = (minutes: number): string => {
  const [h, m] = [Math.floor(minutes / 60), minutes % 60];
  return [h > 0 ? `${h} h` : "", m > 0 ? `${m} min` : ""].filter((each) => each !== "").join(" ");
};

/** By when to charge a battery that stands, and by what that is told. */
export const chargeLine = (p: Printer, { on, by, readings, low, lithium, riding }: NonNullable<Standing["charge"]>, today: LocalDate): string => {
  const how = lithium ? " with a charger made for lithium, never below 0 °C" : "";
  const when = on <= today ? "now" : `by ${by === "volts" ? "about " : ""}${yearOf(on) === yearOf(today) ? p.date(on, today) : p.date(on)}`;
  const why =
    low !== null
      ? `${low.typed} at rest ${low.on === today ? "today" : `on ${p.date(low.on, today)}`}`
      : readings === 0
        ? "nothing was read of it since it was laid up, and its volts at rest tell better"
        : by === "flat part"
          ? "by the days it stands, since its volts tell little more than that it is not low"
          : by === "days"
            ? "its volts hold, and are to be looked at again by then"
            : readings === 1
              ? "by one reading, and what such batteries lose"
              : `by ${readings} readings since it was charged`;
  return riding
    ? `The battery's volts at rest fall over ${readings} readings: charge it ${when}${how} if it is not ridden long enough before.`
    : `Charge the battery ${when}${how}: ${why}.`;
};
