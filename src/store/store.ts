// The store as the use cases see it: repositories in one snapshot or one transaction, and inputs that act once.

import type { Transaction } from "kysely";
import type { Instant } from "../core/calendar/dates.ts";
import type { EventId } from "../core/ids.ts";
import type { PlanBase } from "../core/plan/plan.ts";
import { bikeDatesRepo } from "./bike-dates.ts";
import { bikesRepo } from "./bikes.ts";
import { byNamesRepo } from "./by-names.ts";
import { chartsRepo } from "./charts.ts";
import { checksRepo } from "./checks.ts";
import type { DatabaseKind } from "./columns.ts";
import type { Db, Opened } from "./db.ts";
import { defectsRepo } from "./defects.ts";
import { digestsRepo } from "./digests.ts";
import { draftsRepo } from "./drafts.ts";
import { groupPlansRepo } from "./group-plans.ts";
import { jobsRepo } from "./jobs.ts";
import { membersRepo } from "./members.ts";
import { noticesRepo } from "./notices.ts";
import { planChangesRepo } from "./plan-changes.ts";
import { readingsRepo } from "./readings.ts";
import { roomRepo } from "./room.ts";
import { specsRepo } from "./specs.ts";
import type { Tables } from "./tables.ts";
import { tripsRepo } from "./trips.ts";
import { workRepo } from "./work.ts";
import { wrenchesRepo } from "./wrenches.ts";

export type Repos = {
  readonly members: ReturnType<typeof membersRepo>;
  readonly bikes: ReturnType<typeof bikesRepo>;
  readonly readings: ReturnType<typeof readingsRepo>;
  readonly work: ReturnType<typeof workRepo>;
  readonly defects: ReturnType<typeof defectsRepo>;
  readonly jobs: ReturnType<typeof jobsRepo>;
  readonly digests: ReturnType<typeof digestsRepo>;
  readonly drafts: ReturnType<typeof draftsRepo>;
  readonly charts: ReturnType<typeof chartsRepo>;
  readonly planChanges: ReturnType<typeof planChangesRepo>;
  readonly checks: ReturnType<typeof checksRepo>;
  readonly dates: ReturnType<typeof bikeDatesRepo>;
  readonly notices: ReturnType<typeof noticesRepo>;
  readonly wrenches: ReturnType<typeof wrenchesRepo>;
  readonly byNames: ReturnType<typeof byNamesRepo>;
  readonly groupPlans: ReturnType<typeof groupPlansRepo>;
  readonly specs: ReturnType<typeof specsRepo>;
  readonly trips: ReturnType<typeof tripsRepo>;
  readonly room: ReturnType<typeof roomRepo>;
};

/** Thrown inside a transaction to undo all of it, the event included, so that the input may be tried again. */
export class Conflict extends Error {}

export type Store = {
  /** Reads one snapshot. Nothing but the store is awaited inside. */
  read<T>(work: (q: Repos) => Promise<T>): Promise<T>;
  /** One statement by itself, which is a snapshot without a transaction around it. */
  one<T>(work: (q: Repos) => Promise<T>): Promise<T>;
  /** Acts on an input once: all of `work` is kept together with the event's id, or none of it. A second arrival does nothing. */
  act<T>(event: EventId, now: Instant, work: (q: Repos) => Promise<T>): Promise<{ readonly first: true; readonly value: T } | { readonly first: false }>;
  /** A transaction of the bot's own, not caused by an input. */
  change<T>(work: (q: Repos) => Promise<T>): Promise<T>;
};

/** A store on an open database. */
export function storeOn({ db, kind }: Pick<Opened, "db" | "kind">): Store {
  const bases = new Map<string, PlanBase>();
  const inTransaction = <T>(work: (q: Repos, t: Transaction<Tables>) => Promise<T>, how: "read" | "write" = "write"): Promise<T> =>
    uncrossed(() => begin(db, kind, how).execute((t) => work(reposOn(t, bases), t)));
  return {
    read: (work) => inTransaction(work, "read"),
    one: (work) => work(reposOn(db, bases)),
    change: (work) => inTransaction(work),
    act: (event, now, work) =>
      inTransaction(async (q, t) => {
        const noted = await t
          .insertInto("events")
          .values({ id: event, at: now })
          .onConflict((c) => c.column("id").doNothing())
          .executeTakeFirst();
        if (noted.numInsertedOrUpdatedRows === 0n) return { first: false } as const;
        return { first: true, value: await work(q) } as const;
      }),
  };
}

/** SQLite has one writer, so that whatever is done is done in a row. PostgreSQL is told to behave as if it were so. */
function begin(db: Db, kind: DatabaseKind, how: "read" | "write") {
  if (kind === "sqlite") return db.transaction();
  return how === "read" ? db.transaction().setIsolationLevel("repeatable read").setAccessMode("read only") : db.transaction().setIsolationLevel("serializable");
}

/** Milliseconds before each further try of a transaction that crossed another. */
const CROSSED = [2, 5, 10, 20, 50, 100, 200, 400, 800, 1600] as const;

/** Counts the waits of this process, so that no two that crossed wait alike and cross again. */
let waits = 0;
const UNLIKE = 8;

/** Does it again when it crossed another: nothing of it was kept. */
async function uncrossed<T>(work: () => Promise<T>): Promise<T> {
  for (const wait of CROSSED) {
    try {
      return await work();
    } catch (error) {
      if (!isCrossed(error)) throw error;
      waits = (waits + 1) % UNLIKE;
      const unlike = wait * (1 + waits / UNLIKE);
      await new Promise((resolve) => setTimeout(resolve, unlike));
    }
  }
  return work();
}

/** Source: PostgreSQL's documentation, appendix A: serialization_failure, deadlock_detected. */
const isCrossed = (error: unknown): boolean => error instanceof Error && "code" in error && (error.code === "40001" || error.code === "40P01");

function reposOn(db: Db, bases: Map<string, PlanBase>): Repos {
  return {
    members: membersRepo(db),
    bikes: bikesRepo(db, bases),
    readings: readingsRepo(db),
    work: workRepo(db),
    defects: defectsRepo(db),
    jobs: jobsRepo(db),
    digests: digestsRepo(db),
    drafts: draftsRepo(db),
    charts: chartsRepo(db),
    planChanges: planChangesRepo(db),
    checks: checksRepo(db),
    dates: bikeDatesRepo(db),
    notices: noticesRepo(db),
    wrenches: wrenchesRepo(db),
    byNames: byNamesRepo(db),
    groupPlans: groupPlansRepo(db),
    specs: specsRepo(db),
    trips: tripsRepo(db),
    room: roomRepo(db),
  };
}
