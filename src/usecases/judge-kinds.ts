// Each kind of reading against its limit: the bike's own, the law's or the trade's.

import { asInTable, chargeAt, freezesAt, isAtWork, judgeResting, type RestTable, restedFor } from "../core/battery/rest.ts";
import { freezesAtShare, judgeMix, shareFor } from "../core/fluid/freezing.ts";
import { callsForWork, cannotTell, type Judgement, judge, type Limit } from "../core/judgement/verdict.ts";
import type { Taken } from "../core/schedule/measured.ts";
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
  METER_OFF,
  MORE_THAN_FLAT,
  NO_SLOWER,
  REST_TABLES,
  RESTED_HOURS,
  SIX_VOLTS,
  SIX_VOLTS_CHARGING,
} from "../trade/battery.ts";
import { GLYCOL_FREEZES, MIXED_TO, MOST_GLYCOL } from "../trade/coolant.ts";
import { FLUID_CLASSES, MOST_WATER } from "../trade/fluids.ts";
import { FULL_MARK, type JudgedKind, type JudgedRow } from "../trade/judged.ts";
import { FLAT_BELOW, MOST_OVER, PRESSURE_RULE } from "../trade/tyres.ts";
import { type Figure, limitOf, shareOf } from "./figures.ts";
import { chainElongation, chainLength } from "./judge-chain.ts";
import type { Alarm, Found, Rig } from "./judged.ts";
import { leastOwn, treadBy, treadLimit } from "./tread-limit.ts";

/** @param own the bike's own figure for it, null where none is entered */
export function byKind(taken: Taken, kind: JudgedKind, row: JudgedRow, own: Figure | null, rig: Rig): Found {
  const { value, detail } = taken;
  switch (kind) {
    case "cold pressure":
      return pressure(taken, own);
    case "tread":
      return tread(value, row, own, rig);
    case "battery voltage": {
      const chemistry = chemistryOf(rig);
      if (chemistry === null) return { judgement: cannotTell("chemistry") };
      if (isAtWork(detail)) return { judgement: cannotTell("at rest") };
      const rested = restedFor(detail, RESTED_HOURS);
      // Cold lowers its volts a little at the same charge: where it was said with them. What was noted otherwise that day may be of another place, and only warns.
      const { with: air, kept } = chemistry === "lithium" ? NO_AIR : airOfReading(taken, rig);
      const volts = air === null ? value : asInTable(value, air);
      const { judgement, charge } = judgeResting(volts, REST_TABLES[chemistry], rested, RESTED_HOURS);
      // Not rested it has at most the charge that its volts show, and freezes no later than that.
      const freezes = chemistry === "lithium" ? null : freezesAt(chargeAt(volts, REST_TABLES[chemistry]), GRAVITY, FREEZING);
      const alarm = alarmOf(value, chemistry, freezes, air ?? kept);
      // Nobody enters whether a battery with acid has three cells; four lithium cells so low are what they show.
      const sixVolts = alarm === "six volts" && chemistry !== "lithium";
      const short =
        judgement.is === "cannot tell" && (detail?.stood === undefined ? detail?.conditions?.includes("charged") === true : detail.stood < RESTED_HOURS);
      return {
        judgement: sixVolts ? cannotTell("six volts") : short ? cannotTell("longer rest") : judgement,
        more: sixVolts
          ? { alarm }
          : {
              share: charge,
              typical: charge !== null && (REST_TABLES[chemistry] as RestTable).typical === true,
              freezes: callsForWork(judgement) ? freezes : null,
              air,
              airKept: alarm === "frozen" && air === null ? kept : null,
              alarm,
            },
      };
    }
    case "charging voltage": {
      const chemistry = chemistryOf(rig);
      const limit = own !== null ? chargingBy(own, row, chemistry) : chemistry === null ? null : CHARGING[chemistry];
      if (limit === null) return { judgement: cannotTell("chemistry") };
      // What no circuit of 12 V shows, however it fails, one of 6 V charges with.
      if (own === null && value <= SIX_VOLTS_CHARGING && chemistry !== "lithium") return { judgement: cannotTell("six volts") };
      const judgement = judge(value, limit, row.fine);
      // Idling it may rest below the window; above it is too high at any speed.
      if (judgement.is === "beyond limit" && judgement.side === "high") return { judgement };
      const named = (own === null ? null : underIn(own.typed).rpm) ?? CHARGING_RPM;
      // Slower than its figure is printed for it may lie below that, and reaches it all the same.
      const slow = judgement.is === "beyond limit" ? Math.max(CHARGING_RPM, named * NO_SLOWER) : CHARGING_RPM;
      const said = taken.detail?.conditions?.includes("idling") === true || (detail?.rpm ?? slow) < slow;
      return { judgement: said ? cannotTell(callsForWork(judgement) ? "revs" : "more revs") : detail?.rpm === undefined ? cannotTell("rpm") : judgement };
    }
    case "chain length":
      return chainLength(taken, own, row, rig);
    case "chain elongation":
      return chainElongation(value, rig);
    case "antifreeze share":
      return antifreezeShare(value, row, own, rig);
    case "coolant strength": {
      if (own !== null) return { judgement: soGood(judge(value, limitOf(own, row), row.fine)) };
      const asked = shareOf(rig, "coolant strength");
      if (asked === null) return { judgement: cannotTell("limit") };
      const frost = (share: number): number => freezesAtShare(share, GLYCOL_FREEZES);
      const [share, limit] = [asked.share * 100, { min: null, max: frost(asked.share * 100), near: null, source: asked.source }];
      return { judgement: judgeMix(value, limit, frost(share - MIXED_TO), row.fine), more: { by: "spec", share: asked.share } };
    }
    case "brake fluid boiling point":
    case "brake fluid water":
      return brakeFluid(value, kind, row, rig);
    // Above the full mark too much is in it.
    case "oil level":
    case "brake fluid level":
    case "clutch fluid level":
      return { judgement: judge(value, value > FULL_MARK ? { min: null, max: FULL_MARK, near: null, source: "the mark" } : (row.usual as Limit), row.fine) };
    default: {
      if (own === null && row.never !== undefined) {
        const judgement = judge(value, row.never, row.fine);
        return { judgement: callsForWork(judgement) ? judgement : cannotTell("limit") };
      }
      // Sag is set for a load; what holds solo says nothing of another.
      if (own?.lesser !== undefined) return { judgement: cannotTell("load") };
      const limit = own !== null ? limitOf(own, row) : (row.usual ?? null);
      const judgement = limit === null ? cannotTell("limit") : judge(value, limit, row.fine);
      // What is too thin with its plate is thinner without; anything else may be plate.
      return { judgement: isWithPlate(taken) && !callsForWork(judgement) ? cannotTell("lining alone") : judgement };
    }
  }
}

