// Bikes with all their facts: what the schedule, the forecast and the replies work from.

import type { Bike, Group, Member } from "../core/bike.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import { localDateAt } from "../core/calendar/zones.ts";
import type { Defect } from "../core/defect.ts";
import { isFitted } from "../core/equipment.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { refitIn, refittedParts } from "../core/parts/pieces.ts";
import { type FoldedPlan, fold } from "../core/plan/fold.ts";
import type { PlanItem } from "../core/plan/plan.ts";
import { type Dial, type DistanceUnit, type Ridden, type Stretch, TENTHS_OF_MM } from "../core/quantity/distance.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import type { Due, Facts, Fitting, Job, Moment, Verdict } from "../core/schedule/facts.ts";
import { measuredJobs, type Taken } from "../core/schedule/measured.ts";
import { mends } from "../core/schedule/mending.ts";
import { isOfEnd } from "../core/schedule/other-legs.ts";
import { ownRules, rechecksOf } from "../core/schedule/rechecks.ts";
import { dueList } from "../core/schedule/status.ts";
import { TYRES_FITTED } from "../core/schedule/tyre-sets.ts";
import type { Forecast } from "../core/usage/forecast.ts";
import { buildTrack, dialAt, type Epoch, lastPoint, type OdometerReading, riddenAtDial, riddenOnDay, type Track } from "../core/usage/track.ts";
import type { LayUpRecord } from "../store/bikes.ts";
import type { Repos } from "../store/store.ts";
import type { TripRecord } from "../store/trips.ts";
import type { WorkRecord } from "../store/work.ts";
import { byFluidClass } from "../trade/fluid-age.ts";
import { OF_TYRES } from "../trade/items/chassis.ts";
import { isJudged } from "../trade/judged.ts";
import { PART_ROWS } from "../trade/parts.ts";
import { RECHECK_RULES } from "../trade/rechecks.ts";
import { otherBattery } from "./battery-put.ts";
import { checkedJobs } from "./checked.ts";
import { zoneOfBike } from "./context.ts";
import { ageVerdicts, madeOf, ofPartsOn, ofTheSetOn, tyresAged } from "./fitted.ts";
import { forecastFor } from "./forecasts.ts";
import { groupYears } from "./group-riding.ts";
import { airOf, judgeAll, lastTold, verdictsOf } from "./judge.ts";
import type { Judged, Rig } from "./judged.ts";
import { bareRig, rigsOf } from "./rig.ts";
import { seenVerdicts } from "./seen-verdicts.ts";
import { WORN_KINDS, wearingOf } from "./wear.ts";

/** One bike, whole, at one moment. */
export type Garaged = {
  readonly bike: Bike;
  readonly plan: FoldedPlan;
  /** Its plan holds the open looks again too. */
  readonly facts: Facts;
  readonly at: Moment;
  readonly track: Track;
  /** Unit of the dial now. */
  readonly unit: DistanceUnit;
  readonly lastDial: Dial | null;
  readonly today: LocalDate;
  readonly odometers: readonly OdometerReading[];
  readonly measured: readonly Taken[];
  /** Every reading of what lines are drawn through, oldest first: what wears, and the battery. */
  readonly series: readonly Taken[];
  /** Every reading of kinds of which the last cannot be judged. */
  readonly before: readonly Taken[];
  readonly work: readonly WorkRecord[];
  readonly layUps: readonly LayUpRecord[];
  readonly trips: readonly TripRecord[];
  /** What readings are judged by. */
  readonly rig: Rig;
  /** What stands of each thing measured. */
  readonly judged: readonly Judged[];
  readonly groupYear: Stretch | null;
  /** What stands open, oldest first. */
  readonly defects: readonly Defect[];
  /** It was at home in no group, and goes by the speaker's from now on. */
  readonly comesHome?: true;
};

