// The time and chance are arguments: one file asks for each.

import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesUnder, parse, sourceOf, walk } from "./source.ts";

const ASKS = /^(globalThis\.)?(Date\.now|DateTime\.(now|local|utc)|Temporal\.Now(\.\w+)?|performance\.now|process\.(hrtime|uptime)|Math\.random)$/;
const CHANCE = /^(randomUUID|randomBytes|randomInt|getRandomValues|randomFillSync)$/;

/** What asks for the time or for chance, also when it is only passed on. `new Date(given)` and `DateTime.local(2026, 5)` are given their moment. */
function asksIn(source: ts.SourceFile): string[] {
  const found: string[] = [];
  walk(source, (node) => {
    if (ts.isNewExpression(node) && node.expression.getText() === "Date" && (node.arguments?.length ?? 0) === 0) found.push("new Date()");
    if (ts.isCallExpression(node) && node.expression.getText() === "Date") found.push("Date()");
    if (ts.isPropertyAccessExpression(node)) {
      const name = node.getText();
      const given =
        /^DateTime\.(local|utc)$/.test(name) && ts.isCallExpression(node.parent) && node.parent.arguments.some((each) => !ts.isObjectLiteralExpression(each));
      if (ASKS.test(name) && !given && !(ts.isPropertyAccessExpression(node.parent) && ASKS.test(node.parent.getText()))) found.push(name);
      else if (CHANCE.test(node.name.text)) found.push(node.name.text);
    }
    if (ts.isImportSpecifier(node) && CHANCE.test((node.propertyName ?? node.name).text)) found.push((node.propertyName ?? node.name).text);
  });
  return found;
}

describe("time and chance are arguments", () => {
  test.each<[string, string]>([
    ["new Date();", "new Date()"],
    ["new Date;", "new Date()"],
    ["Date();", "Date()"],
    ["Date.now();", "Date.now"],
    ["const now = Date.now;", "Date.now"],
    ["DateTime.now();", "DateTime.now"],
    ["DateTime.utc();", "DateTime.utc"],
    ["DateTime.local({ zone });", "DateTime.local"],
    ["performance.now();", "performance.now"],
    ["process.hrtime.bigint();", "process.hrtime"],
    ["Math.random();", "Math.random"],
    ["crypto.randomUUID();", "randomUUID"],
    ['import { randomUUID as id } from "node:crypto";', "randomUUID"],
  ])("the rule bites: %s", (text, ask) => {
    expect(asksIn(parse(text))).toEqual([ask]);
  });
  test("and leaves given moments alone", () => {
    expect(asksIn(parse("new Date(5); new Date(text); DateTime.fromISO(text); DateTime.utc(2026, 5, 3); Math.round(4.5); clock.now();"))).toEqual([]);
  });

  const allowed: Readonly<Record<string, readonly string[]>> = { "src/clock.ts": ["Date.now"], "src/ids.ts": ["randomBytes"] };
  const files = filesUnder("src", "commands", "migrations");
  test("there are files to look at", () => {
    expect(files.length).toBeGreaterThan(50);
  });
  test.each(files)("%s", (file) => {
    expect(asksIn(sourceOf(file)).filter((ask) => !(allowed[file] ?? []).includes(ask))).toEqual([]);
  });
});
