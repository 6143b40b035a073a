// A pasted chart beside the plan: what its letters are taken for, and, once they are confirmed, what each line would change.

import type { BikeId, ItemKey } from "../core/ids.ts";
import { chartOf } from "../core/plan/chart.ts";
import { type ChartTrigger, type NoTrigger, triggerOf } from "../core/plan/from-chart.ts";
import type { Columns, PlanItem } from "../core/plan/plan.ts";
import type { DistanceUnit, Ridden } from "../core/quantity/distance.ts";
import type { Meaning } from "../core/reading/chart-words.ts";
import { isHabit } from "../core/schedule/intervals.ts";
import { firstMarks } from "../core/schedule/marks.ts";
import { type ChartSaid, readChart, type Unread } from "../message/read-chart.ts";
import type { ChartDraft } from "../store/charts.ts";
import { itemsOfLine, nearestItems } from "./chart-items.ts";
import { type ChartUnit, unitsOf } from "./chart-units.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { knownOf } from "./own-garage.ts";
import { itemsNamed, nameIn } from "./record-work.ts";

/** A letter, what it is taken for, how that is known, and what else it can mean. */
export type LetterTaken = {
  readonly letter: string;
  readonly meaning: Meaning | null;
  readonly from: "chosen" | "the chart" | "usual" | "unknown";
  readonly others: readonly Meaning[];
  /** Is the member asked about it by name? */
  readonly ask: boolean;
};
/** A trigger as it is printed back. */
export type Trigger = Pick<PlanItem, "anchor" | "first" | "repeat"> & { readonly marks: readonly Ridden[] };

type Named = { readonly item: ItemKey; readonly name: string };

/** What becomes of one line of the chart. `n`: by which it is answered. */
export type LineOutcome = { readonly n: number; readonly line: number; readonly called: string; readonly meaning: Meaning | null } & (
  | { readonly is: "habit"; readonly name: string }
  | { readonly is: "same"; readonly item: ItemKey; readonly name: string; readonly will: Trigger }
  | {
      readonly is: "change";
      readonly item: ItemKey;
      readonly name: string;
      readonly was: Trigger;
      readonly will: Trigger;
      readonly after: ChartTrigger["after"];
      /** What the plan does, where the chart's letter means other work of the same kind. */
      readonly does: PlanItem["action"] | null;
      readonly caution: string | null;
    }
  | {
      readonly is: "unknown";
      readonly will: Trigger;
      readonly after: ChartTrigger["after"];
      readonly own: boolean;
      readonly canBeOwn: boolean;
      readonly nearest: readonly Named[];
    }
  | { readonly is: "several"; readonly options: readonly { readonly item: ItemKey; readonly name: string }[] }
  | { readonly is: "left" }
  | { readonly is: "unclear"; readonly because: "whose interval" | "distance twice" | "nothing printed" | "with what" }
  /** Another line gives the same item another trigger: which of them counts is asked. */
  | { readonly is: "twice"; readonly item: ItemKey; readonly name: string; readonly will: Trigger }
);

export type ChartProposal = {
  readonly is: "chart";
  readonly draft: string;
  readonly rev: number;
  readonly bike: BikeId;
  readonly nickname: string;
  readonly column: DistanceUnit;
  readonly planRev: number;
  readonly services: readonly Columns[];
  readonly units: readonly DistanceUnit[];
  readonly rows: number;
  readonly letters: readonly LetterTaken[];
  readonly unread: readonly Unread[];
  readonly confirmed: boolean;
  /** Calendar legs of the plan stay, since the chart has no place for any. */
  readonly keepsMonths: boolean;
  readonly lines: readonly LineOutcome[];
  /** Items of the plan that the chart does not name. */
  readonly untouched: number;
};

/** Null when what was pasted is no chart. */
export function proposalOf(ctx: Ctx, all: readonly Garaged[], g: Garaged, draft: ChartDraft): ChartProposal | null {
  const said = readChart(draft.typed, g.bike.column, knownOf(ctx, all));
  if (said === null) return null;
  const letters = said.letters.map((letter) => letterOf(letter, said, draft, ctx));
  const confirmed = draft.answers.confirmed && letters.every((letter) => letter.meaning !== null);
  const lines = confirmed ? linesOf(ctx, all, g, draft, said, letters) : [];
  const named = new Set(lines.flatMap((line) => ("name" in line ? [line.name] : [])));
  return {
    ...{ is: "chart", draft: draft.id, rev: draft.rev, bike: g.bike.id, nickname: g.bike.nickname, column: g.bike.column },
    ...{ planRev: g.bike.edits.length, services: said.marks, units: said.units, rows: said.rows.length, letters, unread: said.unread, confirmed },
    ...{ keepsMonths: !said.besideColumn, lines, untouched: g.plan.items.length - named.size },
  };
}

