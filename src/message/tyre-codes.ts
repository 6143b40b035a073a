// Which figures of a message are date codes of tyres, "rear tyre DOT 1417": told from the words around them, before anything else reads them.

import type { Known, Vocabulary } from "../core/reading/vocabulary.ts";
import { readTyreDate } from "../core/tyre/date-code.ts";
import { among } from "./among.ts";
import type { Part } from "./clauses.ts";
import type { NumberToken, Token } from "./scan.ts";
import { foldWord } from "./scan.ts";
import { withWeeks, withYears } from "./tyre-years.ts";

/** The tokens with what says when a tyre was made marked: its date code, week and year in words, a year alone. */
export const tyreDated = (text: string, tokens: readonly Token[], known: Known): readonly Token[] =>
  withYears(text, withTyreCodes(text, withWeeks(text, tokens, known), known), known);

/** The tokens with every date code marked, and the words that name one left out: the figure says the same without them. */
function withTyreCodes(text: string, tokens: readonly Token[], known: Known): readonly Token[] {
  const { codes } = known.vocabulary.measuring;
  const first = firstWords(codes);
  const mayName = tokens.some((token) => token.is === "word" && (first.has(token.folded) || TOUCHING.test(token.folded)));
  if (!mayName && !tokens.some((token) => isFour(token) || isThree(token))) return tokens;
  const split = mayName
    ? withStrokes(
        tokens.flatMap((token) => touching(token, codes)),
        known.vocabulary,
      )
    : tokens;
  const code = new Map<number, "said" | "maybe">();
  const gone = new Set<number>();
  if (mayName) for (const phrase of phrasesOf(split, codes)) nameIn(text, split, known.vocabulary, phrase, code, gone);
  for (const part of stretchesOf(split)) bareIn(split, known, part, code);
  if (code.size === 0) return tokens;
  return split.flatMap((token, at): readonly Token[] => {
    const said = code.get(at);
    return gone.has(at) ? [] : said !== undefined && token.is === "number" ? [{ ...token, units: [], code: said }] : [token];
  });
}

const firsts = new WeakMap<readonly string[], ReadonlySet<string>>();
function firstWords(phrases: readonly string[]): ReadonlySet<string> {
  const ready = firsts.get(phrases) ?? new Set(phrases.map((phrase) => foldWord(phrase).split(" ")[0] ?? ""));
  firsts.set(phrases, ready);
  return ready;
}

const byFirst = new WeakMap<readonly string[], ReadonlyMap<string, readonly (readonly string[])[]>>();
/** Phrases as their words, by the first of them, made once a list. */
function wordsByFirst(phrases: readonly string[]): ReadonlyMap<string, readonly (readonly string[])[]> {
  const ready = byFirst.get(phrases);
  if (ready !== undefined) return ready;
  const made = new Map<string, (readonly string[])[]>();
  for (const phrase of phrases) {
    const words = foldWord(phrase).split(" ");
    made.set(words[0] ?? "", [...(made.get(words[0] ?? "") ?? []), words]);
  }
  byFirst.set(phrases, made);
  return made;
}

/** "DOT1417", "DOT-1417": one word to the eye. */
const TOUCHING = /^(\p{L}{3,})(-?)(\d{3,4})$/u;
function touching(token: Token, codes: readonly string[]): readonly Token[] {
  const [, word = "", dash = "", digits = ""] = token.is === "word" ? (TOUCHING.exec(token.folded) ?? []) : [];
  if (token.is !== "word" || !among(codes, word)) return [token];
  const start = token.start + word.length + dash.length;
  return [
    { ...token, text: token.text.slice(0, word.length), folded: word, end: token.start + word.length },
    {
      ...{ is: "number", value: Number(digits), other: null, decimals: 0, fraction: null, units: [], text: digits, unitText: null, start },
      ...{ end: token.end, numberEnd: token.end },
    },
  ];
}

/** The codes with a stroke that stand right behind a word for one, as the four digits that they are. */
function withStrokes(tokens: readonly Token[], words: Vocabulary): readonly Token[] {
  const behind = new Set<number>();
  for (const { to } of phrasesOf(tokens, words.measuring.codes)) {
    let at = to + 1;
    while (isBetween(tokens[at], words, true)) at++;
    behind.add(at);
  }
  return behind.size === 0 ? tokens : tokens.map((token, at) => (behind.has(at) ? (withoutStroke(token) ?? token) : token));
}

