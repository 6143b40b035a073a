// A chain's wear: how much longer it is than its pitches, in shares of the nominal length. Lengths in mm.

import { cannotTell, type Judgement, judge, type Unsettled } from "../judgement/verdict.ts";
import { toCanonical } from "../quantity/units.ts";

/** Nominal pitch by the size printed on the chain: its first digit is the pitch in eighths of an inch. Source: ISO 606, ANSI B29.1 (4xx 1/2 in, 5xx 5/8 in; 6xx 3/4 in from memory). */
export function pitchOf(size: string): number | null {
  const first = /^\s*(\d)\d{2}/u.exec(size)?.[1];
  return first === undefined || !EIGHTHS.includes(Number(first)) ? null : inEighths(Number(first));
}

const EIGHTHS: readonly number[] = [4, 5, 6];
const inEighths = (count: number): number => toCanonical(count / 8, "in");

/** The pitch that a length over so many pitches can only have: the nominal ones are a fifth and more apart, and no chain on a bike is longer by half a tenth. Null when none fits. */
export const pitchMeasured = (length: number, pitches: number): number | null =>
  EIGHTHS.map(inEighths).find((pitch) => Math.abs(elongation(length, pitches, pitch) - 0.02) < 0.03) ?? null;

/** The share that a printed longest length stands for. @param pitches over which it was measured: the manual's own, where that fits; null when no count fits */
export function ownLimit(longest: number, pitches: number, pitch: number): number | null {
  const counts = [pitches, Math.round(longest / pitch), Math.floor(longest / pitch)];
  return counts.map((count) => elongation(longest, count, pitch)).find(isLimit) ?? null;
}

/** Shares that a manual can print: published ones, widened. */
const isLimit = (share: number): boolean => share > 0.003 && share < 0.045;

/** No chain is shorter than new by more than its tolerance; none is half a tenth longer and still on. */
const isWorn = (share: number, most: number): boolean => share > -0.01 && share < most * 1.5;

/** The shares that a printed longest length may stand for: of each nominal pitch, by the pitches that the manual names, else by whatever count fits. @param pitch its own, where the chain's size is known */
export const ownLimits = (longest: number, pitches: number | null, pitch: number | null): readonly number[] =>
  (pitch === null ? EIGHTHS.map(inEighths) : [pitch]).flatMap((each) =>
    pitches === null ? (ownLimit(longest, Math.round(longest / each), each) ?? []) : [elongation(longest, pitches, each)].filter(isLimit),
  );

/** The count, one off, and the pitch that a length over so many pitches fits where it fits none by its own: null where none does, or several. @param pitch its own, where known */
export function otherCount(
  length: number,
  pitches: number,
  pitch: number | null,
  { most }: Pick<ElongationRule, "most">,
): { readonly pitches: number; readonly pitch: number } | null {
  const fits = (pitch === null ? EIGHTHS.map(inEighths) : [pitch]).flatMap((each) =>
    [pitches - 1, pitches + 1].flatMap((count) => (count > 0 && isWorn(elongation(length, count, each), most) ? [{ pitches: count, pitch: each }] : [])),
  );
  return fits.length === 1 ? (fits[0] ?? null) : null;
}

/** A value printed in per cent, such as "1.5 %" or "2 percent", or as both parts of a hundred, "50/50": its share; null where no per cent is typed. */
export function shareTyped(typed: string): number | null {
  const [part, rest] = (/^\s*(\d\d)\s*[/:]\s*(\d\d)(?!\d)\D*$/u.exec(typed) ?? []).slice(1).map(Number);
  if (part !== undefined && rest !== undefined && part + rest === 100) return part / 100;
  const figure = /^\D*?(\d{1,3}(?:[.,]\d{1,2})?)\s*(?:%|per\s?cent|prozent)\D*$/iu.exec(typed.normalize("NFKC"))?.[1];
  return figure === undefined ? null : Number(figure.replace(",", ".")) / 100;
}

/** A range printed in per cent, such as "40-60 %" or "40 to 60 percent", as shares; null where none is typed, or its ends are the wrong way round. */
export function shareRange(typed: string): readonly [least: number, most: number] | null {
  const found = /^\D*?(\d{1,2})\s*%?\s*(?:-|–|to|bis)\s*(\d{1,2})\s*(?:%|per\s?cent|prozent)\D*$/iu.exec(typed.normalize("NFKC"));
  const [least, most] = [Number(found?.[1]) / 100, Number(found?.[2]) / 100];
  return found !== null && least < most ? [least, most] : null;
}

/** How much longer than new: 0.01 is one per cent. N pitches lie between N + 1 pins. */
export const elongation = (length: number, pitches: number, pitch: number): number => length / (pitches * pitch) - 1;

/** How far it may go, as published: makers of chains and of bikes print from `least` to `most`. */
export type ElongationRule = { readonly least: number; readonly most: number; readonly fine: number; readonly source: string };

export type ChainWear = {
  readonly judgement: Judgement;
  readonly elongation: number;
  /** The length is that of one pitch fewer or one more: pins were counted instead of gaps, or the other way round. */
  readonly miscounted: boolean;
};

/** Beyond the least that its limit can be and short of the most: near its end, or past it. */
export const perhapsWorn = (longer: number, least: number, unsettled: Unsettled, source: string): Judgement => ({
  ...{ is: "near limit", side: "high", room: least - longer },
  limit: { min: null, max: least, near: least / 4, unsettled, source },
});

/**
 * Judges a length over so many pitches.
 * @param own the bike's own limit as a share; without one it is held against the least and the most of the published ones
 */
export function judgeElongation(length: number, pitches: number, pitch: number, own: number | null, rule: ElongationRule): ChainWear {
  const longer = elongation(length, pitches, pitch);
  // One pitch fewer of a worn one is shorter than a new chain; one pitch more is longer than any that is still on.
  const fits = (count: number): boolean => count > 0 && isWorn(elongation(length, count, pitch), rule.most);
  if (longer < -0.01) return { judgement: cannotTell("readings"), elongation: longer, miscounted: fits(pitches - 1) };
  if (longer >= rule.most * 1.5 && fits(pitches + 1)) return { judgement: cannotTell("readings"), elongation: longer, miscounted: true };
  const told = { elongation: longer, miscounted: false };
  if (own !== null) return { ...told, judgement: judge(longer, { min: null, max: own, near: own / 4, source: "" }, rule.fine) };
  if (longer >= rule.most - rule.fine / 2)
    return { ...told, judgement: judge(longer, { min: null, max: rule.most, near: null, source: rule.source }, rule.fine) };
  // From the least of the published limits on some chains are at their end: until its own limit is known it is judged no milder than a shorter one.
  if (longer >= rule.least - rule.fine / 2) return { ...told, judgement: perhapsWorn(longer, rule.least, { upTo: rule.most, lacks: "limit" }, rule.source) };
  return { ...told, judgement: judge(longer, { min: null, max: rule.least, near: rule.least / 4, source: rule.source }, rule.fine) };
}
