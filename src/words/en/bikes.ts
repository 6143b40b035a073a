// Bikes in English: added, shown, changed; and the question about their past.

import type { BikeState } from "../../core/bike.ts";
import type { LocalDate, VagueDate } from "../../core/calendar/dates.ts";
import type { Equipment, EquipmentPart } from "../../core/equipment.ts";
import type { Condition } from "../../core/plan/plan.ts";
import type { DistanceUnit, Stretch } from "../../core/quantity/distance.ts";
import type { KindId } from "../../trade/kinds.ts";
import type { Printer } from "../printer.ts";
import { CONDITION_WORDS } from "./text.ts";

/** What a kind of bike is called; also what members pick. */
export const KIND_NAMES = {
  "chain-drive twin": "chain-drive twin",
  "belt-drive cruiser": "belt-drive cruiser",
  "shaft-drive tourer": "shaft-drive tourer",
  "dual-purpose single": "single-cylinder dual-purpose",
  "four-cylinder sport tourer": "four-cylinder sport tourer",
  "small commuter": "small commuter",
  classic: "classic with points and drum brakes",
  electric: "electric",
  scooter: "scooter with variator",
  "sidecar outfit": "sidecar outfit",
} as const satisfies Record<KindId, string>;

export const PART_NAMES = {
  finalDrive: "final drive",
  wheels: "wheels",
  tyres: "tyres",
  cooling: "cooling",
  throttle: "throttle",
  clutch: "clutch",
  frontBrake: "front brake",
  rearBrake: "rear brake",
  abs: "ABS",
  brakeFluid: "brake fluid",
  fuel: "fuel",
  ignition: "ignition",
  valveGear: "valve clearance by",
  camDrive: "cam drive",
  battery: "battery",
  fork: "fork",
  rearSuspension: "rear suspension",
  centreStand: "centre stand",
  sidecar: "sidecar",
} as const satisfies Record<EquipmentPart, string>;

type Shown = {
  readonly nickname: string;
  readonly kind: string;
  readonly state: BikeState;
  readonly unit: DistanceUnit;
  readonly odometer: { readonly figure: number; readonly on: LocalDate } | null;
  readonly conditions: readonly Condition[];
  readonly perYear: Stretch | null;
  readonly byTheBook: boolean;
  readonly registered: LocalDate | null;
  readonly items: number;
  readonly laidUpSince: LocalDate | null;
};

type TyreSets = {
  readonly nickname: string;
  readonly unit: DistanceUnit;
  readonly sets: readonly { readonly set: string; readonly ridden: Stretch; readonly fitted: boolean; readonly since: LocalDate }[];
};

type DialNoted = {
  readonly nickname: string;
  readonly replaced: boolean;
  readonly old: { readonly figure: number; readonly unit: DistanceUnit; readonly how: "typed" | keyof typeof OLD_DIAL } | null;
};

/** Where the old dial ended, when nobody said so. */
const OLD_DIAL = {
  "rolled over": (end: string) => `The old figures ended at ${end}.`,
  "same distance": (end: string) => `It shows the same distance as the old one at ${end}.`,
  "last reading": (end: string) =>
    `The old one is taken to have ended at its last reading, ${end}; if it showed more, undo this and type it again with last:, such as last:15,300 mi.`,
} as const;

/** How far an example reading lies beyond the odometer: in the dial's own unit, and no slip when it is sent as it stands. */
const FURTHER: Readonly<Record<DistanceUnit, number>> = { mi: 610, km: 980 };

