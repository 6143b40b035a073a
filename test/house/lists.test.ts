// What is added in one place is listed in one place: commands, migrations, packages; and every test runs.

import ts from "typescript";
import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../commands/index.ts";
import { fullName } from "../../src/chat/registration.ts";
import { filesIn, filesUnder, parse, sourceOf, textOf, walk } from "./source.ts";

describe("every command file is in the index, under its own name", () => {
  // What the commands share: types, shapes, and the answers to plain messages.
  const shared = ["index.ts", "define.ts", "shapes.ts", "shapes-plan.ts", "shapes-tools.ts", "messages.ts"];
  const unlisted = (files: readonly string[], names: readonly string[]): string[] => {
    const expected = names.map((name) => `${name.replaceAll(" ", "-")}.ts`);
    return [...files.filter((file) => !shared.includes(file) && !expected.includes(file)), ...expected.filter((file) => !files.includes(file))];
  };
  test("the rule bites, on a file without a line and on a line without a file", () => {
    expect(unlisted(["index.ts", "due.ts", "bike-add.ts"], ["due", "bike add"])).toEqual([]);
    expect(unlisted(["index.ts", "due.ts", "work.ts"], ["due"])).toEqual(["work.ts"]);
    expect(unlisted(["due.ts"], ["due", "bike add"])).toEqual(["bike-add.ts"]);
  });
  test("the commands of the house", () => {
    const names = COMMANDS.map(fullName);
    expect(names.length).toBeGreaterThan(5);
    expect(unlisted(filesIn("commands"), names)).toEqual([]);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe("migrations are named by their moment and what they do", () => {
  const misnamed = (files: readonly string[]): string[] =>
    files.filter((file) => !/^\d{4}(0[1-9]|1[0-2])(0[1-9]|[12]\d|3[01])([01]\d|2[0-3])[0-5]\d-[a-z][a-z\d]*(-[a-z\d]+)*\.ts$/.test(file));
  test("the rule bites", () => {
    expect(misnamed(["202611251400-first.ts", "202613251400-month.ts", "2026-first.ts", "202611251400_x.ts", "202611252500-hour.ts"])).toHaveLength(4);
  });
  test("the migrations of the house, one a moment", () => {
    const files = filesIn("migrations");
    expect(files.length).toBeGreaterThan(0);
    expect(misnamed(files)).toEqual([]);
    expect(new Set(files.map((file) => file.slice(0, 12))).size).toBe(files.length);
  });
});

describe("every test runs", () => {
  const MARKS = ["skip", "only", "todo", "fails", "skipIf", "runIf"];
  const idleIn = (source: ts.SourceFile): string[] => {
    const found: string[] = [];
    walk(source, (node) => {
      if (ts.isPropertyAccessExpression(node) && MARKS.includes(node.name.text) && /^(test|it|describe|suite|bench|ctx|context)\b/.test(node.getText()))
        found.push(node.getText());
      if (ts.isCallExpression(node) && /^x(it|test|describe)$/.test(node.expression.getText())) found.push(node.expression.getText());
      if (ts.isCallExpression(node) && /^(test|it|describe)\b/.test(node.expression.getText()))
        for (const options of node.arguments.filter(ts.isObjectLiteralExpression))
          for (const each of options.properties) if (MARKS.includes(each.name?.getText() ?? "")) found.push(`{ ${each.getText()} }`);
    });
    return found;
  };
  test.each([
    "test.only('a', f);",
    "describe.skip('a', f);",
    "it.todo('a');",
    "test.skip.each([1])('a', f);",
    "xit('a', f);",
    "test('a', { skip: true }, f);",
    "test.runIf(x)('a', f);",
  ])("the rule bites: %s", (text) => {
    expect(idleIn(parse(text))).toHaveLength(1);
  });
  test("and leaves other uses of the words alone", () => {
    expect(idleIn(parse("only(f, m); test.each([1])('a', f); list.skip(3);"))).toEqual([]);
  });
  test.each(filesUnder("test"))("%s", (file) => {
    expect(idleIn(sourceOf(file))).toEqual([]);
  });
});

describe("a package is asked for once, at one version", () => {
  type Asked = { readonly dependencies?: Readonly<Record<string, string>>; readonly devDependencies?: Readonly<Record<string, string>> };
  const faults = ({ dependencies = {}, devDependencies = {} }: Asked): string[] => [
    ...Object.keys(dependencies).filter((name) => name in devDependencies),
    ...Object.entries({ ...dependencies, ...devDependencies }).flatMap(([name, version]) => (/^\d+\.\d+\.\d+$/.test(version) ? [] : [`${name}@${version}`])),
  ];
  test("the rule bites", () => {
    expect(faults({ dependencies: { a: "1.0.0" }, devDependencies: { b: "1.0.0" } })).toEqual([]);
    expect(faults({ dependencies: { a: "1.0.0" }, devDependencies: { a: "1.0.0" } })).toEqual(["a"]);
    expect(faults({ dependencies: { a: "^1.0.0" } })).toEqual(["a@^1.0.0"]);
  });
  test("the packages of the house", () => {
    expect(faults(JSON.parse(textOf("package.json")))).toEqual([]);
  });
  test("the lock names no registry", () => {
    expect(textOf("package-lock.json")).not.toContain('"resolved": "http');
  });
});
