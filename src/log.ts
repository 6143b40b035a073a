// Structured logs on stderr: no message text, no token.

import { destination, pino } from "pino";

export type Log = {
  readonly error: (facts: Readonly<Record<string, unknown>>, what: string) => void;
  readonly info: (facts: Readonly<Record<string, unknown>>, what: string) => void;
};

/** An error without the request that caused it: its address may hold a token, its body what a member wrote. */
function bare(error: unknown): unknown {
  if (!(error instanceof Error)) return { message: String(error) };
  const { code, status, method } = error as { code?: unknown; status?: unknown; method?: unknown };
  return { type: error.name, message: error.message, code, status, method, stack: error.stack };
}

export const logTo = (level: string): Log => pino({ level, base: null, serializers: { err: bare } }, destination({ dest: 2, sync: true }));
