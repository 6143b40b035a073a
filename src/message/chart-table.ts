// A pasted chart as lines of cells: separated by commas (RFC 4180), semicolons, tabs, upright strokes, or two or more spaces.

/** One cell with its place in the line, for charts that are lined up by spaces. */
export type Cell = { readonly text: string; readonly from: number; readonly to: number };
export type TableLine = { readonly line: number; readonly text: string };
/** How cells are parted. "spaces": two or more, or one where a line has nothing else. */
export type Separator = "\t" | "|" | ";" | "," | "spaces";

export const SEPARATORS: readonly Separator[] = ["\t", "|", ";", "spaces", ","];

/** The lines that say something, numbered from 1. A text typed in one line has its line ends as \n. A quoted cell may run over lines. */
export function linesOf(pasted: string): readonly TableLine[] {
  const text = /[\r\n]/u.test(pasted) ? pasted : pasted.replaceAll("\\n", "\n");
  const found: TableLine[] = [];
  let kept: TableLine | null = null;
  for (const [n, raw] of text.split(/\r\n|\r|\n/u).entries()) {
    const line: TableLine = kept === null ? { line: n + 1, text: raw } : { line: kept.line, text: `${kept.text} ${raw}` };
    // An odd number of quotes: the cell is not closed yet. A lone inch mark in a line without separators is none.
    kept = (line.text.match(/"/gu)?.length ?? 0) % 2 === 1 && /(?:^|[,;\t])\s*"/u.test(line.text) ? line : null;
    if (kept === null && line.text.trim() !== "") found.push(line);
  }
  return kept === null ? found : [...found, kept];
}

/** The cells of a line. */
export function cellsOf(text: string, separator: Separator): readonly Cell[] {
  if (separator === "spaces") {
    return [...text.matchAll(/\S+(?: \S+)*/gu)].map((each) => ({ text: each[0], from: each.index, to: each.index + each[0].length }));
  }
  // A framed table has a stroke at either end.
  const inner = separator === "|" ? text.replace(/^\s*\||\|\s*$/gu, "") : text;
  return parted(inner, separator).map((each) => ({ text: each.trim(), from: 0, to: 0 }));
}

function parted(text: string, separator: string): readonly string[] {
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const c = text[at] ?? "";
    if (c === '"' && quoted && text[at + 1] === '"') {
      cell += c;
      at++;
    } else if (c === '"' && (quoted || cell.trim() === "")) {
      quoted = !quoted;
      if (quoted) cell = "";
    } else if (c === separator && !quoted) {
      cells.push(cell);
      cell = "";
    } else cell += c;
  }
  return [...cells, cell];
}
