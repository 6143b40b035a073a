// Looking for a message of our own that may have been put into a channel before the process died.
// The nonce is not kept by the platform; what is kept is the message with its buttons, whose ids name the delivery.

import { type Client, type Message, PermissionFlagsBits, type TextBasedChannel } from "discord.js";
import type { Found, Trace } from "../reminders/deliver.ts";
import { again, CODES, codeOf, isPassing, isRefused, isUnauthorised } from "./again.ts";
import { markOf } from "./draw.ts";
import type { Post } from "./post.ts";

/** Messages in one answer of the platform, and how many of those are looked through: a busy channel's day. */
const PAGE = 100;
const PAGES = 50;

/** Looks for the messages that carry a delivery's mark, from the newest message before it was begun. */
export async function find({ client, waits, fatal }: Pick<Post, "client" | "waits" | "fatal">, delivery: string, trace: Trace): Promise<Found> {
  try {
    const channel = await again(() => client.channels.fetch(trace.channel, { allowUnknownGuild: true }), waits);
    if (channel?.isTextBased() !== true || !("messages" in channel)) return { is: "cannot tell", why: "channel gone" };
    if (!(await mayRead(client, channel, waits))) return { is: "cannot tell", why: "not allowed to read back" };
    const parts: number[] = [];
    let after = trace.after ?? "0";
    for (let n = 0; n < PAGES; n++) {
      const from = after;
      const messages = [...(await again(() => channel.messages.fetch({ limit: PAGE, after: from, cache: false }), waits)).values()];
      for (const message of messages.filter((each) => each.author.id === client.user?.id)) {
        const mark = markOf(idsIn(message), delivery);
        if (mark === "whole") return { is: "there", message: message.id };
        if (mark !== null) parts.push(mark);
      }
      if (messages.length < PAGE) return { is: "not there", parts };
      after = messages.reduce((newest, { id }) => (BigInt(id) > BigInt(newest) ? id : newest), after);
    }
    return { is: "cannot tell", why: "too much was said since" };
  } catch (error) {
    return foundOf(error, fatal);
  }
}

function foundOf(error: unknown, fatal: (error: unknown) => void): Found {
  if (isUnauthorised(error)) fatal(error);
  if (isUnauthorised(error) || isPassing(error)) return { is: "later", why: error instanceof Error ? error.message : String(error) };
  if (codeOf(error) === CODES.unknownChannel) return { is: "cannot tell", why: "channel gone" };
  if (isRefused(error)) return { is: "cannot tell", why: "not allowed to read back" };
  throw error;
}

/** Without the right to read what was said before, the platform answers an empty list instead of a refusal. */
async function mayRead(client: Client, channel: TextBasedChannel, waits: readonly number[]): Promise<boolean> {
  if (channel.isDMBased()) return true;
  const rights = client.user === null || !client.guilds.cache.has(channel.guildId) ? null : channel.permissionsFor(client.user);
  if (rights !== null) return rights.has([PermissionFlagsBits.ViewChannel, PermissionFlagsBits.ReadMessageHistory]);
  // Of a group that another process serves the rights are not known; a channel in which something was said and nothing is read is closed.
  return channel.lastMessageId === null || (await again(() => channel.messages.fetch({ limit: 1, cache: false }), waits)).size > 0;
}

/** The ids of all that can be pressed or picked in a message. */
export const idsIn = (message: Message): readonly string[] =>
  message.components.flatMap((row) =>
    "components" in row
      ? row.components.flatMap((part) => [
          ...("customId" in part && typeof part.customId === "string" ? [part.customId] : []),
          ...("options" in part && Array.isArray(part.options) ? part.options.map((option) => option.value) : []),
        ])
      : [],
  );
