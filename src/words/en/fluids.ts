// Hydraulic fluids in English: what must not meet in the brakes, and what a mix is worth.

import type { FluidClassName } from "../../trade/fluids.ts";

type Put = {
  readonly nickname: string;
  readonly inside: FluidClassName;
  readonly added: FluidClassName;
  readonly worth: FluidClassName | null;
  readonly wet: number | null;
};

const FAMILY: Readonly<Record<FluidClassName, string>> = {
  "DOT 3": "glycol",
  "DOT 4": "glycol",
  "DOT 5.1": "glycol",
  "DOT 5": "silicone",
  "mineral oil": "mineral oil",
};

/** A fluid other than the bike's own was put in. */
export const fluidPut = ({ nickname, inside, added, worth, wet }: Put): string =>
  worth === null
    ? `Do not ride: ${added} is ${FAMILY[added]}, ${nickname} is entered with ${inside}, ${FAMILY[inside]}, and the two never mix: seals swell and the brake can go. Have it all flushed first. If the entry is wrong, put it right with /bike fitted.`
    : `${added} mixes with ${inside}; count the mix as ${worth}${wet === null ? "" : `, which boils from ${wet} °C once it has drawn water (49 CFR 571.116)`}.`;
