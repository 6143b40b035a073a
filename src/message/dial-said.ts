// A figure as an odometer's: by its unit, by the words around it, and by what the dial showed last.

import { toCanonical } from "../core/quantity/units.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import type { KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { type Figure, measures } from "./figures.ts";
import { bikeAt, dayAt, inside, type Layout, type MeantDay, phrasesInside } from "./layout.ts";
import { standsBeside } from "./phrases.ts";
import { oncePerPart, tokensOf } from "./pieces.ts";
import { revsIn } from "./pitches.ts";
import { unreadDayGap } from "./work-when.ts";

const wordsOf = oncePerPart((layout, part): readonly string[] => {
  const found = new Set<string>();
  for (let at = part.from; at <= part.to; at++) {
    const word = wordAt(layout.tokens, at);
    if (word !== null && !layout.taken.has(at)) found.add(word);
  }
  return [...found];
});

/** How far beyond its last figure a dial is believed without further words. */
const AHEAD = { mi: 3000, km: 5000 } as const;

/** The odometer reading that a figure is, null when it is none. @param sure what stands around it says that it is one, whatever other words do */
export function asDial(layout: Layout, part: Part, figure: Figure, used: ReadonlySet<number>, sure = false): LogReading | null {
  const of = measures(figure);
  const unit = of === "distance" ? (figure.units[0] as "mi" | "km") : null;
  const { value, other } = figure.token;
  if (figure.token.fraction !== null || (of !== null && unit === null) || Math.max(value, other ?? 0) < (unit === null ? 1000 : 1)) return null;
  const { vocabulary } = layout.known;
  const words = wordsOf(layout, part);
  sure ||= isParked(layout, words, figure.at);
  // "Just back from the coast, 320 miles": fewer than any dial that stands in the thousands shows.
  if (!sure && unit !== null && isRide(layout, figure, words)) return null;
  const isOther = (word: string): boolean =>
    among(vocabulary.notOdometer, word) && under(vocabulary.workDone, word) === undefined && !(word.endsWith("'s") && isOfDial(layout, part, word));
  const meant = bikeAt(layout, { from: figure.at, to: figure.at });
  const near = meant.bike !== null && isNear(value, other, unit, meant.bike);
  // "MOT in March at 14,100 mi": what the dial showed at something of which only the month is known; its day is asked.
  const event =
    (unit !== null || near) && among(vocabulary.at, wordAt(layout.tokens, figure.at - 1)) && words.some((word) => among(vocabulary.ago.events, word));
  // "MOT passed at 14,850, front tyre close to the limit".
  if (!sure && !event && words.some(isOther)) return null;
  // "Did 210 miles today" is a ride. "At 14,820" has a word between.
  if (unit !== null && (among(vocabulary.rode, wordAt(layout.tokens, figure.at - 1)) || among(vocabulary.rodeBehind, wordAt(layout.tokens, figure.at + 1))))
    return null;
  if (isOfPart(layout, figure.at + 1) || isToCome(layout, figure.at) || revsIn(layout, part)?.at === figure.at) return null;
  const strong = sure || event || words.some((word) => among(vocabulary.kinds.odometer, word)) || isStrong(layout, part, used);
  const isYear = unit === null && /^(19|20)\d\d$/.test(figure.token.text);
  const named = layout.named.length > 0;
  const believed = strong ? !isYear || near : near && !isYear && (unit !== null || named);
  if (unit === null && value > 999_999) return null;
  // "Both bikes: Heron 14,250 mi": right behind a name and with its unit it is that bike's, whatever else is said.
  const isBehindName = near && unit !== null && layout.named.some(({ to }) => to === figure.at - 1);
  if (!believed || (!strong && !isBehindName && words.some((word) => among(vocabulary.notDone, word) || among(vocabulary.notReading, word)))) return null;
  const day = dayOfDial(layout, part);
  // "We did 14,820 miles last year" is a distance ridden; a dial of some day in a span is one only when the dial or the bike is named.
  if (day.span !== null && !named && !event && !words.some((word) => among(vocabulary.kinds.odometer, word))) return null;
  const dialUnit = meant.bike?.unit ?? null;
  // "14,250, no wait, 14,350": which one holds is asked where the first one stands.
  if (correctedAt(layout, figure.at, -1) !== null) return null;
  const either = eitherOf(layout, figure.at) ?? correctedAt(layout, figure.at, 1);
  const gaps: Gap[] = [
    ...(meant.gap === null ? [] : [meant.gap]),
    ...(unit !== null && dialUnit !== null && unit !== dialUnit ? [{ need: "unit" as const, options: [unit, dialUnit] }] : []),
    ...(other === null || settledBy(value, other, meant.bike) ? [] : [{ need: "number" as const, options: [value, other] }]),
    ...(figure.token.slip === true ? [{ need: "number" as const, options: [value] }] : []),
    ...(either === null ? [] : [{ need: "number" as const, options: [either, value] }]),
    ...[day.gap ?? (day.typed === "" ? unreadDayGap(layout, part) : null)].filter((gap) => gap !== null),
  ];
  return {
    do: "log reading",
    bike: meant.bike?.id ?? null,
    kind: "odometer",
    place: null,
    value: settled(value, other, meant.bike),
    unit: unit ?? dialUnit,
    typed: { text: figure.token.text, unit: figure.token.unitText },
    on: day.on,
    gaps,
  };
}

