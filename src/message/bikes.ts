// Which bikes a text names: by nickname, with one typing slip in a long name.

import type { BikeId } from "../core/ids.ts";
import { plain } from "../core/quantity/number.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { isAddressed } from "./names.ts";
import { standsBeside } from "./phrases.ts";
import { foldWord, type Token } from "./scan.ts";

/** A bike named at tokens `from` to `to` (both included). */
export type Named = {
  readonly bikes: readonly BikeId[];
  readonly typed: string;
  readonly from: number;
  readonly to: number;
  /** A name that nobody has said what it means. */
  readonly unheard?: true;
  /** Somebody who is spoken to. */
  readonly somebody?: true;
};

/** Every naming of a bike. An unknown name behind "on" or "for" is kept with no bikes, so that it is asked about rather than passed over. */
export function bikesNamed(tokens: readonly Token[], known: Known): readonly Named[] {
  const found: Named[] = [];
  const { names, byNames } = namesOf(known.bikes);
  for (let at = 0; at < tokens.length; at++) {
    const hit =
      exactAt(tokens, at, names) ??
      byNameAt(tokens, at, known, byNames) ??
      calledAt(tokens, at, known) ??
      slipAt(tokens, at, names) ??
      unknownAt(tokens, at, known) ??
      addressedAt(tokens, at, known);
    if (hit === null) continue;
    at = hit.to;
    // "Bramble, unlike Heron, has 28 rear": nothing is said of it.
    const before = tokens[hit.from - 1];
    if (before?.is === "word" && among(known.vocabulary.unlike, before.folded)) continue;
    found.push(hit);
  }
  return eitherOf(tokens, withoutSomebody(tokens, found), known);
}

/** "Pete, Heron is at 14,300": who is told of a bike that is named; "Pete: 34/38" beside it is another's. */
function withoutSomebody(tokens: readonly Token[], named: readonly Named[]): readonly Named[] {
  if (!named.some(({ somebody }) => somebody === true) || !named.some(({ bikes }) => bikes.length > 0)) return named;
  return named.filter(({ somebody, to }) => {
    const next = tokens[to + 1];
    return somebody !== true || (next?.is === "break" && next.mark === ":");
  });
}

/** "Heron or Bramble": either of them, which is asked. */
function eitherOf(tokens: readonly Token[], named: readonly Named[], { vocabulary }: Known): readonly Named[] {
  const found: Named[] = [];
  for (const name of named) {
    const [before, or] = [found.at(-1), tokens[name.from - 1]];
    const isOr = or?.is === "word" && among(vocabulary.either, or.folded) && before?.to === name.from - 2;
    if (before === undefined || !isOr) found.push(name);
    else
      found[found.length - 1] = {
        bikes: [...new Set([...before.bikes, ...name.bikes])],
        typed: `${before.typed} ${or.text} ${name.typed}`,
        from: before.from,
        to: name.to,
      };
  }
  return found;
}

type Name = { readonly id: BikeId; readonly words: readonly string[] };
type Names = { readonly names: readonly Name[]; readonly byNames: readonly Name[] };
const made = new WeakMap<Known["bikes"], Names>();

/** The nicknames of some bikes and what their owner calls them, folded. */
function namesOf(bikes: Known["bikes"]): Names {
  const ready = made.get(bikes);
  if (ready !== undefined) return ready;
  // "Dad's Bike": whose it is is compared without its s, as every word of a message is.
  const nameOf = (id: BikeId, name: string): Name => ({
    id,
    words: foldWord(plain(name))
      .split(/\s+/u)
      .map((word) => (word.endsWith("'s") ? word.slice(0, -2) : word)),
  });
  const names = {
    names: bikes.map(({ id, nickname }) => nameOf(id, nickname)),
    byNames: bikes.flatMap(({ id, byNames = [] }) => byNames.map((name) => nameOf(id, name))),
  };
  made.set(bikes, names);
  return names;
}

function folded(token: Token | undefined): string {
  if (token === undefined) return "";
  if (token.is === "break") return token.mark;
  if (token.is === "number") return foldWord(token.text);
  return token.text.endsWith("'s") ? token.folded.slice(0, -2) : token.folded;
}

function exactAt(tokens: readonly Token[], at: number, names: readonly Name[]): Named | null {
  const first = folded(tokens[at]);
  let best: Name | null = null;
  for (const name of names)
    if (name.words[0] === first && name.words.length > (best?.words.length ?? 0) && name.words.every((word, n) => folded(tokens[at + n]) === word)) best = name;
  if (best === null) return null;
  return { bikes: [best.id], typed: best.words.join(" "), from: at, to: at + best.words.length - 1 };
}

/** What the member has said a bike is called: behind "the", "my" or "on", or where a thought begins, since such words are said of other things too. */
function byNameAt(tokens: readonly Token[], at: number, { vocabulary }: Known, byNames: readonly Name[]): Named | null {
  if (byNames.length === 0) return null;
  const before = tokens[at - 1];
  const opened = before?.is === "word" && (among(vocabulary.measuring.definite, before.folded) || among(vocabulary.onBike, before.folded));
  return opened || before === undefined || before.is === "break" ? exactAt(tokens, at, byNames) : null;
}

