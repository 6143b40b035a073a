// Open tables in English: what a mark means, and by which standard.

import { unreachable } from "../../core/brand.ts";
import type { LookedUp } from "../../trade/looked-up.ts";
import type { Printer } from "../printer.ts";
import { neverMix } from "./fluids.ts";

/** What there is by the standard. */
export const OIL_GRADES = "Oil grades go from 0W to 25W cold and from 8 to 60 hot, such as 10W-40.";

export const lookUpWords = (p: Printer) => ({
  lines: (found: LookedUp): readonly string[] => {
    switch (found.table) {
      case "oil grade": {
        const { winter, hot, unknown } = found;
        return [
          ...(unknown.length === 0 ? [] : [`${p.list(unknown)}: no such SAE grade. ${OIL_GRADES} Look again at the bottle or the manual.`]),
          ...(winter === null ? [] : [`Cold: tested for cranking at ${p.figure(winter.cranks)} °C and for pumping at ${p.figure(winter.pumps)} °C.`]),
          ...(hot === null ? [] : [`Hot: ${p.figure(hot.from)} to below ${p.figure(hot.below)} mm²/s at 100 °C.`]),
          `${found.grade}, by ${found.source}. Which grade is your engine's, its manual says.`,
        ];
      }
      case "oil grades":
        return [
          ...found.winter.map(({ grade, cranks, pumps }) => `${grade}: cranks at ${p.figure(cranks)} °C, pumps at ${p.figure(pumps)} °C.`),
          ...found.hot.map(({ grade, from, below }) => `${grade}: ${p.figure(from)} to below ${p.figure(below)} mm²/s at 100 °C.`),
          `By ${found.source}. Which grade is your engine's, its manual says.`,
        ];
      case "brake fluids":
        return [
          ...found.rows.map(
            ({ name, base, dry, wet }) => `${name}, ${base}: ${dry === null ? "no boiling points in the standard" : `${dry} °C dry, ${wet} °C wet`}.`,
          ),
          "The least that 49 CFR 571.116 allows. Use the class named on the cap; silicone and mineral oil mix with no other.",
        ];
      case "inch thread":
        return [`${found.size} in: ${found.coarse} threads an inch coarse (UNC), ${found.fine} fine (UNF), by ASME B1.1. Which spanner is near: /torque hex.`];
      case "hex":
        return [
          ...found.threads.map(({ size, before }) => `${found.width} mm across flats: ${size}${before ? " on older bolts (DIN 933)" : " (ISO 272)"}.`),
          "Small heads differ, so measure. A spanner of the other system: /torque hex.",
        ];
      case "brake fluid":
        return [
          found.dry === null
            ? `${found.name}: no boiling points in the standard.`
            : `${found.name}: boils at ${found.dry} °C or more dry, ${found.wet} °C or more with water in it.`,
          neverMix(found.name, found.never, (names) => p.list(names)),
          `Changed every ${found.months / 12} years at the latest; your manual may say sooner, and has the last word.`,
          `Source: ${found.source}.`,
        ];
      case "tyre mark":
        return [
          ...(found.load === null ? [] : [`Load index ${found.load.index}: ${p.figure(found.load.kilograms)} kg on that tyre.`]),
          ...(found.speed === null ? [] : [`Speed symbol ${found.speed.symbol}: up to ${found.speed.kmh} km/h.`]),
          "Source: UN Regulation No. 75 and the ETRTO's table.",
        ];
      case "thread":
        return [
          `${found.size}: pitch ${p.list(found.pitches.map((pitch) => p.figure(pitch, 2)))} mm, the coarse one first (ISO 261).`,
          ...(found.hex === null
            ? []
            : [
                `Hex head ${found.hex.now} mm${found.hex.now === found.hex.before ? "" : `, ${found.hex.before} mm on older bolts`} (ISO 272, DIN 933); small heads differ, so measure.`,
              ]),
        ];
      case "tread law":
        return [
          ...(found.lacks === null
            ? []
            : [`I have no tread law of “${found.lacks}”; look it up there. What I have: ${p.list(found.rows.map(({ place }) => place))}.`]),
          ...found.rows.map(
            (row) => `${row.place}: ${row.millimetres === null ? "each state has its own" : `${p.figure(row.millimetres)} mm`}, ${row.band} (${row.source}).`,
          ),
          "For your own check; local law has the last word.",
        ];
      case "resting volts":
        return [
          ...found.kinds.map(
            ({ kind, points, source }) =>
              `${kind}: ${points.map(({ volts, charge }) => `${p.figure(volts, 2)} V ${p.figure(charge * 100, 0)} %`).join(", ")} (${source}).`,
          ),
          "At rest for six hours or more, 12 V batteries.",
        ];
      default:
        return unreachable(found);
    }
  },
});
