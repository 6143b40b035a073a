// What is judged of a bike's readings: whose limit, what else must be known, and which line of the plan falls due by it. One row a kind.
// The bike's own specs go before any limit here; a limit of the trade stands only where one holds for every bike.

import type { EquipmentRule } from "../core/equipment.ts";
import type { Limit, Missing } from "../core/judgement/verdict.ts";
import { toCanonical } from "../core/quantity/units.ts";
import type { ConditionRead } from "../core/reading/detail.ts";
import type { Place, ReadingKind } from "../core/reading/kinds.ts";
import type { CautionKey } from "./cautions.ts";
import type { DefectKind } from "./defects.ts";
import type { SpecKey } from "./spec-keys.ts";

type End = "front" | "rear" | "sidecar" | "intake" | "exhaust" | "any";

/** What a measure can need said of it; the others only spoil one. */
type NeededCondition = Exclude<ConditionRead, "running" | "idling" | "under draw" | "on the charger" | "charged" | "with backing plate" | "bars straight">;

export type JudgedRow = {
  /** The spec that holds the limit or the window, by end. */
  readonly specs: Partial<Record<End, SpecKey>>;
  /** Where no spec is known: the trade's limit; absent where only the manual can tell. */
  readonly usual?: Limit;
  /** Where no spec is known: what is wrong on every bike. Short of it only the manual can tell. */
  readonly never?: Limit;
  /** Canonical units: the finest step of the tool, and how close to a wear limit is worth a word. */
  readonly fine: number;
  readonly near: number;
  /** Where the manual gives one figure, its window reaches at least so far either way; canonical unit. A step of the feeler or the rule, and what manuals usually allow: common practice. */
  readonly around: number;
  /** One of each of these must have been said of it, else a value within proves nothing. */
  readonly needs: readonly (readonly NeededCondition[])[];
  /** Without them a value beyond its limit proves nothing either, but what is so whichever way it was taken: nothing left at all, or `past` its limit. */
  readonly strict: boolean;
  /** The line of the plan that a value at or beyond its limit makes due. */
  readonly items: Partial<Record<End, string>>;
  /** Worn to its limit it is at its end: the bike is not to be ridden at the limit either. */
  readonly wears: boolean;
  /** What wears does not grow: by more than this it was misread, or a new part is not on record. Canonical unit; null for what is set or filled. */
  readonly grows: number | null;
  /** Beyond its limit the bike is not to be ridden; where `grave` names sides, beyond those alone, from there on. */
  readonly doNotRide: boolean;
  readonly grave: Partial<Record<"low" | "high", From>> | null;
  /** What is then noted against the bike until work mends it: by end, or by the side that it is beyond. */
  readonly defects: Partial<Record<End | "low" | "high", DefectKind>>;
  /** Near this end of its window the line is looked at sooner than the plan says, where the member wants it. */
  readonly sooner: "low" | "high" | null;
  /** It is set by adjusting or topping up: the next reading that is right closes what was noted. */
  readonly setRight: boolean;
  /** Whom it fits, where it has no spec that says so. */
  readonly fits: EquipmentRule;
  readonly caution: CautionKey | null;
};

/** From where on a value beyond its limit stops the ride, by any of these that is named; none: from the limit on. */
type From = {
  /** So far beyond its end, canonical unit: told whichever way the bike stood. */
  readonly past?: number;
  /** So many times its end. */
  readonly share?: number;
  /** From this figure on, whatever the limit, canonical unit: told whichever way the bike stood, but under load. */
  readonly at?: number;
};

/** What a measure is not taken under, by the condition that it needs instead: said so, no value of it proves anything. */
export const SPOILED_BY: Partial<Record<NeededCondition, { readonly by: readonly ConditionRead[]; readonly instead: Missing }>> = {
  cold: { by: ["warm", "running", "idling"], instead: "cooled" },
  warm: { by: ["cold"], instead: "warmed" },
  // On its stand the bike leans, and a level with it.
  upright: { by: ["on the side stand"], instead: "stood upright" },
  // Windows are printed for a bike with nobody on it, unless the manual says otherwise (common practice).
  "on the side stand": { by: ["under load"], instead: "unladen" },
};

