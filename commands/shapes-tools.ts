// Shapes of the outcomes of conversions and torque, as scripts find them under `data`.

import { z } from "zod";
import { DRIVES, WRENCH_KINDS } from "../src/core/torque/wrench.ts";

const bound = z.enum(["at most", "at least"]).nullable();
const converted = z.object({
  unit: z.string(),
  from: z.number(),
  to: z.number(),
  nominal: z.number().nullable(),
  exact: z.array(z.number()).length(2),
  decimals: z.number().int(),
  bound,
});
export const wrench = z.object({
  ...{ id: z.string(), name: z.string(), low: z.number(), high: z.number(), step: z.number() },
  ...{ unit: z.string(), accuracy: z.number(), drive: z.enum(DRIVES).nullable(), kind: z.enum(WRENCH_KINDS).nullable() },
});
const digits = z.object({ digits: z.string().regex(/^-?\d+(\.\d+)?$/), whole: z.boolean() });
export const conversion = z.object({
  is: z.literal("converted"),
  typed: z.string(),
  said: z.string().nullable(),
  from: z.number(),
  to: z.number(),
  nominal: z.number().nullable(),
  decimals: z.number().int(),
  fraction: z.number().int().nullable(),
  bound,
  turn: z.number().nullable(),
  unit: z.string(),
  answers: z.array(converted),
  taken: z.string().nullable(),
  named: z.boolean(),
  exactly: z.boolean(),
  onTool: z
    .object({
      tool: wrench,
      setting: z.number(),
      window: z.object({ from: z.number(), to: z.number(), decimals: z.number().int() }),
      keepsInside: z.boolean(),
      lowOnScale: z.boolean(),
    })
    .nullable(),
  digits: z.array(z.object({ unit: z.string(), from: digits, to: digits })),
});

/** What was used up to one fill of fuel: its reading, the litres since the tank was last full, over which distance, in the units the member knows. */
const torqueWindow = z.object({ low: z.number(), high: z.number() });
export const torqueTarget = z.object({ typed: z.string(), from: z.number(), to: z.number(), unit: z.string(), window: torqueWindow });
const length = z.object({ value: z.number(), unit: z.string(), millimetres: z.number() });
export const torqueSet = z.object({
  target: torqueTarget,
  atWrench: torqueWindow,
  geometry: z.object({ lever: length, adapter: length, angle: z.number() }).nullable(),
  fits: z.array(
    z.object({
      ...{ wrench, setting: z.number().nullable(), why: z.string(), lowOnScale: z.boolean(), keepsInside: z.boolean() },
      reach: torqueWindow.nullable(),
    }),
  ),
  borrow: z.union([z.object({ drive: z.enum(DRIVES), low: z.number(), high: z.number() }), z.literal("too small")]).nullable(),
});
