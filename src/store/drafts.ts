// Drafts: what was typed but is not yet sure. A draft stays until it is answered or let go; silence saves nothing.

import type { Instant } from "../core/calendar/dates.ts";
import type { GroupId, MemberId } from "../core/ids.ts";
import type { Intent } from "../core/reading/intent.ts";
import type { Db } from "./db.ts";
import type { Tables } from "./tables.ts";

export type Draft = {
  readonly id: string;
  readonly owner: MemberId;
  readonly group: GroupId | null;
  readonly channel: "reading" | "other" | "dm";
  readonly message: string | null;
  /** What was typed, to the letter. */
  readonly typed: string;
  readonly intents: readonly Intent[];
  /** "given back": a form of which some could not be read, kept as it was filled in until it is put right; it asks nothing. */
  readonly state: "open" | "logged" | "let go" | "given back";
  readonly rev: number;
  readonly at: Instant;
};

export function draftsRepo(db: Db) {
  return {
    async byId(id: string): Promise<Draft | null> {
      const row = await db.selectFrom("drafts").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : draftOf(row);
    },
    /** Unanswered drafts of a member, oldest first. */
    async openOf(owner: MemberId): Promise<Draft[]> {
      const rows = await db.selectFrom("drafts").selectAll().where("owner", "=", owner).where("state", "=", "open").orderBy("at").orderBy("id").execute();
      return rows.map(draftOf);
    },
    async openOfMessage(message: string): Promise<Draft | null> {
      const row = await db.selectFrom("drafts").selectAll().where("message", "=", message).where("state", "=", "open").executeTakeFirst();
      return row === undefined ? null : draftOf(row);
    },
    /** Lets go of what is still asked about a message: it now reads otherwise, or is gone. */
    async letGoOfMessage(message: string): Promise<void> {
      await db
        .updateTable("drafts")
        .set((e) => ({ state: "let go", rev: e("rev", "+", 1) }))
        .where("message", "=", message)
        .where("state", "=", "open")
        .execute();
    },
    async add(draft: Draft): Promise<void> {
      await db.insertInto("drafts").values(rowOf(draft)).execute();
    },
    /** Writes the draft if it still stands at the rev before; false when an answer came first. */
    change: (next: Draft): Promise<boolean> => replaced(db, rowOf(next)),
  };
}

/** Writes a row if it still stands at the rev before; false when something came first. */
export async function replaced(db: Db, next: Tables["drafts"]): Promise<boolean> {
  const done = await db
    .updateTable("drafts")
    .set(next)
    .where("id", "=", next.id)
    .where("rev", "=", next.rev - 1)
    .executeTakeFirst();
  return done.numUpdatedRows === 1n;
}

function draftOf(row: Tables["drafts"]): Draft {
  return {
    id: row.id,
    owner: row.owner as MemberId,
    group: row.group_id as GroupId | null,
    channel: row.channel as Draft["channel"],
    message: row.message,
    typed: row.typed,
    intents: JSON.parse(row.intents) as Intent[],
    state: row.state as Draft["state"],
    rev: row.rev,
    at: row.at as Instant,
  };
}

function rowOf(draft: Draft): Tables["drafts"] {
  const { group, intents, ...same } = draft;
  return { ...same, group_id: group, intents: JSON.stringify(intents) };
}
