// What is pressed, picked and pasted about a service chart.

import { z } from "zod";
import type { BikeId, ItemKey } from "../../src/core/ids.ts";
import { MEANINGS } from "../../src/core/reading/chart-words.ts";
import {
  answerChart as answerTo,
  type ChartAnswer,
  type ChartReading,
  type ChartSaved,
  leaveChart as leaveIt,
  pastedChart,
  pasteChart as pasteIt,
  saveChart as saveIt,
  showReading,
  undoChart as undoIt,
} from "../../src/usecases/read-chart.ts";
import { done, refused } from "../../src/usecases/refusals.ts";
import { handler, shapeOf } from "../define.ts";
import { chartReading, chartSaved } from "../replies/chart-shapes.ts";
import { chartForm, sayReading, saySaved } from "../replies/read-chart.ts";
import { said } from "../replies/said.ts";

const data = shapeOf<ChartReading>(chartReading);
const savedData = shapeOf<ChartSaved>(chartSaved);

/** A form's subject is the bike, and the chart that is pasted again where there is one: then it holds what was pasted. */
export const pasteChart = handler<ChartReading>({
  kind: "form",
  settles: true,
  open: async (ctx, { subject }, words) => {
    const draft = subject.split(".")[1];
    const typed = draft === undefined ? done(null) : await pastedChart(ctx, { draft });
    return typed.is === "refused" ? typed : done(chartForm(words, typed.value));
  },
  visibility: "private",
  data,
  run: (ctx, { subject, fields }) => {
    const [bike = "", draft] = subject.split(".");
    return pasteIt(ctx, { bike: bike as BikeId, text: fields["chart"] ?? "", ...(draft === undefined ? {} : { draft }) });
  },
  say: sayReading,
});
export const showChart = handler<ChartReading>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject }) => showReading(ctx, { draft: subject }),
  say: sayReading,
});
export const answerChart = handler<ChartReading>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: async (ctx, { subject, rev, values }) => {
    const [draft = "", to, at = ""] = subject.split(".");
    const answer = answerOf(to, at, values[0] ?? "");
    return answer === null ? refused({ why: "gone" }) : answerTo(ctx, { draft, rev, answer });
  },
  say: sayReading,
});

function answerOf(to: string | undefined, at: string, value: string): ChartAnswer | null {
  const meaning = MEANINGS.find((each) => each === value);
  const number = (text: string): number | null => (/^\d{1,3}$/u.test(text) ? Number(text) : null);
  const n = number(at) ?? number(value);
  switch (to) {
    case "right":
    case "wrong":
      return { to: "letters", right: to === "right" };
    case "letter":
      return n === null || meaning === undefined ? null : { to, at: n, meaning };
    case "ask":
      return n === null ? null : { to, at: n };
    case "line":
      return n === null || value === "" ? null : { to, n, item: value as ItemKey | "leave" };
    case "twice":
      return number(value) === null ? null : { to, n: Number(value) };
    case "own":
      return value === "all" ? { to, n: "all" } : n === null ? null : { to, n };
    default:
      return null;
  }
}

/** The subject is the chart, and which state of the plan it was shown with. */
export const saveChart = handler<ChartSaved>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: savedData,
  run: (ctx, { subject, rev }) => {
    const [draft = "", planRev = ""] = subject.split(".");
    return saveIt(ctx, { draft, rev, planRev: Number(planRev) });
  },
  say: saySaved,
});
export const undoChart = handler<ChartSaved>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: savedData,
  run: (ctx, { subject, rev }) => {
    const [bike = "", edits = ""] = subject.split(".");
    return undoIt(ctx, { bike: bike as BikeId, edits: Number(edits), rev });
  },
  say: saySaved,
});
export const leaveChart = handler<{ readonly left: true }>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf(z.object({ left: z.literal(true) })),
  run: (ctx, { subject }) => leaveIt(ctx, { draft: subject }),
  say: (_out, words) => said([words.plan.left()]),
});
