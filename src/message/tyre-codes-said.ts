// Date codes of tyres that are on, as readings: of which end each is, and what is to be asked of it.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import { kindRow } from "../core/reading/kinds.ts";
import { readTyreDate } from "../core/tyre/date-code.ts";
import { among } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import { isPlainPart } from "./kind-of.ts";
import { bikeAt, dayAt, type Layout, type SaidAt } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import { type Kinded, placesOf } from "./placed.ts";
import type { NumberToken } from "./scan.ts";

/** The date codes of a clause as readings. @param used figures that were said with the fitting of a tyre */
export function tyreCodesSaid(layout: Layout, clause: Clause, used: ReadonlySet<number>): readonly SaidAt[] {
  const all = clause.parts.flatMap((part) =>
    tokensOf(part).flatMap((at): readonly Kinded[] => {
      const token = layout.tokens[at];
      return token?.is === "number" && token.code !== undefined && !used.has(at) ? [kinded(part, at, token)] : [];
    }),
  );
  if (all.length === 0) return [];
  const places = placesOf(layout, all);
  return all.flatMap((each, n): readonly SaidAt[] => {
    const { at, part } = each.figure;
    const where = places[n] ?? null;
    // "My helmet is DOT 1417".
    const ofTyre = (other: number): boolean => among(layout.known.vocabulary.measuring.tyre, wordAt(layout.tokens, other));
    if (where === null && !tokensOf(part).some(ofTyre) && !isPlainPart(layout, part)) return [];
    const isBoth = where === "both" || (where === null && all.length === 1 && tokensOf(part).some((other) => isPlural(layout, other)));
    // Of a year there is nothing to keep at either end: it is asked about once.
    if (each.figure.token.code === "year") return [{ at, reading: readingOf(layout, each, isBoth ? null : where) }];
    const ends = isBoth ? kindRow("tyre date code").ask : [where];
    return ends.map((place) => ({ at, reading: readingOf(layout, each, place) }));
  });
}

const isPlural = ({ tokens, known }: Layout, at: number): boolean => {
  const token = tokens[at];
  return token?.is === "word" && among(known.vocabulary.measuring.tyres, token.folded);
};

const kinded = (part: Kinded["figure"]["part"], at: number, token: NumberToken): Kinded => ({
  figure: { at, token, part, value: token.value, units: [], other: null, rangeTo: null, typed: token.text, place: null },
  kind: "tyre date code",
  state: null,
});

function readingOf(layout: Layout, { figure: { at, part, token } }: Kinded, place: LogReading["place"]): LogReading {
  const meant = bikeAt(layout, { from: at, to: at });
  const day = dayAt(layout, part, [part], at);
  const wrong: Gap | null = token.code === "year" ? { need: "sure", because: "year alone", years: token.value } : wrongIn(token.text, layout.known.today);
  const gaps: readonly Gap[] = [
    ...(token.code === "maybe" ? [{ need: "kind" as const, options: ["tyre date code", "odometer"] as const }] : []),
    ...(place === null ? [{ need: "place" as const, options: kindRow("tyre date code").ask }] : []),
    ...(day.gap === null ? [] : [day.gap]),
  ];
  return {
    ...{ do: "log reading", bike: meant.bike?.id ?? null, kind: "tyre date code", place, value: token.value, unit: "date code" },
    ...{ typed: { text: token.text, unit: null }, on: day.on },
    gaps: [...(meant.gap === null ? [] : [meant.gap]), ...(wrong === null ? gaps : [wrong])],
  };
}

/** What no tyre can bear is asked about by itself: there is nothing else to be settled of it. */
function wrongIn(code: string, today: LocalDate): Gap | null {
  const date = readTyreDate(code, today);
  return date.is !== "refused" ? null : { need: "sure", because: date.why === "to come" ? "code to come" : "no such code" };
}
