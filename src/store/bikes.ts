// Bikes, the groups they are shown in, their plan bases, and the turns of their lives (odometer epochs, lay-ups).

import { z } from "zod";
import { BIKE_STATES, type Bike, nicknameKey, type SignedEdit } from "../core/bike.ts";
import type { Instant, LocalDate } from "../core/calendar/dates.ts";
import { EQUIPMENT, type Equipment, type EquipmentPart } from "../core/equipment.ts";
import type { BikeId, GroupId, MemberId } from "../core/ids.ts";
import type { Condition, PlanBase } from "../core/plan/plan.ts";
import type { Dial, DistanceUnit, Ridden, Stretch } from "../core/quantity/distance.ts";
import type { LayUp } from "../core/schedule/facts.ts";
import { RULES_VERSION } from "../core/schedule/rules-version.ts";
import { modelKey } from "../core/spec/spec.ts";
import type { Epoch, EpochCause } from "../core/usage/track.ts";
import type { Db } from "./db.ts";
import { NO_TURN, type Tables } from "./tables.ts";
import { type TripRecord, tripOf } from "./trips.ts";

const equipmentShape = z.object(
  Object.fromEntries((Object.keys(EQUIPMENT) as EquipmentPart[]).map((part) => [part, z.enum(EQUIPMENT[part] as readonly [string, ...string[]])])),
);

/** Epochs and lay-ups of some bikes, oldest first. */
export type Turns = { readonly epochs: Map<BikeId, Epoch[]>; readonly layUps: Map<BikeId, LayUpRecord[]>; readonly trips: Map<BikeId, TripRecord[]> };
/** A lay-up as stored, with its id so that it can be ended. */
export type LayUpRecord = LayUp & { readonly id: string };

