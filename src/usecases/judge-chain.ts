// A chain's wear against the limit of its own manual, else against what every published limit says: read as a length over some pitches, or in per cent.

import { elongation, judgeElongation, otherCount, ownLimit, ownLimits, perhapsWorn, pitchMeasured, pitchOf } from "../core/chain/elongation.ts";
import { pitchesIn } from "../core/chain/pitches.ts";
import { callsForWork, cannotTell, type Judgement, judge, type Limit } from "../core/judgement/verdict.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { ELONGATION } from "../trade/chain.ts";
import type { JudgedRow } from "../trade/judged.ts";
import { type Figure, figureOf, shareOf } from "./figures.ts";
import type { Found, Rig } from "./judged.ts";
import { specFor } from "./specs.ts";

/** A manual's own length is over the pitches that it counts: where those are not known, only a reading of about that length can be held against it. Share. */
const ABOUT = 0.04;

/** @param own the longest length that its manual prints, null where none is entered */
export function chainLength({ value, detail }: Taken, own: Figure | null, row: JudgedRow, rig: Rig): Found {
  const pitches = detail?.pitches;
  const pitch = pitchOn(rig) ?? (pitches === undefined ? null : pitchMeasured(value, pitches));
  const printed = own === null ? shareOf(rig) : null;
  const most = own?.high ?? null;
  const counted = own === null ? null : pitchesIn(own.typed);
  const shares = (over: number, of: number): number | null => printed?.share ?? (most === null ? null : ownLimit(most, counted ?? over, of));
  const by = printed === null ? {} : { by: "spec" as const };
  const source = own?.source ?? printed?.source ?? null;
  if (pitches !== undefined && pitch !== null) {
    const wear = judgeElongation(value, pitches, pitch, shares(pitches, pitch), ELONGATION);
    const other = wear.miscounted ? otherCount(value, pitches, pitch, ELONGATION) : null;
    if (other !== null) return miscounted(value, other, shares(other.pitches, other.pitch), by);
    const more = { share: wear.elongation, miscounted: wear.miscounted, ...by };
    return { judgement: inLength(wear.judgement, pitches * pitch, source), more };
  }
  const inOwn = (): Judgement => judge(value, { min: null, max: most, near: row.near, source: own?.source ?? "" }, row.fine);
  if (pitches === undefined) return { judgement: most !== null && Math.abs(value / most - 1) < ABOUT ? inOwn() : cannotTell("pitch") };
  // No chain has that length over so many pitches: one more or one fewer was counted, or its manual's own length is of such a chain too.
  if (most !== null && (counted === null || counted === pitches) && Math.abs(value / most - 1) < ABOUT) return { judgement: inOwn() };
  const other = otherCount(value, pitches, null, ELONGATION);
  return other === null ? { judgement: cannotTell("no such chain") } : miscounted(value, other, shares(other.pitches, other.pitch), by);
}

/** What it comes to by the count that fits: nothing is sure before it is counted again, but nobody rides off on a doubt. */
function miscounted(value: number, { pitches, pitch }: { readonly pitches: number; readonly pitch: number }, limit: number | null, by: Found["more"]): Found {
  const judgement = judgeElongation(value, pitches, pitch, limit, ELONGATION).judgement;
  const ifSo = callsForWork(judgement) ? { judgement, doNotRide: true } : null;
  return { judgement: cannotTell("readings"), more: { share: elongation(value, pitches, pitch), miscounted: true, ifSo, ...by } };
}

/** Shares are judged; a rider holds the rule against a length. */
function inLength(judgement: Judgement, whole: number, source: string | null): Judgement {
  if (judgement.is === "cannot tell") return judgement;
  const { limit, room } = judgement;
  const long = (share: number): number => whole * (1 + share);
  const inMm: Limit = {
    min: null,
    max: limit.max === null ? null : long(limit.max),
    near: limit.near === null ? null : limit.near * whole,
    ...(limit.unsettled === undefined ? {} : { unsettled: { ...limit.unsettled, upTo: long(limit.unsettled.upTo) } }),
    source: source ?? limit.source,
  };
  return { ...judgement, room: room === null ? null : room * whole, limit: inMm };
}

/** Per cent, read off a gauge or worked out by the member: held against the same limits as a length. */
export function chainElongation(value: number, rig: Rig): Found {
  const limits = chainLimits(rig);
  const judgement = byShare(value / 100, limits?.shares ?? null);
  const own = limits === null || limits.shares.length === 0 ? null : limits;
  const more = { share: value / 100, by: own === null ? ("practice" as const) : ("spec" as const) };
  if (judgement.is === "cannot tell") return { judgement, more };
  const percent = (share: number | null): number | null => (share === null ? null : share * 100);
  const { limit, room } = judgement;
  const inPercent: Limit = {
    ...{ min: null, max: percent(limit.max), near: percent(limit.near) },
    ...(limit.unsettled === undefined ? {} : { unsettled: { ...limit.unsettled, upTo: limit.unsettled.upTo * 100 } }),
    source: own?.source ?? limit.source,
  };
  return { judgement: { ...judgement, room: percent(room), limit: inPercent }, more };
}

/** @param shares what its own limit may stand for: told where it comes to the same by each; null where it has none */
function byShare(share: number, shares: readonly number[] | null): Judgement {
  const of = (limit: number | null): Judgement => judgeElongation(1 + share, 1, 1, limit, ELONGATION).judgement;
  if (shares === null) return of(null);
  // A length that fits no chain of its size says nothing, and what is long by the published limits is.
  if (shares.length === 0) return of(null).is === "within" ? cannotTell("chain size") : of(null);
  const [least, most] = [Math.min(...shares), Math.max(...shares)];
  const [strictest, widest] = [of(least), of(most)];
  if (callsForWork(widest)) return widest;
  if (!callsForWork(strictest)) return strictest;
  return perhapsWorn(share, least, { upTo: most, lacks: "chain size" }, "");
}

/** A share that was typed, held against the bike's own limit, else against what every published one says. */
export const judgeShare = (share: number, rig: Rig): Judgement => byShare(share, chainLimits(rig)?.shares ?? null);

const pitchOn = (rig: Rig): number | null => {
  const size = specFor(rig.specs, rig.bike, "chain size");
  return size.is === "one" ? pitchOf(size.spec.typed) : null;
};

/** How far a chain may go by its bike's manual: printed as a share, or as a length over pitches that its size or the manual names. Several shares where a length may be that of several chains, none where it is that of no such chain; null where nothing is entered. */
function chainLimits(rig: Rig): { readonly shares: readonly number[]; readonly source: string } | null {
  const printed = shareOf(rig);
  if (printed !== null) return { shares: [printed.share], source: printed.source };
  const longest = figureOf(rig, "chain length limit", null);
  if (longest === null || longest.high === null) return null;
  const shares = ownLimits(longest.high, pitchesIn(longest.typed), pitchOn(rig));
  return { shares, source: longest.source };
}
