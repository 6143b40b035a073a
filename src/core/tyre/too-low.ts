// A pressure that is too low even as it was read warm.

import type { Place, ReadingUnit } from "../reading/kinds.ts";

/** In kPa: by how much it is under the least that is wanted. `far`: the bike is not ridden on it. */
export type TooLow = {
  readonly place: Place | null;
  readonly typed: string;
  readonly unit: ReadingUnit;
  readonly under: number;
  readonly wanted: number;
  readonly far: boolean;
};