/** Loads bikes with their facts in four statements, one more where tyres are swapped, one where something wears, and three where something is judged, however many bikes and however long their history. */
export async function garage(
  q: Repos,
  bikes: readonly Bike[],
  now: Instant,
  owner: (bike: Bike) => { readonly member: Member | null; readonly home: Group | null },
): Promise<Garaged[]> {
  const ids = bikes.map((bike) => bike.id);
  const turns = await q.bikes.turns(ids);
  const read = await q.readings.historiesOf(ids);
  const work = await q.work.ofBikes(ids);
  const rigs = await rigsOf(
    q,
    bikes.filter(({ id }) => (read.get(id)?.measured ?? []).some(({ kind }) => isJudged(kind))),
  );
  const defects = await q.defects.openOf(ids);
  // Where tyres or parts are swapped, what was measured before the last reading may be of what is on again.
  const isSwap = (item: ItemKey): boolean => item === TYRES_FITTED || refitIn(item) !== null;
  const swapped = ids.filter((id) => work.get(id)?.some(({ items }) => items.some(({ item }) => isSwap(item))));
  const days = await q.readings.everyTaken(swapped);
  const lined = ids.filter((id) => (read.get(id)?.measured ?? []).some(({ kind }) => IN_SERIES.some((each) => each === kind)));
  const series = await q.readings.everyTaken(lined, IN_SERIES);
  // What cannot be judged takes nothing back of what was found before it.
  const unsure = new Map(ids.map((id) => [id, unsureKinds(read.get(id)?.measured ?? [], rigs.get(id))] as const));
  const asked = ids.filter((id) => (unsure.get(id)?.length ?? 0) > 0);
  const before =
    asked.length === 0 ? new Map<BikeId, Taken[]>() : await q.readings.everyTaken(asked, [...new Set(asked.flatMap((id) => unsure.get(id) ?? []))]);
  const years = await groupYears(q, bikes, (id) => read.get(id)?.odometers ?? []);
  const garaged: Garaged[] = [];
  for (const bike of bikes) {
    const base = await q.bikes.base(bike.planHash);
    const { member, home } = owner(bike);
    const today = localDateAt(now, zoneOfBike(member, home));
    garaged.push(
      garagedOf(
        bike,
        fold(
          base,
          bike.edits.map((signed) => signed.edit),
        ),
        {
          epochs: turns.epochs.get(bike.id) ?? [],
          layUps: turns.layUps.get(bike.id) ?? [],
          trips: turns.trips.get(bike.id) ?? [],
          odometers: read.get(bike.id)?.odometers ?? [],
          measured: days.get(bike.id) ?? read.get(bike.id)?.measured ?? [],
          series: series.get(bike.id) ?? [],
          before: before.get(bike.id) ?? [],
          work: work.get(bike.id) ?? [],
          rig: rigs.get(bike.id) ?? bareRig(bike),
          groupYear: years.get(bike.id) ?? null,
          defects: defects.get(bike.id) ?? [],
        },
        today,
      ),
    );
  }
  return garaged;
}

/** Kinds of which some last reading cannot be judged, for all that is known of the bike. */
const unsureKinds = (measured: readonly Taken[], rig: Rig | undefined): readonly ReadingKind[] =>
  rig === undefined ? [] : [...new Set(judgeAll(measured, rig).flatMap(({ kind, judgement }) => (judgement.is === "cannot tell" ? [kind] : [])))];

/** Kinds of which every reading tells, and not the last alone. */
const IN_SERIES = [...WORN_KINDS, "battery voltage"] as const;

type Parts = {
  /** As of the bike. */
  readonly before: readonly Taken[];
  readonly epochs: readonly Epoch[];
  readonly layUps: readonly LayUpRecord[];
  readonly trips: readonly TripRecord[];
  readonly odometers: readonly OdometerReading[];
  readonly measured: readonly Taken[];
  readonly series: readonly Taken[];
  readonly work: readonly WorkRecord[];
  readonly rig: Rig;
  /** What bikes of its group ride in a year, where its own readings and its member say too little. */
  readonly groupYear: Stretch | null;
  readonly defects: readonly Defect[];
};

