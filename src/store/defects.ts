// Defects as rows (id, rev): noted, graded, closed, taken back; each a revision.

import { z } from "zod";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import { type Defect, FOUND_BY, GRADES } from "../core/defect.ts";
import type { BikeId, MemberId } from "../core/ids.ts";
import type { Dial } from "../core/quantity/distance.ts";
import type { Db } from "./db.ts";
import { closeRevision, nextOrdinal } from "./revisions.ts";
import type { Tables } from "./tables.ts";

export function defectsRepo(db: Db) {
  const current = () => db.selectFrom("defects").selectAll().where("current", "=", 1);
  return {
    /** What stands open on each of some bikes, oldest first. */
    async openOf(bikes: readonly BikeId[]): Promise<Map<BikeId, Defect[]>> {
      const found = new Map<BikeId, Defect[]>(bikes.map((id) => [id, []]));
      if (bikes.length === 0) return found;
      const rows = await current()
        .where("bike", "in", [...bikes])
        .where("state", "=", "open")
        .orderBy("on_date")
        .orderBy("logged_at")
        .orderBy("ordinal")
        .execute();
      for (const row of rows) found.get(row.bike as BikeId)?.push(defectOf(row));
      return found;
    },
    /** All that was ever found on a bike and not taken back, oldest first. */
    async ofBike(bike: BikeId): Promise<Defect[]> {
      const rows = await current().where("bike", "=", bike).where("state", "in", ["open", "closed"]).orderBy("on_date").orderBy("logged_at").execute();
      return rows.map(defectOf);
    },
    async byId(id: string): Promise<Defect | null> {
      const row = await current().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : defectOf(row);
    },
    /** What stands as noted from a message or a check, closed ones included. */
    async ofMessage(message: string): Promise<Defect[]> {
      return (await current().where("message", "=", message).where("state", "in", ["open", "closed"]).orderBy("ordinal").execute()).map(defectOf);
    },
    /** What some work records closed. */
    async closedBy(work: readonly string[]): Promise<Defect[]> {
      if (work.length === 0) return [];
      return (
        await current()
          .where("closed_by", "in", [...work])
          .where("state", "=", "closed")
          .execute()
      ).map(defectOf);
    },
    nextOrdinal: (message: string): Promise<number> => nextOrdinal(db, "defects", message),
    async note(defects: readonly Defect[]): Promise<void> {
      if (defects.length > 0) await db.insertInto("defects").values(defects.map(rowOf)).execute();
    },
    /** Writes the next revision; false when somebody else's came first. */
    async revise(next: Defect): Promise<boolean> {
      if (!(await closeRevision(db, "defects", next))) return false;
      await db.insertInto("defects").values(rowOf(next)).execute();
      return true;
    },
    /** Every revision of a defect, oldest first. */
    async history(id: string): Promise<Defect[]> {
      return (await db.selectFrom("defects").selectAll().where("id", "=", id).orderBy("rev").execute()).map(defectOf);
    },
  };
}

const STATES = ["open", "closed", "withdrawn"] as const;

function defectOf(row: Tables["defects"]): Defect {
  return {
    id: row.id,
    rev: row.rev,
    state: z.enum(STATES).parse(row.state),
    bike: row.bike as BikeId,
    kind: row.kind,
    words: row.words,
    grade: z.enum(GRADES).nullable().parse(row.grade),
    on: row.on_date as LocalDate,
    dial: row.dial as Dial | null,
    from: z.enum(FOUND_BY).parse(row.found_by),
    closedBy: row.closed_by,
    closedBecause: row.closed_because,
    message: row.message,
    ordinal: row.ordinal,
    loggedAt: row.logged_at as Instant,
    by: row.by as MemberId,
    at: row.at as Instant,
    why: row.why,
  };
}

function rowOf({ on, from, closedBy, closedBecause, loggedAt, ...same }: Defect): Tables["defects"] {
  return { ...same, current: 1, on_date: on, found_by: from, closed_by: closedBy, closed_because: closedBecause, logged_at: loggedAt };
}
