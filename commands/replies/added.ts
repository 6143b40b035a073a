// A bike just added, and the way to it for someone who has none.

import type { Action, Form, Said } from "../../src/chat/reply.ts";
import type { Added } from "../../src/usecases/add-bike.ts";
import type { Words } from "../../src/words/en/english.ts";
import { KINDS } from "../shapes.ts";
import { historyForm } from "./history.ts";
import { formButton, press, said } from "./said.ts";

export const sayAdded = (added: Added, words: Words): Said =>
  said(
    [
      words.bikes.added(added),
      words.bikes.fitted(added.equipment),
      words.bikes.planSource(),
      words.bikes.askHistory(),
      ...(added.firstBike ? [words.bikes.next(added.nickname)] : []),
    ],
    {
      actions: [
        formButton("history", added.bike, words.bikes.labels.history, historyForm(added.nickname, added.asks, words)),
        press("history-unknown", added.bike, words.bikes.labels.unknown),
        press("history-whole", added.bike, words.bikes.labels.whole),
        press("fit-part", added.bike, words.bikes.labels.fit),
      ],
    },
  );

/** The button that leads someone without a bike to their first one. */
export const firstBike = (words: Words): Action => formButton("add-bike", "new", words.bikes.labels.add, addForm(words));

export function addForm(words: Words): Form {
  const { labels, fields } = words.bikes;
  const field = { required: true, value: null, hint: null, options: [] } as const;
  return {
    title: labels.add,
    fields: [
      { ...field, name: "name", label: fields.name, kind: "line" },
      { ...field, name: "kind", label: fields.kind, kind: "choice", options: KINDS.map((kind) => ({ value: kind, label: kind })) },
      { ...field, name: "odometer", label: fields.odometer, kind: "line", hint: fields.odometerHint },
    ],
  };
}
