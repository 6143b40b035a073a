// /tyre date: how old a tyre is by the code moulded on it; with an end named, noted for the tyre that is on there.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/message-outcome.ts";
import type { Result } from "../src/usecases/refusals.ts";
import { noteTyreCode, TYRE_ENDS, type TyreDated, tyreDated } from "../src/usecases/tyre-code.ts";
import { define, shapeOf } from "./define.ts";
import { sayOutcome } from "./replies/message.ts";
import { said } from "./replies/said.ts";
import { messageOutcome, tyreMade } from "./shapes.ts";

type Out = TyreDated | MessageOutcome;

export const tyreDate = define({
  name: "tyre",
  sub: "date",
  options: {
    code: { takes: "text", required: true },
    end: { takes: "choice", required: false, choices: TYRE_ENDS },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Out>(
    z.union([messageOutcome, z.object({ typed: z.string(), date: tyreMade, months: z.number().int(), age: z.enum(["within", "look yearly", "replace"]) })]),
  ),
  run: async (ctx, { code, end, bike }): Promise<Result<Out>> =>
    end === undefined ? tyreDated(ctx, { code }) : noteTyreCode(ctx, { code, end, ...given({ bike }) }),
  say: (out, words) =>
    "is" in out
      ? sayOutcome(out, words)
      : said([...words.tyres.dated(out.date, out.months, out.age), words.tyres.noteIt()], { caution: out.age === "within" ? null : words.caution("tyres") }),
});
