// At what temperature a mix of antifreeze and water begins to freeze, by a table, and what share a temperature asks for. Shares in per cent by volume, temperatures in °C.

import type { Judgement, Limit } from "../judgement/verdict.ts";

/** Rising shares with falling temperatures. */
export type FreezingTable = readonly (readonly [share: number, celsius: number, ...rest: readonly unknown[]])[];

/** Where ice begins to form; of a share beyond the table, the last row's: it is good to that at least. */
export function freezesAtShare(share: number, table: FreezingTable): number {
  return between(share, table, 0, 1);
}

/** The least share that is good to a temperature; null where the table does not reach so far. */
export function shareFor(celsius: number, table: FreezingTable): number | null {
  const last = table.at(-1);
  return last === undefined || celsius < last[1] ? null : between(celsius, table, 1, 0);
}

/**
 * A mix held against the one that is printed: mixed so it is right, and by what mixing is off it is nearly so.
 * @param limit what is printed; of its two ends the one below is the weaker, of one at the top ("°C and colder") that is
 * @param weakest what it may come to, off by as much as mixing is
 * @param fine the finest step of the tool
 */
export function judgeMix(value: number, limit: Limit, weakest: number, fine: number): Judgement {
  const { min, max } = limit;
  const side = min === null ? "high" : "low";
  const weaker = (than: number): number => (side === "low" ? than - value : value - than);
  const room = -weaker(min ?? max ?? 0);
  if (room < -fine / 2) return { is: weaker(weakest) > fine / 2 ? "beyond limit" : "near limit", side, room, limit };
  // More than is printed protects as well, and cools a little worse.
  if (min !== null && max !== null && value > max + fine / 2) return { is: "near limit", side: "high", room: max - value, limit };
  return { is: "within", side: null, room: null, limit };
}

function between(at: number, table: FreezingTable, from: 0 | 1, to: 0 | 1): number {
  const rising = (table.at(-1)?.[from] ?? 0) > (table[0]?.[from] ?? 0);
  const next = table.findIndex((row) => (rising ? row[from] >= at : row[from] <= at));
  const [below, above] = next < 0 ? [table.at(-1), table.at(-1)] : [table[Math.max(0, next - 1)], table[next]];
  if (below === undefined || above === undefined) return Number.NaN;
  const span = above[from] - below[from];
  return span === 0 ? above[to] : below[to] + ((at - below[from]) / span) * (above[to] - below[to]);
}
