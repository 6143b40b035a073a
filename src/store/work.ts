// Work records as rows (id, rev), with the items done as they were called that day.

import { z } from "zod";
import type { Instant, LocalDate, VagueDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey, MemberId } from "../core/ids.ts";
import type { Dial } from "../core/quantity/distance.ts";
import { HOW_WE_KNOW, type HowWeKnow, OUTCOMES, type Outcome } from "../core/schedule/facts.ts";
import { type ItemValue, NO_DETAIL, type WorkDetail } from "../core/work-detail.ts";
import type { Db } from "./db.ts";
import type { RecordState } from "./readings.ts";
import { closeRevision, nextOrdinal } from "./revisions.ts";
import type { Tables } from "./tables.ts";

/** One item of a work record. `called`: the item's words on the day, kept though the plan may change. */
export type WorkItem = {
  readonly item: ItemKey;
  readonly called: string;
  readonly outcome: Outcome;
  readonly found: readonly ItemValue[];
  readonly left: readonly ItemValue[];
};

export type WorkRecord = {
  readonly id: string;
  readonly rev: number;
  readonly state: RecordState;
  readonly bike: BikeId;
  readonly items: readonly WorkItem[];
  /** The words that named the work, as typed. */
  readonly words: string;
  readonly on: VagueDate;
  /** The dial at the time as typed; null when it was not noted. */
  readonly dial: Dial | null;
  readonly dialTyped: string | null;
  readonly how: HowWeKnow;
  readonly doneBy: string;
  readonly note: string | null;
  readonly detail: WorkDetail;
  readonly message: string | null;
  readonly ordinal: number;
  readonly loggedAt: Instant;
  readonly by: MemberId;
  readonly at: Instant;
  readonly why: string | null;
};

const valuesShape = z
  .array(z.object({ value: z.number(), unit: z.string(), place: z.string().nullable() }))
  // Before values were kept, nothing stood here.
  .nullable()
  .transform((values) => values ?? []);
const itemsShape = z.array(z.object({ item: z.string(), called: z.string(), outcome: z.enum(OUTCOMES), found: valuesShape, left: valuesShape }));
const detailShape = z.object({
  quantities: z.array(z.object({ value: z.number(), unit: z.string(), of: z.string().nullable(), typed: z.string() })),
  parts: z.array(z.object({ words: z.string(), item: z.string().nullable(), made: z.string().nullable() })),
  cost: z.object({ minor: z.number().int(), currency: z.string().nullable(), typed: z.string() }).nullable(),
  by: z.string().nullable(),
  end: z.enum(["front", "rear"]).optional(),
  bled: z.literal(true).optional(),
});

export function workRepo(db: Db) {
  return {
    async ofBikes(ids: readonly BikeId[]): Promise<Map<BikeId, WorkRecord[]>> {
      const found = new Map<BikeId, WorkRecord[]>(ids.map((id) => [id, []]));
      if (ids.length === 0) return found;
      const rows = await db
        .selectFrom("work")
        .selectAll()
        .where("bike", "in", [...ids])
        .where("current", "=", 1)
        .where("state", "=", "live")
        .orderBy("bike")
        .orderBy("from_date")
        .orderBy("logged_at")
        .orderBy("ordinal")
        .execute();
      for (const row of rows) found.get(row.bike as BikeId)?.push(recordOf(row));
      return found;
    },
    /** Every record of a bike as it stands now, withdrawn ones included, newest first. */
    async everyOf(bike: BikeId): Promise<WorkRecord[]> {
      const rows = await db
        .selectFrom("work")
        .selectAll()
        .where("bike", "=", bike)
        .where("current", "=", 1)
        .orderBy("from_date", "desc")
        .orderBy("logged_at", "desc")
        .orderBy("ordinal", "desc")
        .execute();
      return rows.map(recordOf);
    },
    async byId(id: string): Promise<WorkRecord | null> {
      const row = await db.selectFrom("work").selectAll().where("id", "=", id).where("current", "=", 1).executeTakeFirst();
      return row === undefined ? null : recordOf(row);
    },
    /** A record as it was at one of its revisions. */
    async atRev(id: string, rev: number): Promise<WorkRecord | null> {
      const row = await db.selectFrom("work").selectAll().where("id", "=", id).where("rev", "=", rev).executeTakeFirst();
      return row === undefined ? null : recordOf(row);
    },
    async ofMessage(message: string): Promise<WorkRecord[]> {
      const rows = await db
        .selectFrom("work")
        .selectAll()
        .where("message", "=", message)
        .where("current", "=", 1)
        .where("state", "=", "live")
        .orderBy("ordinal")
        .execute();
      return rows.map(recordOf);
    },
    nextOrdinal: (message: string): Promise<number> => nextOrdinal(db, "work", message),
    async log(records: readonly WorkRecord[]): Promise<void> {
      if (records.length > 0) await db.insertInto("work").values(records.map(rowOf)).execute();
    },
    /** Writes the next revision; false when somebody else's came first. */
    async revise(next: WorkRecord): Promise<boolean> {
      if (!(await closeRevision(db, "work", next))) return false;
      await db.insertInto("work").values(rowOf(next)).execute();
      return true;
    },
  };
}

function recordOf(row: Tables["work"]): WorkRecord {
  return {
    id: row.id,
    rev: row.rev,
    state: row.state === "withdrawn" ? "withdrawn" : "live",
    bike: row.bike as BikeId,
    items: itemsShape.parse(JSON.parse(row.items)) as unknown as WorkItem[],
    words: row.words,
    on: { from: row.from_date as LocalDate, to: row.to_date as LocalDate, typed: row.date_typed },
    dial: row.dial as Dial | null,
    dialTyped: row.dial_typed,
    how: z.enum(HOW_WE_KNOW).parse(row.how),
    doneBy: row.done_by,
    note: row.note,
    detail: row.detail === null ? NO_DETAIL : (detailShape.parse(JSON.parse(row.detail)) as WorkDetail),
    message: row.message,
    ordinal: row.ordinal,
    loggedAt: row.logged_at as Instant,
    by: row.by as MemberId,
    at: row.at as Instant,
    why: row.why,
  };
}

function rowOf(r: WorkRecord): Tables["work"] {
  const { on, dialTyped, doneBy, loggedAt, items, detail, ...same } = r;
  return {
    ...same,
    current: 1,
    items: JSON.stringify(items),
    detail: detail === NO_DETAIL ? null : JSON.stringify(detail),
    from_date: on.from,
    to_date: on.to,
    date_typed: on.typed,
    dial_typed: dialTyped,
    done_by: doneBy,
    logged_at: loggedAt,
  };
}
