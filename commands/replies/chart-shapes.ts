// Shapes of the outcomes about service charts, as scripts find them under `data`. Services are whole figures in the chart's unit.

import { z } from "zod";
import { ACTIONS } from "../../src/core/plan/plan.ts";
import { MEANINGS } from "../../src/core/reading/chart-words.ts";
import { distance, localDate, unit } from "../shapes.ts";
import { columns, interval, repeat } from "../shapes-plan.ts";

const anchor = z.enum(["marks", "last done"]);
const row = z.object({
  item: z.string(),
  name: z.string(),
  action: z.enum(ACTIONS),
  at: z.array(z.number().int()),
  beside: z.object({ anchor, repeat }).nullable(),
  habit: z.boolean(),
  converted: z.boolean(),
});
export const chartShown = z.object({
  bike: z.string(),
  nickname: z.string(),
  planName: z.string(),
  conditions: z.array(z.string()),
  unit,
  marks: z.array(z.number().int()),
  rows: z.array(row),
  below: z.array(row),
  cut: z.boolean(),
});

const meaning = z.enum(MEANINGS as [(typeof MEANINGS)[number], ...(typeof MEANINGS)[number][]]);
const trigger = z.object({ anchor, first: interval.nullable(), repeat, marks: z.array(distance) });
const line = z.looseObject({
  n: z.number().int(),
  line: z.number().int(),
  called: z.string(),
  meaning: meaning.nullable(),
  is: z.enum(["same", "habit", "change", "unknown", "several", "left", "unclear", "twice"]),
  will: trigger.optional(),
});
const asked = z.object({ is: z.literal("asked"), bike: z.string(), nickname: z.string(), open: z.object({ draft: z.string(), on: localDate }).nullable() });
const notAChart = z.object({ is: z.literal("not a chart"), draft: z.string(), bike: z.string(), nickname: z.string() });
const proposal = z.object({
  is: z.literal("chart"),
  draft: z.string(),
  rev: z.number().int(),
  bike: z.string(),
  nickname: z.string(),
  column: unit,
  planRev: z.number().int(),
  services: z.array(columns),
  units: z.array(unit),
  rows: z.number().int(),
  letters: z.array(
    z.object({
      letter: z.string(),
      meaning: meaning.nullable(),
      from: z.enum(["chosen", "the chart", "usual", "unknown"]),
      others: z.array(meaning),
      ask: z.boolean(),
    }),
  ),
  unread: z.array(z.object({ line: z.number().int(), text: z.string() })),
  confirmed: z.boolean(),
  keepsMonths: z.boolean(),
  lines: z.array(line),
  untouched: z.number().int(),
});
export const chartReading = z.union([asked, notAChart, proposal]);
export const chartSaved = z.object({
  bike: z.string(),
  nickname: z.string(),
  rev: z.number().int(),
  edits: z.number().int(),
  changed: z.array(z.string()),
  added: z.array(z.string()),
  leftOut: z.array(z.object({ line: z.number().int(), text: z.string() })),
  undone: z.boolean(),
});
