// Judgements in English: the value, how it stands to which limit, and what to do. Each defers to the maker's manual.

import type { Stand } from "../../core/chain/stand.ts";
import { callsForWork, type Judgement, type Missing, type VerdictWord } from "../../core/judgement/verdict.ts";
import { fromCanonical, symbolOf } from "../../core/quantity/units.ts";
import type { AirSaid, ConditionRead } from "../../core/reading/detail.ts";
import type { Place, ReadingKind, ReadingUnit } from "../../core/reading/kinds.ts";
import { isQuantity } from "../../core/reading/value.ts";
import type { SpecUse } from "../../core/spec/spec.ts";
import type { JudgedKind } from "../../trade/judged.ts";
import type { SpecKey } from "../../trade/spec-keys.ts";
import type { Printer } from "../printer.ts";
import { DO, FLAT_LEAD, FLAT_LITHIUM, HOW, NEAR, NEEDS, SIX_VOLTS, STOOD, STOOD_WARMER, treadSpec, WEAK_COOLANT } from "./judge-asks.ts";
import { KIND_WORDS } from "./kinds.ts";
import { byLesser, enterFor, forLoad, needsOwn } from "./lesser-load.ts";
import { decimalsTyped, pressureJudged, valueAsTyped } from "./reading-detail.ts";
import { readingWords } from "./readings.ts";
import { englishSpecName } from "./spec-names.ts";
import { capital, lowered } from "./text.ts";
import { unsettledLimit, unsettledWhat } from "./unsettled.ts";

/** A reading with what came of judging it. */
export type SaidJudged = {
  readonly kind: JudgedKind;
  readonly place: Place | null;
  readonly value: number;
  readonly unit: ReadingUnit;
  readonly typed: string;
  readonly judgement: Judgement;
  readonly by: "spec" | "law" | "bars" | "bars, state law" | "bars, no group" | "practice" | "mark";
  readonly spec: SpecKey | null;
  /** The load that it was read with, null for riding solo; and that of the figure held against it, where it is for less. */
  readonly use: SpecUse | null;
  readonly lesser: SpecUse | null;
  readonly doNotRide: boolean;
  readonly add: number | null;
  readonly share: number | null;
  readonly typical?: boolean;
  readonly miscounted: boolean;
  /** °C at which a low lead-acid battery freezes, or a coolant of that share of antifreeze; null for lithium and for all else. */
  readonly freezes: number | null;
  /** °C of the air that a battery was read in, where it was noted. */
  readonly air: number | null;
  /** Of charging volts: the engine speed kept from before, where none was said with them. */
  readonly rpmKept: number | null;
  /** °C of the air noted otherwise that day, by which it may be frozen. */
  readonly airKept: number | null;
  /** The force at which a belt's figure holds, as typed; null where none was. */
  readonly force: string | null;
  /** How the bike stands where a slack's figure holds; null where it names none. */
  readonly stand: Stand | null;
  /** What is worse with a battery than low charge. */
  readonly alarm: "frozen" | "more than flat" | "six volts" | "flat" | null;
  /** Of a pressure read in a garage: how warm it is there and on the road, and in kPa what it shows on the road and what to set indoors. */
  readonly indoors: (AirSaid & { readonly onRoad: number | null; readonly wanted: number | null; readonly set: number | null }) | null;
  /** What it comes to if it was taken as it has to be, which nobody said; null where that calls for no work. */
  readonly ifSo: { readonly judgement: Judgement; readonly doNotRide: boolean } | null;
};

/** What lacks its limit, and the spec that would hold it. */
type Lacking = { readonly kind: ReadingKind; readonly place: Place | null; readonly spec: SpecKey | null; readonly use: SpecUse | null };

/** What the sides of a limit are called; "low" and "high" where the trade has no word of its own. */
export const SIDES: Partial<Record<ReadingKind, readonly [low: string, high: string]>> = {
  "chain slack": ["too tight", "too slack"],
  "belt deflection": ["too tight", "too slack"],
  "valve clearance": ["too tight", "too wide"],
  "charging voltage": ["too low", "too high"],
  "plug gap": ["too narrow", "too wide"],
  "clutch free play": ["too little play", "too much play"],
  "throttle free play": ["too little play", "too much play"],
  "brake free play": ["too little play", "too much play"],
  "coolant strength": ["", "too weak"],
  "antifreeze share": ["too weak", "too strong"],
  "brake fluid boiling point": ["boils too soon", ""],
  "brake fluid water": ["", "too much water"],
  "points gap": ["too narrow", "too wide"],
  "static sag": ["too little sag", "too much sag"],
  "rider sag": ["too little sag", "too much sag"],
};

