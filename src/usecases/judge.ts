// A bike's readings judged: the bike's own spec, else the law of its place, else the trade, joined with what was read. Nothing of it is stored.

import { asInTable, chargeAt, freezesAt, judgeResting } from "../core/battery/rest.ts";
import { forceIn, sameForce } from "../core/belt/force.ts";
import type { Bike } from "../core/bike.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { judgeElongation, ownLimit, pitchMeasured, pitchOf, shareTyped } from "../core/chain/elongation.ts";
import { STANDS, type Stand, standIn, standsOtherwise } from "../core/chain/stand.ts";
import { isFitted } from "../core/equipment.ts";
import { freezesAtShare, shareFor } from "../core/fluid/freezing.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { callsForWork, cannotTell, graver, type Judgement, judge, type Limit, type Missing } from "../core/judgement/verdict.ts";
import type { AirSaid, ConditionRead, ReadingDetail } from "../core/reading/detail.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import type { Outcome, Verdict } from "../core/schedule/facts.ts";
import { inOneDay, type Taken } from "../core/schedule/measured.ts";
import { isLeft } from "../core/schedule/mending.ts";
import type { Spec, SpecUse } from "../core/spec/spec.ts";
import { underIn } from "../core/spec/under.ts";
import { shownOutside, toSetIndoors } from "../core/tyre/garage.ts";
import { judgePressure } from "../core/tyre/pressure.ts";
import {
  CHARGING,
  CHARGING_RPM,
  type Chemistry,
  FREEZES_NEAR,
  FREEZING,
  GRAVITY,
  MORE_THAN_FLAT,
  NO_SLOWER,
  REST_TABLES,
  RESTED_HOURS,
  SIX_VOLTS,
} from "../trade/battery.ts";
import { ELONGATION } from "../trade/chain.ts";
import { GLYCOL_FREEZES, MOST_GLYCOL } from "../trade/coolant.ts";
import { endOf, FULL_MARK, isJudged, type JudgedKind, type JudgedRow, judgedRow, LOW_MARK, SAME_AS, SPOILED_BY, UNEVEN_PADS } from "../trade/judged.ts";
import { onItsSide, SPEC_KEYS, type SpecKey } from "../trade/spec-keys.ts";
import { FLAT_BELOW, MOST_OVER, PRESSURE_RULE } from "../trade/tyres.ts";
import { specFor } from "./specs.ts";
import { leastOwn, treadBy, treadLimit } from "./tread-limit.ts";

/** Whose limit a reading is held against. "bars": no place is known whose law would ask for more; "bars, state law": the place leaves what is asked in use to its states; "bars, no group": the bike is in none whose place could be said. */
export const LIMITS_BY = ["spec", "law", "bars", "bars, state law", "bars, no group", "practice", "mark"] as const;
export type LimitBy = (typeof LIMITS_BY)[number];

/** Of a battery: it may be frozen; it is more than flat, a cell of it gone; or it may be one of 6 V. Of a tyre: it holds next to nothing. */
export type Alarm = "frozen" | "more than flat" | "six volts" | "flat";

/** A reading with what came of judging it. */
export type Judged = Pick<Taken, "id" | "place" | "on" | "value" | "unit" | "typed"> & {
  readonly kind: JudgedKind;
  readonly judgement: Judgement;
  /** Whose limit it is. */
  readonly by: LimitBy;
  /** The spec that holds its limit, and for which load; null where none does. */
  readonly spec: SpecKey | null;
  readonly use: SpecUse | null;
  /** The plan line that it makes due when it calls for work. */
  readonly item: ItemKey | null;
  /** The bike is not to be ridden on it. */
  readonly doNotRide: boolean;
  readonly caution: string | null;
  /** Pressure: what to add where it stands, in kPa. */
  readonly add: number | null;
  /** Battery: share of its charge. Chain: how much longer than new. */
  readonly share: number | null;
  /** A chain measured over a pitch too few or too many. */
  readonly miscounted: boolean;
  /** °C at which a low lead-acid battery freezes, or a coolant of that share of antifreeze; null for lithium and for all else. */
  readonly freezes: number | null;
  /** °C of the air that its volts were set right by; null where none was noted. */
  readonly air: number | null;
  /** What is worse than low charge or low pressure; null mostly. */
  readonly alarm: Alarm | null;
  /** It calls for work if it was taken as it has to be, which nobody said; null where that is known, or would call for none. */
  readonly ifSo: { readonly judgement: Judgement; readonly doNotRide: boolean } | null;
  /** A pressure read in a garage, and where the ride starts; null for all else. */
  readonly indoors: Indoors | null;
  /** Every point measured, where it was more than one; `value` is the least of them. */
  readonly points: readonly number[];
  /** Of a belt: the force at which its figure holds, as typed; null where none was. */
  readonly force: string | null;
  /** Of a chain's slack: how the bike stands where its figure holds; null where it names none. */
  readonly stand: Stand | null;
};

