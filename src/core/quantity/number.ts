// Numbers as people write them: "14,820", "14 820", "2,1", "3/32", "1 1/2", "23.9k". What can be read two ways says so.

/** How a member writes numbers. */
export type NumberStyle = { readonly decimal: "." | ","; readonly group: "," | "." | " " | "'" };

/** A number as typed. `decimals` as typed; for a fraction the denominator says how fine it was. `other` is the second way to read "14.820". */
export type ParsedNumber = {
  readonly value: number;
  readonly decimals: number;
  /** What the last digit typed is worth: 1000 for "23k", 0.1 for "2.5". */
  readonly step: number;
  readonly fraction: number | null;
  readonly other: number | null;
  readonly end: number;
};

const VULGAR: Readonly<Record<string, readonly [number, number]>> = {
  "½": [1, 2],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
  "⅓": [1, 3],
  "⅔": [2, 3],
};
const SPACES = /[\u00a0\u2007\u2009\u202f\u200a]/gu;

/** Thin and no-break spaces as plain ones, minus and multiplication signs as people's keyboards have them. Lengths stay the same. */
export const plain = (text: string): string => (/[^ -~]/u.test(text) ? text.replace(SPACES, " ").replace(/[−–—]/gu, "-").replace(/’/gu, "'") : text);

/** Reads a number at `start`; null when there is none. Negative numbers carry a "-" directly before the first digit. */
export function parseNumber(text: string, start: number, style: NumberStyle): ParsedNumber | null {
  let at = start;
  const negative = text[at] === "-";
  if (negative || text[at] === "+") at++;
  const sign = negative ? -1 : 1;
  const vulgar = VULGAR[text[at] ?? ""];
  if (vulgar !== undefined) return fractional(sign * (vulgar[0] / vulgar[1]), vulgar[1], at + 1);
  const run = digitsAndMarks(text, at);
  if (run === "") return null;
  const end = at + run.length;
  const isWhole = /^\d+$/.test(run);
  const slash = isWhole && text[end] === "/" ? fractionAt(text, end) : null;
  if (slash !== null) return fractional(sign * (Number(run) / slash.below), slash.below, slash.end);
  const whole = readMarks(run, style);
  if (whole === null) return null;
  // "1 1/2" and "1½": a whole number with a fraction behind it.
  const mixed = isWhole ? mixedAt(text, end) : null;
  if (mixed !== null) return fractional(sign * (whole.value + mixed.value), mixed.below, mixed.end);
  const next = text[end];
  const thousand = (next === "k" || next === "K") && !/[a-zA-Z/]/.test(text[end + 1] ?? "");
  const scale = thousand ? 1000 : 1;
  return {
    value: sign * whole.value * scale,
    decimals: Math.max(0, whole.decimals - (thousand ? 3 : 0)),
    step: Number(`1e${(thousand ? 3 : 0) - whole.decimals}`),
    fraction: null,
    other: whole.other === null ? null : sign * whole.other * scale,
    end: end + (thousand ? 1 : 0),
  };
}

/** The step of a fraction of an inch, which is a made size and known far finer than its denominator. */
const FINE = 1 / 2048;
const fractional = (value: number, below: number, end: number): ParsedNumber => ({ value, decimals: 0, step: FINE, fraction: below, other: null, end });

/** Digits with the marks that may stand between them; a space or an apostrophe only before exactly three digits, since 5'3" is feet and inches. */
function digitsAndMarks(text: string, start: number): string {
  let at = start;
  while (at < text.length) {
    // Whatever goes on for longer is no number that anybody reads.
    if (at - start > LONGEST_NUMBER) return "";
    const c = text[at] ?? "";
    if (isDigit(c)) at++;
    else if ((c === "." || c === ",") && isDigit(text[at + 1])) at++;
    else if (c === "'" && at > start && threeDigitsAt(text, at + 1)) at++;
    else if (c === " " && at > start && at - start <= 3 + 4 * 3 && threeDigitsAt(text, at + 1) && groupedSoFar(text.slice(start, at))) at++;
    else break;
  }
  return text.slice(start, at);
}

