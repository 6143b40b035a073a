// A whole service said as one: "16,000 service at the shop, 380", "had it serviced at 6,010". Which of the plan's it was, and that all of it was done, is asked once;
// a service of one thing ("oil service") is that thing's line.

import type { ItemKey } from "../core/ids.ts";
import type { Gap, RecordWork } from "../core/reading/intent.ts";
import type { KnownBike } from "../core/reading/vocabulary.ts";
import { HOW_WE_KNOW, type HowWeKnow } from "../core/schedule/facts.ts";
import { NO_DETAIL } from "../core/work-detail.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { costSaid } from "./details-said.ts";
import { figureAt, measures } from "./figures.ts";
import { asSpan, bikeAt, dayAt, type Layout, phrasesInside } from "./layout.ts";
import { isVerb, tokensOf } from "./pieces.ts";
import { chosen, itemPhrases, readItems } from "./read-items.ts";
import { foldWord } from "./scan.ts";
import { shopNamed } from "./shop-said.ts";
import { type AtFigure, figuresOf, gapsOfFigure } from "./work-when.ts";
import { isArticle, mayStandBeside } from "./work-words.ts";

/** What of a clause is services. `used`: the tokens that they account for; `rest`: the parts that say something else as well. */
export type ServicesSaid = { readonly intents: readonly RecordWork[]; readonly used: ReadonlySet<number>; readonly rest: Clause };

/** Null where no service is said to have been done. */
export function servicesSaid(layout: Layout, clause: Clause): ServicesSaid | null {
  const heads = clause.parts.filter((part) => serviceIn(layout, part) !== null);
  if (heads.length === 0) return null;
  const used = new Set<number>();
  const intents: RecordWork[] = [];
  const whole = new Set<Part>();
  for (const [n, head] of heads.entries()) {
    const next = heads[n + 1];
    // What stands before the first service is of it too: "At the shop yesterday, big service".
    const parts = clause.parts.filter((part) => (n === 0 || part.from >= head.from) && (next === undefined || part.from < next.from));
    const said = serviceOf(layout, head, parts);
    if (said === null) continue;
    intents.push(...said.intents);
    for (const at of said.used) used.add(at);
    if (said.isPlain) whole.add(head);
  }
  if (intents.length === 0) return null;
  const rest = clause.parts.filter((part) => !whole.has(part) && tokensOf(part).some((at) => !used.has(at) && !mayPass(layout, at)));
  return { intents, used, rest: { ...clause, parts: rest } };
}

/** The word for a service in a part; null where there is none, or what is said is no service that was done. */
export function serviceIn(layout: Layout, part: Part): number | null {
  const { details } = layout.known.vocabulary;
  const at = tokensOf(part).findLast((each) => isService(layout, each) || among(details.serviced, wordAt(layout.tokens, each)));
  return at === undefined || tokensOf(part).some((each) => among(details.notService, wordAt(layout.tokens, each))) ? null : at;
}

const isService = (layout: Layout, at: number): boolean => serviceWord(layout, at) !== null;

/** A word for a service, and what stands before it in one word: "Ölservice", "Jahresinspektion". Null where there is none. */
function serviceWord({ tokens, known: { vocabulary } }: Layout, at: number): { readonly of: string } | null {
  const word = wordAt(tokens, at);
  if (word === null) return null;
  if (among(vocabulary.details.service, word)) return { of: "" };
  if (vocabulary.language !== "de") return null;
  const ends = vocabulary.details.service.find((each) => word.endsWith(each) && word.length > each.length + 1);
  return ends === undefined ? null : { of: word.slice(0, -ends.length).replace(/-$/u, "") };
}

type OneService = { readonly intents: readonly RecordWork[]; readonly used: ReadonlySet<number>; readonly isPlain: boolean };

