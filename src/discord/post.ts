// Putting messages into channels: each once, however often it is tried, and only the member addressed is pinged.

import { createHash } from "node:crypto";
import { type Client, type Message, type MessageCreateOptions, MessageFlags, type SendableChannels } from "discord.js";
import type { Said } from "../chat/reply.ts";
import type { Begin } from "../reminders/deliver.ts";
import { again, CODES, codeOf, isPassing, isRefused, isUnauthorised } from "./again.ts";
import { pagesOf } from "./draw.ts";

/** Where a message goes: to a member alone, or to a channel with the member named or answered. */
export type To = { readonly member: string } | { readonly channel: string; readonly mention: string | null; readonly answers: Message | null };

export type Posted =
  | { readonly is: "sent"; readonly message: string }
  | { readonly is: "failed"; readonly why: "direct messages closed" | "channel gone" | "member left" | "not allowed" | "refused" }
  /** The platform was not there: it may be tried again later. */
  | { readonly is: "later"; readonly why: string };
/** Called off before anything was put there. */
export type Taken = { readonly is: "taken" };

/** What goes with a message that must not be lost, nor sent twice, even if this process dies. */
export type Careful = Begin & {
  /** Named by the buttons of its messages, so that they can be found again. */
  readonly mark: string;
};

/** What posting needs besides the message. */
export type Post = {
  readonly client: Client;
  readonly moreActions: string;
  /** Milliseconds before each further try. */
  readonly waits: readonly number[];
  /** The token is no longer good. */
  readonly fatal: (error: unknown) => void;
};

/** Sends a reply, page by page. Whatever the platform does is an outcome; what is thrown is our own fault. @param once names it: the same name is not sent twice while the platform remembers */
export async function post(how: Post, to: To, said: Said, once: string): Promise<Posted>;
export async function post(how: Post, to: To, said: Said, once: string, careful: Careful): Promise<Posted | Taken>;
export async function post(how: Post, to: To, said: Said, once: string, careful: Careful | null = null): Promise<Posted | Taken> {
  const { client, moreActions, waits } = how;
  try {
    const channel = await again(() => channelOf(client, to), waits);
    if (channel === null) return { is: "failed", why: "channel gone" };
    const mention = "channel" in to ? to.mention : null;
    const pages = pagesOf(said, moreActions, { before: mention === null ? null : `<@${mention}>`, mark: careful?.mark ?? null });
    if (careful !== null && !(await careful.begun({ channel: channel.id, after: channel.lastMessageId ?? null }, pages.length))) return { is: "taken" };
    let sent: string | null = null;
    for (const [n, page] of pages.entries()) {
      if (careful?.parts.includes(n) === true) continue;
      const message: MessageCreateOptions = {
        ...page,
        nonce: nonceOf(`${once}/${n}`),
        enforceNonce: true,
        flags: MessageFlags.SuppressEmbeds,
        allowedMentions: mention === null ? { parse: [], repliedUser: false } : { parse: [], users: [mention] },
      };
      const answers = "channel" in to && n === 0 ? to.answers : null;
      sent = (await again(() => sendTo(channel, message, answers), waits)).id;
    }
    if (sent === null) throw new Error("every part was said to be there, and the whole was not");
    return { is: "sent", message: sent };
  } catch (error) {
    if (isUnauthorised(error)) how.fatal(error);
    return outcomeOf(error);
  }
}

/** Beside the message that it answers; where that may not be pointed at, by itself. */
async function sendTo(channel: SendableChannels, message: MessageCreateOptions, answers: Message | null): Promise<Message> {
  if (answers === null) return channel.send(message);
  try {
    return await channel.send({ ...message, reply: { messageReference: answers.id, failIfNotExists: false } });
  } catch (error) {
    if (codeOf(error) === CODES.replyNeedsHistory) return channel.send(message);
    throw error;
  }
}

function outcomeOf(error: unknown): Posted {
  const code = codeOf(error);
  if (code === CODES.cannotMessageUser) return { is: "failed", why: "direct messages closed" };
  if (code === CODES.noMutualServer) return { is: "failed", why: "member left" };
  if (code === CODES.unknownChannel) return { is: "failed", why: "channel gone" };
  if (code === CODES.missingAccess || code === CODES.missingPermissions) return { is: "failed", why: "not allowed" };
  const passes = isPassing(error) || isUnauthorised(error) || code === CODES.directMessagesTooFast;
  if (passes) return { is: "later", why: error instanceof Error ? error.message : String(error) };
  if (isRefused(error)) return { is: "failed", why: "refused" };
  throw error;
}

async function channelOf(client: Client, to: To): Promise<SendableChannels | null> {
  if ("member" in to) return client.users.createDM(to.member);
  // A channel of a group that another process serves is written to as well.
  const channel = await client.channels.fetch(to.channel, { allowUnknownGuild: true });
  return channel?.isSendable() === true ? channel : null;
}

/** At most 25 characters, the same for the same name. */
const nonceOf = (once: string): string => createHash("sha256").update(once).digest("base64url").slice(0, 22);
