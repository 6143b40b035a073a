// Each kind of reading against its limit: the bike's own, the law's or the trade's.

import { asInTable, chargeAt, freezesAt, judgeResting } from "../core/battery/rest.ts";
import { judgeElongation, ownLimit, pitchMeasured, pitchOf, shareTyped } from "../core/chain/elongation.ts";
import { freezesAtShare, shareFor } from "../core/fluid/freezing.ts";
import { callsForWork, cannotTell, type Judgement, judge, type Limit } from "../core/judgement/verdict.ts";
import type { ConditionRead } from "../core/reading/detail.ts";
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
import { ELONGATION } from "../trade/chain.ts";
import { GLYCOL_FREEZES, MOST_GLYCOL } from "../trade/coolant.ts";
import { FULL_MARK, type JudgedKind, type JudgedRow } from "../trade/judged.ts";
import { FLAT_BELOW, MOST_OVER, PRESSURE_RULE } from "../trade/tyres.ts";
import { type Figure, figureOf, limitOf, sourceWords } from "./figures.ts";
import type { Alarm, Judged, Rig } from "./judged.ts";
import { specFor } from "./specs.ts";
import { leastOwn, treadBy, treadLimit } from "./tread-limit.ts";

/** What came of one, with what its kind tells besides. */
export type Found = {
  readonly judgement: Judgement;
  readonly more?: Partial<Pick<Judged, "by" | "add" | "share" | "miscounted" | "freezes" | "air" | "alarm" | "indoors">>;
};

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
      if (own?.lighter === true) return { judgement: cannotTell("load") };
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

/** What its battery is; null where it has none, or where that is not settled. */
export const chemistryOf = ({ bike, otherBattery }: Rig): Chemistry | null =>
  otherBattery !== null || bike.equipment.battery === "none" ? null : bike.equipment.battery;
