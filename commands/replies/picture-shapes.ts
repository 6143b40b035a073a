// Shapes of what pictures show, as scripts find them under `data`.

import { z } from "zod";
import { STATUSES } from "../../src/core/schedule/facts.ts";
import { SPEC_USES } from "../../src/core/spec/spec.ts";
import { LIMITS_BY } from "../../src/usecases/judged.ts";
import { WEAR_PICTURES } from "../../src/usecases/picture-reading.ts";
import { chargeBy, distance, equipment, leakOn, localDate, place, unit } from "../shapes.ts";

const laidUp = z.object({ from: localDate, to: localDate });
const on = { bike: z.string(), nickname: z.string(), today: localDate };
const dial = { unit, offset: distance };

export const nextShown = z.object({
  ...{ ...on, ...dial, until: localDate },
  now: distance.nullable(),
  rows: z.array(
    z.object({
      items: z.array(z.object({ item: z.string(), name: z.string() })),
      ...{ status: z.enum(STATUSES), grain: z.enum(["day", "month", "season", "year"]) },
      ...{ on: localDate.nullable(), from: localDate.nullable(), to: localDate.nullable(), at: distance.nullable(), by: z.enum(["wear", "plan"]).nullable() },
    }),
  ),
  more: z.number().int(),
  near: z.array(z.string()),
  unknown: z.number().int(),
  likely: z.array(z.object({ on: localDate, ridden: distance })),
  layUps: z.array(laidUp),
  charge: chargeBy.nullable(),
  found: z.array(z.object({ words: z.string(), grade: z.literal("do not ride").nullable() })),
});

const odometerShown = z.object({
  ...{ ...on, ...dial, until: localDate },
  points: z.array(z.object({ on: localDate, ridden: distance })),
  ahead: z.array(z.object({ on: localDate, low: distance, likely: distance, high: distance })),
  layUps: z.array(laidUp),
  basis: z.object({ from: z.string() }),
});

const load = z.enum(SPEC_USES);
const wearShown = z.object({
  ...{ ...on, ...dial, typedIn: z.string().nullable(), now: z.number().nullable() },
  fitted: equipment.pick({ finalDrive: true, frontBrake: true, rearBrake: true, sidecar: true }),
  panels: z.array(
    z.object({
      part: z.string(),
      place,
      points: z.array(z.object({ ridden: distance, value: z.number(), typed: z.string() })),
      limit: z.object({ value: z.number(), by: z.enum(LIMITS_BY) }).nullable(),
      line: z.object({ from: distance, start: z.number(), likely: distance, low: distance, high: distance.nullable() }).nullable(),
      worn: z.boolean(),
      days: z.object({ on: localDate, from: localDate, to: localDate.nullable() }).nullable(),
    }),
  ),
});
const pressureShown = z.object({
  ...{ ...on, typedIn: z.string(), celsius: z.number() },
  panels: z.array(
    z.object({
      place: z.enum(["front", "rear", "sidecar"]),
      points: z.array(z.object({ on: localDate, read: z.number(), typed: z.string(), levelled: z.number().nullable(), load })),
      wanted: z.array(z.object({ loads: z.array(load), value: z.number() })),
    }),
  ),
  leaks: z.array(leakOn).optional(),
});

export const readingPictured = z.discriminatedUnion("pictured", [
  z.object({ pictured: z.literal("odometer"), shown: odometerShown }),
  z.object({ pictured: z.enum(WEAR_PICTURES), shown: wearShown }),
  z.object({ pictured: z.literal("pressure"), shown: pressureShown }),
]);

export const groupPictured = z.object({
  is: z.literal("group picture"),
  ...{ today: localDate, until: localDate },
  rows: z.array(
    z.object({
      ...{ nickname: z.string(), owner: z.string().nullable(), dueNow: z.number().int() },
      next: z.array(z.object({ on: localDate, from: localDate, to: localDate.nullable(), soon: z.boolean(), items: z.number().int() })),
      layUps: z.array(laidUp),
    }),
  ),
  more: z.number().int(),
});