function serviceOf(layout: Layout, head: Part, parts: readonly Part[]): OneService | null {
  const { details } = layout.known.vocabulary;
  const at = serviceIn(layout, head);
  if (at === null) return null;
  const { bike, gap } = bikeAt(layout, head);
  const named = isService(layout, at) ? namesBefore(layout, at, head) : [];
  const of = named.length > 0 || !isService(layout, at) ? null : serviceOfThing(layout, at, head, bike);
  // "Serviced the forks": the work of a line, read as such.
  if (!isService(layout, at) && itemsIn(layout, head, bike).length > 0) return null;
  const used = new Set([...tokensOf({ from: named[0]?.at ?? at, to: at }), ...(of === null ? [] : tokensOf(of))]);
  const all = parts.flatMap(tokensOf);
  const who = shopNamed(layout, all, used);
  const known = who === null ? null : howKnown(layout, foldWord(who));
  // "By me", "by the previous owner".
  const shop = known === "did it" ? null : who;
  const how = howSaid(layout, all, used) ?? known;
  const dial = dialOf(layout, parts, bike, used);
  const handed = tokensOf(head).some((each) => among(details.handedOver, wordAt(layout.tokens, each)));
  // "Had it serviced": whoever does it themselves would not say so.
  const by = shop ?? (handed ? (details.shops[0] ?? null) : null);
  const cost = costSaid(layout, all, by !== null, used);
  const day = dayAt(layout, head, parts);
  // "Big service yesterday".
  const isPast = day.typed !== "" && asSpan(day).to < layout.known.today;
  const isDone = isPast || tokensOf(head).some((each) => isVerb(layout, each)) || by !== null || how !== null || cost?.currency != null || dial !== null;
  const isPlain = tokensOf(head).every((each) => used.has(each) || mayPass(layout, each));
  // "Did the 12,000 service with Dave": a figure and a verb are enough; otherwise nothing else may be said of it, since "the shop quoted 380" is no service done.
  const isSaid = named.length > 0 && parts.some((part) => tokensOf(part).some((each) => isVerb(layout, each)));
  if (!isDone || !(isPlain || isSaid)) return null;
  const token = dial?.figure.token;
  const base = {
    ...{ do: "record work" as const, bike: bike?.id ?? null, on: asSpan(day), outcome: "done" as const, how: how ?? ("did it" as const) },
    odometer: dial === null || token === undefined ? null : { value: token.value, unit: dial.unit, typed: { text: token.text, unit: token.unitText } },
  };
  const gaps: readonly Gap[] = [...(gap === null ? [] : [gap]), ...gapsOfFigure(dial, bike), ...(day.gap === null || day.span !== null ? [] : [day.gap])];
  const detail = by === null && cost === null ? {} : { detail: { ...NO_DETAIL, by, cost } };
  if (of !== null) {
    const items = of.items.length === 1 ? of.items : [];
    const which: readonly Gap[] = items.length === 1 ? [] : [{ need: "item", options: of.items }];
    return { intents: [{ ...base, items, words: wordsOf(layout, of.from, at), gaps: [...gaps, ...which], ...detail }], used, isPlain };
  }
  const intents = (named.length === 0 ? [null] : named).map((name, n): RecordWork => {
    const words = name === null ? wordsOf(layout, sizedFrom(layout, at, head), at) : wordsOf(layout, name.at, named.length === 1 ? at : name.at);
    const need: Gap = { need: "service", figure: name?.value ?? null, unit: name?.unit ?? null };
    // What it cost was said once, and so it is kept once.
    const own = n === 0 ? detail : by === null ? {} : { detail: { ...NO_DETAIL, by } };
    return { ...base, items: [], words, gaps: [...gaps, need], ...own };
  });
  return { intents, used, isPlain };
}

const wordsOf = (layout: Layout, from: number, to: number): string => layout.text.slice(layout.tokens[from]?.start, layout.tokens[to]?.end);

/** A figure that names a service. */
type Name = { readonly at: number; readonly value: number; readonly unit: "mi" | "km" | null };

/** The figures that name services, before their word: "6,000 km service", "6,000 and 12,000 services", "6000er Inspektion". */
function namesBefore(layout: Layout, at: number, head: Part): readonly Name[] {
  const { and, details } = layout.known.vocabulary;
  const found: Name[] = [];
  for (let n = at - 1; n >= head.from; n--) {
    const word = wordAt(layout.tokens, n);
    const name = isNumbered(layout, n) ? { at: n - 1, value: valueAt(layout, n - 1), unit: null } : nameOf(layout, n);
    if (name !== null) {
      found.unshift(name);
      n = name.at;
    } else if (!among(and, word) && !among(details.sized, word)) break;
  }
  return found;
}

function nameOf(layout: Layout, at: number): Name | null {
  const figure = figureAt(layout, at);
  if (figure === null) return null;
  const { value } = figure.token;
  if (measures(figure) === "distance") return { at, value, unit: figure.units[0] as "mi" | "km" };
  return figure.units.length === 0 && value >= 100 ? { at, value, unit: null } : null;
}

/** "6000er": in German a figure makes a word with the ending that touches it. */
const isNumbered = ({ tokens }: Layout, at: number): boolean =>
  wordAt(tokens, at) === "er" && tokens[at - 1]?.is === "number" && tokens[at - 1]?.end === tokens[at]?.start && figureOfToken(tokens[at - 1]) >= 100;
