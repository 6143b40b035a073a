// Services of a bike's plan by the figure that a member names them with.

import type { ItemKey } from "../core/ids.ts";
import { type DistanceUnit, dialOf, riddenOf } from "../core/quantity/distance.ts";
import type { Gap } from "../core/reading/intent.ts";
import { itemsOfService, liesBehind, servicesNear } from "../core/sheet/select.ts";
import { riddenAtDial } from "../core/usage/track.ts";
import type { Garaged } from "./garage.ts";

type Named = Extract<Gap, { need: "service" }>;

/** A service that the plan prints: its figure in the bike's column, what it comes to, and what of it the member did before, which is not among that. */
export type ServiceOf = { readonly at: number; readonly unit: DistanceUnit; readonly items: readonly ItemKey[]; readonly own: readonly ItemKey[] };

/** Does the figure lie behind what was last read, by more than a service is early or late? */
export const isBehind = (g: Garaged, { figure, unit }: Named): boolean =>
  liesBehind(g.facts, g.at, riddenAtDial(g.track, dialOf(figure, unit ?? g.unit), g.today));

/** The service at the figure named or, where the plan has none there, the nearest either side. Those that come to nothing are left out. */
export function servicesNamed(g: Garaged, { figure, unit, own = [] }: Named): readonly ServiceOf[] {
  const { column } = g.facts;
  const point = riddenAtDial(g.track, dialOf(figure, unit ?? g.unit), g.today);
  return servicesNear(g.facts, point)
    .map((at) => {
      const all = itemsOfService(g.facts, g.at, riddenOf(at, column));
      const rest = all.filter((item) => !own.includes(item));
      // Whoever ticked all of it off and names it all the same means it.
      return { at, unit: column, items: rest.length > 0 ? rest : all, own: rest.length > 0 ? all.filter((item) => own.includes(item)) : [] };
    })
    .filter(({ items }) => items.length > 0);
}
