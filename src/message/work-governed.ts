// The things that the verbs of a clause govern, part by part.

import type { ItemKey } from "../core/ids.ts";
import { dimensionOf } from "../core/quantity/units.ts";
import type { KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Part, wordAt } from "./clauses.ts";
import { fluidPut, isStrangeFluid, saysPut } from "./fluid-put.ts";
import { inside, type Layout, phrasesInside } from "./layout.ts";
import { isAnd, isVerb, joinAt, oncePerPart, tokensOf } from "./pieces.ts";
import { type ItemPhrase, itemPhrases } from "./read-items.ts";
import { fittingOf, type Phrase, push } from "./work-fit.ts";
import { figuresOf } from "./work-when.ts";
import { actionsOf, endSaid, endsInYear, holdsOnlyItems, isRenewed, saysNew, standsFree, verbGroup } from "./work-words.ts";

const holdsVerb = oncePerPart((layout: Layout, part: Part): boolean => tokensOf(part).some((at) => isVerb(layout, at)));

/** `lacking`: what was said to be filled or bled and is not on this bike. */
export type Governed = { readonly found: readonly Phrase[]; readonly carried: readonly string[] | null; readonly lacking: readonly Lacking[] };
type Lacking = { readonly part: Part; readonly from: number; readonly to: number };

export const NONE: Governed = { found: [], carried: null, lacking: [] };

/** Phrases that a verb governs, part by part. A part without a verb goes on with the list before it when it holds nothing else; "oil at 13,900" needs none. */
export function governed(layout: Layout, parts: readonly Part[], bike: KnownBike, before: readonly string[] | null): Governed {
  const speaks = (part: Part): boolean =>
    holdsVerb(layout, part) ||
    tokensOf(part).some((at) => saysPut(layout, at)) ||
    saysNew(layout, part) ||
    figuresOf(layout, [part], bike).length > 0 ||
    isDated(layout, part) ||
    isOfYear(layout, part, bike);
  // Most messages hold no verb of work: their words need not be looked up.
  if (before === null && !parts.some(speaks)) return NONE;
  const found: Phrase[] = [];
  const lacking: Lacking[] = [];
  const fitting = fittingOf(layout.known, bike);
  let carried = before;
  let things: readonly ItemPhrase[] = [];
  let listed: readonly { readonly part: Part; readonly all: readonly ItemPhrase[] }[] = [];
  // "Oil, filter and plugs changed", "oil, plugs at 14,500": what is listed before a job is part of it.
  const withListed = (said: readonly string[]): void => {
    for (const each of listed) for (const phrase of each.all) push(found, phrase, each.part, said, layout, fitting);
    listed = [];
  };
  for (const part of parts) {
    const isStrange = isStrangeFluid(layout, part);
    const named = itemPhrases(layout.tokens, layout.known, bike, part.from, part.to)
      .map((phrase) => withOtherEnd(layout, phrase, bike))
      .filter((phrase) => !isRead(layout, phrase, part) && !isStrange(phrase.from));
    const put = fluidPut(layout, part, bike, named);
    if (put !== null && put.phrase !== null) found.push(put.phrase);
    else if (put !== null) lacking.push({ ...put.circuit, part });
    const all = put === null ? named : named.filter((phrase) => !put.holds(phrase));
    if (put !== null && all.length === 0) {
      carried = [put.verb];
      continue;
    }
    const verbs = tokensOf(part).filter((at) => isVerb(layout, at) && !all.some((phrase) => at >= phrase.from && at <= phrase.to));
    const [firstVerb] = verbs;
    if (firstVerb !== undefined && all.length === 0) {
      // "Chain cleaned, lubed and adjusted": the thing before goes on.
      if (things.length > 0 && holdsOnlyItems(layout, part, []))
        for (const verb of verbs) for (const phrase of things) push(found, phrase, part, [wordAt(layout.tokens, verb) ?? ""], layout, fitting);
      else {
        const lone = loneWork(layout, part, firstVerb, bike);
        if (lone !== null) found.push(lone);
      }
      carried = verbGroup(layout, verbs.at(-1) ?? firstVerb, part, false);
      continue;
    }
    if (firstVerb === undefined) {
      // "Oil, filter, plugs done": the filter is part of what was listed before it.
      if (all.length === 0 && isPartOfListed(layout, part, listed.at(-1)?.all ?? [])) continue;
      if (all.length === 0 || !holdsOnlyItems(layout, part, all, true)) {
        listed = [];
        continue;
      }
      // "Fitted a new rear tyre, tread is 7.5 mm": what is measured of a new part is not renewed beside it.
      const renews = carried?.some((verb) => actionsOf(layout.known, verb)[0] === "replace") === true;
      if (renews && (isMeasuredOf(layout, part) || isChanged(layout, part))) continue;
      // "New battery, 14,260", "Öl und Filter neu": nothing but the thing is said, so it is the thing that was fitted. "Oil at 13,900" was done then.
      const fresh = [part.from, (all.at(-1)?.to ?? part.to) + 1].find((at) => at <= part.to && isRenewed(layout, at));
      const said =
        fresh !== undefined
          ? [wordAt(layout.tokens, fresh) ?? ""]
          : (verbWithin(layout, all) ?? carried ?? (figuresOf(layout, [part], bike).length > 0 ? [""] : null));
      // "Front brake shoes 0.5 mm at 11,600": a value beside it was measured, and nothing says that more was done.
      const isMeasured = said?.[0] === "" && holdsValue(layout, part);
      // What is in order, and what has a figure of its own, is no list.
      const isOk = tokensOf(part).some(
        (at) => among(layout.known.vocabulary.maybe.ok, wordAt(layout.tokens, at)) || (layout.tokens[at]?.is === "number" && !layout.taken.has(at)),
      );
      listed = said === null && !isOk ? [...listed, { part, all }] : said === null ? [] : listed;
      if (said === null || isMeasured) {
        // "Oil on both yesterday": a thing and a day it was dealt with, and nothing says how.
        const ofYear = isOfYear(layout, part, bike) && all.some(({ to }) => to === part.to - 1);
        if (isMeasured || isDated(layout, part) || ofYear) for (const phrase of all) found.push({ ...phrase, together: false, part, verb: "", asks: true });
        continue;
      }
      withListed(said);
      for (const phrase of all) push(found, phrase, part, said, layout, fitting);
      carried = said;
      continue;
    }
    // "Oil changed and chain lubed": when the thing comes first, each belongs to the verb behind it.
    const verbBehind = (all[0]?.from ?? Number.POSITIVE_INFINITY) < firstVerb;
    if (verbBehind) withListed(verbGroup(layout, firstVerb, part, true));
    listed = [];
    for (const phrase of all) {
      const at = verbBehind ? (verbs.find((verb) => verb > phrase.to) ?? verbs.at(-1)) : (verbs.findLast((verb) => verb < phrase.from) ?? firstVerb);
      // "Oil changed and lubed the chain": with a thing on either side each verb has its own.
      const behind = at !== undefined && at > phrase.to;
      const between = verbBehind && all.some(({ from }) => from > firstVerb);
      const said = between ? [wordAt(layout.tokens, at ?? firstVerb) ?? ""] : verbGroup(layout, at ?? firstVerb, part, behind);
      if (standsFree(layout, phrase, part)) push(found, phrase, part, said, layout, fitting);
    }
    carried = verbBehind ? null : verbGroup(layout, verbs.at(-1) ?? firstVerb, part, false);
    things = verbBehind ? all.slice(-1) : [];
  }
  // "Chain cleaned, lubed and adjusted": of cleaning that goes with more there is nothing to ask.
  const isSaid = (asked: Phrase): boolean => found.some(({ asks, from }) => !asks && from === asked.from);
  return { found: found.filter((phrase) => !phrase.asks || !isSaid(phrase)), carried, lacking };
}

