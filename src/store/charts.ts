// Pasted charts that are not saved yet, kept among the drafts under states of their own: no question about a message is one of them.

import type { Instant } from "../core/calendar/dates.ts";
import type { BikeId, GroupId, ItemKey, MemberId } from "../core/ids.ts";
import type { Meaning } from "../core/reading/chart-words.ts";
import type { Db } from "./db.ts";
import { replaced } from "./drafts.ts";
import type { Tables } from "./tables.ts";

/** What its owner has said of a pasted chart so far. Lines are numbered as the chart is read. */
export type ChartAnswers = {
  readonly bike: BikeId;
  /** Letters whose meaning was chosen. */
  readonly legend: Readonly<Record<string, Meaning>>;
  /** Letters to be asked about though they seemed clear. */
  readonly asked: readonly string[];
  /** The letters are as printed back. */
  readonly confirmed: boolean;
  /** Which item a line of several means, or that it is left out. */
  readonly items: Readonly<Record<string, ItemKey | "leave">>;
  /** Lines that become items of the member's own. */
  readonly own: readonly number[];
};
export type ChartDraft = {
  readonly id: string;
  readonly owner: MemberId;
  readonly group: GroupId | null;
  readonly channel: "reading" | "other" | "dm";
  /** What was pasted, to the letter. */
  readonly typed: string;
  readonly answers: ChartAnswers;
  readonly state: "chart open" | "chart saved" | "chart left";
  readonly rev: number;
  readonly at: Instant;
};

const STATES: readonly string[] = ["chart open", "chart saved", "chart left"] satisfies readonly ChartDraft["state"][];

export function chartsRepo(db: Db) {
  return {
    async byId(id: string): Promise<ChartDraft | null> {
      const row = await db.selectFrom("drafts").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined || !STATES.includes(row.state) ? null : chartOf(row);
    },
    /** Charts of a member that wait for an answer, the latest first. */
    async openOf(owner: MemberId): Promise<ChartDraft[]> {
      const rows = await db
        .selectFrom("drafts")
        .selectAll()
        .where("owner", "=", owner)
        .where("state", "=", "chart open" satisfies ChartDraft["state"])
        .orderBy("at", "desc")
        .orderBy("id", "desc")
        .execute();
      return rows.map(chartOf);
    },
    async add(chart: ChartDraft): Promise<void> {
      await db.insertInto("drafts").values(rowOf(chart)).execute();
    },
    /** Writes it if it still stands at the rev before; false when an answer came first. */
    change: (next: ChartDraft): Promise<boolean> => replaced(db, rowOf(next)),
  };
}

const chartOf = (row: Tables["drafts"]): ChartDraft => ({
  id: row.id,
  owner: row.owner as MemberId,
  group: row.group_id as GroupId | null,
  channel: row.channel as ChartDraft["channel"],
  typed: row.typed,
  answers: JSON.parse(row.intents) as ChartAnswers,
  state: row.state as ChartDraft["state"],
  rev: row.rev,
  at: row.at as Instant,
});

function rowOf({ group, answers, ...same }: ChartDraft): Tables["drafts"] {
  return { ...same, message: null, group_id: group, intents: JSON.stringify(answers) };
}
