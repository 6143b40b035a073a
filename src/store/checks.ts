// Runs of checklists and what was answered in them. A run keeps the points that it began with, so that a release takes none away;
// each answer is a row of its own, written in one transaction with the run's next revision.

import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import type { ChecklistName, FaultGrade } from "../core/check/checklist.ts";
import type { CheckAnswer } from "../core/check/result.ts";
import type { RunSection } from "../core/check/tailor.ts";
import type { BikeId, MemberId } from "../core/ids.ts";
import type { Db } from "./db.ts";
import type { Tables } from "./tables.ts";

export type CheckRun = {
  readonly id: string;
  readonly owner: MemberId;
  /** Null for a bike that is looked at before it is bought; `called` is what the member calls it. */
  readonly bike: BikeId | null;
  readonly called: string;
  readonly list: ChecklistName;
  readonly sections: readonly RunSection[];
  /** "left": ended with nothing answered. */
  readonly state: "open" | "finished" | "left";
  /** The point that the member stands at; null when all have an answer. */
  readonly atPoint: string | null;
  readonly begunOn: LocalDate;
  readonly begunAt: Instant;
  readonly finishedOn: LocalDate | null;
  /** The event that finished it, under which its work was recorded. */
  readonly source: string | null;
  readonly rev: number;
  readonly at: Instant;
};

/** What was said at one point. `answer` null: only a note or a figure so far. */
export type PointAnswer = {
  readonly point: string;
  readonly answer: CheckAnswer | null;
  readonly grade: FaultGrade | null;
  readonly note: string | null;
  readonly link: string | null;
  readonly figures: string | null;
  readonly defect: string | null;
  readonly by: MemberId;
  readonly at: Instant;
};

export function checksRepo(db: Db) {
  const latest = () => db.selectFrom("checks").selectAll().orderBy("at", "desc").orderBy("id", "desc");
  return {
    async byId(id: string): Promise<CheckRun | null> {
      const row = await db.selectFrom("checks").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : runOf(row);
    },
    /** A member's open runs, the last touched first. */
    async openOf(owner: MemberId): Promise<CheckRun[]> {
      return (await latest().where("owner", "=", owner).where("state", "=", "open").execute()).map(runOf);
    },
    /** A member's finished runs, the last finished first. */
    async finishedOf(owner: MemberId, limit: number): Promise<CheckRun[]> {
      return (await latest().where("owner", "=", owner).where("state", "=", "finished").limit(limit).execute()).map(runOf);
    },
    /** The last finished run of a bike, of one list or of any. */
    async lastOf(bike: BikeId, list?: ChecklistName): Promise<CheckRun | null> {
      const of = latest().where("bike", "=", bike).where("state", "=", "finished").limit(1);
      const row = await (list === undefined ? of : of.where("list", "=", list)).executeTakeFirst();
      return row === undefined ? null : runOf(row);
    },
    async answersOf(id: string): Promise<PointAnswer[]> {
      return (await db.selectFrom("check_answers").selectAll().where("check_id", "=", id).orderBy("at").orderBy("point").execute()).map(answerOf);
    },
    async add(run: CheckRun): Promise<void> {
      await db.insertInto("checks").values(rowOf(run)).execute();
    },
    /** Writes it if it still stands at the rev before; false when something came first. */
    async change(next: CheckRun): Promise<boolean> {
      const done = await db
        .updateTable("checks")
        .set(rowOf(next))
        .where("id", "=", next.id)
        .where("rev", "=", next.rev - 1)
        .executeTakeFirst();
      return done.numUpdatedRows === 1n;
    },
    async put(id: string, answer: PointAnswer): Promise<void> {
      const row = { ...answer, check_id: id };
      await db
        .insertInto("check_answers")
        .values(row)
        .onConflict((c) => c.columns(["check_id", "point"]).doUpdateSet(row))
        .execute();
    },
  };
}

const runOf = (row: Tables["checks"]): CheckRun => ({
  id: row.id,
  owner: row.owner as MemberId,
  bike: row.bike as BikeId | null,
  called: row.called,
  list: row.list as ChecklistName,
  sections: JSON.parse(row.sections) as RunSection[],
  state: row.state as CheckRun["state"],
  atPoint: row.at_point,
  begunOn: row.begun_on as LocalDate,
  begunAt: row.begun_at as Instant,
  finishedOn: row.finished_on as LocalDate | null,
  source: row.source,
  rev: row.rev,
  at: row.at as Instant,
});

function rowOf(run: CheckRun): Tables["checks"] {
  const { sections, atPoint, begunOn, begunAt, finishedOn, ...same } = run;
  return { ...same, sections: JSON.stringify(sections), at_point: atPoint, begun_on: begunOn, begun_at: begunAt, finished_on: finishedOn };
}

function answerOf({ check_id: _of, ...row }: Tables["check_answers"]): PointAnswer {
  return { ...row, answer: row.answer as CheckAnswer | null, grade: row.grade as FaultGrade | null, by: row.by as MemberId, at: row.at as Instant };
}
