// What a draft still asks, with what is needed to put the question.

import { type DistanceUnit, TENTHS_OF_MM } from "../core/quantity/distance.ts";
import { toCanonical } from "../core/quantity/units.ts";
import type { Gap, Intent } from "../core/reading/intent.ts";
import { LEVELS } from "../core/reading/kinds.ts";
import { isQuantity } from "../core/reading/value.ts";
import type { TooLow } from "../core/tyre/too-low.ts";
import { dialAt } from "../core/usage/track.ts";
import type { Draft } from "../store/drafts.ts";
import type { Repos } from "../store/store.ts";
import { type Garaged, itemsOf } from "./garage.ts";
import { judgeTaken } from "./judge.ts";
import { rigsOf } from "./rig.ts";
import { servicesNamed } from "./services.ts";
import { strangeAgainst } from "./settle.ts";
import { withOwnTicks } from "./ticks.ts";

export type Question = {
  readonly draft: string;
  readonly rev: number;
  readonly typed: string;
  /** The intent asked about, and which of its gaps. */
  readonly intent: Intent;
  readonly at: number;
  readonly gap: Gap;
  /** What each option of the gap is called. */
  readonly options: readonly string[];
  /** For a strange odometer figure: what is on record. */
  readonly last: { readonly figure: number; readonly unit: DistanceUnit; readonly on: string } | null;
  readonly nickname: string | null;
  /** The two items asked between are those of the two ends: it may have been both. */
  readonly both?: true;
  /** Pressures read warm that are too low even so: colder they are lower still. */
  readonly tooLow?: readonly TooLow[];
  /** For a service: which ones the plan has there, how many items each comes to, and how many of it beside those the member did. */
  readonly services?: readonly { readonly at: number; readonly unit: DistanceUnit; readonly items: number; readonly own: number }[];
};

/** The first open question of a draft as an outcome, with what its bike's specs say of it. */
export async function askedOf(q: Repos, draft: Draft, all: readonly Garaged[]): Promise<{ readonly is: "asked"; readonly question: Question }> {
  const question = questionOf({ ...draft, intents: await withOwnTicks(q, all, draft.intents) }, all);
  const tooLow = isWarm(question.gap) ? await tooLowOf(q, draft, all) : [];
  return { is: "asked", question: tooLow.length === 0 ? question : { ...question, tooLow } };
}

const isWarm = (gap: Gap | undefined): boolean => gap?.need === "sure" && gap.because === "warm";

/** A warm tyre shows more than it does cold: what is too low warm is certainly too low. One answer is for all that were read so. */
async function tooLowOf(q: Repos, draft: Draft, all: readonly Garaged[]): Promise<readonly TooLow[]> {
  const warm = draft.intents.filter((intent) => intent.do === "log reading" && isWarm(intent.gaps[0]));
  const bikes = all.filter(({ bike }) => warm.some((intent) => intent.bike === bike.id));
  const rigs = await rigsOf(
    q,
    bikes.map(({ bike }) => bike),
  );
  return warm.flatMap((intent): readonly TooLow[] => {
    const g = bikes.find(({ bike }) => bike.id === intent.bike);
    const rig = g === undefined ? undefined : rigs.get(g.bike.id);
    if (g === undefined || rig === undefined || intent.do !== "log reading" || intent.unit === null || !isQuantity(intent.unit)) return [];
    const { kind, place, on, unit, detail = null } = intent;
    const value = toCanonical(intent.value, unit);
    const judged = judgeTaken(
      { id: "", kind, place, on, value, unit, typed: intent.typed.text, detail, loggedAt: "", ordinal: 0 },
      { ...rig, trips: g.rig.trips },
    );
    if (judged === null || judged.judgement.is === "cannot tell" || judged.judgement.side !== "low") return [];
    const wanted = judged.judgement.limit.min ?? 0;
    return [{ place, typed: intent.typed.text, unit, under: wanted - value, wanted, far: judged.doNotRide }];
  });
}

/** The first open question of a draft, with what is needed to ask it. */
export function questionOf(draft: Draft, all: readonly Garaged[]): Question {
  const at = draft.intents.findIndex((intent) => intent.gaps.length > 0);
  const intent = draft.intents[at];
  const gap = intent?.gaps[0];
  if (intent === undefined || gap === undefined) throw new Error("a draft without a question");
  const g = all.find((each) => each.bike.id === intent.bike) ?? null;
  const last = g === null ? null : (strangeAgainst(intent, g) ?? g.track.points.at(-1) ?? null);
  return {
    draft: draft.id,
    rev: draft.rev,
    typed: draft.typed,
    intent,
    at,
    gap,
    options: optionsOf(gap, all, g, intent),
    ...(areEnds(gap) ? { both: true as const } : {}),
    ...(gap.need === "service" ? { services: servicesOn(g, gap, intent) } : {}),
    last: g === null || last === null ? null : { figure: dialAt(g.track, last.ridden) / TENTHS_OF_MM[g.unit], unit: g.unit, on: last.on },
    nickname: g?.bike.nickname ?? null,
  };
}

/** Front pads and rear pads. */
const areEnds = (gap: Gap): boolean =>
  gap.need === "item" &&
  gap.options.length === 2 &&
  ["front-", "rear-"].every((end) => gap.options.some((key) => key.startsWith(end))) &&
  new Set(gap.options.map((key) => key.replace(/^(?:front|rear)-/u, ""))).size === 1;

const servicesOn = (g: Garaged | null, gap: Extract<Gap, { need: "service" }>, intent: Intent): NonNullable<Question["services"]> =>
  g === null || intent.do !== "record work"
    ? []
    : servicesNamed(g, gap, intent.odometer).map(({ at, unit, items, own }) => ({ at, unit, items: items.length, own: own.length }));

function optionsOf(gap: Gap, all: readonly Garaged[], g: Garaged | null, intent: Intent): readonly string[] {
  if (gap.need === "service") return servicesOn(g, gap, intent).map(({ at }) => String(at));
  if (gap.need === "sure" || gap.need === "defect") return [];
  if (gap.need === "bike") return gap.options.map((id) => all.find((g) => g.bike.id === id)?.bike.nickname ?? id);
  if (gap.need === "found") return gap.options;
  if (gap.need === "item") return gap.options.map((key) => all.flatMap(itemsOf).find((item) => item.key === key)?.called ?? key);
  if (gap.need === "level") return gap.options.map((n) => LEVELS[n] ?? String(n));
  return gap.options.map(String);
}
