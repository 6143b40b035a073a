// How wide the font's letters are, so that a text's room is known before it is drawn. From the font's own table of advances (DejaVu Sans 2.37);
// a test reads that table and compares.

import { UNITS } from "../core/quantity/units.ts";

const NO_BREAK = "\u00a0";

/** Units in which the font counts: so many make its size. */
const EM = 2048;

/** Advances, each with the letters that have it. */
const ADVANCES: readonly (readonly [number, string])[] = [
  [465, "′"],
  [563, "'"],
  [569, "ijlìíîïĩīĭįıĵĺļ"],
  [582, "ł"],
  [604, "IJÌÍÎÏĨĪĬĮİĴ"],
  [651, " ,.\u00a0·‘’"],
  [690, "/:;\\|¦"],
  [700, "ŀ"],
  [721, "fſ"],
  [739, "-"],
  [765, "″"],
  [768, "ľ"],
  [799, "()[]"],
  [803, "tţťŧ"],
  [821, "!¡²³¹₂"],
  [842, "rŕŗř"],
  [942, '"'],
  [965, "ªº"],
  [1024, "*_`§¨¯°´¸–"],
  [1061, "“”„"],
  [1067, "sśŝşš"],
  [1075, "zźżž"],
  [1087, "?¿"],
  [1126, "cçćĉċč"],
  [1138, "ĳ"],
  [1141, "LĹĻĽĿ"],
  [1151, "Ł"],
  [1178, "F"],
  [1186, "kķĸ"],
  [1208, "Ĳ"],
  [1212, "vxyýÿŷ"],
  [1235, "P"],
  [1239, "Þ"],
  [1251, "TYÝŢŤŦŶŸ"],
  [1253, "o«»ðòóôõöøōŏő"],
  [1255, "aàáâãäåāăą"],
  [1260, "eèéêëēĕėęě"],
  [1290, "ß"],
  [1294, "EÈÉÊËĒĔĖĘĚ"],
  [1298, "hnuñùúûüĥńņňŋũūŭůűų"],
  [1300, "SbdgpqþďđĝğġģŚŜŞŠ"],
  [1303, "$0123456789{}¢£¤¥µ¶μ"],
  [1343, "KĶ"],
  [1350, "α"],
  [1401, "AVÀÁÂÃÄÅĀĂĄ"],
  [1403, "XZŹŻŽ"],
  [1405, "B"],
  [1423, "RħŔŖŘ"],
  [1430, "CÇĆĈĊČ"],
  [1499, "UÙÚÛÜŨŪŬŮŰŲ"],
  [1532, "NÑŃŅŇŊ"],
  [1540, "HĤ"],
  [1577, "DĎ"],
  [1587, "GÐĐĜĞĠĢ"],
  [1597, "&"],
  [1612, "OQÒÓÔÕÖØŌŎŐ"],
  [1666, "ŉ"],
  [1675, "wŵ"],
  [1716, "#+<=>^~¬±×÷≥≤→←≈"],
  [1767, "M"],
  [1876, "Ħ"],
  [1946, "%"],
  [1985, "¼½¾⅛⅜⅝⅞"],
  [1995, "mÆ"],
  [2011, "æ"],
  [2025, "WŴ"],
  [2048, "@©®—…"],
  [2095, "œ"],
  [2191, "Œ"],
];

const WIDTHS: ReadonlyMap<string, number> = new Map(ADVANCES.flatMap(([wide, letters]) => [...letters].map((letter) => [letter, wide] as const)));
/** A letter that is not listed is taken to be as wide as the widest Cyrillic one; signs in two halves of a pair count so, too. */
const UNLISTED = 2206;

/** How wide a text stands at a size, in the size's unit. */
export const widthOf = (text: string, size: number): number => ([...text].reduce((sum, letter) => sum + (WIDTHS.get(letter) ?? UNLISTED), 0) * size) / EM;

/** A space that stands between a figure and its unit. */
const BEFORE_UNIT = new RegExp(
  `(?<=\\d) (?=(?:${Object.values(UNITS)
    .map(({ symbol }) => symbol.replace(/[.*+?^$()[\]{}|\\/]/gu, "\\$&"))
    .join("|")})(?![\\p{L}\\p{N}]))`,
  "gu",
);

/** A text in lines no wider than given, parted at spaces, though never between a figure and its unit; a word that is wider alone is parted within. */
export function wrapped(text: string, size: number, wide: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text
    .replace(BEFORE_UNIT, NO_BREAK)
    .split(" ")
    .filter((each) => each !== "")
    .flatMap((each) => pieces(each, size, wide))) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && widthOf(longer, size) <= wide) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** A text cut to a width, with an ellipsis where it was cut. */
export function cut(text: string, size: number, wide: number): string {
  if (widthOf(text, size) <= wide) return text;
  const letters = [...text];
  while (letters.length > 1 && widthOf(`${letters.join("").trimEnd()}…`, size) > wide) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

function pieces(word: string, size: number, wide: number): readonly string[] {
  if (widthOf(word, size) <= wide) return [word];
  const found: string[] = [""];
  for (const letter of word) {
    const last = found.at(-1) ?? "";
    if (last !== "" && widthOf(last + letter, size) > wide) found.push(letter);
    else found[found.length - 1] = last + letter;
  }
  return found;
}
