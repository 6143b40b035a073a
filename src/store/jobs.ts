// Jobs as rows: the sheet as it was when it was begun. A job is open, finished or left; each change counts its rev.

import { z } from "zod";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey, MemberId } from "../core/ids.ts";
import type { Ridden } from "../core/quantity/distance.ts";
import type { Db } from "./db.ts";
import type { Tables } from "./tables.ts";

const STATES = ["open", "finished", "left"] as const;

/** An item of a job, as it was called that day, and the evening it was put to. */
export type JobItem = { readonly item: ItemKey; readonly called: string; readonly evening: number };

export type Job = {
  readonly id: string;
  readonly rev: number;
  readonly bike: BikeId;
  readonly state: (typeof STATES)[number];
  readonly mark: Ridden | null;
  readonly begunOn: LocalDate;
  readonly begunAt: Instant;
  readonly endedAt: Instant | null;
  /** For next time. */
  readonly note: string | null;
  readonly by: MemberId;
  /** In the order of the sheet. */
  readonly items: readonly JobItem[];
};

export function jobsRepo(db: Db) {
  const withItems = async (rows: readonly Tables["jobs"][]): Promise<Job[]> => {
    if (rows.length === 0) return [];
    const items = await db
      .selectFrom("job_items")
      .selectAll()
      .where(
        "job",
        "in",
        rows.map((row) => row.id),
      )
      .orderBy("job")
      .orderBy("ordinal")
      .execute();
    return rows.map((row) => jobOf(row, items));
  };
  return {
    async byId(id: string): Promise<Job | null> {
      const row = await db.selectFrom("jobs").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : ((await withItems([row]))[0] ?? null);
    },
    /** The jobs of some bikes that are being worked at, the latest begun last. */
    async openOf(bikes: readonly BikeId[]): Promise<Job[]> {
      if (bikes.length === 0) return [];
      const rows = await db
        .selectFrom("jobs")
        .selectAll()
        .where("bike", "in", [...bikes])
        .where("state", "=", "open")
        .orderBy("begun_at")
        .execute();
      return withItems(rows);
    },
    /** The last job of a bike that was finished, for its note. */
    async lastOf(bike: BikeId): Promise<Job | null> {
      const row = await db
        .selectFrom("jobs")
        .selectAll()
        .where("bike", "=", bike)
        .where("state", "=", "finished")
        .orderBy("ended_at", "desc")
        .limit(1)
        .executeTakeFirst();
      return row === undefined ? null : ((await withItems([row]))[0] ?? null);
    },
    async begin(job: Job): Promise<void> {
      const { items, begunOn, begunAt, endedAt, ...same } = job;
      await db
        .insertInto("jobs")
        .values({ ...same, begun_on: begunOn, begun_at: begunAt, ended_at: endedAt })
        .execute();
      if (items.length > 0)
        await db
          .insertInto("job_items")
          .values(items.map(({ item, called, evening }, ordinal) => ({ job: job.id, ordinal, item, called, evening })))
          .execute();
    },
    /** Changes state and note; false when somebody else's change came first. */
    async change({ id, rev, state, endedAt, note }: Pick<Job, "id" | "rev" | "state" | "endedAt" | "note">): Promise<boolean> {
      const done = await db
        .updateTable("jobs")
        .set({ rev, state, ended_at: endedAt, note })
        .where("id", "=", id)
        .where("rev", "=", rev - 1)
        .executeTakeFirst();
      return done.numUpdatedRows === 1n;
    },
  };
}

function jobOf(row: Tables["jobs"], items: readonly Tables["job_items"][]): Job {
  return {
    id: row.id,
    rev: row.rev,
    bike: row.bike as BikeId,
    state: z.enum(STATES).parse(row.state),
    mark: row.mark as Ridden | null,
    begunOn: row.begun_on as LocalDate,
    begunAt: row.begun_at as Instant,
    endedAt: row.ended_at as Instant | null,
    note: row.note,
    by: row.by as MemberId,
    items: items.filter(({ job }) => job === row.id).map(({ item, called, evening }) => ({ item: item as ItemKey, called, evening })),
  };
}
