// Trips in English: what must be done before, what falls due on the way and where, what wears too far, what goes along.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { DistanceUnit, Stretch } from "../../core/quantity/distance.ts";
import type { UnitId } from "../../core/quantity/units.ts";
import type { SpecUse } from "../../core/spec/spec.ts";
import type { DailyKey, KitKey } from "../../trade/trip.ts";
import type { Printer } from "../printer.ts";
import { capital, lowered } from "./text.ts";

export const KIT_WORDS = {
  "tool roll": "tools that fit this bike",
  gauge: "pressure gauge and pump",
  "plug kit": "plug kit for tubeless tyres",
  "tube kit": "spare tubes, levers and patches",
  spokes: "a few spokes and a spoke key",
  "chain link": "chain link and splitter",
  "chain oil": "chain lubricant and a rag",
  "engine oil": "a litre of the right oil",
  fuses: "fuses",
  bulbs: "bulbs",
  "clutch cable": "clutch cable",
  papers: "licence, registration, insurance, breakdown number",
  "first aid": "first aid kit and a vest",
} as const satisfies Record<KitKey, string>;

export const DAILY_WORDS = {
  tyres: "tyres cold: pressure, cuts, nails",
  oil: "oil level",
  "chain drive": "chain: slack, oil it warm in the evening",
  "belt drive": "belt: stones, edges",
  brakes: "levers firm, pads or shoes seen",
  lights: "lights, brake light from both",
  leaks: "nothing under the bike",
  luggage: "luggage tight",
} as const satisfies Record<DailyKey, string>;

const PARTS: Readonly<Record<string, { readonly name: string; readonly fit: string }>> = {
  "front tread": { name: "Front tyre", fit: "Fit" },
  "rear tread": { name: "Rear tyre", fit: "Fit" },
  "sidecar tread": { name: "Sidecar tyre", fit: "Fit" },
  "front pads": { name: "Front pads", fit: "Change them" },
  "rear pads": { name: "Rear pads", fit: "Change them" },
  "front shoes": { name: "Front shoes", fit: "Change them" },
  "rear shoes": { name: "Rear shoes", fit: "Change them" },
  chain: { name: "Chain", fit: "Fit a new one" },
};
/** A tyre or a set of pads, by the name under which it is measured. */
export const tripPartName = (part: string): string => PARTS[part]?.name ?? part;
const USES = { solo: "solo", "two-up": "two-up", loaded: "loaded" } as const satisfies Record<SpecUse, string>;

type TripHead = {
  readonly nickname: string;
  readonly unit: DistanceUnit;
  readonly from: LocalDate;
  readonly to: LocalDate;
  readonly distance: Stretch;
  readonly use: SpecUse;
};
type Worn = {
  readonly is: "enough" | "not enough";
  readonly left: { readonly low: Stretch; readonly likely: Stretch; readonly high: Stretch | null };
  readonly part: string;
  readonly value: number;
  readonly unit: UnitId | "%";
  readonly limit: number;
};
type Item = {
  readonly name: string;
  readonly when: "before" | "during" | "after";
  readonly into: Stretch | null;
  readonly on: LocalDate | null;
  readonly counts: boolean;
};

