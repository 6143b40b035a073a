// What a message says of a bike beside what was understood of it: told back, so that nothing typed is lost without a word.

import { dimensionOf } from "../core/quantity/units.ts";
import type { Intent, LogReading } from "../core/reading/intent.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { isPlainPart, kindWordsIn, namesWheel } from "./kind-of.ts";
import { bikeAt, inside, type Layout, phrasesInside } from "./layout.ts";
import { isVerb, tokensOf } from "./pieces.ts";
import { itemPhrases } from "./read-items.ts";
import { sameEnd } from "./same-said.ts";
import { serviceIn } from "./service-said.ts";
import { namesSign, namesThing } from "./things-named.ts";

/** More words than this are talk. */
const MOST_WORDS = 8;

/** A part that came to nothing: its words, and the kinds of reading it names. */
type Left = { readonly text: string; readonly kinds: readonly ReadingKind[] };

/**
 * The parts of a clause that speak of the bike and came to nothing.
 * @param used tokens that work and defects account for @param intents what the clause came to
 */
export function leftIn(layout: Layout, clause: Clause, used: ReadonlySet<number>, intents: readonly Intent[]): readonly Left[] {
  const readings = intents.filter((intent) => intent.do === "log reading");
  // A job that keeps the words of its clause keeps its figures.
  const kept = intents.some((intent) => intent.do === "record work" && intent.note !== undefined);
  // "Put the old rear tyre back at 14,200": only the figure was taken.
  const onlyDial = intents.length > 0 && intents.every((intent) => intent.do === "log reading" && intent.kind === "odometer");
  const [from, to] = [layout.tokens[clause.from]?.start ?? 0, layout.tokens[clause.to]?.end ?? 0];
  const typed = new Set(readings.flatMap((reading) => [reading.typed.text, reading.detail?.trip?.typed ?? "", reading.detail?.price?.typed ?? ""]));
  const told = toldIn(layout.text.slice(from, to), typed);
  const isTold = (at: number): boolean => {
    const token = layout.tokens[at];
    return used.has(at) || (token !== undefined && told.subarray(token.start - from, token.end - from).includes(1));
  };
  const isWarm = readings.some(({ gaps }) => gaps.some((gap) => gap.need === "sure" && gap.because === "warm"));
  return clause.parts.flatMap((part): readonly Left[] => {
    const alike = sameEnd(layout, part);
    if (alike !== null && readings.some(({ place }) => place === alike)) return [];
    const tokens = tokensOf(part);
    const unread = tokens.some(isTold)
      ? (!kept && tokens.some((at) => !isTold(at) && (isStray(layout, part, at) || (readings.length > 0 && isBareBesideDay(layout, part, at))))) ||
        ((onlyDial || isDialAlone(layout, part, used, readings)) && saysJob(layout, part))
      : speaksOfBike(layout, part) ||
        (intents.length > 0 && tokens.some((at) => isStated(layout, part, at))) ||
        (readings.length > 0 && tokens.some((at) => isBareBesideDay(layout, part, at)));
    if (!unread || (isWarm && saysOnlyRidden(layout, part))) return [];
    const text = layout.text.slice(layout.tokens[part.from]?.start, layout.tokens[part.to]?.end).trim();
    // "Exhaust 0.15, valve leaking": what is wrong is no heading of what was read.
    return [
      {
        text,
        kinds:
          namesSign(layout, part) || tokens.some((at) => isTold(at) || isStray(layout, part, at)) ? [] : kindWordsIn(layout, part).flatMap(({ are }) => are),
      },
    ];
  });
}

/** What is left of a message, as typed: a heading, or a look at what was then read, is told by its readings. */
export const unreadOf = (left: readonly Left[], intents: readonly Intent[]): readonly string[] =>
  left.filter(({ kinds }) => !intents.some((intent) => intent.do === "log reading" && kinds.includes(intent.kind))).map(({ text }) => text);

/** The letters of a text that belong to one of some others, wherever they stand in it. */
function toldIn(text: string, those: ReadonlySet<string>): Uint8Array {
  const told = new Uint8Array(text.length);
  for (const each of those) {
    if (each === "") continue;
    for (let at = text.indexOf(each); at >= 0; at = text.indexOf(each, at + each.length)) told.fill(1, at, at + each.length);
  }
  return told;
}

/** Does a part name something of the bike, in few words, and not only how something was read? */
function speaksOfBike(layout: Layout, part: Part): boolean {
  const words = tokensOf(part).filter((at) => wordAt(layout.tokens, at) !== null);
  // "Front tyre plugged, 36 psi, 4 mm".
  if (words.length === 0) return tokensOf(part).some((at) => isStray(layout, part, at));
  // "Tyre temperature 45 °C": all of it is accounted for.
  if (words.length > MOST_WORDS || words.every((at) => layout.taken.has(at))) return false;
  const { condition, fill, load, spec } = layout.phrases;
  // "Stamped 6.0", "backing plate 4 mm": a figure of a limit or a manual is told back, as /spec takes it.
  const figures = tokensOf(part).some((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at));
  if (figures && phrasesInside(spec, part).length > 0) return true;
  const how: readonly (readonly { readonly at: number; readonly to: number }[])[] = [condition, fill, load, spec];
  if (how.some((list) => phrasesInside(list, part).length > 0)) return false;
  const bike = bikeAt(layout, part).bike ?? layout.known.bikes[0];
  return (
    serviceIn(layout, part) !== null ||
    tokensOf(part).some((at) => isStray(layout, part, at)) ||
    kindWordsIn(layout, part).some(({ are }) => !are.includes("odometer")) ||
    namesThing(layout, part) ||
    namesSign(layout, part) ||
    // "Rear 38, front the same".
    namesWheel(layout, part) ||
    (bike !== undefined && itemPhrases(layout.tokens, layout.known, bike, part.from, part.to).length > 0)
  );
}

