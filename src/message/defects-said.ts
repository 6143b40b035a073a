// What a message says is wrong with a bike: a thing beside a sign of something wrong, and what mends what stands open.
// Talk of other people's bikes, questions, wishes and things that only sound like it are none; where it is in doubt, the member is asked.

import type { DefectWords } from "../core/reading/defect-words.ts";
import type { Gap, NoteDefect } from "../core/reading/intent.ts";
import type { Known, KnownBike } from "../core/reading/vocabulary.ts";
import { among, under } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { bikeAt, dayAt, inside, type Layout } from "./layout.ts";
import { isVerb, tokensOf } from "./pieces.ts";
import { foldWord, type Token } from "./scan.ts";
import { figuresOf } from "./work-when.ts";

export type DefectsSaid = { readonly intents: readonly NoteDefect[]; readonly used: ReadonlySet<number> };

/** Where a defect stands: its tokens, its kind (null when the thing is unknown), and whether the member is asked. */
type Sighting = { readonly from: number; readonly to: number; readonly kind: string | null; readonly asks: boolean };

export function defectsSaid(layout: Layout, clause: Clause): DefectsSaid {
  const used = new Set<number>();
  const intents: NoteDefect[] = [];
  if (!maySaySo(layout, clause)) return { intents, used };
  for (const part of commaParts(layout, clause)) {
    const seen = sightingIn(layout, part);
    if (seen === null || !isOwn(layout, part, seen)) continue;
    for (let at = seen.from; at <= seen.to; at++) used.add(at);
    intents.push(intentOf(layout, part, seen, used));
  }
  return { intents, used };
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
  const kinds = new Set(thingsIn(layout, part));
  const said = sidesOf(
    layout,
    tokensOf(part).map((at) => wordAt(layout.tokens, at) ?? ""),
  );
  const meant = open.filter(({ kind, words }) => {
    if (kind === null || !kinds.has(kind)) return false;
    const sides = sidesOf(layout, words.split(/\s+/u).map(foldWord));
    return said.length === 0 || sides.length === 0 || sides.some((side) => said.includes(side));
  });
  // Of several that it could be, the member says which.
  return meant.length === 1 ? meant.map(({ id }) => id) : [];
}

/** Does a part name a thing that can be wrong with a bike? */
export function namesThing(layout: Layout, part: Part): boolean {
  const { defects, places } = layout.known.vocabulary;
  const { things, whole } = indexOf(defects);
  // The bike itself and its ends are named by the way.
  const byTheWay = [...defects.itself, ...Object.values(places).flat()];
  return tokensOf(part).some((at) => {
    const found = longest(layout.tokens, at, part.to, things) ?? longest(layout.tokens, at, part.to, whole);
    return found !== null && !(found.to === at && among(byTheWay, bare(layout.tokens, at)));
  });
}

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
function commaParts(layout: Layout, clause: Clause): readonly Part[] {
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
      const one = longest(tokens, at, part.to, first);
      if (one === null) continue;
      const found = beyond(layout, one.to + 1, part.to, second, gap, one.rules);
      if (found !== null) return { from: at, to: found.to, kind: found.kind, asks: found.past };
    }
  }
  return stray(layout, part);
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
  for (let at = from; at <= Math.min(to, from + 5); at++) {
    const found = longest(layout.tokens, at, to, index, rules);
    const [rule] = found?.rules ?? [];
    if (found !== null && rule !== undefined) return { to: found.to, kind: rule.split("/")[0] ?? "", past: wasPast };
    const word = wordAt(layout.tokens, at);
    if (among(past, word)) wasPast = true;
    else if (!layout.taken.has(at) && !among(gap, word) && !leadsToName(layout, at)) return null;
  }
  return null;
}

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
    const sign = layout.taken.has(at) ? null : longest(layout.tokens, at, part.to, index.stray);
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
  if (among(defects.notBefore, word(seen.to + 1)) && seen.to < part.to) return false;
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
  const idle = (at: number): boolean => {
    const word = wordAt(layout.tokens, at);
    if (layout.taken.has(at) || at === figure || layout.tokens[at]?.is === "break") return true;
    return word !== null && [vocabulary.onBike, vocabulary.at, vocabulary.joins, vocabulary.articles].some((list) => among(list, word));
  };
  let [from, to] = [part.from, part.to];
  while (from < seen.from && (idle(from) || among(vocabulary.defects.between, wordAt(layout.tokens, from)))) from++;
  while (to > seen.to && idle(to)) to--;
  return layout.text.slice(layout.tokens[from]?.start, layout.tokens[to]?.end);
}

