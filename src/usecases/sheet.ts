// The service sheet of a bike: what belongs to it, in order, with what each item needs. Nothing is saved by looking at it.

import { isLocalDate } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { Equipment } from "../core/equipment.ts";
import type { ItemKey } from "../core/ids.ts";
import type { PlanItem } from "../core/plan/plan.ts";
import { type DistanceUnit, dialOf, figureIn, type Ridden, riddenOf } from "../core/quantity/distance.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import type { Facts } from "../core/schedule/facts.ts";
import { arrange, type Step } from "../core/sheet/arrange.ts";
import { type Consumable, PLAIN } from "../core/sheet/how.ts";
import { type Blind, type SheetList, type SheetWhy, servicesNear, sheetAt, sheetUntil } from "../core/sheet/select.ts";
import type { Settled, Spec } from "../core/spec/spec.ts";
import { dialAt, riddenAtDial } from "../core/usage/track.ts";
import { readDial } from "../message/read-dial.ts";
import { readUntil } from "../message/read-until.ts";
import type { Repos } from "../store/store.ts";
import { mayRun, neededFor } from "../trade/defect-needs.ts";
import { defectRow } from "../trade/defects.ts";
import { fitsNew, isToldByALook, renewalOf } from "../trade/renewal.ts";
import { isSpecKey, type SpecKey } from "../trade/spec-keys.ts";
import { howWorked } from "../trade/workshop.ts";
import type { Ctx } from "./context.ts";
import { type DefectShown, defectShown } from "./defect-shown.ts";
import { type DueBike, type DueLine, dueBike } from "./due.ts";
import { dayAhead } from "./falling.ts";
import { type Garaged, itemsOf } from "./garage.ts";
import { horizonOf } from "./outlook.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";
import { specFor, specsOf } from "./specs.ts";
import { whichBike } from "./which-bike.ts";

/** A spec that an item needs, as it was entered: none, one, or several where members differ. */
export type SheetSpec = { readonly key: SpecKey; readonly is: Settled["is"]; readonly typed: readonly string[]; readonly from: Spec["source"] };
/** A consumable, with the amount and the kind that the specs name, as typed. */
export type SheetUse = Pick<Consumable, "what" | "count"> & { readonly amount: string | null; readonly kind: string | null };

export type SheetItem = Pick<PlanItem, "action" | "engine" | "position" | "minutes"> & {
  readonly item: ItemKey;
  readonly name: string;
  readonly why: SheetWhy;
  readonly due: DueLine;
  readonly specs: readonly SheetSpec[];
  readonly measures: readonly ReadingKind[];
};
export type SheetStep = Exclude<Step, { step: "item" }> | ({ readonly step: "item" } & SheetItem);
/** `starts`: how warm the engine is; of a bike without one "any". */
export type SheetEvening = {
  readonly starts: "warm" | "cold" | "any";
  readonly minutes: number;
  readonly unsaid: number;
  readonly steps: readonly SheetStep[];
};

export type SheetShown = {
  readonly bike: Omit<DueBike, "dues" | "first">;
  /** What asked for it, to ask for it again: "next" or a figure on the dial. */
  readonly at: string;
  readonly mark: Ridden | null;
  readonly on: LocalDate | null;
  readonly until: LocalDate | null;
  readonly upTo: Ridden | null;
  readonly items: number;
  readonly minutes: number;
  readonly unsaid: number;
  readonly evenings: readonly SheetEvening[];
  /** The evening shown, from 1. */
  readonly evening: number;
  readonly tools: readonly string[];
  readonly uses: readonly SheetUse[];
  /** Nothing is on record of these, and a look tells whether they are wanted. */
  readonly lookFirst: readonly string[];
  readonly adds: { readonly at: number; readonly ordinary: number; readonly names: readonly string[] } | null;
  readonly covered: readonly { readonly name: string; readonly by: string }[];
  readonly meanwhile: readonly string[];
  /** What the list cannot know, where nothing says how far the bike is ridden. */
  readonly blind: Blind | null;
  /** Where nothing falls due there: the services nearest to it, in whole figures of the bike's column. */
  readonly nearest: readonly { readonly at: number; readonly unit: DistanceUnit }[];
  /** Of these the plan has no record, and they do not fall due by then. */
  readonly habits: readonly string[];
  readonly tension: "chain" | "belt" | null;
  /** A disc is pumped firm, a drum's free play set. */
  readonly brakes: { readonly front: Equipment["frontBrake"]; readonly rear: Equipment["rearBrake"] };
  /** The note that the last job left. */
  readonly note: string | null;
  /** A job on this bike that is being worked at. */
  readonly job: string | null;
  /** What stands open that it is not to be ridden with; for the owner alone. */
  readonly stops: readonly DefectShown[];
  readonly engine: EngineRun;
};

