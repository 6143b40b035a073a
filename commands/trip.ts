// /trip: a trip planned, and what it asks of the bike; without a plan, those planned.

import { SPEC_USES } from "../src/core/spec/spec.ts";
import { given } from "../src/usecases/given.ts";
import { planTrip, type TripAnswer } from "../src/usecases/trip.ts";
import { define, shapeOf } from "./define.ts";
import { sayTrips, tripAnswer } from "./replies/trip.ts";

export const trip = define({
  name: "trip",
  sub: null,
  options: {
    plan: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
    load: { takes: "choice", required: false, choices: SPEC_USES },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<TripAnswer>(tripAnswer),
  run: (ctx, { plan, bike, load }) => planTrip(ctx, given({ plan, bike, load })),
  say: sayTrips,
});