const LONGEST_NUMBER = 40;
const isDigit = (c: string | undefined): boolean => c !== undefined && c >= "0" && c <= "9";
const threeDigitsAt = (text: string, at: number): boolean => isDigit(text[at]) && isDigit(text[at + 1]) && isDigit(text[at + 2]) && !isDigit(text[at + 3]);
const groupedSoFar = (run: string): boolean => /^\d{1,3}( \d{3}){0,3}$/.test(run);

/** Which marks group and which one is the decimal point. */
function readMarks(run: string, style: NumberStyle): { value: number; decimals: number; other: number | null } | null {
  if (/^\d+$/.test(run)) return { value: Number(run), decimals: 0, other: null };
  // Anything but three digits behind one mark can only be decimals: by far the most common, so asked first.
  const simple = /^\d*[.,](\d{1,2}|\d{4,})$/.exec(run);
  if (simple !== null) return { value: Number(run.replace(",", ".")), decimals: simple[1]?.length ?? 0, other: null };
  const marks = [...new Set(run.replace(/\d/g, ""))];
  const bare = (text: string): number => Number(text.replace(/[ ']/g, ""));
  if (marks.length === 0 || marks.every((mark) => mark === " " || mark === "'")) return { value: bare(run), decimals: 0, other: null };
  const last = Math.max(run.lastIndexOf("."), run.lastIndexOf(","));
  const point = run[last] ?? ".";
  const tail = run.length - last - 1;
  const others = marks.filter((mark) => mark !== point);
  const asDecimal = (): number => Number(`${run.slice(0, last).replace(/[.,' ]/g, "")}.${run.slice(last + 1)}`);
  const asGroups = (): number => Number(run.replace(/[.,' ]/g, ""));
  const grouped = groupsOfThree(run, point);
  // Two kinds of mark: the last is the decimal point.
  if (others.length > 0) return groupsOfThree(run.slice(0, last), others[0] ?? ",") ? { value: asDecimal(), decimals: tail, other: null } : null;
  if (run.split(point).length > 2) return grouped ? { value: asGroups(), decimals: 0, other: null } : null;
  if (!grouped) return { value: asDecimal(), decimals: tail, other: null };
  // One mark before exactly three digits: the member's own way of writing settles it; where it is the other mark, both readings are named.
  if (point === style.group) return { value: asGroups(), decimals: 0, other: null };
  return point === style.decimal && style.group === " "
    ? { value: asDecimal(), decimals: tail, other: null }
    : { value: asGroups(), decimals: 0, other: asDecimal() };
}

function groupsOfThree(run: string, mark: string): boolean {
  const parts = run.split(mark === " " ? " " : mark);
  return parts.length > 1 && /^[1-9]\d{0,2}$/.test(parts[0] ?? "") && parts.slice(1).every((part) => /^\d{3}$/.test(part));
}

function fractionAt(text: string, at: number): { below: number; end: number } | null {
  const found = /^\/(\d{1,4})(?![\d/])/.exec(text.slice(at, at + 6));
  const below = Number(found?.[1] ?? 0);
  return found === null || below === 0 ? null : { below, end: at + found[0].length };
}

function mixedAt(text: string, at: number): { value: number; below: number; end: number } | null {
  const vulgar = VULGAR[text[at] ?? ""] ?? (text[at] === " " ? VULGAR[text[at + 1] ?? ""] : undefined);
  if (vulgar !== undefined) return { value: vulgar[0] / vulgar[1], below: vulgar[1], end: at + (text[at] === " " ? 2 : 1) };
  if (text[at] !== " " && text[at] !== "-") return null;
  const found = /^[ -](\d{1,3})\/(\d{1,3})(?![\d/])/.exec(text.slice(at, at + 9));
  if (found === null || Number(found[1]) >= Number(found[2])) return null;
  return { value: Number(found[1]) / Number(found[2]), below: Number(found[2]), end: at + found[0].length };
}
