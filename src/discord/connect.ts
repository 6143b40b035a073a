// The line to the platform: signing in, with the privilege to read whole channels if it was asked for and is granted.

import { Client, Events, GatewayIntentBits, Options, Partials } from "discord.js";

import { isPassing, WAITS } from "./again.ts";

export type Connection = {
  readonly token: string;
  /** Another base address of the HTTP API: a proxy or a stand-in. */
  readonly api: string | null;
  /** Ask for the privilege to read messages that are not addressed to the bot. */
  readonly readChannels: boolean;
  /** Which part of the groups this process serves, counted from 1; null: all. */
  readonly part: { readonly nth: number; readonly of: number } | null;
};
export type Connected = { readonly is: "connected"; readonly client: Client<true>; readonly readsChannels: boolean };
export type NotConnected = { readonly is: "refused"; readonly why: "token" | "unreachable"; readonly error: unknown };

const INTENTS = [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages] as const;
/** Numbers with which the platform closes the line for good. Source: its documentation, gateway close codes. */
export const CLOSED = { token: 4004, intents: 4014 } as const;

/** Signs in. Where the privilege is refused it signs in again without it; where the platform stumbles it waits and tries again. @param waits milliseconds before each further try */
export async function connect(connection: Connection, waits: readonly number[] = WAITS): Promise<Connected | NotConnected> {
  const client = clientFor(connection);
  try {
    const ready = new Promise<void>((resolve) => void client.once(Events.ClientReady, () => resolve()));
    await client.login(connection.token);
    await ready;
    return { is: "connected", client: client as Client<true>, readsChannels: connection.readChannels };
  } catch (error) {
    await client.destroy();
    if (connection.readChannels && isDisallowed(error)) return connect({ ...connection, readChannels: false }, waits);
    const [wait, ...rest] = waits;
    if (wait !== undefined && isPassing(error)) {
      await new Promise((resolve) => setTimeout(resolve, wait));
      return connect(connection, rest);
    }
    return { is: "refused", why: isToken(error) ? "token" : "unreachable", error };
  }
}

function clientFor({ api, readChannels, part }: Connection): Client {
  return new Client({
    ...(part === null ? {} : { shards: [part.nth - 1], shardCount: part.of }),
    intents: [...INTENTS, ...(readChannels ? [GatewayIntentBits.MessageContent] : [])],
    // Direct messages, and edits and deletes of messages from before the start, arrive without their surroundings.
    partials: [Partials.Channel, Partials.Message],
    allowedMentions: { parse: [], repliedUser: false },
    // Tried again by our own back-off: the library would do so at once.
    rest: { retries: 0, timeout: 10_000, ...(api === null ? {} : { api: api.replace(/\/$/u, "") }) },
    // Nothing that is said is kept in memory; what a member logged is in the database.
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: 0,
      ReactionManager: 0,
      GuildMemberManager: { maxSize: 200, keepOverLimit: (member) => member.id === member.client.user.id },
    }),
  });
}

const isToken = (error: unknown): boolean => error instanceof Error && ("code" in error ? error.code === "TokenInvalid" : false);
const isDisallowed = (error: unknown): boolean =>
  error instanceof Error && (("code" in error && error.code === CLOSED.intents) || /disallowed intents/iu.test(error.message));