function letterOf(letter: string, said: ChartSaid, draft: ChartDraft, ctx: Ctx): LetterTaken {
  const { legend, asked } = draft.answers;
  const usual = ctx.vocabulary.chart.letters[letter] ?? [];
  const chosen = legend[letter];
  const again = asked.includes(letter);
  if (chosen !== undefined) return { letter, meaning: chosen, from: "chosen", others: [], ask: again };
  const own = said.legend[letter];
  const [meaning = null, ...others] = own ?? usual;
  return {
    letter,
    meaning,
    from: own !== undefined ? "the chart" : meaning === null ? "unknown" : "usual",
    others,
    ask: again || meaning === null || others.length > 0,
  };
}

function linesOf(ctx: Ctx, all: readonly Garaged[], g: Garaged, draft: ChartDraft, said: ChartSaid, letters: readonly LetterTaken[]): readonly LineOutcome[] {
  const units = unitsOf(said, Object.fromEntries(letters.map(({ letter, meaning }) => [letter, meaning ?? "nothing"])));
  const known = knownOf(ctx, all);
  const matched = units.map((unit) => {
    const answer = draft.answers.items[unit.n];
    const items = g.plan.items.filter((item) => item.key === answer);
    const match = items.length > 0 ? ({ is: "items", items, exact: true } as const) : itemsOfLine(ctx, known, g, unit.name, unit.meaning);
    return { unit, match, left: answer === "leave" };
  });
  /** Lines that surely mean an item come before those that mean work of its kind. */
  const exactly = new Set(matched.flatMap(({ match }) => (match.is === "items" && match.exact ? match.items.map((item) => item.key) : [])));
  const outcomes = matched.flatMap(({ unit, match, left }): LineOutcome[] => {
    const head = { n: unit.n, line: unit.line, called: unit.name, meaning: unit.meaning };
    if (left) return [{ ...head, is: "left" }];
    if (unit.unclear) return [{ ...head, is: "unclear", because: "whose interval" }];
    if (match.is === "several") return [{ ...head, is: "several", options: match.items.map(({ key }) => ({ item: key, name: nameIn(ctx, g, key) })) }];
    const items = match.is === "items" ? match.items.filter((item) => match.exact || !exactly.has(item.key)) : [];
    if (items.length === 0) return [unknownLine(ctx, all, head, unit, draft, said, g)];
    return items.map((item) => itemLine(ctx, all, head, unit, item, said, g));
  });
  return outcomes.map((each) => {
    if (!isSaidTwice(each, outcomes)) return each;
    const { n, line, called, meaning, item, name, will } = each;
    return { n, line, called, meaning, is: "twice", item, name, will };
  });
}

type Head = Pick<LineOutcome, "n" | "line" | "called" | "meaning">;

/** Two lines that would give one item two different triggers. */
function isSaidTwice(line: LineOutcome, all: readonly LineOutcome[]): line is Extract<LineOutcome, { is: "change" | "same" }> {
  if (line.is !== "change" && line.is !== "same") return false;
  const others = all.filter((other) => other !== line && (other.is === "change" || other.is === "same") && other.name === line.name);
  return others.some(
    (other) => other.is !== line.is || (other.is === "change" && line.is === "change" && JSON.stringify(other.will) !== JSON.stringify(line.will)),
  );
}

