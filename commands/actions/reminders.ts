// The buttons of a reminder: done, put off, and the whole list.

import { z } from "zod";
import { reminderActions } from "../../src/chat/reminder-actions.ts";
import type { BikeId } from "../../src/core/ids.ts";
import { type DueReport, whatIsDueOn } from "../../src/usecases/due.ts";
import { given } from "../../src/usecases/given.ts";
import type { MessageOutcome } from "../../src/usecases/message-outcome.ts";
import { PUT_OFF_UNTIL, type PutOffDone, putOff } from "../../src/usecases/put-off.ts";
import { recordItems } from "../../src/usecases/record-work.ts";
import { refused } from "../../src/usecases/refusals.ts";
import { type ReminderShown, remindedItems, type WhyTold, whatWasTold, whyTold } from "../../src/usecases/reminded.ts";
import { handler, shapeOf } from "../define.ts";
import { sayDue } from "../replies/due.ts";
import { sayOutcome } from "../replies/message.ts";
import { press, said } from "../replies/said.ts";
import { dueReport, localDate, messageOutcome, unit } from "../shapes.ts";

export const showDue = handler<DueReport>({
  kind: "press",
  visibility: "private",
  data: shapeOf<DueReport>(dueReport),
  run: (ctx, { subject }) => whatIsDueOn(ctx, subject as BikeId),
  say: ({ bikes }, words) => sayDue(bikes, words),
});

/** A reminder shown again, whole or of one of its bikes: as they stand now, with its buttons. */
export const showReminder = handler<ReminderShown>({
  kind: "press",
  visibility: "private",
  data: shapeOf<ReminderShown>(
    dueReport.extend({
      delivery: z.string(),
      told: z.array(
        z.object({ bike: z.string(), nickname: z.string(), items: z.array(z.string()), named: z.array(z.object({ item: z.string(), name: z.string() })) }),
      ),
    }),
  ),
  run: (ctx, { subject, values: [bike] }) => whatWasTold(ctx, subject, bike as BikeId | undefined),
  say: ({ bikes, delivery, told }, words) => ({
    ...sayDue(bikes, words),
    actions: told.flatMap(({ bike, nickname, named }) => reminderActions(delivery, bike, words.reminders.labels(nickname, named, PUT_OFF_UNTIL))),
  }),
});

/** A reminder's subject is the delivery and the bike; the items are those it told of. */
export const doneNow = handler<MessageOutcome>({
  kind: "form",
  open: async (ctx, { subject }, words) => {
    const told = await remindedItems(ctx, { subject });
    return told.is === "refused" ? told : { is: "done", value: words.reminders.doneForm(told.value.nickname, told.value.named) };
  },
  visibility: "private",
  data: shapeOf<MessageOutcome>(messageOutcome),
  run: async (ctx, { subject, fields }) => {
    const told = await remindedItems(ctx, { subject });
    if (told.is === "refused") return told;
    const { bike, items } = told.value;
    const what = fields["more"]?.trim() || (fields["what"]?.trim() ?? "");
    const chosen = items.length === 1 || what === "all" ? items : items.filter((item) => item === what);
    if (chosen.length === 0) return refused({ why: "option", option: "what", problem: "not a choice", choices: told.value.named.map(({ name }) => name) });
    return recordItems(ctx, { bike, items: chosen, ...given({ on: fields["on"], at: fields["at"], by: fields["by"]?.trim() || undefined }) });
  },
  say: sayOutcome,
});
/** Why each thing of a reminder was told, and how to be told less. Its member alone is answered. */
export const whyNow = handler<WhyTold>({
  kind: "press",
  visibility: "private",
  data: shapeOf<WhyTold>(
    z.object({
      why: z.array(z.object({ bike: z.string(), nickname: z.string(), kind: z.string(), topic: z.string(), name: z.string().nullable(), again: z.boolean() })),
      sent: localDate,
      digest: z.object({ weekday: z.number().int(), time: z.string() }).nullable(),
    }),
  ),
  run: (ctx, { subject }) => whyTold(ctx, subject),
  say: ({ why, digest }, words) => said(digest === null ? words.reminders.why(why) : words.digest.why(digest)),
});
export const putOffNow = handler<PutOffDone>({
  kind: "pick",
  visibility: "private",
  data: shapeOf<PutOffDone>(
    z.object({ bike: z.string(), nickname: z.string(), items: z.array(z.string()), until: localDate, figure: z.object({ at: z.number(), unit }).nullable() }),
  ),
  run: async (ctx, { subject, values }) => {
    const told = await remindedItems(ctx, { subject });
    if (told.is === "refused") return told;
    const until = PUT_OFF_UNTIL.find((each) => each === values[0]);
    return until === undefined
      ? refused({ why: "option", option: "until", problem: "not a choice", choices: PUT_OFF_UNTIL })
      : putOff(ctx, { ...told.value, until });
  },
  say: (put, words) =>
    said([words.reminders.putOff(put.nickname, put.items, put.until, put.figure)], {
      actions: [press("show-due", put.bike, words.reminders.dueTitle(put.nickname))],
    }),
});
