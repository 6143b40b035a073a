// Names of plan items, and the phrases that find them.

import { CHARGED } from "../../core/battery/charged.ts";
import type { Outcome } from "../../core/schedule/facts.ts";
import { TYRES_FITTED } from "../../core/schedule/tyre-sets.ts";
import { ENGLISH_ITEMS } from "./items.ts";
import { ENGLISH_RECHECKS } from "./rechecks.ts";
import { refitName } from "./refit.ts";

type Row = { readonly name: string; readonly renewed?: string; readonly synonyms: readonly string[] };
const ROWS: Readonly<Record<string, Row>> = { ...ENGLISH_ITEMS, ...ENGLISH_RECHECKS };

/** A plan item's name: the member's own words, else the standard ones. */
export const englishItemName = (key: string, called: string | null): string =>
  key === TYRES_FITTED ? `Tyres fitted: ${called}` : key === CHARGED ? "Battery charge" : (called ?? ROWS[key]?.name ?? refitName(key) ?? key);

/** What a record says was done: a new tyre, where the plan speaks of the tyre's age. */
export const englishWorkName = (key: string, called: string | null, outcome: Outcome): string =>
  (outcome === "replaced" && called === null ? ROWS[key]?.renewed : undefined) ?? englishItemName(key, called);

/** What people type for each standard item, its own name first. */
export const ENGLISH_ITEM_SYNONYMS: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  Object.entries(ROWS).map(([key, row]) => [key, [row.name.toLowerCase(), ...row.synonyms]]),
);
