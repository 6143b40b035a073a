// The bot on the group's server: what happens there goes to the conversation, what it answers goes back.
// Not here: what is answered (commands/), how it is drawn (draw.ts), how it gets through (post.ts, respond.ts).

import { type AutocompleteInteraction, type Client, Events, type Guild, type Interaction, type Message, type PartialMessage } from "discord.js";
import type { Answer, Conversation, Inbound } from "../chat/inbound.ts";
import type { Said } from "../chat/reply.ts";
import type { GroupId, MemberId } from "../core/ids.ts";
import type { Trace } from "../reminders/deliver.ts";
import { again, CODES, codeOf, isUnauthorised, QUICK } from "./again.ts";
import { withFiles } from "./attached.ts";
import { modalOf } from "./draw.ts";
import { find } from "./find.ts";
import {
  fromInteraction,
  heardComponent,
  heardDelete,
  heardEdit,
  heardForm,
  heardMenu,
  heardMessage,
  heardRun,
  heardTyping,
  repliesTo,
  withAnswered,
} from "./hear.ts";
import { type Post, type Posted, post } from "./post.ts";
import { answerable, type FaceWords, respond } from "./respond.ts";

/** The message that leads a new server's admin through set-up, sent once. */
export type Welcome = {
  /** Null when it was sent, or never can be; else where a try at it was begun. */
  readonly known: (guild: GroupId) => Promise<{ readonly begun: Trace | null } | null>;
  readonly begun: (guild: GroupId, trace: Trace) => Promise<void>;
  readonly done: (guild: GroupId) => Promise<void>;
  readonly forget: (guild: GroupId) => Promise<void>;
  readonly say: (guild: GroupId) => Said;
};

export type FaceParts = {
  readonly client: Client<true>;
  readonly conversation: Conversation;
  readonly words: FaceWords;
  /** Milliseconds after which work that is not done is announced. */
  readonly announceAfter: number;
  /** Milliseconds before each further try to post. */
  readonly waits: readonly number[];
  /** Who logged from a message; null when nothing stands as logged from it. */
  readonly authorOf: (message: string) => Promise<MemberId | null>;
  readonly welcome: Welcome;
  readonly log: {
    readonly error: (facts: Readonly<Record<string, unknown>>, what: string) => void;
    readonly info: (facts: Readonly<Record<string, unknown>>, what: string) => void;
  };
  /** The token is no longer good. */
  readonly fatal: (error: unknown) => void;
  /** The platform has ended the line and will not take it up again. */
  readonly ended: (code: number) => void;
};

const REACTIONS = { logged: "✅", asked: "❓" } as const;

/** Listens from now on. Answers how to stop listening and wait for what is under way. */
export function listen(parts: FaceParts): { readonly stop: () => Promise<void> } {
  const { client, log } = parts;
  const underWay = new Set<Promise<void>>();
  let listening = true;
  const take = (what: string, work: () => Promise<void>): void => {
    if (!listening) return;
    const done = work()
      .catch((error: unknown) => (isUnauthorised(error) ? parts.fatal(error) : log.error({ err: error, what }, "an event failed")))
      .finally(() => underWay.delete(done));
    underWay.add(done);
  };
  client.on(Events.InteractionCreate, (i) => take("interaction", () => onInteraction(parts, i)));
  client.on(Events.MessageCreate, (m) => take("message", () => onMessage(parts, m, heardMessage(m, client.user.id))));
  client.on(Events.MessageUpdate, (_old, m) => take("edit", async () => void (m.partial ? null : await onMessage(parts, m, heardEdit(m, client.user.id)))));
  const gone = (m: Message | PartialMessage): void => {
    // What the message itself set going is finished first, so that its log is there to be asked about.
    const before = [...underWay];
    take("delete", async () => {
      await Promise.allSettled(before);
      await onDelete(parts, m);
    });
  };
  client.on(Events.MessageDelete, gone);
  client.on(Events.MessageBulkDelete, (all) => {
    for (const m of all.values()) gone(m);
  });
  for (const event of [Events.GuildCreate, Events.GuildAvailable] as const) client.on(event, (guild) => take("welcome", () => welcome(parts, guild)));
  // Invited again after it was sent away, it begins anew.
  client.on(Events.GuildDelete, (guild) => take("farewell", () => parts.welcome.forget(guild.id as GroupId)));
  client.on(Events.Error, (error) => (isUnauthorised(error) ? parts.fatal(error) : log.error({ err: error }, "the line to the platform failed")));
  client.on(Events.ShardError, (error) => log.error({ err: error }, "the line to the platform failed"));
  client.on(Events.ShardDisconnect, ({ code }) => listening && parts.ended(code));
  take("welcome", async () => {
    for (const guild of client.guilds.cache.values()) await welcome(parts, guild);
  });
  return {
    async stop() {
      listening = false;
      await Promise.allSettled([...underWay]);
    },
  };
}

async function onInteraction(parts: FaceParts, i: Interaction): Promise<void> {
  if (i.isAutocomplete()) return suggest(parts, i);
  const how = {
    conversation: parts.conversation,
    words: parts.words,
    announceAfter: parts.announceAfter,
    directly: (member: string, said: Said, once: string) => directly(parts, member as MemberId, said, once),
  };
  if (i.isChatInputCommand()) {
    const heard = heardRun(i);
    return respond({ ...how, whole: () => withFiles(i, heard) }, i, heard);
  }
  if (i.isMessageContextMenuCommand()) return respond(how, i, heardMenu(i));
  if (i.isModalSubmit()) return respond(how, i, heardForm(i));
  if (!i.isButton() && !i.isStringSelectMenu()) return;
  const heard = heardComponent(i);
  const opened = await parts.conversation.open({ ...fromInteraction(i), action: heard.action });
  if (opened === null) return respond(how, i, heard);
  if ("form" in opened) {
    const modal = modalOf(heard.action, opened.form);
    if (!(await answerable(i, () => i.showModal(modal)))) await directly(parts, i.user.id as MemberId, plain(parts.words.formLate), i.id);
    return;
  }
  return respond({ ...how, conversation: { ...parts.conversation, hear: async () => opened.refused } }, i, heard);
}

