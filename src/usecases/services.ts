// Services of a bike's plan by the figure that a member names them with, or that the dial showed when they were done.

import type { ItemKey } from "../core/ids.ts";
import { type DistanceUnit, dialOf, type Ridden, riddenOf } from "../core/quantity/distance.ts";
import type { Gap, RecordWork } from "../core/reading/intent.ts";
import { itemsOfService, liesBehind, servicesAbout, servicesMeant } from "../core/sheet/select.ts";
import { riddenAtDial } from "../core/usage/track.ts";
import type { Garaged } from "./garage.ts";

type Named = Extract<Gap, { need: "service" }>;

/** A service that the plan prints: its figure in the bike's column, what it comes to, and what of it the member did before, which is not among that. */
export type ServiceOf = { readonly at: number; readonly unit: DistanceUnit; readonly items: readonly ItemKey[]; readonly own: readonly ItemKey[] };

/** Does the figure lie behind what was last read, by more than a service is early or late? */
export const isBehind = (g: Garaged, { figure, unit }: Named): boolean => figure !== null && liesBehind(g.facts, g.at, pointOf(g, figure, unit));

/** So too of a service that was chosen. */
export const isServiceBehind = (g: Garaged, { at, unit }: ServiceOf): boolean => liesBehind(g.facts, g.at, riddenOf(at, unit));

/**
 * The service named by its figure or, with none, done at the dial's; where the plan has none so near, those either side. Those that come to nothing are left out.
 * Where nothing says which, those about the bike's present point, nearest first.
 */
export function servicesNamed(g: Garaged, { figure, unit, own = [] }: Named, dial: RecordWork["odometer"]): readonly ServiceOf[] {
  const { column } = g.facts;
  const said = figure !== null ? pointOf(g, figure, unit) : dial === null ? null : pointOf(g, dial.value, dial.unit);
  const marks = said !== null ? servicesMeant(g.facts, said) : servicesAbout(g.facts, g.at.ridden ?? (0 as Ridden));
  return marks
    .map((at) => {
      const all = itemsOfService(g.facts, g.at, riddenOf(at, column));
      const rest = all.filter((item) => !own.includes(item));
      // Whoever ticked all of it off and names it all the same means it.
      return { at, unit: column, items: rest.length > 0 ? rest : all, own: rest.length > 0 ? all.filter((item) => own.includes(item)) : [] };
    })
    .filter(({ items }) => items.length > 0);
}

const pointOf = (g: Garaged, figure: number, unit: DistanceUnit | null): Ridden => riddenAtDial(g.track, dialOf(figure, unit ?? g.unit), g.today);
