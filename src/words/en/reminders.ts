// Reminders in English: one message for all that has come up, a line an item.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";

export const reminderWords = (p: Printer) => ({
  /** @param rider named where others read it too */
  title: (nicknames: readonly string[], rider: string | null): string => (rider === null ? `For ${p.list(nicknames)}` : `For ${rider}'s ${p.list(nicknames)}`),
  more: (n: number): string => `And ${n} more: /due lists them all.`,
  askOdometer: (nickname: string): string => `What does the odometer of ${nickname} say now? Just write it.`,
  putOff: (nickname: string, items: readonly string[], until: LocalDate): string =>
    `${nickname}: ${p.list(items)} put off until ${p.date(until)}. What is due stays due; I say no more until then.`,
  putOffFor: { "the weekend": "until the weekend", "a week": "for a week", "two weeks": "for two weeks", "a month": "for a month" },
  waiting: (): string => "I have a reminder for you, but your direct messages are closed to me.",
  show: (): string => "Show it",
  doneTitle,
  /** The form behind Done: what of it (where several things were told), when, at what figure. */
  doneForm: (nickname: string, items: readonly { readonly item: string; readonly name: string }[]) => ({
    title: doneTitle(nickname),
    fields: [
      ...(items.length < 2
        ? []
        : [
            {
              ...{ name: "what", label: "What was done", kind: "choice" as const, required: true, value: null, hint: null },
              options: [{ value: "all", label: "All of it" }, ...items.slice(0, 24).map(({ item, name }) => ({ value: item, label: name.slice(0, 100) }))],
            },
          ]),
      { name: "on", label: "When, if not today", kind: "line" as const, required: false, value: null, hint: null, options: [] },
      { name: "at", label: "Odometer then", kind: "line" as const, required: false, value: null, hint: null, options: [] },
    ],
  }),
  putOffTitle: (nickname: string): string => fitting(`Put off on ${nickname}`, "Put off"),
  dueTitle: (nickname: string): string => fitting(`What is due on ${nickname}`, "What is due"),
});

const doneTitle = (nickname: string): string => fitting(`Done on ${nickname}`, "Done");

/** A title of a form or a button holds 45 characters. */
const fitting = (long: string, short: string): string => ([...long].length > 45 ? short : long);
