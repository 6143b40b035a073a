// The whole bot on the stand-in, in this process.

import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../../commands/index.ts";
import type { Instant } from "../../src/core/calendar/dates.ts";
import { addDuration, instant } from "../../src/core/calendar/zones.ts";
import { type OpenServer, openServer } from "../../src/open-server.ts";
import { aDatabase } from "../support/database.ts";
import { type StandIn, standIn } from "./standin.ts";
import type { Json, Kept } from "./wire.ts";

export type OnStandIn = {
  readonly platform: StandIn;
  readonly open: OpenServer;
  readonly faults: readonly unknown[];
  readonly fatal: readonly string[];
  readonly advance: (span: string) => void;
  /** Waits until something is so, and answers it. */
  readonly until: <T>(what: string, look: () => T | undefined | null | false) => Promise<T>;
  /** The answer to an interaction, once it is complete. */
  readonly answerTo: (interaction: string) => Promise<Kept>;
  readonly close: () => Promise<void>;
};

export type On = {
  readonly platform?: Parameters<typeof standIn>[0];
  readonly file?: string;
  readonly readChannels?: boolean;
  readonly use?: StandIn;
  /** The moment to begin with. */
  readonly now?: Instant;
  /** Which of how many processes this is; null: the only one. */
  readonly process?: { readonly nth: number; readonly of: number } | null;
  /** Waits before each further try; short ones, unless the waits are what is tested. */
  readonly waits?: readonly number[];
  /** Milliseconds that /due, asked for or pressed for, and undoing take to answer after their work is done. */
  readonly slow?: number;
  /** Milliseconds before slow work is announced; a short time, unless the time is what is tested. */
  readonly announceAfter?: number | null;
};

export async function onStandIn({
  platform: how,
  file,
  readChannels = true,
  use,
  slow = 0,
  waits = [20, 40, 60, 80],
  process = null,
  announceAfter = 150,
  now: from = instant("2026-11-25T10:00:00Z"),
}: On = {}): Promise<OnStandIn> {
  const platform = use ?? (await standIn(how));
  const database = file === undefined ? await aDatabase() : { address: file, drop: async () => undefined };
  const faults: unknown[] = [];
  const fatal: string[] = [];
  let now = from;
  const open = await openServer({
    database: database.address,
    connection: { token: "good-token", api: platform.api, readChannels, part: process },
    clock: { now: () => now },
    log: { error: (facts, what) => void faults.push({ what, ...facts }), info: () => undefined },
    supplied: {
      commands: COMMANDS.map((command) => (command.name === "due" && slow > 0 ? slowed(command, slow) : command)),
      handlers: slow > 0 ? { ...HANDLERS, ...slowedHandlers(slow) } : HANDLERS,
      messages: messagesOf,
      saySetUp,
    },
    fatal: (sentence) => void fatal.push(sentence),
    waits,
    ...(announceAfter === null ? {} : { announceAfter }),
  });
  if (open.is === "refused") throw new Error(open.sentence);
  await open.registering;
  const until = async <T>(what: string, look: () => T | undefined | null | false): Promise<T> => {
    for (let n = 0; n < 1200; n++) {
      const found = look();
      if (found !== undefined && found !== null && found !== false) return found;
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    throw new Error(
      `it did not come: ${what}; ${JSON.stringify(platform.calls.slice(-5).map(({ method, path, status }) => `${method} ${path} ${status}`))} ${String(faults[0] instanceof Object ? JSON.stringify(faults[0], errors) : "")}`,
    );
  };
  return {
    platform,
    open,
    faults,
    fatal,
    until,
    advance: (span) => {
      now = addDuration(now, span);
    },
    answerTo: (interaction) =>
      until(`an answer to ${interaction}`, () =>
        platform.messages.find((each) => each["$token"] === `token-${interaction}` && each["$pending"] !== true && each.deleted !== true),
      ),
    async close() {
      await open.close();
      await database.drop();
      if (use === undefined) await platform.close();
    },
  };
}

const later =
  <A extends unknown[], R>(slow: number, work: (...args: A) => Promise<R>) =>
  async (...args: A): Promise<R> => {
    const done = await work(...args);
    await new Promise((resolve) => setTimeout(resolve, slow));
    return done;
  };
const slowedHandlers = (slow: number) =>
  Object.fromEntries((["show-due", "undo"] as const).map((name) => [name, { ...HANDLERS[name], run: later(slow, HANDLERS[name].run) }]));
const slowed = (command: (typeof COMMANDS)[number], slow: number): (typeof COMMANDS)[number] => ({ ...command, run: later(slow, command.run) });

const errors = (_key: string, value: unknown): unknown => (value instanceof Error ? `${value.name}: ${value.message} ${value.stack?.split("\n")[1]}` : value);

/** The custom id of the button or list whose label begins so. */
export function part(message: Json, label: string): string {
  const parts = (message["components"] as { components: { custom_id: string; label?: string; placeholder?: string }[] }[]).flatMap((row) => row.components);
  const found = parts.find((each) => (each.label ?? each.placeholder ?? "").startsWith(label));
  if (found === undefined) throw new Error(`no ${label} among ${parts.map((each) => each.label ?? each.placeholder).join(", ")}`);
  return found.custom_id;
}
/** Only its member sees it. */
export const isPrivate = (message: Json): boolean => (Number(message["flags"]) & 64) !== 0;

export const INES = "200000000000000001";
export const HERON = { name: "Heron", kind: "chain-drive twin", odometer: "14,210 mi" };
export const SEND = /^POST \/channels\/\d+\/messages$/u;
export const CALLBACK = /callback$/u;
export const FOLLOW = /^POST \/webhooks\//u;
/** Started, and its set-up message sent. */
export async function started(how: On = {}): Promise<OnStandIn> {
  const on = await onStandIn(how);
  await on.until("the set-up message", () => on.platform.messages.length > 0);
  return on;
}
/** What the bot sent of its own accord, the set-up message aside. */
export const saidBy = (on: OnStandIn): readonly Kept[] =>
  on.platform.messages.filter((message) => message["$interaction"] !== true && !message.content.startsWith("**Setting up"));
/** Long enough for what should not come to have come. */
export const settled = () => new Promise((resolve) => setTimeout(resolve, 300));
