// What a message says is wrong with a bike: a thing beside a sign of something wrong, and what mends what stands open.
// Talk of other people's bikes, questions, wishes and things that only sound like it are none; where it is in doubt, the member is asked.

import { dimensionOf } from "../core/quantity/units.ts";
import type { Gap, NoteDefect } from "../core/reading/intent.ts";
import type { Known, KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { bare, indexOf, longest, NO_RULES, type Table } from "./defect-index.ts";
import { bikeAt, dayAt, inside, type Layout } from "./layout.ts";
import { isAnd, isVerb, tokensOf } from "./pieces.ts";
import { foldWord, type Token } from "./scan.ts";
import { figuresOf } from "./work-when.ts";

/** `rest`: the clause without what a verb says as a sign: "rear tyre done for" is no work done. */
export type DefectsSaid = { readonly intents: readonly NoteDefect[]; readonly used: ReadonlySet<number>; readonly rest: Clause };

/** Where a defect stands: its tokens, its kind (null when the thing is unknown), and whether the member is asked. `figures`: those in it are of it too. */
type Sighting = { readonly from: number; readonly to: number; readonly kind: string | null; readonly asks: boolean; readonly figures?: true };

export function defectsSaid(layout: Layout, clause: Clause): DefectsSaid {
  const used = new Set<number>();
  const intents: NoteDefect[] = [];
  let rest = clause;
  if (!maySaySo(layout, clause)) return { intents, used, rest };
  const parts = commaParts(layout, clause);
  for (const [n, said] of parts.entries()) {
    const found = sightingIn(layout, said);
    if (found === null) continue;
    const before = new Set(used);
    intents.push(...notedAs(layout, said, found, parts[n + 1] ?? null, used));
    const at = [...used].filter((each) => !before.has(each) && layout.tokens[each]?.is !== "number");
    if (at.some((each) => isVerb(layout, each))) rest = without(rest, { from: Math.min(...at), to: Math.max(...at) });
  }
  return { intents, used, rest };
}

/** What a sighting in a part comes to, as what is said behind it leaves it: none where it is another's, denied, planned or mended. @param used its tokens are added */
export function notedAs(layout: Layout, said: Part, found: Sighting, next: Part | null, used: Set<number>): readonly NoteDefect[] {
  if (!isOwn(layout, said, found)) return [];
  const turnedTo = turned(layout, said, found, next);
  const { part } = turnedTo;
  const isAsked = turnedTo.seen === found && mayBeMended(layout, next);
  const seen = isAsked ? { ...found, asks: true } : turnedTo.seen;
  if (turnedTo.seen === found && isMended(layout, said, found, next)) return [];
  for (let at = seen.from; at <= seen.to; at++) if (seen.figures === true || layout.tokens[at]?.is !== "number") used.add(at);
  return kindsAtEnds(layout, part, seen).map((kind) => intentOf(layout, part, { ...seen, kind }, used));
}

/** A defect as what is said behind it leaves it: "nail in the rear tyre, plugged it" is a plugged tyre. */
function turned(layout: Layout, part: Part, seen: Sighting, next: Part | null): { readonly part: Part; readonly seen: Sighting } {
  const turns = layout.known.vocabulary.defects.turns.filter(({ from }) => seen.kind !== null && from.includes(seen.kind));
  for (const behind of [{ from: seen.to + 1, to: part.to }, next]) {
    if (behind === null) continue;
    const text = ` ${tokensOf(behind)
      .map((at) => wordAt(layout.tokens, at) ?? ",")
      .join(" ")} `;
    const turn = turns.find(({ said }) => said.some((phrase) => text.includes(` ${phrase} `)));
    if (turn !== undefined) return { part: { from: part.from, to: behind.to }, seen: { ...seen, to: behind.to, kind: turn.to } };
  }
  return { part, seen };
}

const without = (clause: Clause, { from, to }: Part): Clause => ({
  ...clause,
  parts: clause.parts.flatMap((part): readonly Part[] =>
    part.to < from || part.from > to
      ? [part]
      : [
          { from: part.from, to: from - 1 },
          { from: to + 1, to: part.to },
        ].filter((each) => each.from <= each.to),
  ),
});

/** A kind that each end has one of, at the ends that are said with it: "pads worn at the rear". */
function kindsAtEnds(layout: Layout, part: Part, seen: Sighting): readonly (string | null)[] {
  const { defects, places, articles } = layout.known.vocabulary;
  const ends = seen.kind === null ? undefined : defects.byEnd[seen.kind];
  if (ends === undefined) return [seen.kind];
  const isNear = (at: number): boolean => {
    const word = wordAt(layout.tokens, at);
    return [places.front, places.rear, places.sidecar ?? [], places.both ?? [], defects.joins, defects.between, articles].some((list) => among(list, word));
  };
  let { from, to } = seen;
  while (from > part.from && (isNear(from - 1) || isAnd(layout, from - 1))) from--;
  // "Worn and rear light out" speaks of another end.
  while (to < part.to && isNear(to + 1) && !isAnd(layout, to + 1)) to++;
  if (isAnd(layout, to + 1) && to + 2 === part.to && isNear(part.to)) to = part.to;
  const words = tokensOf({ from, to }).map((at) => bare(layout.tokens, at));
  if (words.some((word) => among(places.sidecar ?? [], word))) return [ends.sidecar];
  const [isFront, isRear] = [places.front, places.rear].map((list) => words.some((word) => among(list, word) || among(places.both ?? [], word)));
  return isFront === true || isRear === true ? [...(isFront === true ? [ends.front] : []), ...(isRear === true ? [ends.rear] : [])] : [seen.kind];
}

/** Does a clause name a bike, or hold a word that a thing or a sign begins with? Without them it says nothing is wrong. */
function maySaySo({ tokens, named, known }: Layout, { from, to }: Clause): boolean {
  if (named.length > 0) return true;
  const { firsts } = indexOf(known.vocabulary.defects);
  for (let at = from; at <= to; at++) if (firsts.has(bare(tokens, at) ?? "")) return true;
  return false;
}

/** Open defects of a bike that a part says were mended: "fixed the rear brake light". */
export function mendedIn(layout: Layout, part: Part, bike: KnownBike): readonly string[] {
  const open = bike.defects ?? [];
  const { defects } = layout.known.vocabulary;
  if (open.length === 0 || !tokensOf(part).some((at) => among(defects.mended, wordAt(layout.tokens, at)))) return [];
  const kinds = new Set(
    thingsIn(layout, part).flatMap((kind) => {
      const ends = defects.byEnd[kind];
      return ends === undefined ? [kind] : [kind, ends.front, ends.rear, ends.sidecar];
    }),
  );
  const said = sidesOf(
    layout,
    tokensOf(part).map((at) => wordAt(layout.tokens, at) ?? ""),
  );
  const verbs = tokensOf(part).flatMap((at) => (among(defects.mended, wordAt(layout.tokens, at)) ? [wordAt(layout.tokens, at)] : []));
  const isSetOnly = verbs.every((verb) => under(layout.known.vocabulary.workDone, verb)?.[0] === "adjust");
  const mayBe = (kind: string): boolean =>
    verbs.some((verb) => under(defects.mendsOnly, verb)?.includes(kind) !== false) && !(isSetOnly && SET_AT_CABLE.includes(kind) && !hasCable(bike));
  const meant = open.filter(({ kind, words }) => {
    if (kind === null || !kinds.has(kind) || !mayBe(kind)) return false;
    const sides = sidesOf(layout, words.split(/\s+/u).map(foldWord));
    return said.length === 0 || sides.length === 0 || sides.some((side) => said.includes(side));
  });
  // Of several that it could be, the member says which.
  return meant.length === 1 ? meant.map(({ id }) => id) : [];
}

/** "Clutch adjusted" mends these where a cable works it; a hydraulic one sets itself. */
const SET_AT_CABLE: readonly string[] = ["slipping clutch", "dragging clutch"];
const hasCable = ({ items }: KnownBike): boolean => items.some(({ key }) => key === "clutch-free-play.adjust");

/** Does a part name a thing that can be wrong with a bike? */
export function namesThing(layout: Layout, part: Part): boolean {
  const { defects, places } = layout.known.vocabulary;
  const { things, whole } = indexOf(defects);
  return tokensOf(part).some((at) => {
    const word = bare(layout.tokens, at);
    if (word === null || !(things.firsts.has(word) || whole.firsts.has(word))) return false;
    // The bike itself and its ends are named by the way.
    const byTheWay = [defects.itself, ...Object.values(places)];
    const found = longest(layout.tokens, at, part.to, things) ?? longest(layout.tokens, at, part.to, whole);
    return found !== null && !(found.to === at && byTheWay.some((list) => among(list, word)));
  });
}

/** Does a part hold a word for something wrong, whatever it is of? */
export const namesSign = (layout: Layout, part: Part): boolean =>
  tokensOf(part).some(
    (at) =>
      longest(layout.tokens, at, part.to, indexOf(layout.known.vocabulary.defects).stray) !== null &&
      // "No cracks" says that nothing is.
      !among(layout.known.vocabulary.defects.none, wordAt(layout.tokens, at - 1)),
  );

/** Kinds of which a part names a thing or the whole. */
function thingsIn(layout: Layout, part: Part): readonly string[] {
  const index = indexOf(layout.known.vocabulary.defects);
  return tokensOf(part).flatMap((at) => {
    const found = longest(layout.tokens, at, part.to, index.things);
    const whole = longest(layout.tokens, at, part.to, index.whole);
    return [...(found?.rules.map((rule) => rule.split("/")[0] ?? "") ?? []), ...(whole?.rules ?? [])];
  });
}

const SIDES = ["left", "right"];
const sidesOf = (layout: Layout, words: readonly string[]): readonly string[] => {
  const { front, rear } = layout.known.vocabulary.places;
  return words.flatMap((word) => (front.includes(word) ? "front" : rear.includes(word) ? "rear" : SIDES.includes(word) ? word : []));
};

/** Parts between commas, whatever is planned or denied in them: "not working" says that something is wrong. */
export function commaParts(layout: Layout, clause: Clause): readonly Part[] {
  const parts: Part[] = [];
  let from = clause.from;
  for (let at = clause.from; at <= clause.to + 1; at++) {
    const token = layout.tokens[at];
    if (at <= clause.to && !(token?.is === "break" && [",", "(", ")", ":"].includes(token.mark))) continue;
    if (at > from) parts.push({ from, to: at - 1 });
    from = at + 1;
  }
  return parts;
}

function sightingIn(layout: Layout, part: Part): Sighting | null {
  const words = layout.known.vocabulary.defects;
  const index = indexOf(words);
  const { tokens } = layout;
  // "Heron coughs": the bike's name is the bike.
  for (const name of layout.named) {
    if (name.bikes.length === 0 || !inside(name, part)) continue;
    const found = beyond(layout, name.to + 1, part.to, index.signs, words.between, index.ofBike);
    if (found !== null) return { from: name.to + 1, to: found.to, kind: found.kind, asks: found.past };
  }
  for (let at = part.from; at <= part.to; at++) {
    if (layout.taken.has(at) || !index.firsts.has(bare(tokens, at) ?? "")) continue;
    const whole = longest(tokens, at, part.to, index.whole);
    if (whole !== null) return { from: at, to: whole.to, kind: whole.rules[0] ?? null, asks: false };
    for (const [first, second, gap] of index.pairs) {
      const one = longest(tokens, at, part.to, first, null, first === index.signs ? index.signLast : NO_RULES);
      if (one === null) continue;
      const found = beyond(layout, one.to + 1, part.to, second, gap, one.rules);
      if (found !== null) return { from: at, to: found.to, kind: found.kind, asks: found.past };
    }
  }
  return leaking(layout, part) ?? stray(layout, part);
}

/** "Rear lost 5 psi overnight", "hinten verliert 0,2 bar pro Woche": so much in a week or less is a leak; without how long it took the member is asked. */
function leaking(layout: Layout, part: Part): Sighting | null {
  const { places, measuring } = layout.known.vocabulary;
  const { leaks, soon, late, up, bounds } = measuring.change;
  const has = (...lists: readonly (readonly string[])[]): boolean => tokensOf(part).some((at) => lists.some((list) => among(list, wordAt(layout.tokens, at))));
  // "If the rear drops under 30 psi".
  if (!has(leaks) || !has(places.front, places.rear, measuring.tyre) || has(late, layout.known.vocabulary.notDone)) return null;
  const lost = tokensOf(part).find((at) => {
    const token = layout.tokens[at];
    const isPressure = token?.is === "number" && token.value > 0 && token.units.some((unit) => dimensionOf(unit) === "pressure");
    // "Dropped to 28 psi" is a reading, "drops under 30 psi" a mark that it may reach.
    const isMark = among(bounds, wordAt(layout.tokens, at - 1));
    return isPressure && !isMark && ![at - 1, at - 2].some((each) => each >= part.from && among(up, wordAt(layout.tokens, each)));
  });
  if (lost === undefined) return null;
  // "Rear was 2 psi down" may be what it wanted.
  if (!has(soon) && !tokensOf({ from: part.from, to: lost - 1 }).some((at) => among(leaks, wordAt(layout.tokens, at)))) return null;
  return { ...part, kind: measuring.change.leak, asks: !has(soon), figures: true };
}

/** The other half of a rule, behind words that may stand between. */
function beyond(
  layout: Layout,
  from: number,
  to: number,
  index: Table,
  gap: readonly string[],
  rules: readonly string[],
): { readonly to: number; readonly kind: string; readonly past: boolean } | null {
  const { past } = layout.known.vocabulary.defects;
  let wasPast = false;
  let figures = false;
  for (let at = from; at <= Math.min(to, from + 5); at++) {
    const found = longest(layout.tokens, at, to, index, rules);
    const [rule] = found?.rules ?? [];
    // "Chain 30 mm tight spot": where it was measured.
    if (found !== null && figures && isOfFigure(layout, { from: at, to: found.to })) return null;
    if (found !== null && rule !== undefined) return { to: found.to, kind: rule.split("/")[0] ?? "", past: wasPast };
    const word = wordAt(layout.tokens, at);
    // "Rear tread 4 mm cracked": a value read may stand between.
    if (layout.tokens[at]?.is === "number" && !layout.taken.has(at)) {
      figures = true;
      continue;
    }
    if (among(past, word)) wasPast = true;
    else if (!layout.taken.has(at) && !among(gap, word) && !leadsToName(layout, at)) return null;
  }
  return null;
}

const isOfFigure = (layout: Layout, part: Part): boolean =>
  layout.known.vocabulary.defects.beside.where.includes(
    tokensOf(part)
      .map((at) => bare(layout.tokens, at) ?? "")
      .join(" "),
  );

/** "Rücklicht an der Heron geht nicht": words that stand for the sake of the name behind them. */
function leadsToName({ taken, tokens, known: { vocabulary } }: Layout, at: number): boolean {
  const word = wordAt(tokens, at);
  if (among(vocabulary.articles, word)) return taken.has(at + 1);
  return among(vocabulary.onBike, word) && (taken.has(at + 1) || (taken.has(at + 2) && among(vocabulary.articles, wordAt(tokens, at + 1))));
}

/** "Pannier broken on Heron": something unknown, on a bike that is named in the same breath. */
function stray(layout: Layout, part: Part): Sighting | null {
  if (!layout.named.some((name) => name.bikes.length > 0 && inside(name, part)) || tokensOf(part).length > 10) return null;
  const index = indexOf(layout.known.vocabulary.defects);
  for (const at of tokensOf(part)) {
    // "Plug gap": the name of what was read is no sign.
    const isKind = layout.phrases.kind.some((phrase) => at >= phrase.at && at <= phrase.to && phrase.to > phrase.at);
    const sign = layout.taken.has(at) || isKind ? null : longest(layout.tokens, at, part.to, index.stray);
    if (sign !== null) return { from: part.from, to: sign.to, kind: null, asks: true };
  }
  return null;
}

/** Not somebody else's, not planned, denied or mended before it, and not part of another word's phrase. */
function isOwn(layout: Layout, part: Part, seen: Sighting): boolean {
  const { vocabulary } = layout.known;
  const { defects } = vocabulary;
  const named = layout.named.some((name) => inside(name, part));
  const leading = tokensOf(part).filter((at) => at < seen.from && !layout.taken.has(at));
  const word = (at: number): string => wordAt(layout.tokens, at) ?? "";
  if (leading.some((at) => among(vocabulary.notDone, word(at)) || among(defects.mended, word(at)) || worksOn(layout, at))) return false;
  if (seen.kind === null && tokensOf(part).some((at) => among(vocabulary.notDone, word(at)) || isVerb(layout, at))) return false;
  const own = tokensOf(part).every((at) => layout.taken.has(at) || !(among(defects.others, word(at)) || isSomeones(layout.tokens[at])));
  if (!own) return false;
  // "Flat battery charger", "worn in".
  const behind = seen.to < part.to ? word(seen.to + 1) : "";
  if (among(defects.notBefore, behind) || among(defects.notBefore, `${word(seen.to)} ${behind}`)) return false;
  const before = seen.from - 1;
  if (before >= part.from && among(defects.none, word(before))) return false;
  const free =
    before < part.from ||
    layout.taken.has(before) ||
    layout.tokens[before]?.is !== "word" ||
    mayStandBefore(layout.known, word(before)) ||
    indexOf(defects).things.rules.has(word(before));
  return free || named;
}

/** "Headlight bulb blown, replaced", "oil leak at the plug, new washer fitted": mended since, as it seems, so it is asked. */
function mayBeMended(layout: Layout, next: Part | null): boolean {
  if (next === null || namesThing(layout, next)) return false;
  const { vocabulary } = layout.known;
  const words = tokensOf(next).flatMap((at) => wordAt(layout.tokens, at) ?? []);
  const isNew = words.some((word) => among(vocabulary.renewed, word));
  return (
    words.length <= (isNew ? 5 : 2) && words.some((word) => among(vocabulary.defects.mended, word)) && !words.some((word) => among(vocabulary.notDone, word))
  );
}

/** "Had an oil leak, fixed it": nothing stands open; "spongy after I bled it" does, and so does what must yet be fixed. */
function isMended(layout: Layout, part: Part, seen: Sighting, next: Part | null): boolean {
  const { vocabulary } = layout.known;
  const { mended, inVain, past } = vocabulary.defects;
  const says = (within: Part): boolean => {
    const words = tokensOf(within).map((at) => wordAt(layout.tokens, at));
    return words.some((word) => among(mended, word)) && !words.some((word) => among(inVain, word) || among(vocabulary.notDone, word));
  };
  const isPast = tokensOf({ from: part.from, to: seen.from - 1 }).some((at) => among(past, wordAt(layout.tokens, at)));
  return says({ from: seen.to + 1, to: part.to }) || (isPast && next !== null && says(next));
}

/** "Dave's": a name that owns something, of none of the speaker's bikes. */
const isSomeones = (token: Token | undefined): boolean => token?.is === "word" && /^\p{Lu}[\p{L}]+['’]s$/u.test(token.text);

/** A verb that does more than look. */
function worksOn(layout: Layout, at: number): boolean {
  const actions = under(layout.known.vocabulary.workDone, wordAt(layout.tokens, at));
  return actions !== undefined && !actions.some((action) => action === "inspect" || action === "test" || action === "measure");
}

function mayStandBefore({ vocabulary }: Known, word: string): boolean {
  const { defects, places, articles, around, beside, onBike, joins } = vocabulary;
  return [defects.before, defects.between, articles, around, beside, onBike, joins, ...Object.values(places)].some((list) => among(list, word));
}

function intentOf(layout: Layout, part: Part, seen: Sighting, used: Set<number>): NoteDefect {
  const meant = bikeAt(layout, { from: seen.from, to: seen.to });
  const [figure] = figuresOf(layout, [part], meant.bike);
  if (figure !== undefined) used.add(figure.figure.at);
  const day = dayAt(layout, part, [part]);
  const unit = figure?.unit ?? null;
  const wrongUnit = unit !== null && meant.bike !== null && unit !== meant.bike.unit;
  const gaps: Gap[] = [
    ...(seen.asks ? [{ need: "defect" as const }] : []),
    ...(meant.gap === null ? [] : [meant.gap]),
    ...(wrongUnit && meant.bike !== null ? [{ need: "unit" as const, options: [unit, meant.bike.unit] }] : []),
    ...(day.gap === null || day.span !== null ? [] : [day.gap]),
  ];
  return {
    do: "note defect",
    bike: meant.bike?.id ?? null,
    kind: seen.kind,
    words: wordsOf(layout, part, seen, figure?.figure.at ?? null),
    on: day.span?.from ?? day.on,
    odometer:
      figure === undefined ? null : { value: figure.figure.token.value, unit, typed: { text: figure.figure.token.text, unit: figure.figure.token.unitText } },
    gaps,
  };
}

/** The part as typed, without the bike's name, the day and the odometer at its ends. */
function wordsOf(layout: Layout, part: Part, seen: Sighting, figure: number | null): string {
  const { vocabulary } = layout.known;
  const isPlace = (at: number): boolean => Object.values(vocabulary.places).some((list) => among(list, wordAt(layout.tokens, at)));
  const idle = (at: number): boolean => {
    const word = wordAt(layout.tokens, at);
    if (layout.taken.has(at) || at === figure || layout.tokens[at]?.is === "break") return true;
    // Which end or side it is must not be lost.
    if (isPlace(at)) return false;
    return word !== null && [vocabulary.onBike, vocabulary.at, vocabulary.joins, vocabulary.articles].some((list) => among(list, word));
  };
  let [from, to] = [part.from, part.to];
  while (from < seen.from && (idle(from) || (!isPlace(from) && among(vocabulary.defects.between, wordAt(layout.tokens, from))))) from++;
  while (to > seen.to && idle(to)) to--;
  return layout.text.slice(layout.tokens[from]?.start, layout.tokens[to]?.end);
}
