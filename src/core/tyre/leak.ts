// A slow leak: what a tyre loses in a month once the weather is taken out of its readings.

import { lineThrough } from "../wear/line.ts";
import { atTemperature } from "./pressure.ts";

/** A cold reading: the day as a number, the gauge in kPa, the temperature it was read at in °C, null when not noted. */
export type PressureReading = { readonly day: number; readonly gauge: number; readonly celsius: number | null };

/** How losses are judged: a row of trade/. kPa; `usual` in 30 days is what a sound tyre loses, `noise` one reading's standard deviation, `pumped` a rise that only a pump makes. */
export type LeakRule = { readonly usual: number; readonly noise: number; readonly pumped: number; readonly fewestDays: number; readonly source: string };

export type Leak =
  /** `usual`: what a sound tyre loses in 30 days at the most. */
  | { readonly is: "sound" | "leaks"; readonly per30days: number; readonly usual: number; readonly readings: number; readonly days: number }
  /** `temperature`: there are readings enough, but not with the temperature they were read at. */
  | { readonly is: "cannot tell"; readonly missing: "readings" | "temperature" };

const AT = 20;
/** A loss is told as a leak when it is beyond the usual with nine chances in ten. */
const SURE = 1.2816;

/** Judges the readings since it was last pumped up, oldest first. */
export function leakOf(readings: readonly PressureReading[], rule: LeakRule): Leak {
  const told = readings.flatMap(({ day, gauge, celsius }) => (celsius === null ? [] : [{ x: day, y: atTemperature(gauge, celsius, AT) }]));
  const since = sincePumped(told, rule.pumped);
  const span = (points: readonly { readonly x: number }[]): number => (points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0);
  if (since.length < 2 || span(since) < rule.fewestDays) {
    const all = sincePumped(
      readings.map(({ day, gauge }) => ({ x: day, y: gauge })),
      rule.pumped,
    );
    return { is: "cannot tell", missing: all.length >= 2 && span(all) >= rule.fewestDays && told.length < readings.length ? "temperature" : "readings" };
  }
  const line = lineThrough(since, rule.noise, { start: null, slope: null });
  if (line === null) return { is: "cannot tell", missing: "readings" };
  const per30days = -line.slope * 30;
  const least = per30days - SURE * Math.sqrt(line.slopeVar) * 30;
  return { is: least > rule.usual ? "leaks" : "sound", per30days, usual: rule.usual, readings: since.length, days: span(since) };
}

/** The readings from the last rise that only a pump makes. */
function sincePumped<P extends { readonly y: number }>(points: readonly P[], pumped: number): readonly P[] {
  const at = points.findLastIndex((point, n) => n > 0 && point.y - (points[n - 1]?.y ?? point.y) > pumped);
  return at < 0 ? points : points.slice(at);
}
