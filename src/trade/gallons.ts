// Which gallon fuel is sold and thought of in, by the place of a group (the places of trade/tread-law).

import type { TreadLawPlace } from "./tread-law.ts";

type Gallon = "US gal" | "imp gal";

/** Common practice: consumption is told in miles a gallon of the place, whatever the pump counts. */
const GALLONS: Readonly<Partial<Record<TreadLawPlace, Gallon>>> = { "United Kingdom": "imp gal", "United States": "US gal" };

/** The gallon of a place, null where it has none or the place is not known. */
export const gallonOf = (place: string | null): Gallon | null => (place === null ? null : (GALLONS[place as TreadLawPlace] ?? null));
