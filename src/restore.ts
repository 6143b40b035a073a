// npm run restore -- FILE: puts a backup in the place of the database.

import { realClock } from "./clock.ts";
import { readSettings } from "./settings.ts";
import { isPostgres } from "./store/address.ts";
import { restore } from "./store/restore.ts";
import { startWords } from "./words/en/start.ts";

async function main(): Promise<number> {
  const [backup, ...more] = process.argv.slice(2);
  // The database of the server's face, unless TAPPET_DATABASE names another.
  const read = readSettings({ ...process.env, DISCORD_TOKEN: process.env["DISCORD_TOKEN"] || "any" }, []);
  if (read.is === "faults") return say(read.faults, 1);
  const { database } = read.settings;
  if (backup === undefined || more.length > 0) return say([startWords.restoreHow()], 1);
  if (isPostgres(database)) return say([startWords.restorePostgres()], 1);
  const restored = await restore(backup, database, realClock.now());
  return restored.is === "restored"
    ? say([startWords.restored(backup, database, restored.aside)], 0)
    : say([startWords.notRestored(backup, database, restored.why)], 1);
}

function say(lines: readonly string[], code: number): number {
  process.stderr.write(`${lines.join("\n")}\n`);
  return code;
}

process.exitCode = await main();
