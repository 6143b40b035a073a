// Shapes of service sheets and jobs, as scripts find them under `data`.

import { z } from "zod";
import { OUTCOMES } from "../../src/core/schedule/facts.ts";
import { defect, distance, dueBike, localDate, messageOutcome, unit } from "../shapes.ts";

const bike = dueBike.omit({ dues: true, first: true });
const spec = z.object({
  key: z.string(),
  is: z.enum(["none", "one", "several"]),
  typed: z.array(z.string()),
  from: z.object({ manual: z.string(), edition: z.string().nullable(), page: z.string().nullable() }).nullable(),
});
const step = z.discriminatedUnion("step", [
  z.object({
    ...{ step: z.literal("item"), item: z.string(), name: z.string(), why: z.enum(["now", "there", "near", "next", "unknown"]), action: z.string() },
    ...{ engine: z.enum(["cold", "warm", "any"]), position: z.string(), minutes: z.number().nullable() },
    ...{ specs: z.array(spec), measures: z.array(z.string()), due: z.object({ item: z.string(), status: z.string(), caution: z.string().nullable() }) },
  }),
  z.object({ step: z.enum(["open", "close"]), part: z.string() }),
  z.object({ step: z.literal("stays apart"), parts: z.array(z.string()) }),
  z.object({ step: z.enum(["warm up", "tension", "brakes", "last look", "test ride"]) }),
]);
const use = z.object({ what: z.string(), count: z.number().nullable(), amount: z.string().nullable(), kind: z.string().nullable() });

export const blindAhead = z
  .object({ until: z.enum(["day", "point"]), next: z.object({ mark: distance, away: distance, counted: z.boolean() }).nullable() })
  .nullable();

export const sheetShown = z.object({
  ...{ bike, at: z.string(), mark: distance.nullable(), on: localDate.nullable(), until: localDate.nullable(), upTo: distance.nullable() },
  ...{ items: z.number().int(), minutes: z.number(), unsaid: z.number().int(), evening: z.number().int() },
  evenings: z.array(z.object({ starts: z.enum(["warm", "cold", "any"]), minutes: z.number(), unsaid: z.number().int(), steps: z.array(step) })),
  tools: z.array(z.string()),
  uses: z.array(use),
  lookFirst: z.array(z.string()),
  adds: z.object({ at: z.number(), ordinary: z.number(), names: z.array(z.string()) }).nullable(),
  covered: z.array(z.object({ name: z.string(), by: z.string() })),
  meanwhile: z.array(z.string()),
  blind: blindAhead,
  nearest: z.array(z.object({ at: z.number(), unit })),
  habits: z.array(z.string()),
  tension: z.enum(["chain", "belt"]).nullable(),
  brakes: z.object({ front: z.enum(["disc", "drum"]), rear: z.enum(["disc", "drum"]) }),
  note: z.string().nullable(),
  job: z.string().nullable(),
  stops: z.array(defect),
  engine: z.enum(["ride", "standing", "not run"]),
});

const value = z.object({ value: z.number(), unit: z.string(), place: z.string().nullable() });
const record = {
  ...{ outcome: z.enum(OUTCOMES), on: localDate, dial: distance.nullable() },
  ...{ found: z.array(value), left: z.array(value), note: z.string().nullable() },
};
const ticked = z
  .object({
    ...record,
    ...{ record: z.string().nullable(), together: z.number().int(), doneBy: z.string().nullable(), cost: z.string().nullable() },
    earlier: z.array(z.object(record)),
  })
  .nullable();
export const jobShown = z.object({
  ...{ job: z.string(), rev: z.number().int(), state: z.enum(["open", "finished", "left"]), bike, mark: distance.nullable(), begunOn: localDate },
  ...{ note: z.string().nullable(), evening: z.number().int(), evenings: z.number().int(), standOvernight: z.boolean(), stops: z.array(defect) },
  lines: z.array(
    z.object({
      ...{ item: z.string(), name: z.string(), evening: z.number().int(), action: z.string().nullable() },
      ...{ engine: z.enum(["cold", "warm", "any"]), caution: z.string().nullable(), gone: z.boolean(), ticked },
    }),
  ),
});
export const jobItem = z.object({ job: jobShown, line: z.number().int() });
export const jobWorked = z.object({
  ...{ outcome: messageOutcome, job: jobShown },
  again: z.array(z.object({ name: z.string(), source: z.string().nullable() })),
});
