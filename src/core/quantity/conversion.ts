// What comes of a question about units, as data.

import type { UnitId } from "./units.ts";

/** A figure that must not be passed: "max 10 Nm" is at most that, "min 8 Nm" at least. */
export type Bound = "at most" | "at least";

/** One converted answer. `exact` is as exact as a double; `from` and `to` are what the figure typed supports; a window and a bound are rounded inward. */
export type Answer = {
  readonly unit: UnitId;
  readonly from: number;
  readonly to: number;
  /** The figure that a tolerance was given for; never outside the window printed. */
  readonly nominal: number | null;
  readonly exact: readonly [number, number];
  readonly decimals: number;
  /** As it reads in this unit: what is at least 40 mpg is at most so many litres. */
  readonly bound: Bound | null;
};

export type Converted = {
  readonly is: "converted";
  readonly typed: string;
  /** Figure and unit as typed, where they are more than one decimal figure: "5 ft 3 in", "7/16". */
  readonly said: string | null;
  readonly from: number;
  readonly to: number;
  readonly nominal: number | null;
  readonly decimals: number;
  readonly fraction: number | null;
  readonly bound: Bound | null;
  /** Degrees to turn on after the torque: "20 Nm + 90°". */
  readonly turn: number | null;
  readonly unit: UnitId;
  readonly answers: readonly Answer[];
  /** The unit that was taken for a bare fraction or a bare "lb". */
  readonly taken: UnitId | null;
  /** A unit to turn it into was named: certainly a question. */
  readonly named: boolean;
  /** Every digit was asked for. */
  readonly exactly: boolean;
};

export type WhyNot =
  | "not a quantity"
  | "unknown unit"
  | "unit missing"
  | "other dimension"
  | "out of range"
  | "below absolute zero"
  | "below zero"
  | "ambiguous number"
  /** "1e5 kPa". */
  | "exponent"
  /** "33/36 psi": front and rear. */
  | "pair"
  /** Asks for the torque of a fastener, which no conversion gives. */
  | "torque of a fastener"
  /** Asks which spanner goes on which hex. */
  | "spanner for a hex";

export type Refused = {
  readonly is: "refused";
  readonly why: WhyNot;
  /** What it could be, where it could be several things. */
  readonly candidates: readonly string[];
  /** The word that was not understood, or names what it cannot become. */
  readonly word: string | null;
  /** Figure and unit as typed, where they were found. */
  readonly said: string | null;
  readonly named: boolean;
};

export type Conversion = Converted | Refused;

/** A refusal; what was typed is added by whoever read it. */
export const refused = (why: WhyNot, candidates: readonly string[] = [], word: string | null = null): Refused => ({
  is: "refused",
  why,
  candidates,
  word,
  said: null,
  named: false,
});