const row = (more: Partial<JudgedRow> & Pick<JudgedRow, "fine">): JudgedRow => ({
  ...{
    specs: {},
    near: 0,
    around: 0,
    needs: [],
    strict: false,
    wears: false,
    grows: null,
    items: {},
    doNotRide: false,
    grave: null,
    defects: {},
    sooner: null,
    setRight: false,
    fits: {},
    caution: null,
  },
  ...more,
});

/** How high the bars moulded into every motorcycle tyre stand, mm. Source: 49 CFR 571.119 S6.4, 1/32 in, printed as 0.8 mm too. */
export const BAR = toCanonical(1, "1/32 in");
/** "Bar reached, replace" where the law of the place is not known. */
const BARS: Limit = { min: BAR, max: null, near: 0.8, source: "49 CFR 571.119 S6.4: bars of 1/32 in (0.8 mm)" };
/** Common practice: many makers ask for new pads at 1 to 2 mm of lining. */
const LINING: Limit = { min: 1, max: null, near: 1, source: "common practice" };

/** Common practice: makers ask for new brake shoes at 1.5 to 2 mm of lining; riveted ones well before the rivets. */
const SHOE: Limit = { min: 1.5, max: null, near: 1, source: "common practice" };

/** Common practice: pads of one axle that differ by a millimetre point to a piston or a slide pin that sticks. mm. */
export const UNEVEN_PADS = 1;

/** Common practice, from memory: a chain whose slack differs by a centimetre as the wheel is turned has worn unevenly, or has links that no longer bend. mm. */
export const UNEVEN_SLACK = 10;

/** Common practice: a cable needs some play on every bike. mm. */
const SOME_PLAY: Limit = { min: 0.5, max: null, near: null, source: "common practice" };
/** Common practice: where a bike's window is not known, a chain with so little slack is as good as tight on any: its suspension draws it tighter still. mm. */
const SOME_SLACK: Limit = { min: 5, max: null, near: null, source: "common practice" };

/** Levels count from empty, 0, over the low mark, 2, to above the full mark, 5. */
export const LOW_MARK = 2;
export const FULL_MARK = 4;
const level = (more: Partial<JudgedRow>): JudgedRow =>
  row({ fine: 0.5, needs: [["upright"]], strict: true, usual: { min: LOW_MARK, max: null, near: null, source: "the mark" }, ...more });

const HAS_FLUID: EquipmentRule = { brakeFluid: ["DOT 3", "DOT 4", "DOT 5", "DOT 5.1", "mineral oil"] };