/** Puts a bike together from its parts; pure. */
export function garagedOf(bike: Bike, whole: FoldedPlan, parts: Parts, today: LocalDate): Garaged {
  // Equipment decides which items exist: nothing downstream sees the others.
  const isEdited = (key: ItemKey): boolean => bike.edits.some(({ edit }) => edit.change === "interval" && edit.item === key);
  const fitted = whole.items.filter((item) => isFitted(item.fits, bike.equipment));
  const plan: FoldedPlan = { items: byFluidClass(fitted, bike.equipment.brakeFluid, isEdited), dropped: whole.dropped };
  const track = buildTrack(parts.epochs, parts.odometers);
  const { groupYear } = parts;
  const last = lastPoint(track);
  const unit = parts.epochs.at(-1)?.unit ?? bike.column;
  const jobs = [...parts.work.flatMap((record) => jobsOf(record, track)), ...measuredJobs(plan.items, parts.measured)];
  const own = ownRules(
    RECHECK_RULES,
    bike.edits.map((signed) => signed.edit),
  );
  const rechecks = rechecksOf(own, [...jobs, ...putBack(jobs)], track, bike.column, last?.ridden ?? null);
  const looks = RECHECK_RULES.map(({ item }) => item).filter((item) => rechecks.some((recheck) => recheck.item === item.key));
  const fittings = fittingsOf(parts.work, track);
  const refitted = refittedParts(PART_ROWS, jobs, (job) => placeOf(job, track), bike.knownFrom);
  const rig: Rig = { ...parts.rig, trips: parts.trips, air: airOf(parts.measured), otherBattery: otherBattery(parts.work, bike.equipment) };
  const ofNow = (taken: readonly Taken[]): readonly Taken[] => ofTheSetOn(ofPartsOn(taken, parts.work, refitted), fittings);
  const judged = judgeAll(ofNow(parts.measured), rig);
  const told = lastTold(judged, ofNow([...parts.before, ...parts.measured]), rig);
  const aged = tyresAged(
    { work: parts.work, measured: parts.measured, refitted, fittings, plan: { items: plan.items, conditions: bike.conditions, column: bike.column } },
    today,
  );
  const hours = hoursRead(parts.measured);
  // A wear line is fitted, and a forecast is learnt from the whole track: only when somebody asks for them.
  let worn: Facts["wearing"] | null = null;
  const facts: Facts = {
    plan: looks.length === 0 ? plan : { items: [...plan.items, ...looks] },
    equipment: bike.equipment,
    column: bike.column,
    conditions: bike.conditions,
    jobs: [...jobs, ...checkedJobs(plan.items, [...judged, ...told])],
    odometer: track,
    hours,
    verdicts: [
      ...verdictsOf([...judged, ...told]).filter((verdict) => !isSettled(verdict, parts, plan.items)),
      ...ageVerdicts(aged),
      ...seenVerdicts(parts.defects),
    ],
    get wearing() {
      worn ??= wearingOf(garaged);
      return worn;
    },
    rechecks,
    layUps: parts.layUps,
    knownFrom: bike.knownFrom,
    byTheBook: bike.byTheBook,
    fittings,
    ofTyres: OF_TYRES_KEYS,
    refitted,
    made: madeOf(aged),
  };
  let learnt: Forecast | null = null;
  const at: Moment = {
    today,
    ridden: last?.ridden ?? null,
    hours: hours.at(-1)?.hours ?? null,
    get forecast() {
      learnt ??= forecastFor(bike.id, track, { layUps: parts.layUps, trips: parts.trips }, bike.perYear, groupYear, today);
      return learnt;
    },
  };
  const garaged: Garaged = {
    bike,
    plan,
    facts,
    at,
    track,
    unit,
    lastDial: last === null ? null : dialAt(track, last.ridden),
    today,
    odometers: parts.odometers,
    measured: parts.measured,
    series: parts.series,
    before: parts.before,
    work: parts.work,
    layUps: parts.layUps,
    trips: parts.trips,
    rig,
    judged,
    groupYear,
    defects: parts.defects,
  };
  return garaged;
}

/** The hour meter as it was read, oldest first; of one day the highest figure. */
const hoursRead = (measured: readonly Taken[]): Facts["hours"] =>
  measured
    .filter(({ kind }) => kind === "engine hours")
    .map(({ on, value }) => ({ on, hours: value }))
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.hours - b.hours));

/** Work of the same day that can mend it, recorded with the reading or after it, answers what was found. What was left by that work is answered by later work only. */
function isSettled({ item, on, reading, measured: read }: Verdict, { measured, work }: Parts, items: readonly PlanItem[]): boolean {
  const taken = measured.find(({ id }) => id === reading);
  const logged = taken?.loggedAt ?? "";
  const since = (at: string): boolean => (taken?.detail?.state === "left" ? at > logged : at >= logged);
  const lineOf = (key: ItemKey): PlanItem | undefined => items.find((line) => line.key === key);
  const covers = (key: ItemKey): boolean => key === item || lineOf(key)?.covers.includes(item) === true;
  return work.some(
    (record) =>
      record.on.from === on &&
      since(record.loggedAt) &&
      isOfEnd(record.detail.end, read?.place ?? null) &&
      record.items.some((done) => covers(done.item) && mends(done.outcome, lineOf(done.item)?.action ?? null)),
  );
}

