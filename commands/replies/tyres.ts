// Tyres as lines: each end's verdicts, what is left of it, what the last one went, a leak.

import type { Said } from "../../src/chat/reply.ts";
import type { DistanceUnit } from "../../src/core/quantity/distance.ts";
import type { TyreReport } from "../../src/usecases/judge-tyres.ts";
import type { WornPart } from "../../src/usecases/wear.ts";
import type { Words } from "../../src/words/en/english.ts";
import { cautionOfJudged, judgedLines } from "./judge.ts";
import { said } from "./said.ts";

export function sayTyres(report: TyreReport, words: Words): Said {
  const { nickname, judged, worn, leaks, aged, unit } = report;
  if (judged.length + aged.length === 0) return said([words.tyres.heading(nickname), words.tyres.nothing()]);
  const shown = judged.find(({ kind }) => kind === "cold pressure")?.unit;
  return said(
    [
      words.tyres.heading(nickname),
      ...judgedLines(judged, words).map((line) => `- ${line}`),
      ...aged.map((tyre) => `- ${words.tyres.aged(tyre)}`),
      ...wearLines(worn, unit, words).map((line) => `- ${line}`),
      ...leaks.map(({ place, leak }) => `- ${words.tyres.leak(place, leak, shown === undefined || shown === "level" ? "kPa" : shown)}`),
    ],
    { caution: cautionOfJudged(judged, words) ?? (aged.some(({ age }) => age !== "within") ? words.caution("tyres") : null) },
  );
}

/** What is left of each part, and of a tyre what the one before went. */
export const wearLines = (worn: readonly WornPart[], unit: DistanceUnit, words: Words): string[] =>
  worn.map((each) => [words.tyres.left(each, unit, words.today), words.tyres.lastOne(each, unit)].filter((part) => part !== "").join(" "));
