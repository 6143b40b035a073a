// The trip meter, added to the last odometer figure: "trip meter 143 since the last reading".

import { fromCanonical, toCanonical } from "../core/quantity/units.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { asDial } from "./dial-said.ts";
import { figureAt, measures } from "./figures.ts";
import { isPlainPart } from "./kind-of.ts";
import { bikeAt, dayAt, type Layout, phrasesInside, type SaidAt } from "./layout.ts";
import { tokensOf } from "./pieces.ts";

/** The odometer that a trip meter comes to. That it was zeroed at the last reading must be said, or is asked. With no last figure there is nothing to add to. */
export function tripSaid(
  layout: Layout,
  clause: Clause,
  used: ReadonlySet<number>,
): { readonly readings: readonly SaidAt[]; readonly taken: ReadonlySet<number> } {
  const readings: SaidAt[] = [];
  const taken = new Set<number>();
  if (layout.phrases.trip.length === 0 && !layout.tokens.some((_token, at) => isTripAlone(layout, at))) return { readings, taken };
  for (const part of clause.parts) {
    const said = phrasesInside(layout.phrases.trip, part);
    const alone = tokensOf(part).some((at) => isTripAlone(layout, at)) && isPlainPart(layout, part);
    if (said.length === 0 && !alone) continue;
    const beside = dialBeside(layout, part, said);
    if (beside !== null) {
      readings.push(beside.dial);
      for (const at of beside.at) taken.add(at);
      continue;
    }
    for (let at = part.from; at <= part.to; at++) {
      const figure = used.has(at) ? null : figureAt(layout, at);
      if (figure === null || figure.token.fraction !== null) continue;
      const of = measures(figure);
      const named = alone || said.some(({ are }) => are.includes("trip"));
      if (of !== null && of !== "distance") continue;
      // "143 mi since the last reading" says so without naming the meter.
      if (!named && of === null) continue;
      taken.add(at);
      // "14,350, trip 212": the dial itself is said.
      if (isDialSaid(layout, clause, part)) continue;
      const meant = bikeAt(layout, { from: at, to: at });
      const typed = of === "distance" ? (figure.units[0] as "mi" | "km") : null;
      const { bike } = meant;
      if (bike === null ? meant.gap === null : bike.lastFigure === null) continue;
      const unit = typed ?? bike?.unit ?? null;
      const { value } = figure.token;
      const added = bike === null || unit === null || unit === bike.unit ? value : fromCanonical(toCanonical(value, unit), bike.unit);
      const day = dayAt(layout, part, [part]);
      const sure = phrasesInside(layout.phrases.trip, { from: clause.from, to: clause.to }).some(({ are }) => are.includes("since last"));
      const gaps: Gap[] = [
        ...(meant.gap === null ? [] : [meant.gap]),
        ...(day.gap === null ? [] : [day.gap]),
        ...(sure ? [] : [{ need: "sure" as const, because: "trip" as const }]),
      ];
      const reading: LogReading = {
        do: "log reading",
        bike: bike?.id ?? null,
        kind: "odometer",
        place: null,
        value: Math.round(((bike?.lastFigure ?? 0) + added) * 10) / 10,
        unit: bike?.unit ?? null,
        typed: { text: figure.token.text, unit: figure.token.unitText },
        on: day.on,
        detail: { trip: { value, unit, typed: figure.token.text } },
        gaps,
      };
      readings.push({ at, reading });
    }
  }
  return { readings, taken };
}

/** "Trip 143": the word by itself, right before its figure. */
const isTripAlone = ({ tokens, known }: Layout, at: number): boolean =>
  among(known.vocabulary.measuring.tripAlone, wordAt(tokens, at)) && tokens[at + 1]?.is === "number";

/** "Odo 14,350 trip 212": beside what the dial shows the trip meter adds nothing. */
function dialBeside(layout: Layout, part: Part, said: readonly { readonly to: number }[]): { readonly dial: SaidAt; readonly at: readonly number[] } | null {
  const figures = tokensOf(part).flatMap((at) => figureAt(layout, at) ?? []);
  const isOfTrip = (at: number): boolean => isTripAlone(layout, at - 1) || said.some(({ to }) => to === at - 1);
  const trip = figures.find(({ at }) => isOfTrip(at));
  const [other, ...more] = figures.filter((figure) => figure !== trip);
  if (trip === undefined || other === undefined || more.length > 0) return null;
  const last = bikeAt(layout, { from: other.at, to: other.at }).bike?.lastFigure ?? null;
  if (last === null || other.token.value < last || trip.token.value > other.token.value) return null;
  const reading = asDial(layout, part, other, new Set(), true);
  return reading === null ? null : { dial: { at: other.at, reading }, at: [other.at, trip.at] };
}

/** Does another part of a clause hold a figure that the dial may well show by now? */
function isDialSaid(layout: Layout, clause: Clause, part: Part): boolean {
  const last = bikeAt(layout, part).bike?.lastFigure ?? null;
  if (last === null) return false;
  const figures = clause.parts.filter((each) => each !== part).flatMap((each) => tokensOf(each).flatMap((at) => figureAt(layout, at) ?? []));
  return figures.some(({ token }) => token.value >= last && token.value < last * 2 && token.value >= 1000);
}
