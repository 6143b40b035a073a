// When a tyre was made, said in words: "week 12 of 2019" is its date code; a year or an age alone is none, and is asked about.

import type { Known } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import type { NumberToken, Token } from "./scan.ts";

/** The tokens with every "week 12 of 2019" as one, in a message that speaks of tyres. */
export function withWeeks(text: string, tokens: readonly Token[], { vocabulary }: Known): readonly Token[] {
  const { measuring } = vocabulary;
  const isWeek = (token: Token | undefined): boolean => token?.is === "word" && among(measuring.weeks, token.folded);
  if (!tokens.some(isWeek) && !tokens.some((token) => token.is === "word" && JOINED.test(token.folded))) return tokens;
  if (!tokens.some((token) => token.is === "word" && among(measuring.tyre, token.folded))) return tokens;
  const joined: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token === undefined) continue;
    const start = isWeek(token) || (token.is === "word" && isJoined(token.folded, measuring.weeks)) ? token.start : null;
    const said = start === null ? null : WEEK.exec(text.slice(start, start + LONGEST));
    const year = Number(said?.[2] ?? 0) % 100;
    if (said === null || start === null) {
      joined.push(token);
      continue;
    }
    const end = start + said[0].length;
    const [week, typed] = [Number(said[1]), text.slice(start, end)];
    // "Made in": the figure says the same without.
    for (let last = joined.at(-1); last?.is === "word" && among(measuring.madeWords, last.folded); last = joined.at(-1)) joined.pop();
    joined.push({ ...bare(week * 100 + year, typed, start, end), code: "said" });
    while ((tokens[at + 1]?.start ?? end) < end) at++;
  }
  return joined;
}
/** "KW12". */
const JOINED = /^\p{L}{2,6}\d{1,2}$/u;
const isJoined = (word: string, weeks: readonly string[]): boolean => JOINED.test(word) && among(weeks, word.replace(/\d+$/u, ""));
/** A week and its year, of four digits or two: "week 12 of 2019", "KW 12/19". */
const WEEK =
  /^\p{L}+\.?\s{0,2}(?:nr?\.?\s{0,2}|no\.?\s{0,2}|#)?(\d{1,2})(?:\s{0,2}[/,.-]\s{0,2}|\s{1,2}(?:\p{L}{2,4}\s{1,2})?)(20\d{2}|\d{2})(?![\d.,/]*\d|\p{L})/iu;
const LONGEST = 40;

const bare = (value: number, text: string, start: number, end: number): NumberToken => ({
  ...{ is: "number", value, other: null, decimals: 0, fraction: null, units: [], text, unitText: null, start, end, numberEnd: end },
});

/** The tokens with every year and age of a tyre marked, "tyres are from 2014", "the rear tyre is 12 years old": where a stretch between two marks says no more than that. */
export function withYears(text: string, tokens: readonly Token[], known: Known): readonly Token[] {
  const { measuring, articles, places } = known.vocabulary;
  if (!tokens.some((token) => token.is === "word" && among(measuring.tyre, token.folded))) return tokens;
  const now = Number(known.today.slice(0, 4));
  const marked: Token[] = [];
  for (let from = 0; from < tokens.length; ) {
    let to = from;
    while (to < tokens.length && tokens[to]?.is !== "break") to++;
    const stretch = tokens.slice(from, to);
    marked.push(...yearIn(stretch), ...tokens.slice(to, to + 1));
    from = to + 1;
  }
  return marked;

  function yearIn(stretch: readonly Token[]): readonly Token[] {
    const figures = stretch.flatMap((token) => (token.is === "number" ? [token] : []));
    const [figure] = figures;
    const words = stretch.flatMap((token) => (token.is === "word" ? [token] : []));
    if (figure === undefined || figures.length > 1 || figure.code !== undefined || figure.other !== null || figure.decimals > 0) return stretch;
    const isTyre = words.some(({ folded }) => among(measuring.tyre, folded));
    // "Tyres 2022" is when they were fitted.
    const isMade = words.some(({ folded }) => among(measuring.madeWords, folded));
    const old = words.filter(({ folded }) => among(measuring.oldAge, folded));
    const isAge = figure.value >= 1 && figure.value <= OLDEST && old.length > 1;
    const isYear = figure.units.length === 0 && /^(?:19[5-9]|20\d)\d$/u.test(figure.text) && figure.value <= now && old.length === 0 && isMade;
    const beside = [
      measuring.codeBeside,
      measuring.madeWords,
      measuring.oldAge,
      measuring.tyre,
      articles,
      places.front,
      places.rear,
      places.both,
      known.vocabulary.and,
    ];
    const isName = (word: string): boolean => known.bikes.some(({ nickname }) => nickname.toLowerCase().split(" ").includes(word));
    if (
      !isTyre ||
      !(isAge || isYear) ||
      !words.every(({ folded }) => beside.some((list) => among(list, folded)) || isName(folded) || among(known.vocabulary.onBike, folded))
    )
      return stretch;
    const last = isAge ? Math.max(figure.end, ...old.map(({ end }) => end)) : figure.end;
    // What is kept of either is how many years are certain.
    const said = bare(isAge ? figure.value : now - figure.value - 1, text.slice(figure.start, last), figure.start, last);
    return stretch.flatMap((token): readonly Token[] =>
      token === figure ? [{ ...said, code: "year" }] : isAge && old.some((word) => word === token) ? [] : [token],
    );
  }
}
/** Years; no tyre that anybody asks about is older. */
const OLDEST = 60;
