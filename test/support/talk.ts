// A whole bot in this process, spoken to by JSON lines exactly as a script would.

import { createInterface } from "node:readline";
import { PassThrough } from "node:stream";
import { COMMANDS, HANDLERS, messagesOf, saySetUp } from "../../commands/index.ts";
import { instant } from "../../src/core/calendar/zones.ts";
import { type OpenRoom, openRoom } from "../../src/open-room.ts";
import { runLines } from "../../src/terminal/lines.ts";
import { aDatabase } from "./database.ts";

export type Shown = {
  readonly line: number;
  readonly to: string | null;
  readonly in: string;
  readonly visibility: "private" | "shared";
  readonly text: string | null;
  readonly react: "logged" | "asked" | null;
  readonly actions: readonly {
    readonly id: string;
    readonly label: string;
    readonly kind: string;
    readonly options?: readonly { value: string; label: string }[];
    readonly fields?: readonly { name: string; label: string; value: string | null }[];
  }[];
  readonly files: readonly { readonly name: string; readonly type: string; readonly path: string; readonly alt: string }[];
  // biome-ignore lint/suspicious/noExplicitAny: scripts see plain JSON here, and so do the tests
  readonly data: any;
  readonly error?: string;
};

export type Talk = {
  /** One line in; its answers out. */
  readonly send: (input: Readonly<Record<string, unknown>>) => Promise<readonly Shown[]>;
  /** The one answer expected. */
  readonly one: (input: Readonly<Record<string, unknown>>) => Promise<Shown>;
  readonly open: OpenRoom;
  readonly statements: () => readonly string[];
  readonly close: () => Promise<void>;
};

/** @param clock the frozen moment to begin with @param faulty faults are what is tested */
export async function talk(clock = "2026-11-25T10:00:00Z", file?: string, { faulty = false } = {}): Promise<Talk> {
  const database = file === undefined ? await aDatabase() : { address: file, drop: async () => undefined };
  const statements: string[] = [];
  const faults: unknown[] = [];
  const open = await openRoom({
    database: database.address,
    frozen: instant(clock),
    log: { error: (facts) => void faults.push(facts), info: () => undefined },
    supplied: { commands: COMMANDS, handlers: HANDLERS, messages: messagesOf, saySetUp },
    onQuery: (event) => void statements.push(event.query.sql),
  });
  const [into, out] = [new PassThrough(), new PassThrough()];
  const running = runLines(open.room, into, out);
  const lines = createInterface({ input: out })[Symbol.asyncIterator]();
  const send = async (input: Readonly<Record<string, unknown>>): Promise<readonly Shown[]> => {
    statements.length = 0;
    into.write(`${JSON.stringify(input)}\n`);
    const answers: Shown[] = [];
    for (;;) {
      const next = await lines.next();
      if (next.done === true) throw new Error("the lines ended");
      const answer = JSON.parse(next.value);
      if (answer.done === true) break;
      answers.push(answer);
    }
    if (faults.length > 0 && !faulty) throw new Error("a fault was logged", { cause: faults[0] });
    return answers;
  };
  return {
    send,
    open,
    statements: () => statements,
    async one(input) {
      const answers = await send(input);
      const [only] = answers;
      if (answers.length !== 1 || only === undefined) throw new Error(`${answers.length} answers to ${JSON.stringify(input)}`);
      if (only.error !== undefined) throw new Error(only.error);
      return only;
    },
    async close() {
      into.end();
      await running;
      await open.close();
      await database.drop();
    },
  };
}

/** The id of the button whose label begins so. */
export function button(shown: Shown, label: string): string {
  const found = shown.actions.find((action) => action.label.startsWith(label));
  if (found === undefined) throw new Error(`no button ${label} among ${shown.actions.map((action) => action.label).join(", ")}`);
  return found.id;
}
