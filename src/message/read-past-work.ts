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

/** "Front 2021, rear last autumn": what is said of each end, the word for the end left out; null where no end is named. Two ends named at once share what follows. */
export function splitByEnd(text: string, { vocabulary }: Known): ReadonlyMap<"front" | "rear", string> | null {
  const { places } = vocabulary;
  const joins = vocabulary.and.filter((word) => /^\p{L}+$/u.test(word));
  const said = foldWord(text);
  // Behind a name of the place, "tyre" says nothing more.
  const words = [...said.matchAll(/[\p{L}\p{N}][\p{L}\p{N}'’]*/gu)].map(({ 0: word, index }) => ({ word, at: index, to: index + word.length }));
  const ends = words.flatMap(({ word, at, to }, n) => {
    const end = (["front", "rear"] as const).find((each) => word.length > 1 && places[each].includes(word));
    const next = words[n + 1];
    return end === undefined ? [] : [{ end, at, to: next !== undefined && isTyre(next.word) ? next.to : to }];
  });
  const [first] = ends;
  if (first === undefined || !isNothing(said.slice(0, first.at), joins)) return null;
  const pieces = ends.map(({ end, to }, n) => ({ end, text: text.slice(to, ends[n + 1]?.at ?? text.length) }));
  const told = new Map<"front" | "rear", string>();
  for (const [n, { end }] of pieces.entries()) {
    const own = pieces.slice(n).find((piece) => !isNothing(foldWord(piece.text), joins));
    if (told.has(end) || own === undefined) return null;
    told.set(end, trimmed(own.text, joins));
  }
  return told;
}

const isTyre = (word: string): boolean => /^(?:tyres?|tires?|reifen|one)$/u.test(word);
/** Without the marks and the "and" around what is said of one end. */
const trimmed = (text: string, joins: readonly string[]): string =>
  text
    .replace(/^[\s,;:/&=-]+/u, "")
    .replace(new RegExp(`[\\s,;:/&-]+(?:(?:${joins.join("|")})\\s*)?$`, "iu"), "")
    .trim();
const isNothing = (text: string, joins: readonly string[]): boolean => joins.includes(trimmed(text, []).trim()) || trimmed(text, joins) === "";
