// Rules of the house that neither compiler nor linter knows. Each is shown to bite.

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../commands/index.ts";
import { fullName } from "../../src/chat/registration.ts";

const ROOT = path.resolve(import.meta.dirname, "../..");

function filesUnder(...folders: readonly string[]): string[] {
  return folders.flatMap((folder) =>
    readdirSync(path.join(ROOT, folder), { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"))
      .map((name) => path.join(folder, name)),
  );
}
const sourceOf = (file: string): ts.SourceFile => parse(readFileSync(path.join(ROOT, file), "utf8"), file);
const parse = (text: string, file = "x.ts"): ts.SourceFile => ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);

function walk(node: ts.Node, see: (node: ts.Node) => void): void {
  see(node);
  ts.forEachChild(node, (child) => walk(child, see));
}

/** Literals that read as sentences: a capital and a space, or a stop at the end. Thrown faults and logs are for operators. */
function sentencesIn(source: ts.SourceFile): string[] {
  const found: string[] = [];
  walk(source, (node) => {
    const text =
      ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)
        ? node.text
        : ts.isTemplateExpression(node)
          ? [node.head.text, ...node.templateSpans.map((span) => span.literal.text)].join("…")
          : null;
    if (text === null || isForOperators(node)) return;
    if (/^\p{Lu}\p{Ll}+ \p{L}/u.test(text) || /\p{L} \p{L}.*[.?!]$/su.test(text)) found.push(text);
  });
  return found;
}

function isForOperators(node: ts.Node): boolean {
  for (let at: ts.Node | undefined = node; at !== undefined; at = at.parent) {
    if (ts.isNewExpression(at)) return true;
    if (ts.isCallExpression(at) && /(^|\.)(log|faults)\.(error|info|push)$/.test(at.expression.getText())) return true;
  }
  return false;
}

describe("sentences a member reads stand in words/ only", () => {
  const PARTS = filesUnder("src/usecases", "src/chat", "src/reminders", "src/terminal", "src/message", "src/store", "src/core", "commands");
  test("the rule bites", () => {
    expect(sentencesIn(parse('const a = "You have no bike here.";'))).toHaveLength(1);
    expect(sentencesIn(parse("const a = `Which bike: $" + "{b}?`;"))).toHaveLength(1);
    expect(sentencesIn(parse('const a = "runs backwards"; throw new Error("No such thing.");'))).toEqual([]);
  });
  // Sources named beside figures are data of the trade, not sentences to a member; the demo speaks as its riders do.
  const DATA = ["src/core/quantity/units.ts", "src/terminal/demo.ts"];
  test.each(PARTS.filter((file) => !DATA.includes(file)).map((file) => [file]))("%s", (file) => {
    expect(sentencesIn(sourceOf(file))).toEqual([]);
  });
});

/** Calls that ask for the time or for chance. */
function asksIn(source: ts.SourceFile): string[] {
  const found: string[] = [];
  walk(source, (node) => {
    if (ts.isNewExpression(node) && node.expression.getText() === "Date" && (node.arguments?.length ?? 0) === 0) found.push("new Date()");
    if (
      ts.isCallExpression(node) &&
      /^(Date\.now|DateTime\.(now|local|utc)|performance\.now|Math\.random|randomUUID|crypto\.randomUUID|randomBytes)$/.test(node.expression.getText())
    )
      found.push(node.expression.getText());
  });
  return found;
}

describe("time and chance are arguments", () => {
  test("the rule bites", () => {
    expect(asksIn(parse("new Date(); Date.now(); Math.random(); new Date(5);"))).toEqual(["new Date()", "Date.now", "Math.random"]);
  });
  test.each(filesUnder("src", "commands", "migrations").map((file) => [file]))("%s", (file) => {
    const allowed: Readonly<Record<string, readonly string[]>> = { "src/clock.ts": ["Date.now"], "src/ids.ts": ["randomBytes"] };
    expect(asksIn(sourceOf(file)).filter((ask) => !(allowed[file] ?? []).includes(ask))).toEqual([]);
  });
});

describe("words are calm", () => {
  const shouts = (source: ts.SourceFile): string[] => {
    const found: string[] = [];
    walk(source, (node) => {
      if (
        (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) &&
        /!|\p{Extended_Pictographic}/u.test(node.text)
      )
        found.push(node.text);
    });
    return found;
  };
  test("the rule bites", () => {
    expect(shouts(parse('const a = "Done!";'))).toHaveLength(1);
  });
  test.each(filesUnder("src/words").map((file) => [file]))("%s", (file) => {
    expect(shouts(sourceOf(file))).toEqual([]);
  });
});

test("every command file is in the index, under its own name", () => {
  const files = readdirSync(path.join(ROOT, "commands")).filter(
    (name) => name.endsWith(".ts") && !["index.ts", "define.ts", "shapes.ts", "messages.ts"].includes(name),
  );
  const names = COMMANDS.map((command) => `${fullName(command).replace(" ", "-")}.ts`);
  expect(files.sort()).toEqual(names.sort());
});

test("migrations are named by their moment and what they do", () => {
  for (const file of readdirSync(path.join(ROOT, "migrations"))) expect(file).toMatch(/^\d{12}-[a-z-]+\.ts$/);
});

test("no test is skipped, left for later, or alone", () => {
  const marks = /\b(test|describe|it)\.(skip|only|todo|fails)\b/;
  expect("test.only(").toMatch(marks);
  for (const file of filesUnder("test").filter((name) => name !== path.join("test", "house", "rules.test.ts")))
    expect(readFileSync(path.join(ROOT, file), "utf8"), file).not.toMatch(marks);
});
