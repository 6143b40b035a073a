// "60-80 in-lb in Nm?", "what's 7/16 in metric", "2.5 bar psi": a question about units, and its answer as data.

import { foldUnit, type NumberStyle, parseAmount, parseUnit, plain, type UnitNames, unitsNamed } from "./parse.ts";
import { honestDecimals, roundTo, windowInward } from "./print.ts";
import { convert, type Dimension, dimensionOf, UNITS, type UnitId } from "./units.ts";

/** One converted answer. `exact` is unrounded; `value` is what the figure typed supports; a window is rounded inward. */
export type Answer = {
  readonly unit: UnitId;
  readonly from: number;
  readonly to: number;
  readonly middle: number | null;
  readonly exact: readonly [number, number];
  readonly decimals: number;
};

export type Conversion =
  | {
      readonly is: "converted";
      readonly typed: string;
      readonly from: number;
      readonly to: number;
      readonly middle: number | null;
      readonly unit: UnitId;
      readonly answers: readonly Answer[] /** an inch was taken for a bare fraction */;
      readonly taken: boolean;
    }
  | {
      readonly is: "refused";
      readonly why: "not a quantity" | "unknown unit" | "other dimension" | "out of range" | "below absolute zero" | "ambiguous number";
      readonly candidates: readonly string[];
    };

/** What a figure is turned into when no unit is asked for. */
const USUAL: Readonly<Record<Dimension, readonly (readonly [readonly UnitId[], readonly UnitId[]])[]>> = {
  distance: [
    [["mi"], ["km"]],
    [["km"], ["mi"]],
  ],
  length: [
    [["in", "ft", "thou", "1/32 in", "1/64 in"], ["mm"]],
    [["mm", "cm", "m"], ["in"]],
  ],
  pressure: [
    [["psi"], ["bar", "kPa"]],
    [["bar", "kPa", "kgf/cm²"], ["psi"]],
    [
      ["inHg", "mmHg"],
      ["kPa", "mmHg", "inHg"],
    ],
  ],
  torque: [
    [["in-lb"], ["N·m", "ft-lb"]],
    [["ft-lb"], ["N·m"]],
    [["N·m"], ["ft-lb", "in-lb"]],
    [
      ["kgf·m", "kgf·cm"],
      ["N·m", "ft-lb"],
    ],
  ],
  temperature: [
    [["°F", "K"], ["°C"]],
    [["°C"], ["°F"]],
  ],
  "temperature difference": [
    [["Δ°F"], ["Δ°C"]],
    [["Δ°C"], ["Δ°F"]],
  ],
  volume: [
    [["US gal", "US qt", "US pt", "imp gal", "imp qt", "imp pt"], ["L"]],
    [["US fl oz", "imp fl oz"], ["mL"]],
    [["L"], ["US qt", "imp pt"]],
    [["mL"], ["US fl oz", "imp fl oz"]],
  ],
  mass: [
    [["lb"], ["kg"]],
    [["oz"], ["g"]],
    [["kg"], ["lb"]],
    [["g"], ["oz"]],
  ],
  speed: [
    [["mph"], ["km/h"]],
    [["km/h", "m/s"], ["mph"]],
  ],
  power: [
    [["hp", "PS"], ["kW"]],
    [["kW"], ["hp", "PS"]],
  ],
  consumption: [
    [["mpg US", "mpg imp", "km/L"], ["L/100 km"]],
    [["L/100 km"], ["mpg US", "mpg imp"]],
  ],
  voltage: [
    [["mV"], ["V"]],
    [["V"], ["mV"]],
  ],
  "engine hours": [[["h"], ["h"]]],
  angle: [
    [["turn"], ["°"]],
    [["°"], ["turn"]],
  ],
  force: [
    [["lbf"], ["N"]],
    [["N", "kgf"], ["lbf"]],
  ],
};

const METRIC: Partial<Record<Dimension, readonly UnitId[]>> = {
  length: ["mm"],
  pressure: ["bar"],
  torque: ["N·m"],
  volume: ["L"],
  mass: ["kg"],
  speed: ["km/h"],
  distance: ["km"],
  temperature: ["°C"],
  power: ["kW"],
  force: ["N"],
  consumption: ["L/100 km"],
};
const INCH: Partial<Record<Dimension, readonly UnitId[]>> = {
  length: ["in"],
  pressure: ["psi"],
  torque: ["ft-lb"],
  mass: ["lb"],
  speed: ["mph"],
  distance: ["mi"],
  temperature: ["°F"],
  power: ["hp"],
  force: ["lbf"],
};

