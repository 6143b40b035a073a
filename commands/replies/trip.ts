// A planned trip as it is shown, and its shape in JSON lines.

import { z } from "zod";
import type { Said } from "../../src/chat/reply.ts";
import { SPEC_USES } from "../../src/core/spec/spec.ts";
import type { TripAnswer, TripShown } from "../../src/usecases/trip.ts";
import type { Words } from "../../src/words/en/english.ts";
import { distance, localDate, unit } from "../shapes.ts";
import { press, said } from "./said.ts";
import { specButton } from "./spec.ts";

export function sayTrips({ trips, did, replaced }: TripAnswer, words: Words): Said {
  if (did === "called off") return said(trips.map(words.trip.calledOff));
  if (trips.length === 0) return said([words.trip.none()]);
  const lines = trips.flatMap((trip, n) => [...(n > 0 ? [""] : []), ...linesOf(trip, words)]);
  if (replaced.length > 0) lines.push(words.trip.replaced(replaced));
  if (did === "restored") lines.unshift(words.trip.restored());
  const caution = trips.flatMap(({ items }) => items).find((item) => item.caution !== null)?.caution ?? "tyres";
  const { labels } = words.trip;
  return said(lines, {
    caution: words.caution(caution),
    actions: trips.flatMap((shown) => [
      press("check-begin", `${shown.bike}.pre-trip`, labels.check(shown.nickname)),
      press("trip-off", shown.trip, labels.off),
      ...(did === "planned" && replaced.length > 0 ? [press("trip-back", shown.trip, labels.back)] : []),
      press("trip-share", shown.trip, words.ride.labels.share),
      press("show-due", shown.bike, labels.due),
      ...pressuresMissing(shown).map(({ at }) => specButton(shown, `${at} tyre pressure`, shown.use, labels.pressure(at, shown.use), words)),
    ]),
  });
}

/** What is not known for the load that the trip is ridden with. */
const pressuresMissing = ({ use, pressures }: TripShown): TripShown["pressures"] => (use === "solo" ? [] : pressures.filter(({ loaded }) => loaded === null));

function linesOf(trip: TripShown, words: Words): string[] {
  const w = words.trip;
  const lines = [w.head(trip)];
  if (trip.defects > 0) lines.push(w.defects(trip.defects));
  if (trip.ungraded > 0) lines.push(w.ungraded(trip.ungraded));
  if (trip.start === null) lines.push(w.noStart());
  if (trip.unknown.length > 0) lines.push(w.unknown(trip.unknown));
  if (isQuiet(trip)) lines.push(w.nothing());
  for (const when of ["before", "during", "after"] as const) {
    const here = trip.items.filter((item) => item.when === when);
    const wear = when === "before" ? [...trip.wear.map((worn) => w.wear(worn, trip)), ...trip.nearing.map((worn) => w.nearing(worn, trip))] : [];
    if (here.length + wear.length > 0)
      lines.push(
        w.heading[when],
        ...wear,
        ...together(here).map((group) =>
          w.items(
            group.map(({ name }) => name),
            group[0] as TripItem,
            trip,
          ),
        ),
      );
  }
  const faster = trip.wear.length === 0 ? null : w.faster(trip.use);
  if (faster !== null) lines.push(faster);
  if (trip.unmeasured.length > 0) lines.push(w.unmeasured(trip.unmeasured, trip));
  return [...lines, ...w.pressures(trip.use, trip.pressures), w.kit(trip.kit), w.daily(trip.daily)];
}

/** Nothing of it wants a word: only then may it be said that nothing falls due. */
const isQuiet = ({ items, wear, nearing, unknown }: TripShown): boolean =>
  items.length + nearing.length + unknown.length === 0 && wear.every(({ is }) => is === "enough");

type TripItem = TripShown["items"][number];

/** Items that fall due at the same point, and of which the same holds, share a line. */
function together(items: readonly TripItem[]): readonly (readonly TripItem[])[] {
  const groups = new Map<string, TripItem[]>();
  for (const item of items) {
    const key = item.when === "during" ? `${item.into}|${item.on}|${item.counts}` : `${item.when === "after" && item.counts}`;
    groups.set(key, [...(groups.get(key) ?? []), item]);
  }
  return [...groups.values()];
}

const left = z.object({ low: distance, likely: distance, high: distance.nullable() });
export const tripShape = z.object({
  trip: z.string(),
  bike: z.string(),
  nickname: z.string(),
  unit,
  from: localDate,
  to: localDate,
  distance,
  use: z.enum(SPEC_USES),
  typed: z.string(),
  start: distance.nullable(),
  items: z.array(
    z.object({
      item: z.string(),
      when: z.enum(["before", "during", "after"]),
      into: distance.nullable(),
      on: localDate.nullable(),
      counts: z.boolean(),
      name: z.string(),
      caution: z.string().nullable(),
    }),
  ),
  wear: z.array(z.object({ is: z.enum(["enough", "not enough"]), left, part: z.string(), value: z.number(), unit: z.string(), limit: z.number() })),
  unmeasured: z.array(z.string()),
  nearing: z.array(z.object({ part: z.string(), value: z.number(), unit: z.string(), limit: z.number() })),
  defects: z.number(),
  ungraded: z.number(),
  unknown: z.array(z.string()),
  pressures: z.array(z.object({ at: z.enum(["front", "rear"]), loaded: z.string().nullable(), solo: z.string().nullable() })),
  kit: z.array(z.string()),
  daily: z.array(z.string()),
});
export const tripAnswer = z.object({
  trips: z.array(tripShape),
  did: z.enum(["planned", "called off", "restored", "shown"]),
  replaced: z.array(z.string()),
});