/** The jobs of a work record, as the schedule reads them: where the bike had got to by the dial of that day. */
function jobsOf(record: WorkRecord, track: Track): Job[] {
  const ridden = record.dial === null ? null : riddenAtDial(track, record.dial, record.on.from);
  return record.items.map(({ item, outcome }) => ({
    id: record.id,
    item,
    on: record.on,
    ridden,
    hours: null,
    outcome,
    how: record.how,
    at: record.loggedAt,
    ...(record.detail.end === undefined ? {} : { end: record.detail.end }),
  }));
}

/** Where a job was done by the odometer: as noted, else at the low end of what its day allows. */
export const placeOf = (job: Job, track: Track): Ridden | null => job.ridden ?? riddenOnDay(track, job.on.from)?.low ?? null;

/** Pads and shoes that went on again are looked at like new ones: the lever is pumped, and they bed in anew. For a tyre the wheel was out. */
const putBack = (jobs: readonly Job[]): readonly Job[] =>
  jobs.flatMap((job) => {
    const back = refitIn(job.item);
    const row = back === null || !/pads|shoes|tyre/u.test(back.part) ? undefined : PART_ROWS.find(({ part }) => part === back.part);
    return (row?.items ?? []).map((item) => ({ ...job, item, outcome: "replaced" as const }));
  });

const OF_TYRES_KEYS: ReadonlySet<ItemKey> = new Set(OF_TYRES.map((key) => key as string as ItemKey));

/** The sets of tyres put on, as they stand among the work: its words are the set's name. The first was on when the bike's story began. */
function fittingsOf(work: readonly WorkRecord[], track: Track): readonly Fitting[] {
  return work
    .filter(({ items }) => items.some(({ item }) => item === TYRES_FITTED))
    .map(({ id, words, on, dial, loggedAt }) => ({
      ...{ set: words, on: on.from, ridden: dial === null ? null : riddenAtDial(track, dial, on.from) },
      ...{ at: loggedAt, id },
    }))
    .sort((a, b) => (a.ridden ?? -1) - (b.ridden ?? -1) || (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
    .map((fitting, n) => (n === 0 ? { ...fitting, ridden: null } : fitting));
}

/** The same bike with more readings or work: what it will be once they are saved. */
export function withMore(g: Garaged, more: Pick<Parts, "odometers" | "measured" | "work">): Garaged {
  return garagedOf(
    g.bike,
    g.plan,
    {
      rig: g.rig,
      epochs: g.track.epochs,
      layUps: g.layUps,
      trips: g.trips,
      odometers: [...g.odometers, ...more.odometers],
      measured: [...g.measured, ...more.measured],
      before: g.before,
      series: [...g.series, ...more.measured.filter(({ kind }) => IN_SERIES.some((each) => each === kind))],
      work: [...g.work, ...more.work],
      groupYear: g.groupYear,
      defects: g.defects,
    },
    g.today,
  );
}

/** The same bike without some records: what it was before they were logged. What was measured is left, since only the latest is known of it. */
export function without(g: Garaged, readings: readonly { readonly id: string }[], work: readonly { readonly id: string }[]): Garaged {
  const gone = new Set([...readings, ...work].map((record) => record.id));
  const parts = {
    epochs: g.track.epochs,
    layUps: g.layUps,
    trips: g.trips,
    odometers: g.odometers.filter((reading) => !gone.has(reading.id)),
    measured: g.measured,
    before: g.before.filter((reading) => !gone.has(reading.id)),
    series: g.series.filter((reading) => !gone.has(reading.id)),
    work: g.work.filter((record) => !gone.has(record.id)),
    rig: g.rig,
    groupYear: g.groupYear,
    defects: g.defects,
  };
  return gone.size === 0 ? g : garagedOf(g.bike, g.plan, parts, g.today);
}

/** Status of every item, most urgent first. */
export const duesOf = (g: Garaged): readonly Due[] => dueList(g.facts, g.at);

/** What can be worked at: the lines of the plan, and the looks again that are open. */
export const itemsOf = (g: Garaged): readonly PlanItem[] => g.facts.plan.items;

/** The line of an item, null when the bike does not have it. */
export const itemOf = (g: Garaged, key: ItemKey): PlanItem | null => itemsOf(g).find((item) => item.key === key) ?? null;

/** The garaged bike of an id. */
export const pick = (all: readonly Garaged[], id: BikeId): Garaged | null => all.find((g) => g.bike.id === id) ?? null;

/** The last figure on the dial in the unit it counts; null without a reading. */
export const figureOfLast = (g: Garaged): number | null => (g.lastDial === null ? null : g.lastDial / TENTHS_OF_MM[g.unit]);