/** A single word that some name of an item listed before it holds too. */
function isPartOfListed(layout: Layout, part: Part, listed: readonly ItemPhrase[]): boolean {
  const word = wordAt(layout.tokens, part.to);
  if (word === null || part.from !== part.to) return false;
  const names = listed.flatMap(({ items }) => items).flatMap((item) => layout.known.vocabulary.items[item] ?? []);
  return names.some((name) => name.split(" ").includes(word));
}

/** Is a length in a part that names no kind of reading it could be of? */
const holdsValue = (layout: Layout, part: Part): boolean =>
  phrasesInside(layout.phrases.kind, part).length === 0 &&
  layout.tokens.slice(part.from, part.to + 1).some((token) => token.is === "number" && token.units.some((unit) => dimensionOf(unit) === "length"));

/** Does a part name a kind of reading and hold a length? */
const isMeasuredOf = (layout: Layout, part: Part): boolean =>
  phrasesInside(layout.phrases.kind, part).length > 0 &&
  layout.tokens.slice(part.from, part.to + 1).some((token) => token.is === "number" && token.units.some((unit) => dimensionOf(unit) === "length"));

/** "Changed the oil, front tyre up from 30 to 34 psi": a value that went from one figure to another is not of a part that came new. */
function isChanged(layout: Layout, part: Part): boolean {
  const figures = tokensOf(part).flatMap((at) => {
    const token = layout.tokens[at];
    return token?.is === "number" &&
      !layout.taken.has(at) &&
      (token.units.length > 0 ? token.units.some((unit) => MEASURED.includes(dimensionOf(unit))) : token.value < 100)
      ? [token]
      : [];
  });
  return figures.length > 1;
}

/** Is a day said in a part, and no figure beside it? "Battery at 12.6 V yesterday" is a reading. */
const isDated = (layout: Layout, part: Part): boolean =>
  layout.dates.some((dated) => inside(dated, part)) && tokensOf(part).every((at) => layout.tokens[at]?.is !== "number" || layout.taken.has(at));

