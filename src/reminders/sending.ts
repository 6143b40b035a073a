// What sending needs besides the store: the moment, the way to a member, and their words.

import type { Group, Member } from "../core/bike.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { Words } from "../words/en/english.ts";
import type { Deliver } from "./deliver.ts";

export type Sending = {
  /** The moment it is: a tick's own stands still while it sends. */
  readonly clock: () => Instant;
  readonly deliver: Deliver;
  /** Words for a member in their own place, or for a group's channel. */
  readonly wordsFor: (member: Member | null, home: Group | null, today: LocalDate) => Words;
  readonly itemName: (key: string, called: string | null) => string;
  /** For the operator. */
  readonly log: { readonly error: (facts: Readonly<Record<string, unknown>>, what: string) => void };
};
