// Tokens cut and joined as a message of readings means them: loads of two words, letters and "in" that touch figures, counted cylinders, inches in words, date codes of tyres.

import type { Known } from "../core/reading/vocabulary.ts";
import { among } from "./among.ts";
import { wordAt } from "./clauses.ts";
import { withInches } from "./inches.ts";
import type { Token } from "./scan.ts";
import { tyreDated } from "./tyre-codes.ts";

/** The tokens as they were scanned, cut and joined. */
export function cutTokens(text: string, scanned: readonly Token[], known: Known): readonly Token[] {
  const steps = [withoutTails, joinedInOrder, splitLeading, splitCounted, splitIntake, splitLetters, joinedLoads];
  const cut = steps.reduce((tokens, step) => step(tokens, known), withInches(text, scanned, known.vocabulary));
  return tyreDated(text, cut, known);
}

/** "14,730ish", "5/32nds": letters that touch a figure and change nothing about it. */
function withoutTails(tokens: readonly Token[], { vocabulary }: Known): readonly Token[] {
  const tailOf = (token: Token, at: number): { readonly end: number; readonly more: number } | null => {
    if (token.is !== "number" || token.units.length > 0) return null;
    const [next, behind] = [tokens[at + 1], tokens[at + 2]];
    if (next?.start !== token.end) return null;
    if (next.is === "word" && (token.fraction === null ? among(vocabulary.roughly, next.folded) : FRACTION_ENDS.includes(next.folded)))
      return { end: next.end, more: 1 };
    const isDashed = next.is === "break" && next.mark === "-" && behind?.is === "word" && behind.start === next.end;
    return isDashed && token.fraction === null && among(vocabulary.roughly, behind.folded) ? { end: behind.end, more: 2 } : null;
  };
  const tails = tokens.map(tailOf);
  if (tails.every((tail) => tail === null)) return tokens;
  return tokens.flatMap((token, at): readonly Token[] => {
    const tail = tails[at];
    if (tail != null) return [{ ...token, end: tail.end }];
    return tails[at - 1] != null || tails[at - 2]?.more === 2 ? [] : [token];
  });
}
const FRACTION_ENDS = ["nd", "nds", "th", "ths"];

/** "Valves are all in spec": somebody measured them, so they were looked at. */
function joinedInOrder(tokens: readonly Token[], { vocabulary }: Known): readonly Token[] {
  const { inOrder, valves } = vocabulary.measuring;
  const wordAt = (at: number): string | null => {
    const token = tokens[at];
    return token?.is === "word" ? token.folded : null;
  };
  const isSaid = (at: number): boolean => among(inOrder.said, `${wordAt(at) ?? ""} ${wordAt(at + 1) ?? ""}`);
  const isOfValves = (at: number): boolean => {
    for (let n = at - 1; n >= at - NEAR && wordAt(n) !== null; n--)
      if (among(valves, wordAt(n)) || among(vocabulary.kinds["valve clearance"], wordAt(n))) return true;
    return false;
  };
  const at = tokens.findIndex((token, n) => token.is === "word" && isSaid(n) && isOfValves(n));
  const [first, second] = [tokens[at], tokens[at + 1]];
  if (first?.is !== "word" || second?.is !== "word") return tokens;
  const word: Token = { is: "word", text: `${first.text} ${second.text}`, folded: inOrder.as, start: first.start, end: second.end };
  return [...tokens.slice(0, at), word, ...tokens.slice(at + 2)];
}
/** Words between the valves and what is said of them. */
const NEAR = 4;

