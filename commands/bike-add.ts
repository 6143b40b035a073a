// /bike add: a bike in under a minute; the plan and what it is fitted with come with its kind.

import { type Added, addBike } from "../src/usecases/add-bike.ts";
import { define, shapeOf } from "./define.ts";
import { sayAdded } from "./replies/added.ts";
import { addedBike, KINDS } from "./shapes.ts";

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
  data: shapeOf<Added>(addedBike),
  run: (ctx, input) => addBike(ctx, input),
  say: sayAdded,
});
