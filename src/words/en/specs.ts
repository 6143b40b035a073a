// Specs in English: the value first, then its source and who entered it.

import { forceIn } from "../../core/belt/force.ts";
import type { LocalDate } from "../../core/calendar/dates.ts";
import { pitchesIn } from "../../core/chain/pitches.ts";
import { standIn } from "../../core/chain/stand.ts";
import { figureRounded, honestDecimals, printFigure, windowInward } from "../../core/quantity/print.ts";
import { dimensionOf, fromCanonical, symbolOf, type UnitId } from "../../core/quantity/units.ts";
import type { SpecHolds, SpecSource, SpecUse } from "../../core/spec/spec.ts";
import { saysConditions } from "../../core/spec/under.ts";
import type { Afterwards, SpecKey } from "../../trade/spec-keys.ts";
import type { Printer } from "../printer.ts";
import { englishSpecName } from "./spec-names.ts";
import { lowered } from "./text.ts";

type Shown = {
  readonly use: SpecUse | null;
  readonly holds: SpecHolds;
  readonly typed: string;
  readonly source: SpecSource | null;
  readonly at: string;
  readonly byName: string | null;
  readonly mine: boolean;
  readonly asUnit: UnitId | null;
};

const AFTERWARDS = {
  "slack again": "Chain slack checked again after tightening.",
  "belt again": "Belt tension checked again after tightening.",
  "pump brake": "Pump the brake until it is firm before you move.",
  "drum again": "Set the brake's free play anew and try it before you move.",
  "spin wheel": "Spin the wheel and listen after tightening.",
  "turn steering": "Turn the bars from lock to lock after tightening: no play, no notch.",
  "new split pin": "A new split pin goes in.",
  "new washer": "New sealing washers go in.",
} as const satisfies Record<Afterwards, string>;

/** Decimals of the last digit typed, which is kept though it is a nought: 0.10 mm says more than 0.1 mm. None for a fraction. */
function placesOf(step: number): number {
  const places = Math.round(-Math.log10(step));
  return places > 0 && Math.abs(step * 10 ** places - 1) < 1e-6 ? places : 0;
}
const isPrintable = (value: number, places: number): boolean => Math.abs(value * 10 ** places - Math.round(value * 10 ** places)) < 1e-6;

