// The sweep reads only the bikes whose moment has come: the same 200 changed bikes among 20,000 and among 200,000, of which they are one in a thousand;
// and one bike alone. And what it found is sent.
// On SQLite, and on PostgreSQL where TAPPET_TEST_POSTGRES names a server. Beside a delivery, the bare statements that it cannot do without.

import SQLite from "better-sqlite3";
import pg from "pg";
import type { Instant } from "../../src/core/calendar/dates.ts";
import { addDuration, instant } from "../../src/core/calendar/zones.ts";
import { newId } from "../../src/ids.ts";
import { sendReady } from "../../src/reminders/send.ts";
import { sweep } from "../../src/reminders/sweep.ts";
import { openDatabase } from "../../src/store/open.ts";
import { type Store, storeOn } from "../../src/store/store.ts";
import { english } from "../../src/words/en/english.ts";
import { englishItemName } from "../../src/words/en/item-names.ts";
import { HAS_SERVER } from "../support/database.ts";
import { type Bench, type Row, rowOf } from "./harness.ts";
import { onPostgres } from "./on-postgres.ts";
import { seed } from "./seed.ts";

const CHANGED = 200;
const ROUNDS = 7;
const LOOKS = 5;
/** Between two rounds. */
const APART = "PT1M";
/** From a sweep to a time at which each member has had an hour to be told at. */
const AN_HOUR_FOR_ALL = "P6DT23H";
const BEGIN = instant("2026-11-25T10:00:00Z");

/** One connection for what a bench does beside the bot. */
type Raw = { readonly run: (statements: readonly string[]) => Promise<void>; readonly close: () => Promise<void> };

function sqliteRaw(file: string, synchronous = "FULL"): Raw {
  const raw = new SQLite(file);
  raw.pragma(`synchronous = ${synchronous}`);
  return {
    run: async (statements) => {
      for (const statement of statements) raw.exec(statement);
    },
    close: async () => void raw.close(),
  };
}
async function postgresRaw(address: string): Promise<Raw> {
  const client = new pg.Client(address);
  await client.connect();
  return {
    run: async (statements) => {
      for (const statement of statements) await client.query(statement);
    },
    close: () => client.end(),
  };
}

type Place = { readonly kind: string; readonly address: string; readonly raw: () => Promise<Raw> };

async function places(bikes: number): Promise<Place[]> {
  const { file } = await seed({ groups: 1000, bikes, readingsEach: 10 });
  const sqlite: Place = { kind: "SQLite", address: file, raw: async () => sqliteRaw(file) };
  if (!HAS_SERVER) return [sqlite];
  const address = await onPostgres(file, `tappet_bench_${bikes}`);
  return [sqlite, { kind: "PostgreSQL", address, raw: () => postgresRaw(address) }];
}

export const sweeps: Bench = {
  name: "sweep",
  async rows() {
    const rows: Row[] = [];
    const peers = new Map<string, number>();
    const beside = (row: Row, key: string): void => {
      rows.push(row);
      if (!peers.has(key)) peers.set(key, row.median);
    };
    for (const bikes of [20_000, 200_000])
      for (const place of await places(bikes)) {
        const { swept, one, delivered } = await measured(place, bikes);
        const among = `${place.kind}, among ${bikes.toLocaleString("en-GB")}`;
        beside(rowOf(`sweep of ${CHANGED} changed bikes`, among, "ms", swept, peers.get(`sweep ${place.kind}`) ?? null), `sweep ${place.kind}`);
        beside(rowOf("looking again at one bike", among, "ms", one, peers.get(`one ${place.kind}`) ?? null), `one ${place.kind}`);
        beside(rowOf("a reminder, claimed to settled", among, "ms", delivered, peers.get(`deliver ${place.kind}`) ?? null), `deliver ${place.kind}`);
        if (bikes > 20_000) continue;
        rows.push(rowOf("its four commits, bare", place.kind, "ms", await bare(await place.raw())));
        if (place.kind === "SQLite")
          rows.push(rowOf("its four commits, bare", "SQLite, synchronous=NORMAL", "ms", await bare(sqliteRaw(place.address, "NORMAL"))));
      }
    return rows;
  },
};

