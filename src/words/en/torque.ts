// Torque in English: the setting first, then what speaks for and against it.

import { printFigure, roundTo, windowInward } from "../../core/quantity/print.ts";
import { fromCanonical, symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { CrossFit } from "../../core/torque/hex.ts";
import type { Drive, Fit, Window, Wrench } from "../../core/torque/wrench.ts";
import type { Printer } from "../printer.ts";

type Target = { readonly from: number; readonly to: number; readonly unit: UnitId; readonly window: Window };
type Length = { readonly value: number; readonly unit: UnitId; readonly millimetres: number };
/** Newton metres. */
type Ends = { readonly from: number; readonly upTo: number };
type Geometry = { readonly lever: Length; readonly adapter: Length; readonly angle: number };

/** Behind any setting so low on the scale. */
const LOW = ", in the lowest fifth of its scale, where it is not held to its accuracy";
/** From so many fasteners on they may stand in two rows that are no circle. */
const ROWS = 6;

export const torqueWords = (p: Printer, locale: string) => {
  const decimalsFor = (value: number): number => (value < 10 ? 2 : value < 100 ? 1 : 0);
  const fixed = (value: number, decimals: number): string => printFigure(value, decimals, locale, true);
  const span = (low: string, high: string): string => (low === high ? low : `${low} to ${high}`);
  /** A window in a unit, rounded inward so that no printed end lies outside it; a single figure to the nearest. */
  const inward = ({ low, high }: Window, unit: UnitId): string => {
    const [from, to] = [fromCanonical(low, unit), fromCanonical(high, unit)];
    if (from === to) return `${fixed(from, decimalsFor(from))} ${symbolOf(unit)}`;
    const rounded = windowInward(from, to, decimalsFor(to));
    return `${span(fixed(rounded.from, rounded.decimals), fixed(rounded.to, rounded.decimals))} ${symbolOf(unit)}`;
  };
  /** What may be on the fastener, rounded outward: nothing is made better than it is. */
  const outward = ({ low, high }: Window, unit: UnitId): string => {
    const [from, to] = [fromCanonical(low, unit), fromCanonical(high, unit)];
    const decimals = decimalsFor(to);
    const scale = 10 ** decimals;
    return `${span(fixed(Math.floor(from * scale + 1e-9) / scale, decimals), fixed(Math.ceil(to * scale - 1e-9) / scale, decimals))} ${symbolOf(unit)}`;
  };
  /** In both units; a limit is rounded down, so that it stays one. */
  const both = (torque: number, way: "nearest" | "down"): string => {
    const [nm, ftLb] = [torque, fromCanonical(torque, "ft-lb")].map((value) => fixed(roundTo(value, decimalsFor(value), way), decimalsFor(value)));
    return `${nm} N·m (${ftLb} ft-lb)`;
  };
  const target = (t: Pick<Target, "from" | "to" | "unit">): string => `${span(p.figure(t.from, 3), p.figure(t.to, 3))} ${symbolOf(t.unit)}`;
  const onScale = (wrench: Wrench): string => `${p.figure(wrench.low, 3)} to ${p.figure(wrench.high, 3)} ${symbolOf(wrench.unit)}`;
  const atStep = (setting: number, { step, unit }: Wrench): string => `${fixed(setting, (String(step).split(".")[1] ?? "").length)} ${symbolOf(unit)}`;
  const length = ({ value, unit }: Length): string => `${p.figure(value, 4)} ${symbolOf(unit)}`;
  const share = (wrench: Wrench): string => `±${p.figure(wrench.accuracy * 100, 1)} %`;
  const described = (wrench: Wrench): string =>
    [
      `${wrench.name}: ${onScale(wrench)} in steps of ${p.figure(wrench.step, 3)}, ${share(wrench)}`,
      ...(wrench.drive === null ? [] : [wrench.drive === "bits" ? "for bits" : `${wrench.drive} drive`]),
      ...(wrench.kind === null ? [] : [wrench.kind]),
    ].join(", ");
  /** "T × 400 / (400 + 50 × cos 45°)", in the units typed where both are of one. */
  const formula = ({ lever, adapter, angle }: Geometry): string => {
    const same = lever.unit === adapter.unit;
    const [long, short] = [same ? lever.value : lever.millimetres, same ? adapter.value : adapter.millimetres].map((value) => p.figure(value, 4));
    return `× ${long} / (${long} + ${short}${angle === 0 ? "" : ` × cos ${p.figure(angle, 1)}°`})`;
  };
  return {
    target,
    /** "For 60 to 80 in-lb, which is 6.78 to 9.03 N·m." In the wrench's unit where there is a wrench. */
    same: (t: Target, unit: UnitId): string => (t.unit === unit ? `For ${target(t)}.` : `For ${target(t)}, which is ${inward(t.window, unit)}.`),
    /** The adapter's correction, with its arithmetic. */
    adapted: (t: Target, at: Window, geometry: Geometry): string => {
      if (geometry.angle === 90) return `At 90° the adapter changes nothing: ${target(t)} on the wrench is ${target(t)} on the fastener.`;
      const way = geometry.angle < 90 ? "lower" : "higher";
      const where = geometry.angle === 0 ? "in line" : `at ${p.figure(geometry.angle, 1)}°`;
      return `With the adapter ${where} the wrench is set ${way}: ${target(t)} ${formula(geometry)} = ${inward(at, t.unit)} on the wrench.`;
    },
    /** Where the hand must pull for the lengths to hold. */
    grip: (): string => "Pull at the middle of the grip, where the wrench's length was measured to, and at a right angle to the wrench.",
    set: (fit: Fit): string =>
      `${fit.wrench.name}: set ${atStep(fit.setting ?? 0, fit.wrench)} (its steps are ${p.figure(fit.wrench.step, 3)})${fit.lowOnScale ? LOW : ""}.`,
    keeps: (fit: Fit): string => {
      const reach = fit.reach === null ? "" : outward(fit.reach, fit.wrench.unit);
      return fit.keepsInside
        ? `By its ${share(fit.wrench)} that is ${reach}, all inside the window.`
        : `By its ${share(fit.wrench)} that is ${reach}; the window does not hold all of it.`;
    },
    /** For a single figure there is no window to stay inside. */
    reach: (fit: Fit): string => `By its ${share(fit.wrench)} that is ${fit.reach === null ? "" : outward(fit.reach, fit.wrench.unit)}.`,
    cannot: (fit: Fit): string => {
      switch (fit.why) {
        case "below its scale":
          return `${fit.wrench.name} begins at ${p.figure(fit.wrench.low, 3)} ${symbolOf(fit.wrench.unit)}: too high.`;
        case "above its scale":
          return `${fit.wrench.name} ends at ${p.figure(fit.wrench.high, 3)} ${symbolOf(fit.wrench.unit)}: too low.`;
        default:
          return `${fit.wrench.name} has no step that serves (its steps are ${p.figure(fit.wrench.step, 3)} ${symbolOf(fit.wrench.unit)}).`;
      }
    },
    noneListed: (): string => "You have listed no torque wrench yet; add yours with /torque wrench-add, and I say which to take and where to set it.",
    /** What to borrow, by the sizes that wrenches are sold in. */
    borrow: (at: Window, usual: { readonly drive: Drive; readonly low: number; readonly high: number } | "too small" | null, some: boolean): string => {
      const none = some ? "None of yours does it. " : "";
      if (usual === null) return `${none}${inward(at, "N·m")} is beyond the usual wrenches: ask a workshop.`;
      if (usual === "too small") return `${none}${inward(at, "N·m")} is below the usual wrenches: it wants a torque screwdriver.`;
      const scale = `${p.figure(usual.low, 1)} to ${p.figure(usual.high, 1)} N·m`;
      return `${none}Borrow one with a ${usual.drive} drive, such as ${scale}: ${inward(at, "N·m")} lies well up that scale.`;
    },
    listed: (wrench: Wrench): string => `${described(wrench)}. Listed.`,
    inList: described,
    dropped: (name: string): string => `${name} is no longer listed.`,
    /** Where to begin, and where to end: never a figure that stretches the bolt or strips the hole on the slipperiest thread of that state. */
    estimate: (e: { readonly thread: string; readonly grade: string; readonly threads: string; readonly into: string } & Ends): string =>
      `An estimate only, for ${e.thread}, ${e.grade}, ${e.threads}, into ${e.into}: begin at ${both(e.from, "nearest")}; go no further than ${both(e.upTo, "down")}.`,
    /** The same clamping force takes less torque the slipperier the thread is. */
    ends: (e: Ends & { readonly likely: number; readonly preload: number; readonly atWorst: number; readonly holeAtWorst: number | null }): string => {
      const hole = e.holeAtWorst !== null && e.holeAtWorst > e.atWorst;
      const load = hole
        ? `loads the thread in the hole to ${p.figure((e.holeAtWorst ?? 0) * 100, 0)} % of what strips it`
        : `loads the bolt to ${p.figure(e.atWorst * 100, 0)} % of its proof load`;
      const why = e.upTo < e.likely * (1 - 1e-9) ? `; more could ${hole ? "strip it" : "stretch it"}` : "";
      return `On the slipperiest threads of that kind the first figure already gives the whole clamping force (${p.figure(e.preload / 1000, 1)} kN), and the last ${load}${why}.`;
    },
    byHole: (): string => "The thread in the aluminium sets the limit, not the bolt.",
    estimateCaution:
      "The maker's manual comes first. An estimate is for joints that nothing depends on, metal on metal, with clean, undamaged threads: plastic, rubber and thin tube give way long before the bolt.",
    order: (order: readonly number[]): string =>
      order.length === 2
        ? "Two fasteners take turns: 1, 2, then 1 again, a little at a time."
        : `Number them round the circle and tighten across: ${order.join(", ")}.${order.length < ROWS ? "" : " In two rows, begin in the middle and work outwards by turns."}`,
    /** One stage; with a wrench of the member's, where it is set. */
    stage: (
      s: { readonly share: number; readonly low: number; readonly high: number; readonly setting: number | null; readonly lowOnScale: boolean },
      unit: UnitId,
      wrench: Wrench | null,
    ): string => {
      const decimals = decimalsFor(s.high);
      const rounded = s.low === s.high ? { from: s.low, to: s.high, decimals } : windowInward(s.low, s.high, decimals);
      const figures =
        s.share === 1
          ? target({ from: s.low, to: s.high, unit })
          : `${span(fixed(rounded.from, rounded.decimals), fixed(rounded.to, rounded.decimals))} ${symbolOf(unit)}`;
      const set = wrench === null ? "" : s.setting === null ? `; off ${wrench.name}'s scale` : `; set ${atStep(s.setting, wrench)} on ${wrench.name}`;
      return `- ${p.figure(s.share * 100, 0)} %: ${figures}${set}${s.lowOnScale ? `${LOW};` : ","} all of them in that order`;
    },
    angle: (degrees: number): string =>
      `- then each ${p.figure(degrees, 1)}° (${p.figure(degrees / 360, 2)} of a turn) further, in the same order; bolts tightened by angle are often used once only`,
    check: (): string => "A look at tightness later is a look, not a second tightening: threadlocked, split-pinned and stretch bolts are not turned.",
    /** Where the trade sets again. */
    settles: (): string => "New gaskets, exhaust joints, racks and crash bars settle: set those again, cold, after the first ride, if the manual says so.",
    hex: (head: string, width: number): string => `A hex of ${head}${/mm$/u.test(head) ? "" : ` (${fixed(width, 2)} mm)`}:`,
    cross: ({ spanner, clearance, grip }: CrossFit): string => {
      const play = `${fixed(Math.abs(clearance), 2)} mm`;
      switch (grip) {
        case "safe":
          return `- ${spanner.name} fits with ${play} to spare, and may be loaded`;
        case "loose":
          return `- ${spanner.name} goes on with ${play} to spare: too loose to load, it rounds the corners`;
        case "tight":
          return `- ${spanner.name} may go on, though by nominal widths it is ${play} too small: do not force it`;
        case "no":
          return `- ${spanner.name} does not go on: ${play} too small`;
      }
    },
    noCross: (): string => "No spanner of the other system is near it.",
    hexCaution: "By nominal widths: a worn head or spanner has more play. A hex that matters deserves the spanner of its own system.",
    caution: "The maker's manual has the last word; torque is for clean threads as it says them, dry or oiled.",
    /** Only where it is set beforehand, or nobody said. */
    slack: "Ease off a click wrench to its lowest mark before it is put away.",
    /** What the drawing of an adapter says, and the same in words for who cannot see it. */
    drawing: (t: Target, at: Window, geometry: Geometry, best: Fit | null) => {
      const set = best === null ? inward(at, t.unit) : atStep(best.setting ?? 0, best.wrench);
      const angle = `${p.figure(geometry.angle, 1)}°`;
      const where = geometry.angle === 0 ? "in line" : `at α = ${angle} to it`;
      return {
        texts: {
          set: `set ${set}`,
          wanted: `T = ${target(t)}`,
          lever: `L = ${length(geometry.lever)}`,
          adapter: `E = ${length(geometry.adapter)}`,
          angle: `α = ${angle}`,
          grip: "pull here",
        },
        alt: `A torque wrench seen from above, L = ${length(geometry.lever)} from the middle of the grip to its square, with an adapter of E = ${length(geometry.adapter)} ${where}. The wrench is set to ${set}; T = ${target(t)} reaches the fastener.`,
      };
    },
  };
};
