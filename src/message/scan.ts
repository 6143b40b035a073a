// The message as tokens: words and numbers with their places, the parts that are not the member's own words blanked out.

import { type NumberStyle, type ParsedNumber, parseNumber, plain } from "../core/quantity/number.ts";
import { parseUnit, type UnitNames } from "../core/quantity/parse.ts";
import type { UnitId } from "../core/quantity/units.ts";

/** `folded`: as words are compared. */
export type WordToken = { readonly is: "word"; readonly text: string; readonly folded: string; readonly start: number; readonly end: number };
export type NumberToken = {
  readonly is: "number";
  readonly value: number;
  readonly other: number | null;
  readonly decimals: number;
  readonly fraction: number | null;
  readonly units: readonly UnitId[];
  /** The figure with its unit as typed. */
  readonly text: string;
  /** The unit word as typed, null when there was none. */
  readonly unitText: string | null;
  readonly start: number;
  readonly end: number;
  /** A letter that touched it stands as a word of its own. */
  readonly cut?: true;
  /** A letter stands for a nought in it: it is asked about. */
  readonly slip?: true;
  /** It is a tyre's date code by the words around it, or may be one, or only says in which year it was made. */
  readonly code?: "said" | "maybe" | "year";
  /** Ends of the figure alone. */
  readonly numberEnd: number;
};
export type BreakToken = { readonly is: "break"; readonly mark: string; readonly start: number; readonly end: number };
export type Token = WordToken | NumberToken | BreakToken;

