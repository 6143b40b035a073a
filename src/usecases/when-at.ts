// When the dial showed a figure: as far as the readings and the work on record tell.

import { LONG_AGO } from "../core/calendar/arithmetic.ts";
import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { Dial, Ridden } from "../core/quantity/distance.ts";
import { riddenAtDial } from "../core/usage/track.ts";
import type { Garaged } from "./garage.ts";

/** The span in which a bike reached a figure of its dial, from long ago where nothing says how early; null where it is not known to have come so far yet. */
export function whenAtDial(g: Garaged, dial: Dial, typed: string): VagueDate | null {
  const ridden = riddenAtDial(g.track, dial, g.today);
  const later = knownPoints(g).filter((point) => point.ridden >= ridden);
  const earlier = knownPoints(g).filter((point) => point.ridden <= ridden);
  if (later.length === 0) return null;
  const to = later.map(({ to }) => to).reduce((a, b) => (b < a ? b : a));
  const from = earlier.map((point) => point.from).reduce((a, b) => (b > a ? b : a), g.bike.knownFrom.wholeSinceNew ? g.bike.knownFrom.date : LONG_AGO);
  return { from: from < to ? from : to, to, typed };
}

type Known = { readonly from: LocalDate; readonly to: LocalDate; readonly ridden: Ridden };

/** Where the bike stood on which day: readings, and work of which both were said. */
const knownPoints = ({ track, work }: Garaged): readonly Known[] => [
  ...track.points.map(({ on, ridden }) => ({ from: on, to: on, ridden })),
  ...work.flatMap(({ dial, on }) => (dial === null ? [] : [{ from: on.from, to: on.to, ridden: riddenAtDial(track, dial, on.from) }])),
];
