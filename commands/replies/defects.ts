// A defect as words: what was found, the one sentence that matters, and what to do with it.

import type { Action, Form, Said } from "../../src/chat/reply.ts";
import type { DefectShown } from "../../src/usecases/defect-shown.ts";
import type { Words } from "../../src/words/en/english.ts";
import { formButton, press, said } from "./said.ts";

/** Subjects of the grading buttons. */
export const GRADE_OF = { stop: "do not ride", watch: "watch" } as const;

/** What can be done with an open defect: the grades it does not have yet, and the ways to close it. */
export function defectActions(defect: DefectShown, words: Words): readonly Action[] {
  if (defect.state !== "open") return [];
  const { labels } = words.defects;
  const grades = (["stop", "watch"] as const)
    .filter((each) => GRADE_OF[each] !== defect.grade)
    .map((each) => press("defect-grade", `${defect.id}.${each}`, labels.grade(GRADE_OF[each]), defect.rev));
  const nothing = formButton("defect-nothing", defect.id, labels.nothing, nothingForm(words), defect.rev);
  return defect.grade === null
    ? [...grades, nothing]
    : [formButton("defect-mended", defect.id, labels.mended, words.defects.mendedForm, defect.rev), ...grades, nothing];
}

/** A button for each, to see it with what can be done; a face lists what are too many for a row. */
export const showEach = (defects: readonly DefectShown[], words: Words): Action[] =>
  defects.map((defect) => press("defect-show", defect.id, words.defects.labels.show(defect), defect.rev));

export function nothingForm({ defects }: Words): Form {
  const { labels } = defects;
  return { title: labels.nothing, fields: [{ name: "why", label: labels.why, kind: "line", required: true, value: null, hint: labels.whyHint, options: [] }] };
}

export function sayDefect(defect: DefectShown, words: Words): Said {
  const { defects } = words;
  const lines = [defects.shown(defect, words.today)];
  if (defect.state === "open") lines.push(defect.grade === null ? defects.howBad() : defects.graded(defect.grade, defect.kind));
  return said(lines, { caution: defect.state === "open" ? words.caution(defect.caution) : null, actions: defectActions(defect, words) });
}
