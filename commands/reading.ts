// /reading: log what was read, or list the latest readings and what is unanswered.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/messages.ts";
import { listReadings, logTyped, type ReadingList } from "../src/usecases/readings.ts";
import { define, shapeOf } from "./define.ts";
import { sayOutcome } from "./replies/message.ts";
import { sayReadings } from "./replies/readings.ts";
import { messageOutcome, question, reading as readingShape, unit } from "./shapes.ts";

type Out = MessageOutcome | ReadingList;

export const reading = define({
  name: "reading",
  sub: null,
  options: { log: { takes: "text", required: false }, bike: { takes: "text", required: false, complete: "bike" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Out>(
    z.union([
      messageOutcome,
      z.object({ bikes: z.array(z.object({ id: z.string(), nickname: z.string(), unit, readings: z.array(readingShape) })), open: z.array(question) }),
    ]),
  ),
  run: async (ctx, { log, bike }): Promise<{ is: "done"; value: Out } | Extract<Awaited<ReturnType<typeof listReadings>>, { is: "refused" }>> =>
    log === undefined ? listReadings(ctx, given({ bike })) : logTyped(ctx, { log, ...given({ bike }) }),
  say: (out, words) => ("is" in out ? sayOutcome(out, words) : sayReadings(out, words)),
});
