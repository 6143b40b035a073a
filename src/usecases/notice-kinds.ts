// Every kind of notice: what switches it, when it comes, how often again, and why one is dropped untold.

import type { NoticeKind, Topic } from "../core/reminding.ts";

export type KindRow = {
  readonly topic: Topic;
  /** "weekly": in the member's week's window. "daily": at their hour of the next day, since it cannot wait. */
  readonly when: "weekly" | "daily";
  /** Also of a bike laid up. "ageing": only what counts on while it stands. */
  readonly standing: "yes" | "no" | "ageing";
  /** Never in a channel. */
  readonly alone: boolean;
  /** Weeks from one telling to the next while it stays so; the last goes on. Empty: told once. */
  readonly again: readonly number[];
  /** Why one is dropped that was not told in time. Until then it lives: nothing is told because it once was so. */
  readonly dropped: string;
};

/** After 1 week, 2 weeks and 4 weeks, then every 4 weeks. */
const GROWING = [1, 2, 4] as const;

export const NOTICE_KINDS = {
  "item soon": { topic: "services", when: "weekly", standing: "ageing", alone: false, again: [], dropped: "done, put off or further on before it was told" },
  "item due": { topic: "services", when: "weekly", standing: "ageing", alone: false, again: [], dropped: "done, put off or further on before it was told" },
  "item overdue": { topic: "services", when: "weekly", standing: "no", alone: false, again: GROWING, dropped: "done or put off before it was told" },
  "look again": { topic: "looks again", when: "daily", standing: "no", alone: false, again: GROWING, dropped: "looked at before it was told" },
  defect: { topic: "defects", when: "daily", standing: "no", alone: true, again: GROWING, dropped: "mended or graded otherwise before it was told" },
  season: { topic: "season", when: "weekly", standing: "yes", alone: false, again: [], dropped: "the list was done or the season went by before it was told" },
  date: { topic: "dates", when: "weekly", standing: "yes", alone: false, again: [], dropped: "taken off, moved or past before it was told" },
  charge: { topic: "charging", when: "weekly", standing: "yes", alone: false, again: [], dropped: "measured, or taken out, before it was told" },
  reading: { topic: "readings", when: "weekly", standing: "no", alone: false, again: [], dropped: "read before it was asked" },
  "trip ahead": { topic: "trips", when: "daily", standing: "no", alone: false, again: [], dropped: "called off, moved or begun before it was told" },
  "trip back": { topic: "trips", when: "daily", standing: "no", alone: false, again: [], dropped: "read, or long past, before it was told" },
  /** What was noted by an earlier release beside the plan. */
  aside: { topic: "season", when: "weekly", standing: "yes", alone: false, again: [], dropped: "no longer so when it was to be told" },
} as const satisfies Readonly<Record<NoticeKind, KindRow>>;

/** In a name: between that of the first telling and how often it was told since. */
export const AGAIN = "+";

export const kindRow = (kind: NoticeKind): KindRow => NOTICE_KINDS[kind];
