// Reading the house's own files as syntax trees, for rules that neither compiler nor linter knows.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

const ROOT = path.resolve(import.meta.dirname, "../..");

/** A file's text, named from the root of the repository. */
export const textOf = (file: string): string => readFileSync(path.join(ROOT, file), "utf8");

/** The TypeScript files under these folders, named from the root; a folder that is not built yet has none. */
export function filesUnder(...folders: readonly string[]): string[] {
  return folders.flatMap((folder) =>
    existsSync(path.join(ROOT, folder))
      ? readdirSync(path.join(ROOT, folder), { recursive: true, encoding: "utf8" })
          .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"))
          .map((name) => `${folder}/${name.replaceAll(path.sep, "/")}`)
          .sort()
      : [],
  );
}

/** The TypeScript files that stand directly in a folder, by name. */
export const filesIn = (folder: string): string[] =>
  filesUnder(folder)
    .map((file) => file.slice(folder.length + 1))
    .filter((name) => !name.includes("/"));

export const parse = (text: string, file = "x.ts"): ts.SourceFile => ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
export const sourceOf = (file: string): ts.SourceFile => parse(textOf(file), file);

/** Every node, parents first. */
export function walk(node: ts.Node, see: (node: ts.Node) => void): void {
  see(node);
  ts.forEachChild(node, (child) => walk(child, see));
}

/** The text of a string or template, with "…" where something is filled in; null for any other node. */
export function writtenIn(node: ts.Node): string | null {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  if (ts.isTemplateExpression(node)) return [node.head.text, ...node.templateSpans.map((span) => span.literal.text)].join("…");
  return null;
}
