// Work that a message says was done: verbs, the plan items they govern, and the figure at which it was done.

import type { ItemKey } from "../core/ids.ts";
import type { WorkAction } from "../core/plan/plan.ts";
import { dimensionOf } from "../core/quantity/units.ts";
import type { Gap, RecordWork } from "../core/reading/intent.ts";
import type { Known, KnownBike } from "../core/reading/vocabulary.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { among, under } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { asSpan, bikeAt, dayAt, inside, type Layout, type MeantBike, type MeantDay, phrasesInside, resolved } from "./layout.ts";
import { byBike, type Group, isAnd, isJoin, isVerb, joinAt, oncePerPart, tokensOf } from "./pieces.ts";
import { chosen, type ItemPhrase, itemPhrases, looksOnly, nearby, sameAction } from "./read-items.ts";
import { type AtFigure, dayOf, figureOf, figuresOf, gapsOfFigure } from "./work-when.ts";

/** The work of one clause, and which tokens it accounts for. */
export type WorkSaid = {
  readonly intents: readonly RecordWork[];
  /** Work on something that is not in the plan. */
  readonly missing: readonly RecordWork[];
  readonly used: ReadonlySet<number>;
  readonly heard: boolean;
};

/** `asks`: the verb fits none of the items, so the member is asked what was meant. */
type Phrase = ItemPhrase & { readonly part: Part; readonly verb: string; readonly asks: boolean };

export function workSaid(layout: Layout, clause: Clause): WorkSaid {
  // Most of what riders write is of no work.
  if (!maySayWork(layout, clause)) return NO_WORK;
  const used = new Set<number>();
  const intents: RecordWork[] = [];
  const missing: RecordWork[] = [];
  let carried: readonly string[] | null = null;
  for (const group of byBike(layout, clause)) {
    const meant = phrasesOf(layout, group, carried);
    carried = meant.carried;
    const [only] = meant.each;
    if (only === undefined || only.phrases.length === 0) {
      const unknown = unknownWork(layout, group.parts, only?.bike ?? { bike: null, gap: null });
      if (unknown !== null) missing.push(unknown);
      continue;
    }
    for (const { bike, phrases } of meant.each) {
      for (const phrase of phrases) for (let at = phrase.from; at <= phrase.to; at++) used.add(at);
      for (const figure of figuresOf(layout, group.parts, bike.bike)) used.add(figure.figure.at);
      intents.push(...intentsOf(layout, phrases, bike, group.parts));
    }
    intents.push(...strangers(layout, group.parts, only.phrases, only.bike));
  }
  const heard = clause.parts.some((part) => tokensOf(part).some((at) => isVerb(layout, at)));
  return { intents, missing, used, heard };
}

const NO_WORK: WorkSaid = { intents: [], missing: [], used: new Set(), heard: false };

