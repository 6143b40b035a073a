// Answering an interaction: in time, once, to whoever may see it, and by direct message when the platform no longer takes the answer.

import {
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  type MessageContextMenuCommandInteraction,
  MessageFlags,
  type ModalMessageModalSubmitInteraction,
  type ModalSubmitInteraction,
  type StringSelectMenuInteraction,
} from "discord.js";
import type { Answer, Conversation, Inbound } from "../chat/inbound.ts";
import type { Said, Visibility } from "../chat/reply.ts";
import { again, CODES, codeOf, isPassing, QUICK } from "./again.ts";
import { type Page, pagesOf } from "./draw.ts";
import type { Posted } from "./post.ts";

/** The sentences of the face itself, from words/. */
export type FaceWords = typeof import("../words/en/face.ts").faceWords;
type Answerable = ChatInputCommandInteraction | MessageContextMenuCommandInteraction | ButtonInteraction | StringSelectMenuInteraction | ModalSubmitInteraction;

/** The platform waits three seconds for a first answer; work that is slower is announced after this long. */
export const ANNOUNCE_AFTER = 1500;
/** What another process heard too is answered by that one: it has this long, in milliseconds, before this one speaks. */
const ELSEWHERE = 1000;

export type Respond = {
  readonly conversation: Pick<Conversation, "hear" | "visibilityOf" | "settles" | "lasts">;
  readonly words: FaceWords;
  /** Milliseconds after which work that is not done is announced. */
  readonly announceAfter: number;
  /** The whole of what was sent, where some of it is still to be fetched. */
  readonly whole?: () => Promise<Inbound>;
  /** The way left when the interaction is no longer answerable. */
  readonly directly: (member: string, said: Said, once: string) => Promise<Posted>;
};

/** Hears an interaction and answers it. */
export async function respond({ conversation, words, announceAfter, directly, whole }: Respond, i: Answerable, inbound: Inbound): Promise<void> {
  const lasts = conversation.lasts(inbound);
  // Alone with the bot, what everybody there may see is a message that stays.
  const alone = i.guildId === null;
  const promised = lasts && alone ? "shared" : conversation.visibilityOf(inbound);
  // What is settled by the press takes the place of what was pressed; everything else leaves its buttons where they are.
  const updates = "message" in i && i.message != null && (lasts ? alone : i.message.flags.has(MessageFlags.Ephemeral)) && conversation.settles(inbound);
  let announced: Promise<boolean> | null = null;
  const timer = setTimeout(() => {
    announced = answerable(i, () =>
      updates && canUpdate(i) ? i.deferUpdate() : i.deferReply(promised === "private" ? { flags: MessageFlags.Ephemeral } : {}),
    );
  }, announceAfter);
  let answers: readonly Answer[];
  // On a server it goes to the member directly, and the interaction is answered with where it went. Where it cannot go it is shown as it is, while it lasts.
  let sent = false;
  try {
    answers = await conversation.hear(whole === undefined ? inbound : await whole());
    const [first] = answers;
    if (lasts && !alone && first?.reply != null && first.reply.refused !== true) sent = (await directly(i.user.id, first.reply, i.id)).is === "sent";
  } finally {
    clearTimeout(timer);
  }
  const reply = answers[0]?.reply ?? null;
  const answer: Said = reply ?? { title: null, lines: [words.nothing], caution: null, actions: [], files: [] };
  const said: Said = sent ? plain(words.sentDirectly) : answer;
  const visibility = lasts && alone && reply?.refused !== true ? "shared" : (reply?.visibility ?? "private");
  const [page, ...further] = pagesOf(said, words.moreActions) as [Page, ...Page[]];
  if (reply?.repeated === true) return announced === null ? heardElsewhere(i, page) : undefined;
  const open = announced === null || (await announced);
  const shown = open && (await first(i, page, { updates, refused: reply?.refused === true, visibility, promised, announced: announced !== null }));
  if (!shown || !(await follow(i, further, visibility))) await directly(i.user.id, said, i.id);
}

const plain = (line: string): Said => ({ title: null, lines: [line], caution: null, actions: [], files: [] });

/** What another process did is answered by that one, in an announcement of ours too; if it does not, because it has ended, this one says that it is done. */
async function heardElsewhere(i: Answerable, page: Page): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, ELSEWHERE));
  await answerable(i, () => i.reply({ ...page, flags: flagsOf("private") }));
}

type First = {
  readonly updates: boolean;
  readonly refused: boolean;
  readonly visibility: Visibility;
  readonly promised: Visibility;
  readonly announced: boolean;
};

/** The first page. False: the platform no longer takes it. */
async function first(i: Answerable, page: Page, { updates, refused, visibility, promised, announced }: First): Promise<boolean> {
  const replaces = updates && !refused;
  if (!announced) {
    const taken = await answerable(i, () => (replaces && canUpdate(i) ? i.update(page) : i.reply({ ...page, flags: flagsOf(visibility) })));
    // Acknowledged already: by a try of ours whose acknowledgement was lost, or by another process that only announced it. Either way these are the words.
    if (taken && i.deferred && (replaces || visibility === promised)) await answerable(i, () => i.editReply(page));
    return taken;
  }
  if (replaces || (!updates && visibility === promised)) return answerable(i, () => i.editReply(page));
  // Announced to all and come to something private: the announcement goes, and the answer is the member's alone.
  if (!updates) await answerable(i, () => i.deleteReply());
  return follow(i, [page], visibility);
}

type Updatable = ButtonInteraction | StringSelectMenuInteraction | ModalMessageModalSubmitInteraction;
/** Pressed in a message, or filled into a form that was opened from one. */
const canUpdate = (i: Answerable): i is Updatable => i.isMessageComponent() || (i.isModalSubmit() && i.isFromMessage());

/** Further messages, each tried once: the platform cannot tell a second try from a second message. False: one of them may not be there. */
async function follow(i: Answerable, pages: readonly Page[], visibility: Visibility): Promise<boolean> {
  for (const page of pages) if (!(await answerable(i, () => i.followUp({ ...page, flags: flagsOf(visibility) }), []))) return false;
  return true;
}

type Acknowledged = { deferred: boolean | null; replied: boolean | null };

/**
 * Tries at once again while the platform stumbles. False: it does not take it, or is not there.
 * What got through before its acknowledgement was lost counts, and the library is told, so that it lets the answer be edited and followed.
 */
export async function answerable(i: Acknowledged, work: () => Promise<unknown>, waits: readonly number[] = QUICK): Promise<boolean> {
  try {
    await again(work, waits);
    return true;
  } catch (error) {
    const code = codeOf(error);
    if (code === CODES.alreadyAcknowledged) {
      i.deferred = true;
      return true;
    }
    if (code !== null && OVER.has(code)) return false;
    if (isPassing(error)) return false;
    throw error;
  }
}

/** Too late, or taken away meanwhile. */
const OVER: ReadonlySet<number> = new Set([CODES.unknownInteraction, CODES.invalidToken, CODES.unknownWebhook, CODES.unknownMessage]);

const flagsOf = (visibility: Visibility) =>
  visibility === "private" ? ([MessageFlags.Ephemeral, MessageFlags.SuppressEmbeds] as const) : ([MessageFlags.SuppressEmbeds] as const);
