// The house on the group's server: store, clock, bot, the line to the platform and the minute tick. Wired here for main and for the tests alike.

import { type Bot, botOf, type Supplied } from "./bot.ts";
import type { From } from "./chat/inbound.ts";
import { registration } from "./chat/registration.ts";
import type { Clock } from "./clock.ts";
import { localDateAt, zone } from "./core/calendar/zones.ts";
import type { GroupId } from "./core/ids.ts";
import { RULES_VERSION } from "./core/schedule/rules-version.ts";
import { WAITS } from "./discord/again.ts";
import { type Connected, type Connection, connect } from "./discord/connect.ts";
import { listen } from "./discord/face.ts";
import { mayManage } from "./discord/hear.ts";
import { type Post, post } from "./discord/post.ts";
import { commandsJson, registerChanged } from "./discord/register.ts";
import { newId } from "./ids.ts";
import type { Log } from "./log.ts";
import type { Deliver } from "./reminders/deliver.ts";
import { openSqlite } from "./store/open.ts";
import { type Store, storeOn } from "./store/store.ts";
import { authorOf, beginWelcome, forgetWelcome } from "./usecases/group-life.ts";
import { COMMAND_WORDS, PARENT_WORDS } from "./words/en/commands.ts";
import { english } from "./words/en/english.ts";
import { faceWords } from "./words/en/face.ts";
import { startWords } from "./words/en/start.ts";

export type ServerParts = {
  readonly file: string;
  readonly connection: Connection;
  readonly clock: Clock;
  readonly log: Log;
  readonly supplied: Supplied;
  /** Milliseconds before each further try to post, when not the usual ones. */
  readonly waits?: readonly number[];
  /** Told when the bot must end: the token is no longer good. */
  readonly fatal: (sentence: string) => void;
};
export type OpenServer = {
  readonly is: "open";
  readonly bot: Bot;
  readonly store: Store;
  readonly client: Connected["client"];
  /** Said once at the start, for whoever runs it. */
  readonly notes: readonly string[];
  /** Takes nothing more, finishes what is under way within the limit, and lets go of everything. @param also what the caller has under way */
  readonly close: (also?: Promise<unknown>) => Promise<void>;
};

/** What is under way when the bot is told to stop has this long. */
const LAST_MILLISECONDS = 4000;

/** Opens everything. @throws StoreRefusal when the database cannot be used */
export async function openServer(parts: ServerParts): Promise<OpenServer | { readonly is: "refused"; readonly sentence: string }> {
  const { clock, log, supplied, connection, waits = WAITS } = parts;
  const opened = await openSqlite(parts.file);
  const store = storeOn(opened.db);
  try {
    await store.change((q) => q.room.claimFace("discord"));
    const connected = await connect(connection);
    if (connected.is === "refused") {
      await opened.close();
      return { is: "refused", sentence: connected.why === "token" ? startWords.badToken() : startWords.unreachable(String(connected.error)) };
    }
    const { client, readsChannels } = connected;
    await registerChanged(client.rest, client.application.id, commandsOf(supplied), {
      last: () => store.read((q) => q.room.meta("commands")),
      keep: (mark) => store.change((q) => q.room.setMeta("commands", mark)),
    });
    const bot = botOf({
      ...supplied,
      store,
      clock,
      newId,
      log,
      deliver: deliverBy({ client, moreActions: faceWords.moreActions, waits }),
      hearsChannels: () => readsChannels,
      mayManage: (from: From, group: GroupId) => mayManage(client, from.member, group),
    });
    await store.change((q) => q.bikes.rulesChanged(RULES_VERSION, clock.now()));
    const { saySetUp } = supplied;
    const face = listen({
      client,
      log,
      conversation: bot.conversation,
      words: faceWords,
      waits,
      authorOf: (message) => authorOf(store, message),
      welcome: async (guild) =>
        (await beginWelcome(store, guild)) ? saySetUp(guild, readsChannels, english({ locale: "en-GB", distance: null }, localDateAt(clock.now(), UTC))) : null,
      notWelcomed: (guild) => forgetWelcome(store, guild),
      fatal: () => parts.fatal(startWords.badToken()),
    });
    const notes = connection.readChannels && !readsChannels ? [startWords.noPrivilege()] : [];
    return {
      is: "open",
      bot,
      store,
      client,
      notes,
      async close(also) {
        await Promise.race([Promise.all([face.stop(), also]), new Promise((resolve) => setTimeout(resolve, LAST_MILLISECONDS).unref())]);
        await client.destroy();
        await opened.close();
      },
    };
  } catch (error) {
    await opened.close();
    throw error;
  }
}

const UTC = zone("UTC");

/** The commands and the message menu's entry, as the platform registers them. */
const commandsOf = ({ commands }: Supplied) =>
  commandsJson(
    registration(
      commands,
      (name) => COMMAND_WORDS[name as keyof typeof COMMAND_WORDS],
      (name) => PARENT_WORDS[name as keyof typeof PARENT_WORDS],
    ),
    faceWords.menuName,
  );

/** Reminders by way of the platform. */
const deliverBy = (how: Post): Deliver => ({
  send: (delivery, { member, where }, reply) =>
    post(how, where.channel === "dm" ? { member } : { channel: where.id, mention: member, answers: null }, reply, `delivery/${delivery}`),
});
