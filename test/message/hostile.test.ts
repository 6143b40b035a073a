// Hostile text: no pattern of the reader can be made to go back over a text again and again, and no message takes long.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import ts from "typescript";
import { expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { BRAMBLE, HERON, knownWith, OTTER } from "./riders.ts";
import { SLOW_PIECES } from "./slow-pieces.ts";

const FOLDERS = ["src/message", "src/core/quantity", "src/core/calendar", "src/core/spec"];

/** Every pattern written in the source of what reads members' text. */
function patterns(): readonly { readonly where: string; readonly pattern: RegExp }[] {
  return FOLDERS.flatMap((folder) =>
    readdirSync(folder).flatMap((file) => {
      const source = ts.createSourceFile(file, readFileSync(join(folder, file), "utf8"), ts.ScriptTarget.Latest, true);
      const found: { where: string; pattern: RegExp }[] = [];
      const visit = (node: ts.Node): void => {
        if (ts.isRegularExpressionLiteral(node)) {
          const [, body = "", flags = ""] = /^\/(.*)\/([a-z]*)$/su.exec(node.text) ?? [];
          found.push({ where: `${file}: ${node.text}`, pattern: new RegExp(body, flags.replace(/[gy]/gu, "")) });
        }
        ts.forEachChild(node, visit);
      };
      visit(source);
      return found;
    }),
  );
}

const PIECES = [
  "a",
  "1",
  " ",
  ".",
  "1 ",
  "1.",
  ",1",
  "1,",
  "a-",
  "a ",
  "-1 ",
  "1/",
  "'",
  "\n",
  "\n>",
  "`",
  "|",
  "<@",
  "http",
  "ä",
  "½",
  " 000",
  "1 000",
  "x'",
  "_",
  "3/4 ",
  "a.b",
  "(",
  "[",
  '"',
];
const hostile = (length: number): readonly string[] =>
  PIECES.flatMap((piece) => [piece.repeat(length / piece.length), `${piece.repeat(length / piece.length)}\u0000`]);

/** Processor time in milliseconds, the least of a few tries: other tests run beside this one. */
function took(work: () => void, tries = 3): number {
  let least = Number.POSITIVE_INFINITY;
  for (let n = 0; n < tries; n++) {
    const from = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(from);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

test("no pattern goes back over a text again and again", () => {
  const all = patterns();
  expect(all.length).toBeGreaterThan(60);
  const slow = all.flatMap(({ where, pattern }) => {
    // A pattern that doubles its time with each letter would not come back from a longer text than this.
    const short = took(() => hostile(24).forEach((text) => void pattern.test(text)));
    if (short > 40) return [`${where}: ${short} ms on 24 letters`];
    const long = took(() => hostile(2000).forEach((text) => void pattern.test(text)));
    return long > 250 ? [`${where}: ${long} ms on sixty texts of 2,000 letters`] : [];
  });
  expect(slow).toEqual([]);
}, 120_000);

test("a pattern that can blow up would be found out", () => {
  const bad = /^(?:a+)+$/u;
  expect(took(() => void bad.test(`${"a".repeat(24)}\u0000`))).toBeGreaterThan(40);
}, 60_000);

test("texts of 2,000 letters, whatever they repeat, are read in milliseconds; 4,000 are not read", () => {
  const known = knownWith([HERON, BRAMBLE, OTTER]);
  for (const piece of [...SLOW_PIECES, ...PIECES]) {
    const text = piece.repeat(2000).slice(0, 2000);
    // On a core of its own the slowest take about 5 ms; the room is for a machine that does five other things.
    expect(
      took(() => void read(text, known), 12),
      JSON.stringify(piece),
    ).toBeLessThan(100);
    expect(read(text.repeat(2), known)).toMatchObject({ tooLong: true, intents: [] });
  }
}, 120_000);

test("words that every object has are words like others", () => {
  const known = knownWith([HERON]);
  for (const word of ["constructor", "toString", "__proto__", "hasOwnProperty", "valueOf"])
    for (const say of [`${word} the oil`, `last ${word}`, `3 ${word}`, `33 ${word} front`, word]) expect([say, read(say, known).intents]).toEqual([say, []]);
});

test("any text is read without a fault", () => {
  const known = knownWith([HERON, BRAMBLE, OTTER]);
  const word = fc.constantFrom(
    "33",
    "psi",
    "front",
    "Heron",
    "oil",
    "did",
    "at",
    "14,820",
    "mm",
    "tread",
    "yesterday",
    ".",
    "\n",
    ",",
    "vorne",
    "Öl",
    "2,3",
    "/",
    "-",
    "in",
    "ex",
    "found",
    "left",
    "full",
    "L",
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 60 }), fc.constantFrom(" ", ""), (words, between) => {
      read(words.join(between), known);
    }),
    { numRuns: 400 },
  );
}, 60_000);
