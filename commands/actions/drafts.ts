// Answers to the bot's own questions.

import { z } from "zod";
import type { Form } from "../../src/chat/reply.ts";
import type { Ctx } from "../../src/usecases/context.ts";
import { answerDraft, draftNewDial, draftQuestion, letGo as letDraftGo, retypeDraft } from "../../src/usecases/drafts.ts";
import type { MessageOutcome } from "../../src/usecases/message-outcome.ts";
import type { Question } from "../../src/usecases/question.ts";
import { loggedFrom } from "../../src/usecases/readings.ts";
import { refused } from "../../src/usecases/refusals.ts";
import type { Words } from "../../src/words/en/english.ts";
import { handler, shapeOf } from "../define.ts";
import { newDialForm, retypeForm, sayOutcome } from "../replies/message.ts";
import { said } from "../replies/said.ts";
import { messageOutcome } from "../shapes.ts";

const data = shapeOf<MessageOutcome>(messageOutcome);

/** Forms about the question of a draft as it stands. */
const opening =
  (form: (question: Question, words: Words) => Form) =>
  async (ctx: Ctx, { subject }: { readonly subject: string }, words: Words) => {
    const outcome = await draftQuestion(ctx, { draft: subject });
    if (outcome.is === "refused") return outcome;
    return outcome.value.is === "asked" ? ({ is: "done", value: form(outcome.value.question, words) } as const) : refused({ why: "gone" });
  };

/** A button's subject is the draft and the choice; a list's is the draft, and the choice is what was picked. */
export const answer = handler<MessageOutcome>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject, rev, values }) => {
    const [draft = "", choice] = subject.split(".");
    return answerDraft(ctx, { draft, rev, choice: choice ?? values[0] ?? "" });
  },
  say: sayOutcome,
});
/** The odometer was replaced: what the old one last showed may be filled in. */
export const newDial = handler<MessageOutcome>({
  kind: "form",
  settles: true,
  open: opening(newDialForm),
  visibility: "private",
  data,
  run: (ctx, { subject, fields }) => draftNewDial(ctx, { draft: subject, last: fields["last"] }),
  say: sayOutcome,
});
export const retype = handler<MessageOutcome>({
  kind: "form",
  settles: true,
  open: opening(retypeForm),
  visibility: "private",
  data,
  run: (ctx, { subject, fields }) => retypeDraft(ctx, { draft: subject, text: fields["text"] ?? "" }),
  say: sayOutcome,
});
export const letGo = handler<{ readonly typed: string }>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf(z.object({ typed: z.string() })),
  run: (ctx, { subject }) => letDraftGo(ctx, { draft: subject }),
  say: ({ typed }, words) => said([words.readings.letGo(typed)]),
});
export const showQuestion = handler<MessageOutcome>({
  kind: "press",
  visibility: "private",
  data,
  run: (ctx, { subject }) => draftQuestion(ctx, { draft: subject }),
  say: sayOutcome,
});
export const showLogged = handler<MessageOutcome>({
  kind: "press",
  visibility: "private",
  data,
  run: (ctx, { subject }) => loggedFrom(ctx, { source: subject }),
  say: sayOutcome,
});
