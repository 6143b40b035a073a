// Which spanner of the other system goes on a hex, and whether it may be loaded.

/** A hex width by name, in millimetres. */
export type HexSize = { readonly name: string; readonly width: number };

/** `clearance` in millimetres; `grip` "safe" may be loaded, "loose" may round the corners, "no" does not go on. */
export type CrossFit = { readonly spanner: HexSize; readonly clearance: number; readonly grip: "safe" | "loose" | "no" };

/** The most play, as a share of the width, at which corners are held: 7/16 in on 11 mm (1.0 %) is, 13 mm on 1/2 in (2.4 %) is not. Common practice. */
const MOST_PLAY = 0.012;
/** Beyond this the size is another one. */
const NEIGHBOUR = 0.06;

/** The spanners near a hex head, the closest first; those a little too small are named so that nobody forces them. */
export function crossFits(head: HexSize, spanners: readonly HexSize[]): readonly CrossFit[] {
  return spanners
    .map((spanner) => ({ spanner, clearance: spanner.width - head.width }))
    .filter(({ clearance }) => Math.abs(clearance) <= head.width * NEIGHBOUR)
    .map(
      ({ spanner, clearance }): CrossFit => ({ spanner, clearance, grip: clearance < -1e-9 ? "no" : clearance <= head.width * MOST_PLAY ? "safe" : "loose" }),
    )
    .sort((a, b) => Math.abs(a.clearance) - Math.abs(b.clearance));
}
