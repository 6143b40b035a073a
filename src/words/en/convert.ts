// Conversions in English: the answer first, then what was rounded.

import type { Answer, Conversion } from "../../core/quantity/convert-question.ts";
import { printFigure } from "../../core/quantity/print.ts";
import { dimensionOf, symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { Printer } from "../printer.ts";

type Converted = Extract<Conversion, { is: "converted" }>;

export const convertWords = (p: Printer, locale: string) => {
  const fixed = (value: number, decimals: number): string => printFigure(value, decimals, locale, true);
  const unitOf = (unit: UnitId): string => (symbolOf(unit).startsWith("/") ? symbolOf(unit) : ` ${symbolOf(unit)}`);
  const figures = (from: number, to: number, middle: number | null, print: (value: number) => string, unit: UnitId): string =>
    `${from === to ? print(from) : `${print(from)} to ${print(to)}`}${unitOf(unit)}${middle === null ? "" : ` (middle ${print(middle)})`}`;
  const answer = (a: Answer): string => figures(a.from, a.to, a.middle, (value) => fixed(value, a.decimals), a.unit);
  return {
    /** "60 to 80 in-lb = 6.8 to 9.0 N·m". */
    answer: (c: Converted): string => {
      const plain = (value: number): string => p.figure(value, 6);
      return `${figures(c.from, c.to, c.middle, plain, c.unit)} = ${p.list(c.answers.map(answer))}`;
    },
    notes: (c: Converted): readonly string[] => {
      const notes: string[] = [];
      if (c.taken) notes.push("Taken as a fraction of an inch.");
      if (c.from !== c.to) notes.push("The window is rounded inward, so every value printed lies inside it.");
      return notes;
    },
    caution: (c: Converted): string | null =>
      dimensionOf(c.unit) === "torque"
        ? "Check that the value is for your fastener and whether it is meant dry or oiled: the maker's manual has the last word."
        : null,
    labels: {},
  };
};
