// /bike add: a bike in under a minute; the plan and what it is fitted with come with its kind.

import { z } from "zod";
import { type Added, addBike } from "../src/usecases/add-bike.ts";
import { done, type Result } from "../src/usecases/refusals.ts";
import { type SeveralBikes, severalBikes } from "../src/usecases/several-bikes.ts";
import { define, shapeOf } from "./define.ts";
import { sayAdded, saySeveral } from "./replies/added.ts";
import { addedBike, KINDS, severalNamed } from "./shapes.ts";

export const bikeAdd = define({
  name: "bike",
  sub: "add",
  options: {
    name: { takes: "text", required: true },
    kind: { takes: "choice", required: true, choices: KINDS },
    odometer: { takes: "text", required: true },
    unit: { takes: "choice", required: false, choices: ["mi", "km"] },
    model: { takes: "text", required: false, complete: "model" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Added | SeveralBikes>(z.union([addedBike, severalNamed])),
  run: async (ctx, input): Promise<Result<Added | SeveralBikes>> => {
    const several = severalBikes(ctx, input);
    return several === null ? addBike(ctx, input) : done(several);
  },
  say: (out, words) => ("is" in out ? saySeveral(out, words) : sayAdded(out, words)),
});
