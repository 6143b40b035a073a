// Readings as rows (id, rev): rev 1 as logged, each amendment or undo a new rev. One column may change: `current`.

import { sql } from "kysely";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, GroupId, MemberId } from "../core/ids.ts";
import { between, type Dial, type Ridden } from "../core/quantity/distance.ts";
import { type ReadingDetail, waysAfter } from "../core/reading/detail.ts";
import { KIND_KEYS, type Place, type ReadingKind, type ReadingUnit } from "../core/reading/kinds.ts";
import { inOneDay, madeAt, type Taken } from "../core/schedule/measured.ts";
import type { RiddenBetween } from "../core/usage/group-median.ts";
import type { OdometerReading } from "../core/usage/track.ts";
import type { Db } from "./db.ts";
import { closeRevision, nextOrdinal } from "./revisions.ts";
import type { Tables } from "./tables.ts";

export type RecordState = "live" | "withdrawn";

/** A reading in one revision. `dial` for an odometer (whole tenths of a millimetre), `value` for the rest (canonical unit of the kind). */
export type ReadingRecord = {
  readonly id: string;
  readonly rev: number;
  readonly state: RecordState;
  readonly bike: BikeId;
  readonly kind: ReadingKind;
  readonly place: Place | null;
  readonly dial: Dial | null;
  readonly value: number | null;
  readonly typed: string;
  readonly unit: ReadingUnit;
  readonly on: LocalDate;
  readonly message: string | null;
  readonly ordinal: number;
  readonly loggedAt: Instant;
  readonly by: MemberId;
  readonly at: Instant;
  readonly why: string | null;
  readonly detail: ReadingDetail | null;
};

/** What the schedule needs of a bike's readings: every odometer, and of each other kind at each place those of its latest day. */
export type ReadHistory = { readonly odometers: readonly OdometerReading[]; readonly measured: readonly Taken[] };

const MEASURED_KINDS = KIND_KEYS.filter((kind) => kind !== "odometer");
/** Kinds of which the latest tells; of the odometer and the engine hours a bike's story needs every reading. */
const LATEST_KINDS = KIND_KEYS.filter((kind) => kind !== "odometer" && kind !== "engine hours");
/** Between the fields of a reading and between readings, where many come as one text; neither is in an id, a day, a moment or a figure. */
const [FIELD, ROW] = ["|", "\n"] as const;

/** The columns that a reading is judged by. */
const TAKEN = ["bike", "kind", "place", "id", "value", "unit", "typed", "detail", "on_date", "logged_at", "ordinal", "message"] as const;

/** As `madeAt`. */
const MADE_AT = sql<string>`substr(id, 1, 13)`;

