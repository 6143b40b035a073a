// /tyre date: how old a tyre is by the code moulded on it; with an end named, noted for the tyre that is on there.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/message-outcome.ts";
import type { Result } from "../src/usecases/refusals.ts";
import { noteTyreCode, TYRE_ENDS, type TyreDated, tyreDated } from "../src/usecases/tyre-code.ts";
import { define, shapeOf } from "./define.ts";
import { sayOutcome } from "./replies/message.ts";
import { said } from "./replies/said.ts";
import { messageOutcome, tyreAge } from "./shapes.ts";

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
  data: shapeOf<Out>(z.union([messageOutcome, z.object({ typed: z.string() }).extend(tyreAge.shape)])),
  run: async (ctx, { code, end, bike }): Promise<Result<Out>> =>
    end === undefined ? tyreDated(ctx, { code }) : noteTyreCode(ctx, { code, end, ...given({ bike }) }),
  say: (out, words) =>
    "is" in out
      ? sayOutcome(out, words)
      : said([...words.tyres.dated(out), words.tyres.noteIt()], { caution: out.age === "within" ? null : words.caution("tyres") }),
});
