// Tyres as lines: each end's verdicts, what is left of it, what the last one went, a leak.

import type { Said } from "../../src/chat/reply.ts";
import type { DistanceUnit } from "../../src/core/quantity/distance.ts";
import { isQuantity } from "../../src/core/reading/value.ts";
import type { TyreReport } from "../../src/usecases/judge-tyres.ts";
import type { WornPart } from "../../src/usecases/wear.ts";
import type { Words } from "../../src/words/en/english.ts";
import { cautionOfJudged, judgedLines } from "./judge.ts";
import { said } from "./said.ts";

export function sayTyres(report: TyreReport, words: Words): Said {
  const { nickname, judged, worn, lasted, defects, leaks, aged, undated, unit } = report;
  const found = defects.map((defect) => `- ${words.defects.due(defect, words.today)}`);
  const last = lasted.map((each) => `- ${words.tyres.lasted(each, unit)}`);
  const ages = [...aged.map((tyre) => `- ${words.tyres.aged(tyre)}`), ...(undated.length === 0 ? [] : [`- ${words.tyres.undated(undated)}`])];
  if (judged.length + aged.length + worn.length === 0)
    return said([words.tyres.heading(nickname), ...found, ...last, words.tyres.nothing(), ...ages], {
      caution: found.length > 0 ? words.caution("tyres") : null,
    });
  const shown = judged.find(({ kind }) => kind === "cold pressure")?.unit;
  return said(
    [
      words.tyres.heading(nickname),
      // How they are goes before how deep they are.
      ...(found.length > 0 ? found : [words.tyres.lookFirst()]),
      ...judgedLines(judged, words).map((line) => `- ${line}`),
      ...ages,
      ...wearLines(worn, unit, words).map((line) => `- ${line}`),
      ...last,
      ...leaks.map(({ place, leak }) => `- ${words.tyres.leak(place, leak, shown !== undefined && isQuantity(shown) ? shown : "kPa")}`),
    ],
    { caution: cautionOfJudged(judged, words) ?? (found.length > 0 || aged.some(({ age }) => age !== "within") ? words.caution("tyres") : null) },
  );
}

const wearLines = (worn: readonly WornPart[], unit: DistanceUnit, words: Words): string[] => worn.map((each) => words.tyres.left(each, unit, words.today));