/** Which side of its window a value is on, as a clause to end with; short of the end it is no more than nearly so. */
export function sideOf(sides: readonly [low: string, high: string] | undefined, side: "low" | "high", is: VerdictWord): string {
  const word = sides?.[side === "low" ? 0 : 1] ?? "";
  return word === "" ? "" : `, ${is === "near limit" ? "nearly " : ""}${word}`;
}

/** The limit of the end that was read first. */
/** What is said once of a bike and kept. */
const KEPT: readonly Missing[] = ["cold", "upright", "on the side stand", "under load", "at force", "throttle open", "rpm", "temperature"];

/** What is set or topped up, and ridden then. */
const BEFORE: readonly JudgedKind[] = ["chain slack", "belt deflection", "throttle free play", "oil level", "charging voltage"];

/** Bars moulded in at this height lie below what some laws ask for. */
const BARS = 0.8;

/** Shares of a chain's length below which a rule shows nothing. */
const MEASURED_TO = 0.0005;

export const judgeWords = (p: Printer) => {
  const { judged: read } = readingWords(p);
  const amount = (value: number, { unit, kind }: Pick<SaidJudged, "unit" | "kind">): string =>
    unit === "level" ? "the mark" : valueAsTyped(p, value, unit, "", kind);
  /** Between what the limit of a chain may lie: as shares, and where a rule was read as that shows it. */
  const endsOf = (j: SaidJudged, least: number, most: number) => {
    const whole = j.kind === "chain length" && j.share !== null ? j.value / (1 + j.share) : null;
    const share = (end: number): string => p.figure(whole === null ? end : (end / whole - 1) * 100, 1);
    return { shares: `${share(least)} to ${share(most)} %`, here: whole === null ? null : `${amount(least, j)} to ${amount(most, j)}` };
  };
  const limitOf = (j: SaidJudged, wanted = "", fine = (value: number): string => amount(value, j)): string => {
    const { judgement } = j;
    if (judgement.is === "cannot tell") return "";
    const { min, max, source, nominal, unsettled } = judgement.limit;
    if (unsettled !== undefined) return unsettledLimit(unsettled, endsOf(j, max ?? 0, unsettled.upTo));
    if (nominal !== undefined) {
      // Worked out, its ends fall between the figures that a gauge of inches is marked with: rounded to those they would tell another window.
      const end = (value: number): string => (j.unit === "in" ? p.amount(value, "in", decimalsTyped("in", j.typed) + 1) : fine(value));
      const how = `${j.force === null ? "" : ` at ${j.force}`}${j.stand === null ? "" : ` ${STOOD[j.stand].so}`}`;
      const by = source === "" ? " by your own figure" : `, ${source}`;
      return `${fine(nominal)}${how}${by}; ${end(min ?? 0)} to ${end(max ?? 0)} is taken around it, common practice, until you enter the manual's window`;
    }
    const span = min !== null && max !== null ? (min === max ? fine(min) : `${fine(min)} to ${fine(max)}`) : fine(min ?? max ?? 0);
    const all = `${span}${j.force === null ? "" : ` at ${j.force}`}${j.stand === null ? "" : ` ${STOOD[j.stand].so}`}${wanted}`;
    if (j.kind === "coolant strength" && j.share !== null)
      return `${all}, good to by ${p.figure(j.share * 100, 0)} % of ethylene glycol, ${source === "" ? "your own figure" : source}`;
    switch (j.by) {
      case "spec":
        return source === "" ? `${all} by your own figure` : `${all}, ${source}`;
      case "law":
        return `${all} by law, ${source}`;
      case "bars":
      case "bars, state law":
      case "bars, no group":
        return `${all}, the moulded bars`;
      case "practice":
        return `${all}, common practice`;
      case "mark":
        return all;
    }
  };
  const sided = (j: SaidJudged): string => {
    if (j.judgement.is === "cannot tell" || j.judgement.side === null) return "";
    const words = SIDES[j.kind];
    return sideOf(words, j.judgement.side, j.judgement.is);
  };
  const longer = (j: SaidJudged): string => {
    if (j.kind !== "chain length" || j.share === null) return "";
    // A rule over some pitches reads to about a thousandth.
    if (j.share < -MEASURED_TO) return ", no longer than new (shorter than a new chain by what a rule is off)";
    return j.share < MEASURED_TO ? ", no longer than new" : `, ${p.figure(j.share * 100, 1)} % longer than new`;
  };
  /** What a share is taken to be good to. */
  const glycol = (j: SaidJudged): string =>
    j.freezes === null
      ? ""
      : `good to about ${p.figure(j.freezes, 0)} °C if its antifreeze is ethylene glycol, by the published table; others differ, and a refractometer shows it surely.`;
  /** What a chain comes to by the count that fits, where nobody should ride off before it is counted again. */
  const otherCount = ({ share, ifSo }: SaidJudged): string =>
    ifSo === null || share === null
      ? ""
      : ` By that count it is ${p.figure(share * 100, 1)} % longer than new, which is ${ifSo.judgement.is}: if it measures so again, do not ride.`;
  const cause = (j: SaidJudged, called: string): string => {
    if (j.judgement.is !== "cannot tell") return "";
    if (j.miscounted)
      return `${called}: that fits one pitch more or fewer than you counted. Twenty pitches lie between twenty-one pins; count the gaps and measure again.${otherCount(j)}`;
    if (j.kind === "antifreeze share" && j.judgement.missing[0] === "limit") return `${called}: ${glycol(j)} To tell whether that is enough, ${NEEDS.limit}.`;
    const [first, ...rest] = j.judgement.missing;
    // Of two ways to stand either will do; what else is missing is all of it.
    const lacks = first === "upright" && rest.includes("on the side stand") ? rest : [first ?? "limit", ...rest];
    const [only] = lacks;
    // As it was read it is low, and may be so.
    const ifSo = levelIfSo(j);
    if (only === "stood upright" && ifSo !== "" && j.ifSo?.doNotRide === true) return `${called}: cannot tell; ${NEEDS[only]}, before you ride.${ifSo}`;
    if (only === "fitted") return `${called}: cannot tell; ${NEEDS.fitted}.`;
    if (j.stand !== null && only === "other stand") return `${called}: cannot tell; its figure holds ${STOOD[j.stand].so}. Measure it so.${ifSo}`;
    if (j.stand !== null && only === j.stand)
      return `${called}: cannot tell yet; its figure holds ${STOOD[j.stand].so}. Say “${STOOD[j.stand].say}” if it was measured so. I keep that for this bike.${ifSo}`;
    if (j.force !== null && only === "other force")
      return `${called}: cannot tell; its figure holds at ${j.force}. Press it with that and read it again, such as “belt deflection 10 mm at ${j.force}”.`;
    if (j.force !== null && only === "at force")
      return `${called}: cannot tell yet; its figure holds at ${j.force}. Say how it was pressed, such as “at ${j.force}”, or “at force” if that was it. I keep that for this bike.${ifSo}`;
    return `${called}: cannot tell yet; ${p.list(lacks.map((each) => (each === "load" ? needsOwn(j) : NEEDS[each])))}.${lacks.some((each) => KEPT.includes(each)) ? " I keep it for this bike." : ""}${ifSo}`;
  };
  /** What a level off its mark, or what must not be ridden on, means if it is so however it is looked at: nobody rides off on a doubt. */
  const levelIfSo = ({ kind, unit, judgement, ifSo }: SaidJudged): string => {
    if (unit !== "level" && ifSo !== null && ifSo.judgement.is !== "cannot tell" && ifSo.doNotRide)
      return ` If it reads so then too: do not ride. ${DO[kind][ifSo.judgement.side === "high" ? 1 : 0]}`;
    if (unit !== "level" || ifSo === null || ifSo.judgement.is === "cannot tell" || judgement.is !== "cannot tell") return "";
    const what = DO[kind][ifSo.judgement.side === "high" ? 1 : 0];
    const so = judgement.missing.some((each) => each === "cold" || each === "cooled") ? "cold" : "upright";
    return ` If it reads so ${so} too: ${ifSo.doNotRide ? `do not ride. ${what}` : lowered(what)}`;
  };
  /** Read in a garage: what it is on the road, and what to set where; nothing is let out by a figure that falls outside. */
  const inGarage = (j: SaidJudged, air: NonNullable<SaidJudged["indoors"]>, called: string): string => {
    if (j.judgement.is === "cannot tell" || !isQuantity(j.unit)) return cause(j, called);
    const { unit } = j;
    const at = ({ value, unit: degrees }: AirSaid["garage"]): string => `${p.figure(value, 0)} ${symbolOf(degrees)}`;
    const wanted = air.wanted ?? 0;
    const fine = (kPa: number): string => pressureJudged(p, kPa, wanted, { ...j, unit });
    const add = j.add ?? 0;
    const off = add === 0 ? "good" : `${fine(Math.abs(add))} ${add > 0 ? "low" : "high"}`;
    const held = limitOf(j, " wanted", fine);
    const stop = j.doNotRide ? ` Do not ride before it is set${add > 0 ? ", and look for what let it out" : ""}.` : "";
    const ask = `/tyre pressure want:${fine(wanted)} garage:${at(air.garage)} road:…`;
    if (air.road === null)
      return `${called} at ${at(air.garage)} in the garage: ${add > 0 ? `${off}, add ${fine(add)} there` : off} (${held}). Where the ride starts colder it will be lower${add < 0 ? ", so let nothing out by this" : ""}: what to set in the garage says ${ask}.${stop}`;
    if (air.onRoad === null)
      return `${called} at ${at(air.garage)} in the garage: ${off} as it was read (${held}). Set the ${fine(wanted)} wanted where the ride starts, at ${at(air.road)}, with the tyre cold from standing there; in a garage that is no warmer set it no lower than that: never underfill a tyre by arithmetic.${stop}`;
    const there = `${p.figure(fromCanonical(air.onRoad, unit), Math.max(decimalsTyped(unit, j.typed), unit === "psi" ? 1 : 0))} ${symbolOf(unit)}`;
    const set =
      air.set === null
        ? ` Set the ${fine(wanted)} wanted where the ride starts: from the garage that is too far to correct.`
        : add === 0
          ? ""
          : ` Set ${fine(air.set)} indoors, or ${fine(wanted)} where the ride starts, cold.`;
    return `${called} at ${at(air.garage)} is about ${there} at ${at(air.road)} on the road: ${off} (${held}).${set}${stop} Check it again after riding out and standing: never above what the tyre's sidewall allows.`;
  };
  const pressure = (j: SaidJudged, called: string): string => {
    if (j.judgement.is === "cannot tell") return cause(j, called);
    if (j.alarm === "flat") {
      const wanted = j.judgement.limit.min ?? 0;
      const fine = !isQuantity(j.unit) ? "" : pressureJudged(p, wanted, wanted, { ...j, unit: j.unit });
      const held = j.by === "spec" ? `${limitOf(j, " wanted", () => fine)}` : `no road motorcycle is ridden on less than ${fine}, common practice`;
      return `${called}: flat (${held}). Do not ride on it, and look for what let it out. A tyre that was ridden flat is looked at inside before it is used again.`;
    }
    if (j.indoors !== null) return `${inGarage(j, j.indoors, called)}${byLesser(j)}`;
    const add = j.add ?? 0;
    const { min, max } = j.judgement.limit;
    const fine = (kPa: number): string => (!isQuantity(j.unit) ? "" : pressureJudged(p, kPa, (add < 0 ? max : min) ?? 0, { ...j, unit: j.unit }));
    const off = fine(Math.abs(add));
    if (add === 0) return `${called}: good, ${limitOf(j, " wanted", fine)}.`;
    const what = add > 0 ? `${off} low, add ${off} where it stands` : `${off} high, let out ${off} where it stands if it is cold, and never of a warm tyre`;
    return `${called}: ${what} (${limitOf(j, " wanted", fine)}).${j.doNotRide ? ` Do not ride before it is set${add > 0 ? ", and look for what let it out" : ""}.` : ""}${byLesser(j)}`;
  };
  /** How to charge it, and whether frost can burst it. */
  const battery = (j: SaidJudged): string => {
    if (j.alarm === "frozen")
      return j.airKept === null
        ? FROZEN(`At ${p.figure(j.air ?? 0, 0)} °C`)
        : `${FROZEN(`At the ${p.figure(j.airKept, 0)} °C noted that day`)} ${STOOD_WARMER}`;
    if (j.alarm === "six volts") return SIX_VOLTS;
    if (j.freezes === null)
      return j.alarm === "more than flat" ? FLAT_LITHIUM : "Charge it with a charger made for lithium, never below 0 °C and never in a desulphating mode.";
    const charge = `Charge it within days; left low it sulphates, and at that charge it freezes at about ${p.figure(j.freezes, 0)} °C: never charge a frozen one.`;
    return j.alarm === "more than flat" ? `${FLAT_LEAD} ${charge}` : charge;
  };
  const FROZEN = (at: string): string =>
    `${at} it may be frozen: never charge or jump a frozen battery. Let it thaw in the warm for a day, then look at its case: bulged or split it is scrap; sound, charge it then.`;
  /** One line: the value, its verdict, what to do. */
  const line = (j: SaidJudged): string => {
    const called = capital(read(j));
    if (j.kind === "cold pressure") return pressure(j, called);
    const { judgement } = j;
    if (j.alarm === "frozen" && !callsForWork(judgement)) return `${called}: ${battery(j)}`;
    if (judgement.is === "cannot tell") return j.alarm === "six volts" ? `${called}: cannot tell. ${SIX_VOLTS}` : cause(j, called);
    const charge =
      j.kind === "battery voltage" && j.share !== null
        ? `, about ${p.figure(Math.round(j.share * 20) * 5, 0)} % charged${j.air === null ? "" : ` by its volts at ${p.figure(j.air, 0)} °C`}${j.typical === true ? " (typical; makers differ by 0.1 V)" : ""}`
        : "";
    const held = j.by === "mark" ? "" : ` (${limitOf(j)})`;
    const asBefore = j.rpmKept === null || j.judgement.is === "cannot tell" ? "" : `, taken at ${p.figure(j.rpmKept, 0)} rpm as before`;
    const stands = `${called}${charge}${longer(j)}${asBefore}: ${judgement.is}${judgement.is === "within" ? "" : sided(j)}${held}.`;
    if (j.kind === "antifreeze share") return `${stands} ${capital(glycol(j))}${callsForWork(judgement) ? ` ${WEAK_COOLANT}` : ""}`;
    if (judgement.is === "within") return stands;
    const above = j.kind === "tread" && (judgement.limit.min ?? 0) > BARS + 0.05 ? ` The moulded bars, ${amount(BARS, j)}, lie below that.` : "";
    const { unsettled } = judgement.limit;
    if (unsettled !== undefined) return `${stands} ${unsettledWhat(unsettled, j.spec)}`;
    if (judgement.is === "near limit") return `${stands}${NEAR[j.kind]?.[judgement.side === "high" ? 1 : 0] ?? ""}${above}`;
    if (j.kind === "battery voltage") return `${stands} ${battery(j)}`;
    const what = DO[j.kind][judgement.side === "high" ? 1 : 0];
    return `${stands}${what === "" ? "" : ` ${what}`}${j.doNotRide ? (BEFORE.includes(j.kind) ? " Do not ride before that." : " Do not ride on it.") : ""}${above}`;
  };
  const kindsOf = (each: readonly Lacking[]): string =>
    p.list(
      [...new Set(each.map(({ kind }) => kind))].map((kind) => {
        const places = [...new Set(each.flatMap((one) => (one.kind === kind && one.place !== null ? [one.place] : [])))];
        return `${places.length === 0 ? "" : `${p.list(places)} `}${KIND_WORDS[kind].name}`;
      }),
    );
  return {
    line,
    /** All that lack nothing but their limit, in one line. */
    lacking: (each: readonly Lacking[]): string => {
      const [spec, ...more] = [...new Set(each.flatMap((one) => one.spec ?? []))];
      const enter = spec === undefined ? "/spec" : enterFor(spec, each.find((one) => one.spec === spec)?.use ?? null);
      return `${capital(kindsOf(each))}: cannot tell yet; I need ${more.length > 0 ? "the figures" : "the figure"} of your manual, once: ${enter}`;
    },
    /** The same again on a day when it was said. */
    stillLacking: (each: readonly Lacking[]): string =>
      `${capital(kindsOf(each))}: cannot tell yet without your manual's ${new Set(each.map(({ spec }) => spec)).size > 1 ? "figures" : "figure"}${forLoad(each)}.`,
    uneven: ({ end, by, unit, typed }: { readonly end: "front" | "rear"; readonly by: number; readonly unit: ReadingUnit; readonly typed: string }): string =>
      `${capital(end)} pads differ by ${unit === "level" ? "" : valueAsTyped(p, by, unit, typed, "pad thickness")}: a piston or a slide pin sticks. Clean the caliper before new pads go in.`,
    unevenChain: ({ by, unit, typed }: { readonly by: number; readonly unit: ReadingUnit; readonly typed: string }): string =>
      `Chain slack differs by ${unit === "level" ? "" : valueAsTyped(p, by, unit, typed, "chain slack")} between its tightest and its slackest spot: so much mostly means a worn chain (common practice). It counts at the tightest, and is set there. Feel for links that do not bend, look at the sprockets, and measure its length over 20 pitches.`,
    /** Read of what came off since. */
    ofPartOff: (reading: Pick<SaidJudged, "place" | "value" | "unit" | "typed"> & { readonly kind: ReadingKind }): string =>
      `${capital(read(reading))} was of the one that came off since: kept with its history, and not held against the one that is on.`,
    unknownPlace: (specs: readonly SpecKey[]): string =>
      `Whose tread law holds for you I do not know, so the moulded bars count; the law may ask for more. Press whose it is, once; whoever runs the group may say it with /group place:… too. Your own limit is /spec what:${treadSpec(specs)} value:…`,
    /** A bike that is in no group: the law is the rider's to enter. */
    noGroup: (specs: readonly SpecKey[]): string =>
      `Whose tread law holds for you I do not know, so the moulded bars count; where you ride the law may ask for more. Press whose it is, or enter what it asks for, once an end: /spec what:${treadSpec(specs)} value:… Or write a reading where your group is, once its place is said with /group place:…`,
    /** A tread that some law would not let on the road, where it is not known whose holds. */
    lawElsewhere: (each: SaidJudged, broken: readonly { readonly place: string; readonly least: number; readonly lightest: number | null }[]): string => {
      const laws = broken.map(
        ({ place, least, lightest }) =>
          `${place} (${p.figure(least, 1)} mm${lightest === null ? "" : `; ${p.figure(lightest, 1)} mm of the lightest classes`})`,
      );
      return `${capital(read(each))} is beyond the law's limit in ${p.list(laws)}: there do not ride on it. Local law has the last word.`;
    },
    lawOf: (place: string): string => (place === "bars" ? "Elsewhere: by the bars" : `Law: ${place}`),
    /** A place whose states each have a law of their own: by 49 CFR 571.119 S6.4 a tyre bears bars of 1/32 in. */
    stateLaw: (): string =>
      "In the United States the least tread in use is each state's own law; what counts here is the moulded bars (49 CFR 571.119). Where your state asks for more, enter it once as your own limit: /spec.",
    /** @param warm its own figure is for a warm engine */
    howTo: (kind: ReadingKind, warm = false): string =>
      `How to measure it: ${warm && kind === "valve clearance" ? "Engine warm, as your own figure asks; feeler gauge with a light drag; one figure a valve." : KIND_WORDS[kind].howTo}`,
    /** Of one kind asked about. */
    howToOf: (kind: ReadingKind): string => `${capital(KIND_WORDS[kind].name)}: ${KIND_WORDS[kind].howTo}`,
    /** What a press says of a reading. */
    sooner: (kind: JudgedKind): string => `Check ${KIND_WORDS[kind].name} twice as often`,
    how: (kind: ReadingKind, how: ConditionRead | "rpm" | "pitches"): string => (how === "cold" && kind === "cold pressure" ? "Tyres were cold" : HOW[how]),
    howForm: (how: "rpm" | "pitches"): { readonly title: string; readonly label: string } =>
      how === "rpm"
        ? { title: "Engine speed", label: "Revolutions a minute, such as 5000" }
        : { title: "Chain length", label: "Over how many pitches, such as 20" },
    enter: (key: SpecKey, use: SpecUse | null): string => `Enter ${lowered(englishSpecName(key))}${use === null ? "" : ` ${use}`}`,
    kept: (nickname: string): string => `${nickname}: noted with the reading.`,
  };
};
