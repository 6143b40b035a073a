// The house on the group's server: store, clock, bot, the line to the platform and the minute tick. Wired here for main and for the tests alike.

import { type Bot, botOf, type Supplied } from "./bot.ts";
import type { From } from "./chat/inbound.ts";
import { registration } from "./chat/registration.ts";
import type { Clock } from "./clock.ts";
import type { Instant } from "./core/calendar/dates.ts";
import { addDuration, localDateAt, zone } from "./core/calendar/zones.ts";
import type { GroupId } from "./core/ids.ts";
import { RULES_VERSION } from "./core/schedule/rules-version.ts";
import { again, isUnauthorised, WAITS } from "./discord/again.ts";
import { CLOSED, type Connected, type Connection, connect } from "./discord/connect.ts";
import { listen } from "./discord/face.ts";
import { find } from "./discord/find.ts";
import { isStillIn, mayManage } from "./discord/members.ts";
import { type Post, post } from "./discord/post.ts";
import { commandsJson, registerChanged } from "./discord/register.ts";
import { ANNOUNCE_AFTER } from "./discord/respond.ts";
import { newId } from "./ids.ts";
import type { Log } from "./log.ts";
import type { Deliver } from "./reminders/deliver.ts";
import { isPostgres } from "./store/address.ts";
import { holdAlone } from "./store/alone.ts";
import { backUpDaily, isDamage, newestBackup } from "./store/backup.ts";
import type { Opened } from "./store/db.ts";
import { openDatabase } from "./store/open.ts";
import { type Store, storeOn } from "./store/store.ts";
import { writeTrouble } from "./store/trouble.ts";
import { authorOf, forgetWelcome, welcomeBegun, welcomed, welcomeOf } from "./usecases/group-life.ts";
import { COMMAND_WORDS, PARENT_WORDS } from "./words/en/commands.ts";
import { english } from "./words/en/english.ts";
import { faceWords } from "./words/en/face.ts";
import { startWords } from "./words/en/start.ts";

export type ServerParts = {
  /** A file of SQLite's, or the address of a PostgreSQL server. */
  readonly database: string;
  readonly connection: Connection;
  readonly clock: Clock;
  readonly log: Log;
  readonly supplied: Supplied;
  /** Milliseconds before each further try to post, when not the usual ones. */
  readonly waits?: readonly number[];
  /** Milliseconds after which work that is not done is announced, when not the usual ones. */
  readonly announceAfter?: number;
  /** Told, in a sentence for the operator, when the bot must end. */
  readonly fatal: (sentence: string) => void;
};
export type OpenServer = {
  readonly is: "open";
  readonly bot: Bot;
  readonly store: Store;
  readonly client: Connected["client"];
  /** Over when the commands are registered, or could not be. */
  readonly registering: Promise<void>;
  /** Makes the day's backup where it is not made yet; answers what was made. Tried again an hour after it failed. */
  readonly backUp: (now: Instant) => Promise<string | null>;
  /** Said once at the start, for whoever runs it. */
  readonly notes: readonly string[];
  /** Takes nothing more, finishes what is under way within the limit, and lets go of everything. @param also what the caller has under way */
  readonly close: (also?: Promise<unknown>) => Promise<void>;
};

/** What is under way when the bot is told to stop has this long. */
const LAST_MILLISECONDS = 4000;

/** Opens everything. @throws StoreRefusal when the database cannot be used */
export async function openServer(parts: ServerParts): Promise<OpenServer | { readonly is: "refused"; readonly sentence: string }> {
  const opened = await openAlone(parts.database);
  const store = storeOn(opened);
  try {
    await store.change((q) => q.room.claimFace("discord"));
    const connected = await connect(parts.connection, parts.waits);
    if (connected.is === "refused") {
      await opened.close();
      return { is: "refused", sentence: connected.why === "token" ? startWords.badToken() : startWords.unreachable(String(connected.error)) };
    }
    const { client, readsChannels } = connected;
    try {
      return await serve(parts, { client, readsChannels, store, opened });
    } catch (error) {
      await client.destroy();
      throw error;
    }
  } catch (error) {
    await opened.close();
    throw error;
  }
}

/** A file is one bot's: two would each take what the other has under way for what a dead one left. */
async function openAlone(database: string): Promise<Opened> {
  if (isPostgres(database) || database === ":memory:") return openDatabase(database);
  const letGo = holdAlone(database);
  try {
    const opened = await openDatabase(database);
    const close = async (): Promise<void> => opened.close().finally(letGo);
    return { ...opened, close };
  } catch (error) {
    letGo();
    throw error;
  }
}

type Line = {
  readonly client: Connected["client"];
  readonly readsChannels: boolean;
  readonly store: Store;
  readonly opened: Opened;
};