/** Code blocks, inline code, spoilers, quoted lines, links and mentions say nothing about the member's own bike. Lengths stay the same. */
export function ownWords(text: string): string {
  const blank = (found: string): string => " ".repeat(found.length);
  const own = plain(text);
  // Most messages hold none of these marks.
  if (!/[`|>]|:\/\//u.test(own)) return own;
  return own
    .replace(/```[^`]*(?:```|$)/gu, blank)
    .replace(/`[^`\n]*`/gu, blank)
    .replace(/\|\|[^|]*\|\|/gu, blank)
    .replace(/^ {0,3}>[^\n]*$/gmu, blank)
    .replace(/https?:\/\/[^\s]*/giu, blank)
    .replace(/<[@#:a][^>\s]{0,80}>/gu, blank);
}

/** Words that change what stands behind them: those of dates ("14,220 in October"), the letters for the ends of a bike ("36r") and for the left of it ("3 l 2.5 r"), and short forms whose point ends nothing ("incl. its plate"). */
export type Around = {
  readonly isDateWord: (word: string) => boolean;
  readonly isEnd: (letter: string) => boolean;
  readonly isLeft: (letter: string) => boolean;
  readonly isShort: (word: string) => boolean;
};
const NONE: Around = { isDateWord: () => false, isEnd: () => false, isLeft: () => false, isShort: () => false };

/** Splits a text into tokens, in time linear in its length. */
export function scan(text: string, units: UnitNames, style: NumberStyle, words: Around = NONE): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const c = text[at] ?? "";
    if (c === " " || c === "\t") {
      at++;
      continue;
    }
    const isFigure = startsNumber(text, at) && !isOrdinal(text, at);
    const slip = isFigure ? withZeros(text, at) : null;
    const figure = isFigure ? parseNumber(slip ?? text, at, style) : null;
    if (figure !== null) {
      const read = numberToken(slip ?? text, at, figure, units, words);
      const token = slip === null ? read : { ...read, text: text.slice(read.start, read.end), slip: true as const };
      tokens.push(token);
      at = token.end;
      continue;
    }
    const end = wordEnd(text, at);
    if (end > at) {
      const word = text.slice(at, end);
      tokens.push({ is: "word", text: word, folded: foldWord(word), start: at, end });
      at = text[end] === "." && words.isShort(foldWord(word)) ? end + 1 : end;
      continue;
    }
    tokens.push({ is: "break", mark: c, start: at, end: at + 1 });
    at++;
  }
  return tokens;
}

/** "14,63o": the text with the letter for a nought in the figure at a place; null where it has none. The figure is asked about. */
function withZeros(text: string, at: number): string | null {
  LETTERS.lastIndex = at;
  const found = LETTERS.exec(text)?.[0];
  if (found === undefined || found.replace(/[.,]/gu, "").length < LEAST_DIGITS) return null;
  return text.slice(0, at) + found.replace(/o/giu, "0") + text.slice(at + found.length);
}
const LETTERS = /\d[\d.,]*o[\do]*(?![\p{L}\p{N}])/iuy;
/** Of fewer it may be a name, or degrees. */
const LEAST_DIGITS = 4;

/** Where the word at a place ends; the place itself where none begins. No word is longer than sixty letters. */
function wordEnd(text: string, at: number): number {
  let end = at;
  // Most words are plain letters: those need no pattern.
  while (end - at < LONGEST_WORD && isPlain(text.charCodeAt(end))) end++;
  const next = text.charCodeAt(end);
  if (end - at === LONGEST_WORD || !(next === APOSTROPHE || next === DASH || next >= 128)) return end;
  WORD.lastIndex = at;
  return at + Math.min(WORD.exec(text)?.[0].length ?? 0, LONGEST_WORD);
}
const WORD = /[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N}'-]{0,60}/uy;
const LONGEST_WORD = 60;
const [APOSTROPHE, DASH] = [39, 45];
/** A letter or a digit of ASCII. */
const isPlain = (code: number): boolean => (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || (code >= 48 && code <= 57);
/** "3rd": a word, not a figure with something behind it. */
const ORDINAL = /\d{1,2}(?:st|nd|rd|th)(?![\p{L}\p{N}])/iuy;
function isOrdinal(text: string, at: number): boolean {
  ORDINAL.lastIndex = at;
  return ORDINAL.test(text);
}

/** A number begins at a digit or a vulgar fraction that is no part of a word before it ("v2", "CB-500"). */
function startsNumber(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  // No other mark of ASCII begins a number.
  if (code < 128 && !(code >= 48 && code <= 57) && code !== 44 && code !== 46) return false;
  const before = text[at - 1] ?? " ";
  if (before !== " " && /[\p{L}\p{N}_]/u.test(before)) return false;
  return /[\d½¼¾⅛⅜⅝⅞⅓⅔]/u.test(text[at] ?? "") || (/[.,]/.test(text[at] ?? "") && /\d/.test(text[at + 1] ?? "") && before === " ");
}

function numberToken(text: string, at: number, figure: ParsedNumber, names: UnitNames, { isDateWord, isEnd, isLeft }: Around): NumberToken {
  let unitAt = figure.end;
  if (text[unitAt] === " ") unitAt++;
  else if (text[unitAt] === "-" && /\p{L}/u.test(text[unitAt + 1] ?? "")) unitAt++;
  // A unit stands on the line of its figure.
  const read = /\s/u.test(text[unitAt] ?? " ") ? null : parseUnit(text, unitAt, names);
  // "14,220 in October": a unit word that is a plain word too stands before a date. An apostrophe closes a quotation more often than it means feet.
  const isIn = read !== null && read.end === unitAt + 2 && foldWord(text.slice(unitAt, read.end)) === "in";
  const next = isIn ? /^\s+([\p{L}]+|(?:19|20)\d\d(?!\d))/u.exec(text.slice(read.end, read.end + 40)) : null;
  const dated = next !== null && (/^\d/.test(next[1] ?? "") || isDateWord(foldWord(next[1] ?? "")));
  // "3.9/3.4/3.8 l to r": from left to right, and no litres.
  const swept = read !== null && read.end === unitAt + 1 && /^ (?:to|nach) \p{L}(?!\p{L})/u.test(text.slice(read.end, read.end + 8));
  const left = read !== null && read.end === unitAt + 1 && isLeft(foldWord(text.slice(unitAt, read.end)));
  const unit = dated || swept || left || text[unitAt] === "'" ? null : read;
  // A letter for front or rear that touches the figure and is no unit.
  const touching = unit === null ? /^\p{L}(?![\p{L}\p{N}_-])/u.exec(text.slice(figure.end, figure.end + 2))?.[0] : undefined;
  const letter = touching !== undefined && (left || isEnd(foldWord(touching))) ? touching : null;
  const end = letter !== null ? figure.end + 1 : (unit?.end ?? figure.end);
  return {
    is: "number",
    value: figure.value,
    other: figure.other,
    decimals: figure.decimals,
    fraction: figure.fraction,
    units: unit?.units ?? [],
    text: text.slice(at, end),
    unitText: letter ?? (unit === null ? null : text.slice(unitAt, unit.end)),
    start: at,
    end,
    numberEnd: figure.end,
  };
}

/** How words are compared: case and composed forms do not matter. */
export const foldWord = (word: string): string => (/^[ -~]*$/u.test(word) ? word : word.normalize("NFKC")).toLowerCase();