/**
 * In kPa: `onRoad` is what the tyre shows where the ride starts, which is judged; null where that is not told, or the garage is no warmer: it is judged as it was read. `wanted`: the end of the figure that it is to have, null where none is known.
 * `set`: what to set indoors for it; null where garage and road are too far apart, or the garage is no warmer.
 */
export type Indoors = AirSaid & { readonly onRoad: number | null; readonly wanted: number | null; readonly set: number | null };

/** A reading that was just logged, judged. `first`: of its kind on this bike, or the first of them that cannot be judged. */
export type JudgedOn = Judged & { readonly bike: BikeId; readonly first: boolean };

/** Is it so near the end at which it gets worse that its line of the plan is worth an earlier look? */
export const looksSooner = ({ kind, judgement }: Judged): boolean =>
  judgement.is === "near limit" && judgement.side !== null && judgedRow(kind).sooner === judgement.side;

/** What is known of a bike besides what was read. `place`: whose tread law; `homed`: is it at home in a group, which has that place. `use`: how it is loaded. `ways`: how each kind is measured on it, said once. */
export type Rig = {
  readonly bike: Pick<Bike, "id" | "kind" | "equipment">;
  readonly specs: readonly Spec[];
  readonly place: string | null;
  readonly homed: boolean;
  readonly use: SpecUse | null;
  /** While one lasts the bike is loaded as it says. */
  readonly trips: readonly { readonly from: LocalDate; readonly to: LocalDate; readonly use: SpecUse }[];
  readonly ways: ReadonlyMap<ReadingKind, ReadingDetail>;
  /** °C of the air, by the day on which it was noted. */
  readonly air: ReadonlyMap<LocalDate, number>;
  /** The kind that its new battery is said to be, where the bike is entered with another: until that is settled no table holds. */
  readonly otherBattery: Chemistry | null;
  /** Was all of this looked up? A bike of which nothing was measured needs it not. */
  readonly looked: boolean;
};

/** `lighter`: it is for less load than the bike is ridden with. */
type Figure = { readonly low: number | null; readonly high: number | null; readonly source: string; readonly typed: string; readonly lighter?: boolean };

/** Judges one reading; null for a kind that nobody judges. */
export function judgeTaken(said: Taken, rig: Rig): Judged | null {
  const { kind } = said;
  if (!isJudged(kind)) return null;
  const known = judgedRow(kind);
  const end = endOf(said.place);
  const key = known.specs[end] ?? known.specs.any;
  const use = said.detail?.load ?? rig.trips.find(({ from, to }) => from <= said.on && said.on <= to)?.use ?? rig.use;
  const own = key === undefined ? null : figureOf(rig, key, use);
  const force = key !== undefined && SPEC_KEYS[key].atForce === true && own !== null ? forceIn(own.typed) : null;
  const stand = key !== undefined && SPEC_KEYS[key].stands === true && own !== null ? standIn(own.typed) : null;
  // A figure that names its stand holds on that alone.
  const under = own === null ? null : underIn(own.typed);
  const row: JudgedRow = stand !== null ? { ...known, needs: [[stand]] } : under?.engine === "warm" ? { ...known, needs: known.needs.map(warmForCold) } : known;
  const { taken, otherForce } = pressedAs(asAlways(said, row, rig), force);
  const fits = isFitted(row.fits, rig.bike.equipment) && (key === undefined || isFitted(SPEC_KEYS[key].fits ?? {}, rig.bike.equipment));
  const found: Found = !fits ? { judgement: cannotTell("fitted") } : otherForce ? { judgement: cannotTell("other force") } : byKind(taken, kind, row, own, rig);
  const unsaid = missingCondition(taken, row, found.judgement, stand);
  const judgement = unsaid ?? found.judgement;
  const item = row.items[end] ?? row.items.any ?? null;
  const { id, place, on, value, unit, typed } = taken;
  return {
    ...{ id, kind, place, on, value, unit, typed, judgement },
    ...{ spec: key ?? null, use: key !== undefined && SPEC_KEYS[key].byUse === true && use !== "solo" ? use : null },
    item: item as ItemKey | null,
    doNotRide: isGrave(value, row, judgement),
    caution: row.caution === "battery" && (rig.otherBattery ?? chemistryOf(rig)) === "lithium" ? "lithium battery" : row.caution,
    by: own !== null ? "spec" : kind === "tread" ? treadBy(rig) : row.usual?.min === LOW_MARK ? "mark" : "practice",
    add: null,
    share: null,
    miscounted: false,
    freezes: null,
    air: null,
    alarm: null,
    indoors: null,
    ifSo: unsaid !== null && callsForWork(found.judgement) ? { judgement: found.judgement, doNotRide: isGrave(value, row, found.judgement) } : null,
    points: taken.detail?.points ?? [],
    force: force?.typed ?? null,
    stand,
    ...found.more,
  };
}

