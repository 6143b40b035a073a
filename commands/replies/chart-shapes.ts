// Shapes of the outcomes about service charts, as scripts find them under `data`. Services are whole figures in the chart's unit.

import { z } from "zod";
import { ACTIONS } from "../../src/core/plan/plan.ts";
import { repeat, unit } from "../shapes.ts";

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
