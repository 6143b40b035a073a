// The sweep reads only the bikes whose moment has come: the same 500 changed bikes among 20,000 and among 200,000.

import SQLite from "better-sqlite3";
import { instant } from "../../src/core/calendar/zones.ts";
import { newId } from "../../src/ids.ts";
import { sweep } from "../../src/reminders/sweep.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { type Bench, type Row, rowOf } from "./harness.ts";
import { seed } from "./seed.ts";

const CHANGED = 500;
const ROUNDS = 7;

export const sweeps: Bench = {
  name: "sweep",
  async rows() {
    const rows: Row[] = [];
    let peer: number | null = null;
    for (const bikes of [20_000, 200_000]) {
      const { file } = await seed({ groups: 1000, bikes, readingsEach: 10 });
      const samples: number[] = [];
      for (let round = 0; round < ROUNDS; round++) {
        const raw = new SQLite(file);
        const step = bikes / CHANGED;
        const touch = raw.prepare("update bikes set look_again_at = '2026-11-25T09:00:00.000Z' where id = ?");
        raw.transaction(() => {
          for (let n = 0; n < CHANGED; n++) touch.run(`b${Math.floor(n * step) + round}`);
        })();
        raw.close();
        const opened = await openSqlite(file);
        const start = performance.now();
        const looked = await sweep(storeOn(opened), instant("2026-11-25T10:00:00Z"), newId);
        samples.push(performance.now() - start);
        await opened.close();
        if (looked !== CHANGED) throw new Error(`${looked} bikes were looked at, not ${CHANGED}`);
      }
      const row = rowOf("sweep of 500 changed bikes", `among ${bikes}`, "ms", samples, peer);
      peer ??= row.median;
      rows.push(row);
    }
    return rows;
  },
};