/** "14,250 mi on these tyres", "on the front pads": how far a part has run, not what the dial shows. */
function isOfPart({ tokens, known: { vocabulary } }: Layout, at: number): boolean {
  const { on, these, things } = vocabulary.onPart;
  if (!among(on, wordAt(tokens, at)) || !among(these, wordAt(tokens, at + 1))) return false;
  const isPlace = (word: string | null): boolean => Object.values(vocabulary.places).some((list) => among(list, word));
  for (let n = at + 2; n <= at + 4; n++) {
    const word = wordAt(tokens, n);
    if (among(things, word)) return true;
    if (!among(these, word) && !isPlace(word) && !among(vocabulary.renewed, word)) return false;
  }
  return false;
}

/** A distance below a thousand, on a bike whose dial is far beyond, and no word of the dial or of a bike. */
const isRide = (layout: Layout, { at, token }: Figure, words: readonly string[]): boolean =>
  token.value < 1000 &&
  (bikeAt(layout, { from: at, to: at }).bike?.lastFigure ?? 0) > 5000 &&
  layout.named.length === 0 &&
  !words.some((word) => among(layout.known.vocabulary.kinds.odometer, word));

/** "Parked it up at 14,300 for the winter": where a ride ended, what the dial showed. */
const isParked = ({ tokens, known: { vocabulary } }: Layout, words: readonly string[], at: number): boolean =>
  among(vocabulary.at, wordAt(tokens, at - 1)) && words.some((word) => among(vocabulary.measuring.parks, word));

/** "About to hit 15,000": the dial is not there yet. */
function isToCome({ text, tokens, known: { vocabulary } }: Layout, at: number): boolean {
  let from = at;
  while (from > 0 && at - from < LONGEST_LEAD && tokens[from - 1]?.is === "word") from--;
  const before = text.slice(tokens[from]?.start, tokens[at]?.start).toLowerCase().trim();
  return from < at && vocabulary.measuring.toCome.some((phrase) => before === phrase || before.endsWith(` ${phrase}`));
}
/** Words in the longest of them, and one for "the" or "about". */
const LONGEST_LEAD = 6;

/** "Today's reading": what is said so of the dial is the dial's; "today's ride" is another. */
function isOfDial({ tokens, known: { vocabulary } }: Layout, part: Part, word: string): boolean {
  for (let at = part.from; at < part.to; at++)
    if (wordAt(tokens, at) === word && !among(vocabulary.kinds.odometer, wordAt(tokens, at + 1)) && !among(vocabulary.readOff, wordAt(tokens, at + 1)))
      return false;
  return true;
}

/** The day of a dial's figure: its own; behind work and with no day of its own, that of the work. Before it, it is what the dial shows now. */
function dayOfDial(layout: Layout, part: Part): MeantDay {
  const { vocabulary } = layout.known;
  const clause = layout.clauses.find((each) => each.from <= part.from && part.to <= each.to);
  const before = clause?.parts.filter((each) => each.to < part.from) ?? [];
  const isWork = before.some((each) => wordsOf(layout, each).some((word) => under(vocabulary.workDone, word) !== undefined));
  const isNow = wordsOf(layout, part).some((word) => among(vocabulary.now, word));
  const day = dayAt(layout, part, isWork && !isNow ? [part, ...before] : [part]);
  return day.typed === "" && !isNow ? (spanBefore(layout, before.at(-1)) ?? day) : day;
}