/** "On the Kestrel", "my cruiser": a bike by a word of its make or model as its owner typed it, or by its kind or looks, behind a word that says that one is meant. Two that fit are asked about. */
function calledAt(tokens: readonly Token[], at: number, known: Known): Named | null {
  const { bikes, vocabulary } = known;
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (before?.is !== "word" || token?.is !== "word") return null;
  const { definite, bikeWords, bikeOthers } = vocabulary.measuring;
  if (!among(definite, before.folded) && !among(vocabulary.onBike, before.folded)) return null;
  const word = folded(token);
  const ofKind = among(bikeWords, word);
  const isWord = (text: string | null | undefined): boolean =>
    text != null &&
    foldWord(text)
      .split(/[^\p{L}\p{N}]+/u)
      .includes(word);
  // A model may be called by a word that means something else: "Road", "Front".
  const ofModel = word.length >= 3 && /\p{L}/u.test(word) && !standsBeside(word, vocabulary);
  const meant = bikes.filter((bike) => (ofModel && isWord(bike.model)) || (ofKind && isWord(bike.kind)));
  if (meant.length > 0) return { bikes: meant.map(({ id }) => id), typed: token.text, from: at, to: at };
  // "On my scrambler", "on the big one": the only bike there is, else asked about. "My old one did 90,000" is another.
  const to = ofKind ? at : (callEnd(tokens, at, known) ?? at - 1);
  if (to < at || !isOpened(tokens, at, to, known)) return null;
  const typed = tokens
    .slice(at, to + 1)
    .map(({ is, ...each }) => (is === "break" ? "" : (each as { text: string }).text))
    .join(" ");
  // The other one is none of one, and another of several each time.
  if (among(bikeOthers, word)) return { bikes: [], typed, from: at, to };
  return bikes.length === 1 ? { bikes: bikes.map(({ id }) => id), typed, from: at, to } : { bikes: [], typed, from: at, to, unheard: true };
}

/** Where a name by looks or a fond one ends: "big one", "old lady". */
function callEnd(tokens: readonly Token[], at: number, { vocabulary: { measuring } }: Known): number | null {
  const [word, next] = [folded(tokens[at]), folded(tokens[at + 1])];
  if (among(measuring.bikeSorts, word) && among(measuring.bikeOnes, next)) return at + 1;
  return among(measuring.bikePets, `${word} ${next}`) ? at + 1 : among(measuring.bikePets, word) ? at : null;
}

/** Behind "on the", or at the beginning of a thought that goes on with what the dial shows or with figures: "the big one is at 14,820", "my scrambler: 33 front". */
function isOpened(tokens: readonly Token[], at: number, to: number, { vocabulary }: Known): boolean {
  const [opens, next] = [tokens[at - 2], tokens[to + 1]];
  if (opens?.is === "word") return among(vocabulary.onBike, opens.folded);
  if (opens?.is === "number" || next === undefined || !among(vocabulary.measuring.definite, folded(tokens[at - 1]))) return false;
  if (next.is === "word") return among(vocabulary.stands, next.folded) || among(vocabulary.at, next.folded);
  return next.is === "number" || next.mark === ":" || next.mark === ",";
}

function slipAt(tokens: readonly Token[], at: number, names: readonly Name[]): Named | null {
  const token = tokens[at];
  if (token?.is !== "word" || token.text.length < 4) return null;
  const word = folded(token);
  const isNear = ({ words: [name = "", ...more] }: Name): boolean => more.length === 0 && name.length >= 5 && oneSlip(word, name);
  if (!names.some(isNear)) return null;
  const near = names.filter(isNear);
  return near.length === 0 ? null : { bikes: near.map((name) => name.id), typed: token.text, from: at, to: at };
}

/** "on Blub": a capitalised word behind "on" or "for" that is no day and no unit is meant as a bike. */
function unknownAt(tokens: readonly Token[], at: number, known: Known): Named | null {
  const { vocabulary } = known;
  const [token, right] = [tokens[at], tokens[at - 1]];
  // "On the Duchess" as well as "on Blub".
  const before = right?.is === "word" && among(vocabulary.measuring.definite, right.folded) ? tokens[at - 2] : right;
  if (before?.is !== "word" || token?.is !== "word") return null;
  // In German every noun is written with a capital.
  if (vocabulary.language === "de") return null;
  if (!among(vocabulary.onBike, before.folded) || !/^\p{Lu}\p{Ll}/u.test(token.text)) return null;
  const word = token.folded;
  const other = among(vocabulary.dateWords, word) || among(vocabulary.beside, word) || Object.values(vocabulary.places).some((list) => among(list, word));
  return other ? null : { bikes: [], typed: token.text, from: at, to: at, unheard: true };
}

/** Somebody's name before figures, which may be theirs: asked about, and not remembered as what a bike is called. */
function addressedAt(tokens: readonly Token[], at: number, { vocabulary }: Known): Named | null {
  const token = tokens[at];
  return token?.is === "word" && isAddressed(tokens, at, vocabulary) ? { bikes: [], typed: token.text, from: at, to: at, somebody: true } : null;
}

/** Are two words one insertion, deletion, substitution or swap of neighbours apart? */
export function oneSlip(a: string, b: string): boolean {
  if (a === b || Math.abs(a.length - b.length) > 1) return false;
  let at = 0;
  while (at < a.length && at < b.length && a[at] === b[at]) at++;
  const [restA, restB] = [a.slice(at), b.slice(at)];
  if (restA.slice(1) === restB || restA === restB.slice(1) || restA.slice(1) === restB.slice(1)) return true;
  return restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2);
}
