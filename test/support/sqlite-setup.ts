// Once a run: a SQLite file brought up to date, in a file system in memory where the system has one, for each test to have a copy of.

import { existsSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import path from "node:path";
import type { TestProject } from "vitest/node";
import { openSqlite } from "../../src/store/sqlite.ts";

declare module "vitest" {
  interface ProvidedContext {
    template: string | undefined;
  }
}

/** Nothing waits for a disk there. */
const IN_MEMORY = "/dev/shm";

export async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  if (!existsSync(IN_MEMORY)) return undefined;
  const folder = await mkdtemp(path.join(IN_MEMORY, "tappet-"));
  const file = path.join(folder, "template.sqlite");
  await (await openSqlite(file)).close();
  project.provide("template", file);
  return () => rm(folder, { recursive: true, force: true });
}
