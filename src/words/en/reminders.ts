// Reminders in English: one message for all that has come up, a line an item.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";
import { whyWords } from "./why.ts";

/** What the dial is to show. */
type Figure = { readonly at: number; readonly unit: string };

export const reminderWords = (p: Printer) => {
  const names = (nicknames: readonly string[]): string => (nicknames.length > 4 ? `${nicknames.length} bikes` : p.list(nicknames));
  const when = (until: LocalDate, figure: Figure | null): string =>
    figure === null ? p.date(until) : `the dial shows ${p.figure(figure.at, 0)} ${figure.unit}, or until ${p.date(until)} if none is written before`;
  return {
    /** @param rider named where others read it too */
    title: (nicknames: readonly string[], rider: string | null): string => (rider === null ? `For ${names(nicknames)}` : `For ${rider}'s ${names(nicknames)}`),
    more: (n: number): string => `And ${n} more: /due lists them all.`,
    /** Under what is told of a bike laid up: there is time. */
    standing: (nickname: string, n: number): string =>
      `${nickname} is laid up: ${n === 1 ? "this ages while it stands. Do it" : "these age while it stands. Do them"} when it suits you, at the latest before its first ride.`,
    askOdometer: (nickname: string): string => `What does the odometer of ${nickname} say now? Just write it.`,
    putOff: (nickname: string, items: readonly string[], until: LocalDate, figure: Figure | null): string =>
      `${nickname}: ${p.list(items)} put off until ${when(until, figure)}. What is due stays due; I say no more until then.`,
    /** Behind a line of the due list. */
    silent: ({ until, figure }: { readonly until: LocalDate; readonly figure: Figure | null }): string => `Put off until ${when(until, figure)}.`,
    takenBack: (nickname: string, items: readonly string[]): string => `${nickname}: ${p.list(items)} no longer put off; told as before.`,
    takeBackLabel: "Undo: put nothing off",
    why: whyWords(p),
    whyButton: "Why did I get this",
    waiting: (): string => "I have a reminder for you, but your direct messages are closed to me.",
    show: (): string => "Show it",
    /** Shown again, when nothing of it is so any more. */
    nothingLeft: (): string => "All of it is done or no longer so.",
    whichBike: (): string => "Which bike is done, or put off?",
    /** The buttons of one bike. @param items what was told of it @param until the spans for which it can be put off */
    labels: <U extends keyof typeof PUT_OFF_FOR>(
      nickname: string,
      items: readonly { readonly item: string; readonly name: string }[],
      until: readonly U[],
    ) => ({
      done: fitting(BUTTON, `Done on ${nickname}`, "Done"),
      doneForm: doneForm(nickname, items),
      putOff: fitting(BUTTON, `Put off on ${nickname}`, "Put off"),
      putOffUntil: [...until.map((each) => ({ value: each as string, label: PUT_OFF_FOR[each] })), { value: ANOTHER, label: "until another day or figure" }],
      due: dueTitle(nickname),
    }),
    doneForm,
    putOffForm,
    /** Behind the last choice of the list: a form opens from a press. */
    untilWhen: (nickname: string): string => `${nickname}: until when? Press the button and type a day, or what the dial shows then.`,
    untilButton: "Put off until",
    dueTitle,
  };
};

/** The choice that asks for a day or a figure. */
export const ANOTHER = "another";

const PUT_OFF_FOR = {
  "the weekend": "until the weekend",
  "a week": "for a week",
  "two weeks": "for two weeks",
  "a month": "for a month",
  "250 more": "for 250 more on the dial",
  "1000 more": "for 1,000 more on the dial",
} as const;

/** Characters that a button and the title of a form hold. */
const BUTTON = 80;
const TITLE = 45;
const fitting = (most: number, long: string, short: string): string => (long.length > most ? short : long);
const dueTitle = (nickname: string): string => fitting(BUTTON, `What is due on ${nickname}`, "What is due");

/** Items that one list of a form holds, beside "all of it". */
const IN_A_LIST = 24;

/** What of the things told; none where it was one. */
const whichOf = (items: readonly { readonly item: string; readonly name: string }[], label: string) =>
  items.length < 2
    ? []
    : [
        {
          ...({ kind: "choice", value: null, hint: null, name: "what", label, required: true } as const),
          options: [{ value: "all", label: "All of it" }, ...items.slice(0, IN_A_LIST).map(({ item, name }) => ({ value: item, label: name.slice(0, 100) }))],
        },
      ];

/** The form behind "until another day or figure". */
function putOffForm(nickname: string, items: readonly { readonly item: string; readonly name: string }[]) {
  const until = {
    kind: "line",
    name: "until",
    label: "Until a day, or what the dial shows",
    required: true,
    value: null,
    hint: "3 May, or 15,500 mi",
    options: [],
  } as const;
  return { title: fitting(TITLE, `Put off on ${nickname}`, "Put off"), fields: [...whichOf(items, "What to put off"), until] };
}

/** The form behind Done: what of it (where several things were told), when, at what figure. */
function doneForm(nickname: string, items: readonly { readonly item: string; readonly name: string }[]) {
  const line = { kind: "line", required: false, value: null, hint: null, options: [] } as const;
  const list = { kind: "choice", value: null, hint: null } as const;
  const options = items.map(({ item, name }) => ({ value: item, label: name.slice(0, 100) }));
  return {
    title: fitting(TITLE, `Done on ${nickname}`, "Done"),
    fields: [
      ...whichOf(items, "What was done"),
      ...(items.length <= IN_A_LIST ? [] : [{ ...list, name: "more", label: "Or this, instead", required: false, options: options.slice(IN_A_LIST) }]),
      { ...line, name: "on", label: "When, if not today" },
      { ...line, name: "at", label: "Odometer then" },
      { ...line, name: "by", label: "The shop, if one did it" },
    ],
  };
}
