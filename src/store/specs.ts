// Specs as rows (id, rev): each change or withdrawal is a new rev. One column may change: `current`.

import type { Instant } from "../core/calendar/dates.ts";
import type { BikeId, GroupId, MemberId } from "../core/ids.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Spec, SpecUse } from "../core/spec/spec.ts";
import type { Db } from "./db.ts";
import type { RecordState } from "./readings.ts";
import { closeRevision } from "./revisions.ts";
import type { Tables } from "./tables.ts";

/** A spec in one revision. */
export type SpecRecord = Spec & { readonly state: RecordState; readonly why: string | null };

export function specsRepo(db: Db) {
  return {
    /** All that stand for some bikes, the latest first. */
    async ofBikes(bikes: readonly BikeId[]): Promise<SpecRecord[]> {
      if (bikes.length === 0) return [];
      const rows = await db
        .selectFrom("specs")
        .selectAll()
        .where("bike", "in", [...bikes])
        .where("current", "=", 1)
        .where("state", "=", "live")
        .orderBy("at", "desc")
        .orderBy("id")
        .execute();
      return rows.map(recordOf);
    },
    async byId(id: string): Promise<SpecRecord | null> {
      const row = await db.selectFrom("specs").selectAll().where("id", "=", id).where("current", "=", 1).executeTakeFirst();
      return row === undefined ? null : recordOf(row);
    },
    /** Every revision, oldest first. */
    async history(id: string): Promise<SpecRecord[]> {
      return (await db.selectFrom("specs").selectAll().where("id", "=", id).orderBy("rev").execute()).map(recordOf);
    },
    async add(record: SpecRecord): Promise<void> {
      await db.insertInto("specs").values(rowOf(record)).execute();
    },
    /** Writes the next revision; false when somebody else's came first. */
    async revise(next: SpecRecord): Promise<boolean> {
      if (!(await closeRevision(db, "specs", next))) return false;
      await db.insertInto("specs").values(rowOf(next)).execute();
      return true;
    },
    /** Other bikes of the same make and model that are shown in a group where this one is shown. @param group only in this group, where one is spoken in */
    async sharing(bike: BikeId, key: string, group: GroupId | null): Promise<BikeId[]> {
      const rows = await db
        .selectFrom("bikes as b")
        .innerJoin("bike_groups as theirs", "theirs.bike", "b.id")
        .innerJoin("bike_groups as mine", "mine.group_id", "theirs.group_id")
        .select("b.id")
        .distinct()
        .where("b.model_key", "=", key)
        .where("b.id", "!=", bike)
        .where("mine.bike", "=", bike)
        .$if(group !== null, (q) => q.where("mine.group_id", "=", group ?? ""))
        .execute();
      return rows.map((row) => row.id as BikeId);
    },
    /** Makes and models as typed by those whose bikes are shown in a group. */
    async modelsIn(group: GroupId): Promise<string[]> {
      const rows = await db
        .selectFrom("bike_groups as g")
        .innerJoin("bikes as b", "b.id", "g.bike")
        .select("b.model")
        .where("g.group_id", "=", group)
        .where("b.model", "is not", null)
        .orderBy("b.added_at")
        .execute();
      return [...new Set(rows.map((row) => row.model ?? ""))];
    },
  };
}

function recordOf(row: Tables["specs"]): SpecRecord {
  const { low, high, nominal, unit, step } = row;
  return {
    id: row.id,
    rev: row.rev,
    state: row.state === "withdrawn" ? "withdrawn" : "live",
    bike: row.bike as BikeId,
    key: row.key,
    use: row.for_use as SpecUse | null,
    holds: unit === null ? { is: "words" } : { is: "figure", low, high, nominal, unit: unit as UnitId, step: step ?? 0 },
    typed: row.typed,
    source: row.manual === null ? null : { manual: row.manual, edition: row.edition, page: row.page },
    by: row.by as MemberId,
    at: row.at as Instant,
    why: row.why,
  };
}

function rowOf({ use, holds, source, ...same }: SpecRecord): Tables["specs"] {
  const figure = holds.is === "figure" ? holds : { low: null, high: null, nominal: null, unit: null, step: null };
  const { low, high, nominal, unit, step } = figure;
  const { manual, edition, page } = source ?? { manual: null, edition: null, page: null };
  return { ...same, current: 1, for_use: use, low, high, nominal, unit, step, manual, edition, page };
}
