// A reminder's words, drawn from the facts at the moment of sending: what is no longer true is not said.

import { actionId } from "../chat/action-names.ts";
import { asideActions, eachOnce } from "../chat/aside-actions.ts";
import { reminderActions } from "../chat/reminder-actions.ts";
import type { Action, Reply } from "../chat/reply.ts";
import type { Notice } from "../store/notices.ts";
import type { Aside } from "../usecases/asides.ts";
import { type DueBike, type DueLine, mostUrgentCaution } from "../usecases/due.ts";
import { PUT_OFF_UNTIL } from "../usecases/put-off.ts";
import type { Words } from "../words/en/english.ts";

/** One bike and what is told of it. */
export type Told = { readonly bike: DueBike; readonly lines: readonly DueLine[]; readonly asides: readonly Aside[]; readonly notices: readonly Notice[] };

/** Bikes whose buttons stand on one message together. */
const MOST_BIKES = 4;

/** @param rider named in a place that others read; null where the member is alone */
export function reminderReply(delivery: string, gathered: readonly Told[], words: Words, rider: string | null): Reply {
  const told = rider === null ? gathered : gathered.map(inChannel);
  const lines: string[] = [];
  const actions: Action[] = [];
  for (const { bike, lines: dues, asides } of told) {
    if (told.length > 1) lines.push(words.due.bike(bike.nickname, bike));
    lines.push(...words.told.lines(bike, dues, asides));
    if (told.length > MOST_BIKES) continue;
    if (dues.length > 0) actions.push(...reminderActions(delivery, bike.bike, words.reminders.labels(bike.nickname, dues, PUT_OFF_UNTIL)));
    for (const aside of asides) actions.push(...asideActions(bike.bike, aside, words.told.labels(bike.nickname, aside.want === "defect" ? aside.words : "")));
  }
  // Of many bikes, one is chosen first: its buttons come with it.
  if (told.length > MOST_BIKES) actions.push(pickBike(delivery, told, words));
  actions.push({ id: actionId("remind-why", delivery), label: words.reminders.whyButton, kind: "press" });
  return {
    title: words.reminders.title(
      told.map(({ bike }) => bike.nickname),
      rider,
    ),
    lines,
    caution: words.caution(mostUrgentCaution(told.flatMap(({ lines: dues }) => dues))),
    actions: eachOnce(actions),
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

const pickBike = (delivery: string, told: readonly Told[], words: Words): Action => ({
  ...{ id: actionId("show-reminder", delivery), label: words.reminders.whichBike(), kind: "pick", min: 1, max: 1 },
  options: told.map(({ bike }) => ({ value: bike.bike, label: bike.nickname })),
});

/** In a channel, for a member whose direct messages are closed: it names no bike and no figure, and its button answers them alone. */
export const waitingReply = (delivery: string, words: Words): Reply => ({
  ...{ title: null, lines: [words.reminders.waiting()], caution: null, files: [], visibility: "shared", data: { delivery, waiting: true } },
  actions: [{ id: actionId("show-reminder", delivery), label: words.reminders.show(), kind: "press" }],
});
