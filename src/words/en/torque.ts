// Torque in English: the setting first, then what speaks for and against it.

import { printFigure } from "../../core/quantity/print.ts";
import { fromCanonical, symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { CrossFit } from "../../core/torque/hex.ts";
import type { Fit, Window, Wrench } from "../../core/torque/wrench.ts";
import type { Printer } from "../printer.ts";

type Target = { readonly from: number; readonly to: number; readonly unit: UnitId; readonly window: Window };

export const torqueWords = (p: Printer, locale: string) => {
  const decimalsFor = (value: number): number => (value < 10 ? 2 : value < 100 ? 1 : 0);
  const nm = (value: number): string => printFigure(value, decimalsFor(value), locale, true);
  const inUnit = (value: number, unit: UnitId): string => {
    const there = fromCanonical(value, unit);
    return printFigure(there, decimalsFor(there), locale, true);
  };
  const span = (low: string, high: string): string => (low === high ? low : `${low} to ${high}`);
  const target = (t: Target): string => `${span(p.figure(t.from, 3), p.figure(t.to, 3))} ${symbolOf(t.unit)}`;
  const onScale = (wrench: Wrench): string => `${p.figure(wrench.low, 3)} to ${p.figure(wrench.high, 3)} ${symbolOf(wrench.unit)}`;
  return {
    target,
    /** "60 to 80 in-lb is 6.78 to 9.04 N·m." */
    same: (t: Target): string => (t.unit === "N·m" ? `For ${target(t)}.` : `For ${target(t)}, which is ${span(nm(t.window.low), nm(t.window.high))} N·m.`),
    adapted: (t: Target, at: Window): string =>
      `With the adapter the wrench is set lower: ${span(inUnit(at.low, t.unit), inUnit(at.high, t.unit))} ${symbolOf(t.unit)} on the wrench is ${target(t)} on the fastener.`,
    set: (fit: Fit): string =>
      `${fit.wrench.name}: set ${p.figure(fit.setting ?? 0, 3)} ${symbolOf(fit.wrench.unit)} (its steps are ${p.figure(fit.wrench.step, 3)}).`,
    keeps: (fit: Fit): string => {
      const share = p.figure(fit.wrench.accuracy * 100, 1);
      const reach = fit.reach === null ? "" : span(nm(fit.reach.low), nm(fit.reach.high));
      return fit.keepsInside
        ? `By its ±${share} % that is ${reach} N·m, all inside the window.`
        : `By its ±${share} % that is ${reach} N·m; the window does not hold all of it.`;
    },
    /** For a single figure there is no window to stay inside. */
    reach: (fit: Fit): string =>
      `By its ±${p.figure(fit.wrench.accuracy * 100, 1)} % that is ${fit.reach === null ? "" : span(nm(fit.reach.low), nm(fit.reach.high))} N·m.`,
    lowOnScale: (fit: Fit): string => `That is in the lowest fifth of ${fit.wrench.name}'s scale, where a wrench is not held to its accuracy.`,
    cannot: (fit: Fit): string => {
      switch (fit.why) {
        case "below its scale":
          return `${fit.wrench.name} begins at ${p.figure(fit.wrench.low, 3)} ${symbolOf(fit.wrench.unit)}: too high.`;
        case "above its scale":
          return `${fit.wrench.name} ends at ${p.figure(fit.wrench.high, 3)} ${symbolOf(fit.wrench.unit)}: too low.`;
        default:
          return `${fit.wrench.name} has no step inside it (its steps are ${p.figure(fit.wrench.step, 3)} ${symbolOf(fit.wrench.unit)}).`;
      }
    },
    noneListed: (): string => "You have listed no torque wrench yet; add yours with /torque wrench-add, and I say which to take and where to set it.",
    borrow: (at: Window): string =>
      `None of yours does it. Borrow one whose scale holds ${span(nm(at.low), nm(at.high))} N·m well above its lowest fifth, ending between ${nm(at.high * 1.2)} and ${nm(at.low * 5)} N·m.`,
    listed: (wrench: Wrench): string =>
      `${wrench.name}: ${onScale(wrench)} in steps of ${p.figure(wrench.step, 3)}, ±${p.figure(wrench.accuracy * 100, 1)} %. Listed.`,
    inList: (wrench: Wrench): string => `${wrench.name}: ${onScale(wrench)} in steps of ${p.figure(wrench.step, 3)}, ±${p.figure(wrench.accuracy * 100, 1)} %`,
    dropped: (name: string): string => `${name} is no longer listed.`,
    estimate: (e: {
      readonly thread: string;
      readonly grade: string;
      readonly threads: string;
      readonly likely: number;
      readonly from: number;
      readonly to: number;
    }): string => `An estimate only: ${e.thread}, ${e.grade}, ${e.threads}: about ${nm(e.likely)} N·m (${inUnit(e.likely, "ft-lb")} ft-lb).`,
    /** The same clamping force takes less torque the slipperier the thread is. */
    range: (e: { readonly from: number; readonly to: number; readonly preload: number; readonly atWorst: number }): string =>
      `By how threads like that differ, the same clamping force (${p.figure(e.preload / 1000, 1)} kN) takes ${nm(e.from)} to ${nm(e.to)} N·m. On the slipperiest of them the figure above would load the bolt to ${p.figure(e.atWorst * 100, 0)} % of its proof load: begin at ${nm(e.from)}.`,
    byHole: (): string => "The thread in the aluminium sets the limit, not the bolt.",
    estimateCaution: "The maker's manual comes first. An estimate is for joints that nothing depends on, with clean, undamaged threads.",
    order: (order: readonly number[]): string => `Number them round the circle and tighten across: ${order.join(", ")}.`,
    stage: (share: number, low: number, high: number, unit: UnitId): string =>
      `- ${p.figure(share * 100, 0)} %: ${span(inUnitOf(low), inUnitOf(high))} ${symbolOf(unit)}, all of them in that order`,
    angle: (degrees: number): string => `- then each ${p.figure(degrees, 0)}° further, in the same order; bolts tightened by angle are often used once only`,
    check: (): string => "A look at tightness later is a look, not a second tightening: threadlocked, split-pinned and stretch bolts are not turned.",
    hex: (head: string, width: number): string => `A hex of ${head}${/mm$/u.test(head) ? "" : ` (${printFigure(width, 2, locale, true)} mm)`}:`,
    cross: ({ spanner, clearance, grip }: CrossFit): string => {
      const play = `${printFigure(Math.abs(clearance), 2, locale, true)} mm`;
      switch (grip) {
        case "safe":
          return `- ${spanner.name} fits with ${play} to spare, and may be loaded`;
        case "loose":
          return `- ${spanner.name} goes on with ${play} to spare: too loose to load, it rounds the corners`;
        case "no":
          return `- ${spanner.name} does not go on: ${play} too small`;
      }
    },
    noCross: (): string => "No spanner of the other system is near it.",
    caution:
      "The maker's manual has the last word; torque is for clean threads as it says them, dry or oiled. Ease off a click wrench to its lowest mark before it is put away.",
  };

  function inUnitOf(value: number): string {
    return printFigure(value, decimalsFor(value), locale, true);
  }
};
