// A bike just added, and the way to it for someone who has none.

import type { Action, Form, Said } from "../../src/chat/reply.ts";
import type { Added } from "../../src/usecases/add-bike.ts";
import type { SeveralBikes } from "../../src/usecases/several-bikes.ts";
import type { Words } from "../../src/words/en/english.ts";
import { KINDS } from "../shapes.ts";
import { historyForm } from "./history.ts";
import { offered } from "./plan-edits.ts";
import { formButton, press, said } from "./said.ts";

export const sayAdded = (added: Added, words: Words): Said =>
  said(
    [
      words.bikes.added(added),
      words.bikes.fitted(added.equipment),
      words.bikes.planSource(),
      ...added.offers.map((offer) => words.planEdits.offer(added.nickname, offer)),
      words.bikes.askHistory(),
      ...(added.firstBike ? [words.bikes.next(added)] : []),
    ],
    {
      actions: [
        formButton("history", added.bike, words.bikes.labels.history, historyForm(added.nickname, added.asks, words)),
        press("history-unknown", added.bike, words.bikes.labels.unknown),
        ...(isNearlyNew(added) ? [press("history-whole", added.bike, words.bikes.labels.whole)] : []),
        press("fit-part", added.bike, words.bikes.labels.fit),
        ...offered(added.bike, added.offers, words),
      ],
    },
  );

/** Several bikes told as one: a form for each, filled in as far as it was said. */
export function saySeveral({ bikes, whole }: SeveralBikes, words: Words): Said {
  const { labels, several } = words.bikes;
  const actions = bikes.map((each) => firstBike(words, each, labels.addNamed(each.name)));
  return said([several(bikes.map(({ name }) => name))], {
    actions: whole === null ? actions : [...actions, firstBike(words, { ...whole, one: true }, labels.addOne(whole.name))],
  });
}

/** Hardly past its running-in: only then can nothing be missing without a word of it. */
const isNearlyNew = ({ figure, unit }: Added): boolean => figure <= (unit === "mi" ? 1000 : 1600);

/** What the form of a first bike begins with. */
export type Begun = {
  readonly name: string | null;
  readonly odometer: string | null;
  readonly kind?: string | null /** The name is one, whatever it looks like. */;
  readonly one?: true;
};
const NOTHING: Begun = { name: null, odometer: null };

/** The button that leads someone without a bike to their first one; what they said already need not be typed again. */
export function firstBike(words: Words, begun: Begun = NOTHING, label: string = words.bikes.labels.add): Action {
  const kind = begun.kind == null ? "" : `.${subjectOf(begun.kind)}`;
  const subject = `${begun.one === true ? "one" : "new"}.${subjectOf(begun.name)}.${subjectOf(begun.odometer)}${kind}`;
  // An id holds so much and no more; a very long name is typed again.
  return formButton("add-bike", subject.length > LONGEST_SUBJECT ? "new" : subject, label, addForm(words, begun));
}

/** A button for each of the bikes that were told of; one for the first where none was. */
export const firstBikes = (words: Words, told: readonly Begun[]): readonly Action[] =>
  told.length < 2 ? [firstBike(words, told[0])] : told.map((begun) => firstBike(words, begun, words.bikes.labels.addNamed(begun.name ?? "")));

const LONGEST_SUBJECT = 80;
const subjectOf = (typed: string | null): string => encodeURIComponent(typed ?? "").replace(/\./gu, "%2E");
/** What a button's subject says of a first bike. */
export function begunOf(subject: string): Begun {
  const [name, odometer, kind] = subject.split(".").slice(1).map(decodeURIComponent);
  return { name: name || null, odometer: odometer || null, ...(kind === undefined ? {} : { kind }), ...(subject.split(".")[0] === "one" ? { one: true } : {}) };
}

export function addForm(words: Words, begun: Begun = NOTHING): Form {
  const { labels, fields } = words.bikes;
  const field = { required: true, hint: null, options: [] } as const;
  return {
    title: labels.add,
    fields: [
      { ...field, name: "name", label: fields.name, kind: "line", value: begun.name },
      { ...field, name: "kind", label: fields.kind, kind: "choice", value: begun.kind ?? null, options: KINDS.map((kind) => ({ value: kind, label: kind })) },
      { ...field, name: "odometer", label: fields.odometer, kind: "line", value: begun.odometer, hint: fields.odometerHint },
    ],
  };
}
