// What is moulded on a tyre, typed by itself to the bot: explained, and offered to be kept as the size in the bike's manual.

import type { BikeId } from "../core/ids.ts";
import type { TyreMarking } from "../core/tyre/marking.ts";
import { readMarking } from "../core/tyre/marking.ts";
import { onlyMarksSaid } from "../message/tyre-marks.ts";
import { LOAD_KILOGRAMS, SPEED_KMH } from "../trade/tyres.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import type { LimitSaid } from "./limits-said.ts";
import { knownOf } from "./own-garage.ts";

/** `saves`: the specs that it could be kept as, of the one bike meant. */
export type TyreMarkSaid = { readonly marking: TyreMarking; readonly place: "front" | "rear" | null; readonly saves: readonly LimitSaid[] };

/** Empty where the message says anything else. @param named the bikes that it names */
export function tyreMarksHeard(ctx: Ctx, all: readonly Garaged[], text: string, named: readonly BikeId[]): readonly TyreMarkSaid[] {
  const known = knownOf(ctx, all);
  const said = [known.vocabulary, ...(known.also ?? []).map(({ vocabulary }) => vocabulary)]
    .map((vocabulary) => onlyMarksSaid(text, { ...known, vocabulary }))
    .find((marks) => marks.length > 0);
  const meant = named.length > 0 ? named : all.map(({ bike }) => bike.id);
  const [bike] = meant;
  return (said ?? []).flatMap(({ typed, place }): readonly TyreMarkSaid[] => {
    const marking = readMarking(typed, { loads: LOAD_KILOGRAMS, speeds: SPEED_KMH });
    if (marking === null || marking.size === "") return [];
    const ends = bike === undefined || meant.length > 1 ? [] : place === null ? (["front", "rear"] as const) : [place];
    return [{ marking, place, saves: ends.map((end): LimitSaid => ({ bike: bike as BikeId, key: `${end} tyre size`, value: typed })) }];
  });
}