export const bikeWords = (p: Printer) => {
  const fitted = (e: Equipment): string =>
    `Fitted with: ${p.list([`${e.finalDrive} drive`, `${e.wheels} wheels`, `${e.tyres} tyres`, `${e.cooling} cooling`, `${e.throttle} throttle`, `${e.clutch} clutch`, `${e.frontBrake} front brake`, `${e.rearBrake} rear brake`, e.abs === "fitted" ? "ABS" : "no ABS", e.fuel, `${e.battery} battery`])}.`;
  return {
    fitted,
    added: (b: {
      readonly nickname: string;
      readonly figure: number;
      readonly unit: DistanceUnit;
      readonly items: number;
      readonly planName: string;
    }): string =>
      `${b.nickname} is here at ${p.figure(b.figure)} ${b.unit}, with the starter plan “${b.planName}” (${b.items} items for what it is fitted with).`,
    several: (names: readonly string[]): string =>
      `${p.list(names)} are ${names.length} bikes, and nothing is added yet. Each has its own kind and odometer, and then one question about its past: add them one after another.`,
    planSource: (): string => "The plan is common practice. Your maker's manual has the last word: compare the two when you can.",
    askHistory: (): string => "What was done last, and how do you know? “Spring 2023” will do, and so will “don't know”.",
    next: (b: { readonly nickname: string; readonly figure: number; readonly unit: DistanceUnit; readonly plainly: boolean }): string => {
      const said = `${p.figure(Math.round((b.figure + FURTHER[b.unit]) / 10) * 10)} ${b.unit} on ${b.nickname}`;
      return b.plainly ? `From now on, just write: ${said}.` : `From now on, mention me with it, or write it to me directly: ${said}.`;
    },
    shown: (b: Shown, today: LocalDate): string => {
      const where =
        b.odometer === null
          ? "no odometer reading"
          : `${p.figure(Math.round(b.odometer.figure * 10) / 10)} ${b.unit}, ${b.odometer.on === today ? "today" : p.date(b.odometer.on, today)}`;
      const state = b.state === "riding" ? "" : b.laidUpSince === null ? `; ${b.state}` : `; laid up since ${p.date(b.laidUpSince, today)}`;
      return `${b.nickname}: ${b.kind}, ${where}${state}.`;
    },
    use: (b: Shown): string | null => {
      const parts = [
        b.conditions.length > 0 ? p.list(b.conditions.map((each) => CONDITION_WORDS[each])) : null,
        b.perYear === null ? null : `about ${p.distance(b.perYear, { unit: b.unit })} a year`,
        b.byTheBook
          ? `kept by the book (marks never move${b.registered === null ? "" : `; dates run from first registration, ${p.date(b.registered)}`})`
          : null,
      ].filter((part) => part !== null);
      return parts.length === 0 ? null : `Use: ${parts.join("; ")}.`;
    },
    byNames: (names: readonly string[]): string => `Also called: ${p.list(names.map((name) => `“${name}”`))}.`,
    /** Under what was logged, once a question had to be asked about a name. */
    /** Bikes added where no group was, now heard of in one. */
    cameHome: (nicknames: readonly string[]): string =>
      `${p.list(nicknames)} ${nicknames.length === 1 ? "goes" : "go"} by your group's time zone, seasons and tread law from now on; the group is shown nothing by that.`,
    learnt: ({ name, nickname }: { readonly name: string; readonly nickname: string }): string =>
      `From now on I take “${name}” for ${nickname}. If that is wrong, /bike change bike:${nickname} not-called:${name} takes it back.`,
    changed: (nickname: string, items: number): string => `${nickname} is changed. Its plan now has ${items} items.`,
    /** Under other brakes than before: what they are filled with by that. */
    brakesNow: (nickname: string, fluid: string): string =>
      fluid === "none"
        ? `Two drums are worked by cable or rod: ${nickname} is entered without brake fluid, and what goes by it has left the plan. If a drum of it is hydraulic, say so: /bike fitted bike:${nickname} part:brake fluid choice:DOT 4`
        : `A disc has brake fluid: ${nickname} is entered with ${fluid}, and what goes by it has come into the plan. The cap has the last word; if it names another, say so: /bike fitted bike:${nickname} part:brake fluid choice:DOT 3`,
    /** Under "changed", for a bike off the road. */
    resting: (nickname: string): string =>
      `While ${nickname} stands, what ages by itself still falls due, and I still tell of it (fluids, belts, tyres, battery). Of what only riding wears I say nothing until it rides again.`,
    dialNoted: ({ nickname, replaced, old }: DialNoted): string => {
      const place = replaced ? " It takes the place of the one noted earlier that day." : "";
      const from = old === null || old.how === "typed" ? "" : ` ${OLD_DIAL[old.how](`${p.figure(old.figure, 0)} ${old.unit}`)}`;
      return `${nickname}'s new odometer is noted; the bike's own distance goes on.${from}${place}`;
    },
    /** "Heron: off-road tyres on since today; 0 mi on them." and what rests. */
    tyreSets: ({ nickname, unit, sets }: TyreSets, today: LocalDate): readonly string[] => {
      if (sets.length === 0)
        return [
          `${nickname} has one set of tyres as far as I know. Swap sets with /bike tyres set:off-road off:road at:15,200 mi, and each keeps its own distance.`,
        ];
      const road = (ridden: Stretch): string => p.distance(ridden, { unit });
      return sets
        .toSorted((a, b) => Number(b.fitted) - Number(a.fitted))
        .map(({ set, ridden, fitted: on, since }) =>
          on
            ? `${nickname}: ${set} tyres are on, since ${since === today ? "today" : p.date(since, today)}; ${road(ridden)} on them while they were yours.`
            : `Resting: ${set}, ${road(ridden)} on them.`,
        );
    },
    none: (): string => "No bikes yet. Add one with /bike add.",
    historyTitle: (nickname: string): string => clip45(`${nickname}: what was done last`),
    historyHint: (): string => "spring 2023 at 9,800, receipt",
    recorded: (what: readonly string[]): string => `Recorded: ${p.list(what)}.`,
    recordedItem: (called: string, on: VagueDate): string => `${called} (${p.vague(on)})`,
    unknown: (what: readonly string[]): string => `No record of: ${p.list(what)}. That is fine; /due shows them so until a job is recorded.`,
    unread: (called: string, typed: string): string => `I could not read “${typed}” for ${called}.`,
    unreadHow: (): string =>
      "Say when, as far as you know: spring 2023, about 2 years ago, at 9,800, ages ago; of two, front 2021, rear last autumn. The rest is kept.",
    whole: (nickname: string): string => `${nickname}'s history counts from new: everything runs from zero.`,
    fields: { name: "Nickname you will call it by", kind: "Kind of bike", odometer: "What the odometer shows, with its unit", odometerHint: "14,210 mi" },
    /** A new battery of another kind than the bike is entered with. */
    otherBattery: ({ nickname, kind }: { readonly nickname: string; readonly kind: string }): string =>
      `${nickname}: a ${kind} battery was fitted, and it is entered with another kind. Enter the new one, so that its volts are judged by the right table; until then they are not judged.`,
    batteryTold: ({ nickname, kind, other }: { readonly nickname: string; readonly kind: string; readonly other: boolean }): string =>
      other
        ? `${nickname} is entered with another kind of battery. If it has a ${kind} one, enter that: its volts, its charger and what harms it go by its kind.`
        : `${nickname}: its battery is entered as ${kind} already.`,
    labels: {
      fitBatteryOf: (nickname: string, kind: string): string => `${nickname}: enter ${kind} battery`.slice(0, 80),
      fitBattery: (kind: string): string => `Enter ${kind} battery`,
      add: "Add your first bike",
      addOne: (name: string): string => `One bike called ${name}`.slice(0, 80),
      addNamed: (name: string): string => (name === "" ? "Add a bike" : `Add ${name}`.slice(0, 80)),
      history: "Fill in what you know",
      unknown: "Don't know any of it",
      again: "Put it right",
      whole: "It is new: nothing is missing",
      fit: "Change what it is fitted with",
      due: "What is due",
    },
    pickPart: (nickname: string): string => `${nickname}: which part is different?`,
    pickChoice: (nickname: string, part: EquipmentPart): string => `${nickname}, ${PART_NAMES[part]}: which one?`,
    part: (part: EquipmentPart, now: string): string => `${PART_NAMES[part]}: ${now}`,
  };
};

/** A form's title holds at most 45 characters. */
const clip45 = (text: string): string => ([...text].length > 45 ? `${[...text].slice(0, 44).join("")}…` : text);
