// A ride that several are on, as the group sees it, and what joining one answers.

import { z } from "zod";
import type { Said } from "../../src/chat/reply.ts";
import type { Joined, RideShown } from "../../src/usecases/ride-together.ts";
import type { Words } from "../../src/words/en/english.ts";
import { distance, localDate, unit } from "../shapes.ts";
import { press, said } from "./said.ts";
import { sayTrips, tripShape } from "./trip.ts";

export function sayRide(ride: RideShown, words: Words): Said {
  const { labels } = words.ride;
  return said(words.ride.lines(ride), {
    title: words.ride.title(ride),
    actions: [press("ride-along", ride.ride, labels.along), press("ride-who", ride.ride, labels.who)],
  });
}

export function sayJoined(joined: Joined, words: Words): Said {
  if (joined.is === "along") {
    const whole = sayTrips({ trips: [joined.trip], did: "planned", replaced: joined.replaced }, words);
    return { ...whole, lines: [words.ride.joined(joined.trip.nickname), ...whole.lines] };
  }
  return said([words.ride.which()], {
    actions: joined.bikes.slice(0, MOST_BUTTONS).map(({ bike, nickname }) => press("ride-along", `${joined.ride}.${bike}`, words.ride.labels.with(nickname))),
  });
}

/** A platform's message holds five rows of five. */
const MOST_BUTTONS = 25;

export const rideShape = z.object({
  ...{ ride: z.string(), from: localDate, to: localDate, distance, more: z.number() },
  along: z.array(z.object({ nickname: z.string(), owner: z.string().nullable(), unit, kit: z.array(z.string()) })),
});
export const joinedShape = z.union([
  z.object({ is: z.literal("which"), ride: z.string(), bikes: z.array(z.object({ bike: z.string(), nickname: z.string() })) }),
  z.object({ is: z.literal("along"), trip: tripShape, replaced: z.array(z.string()) }),
]);
