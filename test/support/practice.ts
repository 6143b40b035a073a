// The practice room as somebody sits before it: typed lines in, printed lines out.

import { PassThrough } from "node:stream";
import { text as textOf } from "node:stream/consumers";
import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../../commands/index.ts";
import { instant, localDateAt, localTimeAt, zone } from "../../src/core/calendar/zones.ts";
import { openRoom } from "../../src/open-room.ts";
import { runPracticeRoom } from "../../src/terminal/practice-room.ts";
import { roomWords } from "../../src/words/en/room.ts";
import { makePrinter } from "../../src/words/printer.ts";

const UTC = zone("UTC");

/** Types the lines and answers what was printed after each prompt: the first part is the welcome, the last the farewell. */
export async function typed(lines: readonly string[], file = ":memory:", fresh = true): Promise<string[]> {
  const faults: unknown[] = [];
  const open = await openRoom({
    database: file,
    frozen: instant("2026-11-25T10:00:00Z"),
    log: { error: (facts) => void faults.push(facts), info: () => undefined },
    supplied: { commands: COMMANDS, handlers: HANDLERS, messages: messagesOf, saySetUp },
  });
  const [into, out] = [new PassThrough(), new PassThrough()];
  const printed = textOf(out);
  into.end(`${lines.join("\n")}\n`);
  const printer = makePrinter({ locale: "en-GB", distance: null });
  const today = () => ({ day: printer.date(localDateAt(open.clock.now(), UTC)), time: localTimeAt(open.clock.now(), UTC) });
  await runPracticeRoom(open.room, { words: roomWords, file, fresh, today }, into, out);
  out.end();
  await open.close();
  if (faults.length > 0) throw new Error("a fault was logged", { cause: faults[0] });
  return (await printed).split(/^> /mu);
}
