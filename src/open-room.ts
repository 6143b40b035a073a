// The terminal's house on one database file: store, clock, bot and room. Wired here for main and for the tests alike.

import { type Bot, botOf, type Supplied } from "./bot.ts";
import { later, type PracticeClock, practiceClock } from "./clock.ts";
import type { Instant } from "./core/calendar/dates.ts";
import { RULES_VERSION } from "./core/schedule/rules-version.ts";
import { newId } from "./ids.ts";
import type { Log } from "./log.ts";
import type { Deliver } from "./reminders/deliver.ts";
import type { Opened, OpenOptions } from "./store/db.ts";
import { openDatabase } from "./store/open.ts";
import { type Store, storeOn } from "./store/store.ts";
import { filesBeside } from "./terminal/files.ts";
import { placeOf, type Room } from "./terminal/room.ts";
import { roomOn } from "./terminal/wire.ts";

export type OpenRoom = Pick<Opened, "name" | "fresh" | "close"> & {
  readonly room: Room;
  readonly bot: Bot;
  readonly store: Store;
  readonly clock: PracticeClock;
};
export type RoomParts = {
  /** A file of SQLite's, or the address of a PostgreSQL server. */
  readonly database: string;
  readonly frozen: Instant | null;
  readonly log: Log;
  readonly supplied: Supplied;
  readonly onQuery?: OpenOptions["onQuery"];
};

/** Opens the database and everything on it. @throws StoreRefusal when the file cannot be used */
export async function openRoom({ database, frozen, log, supplied, onQuery }: RoomParts): Promise<OpenRoom> {
  const opened: Opened = await openDatabase(database, { onQuery });
  try {
    return await onOpened(opened, frozen, log, supplied, database);
  } catch (error) {
    await opened.close();
    throw error;
  }
}

async function onOpened(opened: Opened, frozen: Instant | null, log: Log, supplied: Supplied, file: string): Promise<OpenRoom> {
  const store = storeOn(opened);
  await store.change((q) => q.room.claimFace("terminal"));
  const clock = practiceClock(frozen, Number((await store.read((q) => q.room.meta("clock-offset"))) ?? 0));
  const deliver: Deliver = {
    // The row cannot be there twice, so nothing ever needs to be looked for.
    find: async () => ({ is: "not there", parts: [] }),
    async send(delivery, _once, { member, where }, reply) {
      await store.change((q) => q.room.deliver({ delivery, place: placeOf(where), member, reply: JSON.stringify(reply), at: clock.now() }));
      return { is: "sent", message: delivery };
    },
  };
  const bot = botOf({ ...supplied, store, clock, newId, log, deliver, hearsChannels: () => true, mayManage: async (from) => from.admin });
  await store.change((q) => q.bikes.rulesChanged(RULES_VERSION, clock.now()));
  const room = await roomOn({
    conversation: bot.conversation,
    commands: supplied.commands,
    keep: filesBeside(file),
    now: clock.now,
    newId,
    later,
    async moveTo(at) {
      clock.moveTo(at);
      const ahead = clock.offset();
      if (ahead !== null) await store.change((q) => q.room.setMeta("clock-offset", String(ahead)));
    },
    tick: bot.reminders.tick,
    next: bot.reminders.next,
    remember: (said, at) => store.change((q) => q.room.remember(said, at)),
    said: (id) => store.read((q) => q.room.message(id)),
    delivered: (from) => store.read((q) => q.room.deliveredSince(from)),
  });
  return { room, bot, store, clock, name: opened.name, fresh: opened.fresh, close: opened.close };
}
