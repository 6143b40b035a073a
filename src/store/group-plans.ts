// The plans that a group has for its makes and models, who shared them and from which manual.

import type { Instant } from "../core/calendar/dates.ts";
import type { GroupId, MemberId } from "../core/ids.ts";
import { modelKey } from "../core/spec/spec.ts";
import type { Db } from "./db.ts";

export type GroupPlan = {
  readonly id: string;
  readonly group: GroupId;
  readonly model: string;
  /** Of the plan base. */
  readonly hash: string;
  readonly manual: string;
  readonly by: MemberId;
  readonly at: Instant;
};

export function groupPlansRepo(db: Db) {
  return {
    /** The latest that was shared for a model; null when none was. */
    async latest(group: GroupId, model: string): Promise<GroupPlan | null> {
      const row = await db
        .selectFrom("group_plans")
        .selectAll()
        .where("group_id", "=", group)
        .where("model_key", "=", modelKey(model))
        .orderBy("at", "desc")
        .orderBy("id", "desc")
        .limit(1)
        .executeTakeFirst();
      return row === undefined ? null : planOf(row);
    },
    async byId(id: string): Promise<GroupPlan | null> {
      const row = await db.selectFrom("group_plans").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : planOf(row);
    },
    /** Takes one away: the one before it is the latest again. */
    async remove(id: string): Promise<void> {
      await db.deleteFrom("group_plans").where("id", "=", id).execute();
    },
    async add({ group, ...plan }: GroupPlan): Promise<void> {
      await db
        .insertInto("group_plans")
        .values({ ...plan, group_id: group, model_key: modelKey(plan.model) })
        .execute();
    },
  };
}

type Row = { readonly [C in "id" | "group_id" | "model" | "hash" | "manual" | "by" | "at"]: string };
const planOf = ({ id, model, hash, manual, ...row }: Row): GroupPlan => ({
  ...{ id, group: row.group_id as GroupId, model, hash, manual, by: row.by as MemberId, at: row.at as Instant },
});