/** "MOT passed in March, 5,950 km": of what befell the bike right before, in a month or a year with no day, the figure may well be; it is asked, since today's it need not be. */
function spanBefore(layout: Layout, part: Part | undefined): MeantDay | null {
  const { dates, known, tokens } = layout;
  const [only, ...others] = part === undefined ? [] : dates.filter((dated) => inside(dated, part));
  if (part === undefined || only === undefined || only.span === null || others.length > 0 || only.span.to >= known.today) return null;
  const { notDone, notReading, now, dateAhead } = known.vocabulary;
  const isOther = wordsOf(layout, part).some((word) => [notDone, notReading, now, dateAhead].some((list) => among(list, word)));
  const hasFigure = tokensOf(part).some((at) => tokens[at]?.is === "number" && !layout.taken.has(at));
  return isOther || hasFigure ? null : { on: known.today, span: null, gap: { need: "date", options: [], typed: only.typed }, typed: only.typed };
}

/** "14,250 or 14,260": the figure that it may be instead. */
function eitherOf({ tokens, known }: Layout, at: number): number | null {
  for (const step of [-1, 1]) {
    const other = tokens[at + 2 * step];
    if (among(known.vocabulary.either, wordAt(tokens, at + step)) && other?.is === "number") return other.value;
  }
  return null;
}

/** The figure that a figure is taken back for, or that it is said for instead: behind or before it with a word that corrects between. */
function correctedAt({ tokens, known: { vocabulary } }: Layout, at: number, step: 1 | -1): number | null {
  let corrects = false;
  for (let n = at + step; Math.abs(n - at) <= FAR; n += step) {
    const token = tokens[n];
    if (token === undefined) return null;
    if (token.is === "number") return corrects && token.units.length === 0 && token.value >= 1000 ? token.value : null;
    if (token.is === "break" && ![",", "-", ".", "!"].includes(token.mark)) return null;
    if (token.is === "word" && !among(vocabulary.measuring.corrections, token.folded) && !among(vocabulary.measuring.correcting, token.folded)) return null;
    corrects ||= token.is === "word" && among(vocabulary.measuring.corrections, token.folded);
  }
  return null;
}
/** Tokens between a figure and what it is corrected to. */
const FAR = 6;

function isNear(value: number, other: number | null, unit: "mi" | "km" | null, bike: KnownBike): boolean {
  if (bike.lastFigure === null) return true;
  const last = bike.lastFigure;
  const inDial = (figure: number): number => (unit === null || unit === bike.unit ? figure : toCanonical(figure, unit) / toCanonical(1, bike.unit));
  return [value, ...(other === null ? [] : [other])].some((figure) => inDial(figure) >= last && inDial(figure) <= last + AHEAD[bike.unit]);
}

/** Of "14.820", the way that lies near the last figure when only one does. */
const settledBy = (value: number, other: number, bike: KnownBike | null): boolean =>
  bike !== null && bike.lastFigure !== null && isNear(value, null, null, bike) !== isNear(other, null, null, bike);
const settled = (value: number, other: number | null, bike: KnownBike | null): number =>
  other !== null && settledBy(value, other, bike) && bike !== null && isNear(other, null, null, bike) ? other : value;

/** Nothing but words that may stand around a bare reading; a word of work only where the work was understood. */
function isStrong(layout: Layout, part: Part, used: ReadonlySet<number>): boolean {
  const { vocabulary } = layout.known;
  const isUnderstood = tokensOf(part).some((at) => used.has(at));
  for (let at = part.from; at <= part.to; at++) {
    const word = wordAt(layout.tokens, at);
    if (word === null || layout.taken.has(at) || used.has(at)) continue;
    const isWork = under(vocabulary.workDone, word) !== undefined;
    if (isWork ? !isUnderstood && phrasesInside(layout.phrases.kind, part).length > 0 : !standsBeside(word, vocabulary)) return false;
  }
  return true;
}
