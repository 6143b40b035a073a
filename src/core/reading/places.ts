// Where on a bike a reading can be taken.

/** A brake's caliper that was not named more closely is "front": what was said is kept, and no side is guessed. */
export type Place =
  | "front"
  | "rear"
  | "sidecar"
  | "front left"
  | "front right"
  | "intake"
  | "exhaust"
  | `cylinder ${number}`
  | `intake ${number}`
  | `exhaust ${number}`;

export const ENDS = ["front", "rear"] as const satisfies readonly Place[];
export const TYRES = ["front", "rear", "sidecar"] as const satisfies readonly Place[];
export const CALIPERS = ["front", "rear", "front left", "front right"] as const satisfies readonly Place[];
export const LININGS = [...CALIPERS, "sidecar"] as const satisfies readonly Place[];
const MOST_CYLINDERS = 6;
const MOST_VALVES = 12;
const numbered = <T extends string>(name: T, most: number): readonly `${T} ${number}`[] =>
  Array.from({ length: most }, (_, n) => `${name} ${n + 1}` as `${T} ${number}`);
export const CYLINDERS: readonly Place[] = numbered("cylinder", MOST_CYLINDERS);
/** Counted along the engine as the member counts: intake 1, intake 2, exhaust 1... */
export const VALVES: readonly Place[] = ["intake", "exhaust", ...numbered("intake", MOST_VALVES), ...numbered("exhaust", MOST_VALVES)];
