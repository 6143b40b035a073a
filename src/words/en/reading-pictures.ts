// Pictures of readings in English: what stands in them, and the same in lines.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Equipment } from "../../core/equipment.ts";
import { type DistanceUnit, figureIn, type Ridden } from "../../core/quantity/distance.ts";
import { decimalsOf, fromCanonical, symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { Place } from "../../core/reading/kinds.ts";
import { SPEC_USES, type SpecUse } from "../../core/spec/spec.ts";
import type { Basis } from "../../core/usage/forecast.ts";
import type { Printer } from "../printer.ts";
import { pressureJudged, valueAsTyped } from "./reading-detail.ts";
import { altOf, capital } from "./text.ts";
import { type LeakTold, tyreWords } from "./tyres.ts";

type OnDial = { readonly nickname: string; readonly unit: DistanceUnit; readonly offset: number; readonly today: LocalDate };
type Odometer = OnDial & {
  readonly until: LocalDate;
  readonly points: readonly { readonly on: LocalDate; readonly ridden: Ridden }[];
  readonly ahead: readonly { readonly on: LocalDate; readonly low: Ridden; readonly likely: Ridden; readonly high: Ridden }[];
  readonly layUps: readonly { readonly from: LocalDate; readonly to: LocalDate }[];
  readonly basis: Basis;
};
type Wear = OnDial & {
  readonly typedIn: UnitId | null;
  /** Where the bike stands; null while no dial was read. */
  readonly now: Ridden | null;
  readonly fitted: Pick<Equipment, "finalDrive" | "frontBrake" | "rearBrake" | "sidecar">;
  readonly panels: readonly {
    readonly part: string;
    readonly place: Place | null;
    readonly points: readonly { readonly ridden: Ridden; readonly value: number; readonly typed: string }[];
    readonly limit: {
      readonly value: number;
      readonly by: "spec" | "law" | "bars" | "bars, state law" | "bars, no group" | "practice" | "mark";
      readonly unsettled?: boolean;
    } | null;
    readonly line: { readonly from: Ridden; readonly start: number; readonly likely: Ridden; readonly low: Ridden; readonly high: Ridden | null } | null;
    readonly worn: boolean;
    readonly days?: { readonly on: LocalDate; readonly from: LocalDate; readonly to: LocalDate | null } | null;
  }[];
};
type Pressure = {
  readonly nickname: string;
  readonly today: LocalDate;
  readonly typedIn: UnitId;
  readonly celsius: number;
  readonly leaks?: readonly { readonly place: string; readonly leak: LeakTold }[];
  readonly panels: readonly {
    readonly place: "front" | "rear" | "sidecar";
    readonly points: readonly {
      readonly on: LocalDate;
      readonly read: number;
      readonly typed: string;
      readonly levelled: number | null;
      readonly load: SpecUse;
    }[];
    readonly wanted: readonly { readonly loads: readonly SpecUse[]; readonly value: number }[];
  }[];
};

const LIMIT_FROM = {
  spec: "your own figure",
  law: "the law here",
  bars: "the moulded bars",
  "bars, state law": "the moulded bars",
  "bars, no group": "the moulded bars",
  practice: "common practice",
  mark: "the mark",
} as const;
/** What each picture of wear is called, what is logged for it, and what is done at the limit. */
const WEAR = {
  tread: {
    of: "tread",
    none: "tread reading",
    log: "tread 4.5 mm front 3.2 rear",
    now: "change it now",
    alt: "Tread depth against the odometer, with its limit.",
  },
  pads: {
    of: "brake pads",
    none: "pad reading",
    log: "front pads 3.5 mm",
    now: "change them now",
    alt: "Brake pad lining against the odometer, with its limit.",
  },
  shoes: {
    of: "brake shoes",
    none: "shoe reading",
    log: "front shoes 3.5 mm",
    now: "change both of that drum now",
    alt: "Brake shoe lining against the odometer, with its limit.",
  },
  linings: {
    of: "brake linings",
    none: "pad or shoe reading",
    log: "front pads 3.5 mm, rear shoes 3 mm",
    now: "change them now",
    alt: "Brake lining against the odometer, with its limit.",
  },
  chain: {
    of: "chain, longer than new",
    none: "chain reading that tells its wear",
    log: "chain 318.2 mm over 20 pitches",
    now: "replace chain and sprockets",
    alt: "How much longer than new the chain is, against the odometer, with its limit.",
  },
} as const;

/** What a bike without a chain has, and what is looked at in its place. */
const WITHOUT_CHAIN = {
  belt: "is driven by a belt and has no chain; read the belt's deflection: belt 10 mm at 45 N",
  shaft: "is driven by a shaft and has no chain; nothing on it is measured for wear, its oil is an item of /plan list",
  variator: "has a variator with a belt inside and no chain; that belt is changed by distance, as /plan list has it",
  "hub motor": "is driven by its hub and has no chain; there is none to measure",
} as const satisfies Record<Exclude<Equipment["finalDrive"], "chain">, string>;

/** Which linings a picture is of: those that were measured, else those that the bike has. */
function liningsOf({ panels, fitted }: Pick<Wear, "panels" | "fitted">): "pads" | "shoes" | "linings" {
  const read = panels.filter(({ points }) => points.length > 0).map(({ part }) => (part.endsWith("shoes") ? "drum" : "disc"));
  const kinds = new Set(read.length > 0 ? read : [fitted.frontBrake, fitted.rearBrake]);
  return kinds.size > 1 ? "linings" : kinds.has("drum") ? "shoes" : "pads";
}

/** Has the line reached the limit before where the bike stands? */
const isBehind = ({ now }: Pick<Wear, "now">, { line, worn }: Pick<Wear["panels"][number], "line" | "worn">): boolean =>
  !worn && line !== null && now !== null && line.likely <= now;

export const readingPictureWords = (p: Printer) => {
  const onDial = ({ unit, offset }: Pick<OnDial, "unit" | "offset">, ridden: Ridden): number => figureIn((ridden - offset) as Ridden, unit);
  const whole = (value: number): string => p.figure(value, 0);
  /** A forecast to the single mile would say more than it knows. */
  const about = (b: OnDial, ridden: Ridden): string => `${whole(Math.round(onDial(b, ridden) / 100) * 100)} ${b.unit}`;

  /** What the bike has passed already is no longer ahead of it. */
  const rangeSaid = (shown: Wear, low: Ridden, high: Ridden | null): string => {
    const come = shown.now !== null && Math.round(onDial(shown, low) / 100) * 100 <= onDial(shown, shown.now);
    if (high === null) return come ? "any time from now on, or far later" : `after ${about(shown, low)}`;
    return come ? `from now on, by ${about(shown, high)}` : `between ${about(shown, low)} and ${about(shown, high)}`;
  };

  /** As it is ridden. */
  const daysSaid = ({ days = null }: Wear["panels"][number], today: LocalDate): string => {
    if (days === null) return "";
    const range =
      days.from <= today
        ? days.to === null
          ? ""
          : `, by ${p.date(days.to, today)}`
        : days.to === null
          ? `, after ${p.date(days.from, today)}`
          : `, between ${p.date(days.from, today)} and ${p.date(days.to, today)}`;
    return `; as it is ridden about ${p.date(days.on, today)}${range}`;
  };

  return {
    odometer: (shown: Odometer) => {
      const { points, ahead, today, until, nickname } = shown;
      const [first, last, then] = [points[0], points.at(-1), ahead.at(-1)];
      const title =
        last === undefined
          ? `${nickname} has no odometer reading yet`
          : `${nickname}'s odometer${then === undefined ? "" : `, and what is likely until ${p.date(until, today)}`}`;
      const lines =
        first === undefined || last === undefined
          ? [`${title}. Log one: 14,820 mi on ${nickname}.`]
          : [
              `${nickname}: ${p.point((last.ridden - shown.offset) as Ridden, shown.unit)} on ${p.date(last.on, today)}${points.length === 1 ? "; one reading so far" : `, ${points.length} readings since ${p.date(first.on, today)}`}.`,
              then === undefined
                ? "Too few readings yet to say what is likely; two over a fortnight or more will do."
                : then.high === then.low
                  ? `It is laid up: while it stands no distance is forecast, and it shows ${p.point((then.likely - shown.offset) as Ridden, shown.unit)} still on ${p.date(then.on, today)}.`
                  : shown.layUps.some(({ from, to }) => from <= today && to >= then.on)
                    ? `It is laid up: while it stands no distance is forecast. As ridden until then it likely stands at about ${about(shown, then.likely)}, between ${about(shown, then.low)} and ${about(shown, then.high)} eight times in ten; what its dial shows tells better.`
                    : `Likely by ${p.date(then.on, today)}: about ${about(shown, then.likely)}, between ${about(shown, then.low)} and ${about(shown, then.high)} eight times in ten.`,
              ...(shown.layUps.length === 0
                ? []
                : [
                    `Laid up: ${p.list(shown.layUps.map(({ from, to }) => (to >= until ? `since ${p.date(from, today)}` : `${p.date(from, today)} to ${p.date(to, today)}`)))}.`,
                  ]),
            ];
      return {
        drawing: {
          ...{ title, name: `Odometer, ${shown.unit}`, today, todayText: "today", until, layUps: shown.layUps },
          points: points.map(({ on, ridden }) => ({ on, at: onDial(shown, ridden) })),
          ahead: ahead.map(({ on, low, likely, high }) => ({ on, low: onDial(shown, low), likely: onDial(shown, likely), high: onDial(shown, high) })),
          ...{ month: p.axisMonth, day: p.axisDay, figure: whole },
          meaning: { read: "read", likely: "likely", range: "eight times in ten", rest: "laid up" },
          notes: then === undefined ? lines.slice(1, 2) : [],
        },
        lines,
        alt: altOf(`A line of ${nickname}'s odometer over time. ${lines.join(" ").replaceAll(" - ", " ")}`),
      };
    },

    wear: (of: "tread" | "pads" | "chain", shown: Wear) => {
      const { nickname } = shown;
      // A tread gauge that counts in inches counts their 32nds.
      const typedIn = of === "tread" && shown.typedIn === "in" ? "1/32 in" : shown.typedIn;
      const called = WEAR[of === "pads" ? liningsOf(shown) : of];
      const depth = (value: number): string => (typedIn === null ? `${p.figure(value * 100, 1)} %` : p.amount(value, typedIn));
      // Pads and shoes on one bike are told apart.
      const named = ({ part, place }: Wear["panels"][number]): string =>
        place === null ? "now" : called === WEAR.linings ? `${place} ${part.endsWith("shoes") ? "shoes" : "pads"}` : place;
      const measured = shown.panels.filter(({ points }) => points.length > 0);
      const title = measured.length === 0 ? `${nickname} has no ${called.none} yet` : `${nickname}'s ${called.of}`;
      const said = measured.map((panel) => {
        const { points, limit } = panel;
        const last = points.at(-1);
        const held = limit === null ? "no limit known" : `limit ${depth(limit.value)} (${LIMIT_FROM[limit.by]})`;
        const read =
          last === undefined || typedIn === null || typedIn !== shown.typedIn
            ? depth(last?.value ?? 0)
            : valueAsTyped(p, last.value, typedIn, last.typed, "tread");
        const now = `${named(panel)} ${read}, ${held}`;
        const isBeyond = last !== undefined && limit !== null && (typedIn === null ? last.value > limit.value + 1e-9 : last.value < limit.value - 1e-9);
        if (limit?.unsettled === true)
          return `${now}: past the least that its limit can be. Until the bike's own limit is known and entered with /spec, treat it as at its end.`;
        if (panel.worn) return isBeyond ? `${now}: beyond the limit. Do not ride on it, ${called.now}.` : `${now}: at the limit, ${called.now}.`;
        if (panel.line === null) return `${now}; ${points.length < 2 ? "one reading" : "too few readings yet"}, so no line is drawn.`;
        const { likely, low, high } = panel.line;
        if (isBehind(shown, panel))
          return `${now}; by its wear it reached its limit at about ${about(shown, likely)}, and the odometer was last read at ${p.point(((shown.now ?? likely) - shown.offset) as Ridden, shown.unit)}. Measure it before you ride on.`;
        return `${now}; likely reached at about ${about(shown, likely)}, eight times in ten ${rangeSaid(shown, low, high)}${daysSaid(panel, shown.today)}.`;
      });
      const { finalDrive } = shown.fitted;
      const instead = of === "chain" && measured.length === 0 && finalDrive !== "chain" ? `${nickname} ${WITHOUT_CHAIN[finalDrive]}.` : null;
      const lines =
        instead !== null
          ? [instead]
          : measured.length === 0
            ? [`${title}. Log one: ${called.log} on ${nickname}.`]
            : [`${title}:`, ...said.map((each) => `- ${capital(each)}`)];
      const last = Math.max(...measured.flatMap(({ points }) => points.map(({ ridden }) => ridden)));
      // Drawn where it was ridden on since it was measured.
      const stands = shown.now !== null && shown.now > last ? shown.now : null;
      const value = (canonical: number): number => (typedIn === null ? canonical * 100 : fromCanonical(canonical, typedIn));
      return {
        drawing: {
          title,
          now: stands === null ? null : { x: onDial(shown, stands), text: `last read ${p.point((stands - shown.offset) as Ridden, shown.unit)}` },
          panels: measured.map(({ points, line, limit, ...panel }) => ({
            behind: isBehind(shown, { line, ...panel }),
            name:
              panel.place === null
                ? "Longer than new, %"
                : `${capital(named({ points, line, limit, ...panel }))}, ${typedIn === null ? "%" : symbolOf(typedIn)}`,
            points: points.map((point) => ({ x: onDial(shown, point.ridden), value: value(point.value) })),
            line:
              line === null
                ? null
                : {
                    ...{ from: onDial(shown, line.from), start: value(line.start), likely: onDial(shown, line.likely) },
                    ...{ low: onDial(shown, line.low), high: line.high === null ? null : onDial(shown, line.high) },
                  },
            limit: limit === null ? null : { value: value(limit.value), text: `limit ${depth(limit.value)}, ${LIMIT_FROM[limit.by]}` },
          })),
          odometerName: `Odometer, ${shown.unit}`,
          figure: whole,
          depth: (each: number): string => p.figure(each, typedIn === null ? 1 : Math.max(1, decimalsOf(typedIn))),
          meaning: { read: "measured", line: "wear line", range: "limit likely reached", onward: "or further on still", behind: "last read here, past it" },
          notes: said.map(capital),
        },
        lines,
        alt: altOf(`${called.alt} ${lines.join(" ").replaceAll(" - ", " ")}`),
      };
    },

    pressure: (shown: Pressure) => {
      const { typedIn, nickname, today, celsius, leaks = [] } = shown;
      const tyres = tyreWords(p);
      const read = shown.panels.filter(({ points }) => points.length > 0);
      const title = read.length === 0 ? `${nickname} has no tyre pressure reading yet` : `${nickname}'s cold tyre pressures`;
      const missing = read.some(({ points }) => points.some(({ levelled }) => levelled === null));
      const said = read.flatMap(({ place, points, wanted }) => {
        const loads = SPEC_USES.filter((use) => points.some(({ load }) => load === use));
        // What each load was read at last, the latest of them first.
        const lasts = loads.flatMap((use) => points.filter(({ load }) => load === use).slice(-1)).toSorted((a, b) => (a.on > b.on ? -1 : a.on < b.on ? 1 : 0));
        return lasts.map((last) => {
          // Where nothing is entered for a load, it is held against riding solo.
          const held = wanted.find(({ loads: of }) => of.includes(last.load)) ?? wanted.find(({ loads: of }) => of.includes("solo"));
          // All of one load as finely as it was read last.
          const amount = (kPa: number): string => pressureJudged(p, kPa, held?.value ?? last.read, { unit: typedIn, typed: last.typed });
          const named = loads.length > 1 || last.load !== "solo" ? ` ${last.load}` : "";
          const asked =
            held === undefined
              ? "no pressure wanted on record"
              : held.loads.includes(last.load)
                ? `wanted ${amount(held.value)} cold`
                : `no pressure ${last.load} on record, solo wants ${amount(held.value)} cold`;
          // What is wanted is held against what was read, and not against what it comes to.
          const level = last.levelled === null ? "" : `; the same air at ${p.figure(celsius, 0)} °C: ${amount(last.levelled)}`;
          return `${place}${named} ${amount(last.read)} on ${p.date(last.on, today)}, ${asked}${level}.`;
        });
      });
      const note = missing ? [`Say the air's temperature with a reading (33 psi front, outside 12 °C) and the weather is taken out.`] : [];
      const lines =
        read.length === 0
          ? [`${title}. Log them: 33 psi front 36 rear on ${nickname}.`]
          : [`${title}:`, ...[...said.map(capital), ...leaks.map(({ place, leak }) => tyres.leak(place, leak, typedIn))].map((each) => `- ${each}`), ...note];
      return {
        drawing: {
          title,
          panels: read.map(({ place, points, wanted }) => ({
            name: `${capital(place)}, ${symbolOf(typedIn)}`,
            points: points.map((point) => ({
              ...{ on: point.on, load: point.load, read: fromCanonical(point.read, typedIn) },
              levelled: point.levelled === null ? null : fromCanonical(point.levelled, typedIn),
            })),
            wanted: wanted.map(({ loads, value }) => {
              // As finely as that load was read last.
              const typed = points.findLast(({ load }) => loads.includes(load))?.typed ?? points.at(-1)?.typed ?? "";
              const named = wanted.length === 1 && points.every(({ load }) => load === "solo") ? "" : ` ${p.list(loads)}`;
              return {
                ...{ load: loads[0] ?? ("solo" as const), value: fromCanonical(value, typedIn) },
                text: `wanted ${pressureJudged(p, value, value, { unit: typedIn, typed })}${named} as read cold`,
              };
            }),
          })),
          month: p.axisMonth,
          day: p.axisDay,
          figure: (each: number): string => p.figure(each, decimalsOf(typedIn)),
          meaning: {
            ...{ read: "as read", levelled: `at ${p.figure(celsius, 0)} °C, the weather taken out` },
            ...{ solo: "solo", "two-up": "two-up", loaded: "loaded" },
            ...{ open: "open: as read", filled: `filled: at ${p.figure(celsius, 0)} °C, the weather taken out` },
          },
          notes: [...leaks.map(({ place, leak }) => tyres.leakShort(place, leak)), ...note],
        },
        lines,
        alt: altOf(`Cold tyre pressures over time. ${lines.join(" ").replaceAll(" - ", " ")}`),
      };
    },
  };
};
