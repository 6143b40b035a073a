// Conversions in English: where the member's tool is set, then the answer, then what was rounded.

import type { Answer, Bound, Converted } from "../../core/quantity/conversion.ts";
import type { Exact } from "../../core/quantity/exact.ts";
import { printFigure } from "../../core/quantity/print.ts";
import { dimensionOf, symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { Wrench } from "../../core/torque/wrench.ts";
import type { Printer } from "../printer.ts";
import { capital } from "./text.ts";

type OnTool = {
  readonly tool: Wrench;
  readonly setting: number;
  readonly window: { readonly from: number; readonly to: number; readonly decimals: number };
  readonly lowOnScale: boolean;
};
type Digits = { readonly unit: UnitId; readonly from: Exact; readonly to: Exact };

export const convertWords = (p: Printer, locale: string) => {
  const fixed = (value: number, decimals: number): string => printFigure(value, decimals, locale, true);
  const unitOf = (unit: UnitId): string => (/^[/°]$|^\//u.test(symbolOf(unit)) ? symbolOf(unit) : ` ${symbolOf(unit)}`);
  const figures = (from: number, to: number, nominal: number | null, print: (value: number) => string, unit: UnitId): string =>
    `${from === to ? print(from) : `${print(from)} to ${print(to)}`}${unitOf(unit)}${nominal === null ? "" : ` (nominal ${print(nominal)})`}`;
  const bounded = (bound: Bound | null, figure: string): string => (bound === null ? figure : `${bound} ${figure}`);
  const degrees = (turn: number): string => `${p.figure(turn, 1)}°`;
  const turned = (turn: number | null): string => (turn === null ? "" : ` + ${degrees(turn)}`);
  const answer = (a: Answer, turn: number | null): string =>
    `${bounded(
      a.bound,
      figures(a.from, a.to, a.nominal, (value) => fixed(value, a.decimals), a.unit),
    )}${turned(turn)}`;
  /** As it was typed: every decimal, and fractions as fractions. */
  const asked = (c: Converted): string => {
    // At an end of its window ("25 +0/-3") a nominal value says nothing new.
    const nominal = c.nominal === c.from || c.nominal === c.to ? null : c.nominal;
    const figure =
      c.said === null
        ? figures(c.from, c.to, nominal, (value) => fixed(value, Math.max(c.decimals, Math.min(6, decimalsIn(value)))), c.unit)
        : `${c.said}${c.taken === "in" ? " in" : ""}`;
    return `${bounded(c.bound, figure)}${turned(c.turn)}`;
  };
  return {
    /** "60 to 80 in-lb = 6.8 to 9.0 N·m". */
    answer: (c: Converted): string => {
      const [only, ...others] = c.answers.map((each) => answer(each, c.turn));
      return `${asked(c)} = ${others.length === 0 ? only : p.list([only ?? "", ...others])}`;
    },
    /** "60 to 80 in-lb: set 8.0 N·m (window 6.78 to 9.03; Small one steps by 0.5)." */
    onTool: (c: Converted & { readonly onTool: OnTool | null }): readonly string[] => {
      if (c.onTool === null) return [];
      const { tool, setting, window, lowOnScale } = c.onTool;
      const at = `${fixed(setting, decimalsIn(tool.step))}${unitOf(tool.unit)}`;
      const span =
        c.from === c.to
          ? bounded(c.bound, fixed(window.from, window.decimals))
          : `window ${fixed(window.from, window.decimals)} to ${fixed(window.to, window.decimals)}`;
      const then = c.turn === null ? "" : `, then turn ${degrees(c.turn)} further`;
      const scale = lowOnScale ? ", in the lowest fifth of its scale" : "";
      return [`${capital(asked(c))}: set ${at} (${span}; ${tool.name} steps by ${p.figure(tool.step, 3)}${scale})${then}.`];
    },
    /** Every digit, on request. */
    digits: (c: { readonly digits: readonly Digits[] }): readonly string[] =>
      c.digits.map(({ unit, from, to }) => {
        const span = from.digits === to.digits ? from.digits : `${from.digits} to ${to.digits}`;
        return from.whole && to.whole ? `Exactly ${span}${unitOf(unit)}.` : `To fifteen figures ${span}${unitOf(unit)}; it goes on.`;
      }),
    notes: (c: Converted): readonly string[] => {
      const notes: string[] = [];
      if (c.taken === "in") notes.push("Taken as a fraction of an inch.");
      else if (c.taken !== null) notes.push(`Taken as ${symbolOf(c.taken)}.`);
      if (c.turn !== null) notes.push(`${degrees(c.turn)} is ${ofATurn(c.turn, p)}.`);
      if (c.bound === "at most") notes.push("A maximum is rounded down, so the figure printed stays under it.");
      if (c.bound === "at least") notes.push("A minimum is rounded up, so the figure printed reaches it.");
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

/** Angles that bolts are turned by, as parts of a turn. */
const PARTS: Readonly<Record<number, string>> = {
  30: "a twelfth of a turn",
  45: "an eighth of a turn",
  60: "a sixth of a turn",
  90: "a quarter turn",
  120: "a third of a turn",
  180: "half a turn",
  270: "three quarters of a turn",
  360: "a whole turn",
};
const ofATurn = (turn: number, p: Printer): string => PARTS[turn] ?? `${p.figure(turn / 360, 2)} of a turn`;

/** Decimals that a figure has by itself. */
const decimalsIn = (value: number): number => (String(value).split(".")[1] ?? "").length;