/** "2-up", "2 up": a load that begins with a figure is a word. */
function joinedLoads(tokens: readonly Token[], { vocabulary }: Known): readonly Token[] {
  const loads = Object.values(vocabulary.specs.uses).flatMap((phrases) => phrases.filter((phrase) => /^\d/u.test(phrase)).map((phrase) => phrase.split(" ")));
  const isLoad = (figure: Token | undefined, word: Token | undefined): boolean =>
    figure?.is === "number" && word?.is === "word" && loads.some(([first, second]) => first === figure.text && second === word.folded);
  if (!tokens.some((_token, n) => isLoad(tokens[n - 1], tokens[n]) || isLoad(tokens[n - 2], tokens[n]))) return tokens;
  const joined: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token === undefined) continue;
    const dash = tokens[at + 1];
    const last = dash?.is === "break" && dash.mark === "-" && isLoad(token, tokens[at + 2]) ? at + 2 : isLoad(token, dash) ? at + 1 : at;
    const word = tokens[last];
    if (last === at || word?.is !== "word" || token.is !== "number") joined.push(token);
    else joined.push({ is: "word", text: `${token.text}-${word.text}`, folded: `${token.text}-${word.folded}`, start: token.start, end: word.end });
    at = last;
  }
  return joined;
}

/** "Cyl 1 150": the space groups no thousands where the first figure counts a cylinder or a valve. */
function splitCounted(tokens: readonly Token[], known: Known): readonly Token[] {
  const { intake, exhaust, cylinder } = known.vocabulary.places;
  const counted = (token: Token | undefined): boolean => token?.is === "word" && [intake, exhaust, cylinder].some((list) => among(list, token.folded));
  if (!tokens.some((token, n) => token.is === "number" && counted(tokens[n - 1]))) return tokens;
  return tokens.flatMap((token, n): readonly Token[] => {
    // "Cyl 1 in 0.10 ex 0.16": behind what counts a cylinder "in" is the intake.
    if (token.is === "number" && counted(tokens[n - 1]) && token.unitText === "in" && tokens[n + 1]?.is === "number") {
      const figure = token.text.slice(0, token.numberEnd - token.start);
      return [
        { ...token, units: [], text: figure, unitText: null, end: token.numberEnd },
        { is: "word", text: "in", folded: "in", start: token.end - 2, end: token.end },
      ];
    }
    const [whole, first] = token.is === "number" && counted(tokens[n - 1]) ? (/^(\d{1,2}) \d{3}/u.exec(token.text) ?? []) : [];
    if (token.is !== "number" || whole === undefined || first === undefined || whole.length !== token.numberEnd - token.start) return [token];
    const cut = token.start + first.length;
    const rest = token.text.slice(first.length + 1);
    return [
      { ...token, value: Number(first), units: [], text: first, unitText: null, end: cut, numberEnd: cut },
      { ...token, value: Number(whole.slice(first.length + 1)), text: rest, start: cut + 1 },
    ];
  });
}

/** "0.10 in 0.15 ex": hundredths of a millimetre before "in", where the exhaust stands behind its figure too and no word says intake. */
function splitIntake(tokens: readonly Token[], { vocabulary: { places, measuring } }: Known): readonly Token[] {
  const isIn = (token: Token | undefined): boolean =>
    token?.is === "number" && among(measuring.shortIntake, token.unitText?.toLowerCase() ?? null) && token.decimals === 2 && token.value < 1;
  if (!tokens.some(isIn)) return tokens;
  const is = (token: Token | undefined, list: readonly string[]): boolean => token?.is === "word" && among(list, token.folded);
  const trails = tokens.some((token, n) => is(token, places.exhaust) && tokens[n - 1]?.is === "number" && tokens[n + 1]?.is !== "number");
  if (!trails || tokens.some((token) => is(token, places.intake))) return tokens;
  return tokens.flatMap((token): readonly Token[] => {
    if (token.is !== "number" || !isIn(token)) return [token];
    const text = token.text.slice(0, token.numberEnd - token.start);
    return [
      { ...token, units: [], text, unitText: null, end: token.numberEnd },
      { is: "word", text: "in", folded: "intake", start: token.end - 2, end: token.end },
    ];
  });
}

