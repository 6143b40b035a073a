// "Ash, Birch" as the name of a bike: two bikes told at once, each of which has questions of its own.

import type { Ctx } from "./context.ts";

/** `odometer` null where it is not told whose figure it is. */
export type BikeNamed = { readonly name: string; readonly odometer: string | null; readonly kind: string };
/** `whole`: the name as typed, where it may be one after all, as "Salt and Pepper" may; null where it cannot. */
export type SeveralBikes = { readonly is: "several"; readonly bikes: readonly BikeNamed[]; readonly whole: BikeNamed | null };

/** As many as one answer has room for beside what it says. */
const MOST = 8;

/** The bikes that a name tells of; null where it is one name. A comma, a semicolon or a stroke parts names; "and" may be part of one. */
export function severalBikes(
  ctx: Pick<Ctx, "vocabulary" | "also">,
  told: { readonly name: string; readonly odometer: string; readonly kind: string },
): SeveralBikes | null {
  const ands = [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].flatMap(({ and }) => and);
  const apart = (text: string, marks: RegExp): readonly string[] =>
    text
      .split(marks)
      .flatMap((each) => splitAt(each, ands))
      .map((each) => each.trim())
      .filter((each) => each !== "");
  const names = apart(told.name, /,(?!\d{3}(?!\d))|[;/|]/u);
  if (names.length < 2 || names.length > MOST) return null;
  // A comma between three digits belongs to a figure.
  const figures = apart(told.odometer, /,(?!\d{3}(?!\d))|[;/|]/u);
  const bikes = names.map((name, n) => ({ name, odometer: figures.length === names.length ? (figures[n] ?? null) : null, kind: told.kind }));
  return { is: "several", bikes, whole: /[,;/|]/u.test(told.name) ? null : { ...told, odometer: figures.length === 1 ? told.odometer : null } };
}

/** Cut at each word for "and". */
function splitAt(text: string, ands: readonly string[]): readonly string[] {
  const parts: string[][] = [[]];
  for (const word of text.split(/\s+/u))
    if (ands.includes(word.toLowerCase())) parts.push([]);
    else parts.at(-1)?.push(word);
  return parts.map((words) => words.join(" "));
}
