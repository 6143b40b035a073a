// Work that a message says was done: verbs, the plan items they govern, and the figure at which it was done.

import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import type { Gap, RecordWork } from "../core/reading/intent.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { NO_DETAIL } from "../core/work-detail.ts";
import { among, under } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { saysPut } from "./fluid-put.ts";
import { asSpan, bikeAt, dayAt, type Layout, type MeantBike, type MeantDay, resolved } from "./layout.ts";
import { byBike, type Group, isJoin, isVerb, tokensOf } from "./pieces.ts";
import type { Phrase } from "./work-fit.ts";
import { type Governed, governed, NONE } from "./work-governed.ts";
import { type AtFigure, dayOf, figureOf, figuresOf, gapsOfFigure } from "./work-when.ts";
import { actionsOf, endsInYear, isArticle, isUnknown, isWorkshop } from "./work-words.ts";

/** The work of one clause, and which tokens it accounts for. */
export type WorkSaid = {
  readonly intents: readonly RecordWork[];
  /** Work on something that is not in the plan. */
  readonly missing: readonly RecordWork[];
  readonly used: ReadonlySet<number>;
  readonly heard: boolean;
};

export function workSaid(layout: Layout, clause: Clause): WorkSaid {
  // Most of what riders write is of no work.
  if (!maySayWork(layout, clause)) return NO_WORK;
  const used = new Set<number>();
  const intents: RecordWork[] = [];
  const missing: RecordWork[] = [];
  let carried: readonly string[] | null = null;
  let before: readonly Phrase[] = [];
  for (const group of byBike(layout, clause)) {
    const meant = phrasesOf(layout, group, carried);
    carried = meant.carried;
    const [only] = meant.each;
    const again = only === undefined || only.phrases.length > 0 ? null : sameOn(layout, group, before);
    if (only !== undefined && again !== null) {
      for (const { bike } of meant.each) {
        for (const figure of figuresOf(layout, group.parts, bike.bike)) used.add(figure.figure.at);
        intents.push(...intentsOf(layout, again, bike, group.parts));
      }
      continue;
    }
    if (only === undefined || only.phrases.length === 0) {
      const unknown = unknownWork(layout, group.parts, only?.bike ?? { bike: null, gap: null });
      if (unknown !== null) missing.push(unknown);
      continue;
    }
    for (const { bike, phrases, lacking } of meant.each) {
      // "Oil changed and clutch bled", where a cable works the clutch: the oil is not recorded past it.
      for (const { part, from, to } of lacking) intents.push(onUnknown(layout, part, bike, from, to));
      for (const phrase of phrases) for (let at = phrase.from; at <= phrase.to; at++) used.add(at);
      for (const figure of figuresOf(layout, group.parts, bike.bike)) used.add(figure.figure.at);
      intents.push(...intentsOf(layout, phrases, bike, group.parts));
    }
    intents.push(...strangers(layout, group.parts, only.phrases, only.bike));
    before = only.phrases;
  }
  const heard = clause.parts.some((part) => tokensOf(part).some((at) => isVerb(layout, at)));
  return { intents, missing, used, heard };
}

/** "Changed the oil on Heron at 14,300 and Bramble at 8,700": what was done to the bike before, where nothing but a bike and a figure is said. */
function sameOn(layout: Layout, { names, parts }: Group, before: readonly Phrase[]): readonly Phrase[] | null {
  const [part] = parts;
  if (part === undefined || names.length === 0 || before.length === 0 || before.some(({ asks }) => asks) || parts.length > 1) return null;
  const { and, articles, at: atWords, onBike, joins } = layout.known.vocabulary;
  const isIdle = (at: number): boolean => {
    const token = layout.tokens[at];
    if (token === undefined || layout.taken.has(at) || token.is === "break") return true;
    return token.is === "number"
      ? among(atWords, wordAt(layout.tokens, at - 1))
      : [and, articles, atWords, onBike, joins].some((list) => among(list, token.folded));
  };
  const figures = tokensOf(part).filter((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at)).length;
  return figures === 1 && tokensOf(part).every(isIdle) ? before.map((phrase) => ({ ...phrase, part })) : null;
}

const NO_WORK: WorkSaid = { intents: [], missing: [], used: new Set(), heard: false };