/** A window taken around a single figure goes no higher than what its kind of battery bears, nor lower than the least that charges it, unless the figure itself does: then by no more than a meter may be off. */
function chargingBy(own: Figure, row: JudgedRow, chemistry: Chemistry | null): Limit {
  const limit = limitOf(own, row);
  if (limit.nominal === undefined || chemistry === null) return limit;
  const { min, max } = CHARGING[chemistry];
  const [low, high] = [limit.min ?? limit.nominal, limit.max ?? limit.nominal];
  return {
    ...limit,
    min: Math.min(limit.nominal - METER_OFF, Math.max(low, min ?? low)),
    max: Math.max(limit.nominal + METER_OFF, Math.min(high, max ?? high)),
  };
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
  if (own.lesser !== undefined && (judgement.is === "cannot tell" || judgement.side !== "low")) return at(wanted, cannotTell("load"));
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

type AirAt = { readonly with: number | null; readonly kept: number | null };
const NO_AIR: AirAt = { with: null, kept: null };

/** °C of the air said in one message with a reading, and what else was noted last on its day. */
function airOfReading({ on, message = null }: Taken, rig: Rig): AirAt {
  const noted = rig.air.get(on) ?? [];
  const said = message === null ? undefined : noted.findLast((each) => each.message === message);
  return { with: said?.celsius ?? null, kept: noted.at(-1)?.celsius ?? null };
}

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

/** A share of antifreeze held against the frost that the bike asks its coolant to stand, taken to be ethylene glycol. */
function antifreezeShare(value: number, row: JudgedRow, own: Figure | null, rig: Rig): Found {
  if (value > MOST_GLYCOL) return { judgement: cannotTell("frost point") };
  const more = { share: value / 100, freezes: freezesAtShare(value, GLYCOL_FREEZES) };
  const wanted = own?.high ?? own?.low ?? null;
  const asked = shareOf(rig, "coolant strength");
  if (asked !== null) {
    const limit = { min: asked.share * 100, max: asked.most === null ? null : asked.most * 100, near: null, source: asked.source };
    return { judgement: judgeMix(value, limit, asked.share * 100 - MIXED_TO, row.fine), more: { ...more, by: "spec" } };
  }
  if (wanted === null || own === null) return { judgement: cannotTell("limit"), more };
  const least = shareFor(wanted, GLYCOL_FREEZES);
  // Where more is wanted than the table reaches, what lies well below its end is too weak, and of more nothing published is at hand.
  const end = GLYCOL_FREEZES.at(-1)?.[0] ?? 0;
  if (least === null && value > end - row.near) return { judgement: cannotTell("frost point"), more };
  return { judgement: soGood(judge(value, { min: least ?? end, max: null, near: row.near, source: own.source }, row.fine)), more };
}

/** What stands just the frost that is asked for is as good as asked, with nothing to spare. */
const soGood = (judgement: Judgement): Judgement => (judgement.is === "at limit" ? { ...judgement, is: "near limit" } : judgement);

/** Boiled or wet by a tester, by the class that is in: as wet as the standard tests it, a fluid still has to boil no sooner than that. Silicone and mineral oil take up no water. */
function brakeFluid(value: number, kind: "brake fluid boiling point" | "brake fluid water", { near, fine }: JudgedRow, { bike }: Rig): Found {
  const name = bike.equipment.brakeFluid;
  if (name === "none") return { judgement: cannotTell("fitted") };
  const { base, wet, source } = FLUID_CLASSES[name];
  const limit =
    kind === "brake fluid water"
      ? base === "glycol"
        ? { min: null, max: MOST_WATER.percent, near, source: MOST_WATER.source }
        : null
      : wet === null
        ? null
        : { min: wet, max: null, near, source: `${name} wet, ${source.split(";")[0] ?? source}` };
  return limit === null ? { judgement: cannotTell("fluid figure") } : { judgement: judge(value, limit, fine), more: { by: "spec" } };
}

/** What its battery is; null where it has none, or where that is not settled. */
export const chemistryOf = ({ bike, otherBattery }: Rig): Chemistry | null =>
  otherBattery !== null || bike.equipment.battery === "none" ? null : bike.equipment.battery;
