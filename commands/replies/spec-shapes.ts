// What scripts find under `data` of a spec.

import { z } from "zod";
import { SPEC_USES } from "../../src/core/spec/spec.ts";
import { FLUID_NAMES } from "../../src/usecases/fluids.ts";
import { AFTERWARDS, SPEC_KEY_NAMES } from "../../src/usecases/specs.ts";

import { defect, judged } from "../shapes.ts";

const use = z.enum(SPEC_USES).nullable();
const key = z.enum(SPEC_KEY_NAMES as [string, ...string[]]);
const shown = z.object({
  ...{ id: z.string(), rev: z.number().int(), use, typed: z.string(), at: z.string(), byName: z.string().nullable(), mine: z.boolean() },
  asUnit: z.string().nullable(),
  source: z.object({ manual: z.string(), edition: z.string().nullable(), page: z.string().nullable() }).nullable(),
  holds: z.union([
    z.object({ is: z.literal("words") }),
    z.object({
      ...{ is: z.literal("figure"), low: z.number().nullable(), high: z.number().nullable(), nominal: z.number().nullable() },
      ...{ unit: z.string(), step: z.number() },
    }),
  ]),
});
const fluidInside = z.enum([...FLUID_NAMES, "brake fluid"]);
export const specAnswer = z.object({
  ...{ bike: z.string(), nickname: z.string(), model: z.string().nullable(), use, asked: z.boolean() },
  lines: z.array(
    z.object({
      ...{ key, settled: z.boolean(), specs: z.array(shown), others: z.array(shown), solo: shown.nullable(), byPage: z.boolean() },
      ...{ typical: z.tuple([z.number(), z.number()]).nullable(), unit: z.string().nullable() },
      ...{ afterwards: z.enum(AFTERWARDS).nullable(), caution: z.string().nullable() },
      fluid: z.object({ of: z.enum(["brakes", "clutch"]), name: fluidInside, never: z.array(z.enum(FLUID_NAMES)), fitted: fluidInside.nullable() }).nullable(),
    }),
  ),
});
const entry = { spec: z.string(), rev: z.number().int(), key };
export const specSaved = z.object({
  ...entry,
  also: z.object(entry).nullable(),
  answer: specAnswer,
  judged: z.array(judged),
  defects: z.array(defect),
  lapsed: z.array(defect),
  closed: z.array(defect),
  overruled: z.object({ place: z.string().nullable(), least: z.number() }).optional(),
});

/** A row of an open table: which one, and what that one holds. */
export const lookedUp = z.looseObject({
  table: z.enum([
    ...(["oil grade", "oil grades", "brake fluid", "brake fluids", "tyre mark", "load indexes", "speed symbols"] as const),
    ...(["thread", "threads", "inch thread", "hex", "tread law", "resting volts"] as const),
  ]),
});