/** Is there a verb of work in a clause, a word for something new, or a figure behind an at-word? Without any of them it says no work. */
function maySayWork({ tokens, known: { vocabulary } }: Layout, { parts }: Clause): boolean {
  for (const { from, to } of parts)
    for (let at = from; at <= to; at++) {
      const [token, before] = [tokens[at], tokens[at - 1]];
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

const isArticle = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.articles, wordAt(layout.tokens, at));

/** A word that neither stands around work nor says how far a ride was. */
function isUnknown(layout: Layout, at: number): boolean {
  const word = wordAt(layout.tokens, at);
  const { notOdometer, measuring } = layout.known.vocabulary;
  // "New ones": of what was named before.
  const known = among(notOdometer, word) || among(measuring.ones, word);
  // "On the side stand" is how it was measured.
  const how = layout.phrases.condition.some((phrase) => at >= phrase.at && at <= phrase.to);
  return word !== null && !mayStandBeside(layout, at) && !known && !isPlace(layout, word) && !how;
}

const isPlace = (layout: Layout, word: string): boolean => Object.values(layout.known.vocabulary.places).some((list) => among(list, word));

type Spoken = { readonly each: readonly { readonly bike: MeantBike; readonly phrases: readonly Phrase[] }[]; readonly carried: readonly string[] | null };

/** The bikes meant, and the phrases on each. With no bike named, a job that only one bike can have settles it. */
function phrasesOf(layout: Layout, { names, parts }: Group, before: readonly string[] | null): Spoken {
  const [first = { from: 0, to: 0 }] = parts;
  const meant = names.length > 0 ? names.map((name) => resolved(name, layout.known)) : [bikeAt(layout, first)];
  if (meant.every(({ bike }) => bike !== null)) {
    const each = meant.map((bike) => ({ bike, said: bike.bike === null ? NONE : governed(layout, parts, bike.bike, before) }));
    return { each: each.map(({ bike, said }) => ({ bike, phrases: said.found })), carried: each[0]?.said.carried ?? null };
  }
  const asked = meant.find(({ bike }) => bike === null) ?? { bike: null, gap: null };
  const able = layout.known.bikes.map((each) => ({ each, said: governed(layout, parts, each, before) })).filter(({ said }) => said.found.length > 0);
  const [only] = able;
  if (only === undefined) return { each: [{ bike: asked, phrases: [] }], carried: null };
  const { found: phrases, carried } = only.said;
  if (able.length === 1 && asked.gap?.named === null) return { each: [{ bike: { bike: only.each, gap: null }, phrases }], carried };
  const options = able.map(({ each }) => each.id);
  const gap = asked.gap === null || asked.gap.named !== null ? asked.gap : { ...asked.gap, options };
  return { each: [{ bike: { bike: null, gap }, phrases }], carried };
}

const holdsVerb = oncePerPart((layout: Layout, part: Part): boolean => tokensOf(part).some((at) => isVerb(layout, at)));

type Governed = { readonly found: readonly Phrase[]; readonly carried: readonly string[] | null };
const NONE: Governed = { found: [], carried: null };

/** Phrases that a verb governs, part by part. A part without a verb goes on with the list before it when it holds nothing else; "oil at 13,900" needs none. */
function governed(layout: Layout, parts: readonly Part[], bike: KnownBike, before: readonly string[] | null): Governed {
  const speaks = (part: Part): boolean =>
    holdsVerb(layout, part) || saysNew(layout, part) || figuresOf(layout, [part], bike).length > 0 || isDated(layout, part);
  // Most messages hold no verb of work: their words need not be looked up.
  if (before === null && !parts.some(speaks)) return NONE;
  const found: Phrase[] = [];
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
    const all = itemPhrases(layout.tokens, layout.known, bike, part.from, part.to)
      .map((phrase) => withOtherEnd(layout, phrase, bike))
      .filter((phrase) => !isRead(layout, phrase, part));
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
      if (all.length === 0 || !holdsOnlyItems(layout, part, all, true)) {
        listed = [];
        continue;
      }
      // "Fitted a new rear tyre, tread is 7.5 mm": what is measured of a new part is not renewed beside it.
      if (carried !== null && isMeasuredOf(layout, part) && carried.some((verb) => actionsOf(layout.known, verb)[0] === "replace")) continue;
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
        if (isMeasured || isDated(layout, part)) for (const phrase of all) found.push({ ...phrase, together: false, part, verb: "", asks: true });
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
  return { found: found.filter((phrase) => !phrase.asks || !isSaid(phrase)), carried };
}

/** Is a length in a part that names no kind of reading it could be of? */
const holdsValue = (layout: Layout, part: Part): boolean =>
  phrasesInside(layout.phrases.kind, part).length === 0 &&
  layout.tokens.slice(part.from, part.to + 1).some((token) => token.is === "number" && token.units.some((unit) => dimensionOf(unit) === "length"));

/** Does a part name a kind of reading and hold a length? */
const isMeasuredOf = (layout: Layout, part: Part): boolean =>
  phrasesInside(layout.phrases.kind, part).length > 0 &&
  layout.tokens.slice(part.from, part.to + 1).some((token) => token.is === "number" && token.units.some((unit) => dimensionOf(unit) === "length"));

/** Is a day said in a part, and no figure beside it? "Battery at 12.6 V yesterday" is a reading. */
const isDated = (layout: Layout, part: Part): boolean =>
  layout.dates.some((dated) => inside(dated, part)) && tokensOf(part).every((at) => layout.tokens[at]?.is !== "number" || layout.taken.has(at));

const BRAKE_LEVEL = "brake-fluid.inspect";

/** "Lubed yesterday": a verb that by itself can mean one item only, with nothing else in its part. */
function loneWork(layout: Layout, part: Part, at: number, bike: KnownBike): Phrase | null {
  const verb = wordAt(layout.tokens, at) ?? "";
  // "Topped up with DOT 4": the class says which fluid (49 CFR 571.116).
  const isTopped = under(layout.known.vocabulary.workDone, verb)?.includes("top up") === true;
  const dot = isTopped ? tokensOf(part).find((each) => /^dot\d?$/u.test(wordAt(layout.tokens, each) ?? "")) : undefined;
  const fluid = dot === undefined ? undefined : bike.items.find(({ key }) => key === BRAKE_LEVEL)?.key;
  if (fluid !== undefined) return { items: [fluid], together: true, from: at, to: at, part, verb, asks: false };
  const item = bike.items.find(({ key }) => key === under(layout.known.vocabulary.loneWork, verb))?.key;
  if (item === undefined || !holdsOnlyItems(layout, part, [])) return null;
  return { items: [item], together: true, from: at, to: at, part, verb, asks: false };
}

function push(found: Phrase[], phrase: ItemPhrase, part: Part, verbs: readonly string[], layout: Layout, fitting: Fitting): void {
  const isOne = phrase.from === phrase.to && among(layout.known.vocabulary.singular, wordAt(layout.tokens, phrase.from));
  const { items, together, near } = fitting(phrase.items, verbs, isOne || isOfBothEnds(phrase.items) ? endSaid(layout, part) : null);
  const verb = verbs[0] ?? "";
  if (items.length > 0 && mayBeWorn(layout, phrase, part, verb, items)) {
    found.push({ ...phrase, items, together: false, part, verb: "", asks: true });
    return;
  }
  const renewed = items.length === 0 && actionsOf(layout.known, verb)[0] === "replace" ? renewedAt(layout, phrase) : undefined;
  if (renewed !== undefined && phrase.items.includes(renewed)) {
    found.push({ ...phrase, items: [renewed], together: true, part, verb, asks: false });
    return;
  }
  if (items.length > 0 && isHalf(layout, part, items)) found.push({ ...phrase, together: false, part, verb, asks: true });
  else if (items.length > 0)
    found.push({ ...phrase, items, together: (together && !isOne) || (isOfBothEnds(items) && bothSaid(layout, part)), part, verb, asks: false });
  else if (isWorkshop(layout.known, verb)) found.push({ ...phrase, items: near, together: false, part, verb, asks: true });
}

/** "Rear tyre is done": finished, or seen to? And "coolant at 14,600 ok" was looked at, if at all. */
function mayBeWorn({ tokens, known }: Layout, phrase: ItemPhrase, part: Part, verb: string, items: readonly ItemKey[]): boolean {
  const { done, is, ok } = known.vocabulary.maybe;
  if (verb === "") return tokensOf(part).some((at) => among(ok, wordAt(tokens, at)));
  return among(done, verb) && among(is, wordAt(tokens, phrase.to + 1)) && items.some((item) => WORN.test(item));
}
/** What riders call done when it is worn out. */
const WORN = /tyre|pads|shoes|chain\.|belt|battery|plugs|discs/u;

/** "New clutch cable": what no line renews is renewed at the line that sets it. */
const renewedAt = ({ tokens, known }: Layout, { from, to }: ItemPhrase): ItemKey | undefined =>
  under(known.vocabulary.renewedAt, [...tokens.slice(from, to + 1)].map((token) => (token.is === "word" ? token.folded : "")).join(" ")) as ItemKey | undefined;

type Fit = {
  /** What the verbs can mean of the phrase's items; where that is nothing, `near` is what they may have meant. */
  readonly items: readonly ItemKey[];
  readonly together: boolean;
  readonly near: readonly ItemKey[];
};
type Fitting = (items: readonly ItemKey[], verbs: readonly string[], end: "front" | "rear" | null) => Fit;

/** What verbs mean of a phrase's items on one bike, worked out once for each of them: a message may say one thing many times over. */
function fittingOf(known: Known, bike: KnownBike): Fitting {
  const ready = new Map<readonly ItemKey[], Map<string, Fit>>();
  return (meant, verbs, end) => {
    const ofItems = ready.get(meant) ?? new Map<string, Fit>();
    ready.set(meant, ofItems);
    const key = `${end ?? ""} ${verbs.join(" ")}`;
    const before = ofItems.get(key);
    if (before !== undefined) return before;
    const each = verbs.map((verb) => actionsOf(known, verb));
    const actions = each.some((one) => one.length === 0) ? [] : each.flat();
    const all = chosen(meant, bike, actions);
    const items = end === null ? all : ofEnd(end, all);
    // "Checked the pads" looks at all of them; "changed the pads" renews those of one end more often than both, and the other end's wear must not begin anew.
    const together = sameAction(items, bike) && !(actions[0] === "replace" && looksOnly(items, bike));
    const fit = { items, together, near: items.length > 0 ? items : nearby(meant, bike, actions) };
    ofItems.set(key, fit);
    return fit;
  };
}

/** "Brakes bled" may be an item's own name: the verb is in it. */
function verbWithin(layout: Layout, [first, ...others]: readonly ItemPhrase[]): readonly string[] | null {
  const at = first === undefined || others.length > 0 ? undefined : tokensOf(first).find((each) => isVerb(layout, each));
  return at === undefined ? null : [wordAt(layout.tokens, at) ?? ""];
}

/** One line of the plan for both ends of the bike. */
const OF_BOTH: readonly ItemKey[] = ["brake-fluid.replace" as ItemKey];

/** "Changed the front brake fluid": one end of what the plan has in one line, so its clock must not start anew for both unasked. */
const isHalf = (layout: Layout, part: Part, items: readonly ItemKey[]): boolean =>
  items.some((item) => OF_BOTH.includes(item)) && endSaid(layout, part) !== null;

/** "A new tyre on the rear": of the items for either end those of the one that is said. */
function ofEnd(end: "front" | "rear", items: readonly ItemKey[]): readonly ItemKey[] {
  const own = items.filter((item) => item.startsWith(`${end}-`));
  return own.length > 0 ? own : items;
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
function isRead(layout: Layout, { to }: ItemPhrase, part: Part): boolean {
  const token = layout.tokens[to + 1];
  if (token?.is !== "number" || to + 1 > part.to || layout.taken.has(to + 1)) return false;
  const read = token.units.some((unit) => MEASURED.includes(dimensionOf(unit)));
  // "Battery 12.7 and oil changed": a bare figure that is no dial's.
  const bare = token.units.length === 0 && (token.decimals > 0 || token.value < 100) && to + 1 < part.to;
  return read || bare;
}
const MEASURED: readonly string[] = ["length", "pressure", "voltage", "temperature"];

/** Does a part name both ends? */
function bothSaid(layout: Layout, part: Part): boolean {
  const ends = phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are);
  return ends.includes("both") || (ends.includes("front") && ends.includes("rear"));
}

const isOfBothEnds = (items: readonly ItemKey[]): boolean => ["front-", "rear-"].every((end) => items.some((item) => item.startsWith(end)));

/** The only end of the bike that a part names. */
function endSaid(layout: Layout, part: Part): "front" | "rear" | null {
  const ends = phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are);
  if (ends.includes("both") || ends.includes("front") === ends.includes("rear")) return null;
  return ends.includes("front") ? "front" : "rear";
}

