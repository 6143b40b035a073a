// Specs in words of which a standard says what there is: a class that no standard knows is a slip.

import { FLUID_CLASSES } from "./fluids.ts";
import { HOT_GRADES, WINTER_GRADES } from "./oil-grades.ts";
import type { SpecKey } from "./spec-keys.ts";

/** A class by its number: "DOT 4", "dot5.1". */
const fluidsIn = (typed: string): readonly string[] =>
  [...typed.matchAll(/\bdot\s*-?\s*(\d+(?:[.,]\d+)?)/giu)].map(([, n = ""]) => `DOT ${n.replace(",", ".")}`);
/** A grade for all seasons: "10W-40", "20 w 50". */
const gradesIn = (typed: string): readonly (readonly [string, string])[] =>
  [...typed.matchAll(/\b(\d+)\s*w\s*[-/]?\s*(\d+)\b/giu)].map(([, winter = "", hot = ""]) => [`${Number(winter)}W`, hot] as const);

/** Do the words name a class of fluid or a grade of engine oil that does not exist? What names none is kept as words. */
export function unknownClass(key: SpecKey, typed: string): boolean {
  if (key === "brake fluid" || key === "clutch fluid") return fluidsIn(typed).some((named) => !(named in FLUID_CLASSES));
  if (key !== "engine oil grade") return false;
  return gradesIn(typed).some(([winter, hot]) => !(winter in WINTER_GRADES) || !(hot in HOT_GRADES));
}
