// Answering an interaction: in time, once, to whoever may see it, and by direct message when the platform no longer takes the answer.

import {
  type ButtonInteraction,
  type ChatInputCommandInteraction,
  type MessageContextMenuCommandInteraction,
  MessageFlags,
  type ModalSubmitInteraction,
  type StringSelectMenuInteraction,
} from "discord.js";
import type { Answer, Conversation, Inbound } from "../chat/inbound.ts";
import type { Said, Visibility } from "../chat/reply.ts";
import { again, CODES, codeOf } from "./again.ts";
import { type Page, pagesOf } from "./draw.ts";

/** The sentences of the face itself, from words/. */
export type FaceWords = typeof import("../words/en/face.ts").faceWords;
type Answerable = ChatInputCommandInteraction | MessageContextMenuCommandInteraction | ButtonInteraction | StringSelectMenuInteraction | ModalSubmitInteraction;

/** The platform waits three seconds for a first answer; work that is slower is announced after this long. */
const ANNOUNCE_AFTER = 1500;
/** What must be answered within three seconds is tried again quickly. */
const QUICK = [200, 500] as const;

export type Respond = {
  readonly conversation: Pick<Conversation, "hear" | "visibilityOf">;
  readonly words: FaceWords;
  /** The way left when the interaction is no longer answerable. */
  readonly directly: (member: string, said: Said, once: string) => Promise<unknown>;
};

/** Hears an interaction and answers it. */
export async function respond({ conversation, words, directly }: Respond, i: Answerable, inbound: Inbound): Promise<void> {
  const promised = conversation.visibilityOf(inbound);
  const updates = i.isMessageComponent() && i.message.flags.has(MessageFlags.Ephemeral);
  let announced: Promise<boolean> | null = null;
  const timer = setTimeout(() => {
    announced = answerable(() => (updates ? i.deferUpdate() : i.deferReply(promised === "private" ? { flags: MessageFlags.Ephemeral } : {})));
  }, ANNOUNCE_AFTER);
  let answers: readonly Answer[];
  try {
    answers = await conversation.hear(inbound);
  } finally {
    clearTimeout(timer);
  }
  const reply = answers[0]?.reply ?? null;
  const said: Said = reply ?? { title: null, lines: [words.nothing], caution: null, actions: [], files: [] };
  const visibility = reply?.visibility ?? "private";
  const pages = pagesOf(said, words.moreActions);
  const open = announced === null || (await announced);
  const shown = open && (await answerable(() => first(i, pages[0] as Page, { updates, visibility, promised, announced: announced !== null })));
  if (!shown) return void (await directly(i.user.id, said, i.id));
  for (const page of pages.slice(1)) await again(() => i.followUp({ ...page, flags: flagsOf(visibility) }));
}

type First = { readonly updates: boolean; readonly visibility: Visibility; readonly promised: Visibility; readonly announced: boolean };

async function first(i: Answerable, page: Page, { updates, visibility, promised, announced }: First): Promise<unknown> {
  if (!announced) return updates && i.isMessageComponent() ? i.update(page) : i.reply({ ...page, flags: flagsOf(visibility) });
  if (visibility === promised || updates) return i.editReply(page);
  // Announced to all and come to something private: the announcement goes, and the answer is the member's alone.
  await i.deleteReply();
  return i.followUp({ ...page, flags: flagsOf(visibility) });
}

/** Tries at once again while the platform stumbles. False: it no longer takes an answer. An answer that got through before its acknowledgement was lost counts. */
async function answerable(work: () => Promise<unknown>): Promise<boolean> {
  try {
    await again(work, QUICK);
    return true;
  } catch (error) {
    if (codeOf(error) === CODES.alreadyAcknowledged) return true;
    if (codeOf(error) === CODES.unknownInteraction || codeOf(error) === CODES.invalidToken) return false;
    throw error;
  }
}

const flagsOf = (visibility: Visibility) =>
  visibility === "private" ? ([MessageFlags.Ephemeral, MessageFlags.SuppressEmbeds] as const) : ([MessageFlags.SuppressEmbeds] as const);
