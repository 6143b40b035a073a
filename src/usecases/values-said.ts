// Values found and left at an item of a job, as they were typed. The record keeps them so; what is sure of them is logged as readings too, so that it is judged and feeds the trend.

import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import { toCanonical, type UnitId } from "../core/quantity/units.ts";
import type { LogReading, RecordWork } from "../core/reading/intent.ts";
import { kindRow, READING_KINDS, type ReadingKind } from "../core/reading/kinds.ts";
import { isQuantity } from "../core/reading/value.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { isLook } from "../core/schedule/mending.ts";
import { read } from "../message/read.ts";
import { PAD_PAIR, readValues, valuePieces } from "../message/read-values.ts";
import { isJudged, judgedRow } from "../trade/judged.ts";
import { howWorked, isDrained } from "../trade/workshop.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, itemOf } from "./garage.ts";
import { endAt } from "./item-values.ts";
import { knownOf } from "./own-garage.ts";

/** `outcome`: as it was chosen, undefined where none was. */
export type ValuesTyped = { readonly found?: string; readonly left?: string; readonly outcome?: Outcome };
export type ValuesSaid = {
  /** For the record, at each of the items; left out when no value was typed. */
  readonly values: Pick<RecordWork, "values">;
  readonly readings: readonly LogReading[];
  /** What is no value, as it was typed: "found low"; of what could not be done it is the reason. */
  readonly notes: readonly string[];
  /** The words alone, null where there are none or a reading holds all that they say; `leftTyped`: something was typed as left, in figures or in words. */
  readonly words: { readonly found: string | null; readonly left: string | null; readonly leftTyped: boolean };
};

/** Reads what was typed as found and left at some items of one bike. */
export function valuesSaid(ctx: Ctx, g: Garaged, items: readonly ItemKey[], typed: ValuesTyped, on: VagueDate): ValuesSaid {
  const known = knownOf(ctx, [g]);
  const usual = items.length === 1 && items[0] !== undefined ? usualUnit(items[0]) : null;
  const [found, left] = [readValues(typed.found ?? "", known, usual), readValues(typed.left ?? "", known, usual)];
  const logged = (state: "found" | "left"): readonly LogReading[] => {
    const text = typed[state]?.trim() ?? "";
    // Of a day that is not known nothing can be logged.
    if (text === "" || on.from !== on.to) return [];
    return items.map((item) => readingsAt(ctx, g, item, state, text, on.from)).find((each) => each.length > 0) ?? [];
  };
  const [foundAlone, leftAlone] = [logged("found"), logged("left")];
  const [foundRead, leftRead] = [placedAs(foundAlone, leftAlone), placedAs(leftAlone, foundAlone)];
  // What was logged whole need not be kept as words too.
  const words = (state: "found" | "left", said: string | null, those: readonly LogReading[]): readonly string[] =>
    said === null || those.some(({ unit }) => unit !== "level") ? [] : [typed.outcome === "could not do" ? said : `${state} ${said}`];
  return {
    values: found.values.length + left.values.length === 0 ? {} : { values: items.map((item) => ({ item, found: found.values, left: left.values })) },
    readings: [...foundRead, ...leftRead],
    words: {
      found: foundRead.length > 0 ? null : found.words,
      left: leftRead.length > 0 ? null : left.words,
      leftTyped: (typed.left?.trim() ?? "") !== "",
    },
    notes: [...words("found", found.words, foundRead), ...words("left", left.words, leftRead)],
  };
}

/** What was typed at an item, read as the message that says the same with the kind and the end named. All of it or nothing. */
function readingsAt(ctx: Ctx, g: Garaged, item: ItemKey, state: "found" | "left", text: string, on: LocalDate): readonly LogReading[] {
  const known = knownOf(ctx, [g]);
  const pieces = valuePieces(text);
  for (const kind of howWorked(item)?.measures ?? []) {
    const end = endAt(g, item, kind);
    const named = [known.vocabulary.kinds[kind][0] ?? kind, end === null ? "" : (known.vocabulary.places[end][0] ?? end)].join(" ");
    const readIn = (said: string): readonly LogReading[] => {
      const those = read(`${named} ${said.replace(PAD_PAIR, "$1 and $2 mm")}`, known).intents.filter(
        (intent): intent is LogReading => intent.do === "log reading" && intent.kind === kind,
      );
      return those.map((intent): LogReading => {
        const place = intent.place ?? end;
        const gaps = intent.gaps.filter((gap) => gap.need !== "bike" && gap.need !== "date" && (gap.need !== "place" || place === null));
        return { ...intent, bike: g.bike.id, on, place, gaps, detail: { ...intent.detail, ...conditionAt(g, item, kind, intent), state } };
      });
    };
    // A level in words that can mean two is kept with the job; it is not worth a question.
    const areClear = (intents: readonly LogReading[]): boolean => !intents.some(({ gaps }) => gaps.some(({ need }) => need === "level" || need === "kind"));
    const intents = readIn(text);
    const whole = intents.length === pieces.length || (intents.length > pieces.length && isWhole(text, intents));
    if (whole && areClear(intents)) return intents;
    // "0.9 mm, 0.85 mm" of two plugs: in a message a range or a correction, here two values.
    const apart = pieces.length < 2 ? [] : pieces.map(readIn);
    if (apart.length > 0 && apart.every((each) => each.length === 1 && areClear(each))) return inOneUnit(apart.flat());
  }
  return [];
}

