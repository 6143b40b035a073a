// What happened on the platform, as the conversation takes it.

import {
  type AutocompleteInteraction,
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  type Interaction,
  type Message,
  type MessageContextMenuCommandInteraction,
  type ModalSubmitInteraction,
  type PartialMessage,
  PermissionFlagsBits,
  type StringSelectMenuInteraction,
} from "discord.js";
import type { From, Inbound, Where } from "../chat/inbound.ts";
import type { EventId, GroupId, MemberId } from "../core/ids.ts";
import { actionOfPart, MENU } from "./draw.ts";
import { idsIn } from "./find.ts";

const dm = (channel: string): Where => ({ group: null, channel: "dm", id: channel });
/** Which of a group's channels is the reading channel is the group's own setting, known by its id. */
const inGroup = (group: string, channel: string): Where => ({ group: group as GroupId, channel: "other", id: channel });
const whereOf = (at: { readonly guildId: string | null; readonly channelId: string | null }): Where =>
  at.guildId === null ? dm(at.channelId ?? "dm") : inGroup(at.guildId, at.channelId ?? "");

/** Who did what, where, in an interaction. */
export function fromInteraction(i: Interaction): From {
  return {
    member: i.user.id as MemberId,
    name: i.inCachedGuild() ? i.member.displayName : i.user.displayName,
    where: whereOf(i),
    event: i.id as EventId,
    admin: i.memberPermissions?.has(PermissionFlagsBits.ManageGuild) ?? false,
    language: i.locale,
  };
}

export function heardRun(i: ChatInputCommandInteraction): Extract<Inbound, { kind: "run" }> {
  const sub = i.options.getSubcommand(false);
  const given = sub === null ? i.options.data : (i.options.data[0]?.options ?? []);
  return {
    ...fromInteraction(i),
    kind: "run",
    command: i.commandName,
    sub,
    // Files are fetched later: attached.ts.
    options: Object.fromEntries(given.filter(({ attachment }) => attachment == null).map(({ name, value }) => [name, String(value ?? "")])),
  };
}

export function heardTyping(i: AutocompleteInteraction): Inbound {
  const focused = i.options.getFocused(true);
  return {
    ...fromInteraction(i),
    kind: "complete",
    command: i.commandName,
    sub: i.options.getSubcommand(false),
    option: focused.name,
    typed: String(focused.value),
  };
}

export function heardMenu(i: MessageContextMenuCommandInteraction): Inbound {
  const { targetMessage: message } = i;
  return {
    ...fromInteraction(i),
    kind: "menu",
    message: message.id,
    text: message.content,
    author: message.author.id as MemberId,
    edited: message.editedTimestamp !== null,
  };
}

/** A button, a pick from a list, or a button picked from a list of buttons. */
export function heardComponent(i: ButtonInteraction | StringSelectMenuInteraction): Extract<Inbound, { kind: "press" | "pick" }> {
  const from = fromInteraction(i);
  if (!i.isStringSelectMenu()) return { ...from, kind: "press", action: i.customId };
  const [only = ""] = i.values;
  if (i.customId.startsWith(`${MENU}.`)) return { ...from, kind: "press", action: only };
  return { ...from, kind: "pick", action: actionOfPart(i.customId), values: i.values };
}

export function heardForm(i: ModalSubmitInteraction): Inbound {
  const fields = Object.fromEntries(
    i.fields.fields.map((field): [string, string] => [
      field.customId,
      "values" in field ? (field.values[0] ?? "") : "value" in field ? String(field.value) : "",
    ]),
  );
  return { ...fromInteraction(i), kind: "fill", action: i.customId, fields };
}

/** A message as said to the bot; null when it is none of a member's. @param me the bot's own id */
export function heardMessage(m: Message, me: string): Extract<Inbound, { kind: "say" }> | null {
  if (m.author.bot || m.webhookId !== null || m.system) return null;
  const named = m.guildId === null || m.mentions.users.has(me);
  const text = m.content.replace(new RegExp(`<@!?${me}>`, "gu"), " ").trim();
  // Without the privilege to read, a message that does not name the bot comes empty, a reply to the bot without its ping too.
  if (text === "" && !named) return null;
  const answers = m.reference?.messageId === undefined ? null : { message: m.reference.messageId, actions: [] };
  return {
    ...fromMessage(m, m.id),
    kind: "say",
    message: m.id,
    text,
    addressed: named || repliesTo(m, me),
    answers,
    files: m.attachments.map(({ name }) => name),
  };
}

export const repliesTo = (m: Message, me: string): boolean => m.mentions.repliedUser?.id === me;

type Spoken = Extract<Inbound, { kind: "say" | "edit" }>;
/** The same, with what can be pressed in the message of the bot's that it replies to, so that an answer reaches its question. */
export async function withAnswered(m: Message, heard: Spoken, answers: NonNullable<Spoken["answers"]>): Promise<Spoken> {
  const asked = await m.channel.messages.fetch({ message: answers.message, cache: false }).catch(() => null);
  return asked === null ? heard : { ...heard, answers: { message: asked.reference?.messageId ?? asked.id, actions: idsIn(asked) } };
}

/** An edit by a member; null for what the platform itself changes about a message. */
export function heardEdit(m: Message | PartialMessage, me: string): Extract<Inbound, { kind: "edit" }> | null {
  if (m.partial || m.author.bot || m.editedTimestamp === null) return null;
  const said = heardMessage(m, me);
  return said === null ? null : { ...said, kind: "edit", event: `${m.id}/edit/${m.editedTimestamp}` as EventId };
}

/** A message that is gone; its author is whoever logged from it. */
export const heardDelete = (m: Message | PartialMessage, author: MemberId): Inbound => ({
  member: author,
  name: null,
  where: whereOf(m),
  event: `${m.id}/delete` as EventId,
  admin: false,
  language: null,
  kind: "delete",
  message: m.id,
});

/** A thread belongs to the channel that it was begun in. */
const threadsHome = (m: Message): string | null => (m.channel.isThread() ? m.channel.parentId : null);

function fromMessage(m: Message, event: string): From {
  return {
    member: m.author.id as MemberId,
    name: m.member?.displayName ?? m.author.displayName,
    where: whereOf({ guildId: m.guildId, channelId: threadsHome(m) ?? m.channelId }),
    event: event as EventId,
    admin: m.member?.permissions.has(PermissionFlagsBits.ManageGuild) ?? false,
    language: null,
  };
}