export const specWords = (p: Printer, locale: string, today: LocalDate) => {
  const inUnit = (holds: Extract<SpecHolds, { is: "figure" }>, unit: UnitId): string => {
    const { low, high } = holds;
    const convert = (value: number): number => fromCanonical(value, unit);
    const step = Math.abs(fromCanonical(holds.step, unit) - fromCanonical(0, unit)) || holds.step;
    const places = unit === holds.unit ? placesOf(holds.step) : 0;
    const one = (value: number, way: "nearest" | "up" | "down"): string => {
      if (places > 0 && isPrintable(convert(value), places)) return printFigure(convert(value), places, locale, true);
      const rounded = figureRounded(convert(value), step, unit, way);
      return printFigure(rounded.value, rounded.decimals, locale);
    };
    if (low === null) return `at most ${one(high ?? 0, "down")} ${symbolOf(unit)}`;
    if (high === null) return `at least ${one(low, "up")} ${symbolOf(unit)}`;
    if (low === high) return `${one(low, "nearest")} ${symbolOf(unit)}`;
    if (places > 0 && [low, high].every((end) => isPrintable(convert(end), places))) return `${one(low, "up")} to ${one(high, "down")} ${symbolOf(unit)}`;
    const { from, to, decimals } = windowInward(convert(low), convert(high), honestDecimals(step, unit));
    return `${printFigure(from, decimals, locale)} to ${printFigure(to, decimals, locale)} ${symbolOf(unit)}`;
  };
  /** In the member's unit, as typed behind it. */
  const value = ({ holds, typed, asUnit }: Shown): string => {
    if (holds.is === "words") return typed;
    const own = inUnit(holds, holds.unit);
    // A deflection holds at the force typed behind it, a slack as the bike is said to stand, a clearance cold.
    const how =
      saysConditions(typed) || (dimensionOf(holds.unit) === "length" && (forceIn(typed) !== null || standIn(typed) !== null || pitchesIn(typed) !== null));
    const said = /[(/=]/u.test(typed) || how ? typed : own;
    return asUnit === null ? said : `${inUnit(holds, asUnit)} (${said})`;
  };
  const source = (s: SpecSource | null): string => {
    if (s === null) return "No source named";
    const manual = s.manual.charAt(0).toUpperCase() + s.manual.slice(1);
    return [manual, s.edition, s.page === null ? null : `p. ${s.page}`].filter((part) => part !== null).join(", ");
  };
  const who = ({ byName, at, mine }: Shown): string => `entered by ${byName ?? (mine ? "you" : "a member")} ${p.date(at.slice(0, 10) as LocalDate, today)}`;
  const forUse = (use: SpecUse | null): string => (use === null ? "" : ` ${use}`);
  return {
    name: (key: string): string => englishSpecName(key),
    of: (nickname: string): string => `${nickname}:`,
    /** "Rear axle: 98 N·m. Chain slack checked again after tightening. Workshop manual, p. 142, entered by you 26 November." */
    line: (key: SpecKey, shown: Shown, afterwards: Afterwards | null | undefined): string =>
      `${englishSpecName(key)}${forUse(shown.use)}: ${value(shown)}. ${afterwards == null ? "" : `${AFTERWARDS[afterwards]} `}${source(shown.source)}, ${who(shown)}.`,
    says: (shown: Shown): string => `- ${value(shown)}: ${source(shown.source)}, ${who(shown)}.`,
    differ: (key: SpecKey, use: SpecUse | null, byPage: boolean): string =>
      `${englishSpecName(key)}${forUse(use)}: members differ, so I give none of these as the value.${byPage ? " Only a named page of the manual settles it." : ""}`,
    /** Each names a page. */
    lookAgain: (): string =>
      "Each names a page, so look at yours again: edition, model year, and the load that it is for. Whoever enters it anew with its page after that settles it; the other stays beside it.",
    otherwise: (): string => "Otherwise said:",
    missing: (key: SpecKey, use: SpecUse | null, nickname: string): string =>
      `${englishSpecName(key)}${forUse(use)}: nothing is entered for ${nickname}. What does your manual say?`,
    missingToo: (keys: readonly SpecKey[]): string => `Nothing entered: ${p.list(keys.map((key) => lowered(englishSpecName(key))))}.`,
    typical: ([from, to]: readonly [number, number], unit: UnitId): string =>
      `Typical is ${p.figure(from, 2)} to ${p.figure(to, 2)} ${symbolOf(unit)} (common practice, road bikes): typical, not yours.`,
    /** "Riding solo it is 34 psi: another load wants its own figure." */
    onlySolo: (shown: Shown): string =>
      `${shown.use === null ? "With no load named it is" : "Riding solo it is"} ${value(shown)}; that is not taken for another load. If the plate prints one for all, enter it for this load too.`,
    how: (key: SpecKey, use: SpecUse | null): string =>
      `To enter it: /spec what:${lowered(englishSpecName(key))}${forUse(use)} value: … source:workshop manual, p. 142`,
    saved: (nickname: string, replaced: boolean): string => (replaced ? `${nickname}: saved; the value before stays on record.` : `${nickname}: saved.`),
    takenBack: (nickname: string): string => `${nickname}: taken back.`,
    /** A tread limit of one's own, below what the law or the moulded bars ask for. */
    overruled: ({ place, least }: { readonly place: string | null; readonly least: number }): string =>
      place === null
        ? `It does not count: the moulded bars stand at ${p.figure(least, 1)} mm, and a tyre is worn out there at the latest.`
        : `It does not count: the law of ${place} asks for at least ${p.figure(least, 1)} mm, so that holds.`,
    noPage: (): string => "No page is named: if another member's value differs, neither counts until one names its page.",
    title: (nickname: string, model: string | null, n: number): string =>
      `${nickname}${model === null ? "" : ` (${model})`}: ${n === 1 ? "1 spec" : `${n} specs`}.`,
    none: (nickname: string): string =>
      `Nothing is entered for ${nickname} yet. Ask for one by name, such as /spec what:rear axle, and enter it from your manual.`,
    shareHint: (): string => "Say its make and model with /bike change model: and it shares specs with the same model in your group.",
    form: (key: SpecKey, use: SpecUse | null, nickname: string): { title: string; value: string; manual: string; edition: string; page: string } => ({
      title: `${nickname}: ${lowered(englishSpecName(key))}${forUse(use)}`.slice(0, 45),
      value: "Value with its unit",
      manual: "Which manual",
      edition: "Edition or year",
      page: "Page",
    }),
    labels: {
      saveAs: (key: string, value: string): string => `Save as spec: ${lowered(englishSpecName(key))} ${value}`.slice(0, 80),
      enter: "Enter it",
      undo: "Undo",
      look: (key: SpecKey): string => `${englishSpecName(key)}: I looked at the page`,
    },
  };
};