export function readingsRepo(db: Db) {
  const standing = () => db.selectFrom("readings").where("current", "=", 1).where("state", "=", "live");
  const live = () => standing().selectAll();
  return {
    /** Of some bikes: the live odometer readings in the order they were taken, and what was read of each other kind at each place on the latest day it was read. */
    async historiesOf(ids: readonly BikeId[]): Promise<Map<BikeId, ReadHistory>> {
      const found = new Map(ids.map((id) => [id, { odometers: [] as OdometerReading[], measured: [] as Taken[] }]));
      if (ids.length === 0) return found;
      const those = () => standing().where("bike", "in", [...ids]);
      const columns = [...TAKEN, "dial"] as const;
      const latest = those()
        .select([...columns, sql<number>`rank() over (partition by bike, kind, place order by on_date desc)`.as("nth")])
        .where("kind", "in", LATEST_KINDS)
        .as("latest");
      // Every odometer reading is wanted: a row for each costs more than all else. So each bike's come as one text.
      const odometers = those()
        .where("kind", "=", "odometer")
        .groupBy("bike")
        .select(["bike", sql.lit("odometer").as("kind"), sql<null>`null`.as("place")])
        .select(
          sql<string>`string_agg(id || ${sql.lit(FIELD)} || on_date || ${sql.lit(FIELD)} || logged_at || ${sql.lit(FIELD)} || ordinal || ${sql.lit(FIELD)} || dial, ${sql.lit(ROW)})`.as(
            "id",
          ),
        )
        .select([sql<null>`null`.as("value"), sql.lit("").as("unit"), sql.lit("").as("typed"), sql<null>`null`.as("detail")])
        .select([sql.lit("").as("on_date"), sql.lit("").as("logged_at"), sql.lit(0).as("ordinal"), sql<null>`null`.as("message"), sql<null>`null`.as("dial")]);
      const rows = await those()
        .select(columns)
        .where("kind", "=", "engine hours")
        .unionAll(db.selectFrom(latest).select(columns).where("nth", "=", 1))
        .unionAll(odometers)
        .execute();
      for (const row of rows) {
        const history = found.get(row.bike as BikeId);
        if (row.kind === "odometer") history?.odometers.push(...odometersOf(row.id));
        else history?.measured.push(takenOf(row));
      }
      for (const { measured } of found.values()) measured.sort(byLogged);
      return found;
    },
    /** What each bike shown in a group was ridden between its first odometer reading and its last; bikes with a new dial are left out, since their figures start again. */
    async riddenIn(group: GroupId): Promise<readonly RiddenBetween[]> {
      const rows = await db
        .selectFrom("bike_groups as g")
        .innerJoin("readings as r", "r.bike", "g.bike")
        .select((e) => [e.fn.min("r.on_date").as("from"), e.fn.max("r.on_date").as("to"), e.fn.min("r.dial").as("first"), e.fn.max("r.dial").as("last")])
        .where("g.group_id", "=", group)
        .where("r.kind", "=", "odometer")
        .where("r.current", "=", 1)
        .where("r.state", "=", "live")
        .where(({ not, exists, selectFrom }) =>
          not(
            exists(
              selectFrom("bike_events as e")
                .select("e.id")
                .whereRef("e.bike", "=", "g.bike")
                .where("e.what", "=", "epoch")
                .where("e.cause", "!=", "as bought")
                .where("e.withdrawn_at", "is", null),
            ),
          ),
        )
        .groupBy("r.bike")
        .execute();
      return rows.map(({ from, to, first, last }) => ({
        from: from as LocalDate,
        to: to as LocalDate,
        distance: between((first ?? 0) as number as Ridden, (last ?? 0) as number as Ridden),
      }));
    },
    /** The latest live readings of a bike, newest first. */
    async recent(bike: BikeId, limit: number): Promise<ReadingRecord[]> {
      const rows = await live()
        .where("bike", "=", bike)
        .orderBy("on_date", "desc")
        .orderBy("logged_at", "desc")
        .orderBy(MADE_AT, "desc")
        .orderBy("ordinal", "desc")
        .orderBy("dial", (o) => o.desc().nullsLast())
        .limit(limit)
        .execute();
      return rows.map(recordOf);
    },
    /** The live readings of some kinds of a bike, oldest first. */
    async ofKinds(bike: BikeId, kinds: readonly ReadingKind[]): Promise<ReadingRecord[]> {
      const rows = await live()
        .where("bike", "=", bike)
        .where("kind", "in", [...kinds])
        .orderBy("on_date")
        .orderBy("logged_at")
        .orderBy(MADE_AT)
        .orderBy("ordinal")
        .execute();
      return rows.map(recordOf);
    },
    async byId(id: string): Promise<ReadingRecord | null> {
      const row = await db.selectFrom("readings").selectAll().where("id", "=", id).where("current", "=", 1).executeTakeFirst();
      return row === undefined ? null : recordOf(row);
    },
    /** All that stands as logged from a message. */
    async ofMessage(message: string): Promise<ReadingRecord[]> {
      return (await live().where("message", "=", message).orderBy("ordinal").execute()).map(recordOf);
    },
    /** Readings withdrawn because a later one showed them to be slips. */
    async correctedBy(bikes: readonly BikeId[], why: string): Promise<ReadingRecord[]> {
      if (bikes.length === 0) return [];
      const rows = await db
        .selectFrom("readings")
        .selectAll()
        .where("bike", "in", [...bikes])
        .where("current", "=", 1)
        .where("state", "=", "withdrawn")
        .where("why", "=", why)
        .execute();
      return rows.map(recordOf);
    },
    /** Every live reading of some bikes but of the odometer, or of some kinds only; oldest first. */
    async everyTaken(ids: readonly BikeId[], kinds: readonly ReadingKind[] = MEASURED_KINDS): Promise<Map<BikeId, Taken[]>> {
      const found = new Map<BikeId, Taken[]>(ids.map((id) => [id, []]));
      if (ids.length === 0) return found;
      // Years of readings: whatever nobody asks for of a row costs as much as what is asked for.
      const rows = await standing()
        .select(TAKEN)
        .where("bike", "in", [...ids])
        .where("kind", "in", [...kinds])
        .execute();
      rows.sort(byRow);
      for (const row of rows) found.get(row.bike as BikeId)?.push(takenOf(row));
      return found;
    },
    /** Of some bikes: how each kind was last said to be taken there, its conditions and engine speed. */
    async waysOf(ids: readonly BikeId[]): Promise<Map<BikeId, Map<ReadingKind, ReadingDetail>>> {
      const found = new Map<BikeId, Map<ReadingKind, ReadingDetail>>(ids.map((id) => [id, new Map()]));
      if (ids.length === 0) return found;
      const rows = await standing()
        .select(["bike", "kind", "id", "detail", "on_date", "logged_at", "ordinal"])
        .where("bike", "in", [...ids])
        .where((e) => e.or([e("detail", "like", '%"conditions"%'), e("detail", "like", '%"rpm"%')]))
        .execute();
      rows.sort(byRow);
      for (const row of rows) {
        const kinds = found.get(row.bike as BikeId);
        const kind = row.kind as ReadingKind;
        kinds?.set(kind, waysAfter(kinds.get(kind), detailOf(row.detail)));
      }
      return found;
    },
    nextOrdinal: (message: string): Promise<number> => nextOrdinal(db, "readings", message),
    async log(records: readonly ReadingRecord[]): Promise<void> {
      if (records.length > 0) await db.insertInto("readings").values(records.map(rowOf)).execute();
    },
    /** Writes the next revision; false when somebody else's came first. */
    async revise(next: ReadingRecord): Promise<boolean> {
      if (!(await closeRevision(db, "readings", next))) return false;
      await db.insertInto("readings").values(rowOf(next)).execute();
      return true;
    },
    /** Every revision of a reading, oldest first. */
    async history(id: string): Promise<ReadingRecord[]> {
      return (await db.selectFrom("readings").selectAll().where("id", "=", id).orderBy("rev").execute()).map(recordOf);
    },
  };
}

