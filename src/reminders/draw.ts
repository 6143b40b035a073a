// A reminder's words, drawn from the facts at the moment of sending: what is no longer true is not said.

import { actionId } from "../chat/action-names.ts";
import { reminderActions } from "../chat/reminder-actions.ts";
import type { Action, Reply } from "../chat/reply.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Notice } from "../store/notices.ts";
import type { Aside } from "../usecases/asides.ts";
import type { DueBike, DueLine } from "../usecases/due.ts";
import { PUT_OFF_UNTIL } from "../usecases/put-off.ts";
import type { Words } from "../words/en/english.ts";

/** One bike and what is told of it. */
export type Told = { readonly bike: DueBike; readonly lines: readonly DueLine[]; readonly asides: readonly Aside[]; readonly notices: readonly Notice[] };

/** Bikes whose buttons stand on one message together. */
const MOST_BIKES = 4;
/** Lines of one bike that fit a phone before the rest is counted. */
const MOST = 8;

/** @param rider named in a place that others read; null where the member is alone */
export function reminderReply(delivery: string, gathered: readonly Told[], words: Words, rider: string | null): Reply {
  const told = rider === null ? gathered : gathered.map(inChannel);
  const lines: string[] = [];
  const actions: Action[] = [];
  for (const { bike, lines: dues, asides } of told) {
    if (told.length > 1) lines.push(words.due.bike(bike.nickname, bike));
    const lists = words.due.told(dues, bike);
    lines.push(...lists.slice(0, MOST).map(({ text }) => `- ${text}`));
    const rest = lists.slice(MOST).reduce((n, { items }) => n + items, 0);
    if (rest > 0) lines.push(words.reminders.more(rest));
    if (dues.some((due) => due.because.why === "leg" && due.because.askOdometer)) lines.push(words.reminders.askOdometer(bike.nickname));
    if (bike.laidUp && dues.length > 0) lines.push(words.reminders.standing(bike.nickname, dues.length));
    // Whether it stands is asked with what its odometer says: one question, not two.
    const asked = asides.some(({ want }) => want === "silent") ? asides.filter(({ want }) => want !== "reading") : asides;
    lines.push(...asked.flatMap((aside) => asideLines(bike, aside, words)));
    if (told.length > MOST_BIKES) continue;
    if (dues.length > 0) actions.push(...reminderActions(delivery, bike.bike, words.reminders.labels(bike.nickname, dues, PUT_OFF_UNTIL)));
    actions.push(...asides.flatMap((aside) => asideActions(bike, aside, words)));
  }
  // Of many bikes, one is chosen first: its buttons come with it.
  if (told.length > MOST_BIKES) actions.push(pickBike(delivery, told, words));
  actions.push({ id: actionId("remind-why", delivery), label: words.reminders.whyButton, kind: "press" });
  const cautions = told.flatMap(({ lines: dues }) => dues).filter((due) => due.caution !== null);
  // One line of caution: that of the most urgent thing.
  const caution = (["overdue", "due", "soon"] as const).flatMap((status) => cautions.filter((due) => due.status === status))[0]?.caution ?? null;
  return {
    title: words.reminders.title(
      told.map(({ bike }) => bike.nickname),
      rider,
    ),
    lines,
    caution: words.caution(caution),
    // The same list may be asked for by several lines.
    actions: actions.filter(({ id }, n) => actions.findIndex((each) => each.id === id) === n),
    files: [],
    visibility: rider === null ? "private" : "shared",
    data: {
      delivery,
      told: told.map(({ bike, lines: dues, asides }) => ({
        asides,
        bike: bike.bike,
        nickname: bike.nickname,
        items: dues.map((due) => ({ item: due.item, name: due.name, status: due.status })),
      })),
    },
  };
}

/** What is wrong with a bike is told where nobody else reads it. */
const inChannel = (told: Told): Told => ({
  ...told,
  asides: told.asides.map((aside) => (aside.want === "trip ahead" ? { ...aside, defects: 0, ungraded: 0 } : aside)),
});

function asideLines(bike: DueBike, aside: Aside, words: Words): readonly string[] {
  if (aside.want !== "trip ahead") return [asideLine(bike.nickname, aside, words)];
  const named = (keys: readonly ItemKey[]): string[] => keys.flatMap((key) => bike.dues.find(({ item }) => item === key)?.name ?? []);
  return words.tripAsks.ahead(bike.nickname, aside, named(aside.before), named(aside.during));
}

function asideLine(nickname: string, aside: Exclude<Aside, { want: "trip ahead" }>, { season, asks, tripAsks }: Words): string {
  switch (aside.want) {
    case "out of storage":
      return season.out(nickname, aside.on);
    case "lay-up":
      return season.away(nickname, aside.on);
    case "silent":
      return season.asleep(nickname, aside.on);
    case "date":
      return season.date(nickname, aside.what, aside.on);
    case "reading":
      return asks.reading(nickname, aside);
    case "charge":
      return asks.charge(nickname, aside);
    case "defect":
      return asks.defect(nickname, aside);
    case "trip back":
      return tripAsks.back(nickname, aside);
  }
}

/** The list that is asked for begins with a press. */
function asideActions({ bike, nickname }: DueBike, aside: Aside, words: Words): Action[] {
  const { labels } = words.season;
  switch (aside.want) {
    case "out of storage":
      return [{ id: actionId("check-begin", `${bike}.out of storage`), label: labels.out(nickname), kind: "press" }];
    case "lay-up":
      return [{ id: actionId("check-begin", `${bike}.lay-up`), label: labels.away(nickname), kind: "press" }];
    case "silent":
      return [
        { id: actionId("check-state", `${bike}.laid up`), label: labels.laidUp(nickname), kind: "press" },
        { id: actionId("check-riding", bike), label: labels.riding(nickname), kind: "press" },
      ];
    case "trip ahead":
      return [{ id: actionId("check-begin", `${bike}.pre-trip`), label: words.trip.labels.check(nickname), kind: "press" }];
    case "date":
    case "reading":
    case "charge":
    case "trip back":
      return [];
    case "defect": {
      const { labels, mendedForm } = words.defects;
      return [
        aside.graded
          ? { id: actionId("defect-mended", aside.id, aside.rev), label: labels.mendedOf(aside.words), kind: "form", form: mendedForm }
          : { id: actionId("defect-show", aside.id, aside.rev), label: labels.gradeOf(aside.words), kind: "press" },
        { id: actionId("show-due", bike), label: words.reminders.dueTitle(nickname), kind: "press" },
      ];
    }
  }
}

const pickBike = (delivery: string, told: readonly Told[], words: Words): Action => ({
  ...{ id: actionId("show-reminder", delivery), label: words.reminders.whichBike(), kind: "pick", min: 1, max: 1 },
  options: told.map(({ bike }) => ({ value: bike.bike, label: bike.nickname })),
});

/** In a channel, for a member whose direct messages are closed: it names no bike and no figure, and its button answers them alone. */
export const waitingReply = (delivery: string, words: Words): Reply => ({
  ...{ title: null, lines: [words.reminders.waiting()], caution: null, files: [], visibility: "shared", data: { delivery, waiting: true } },
  actions: [{ id: actionId("show-reminder", delivery), label: words.reminders.show(), kind: "press" }],
});