/** From being signed in to being told to stop. */
async function serve(
  { clock, log, supplied, connection, waits = WAITS, announceAfter = ANNOUNCE_AFTER, fatal }: ServerParts,
  { client, readsChannels, store, opened }: Line,
): Promise<OpenServer> {
  const noToken = (): void => fatal(startWords.badToken());
  const bot = botOf({
    ...supplied,
    store,
    clock,
    newId,
    log,
    deliver: deliverBy({ client, moreActions: faceWords.moreActions, waits, fatal: noToken }),
    hearsChannels: () => readsChannels,
    mayManage: (from: From, group: GroupId) => mayManage(client, from.member, group),
  });
  // Listens before anything is waited for: what is said from now on is heard.
  const face = listen({
    client,
    log,
    conversation: bot.conversation,
    words: faceWords,
    announceAfter,
    waits,
    authorOf: (message) => authorOf(store, message),
    welcome: {
      known: (guild) => welcomeOf(store, guild),
      begun: (guild, trace) => welcomeBegun(store, guild, trace),
      done: (guild) => welcomed(store, guild),
      forget: (guild) => forgetWelcome(store, guild),
      say: (guild) => supplied.saySetUp(guild, readsChannels, english(SET_UP_PLACE, localDateAt(clock.now(), UTC))),
    },
    fatal: noToken,
    ended: (code) => fatal(code === CLOSED.token ? startWords.badToken() : code === CLOSED.intents ? startWords.privilegeGone() : startWords.lineEnded(code)),
  });
  // What a process that died had claimed is taken up again at once where no other process can be at it; else when its lease is over.
  if (opened.kind === "sqlite") await store.change((q) => q.notices.release());
  await store.change((q) => q.bikes.rulesChanged(RULES_VERSION, clock.now()));
  // A platform that lets the registration wait does not hold up the reminders.
  const registering = register(client, supplied, { store, waits, log, noToken });
  return {
    is: "open",
    bot,
    store,
    client,
    registering,
    backUp: backingUp(opened, log),
    notes: connection.readChannels && !readsChannels ? [startWords.noPrivilege()] : [],
    async close(also) {
      await Promise.race([Promise.all([face.stop(), registering, also]), new Promise((resolve) => setTimeout(resolve, LAST_MILLISECONDS).unref())]);
      await client.destroy();
      await opened.close();
    },
  };
}

const AN_HOUR = "PT1H";

function backingUp({ name, copyTo }: Opened, log: Log): OpenServer["backUp"] {
  let notBefore: Instant | null = null;
  return async (now) => {
    if (copyTo === null || name === ":memory:" || (notBefore !== null && now < notBefore)) return null;
    try {
      const { made, ahead } = await backUpDaily(copyTo, name, now);
      if (made !== null && ahead.length > 0) log.error({ ahead }, "backups are dated after now, by a clock that was wrong; they are left alone");
      return made;
    } catch (error) {
      notBefore = addDuration(now, AN_HOUR);
      if (isDamage(error)) log.error({ err: error }, startWords.damagedInUse(name, await newestBackup(name)));
      else log.error({ err: error, trouble: writeTrouble(error) }, "the backup could not be made; it is tried again in an hour");
      return null;
    }
  };
}

const SET_UP_PLACE = { locale: "en-GB", distance: null } as const;

type Registering = { readonly store: Store; readonly waits: readonly number[]; readonly log: Log; readonly noToken: () => void };

/** Commands that could not be registered are those of the last start; the bot answers all the same. */
async function register(client: Connected["client"], supplied: Supplied, { store, waits, log, noToken }: Registering): Promise<void> {
  const memory = {
    last: () => store.read((q) => q.room.meta("commands")),
    keep: (mark: string) => store.change((q) => q.room.setMeta("commands", mark)),
  };
  try {
    await again(() => registerChanged(client.rest, client.application.id, commandsOf(supplied), memory), waits);
  } catch (error) {
    if (isUnauthorised(error)) noToken();
    log.error({ err: error }, "the commands could not be registered; the next start tries again");
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

/** Reminders by way of the platform. A group that named no channel has none: its own id may be that of an old channel, which nobody chose. */
const deliverBy = (how: Post): Deliver => ({
  async send(delivery, once, { member, where }, reply, begin) {
    if (where.channel !== "dm" && where.id === where.group) return { is: "failed", why: "channel gone" };
    // Nothing is said in a group about a member who is no longer in it.
    const still = where.channel === "dm" || where.group === null || member === null ? "there" : await isStillIn(how.client, where.group, member, how.waits);
    if (still !== "there") return still === "left" ? { is: "failed", why: "member left" } : { is: "later", why: "the platform was not there" };
    if (where.channel === "dm" && member === null) throw new Error("a direct message to nobody");
    const to = where.channel === "dm" && member !== null ? { member } : { channel: where.id, mention: member, answers: null };
    return post(how, to, reply, `delivery/${once}`, { ...begin, mark: delivery });
  },
  find: (delivery, trace) => find(how, delivery, trace),
});
