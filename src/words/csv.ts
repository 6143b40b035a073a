// Tables as comma-separated values. Source: RFC 4180: lines end in CRLF; what holds a comma, a quote or a line end is quoted, quotes doubled.

/** What a spreadsheet would take for a formula is led by a space, so that it stays words. */
const FORMULA = /^[=+@\t\r]|^-(?=.)/u;

const cellOf = (text: string): string => {
  const safe = FORMULA.test(text) ? ` ${text}` : text;
  return /[",\r\n]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};

/** Rows of cells as one text. */
export const csvOf = (rows: readonly (readonly string[])[]): string => rows.map((row) => `${row.map(cellOf).join(",")}\r\n`).join("");
