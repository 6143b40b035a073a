// What people type for each unit, in German, beside what is typed everywhere.

import type { UnitNames } from "../../core/quantity/parse.ts";
import { ENGLISH_UNIT_NAMES } from "../en/unit-names.ts";

const GERMAN: Partial<Record<keyof UnitNames, readonly string[]>> = {
  km: ["kilometern"],
  mi: ["meile", "meilen"],
  mm: ["millimetern"],
  in: ["zoll"],
  L: ["litern"],
  h: ["std", "std.", "stunden", "stunde", "betriebsstunden"],
  "°C": ["grad", "grad celsius", "grad c"],
  turn: ["umdrehung"],
};

export const GERMAN_UNIT_NAMES: UnitNames = Object.fromEntries(
  Object.entries(ENGLISH_UNIT_NAMES).map(([unit, names]) => [unit, [...names, ...(GERMAN[unit as keyof UnitNames] ?? [])]]),
) as unknown as UnitNames;
