// Sentences a member reads stand in words/ only; what stands there is calm.

import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesUnder, parse, sourceOf, walk, writtenIn } from "./source.ts";

const CAPITAL_FIRST = /^\s*(?:\p{Lu}[\p{Ll}'’]+|A|I),? [\p{L}\d…]/u;
const ENDS_AS_A_SENTENCE = /\p{L}[^.?!]*[.?!]["'”’)]?\s*$/su;
const SQL = /^\s*(select|insert|update|delete|create|drop|alter|with|pragma|begin|commit|rollback|vacuum)\b/iu;

/** Literals that read as sentences: a capital and a space, or a stop at the end. */
function sentencesIn(source: ts.SourceFile): string[] {
  const found: string[] = [];
  walk(source, (node) => {
    const text = writtenIn(node);
    if (text === null || SQL.test(text) || isForOperators(node)) return;
    if (CAPITAL_FIRST.test(text) || ENDS_AS_A_SENTENCE.test(text)) found.push(text);
  });
  return found;
}

/** Thrown faults, logs, what goes to stderr, and descriptions inside schemas are for whoever runs or scripts the bot. */
function isForOperators(node: ts.Node): boolean {
  for (let at: ts.Node | undefined = node.parent; at !== undefined; at = at.parent) {
    if (ts.isNewExpression(at) && /(Error|Refusal|Fault)$/.test(at.expression.getText())) return true;
    if (ts.isCallExpression(at) && /((^|\.)log\.\w+|(^|\.)faults\.push|stderr\.write|\.describe)$/.test(at.expression.getText())) return true;
    if (ts.isFunctionLike(at)) return false;
  }
  return false;
}

describe("sentences a member reads stand in words/ only", () => {
  test.each([
    'const a = "You have no bike here.";',
    'const a = "A bike with that name";',
    'const a = "Done.";',
    'const a = "which one?";',
    `const a = \`Which bike: \${b}?\`;`,
    `const a = \`\${n} miles to go.\`;`,
    `const a = \`\${n} m (about \${k} km).\`;`,
    'const a = new Map([["x", "You have no bike here."]]);',
    'log.info(bikes.map((b) => { send("No such bike."); return b; }));',
  ])("the rule bites: %s", (text) => {
    expect(sentencesIn(parse(text))).toHaveLength(1);
  });
  test.each([
    'const a = "runs backwards";',
    'const a = "P30D";',
    'const a = "Europe/Berlin";',
    'import { a } from "./a.ts";',
    'throw new RangeError("No such thing.");',
    'throw new StoreRefusal("This file is newer.");',
    'log.error({ at }, "The sweep stopped.");',
    'db.prepare("select * from bikes where owner = ?");',
    'z.string().describe("Whole tenths of a millimetre.");',
  ])("and leaves alone: %s", (text) => {
    expect(sentencesIn(parse(text))).toEqual([]);
  });

  const parts = ["usecases", "chat", "reminders", "discord", "terminal", "message", "store", "core"].map((part) => `src/${part}`);
  // Sources named beside figures are data of the trade, not sentences to a member; the demo speaks as its riders do.
  const data = ["src/core/quantity/units.ts", "src/terminal/demo.ts"];
  const files = filesUnder(...parts, "commands").filter((file) => !data.includes(file));
  test("there are files to look at", () => {
    expect(files.length).toBeGreaterThan(50);
  });
  test.each(files)("%s", (file) => {
    expect(sentencesIn(sourceOf(file))).toEqual([]);
  });
});

/** Exclamation marks and pictures in strings. */
function shoutsIn(source: ts.SourceFile): string[] {
  const found: string[] = [];
  walk(source, (node) => {
    const text = writtenIn(node);
    if (text !== null && /!|\p{Extended_Pictographic}/u.test(text)) found.push(text);
  });
  return found;
}

describe("words are calm: no exclamation mark, no emoji", () => {
  test.each(['const a = "Done!";', `const a = \`\${bike}: well done!\`;`, 'const a = "Oil ✅";', 'const a = "🏍";'])("the rule bites: %s", (text) => {
    expect(shoutsIn(parse(text))).toHaveLength(1);
  });
  test("and leaves code alone", () => {
    expect(shoutsIn(parse('const a = !b; const c = "±5 °C · ½ in";'))).toEqual([]);
  });
  const files = filesUnder("src/words");
  test("there are words to look at", () => {
    expect(files.length).toBeGreaterThan(10);
  });
  test.each(files)("%s", (file) => {
    expect(shoutsIn(sourceOf(file))).toEqual([]);
  });
});
