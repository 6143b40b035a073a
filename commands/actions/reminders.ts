// The buttons of a reminder: done, put off, and the whole list.

import { z } from "zod";
import { asideActions, eachOnce } from "../../src/chat/aside-actions.ts";
import { reminderActions } from "../../src/chat/reminder-actions.ts";
import type { Action, Said } from "../../src/chat/reply.ts";
import { instantOfMillis, millisOf } from "../../src/core/calendar/zones.ts";
import type { BikeId } from "../../src/core/ids.ts";
import { type DueLine, type DueReport, mostUrgentCaution, whatIsDueOn } from "../../src/usecases/due.ts";
import { given } from "../../src/usecases/given.ts";
import type { MessageOutcome } from "../../src/usecases/message-outcome.ts";
import { PUT_OFF_UNTIL, type PutOffDone, putOff, type TakenBack, takePutOffBack } from "../../src/usecases/put-off.ts";
import { recordItems } from "../../src/usecases/record-work.ts";
import { type Result, refused } from "../../src/usecases/refusals.ts";
import { type Reminded, type ReminderShown, remindedItems, type WhyTold, whatWasTold, whyTold } from "../../src/usecases/reminded.ts";
import type { Words } from "../../src/words/en/english.ts";
import { ANOTHER } from "../../src/words/en/reminders.ts";
import { handler, shapeOf } from "../define.ts";
import { sayDue } from "../replies/due.ts";
import { sayOutcome } from "../replies/message.ts";
import { formButton, press, said } from "../replies/said.ts";
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
        z.object({
          bike: z.string(),
          nickname: z.string(),
          items: z.array(z.string()),
          doneSince: z.array(z.string()),
          asides: z.array(z.object({ want: z.string() })),
          named: z.array(z.object({ item: z.string(), name: z.string() })),
        }),
      ),
    }),
  ),
  run: (ctx, { subject, values: [bike] }) => whatWasTold(ctx, subject, bike as BikeId | undefined),
  say: ({ bikes, delivery, told }, words) => {
    const lines: string[] = [];
    const actions: Action[] = [];
    const dues: DueLine[] = [];
    for (const { bike: id, nickname, items, named, asides } of told) {
      const bike = bikes.find((each) => each.bike === id);
      // What is good again, by a reading or an undoing, is no more to tell.
      const open = bike?.dues.filter(({ item, status }) => items.includes(item) && status !== "good" && status !== "no record") ?? [];
      if (bike === undefined || open.length + asides.length === 0) continue;
      lines.push(words.due.bike(nickname, bike), ...words.told.lines(bike, open, asides));
      dues.push(...open);
      if (open.length > 0) actions.push(...reminderActions(delivery, id, words.reminders.labels(nickname, named, PUT_OFF_UNTIL)));
      for (const aside of asides) actions.push(...asideActions(id, aside, words.told.labels(nickname, aside.want === "defect" ? aside.words : "")));
    }
    if (lines.length === 0) lines.push(words.reminders.nothingLeft());
    return said(lines, { caution: words.caution(mostUrgentCaution(dues)), actions: eachOnce(actions) });
  },
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
    const items = chosenOf(told.value, fields["more"]?.trim() || (fields["what"]?.trim() ?? ""));
    if (items.is === "refused") return items;
    return recordItems(ctx, {
      bike: told.value.bike,
      items: items.value,
      ...given({ on: fields["on"], at: fields["at"], by: fields["by"]?.trim() || undefined }),
    });
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
const putOffDone = z.object({
  ...{ bike: z.string(), nickname: z.string(), items: z.array(z.string()), until: localDate },
  figure: z.object({ at: z.number(), unit }).nullable(),
  at: z.string(),
});
/** The list's last choice asks for a day or a figure by a form. */
type Asked = { readonly asks: string; readonly nickname: string; readonly named: Reminded["named"] };

export const putOffNow = handler<PutOffDone | Asked>({
  kind: "pick",
  visibility: "private",
  data: shapeOf<PutOffDone | Asked>(
    z.union([putOffDone, z.object({ asks: z.string(), nickname: z.string(), named: z.array(z.object({ item: z.string(), name: z.string() })) })]),
  ),
  run: async (ctx, { subject, values }) => {
    const told = await remindedItems(ctx, { subject });
    if (told.is === "refused") return told;
    const { nickname, named } = told.value;
    if (values[0] === ANOTHER) return { is: "done", value: { asks: subject, nickname, named } };
    const until = PUT_OFF_UNTIL.find((each) => each === values[0]);
    return until === undefined
      ? refused({ why: "option", option: "until", problem: "not a choice", choices: PUT_OFF_UNTIL })
      : putOff(ctx, { ...told.value, until });
  },
  say: (put, words) =>
    "asks" in put
      ? said([words.reminders.untilWhen(put.nickname)], {
          actions: [formButton("put-off-until", put.asks, words.reminders.untilButton, words.reminders.putOffForm(put.nickname, put.named))],
        })
      : sayPutOff(put, words),
});

/** Until a day or a figure of one's own; the items are those of the reminder, or one of them. */
export const putOffUntil = handler<PutOffDone>({
  kind: "form",
  open: async (ctx, { subject }, words) => {
    const told = await remindedItems(ctx, { subject });
    return told.is === "refused" ? told : { is: "done", value: words.reminders.putOffForm(told.value.nickname, told.value.named) };
  },
  visibility: "private",
  data: shapeOf<PutOffDone>(putOffDone),
  run: async (ctx, { subject, fields }) => {
    const told = await remindedItems(ctx, { subject });
    if (told.is === "refused") return told;
    const items = chosenOf(told.value, fields["what"]?.trim() ?? "");
    return items.is === "refused" ? items : putOff(ctx, { bike: told.value.bike, items: items.value, until: { typed: fields["until"] ?? "" } });
  },
  say: sayPutOff,
});

function sayPutOff(put: PutOffDone, words: Words): Said {
  return said([words.reminders.putOff(put.nickname, put.items, put.until, put.figure)], {
    actions: [
      press("put-off-back", `${put.bike}.${millisOf(put.at)}`, words.reminders.takeBackLabel),
      press("show-due", put.bike, words.reminders.dueTitle(put.nickname)),
    ],
  });
}

/** The subject is the bike and the moment at which it was put off. */
export const putOffBack = handler<TakenBack>({
  kind: "press",
  visibility: "private",
  data: shapeOf<TakenBack>(z.object({ bike: z.string(), nickname: z.string(), items: z.array(z.string()) })),
  run: (ctx, { subject }) => {
    const [bike = "", at = ""] = subject.split(".");
    return /^\d{1,15}$/u.test(at) ? takePutOffBack(ctx, { bike: bike as BikeId, at: instantOfMillis(Number(at)) }) : Promise.resolve(refused({ why: "gone" }));
  },
  say: ({ bike, nickname, items }, words) =>
    said([words.reminders.takenBack(nickname, items)], { actions: [press("show-due", bike, words.reminders.dueTitle(nickname))] }),
});

/** What was chosen of the things told; all, where it was one thing and so nothing was asked. What was done elsewhere since the form was opened is no other thing. */
function chosenOf({ items, named, doneSince }: Reminded, what: string): Result<Reminded["items"]> {
  if (doneSince.some((item) => item === what)) return refused({ why: "already done" });
  const chosen = (items.length === 1 && what === "") || what === "all" ? items : items.filter((item) => item === what);
  return chosen.length > 0
    ? { is: "done", value: chosen }
    : refused({ why: "option", option: "what", problem: "not a choice", choices: named.map(({ name }) => name) });
}
