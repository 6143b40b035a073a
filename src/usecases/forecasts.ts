// Forecasts already learnt. Learning one goes through the whole track many times, and a busy group asks for the same bike's again and again.
// A forecast is a pure function of what it was learnt from, so one is kept beside all of that and used only while all of that is the same: nothing kept can be stale.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId } from "../core/ids.ts";
import type { Stretch } from "../core/quantity/distance.ts";
import { type Forecast, forecast, type Known } from "../core/usage/forecast.ts";
import type { Track } from "../core/usage/track.ts";

/** Bikes whose forecasts are kept, about 10 kB each: some large groups. */
const KEPT = 500;

type Learnt = { readonly from: string; readonly forecast: Forecast };
const learnt = new Map<BikeId, Learnt>();

/** The forecast of a bike's track; see `core/usage/forecast`. */
export function forecastFor(bike: BikeId, track: Track, known: Known, perYear: Stretch | null, groupYear: Stretch | null, today: LocalDate): Forecast {
  let from = `${today} ${perYear} ${groupYear}`;
  for (const { on, ridden } of track.points) from += `,${on} ${ridden}`;
  for (const layUp of known.layUps) from += `,laid up ${layUp.from} ${layUp.to}`;
  for (const trip of known.trips) from += `,trip ${trip.from} ${trip.to} ${trip.distance}`;
  const before = learnt.get(bike);
  // Taken out and put back last, so that the first is the one that nobody asked for longest.
  learnt.delete(bike);
  const kept =
    before?.from === from ? before : { from, forecast: forecast(track, known, { perYear }, groupYear === null ? null : { perYear: groupYear }, today) };
  learnt.set(bike, kept);
  for (const oldest of learnt.keys()) {
    if (learnt.size <= KEPT) break;
    learnt.delete(oldest);
  }
  return kept.forecast;
}
