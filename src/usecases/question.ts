// What a draft still asks, with what is needed to put the question.

import { type DistanceUnit, TENTHS_OF_MM } from "../core/quantity/distance.ts";
import type { Gap, Intent } from "../core/reading/intent.ts";
import { LEVELS } from "../core/reading/kinds.ts";
import { dialAt } from "../core/usage/track.ts";
import type { Draft } from "../store/drafts.ts";
import { type Garaged, itemsOf } from "./garage.ts";
import { servicesNamed } from "./services.ts";
import { strangeAgainst } from "./settle.ts";

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
  /** For a service: which ones the plan has there, and how many items each comes to. */
  readonly services?: readonly { readonly at: number; readonly unit: DistanceUnit; readonly items: number }[];
};

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
    options: optionsOf(gap, all, g),
    ...(areEnds(gap) ? { both: true as const } : {}),
    ...(gap.need === "service" ? { services: servicesOn(g, gap) } : {}),
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

const servicesOn = (g: Garaged | null, gap: Extract<Gap, { need: "service" }>): NonNullable<Question["services"]> =>
  g === null ? [] : servicesNamed(g, gap).map(({ at, unit, items }) => ({ at, unit, items: items.length }));

function optionsOf(gap: Gap, all: readonly Garaged[], g: Garaged | null): readonly string[] {
  if (gap.need === "service") return servicesOn(g, gap).map(({ at }) => String(at));
  if (gap.need === "sure" || gap.need === "defect") return [];
  if (gap.need === "bike") return gap.options.map((id) => all.find((g) => g.bike.id === id)?.bike.nickname ?? id);
  if (gap.need === "found") return gap.options;
  if (gap.need === "item") return gap.options.map((key) => all.flatMap(itemsOf).find((item) => item.key === key)?.called ?? key);
  if (gap.need === "level") return gap.options.map((n) => LEVELS[n] ?? String(n));
  return gap.options.map(String);
}
