// A run of a checklist as it stands: its points with what was answered and what was read since it began.
// A reading logged meanwhile, in whatever way, is what was measured at its point: nothing has to be carried over, and undoing it takes it away here too.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { FaultGrade, Measure, Point, Vital } from "../core/check/checklist.ts";
import { type CheckAnswer, type CheckResult, nextOpen, resultOf } from "../core/check/result.ts";
import type { RunPoint } from "../core/check/tailor.ts";
import { type Defect, worstFirst } from "../core/defect.ts";
import { callsForWork } from "../core/judgement/verdict.ts";
import type { PlanItem } from "../core/plan/plan.ts";
import type { CheckRun, PointAnswer } from "../store/checks.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { POINTS } from "../trade/checklists/points.ts";
import { CHECK_PRACTICE } from "../trade/checklists/row.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type Garaged, itemOf } from "./garage.ts";
import type { Judged } from "./judged.ts";
import { nameIn } from "./record-work.ts";

/** One point as it is shown. `n`: its place in the run, by which it is pressed. */
export type PointShown = RunPoint & {
  readonly n: number;
  /** A plan line's name. */
  readonly called: string | null;
  readonly vital: Point["vital"];
  readonly onFail: FaultGrade;
  readonly engine: Point["engine"];
  readonly position: Point["position"];
  readonly caution: string | null;
  readonly measures: readonly Measure[];
  /** Every bike has it. */
  readonly everybodys: boolean;
  readonly answer: CheckAnswer | null;
  /** Nobody pressed anything: what was read answers it. */
  readonly byReading: boolean;
  readonly grade: FaultGrade | null;
  readonly note: string | null;
  readonly link: string | null;
  readonly figures: string | null;
  readonly measured: readonly ReadingRecord[];
  /** Those of them that can be judged, as judged now. */
  readonly judged: readonly Judged[];
};

export type CheckShown = {
  readonly check: string;
  readonly rev: number;
  readonly bike: CheckRun["bike"];
  readonly called: string;
  readonly list: CheckRun["list"];
  readonly state: CheckRun["state"];
  readonly begunOn: LocalDate;
  readonly finishedOn: LocalDate | null;
  readonly sections: readonly { readonly key: string; readonly points: readonly PointShown[] }[];
  /** The point that the member stands at; null when every point has an answer. */
  readonly at: PointShown | null;
  readonly result: CheckResult;
  /** What stood open on the bike before, and is not of this run. */
  readonly standing: readonly { readonly defect: string; readonly words: string; readonly grade: FaultGrade | null }[];
  /** What stands in the plan as recorded by it, and under which source that is undone. */
  readonly recorded: readonly { readonly item: string; readonly called: string }[];
  readonly source: string | null;
  /** The state of the bike now, for what is offered at the end. */
  readonly bikeState: "riding" | "laid up" | "other" | null;
};

/** What a point is when this release knows it no longer: it can still be answered. */
const BARE: Point = {
  ...{ fits: {}, engine: "any", heat: null, position: "any", vital: null, measures: [], onFail: "watch", caution: null, records: [] },
  ...{ stoodDays: null, frost: false, planHas: null, undoes: null, source: CHECK_PRACTICE },
};
const ROWS: Readonly<Record<string, Point>> = POINTS;
export const rowOf = (key: string): Point => ROWS[key] ?? BARE;

/** Readings logged on one bike that can matter to a run: more are not taken in one. */
const MOST_READINGS = 200;

/** A run with its answers and readings. @param g its bike; null for one that is not the member's */
export async function checkShown(q: Repos, ctx: Ctx, run: CheckRun, g: Garaged | null): Promise<CheckShown> {
  const answers = new Map((await q.checks.answersOf(run.id)).map((answer) => [answer.point, answer]));
  const until = run.finishedOn ?? todayOf(ctx);
  const read = g === null ? [] : (await q.readings.recent(g.bike.id, MOST_READINGS)).filter(({ loggedAt, on }) => loggedAt >= run.begunAt && on <= until);
  const work = run.source === null ? [] : await q.work.ofMessage(run.source);
  return shownOf(ctx, run, answers, read, work, g);
}