/** How the engine is warmed: by riding, running it while it stands, or not at all before a defect is closed. */
export type EngineRun = "ride" | "standing" | "not run";

export type SheetInput = { readonly at?: string; readonly until?: string; readonly bike?: string; readonly evening?: number; readonly share?: boolean };

/** The sheet of the service at an odometer, of the next one, or of all that falls due until a day. */
export async function showSheet(ctx: Ctx, input: SheetInput): Promise<Result<SheetShown>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const span = spanOf(ctx, all, which.value, input);
    if (span.is === "refused") return span;
    const at = pointOf(ctx, all, which.value, span.value);
    if (at.is === "refused") return at;
    const list = listOf(which.value, at.value.at);
    if (list === null) return refused({ why: "no sheet" });
    return done(await sheetOf(q, ctx, which.value, list, at.value.typed, input.evening ?? 1, input.share === true));
  });
}

/** What asks for the sheet of a span: the point at its end, or its day. Where nothing is said of one, the service that was typed. */
function spanOf(ctx: Ctx, all: readonly Garaged[], g: Garaged, { at, until }: SheetInput): Result<string | undefined> {
  if (until === undefined) return done(at);
  const read = readUntil(until, knownOf(ctx, all), ctx.who.distance ?? g.unit);
  if (read?.is === "distance") {
    const horizon = horizonOf(g, read);
    if (typeof horizon === "string") return refused({ why: "not ahead", typed: until, because: horizon });
    return done(horizon.ridden === null ? at : `${UNTIL}${figureIn(dialAt(g.track, horizon.ridden.likely), g.unit)} ${g.unit}`);
  }
  const day = dayAhead(ctx, until);
  return day.is === "refused" ? day : done(`${UNTIL}${day.value}`);
}

/** The services nearest to a figure at which nothing falls due; where it is passed, the one that comes next. */
function nearestTo({ facts, at, bike }: Garaged, mark: Ridden): SheetShown["nearest"] {
  const asked = Math.round(figureIn(mark, bike.column));
  const passed = at.ridden !== null && at.ridden >= mark ? Math.floor(figureIn(at.ridden, bike.column)) : null;
  const near = servicesNear(facts, passed === null ? mark : riddenOf(passed + 1, bike.column));
  return near.filter((each) => each !== asked && (passed === null || each > passed)).map((each) => ({ at: each, unit: bike.column }));
}

/** Before the day in what asks for a sheet again. */
const UNTIL = "until ";

/** A service by its point, the next one, or a day. */
export type SheetPoint = Ridden | "next" | { readonly until: LocalDate } | { readonly upTo: Ridden };

/** `lookFirst`: nothing is on record of these, and a look tells whether they are wanted. */
export type LookedThrough = SheetList & { readonly lookFirst: readonly ItemKey[] };

export function listOf(g: Garaged, at: SheetPoint): LookedThrough | null {
  const list = wholeListOf(g, at);
  // A tyre or a chain of which nothing is on record is not renewed before somebody has looked at it.
  if (list === null) return null;
  const lookFirst = list.entries.flatMap(({ item, why }) => (why === "unknown" && isToldByALook(item) ? [item] : []));
  return { ...list, entries: list.entries.filter(({ item }) => !lookFirst.includes(item)), lookFirst };
}

function wholeListOf(g: Garaged, at: SheetPoint): SheetList | null {
  if (typeof at !== "object") return sheetAt(g.facts, g.at, at);
  if ("until" in at) return sheetUntil(g.facts, g.at, { on: at.until, ridden: g.at.forecast.riddenOn(at.until) }, { until: at.until, upTo: null });
  // Where nothing says when it comes, only what is due by date today is counted.
  const on = g.at.forecast.dateOf(at.upTo)?.on ?? g.today;
  return sheetUntil(g.facts, g.at, { on, ridden: { low: at.upTo, likely: at.upTo, high: at.upTo } }, { until: null, upTo: at.upTo });
}

