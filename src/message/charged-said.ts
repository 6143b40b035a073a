// A battery that was charged: "charged the battery", "put the battery on the charger"; and what a charge said beside volts means.

import { CHARGED } from "../core/battery/charged.ts";
import type { RecordWork } from "../core/reading/intent.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { saysCharged } from "./how-said.ts";
import { kindWordsIn } from "./kind-of.ts";
import { asSpan, bikeAt, dayAt, type Layout, phrasesInside } from "./layout.ts";
import type { Measurable } from "./measured-figures.ts";
import { tokensOf } from "./pieces.ts";
import { segmentsOf } from "./refit-said.ts";

/** "12.2 before, 12.8 after charging": with nothing else named, what was charged is a battery. */
export function isOfCharge(layout: Layout, { part, units, value, token }: Measurable): boolean {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);
  const isVolts = units.length === 0 ? token.decimals > 0 && value > 5 && value < 15 : units.includes("V");
  if (!isVolts || clause === undefined || !clause.parts.some((each) => saysCharged(layout, each) || saysPutOn(layout, each))) return false;
  return clause.parts.every((each) => kindWordsIn(layout, each).length === 0);
}

/** Is a charge said of this figure, and not of another of its part? */
export function isAfterCharge(layout: Layout, { at, part }: Measurable, said: readonly { readonly figure: Measurable }[]): boolean {
  if (isAfterPut(layout, { at, part })) return true;
  if (!saysCharged(layout, part)) return false;
  const same = said.filter(({ figure }) => figure.part === part).map(({ figure }) => figure.at);
  const phrase = phrasesInside(layout.phrases.condition, part).find(({ are }) => are.includes("charged") || are.includes("on the charger"));
  if (same.length < 2 || phrase === undefined) return true;
  return at === same.reduce((best, each) => (Math.abs(each - phrase.at) < Math.abs(best - phrase.at) ? each : best), at);
}

/** "Put it on the charger". */
const saysPutOn = (layout: Layout, part: Part): boolean =>
  phrasesInside(layout.phrases.condition, part).some(({ are }) => are.includes("on the charger")) &&
  tokensOf(part).some((at) => among(layout.known.vocabulary.measuring.charge.put, wordAt(layout.tokens, at)));

/** "Put it on the charger overnight, 12.5 before, 12.9 after": what it showed after, in a part of its own. */
export function isAfterPut(layout: Layout, { at, part }: Pick<Measurable, "at" | "part">): boolean {
  const { after } = layout.known.vocabulary.measuring.stood;
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);
  if (clause === undefined || !clause.parts.some((each) => each.to < at && saysPutOn(layout, each))) return false;
  const isLed = tokensOf(part).some((n) => n < at && layout.tokens[n]?.is === "number");
  return among(after, wordAt(layout.tokens, at + 1)) || (!isLed && among(after, wordAt(layout.tokens, at - 1)));
}

/** What a clause says was charged, each a job of its own; `used`: the tokens that said so; `rest`: the clause without them. */
export function chargedSaid(
  layout: Layout,
  clause: Clause,
): { readonly intents: readonly RecordWork[]; readonly used: ReadonlySet<number>; readonly rest: Clause } {
  const intents: RecordWork[] = [];
  const used = new Set<number>();
  const { battery } = layout.known.vocabulary.measuring.charge;
  const mayBe = clause.parts.some((part) => tokensOf(part).some((at) => among(battery, wordAt(layout.tokens, at))));
  const segments = mayBe ? clause.parts.flatMap((part) => segmentsOf(layout, part)) : [];
  const told = segments.filter((segment) => saysWasCharged(layout, segment));
  for (const part of told) {
    const { bike, gap } = bikeAt(layout, part);
    const day = dayAt(layout, part, [part]);
    intents.push({
      ...{ do: "record work", bike: bike?.id ?? null, items: [CHARGED], outcome: "done", how: "did it", odometer: null },
      words: layout.text.slice(layout.tokens[part.from]?.start, layout.tokens[part.to]?.end),
      on: asSpan(day),
      gaps: [...(gap === null ? [] : [gap]), ...(day.gap === null || day.span !== null ? [] : [day.gap])],
    });
    for (const at of tokensOf(part)) if (layout.tokens[at]?.is === "word") used.add(at);
  }
  return { intents, used, rest: told.length === 0 ? clause : { ...clause, parts: segments.filter((segment) => !told.includes(segment)) } };
}

function saysWasCharged(layout: Layout, part: Part): boolean {
  const { tokens, known } = layout;
  const { battery, past, put, not, has } = known.vocabulary.measuring.charge;
  const words = tokensOf(part).map((at) => wordAt(tokens, at));
  const says = (list: readonly string[]): boolean => words.some((word) => among(list, word));
  if (!says(battery) || says(not) || isAsked(layout, part)) return false;
  // "Fitted a charged battery", "it is charged": how it is, and nobody says when it was done.
  const isDone = words.some((word, n) => among(past, word) && (n === 0 || !among(battery, words[n + 1] ?? null)) && !among(has, words[n - 1] ?? null));
  const isOn = phrasesInside(layout.phrases.condition, part).some(({ are }) => are.includes("on the charger"));
  return isDone || (isOn && says(put));
}

const isAsked = ({ text, tokens }: Layout, part: Part): boolean => /^[^.!,;\n]*\?/u.test(text.slice(tokens[part.to]?.end ?? 0));