/** A clearance that its manual gives for a warm engine is measured warm. */
const warmForCold = (group: JudgedRow["needs"][number]): JudgedRow["needs"][number] => (group.includes("cold") ? ["warm"] : group);

/** Pressed with the force that the manual's figure names, whatever unit it was said in, it was pressed as named. */
function pressedAs(taken: Taken, named: ReturnType<typeof forceIn>): { readonly taken: Taken; readonly otherForce: boolean } {
  const { detail } = taken;
  const pressed = detail?.force === undefined || named === null ? null : forceIn(detail.force);
  if (detail === null || pressed === null || named === null) return { taken, otherForce: false };
  if (!sameForce(pressed.newtons, named.newtons)) return { taken, otherForce: true };
  return { taken: { ...taken, detail: { ...detail, conditions: [...(detail.conditions ?? []), "at force"] } }, otherForce: false };
}

/** Is the bike not to be ridden on it? */
function isGrave(value: number, row: JudgedRow, judgement: Judgement): boolean {
  if (!row.doNotRide || judgement.is === "cannot tell") return false;
  if (row.wears && callsForWork(judgement)) return true;
  if (judgement.is !== "beyond limit" || judgement.side === null) return false;
  if (row.grave === null) return true;
  const from = row.grave[judgement.side];
  if (from === undefined) return false;
  const { past, share, at } = from;
  if (past === undefined && share === undefined && at === undefined) return true;
  const end = judgement.side === "low" ? judgement.limit.min : judgement.limit.max;
  const reaches = (figure: number): boolean => (judgement.side === "low" ? value <= figure : value >= figure);
  return (
    (past !== undefined && -(judgement.room ?? 0) >= past) || (share !== undefined && end !== null && reaches(end * share)) || (at !== undefined && reaches(at))
  );
}

/** Is it so whichever way it was taken: nothing left at all, hanging down, or as good as tight with nobody on it? */
function isAnyway({ value, detail }: Pick<Taken, "value" | "detail">, row: JudgedRow, judgement: Judgement): boolean {
  if (!isGrave(value, row, judgement) || judgement.is === "cannot tell" || judgement.side === null) return false;
  const from = row.grave?.[judgement.side];
  const isTight = from?.at !== undefined && judgement.side === "low" && value <= from.at && detail?.conditions?.includes("under load") !== true;
  const hangs = from?.past !== undefined && -(judgement.room ?? 0) >= from.past;
  return value === 0 || isTight || hangs;
}

/** How it was taken, said once, holds for later readings of its kind on the bike. That a battery had rested is said of each. */
function asAlways(taken: Taken, row: JudgedRow, { ways }: Rig): Taken {
  const { detail } = taken;
  const known = ways.get(taken.kind);
  const kept = detail?.kept === undefined ? known : { ...known, conditions: detail.kept };
  if (kept === undefined) return taken;
  // Said to stand otherwise this time, it did.
  const stood = STANDS.some((each) => detail?.conditions?.includes(each) === true);
  // Of several that would do, the one said last.
  const unsaid: readonly ConditionRead[] = row.needs
    .filter((group) => !group.some((each) => detail?.conditions?.includes(each) === true))
    .flatMap((group) => kept.conditions?.find((each) => (group as readonly ConditionRead[]).includes(each)) ?? []);
  const always =
    kept.conditions?.filter(
      (each) =>
        each !== "rested" &&
        !(stood && STANDS.some((stand) => stand === each)) &&
        !(each === "at force" && detail?.force !== undefined) &&
        unsaid.includes(each),
    ) ?? [];
  const rpm = detail?.rpm ?? kept.rpm;
  return { ...taken, detail: { ...detail, conditions: [...(detail?.conditions ?? []), ...always], ...(rpm === undefined ? {} : { rpm }) } };
}

