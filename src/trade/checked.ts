// Which items a reading within limits counts for as looked at, and what it leaves open of others. An item that a reading does by itself, whatever it comes to, names that in `measuredBy`.

import type { JudgedKind } from "./judged.ts";
import type { StandardItemKey } from "./standard-items.ts";

/** Common practice: the figure is the whole of the check, once it is within the bike's own limits under the conditions that its measure needs. It renews nothing. */
export const CHECKED_BY = {
  "battery.test": "battery voltage",
  "clutch-free-play.adjust": "clutch free play",
  "throttle-cable.adjust": "throttle free play",
  "points.adjust": "points gap",
} as const satisfies Partial<Record<StandardItemKey, JudgedKind>>;

/** What the figure leaves open: how many valves there are nobody has said, a chain is checked with its sprockets, and a front brake may have two calipers. "new ones": the line is for renewing, which no figure does. */
export type CheckLacks = "every valve" | "other valves" | "sprockets" | "other side" | "new ones";

export const CHECKED_IN_PART = {
  "valve-clearance.adjust": { kinds: ["valve clearance"], lacks: "every valve" },
  "chain.measure": { kinds: ["chain length", "chain elongation"], lacks: "sprockets" },
  "spark-plugs.replace": { kinds: ["plug gap"], lacks: "new ones" },
} as const satisfies Partial<Record<StandardItemKey, { readonly kinds: readonly JudgedKind[]; readonly lacks: CheckLacks }>>;
