// What answers a plain message, an edit, a delete and the message menu.

import { parseAction } from "../src/chat/action-names.ts";
import { kindOfFile } from "../src/chat/files.ts";
import type { Inbound } from "../src/chat/inbound.ts";
import type { MessageAnswer, Said } from "../src/chat/reply.ts";
import type { Ctx } from "../src/usecases/context.ts";
import { questionAbout } from "../src/usecases/drafts.ts";
import { given } from "../src/usecases/given.ts";
import type { MessageOutcome } from "../src/usecases/message-outcome.ts";
import { hear } from "../src/usecases/messages.ts";
import { loggedFrom } from "../src/usecases/readings.ts";
import { deleted, edited } from "../src/usecases/undo.ts";
import type { Words } from "../src/words/en/english.ts";
import { answerInChannel, answerInFull } from "./replies/message.ts";
import { press, said } from "./replies/said.ts";

type Saying = Extract<Inbound, { kind: "say" | "edit" }>;

/** In a group's channel nothing is read unless it is the reading channel, the group lets it be read, or the bot is named. */
function isRead(ctx: Ctx, input: Saying): boolean {
  if (input.addressed || input.where.channel === "dm") return true;
  const { home } = ctx.who;
  if (home?.reads === false) return false;
  return home?.readingChannel == null ? input.where.channel === "reading" : input.where.id === home.readingChannel;
}
const isAlone = (input: Saying): boolean => input.where.channel === "dm";

async function say(ctx: Ctx, words: Words, input: Saying): Promise<MessageAnswer | null> {
  if (!isRead(ctx, input)) return null;
  const answers =
    input.answers === null ? null : { message: input.answers.message, subjects: input.answers.actions.flatMap((id) => parseAction(id)?.subject ?? []) };
  const [file] = input.files ?? [];
  const heard = {
    message: input.message,
    text: input.text,
    addressed: input.addressed || isAlone(input),
    answers,
    ...given({ file: file === undefined ? undefined : kindOfFile(file) }),
  };
  const outcome = input.kind === "edit" ? await edited(ctx, heard) : await hear(ctx, heard);
  // The platform tells of the same edit again when it shows a message otherwise: pinned, or with a picture of a link.
  if (input.kind === "edit" && outcome.is === "seen before") return null;
  return isAlone(input) ? answerInFull(outcome, words) : answerInChannel(outcome, words);
}

/** "Log this message": what it came to, or what already stands as logged from it. */
async function menu(ctx: Ctx, words: Words, input: Extract<Inbound, { kind: "menu" }>): Promise<MessageAnswer | null> {
  if (input.author !== ctx.who.member) return answerInFull({ is: "not yours" }, words);
  const heard = { message: input.message, text: input.text, addressed: true, answers: null };
  const stands = await loggedFrom(ctx, { source: input.message });
  if (stands.is === "done") return answerInFull(!input.edited || isAsWritten(stands.value, input.text) ? stands.value : await edited(ctx, heard), words);
  const asked = await questionAbout(ctx, heard);
  return answerInFull(asked ?? (await hear(ctx, { ...heard, again: true })), words);
}

/** Is what was logged still what the message says? It may have been changed where it was not heard. */
const isAsWritten = (outcome: MessageOutcome, text: string): boolean =>
  outcome.is !== "logged" || outcome.readings.every((reading) => text.includes(reading.typed));

async function gone(ctx: Ctx, words: Words, input: Extract<Inbound, { kind: "delete" }>): Promise<(Said & { readonly data: unknown }) | null> {
  const stood = await deleted(ctx, { message: input.message });
  const [bike] = stood?.bikes ?? [];
  if (stood === null || bike === undefined) return null;
  const what = [
    ...stood.readings.map(words.readings.reading),
    ...stood.work.flatMap((work) => (work.items.length === 0 ? [work.words] : work.items.map((item) => item.called))),
    ...stood.defects.map(({ words: said }) => `“${said}”`),
  ];
  return {
    ...said([words.readings.deleted(bike.nickname, what)], {
      actions: [press("withdraw", input.message, words.readings.labels.withdraw), press("keep", input.message, words.readings.labels.keep)],
    }),
    data: stood,
  };
}

export const messagesOf = { say, menu, deleted: gone };
