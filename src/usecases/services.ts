// Services of a bike's plan by the figure that a member names them with.

import type { ItemKey } from "../core/ids.ts";
import { type DistanceUnit, dialOf, riddenOf } from "../core/quantity/distance.ts";
import type { Gap } from "../core/reading/intent.ts";
import { itemsOfService, liesBehind, servicesNear } from "../core/sheet/select.ts";
import { riddenAtDial } from "../core/usage/track.ts";
import type { Garaged } from "./garage.ts";

type Named = Extract<Gap, { need: "service" }>;

/** A service that the plan prints: its figure in the bike's column, and what it comes to. */
export type ServiceOf = { readonly at: number; readonly unit: DistanceUnit; readonly items: readonly ItemKey[] };

/** Does the figure lie behind what was last read, by more than a service is early or late? */
export const isBehind = (g: Garaged, { figure, unit }: Named): boolean =>
  liesBehind(g.facts, g.at, riddenAtDial(g.track, dialOf(figure, unit ?? g.unit), g.today));

/** The service at the figure named or, where the plan has none there, the nearest either side. Those that come to nothing are left out. */
export function servicesNamed(g: Garaged, { figure, unit }: Named): readonly ServiceOf[] {
  const { column } = g.facts;
  const point = riddenAtDial(g.track, dialOf(figure, unit ?? g.unit), g.today);
  return servicesNear(g.facts, point)
    .map((at) => ({ at, unit: column, items: itemsOfService(g.facts, g.at, riddenOf(at, column)) }))
    .filter(({ items }) => items.length > 0);
}