function shownOf(
  ctx: Ctx,
  run: CheckRun,
  answers: ReadonlyMap<string, PointAnswer>,
  read: readonly ReadingRecord[],
  work: readonly WorkRecord[],
  g: Garaged | null,
): CheckShown {
  let n = 0;
  const weighs = run.sections.some(({ points }) => points.some(({ key }) => rowOf(key).vital !== null));
  const sections = run.sections.map(({ key, points }) => ({
    key,
    points: points.map((point) => pointShown(ctx, point, n++, answers.get(point.key), read, g, weighs)),
  }));
  const all = sections.flatMap((section) => section.points);
  const old = run.finishedOn === null || run.finishedOn === todayOf(ctx) ? (g?.defects ?? []) : [];
  // What was read in this run and noted by its verdict is told at its point.
  const failing = all.some(({ byReading, answer }) => byReading && answer === "needs work");
  const isOfRun = ({ message, from, loggedAt }: Defect): boolean => message === run.id || (failing && from === "verdict" && loggedAt >= run.begunAt);
  const standing = [...old].filter((defect) => !isOfRun(defect)).sort(worstFirst);
  const result = resultOf(all, standing.filter(({ grade }) => grade === "do not ride").length);
  const here = all.find(({ key }) => key === run.atPoint) ?? null;
  const next = here ?? all.find(({ key }) => key === nextOpen(all, null)) ?? null;
  const state = g?.bike.state ?? null;
  return {
    check: run.id,
    rev: run.rev,
    bike: run.bike,
    called: g?.bike.nickname ?? run.called,
    list: run.list,
    state: run.state,
    begunOn: run.begunOn,
    finishedOn: run.finishedOn,
    sections,
    at: run.state === "open" ? next : null,
    result,
    standing: standing.map(({ id, words, grade }) => ({ defect: id, words, grade })),
    recorded: work.flatMap(({ items }) => items.map(({ item, called }) => ({ item, called }))),
    source: work.length === 0 ? null : run.source,
    bikeState: state === null || state === "riding" || state === "laid up" ? state : "other",
  };
}

/** @param weighs the list asks after brakes, tyres or steering at all, so that the plan's lines of them weigh too */
function pointShown(
  ctx: Ctx,
  point: RunPoint,
  n: number,
  said: PointAnswer | undefined,
  read: readonly ReadingRecord[],
  g: Garaged | null,
  weighs: boolean,
): PointShown {
  const row = rowOf(point.key);
  // Of several readings the one that is judged, which is the last.
  const isJudgedOne = ({ id }: ReadingRecord): boolean => g?.judged.some((each) => each.id === id) === true;
  const measured = row.measures.flatMap((measure) => {
    const all = read.filter((reading) => answers(measure, reading));
    return all.find(isJudgedOne) ?? all[0] ?? [];
  });
  const whole = measured.length > 0 && row.measures.every((measure) => measure.optional === true || read.some((reading) => answers(measure, reading)));
  const judged = g?.judged.filter(({ id }) => measured.some((reading) => reading.id === id)) ?? [];
  // What was put off is answered by being read after all.
  const pressed = said?.answer === "later" && whole ? null : (said?.answer ?? null);
  const vital = row.vital ?? (weighs ? vitalOf(g, point) : null);
  const answer = pressed ?? byReadings(vital, whole, measured, judged);
  return {
    ...point,
    n,
    called: point.item === null ? null : g === null ? point.item : nameIn(ctx, g, point.item),
    ...{ vital, onFail: row.onFail, engine: row.engine, position: row.position, caution: row.caution, measures: row.measures },
    everybodys: point.item === null && Object.keys(row.fits).length === 0 && row.planHas === null,
    answer,
    byReading: pressed === null && answer !== null,
    grade:
      answer !== "needs work" ? null : pressed === null ? (judged.some(({ doNotRide }) => doNotRide) ? "do not ride" : "watch") : (said?.grade ?? row.onFail),
    ...{ note: said?.note ?? null, link: said?.link ?? null, figures: said?.figures ?? null },
    measured: [...new Set(measured)],
    judged,
  };
}

/**
 * What readings come to by themselves: one that calls for work fails its point at once. Where nobody can tell whether a value of brakes, tyres
 * or steering is right, the member has to say.
 */
function byReadings(vital: Point["vital"], whole: boolean, measured: readonly ReadingRecord[], judged: readonly Judged[]): CheckAnswer | null {
  if (judged.some(({ judgement }) => callsForWork(judgement))) return "needs work";
  if (!whole) return null;
  const told = measured.every(({ id }) => judged.some((each) => each.id === id && each.judgement.is !== "cannot tell"));
  return vital !== null && !told ? null : "good";
}

/** A plan line of brakes, tyres or steering weighs as a point of theirs does. */
function vitalOf(g: Garaged | null, { item }: RunPoint): Point["vital"] {
  const system = g === null || item === null ? undefined : itemOf(g, item)?.system;
  return system === undefined ? null : (VITAL_SYSTEMS[system] ?? null);
}
const VITAL_SYSTEMS: Partial<Record<PlanItem["system"], Vital>> = {
  brakes: "brakes",
  "wheels and tyres": "tyres",
  "steering and suspension": "steering",
};

/** A caliper that was not named more closely is one of the front ones. */
const answers = (measure: Measure, { kind, place }: ReadingRecord): boolean =>
  measure.kind === kind && (measure.place === place || (place === "front" && measure.place?.startsWith("front ") === true));
