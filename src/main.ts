// Starts Tappet: reads the settings and hands a face to whoever is there.

import { schedule } from "node-cron";
import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../commands/index.ts";
import { realClock } from "./clock.ts";
import { localDateAt, localTimeAt, zone } from "./core/calendar/zones.ts";
import { logTo } from "./log.ts";
import { openRoom } from "./open-room.ts";
import { readSettings, type Settings } from "./settings.ts";
import { StoreRefusal } from "./store/refusal.ts";
import { runLines } from "./terminal/lines.ts";
import { runPracticeRoom } from "./terminal/practice-room.ts";
import { roomWords } from "./words/en/room.ts";
import { startWords } from "./words/en/start.ts";
import { makePrinter } from "./words/printer.ts";

const UTC = zone("UTC");
const SUPPLIED = { commands: COMMANDS, handlers: HANDLERS, messages: messagesOf, saySetUp };

async function main(): Promise<number> {
  const read = readSettings(process.env, process.argv.slice(2));
  if (read.is === "faults") return refuse(read.faults);
  try {
    return read.settings.face === "discord" ? await server(read.settings) : await terminal(read.settings);
  } catch (error) {
    if (error instanceof StoreRefusal) return refuse([error.message]);
    throw error;
  }
}

/** Whoever runs it reads stderr: stdout is for answers. */
const say = (lines: readonly string[]): void => void process.stderr.write(`${lines.join("\n")}\n`);

function refuse(lines: readonly string[]): number {
  say(lines);
  return 1;
}

/** The group's server, until it is told to stop or its token is no longer good. */
async function server({ database, discord, logLevel }: Settings): Promise<number> {
  const log = logTo(logLevel);
  const { ended, end } = ending();
  for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, () => end(null));
  // The platform's library is loaded where it is needed: the practice room starts without it.
  const { openServer } = await import("./open-server.ts");
  const opening = openServer({ database, connection: discord, clock: realClock, log, supplied: SUPPLIED, fatal: end });
  const open = await Promise.race([opening, ended]);
  // Told to stop before it was open: nothing is under way that the database would not take back by itself.
  if (open.is === "ended") process.exit(open.code);
  if (open.is === "refused") return refuse([open.sentence]);
  say([startWords.running(open.client.user.displayName, open.client.guilds.cache.size), ...open.notes]);
  let ticking: Promise<unknown> = Promise.resolve();
  const tick = (): void => {
    const now = realClock.now();
    const told = open.bot.reminders.tick(now).catch((error: unknown) => log.error({ err: error }, "a tick failed"));
    ticking = told.then(() => open.backUp(now));
  };
  const minutes = schedule("* * * * *", tick, { timezone: "UTC", noOverlap: true });
  tick();
  const { code } = await ended;
  await minutes.destroy();
  await open.close(ticking);
  // What is still waiting for the platform has had its time; the database is closed.
  process.exit(code);
}

/** The end of the server, said once: by a signal, or with what went wrong for good. */
function ending() {
  let end: (why: string | null) => void = () => undefined;
  const ended = new Promise<{ readonly is: "ended"; readonly code: number }>((resolve) => {
    let over = false;
    end = (why) => {
      if (over) return;
      over = true;
      say([why ?? startWords.stopping()]);
      resolve({ is: "ended", code: why === null ? 0 : 1 });
    };
  });
  return { ended, end };
}

/** The practice room and JSON lines: the same bot, the same database, two ways to talk to it. */
async function terminal(settings: Settings): Promise<number> {
  const log = logTo(settings.logLevel);
  const { room, bot, clock, name, fresh, close } = await openRoom({
    database: settings.database,
    frozen: settings.clock,
    log,
    supplied: SUPPLIED,
  });
  if (settings.face === "lines") await runLines(room, process.stdin, process.stdout);
  else {
    const tick = (): void => void bot.reminders.tick(clock.now()).catch((error: unknown) => log.error({ err: error }, "a tick failed"));
    const minutes = schedule("* * * * *", tick, { timezone: "UTC", noOverlap: true });
    const printer = makePrinter({ locale: "en-GB", distance: null });
    const today = () => ({ day: printer.date(localDateAt(clock.now(), UTC)), time: localTimeAt(clock.now(), UTC) });
    await runPracticeRoom(room, { words: roomWords, file: name, fresh, today }, process.stdin, process.stdout);
    await minutes.destroy();
  }
  await close();
  return 0;
}

process.exitCode = await main();
