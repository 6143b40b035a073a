// The top of the house holds what the design card names, and nothing that a tool left behind.

import { spawnSync } from "node:child_process";
import path from "node:path";
import { expect, test } from "vitest";

const NAMED = ["README.md", "DEVELOPERS.md", "package.json", "package-lock.json", "tsconfig.json", "src", "migrations", "commands", "test", "LICENSE"];
const listed = spawnSync("git", ["ls-files", "-z"], { cwd: path.join(import.meta.dirname, "..", ".."), encoding: "utf8" });

test("nothing lies at the top but what is named, and what tools keep under a dot", () => {
  // Without git, as where the house was copied by hand, nobody can say what belongs to it.
  if (listed.status !== 0) return;
  const top = [...new Set(listed.stdout.split("\0").flatMap((file) => (file === "" ? [] : [file.split("/")[0] ?? ""])))];
  expect(top.filter((name) => !name.startsWith(".")).sort()).toEqual([...NAMED].sort());
});
