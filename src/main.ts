// Starts Tappet: reads the settings and hands a face to whoever is there.

import { existsSync } from "node:fs";
import { schedule } from "node-cron";
import { COMMANDS, HANDLERS, messagesOf } from "../commands/index.ts";
import { localDateAt, localTimeAt, zone } from "./core/calendar/zones.ts";
import { logTo } from "./log.ts";
import { openRoom } from "./open-room.ts";
import { readSettings, type Settings } from "./settings.ts";
import { StoreRefusal } from "./store/open.ts";
import { runLines } from "./terminal/lines.ts";
import { runPracticeRoom } from "./terminal/practice-room.ts";
import { roomWords } from "./words/en/room.ts";
import { startWords } from "./words/en/start.ts";
import { makePrinter } from "./words/printer.ts";

const UTC = zone("UTC");

async function main(): Promise<number> {
  const read = readSettings(process.env, process.argv.slice(2));
  if (read.is === "faults") return refuse(read.faults);
  if (read.settings.face === "discord") return refuse([startWords.noDiscordYet()]);
  try {
    return await terminal(read.settings);
  } catch (error) {
    if (error instanceof StoreRefusal) return refuse([error.message]);
    throw error;
  }
}

function refuse(lines: readonly string[]): number {
  process.stderr.write(`${lines.join("\n")}\n`);
  return 1;
}

/** The practice room and JSON lines: the same bot, the same database, two ways to talk to it. */
async function terminal(settings: Settings): Promise<number> {
  const fresh = !existsSync(settings.database);
  const log = logTo(settings.logLevel);
  const { room, bot, clock, close } = await openRoom({
    file: settings.database,
    frozen: settings.clock,
    log,
    supplied: { commands: COMMANDS, handlers: HANDLERS, messages: messagesOf },
  });
  if (settings.face === "lines") await runLines(room, process.stdin, process.stdout);
  else {
    const tick = (): void => void bot.reminders.tick(clock.now()).catch((error: unknown) => log.error({ err: error }, "a tick failed"));
    const minutes = schedule("* * * * *", tick, { timezone: "UTC", noOverlap: true });
    const printer = makePrinter({ locale: "en-GB", distance: null });
    const today = () => ({ day: printer.date(localDateAt(clock.now(), UTC)), time: localTimeAt(clock.now(), UTC) });
    await runPracticeRoom(room, { words: roomWords, file: settings.database, fresh, today }, process.stdin, process.stdout);
    await minutes.destroy();
  }
  await close();
  return 0;
}

process.exitCode = await main();
