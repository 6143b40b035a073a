// Changes of a plan that were shown and are not saved yet, kept among the drafts under a state of their own: no question about a message is one of them.

import type { Instant } from "../core/calendar/dates.ts";
import type { BikeId, GroupId, MemberId } from "../core/ids.ts";
import type { PlanEdit } from "../core/plan/plan.ts";
import type { Db } from "./db.ts";

export type PlanChangeDraft = {
  readonly id: string;
  readonly owner: MemberId;
  readonly group: GroupId | null;
  readonly channel: "reading" | "other" | "dm";
  /** What was typed, to the letter. */
  readonly typed: string;
  readonly bike: BikeId;
  readonly edit: Extract<PlanEdit, { change: "interval" }>;
  readonly why: string | null;
  readonly at: Instant;
};

const SHOWN = "change shown";

export function planChangesRepo(db: Db) {
  return {
    async byId(id: string): Promise<PlanChangeDraft | null> {
      const row = await db.selectFrom("drafts").selectAll().where("id", "=", id).where("state", "=", SHOWN).executeTakeFirst();
      if (row === undefined) return null;
      const { bike, edit, why } = JSON.parse(row.intents) as Pick<PlanChangeDraft, "bike" | "edit" | "why">;
      return {
        ...{ id: row.id, owner: row.owner as MemberId, group: row.group_id as GroupId | null, channel: row.channel as PlanChangeDraft["channel"] },
        ...{ typed: row.typed, bike, edit, why, at: row.at as Instant },
      };
    },
    async add({ group, bike, edit, why, ...same }: PlanChangeDraft): Promise<void> {
      const row = { ...same, message: null, group_id: group, intents: JSON.stringify({ bike, edit, why }), state: SHOWN, rev: 0 };
      await db.insertInto("drafts").values(row).execute();
    },
  };
}
