// Reminders in English: one message for all that has come up, a line an item.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";

export const reminderWords = (p: Printer) => ({
  title: (nicknames: readonly string[]): string => `For ${p.list(nicknames)}`,
  more: (n: number): string => `And ${n} more: /due lists them all.`,
  askOdometer: (nickname: string): string => `What does the odometer of ${nickname} say now? Just write it.`,
  putOff: (nickname: string, items: readonly string[], until: LocalDate): string =>
    `${nickname}: ${p.list(items)} put off until ${p.date(until)}. What is due stays due; I say no more until then.`,
  labels: { due: "What is due" },
  putOffFor: { "the weekend": "until the weekend", "a week": "for a week", "two weeks": "for two weeks", "a month": "for a month" },
  doneTitle: (nickname: string): string => ([...`Done on ${nickname}`].length > 45 ? "Done" : `Done on ${nickname}`),
  doneAll: "All of it",
  putOffTitle: (nickname: string): string => ([...`Put off on ${nickname}`].length > 45 ? "Put off" : `Put off on ${nickname}`),
  doneOn: "When (today if left empty)",
  doneAt: "Odometer then (may be left empty)",
  doneWhat: "What was done",
});