type Found = {
  readonly judgement: Judgement;
  readonly more?: Partial<Pick<Judged, "by" | "add" | "share" | "miscounted" | "freezes" | "air" | "alarm" | "indoors">>;
};

function byKind(taken: Taken, kind: JudgedKind, row: JudgedRow, own: Figure | null, rig: Rig): Found {
  const { value, detail } = taken;
  switch (kind) {
    case "cold pressure":
      return pressure(taken, own);
    case "tread":
      return tread(value, row, own, rig);
    case "battery voltage": {
      const chemistry = chemistryOf(rig);
      if (chemistry === null) return { judgement: cannotTell("chemistry") };
      // Cranking, with its lights on or on its charger it shows neither its charge nor that a cell is dead.
      if (detail?.conditions?.some((each) => NOT_AT_REST.includes(each)) === true) return { judgement: cannotTell("at rest") };
      const rested = detail?.conditions?.includes("rested") === true ? (detail.stood ?? RESTED_HOURS) : (detail?.stood ?? null);
      // Cold lowers its volts a little at the same charge.
      const air = chemistry === "lithium" ? undefined : rig.air.get(taken.on);
      const volts = air === undefined ? value : asInTable(value, air);
      const { judgement, charge } = judgeResting(volts, REST_TABLES[chemistry], rested, RESTED_HOURS);
      // Not rested it has at most the charge that its volts show, and freezes no later than that.
      const freezes = chemistry === "lithium" ? null : freezesAt(chargeAt(volts, REST_TABLES[chemistry]), GRAVITY, FREEZING);
      const alarm = alarmOf(value, chemistry, freezes, air ?? null);
      // Nobody enters whether a battery with acid has three cells; four lithium cells so low are what they show.
      const sixVolts = alarm === "six volts" && chemistry !== "lithium";
      const short = judgement.is === "cannot tell" && detail?.stood !== undefined;
      return {
        judgement: sixVolts ? cannotTell("six volts") : short ? cannotTell("longer rest") : judgement,
        more: sixVolts ? { alarm } : { share: charge, freezes: callsForWork(judgement) ? freezes : null, air: air ?? null, alarm },
      };
    }
    case "charging voltage": {
      const chemistry = chemistryOf(rig);
      const limit = own !== null ? limitOf(own, row) : chemistry === null ? null : CHARGING[chemistry];
      if (limit === null) return { judgement: cannotTell("chemistry") };
      const judgement = judge(value, limit, row.fine);
      // Idling it may rest below the window; above it is too high at any speed.
      if (judgement.is === "beyond limit" && judgement.side === "high") return { judgement };
      const named = (own === null ? null : underIn(own.typed).rpm) ?? CHARGING_RPM;
      // Slower than its figure is printed for it may lie below that, and reaches it all the same.
      const slow = judgement.is === "beyond limit" ? Math.max(CHARGING_RPM, named * NO_SLOWER) : CHARGING_RPM;
      const said = taken.detail?.conditions?.includes("idling") === true || (detail?.rpm ?? slow) < slow;
      return { judgement: said ? cannotTell("revs") : detail?.rpm === undefined ? cannotTell("rpm") : judgement };
    }
    case "chain length":
      return chainLength(taken, own, row, rig);
    case "chain elongation":
      return chainElongation(value, rig);
    case "antifreeze share":
      return antifreezeShare(value, row, own, rig);
    case "coolant strength": {
      const asked = own === null ? shareOf(rig, "coolant strength") : null;
      const frost =
        own !== null
          ? limitOf(own, row)
          : asked === null
            ? null
            : { min: null, max: freezesAtShare(asked.share * 100, GLYCOL_FREEZES), near: row.near, source: asked.source };
      return frost === null ? { judgement: cannotTell("limit") } : { judgement: judge(value, frost, row.fine), more: asked === null ? {} : { by: "spec" } };
    }
    case "oil level":
      return { judgement: judge(value, value > FULL_MARK ? { min: null, max: FULL_MARK, near: null, source: "the mark" } : (row.usual as Limit), row.fine) };
    default: {
      if (own === null && row.never !== undefined) {
        const judgement = judge(value, row.never, row.fine);
        return { judgement: callsForWork(judgement) ? judgement : cannotTell("limit") };
      }
      // Sag is set for a load; what holds solo says nothing of another.
      if (own?.lighter === true) return { judgement: cannotTell("load") };
      const limit = own !== null ? limitOf(own, row) : (row.usual ?? null);
      const judgement = limit === null ? cannotTell("limit") : judge(value, limit, row.fine);
      // What is too thin with its plate is thinner without; anything else may be plate.
      return { judgement: isWithPlate(taken) && !callsForWork(judgement) ? cannotTell("lining alone") : judgement };
    }
  }
}