const saysNew = oncePerPart((layout: Layout, part: Part): boolean => tokensOf(part).some((at) => isRenewed(layout, at)));
const isRenewed = (layout: Layout, at: number): boolean => among(layout.known.vocabulary.renewed, wordAt(layout.tokens, at));

/** Verbs of the workshop and little else: who bled, greased, cleaned or replaced something worked on the bike. */
const isWorkshop = (known: Known, verb: string): boolean =>
  actionsOf(known, verb).some((action) => action === "replace" || action === "bleed" || action === "lubricate" || action === "clean");

/** "Cleaned and oiled": verbs joined to the one at a token, the first first. Behind the thing they go on, before it they go back. */
function verbGroup(layout: Layout, at: number, part: Part, behind: boolean): readonly string[] {
  const found = [wordAt(layout.tokens, at) ?? ""];
  const step = behind ? 2 : -2;
  for (let next = at + step; next >= part.from && next <= part.to && isAnd(layout, next - step / 2) && isVerb(layout, next); next += step)
    found[behind ? "push" : "unshift"](wordAt(layout.tokens, next) ?? "");
  return found;
}

const actionsOf = (known: Known, verb: string): readonly WorkAction[] =>
  under(known.vocabulary.workDone, verb) ??
  (among(known.vocabulary.renewed, verb) || among(known.vocabulary.puts, verb) || among(known.vocabulary.gets, verb) ? ["replace"] : []);