export const tripWords = (p: Printer, today: LocalDate) => {
  const far = (stretch: Stretch, unit: DistanceUnit): string => p.distance(stretch, { unit });
  const amount = (value: number, unit: UnitId | "%"): string => (unit === "%" ? `${p.figure(value, 1)} %` : p.amount(value, unit));
  /** A wear line does not know the single mile. */
  const about = (stretch: Stretch, dial: DistanceUnit): string => {
    const unit = p.roadUnit({ unit: dial });
    const tenths = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, stretch / (unit === "mi" ? 16_093_440 : 10_000_000)))) - 1);
    const step = tenths * (unit === "mi" ? 16_093_440 : 10_000_000);
    return far((Math.floor(stretch / step) * step) as Stretch, unit);
  };
  return {
    head: (trip: TripHead): string =>
      `${trip.nickname}: ${far(trip.distance, trip.unit)}, ${p.date(trip.from, today)} to ${p.date(trip.to, today)}, ${USES[trip.use]}.`,
    replaced: (typed: readonly string[]): string => `It takes the place of: ${p.list(typed.map((each) => `“${each}”`))}.`,
    restored: (): string => "The earlier plan stands again.",
    calledOff: (trip: TripHead): string => `${trip.nickname}: the trip from ${p.date(trip.from, today)} is called off. The forecast no longer counts it.`,
    none: (): string => "No trip is planned. Plan one with /trip plan:2,800 mi from 12 June to 30 June bike:Heron.",
    defects: (n: number): string =>
      `${n === 1 ? "One defect is" : `${n} defects are`} not to be ridden on: /due names ${n === 1 ? "it" : "them"}. First of all put that right.`,
    ungraded: (n: number): string =>
      `${n === 1 ? "One defect is" : `${n} defects are`} not graded yet: /due names ${n === 1 ? "it" : "them"}. Say first whether you can ride with ${n === 1 ? "it" : "them"}.`,
    unknown: (names: readonly string[]): string =>
      `Nothing on record says when ${p.list(names.map(lowered))} ${names.length === 1 ? "was" : "were"} last done: look before you go, or log what you know with /work.`,
    heading: { before: "Before you go:", during: "On the way:", after: "Due soon after:" },
    /** Items that share when and where; `names` in the order in which they fall due. */
    items: (names: readonly string[], each: Item, { unit, from }: TripHead): string => {
      const one = names.length === 1;
      const list = capital(p.list(names.map((name, n) => (n === 0 ? name : lowered(name)))));
      if (each.when === "before") return `- Due by ${p.date(from, today)}: ${p.list(names.map(lowered))}.`;
      if (each.when === "after") return each.counts ? `- ${list}: done before you go, ${one ? "it counts" : "they count"}.` : `- ${list}.`;
      const where =
        each.on === null
          ? each.into === null
            ? "on the way"
            : `${far(each.into, unit)} in`
          : `on ${p.date(each.on, today)}${each.into === null ? "" : `, or ${far(each.into, unit)} in`}`;
      const falls = `- ${list} ${one ? "falls" : "fall"} due ${where}`;
      return each.counts
        ? `${falls}: do ${one ? "it" : "them"} before you go, ${one ? "it counts" : "they count"}.`
        : `${falls}. Done before you go, ${one ? "it" : "they"} would fall due again on the way: do ${one ? "it" : "them"} there.`;
    },
    wear: (worn: Worn, { unit, from, distance }: TripHead): string => {
      const part = PARTS[worn.part];
      const value = `${amount(worn.value, worn.unit)}, limit ${amount(worn.limit, worn.unit)}`;
      const left =
        worn.left.likely === 0
          ? "nothing left"
          : `about ${about(worn.left.likely, unit)} left (${about(worn.left.low, unit)} to ${worn.left.high === null ? "far more" : about(worn.left.high, unit)})`;
      const what = worn.is === "enough" ? "" : ` ${part?.fit ?? "Change it"} before ${p.date(from, today)}.`;
      return `- ${part?.name ?? worn.part}: ${worn.is}. ${value}; ${left}, trip ${far(distance, unit)}.${what}`;
    },
    nearing: (worn: Pick<Worn, "part" | "value" | "unit" | "limit">, { from }: TripHead): string => {
      const part = PARTS[worn.part];
      return `- ${part?.name ?? worn.part}: ${amount(worn.value, worn.unit)}, limit ${amount(worn.limit, worn.unit)}, and nothing says how fast it wears. ${part?.fit ?? "Change it"} before ${p.date(from, today)}, or measure again before you count on it.`;
    },
    unmeasured: (parts: readonly string[], { unit }: TripHead): string =>
      `Nothing says how long ${p.list(parts.map((part) => lowered(PARTS[part]?.name ?? part)))} will last: measure twice, some hundred ${p.roadUnit({ unit }) === "mi" ? "miles" : "kilometres"} apart, before you go.`,
    noStart: (): string => "Nothing says where the odometer will stand at the start, so only dates are judged: log a reading.",
    nothing: (): string => "Nothing on record falls due before, on the way or soon after.",
    pressures: (
      use: SpecUse,
      of: readonly { readonly at: "front" | "rear"; readonly loaded: string | null; readonly solo: string | null }[],
    ): readonly string[] => {
      if (use === "solo") return [];
      const [known, asked] = [of.filter(({ loaded }) => loaded !== null), of.filter(({ loaded }) => loaded === null)];
      const solo = asked.filter((each) => each.solo !== null);
      const instead = solo.length === 0 ? "" : ` Solo it is ${p.list(solo.map(({ at, solo: each }) => `${at} ${each}`))}, which is not taken for this load.`;
      const back = known.filter(({ solo: each, loaded }) => each !== null && each !== loaded);
      return [
        ...(known.length === 0 ? [] : [`Pressures ${USES[use]}: ${p.list(known.map(({ at, loaded }) => `${at} ${loaded}`))}.`]),
        ...(asked.length === 0
          ? []
          : [
              `Pressure ${USES[use]}, ${p.list(asked.map(({ at }) => at))}: not known. Read it off the bike's plate and enter it once; I say it here.${instead}`,
            ]),
        ...(back.length === 0 ? [] : [`Back to normal on return: ${p.list(back.map(({ at, solo: each }) => `${at} ${each}`))}.`]),
      ];
    },
    kit: (keys: readonly KitKey[]): string => `Carry: ${keys.map((key) => KIT_WORDS[key]).join("; ")}.`,
    daily: (keys: readonly DailyKey[]): string => `Each morning: ${keys.map((key) => DAILY_WORDS[key]).join("; ")}.`,
    faster: (use: SpecUse): string | null => (use === "solo" ? null : `Wear is reckoned a fifth faster ${USES[use]} (common practice).`),
    labels: {
      check: (nickname: string): string => `Check before the trip: ${nickname}`.slice(0, 80),
      off: "Call it off",
      back: "Undo: the earlier plan",
      due: "What is due",
      pressure: (at: "front" | "rear", use: SpecUse): string => `Enter ${at} pressure ${USES[use]}`,
    },
  };
};
