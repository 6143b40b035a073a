// What is looked at again after which work. Common practice; each distance can be changed per bike, and the maker's manual has the last word.

import type { ItemKey } from "../core/ids.ts";
import type { Columns, PlanItem, System, WorkAction } from "../core/plan/plan.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import type { RecheckRule } from "../core/schedule/rechecks.ts";
import type { CautionKey } from "./cautions.ts";
import { PRACTICE } from "./items/row.ts";
import type { StandardItemKey } from "./standard-items.ts";

type Row = {
  readonly system: System;
  readonly action: WorkAction;
  readonly after: readonly StandardItemKey[];
  readonly outcomes: readonly Outcome[];
  /** Items whose work looks at the same: setting the slack of a new chain is the look at it. */
  readonly seenBy?: readonly StandardItemKey[];
  readonly distance: Columns;
  readonly minutes: number;
  readonly caution: CautionKey;
  readonly source: string;
};

const RENEWED = ["replaced", "done"] as const;
/** What came of a look; what asks for a look anew is no look at what was done before. */
const LOOKED = ["inspected, within limits", "inspected", "adjusted", "done"] as const;
const at = (miles: number, km: number): Columns => ({ miles, km });

export const RECHECKS = {
  "front-axle.look-again": {
    ...{ system: "wheels and tyres", action: "check tightness", after: ["front-tyre.replace"], outcomes: RENEWED },
    ...{ distance: at(50, 80), minutes: 10, caution: "fasteners", source: PRACTICE },
  },
  // A new chain or belt is set by moving the axle, which is loosened for it.
  "rear-axle.look-again": {
    ...{ system: "wheels and tyres", action: "check tightness", after: ["rear-tyre.replace", "chain.replace", "drive-belt.replace"], outcomes: RENEWED },
    ...{ distance: at(50, 80), minutes: 10, caution: "fasteners", source: PRACTICE },
  },
  "new-chain.look-again": {
    ...{ system: "final drive", action: "adjust", after: ["chain.replace"], outcomes: RENEWED },
    ...{ seenBy: ["chain.adjust"], distance: at(300, 500), minutes: 20, caution: "moving chain", source: PRACTICE },
  },
  "new-belt.look-again": {
    ...{ system: "final drive", action: "measure", after: ["drive-belt.replace"], outcomes: RENEWED },
    ...{ distance: at(500, 800), minutes: 15, caution: "fasteners", source: PRACTICE },
  },
  // A cable that was only adjusted has bedded in; one that is new stretches.
  "new-throttle-cable.look-again": {
    ...{ system: "controls", action: "adjust", after: ["throttle-cable.adjust"], outcomes: ["replaced"] },
    ...{ seenBy: ["throttle-cable.adjust"], distance: at(300, 500), minutes: 15, caution: "throttle", source: PRACTICE },
  },
  "new-clutch-cable.look-again": {
    ...{ system: "clutch and gearbox", action: "adjust", after: ["clutch-free-play.adjust"], outcomes: ["replaced"] },
    ...{ seenBy: ["clutch-free-play.adjust"], distance: at(300, 500), minutes: 10, caution: "fasteners", source: PRACTICE },
  },
  "trued-spokes.look-again": {
    ...{ system: "wheels and tyres", action: "check tightness", after: ["spokes.check"], outcomes: ["adjusted", "replaced"] },
    ...{ seenBy: ["spokes.check"], distance: at(150, 250), minutes: 30, caution: "lifting", source: PRACTICE },
  },
  "new-front-pads.look-again": {
    ...{ system: "brakes", action: "inspect", after: ["front-pads.measure", "front-shoes.measure"], outcomes: ["replaced"] },
    ...{ distance: at(200, 300), minutes: 10, caution: "brakes", source: PRACTICE },
  },
  "new-rear-pads.look-again": {
    ...{ system: "brakes", action: "inspect", after: ["rear-pads.measure", "rear-shoes.measure"], outcomes: ["replaced"] },
    ...{ distance: at(200, 300), minutes: 10, caution: "brakes", source: PRACTICE },
  },
} as const satisfies Record<string, Row>;

export type RecheckKey = keyof typeof RECHECKS;

const NO_LEGS = { miles: null, km: null, months: null, hours: null } as const;
/** Beyond it the look is of no more use than the next service. Common practice. */
const LAPSES = at(1000, 1600);

const itemOf = (key: string, row: Row): PlanItem => ({
  ...{ key: key as ItemKey, called: null, system: row.system, action: row.action, anchor: "last done", first: null },
  ...{ repeat: { by: "interval", every: NO_LEGS }, parked: "pauses", noLateWindow: false, shortened: {}, measuredBy: null, covers: [], fits: {} },
  ...{ engine: "any", position: "any", minutes: row.minutes, caution: row.caution, firstOnUsedBike: null, source: row.source },
});

/** The rules of the house, in the order of the table. */
export const RECHECK_RULES: readonly RecheckRule[] = Object.entries(RECHECKS as Readonly<Record<string, Row>>).map(([key, row]) => ({
  item: itemOf(key, row),
  after: row.after.map((item) => ({ item: item as string as ItemKey, outcomes: row.outcomes })),
  seenBy: (row.seenBy ?? []).map((item) => ({ item: item as string as ItemKey, outcomes: LOOKED })),
  distance: row.distance,
  lapses: LAPSES,
}));
