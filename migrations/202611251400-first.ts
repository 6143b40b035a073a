// The first tables: members, groups, bikes, readings, work, plans, drafts, notices, deliveries.

import type { Kysely } from "kysely";
import type { Columns } from "../src/store/columns.ts";

export async function up(db: Kysely<unknown>, { whole, decimal, text, flag, strict }: Columns): Promise<void> {
  // One row a fact about the database itself: which face owns it, the practice clock's offset.
  await strict(
    db.schema
      .createTable("meta")
      .addColumn("key", text, (c) => c.primaryKey())
      .addColumn("value", text, (c) => c.notNull()),
  ).execute();

  // Every input that acted, so that a second arrival does nothing.
  await strict(
    db.schema
      .createTable("events")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();

  await strict(
    db.schema
      .createTable("members")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("name", text)
      .addColumn("zone", text)
      .addColumn("language", text)
      .addColumn("distance", text)
      .addColumn("pressure", text)
      .addColumn("depth", text)
      .addColumn("torque", text)
      .addColumn("remind_by", text, (c) => c.notNull())
      .addColumn("remind_weekday", whole, (c) => c.notNull())
      .addColumn("remind_time", text, (c) => c.notNull())
      .addColumn("quiet_from", text, (c) => c.notNull())
      .addColumn("quiet_to", text, (c) => c.notNull()),
  ).execute();

  await strict(
    db.schema
      .createTable("groups")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("zone", text, (c) => c.notNull())
      .addColumn("language", text, (c) => c.notNull())
      .addColumn("distance", text)
      .addColumn("pressure", text)
      .addColumn("reads", flag("reads"), (c) => c.notNull()),
  ).execute();

  await strict(
    db.schema
      .createTable("plan_bases")
      .addColumn("hash", text, (c) => c.primaryKey())
      .addColumn("json", text, (c) => c.notNull()),
  ).execute();

  await strict(
    db.schema
      .createTable("bikes")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("owner", text, (c) => c.notNull().references("members.id"))
      .addColumn("nickname", text, (c) => c.notNull())
      .addColumn("nickname_key", text, (c) => c.notNull())
      .addColumn("kind", text, (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("equipment", text, (c) => c.notNull())
      .addColumn("plan_column", text, (c) => c.notNull())
      .addColumn("conditions", text, (c) => c.notNull())
      .addColumn("by_the_book", text)
      .addColumn("known_date", text, (c) => c.notNull())
      .addColumn("known_ridden", whole, (c) => c.notNull())
      .addColumn("whole_since_new", flag("whole_since_new"), (c) => c.notNull())
      .addColumn("per_year", whole)
      .addColumn("home_group", text)
      .addColumn("plan_hash", text, (c) => c.notNull().references("plan_bases.hash"))
      .addColumn("edits", text, (c) => c.notNull())
      .addColumn("facts_rev", whole, (c) => c.notNull())
      .addColumn("rules_version", whole, (c) => c.notNull())
      .addColumn("look_again_at", text)
      .addColumn("added_at", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("bikes_of_owner").on("bikes").columns(["owner", "nickname_key"]).unique().execute();
  await db.schema.createIndex("bikes_to_look_at").on("bikes").columns(["look_again_at", "id"]).execute();

  await strict(
    db.schema
      .createTable("bike_groups")
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("group_id", text, (c) => c.notNull())
      .addPrimaryKeyConstraint("bike_groups_pk", ["bike", "group_id"]),
  ).execute();
  await db.schema.createIndex("bike_groups_of_group").on("bike_groups").columns(["group_id", "bike"]).execute();

  // Spans and turns of a bike's life: odometer epochs and lay-ups.
  await strict(
    db.schema
      .createTable("bike_events")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("what", text, (c) => c.notNull())
      .addColumn("from_date", text, (c) => c.notNull())
      .addColumn("to_date", text)
      .addColumn("last_of_old", whole)
      .addColumn("first_of_new", whole)
      .addColumn("unit", text)
      .addColumn("cause", text)
      .addColumn("source", text)
      .addColumn("withdrawn_at", text)
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("bike_events_of_source").on("bike_events").column("source").execute();
  await db.schema.createIndex("bike_events_of_bike").on("bike_events").columns(["bike", "from_date"]).execute();

  await strict(
    db.schema
      .createTable("readings")
      .addColumn("id", text, (c) => c.notNull())
      .addColumn("rev", whole, (c) => c.notNull())
      .addColumn("current", flag("current"), (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("kind", text, (c) => c.notNull())
      .addColumn("place", text)
      .addColumn("dial", whole)
      .addColumn("value", decimal)
      .addColumn("typed", text, (c) => c.notNull())
      .addColumn("unit", text, (c) => c.notNull())
      .addColumn("on_date", text, (c) => c.notNull())
      .addColumn("message", text)
      .addColumn("ordinal", whole, (c) => c.notNull())
      .addColumn("logged_at", text, (c) => c.notNull())
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull())
      .addColumn("why", text)
      .addPrimaryKeyConstraint("readings_pk", ["id", "rev"]),
  ).execute();
  await db.schema.createIndex("readings_of_bike").on("readings").columns(["bike", "kind", "current", "state", "place", "on_date"]).execute();
  await db.schema.createIndex("readings_once").on("readings").columns(["message", "ordinal", "rev"]).unique().execute();

  await strict(
    db.schema
      .createTable("work")
      .addColumn("id", text, (c) => c.notNull())
      .addColumn("rev", whole, (c) => c.notNull())
      .addColumn("current", flag("current"), (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("items", text, (c) => c.notNull())
      .addColumn("words", text, (c) => c.notNull())
      .addColumn("from_date", text, (c) => c.notNull())
      .addColumn("to_date", text, (c) => c.notNull())
      .addColumn("date_typed", text, (c) => c.notNull())
      .addColumn("dial", whole)
      .addColumn("dial_typed", text)
      .addColumn("how", text, (c) => c.notNull())
      .addColumn("done_by", text, (c) => c.notNull())
      .addColumn("note", text)
      .addColumn("message", text)
      .addColumn("ordinal", whole, (c) => c.notNull())
      .addColumn("logged_at", text, (c) => c.notNull())
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull())
      .addColumn("why", text)
      .addPrimaryKeyConstraint("work_pk", ["id", "rev"]),
  ).execute();
  await db.schema.createIndex("work_of_bike").on("work").columns(["bike", "current"]).execute();
  await db.schema.createIndex("work_once").on("work").columns(["message", "ordinal", "rev"]).unique().execute();

  await strict(
    db.schema
      .createTable("drafts")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("owner", text, (c) => c.notNull())
      .addColumn("group_id", text)
      .addColumn("channel", text, (c) => c.notNull())
      .addColumn("message", text)
      .addColumn("typed", text, (c) => c.notNull())
      .addColumn("intents", text, (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("rev", whole, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("drafts_of_owner").on("drafts").columns(["owner", "state", "at"]).execute();
  await db.schema.createIndex("drafts_of_message").on("drafts").column("message").execute();

  await strict(
    db.schema
      .createTable("put_offs")
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("item", text, (c) => c.notNull())
      .addColumn("until_date", text, (c) => c.notNull())
      .addColumn("by", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull())
      .addPrimaryKeyConstraint("put_offs_pk", ["bike", "item"]),
  ).execute();

  await strict(
    db.schema
      .createTable("deliveries")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("recipient", text, (c) => c.notNull())
      .addColumn("window", text, (c) => c.notNull())
      .addColumn("member", text)
      .addColumn("group_id", text)
      .addColumn("not_before", text, (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("attempt", whole, (c) => c.notNull())
      .addColumn("sent_from", text)
      .addColumn("lease_until", text)
      .addColumn("message_id", text)
      .addColumn("why", text)
      .addUniqueConstraint("deliveries_once", ["recipient", "window"]),
  ).execute();
  await db.schema.createIndex("deliveries_to_send").on("deliveries").columns(["state", "not_before"]).execute();

  await strict(
    db.schema
      .createTable("notices")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("key", text, (c) => c.notNull().unique())
      .addColumn("member", text, (c) => c.notNull())
      .addColumn("bike", text, (c) => c.notNull().references("bikes.id"))
      .addColumn("kind", text, (c) => c.notNull())
      .addColumn("item", text)
      .addColumn("not_before", text, (c) => c.notNull())
      .addColumn("state", text, (c) => c.notNull())
      .addColumn("delivery", text)
      .addColumn("why", text)
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
  await db.schema.createIndex("notices_of_bike").on("notices").columns(["bike", "state"]).execute();
  await db.schema.createIndex("notices_of_delivery").on("notices").column("delivery").execute();

  // The practice room's own channel: what was said in it, and what was delivered to it.
  await strict(
    db.schema
      .createTable("room_messages")
      .addColumn("id", text, (c) => c.primaryKey())
      .addColumn("author", text, (c) => c.notNull())
      .addColumn("place", text, (c) => c.notNull())
      .addColumn("text", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
  await strict(
    db.schema
      .createTable("room_deliveries")
      .addColumn("delivery", text, (c) => c.primaryKey())
      .addColumn("place", text, (c) => c.notNull())
      .addColumn("member", text)
      .addColumn("reply", text, (c) => c.notNull())
      .addColumn("at", text, (c) => c.notNull()),
  ).execute();
}