/** A pressure read in a garage that is warmer than the road is judged as it will be out there. */
function pressure({ value: read, detail }: Taken, own: Figure | null): Found {
  const onRoad = detail?.air === undefined ? null : shownOutside(read, detail.air);
  const value = onRoad ?? read;
  const at = (wanted: number | null, judgement: Judgement, more: Found["more"] = {}): Found => ({
    judgement,
    more:
      detail?.air === undefined
        ? more
        : { ...more, indoors: { ...detail.air, onRoad, wanted, set: onRoad === null ? null : toSetIndoors(wanted, detail.air, MOST_OVER) } },
  });
  if (own === null || own.low === null || own.high === null)
    return value < FLAT_BELOW.kPa ? at(null, flat(value), { alarm: "flat" }) : at(null, cannotTell("limit"));
  const { add, ...judgement } = judgePressure(value, { min: own.low, max: own.high }, PRESSURE_RULE, own.source);
  const wanted = add < 0 ? own.high : own.low;
  // With more load it takes at least what it takes with less: too low for less is told, right for less says nothing.
  if (own.lighter === true && (judgement.is === "cannot tell" || judgement.side !== "low")) return at(wanted, cannotTell("load"));
  const isFlat = value < FLAT_BELOW.kPa && judgement.is === "beyond limit" && judgement.side === "low";
  return at(wanted, judgement, isFlat ? { add, alarm: "flat" } : { add });
}

/** So little is unsafe on any bike, whatever is wanted of this one. */
const flat = (value: number): Judgement => ({
  ...{ is: "beyond limit", side: "low", room: value - FLAT_BELOW.kPa },
  limit: { min: FLAT_BELOW.kPa, max: null, near: null, source: FLAT_BELOW.source },
});

/** Was the backing plate measured with the lining? Then the figure is none of the lining. */
export const isWithPlate = ({ detail }: Pick<Taken, "detail">): boolean => detail?.conditions?.includes("with backing plate") === true;

const NOT_AT_REST: readonly ConditionRead[] = ["under draw", "on the charger", "running", "idling"];

/** What is worse than low charge, by the volts read and what they freeze at. */
function alarmOf(volts: number, chemistry: Chemistry, freezes: number | null, air: number | null): Alarm | null {
  if (freezes !== null && air !== null && air <= freezes + FREEZES_NEAR) return "frozen";
  if (volts <= SIX_VOLTS) return "six volts";
  return volts < MORE_THAN_FLAT[chemistry] ? "more than flat" : null;
}

/** The bike's own limit goes before the law only where it asks for more. */
function tread(value: number, row: JudgedRow, own: Figure | null, rig: Rig): Found {
  const law = treadLimit(row, rig.place);
  if (own === null) return { judgement: judge(value, law, row.fine) };
  const limit = limitOf(own, row);
  // Nobody's own limit goes below what the law of the place asks of any, nor below the bars where no law is known.
  if ((limit.min ?? 0) >= (leastOwn(rig.place, rig.bike.kind) ?? law.min ?? 0)) return { judgement: judge(value, limit, row.fine) };
  return { judgement: judge(value, law, row.fine), more: { by: treadBy(rig) } };
}