/** The longest phrase of a list at each place. */
function phrasesOf(tokens: readonly Token[], phrases: readonly string[]): readonly Part[] {
  const found: Part[] = [];
  const first = wordsByFirst(phrases);
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    let longest = 0;
    for (const words of (token?.is === "word" ? first.get(token.folded) : undefined) ?? []) {
      const isHere = words.every((word, n) => {
        const other = tokens[at + n];
        return other?.is === "word" && other.folded === word;
      });
      if (isHere && words.length > longest) longest = words.length;
    }
    if (longest === 0) continue;
    found.push({ from: at, to: at + longest - 1 });
    at += longest - 1;
  }
  return found;
}

/** "22/23": week and year with a stroke between, which only a word for it makes a code. */
const STROKE = /^(\d{2})\/(\d{2})$/u;
/** The digits of a bare figure; null of one with a unit, a point or a stroke. */
const digitsOf = (token: Token | undefined): string | null => {
  if (token?.is !== "number" || token.units.length > 0) return null;
  const [, week = "", year = ""] = token.fraction === null ? (STROKE.exec(token.text) ?? []) : [];
  return /^\d{3,4}$/u.test(token.text) ? token.text : week === "" ? null : week + year;
};
function withoutStroke(token: Token | undefined): Token | undefined {
  const [, week = "", year = ""] = token?.is === "number" && token.unitText === null ? (STROKE.exec(token.text) ?? []) : [];
  if (week === "" || token?.is !== "number" || Number(week) < 1 || Number(week) > 53) return token;
  return { ...token, value: Number(week + year), fraction: null, other: null, units: [] };
}
const isFour = (token: Token | undefined): boolean => digitsOf(token)?.length === 4;
const isThree = (token: Token | undefined): boolean => digitsOf(token)?.length === 3;

/** What a tyre bears behind "DOT": plant and make in groups of capitals, the date code last. Source: 49 CFR 574.5. */
const WHOLE = /^\s*:?\s*(?:(?=[A-Z0-9]{0,3}[A-Z])[A-Z0-9]{2,4}\s+){1,3}(?=(\d{4})(?![\p{L}\p{N}]))/u;

/** Marks the codes that a phrase names: the one right behind it, then each beside its end of the bike; else those before it. */
function nameIn(text: string, tokens: readonly Token[], words: Vocabulary, { from, to }: Part, code: Map<number, "said" | "maybe">, gone: Set<number>): void {
  const before = code.size;
  const whole = WHOLE.exec(text.slice(tokens[to]?.end, (tokens[to]?.end ?? 0) + LONGEST_WHOLE));
  let at = to + 1;
  if (whole !== null) {
    const start = (tokens[to]?.end ?? 0) + whole[0].length;
    const last = tokens.findIndex((token, n) => n > to && token.start === start);
    for (let n = to + 1; n < last; n++) gone.add(n);
    if (isFour(tokens[last])) code.set(last, "said");
    at = last + 1;
  } else {
    while (isBetween(tokens[at], words, false)) at++;
    // Three digits only right behind the word.
    if (digitsOf(tokens[at]) === null) at = to + 1;
    else code.set(at++, "said");
    // "Date codes 2319 and 0120": which end each is of will be asked.
    const joint = isJoint(tokens[at], words) ? at + 1 : at;
    if (at > to + 1 && isFour(tokens[joint]) && !hasEndBeside(tokens, words, joint)) code.set(joint, "said");
  }
  atEnds(tokens, words, at, 1, code);
  if (code.size === before) atEnds(tokens, words, from - 1, -1, code);
  // "Front 36 psi, 2319 date code": right before the word that names it.
  if (code.size === before && isFour(tokens[from - 1]) && tokens[to + 1]?.is !== "number") code.set(from - 1, "said");
  if (code.size > before) for (let n = from; n <= to; n++) gone.add(n);
}
const LONGEST_WHOLE = 30;

