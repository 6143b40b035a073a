// What was read near its limit is looked at again long before the plan comes round: how soon, by kind.

import type { SoonAgain } from "../core/schedule/facts.ts";
import type { JudgedKind } from "./judged.ts";

/** Common practice: what is worn nearly down, or set to the very end of its window, is looked at every tank or two, and each month at least. */
const USUAL: SoonAgain = { far: { mi: 500, km: 800 }, days: 30 };

/** Common practice: a battery that is rather low is charged and read again within two weeks; it loses its charge standing as well as ridden. */
export const BATTERY_AGAIN = { far: null, days: 14 } as const satisfies SoonAgain;

/** Common practice: what moves slowly, and is opened up or drawn off to be read, is looked at twice as often as the plan asks. */
const SLOW: readonly JudgedKind[] = ["valve clearance", "plug gap", "coolant strength", "antifreeze share", "compression"];

/** How soon a reading of this kind that is near its limit is taken again, where no wear line tells. */
export const soonAgain = (kind: JudgedKind): SoonAgain => (SLOW.includes(kind) ? "twice as often" : kind === "battery voltage" ? BATTERY_AGAIN : USUAL);