/** "V 2,3 h 2,5", "36 R 33 F": a letter that is a unit as well stands for the end of the bike where letters for both ends are said, or one stands before the figure; not of volts and hours of a battery: "12,6 V geruht 8 h". */
function splitLetters(tokens: readonly Token[], { vocabulary: { places, measuring } }: Known): readonly Token[] {
  const endOf = (text: string | null): "front" | "rear" | null => {
    const letter = text?.length === 1 ? text.toLowerCase() : null;
    return among(places.front, letter) ? "front" : among(places.rear, letter) ? "rear" : null;
  };
  if (!tokens.some((token) => token.is === "number" && endOf(token.unitText) !== null)) return tokens;
  const isOfBattery = (n: number): boolean =>
    [1, -1].some((step) => {
      for (let at = n + step; Math.abs(at - n) <= NEAR_BATTERY && tokens[at] !== undefined && tokens[at]?.is !== "break"; at += step)
        if ([measuring.charge.battery, measuring.conditions.rested].some((list) => among(list, wordAt(tokens, at)))) return true;
      return false;
    });
  const ofBattery = new Set(
    tokens.flatMap((token, n) => (token.is === "number" && mayBeOfBattery(token, tokens[n + 1], endOf(token.unitText)) && isOfBattery(n) ? [n] : [])),
  );
  const said = new Set(
    tokens.map((token, n) => endOf(token.is === "word" ? token.folded : token.is === "number" && !ofBattery.has(n) ? token.unitText : null)),
  );
  const both = said.has("front") && said.has("rear");
  return tokens.flatMap((token, n): readonly Token[] => {
    if (token.is !== "number" || token.unitText === null || endOf(token.unitText) === null || ofBattery.has(n)) return [token];
    const before = tokens[n - 1];
    if (!both && !(before?.is === "word" && (among(places.front, before.folded) || among(places.rear, before.folded)))) return [token];
    const start = token.end - token.unitText.length;
    return [
      { ...token, units: [], text: token.text.slice(0, token.numberEnd - token.start), unitText: null, end: token.numberEnd, cut: true },
      { is: "word", text: token.unitText, folded: token.unitText.toLowerCase(), start, end: token.end },
    ];
  });
}

/** Volts such as no tyre has bar, and hours with no figure behind them. */
const mayBeOfBattery = ({ value }: Token & { readonly is: "number" }, next: Token | undefined, end: "front" | "rear" | null): boolean =>
  next?.is !== "number" && (end === "front" ? value > 5 && value < 16 : end === "rear");

/** How many words may stand between a figure and what says that it is of a battery. */
const NEAR_BATTERY = 4;

/** "f33 r36": letters for both ends of the bike, each before its figure. */
function splitLeading(tokens: readonly Token[], { vocabulary: { places } }: Known): readonly Token[] {
  const led = tokens.map((token, n) => {
    // Most words are no letter and a figure.
    const found = token.is === "word" && token.text.length <= 4 && token.text.length >= 3 ? /^(\p{L})(\d{2,3})$/u.exec(token.folded) : null;
    const next = tokens[n + 1];
    const isWhole = found !== null && !(next?.is === "break" && next.start === token.end && ".,/-".includes(next.mark) && tokens[n + 2]?.start === next.end);
    return isWhole ? { letter: found[1] ?? "", figure: found[2] ?? "" } : null;
  });
  const has = (list: readonly string[]): boolean => led.some((each) => each !== null && among(list, each.letter));
  if (!has(places.front) || !has(places.rear)) return tokens;
  return tokens.flatMap((token, n): readonly Token[] => {
    const each = led[n] ?? null;
    if (each === null || token.is !== "word" || !(among(places.front, each.letter) || among(places.rear, each.letter))) return [token];
    const start = token.start + 1;
    return [
      { is: "word", text: token.text.slice(0, 1), folded: each.letter, start: token.start, end: start },
      {
        ...{ is: "number", value: Number(each.figure), other: null, decimals: 0, fraction: null, units: [], text: each.figure, unitText: null, start },
        ...{ end: token.end, cut: true, numberEnd: token.end },
      },
    ];
  });
}
