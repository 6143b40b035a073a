// Something found wrong with a bike, by a check, by a measured value or by a plain message; open until work closes it, or its noter says it was nothing.
// Not here: which words name which defect (words/), nor what may be said of it (trade/defects.ts).

import type { Instant, LocalDate } from "./calendar/dates.ts";
import type { BikeId, MemberId } from "./ids.ts";
import type { Dial } from "./quantity/distance.ts";

/** How bad it is, by the member's own word. */
export const GRADES = ["do not ride", "watch"] as const;
export type Grade = (typeof GRADES)[number];

export const FOUND_BY = ["message", "check", "verdict"] as const;
export type FoundBy = (typeof FOUND_BY)[number];

/** One defect in one revision, as readings and work are kept: nothing is overwritten. */
export type Defect = {
  readonly id: string;
  readonly rev: number;
  /** Closed by work or as nothing; withdrawn when the noting itself was taken back. */
  readonly state: "open" | "closed" | "withdrawn";
  readonly bike: BikeId;
  /** Key of a row of trade/defects.ts; null when the words name none. */
  readonly kind: string | null;
  /** What was found, as typed. */
  readonly words: string;
  /** Null until it is graded. */
  readonly grade: Grade | null;
  /** The day on which it was found. */
  readonly on: LocalDate;
  /** What the dial showed; null when it was not said. */
  readonly dial: Dial | null;
  readonly from: FoundBy;
  /** Id of the work record that closed it. */
  readonly closedBy: string | null;
  /** Why it was closed without work. */
  readonly closedBecause: string | null;
  /** The message, command or check that it came from, and its place in it. */
  readonly message: string | null;
  readonly ordinal: number;
  readonly loggedAt: Instant;
  readonly by: MemberId;
  readonly at: Instant;
  readonly why: string | null;
};

const RANK = { "do not ride": 0, ungraded: 1, watch: 2 } as const;

/** Do not ride first, then what is not graded yet, then what is watched; the oldest of each first. */
export const worstFirst = (a: Defect, b: Defect): number =>
  RANK[a.grade ?? "ungraded"] - RANK[b.grade ?? "ungraded"] || (a.on < b.on ? -1 : a.on > b.on ? 1 : 0) || (a.loggedAt < b.loggedAt ? -1 : 1);
