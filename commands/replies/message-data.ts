// A message's answer as scripts find it under `data`: the outcome, and in the same three lists for every outcome what was logged, done and asked.

import { z } from "zod";
import { type DistanceUnit, TENTHS_OF_MM } from "../../src/core/quantity/distance.ts";
import { fromCanonical } from "../../src/core/quantity/units.ts";
import { isQuantity } from "../../src/core/reading/value.ts";
import type { MessageOutcome } from "../../src/usecases/message-outcome.ts";
import { kind, localDate, messageOutcome, place, unit, work } from "../shapes.ts";

/** One reading: value and unit as typed, and the odometer of its bike where the message said it. */
const loggedRow = z.object({
  id: z.string(),
  bike: z.string(),
  nickname: z.string(),
  kind,
  place,
  value: z.number(),
  unit: z.string(),
  typed: z.string(),
  on: localDate,
  odometer: z.object({ value: z.number(), unit }).nullable(),
});

/** One open question: of which draft, about what, what is missing, and what can be answered. */
const askedRow = z.object({
  draft: z.string(),
  rev: z.number().int(),
  bike: z.string().nullable(),
  about: z.string(),
  need: z.string(),
  options: z.array(z.string()),
  typed: z.string(),
});

/** What a message's answer carries under `data`, whatever came of it. */
export const messageData = z.intersection(messageOutcome, z.object({ logged: z.array(loggedRow), work: z.array(work), asked: z.array(askedRow) }));

type Logged = Extract<MessageOutcome, { is: "logged" | "stands" }>;

/** The outcome with its three lists. */
export function dataOf(outcome: MessageOutcome) {
  const stands = outcome.is === "logged" || outcome.is === "stands" ? outcome : null;
  const logged = stands?.readings.map((reading) => rowOf(reading, stands)) ?? [];
  return { ...outcome, logged, work: stands?.work ?? [], asked: outcome.is === "asked" ? [askedOf(outcome)] : [] };
}

function rowOf(reading: Logged["readings"][number], { readings, bikes }: Logged) {
  const bike = bikes.find(({ id }) => id === reading.bike);
  const odometer = readings.find((each) => each.bike === reading.bike && each.kind === "odometer" && each.on === reading.on && each.dial !== null);
  return {
    ...{ id: reading.id, bike: reading.bike, nickname: bike?.nickname ?? "", kind: reading.kind, place: reading.place, value: asTyped(reading) },
    ...{ unit: reading.unit, typed: reading.typed, on: reading.on },
    odometer: odometer === undefined ? null : { value: asTyped(odometer), unit: odometer.unit as DistanceUnit },
  };
}

/** The figure in the unit it was typed in; twelve digits are more than anyone types and fewer than a conversion there and back is out by. */
function asTyped({ dial, value, unit: typed }: Logged["readings"][number]): number {
  const figure = dial !== null ? dial / TENTHS_OF_MM[typed as DistanceUnit] : isQuantity(typed) ? fromCanonical(value ?? 0, typed) : (value ?? 0);
  return Number(figure.toPrecision(12));
}

function askedOf({ question: { draft, rev, intent, gap, options, typed } }: Extract<MessageOutcome, { is: "asked" }>) {
  const about = intent.do === "log reading" ? intent.kind : intent.words;
  return { draft, rev, bike: intent.bike, about, need: gap.need, options, typed };
}
