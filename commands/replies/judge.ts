// Judged readings as lines: each its verdict and what to do; what only lacks the manual's figures shares one line.

import type { Action } from "../../src/chat/reply.ts";
import { callsForWork } from "../../src/core/judgement/verdict.ts";
import { unevenChains, unevenPads } from "../../src/usecases/judge.ts";
import type { Judged, JudgedOn } from "../../src/usecases/judged.ts";
import { TREAD_PLACES } from "../../src/usecases/settings.ts";
import { BY_THE_BARS, lawsBroken } from "../../src/usecases/tread-limit.ts";
import type { Words } from "../../src/words/en/english.ts";
import { press } from "./said.ts";

/** Asked for what it lacks only at its first reading, or where it is looked at by itself; a figure of the manual at the first of a day, and named shortly after that. */
type Line = Judged & Partial<Pick<JudgedOn, "first">>;

export function judgedLines(judged: readonly Line[], words: Words): string[] {
  // How much longer a chain is can be told without.
  const lacking = judged.filter(
    ({ judgement, miscounted, share }) => judgement.is === "cannot tell" && judgement.missing[0] === "limit" && !miscounted && share === null,
  );
  const lines = judged.filter((each) => !lacking.includes(each)).map((each) => words.judge.line(each));
  const asked = lacking.filter(({ first }) => first !== false);
  if (asked.length > 0) lines.push(words.judge.lacking(asked));
  const known = lacking.filter(({ first }) => first === false);
  if (known.length > 0) lines.push(words.judge.stillLacking(known));
  // How it is measured, with the first of a kind that lacks how it was.
  const unsaid = judged.filter(
    ({ judgement, first, miscounted }) =>
      judgement.is === "cannot tell" && !["limit", "fitted"].includes(judgement.missing[0] ?? "") && first !== false && !miscounted,
  );
  const isWarm = ({ judgement }: Line): boolean =>
    judgement.is === "cannot tell" && judgement.missing.some((each) => each === "temperature" || each === "warmed");
  for (const [n, each] of unsaid.entries())
    if (unsaid.findIndex(({ kind }) => kind === each.kind) === n) lines.push(words.judge.howTo(each.kind, isWarm(each)));
  lines.push(...unevenPads(judged).map(words.judge.uneven), ...unevenChains(judged).map(words.judge.unevenChain));
  const asking = (whose: Judged["by"]): Line[] => judged.filter(({ by, first }) => by === whose && first !== false);
  const limits = (those: readonly Line[]) => those.flatMap(({ spec }) => spec ?? []);
  if (asking("bars").length > 0) lines.push(words.judge.unknownPlace(limits(asking("bars"))));
  if (asking("bars, no group").length > 0) lines.push(words.judge.noGroup(limits(asking("bars, no group"))));
  // Where nobody knows the law, what it may ask for is told with each tread that would break one.
  const broken = judged.filter(({ kind, by }) => kind === "tread" && isUnknown(by)).flatMap((each) => (lawsBroken(each.value).length > 0 ? [each] : []));
  lines.push(...broken.map((each) => words.judge.lawElsewhere(each, lawsBroken(each.value))));
  if (judged.some(({ by, first }) => by === "bars, state law" && first !== false)) lines.push(words.judge.stateLaw());
  return lines;
}

/** The caution of the first that calls for work, or may, do-not-ride ones first. */
export function cautionOfJudged(judged: readonly Line[], words: Words): string | null {
  const worst = judged.find(({ doNotRide }) => doNotRide) ?? judged.find(({ judgement }) => callsForWork(judgement)) ?? judged.find(mayCallForWork);
  return words.caution(worst?.caution ?? null);
}

const mayCallForWork = ({ judgement, ifSo }: Line): boolean =>
  ifSo?.doNotRide === true || (judgement.is !== "cannot tell" && judgement.limit.unsettled !== undefined);

const isUnknown = (by: Judged["by"]): boolean => by === "bars" || by === "bars, no group";

/** Whose tread law holds, to be answered with a press: with the first tread of a bike, and with each that a law would not let on the road. */
export function treadLawActions(judged: readonly JudgedOn[], words: Words): readonly Action[] {
  const asked = judged.find(({ kind, by, first, value }) => kind === "tread" && isUnknown(by) && (first || lawsBroken(value).length > 0));
  if (asked === undefined) return [];
  return [...TREAD_PLACES, BY_THE_BARS].map((place) => press("tread-law", `${asked.bike}/${encodeURIComponent(place)}`, words.judge.lawOf(place)));
}
