// Plans in English: what is done how often, and a change beside what it changes.

import { unreachable } from "../../core/brand.ts";
import { CONDITIONS, type Columns, type Interval, type PlanItem, type Repeat } from "../../core/plan/plan.ts";
import { type DistanceUnit, type Ridden, stretchOf, TENTHS_OF_MM } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";
import { englishItemName } from "./item-names.ts";
import { CONDITION_WORDS, capital, lowered } from "./text.ts";

type Line = Pick<PlanItem, "anchor" | "first" | "repeat"> & { readonly name: string; readonly before: Repeat | null };
type Trigger = Pick<PlanItem, "anchor" | "first" | "repeat"> & { readonly marks: readonly Ridden[] };

export const planWords = (p: Printer) => {
  /** The bike's own column as printed, else the other, said as it is printed. */
  const distance = ({ miles, km }: Columns, column: DistanceUnit): string | null => {
    const own = column === "mi" ? miles : km;
    const [value, unit] = own === null ? [column === "mi" ? km : miles, column === "mi" ? "km" : "mi"] : [own, column];
    return value === null ? null : p.point(stretchOf(value, unit as DistanceUnit) as number as Ridden, unit as DistanceUnit);
  };
  const months = (n: number): string => (n % 12 === 0 && n >= 24 ? `${n / 12} years` : n === 1 ? "1 month" : `${n} months`);
  const legs = (every: Interval, column: DistanceUnit): string =>
    [distance(every, column), every.months === null ? null : months(every.months), every.hours === null ? null : `${p.figure(every.hours)} engine hours`]
      .filter((leg) => leg !== null)
      .join(" or ");
  const orMonths = (n: number | null): string => (n === null ? "" : ` or ${months(n)}`);

  const repeats = (repeat: Repeat, column: DistanceUnit): string => {
    switch (repeat.by) {
      case "interval":
        return `every ${legs(repeat.every, column).replace(/^1 month$/u, "month")}`;
      case "nth mark":
        return `every ${nth(repeat.nth)} ${distance(repeat.base, column)} service${orMonths(repeat.months)}`;
      case "nth time":
        return `with every ${nth(repeat.nth)} ${lowered(englishItemName(repeat.of, null))}${orMonths(repeat.months)}`;
      case "mark list": {
        const marks = `at ${p.list(repeat.at.map((mark) => distance(mark, column) ?? ""))}`;
        if (repeat.thenEvery === null) return `${marks}, then no more`;
        const far = distance(repeat.thenEvery, column);
        const from = repeat.thenFrom === "zero" ? "zero" : "the last of these";
        return far === null ? `${marks}${orMonths(repeat.thenEvery.months)}` : `${marks}, then every ${legs(repeat.thenEvery, column)}, counted from ${from}`;
      }
      default:
        return unreachable(repeat);
    }
  };

  const uses = (by: PlanItem["shortened"], column: DistanceUnit): string =>
    Object.keys(by).length === 0
      ? "nothing"
      : p.list(
          CONDITIONS.flatMap((each) => {
            const every = by[each];
            return every === undefined ? [] : [`with ${CONDITION_WORDS[each]} every ${legs(every, column)}`];
          }),
        );
  const besides = (anchor: PlanItem["anchor"], first: Interval | null, repeat: Repeat, column: DistanceUnit): readonly string[] => [
    ...(first === null ? [] : [`first at ${legs(first, column)}`]),
    ...(anchor === "last done" && repeat.by === "interval" ? ["from the last time"] : []),
  ];

  return {
    repeats,
    legs,
    title: (nickname: string, planName: string, items: number): string => `${nickname}'s plan, “${planName}”: ${items} items.`,
    /** "Engine oil and filter: every 4,000 mi or 12 months; first at 600 mi." */
    line: ({ name, anchor, first, repeat, before }: Line, column: DistanceUnit): string => {
      const notes = [...besides(anchor, first, repeat, column), ...(before === null ? [] : [`the plan it came with says ${repeats(before, column)}`])];
      return `${name}: ${[repeats(repeat, column), ...notes].join("; ")}.`;
    },
    how: (): string => "Where your manual says otherwise: /plan change item:oil and filter every:3,000 mi or 12 months",
    changing: (nickname: string, name: string): string => `${nickname}, ${lowered(name)}`,
    /** "Now: every 4,000 mi or 12 months, at 4,000 mi, 8,000 mi ...; first at 600 mi." */
    under: (lead: "now" | "changed" | "before", { anchor, first, repeat, marks }: Trigger, column: DistanceUnit): string => {
      const unit = marks.some((mark) => mark % TENTHS_OF_MM[column] !== 0) ? (column === "mi" ? "km" : "mi") : column;
      // A list after which nothing follows has named them all.
      const isWhole = repeat.by === "mark list" && repeat.thenEvery === null;
      const at = marks.length === 0 || isWhole ? "" : `, at ${marks.map((mark) => p.point(mark, unit)).join(", ")} and so on`;
      return `${[`${LEADS[lead]} ${repeats(repeat, column)}${at}`, ...besides(anchor, first, repeat, column)].join("; ")}.`;
    },
    /** Null where the bike's own column is printed, or none is. */
    converted: (every: Interval, column: DistanceUnit): string | null =>
      (column === "mi" ? every.miles : every.km) !== null || (every.miles ?? every.km) === null
        ? null
        : `This bike goes by the ${column} column; with none given, ${column === "mi" ? "km" : "mi"} are converted. If your manual prints both, give both: 4,000 mi / 6,000 km.`,
    /** What the change takes away, or makes far longer: a slip of the pen shows here before it is saved. */
    warnings: (was: Repeat, will: Repeat, column: DistanceUnit): readonly string[] => {
      const [before, after] = [legsOf(was), legsOf(will)];
      if (before === null || after === null) return [];
      const gone = {
        ...{ miles: after.miles === null && after.km === null ? before.miles : null, km: after.miles === null && after.km === null ? before.km : null },
        ...{ months: after.months === null ? before.months : null, hours: after.hours === null ? before.hours : null },
      };
      const [old, now] = [stretchIn(before, column), stretchIn(after, column)];
      const times = old === null || now === null ? 0 : now / old;
      const longer = Math.max(times, before.months === null || after.months === null ? 0 : after.months / before.months);
      return [
        ...(legs(gone, column) === "" ? [] : [`No longer every ${legs(gone, column)}: type it too if it is to stay.`]),
        ...(longer > 3 ? ["That is more than three times as long as now: check the figure against your manual."] : []),
      ];
    },
    /** "- With dust every 2,000 mi, with track days every 2,000 mi." */
    shortened: (by: PlanItem["shortened"], column: DistanceUnit): readonly string[] => [
      Object.keys(by).length === 0 ? "- No use shortens it." : `- ${capital(uses(by, column))}, where it is ridden so.`,
    ],
    uses,
    why: (why: string): string => `Why: ${why}`,
    notSaved: (): string => "Nothing is saved yet.",
    saved: (nickname: string): string => `${nickname}'s plan is changed.`,
    left: (): string => "Left as it was.",
    labels: { save: "Save", leave: "Leave it", undo: "Undo" },
  };
};

/** The legs of an interval by itself, or of every nth mark; null where marks are listed one by one. */
const legsOf = (repeat: Repeat): Interval | null => {
  if (repeat.by === "interval") return repeat.every;
  if (repeat.by !== "nth mark") return null;
  const times = (n: number | null): number | null => (n === null ? null : n * repeat.nth);
  return { miles: times(repeat.base.miles), km: times(repeat.base.km), months: repeat.months, hours: null };
};
const stretchIn = ({ miles, km }: Columns, column: DistanceUnit): number | null => {
  const [own, other] = column === "mi" ? [miles, km] : [km, miles];
  return own !== null ? stretchOf(own, column) : other === null ? null : stretchOf(other, column === "mi" ? "km" : "mi");
};

const LEADS = { now: "Now:", changed: "Then:", before: "Before:" } as const;
const nth = (n: number): string => ["", "", "second", "third", "fourth", "fifth", "sixth"][n] ?? `${n}th`;