/** "Tyres 2022, battery 2019": nothing but things of the plan and a year that no dial of that bike shows. */
function isOfYear(layout: Layout, part: Part, bike: KnownBike): boolean {
  const last = layout.tokens[part.to];
  if (last?.is !== "number" || part.to === part.from || !endsInYear(layout.tokens, part)) return false;
  const { lastFigure } = bike;
  const isPast = last.value <= Number(layout.known.today.slice(0, 4));
  return (
    isPast && (lastFigure === null || lastFigure > last.value + FAR_BEYOND) && tokensOf(part).every((at) => at === part.to || layout.tokens[at]?.is === "word")
  );
}
/** So far beyond a year's figure a dial, in its own unit, shows no such figure any more. */
const FAR_BEYOND = 1000;

const BRAKE_LEVEL = "brake-fluid.inspect";
const BRAKE_FLUID = "brake-fluid.replace";

/** "Lubed yesterday": a verb that by itself can mean one item only, with nothing else in its part. */
function loneWork(layout: Layout, part: Part, at: number, bike: KnownBike): Phrase | null {
  const verb = wordAt(layout.tokens, at) ?? "";
  // "Topped up with DOT 4": the class says which fluid (49 CFR 571.116).
  const isTopped = under(layout.known.vocabulary.workDone, verb)?.includes("top up") === true;
  const dot = isTopped ? tokensOf(part).find((each) => /^dot\d?$/u.test(wordAt(layout.tokens, each) ?? "")) : undefined;
  const fluid = dot === undefined ? undefined : bike.items.find(({ key }) => key === BRAKE_LEVEL)?.key;
  if (fluid !== undefined) return { items: [fluid], together: true, from: at, to: at, part, verb, asks: false };
  // "Bled the front": its brake.
  const end = under(layout.known.vocabulary.workDone, verb)?.includes("bleed") === true ? endSaid(layout, part) : null;
  const whole = end === null ? undefined : bike.items.find(({ key }) => key === BRAKE_FLUID)?.key;
  if (end !== null && whole !== undefined && holdsOnlyItems(layout, part, [], true))
    return { items: [whole], together: false, from: at, to: part.to, part, verb, asks: true, end };
  const item = bike.items.find(({ key }) => key === under(layout.known.vocabulary.loneWork, verb))?.key;
  if (item === undefined || !holdsOnlyItems(layout, part, [])) return null;
  return { items: [item], together: true, from: at, to: at, part, verb, asks: false };
}

/** "Brakes bled" may be an item's own name: the verb is in it. */
function verbWithin(layout: Layout, [first, ...others]: readonly ItemPhrase[]): readonly string[] | null {
  const at = first === undefined || others.length > 0 ? undefined : tokensOf(first).find((each) => isVerb(layout, each));
  return at === undefined ? null : [wordAt(layout.tokens, at) ?? ""];
}

/** "Front and rear pads": what is said of one end right before it is of both. */
function withOtherEnd(layout: Layout, phrase: ItemPhrase, bike: KnownBike): ItemPhrase {
  const { places } = layout.known.vocabulary;
  const endAt = (at: number): "front" | "rear" | null => {
    const word = wordAt(layout.tokens, at);
    return among(places.front, word) ? "front" : among(places.rear, word) ? "rear" : null;
  };
  const [own, other] = [endAt(phrase.from), endAt(phrase.from - 2)];
  const joins = isAnd(layout, phrase.from - 1) || joinAt(layout, phrase.from - 1) === "/";
  if (own === null || other === null || own === other || !joins) return phrase;
  const there = phrase.items.map((item) => item.replace(`${own}-`, `${other}-`)).filter((item) => bike.items.some(({ key }) => key === item)) as ItemKey[];
  return { ...phrase, items: [...new Set([...there, ...phrase.items])], together: true, from: phrase.from - 2 };
}

/** "Chain 30 mm and oil changed", "front tyre 33 psi and new plugs": a thing with its value right behind it was read, and not what the work beside it was done to. */
export function isRead(layout: Layout, { to }: ItemPhrase, part: Part): boolean {
  const token = layout.tokens[to + 1];
  if (token?.is !== "number" || to + 1 > part.to || layout.taken.has(to + 1)) return false;
  const read = token.units.some((unit) => MEASURED.includes(dimensionOf(unit)));
  // "Coolant 50/50 changed": what it was mixed of.
  if (token.fraction !== null && /^\d{2}\/\d{2}$/u.test(token.text)) return false;
  // "Battery 12.7 and oil changed": a bare figure that is no dial's.
  const bare = token.units.length === 0 && (token.decimals > 0 || token.value < 100) && to + 1 < part.to;
  return read || bare;
}

const MEASURED: readonly string[] = ["length", "pressure", "voltage", "temperature"];
