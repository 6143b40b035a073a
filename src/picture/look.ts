// How every picture looks: one ground, few inks, letters of a size that a phone shows. Widths and shapes say whatever colours say.

/**
 * Blue and orange of a set that colour-blind readers can tell apart (Okabe and Ito, 2008), two lighter tones of the same hues for areas, and inks for text.
 * Words are written in `line` or `quiet` only: both keep 4.5 to 1 on the ground; whatever else carries meaning keeps 3 to 1 (WCAG 2.2, 1.4.3 and 1.4.11).
 * An area cannot keep 3 to 1 from the ground and from the line on it at once: it has an edge in the ink of its line (`first`), else in `quiet`.
 * `faint` is for rules that say nothing by themselves.
 */
export const INK = {
  ground: "#faf8f4",
  line: "#1a1a1a",
  quiet: "#595959",
  faint: "#cfcac0",
  first: "#0072b2",
  second: "#d55e00",
  firstArea: "#b3d5ec",
  rest: "#eae6dd",
} as const;

/** Width of a page in its own units, and of the PNG in pixels: a phone shows it at two fifths, so that letters of 30 stand 12 high. */
export const WIDE = 900;
/** Sizes of letters: names and titles, and what stands beside a mark. */
export const TEXT = 30;
export const SMALL = 25;
/** From the page's edge to whatever is drawn. */
export const EDGE = 28;
/** Between those. */
export const INNER = WIDE - 2 * EDGE;