function takenOf(
  row: Pick<Tables["readings"], "id" | "kind" | "place" | "value" | "unit" | "typed" | "detail" | "logged_at" | "ordinal" | "on_date" | "message">,
): Taken {
  return {
    ...{ id: row.id, kind: row.kind as ReadingKind, place: row.place as Place | null, on: row.on_date as LocalDate, value: row.value ?? 0 },
    ...{ unit: row.unit as ReadingUnit, typed: row.typed, detail: detailOf(row.detail), loggedAt: row.logged_at, ordinal: row.ordinal, message: row.message },
  };
}

const detailOf = (json: string | null): ReadingDetail | null => (json === null ? null : (JSON.parse(json) as ReadingDetail));

/** A bike's odometer readings out of one text, in the order in which they were taken. Logged in one moment they have one place in it: the track puts them by what the bike had ridden. */
function odometersOf(text: string): OdometerReading[] {
  const read = text.split(ROW).map((row) => {
    const [id = "", on_date = "", logged_at = "", ordinal, dial] = row.split(FIELD);
    return { id, on_date, logged_at, ordinal: Number(ordinal), dial: Number(dial) as Dial };
  });
  read.sort(byTime);
  let order = 0;
  return read.map((each, n) => {
    if (n > 0 && byTime(read[n - 1] ?? each, each) !== 0) order++;
    return { id: each.id, on: each.on_date as LocalDate, order, dial: each.dial };
  });
}

const byLogged = (a: Taken, b: Taken): number => compare(a.on, b.on) || inOneDay(a, b);
type Timed = { readonly on_date: string; readonly logged_at: string; readonly ordinal: number };
const byTime = (a: Timed, b: Timed): number => compare(a.on_date, b.on_date) || compare(a.logged_at, b.logged_at) || a.ordinal - b.ordinal;
type Row = Timed & { readonly id: string };
const byRow = (a: Row, b: Row): number =>
  compare(a.on_date, b.on_date) || compare(a.logged_at, b.logged_at) || compare(madeAt(a), madeAt(b)) || a.ordinal - b.ordinal;
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function recordOf(row: Tables["readings"]): ReadingRecord {
  return {
    id: row.id,
    rev: row.rev,
    state: row.state === "withdrawn" ? "withdrawn" : "live",
    bike: row.bike as BikeId,
    kind: row.kind as ReadingKind,
    place: row.place as Place | null,
    dial: row.dial as Dial | null,
    value: row.value,
    typed: row.typed,
    unit: row.unit as ReadingUnit,
    on: row.on_date as LocalDate,
    message: row.message,
    ordinal: row.ordinal,
    loggedAt: row.logged_at as Instant,
    by: row.by as MemberId,
    at: row.at as Instant,
    why: row.why,
    detail: detailOf(row.detail),
  };
}

function rowOf(r: ReadingRecord): Tables["readings"] {
  const { on, loggedAt, detail, ...same } = r;
  return { ...same, current: 1, on_date: on, logged_at: loggedAt, detail: detail === null ? null : JSON.stringify(detail) };
}
