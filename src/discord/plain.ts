// Plain text made safe for the platform: what a member typed cannot ping, link, format or hide anything.

const MARKS = /[\\*_~`|>#[\]<]/gu;

/** A text's lines, each safe by itself. */
export const escapedLines = (text: string): readonly string[] => text.split(/\r\n|[\n\r\u2028\u2029]/u).map(escaped);

/** One line with every mark of the platform's formatting shown as it is. A bullet at its beginning stays a bullet. */
export function escaped(line: string): string {
  const [, bullet = "", rest = line] = /^(- )?(.*)$/su.exec(line) ?? [];
  const safe = rest
    .replace(MARKS, "\\$&")
    // "@everyone" and links are shown, and are neither.
    .replace(/@/gu, "@\u200b")
    .replace(/:\/\//gu, ":\u200b//")
    // A line that begins like a list or small print is none.
    .replace(/^(\s*\d+)([.)]) /u, "$1\\$2 ")
    .replace(/^(\s*)([-+])(?=[ #\\])/u, "$1\\$2");
  return `${bullet}${safe}`;
}

/** Cuts a text at spaces into pieces that fit, never inside an escape or a surrogate pair. @param most characters, at least 4 */
export function wrapped(line: string, most: number): readonly string[] {
  const pieces: string[] = [];
  let rest = line;
  while (rest.length > most) {
    const space = rest.lastIndexOf(" ", most);
    const at = whole(rest, space > most / 2 ? space : most);
    pieces.push(rest.slice(0, at).trimEnd());
    rest = rest.slice(at).trimStart();
  }
  return [...pieces, rest];
}

/** The nearest cut at or before a place that parts neither an escape from its mark nor a pair; at most one character earlier. */
export function whole(text: string, at: number): number {
  let marks = 0;
  while (text[at - 1 - marks] === "\\") marks++;
  if (marks % 2 === 1) return at - 1;
  return /[\uDC00-\uDFFF]/u.test(text.charAt(at)) ? at - 1 : at;
}