function itemLine(ctx: Ctx, all: readonly Garaged[], head: Head, unit: ChartUnit, item: PlanItem, said: ChartSaid, g: Garaged): LineOutcome {
  const name = nameIn(ctx, g, item.key);
  const { column } = g.bike;
  const trigger = triggerFor(ctx, all, g, unit, said, said.besideColumn ? null : monthsOf(item));
  if (typeof trigger === "string") return { ...head, is: "unclear", because: trigger };
  const next: PlanItem = {
    ...item,
    anchor: trigger.anchor ?? item.anchor,
    first: trigger.first === undefined ? item.first : trigger.first,
    repeat: trigger.repeat,
  };
  if (isAlike(item, next, said.marks)) return { ...head, is: "same", item: item.key, name, will: printedBack(item, column) };
  // A service table has the chain oiled as well: that takes nothing from a rider's habit.
  const alone = triggerFor(ctx, all, g, unit, said, null);
  // Months that only stay, since the chart has no place for any, make no habit of a service.
  const printed = typeof alone === "string" ? next : { ...next, repeat: alone.repeat };
  if (isHabit(item, column) && !isHabit(printed, column)) return { ...head, is: "habit", name };
  return {
    ...{ ...head, is: "change", item: item.key, name, was: printedBack(item, column), will: printedBack(next, column), after: trigger.after },
    ...{ does: unit.meaning === null || unit.meaning === "as the item" || unit.meaning === item.action ? null : item.action, caution: item.caution },
  };
}

/** As the chart prints it; work that goes with other work names that. */
function triggerFor(
  ctx: Ctx,
  all: readonly Garaged[],
  g: Garaged,
  unit: ChartUnit,
  said: ChartSaid,
  months: number | null,
): ChartTrigger | NoTrigger | "with what" {
  const along = unit.beside?.along;
  if (along === undefined) return triggerOf(said.marks, unit, months);
  if (unit.at.length > 0) return "distance twice";
  const named = itemsNamed(ctx, all, g, along.of);
  const [of, ...others] = named.is === "done" ? named.value : [];
  if (of === undefined || others.length > 0) return "with what";
  return {
    ...{ anchor: "last done", first: undefined, after: "same again" },
    repeat: { by: "nth time", nth: along.nth, of, months: unit.beside?.every.months ?? null },
  };
}

function unknownLine(ctx: Ctx, all: readonly Garaged[], head: Head, unit: ChartUnit, draft: ChartDraft, said: ChartSaid, g: Garaged): LineOutcome {
  const trigger = triggerFor(ctx, all, g, unit, said, null);
  if (typeof trigger === "string") return { ...head, is: "unclear", because: trigger };
  const canBeOwn = unit.meaning !== null && unit.meaning !== "as the item" && unit.meaning !== "nothing";
  const will = { anchor: trigger.anchor ?? "last done", first: trigger.first ?? null, repeat: trigger.repeat };
  return {
    ...head,
    is: "unknown",
    will: printedBack(will, g.bike.column),
    after: trigger.after,
    own: canBeOwn && draft.answers.own.includes(unit.n),
    canBeOwn,
    nearest: nearestItems(ctx, g, unit.name, unit.meaning).map((item) => ({ item: item.key, name: nameIn(ctx, g, item.key) })),
  };
}

const printedBack = ({ anchor, first, repeat }: Pick<PlanItem, "anchor" | "first" | "repeat">, column: DistanceUnit): Trigger => ({
  ...{ anchor, first, repeat },
  marks: anchor === "marks" ? firstMarks(repeat, column) : [],
});

const monthsOf = ({ repeat }: PlanItem): number | null =>
  repeat.by === "interval" ? repeat.every.months : repeat.by === "mark list" ? (repeat.thenEvery?.months ?? null) : repeat.months;

/** Do two triggers print the same line in a chart of these services, in each column that is printed? */
function isAlike(a: PlanItem, b: PlanItem, services: readonly Columns[]): boolean {
  const last = services.at(-1);
  const printed = (["mi", "km"] as const).filter((unit) => (unit === "mi" ? last?.miles : last?.km) != null);
  return printed.every((unit) => lineIn(a, unit, last) === lineIn(b, unit, last));
}

function lineIn(item: PlanItem, unit: DistanceUnit, last: Columns | undefined): string {
  const { rows, below } = chartOf([item], unit, [], (unit === "mi" ? last?.miles : last?.km) ?? null);
  const [row] = [...rows, ...below];
  const repeat = row?.beside?.repeat;
  // The column that the chart does not print is none of its business.
  const legs = repeat?.by === "interval" ? [unit === "mi" ? repeat.every.miles : repeat.every.km, repeat.every.months, repeat.every.hours] : repeat;
  return JSON.stringify([row?.at, item.anchor, legs ?? null]);
}