function chainLength({ value, detail }: Taken, own: Figure | null, row: JudgedRow, rig: Rig): Found {
  const size = specFor(rig.specs, rig.bike, "chain size");
  const pitch = (size.is === "one" ? pitchOf(size.spec.typed) : null) ?? (detail?.pitches === undefined ? null : pitchMeasured(value, detail.pitches));
  const printed = own === null ? shareOf(rig) : null;
  const most = own?.high ?? null;
  if (detail?.pitches !== undefined && pitch === null && most === null) return { judgement: cannotTell("no such chain") };
  if (detail?.pitches === undefined || pitch === null) {
    // A manual's own length is over the pitches that it names: only a reading of about that length can be held against it.
    if (most !== null && Math.abs(value / most - 1) < 0.04)
      return { judgement: judge(value, { min: null, max: most, near: row.near, source: own?.source ?? "" }, row.fine) };
    return { judgement: cannotTell("pitch") };
  }
  const share = printed?.share ?? (most === null ? null : ownLimit(most, detail.pitches, pitch));
  const wear = judgeElongation(value, detail.pitches, pitch, share, ELONGATION);
  const { judgement } = wear;
  const more = { share: wear.elongation, miscounted: wear.miscounted, ...(printed === null ? {} : { by: "spec" as const }) };
  if (judgement.is === "cannot tell") return { judgement, more };
  // Shares are judged; a rider holds the rule against a length.
  const whole = detail.pitches * pitch;
  const length = (share: number | null): number | null => (share === null ? null : whole * (1 + share));
  const { limit, room } = judgement;
  const inLength: Limit = {
    min: null,
    max: length(limit.max),
    near: limit.near === null ? null : limit.near * whole,
    source: own?.source ?? printed?.source ?? limit.source,
  };
  return { judgement: { ...judgement, room: room === null ? null : room * whole, limit: inLength }, more };
}

/** Per cent, read off a gauge or worked out by the member: held against the same limits as a length. */
function chainElongation(value: number, rig: Rig): Found {
  const own = chainLimit(rig);
  const { judgement } = judgeElongation(1 + value / 100, 1, 1, own?.share ?? null, ELONGATION);
  const more = { share: value / 100, by: own === null ? ("practice" as const) : ("spec" as const) };
  if (judgement.is === "cannot tell") return { judgement, more };
  const percent = (share: number | null): number | null => (share === null ? null : share * 100);
  const { limit, room } = judgement;
  const inPercent: Limit = { min: null, max: percent(limit.max), near: percent(limit.near), source: own?.source ?? limit.source };
  return { judgement: { ...judgement, room: percent(room), limit: inPercent }, more };
}

/** How far a chain may go by its bike's manual, as a share: printed so, or as a length over pitches that its size tells; null where neither is known. */
export function chainLimit(rig: Rig): { readonly share: number; readonly source: string } | null {
  const printed = shareOf(rig);
  if (printed !== null) return printed;
  const [longest, size] = [figureOf(rig, "chain length limit", null), specFor(rig.specs, rig.bike, "chain size")];
  const most = longest?.high ?? null;
  const pitch = size.is === "one" ? pitchOf(size.spec.typed) : null;
  const share = most === null || pitch === null ? null : ownLimit(most, Math.round(most / pitch), pitch);
  return share === null ? null : { share, source: longest?.source ?? "" };
}

/** A share of antifreeze held against the frost that the bike asks its coolant to stand, taken to be ethylene glycol. */
function antifreezeShare(value: number, row: JudgedRow, own: Figure | null, rig: Rig): Found {
  if (value > MOST_GLYCOL) return { judgement: cannotTell("frost point") };
  const more = { share: value / 100, freezes: freezesAtShare(value, GLYCOL_FREEZES) };
  const wanted = own?.high ?? own?.low ?? null;
  const asked = shareOf(rig, "coolant strength");
  if (asked !== null)
    return { judgement: judge(value, { min: asked.share * 100, max: null, near: row.near, source: asked.source }, row.fine), more: { ...more, by: "spec" } };
  if (wanted === null || own === null) return { judgement: cannotTell("limit"), more };
  const least = shareFor(wanted, GLYCOL_FREEZES);
  // Where more is wanted than the table reaches, what lies well below its end is too weak, and of more nothing published is at hand.
  const end = GLYCOL_FREEZES.at(-1)?.[0] ?? 0;
  if (least === null && value > end - row.near) return { judgement: cannotTell("frost point"), more };
  return { judgement: judge(value, { min: least ?? end, max: null, near: row.near, source: own.source }, row.fine), more };
}

/** What its manual prints in per cent: a chain's limit, the antifreeze in its coolant; null where nothing is entered so. */
export function shareOf(
  rig: Rig,
  key: "chain length limit" | "coolant strength" = "chain length limit",
): { readonly share: number; readonly source: string } | null {
  const settled = specFor(rig.specs, rig.bike, key);
  const share = settled.is === "one" && settled.spec.holds.is === "words" ? shareTyped(settled.spec.typed) : null;
  return settled.is !== "one" || share === null ? null : { share, source: sourceWords(settled.spec) };
}

