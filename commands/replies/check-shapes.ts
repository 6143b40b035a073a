// The shape of a check in JSON lines.

import { z } from "zod";
import { CHECKLISTS, FAULT_GRADES, VITAL } from "../../src/core/check/checklist.ts";
import { ANSWERS } from "../../src/core/check/result.ts";
import { judged, localDate, messageOutcome, reading } from "../shapes.ts";

const before = z.object({ list: z.enum(CHECKLISTS), on: localDate, found: z.enum(["needs work", "done"]), note: z.string().nullable() });
const point = z.object({
  key: z.string(),
  n: z.number(),
  item: z.string().nullable(),
  called: z.string().nullable(),
  status: z.enum(["no record", "soon", "due", "overdue"]).nullable(),
  before: before.nullable(),
  vital: z.enum(VITAL).nullable(),
  onFail: z.enum(FAULT_GRADES),
  engine: z.enum(["cold", "warm", "any"]),
  position: z.enum(["upright", "side stand", "weight off", "any"]),
  caution: z.string().nullable(),
  measures: z.array(z.object({ kind: z.string(), place: z.string().nullable(), optional: z.literal(true).optional() })),
  everybodys: z.boolean(),
  answer: z.enum(ANSWERS).nullable(),
  byReading: z.boolean(),
  grade: z.enum(FAULT_GRADES).nullable(),
  note: z.string().nullable(),
  link: z.string().nullable(),
  figures: z.string().nullable(),
  measured: z.array(reading),
  judged: z.array(judged),
});
const result = z.object({
  says: z.enum(["do not ride", "cannot say", "nothing stops the ride", "no word"]),
  points: z.number(),
  looked: z.number(),
  left: z.array(z.string()),
  vitalLeft: z.array(z.object({ vital: z.enum(VITAL), key: z.string() })),
  stop: z.array(z.string()),
  watch: z.array(z.string()),
});
const checkShown = z.object({
  check: z.string(),
  rev: z.number(),
  bike: z.string().nullable(),
  called: z.string(),
  list: z.enum(CHECKLISTS),
  state: z.enum(["open", "finished", "left"]),
  begunOn: localDate,
  finishedOn: localDate.nullable(),
  sections: z.array(z.object({ key: z.string(), points: z.array(point) })),
  at: point.nullable(),
  result,
  standing: z.array(z.object({ defect: z.string(), words: z.string(), grade: z.enum(FAULT_GRADES).nullable() })),
  recorded: z.array(z.object({ item: z.string(), called: z.string() })),
  source: z.string().nullable(),
  bikeState: z.enum(["riding", "laid up", "other"]).nullable(),
});
export const checkStep = checkShown.extend({ logged: messageOutcome.nullable(), stale: z.literal(true).optional() });
const ownBikes = z.array(z.object({ bike: z.string(), nickname: z.string(), laidUp: z.boolean() }));
export const checkMine = z.object({ list: z.enum(CHECKLISTS), bikes: ownBikes });
export const checkMenu = z.object({
  open: z.array(checkShown),
  finished: z.array(checkShown),
  bikes: ownBikes,
});
