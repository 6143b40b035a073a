// Which bikes a text names: by nickname, with one typing slip in a long name.

import type { BikeId } from "../core/ids.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { standsBeside } from "./phrases.ts";
import { foldWord, type Token } from "./scan.ts";

/** A bike named at tokens `from` to `to` (both included). */
export type Named = { readonly bikes: readonly BikeId[]; readonly typed: string; readonly from: number; readonly to: number };

/** Every naming of a bike. An unknown name behind "on" or "for" is kept with no bikes, so that it is asked about rather than passed over. */
export function bikesNamed(tokens: readonly Token[], known: Known): readonly Named[] {
  const found: Named[] = [];
  const names = known.bikes.map((bike) => ({ id: bike.id, words: foldWord(bike.nickname).split(/\s+/u) }));
  for (let at = 0; at < tokens.length; at++) {
    const hit = exactAt(tokens, at, names) ?? calledAt(tokens, at, known) ?? slipAt(tokens, at, names) ?? unknownAt(tokens, at, known);
    if (hit === null) continue;
    found.push(hit);
    at = hit.to;
  }
  return found;
}

type Name = { readonly id: BikeId; readonly words: readonly string[] };

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

/** "On the Kestrel", "my cruiser": a bike by a word of its make or model as its owner typed it, or by its kind or looks, behind a word that says that one is meant. Two that fit are asked about. */
function calledAt(tokens: readonly Token[], at: number, { bikes, vocabulary }: Known): Named | null {
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (before?.is !== "word" || token?.is !== "word") return null;
  const { definite, bikeWords, bikeSorts, bikeOnes } = vocabulary.measuring;
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
  const opens = tokens[at - 2];
  if (opens?.is !== "word" || !among(vocabulary.onBike, opens.folded)) return null;
  const next = tokens[at + 1];
  const one = next?.is === "word" && among(bikeSorts, word) && among(bikeOnes, next.folded) ? next : null;
  if (!ofKind && one === null) return null;
  const typed = one === null ? token.text : `${token.text} ${one.text}`;
  return { bikes: bikes.length === 1 ? bikes.map(({ id }) => id) : [], typed, from: at, to: one === null ? at : at + 1 };
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
  const before = tokens[at - 1];
  const token = tokens[at];
  if (before?.is !== "word" || token?.is !== "word") return null;
  const { vocabulary } = known;
  // In German every noun is written with a capital.
  if (vocabulary.language === "de") return null;
  if (!among(vocabulary.onBike, before.folded) || !/^\p{Lu}\p{Ll}/u.test(token.text)) return null;
  const word = token.folded;
  const other = among(vocabulary.dateWords, word) || among(vocabulary.beside, word) || Object.values(vocabulary.places).some((list) => among(list, word));
  return other ? null : { bikes: [], typed: token.text, from: at, to: at };
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
