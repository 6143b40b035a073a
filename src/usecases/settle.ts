// From intents to records: each is held against the bike's history, and all of a set are saved or none.

import type { LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { Defect } from "../core/defect.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { type Dial, type DistanceUnit, dialOf } from "../core/quantity/distance.ts";
import type { ReadingDetail } from "../core/reading/detail.ts";
import type { Gap, Intent, LogReading, NoteDefect, RecordWork } from "../core/reading/intent.ts";
import { READING_KINDS, type ReadingUnit } from "../core/reading/kinds.ts";
import { canonicalReading } from "../core/reading/value.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { TYRES_FITTED } from "../core/schedule/tyre-sets.ts";
import { judgeReading } from "../core/usage/judge-reading.ts";
import { type OdometerReading, riddenAtDial, type TrackPoint } from "../core/usage/track.ts";
import { NO_DETAIL, type WorkDetail } from "../core/work-detail.ts";
import { endNamed } from "../message/work-fit.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import { Conflict } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { kindOn } from "../trade/defects.ts";
import { madeTooLate } from "./code-fits.ts";
import { type Ctx, languagesOf } from "./context.ts";
import { type FluidPut, fluidsPut, fluidsUnknown } from "./fluids.ts";
import { type Garaged, itemOf, pick } from "./garage.ts";
import { asOldOrNew, grownBeyond } from "./grown.ts";
import { withValues } from "./item-values.ts";
import { defectRecord, odometerRecord, signed } from "./records.ts";
import { closedByWork } from "./revise-defects.ts";
import { rigsFor } from "./rig.ts";
import { isBehind } from "./services.ts";
import { whereFitted } from "./where-fitted.ts";

/** What came of saving: the records, in the order they were said. */
export type Saved = {
  readonly readings: readonly ReadingRecord[];
  readonly work: readonly WorkRecord[];
  readonly defects: readonly Defect[];
  /** Open defects that the work closed. */
  readonly closed: readonly Defect[];
};

/** The intents with every question that the bikes' histories raise. An intent already asked about is left as it is. @param gone readings that these give way to */
export function heldAgainst(intents: readonly Intent[], all: readonly Garaged[], today: LocalDate, gone: readonly { readonly id: string }[] = []): Intent[] {
  return intents.map((said) => {
    const g = said.bike === null ? null : pick(all, said.bike);
    const intent = said.do === "log reading" && g !== null && said.sure !== true ? whereFitted(said, g) : said;
    if (g !== null && isOfLongAgo(intent, g)) return { ...intent, gaps: [{ need: "date", options: [], typed: intent.words }, ...intent.gaps] };
    if (intent.gaps.length > 0 || g === null) return intent;
    const late = madeTooLate(intent, g);
    if (late !== null) return { ...intent, gaps: [late] };
    if (intent.sure === true) return intent;
    const before = intent.do === "log reading" ? grownBeyond(intent, intents, g, gone) : null;
    if (before !== null) return { ...intent, gaps: [{ need: "sure", because: "grew", before }] };
    const because = intent.do === "log reading" ? strangeReading(intent, g, today) : strangeWork(intent.odometer, dayOf(intent), g, today);
    if (because === null) return intent;
    const gap: Gap = { need: "sure", because };
    return { ...intent, gaps: [gap] };
  });
}

/** A service that lies well behind, of which neither a day nor a figure was said: it was not done today. */
function isOfLongAgo(intent: Intent, g: Garaged): intent is RecordWork {
  if (intent.do !== "record work" || intent.odometer !== null || intent.on.typed !== "") return false;
  const service = intent.gaps.find((gap) => gap.need === "service");
  return service !== undefined && !intent.gaps.some(({ need }) => need === "date") && isBehind(g, service);
}

type Strange = Extract<Gap, { need: "sure" }>["because"];

function strangeReading(intent: LogReading, g: Garaged, today: LocalDate): Strange | null {
  if (intent.on > today) return "future date";
  if (intent.unit === null) return null;
  if (intent.kind === "odometer") return strangeDial(dialOf(intent.value, intent.unit as "mi" | "km"), intent.on, g);
  const [low, high] = READING_KINDS[intent.kind].plausible;
  const value = canonicalReading(intent.value, intent.unit);
  return value < low || value > high ? "out of range" : null;
}

/** The days in which work was done, or the one on which something was found. */
const dayOf = (intent: RecordWork | NoteDefect): Pick<VagueDate, "from" | "to"> =>
  intent.do === "record work" ? intent.on : { from: intent.on, to: intent.on };

function strangeWork(odometer: RecordWork["odometer"], on: Pick<VagueDate, "from" | "to">, g: Garaged, today: LocalDate): Strange | null {
  if (on.from > today) return "future date";
  if (odometer === null) return null;
  const dial = dialOf(odometer.value, odometer.unit ?? g.unit);
  if (on.from !== on.to) return dial > READING_KINDS.odometer.plausible[1] ? "out of range" : strangeInSpan(dial, on, g, today);
  return strangeDial(dial, on.from, g);
}

/** Of a vague date only this is certain: that on its latest day the dial can have shown no more than it did later. */
function strangeInSpan(dial: Dial, { to }: Pick<VagueDate, "to">, g: Garaged, today: LocalDate): Strange | null {
  const judged = judgeReading(g.track, dial, to < today ? to : today, g.trips);
  return judged.is === "beyond a later one" || (judged.is === "implausible jump" && judged.against.on <= to && isBeyond(g, dial)) ? judged.is : null;
}

/** Beyond the last figure read. */
const isBeyond = (g: Garaged, dial: Dial): boolean => riddenAtDial(g.track, dial, g.today) > (g.track.points.at(-1)?.ridden ?? 0);

/** The point of the track that a dial figure does not fit; null when it fits, or is no dial figure. */
export function strangeAgainst(intent: Intent, g: Garaged): TrackPoint | null {
  const on = intent.do === "log reading" ? intent.on : dayOf(intent).from;
  const said = intent.do === "log reading" ? (intent.kind === "odometer" ? intent : null) : intent.odometer;
  if (said === null) return null;
  const judged = judgeReading(g.track, dialOf(said.value, (said.unit ?? g.unit) as DistanceUnit), on, g.trips, {
    atWork: intent.do === "record work",
    rests: g.layUps,
  });
  return judged.is === "fine" ? null : judged.against;
}

function strangeDial(dial: Dial, on: LocalDate, g: Garaged): Strange | null {
  if (dial < 0 || dial > READING_KINDS.odometer.plausible[1]) return "out of range";
  const judged = judgeReading(g.track, dial, on, g.trips, { rests: g.layUps });
  return judged.is === "fine" ? null : judged.is;
}

/**
 * Saves a set of intents that have no gaps; all of them inside the caller's transaction.
 * @param first where to go on counting when records of this source were written before
 * @param source the message or event they came from: records of one source are undone together, and a replay cannot save them twice
 */
export async function save(q: Repos, ctx: Ctx, intents: readonly Intent[], all: readonly Garaged[], source: string, first = 0): Promise<Saved> {
  const said: ReadingRecord[] = [];
  const work: WorkRecord[] = [];
  const defects: Defect[] = [];
  let ordinal = first;
  for (const intent of intents) {
    const g = intent.bike === null ? null : pick(all, intent.bike);
    if (g === null || intent.gaps.length > 0) throw new Error("an intent with a gap cannot be saved");
    if (intent.do === "log reading") said.push(readingOf(ctx, intent, g, source, ordinal++));
    else {
      const on = dayOf(intent);
      const dial = intent.odometer === null ? null : dialOf(intent.odometer.value, intent.odometer.unit ?? g.unit);
      if (intent.do === "record work") {
        work.push(workOf(ctx, intent, g, source, ordinal++));
        const { fault, on: days } = intent;
        if (fault !== undefined)
          defects.push(
            defectRecord(ctx, { bike: g.bike.id, ...fault, kind: kindOn(fault.kind, g.bike.equipment), on: days.to, dial, from: "message" }, source, ordinal++),
          );
      } else {
        const kind = kindOn(intent.kind, g.bike.equipment);
        const { words } = intent;
        defects.push(defectRecord(ctx, { bike: g.bike.id, kind, words, grade: null, on: intent.on, dial, from: "message" }, source, ordinal++));
      }
      if (dial === null || on.from !== on.to) continue;
      // An odometer figure given with work or a defect is a reading of that day like any other, unless it was said as a reading as well.
      const isSaid = intents.some((other) => other.do === "log reading" && other.kind === "odometer" && other.bike === intent.bike && other.on === on.from);
      // The same figure on the same day is on record already.
      const there = g.odometers.some((o) => o.dial === dial && o.on === on.from);
      const saved = said.some((r) => r.bike === g.bike.id && r.dial === dial && r.on === on.from);
      if (!isSaid && !there && !saved) said.push(besideOf(ctx, intent, on.from, g, dial, source, ordinal++));
    }
  }
  const readings = said.map((reading) => {
    const g = pick(all, reading.bike);
    return g === null ? reading : asOldOrNew(reading, work, g);
  });
  const rigs = readings.some(({ detail }) => detail?.state !== undefined) ? await rigsFor(q, all, readings) : null;
  const jobs = intents.filter((each) => each.do === "record work");
  const filled = work.map((record, n) => {
    const g = pick(all, record.bike);
    const placed = withDialOfTheDay(record, readings);
    return g === null || rigs === null ? placed : withValues(placed, readings, g, rigs.get(g.bike.id) ?? g.rig, jobs[n]?.usual === true);
  });
  await q.readings.log(readings);
  await q.work.log(filled);
  await q.defects.note(defects);
  const closed: Defect[] = [];
  const mixed = new Set(mixedBy(ctx, filled, all).map((put) => put.work));
  for (const [n, intent] of jobs.entries()) {
    const record = filled[n];
    const g = record === undefined ? null : pick(all, record.bike);
    // Two jobs of one message may name the same defect: the first closes it.
    const named = g?.defects.filter(({ id }) => intent.closes?.includes(id) === true && !closed.some((each) => each.id === id)) ?? [];
    // What must not be in there mends nothing, whatever the words name.
    if (record !== undefined && named.length > 0 && !mixed.has(record.id)) closed.push(...(await closedByWork(q, ctx, named, record.id)));
  }
  const touched = [...new Set([...readings, ...filled, ...defects].map((record) => record.bike))];
  await touch(q, ctx, touched);
  const [home, ...coming] = touched.flatMap((id) => {
    const g = pick(all, id);
    return g?.comesHome === true ? [g.bike] : [];
  });
  if (home !== undefined && home.homeGroup !== null)
    await q.bikes.comeHome(
      [home, ...coming].map(({ id }) => id),
      home.homeGroup,
    );
  return { readings, work: filled, defects, closed };
}

/** What must not meet what is in there, and what nobody knows, of all that work says was put into hydraulics. */
const mixedBy = (ctx: Ctx, work: readonly WorkRecord[], bikes: readonly Garaged[]): readonly Pick<FluidPut, "work">[] => [
  ...fluidsPut(work, bikes, languagesOf(ctx)).filter(({ worth }) => worth === null),
  ...fluidsUnknown(work, bikes, languagesOf(ctx)),
];

/** Marks bikes as changed, so that the sweep looks at them; a bike gone meanwhile undoes the whole transaction. */
export async function touch(q: Repos, ctx: Ctx, bikes: readonly BikeId[]): Promise<void> {
  if (bikes.length === 0) throw new Conflict("nothing to touch");
  await q.bikes.touched(bikes, ctx.now);
}

/** The odometer readings among saved records, as a track takes them. */
export function asOdometers(readings: readonly ReadingRecord[], bike: BikeId): OdometerReading[] {
  return readings
    .filter((r) => r.bike === bike && r.dial !== null)
    .map((r) => ({ id: r.id, on: r.on, order: Number.MAX_SAFE_INTEGER - 1000 + r.ordinal, dial: r.dial as Dial }));
}

/** The other readings among saved records, as the schedule takes them. */
export function asMeasured(readings: readonly ReadingRecord[], bike: BikeId): Taken[] {
  return readings
    .filter((r) => r.bike === bike && r.kind !== "odometer")
    .map(({ id, kind, place, on, value, unit, typed, detail, loggedAt, ordinal, message }) => ({
      ...{ id, kind, place, on, value: value ?? 0, unit, typed },
      ...{ detail, loggedAt, ordinal, message },
    }));
}

function readingOf(ctx: Ctx, intent: LogReading, g: Garaged, source: string, ordinal: number): ReadingRecord {
  const unit = intent.unit ?? g.unit;
  const isDial = intent.kind === "odometer";
  return {
    ...signed(ctx, source, ordinal),
    bike: g.bike.id,
    kind: intent.kind,
    place: intent.place,
    dial: isDial ? dialOf(intent.value, unit as "mi" | "km") : null,
    value: isDial ? null : canonicalReading(intent.value, unit),
    typed: intent.typed.text,
    unit,
    on: intent.on,
    detail: storedDetail(withKept(intent.detail ?? null, g.rig.ways.get(intent.kind)), unit),
  };
}

/** What was said before of how such readings are taken holds for this one, and goes on holding for it when another is taken otherwise. */
const withKept = (detail: ReadingDetail | null, ways: ReadingDetail | undefined): ReadingDetail | null =>
  ways?.conditions === undefined || ways.conditions.length === 0 ? detail : { ...detail, kept: ways.conditions };

/** Points across are kept in the canonical unit, as the value is. */
const storedDetail = (detail: ReadingDetail | null, unit: ReadingUnit): ReadingDetail | null =>
  detail?.points === undefined ? detail : { ...detail, points: detail.points.map((point) => canonicalReading(point, unit)) };

function besideOf(ctx: Ctx, intent: Pick<RecordWork, "odometer">, on: LocalDate, g: Garaged, dial: Dial, source: string, ordinal: number): ReadingRecord {
  const { unit, typed } = intent.odometer ?? { unit: null, typed: { text: "" } };
  return odometerRecord(ctx, { bike: g.bike.id, dial, unit: unit ?? g.unit, typed: typed.text, on }, source, ordinal);
}

function workOf(ctx: Ctx, intent: RecordWork, g: Garaged, source: string, ordinal: number): WorkRecord {
  const dial = intent.odometer === null ? null : dialOf(intent.odometer.value, intent.odometer.unit ?? g.unit);
  return {
    ...signed(ctx, source, ordinal),
    bike: g.bike.id,
    items: intent.items.map((key) => ({
      item: key,
      called: ctx.workName(key, key === TYRES_FITTED ? intent.words : (itemOf(g, key)?.called ?? null), intent.outcome),
      outcome: intent.outcome,
      found: intent.values?.find((each) => each.item === key)?.found ?? [],
      left: intent.values?.find((each) => each.item === key)?.left ?? [],
    })),
    words: intent.words,
    on: intent.on,
    dial,
    dialTyped: intent.odometer?.typed.text ?? null,
    how: intent.how,
    doneBy: intent.detail?.by ?? ctx.who.self.name ?? ctx.who.member,
    note: intent.note ?? null,
    detail: withEnd(ctx, intent),
  };
}

/** Of a reservoir that was filled, which: the other one stands as it stood. */
function withEnd(ctx: Ctx, { items, outcome, words, detail = NO_DETAIL }: RecordWork): WorkDetail {
  const end = outcome === "topped up" && items.includes(BRAKE_LEVEL) ? endNamed(words, ctx.vocabulary.places) : null;
  return end === null ? detail : { ...detail, end };
}
const BRAKE_LEVEL = "brake-fluid.inspect" as ItemKey;

/** Work with no figure of its own takes the odometer read on the same bike on the same day in the same message. */
function withDialOfTheDay(record: WorkRecord, readings: readonly ReadingRecord[]): WorkRecord {
  if (record.dial !== null || record.on.from !== record.on.to) return record;
  const same = readings.find((r) => r.bike === record.bike && r.dial !== null && r.on === record.on.from);
  return same === undefined ? record : { ...record, dial: same.dial, dialTyped: same.typed };
}
