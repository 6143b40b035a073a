// Hydraulic fluids: which may meet in one circuit, and what the mix is then worth.

/** Bases that never mix: seals swell or dissolve, and the fluids part. */
export type FluidBase = "glycol" | "silicone" | "mineral oil";

/** A class of fluid: a row of trade/. Boiling points in °C, the least that its standard allows. */
export type FluidClass = {
  readonly base: FluidBase;
  readonly dry: number | null;
  readonly wet: number | null;
  /** Months after which it is changed. */
  readonly months: number;
  readonly source: string;
};

export type Mixing =
  /** They mix, and the mix is worth no more than the lower class: the index of that one. */
  { readonly may: true; readonly worth: 0 | 1; readonly same: boolean } | { readonly may: false; readonly bases: readonly [FluidBase, FluidBase] };

/** May `added` go into a circuit that holds `inside`? */
export function mixing(inside: FluidClass, added: FluidClass): Mixing {
  if (inside.base !== added.base) return { may: false, bases: [inside.base, added.base] };
  return { may: true, worth: (added.wet ?? 0) < (inside.wet ?? 0) ? 1 : 0, same: inside === added };
}