const sourceWords = ({ source }: Spec): string => (source === null ? "" : `${source.manual}${source.page === null ? "" : `, p. ${source.page}`}`);

const chemistryOf = ({ bike, otherBattery }: Rig): Chemistry | null =>
  otherBattery !== null || bike.equipment.battery === "none" ? null : bike.equipment.battery;

/** The ends of a spec as a limit. A single figure that is neither a least nor a most is a window around itself: a twentieth either way, and no less than the least that its kind allows. */
function limitOf({ low, high, source }: Figure, row: JudgedRow): Limit {
  const only = low !== null && low === high;
  // None at all is never within: at the most half the figure is taken.
  const around = low === null ? 0 : Math.max(Math.abs(low) / 20, low === 0 ? row.around : Math.min(row.around, Math.abs(low) / 2));
  return only
    ? { min: low - around, max: low + around, near: null, nominal: low, source }
    : { min: low, max: high, near: Math.min(row.near, low === null || high === null ? row.near : (high - low) / 5), source };
}

/** The loads whose figure is held against one, its own first: two up it is no lighter than solo, and loaded no lighter than two up. */
const LIGHTER: Readonly<Record<SpecUse, readonly SpecUse[]>> = { solo: ["solo"], "two-up": ["two-up", "solo"], loaded: ["loaded", "two-up", "solo"] };

/** What the bike's specs say of a key; null where nothing does, or members differ and nothing settles it. */
function figureOf(rig: Rig, key: SpecKey, use: SpecUse | null): Figure | null {
  const uses = LIGHTER[use ?? "solo"];
  const asked = uses.map((each) => specFor(rig.specs, rig.bike, key, each));
  const settled = asked.find(({ is }) => is !== "none") ?? ({ is: "none" } as const);
  if (settled.is !== "one" || settled.spec.holds.is !== "figure") return null;
  // Entered before such was refused: what is said of the other side is no limit of this.
  const { low, high } = onItsSide(key, settled.spec.holds);
  if (low === null && high === null) return null;
  return {
    low,
    high,
    lighter: settled !== asked[0],
    source: sourceWords(settled.spec),
    typed: settled.spec.typed,
  };
}

/** A value within proves nothing until it is known how it was taken; one beyond its limit is told either way, but for what reads wrong whichever way it is taken. Said to be taken the wrong way it proves nothing at all. */
function missingCondition(taken: Taken, row: JudgedRow, judgement: Judgement, stand: Stand | null): Judgement | null {
  if (judgement.is === "cannot tell") return null;
  const { detail } = taken;
  const said = detail?.conditions ?? [];
  const spoiled = row.needs.flatMap((group) => {
    const first = group.at(-1);
    const rule = first === undefined ? undefined : SPOILED_BY[first];
    return rule !== undefined && said.some((each) => rule.by.includes(each)) ? [rule.instead] : [];
  });
  const instead = stand !== null ? (standsOtherwise(stand, said) ? "other stand" : undefined) : spoiled[0];
  const either = isAnyway(taken, row, judgement);
  if (instead !== undefined && !either) return cannotTell(instead);
  if (callsForWork(judgement) && (!row.strict || either)) return null;
  const missing = row.needs.filter((group) => !group.some((each) => detail?.conditions?.includes(each) === true));
  return missing.length === 0 ? null : cannotTell(...missing.flat().map((need): Missing => (need === "warm" ? "temperature" : need)));
}

/** °C of the air by the day on which it was noted; of one day the last. */
export const airOf = (measured: readonly Taken[]): Rig["air"] =>
  new Map(measured.flatMap(({ kind, on, value }) => (kind === "ambient temperature" ? [[on, value] as const] : [])));

