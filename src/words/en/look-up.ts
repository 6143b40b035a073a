// Open tables in English: what a mark means, and by which standard.

import { unreachable } from "../../core/brand.ts";
import type { LookedUp } from "../../trade/looked-up.ts";
import type { Printer } from "../printer.ts";
import { neverMix } from "./fluids.ts";

/** What there is by the standard. */
export const OIL_GRADES = "Oil grades go from 0W to 25W cold and from 8 to 60 hot, such as 10W-40.";

export const MARKS_SOURCE = "UN Regulation No. 75, the ETRTO's table";
const MEASURE = "Small heads differ, so measure.";

const headOf = ({ now, before }: { readonly now: number; readonly before: number }): string =>
  now === before ? `${now} mm` : `${now} mm, ${before} mm on older bolts`;

export const lookUpWords = (p: Printer) => ({
  lines: (found: LookedUp): readonly string[] => {
    switch (found.table) {
      case "oil grade": {
        const { winter, hot, unknown } = found;
        const says = [
          winter === null ? null : `cold, tested for cranking at ${p.figure(winter.cranks)} °C and for pumping at ${p.figure(winter.pumps)} °C`,
          hot === null ? null : `hot, ${p.figure(hot.from)} to below ${p.figure(hot.below)} mm²/s at 100 °C`,
        ].filter((part) => part !== null);
        return [
          ...(unknown.length === 0 ? [] : [`${p.list(unknown)}: no such SAE grade. ${OIL_GRADES} Look again at the bottle or the manual.`]),
          `${found.grade}: ${says.join("; ")} (${found.source}). Which grade is your engine's, its manual says.`,
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
            ({ name, base, dry, wet }) =>
              `${name === base ? name : `${name}, ${base}`}: ${dry === null ? "no boiling points in the standard" : `${dry} °C dry, ${wet} °C wet`}.`,
          ),
          "The least that 49 CFR 571.116 allows. Use the class named on the cap; silicone and mineral oil mix with no other.",
        ];
      case "inch thread":
        return [`${found.size} in: ${found.coarse} threads an inch coarse (UNC), ${found.fine} fine (UNF), by ASME B1.1. Which spanner is near: /torque hex.`];
      case "hex": {
        const heads = found.threads.map(({ size, before }) => `${size}${before ? " on older bolts (DIN 933)" : " (ISO 272)"}`);
        return [`${found.width} mm across flats: ${p.list(heads)}. ${MEASURE} A spanner of the other system: /torque hex.`];
      }
      case "brake fluid":
        return [
          found.dry === null
            ? `${found.name}: no boiling points in the standard.`
            : `${found.name}: boils at ${found.dry} °C or more dry, ${found.wet} °C or more with water in it.`,
          neverMix(found.name, found.never, (names) => p.list(names)),
          `Changed every ${found.months / 12} years at the latest; your manual may say sooner, and has the last word.`,
          `Source: ${found.source}.`,
        ];
      case "tyre mark": {
        const says = [
          found.load === null ? null : `load index ${found.load.index}, ${p.figure(found.load.kilograms)} kg on that tyre`,
          found.speed === null ? null : `speed symbol ${found.speed.symbol}, up to ${found.speed.kmh} km/h`,
        ].filter((part) => part !== null);
        return [`${found.mark}: ${says.join("; ")} (${MARKS_SOURCE}).`];
      }
      case "load indexes":
        return [
          `Load index, kg on that tyre: ${found.rows.map(({ index, kilograms }) => `${index} ${p.figure(kilograms)}`).join(", ")}.`,
          `By ${MARKS_SOURCE}. Never less than your bike's papers ask for.`,
        ];
      case "speed symbols":
        return [
          `Speed symbol, km/h: ${found.rows.map(({ symbol, kmh }) => `${symbol} ${kmh}`).join(", ")}; Z more than 240.`,
          `By ${MARKS_SOURCE}. Never less than your bike's papers ask for.`,
        ];
      case "thread": {
        const { size, pitches, pitch, hex } = found;
        const all = `${p.list(pitches.map((each) => p.figure(each, 2)))} mm${pitches.length > 1 ? ", the coarse one first" : ""}`;
        const is = pitch !== null && !pitches.includes(pitch) ? "no pitch" : pitch === pitches[0] ? "the coarse pitch" : "a fine pitch";
        const says = pitch === null ? `${size}: pitch ${all} (ISO 261)` : `${size}x${p.figure(pitch, 2)}: ${is} of ${size}, which has ${all} (ISO 261)`;
        return [`${says}${hex === null ? "" : `; hex head ${headOf(hex)} (ISO 272, DIN 933)`}. ${MEASURE}`];
      }
      case "threads":
        return [
          ...found.rows.map(
            ({ size, pitches, hex }) =>
              `${size}: pitch ${p.list(pitches.map((each) => p.figure(each, 2)))} mm${hex === null ? "" : `; hex head ${headOf(hex)}`}.`,
          ),
          `The coarse pitch first. Pitches by ISO 261, heads by ISO 272 and DIN 933. ${MEASURE}`,
        ];
      case "tread law":
        return [
          ...(found.lacks === null
            ? []
            : [`I have no tread law of “${found.lacks}”; look it up there. What I have: ${p.list(found.rows.map(({ place }) => place))}.`]),
          ...found.rows.map(
            (row) =>
              `${row.place}: ${row.millimetres === null ? "each state has its own" : `${p.figure(row.millimetres)} mm`}, ${row.band}${row.lightest === undefined || row.lightestAre === undefined ? "" : `; of ${row.lightestAre} ${p.figure(row.lightest, 1)} mm`} (${row.source}).`,
          ),
          "For your own check; local law has the last word.",
        ];
      case "resting volts": {
        const charged = (points: (typeof found.kinds)[number]["points"]): string =>
          points.map(({ volts, charge }) => `${p.figure(volts, 2)} V ${p.figure(charge * 100, 0)} %`).join(", ");
        const [only] = found.kinds;
        if (found.kinds.length === 1 && only !== undefined)
          return [`${only.kind}, 12 V, at rest for six hours or more: ${charged(only.points)} of its charge (${only.source}).`];
        return [...found.kinds.map(({ kind, points, source }) => `${kind}: ${charged(points)} (${source}).`), "At rest for six hours or more, 12 V batteries."];
      }
      default:
        return unreachable(found);
    }
  },
});
