// A reminder's words, drawn from the facts at the moment of sending: what is no longer true is not said.

import { actionId } from "../chat/action-names.ts";
import type { Action, Reply } from "../chat/reply.ts";
import type { Notice } from "../store/notices.ts";
import type { DueBike, DueLine } from "../usecases/due.ts";
import { PUT_OFF_UNTIL } from "../usecases/put-off.ts";
import type { Words } from "../words/en/english.ts";

/** One bike and what is told of it. */
export type Told = { readonly bike: DueBike; readonly lines: readonly DueLine[]; readonly notices: readonly Notice[] };

/** Lines of one bike that fit a phone before the rest is counted. */
const MOST = 8;

/** @param rider named in a place that others read; null where the member is alone */
export function reminderReply(delivery: string, told: readonly Told[], words: Words, rider: string | null): Reply {
  const lines: string[] = [];
  const actions: Action[] = [];
  for (const { bike, lines: dues } of told) {
    if (told.length > 1) lines.push(words.due.bike(bike.nickname, bike));
    lines.push(...dues.slice(0, MOST).map((due) => `- ${words.due.lineWithStatus(due, bike)}`));
    if (dues.length > MOST) lines.push(words.reminders.more(dues.length - MOST));
    if (dues.some((due) => due.because.why === "leg" && due.because.askOdometer)) lines.push(words.reminders.askOdometer(bike.nickname));
    actions.push(...actionsOf(delivery, bike, dues, words));
  }
  const caution = told.flatMap(({ lines: dues }) => dues).find((due) => due.caution !== null)?.caution ?? null;
  return {
    title: words.reminders.title(
      told.map(({ bike }) => bike.nickname),
      rider,
    ),
    lines,
    caution: words.caution(caution),
    actions,
    files: [],
    visibility: rider === null ? "private" : "shared",
    data: {
      delivery,
      told: told.map(({ bike, lines: dues }) => ({
        bike: bike.bike,
        nickname: bike.nickname,
        items: dues.map((due) => ({ item: due.item, name: due.name, status: due.status })),
      })),
    },
  };
}

/** In a channel, for a member whose direct messages are closed: it names no bike and no figure, and its button answers them alone. */
export const waitingReply = (delivery: string, words: Words): Reply => ({
  ...{ title: null, lines: [words.reminders.waiting()], caution: null, files: [], visibility: "shared", data: { delivery, waiting: true } },
  actions: [{ id: actionId("show-reminder", delivery), label: words.reminders.show(), kind: "press" }],
});

function actionsOf(delivery: string, bike: DueBike, dues: readonly DueLine[], words: Words): Action[] {
  const subject = `${delivery}.${bike.bike}`;
  return [
    {
      id: actionId("done", subject),
      label: words.reminders.doneTitle(bike.nickname),
      kind: "form",
      form: words.reminders.doneForm(bike.nickname, dues),
    },
    {
      id: actionId("put-off", subject),
      label: words.reminders.putOffTitle(bike.nickname),
      kind: "pick",
      options: PUT_OFF_UNTIL.map((until) => ({ value: until, label: words.reminders.putOffFor[until] })),
      min: 1,
      max: 1,
    },
    { id: actionId("show-due", bike.bike), label: words.reminders.dueTitle(bike.nickname), kind: "press" },
  ];
}