/** Is there a verb of work in a clause, a word for something new, a figure behind an at-word, or a span of the past ("oil last May", "tyres 2022")? Without any of them it says no work. */
function maySayWork(layout: Layout, { from, to, parts }: Clause): boolean {
  const { tokens, dates, known } = layout;
  const { vocabulary } = known;
  if (dates.some(({ span, from: at }) => span !== null && at >= from && at <= to)) return true;
  if (parts.some((part) => endsInYear(tokens, part))) return true;
  for (const { from, to } of parts)
    for (let at = from; at <= to; at++) {
      const [token, before] = [tokens[at], tokens[at - 1]];
      if (token?.is === "word" && saysPut(layout, at)) return true;
      if (token?.is === "word" && (under(vocabulary.workDone, token.folded) !== undefined || among(vocabulary.renewed, token.folded))) return true;
      if (token?.is === "number" && before !== undefined && before.is !== "number" && among(vocabulary.at, before.is === "word" ? before.folded : before.mark))
        return true;
    }
  return false;
}

/** Work on a thing that the plan does not name, to be asked about. */
function onUnknown(layout: Layout, part: Part, bike: MeantBike, from: number, to: number): RecordWork {
  const words = layout.text.slice(layout.tokens[from]?.start, layout.tokens[to]?.end);
  return recordOf(layout, "", bike, dayAt(layout, part, [part]), null, [], words, [{ need: "item", options: [] }]);
}

/** "Replaced the flux hose", "did the flux hose": kept to be asked about where a reading of the same clause would else be logged alone. */
function unknownWork(layout: Layout, parts: readonly Part[], bike: MeantBike): RecordWork | null {
  for (const part of parts) {
    for (const at of tokensOf(part)) {
      if (!isVerb(layout, at)) continue;
      if (isWorkshop(layout.known, wordAt(layout.tokens, at) ?? "")) return onUnknown(layout, part, bike, at, part.to);
      const thing = isArticle(layout, at + 1) ? at + 2 : at + 1;
      // "Measured the chain slack, 30 mm": what was measured is said by its reading.
      const isRead = layout.phrases.kind.some((phrase) => phrase.at === thing);
      if (!isRead && isArticle(layout, at + 1) && isUnknown(layout, thing)) return onUnknown(layout, part, bike, at, thing);
    }
  }
  return null;
}

/** Unknown things in a list of known ones: "replaced the flux hose and the oil" is held whole. */
function strangers(layout: Layout, parts: readonly Part[], phrases: readonly Phrase[], bike: MeantBike): RecordWork[] {
  return parts.flatMap((part) =>
    tokensOf(part)
      .filter((at) => isUnknown(layout, at) && isArticle(layout, at - 1) && (isVerb(layout, at - 2) || isJoin(layout, at - 2)))
      .filter((at) => !phrases.some((phrase) => at >= phrase.from && at <= phrase.to + 1))
      .map((at) => onUnknown(layout, part, bike, at, at)),
  );
}

type Spoken = {
  readonly each: readonly { readonly bike: MeantBike; readonly phrases: readonly Phrase[]; readonly lacking: Governed["lacking"] }[];
  readonly carried: readonly string[] | null;
};

/** The bikes meant, and the phrases on each. With no bike named, a job that only one bike can have settles it. */
function phrasesOf(layout: Layout, { names, parts }: Group, before: readonly string[] | null): Spoken {
  const [first = { from: 0, to: 0 }] = parts;
  const all = names.length === 0 && layout.known.bikes.length === 2 && saysAllBikes(layout, parts);
  const meant: readonly MeantBike[] = all
    ? layout.known.bikes.map((bike) => ({ bike, gap: null }))
    : names.length > 0
      ? names.map((name) => resolved(name, layout.known))
      : [bikeAt(layout, first)];
  if (meant.every(({ bike }) => bike !== null)) {
    const each = meant.map((bike) => ({ bike, said: bike.bike === null ? NONE : governed(layout, parts, bike.bike, before) }));
    return { each: each.map(({ bike, said }) => ({ bike, phrases: said.found, lacking: said.lacking })), carried: each[0]?.said.carried ?? null };
  }
  const asked = meant.find(({ bike }) => bike === null) ?? { bike: null, gap: null };
  const able = layout.known.bikes.map((each) => ({ each, said: governed(layout, parts, each, before) })).filter(({ said }) => said.found.length > 0);
  const [only] = able;
  if (only === undefined) return { each: [{ bike: asked, phrases: [], lacking: [] }], carried: null };
  const { found: phrases, carried, lacking } = only.said;
  if (able.length === 1 && asked.gap?.named === null) return { each: [{ bike: { bike: only.each, gap: null }, phrases, lacking }], carried };
  const options = able.map(({ each }) => each.id);
  const gap = asked.gap === null || asked.gap.named !== null ? asked.gap : { ...asked.gap, options };
  return { each: [{ bike: { bike: null, gap }, phrases, lacking }], carried };
}

