// The exchange in the README is a real one: it is typed again here, and must print the same.

import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { typed } from "./support/practice.ts";

const README = path.join(import.meta.dirname, "..", "README.md");

test("the first evening of the README, typed again", async () => {
  const page = readFileSync(README, "utf8");
  const shown = /```text\n([\s\S]*?)```/u.exec(page)?.[1] ?? "";
  const lines = shown
    .split("\n")
    .filter((line) => line.startsWith(">"))
    .map((line) => line.slice(2));
  expect(lines.length).toBeGreaterThan(8);
  const printed = (await typed(lines)).slice(1, -1);
  const again = lines.map((line, n) => `> ${line}\n${printed[n] ?? ""}`).join("");
  if (process.env["TAPPET_README"] === "write") writeFileSync(README, page.replace(shown, again));
  else expect(shown).toBe(again);
});
