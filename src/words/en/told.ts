// What is told of one bike, in English: its items, then what stands beside its plan. A reminder says it, and so does whoever shows one again.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { ItemKey } from "../../core/ids.ts";
import type { Due } from "../../core/schedule/facts.ts";
import type { askWords } from "./asks.ts";
import type { defectWords } from "./defects.ts";
import type { dueWords, OnBike } from "./due.ts";
import type { reminderWords } from "./reminders.ts";
import type { seasonWords } from "./season.ts";
import type { tripWords } from "./trip.ts";
import type { tripAskWords } from "./trip-asks.ts";

type Of = {
  readonly due: ReturnType<typeof dueWords>;
  readonly reminders: ReturnType<typeof reminderWords>;
  readonly season: ReturnType<typeof seasonWords>;
  readonly asks: ReturnType<typeof askWords>;
  readonly trip: ReturnType<typeof tripWords>;
  readonly tripAsks: ReturnType<typeof tripAskWords>;
  readonly defects: ReturnType<typeof defectWords>;
};
type Named = Due & { readonly name: string };
type SaidBike = OnBike & { readonly nickname: string; readonly laidUp: boolean; readonly dues: readonly Named[] };
type SaidAside =
  | { readonly want: "out of storage" | "lay-up" | "silent"; readonly on: LocalDate }
  | { readonly want: "date"; readonly on: LocalDate; readonly what: string }
  | ({ readonly want: "reading" } & Parameters<Of["asks"]["reading"]>[1])
  | ({ readonly want: "charge" } & Parameters<Of["asks"]["charge"]>[1])
  | ({ readonly want: "defect" } & Parameters<Of["asks"]["defect"]>[1])
  | ({ readonly want: "trip ahead"; readonly before: readonly ItemKey[]; readonly during: readonly ItemKey[] } & Parameters<Of["tripAsks"]["ahead"]>[1])
  | ({ readonly want: "trip back" } & Parameters<Of["tripAsks"]["back"]>[1]);

/** Lines of one bike that fit a phone before the rest is counted. */
const MOST = 8;

export const toldWords = ({ due, reminders, season, asks, trip, tripAsks, defects }: Of) => {
  const aside = ({ nickname, dues }: SaidBike, of: SaidAside): readonly string[] => {
    const named = (keys: readonly ItemKey[]): string[] => keys.flatMap((key) => dues.find(({ item }) => item === key)?.name ?? []);
    switch (of.want) {
      case "out of storage":
        return [season.out(nickname, of.on)];
      case "lay-up":
        return [season.away(nickname, of.on)];
      case "silent":
        return [season.asleep(nickname, of.on)];
      case "date":
        return [season.date(nickname, of.what, of.on)];
      case "reading":
        return [asks.reading(nickname, of)];
      case "charge":
        return [asks.charge(nickname, of)];
      case "defect":
        return [asks.defect(nickname, of)];
      case "trip ahead":
        return tripAsks.ahead(nickname, of, named(of.before), named(of.during));
      case "trip back":
        return [tripAsks.back(nickname, of)];
    }
  };
  return {
    /** @param told the items of it that are told @param asides what is told beside the plan */
    lines: (bike: SaidBike, told: readonly Named[], asides: readonly SaidAside[]): readonly string[] => {
      const lists = due.told(told, bike);
      const rest = lists.slice(MOST).reduce((n, { items }) => n + items, 0);
      // Whether it stands is asked with what its odometer says: one question, not two.
      const asked = asides.some(({ want }) => want === "silent") ? asides.filter(({ want }) => want !== "reading") : asides;
      return [
        ...lists.slice(0, MOST).map(({ text }) => `- ${text}`),
        ...(rest > 0 ? [reminders.more(rest)] : []),
        ...(told.some(({ because }) => because.why === "leg" && because.askOdometer) ? [reminders.askOdometer(bike.nickname)] : []),
        ...(bike.laidUp && told.length > 0 ? [reminders.standing(bike.nickname, told.length)] : []),
        ...asked.flatMap((each) => aside(bike, each)),
      ];
    },
    /** What the buttons of asides say. @param found the words of a defect */
    labels: (nickname: string, found: string) => ({
      out: season.labels.out(nickname),
      away: season.labels.away(nickname),
      laidUp: season.labels.laidUp(nickname),
      riding: season.labels.riding(nickname),
      check: trip.labels.check(nickname),
      due: reminders.dueTitle(nickname),
      mended: defects.labels.mendedOf(found),
      mendedForm: defects.mendedForm,
      grade: defects.labels.gradeOf(found),
    }),
  };
};