/** What stands of each kind at each place: of a day's readings the one left after adjusting, else the gravest of a pair, else the last. */
export function judgeAll(measured: readonly Taken[], rig: Rig): readonly Judged[] {
  const places = new Map<string, Taken[]>();
  for (const taken of measured) {
    if (!isJudged(taken.kind)) continue;
    const key = `${SAME_AS[taken.kind] ?? taken.kind}|${taken.place ?? ""}`;
    places.set(key, [...(places.get(key) ?? []), taken]);
  }
  return [...places.values()].flatMap((all) => {
    const day = all.reduce((latest, { on }) => (on > latest ? on : latest), all[0]?.on ?? ("" as Taken["on"]));
    const those = all.filter(({ on }) => on === day).sort(inOneDay);
    const left = those.filter(({ detail }) => detail?.state !== "found");
    const standing = left.length > 0 ? left : those;
    const last = standing.at(-1);
    if (last === undefined) return [];
    const judged = besideLast(standing, last).flatMap((taken) => judgeTaken(taken, rig) ?? []);
    return judged.length === 0 ? [] : [judged.reduce((worst, each) => (graver(worst.judgement, each.judgement) === worst.judgement ? worst : each))];
  });
}

/** Of what now cannot be told, the last judgement before it that could: it stands until another one can. @param taken every reading of those kinds */
export function lastTold(judged: readonly Judged[], taken: readonly Taken[], rig: Rig): readonly Judged[] {
  return judged.flatMap((now): readonly Judged[] => {
    if (now.judgement.is !== "cannot tell") return [];
    const same = taken.filter(({ id, kind, place, on }) => kind === now.kind && place === now.place && on <= now.on && id !== now.id);
    const told = same
      .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : inOneDay(a, b)))
      .flatMap((each) => (each.detail?.state === "found" ? [] : (judgeTaken(each, rig) ?? [])))
      .findLast(({ judgement }) => judgement.is !== "cannot tell");
    return told === undefined ? [] : [told];
  });
}

/** Of what wears, all that was measured of one part on its day stands, and the least of it tells; anything else read twice is read better the second time. @param standing in order */
function besideLast(standing: readonly Taken[], last: Taken): readonly Taken[] {
  const grows = isJudged(last.kind) ? judgedRow(last.kind).grows : null;
  if (grows === null) return [last];
  let beside: Taken[] = [];
  for (const taken of standing) {
    const before = beside.at(-1);
    // Said in one breath, or no more than was there: of the same part. More than that is of a new one, or the figure before was misread.
    const isOne = before !== undefined && before.loggedAt === taken.loggedAt && before.ordinal < taken.ordinal && before.detail?.state === taken.detail?.state;
    const least = Math.min(...beside.map(({ value }) => value));
    const isLeftAnew = taken.detail?.state === "left" && before?.detail?.state !== "left";
    beside = isOne || (!isLeftAnew && taken.value - least <= grows && !isWithPlate(taken)) ? [...beside, taken] : [taken];
  }
  return beside.filter((each) => !isWithPlate(each) || each === last);
}

/** The judgements as the schedule takes them. */
export const verdictsOf = (judged: readonly Judged[]): readonly Verdict[] =>
  judged.flatMap(({ item, on, judgement, id, kind, place, value: read, unit, typed, indoors: garage }) => {
    const value = garage?.onRoad ?? read;
    if (item === null) return [];
    const told = judgement.is === "cannot tell" ? null : judgement;
    const limit = told === null || told.side === null ? null : told.side === "low" ? told.limit.min : told.limit.max;
    return [{ item, on, is: judgement.is, reading: id, measured: { kind, place, value, unit, typed, limit, side: told?.side ?? null } }];
  });

/** Pads of one axle read together that differ by too much, and by how much. */
export function unevenPads(judged: readonly Judged[]): readonly {
  readonly end: "front" | "rear";
  readonly by: number;
  readonly unit: Judged["unit"];
  readonly typed: string;
}[] {
  return (["front", "rear"] as const).flatMap((end) => {
    const pads = judged.filter(({ kind, place }) => kind === "pad thickness" && endOf(place) === end);
    const values = pads.flatMap(({ value, points }) => [value, ...points]);
    const by = Math.max(...values) - Math.min(...values);
    return pads[0] !== undefined && by >= UNEVEN_PADS - 1e-9 ? [{ end, by, unit: pads[0].unit, typed: pads.map(({ typed }) => typed).join(" ") }] : [];
  });
}

const ENDS_NEW = ["front-tyre.replace", "rear-tyre.replace"];

/** Was a tyre put on one end only? */
export const oneEndNew = (items: readonly { readonly item: string; readonly outcome: Outcome }[]): boolean =>
  new Set(items.filter(({ item, outcome }) => !isLeft(outcome) && ENDS_NEW.includes(item)).map(({ item }) => item)).size === 1;
