// Two ends of a window in one text: "60-80", "80 to 60", "10 ± 1", "10 ± 10 %", "20 +2/-1".

import { type NumberStyle, type ParsedNumber, parseNumber } from "./number.ts";

/** `nominal`: the figure that a tolerance was given for; `last`: the number that stands last. */
export type Span = { readonly from: number; readonly to: number; readonly nominal: number | null; readonly last: ParsedNumber; readonly end: number };

/** A window that begins with `first`; null when it is one figure. @param unitEnd where a unit behind the first figure ends: the rest may stand there too */
export function spanAt(text: string, first: ParsedNumber, unitEnd: number | null, style: NumberStyle): Span | null {
  for (const at of unitEnd === null ? [first.end] : [first.end, unitEnd]) {
    const uneven = unevenAt(text, at, first, style);
    if (uneven !== null) return uneven;
    const found = /^ *(-|to|bis|\.\.\.?|…|±|\+\/-|\+-) *(?=[\d.,½¼¾])/u.exec(text.slice(at, at + 12));
    if (found === null) continue;
    const second = parseNumber(text, at + found[0].length, style);
    if (second === null) continue;
    const word = found[1] ?? "";
    if (word === "±" || word.startsWith("+")) return toleranceOf(text, first, second);
    // "80-60" is the same window from its other end.
    const [from, to] = first.value <= second.value ? [first.value, second.value] : [second.value, first.value];
    return { from, to, nominal: null, last: second, end: second.end };
  }
  return null;
}

/** "10 ± 1", "10 ± 10 %". */
function toleranceOf(text: string, first: ParsedNumber, second: ParsedNumber): Span {
  const percent = /^ ?%/u.exec(text.slice(second.end, second.end + 2));
  const by = percent === null ? second.value : (Math.abs(first.value) * second.value) / 100;
  // A percentage says nothing of how finely the figure was typed.
  const last = percent === null ? second : { ...second, decimals: first.decimals, step: first.step };
  return { from: sum(first.value, -by), to: sum(first.value, by), nominal: first.value, last, end: second.end + (percent?.[0].length ?? 0) };
}

/** "20 +2/-1", "20 +2 -0". */
function unevenAt(text: string, at: number, first: ParsedNumber, style: NumberStyle): Span | null {
  const plus = /^ *\+ *(?=[\d.,])/u.exec(text.slice(at, at + 6));
  const more = plus === null ? null : parseNumber(text, at + plus[0].length, style);
  const minus = more === null ? null : /^ *[/,]? *- *(?=[\d.,])/u.exec(text.slice(more.end, more.end + 6));
  const less = more === null || minus === null ? null : parseNumber(text, more.end + minus[0].length, style);
  if (more === null || less === null) return null;
  return { from: sum(first.value, -less.value), to: sum(first.value, more.value), nominal: first.value, last: less, end: less.end };
}

/** Without the dust of binary fractions: 2.2 + 0.1 is 2.3. */
const sum = (a: number, b: number): number => Number((a + b).toPrecision(15));
