// A group's picture in English, and what being in it means.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Printer } from "../printer.ts";
import { altOf } from "./text.ts";

type Pictured = {
  readonly today: LocalDate;
  readonly until: LocalDate;
  readonly rows: readonly {
    readonly nickname: string;
    readonly owner: string | null;
    readonly dueNow: number;
    readonly next: readonly { readonly on: LocalDate; readonly soon: boolean; readonly items: number }[];
    readonly layUps: readonly { readonly from: LocalDate; readonly to: LocalDate }[];
  }[];
  readonly more: number;
};

export const groupPictureWords = (p: Printer) => ({
  /** Under "changed". */
  pictured: (nickname: string, is: boolean): string =>
    is
      ? `The group's picture (/group picture:yes) and its digest of the week show ${nickname} now: its name, yours, and on which days something falls due. Not what, and nothing found wrong. Take it out with group-picture:no.`
      : `The group's picture and digest no longer show ${nickname}.`,
  group: (shown: Pictured) => {
    const { today, until } = shown;
    const title = shown.rows.length === 0 ? "No bike is in this group's picture yet" : `When the group's bikes fall due, until ${p.date(until, today)}`;
    const rows = shown.rows.map(({ nickname, owner, dueNow, next, layUps }) => {
      const [first] = next;
      const said = [
        ...(dueNow === 0 ? [] : [`${dueNow} due now`]),
        ...(first === undefined ? [] : [`next about ${p.date(first.on, today)}`]),
        ...(dueNow === 0 && first === undefined ? ["nothing on record until then"] : []),
        ...(layUps.length === 0 ? [] : ["laid up"]),
      ];
      return {
        name: owner === null ? nickname : `${nickname}, ${owner}`,
        beside: said.join("; "),
        marks: [
          ...next.map(({ on, soon }) => ({ on, is: soon ? ("soon" as const) : ("later" as const) })),
          ...(dueNow === 0 ? [] : [{ on: today, is: "now" as const }]),
        ],
        layUps,
      };
    });
    const join = "Put yours in with /bike change group-picture:yes; others see its name and the days, not what falls due.";
    const more = shown.more === 0 ? [] : [`And ${shown.more} more.`];
    return {
      drawing: {
        ...{ title, today, until, todayText: "today", rows, month: p.axisMonth, notes: more },
        meaning: { now: "due or overdue", soon: "coming up", later: "later", range: "likely between", rest: "laid up" },
      },
      lines: shown.rows.length === 0 ? [`${title}. ${join}`] : [`${title}:`, ...rows.map(({ name, beside }) => `- ${name}: ${beside}`), ...more, join],
      alt: altOf(`${title}, one line a bike. ${rows.map(({ name, beside }) => `${name}: ${beside}.`).join(" ")}`),
    };
  },
});
