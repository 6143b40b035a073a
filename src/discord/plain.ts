// Plain text made safe for the platform: what a member typed cannot ping, link, format or hide anything.

const MARKS = /[\\*_~`|>#[\]<]/gu;

/** One line with every mark of the platform's formatting shown as it is. A bullet at its beginning stays a bullet. */
export function escaped(line: string): string {
  const [, bullet = "", rest = line] = /^(- )?(.*)$/su.exec(line) ?? [];
  const safe = rest
    .replace(MARKS, "\\$&")
    // "@everyone" and links are shown, and are neither.
    .replace(/@/gu, "@\u200b")
    .replace(/:\/\//gu, ":\u200b//")
    // A line that begins like a list, a heading or small print is none.
    .replace(/^(\d+)\. /u, "$1\\. ")
    .replace(/^(-|\+)(?=[ #])/u, "\\$1");
  return `${bullet}${safe}`;
}

/** Cuts a text at spaces into pieces that fit, never inside an escape. @param most characters */
export function wrapped(line: string, most: number): readonly string[] {
  const pieces: string[] = [];
  let rest = line;
  while (rest.length > most) {
    const space = rest.lastIndexOf(" ", most);
    let at = space > most / 2 ? space : most;
    while (rest[at - 1] === "\\" || /[\uDC00-\uDFFF]/u.test(rest[at] ?? "")) at--;
    pieces.push(rest.slice(0, at).trimEnd());
    rest = rest.slice(at).trimStart();
  }
  return [...pieces, rest];
}
