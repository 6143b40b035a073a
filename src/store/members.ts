// Members and groups: who is speaking, and the choices that govern the place they speak in.

import { type Selectable, sql } from "kysely";
import type { Group, Member, ReminderWishes } from "../core/bike.ts";
import type { Zone } from "../core/calendar/dates.ts";
import type { GroupId, MemberId } from "../core/ids.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Topics } from "../core/reminding.ts";
import type { Db } from "./db.ts";
import type { Tables } from "./tables.ts";

/** Reminders as they are before a member has said anything: Saturday morning, by direct message, never at night. */
export const USUAL_WISHES: ReminderWishes = { by: "direct message", weekday: 6, time: "09:00", quiet: { from: "21:00", to: "08:00" } };

/** The speaker, and the group whose choices govern: the one spoken in, in a direct message the home of their first bike. Either is null when nothing is stored of it. */
export type Speaker = { readonly member: Member | null; readonly group: Group | null };

export function membersRepo(db: Db) {
  return {
    /** One statement for both. */
    async speaker(member: MemberId, group: GroupId | null): Promise<Speaker> {
      const row = await db
        .selectFrom(sql<{ one: number }>`(select 1 as one)`.as("one"))
        .leftJoin("members as m", (j) => j.on("m.id", "=", member))
        .leftJoin("groups as g", (j) =>
          j.on("g.id", "=", (e) =>
            group !== null
              ? e.val(group)
              : e
                  .selectFrom("bikes as b")
                  .select((b) => b.ref("b.home_group").$notNull().as("id"))
                  .where("b.owner", "=", member)
                  .where("b.home_group", "is not", null)
                  .orderBy("b.added_at")
                  .orderBy("b.id")
                  .limit(1),
          ),
        )
        .selectAll("m")
        .select([
          ...(["g.id as g_id", "g.zone as g_zone", "g.distance as g_distance", "g.pressure as g_pressure", "g.reads as g_reads"] as const),
          ...([
            "g.reading_channel as g_reading_channel",
            "g.place as g_place",
            "g.season as g_season",
            "g.riding as g_riding",
            "g.topics as g_topics",
            "g.digest as g_digest",
          ] as const),
        ])
        .executeTakeFirstOrThrow();
      const { g_id, g_zone, g_distance, g_pressure, g_reads, g_reading_channel, g_place, g_season, g_riding, g_topics, g_digest, ...m } = row;
      const stored: GroupRow | null =
        g_id === null
          ? null
          : {
              ...{ id: g_id, zone: g_zone ?? "UTC", language: "en", distance: g_distance, pressure: g_pressure, reads: g_reads ?? 0 },
              ...{ reading_channel: g_reading_channel, place: g_place, season: g_season, riding: g_riding, topics: g_topics, digest: g_digest },
            };
      return { member: m.id === null ? null : memberOf(m as Selectable<Tables["members"]>), group: stored === null ? null : groupOf(stored) };
    },
    async byIds(ids: readonly MemberId[]): Promise<Map<MemberId, Member>> {
      if (ids.length === 0) return new Map();
      const rows = await db
        .selectFrom("members")
        .selectAll()
        .where("id", "in", [...ids])
        .execute();
      return new Map(rows.map((row) => [row.id as MemberId, memberOf(row)]));
    },
    async groupsByIds(ids: readonly GroupId[]): Promise<Map<GroupId, Group>> {
      if (ids.length === 0) return new Map();
      const rows = await db
        .selectFrom("groups")
        .selectAll()
        .where("id", "in", [...ids])
        .execute();
      return new Map(rows.map((row) => [row.id as GroupId, groupOf(row)]));
    },
    async save(member: Member): Promise<void> {
      const row = {
        id: member.id,
        name: member.name,
        zone: member.zone,
        language: member.language,
        distance: member.distance,
        pressure: member.pressure,
        depth: member.depth,
        torque: member.torque,
        remind_by: member.reminders.by,
        remind_weekday: member.reminders.weekday,
        remind_time: member.reminders.time,
        quiet_from: member.reminders.quiet.from,
        quiet_to: member.reminders.quiet.to,
        topics: topicsText(member.reminders.topics),
      };
      await db
        .insertInto("members")
        .values(row)
        .onConflict((c) => c.column("id").doUpdateSet(row))
        .execute();
    },
    /** The number a member calls when stranded, as typed. */
    async recovery(member: MemberId): Promise<string | null> {
      return (await db.selectFrom("members").select("recovery").where("id", "=", member).executeTakeFirst())?.recovery ?? null;
    },
    async setRecovery(member: MemberId, recovery: string | null): Promise<void> {
      await db.updateTable("members").set({ recovery }).where("id", "=", member).execute();
    },
    async saveGroup(group: Group): Promise<void> {
      const row = {
        id: group.id,
        zone: group.zone,
        language: group.language,
        distance: group.distance,
        pressure: group.pressure,
        reads: group.reads ? (1 as const) : (0 as const),
        reading_channel: group.readingChannel,
        place: group.place,
        season: group.season,
        riding: group.riding,
        topics: topicsText(group.topics),
        digest: digestText(group.digest),
      };
      await db
        .insertInto("groups")
        .values(row)
        .onConflict((c) => c.column("id").doUpdateSet(row))
        .execute();
    },
  };
}

const topicsText = (topics: Topics | undefined): string | null => (topics === undefined ? null : JSON.stringify(topics));
const topicsOf = (stored: string | null): { readonly topics?: Topics } => (stored === null ? {} : { topics: JSON.parse(stored) as Topics });

function memberOf(row: Selectable<Tables["members"]>): Member {
  return {
    id: row.id as MemberId,
    name: row.name,
    zone: row.zone as Zone | null,
    language: row.language === "en" ? "en" : null,
    distance: row.distance as DistanceUnit | null,
    pressure: row.pressure as UnitId | null,
    depth: row.depth as UnitId | null,
    torque: row.torque as UnitId | null,
    reminders: {
      by: row.remind_by === "off" ? "off" : row.remind_by === "channel" ? "channel" : "direct message",
      weekday: row.remind_weekday,
      time: row.remind_time,
      quiet: { from: row.quiet_from, to: row.quiet_to },
      ...topicsOf(row.topics),
    },
  };
}

const digestText = (digest: Group["digest"]): string | null => (digest === undefined ? null : digest === "off" ? digest : `${digest.weekday} ${digest.time}`);
function digestOf(stored: string | null): Pick<Group, "digest"> {
  if (stored === null) return {};
  const [weekday = "", time] = stored.split(" ");
  return { digest: time === undefined ? "off" : { weekday: Number(weekday), time } };
}

type GroupRow = Omit<Selectable<Tables["groups"]>, "digest_at">;

function groupOf(row: GroupRow): Group {
  return {
    id: row.id as GroupId,
    zone: row.zone as Zone,
    language: "en",
    distance: row.distance as DistanceUnit | null,
    pressure: row.pressure as UnitId | null,
    reads: row.reads === 1,
    readingChannel: row.reading_channel,
    place: row.place,
    season: row.season === "south" || row.season === "north" ? row.season : null,
    riding: row.riding,
    ...topicsOf(row.topics),
    ...digestOf(row.digest),
  };
}