/** The point that was typed. */
export function pointOf(ctx: Ctx, all: readonly Garaged[], g: Garaged, typed: string | undefined): Result<{ readonly at: SheetPoint; readonly typed: string }> {
  const text = (typed ?? "").trim().toLowerCase();
  const span = text.startsWith(UNTIL) ? text.slice(UNTIL.length) : "";
  if (isLocalDate(span)) return done({ at: { until: span }, typed: `${UNTIL}${span}` });
  if (text === "" || text === "next") return done({ at: "next", typed: "next" });
  const dial = readDial(span === "" ? text : span, knownOf(ctx, all), g.unit);
  if (dial === null || dial.value > 999_999) return refused({ why: "not a distance", typed: typed ?? "", unit: g.unit });
  const at = riddenAtDial(g.track, dialOf(dial.value, dial.unit), g.today);
  const figure = String(figureIn(dialOf(dial.value, dial.unit), g.unit));
  return done(span === "" ? { at, typed: figure } : { at: { upTo: at }, typed: `${UNTIL}${figure}` });
}

async function sheetOf(q: Repos, ctx: Ctx, g: Garaged, list: LookedThrough, at: string, evening: number, shared: boolean): Promise<SheetShown> {
  const { dues, first: _first, ...bike } = dueBike(ctx, g);
  const specs = await specsOf(q, g.bike, ctx.who.group);
  const lines = new Map(dues.map((line) => [line.item, line]));
  const items = new Map(itemsOf(g).map((item) => [item.key, item]));
  const why = new Map(list.entries.map((entry) => [entry.item, entry.why]));
  const name = (key: ItemKey): string => nameIn(ctx, g, key);
  const tension = tensionOf(g);
  const evenings = arrangedOf(g, list).map(({ starts, steps, minutes, unsaid }): SheetEvening => {
    const shown = steps.flatMap((step): SheetStep[] => {
      if (step.step !== "item") return [step];
      const [item, due] = [items.get(step.item), lines.get(step.item)];
      if (item === undefined || due === undefined) return [];
      const how = howWorked(item.key) ?? PLAIN;
      return [
        {
          ...{ step: "item", item: item.key, name: name(item.key), why: why.get(item.key) ?? "there", due },
          ...{ action: item.action, engine: engineOf(g, item), position: item.position, minutes: item.minutes, measures: how.measures },
          specs: how.specs.flatMap((key) => specOf(specs, g, key)),
        },
      ];
    });
    return { starts: hasEngine(g) ? starts : "any", minutes, unsaid, steps: shown };
  });
  const works = list.entries.map(({ item }) => howWorked(item) ?? PLAIN);
  const job = (await q.jobs.openOf([g.bike.id])).at(-1) ?? null;
  const stops = stopsOf(g);
  const atEnd = new Set([...g.facts.verdicts.filter(({ is }) => is !== "within" && is !== "cannot tell"), ...wornBy(g, list)].map(({ item }) => item));
  const listed = new Set(list.entries.map(({ item }) => item));
  // A part found near its end, or at it by its wear line until then, is had ready, unless the line that fits the new one is on the sheet too.
  const worn = list.entries.flatMap(({ item }) => (atEnd.has(item) && (fitsNew(item) === item || !listed.has(fitsNew(item))) ? bought(item) : []));
  const needed = stops.flatMap(({ kind }) => neededFor(kind).map((what): Consumable => ({ what, count: null, spec: null, kind: null })));
  return {
    ...{
      bike,
      at,
      mark: list.mark,
      on: list.on,
      until: list.until,
      upTo: list.upTo,
      evenings,
      evening: Math.min(Math.max(1, evening), Math.max(1, evenings.length)),
      tension,
      brakes: { front: g.bike.equipment.frontBrake, rear: g.bike.equipment.rearBrake },
    },
    items: list.entries.length,
    minutes: evenings.reduce((sum, each) => sum + each.minutes, 0),
    unsaid: evenings.reduce((sum, each) => sum + each.unsaid, 0),
    tools: [...new Set(works.flatMap(({ tools }) => tools))],
    uses: usesOf([...works.flatMap(({ consumables }) => consumables), ...worn, ...(shared ? [] : needed)], specs, g),
    lookFirst: list.lookFirst.map(name),
    adds: list.adds === null ? null : { at: list.adds.at, ordinary: list.adds.ordinary, names: list.adds.items.map(name) },
    covered: list.covered.map(({ item, by }) => ({ name: name(item), by: name(by) })),
    meanwhile: list.meanwhile.map(name),
    blind: list.blind,
    nearest: list.entries.length > 0 || list.mark === null ? [] : nearestTo(g, list.mark),
    habits: dues.filter((due) => due.habit).map((due) => due.name),
    note: (await q.jobs.lastOf(g.bike.id))?.note ?? null,
    job: job?.id ?? null,
    stops: shared ? [] : stops,
    engine: engineRun(stops),
  };
}

