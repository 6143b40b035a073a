// /bike change: its name, its state, and how it is used.

import { BIKE_STATES } from "../src/core/bike.ts";
import { CONDITIONS } from "../src/core/plan/plan.ts";
import { type BikeShown, changeBike } from "../src/usecases/change-bike.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { sayChanged } from "./replies/bikes.ts";
import { bikeShown } from "./shapes.ts";

export const bikeChange = define({
  name: "bike",
  sub: "change",
  options: {
    bike: { takes: "text", required: false, complete: "bike" },
    name: { takes: "text", required: false },
    state: { takes: "choice", required: false, choices: BIKE_STATES },
    used: { takes: "choice", required: false, choices: CONDITIONS },
    "not-used": { takes: "choice", required: false, choices: CONDITIONS },
    yearly: { takes: "text", required: false },
    book: { takes: "flag", required: false },
    registered: { takes: "text", required: false },
    model: { takes: "text", required: false, complete: "model" },
    called: { takes: "text", required: false },
    "not-called": { takes: "text", required: false },
    "group-picture": { takes: "flag", required: false },
    "group-evening": { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<BikeShown>(bikeShown),
  run: (ctx, { bike, name, state, used, yearly, book, registered, model, called, ...others }) => {
    const { "not-used": notUsed, "not-called": notCalled, "group-picture": pictured, "group-evening": brought } = others;
    return changeBike(
      ctx,
      given({ bike, name, state, used, notUsed, perYear: yearly, byTheBook: book, registered, model, pictured, brought, called, notCalled }),
    );
  },
  say: sayChanged,
});
