// Why a reminder came, in English, and how to be told less.

import type { NoticeKind } from "../../core/reminding.ts";
import type { Printer } from "../printer.ts";
import { lowered } from "./text.ts";

type Why = { readonly nickname: string; readonly kind: NoticeKind; readonly topic: string; readonly name: string | null; readonly again: boolean };

const GROWING = "again after a week, then two, then every four, until it is done or put off";

const BECAUSE = {
  "item soon": "coming up; told once before it is due",
  "item due": "due; told once",
  "item overdue": `overdue; ${GROWING}`,
  "look again": `to be looked at again after work; it does not wait for your week's day, and comes ${GROWING}`,
  defect: `an open defect stops the ride, by your word or, until you grade it, by what is usual; told to you alone, ${GROWING.replace("it is done or put off", "it is mended")}`,
  season: "the group's riding season begins or ends, or the bike has been silent since it ended",
  date: "a day you noted is near; told a month before and a week before",
  charge: "laid up, and a battery at rest loses charge; told once for each span",
  reading: "the odometer has not been read for so long that a service could come and go unseen; asked once for each reading",
  "trip ahead": "a trip you planned is near; told three weeks before where it asks for work, a week before and on the eve",
  "trip back": "a trip you planned has ended; asked once",
  aside: "the group's season, or a day you noted",
} as const satisfies Record<NoticeKind, string>;

/** What is one thing and what is several, told for one reason. */
type Told = { readonly nickname: string; readonly kind: NoticeKind; readonly names: readonly string[]; readonly again: boolean };

export const whyWords =
  (p: Printer) =>
  (all: readonly Why[]): readonly string[] => {
    const topics = [...new Set(all.map(({ topic }) => topic))];
    const alike = new Map<string, Told>();
    for (const { nickname, kind, name, again } of all) {
      const key = JSON.stringify([nickname, kind, again, name === null]);
      alike.set(key, { nickname, kind, again, names: [...(alike.get(key)?.names ?? []), ...(name === null ? [] : [name])] });
    }
    return [
      ...[...alike.values()].map(({ nickname, kind, names, again }) => {
        const what = names.length === 0 ? "" : `, ${p.list(names.map((name, n) => (n === 0 ? name : lowered(name))))}`;
        return `${nickname}${what}: ${BECAUSE[kind]}${again ? " (this was not the first time)" : ""}.`;
      }),
      `At most one message a week but for what cannot wait. To hear no more of ${p.list(topics)}: ${topics.map((topic) => `/remind off:${topic}`).join(", ")}.`,
    ];
  };
