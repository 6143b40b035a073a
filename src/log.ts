// Structured logs on stderr: no message text, no token.

import { destination, pino } from "pino";

export type Log = {
  readonly error: (facts: Readonly<Record<string, unknown>>, what: string) => void;
  readonly info: (facts: Readonly<Record<string, unknown>>, what: string) => void;
};

export const logTo = (level: string): Log => pino({ level, base: null }, destination({ dest: 2, sync: true }));
