// Local dates, zones and instants as types. The arithmetic is in `arithmetic.ts` and `zones.ts`.

import type { Brand } from "../brand.ts";

/** A calendar day where the bike lives, `2026-11-25`. Text order is date order. */
export type LocalDate = Brand<string, "local date">;
/** An IANA time-zone name, `Europe/Berlin`. */
export type Zone = Brand<string, "zone">;
/** A moment, exactly `2026-11-25T08:59:45.000Z` (24 characters). Text order is time order. */
export type Instant = Brand<string, "instant">;
/** A wall-clock time, `09:00`. */
export type LocalTime = Brand<string, "local time">;

/** A date as vague as the truth: the span it may lie in, both ends included, and what was typed. One day when `from` equals `to`. */
export type VagueDate = { readonly from: LocalDate; readonly to: LocalDate; readonly typed: string };