/** `bases` outlives the repository: a plan base never changes once written, so each is read once. */
export function bikesRepo(db: Db, bases: Map<string, PlanBase>) {
  return {
    /** With what their owner calls them beside the nicknames. */
    async ofOwner(owner: MemberId): Promise<Bike[]> {
      const rows = await db
        .selectFrom("bikes")
        .leftJoin("by_names", (j) => j.onRef("by_names.bike", "=", "bikes.id").onRef("by_names.owner", "=", "bikes.owner"))
        .selectAll("bikes")
        .select("by_names.name as by_name")
        .where("bikes.owner", "=", owner)
        .orderBy("bikes.added_at")
        .orderBy("bikes.id")
        .orderBy("by_names.at")
        .orderBy("by_names.name_key")
        .execute();
      const names = new Map<string, string[]>();
      for (const { id, by_name } of rows) if (by_name !== null) names.set(id, [...(names.get(id) ?? []), by_name]);
      // A row for each name: the first of a bike stands for it.
      return rows
        .filter(({ id }, n) => rows[n - 1]?.id !== id)
        .map((row) => {
          const byNames = names.get(row.id);
          return { ...bikeOf(row), ...(byNames === undefined ? {} : { byNames }) };
        });
    },
    async byId(id: BikeId): Promise<Bike | null> {
      const row = await db.selectFrom("bikes").selectAll().where("id", "=", id).executeTakeFirst();
      return row === undefined ? null : bikeOf(row);
    },
    /** Bikes whose moment to be looked at has come, oldest first; the only bikes that a sweep reads. */
    async toLookAt(now: Instant, limit: number): Promise<{ readonly bike: Bike; readonly lookAt: Instant }[]> {
      const rows = await db.selectFrom("bikes").selectAll().where("look_again_at", "<=", now).orderBy("look_again_at").orderBy("id").limit(limit).execute();
      return rows.map((row) => ({ bike: bikeOf(row), lookAt: (row.look_again_at ?? now) as Instant }));
    },
    /** Bikes looked at by older rules are looked at again, in the sweep's slices. */
    async rulesChanged(version: number, now: Instant): Promise<void> {
      await db.updateTable("bikes").set({ rules_version: version, look_again_at: now }).where("rules_version", "<", version).execute();
    },
    /** Every bike is looked at again, in the sweep's slices. */
    async lookAtAll(now: Instant): Promise<void> {
      await db.updateTable("bikes").set({ look_again_at: now }).where("look_again_at", "is not", null).execute();
    },
    /** The next moment at which some bike wants to be looked at. */
    async nextLook(): Promise<Instant | null> {
      const row = await db
        .selectFrom("bikes")
        .select("look_again_at")
        .where("look_again_at", "is not", null)
        .orderBy("look_again_at")
        .limit(1)
        .executeTakeFirst();
      return (row?.look_again_at ?? null) as Instant | null;
    },
    /** Sets the next look only if no write came since the bike was read (compare and set). */
    async lookAgainAt(bike: BikeId, factsRev: number, at: Instant | null): Promise<boolean> {
      const done = await db.updateTable("bikes").set({ look_again_at: at }).where("id", "=", bike).where("facts_rev", "=", factsRev).executeTakeFirst();
      return done.numUpdatedRows === 1n;
    },
    /** Every write that touches a bike's facts ends with this. */
    async touched(ids: readonly BikeId[], now: Instant): Promise<void> {
      if (ids.length === 0) return;
      await db
        .updateTable("bikes")
        .set((e) => ({ facts_rev: e("facts_rev", "+", 1), look_again_at: now }))
        .where("id", "in", [...ids])
        .execute();
    },
    /** Bikes that were at home in no group go by one from now on: its zone, seasons and tread law. It is shown nothing of them by that. */
    async comeHome(ids: readonly BikeId[], group: GroupId): Promise<void> {
      if (ids.length > 0)
        await db
          .updateTable("bikes")
          .set({ home_group: group })
          .where("id", "in", [...ids])
          .where("home_group", "is", null)
          .execute();
    },
    /** A member's or a group's choice changed: their bikes are looked at again. */
    async touchedOf(by: { owner: MemberId } | { homeGroup: GroupId }, now: Instant): Promise<void> {
      const update = db.updateTable("bikes").set({ look_again_at: now });
      await ("owner" in by ? update.where("owner", "=", by.owner) : update.where("home_group", "=", by.homeGroup)).execute();
    },
    async add(bike: Bike, now: Instant): Promise<void> {
      await db
        .insertInto("bikes")
        .values({ ...rowOf(bike), rules_version: RULES_VERSION, look_again_at: now, added_at: now })
        .execute();
      if (bike.homeGroup !== null) await db.insertInto("bike_groups").values({ bike: bike.id, group_id: bike.homeGroup }).execute();
    },
    /** Writes all that its owner may change; refused (false) when another write came between. */
    async change(bike: Bike, now: Instant): Promise<boolean> {
      const done = await db
        .updateTable("bikes")
        .set({ ...rowOf(bike), facts_rev: bike.factsRev + 1, look_again_at: now })
        .where("id", "=", bike.id)
        .where("facts_rev", "=", bike.factsRev)
        .executeTakeFirst();
      return done.numUpdatedRows === 1n;
    },
    /** Lets a group's picture show a bike, or no longer; brought to the group where it was not. */
    async picture(bike: BikeId, group: GroupId, pictured: boolean): Promise<void> {
      const row = { bike, group_id: group, pictured: pictured ? (1 as const) : (0 as const) };
      await db
        .insertInto("bike_groups")
        .values(row)
        .onConflict((c) => c.columns(["bike", "group_id"]).doUpdateSet({ pictured: row.pictured }))
        .execute();
    },
    /** Brings a bike to a group's wrench evening, or no longer; brought to the group where it was not. */
    async bring(bike: BikeId, group: GroupId, brought: boolean): Promise<void> {
      const row = { bike, group_id: group, evening: brought ? (1 as const) : (0 as const) };
      await db
        .insertInto("bike_groups")
        .values(row)
        .onConflict((c) => c.columns(["bike", "group_id"]).doUpdateSet({ evening: row.evening }))
        .execute();
    },
    /** The bikes at home in a group that are ridden or kept, in the order in which they were added. */
    async homedIn(group: GroupId): Promise<Bike[]> {
      const rows = await db
        .selectFrom("bikes")
        .selectAll()
        .where("home_group", "=", group)
        .where("state", "in", ["riding", "laid up"])
        .orderBy("added_at")
        .orderBy("id")
        .execute();
      return rows.map(bikeOf);
    },
    /** The bikes that their owners bring to a group's wrench evening, in the order in which they were added. */
    broughtTo: (group: GroupId): Promise<Bike[]> => letShow(db, group, "bike_groups.evening"),
    /** The bikes that their owners let a group's picture show, in the order in which they were added. */
    picturedIn: (group: GroupId): Promise<Bike[]> => letShow(db, group, "bike_groups.pictured"),
    async keepBase(hash: string, base: PlanBase): Promise<void> {
      await db
        .insertInto("plan_bases")
        .values({ hash, json: JSON.stringify(base) })
        .onConflict((c) => c.column("hash").doNothing())
        .execute();
    },
    async base(hash: string): Promise<PlanBase> {
      const known = bases.get(hash);
      if (known !== undefined) return known;
      const row = await db.selectFrom("plan_bases").select("json").where("hash", "=", hash).executeTakeFirstOrThrow();
      const base = JSON.parse(row.json) as PlanBase;
      bases.set(hash, base);
      return base;
    },
    /** The base whose hash begins so, as buttons carry it; null when there is none, or more than one. */
    async baseBeginning(hash: string): Promise<{ readonly hash: string; readonly base: PlanBase } | null> {
      const rows = await db.selectFrom("plan_bases").select(["hash", "json"]).where("hash", ">=", hash).where("hash", "<", `${hash}g`).limit(2).execute();
      const [row] = rows;
      return row === undefined || rows.length > 1 ? null : { hash: row.hash, base: JSON.parse(row.json) as PlanBase };
    },
    async turns(ids: readonly BikeId[]): Promise<Turns> {
      const epochs = new Map<BikeId, Epoch[]>();
      const layUps = new Map<BikeId, LayUpRecord[]>();
      const trips = new Map<BikeId, TripRecord[]>();
      if (ids.length === 0) return { epochs, layUps, trips };
      const rows = await db
        .selectFrom("bike_events")
        .selectAll()
        .where("bike", "in", [...ids])
        .where("withdrawn_at", "is", null)
        .orderBy("bike")
        .orderBy("from_date")
        .orderBy("at")
        .execute();
      // Noted in one moment with the bike itself, the dial it came with is the first.
      rows.sort((a, b) =>
        a.bike === b.bike && a.from_date === b.from_date && a.at === b.at ? Number(b.cause === "as bought") - Number(a.cause === "as bought") : 0,
      );
      for (const row of rows) {
        const bike = row.bike as BikeId;
        if (row.what === "epoch") push(epochs, bike, epochOf(row));
        else if (row.what === "trip") push(trips, bike, tripOf(row));
        else push(layUps, bike, { id: row.id, from: row.from_date as LocalDate, to: row.to_date as LocalDate | null });
      }
      return { epochs, layUps, trips };
    },
    /** @param source the message or event that said so: undone with it */
    async addEpoch(bike: BikeId, epoch: Epoch, source: string, by: MemberId, at: Instant): Promise<void> {
      const row = {
        ...NO_TURN,
        id: epoch.id,
        bike,
        what: "epoch",
        from_date: epoch.from,
        last_of_old: epoch.lastOfOld,
        first_of_new: epoch.firstOfNew,
        unit: epoch.unit,
        cause: epoch.cause,
        source,
        by,
        at,
      };
      await db.insertInto("bike_events").values(row).execute();
    },
    async sourceOfEpoch(id: string): Promise<string | null> {
      return (await db.selectFrom("bike_events").select("source").where("id", "=", id).executeTakeFirst())?.source ?? null;
    },
    /** When dials began by a source that stand: their bikes, and nothing when it began none. */
    async epochsOf(source: string): Promise<readonly BikeId[]> {
      const rows = await db
        .selectFrom("bike_events")
        .select("bike")
        .where("source", "=", source)
        .where("what", "=", "epoch")
        .where("cause", "!=", "as bought")
        .where("withdrawn_at", "is", null)
        .execute();
      return rows.map((row) => row.bike as BikeId);
    },
    /** Takes back the epochs that a source began, or one epoch; answers their bikes and sources. */
    async withdrawEpochs(
      which: { readonly source: string } | { readonly id: string },
      at: Instant,
    ): Promise<{ readonly bike: BikeId; readonly source: string | null }[]> {
      const rows = await db
        .updateTable("bike_events")
        .set({ withdrawn_at: at })
        .where("what", "=", "epoch")
        .where("withdrawn_at", "is", null)
        .where("cause", "!=", "as bought")
        .where("source" in which ? "source" : "id", "=", "source" in which ? which.source : which.id)
        .returning(["bike", "source"])
        .execute();
      return rows.map((row) => ({ bike: row.bike as BikeId, source: row.source }));
    },
    async addLayUp(bike: BikeId, id: string, from: LocalDate, by: MemberId, at: Instant): Promise<void> {
      const row = { ...NO_TURN, id, bike, what: "lay-up", from_date: from, by, at };
      await db.insertInto("bike_events").values(row).execute();
    },
    async endLayUp(id: string, to: LocalDate): Promise<void> {
      await db.updateTable("bike_events").set({ to_date: to }).where("id", "=", id).where("what", "=", "lay-up").execute();
    },
  };
}

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}

