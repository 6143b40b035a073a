// /reading: log what was read, or list the latest readings and what is unanswered.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/message-outcome.ts";
import { pictureReadings, READING_PICTURES, type ReadingPicture, type ReadingPictured } from "../src/usecases/picture-reading.ts";
import { listReadings, logTyped, type ReadingList } from "../src/usecases/readings.ts";
import type { Result } from "../src/usecases/refusals.ts";
import { define, shapeOf } from "./define.ts";
import { sayOutcome } from "./replies/message.ts";
import { readingPictured } from "./replies/picture-shapes.ts";
import { drawPictured, sayPictured } from "./replies/pictures.ts";
import { sayReadings } from "./replies/readings.ts";
import { fuel, messageOutcome, question, reading as readingShape, unit } from "./shapes.ts";

/** What else people type for what a picture shows. */
const PICTURES_ALSO = {
  odometer: ["mileage", "distance"],
  tread: ["treads", "tyres", "tires", "tyre", "tire"],
  pads: ["pad", "brakes", "linings", "lining", "shoes", "drums", "brake pads", "brake shoes"],
  chain: ["chain wear"],
  pressure: ["pressures", "tyre pressure", "tyre pressures"],
} as const satisfies Record<ReadingPicture, readonly string[]>;

type Out = MessageOutcome | ReadingList | ReadingPictured;

export const reading = define({
  name: "reading",
  sub: null,
  options: {
    log: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
    picture: { takes: "choice", required: false, choices: READING_PICTURES, also: PICTURES_ALSO },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Out>(
    z.union([
      messageOutcome,
      readingPictured,
      z.object({
        bikes: z.array(z.object({ id: z.string(), nickname: z.string(), unit, readings: z.array(readingShape), fuel: z.array(fuel) })),
        open: z.array(question),
      }),
    ]),
  ),
  // What was typed to be logged is logged, whatever else was asked for.
  run: async (ctx, { log, bike, picture }): Promise<Result<Out>> =>
    log !== undefined
      ? logTyped(ctx, { log, ...given({ bike }) })
      : picture === undefined
        ? listReadings(ctx, given({ bike }))
        : pictureReadings(ctx, { picture, ...given({ bike }) }),
  say: (out, words) => ("is" in out ? sayOutcome(out, words) : "pictured" in out ? sayPictured(out, words) : sayReadings(out, words)),
  draw: async (out, words) => ("pictured" in out ? drawPictured(out, words) : []),
});
