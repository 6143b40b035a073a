// What a judgement lacks, as buttons: one press gives it.

import { z } from "zod";
import type { Action, Form, Said } from "../../src/chat/reply.ts";
import { lackingIn, type Missing } from "../../src/core/judgement/verdict.ts";
import { CONDITIONS_READ } from "../../src/core/reading/detail.ts";
import type { JudgedOn } from "../../src/usecases/judged.ts";
import type { How, ToldHow } from "../../src/usecases/say-how.ts";
import { isSpecKey } from "../../src/usecases/specs.ts";
import type { Words } from "../../src/words/en/english.ts";
import { counted, defect, judged as judgedShape, unit } from "../shapes.ts";
import { countedActions, countedLines } from "./counted.ts";
import { showEach } from "./defects.ts";
import { cautionOfJudged, judgedLines } from "./judge.ts";
import { formButton, press, said } from "./said.ts";
import { soonerActions } from "./sooner.ts";
import { specButton } from "./spec.ts";

/** More would bury the answer; the next reading asks for the rest. */
const MOST = 4;

/** The buttons that give what these judgements lack: each once. */
export function lackingActions(judged: readonly JudgedOn[], bikes: readonly { readonly id: string; readonly nickname: string }[], words: Words): Action[] {
  const found = judged.flatMap((each): Action[] => {
    const missing = each.miscounted ? [] : lackingIn(each.judgement);
    const bike = bikes.find(({ id }) => id === each.bike);
    if (missing.some((lacks) => OF_SPEC.includes(lacks)) && bike !== undefined) {
      const key = missing.includes("pitch") || missing.includes("chain size") ? "chain size" : each.spec;
      const spec =
        key === null || !isSpecKey(key) ? [] : [specButton({ bike: bike.id, nickname: bike.nickname }, key, each.use, words.judge.enter(key, each.use), words)];
      return missing.includes("pitch") ? [figureButton(each, "pitches", words), ...spec] : spec;
    }
    if (missing.includes("rpm")) return [figureButton(each, "rpm", words)];
    return missing.flatMap((lacks) => {
      const how = lacks === "temperature" ? "warm" : CONDITIONS_READ.find((condition) => condition === lacks);
      return how === undefined ? [] : [press("say-how", `${each.id}.${how}`, words.judge.how(each.kind, how))];
    });
  });
  // Two valves of one message share a button.
  return found.filter(({ label }, n) => found.findIndex((other) => other.label === label) === n).slice(0, MOST);
}

/** What a spec gives. */
const OF_SPEC: readonly Missing[] = ["limit", "load", "pitch", "chain size"];

const figureButton = ({ id, kind }: JudgedOn, how: "rpm" | "pitches", words: Words): Action =>
  formButton("say-how-figure", `${id}.${how}`, words.judge.how(kind, how), howForm(how, words));

export function howForm(how: Extract<How, "rpm" | "pitches">, words: Words): Form {
  const { title, label } = words.judge.howForm(how);
  return { title, fields: [{ name: "figure", label, kind: "line", required: true, value: null, hint: null, options: [] }] };
}

export const toldHow = z.object({
  bike: z.object({ id: z.string(), nickname: z.string(), unit }),
  judged: z.array(judgedShape.extend({ bike: z.string(), first: z.boolean() })),
  counted: z.array(counted),
  defects: z.array(defect),
  closed: z.array(defect),
});

export const sayToldHow = ({ bike, judged, counted: counts, defects, closed }: ToldHow, words: Words): Said =>
  said(
    [
      words.judge.kept(bike.nickname),
      ...judgedLines(judged, words),
      ...countedLines(counts, words),
      ...defects.map((each) => words.defects.noted(each)),
      ...closed.map((each) => words.defects.mended(each)),
    ],
    {
      caution: cautionOfJudged(judged, words),
      actions: [...lackingActions(judged, [bike], words), ...soonerActions(judged, words), ...countedActions(counts, words), ...showEach(defects, words)],
    },
  );
