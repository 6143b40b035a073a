// Reminders in English: one message for all that has come up, a line an item.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";

export const reminderWords = (p: Printer) => ({
  title: (nicknames: readonly string[]): string => `For ${p.list(nicknames)}`,
  more: (n: number): string => `And ${n} more: /due lists them all.`,
  askOdometer: (nickname: string): string => `What does the odometer of ${nickname} say now? Just write it.`,
  putOff: (nickname: string, items: readonly string[], until: LocalDate): string =>
    `${nickname}: ${p.list(items)} put off until ${p.date(until)}. What is due stays due; I say no more until then.`,
  putOffFor: { "the weekend": "until the weekend", "a week": "for a week", "two weeks": "for two weeks", "a month": "for a month" },
  doneTitle: (nickname: string): string => fitting(`Done on ${nickname}`, "Done"),
  doneAll: "All of it",
  putOffTitle: (nickname: string): string => fitting(`Put off on ${nickname}`, "Put off"),
  dueTitle: (nickname: string): string => fitting(`What is due on ${nickname}`, "What is due"),
  doneOn: "When, if not today",
  doneAt: "Odometer then",
  doneWhat: "What was done",
});

/** A title of a form or a button holds 45 characters. */
const fitting = (long: string, short: string): string => ([...long].length > 45 ? short : long);
