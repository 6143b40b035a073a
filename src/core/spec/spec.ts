// A spec: a value, a window or words from a manual, with its source. And which of several stands where members differ.
// Not here: the keys (trade/spec-keys), the sentences (words/), wear judged by a spec (wear/).

import { forceIn, sameForce } from "../belt/force.ts";
import type { Instant } from "../calendar/dates.ts";
import { standIn } from "../chain/stand.ts";
import type { BikeId, MemberId } from "../ids.ts";
import { dimensionOf, type UnitId } from "../quantity/units.ts";

/** What some specs differ by: tyre pressures and sag are printed for each. */
export const SPEC_USES = ["solo", "two-up", "loaded"] as const;
export type SpecUse = (typeof SPEC_USES)[number];

/** A figure in the canonical unit of its dimension; an end that is open is null, both are the same for a single value. Beside it what was typed, in its unit. */
export type SpecFigure = {
  readonly is: "figure";
  readonly low: number | null;
  readonly high: number | null;
  /** The value itself where a tolerance was given. */
  readonly nominal: number | null;
  readonly unit: UnitId;
  /** What the last digit typed is worth, in `unit`. */
  readonly step: number;
};
export type SpecHolds = SpecFigure | { readonly is: "words" };

/** Where a value comes from. Null: the member's word, no more. */
export type SpecSource = { readonly manual: string; readonly edition: string | null; readonly page: string | null };

/** One spec as one member entered it for one bike. `key`: a row of trade/spec-keys. */
export type Spec = {
  readonly id: string;
  readonly rev: number;
  readonly bike: BikeId;
  readonly key: string;
  /** Null where a key has no loads, or none was named: such a figure counts for riding solo, since that is what is printed first. */
  readonly use: SpecUse | null;
  readonly holds: SpecHolds;
  /** To the letter. */
  readonly typed: string;
  readonly source: SpecSource | null;
  readonly by: MemberId;
  readonly at: Instant;
};

/** What is known of one key. "one": this is it, `others` say otherwise with less behind them. "several": members differ, and nothing settles it. */
export type Settled =
  | { readonly is: "none" }
  | { readonly is: "one"; readonly spec: Spec; readonly others: readonly Spec[] }
  | { readonly is: "several"; readonly specs: readonly Spec[] };

/**
 * Which of several specs of one key stands. A named page of a manual goes before a manual without one, and that before a member's word; values that agree are one. Of two named pages the one looked at again counts.
 * @param specs of one bike and those shared with it @param use null: what was entered with no load named
 * @param byPage only a named page settles a difference (pressures, brakes, axles); else the bike's own entry goes first
 */
export function settledSpec(specs: readonly Spec[], key: string, use: SpecUse | null, bike: BikeId, byPage: boolean): Settled {
  const ofKey = specs.filter((spec) => spec.key === key);
  const exact = ofKey.filter((spec) => spec.use === use);
  // "Front tyre pressure two-up" is never answered by the one for riding solo, nor by one with no load named: plates print more for two.
  const fitting = exact.length > 0 || use !== "solo" ? exact : ofKey.filter((spec) => spec.use === null);
  const ranked = [...fitting].sort((a, b) => weight(b) - weight(a) || Number(b.bike === bike) - Number(a.bike === bike) || (a.at < b.at ? 1 : -1));
  const [best] = ranked;
  if (best === undefined) return { is: "none" };
  const differing = ranked.filter((spec) => !isSame(spec, best));
  if (differing.length === 0) return { is: "one", spec: best, others: [] };
  const rivals = differing.filter((spec) => weight(spec) === weight(best));
  const looked = lookedAgain([best, ...rivals]);
  if (looked !== null) return { is: "one", spec: looked, others: ranked.filter((spec) => !isSame(spec, looked)) };
  const settles = byPage ? rivals.length === 0 && hasPage(best) : rivals.length === 0 || best.bike === bike;
  return settles ? { is: "one", spec: best, others: differing } : { is: "several", specs: [best, ...differing] };
}

/** Of differing entries that each name a page: the one that was entered anew with its page after all the others were there. Whoever does that has looked at the page again. */
function lookedAgain(rivals: readonly Spec[]): Spec | null {
  const [latest, ...before] = [...rivals].sort((a, b) => (a.at < b.at ? 1 : -1));
  if (latest === undefined || before.length === 0 || latest.rev < 2 || !rivals.every(hasPage)) return null;
  return before.every(({ at }) => at < latest.at) ? latest : null;
}

/** Is a page of a manual named? */
export const hasPage = (spec: Pick<Spec, "source">): boolean => spec.source?.page !== null && spec.source !== null;
const weight = (spec: Spec): number => (hasPage(spec) ? 2 : spec.source === null ? 0 : 1);

/** Do two specs say the same? Figures are compared as printed: 36 psi and 2.48 bar differ by less than the last digit of the coarser. */
export function isSame(a: Spec, b: Spec): boolean {
  if (a.holds.is === "words" || b.holds.is === "words") return a.holds.is === b.holds.is && folded(a.typed) === folded(b.typed);
  return near(a.holds.low, b.holds.low) && near(a.holds.high, b.holds.high) && isAtOneForce(a, b) && isOnOneStand(a, b);
}
/** A deflection at another force is another figure; where only one names a force, it may be the other's too. */
function isAtOneForce(a: Spec, b: Spec): boolean {
  const [one, other] = [a, b].map(({ holds, typed }) => (holds.is === "figure" && dimensionOf(holds.unit) === "length" ? forceIn(typed) : null));
  return one == null || other == null || sameForce(one.newtons, other.newtons);
}
/** A slack on another stand is another figure; where only one names a stand, it may be the other's too. */
function isOnOneStand(a: Spec, b: Spec): boolean {
  const [one, other] = [a, b].map(({ holds, typed }) => (holds.is === "figure" && dimensionOf(holds.unit) === "length" ? standIn(typed) : null));
  return one == null || other == null || one === other;
}
/** Half a percent: a figure printed in two units is rounded in one of them. */
const AS_PRINTED = 0.005;
const near = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a === b : Math.abs(a - b) <= AS_PRINTED * Math.max(Math.abs(a), Math.abs(b));
const folded = (words: string): string =>
  words
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s-]+/gu, " ")
    .trim();

/** Bikes of one make and model share their specs within a group: the words under which models are compared. */
export const modelKey = (model: string): string =>
  model
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