const valueAt = ({ tokens }: Layout, at: number): number => figureOfToken(tokens[at]);
const figureOfToken = (token: Layout["tokens"][number] | undefined): number => (token?.is === "number" ? token.value : 0);

/** "Oil service", "Ölservice": the lines of the plan that are meant, and where their words begin. */
function serviceOfThing(layout: Layout, at: number, head: Part, bike: KnownBike | null): (Part & { readonly items: readonly ItemKey[] }) | null {
  const joined = serviceWord(layout, at)?.of ?? "";
  for (const each of bike === null ? layout.known.bikes : [bike]) {
    const within = joined === "" ? null : readItems(joined, layout.known, each);
    const items = within === null ? [] : [...within.sure, ...within.unsure.flat()];
    if (items.length > 0) return { from: at, to: at, items: chosen(items, each, []) };
    const phrase = itemPhrases(layout.tokens, layout.known, each, head.from, head.to).findLast(({ to }) => to === at - 1 || to === at);
    if (phrase !== undefined) return { from: phrase.from, to: phrase.to, items: chosen(phrase.items, each, []) };
  }
  return null;
}

const itemsIn = (layout: Layout, head: Part, bike: KnownBike | null) =>
  (bike === null ? layout.known.bikes : [bike]).flatMap((each) => itemPhrases(layout.tokens, layout.known, each, head.from, head.to));

/** "The big service": where its words begin. */
function sizedFrom(layout: Layout, at: number, head: Part): number {
  let from = at;
  while (from > head.from && among(layout.known.vocabulary.details.sized, wordAt(layout.tokens, from - 1))) from--;
  return from;
}

/** What the dial showed at it: a figure behind "at", else one with its unit, else a bare one by itself that can be none of money. Marks it as accounted for. */
function dialOf(layout: Layout, parts: readonly Part[], bike: KnownBike | null, used: Set<number>): AtFigure | null {
  const free = (each: AtFigure): boolean => !used.has(each.figure.at);
  const others = (): readonly AtFigure[] =>
    parts
      // "Odo 14,300" is what the dial shows, which is a reading by itself.
      .filter((part) => phrasesInside(layout.phrases.kind, part).length === 0)
      .flatMap((part) => tokensOf(part).map((at) => ({ figure: figureAt(layout, at), part })))
      .flatMap(({ figure, part }): readonly AtFigure[] => {
        if (figure === null) return [];
        if (measures(figure) === "distance") return [{ figure, unit: figure.units[0] as "mi" | "km", part }];
        const { value, decimals } = figure.token;
        const last = bike?.lastFigure ?? null;
        const isAlone = tokensOf(part).every((at) => at === figure.at || layout.tokens[at]?.is === "break");
        const isNear = last !== null && value >= 1000 && Math.abs(value - last) < last / 2;
        return figure.units.length === 0 && decimals === 0 && isAlone && isNear ? [{ figure, unit: bike?.unit ?? null, part }] : [];
      });
  const dial = figuresOf(layout, parts, bike).find(free) ?? others().find(free) ?? null;
  if (dial !== null) used.add(dial.figure.at);
  return dial;
}

/** "Receipt", "service book": how it is known. Marks the words as accounted for. */
function howSaid(layout: Layout, at: readonly number[], used: Set<number>): HowWeKnow | null {
  for (const how of HOW_WE_KNOW) {
    if (how === "did it") continue;
    for (const words of layout.known.vocabulary.how[how].map((phrase) => phrase.split(" "))) {
      const from = at.find((each) => words.every((word, n) => wordAt(layout.tokens, each + n) === word && !used.has(each + n)));
      if (from === undefined) continue;
      for (const n of words.keys()) used.add(from + n);
      return how;
    }
  }
  return null;
}

/** What a phrase says of how it is known; null where it says nothing of that. */
const howKnown = (layout: Layout, phrase: string): HowWeKnow | null => HOW_WE_KNOW.find((how) => layout.known.vocabulary.how[how].includes(phrase)) ?? null;

/** A word that changes nothing about a service beside it. */
function mayPass(layout: Layout, at: number): boolean {
  const { details } = layout.known.vocabulary;
  const word = wordAt(layout.tokens, at);
  if (layout.tokens[at]?.is === "number") return layout.taken.has(at);
  const lists = [details.sized, details.handedOver, details.byWhom, details.shops, details.forCost];
  return isArticle(layout, at) || lists.some((list) => among(list, word)) || details.currencies[word ?? ""] !== undefined || mayStandBeside(layout, at);
}