function epochOf(row: Tables["bike_events"]): Epoch {
  return {
    id: row.id,
    from: row.from_date as LocalDate,
    lastOfOld: row.last_of_old as Dial | null,
    firstOfNew: (row.first_of_new ?? 0) as Dial,
    unit: row.unit as DistanceUnit,
    cause: row.cause as EpochCause,
  };
}

function bikeOf(row: Tables["bikes"]): Bike {
  return {
    id: row.id as BikeId,
    owner: row.owner as MemberId,
    nickname: row.nickname,
    kind: row.kind,
    state: z.enum(BIKE_STATES).parse(row.state),
    equipment: equipmentShape.parse(JSON.parse(row.equipment)) as unknown as Equipment,
    column: row.plan_column as DistanceUnit,
    conditions: JSON.parse(row.conditions) as Condition[],
    byTheBook: row.by_the_book === null ? null : JSON.parse(row.by_the_book),
    knownFrom: { date: row.known_date as LocalDate, ridden: row.known_ridden as Ridden, wholeSinceNew: row.whole_since_new === 1 },
    perYear: row.per_year as Stretch | null,
    homeGroup: row.home_group as GroupId | null,
    planHash: row.plan_hash,
    edits: JSON.parse(row.edits) as SignedEdit[],
    factsRev: row.facts_rev,
    model: row.model,
  };
}

