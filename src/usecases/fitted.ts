// What is known of the parts that are on: how old the tyres are by their date codes, and which readings were of parts gone since.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { Equipment } from "../core/equipment.ts";
import type { ItemKey } from "../core/ids.ts";
import { type Judgement, judge, type Limit } from "../core/judgement/verdict.ts";
import type { PlanItem } from "../core/plan/plan.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import { planMonths } from "../core/schedule/date-leg.ts";
import type { Facts, Fitting, Outcome, Refitted, Verdict } from "../core/schedule/facts.ts";
import { inOneDay, type Taken } from "../core/schedule/measured.ts";
import { setReadOf } from "../core/schedule/tyre-sets.ts";
import { type AgeWord, ageWord, monthsOld, replacedAt, TYRE_AGE_ITEMS, type TyreEnd, type TyreMade, tyreMade } from "../core/tyre/age.ts";
import { readTyreDate, type TyreDate } from "../core/tyre/date-code.ts";
import type { WorkRecord } from "../store/work.ts";
import { endOf } from "../trade/judged.ts";
import { TYRE_AGE } from "../trade/tyres.ts";

const TYRES = [
  ["front", TYRE_AGE_ITEMS.front],
  ["rear", TYRE_AGE_ITEMS.rear],
  ["sidecar", TYRE_AGE_ITEMS.sidecar],
] as const;

/** A tyre that is on, by its date code. `months`: its age. `replaceAt`: months at which it is replaced, by the bike's plan or the rule. */
export type TyreAged = {
  readonly place: TyreEnd;
  readonly date: Exclude<TyreDate, { is: "refused" }>;
  readonly months: number;
  readonly replaceAt: number;
  readonly age: AgeWord;
  /** The work that fitted it with its code, or the reading of the code since; the other is null. `on`: the day of it. */
  readonly work: string | null;
  readonly reading: string | null;
  readonly on: LocalDate;
};

/** What tells which tyres are on and how old they are. `refitted` and `fittings`: pieces put back on and sets swapped; left out where there are none. */
export type TyreFacts = {
  readonly work: readonly WorkRecord[];
  readonly measured: readonly CodeRead[];
  readonly refitted?: readonly Refitted[];
  readonly fittings?: readonly Fitting[];
  readonly plan: AgePlan;
};
/** What the bike's plan says of the age of its tyres. */
export type AgePlan = { readonly items: readonly PlanItem[] } & Pick<Facts, "conditions" | "column">;
type CodeRead = OfPart & Pick<Taken, "typed">;

/** The tyres that are on, where the code of each was said when it was fitted, or read off it since. */
export function tyresAged(of: TyreFacts, today: LocalDate): readonly TyreAged[] {
  const read = ofPartsOn(
    ofTheSetOn(
      of.measured.filter(({ kind }) => kind === "tyre date code"),
      of.fittings ?? [],
    ),
    of.work,
    of.refitted,
  );
  return TYRES.flatMap(([place, item]) => {
    const fit = fittedAt(of, item);
    const code = read
      .filter((each) => each.place === place)
      .reduce<CodeRead | null>((late, each) => (late === null || isLater(each, late) ? each : late), null);
    const made = code?.typed ?? (fit === null ? null : codeOf(fit, item));
    const date = made === null ? null : readTyreDate(made, today);
    if (date === null || date.is === "refused") return [];
    const months = monthsOld(date, today);
    const replaceAt = replacedAt(monthsByPlan(of.plan, item), TYRE_AGE);
    const from = code !== null ? { work: null, reading: code.id, on: code.on } : { work: fit?.id ?? null, reading: null, on: fit?.on.from ?? today };
    return [{ place, date, months, replaceAt, age: ageWord(months, replaceAt, TYRE_AGE), ...from }];
  });
}

/** What the plan of a bike says of it. */
export const agePlanOf = ({
  plan,
  facts,
}: {
  readonly plan: { readonly items: readonly PlanItem[] };
  readonly facts: Pick<Facts, "conditions" | "column">;
}): AgePlan => ({
  items: plan.items,
  conditions: facts.conditions,
  column: facts.column,
});

/** The ends of which no tyre's age is known. */
export const undatedEnds = (aged: readonly TyreAged[], { sidecar }: Pick<Equipment, "sidecar">): readonly TyreEnd[] =>
  TYRES.flatMap(([place]) => (aged.some((each) => each.place === place) || (place === "sidecar" && sidecar !== "fitted") ? [] : [place]));

function monthsByPlan({ items, ...facts }: AgePlan, key: string): number | null {
  const item = items.find((each) => each.key === key);
  return item === undefined ? null : planMonths(item, facts);
}

const codeOf = ({ detail }: WorkRecord, item: string): string | null => detail?.parts.find((part) => part.item === item)?.made ?? null;

/** The work that put on the tyre that is on at an end: the last of its set, and of pieces put back on the one that first fitted it. */
export function fittedAt({ work, refitted = [], fittings = [] }: Omit<TyreFacts, "measured" | "plan">, item: string): WorkRecord | null {
  const all = work.filter((record) => fitted(record, item));
  const swaps = fittings.length > 0 ? [] : (refitted.find(({ items }) => items.has(item as ItemKey))?.fittings ?? []);
  const on = swaps.at(-1)?.set;
  if (on !== undefined) return all.find(({ id }) => id === on) ?? null;
  const set = fittings.at(-1)?.set;
  const those = set === undefined ? all : all.filter((record) => setReadOf(fittings, { ...record, on: record.on.from }) === set);
  return those.reduce<WorkRecord | null>((late, each) => (late === null || !isBefore(each, late) ? each : late), null);
}

