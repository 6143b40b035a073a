// When and at what figure each job of a message was done: its own part says so, or the only one there is.

import type { Gap } from "../core/reading/intent.ts";
import type { KnownBike } from "../core/reading/vocabulary.ts";
import { unreadDay } from "./ago.ts";
import { among } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import type { Dated } from "./dated.ts";
import { type Figure, figureAt, measures } from "./figures.ts";
import { dayAt, inside, type Layout, type MeantDay, meantBy } from "./layout.ts";
import { isAnd, isVerb, oncePerPart, tokensOf } from "./pieces.ts";
import { seasonOrYear } from "./vague-span.ts";

/** A job's phrase, at tokens `from` to `to` of a part. */
type Phrase = { readonly from: number; readonly to: number; readonly part: Part };

/** A figure at which work was done, and where it was said. */
export type AtFigure = { readonly figure: Figure; readonly unit: "mi" | "km" | null; readonly part: Part };

/** "At 14,820": the figures behind an at-word. */
export const figuresOf = (layout: Layout, parts: readonly Part[], bike: KnownBike | null): readonly AtFigure[] =>
  parts.flatMap((part) => figuresIn(layout, part).map(({ figure, unit }) => ({ figure, unit: unit ?? bike?.unit ?? null, part })));

const figuresIn = oncePerPart((layout: Layout, part: Part): readonly Pick<AtFigure, "figure" | "unit">[] =>
  tokensOf(part).flatMap((at) => {
    const mark = layout.tokens[at - 1];
    const behindAt = among(layout.known.vocabulary.at, mark?.is === "break" ? mark.mark : wordAt(layout.tokens, at - 1));
    // "Heron is at 14,820, lubed the chain yesterday": what the dial shows is no figure of the job's.
    const isStand = among(layout.known.vocabulary.stands, wordAt(layout.tokens, at - 2)) && !tokensOf(part).some((each) => isVerb(layout, each));
    // "Oil done around 13k".
    const isAbout = !behindAt && among(layout.known.vocabulary.roundly, wordAt(layout.tokens, at - 1)) && tokensOf(part).some((each) => isVerb(layout, each));
    const figure = (behindAt && !isStand) || isAbout ? figureAt(layout, at) : null;
    if (figure === null) return [];
    const of = measures(figure);
    const unit = of === "distance" ? (figure.units[0] as "mi" | "km") : null;
    return (unit !== null && !isAbout) || (figure.token.value >= (isAbout ? 1000 : 100) && of === null) ? [{ figure, unit }] : [];
  }),
);

/** The figure said with a phrase: that of its own part, in order when there are several; else the only one there is. */
export function figureOf(layout: Layout, phrase: Phrase, phrases: readonly Phrase[], figures: readonly AtFigure[], dates: number): AtFigure | null {
  const own = figures.filter((each) => each.part === phrase.part);
  // "Oil at 14,500, chain lubed yesterday": a job with a day of its own was not done at another one's figure.
  const isDated = layout.dates.some((dated) => inside(dated, phrase.part));
  // "Chain lubed, last oil change at 14,500".
  const isLast = (part: Part): boolean => tokensOf(part).some((at) => among(layout.known.vocabulary.last, wordAt(layout.tokens, at)));
  if (own.length === 0 && figures.length === 1 && figures.some((each) => partsWith(phrases).has(each.part) && isLast(each.part))) return null;
  if (own.length === 0 && isDated && figures.some((each) => partsWith(phrases).has(each.part))) return null;
  if (own.length > 0) return own.find((each) => each.figure.at > phrase.to) ?? own.at(-1) ?? null;
  return figures.length === 1 && dates < 2 ? (figures[0] ?? null) : null;
}

/** The day of a phrase: that of its own part, in order when there are several. Of several days elsewhere none can be picked, so it is asked. */
export function dayOf(layout: Layout, phrase: Phrase, phrases: readonly Phrase[], parts: readonly Part[]): MeantDay {
  const within = (part: Part) => layout.dates.filter((dated) => inside(dated, part));
  const own = within(phrase.part);
  const [one] = own;
  // "Lubed the chain yesterday and today": one job, and two days.
  if (one !== undefined && own.length > 1 && !phrases.some((each) => each.part === phrase.part && each.from !== phrase.from) && areJoined(layout, own))
    return meantBy(
      { ...one, options: [...new Set(own.flatMap(({ options }) => options))], typed: own.map(({ typed }) => typed).join(" / ") },
      layout.known.today,
    );
  if (own.length > 1) {
    const first = phrases.find((each) => each.part === phrase.part) ?? phrase;
    const before = (own[0]?.from ?? 0) < first.from;
    const meant = before ? own.findLast((dated) => dated.to < phrase.from) : (own.find((dated) => dated.from > phrase.to) ?? own.at(-1));
    return meantBy(meant ?? own[0] ?? null, layout.known.today);
  }
  const all = parts.flatMap(within);
  // "Oil in July, coolant at 14,700": nor on another one's day, where it has a figure of its own.
  const isPlaced = own.length === 0 && figuresOf(layout, [phrase.part], null).length > 0;
  const ofJobs = partsWith(phrases);
  const isOthers = (dated: Dated): boolean => parts.some((part) => part !== phrase.part && ofJobs.has(part) && inside(dated, part));
  if (isPlaced && all.length > 0 && all.every(isOthers)) return meantBy(null, layout.known.today);
  // "Lubed chain, ride on Sunday", "oil changed, last one was May 2025": a day in a part that goes on about something else is asked about.
  const [only] = all;
  const far =
    own.length > 0 || all.length !== 1 || only === undefined
      ? undefined
      : parts.some((part) => inside(only, part) && saysMore(layout, part, ofJobs))
        ? only
        : undefined;
  if (far !== undefined) {
    const options = [...new Set([layout.known.today, ...far.options])];
    return { on: layout.known.today, span: null, gap: { need: "date", options, typed: far.typed }, typed: "" };
  }
  if (own.length === 0 && new Set(all.map((dated) => dated.typed)).size > 1) {
    const typed = layout.text.slice(layout.tokens[phrase.from]?.start, layout.tokens[phrase.to]?.end);
    return { on: layout.known.today, span: null, gap: { need: "date", options: [], typed }, typed: "" };
  }
  // "New rear tyre on Friday": with nothing that says it is done it may be still to come.
  const [bare] = own;
  if (bare !== undefined && bare.span === null && isBareDay(layout, bare) && !tokensOf(phrase.part).some((at) => isVerb(layout, at)))
    return meantBy({ ...bare, unsure: true }, layout.known.today);
  const day = own.length === 0 ? (yearBehind(layout, phrase) ?? dayAt(layout, phrase.part, parts)) : dayAt(layout, phrase.part, parts);
  if (day.typed !== "" || day.gap !== null) return day;
  // What looks like a day and is read as none is never taken for today.
  for (const part of parts) {
    const unread = unreadIn(layout, part);
    if (unread !== null) return { ...day, gap: { need: "date", options: [], typed: unread } };
  }
  return day;
}