export const JUDGED = {
  tread: row({
    ...{ fine: 0.1, near: 0.8, doNotRide: true, wears: true, grows: 1, caution: "tyres", usual: BARS },
    specs: { front: "front tread limit", rear: "rear tread limit", sidecar: "sidecar tread limit" },
    items: { front: "front-tread.measure", rear: "rear-tread.measure", sidecar: "sidecar-tread.measure" },
    defects: { front: "worn front tyre", rear: "worn rear tyre", sidecar: "worn sidecar tyre" },
  }),
  "cold pressure": row({
    ...{ fine: 3.5, doNotRide: true, setRight: true, caution: "tyres" },
    specs: { front: "front tyre pressure", rear: "rear tyre pressure", sidecar: "sidecar tyre pressure" },
    items: { any: "tyre-pressure.measure" },
    defects: { front: "wrong front pressure", rear: "wrong rear pressure", sidecar: "wrong sidecar pressure" },
  }),
  "pad thickness": row({
    ...{ fine: 0.1, near: 1, doNotRide: true, wears: true, grows: 1, caution: "brakes", usual: LINING },
    specs: { front: "front pad limit", rear: "rear pad limit" },
    items: { front: "front-pads.measure", rear: "rear-pads.measure" },
    defects: { front: "worn front pads", rear: "worn rear pads", sidecar: "worn sidecar brake" },
  }),
  "shoe thickness": row({
    ...{ fine: 0.1, near: 1, doNotRide: true, wears: true, grows: 1, caution: "drum dust", usual: SHOE },
    specs: { front: "front shoe limit", rear: "rear shoe limit" },
    items: { front: "front-shoes.measure", rear: "rear-shoes.measure" },
    defects: { front: "worn front shoes", rear: "worn rear shoes", sidecar: "worn sidecar brake" },
  }),
  // It is looked at with its shoes; new ones do not put a drum right.
  "drum diameter": row({
    ...{ fine: 0.1, near: 0.3, doNotRide: true, caution: "drum dust" },
    specs: { front: "front drum limit", rear: "rear drum limit" },
    items: { front: "front-shoes.measure", rear: "rear-shoes.measure" },
    defects: { front: "worn front drum", rear: "worn rear drum" },
  }),
  "disc thickness": row({
    ...{ fine: 0.05, near: 0.2, doNotRide: true, wears: true, grows: 0.2, caution: "brakes" },
    specs: { front: "front disc limit", rear: "rear disc limit" },
    items: { front: "front-discs.measure", rear: "rear-discs.measure" },
    defects: { any: "worn disc" },
  }),
  // Out of true it pulses at the lever and wears to two thicknesses; which work sets it right is seen when it is off.
  "disc runout": row({
    ...{ fine: 0.02, near: 0.05, caution: "brakes", specs: { front: "front disc runout limit", rear: "rear disc runout limit" } },
    items: { front: "front-discs.measure", rear: "rear-discs.measure" },
  }),
  // Makers print a slack at which it is not ridden, some 20 mm beyond the window (common practice, from memory): it jumps off or catches.
  // With next to none, or less than half of what it needs, the suspension pulls it bar tight at each bump: bearings, the gearbox shaft and the chain itself give way (common practice, from memory).
  "chain slack": row({
    ...{ doNotRide: true, grave: { low: { at: 5, share: 0.5 }, high: { past: 20 } }, setRight: true, never: SOME_SLACK },
    defects: { low: "tight chain", high: "slack chain" },
    ...{ fine: 1, near: 2, around: 5, needs: [["upright", "on the side stand"]], strict: true, caution: "moving chain" },
    specs: { any: "chain slack" },
    items: { any: "chain.adjust" },
  }),
  "chain length": row({
    ...{ fine: 0.1, near: 1, doNotRide: true, wears: true, caution: "moving chain" },
    specs: { any: "chain length limit" },
    items: { any: "chain.replace" },
    defects: { any: "worn chain" },
  }),
  "chain elongation": row({
    ...{ fine: 0.1, doNotRide: true, wears: true, caution: "moving chain" },
    specs: { any: "chain length limit" },
    items: { any: "chain.replace" },
    defects: { any: "worn chain" },
  }),
  // Half as much again as the most that its maker allows: it jumps teeth under power or when the wheel is braked (common practice, from memory).
  "belt deflection": row({
    ...{ doNotRide: true, grave: { high: { share: 1.5 } }, setRight: true, defects: { high: "slack belt" }, caution: "moving belt" },
    ...{ fine: 0.5, near: 1, around: 1, needs: [["at force"]], strict: true },
    specs: { any: "belt deflection" },
    items: { any: "drive-belt.inspect" },
  }),
  "battery voltage": row({ fine: 0.01, needs: [["rested"]], caution: "battery", items: { any: "battery.test" } }),
  // From 15.5 V on, or 0.7 V beyond what its kind of battery bears, it is no setting that is a little off: the regulator has let go (common practice, from memory).
  "charging voltage": row({
    ...{ doNotRide: true, grave: { high: { at: 15.5, past: 0.7 } }, setRight: true, defects: { high: "overcharging" } },
    fine: 0.05,
    near: 0.1,
    around: 0.3,
    caution: "battery",
    specs: { any: "battery charging voltage" },
    items: { any: "battery.test" },
  }),
  "brake fluid level": level({
    fits: HAS_FLUID,
    ...{ doNotRide: true, grave: { low: {} } },
    caution: "brake fluid",
    items: { any: "brake-fluid.inspect" },
    defects: { front: "low front brake fluid", rear: "low rear brake fluid", any: "low brake fluid" },
  }),
  // By the class that is in it: `trade/fluids.ts`.
  "brake fluid boiling point": row({ ...{ fine: 1, near: 15, caution: "brake fluid" }, fits: HAS_FLUID, items: { any: "brake-fluid.replace" } }),
  "brake fluid water": row({ ...{ fine: 0.1, near: 1, caution: "brake fluid" }, fits: HAS_FLUID, items: { any: "brake-fluid.replace" } }),
  "clutch fluid level": level({
    fits: { clutch: ["hydraulic brake fluid", "hydraulic mineral oil"] },
    caution: "brake fluid",
    items: { any: "clutch-fluid.replace" },
  }),
  "oil level": level({
    ...{ doNotRide: true, grave: { low: {} }, setRight: true, caution: "hot" },
    items: { any: "engine-oil.inspect" },
    defects: { any: "low engine oil" },
  }),
  "coolant level": level({ fits: { cooling: ["liquid"] }, needs: [["cold"]], caution: "hot", items: { any: "coolant.inspect" } }),
  "coolant strength": row({ fine: 1, near: 3, caution: "hot", specs: { any: "coolant strength" }, items: { any: "coolant.replace" } }),
  // Against what the bike asks for in °C, by the table of ethylene glycol.
  "antifreeze share": row({ fine: 1, near: 3, caution: "hot", specs: { any: "coolant strength" }, items: { any: "coolant.replace" } }),
  "clutch free play": row({ never: SOME_PLAY, fine: 0.5, near: 1, around: 1, specs: { any: "clutch free play" }, items: { any: "clutch-free-play.adjust" } }),
  "throttle free play": row({
    ...{ never: SOME_PLAY, fine: 0.5, near: 0.5, around: 1, doNotRide: true, grave: { low: { at: 0.2 } }, setRight: true, caution: "throttle" },
    specs: { any: "throttle free play" },
    items: { any: "throttle-cable.adjust" },
    defects: { any: "no throttle play" },
  }),
  "brake free play": row({
    ...{ never: SOME_PLAY, fine: 1, near: 2, around: 3, caution: "brakes" },
    specs: { front: "front brake free play", rear: "rear brake free play" },
    items: { front: "front-drum.adjust", rear: "rear-drum.adjust" },
  }),
  "brake pedal height": row({ fine: 1, near: 1, around: 2, caution: "brakes", specs: { any: "brake pedal height" } }),
  "static sag": row({ fine: 1, near: 1, around: 3, specs: { front: "front static sag", rear: "rear static sag" } }),
  "rider sag": row({ fine: 1, near: 1, around: 3, specs: { front: "front rider sag", rear: "rear rider sag" } }),
  // At the tight end of the window an earlier look is offered: valves close up, and a tight one burns.
  "valve clearance": row({
    ...{ fine: 0.01, near: 0.02, around: 0.02, needs: [["cold"]], strict: true, sooner: "low" },
    specs: { intake: "intake valve clearance", exhaust: "exhaust valve clearance" },
    items: { any: "valve-clearance.adjust" },
  }),
  // Closed, the throttle starves the cylinder and a sound engine reads low.
  compression: row({ fine: 25, near: 50, needs: [["warm"], ["throttle open"]], strict: true, specs: { any: "compression" } }),
  "plug gap": row({ fine: 0.05, near: 0.05, around: 0.05, specs: { any: "spark plug gap" }, items: { any: "spark-plugs.replace" } }),
  "points gap": row({ fine: 0.02, near: 0.02, around: 0.05, specs: { any: "points gap" }, items: { any: "points.adjust" } }),
} as const satisfies Partial<Record<ReadingKind, JudgedRow>>;

export type JudgedKind = keyof typeof JUDGED;

/** What is measured in two ways is one thing: of both the later reading stands. */
export const SAME_AS: Partial<Record<ReadingKind, ReadingKind>> = { "chain elongation": "chain length", "antifreeze share": "coolant strength" };

/** Is this kind judged at all? */
export const isJudged = (kind: ReadingKind): kind is JudgedKind => kind in JUDGED;

/** The row of a kind, as every row may be read. */
export const judgedRow = (kind: JudgedKind): JudgedRow => JUDGED[kind];

/** Which end of the bike or the engine a place belongs to. */
export const endOf = (place: Place | null): End =>
  place === null
    ? "any"
    : place.startsWith("front")
      ? "front"
      : ((["rear", "sidecar", "intake", "exhaust"] as const).find((end) => place.startsWith(end)) ?? "any");