/** "Oil changed on both bikes". */
const saysAllBikes = ({ tokens, known: { vocabulary } }: Layout, parts: readonly Part[]): boolean =>
  parts.flatMap(tokensOf).some((at) => among(vocabulary.others.allBikes, `${wordAt(tokens, at) ?? ""} ${wordAt(tokens, at + 1) ?? ""}`));

const OUTCOME_OF: Partial<Record<WorkAction, Outcome>> = {
  replace: "replaced",
  adjust: "adjusted",
  inspect: "inspected, within limits",
  measure: "inspected, within limits",
  test: "inspected, within limits",
  "top up": "topped up",
};

function outcomeOf(known: Known, verb: string): Outcome {
  const [action] = actionsOf(known, verb);
  return (action === undefined ? undefined : OUTCOME_OF[action]) ?? "done";
}

/** One record for all that is sure and was done at one time with one outcome; one each for what must be asked about. */
function intentsOf(layout: Layout, phrases: readonly Phrase[], bike: MeantBike, parts: readonly Part[]): RecordWork[] {
  const figures = figuresOf(layout, parts, bike.bike);
  const days = phrases.map((phrase) => dayOf(layout, phrase, phrases, parts));
  const dates = new Set(days.map((day) => day.typed)).size;
  const made: RecordWork[] = [];
  const sure = new Map<string, { items: ItemKey[]; words: string[]; make: (items: readonly ItemKey[], words: string, gaps: readonly Gap[]) => RecordWork }>();
  for (const [n, phrase] of phrases.entries()) {
    const words = layout.text.slice(layout.tokens[phrase.from]?.start, layout.tokens[phrase.to]?.end);
    const day = days[n] ?? dayAt(layout, phrase.part, parts);
    const odometer = figureOf(layout, phrase, phrases, figures, dates);
    const make = (items: readonly ItemKey[], said: string, gaps: readonly Gap[]): RecordWork =>
      recordOf(layout, phrase.verb, bike, day, odometer, items, said, gaps);
    if (phrase.asks || (!phrase.together && phrase.items.length > 1)) {
      made.push(make([], words, [{ need: "item", options: phrase.items, ...(phrase.end === undefined ? {} : { end: phrase.end }) }]));
      continue;
    }
    const key = `${outcomeOf(layout.known, phrase.verb)}/${day.on}/${day.typed}/${day.gap?.typed ?? ""}/${odometer?.figure.at ?? ""}`;
    const group = sure.get(key) ?? { items: [], words: [], make };
    group.items.push(...phrase.items.filter((item) => !group.items.includes(item)));
    group.words.push(words);
    sure.set(key, group);
  }
  return [...[...sure.values()].map((group) => group.make(group.items, group.words.join(", "), [])), ...made];
}

function recordOf(
  layout: Layout,
  verb: string,
  bike: MeantBike,
  day: MeantDay,
  odometer: AtFigure | null,
  items: readonly ItemKey[],
  words: string,
  gaps: readonly Gap[],
): RecordWork {
  const token = odometer?.figure.token;
  return {
    do: "record work",
    bike: bike.bike?.id ?? null,
    items,
    words,
    on: asSpan(day),
    odometer: odometer === null || token === undefined ? null : { value: token.value, unit: odometer.unit, typed: { text: token.text, unit: token.unitText } },
    outcome: outcomeOf(layout.known, verb),
    ...(among(layout.known.vocabulary.details.fluids.bled, verb) ? { detail: { ...NO_DETAIL, bled: true as const } } : {}),
    how: "did it",
    gaps: [
      ...(bike.gap === null ? [] : [bike.gap]),
      ...gaps,
      ...gapsOfFigure(odometer, bike.bike),
      ...(day.gap === null || day.span !== null ? [] : [day.gap]),
    ],
  };
}