/** "Otter oil 20,500, Heron chain lubed": does nothing of a part come to more than what the dial shows? */
const isDialAlone = (layout: Layout, part: Part, used: ReadonlySet<number>, readings: readonly LogReading[]): boolean => {
  const text = layout.text.slice(layout.tokens[part.from]?.start, layout.tokens[part.to]?.end);
  const here = readings.filter(({ typed }) => text.includes(typed.text));
  const figures = tokensOf(part).filter((at) => layout.tokens[at]?.is === "number");
  return here.length > 0 && here.every(({ kind }) => kind === "odometer") && tokensOf(part).every((at) => !used.has(at) || figures.includes(at));
};

/** Does a part name a line of the plan, or something of the bike beside a verb of the workshop? */
function saysJob(layout: Layout, part: Part): boolean {
  const bike = bikeAt(layout, part).bike ?? layout.known.bikes[0];
  const named = bike !== undefined && itemPhrases(layout.tokens, layout.known, bike, part.from, part.to).length > 0;
  return named || serviceIn(layout, part) !== null || (namesThing(layout, part) && tokensOf(part).some((at) => isVerb(layout, at)));
}

/** A figure by a unit of the workshop, an end of the bike or the name of a kind. */
function isStray(layout: Layout, part: Part, at: number): boolean {
  const token = layout.tokens[at];
  if (token?.is !== "number" || layout.taken.has(at) || layout.indexes.has(at)) return false;
  const { measuring } = layout.known.vocabulary;
  const next = token.unitText?.toLowerCase() ?? wordAt(layout.tokens, at + 1) ?? "";
  if ([measuring.pitches, measuring.rpm, measuring.hours, measuring.minutes, measuring.forces].some((list) => among(list, next))) return false;
  // "2 stiff links".
  if (token.units.length === 0 && among(measuring.pitches, wordAt(layout.tokens, at + 2))) return false;
  // "Chain slack 30 mm, 1.5 %"; "20 % off" is a price.
  if (isShare(layout, at)) return true;
  const beside = { from: Math.max(part.from, at - 2), to: Math.min(part.to, at + 2) };
  // "14,530 mi 33/36": no ruler has such a fraction.
  const isPair = token.fraction !== null && /^\d{2}\/\d{2}$/u.test(token.text) && ![2, 4, 8, 16, 32, 64].includes(token.fraction);
  return isPair || token.units.length > 0 || phrasesInside(layout.phrases.kind, beside).length + phrasesInside(layout.phrases.place, beside).length > 0;
}

/** "Just back from a ride", "36 psi front after 50 km": why a tyre was read warm, which its question says. Figures but of the ride and of what was read are not told by it. */
function saysOnlyRidden(layout: Layout, part: Part): boolean {
  const { after } = layout.known.vocabulary.measuring.stood;
  return (
    tokensOf(part).some((at) => layout.warm.includes(at)) &&
    !namesSign(layout, part) &&
    tokensOf(part).every((at) => {
      const token = layout.tokens[at];
      if (token?.is !== "number" || !isStray(layout, part, at)) return true;
      const isPressure = token.units.some((unit) => dimensionOf(unit) === "pressure");
      return isPressure || (among(after, wordAt(layout.tokens, at - 1)) && token.units.some((unit) => dimensionOf(unit) === "distance"));
    })
  );
}

/** "Was 38 now 34": a figure right behind a word that says how it was found or left. */
function isStated(layout: Layout, part: Part, at: number): boolean {
  const token = layout.tokens[at];
  if (token?.is !== "number" || layout.taken.has(at) || layout.indexes.has(at)) return false;
  return phrasesInside(layout.phrases.state, { from: part.from, to: at - 1 }).some(({ to }) => to === at - 1);
}

function isShare({ tokens, known: { vocabulary } }: Layout, at: number): boolean {
  const mark = tokens[at + 1];
  const isMarked = mark?.is === "break" ? mark.mark === "%" : mark?.is === "word" && among(vocabulary.measuring.percent, mark.folded);
  return isMarked && !among(vocabulary.refitted.off, wordAt(tokens, at + 2));
}

/** "Front 28 on Monday, 33 on Tuesday": a figure with nothing beside it but a day. */
function isBareBesideDay(layout: Layout, part: Part, at: number): boolean {
  const token = layout.tokens[at];
  if (token?.is !== "number" || layout.taken.has(at) || layout.indexes.has(at)) return false;
  const { now } = layout.known.vocabulary;
  if ([at - 1, at + 1].some((each) => among(now, wordAt(layout.tokens, each)))) return true;
  const isDated = layout.dates.some((dated) => inside(dated, part)) || tokensOf(part).some((each) => among(now, wordAt(layout.tokens, each)));
  return isDated && isPlainPart(layout, part);
}

/** Bikes that a message names and of which nothing came, by what they were called: "34 front on Heron and Otter". */
export function bikesLeft({ named, clauses }: Layout, intents: readonly Intent[]): readonly string[] {
  if (intents.length === 0 || intents.some(({ bike }) => bike === null)) return [];
  // "Zip's on 6,543, Heron hasn't moved": of the bike in a part that is denied there is nothing to keep.
  const isDenied = ({ from, to }: Part): boolean =>
    clauses.some((clause) => clause.from <= from && clause.to >= to && clause.parts.every((part) => part.to < from || part.from > to));
  const lost = named.filter(
    (name) => name.bikes.length === 1 && name.bikes[0] !== undefined && !isDenied(name) && !intents.some(({ bike }) => bike === name.bikes[0]),
  );
  return [...new Set(lost.map(({ typed }) => typed))];
}
