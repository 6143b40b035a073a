// A whole bot on a clock of its own, and a face that keeps what was sent, with the moment; now and then the platform is away, or takes a message without saying so.

import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../../../commands/index.ts";
import { botOf } from "../../../src/bot.ts";
import { parseCommandLine } from "../../../src/chat/command-line.ts";
import type { From, Where } from "../../../src/chat/inbound.ts";
import type { Reply } from "../../../src/chat/reply.ts";
import { practiceClock } from "../../../src/clock.ts";
import type { Instant } from "../../../src/core/calendar/dates.ts";
import type { EventId, GroupId, MemberId } from "../../../src/core/ids.ts";
import type { Address } from "../../../src/reminders/deliver.ts";
import type { Db } from "../../../src/store/db.ts";
import { openDatabase } from "../../../src/store/open.ts";
import { type Store, storeOn } from "../../../src/store/store.ts";
import type { Chance } from "../../backtest/random.ts";
import { aDatabase } from "../../support/database.ts";

export type Sent = { readonly at: Instant; readonly delivery: string; readonly to: Address; readonly reply: Reply };
type Input =
  | { readonly say: string }
  | { readonly run: string }
  | { readonly press: string }
  | { readonly pick: string; readonly values: readonly string[] }
  | { readonly fill: string; readonly fields: Readonly<Record<string, string>> };

export type House = {
  readonly store: Store;
  readonly db: Db;
  readonly now: () => Instant;
  /** Every message that arrived, in order. */
  readonly sent: readonly Sent[];
  /** Faults that were logged. */
  readonly faults: readonly string[];
  readonly next: () => Promise<Instant | null>;
  /** Moves the clock on and does what is due then. */
  readonly tick: (at: Instant) => Promise<void>;
  readonly moveTo: (at: Instant) => void;
  /** What a member says or presses, in a group's channel or alone; the first answer's reply. @param group null: in a direct message */
  readonly hear: (member: string, group: string | null, input: Input, admin?: boolean) => Promise<Reply | null>;
  readonly close: () => Promise<void>;
};

/** Of a hundred messages so many are not taken, and so many are taken without an answer. */
const NOT_TAKEN = 2;
const UNANSWERED = 1;

export async function aHouse(begin: Instant, luck: Chance): Promise<House> {
  const database = await aDatabase();
  const opened = await openDatabase(database.address);
  const store = storeOn(opened);
  const clock = practiceClock(begin, 0);
  const sent: Sent[] = [];
  const faults: string[] = [];
  let ids = 0;
  const newId = (): string => `id-${String(++ids).padStart(9, "0")}`;
  const there = new Set<string>();
  const bot = botOf({
    ...{ commands: COMMANDS, handlers: HANDLERS, messages: messagesOf, saySetUp, store, clock, newId },
    log: { error: (facts, what) => void faults.push(`${what} ${JSON.stringify(facts, Object.getOwnPropertyNames)}`), info: () => undefined },
    hearsChannels: () => true,
    mayManage: async (from) => from.admin,
    deliver: {
      find: async (delivery) => (there.has(delivery) ? { is: "there", message: delivery } : { is: "not there", parts: [] }),
      async send(delivery, _once, to, reply, begun) {
        if (!(await begun.begun({ channel: to.where.id, after: null }, 1))) return { is: "taken" };
        const dice = 100 * luck.u();
        if (dice < NOT_TAKEN) return { is: "later", why: "away" };
        there.add(delivery);
        sent.push({ at: clock.now(), delivery, to, reply });
        return dice < NOT_TAKEN + UNANSWERED ? { is: "later", why: "no answer" } : { is: "sent", message: delivery };
      },
    },
  });
  return {
    ...{ store, db: opened.db, now: clock.now, sent, faults, next: bot.reminders.next, moveTo: clock.moveTo },
    async tick(at) {
      clock.moveTo(at);
      await bot.reminders.tick(at);
    },
    async hear(member, group, input, admin = false) {
      const where: Where = group === null ? { group: null, channel: "dm", id: "dm" } : { group: group as GroupId, channel: "reading", id: group };
      const said = newId();
      const from: From = { member: member as MemberId, name: member, where, event: said as EventId, admin, language: null };
      const answers = await bot.conversation.hear(
        "say" in input
          ? { ...from, kind: "say", message: said, text: input.say, addressed: true, answers: null }
          : "run" in input
            ? { ...from, kind: "run", ...parseCommandLine(input.run, COMMANDS) }
            : "press" in input
              ? { ...from, kind: "press", action: input.press }
              : "pick" in input
                ? { ...from, kind: "pick", action: input.pick, values: input.values }
                : { ...from, kind: "fill", action: input.fill, fields: input.fields },
      );
      return answers[0]?.reply ?? null;
    },
    async close() {
      await opened.close();
      await database.drop();
    },
  };
}