/** The parts that likely reach their limit by the service, or by the end of the span. */
function wornBy({ at, facts }: Garaged, { mark, until, upTo }: SheetList): Facts["wearing"] {
  const end = upTo ?? mark ?? (until === null ? at.ridden : (at.forecast.riddenOn(until)?.likely ?? at.ridden));
  return facts.wearing.filter(({ reaches }) => end !== null && reaches.likely <= Math.max(end, at.ridden ?? 0));
}

/** What a new part takes beyond what the line itself uses. */
const bought = (item: ItemKey): readonly Consumable[] => {
  const own = new Set((howWorked(item) ?? PLAIN).consumables.map(({ what }) => what));
  return renewalOf(fitsNew(item)).filter(({ what }) => !own.has(what));
};

/** What stands open on a bike that it is not to be ridden with, oldest first; what nobody has graded yet counts as it usually is. */
export const stopsOf = (g: Garaged): readonly DefectShown[] =>
  g.defects
    .filter(({ grade, kind }) => grade === "do not ride" || (grade === null && defectRow(kind)?.usual === "do not ride"))
    .map((defect) => defectShown(g, defect));

/** A motor is neither warmed up for its work nor left to cool for it. */
const hasEngine = ({ bike }: Garaged): boolean => bike.equipment.fuel !== "electric";
const engineOf = (g: Garaged, { engine }: Pick<PlanItem, "engine">): PlanItem["engine"] => (hasEngine(g) ? engine : "any");

const engineRun = (stops: readonly DefectShown[]): EngineRun =>
  stops.length === 0 ? "ride" : stops.every(({ kind }) => mayRun(kind)) ? "standing" : "not run";

/** What is tensioned after the rear wheel was out. */
function tensionOf({ bike }: Garaged): SheetShown["tension"] {
  const { finalDrive } = bike.equipment;
  return finalDrive === "chain" || finalDrive === "belt" ? finalDrive : null;
}

/** The evenings of a list on this bike. */
export function arrangedOf(g: Garaged, list: Pick<SheetList, "entries">) {
  const items = new Map(itemsOf(g).map((item) => [item.key, item]));
  const works = list.entries.flatMap(({ item: key }) => {
    const item = items.get(key);
    return item === undefined ? [] : [{ key, engine: engineOf(g, item), minutes: item.minutes, system: item.system, how: howWorked(key) ?? PLAIN }];
  });
  return arrange(works, { tension: tensionOf(g) !== null });
}

function specOf(specs: readonly Spec[], g: Garaged, key: string): SheetSpec[] {
  if (!isSpecKey(key)) return [];
  const settled = specFor(specs, g.bike, key);
  switch (settled.is) {
    case "none":
      return [{ key, is: "none", typed: [], from: null }];
    case "one":
      return [{ key, is: "one", typed: [settled.spec.typed], from: settled.spec.source }];
    case "several":
      return [{ key, is: "several", typed: settled.specs.map(({ typed }) => typed), from: null }];
  }
}

/** What is used up, each thing once: pieces are added, amounts are the specs'. */
export function usesOf(consumables: readonly Consumable[], specs: readonly Spec[], g: Garaged): readonly SheetUse[] {
  const typed = (key: string | null): string | null => {
    const settled = key === null || !isSpecKey(key) ? null : specFor(specs, g.bike, key);
    return settled?.is === "one" ? settled.spec.typed : null;
  };
  const merged = new Map<string, SheetUse>();
  for (const { what, count, spec, kind } of consumables) {
    const use = merged.get(what);
    const counted = count === null && use?.count == null ? null : (count ?? 0) + (use?.count ?? 0);
    merged.set(what, { what, count: counted, amount: use?.amount ?? typed(spec), kind: use?.kind ?? typed(kind) });
  }
  return [...merged.values()];
}
