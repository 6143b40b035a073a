// A planned trip called off, put back to the earlier plan, or ridden together.

import { type Joined, type RideShown, rideAlong, shareTrip, showRide } from "../../src/usecases/ride-together.ts";
import { backToEarlier, callOff, type TripAnswer } from "../../src/usecases/trip.ts";
import { handler, shapeOf } from "../define.ts";
import { joinedShape, rideShape, sayJoined, sayRide } from "../replies/ride.ts";
import { sayTrips, tripAnswer } from "../replies/trip.ts";

const own = { kind: "press", visibility: "private", data: shapeOf<TripAnswer>(tripAnswer), say: sayTrips } as const;
export const tripOff = handler<TripAnswer>({ ...own, settles: true, run: (ctx, { subject }) => callOff(ctx, { trip: subject }) });
export const tripBack = handler<TripAnswer>({ ...own, settles: true, run: (ctx, { subject }) => backToEarlier(ctx, { trip: subject }) });

const ride = { kind: "press", data: shapeOf<RideShown>(rideShape), say: sayRide } as const;
/** Before all: the rider asks for it, and no other bike is told of but those whose riders press. */
export const tripShare = handler<RideShown>({ ...ride, visibility: "shared", run: (ctx, { subject }) => shareTrip(ctx, { trip: subject }) });
export const rideWho = handler<RideShown>({ ...ride, visibility: "private", run: (ctx, { subject }) => showRide(ctx, { ride: subject }) });
export const rideJoin = handler<Joined>({
  kind: "press",
  visibility: "private",
  data: shapeOf<Joined>(joinedShape),
  run: (ctx, { subject }) => {
    const [of = "", bike] = subject.split(".");
    return rideAlong(ctx, bike === undefined ? { ride: of } : { ride: of, bike });
  },
  say: sayJoined,
});