function rowOf(bike: Bike) {
  return {
    id: bike.id,
    owner: bike.owner,
    nickname: bike.nickname,
    nickname_key: nicknameKey(bike.nickname),
    kind: bike.kind,
    state: bike.state,
    equipment: JSON.stringify(bike.equipment),
    plan_column: bike.column,
    conditions: JSON.stringify(bike.conditions),
    by_the_book: bike.byTheBook === null ? null : JSON.stringify(bike.byTheBook),
    known_date: bike.knownFrom.date,
    known_ridden: bike.knownFrom.ridden,
    whole_since_new: bike.knownFrom.wholeSinceNew ? (1 as const) : (0 as const),
    per_year: bike.perYear,
    home_group: bike.homeGroup,
    plan_hash: bike.planHash,
    edits: JSON.stringify(bike.edits),
    facts_rev: bike.factsRev,
    model: bike.model,
    model_key: bike.model === null ? null : modelKey(bike.model),
  };
}

async function letShow(db: Db, group: GroupId, flag: "bike_groups.pictured" | "bike_groups.evening"): Promise<Bike[]> {
  const rows = await db
    .selectFrom("bikes")
    .innerJoin("bike_groups", "bike_groups.bike", "bikes.id")
    .selectAll("bikes")
    .where("bike_groups.group_id", "=", group)
    .where(flag, "=", 1)
    .orderBy("bikes.added_at")
    .orderBy("bikes.id")
    .execute();
  return rows.map(bikeOf);
}
