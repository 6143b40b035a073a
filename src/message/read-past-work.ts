// "Spring 2023 at 9,800, receipt": when a job was done, at what figure, and how the member knows.

import type { VagueDate } from "../core/calendar/dates.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { RecordWork } from "../core/reading/intent.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { HOW_WE_KNOW, type HowWeKnow } from "../core/schedule/facts.ts";
import { among } from "./among.ts";
import { readDial } from "./read-dial.ts";
import { readVagueDate } from "./read-vague-date.ts";
import { foldWord } from "./scan.ts";

export type PastWork = { readonly on: VagueDate | null; readonly odometer: RecordWork["odometer"]; readonly how: HowWeKnow | null };

/** "unknown" when the text says so; null when some part of it is not understood, so that nothing is passed over. */
export function readPastWork(text: string, known: Known, unit: DistanceUnit): PastWork | "unknown" | null {
  // "2 years ago or so": how sure it is changes nothing about a day that is vague anyway.
  const said = text.trim().replace(/[.!]+$/u, "");
  const hedge = known.vocabulary.roughly.find((each) => foldWord(said).endsWith(` ${each}`) || foldWord(said).endsWith(`,${each}`));
  const hedged = hedge === undefined ? text : said.slice(0, -hedge.length).replace(/[\s,]+$/u, "");
  if (hedged.trim() !== "" && hedged !== text) return readPastWork(hedged, known, unit);
  if (among(known.vocabulary.unknown, foldWord(text.trim()).replace(/[.!]+$/u, ""))) return "unknown";
  let on: VagueDate | null = null;
  let odometer: RecordWork["odometer"] = null;
  let how: HowWeKnow | null = null;
  // Parts stand behind commas or "at"; a comma between three digits belongs to a figure.
  for (const part of text
    .split(/,(?!\d{3})|;|\bat\b|@|\n/iu)
    .map((each) => each.trim())
    .filter((each) => each !== "")) {
    const said = HOW_WE_KNOW.find((each) => [each, ...known.vocabulary.how[each]].includes(foldWord(part)));
    const date: VagueDate | "unknown" | null = on === null ? readVagueDate(part, known) : null;
    if (said !== undefined) how = said;
    else if (date !== null && date !== "unknown") on = date;
    else {
      const dial = readDial(part, known, unit);
      if (dial === null || odometer !== null) return null;
      odometer = { value: dial.value, unit: dial.unit, typed: { text: part, unit: dial.unitTyped ? dial.unit : null } };
    }
  }
  return on === null && odometer === null ? null : { on, odometer, how };
}
