// Calling a trip off.

import { callOff, type TripAnswer } from "../../src/usecases/trip.ts";
import { handler, shapeOf } from "../define.ts";
import { sayTrips, tripAnswer } from "../replies/trip.ts";

export const tripOff = handler<TripAnswer>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf<TripAnswer>(tripAnswer),
  run: (ctx, { subject }) => callOff(ctx, { trip: subject }),
  say: sayTrips,
});