/** Suggestions are not worth a second try: the next key asks again. */
async function suggest({ conversation }: FaceParts, i: AutocompleteInteraction): Promise<void> {
  const [answer] = await conversation.hear(heardTyping(i));
  const choices = (answer?.suggestions ?? []).filter((each) => each.length <= 100).slice(0, 25);
  await i.respond(choices.map((each) => ({ name: each, value: each }))).catch((error: unknown) => {
    const code = codeOf(error);
    if (code !== CODES.unknownInteraction && code !== CODES.alreadyAcknowledged) throw error;
  });
}

async function onMessage(parts: FaceParts, message: Message, spoken: Extract<Inbound, { kind: "say" | "edit" }> | null): Promise<void> {
  if (spoken === null) return;
  // Only a reply to the bot waits for what it replies to; everything else keeps its place in the order of what was said.
  const heard = spoken.answers !== null && repliesTo(message, parts.client.user.id) ? await withAnswered(message, spoken, spoken.answers) : spoken;
  for (const answer of await parts.conversation.hear(heard)) await answerMessage(parts, message, answer, heard.event);
}

async function onDelete(parts: FaceParts, m: Message | PartialMessage): Promise<void> {
  const author = await parts.authorOf(m.id);
  if (author === null) return;
  for (const { reply } of await parts.conversation.hear(heardDelete(m, author))) if (reply !== null) await directly(parts, author, reply, `${m.id}/delete`);
}

/** A reaction, and where more is to be said a reply beside the message; what only the member may see goes to them directly. */
async function answerMessage(parts: FaceParts, message: Message, { react, reply, to }: Answer, once: string): Promise<void> {
  const marked = react === null || (await mark(parts, message, REACTIONS[react]));
  const said: Said | null = reply ?? (marked || react === "asked" ? null : plain(parts.words.logged));
  if (said === null) return;
  if (to !== null && message.guildId !== null) {
    const posted = await directly(parts, to, said, once);
    if (posted.is === "failed" && posted.why === "direct messages closed") await beside(parts, message, plain(parts.words.directClosed), once);
    return;
  }
  const posted = await beside(parts, message, said, once);
  // A channel in which the bot may not write: whoever spoke there is answered by themselves.
  if (posted.is === "failed" && message.guildId !== null) await directly(parts, message.author.id as MemberId, said, once);
}

async function beside(parts: FaceParts, message: Message, said: Said, once: string): Promise<Posted> {
  const posted = await post(postOf(parts), { channel: message.channelId, mention: null, answers: message }, said, `answer/${once}`);
  if (posted.is !== "sent") parts.log.error({ why: posted.why, channel: message.channelId }, "an answer did not get through");
  return posted;
}

/** True when the mark is there. Where it is not, whatever the reason, a word takes its place. */
async function mark(parts: FaceParts, message: Message, emoji: string): Promise<boolean> {
  try {
    await again(() => message.react(emoji), QUICK);
    return true;
  } catch (error) {
    if (isUnauthorised(error)) parts.fatal(error);
    return false;
  }
}

/** Writes to a member alone. */
async function directly(parts: FaceParts, member: MemberId, said: Said, once: string): Promise<Posted> {
  const posted = await post(postOf(parts), { member }, said, `direct/${once}`);
  if (posted.is !== "sent") parts.log.error({ why: posted.why }, "a direct message did not get through");
  return posted;
}

const plain = (line: string): Said => ({ title: null, lines: [line], caution: null, actions: [], files: [] });
const postOf = ({ client, words, waits, fatal }: FaceParts): Post => ({ client, moreActions: words.moreActions, waits, fatal });

/** One message to the server's owner, over restarts and crashes; where their direct messages are closed, /group shows the same choices. */
async function welcome(parts: FaceParts, guild: Guild): Promise<void> {
  // During an outage of its own a server is not told of whole: it comes again.
  if (!guild.available) return;
  const group = guild.id as GroupId;
  const known = await parts.welcome.known(group);
  if (known === null) return;
  const how = postOf(parts);
  const found = known.begun === null ? NOT_BEGUN : await find(how, group, known.begun);
  if (found.is === "later") return;
  if (found.is !== "not there") return parts.welcome.done(group);
  const careful = {
    mark: group,
    parts: found.parts,
    begun: async (trace: Trace) => {
      await parts.welcome.begun(group, trace);
      return true;
    },
  };
  const posted = await post(how, { member: guild.ownerId }, parts.welcome.say(group), `welcome/${group}`, careful);
  if (posted.is === "sent" || posted.is === "failed") await parts.welcome.done(group);
  if (posted.is === "sent" || posted.is === "taken") return;
  parts.log.error({ why: posted.why, guild: group }, "the set-up message did not get through");
  const line = guild.systemChannel;
  if (posted.is === "failed" && line !== null)
    await post(how, { channel: line.id, mention: null, answers: null }, plain(parts.words.setUpByCommand), `welcome/${group}/line`);
}

const NOT_BEGUN = { is: "not there", parts: [] } as const;