/** "Found 0.09 mm intake 1, left 0.15 mm": a figure with no place is of the place that the other one of its pair names. */
function placedAs(those: readonly LogReading[], others: readonly LogReading[]): readonly LogReading[] {
  if (those.length !== others.length || those.some(({ place }) => place !== null)) return those;
  return those.map((each, n) => {
    const other = others[n];
    if (other === undefined || other.kind !== each.kind || other.place === null) return each;
    return { ...each, place: other.place, gaps: each.gaps.filter(({ need }) => need !== "place") };
  });
}

/** A bare figure takes the unit that the others were typed in, where that is one. */
function inOneUnit(intents: readonly LogReading[]): readonly LogReading[] {
  const [unit, ...more] = [...new Set(intents.flatMap(({ typed, unit }) => (typed.unit === null || unit === null ? [] : [unit])))];
  if (unit === undefined || more.length > 0) return intents;
  return intents.map((intent) => (intent.typed.unit === null ? { ...intent, unit, gaps: intent.gaps.filter(({ need }) => need !== "unit") } : intent));
}

/** Does no figure stand beside those that were read, but for the numbers of valves and cylinders? "Intake 0.09 exhaust 0.18". */
function isWhole(text: string, intents: readonly LogReading[]): boolean {
  const rest = intents.reduce((left, { typed }) => left.replace(typed.text, " "), text);
  return !/\d[.,]\d|\d{3}/u.test(rest);
}

/** The item says how the engine is to be: what is judged only so was read so. */
function conditionAt(g: Garaged, item: ItemKey, kind: ReadingKind, { detail }: LogReading): LogReading["detail"] {
  const engine = itemOf(g, item)?.engine ?? "any";
  const said = detail?.conditions ?? [];
  if (engine === "any" || !isJudged(kind) || !judgedRow(kind).needs.flat().includes(engine) || said.includes("cold") || said.includes("warm")) return {};
  return { conditions: [...said, engine] };
}

/** The unit of a bare figure at an item: that of what it measures, where it measures one thing. */
function usualUnit(item: ItemKey): UnitId | null {
  const [kind, ...more] = howWorked(item)?.measures ?? [];
  const unit = kind === undefined || more.length > 0 ? "level" : READING_KINDS[kind].units[0];
  return unit !== undefined && isQuantity(unit) ? unit : null;
}

/** Was it found as it was left? Of values that have both. */
function isUnchanged({ values = [] }: Pick<RecordWork, "values">): boolean {
  const pairs = values.flatMap(({ found, left }) => (found.length === left.length ? found.map((value, n) => [value, left[n]] as const) : []));
  return (
    pairs.length > 0 &&
    pairs.every(([found, left]) => left !== undefined && Math.abs(toCanonical(found.value, found.unit) - toCanonical(left.value, left.unit)) < 1e-9)
  );
}

/** What came of working at items when it was not said: of one that of its action, of several that they were done. */
export function usualOutcome(ctx: Ctx, g: Garaged, items: readonly ItemKey[], typed: ValuesTyped, { values, readings }: ValuesSaid): Outcome {
  const [first, ...more] = items;
  if (first === undefined || more.length > 0) return "done";
  const action = itemOf(g, first)?.action ?? "test";
  const [found, left] = [typed.found?.trim() ?? "", typed.left?.trim() ?? ""];
  if (action === "adjust" && isUnchanged(values)) return "inspected, within limits";
  // A level that was found otherwise than it was left was filled up, whatever else the item asks for.
  if (found.toLowerCase() !== left.toLowerCase() && !isDrained(first) && saysLevel(ctx, g, first, found) && saysLevel(ctx, g, first, left)) return "topped up";
  if (!isLook(action)) return USUAL[action];
  // "Found cracked": words alone do not say that it was within limits, and no more does a figure that nothing is known to hold against.
  if (found !== "" && left === "" && readings.length === 0) return /\d/u.test(found) ? "inspected" : "done";
  return USUAL[action];
}

/** Do the words say how full it is, for certain or not? */
function saysLevel(ctx: Ctx, g: Garaged, item: ItemKey, text: string): boolean {
  const known = knownOf(ctx, [g]);
  const kinds = (howWorked(item)?.measures ?? []).filter((kind) => kindRow(kind).dimension === "level");
  return (
    text !== "" &&
    kinds.some((kind) =>
      read(`${known.vocabulary.kinds[kind][0] ?? kind} ${text}`, known).intents.some((each) => each.do === "log reading" && each.kind === kind),
    )
  );
}

/** What came of working at an item where nothing else is said. */
const USUAL: Readonly<Record<WorkAction, Outcome>> = {
  inspect: "inspected, within limits",
  measure: "inspected, within limits",
  test: "inspected, within limits",
  "check tightness": "inspected, within limits",
  adjust: "adjusted",
  replace: "replaced",
  clean: "done",
  lubricate: "done",
  "top up": "done",
  bleed: "done",
};
