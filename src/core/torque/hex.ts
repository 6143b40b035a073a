// Which spanner of the other system goes on a hex, and whether it may be loaded.

/** A hex width by name, in millimetres. */
export type HexSize = { readonly name: string; readonly width: number };

/** `clearance` in millimetres; `grip` "safe" may be loaded, "loose" may round the corners, "tight" is so little too small that it may go on, "no" does not go on. */
export type CrossFit = { readonly spanner: HexSize; readonly clearance: number; readonly grip: "safe" | "loose" | "tight" | "no" };

/** The most play, as a share of the width, at which corners are held: 7/16 in on 11 mm (1.0 %) is, 13 mm on 1/2 in (2.4 %) is not. Common practice. */
const MOST_PLAY = 0.012;
/** Up to this much too small, in mm, nominal widths cannot say: spanners are made a little over theirs, and heads a little under. Common practice. */
const MAY_GO_ON = 0.1;
/** Beyond this the size is another one. */
const NEIGHBOUR = 0.06;

/** The spanners near a hex head, the closest first; those a little too small are named so that nobody forces them. */
export function crossFits(head: HexSize, spanners: readonly HexSize[]): readonly CrossFit[] {
  return spanners
    .map((spanner) => ({ spanner, clearance: spanner.width - head.width }))
    .filter(({ clearance }) => Math.abs(clearance) <= head.width * NEIGHBOUR)
    .map(({ spanner, clearance }): CrossFit => ({ spanner, clearance, grip: gripOf(clearance, head.width) }))
    .sort((a, b) => Math.abs(a.clearance) - Math.abs(b.clearance));
}

function gripOf(clearance: number, width: number): CrossFit["grip"] {
  if (clearance < -MAY_GO_ON - 1e-9) return "no";
  if (clearance < -1e-9) return "tight";
  return clearance <= width * MOST_PLAY ? "safe" : "loose";
}
