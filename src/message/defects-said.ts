// What a message says is wrong with a bike: a thing beside a sign of something wrong, and what mends what stands open.
// Talk of other people's bikes, questions, wishes and things that only sound like it are none; where it is in doubt, the member is asked.

import { dimensionOf } from "../core/quantity/units.ts";
import type { Gap, NoteDefect } from "../core/reading/intent.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Clause, isOtherEnd, type Part, wordAt } from "./clauses.ts";
import { bare, indexOf, longest, NO_RULES, type Table } from "./defect-index.ts";
import { isMended, mayBeMended } from "./defects-mended.ts";
import { bikeAt, dayAt, inside, type Layout } from "./layout.ts";
import { isAnd, isVerb, tokensOf } from "./pieces.ts";
import type { Token } from "./scan.ts";
import { namesThing } from "./things-named.ts";
import { figuresOf } from "./work-when.ts";

/** `rest`: the clause without what a verb says as a sign: "rear tyre done for" is no work done. */
export type DefectsSaid = { readonly intents: readonly NoteDefect[]; readonly used: ReadonlySet<number>; readonly rest: Clause };

/** Where a defect stands: its tokens, its kind (null when the thing is unknown), and whether the member is asked. `figures`: those in it are of it too. */
type Sighting = {
  readonly from: number;
  readonly to: number;
  readonly kind: string | null;
  readonly asks: boolean;
  readonly figures?: true;
  /** What else may be wrong with the thing that leads it. */
  readonly of?: readonly string[];
};

export function defectsSaid(layout: Layout, clause: Clause): DefectsSaid {
  const used = new Set<number>();
  const intents: NoteDefect[] = [];
  let rest = clause;
  if (!maySaySo(layout, clause)) return { intents, used, rest };
  const parts = commaParts(layout, clause);
  for (const [n, said] of parts.entries()) {
    const found = sightingIn(layout, said);
    if (found === null) continue;
    const own = new Set<number>();
    const next = parts[n + 1] ?? null;
    const noted = notedAs(layout, said, found, next, own);
    intents.push(...noted);
    if (noted.length > 0) {
      intents.push(...furtherOf(layout, said, found, next, noted, own));
      intents.push(...othersBehind(layout, said, next, noted, own));
    }
    const all = [...own].filter((each) => !used.has(each));
    for (const each of all) used.add(each);
    // "Front tyre bald at 14,300": seen there, and no tyre was fitted.
    const isDated = noted.some(({ odometer }) => odometer !== null);
    const at = isDated ? all : all.filter((each) => layout.tokens[each]?.is !== "number");
    if (isDated || at.some((each) => isVerb(layout, each))) rest = without(rest, { from: Math.min(...at), to: Math.max(...at) });
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

/** "Rear tyre squared off and cracked": further signs of the same thing behind the first, of kinds that are not noted yet. */
function furtherOf(layout: Layout, said: Part, seen: Sighting, next: Part | null, noted: readonly NoteDefect[], used: Set<number>): readonly NoteDefect[] {
  const more: NoteDefect[] = [];
  let [at, to] = [seen.to + 1, said.to];
  for (let n = 0; n < MOST_FURTHER && seen.of !== undefined; n++) {
    // "Squared off, cracked": the part behind the comma, where nothing but the sign is said in it.
    if (at > to && next !== null && to === said.to) [at, to] = [next.from, next.to];
    const found = furtherIn(layout, at, to, seen.of);
    if (found === null) return more;
    at = found.to + 1;
    const sighted = { from: seen.from, to: found.to, kind: found.kind, asks: seen.asks };
    const isNew = (each: NoteDefect): boolean => ![...noted, ...more].some(({ kind }) => kind === each.kind);
    more.push(...notedAs(layout, { from: said.from, to }, sighted, null, used).filter(isNew));
  }
  return more;
}
const MOST_FURTHER = 3;

/** "Fork seal leaking and headlight out": what is wrong with other things, each behind an "and" of the same part. Nobody lists more in one breath. */
function othersBehind(layout: Layout, said: Part, next: Part | null, noted: readonly NoteDefect[], used: Set<number>): readonly NoteDefect[] {
  const more: NoteDefect[] = [];
  const isNew = ({ kind }: NoteDefect): boolean => ![...noted, ...more].some((each) => each.kind === kind);
  let last = tokensOf(said).findLast((at) => used.has(at)) ?? said.from;
  for (let n = 0; n < MOST_OTHERS; n++) {
    const and = firstAnd(layout, last + 1, said.to);
    const behind = { from: (and ?? said.to) + 1, to: said.to };
    const found = and === null ? null : sightingIn(layout, behind);
    if (found === null) return more;
    more.push(...notedAs(layout, behind, found, next, used).filter(isNew));
    last = Math.max(found.to, last + 1);
  }
  return more;
}
const MOST_OTHERS = 8;

function firstAnd(layout: Layout, from: number, to: number): number | null {
  for (let at = from; at <= to; at++) if (isAnd(layout, at)) return at;
  return null;
}

/** A sign of some rules behind nothing but joins and words that weigh it, with nothing behind it that it could be of: "and cracked mirror". */
function furtherIn(layout: Layout, from: number, to: number, rules: readonly string[]): { readonly to: number; readonly kind: string } | null {
  const { tokens, known } = layout;
  const { defects, around, onBike, at: atWords } = known.vocabulary;
  let at = from;
  while (at <= to && at - from < MOST_FURTHER && (isAnd(layout, at) || among(defects.between, wordAt(tokens, at)))) at++;
  const found = longest(tokens, at, to, indexOf(defects).signs, rules);
  const [rule] = found?.rules ?? [];
  if (found === null || rule === undefined) return null;
  const behind = wordAt(tokens, found.to + 1);
  const isOver =
    found.to >= to || behind === null || isAnd(layout, found.to + 1) || [defects.between, around, onBike, atWords].some((list) => among(list, behind));
  return isOver && !namesThing(layout, { from: found.to + 1, to }) ? { to: found.to, kind: rule.split("/")[0] ?? "" } : null;
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

/** Parts between commas, whatever is planned or denied in them: "not working" says that something is wrong. */
export function commaParts(layout: Layout, clause: Clause): readonly Part[] {
  const parts: Part[] = [];
  let from = clause.from;
  for (let at = clause.from; at <= clause.to + 1; at++) {
    const token = layout.tokens[at];
    if (at > from && isOtherEnd(layout.tokens, at, layout.known)) {
      parts.push({ from, to: at - 1 });
      from = at;
    }
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
      if (found !== null) return { from: at, to: found.to, kind: found.kind, asks: found.past, ...(first === index.things ? { of: one.rules } : {}) };
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
  // "Adjusters at their end": a word of the sign itself names no owner.
  const isOf = (at: number): boolean => among(defects.others, word(at)) || isSomeones(layout.tokens[at]);
  const own = tokensOf(part).every((at) => (at > seen.from && at <= seen.to) || layout.taken.has(at) || !isOf(at));
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
