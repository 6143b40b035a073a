// What falls due until a day or an odometer ahead, an evening at a time.

import type { Said } from "../../src/chat/reply.ts";
import type { Evening, OutlookBike } from "../../src/usecases/outlook.ts";
import type { Words } from "../../src/words/en/english.ts";
import { cautionOf, unrecorded } from "./due.ts";
import { said } from "./said.ts";

export function sayOutlook(bikes: readonly OutlookBike[], words: Words): Said {
  const lines = bikes.flatMap((each, n) => [...(n > 0 ? [""] : []), ...linesOf(each, words)]);
  const falling = bikes.flatMap(({ evenings }) => evenings.flatMap(({ items }) => items.map(({ due }) => due)));
  return said(lines, { caution: cautionOf(falling, words) });
}

function linesOf(looked: OutlookBike, words: Words): string[] {
  const { bike, evenings, perhaps, unknown, first } = looked;
  const { outlook } = words;
  const items = evenings.reduce((sum, evening) => sum + evening.items.length, 0);
  return [
    outlook.until(bike.nickname, looked, bike),
    items > 0 ? outlook.count(items, evenings.length) : unknown > 0 ? outlook.nothingKnown(unknown) : outlook.nothing(),
    ...(bike.laidUp && items > 0 ? [outlook.standing()] : []),
    ...evenings.flatMap((evening) => ["", heading(evening, looked, words), ...itemsOf(evening, looked, words)]),
    ...(perhaps.length > 0 || first.length > 0 || (unknown > 0 && items > 0) ? [""] : []),
    ...(first.length > 0 ? [words.due.first(first)] : []),
    ...(perhaps.length > 0 ? [outlook.perhaps(perhaps.map((item) => item.due.name))] : []),
    ...(unknown > 0 && items > 0 ? [outlook.unknown(unknown)] : []),
  ];
}

/** Items of which nothing is known share a line where they share a reason. */
function itemsOf({ items }: Evening, { bike }: OutlookBike, words: Words): string[] {
  const known = items.filter(({ due }) => due.status !== "no record");
  const unknown = items.filter(({ due }) => due.status === "no record").map(({ due }) => due);
  return [...known.map(({ due }) => `- ${words.due.line(due, bike)}`), ...unrecorded(unknown, bike, words)];
}

function heading({ items, minutes }: Evening, { bike }: OutlookBike, words: Words): string {
  const [first] = items;
  return words.outlook.evening({ on: first?.on ?? null, at: first?.at ?? null, by: first?.by ?? "plan" }, items.length, minutes, bike);
}