/** Rounds of a sweep and of sending what it found, with a face that takes everything at once. */
async function measured(place: Place, bikes: number): Promise<{ readonly swept: number[]; readonly one: number[]; readonly delivered: number[] }> {
  const [swept, one, delivered]: [number[], number[], number[]] = [[], [], []];
  const step = bikes / CHANGED;
  const sending = {
    deliver: { find: async () => ({ is: "not there", parts: [] }) as const, send: deliverAtOnce },
    itemName: englishItemName,
    wordsFor: (_member: unknown, _home: unknown, today: Parameters<typeof english>[1]) => english({ locale: "en-GB", distance: null }, today),
    log: { error: (facts: unknown, what: string) => void process.stderr.write(`${what} ${JSON.stringify(facts)}\n`) },
  };
  for (let round = 0, now = BEGIN; round < ROUNDS; round++, now = addDuration(now, APART)) {
    const raw = await place.raw();
    // Two bikes a member: in each round members who have not been told yet.
    const ids = Array.from({ length: CHANGED }, (_, n) => `'b${n * step + 2 * round}'`).join(", ");
    await raw.run([`update bikes set look_again_at = '${addDuration(now, "-PT1H")}' where id in (${ids})`]);
    await raw.close();
    const opened = await openDatabase(place.address);
    const store = storeOn(opened);
    const start = performance.now();
    const looked = await sweep(store, now, newId);
    swept.push(performance.now() - start);
    if (looked < CHANGED) throw new Error(`${looked} bikes were looked at, not ${CHANGED}`);
    one.push(...(await looksAtOne(place, store, `b${2 * round}`, now)));
    const later = addDuration(now, AN_HOUR_FOR_ALL);
    const from = performance.now();
    const sent = await sendReady(store, { ...sending, clock: () => later }, later);
    if (sent < CHANGED) throw new Error(`${sent} reminders were sent, not ${CHANGED}`);
    delivered.push((performance.now() - from) / sent);
    await opened.close();
  }
  return { swept, one, delivered };
}

/** What one bike costs that was just changed, told of already: a few times over. */
async function looksAtOne(place: Place, store: Store, bike: string, now: Instant): Promise<number[]> {
  const samples: number[] = [];
  for (let n = 0; n < LOOKS; n++) {
    const raw = await place.raw();
    await raw.run([`update bikes set look_again_at = '${now}' where id = '${bike}'`]);
    await raw.close();
    const start = performance.now();
    const looked = await sweep(store, now, newId);
    samples.push(performance.now() - start);
    if (looked !== 1) throw new Error(`${looked} bikes were looked at, not one`);
  }
  return samples;
}

async function deliverAtOnce(
  ...[, once, , , begin]: Parameters<import("../../src/reminders/deliver.ts").Deliver["send"]>
): Promise<{ readonly is: "sent"; readonly message: string }> {
  await begin.begun({ channel: "c", after: null }, 1);
  return { is: "sent", message: once };
}

/** Claim, mark as told, note where, settle: one row each, each kept before the next. */
async function bare(raw: Raw): Promise<number[]> {
  const samples: number[] = [];
  const each = [
    "update deliveries set attempt = attempt + 1",
    "update notices set why = null",
    "update deliveries set trace_channel = 'c'",
    "update deliveries set why = null",
  ];
  const [delivery, notice] = ["(select min(id) from deliveries)", "(select min(id) from notices)"];
  const statements = each.flatMap((statement) => ["begin", `${statement} where id = ${statement.includes("notices") ? notice : delivery}`, "commit"]);
  for (let n = 0; n < 300; n++) {
    const start = performance.now();
    await raw.run(statements);
    samples.push(performance.now() - start);
  }
  await raw.close();
  return samples;
}