/** Marks four digits that stand beside an end of the bike, one after the other in one direction, as long as nothing else stands between. */
function atEnds(tokens: readonly Token[], words: Vocabulary, from: number, step: 1 | -1, code: Map<number, "said" | "maybe">): void {
  for (let at = from; at >= 0 && at < tokens.length; at += step) {
    const token = tokens[at];
    if (isFour(token)) {
      if (!hasEndBeside(tokens, words, at)) return;
      code.set(at, "said");
    } else if (!isBetween(token, words, true)) return;
  }
}

const isJoint = (token: Token | undefined, { and }: Vocabulary): boolean =>
  token?.is === "word" ? among(and, token.folded) : token?.is === "break" && "/&".includes(token.mark);

const hasEndBeside = (tokens: readonly Token[], words: Vocabulary, at: number): boolean =>
  [-1, 1].some((step) => {
    let n = at + step;
    while (isBetween(tokens[n], words, false)) n += step;
    return isEnd(tokens[n], words);
  });

const isEnd = (token: Token | undefined, { places, measuring }: Vocabulary): boolean =>
  token?.is === "word" && [places.front, places.rear, places.both, measuring.tyre].some((list) => among(list, token.folded));

/** May a token stand between a code and what names it, or between two codes? */
const isBetween = (token: Token | undefined, words: Vocabulary, withEnds: boolean): boolean =>
  token?.is === "word"
    ? among(words.measuring.codeBeside, token.folded) || (withEnds && isEnd(token, words))
    : token?.is === "break" && (":=#".includes(token.mark) || (withEnds && ",/&".includes(token.mark)));

/** What lies between two marks. */
function stretchesOf(tokens: readonly Token[]): readonly Part[] {
  const parts: Part[] = [];
  let from = 0;
  for (let at = 0; at <= tokens.length; at++) {
    if (tokens[at] !== undefined && tokens[at]?.is !== "break") continue;
    if (at > from) parts.push({ from, to: at - 1 });
    from = at + 1;
  }
  return parts;
}

/** "Rear tyre 1417", "tyres are 1417 both", "rear 1417": nothing but tyres or their ends and four digits that can be a week and a year, and no year by itself. */
function bareIn(tokens: readonly Token[], known: Known, { from, to }: Part, code: Map<number, "said" | "maybe">): void {
  const { measuring, articles } = known.vocabulary;
  const figures: number[] = [];
  let [tyres, ends] = [0, 0];
  for (let at = from; at <= to; at++) {
    const token = tokens[at];
    if (token?.is === "number") {
      // "Rear tyre says 409": of three digits only where it is said that the tyre bears them; "says 150" may be how wide it is.
      const before = tokens[at - 1];
      const borne = before?.is === "word" && among(measuring.bears, before.folded) && !/0$/u.test(token.text);
      if (!(isFour(token) || (borne && isThree(token))) || code.has(at) || /^(?:19|20)\d\d/u.test(token.text)) return;
      figures.push(at);
    } else if (token?.is === "word") {
      if (among(measuring.tyre, token.folded)) tyres++;
      else if (isEnd(token, known.vocabulary)) ends++;
      else if (!isBetween(token, known.vocabulary, true) && !among(articles, token.folded) && !isOfName(token.folded, known)) return;
    }
  }
  if (tyres + ends === 0 || figures.length === 0 || figures.length > 2) return;
  const dates = figures.map((at) => readTyreDate(tokens[at]?.is === "number" ? (tokens[at] as NumberToken).text : "", known.today));
  if (dates.some(({ is }) => is === "refused")) return;
  const years = Number(known.today.slice(0, 4));
  const sure =
    tyres > 0 &&
    dates.every((date, n) => (date.is === "made" && years - date.year <= OLDEST) || isThree(tokens[figures[n] ?? -1])) &&
    !figures.some((at) => known.bikes.some(({ lastFigure }) => mayBeDial(tokens[at], lastFigure)));
  for (const at of figures) code.set(at, sure ? "said" : "maybe");
}

/** Is a word one of the name of some bike? */
const isOfName = (word: string, { bikes }: Known): boolean => bikes.some(({ nickname }) => foldWord(nickname).split(" ").includes(word));

/** Years; hardly a tyre is ridden on that is older. */
const OLDEST = 20;
/** How far a dial may have gone since it was read last, in its own unit. */
const AHEAD = 5000;
const mayBeDial = (token: Token | undefined, last: number | null): boolean =>
  token?.is === "number" && (last === null || (token.value >= last && token.value <= last + AHEAD));
