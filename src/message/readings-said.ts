// The readings of one clause: odometer figures, measured values, levels, fuel.

import type { LogReading } from "../core/reading/intent.ts";
import type { Clause } from "./clauses.ts";
import { asDial } from "./dial-said.ts";
import { figureAt } from "./figures.ts";
import { fuelSaid } from "./fuel-said.ts";
import { kindWordsIn } from "./kind-of.ts";
import type { Layout, SaidAt } from "./layout.ts";
import { levelsSaid } from "./levels-said.ts";
import { rowOf } from "./measured-figures.ts";
import { type Heading, measuredSaid } from "./measured-said.ts";
import { withSame } from "./same-said.ts";
import { tripSaid } from "./trip-said.ts";
import { tyreCodesSaid } from "./tyre-codes-said.ts";
import { possibleUnits } from "./value-units.ts";

function holdsNumber({ tokens }: Layout, { from, to }: Clause): boolean {
  for (let at = from; at <= to; at++) if (tokens[at]?.is === "number") return true;
  return false;
}

/**
 * @param used tokens that work has already accounted for
 * @param heading kinds named by the line before and nothing else
 */
export function readingsSaid(layout: Layout, clause: Clause, used: ReadonlySet<number>, heading: Heading): readonly LogReading[] {
  // Without a figure nothing is read but a level.
  if (!holdsNumber(layout, clause))
    return withSame(
      layout,
      clause,
      levelsSaid(layout, clause, used).toSorted((a, b) => a.at - b.at),
    );
  const dials: SaidAt[] = [];
  const fuel = fuelSaid(layout, clause, used);
  const trip = tripSaid(layout, clause, new Set([...used, ...fuel.taken]));
  const taken = new Set([...used, ...fuel.taken, ...trip.taken]);
  for (const part of clause.parts) {
    const named = kindWordsIn(layout, part).flatMap(({ are }) => (are.includes("odometer") ? [] : are));
    for (let at = part.from; at <= part.to; at++) {
      if (taken.has(at)) continue;
      const figure = figureAt(layout, at);
      if (figure === null || (figure.units.length === 0 && named.some((kind) => possibleUnits(kind, figure.token.value).length > 0))) continue;
      if (rowOf(layout, part, figure.token) !== null) continue;
      const dial = asDial(layout, part, figure, used);
      if (dial === null) continue;
      dials.push({ at, reading: dial });
      taken.add(at);
    }
  }
  const all = [
    ...dials,
    ...trip.readings,
    ...fuel.readings,
    ...measuredSaid(layout, clause, taken, heading),
    ...levelsSaid(layout, clause, used),
    ...tyreCodesSaid(layout, clause, used),
  ];
  return withSame(
    layout,
    clause,
    all.sort((a, b) => a.at - b.at),
  );
}