/**
 * Answers a question about units.
 * @param text the figure with its unit; a unit to turn it into may follow ("in Nm", "to psi", or the bare unit)
 * @param to the unit wanted, as typed; null when the text says it or nobody does
 */
export function askConvert(text: string, to: string | null, names: UnitNames, style: NumberStyle): Conversion {
  const asked = plain(text)
    .trim()
    .replace(/[?!]+$/u, "")
    .trim();
  const start = asked.search(/[-+]?[.,]?[\d½¼¾⅛⅜⅝⅞⅓⅔]/u);
  if (start < 0) return refused("not a quantity");
  const amount = parseAmount(asked.slice(start), names, style);
  if (amount.is === "ambiguous") return refused("unknown unit", amount.candidates.map(String));
  if (amount.is === "refused") return refused(amount.why);
  if (amount.other !== null) return refused("ambiguous number", [String(amount.from), String(amount.other)]);
  // A bare fraction asked into metric is a wrench or a drill: inches.
  const taken = amount.unit === null && amount.fraction !== null;
  const unit = amount.unit ?? (taken ? "in" : null);
  const wanted = to ?? trailing(amount.rest);
  if (unit === null) return refused("unknown unit");
  const targets = wanted === "" ? usual(unit) : targetsNamed(wanted, unit, names);
  if (targets === null) return refused("unknown unit");
  if (targets.length === 0) return refused("other dimension");
  if (targets.length > 1 && wanted !== "" && unitsNamed(wanted, names).length > 1) return refused("unknown unit", targets.map(String));
  const answers: Answer[] = [];
  for (const target of targets) {
    const ends = [convert(amount.from, unit, target), convert(amount.to, unit, target)] as const;
    const middle = amount.middle === null ? null : convert(amount.middle, unit, target);
    const [a, b] = ends;
    if (a.is === "refused") return refused(a.why);
    if (b.is === "refused") return refused(b.why);
    answers.push(
      answerOf(Math.min(a.value, b.value), Math.max(a.value, b.value), middle?.is === "converted" ? middle.value : null, stepIn(amount, unit, target), target),
    );
  }
  return { is: "converted", typed: amount.typed, from: amount.from, to: amount.to, middle: amount.middle, unit, answers, taken };
}

const refused = (why: Extract<Conversion, { is: "refused" }>["why"], candidates: readonly string[] = []): Conversion => ({ is: "refused", why, candidates });

/** "in Nm", "to psi", "into mm", "= ?": the unit behind the amount. */
const trailing = (rest: string): string =>
  rest
    .replace(/^(?:(?:in|to|into|as|=|->|→)\s+)+/iu, "")
    .replace(/^(?:is|are)\s+/iu, "")
    .trim();

function targetsNamed(wanted: string, unit: UnitId, names: UnitNames): readonly UnitId[] | null {
  const folded = foldUnit(wanted);
  const dimension = dimensionOf(unit);
  if (folded === "metric") return METRIC[dimension] ?? [];
  if (folded === "inch" || folded === "imperial" || folded === "inches") return INCH[dimension] ?? (folded === "inch" ? ["in"] : []);
  const found = parseUnit(wanted, 0, names);
  if (found === null) return null;
  return found.units.filter((each) => dimensionOf(each) === dimension);
}

const usual = (unit: UnitId): readonly UnitId[] => USUAL[UNITS[unit].dimension].find(([from]) => from.includes(unit))?.[1] ?? [];

function answerOf(from: number, to: number, middle: number | null, step: number, unit: UnitId): Answer {
  const decimals = honestDecimals(step, unit);
  if (from === to) return { unit, from: roundTo(from, decimals), to: roundTo(to, decimals), middle: null, exact: [from, to], decimals };
  const window = windowInward(from, to, decimals);
  return {
    unit,
    from: window.from,
    to: window.to,
    middle: middle === null ? null : roundTo(middle, window.decimals),
    exact: [from, to],
    decimals: window.decimals,
  };
}

/** What one step of the last digit typed is worth in the unit asked for. A fraction of an inch is a made size: it is known far finer than its denominator. */
function stepIn(amount: { readonly to: number; readonly decimals: number; readonly fraction: number | null }, unit: UnitId, target: UnitId): number {
  const step = amount.fraction === null ? 10 ** -amount.decimals : 1 / 2048;
  const [at, beside] = [convert(amount.to, unit, target), convert(amount.to + step, unit, target)];
  return at.is === "converted" && beside.is === "converted" ? Math.abs(beside.value - at.value) : step;
}
