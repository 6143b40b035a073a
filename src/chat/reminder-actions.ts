// What can be pressed about one bike of a reminder. The same buttons stand on the reminder itself and where it is shown again.

import { actionId } from "./action-names.ts";
import type { Action, Choice, Form } from "./reply.ts";

/** From words/, for one bike. */
export type ReminderLabels = {
  readonly done: string;
  readonly doneForm: Form;
  readonly putOff: string;
  readonly putOffUntil: readonly Choice[];
  readonly due: string;
};

/** Done, put off, and the whole list. The subject is the delivery and the bike: what is done or put off is what was told. */
export function reminderActions(delivery: string, bike: string, labels: ReminderLabels): readonly Action[] {
  const subject = `${delivery}.${bike}`;
  return [
    { id: actionId("done", subject), label: labels.done, kind: "form", form: labels.doneForm },
    { id: actionId("put-off", subject), label: labels.putOff, kind: "pick", options: labels.putOffUntil, min: 1, max: 1 },
    { id: actionId("show-due", bike), label: labels.due, kind: "press" },
  ];
}