/** "On Friday", "the 28th": a day of every week or month, and not said to be the last. */
const isBareDay = ({ tokens, known: { vocabulary } }: Layout, { from, to }: Dated): boolean =>
  tokens.slice(from, to + 1).every((token) => {
    if (token.is !== "word") return token.is === "break";
    const lists = [vocabulary.weekdays, vocabulary.dateJoins, vocabulary.ago.these, vocabulary.articles, vocabulary.dayBefore, vocabulary.onBike];
    return /^\d{1,2}(?:st|nd|rd|th)$/u.test(token.folded) || (!among(vocabulary.last, token.folded) && lists.some((list) => among(list, token.folded)));
  });

/** Does nothing but "and" stand between days? */
const areJoined = (layout: Layout, days: readonly Dated[]): boolean =>
  days.every((day, n) => n === 0 || (day.from - (days[n - 1]?.to ?? 0) === 2 && isAnd(layout, day.from - 1)));

const jobParts = new WeakMap<readonly Phrase[], ReadonlySet<Part>>();
/** The parts that hold jobs. */
function partsWith(phrases: readonly Phrase[]): ReadonlySet<Part> {
  const ready = jobParts.get(phrases) ?? new Set(phrases.map(({ part }) => part));
  jobParts.set(phrases, ready);
  return ready;
}

/** Does a part hold words of its own beside its day, and no job? */
function saysMore(layout: Layout, part: Part, ofJobs: ReadonlySet<Part>): boolean {
  if (ofJobs.has(part)) return false;
  const { around, beside, articles, joins, onBike, at: atWords, dateAlone } = layout.known.vocabulary;
  return tokensOf(part).some((at) => {
    const word = wordAt(layout.tokens, at);
    if (word === null || word === undefined || layout.taken.has(at) || isVerb(layout, at)) return false;
    return ![around, beside, articles, joins, onBike, atWords, dateAlone].some((list) => among(list, word));
  });
}

const unreadIn = oncePerPart((layout: Layout, { from, to }: Part): string | null =>
  unreadDay(layout.text, layout.tokens, from, to, layout.taken, layout.known),
);

/** The question after a reading's day, where something in its part looks like one and is read as none. */
export const unreadDayGap = oncePerPart((layout: Layout, { from, to }: Part): Extract<Gap, { need: "date" }> | null => {
  const typed = unreadDay(layout.text, layout.tokens, from, to, layout.taken, layout.known, false);
  return typed === null ? null : { need: "date", options: [], typed };
});

/** "Tyres 2022": a bare year that ends a job's part. */
function yearBehind(layout: Layout, phrase: Phrase): MeantDay | null {
  let at = phrase.to + 1;
  // "Brake fluid last changed 2021".
  while (at < phrase.part.to && (isVerb(layout, at) || among(layout.known.vocabulary.last, wordAt(layout.tokens, at)))) at++;
  const token = layout.tokens[at];
  // "Bremsflüssigkeit 2024 gewechselt".
  let behind = at + 1;
  while (behind <= phrase.part.to && isVerb(layout, behind)) behind++;
  if (token?.is !== "number" || behind <= phrase.part.to || token.units.length > 0 || !/^(19|20)\d\d$/.test(token.text)) return null;
  const span = seasonOrYear(token.text, token.text, layout.known);
  return span === null || span.from > layout.known.today ? null : { on: span.from, span, gap: null, typed: token.text };
}

/** What a figure at which something was done leaves open: its unit where the dial counts in another, and its value where it can be read in two ways. */
export const gapsOfFigure = (odometer: AtFigure | null, bike: KnownBike | null): readonly Gap[] => [...unitGaps(odometer, bike), ...numberGaps(odometer, bike)];

function unitGaps(odometer: AtFigure | null, bike: KnownBike | null): readonly Gap[] {
  return odometer === null || odometer.unit === null || bike === null || odometer.unit === bike.unit
    ? []
    : [{ need: "unit", options: [odometer.unit, bike.unit] }];
}

function numberGaps(odometer: AtFigure | null, bike: KnownBike | null): readonly Gap[] {
  const other = odometer?.figure.token.other ?? null;
  if (odometer === null || other === null) return [];
  // A figure that only one way of reading puts near the dial is read that way.
  if (bike?.lastFigure !== null && bike !== null && other < bike.lastFigure / 10 && odometer.figure.token.value > bike.lastFigure / 10) return [];
  return [{ need: "number", options: [odometer.figure.token.value, other] }];
}
