// What is moulded on a sidewall: size, construction, load index and speed symbol.

/** How the cords of a tyre lie; cross-ply and diagonal are other names of bias ply. Common practice. */
export type Construction = "radial" | "bias belted" | "bias ply";

export type TyreMarking = {
  /** As typed, without the load and speed. */
  readonly size: string;
  readonly construction: Construction | null;
  readonly load: { readonly index: number; readonly kilograms: number } | null;
  /** `above`: Z in the size promises more than the figure, and how much stands in brackets or with the maker. */
  readonly speed: { readonly symbol: string; readonly kmh: number; readonly above: boolean } | null;
};

/** Loads and speeds by their marks: tables of trade/. */
export type MarkTables = { readonly loads: Readonly<Record<number, number>>; readonly speeds: Readonly<Record<string, number>> };

/** Reads "120/70ZR17 M/C (58W)", "4.00-18 64S" or "58W" alone; null when nothing of it is a mark. */
export function readMarking(typed: string, { loads, speeds }: MarkTables): TyreMarking | null {
  const text = typed.trim().toUpperCase();
  const rated = /(?:^|[\s(])(\d{2,3})\s*([A-Z])\)?(?=\s|$|\))/u.exec(text);
  const kilograms = rated === null ? undefined : loads[Number(rated[1])];
  const kmh = rated === null ? undefined : speeds[rated[2] ?? ""];
  const sized = /(?:(\d{2,3})\/(\d{2,3})|(\d\.\d{2}|M[A-Z]\d{2}))\s*-?\s*(?:Z?[RB]?)\s*-?\s*(?:([A-Z])\s*)?-?\s*(\d{2})\b/u.exec(text);
  if (sized === null && kilograms === undefined) return null;
  const size = sized?.[0].trim() ?? "";
  const open = /\dZ[RB-]|\dZ\s/u.test(size) ? { symbol: "Z", kmh: 240, above: true } : null;
  return {
    size,
    construction: sized === null ? null : /R/u.test(size) ? "radial" : /B/u.test(size) ? "bias belted" : "bias ply",
    load: rated === null || kilograms === undefined ? null : { index: Number(rated[1]), kilograms },
    speed: rated !== null && kilograms !== undefined && kmh !== undefined ? { symbol: rated[2] ?? "", kmh, above: false } : open,
  };
}

/** What was typed of several tyres, cut before each size: "front 120/70ZR17 58W rear 180/55ZR17 73W". Another size of the same tyre, in brackets or in the older way of writing with no load of its own, begins none. */
export function markingsApart(typed: string): readonly string[] {
  const [metric = [], inch = []] = [/(?<![(\d/])\d{2,3}\/\d{2,3}/gu, /(?<![(\d.])\d\.\d{2}\s*-\s*\d{2}/gu].map((size) =>
    [...typed.matchAll(size)].map(({ index }) => index),
  );
  const both = [...metric, ...inch].toSorted((a, b) => a - b);
  const pieces = cut(typed, both);
  const starts = pieces.every((piece) => RATED.test(piece)) ? both : metric.length >= inch.length ? metric : inch;
  return cut(typed, starts);
}
const RATED = /\s\(?\d{2,3}\s*[A-Z]\)?(?![\p{L}\p{N}])/iu;
const cut = (typed: string, starts: readonly number[]): readonly string[] =>
  starts.length < 2 ? [typed] : starts.map((at, n) => typed.slice(n === 0 ? 0 : at, starts[n + 1]));

/** Are two ends of one bike built alike? Null when either is not told. */
export const builtAlike = (a: TyreMarking["construction"], b: TyreMarking["construction"]): boolean | null => (a === null || b === null ? null : a === b);
