// Answering a command and a message on 1,000 groups, 20,000 bikes and 2 million readings: the whole answer, and store, core and words apart; bare SQL for the same rows beside.

import SQLite from "better-sqlite3";
import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../../commands/index.ts";
import { sayDue } from "../../commands/replies/due.ts";
import { instant, localDateAt, zone } from "../../src/core/calendar/zones.ts";
import type { BikeId, EventId, GroupId, MemberId } from "../../src/core/ids.ts";
import { openRoom } from "../../src/open-room.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { dueBike } from "../../src/usecases/due.ts";
import { duesOf, garage } from "../../src/usecases/garage.ts";
import { english } from "../../src/words/en/english.ts";
import { englishItemName } from "../../src/words/en/item-names.ts";
import { type Bench, compare, rowOf } from "./harness.ts";
import { seed } from "./seed.ts";

const NOW = "2026-11-25T10:00:00Z";
const BIKES = 20_000;
/** Bikes of a large group, two a member. */
const GROUP = 50;

export const answers: Bench = {
  name: "answers",
  async rows() {
    const { file } = await seed({ groups: 1000, bikes: BIKES, readingsEach: 100 });
    const open = await openRoom({
      database: file,
      frozen: instant(NOW),
      log: { error: (facts) => void process.stderr.write(`${JSON.stringify(facts)}\n`), info: () => undefined },
      supplied: { commands: COMMANDS, handlers: HANDLERS, messages: messagesOf, saySetUp },
    });
    let n = 0;
    const from = (m: number) => ({
      member: `m${m}` as MemberId,
      name: null,
      where: { group: "g1" as GroupId, channel: "reading", id: "g1" } as const,
      event: `bench-${n++}` as EventId,
      admin: false,
      language: null,
    });
    const member = (): number => (n * 7919) % (BIKES / 2);
    const due = () => open.room.hear({ ...from(member()), kind: "run", command: "due", sub: null, options: {} });
    const say = () => {
      const m = member();
      return open.room.hear({
        ...from(m),
        kind: "say",
        message: `bench-message-${n}`,
        text: `15,${100 + (n % 800)} mi on Bike ${m * 2}`,
        addressed: false,
        answers: null,
      });
    };
    const whole = [await sampled("whole answer", "/due, two bikes", due), await sampled("whole answer", "reading message, logged", say)];

    const opened = await openSqlite(file);
    const store = storeOn(opened);
    const raw = new SQLite(file, { readonly: true });
    const now = instant(NOW);
    const statements = {
      bikes: raw.prepare("select * from bikes where owner = ? order by added_at, id"),
      turns: raw.prepare("select * from bike_events where bike in (?, ?) order by bike, from_date, at"),
      readings: raw.prepare(
        `select bike, kind, place, id, dial, on_date, logged_at, ordinal from readings where bike in (?, ?) and current = 1 and state = 'live' and kind = 'odometer'
         union all select bike, kind, place, '', null, max(on_date), '', 0 from readings where bike in (?, ?) and current = 1 and state = 'live' and kind in ('cold pressure', 'tread') group by bike, kind, place`,
      ),
      work: raw.prepare("select * from work where bike in (?, ?) and current = 1 and state = 'live' order by bike, from_date, logged_at, ordinal"),
    };
    const ids = (): [BikeId, BikeId] => {
      const m = (n++ * 7919) % (BIKES / 2);
      return [`b${m * 2}` as BikeId, `b${m * 2 + 1}` as BikeId];
    };
    const readings = (pair: [BikeId, BikeId]) => statements.readings.all(...pair, ...pair);
    const wide = await compare("readings of two bikes, 184 rows", "bare SQL", {
      "bare SQL": () => readings(ids()),
      store: () => store.read((q) => q.readings.historiesOf(ids())),
    });
    const parts = await compare("the parts of /due", "bare SQL", {
      "bare SQL": () => {
        const pair = ids();
        return [statements.bikes.all(`m${Number(pair[0].slice(1)) / 2}`), statements.turns.all(...pair), readings(pair), statements.work.all(...pair)];
      },
      store: () =>
        store.read(async (q) => {
          const pair = ids();
          return [
            await q.bikes.ofOwner(`m${Number(pair[0].slice(1)) / 2}` as MemberId),
            await q.bikes.turns(pair),
            await q.readings.historiesOf(pair),
            await q.work.ofBikes(pair),
          ];
        }),
    });
    const all = await store.read(async (q) => garage(q, await q.bikes.ofOwner("m5" as MemberId), now, () => ({ member: null, home: null })));
    const shown = all.map((g) => dueBike({ itemName: englishItemName }, g));
    const words = english({ locale: "en-GB", distance: null }, localDateAt(now, zone("UTC")));
    const rest = await compare("the parts of /due", null, { core: () => all.map(duesOf), words: () => sayDue(shown, words) });
    const many = Array.from({ length: GROUP }, (_, n) => `b${n}` as BikeId);
    const owners = Array.from({ length: GROUP / 2 }, (_, n) => `m${n}` as MemberId);
    const list = many.map((id) => `'${id}'`).join();
    const bare = [
      `select * from bikes where id in (${list})`,
      `select * from bike_events where bike in (${list}) order by bike, from_date, at`,
      `select bike, kind, place, id, dial, on_date, logged_at, ordinal from readings where bike in (${list}) and current = 1 and state = 'live' and kind = 'odometer'
       union all select bike, kind, place, '', null, max(on_date), '', 0 from readings where bike in (${list}) and current = 1 and state = 'live' and kind in ('cold pressure', 'tread') group by bike, kind, place`,
      `select * from work where bike in (${list}) and current = 1 and state = 'live' order by bike, from_date, logged_at, ordinal`,
    ].map((text) => raw.prepare(text));
    const garaged = () =>
      store.read(async (q) => garage(q, (await Promise.all(owners.map((owner) => q.bikes.ofOwner(owner)))).flat(), now, () => ({ member: null, home: null })));
    const group = await compare(`a group of ${GROUP} bikes`, "bare SQL of the same rows", {
      "bare SQL of the same rows": () => bare.map((statement) => statement.all()),
      "from the store, put together": garaged,
      "due lists, from the store": async () => (await garaged()).map(duesOf),
    });
    raw.close();
    await opened.close();
    await open.close();
    return [...whole, ...wide, ...parts, ...rest, ...group];
  },
};

/** One after another, each on another member; in milliseconds. */
async function sampled(bench: string, subject: string, work: () => Promise<unknown>) {
  const samples: number[] = [];
  for (let n = 0; n < 100; n++) await work();
  for (let n = 0; n < 3000; n++) {
    const start = performance.now();
    await work();
    samples.push(performance.now() - start);
  }
  return rowOf(bench, subject, "ms", samples);
}
