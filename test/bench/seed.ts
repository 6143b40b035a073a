// A large house on disk: groups, members, bikes and their readings, written with bare SQL. Invented figures, the same every time.

import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import SQLite from "better-sqlite3";
import { openSqlite } from "../../src/store/sqlite.ts";
import { KINDS, type KindId } from "../../src/trade/kinds.ts";
import { STARTER_PLANS } from "../../src/trade/starter-plans.ts";
import { hashOf } from "../../src/usecases/plan-hash.ts";

export type Size = { readonly groups: number; readonly bikes: number; readonly readingsEach: number };
export type Seeded = { readonly file: string; readonly size: Size };

const AT = "2026-11-01T10:00:00.000Z";
const LATER = "2026-12-20T00:00:00.000Z";
const MILE = 16_093_440;

/** Two bikes a member. Every bike has readings over three years, nine in ten of them of the odometer, and five records of work. */
export async function seed(size: Size): Promise<Seeded> {
  const file = path.join(mkdtempSync(path.join(tmpdir(), "tappet-bench-")), "bench.sqlite");
  await (await openSqlite(file)).close();
  const db = new SQLite(file);
  db.pragma("synchronous = OFF");
  const kinds = Object.keys(KINDS) as KindId[];
  const into = (table: string, columns: readonly string[]) =>
    db.prepare(`insert into ${table} (${columns.join(", ")}) values (${columns.map(() => "?").join(", ")})`);
  const group = into("groups", ["id", "zone", "language", "distance", "pressure", "reads"]);
  const member = into("members", ["id", "name", "remind_by", "remind_weekday", "remind_time", "quiet_from", "quiet_to"]);
  const bike = into(
    "bikes",
    "id owner nickname nickname_key kind state equipment plan_column conditions known_date known_ridden whole_since_new home_group plan_hash edits facts_rev rules_version look_again_at added_at".split(
      " ",
    ),
  );
  const event = into("bike_events", ["id", "bike", "what", "from_date", "first_of_new", "unit", "cause", '"by"', "at"]);
  const reading = into("readings", [
    "id",
    "rev",
    "current",
    "state",
    "bike",
    "kind",
    "dial",
    "typed",
    "unit",
    "on_date",
    "message",
    "ordinal",
    "logged_at",
    '"by"',
    "at",
  ]);
  const measured = into("readings", 'id rev current state bike kind place value typed unit on_date message ordinal logged_at "by" at'.split(" "));
  const work = into("work", [
    "id",
    "rev",
    "current",
    "state",
    "bike",
    "items",
    "words",
    "from_date",
    "to_date",
    "date_typed",
    "dial",
    "how",
    "done_by",
    "message",
    "ordinal",
    "logged_at",
    '"by"',
    "at",
  ]);
  db.exec("begin");
  for (const kind of kinds) into("plan_bases", ["hash", "json"]).run(hashOf(STARTER_PLANS[kind]), JSON.stringify(STARTER_PLANS[kind]));
  for (let g = 0; g < size.groups; g++) group.run(`g${g}`, "Europe/Berlin", "en", null, null, 1);
  for (let b = 0; b < size.bikes; b++) {
    const owner = `m${Math.floor(b / 2)}`;
    if (b % 2 === 0) member.run(owner, owner, "direct message", 6, "09:00", "21:00", "08:00");
    const kind = kinds[b % kinds.length] ?? "chain-drive twin";
    const id = `b${b}`;
    bike.run(
      id,
      owner,
      `Bike ${b}`,
      `bike ${b}`,
      kind,
      "riding",
      JSON.stringify(KINDS[kind].equipment),
      "mi",
      "[]",
      "2023-11-01",
      3000 * MILE,
      0,
      `g${b % size.groups}`,
      hashOf(STARTER_PLANS[kind]),
      "[]",
      1,
      1,
      LATER,
      AT,
    );
    event.run(`e${b}`, id, "epoch", "2023-11-01", 3000 * MILE, "mi", "as bought", owner, AT);
    for (let r = 0; r < size.readingsEach / 10; r++) {
      const day = dayOf(Math.floor((r * 10 * 1090) / size.readingsEach));
      measured.run(
        `p${b}-${r}`,
        1,
        1,
        "live",
        id,
        "cold pressure",
        r % 2 === 0 ? "front" : "rear",
        234.4,
        "34 psi",
        "psi",
        day,
        `p${b}-${r}`,
        0,
        `${day}T10:00:00.000Z`,
        owner,
        AT,
      );
    }
    for (let r = size.readingsEach / 10; r < size.readingsEach; r++) {
      const day = dayOf(Math.floor((r * 1090) / size.readingsEach));
      const figure = 3000 + Math.floor((r * 12_000) / size.readingsEach);
      reading.run(`r${b}-${r}`, 1, 1, "live", id, "odometer", figure * MILE, `${figure} mi`, "mi", day, `s${b}-${r}`, 0, `${day}T10:00:00.000Z`, owner, AT);
    }
    for (let w = 0; w < 5; w++) {
      const day = dayOf(w * 200);
      work.run(
        `w${b}-${w}`,
        1,
        1,
        "live",
        id,
        JSON.stringify([{ item: "engine-oil.replace", called: "Engine oil and filter", outcome: "replaced", found: null, left: null }]),
        "oil",
        day,
        day,
        "",
        (3000 + w * 2400) * MILE,
        "did it",
        owner,
        `x${b}-${w}`,
        0,
        AT,
        owner,
        AT,
      );
    }
    if (b % 2000 === 1999) db.exec("commit; begin");
  }
  db.exec("commit; analyze");
  db.close();
  return { file, size };
}

const START = Date.UTC(2023, 10, 1);
const dayOf = (days: number): string => new Date(START + days * 86_400_000).toISOString().slice(0, 10);