/** @param ends may the ends of the bike stand beside them too: "new tyres front and rear" */
function holdsOnlyItems(layout: Layout, part: Part, phrases: readonly ItemPhrase[], ends = false): boolean {
  return tokensOf(part).every(
    (at) =>
      layout.taken.has(at) ||
      phrases.some((phrase) => at >= phrase.from && at <= phrase.to) ||
      mayStandBeside(layout, at) ||
      isCost(layout, at) ||
      (ends && isPlace(layout, wordAt(layout.tokens, at) ?? "")),
  );
}

/** "For 140 quid": what it cost stands beside any job. */
function isCost({ tokens, known }: Layout, at: number): boolean {
  const { currencies, forCost } = known.vocabulary.details;
  const word = wordAt(tokens, at) ?? "";
  return under(currencies, word) !== undefined || (among(forCost, word) && (tokens[at + 1]?.is === "number" || tokens[at + 2]?.is === "number"));
}

/** The words either side must be ones that can stand beside a job: "oil cooler" is not oil, "chain guard" is no chain. */
function standsFree(layout: Layout, phrase: ItemPhrase, part: Part): boolean {
  const [before, after] = [phrase.from - 1, phrase.to + 1];
  // "Replaced front and rear tyres": an end beside a thing that either end has.
  const may = (at: number): boolean => mayStandBeside(layout, at) || isPlace(layout, wordAt(layout.tokens, at) ?? "");
  return (before < part.from || may(before)) && (after > part.to || may(after));
}

/** A word that changes nothing about the job beside it, and whatever is no word. */
export function mayStandBeside(layout: Layout, at: number): boolean {
  const token = layout.tokens[at];
  if (token === undefined || token.is !== "word" || layout.taken.has(at)) return true;
  const word = token.folded;
  const { vocabulary } = layout.known;
  return (
    among(vocabulary.around, word) ||
    isVerb(layout, at) ||
    among(vocabulary.beside, word) ||
    among(vocabulary.at, word) ||
    among(vocabulary.onBike, word) ||
    among(vocabulary.dateWords, word)
  );
}

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
      made.push(make([], words, [{ need: "item", options: phrase.items }]));
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
    how: "did it",
    gaps: [
      ...(bike.gap === null ? [] : [bike.gap]),
      ...gaps,
      ...gapsOfFigure(odometer, bike.bike),
      ...(day.gap === null || day.span !== null ? [] : [day.gap]),
    ],
  };
}
