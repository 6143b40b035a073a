// A day or a span that a text names.

import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";

/** A date at tokens `from` to `to` (both included); several when the figures can be read two ways, a span when no day was named. */
export type Dated = {
  readonly options: readonly LocalDate[];
  readonly span: VagueDate | null;
  readonly typed: string;
  readonly from: number;
  readonly to: number;
  /** The only day it can be, and a strange one: it is asked. */
  readonly unsure?: true;
};