type Index = {
  readonly things: Table;
  readonly signs: Table;
  readonly whole: Table;
  readonly stray: Table;
  /** Words that a thing, a sign or a whole phrase begins with. */
  readonly firsts: ReadonlySet<string>;
  /** The rules of the bike itself. */
  readonly ofBike: readonly string[];
  /** A thing and then a sign or a sign and then a thing, with the words that may stand between. */
  readonly pairs: readonly (readonly [Table, Table, readonly string[]])[];
};

/** Phrases with their rules, and the words that any of them begins with: most words of a message begin none. */
type Table = { readonly rules: ReadonlyMap<string, readonly string[]>; readonly firsts: ReadonlySet<string> };
const tableOf = (rules: ReadonlyMap<string, readonly string[]>): Table => ({
  rules,
  firsts: new Set([...rules.keys()].map((phrase) => phrase.split(" ")[0] ?? "")),
});

const indexes = new WeakMap<DefectWords, Index>();

/** Phrases with the rules they belong to ("soft brake/0"), made once a language. */
function indexOf(words: DefectWords): Index {
  const ready = indexes.get(words);
  if (ready !== undefined) return ready;
  const [things, signs, whole, strays] = [new Map<string, string[]>(), new Map<string, string[]>(), new Map<string, string[]>(), new Map<string, string[]>()];
  const put = (into: Map<string, string[]>, phrase: string, rule: string): void => void into.set(phrase, [...(into.get(phrase) ?? []), rule]);
  for (const [kind, rules] of Object.entries(words.kinds))
    for (const [n, rule] of rules.entries()) {
      for (const thing of rule.things) put(things, thing, `${kind}/${n}`);
      for (const sign of rule.signs) put(signs, sign, `${kind}/${n}`);
    }
  for (const [kind, phrases] of Object.entries(words.whole)) for (const phrase of phrases) put(whole, phrase, kind);
  for (const sign of words.stray) put(strays, sign, "");
  const tables = { things: tableOf(things), signs: tableOf(signs), whole: tableOf(whole), stray: tableOf(strays) };
  const firsts = new Set([tables.things, tables.signs, tables.whole].flatMap((table) => [...table.firsts]));
  const made: Index = {
    ...tables,
    firsts,
    ofBike: words.itself.flatMap((word) => things.get(word) ?? []),
    pairs: [
      [tables.things, tables.signs, words.between],
      [tables.signs, tables.things, words.joins],
    ],
  };
  indexes.set(words, made);
  return made;
}

const LONGEST_PHRASE = 5;

/** "The light's out": what is short for "is" belongs to no thing's name. */
const bare = (tokens: readonly Token[], at: number): string | null => {
  const word = wordAt(tokens, at);
  return word?.endsWith("'s") === true ? word.slice(0, -2) : word;
};

/** The longest phrase at a token that belongs to one of some rules; a longer one of no rule wanted does not hide it. */
function longest(
  tokens: readonly Token[],
  at: number,
  to: number,
  { rules: table, firsts }: Table,
  wanted: readonly string[] | null = null,
): { readonly to: number; readonly rules: readonly string[] } | null {
  if (!firsts.has(bare(tokens, at) ?? "")) return null;
  let phrase = "";
  let best: { readonly to: number; readonly rules: readonly string[] } | null = null;
  for (let end = at; end <= Math.min(to, at + LONGEST_PHRASE - 1); end++) {
    const word = bare(tokens, end);
    if (word === null) break;
    phrase = phrase === "" ? word : `${phrase} ${word}`;
    const rules = table.get(phrase)?.filter((rule) => wanted === null || wanted.includes(rule)) ?? [];
    if (rules.length > 0) best = { to: end, rules };
  }
  return best;
}