/** What the schedule counts the age of each tyre from. */
export const madeOf = (aged: readonly TyreAged[]): ReadonlyMap<ItemKey, TyreMade> =>
  new Map(aged.map(({ place, date, work, reading }) => [TYRE_AGE_ITEMS[place] as string as ItemKey, tyreMade(date, reading ?? work ?? "", TYRE_AGE)]));

/** Ages as the schedule takes them: a tyre is due by its age whatever the day it was fitted on, and whatever the plan says. */
export function ageVerdicts(aged: readonly TyreAged[]): readonly Verdict[] {
  const limit: Limit = { min: null, max: TYRE_AGE.replace, near: TYRE_AGE.notice, source: TYRE_AGE.source };
  return aged.flatMap(({ place, date, months, work, reading, on }): readonly Verdict[] => {
    const { is }: Judgement = judge(months, limit, 1);
    if (is === "within") return [];
    const { week, year } = tyreMade(date, "", TYRE_AGE);
    return [{ item: TYRE_AGE_ITEMS[place] as string as ItemKey, on, is, reading: reading ?? work ?? "", made: { week, year, months } }];
  });
}

const NEW: Partial<Record<Taken["kind"], { readonly items: Partial<Record<string, string>>; readonly outcomes: readonly Outcome[] }>> = {
  tread: { items: TYRE_AGE_ITEMS, outcomes: ["replaced", "done"] },
  "pad thickness": { items: { front: "front-pads.measure", rear: "rear-pads.measure" }, outcomes: ["replaced"] },
  "shoe thickness": { items: { front: "front-shoes.measure", rear: "rear-shoes.measure" }, outcomes: ["replaced"] },
  "disc thickness": { items: { front: "front-discs.measure", rear: "rear-discs.measure" }, outcomes: ["replaced"] },
  "chain length": { items: { any: "chain.replace" }, outcomes: ["replaced", "done"] },
  "chain elongation": { items: { any: "chain.replace" }, outcomes: ["replaced", "done"] },
  "tyre date code": { items: TYRE_AGE_ITEMS, outcomes: ["replaced", "done"] },
};

/** What is read of a tyre goes with its set. */
const OF_TYRES: readonly ReadingKind[] = ["tread", "cold pressure", "tyre date code"];

/** What was read of the tyres while another set was on says nothing of these. */
export function ofTheSetOn<T extends OfPart>(measured: readonly T[], fittings: readonly Fitting[]): readonly T[] {
  const now = fittings.at(-1)?.set;
  if (now === undefined) return measured;
  return measured.filter((taken) => !OF_TYRES.includes(taken.kind) || setReadOf(fittings, taken) === now);
}

type OfPart = Pick<Taken, "id" | "kind" | "place" | "on" | "loggedAt" | "ordinal" | "detail">;

/** The readings of parts that are still on: what was read of one before it was replaced says nothing of the new one, but of one that was put back on it does again. */
export function ofPartsOn<T extends OfPart>(measured: readonly T[], work: readonly WorkRecord[], refitted: readonly Refitted[] = []): readonly T[] {
  const jobs = work.filter(({ items }) => items.some(({ outcome }) => outcome === "replaced" || outcome === "done"));
  if (jobs.length === 0 && refitted.length === 0) return measured;
  return measured.filter((taken) => {
    const swaps = swapsRead(taken, refitted);
    return swaps === null ? !jobs.some((record) => tookOff(record, taken)) : setReadOf(swaps, taken) === swaps.at(-1)?.set;
  });
}

/** The pieces of the part that a reading was taken of, where one of them was put back on; else null. */
function swapsRead({ kind, place }: Pick<Taken, "kind" | "place">, refitted: readonly Refitted[]): readonly Fitting[] | null {
  const item = NEW[kind]?.items[endOf(place)];
  return item === undefined ? null : (refitted.find(({ items }) => items.has(item as ItemKey))?.fittings ?? null);
}

/** Did work put a new one in place of what is measured there? */
export function putNew({ items }: Pick<WorkRecord, "items">, { kind, place }: Pick<Taken, "kind" | "place">): boolean {
  const news = NEW[kind];
  const item = news?.items[endOf(place)];
  return news !== undefined && item !== undefined && items.some((done) => done.item === item && news.outcomes.includes(done.outcome));
}

function tookOff(record: WorkRecord, taken: OfPart): boolean {
  return (record.on.from > taken.on || (record.on.from === taken.on && isBeforeIt(taken, record))) && putNew(record, taken);
}

/** Was it read before work of its day? What was found was; what was left only before work put down later; else the order in which the two were put down tells. */
const isBeforeIt = (taken: OfPart, record: WorkRecord): boolean =>
  taken.detail?.state === "found" || (taken.detail?.state === "left" ? record.loggedAt > taken.loggedAt : inOneDay(record, taken) > 0);

const fitted = (record: WorkRecord, item: string): boolean =>
  record.items.some((done) => done.item === item && (done.outcome === "replaced" || done.outcome === "done"));

const isBefore = (a: WorkRecord, b: WorkRecord): boolean => a.on.from < b.on.from || (a.on.from === b.on.from && a.loggedAt < b.loggedAt);

const isLater = (a: CodeRead, b: CodeRead): boolean => a.on > b.on || (a.on === b.on && inOneDay(a, b) > 0);
