// Trying again where the platform stumbled: the library itself would do so at once, which helps nobody.

import { DiscordAPIError, HTTPError } from "discord.js";

/** Milliseconds before each further try. */
export const WAITS: readonly number[] = [400, 1200, 3000, 8000];

/** For what must be answered within three seconds. */
export const QUICK: readonly number[] = [200, 500];

/** @param waits shorter for what must be answered at once */
export async function again<T>(work: () => Promise<T>, waits: readonly number[] = WAITS): Promise<T> {
  const [wait, ...rest] = waits;
  try {
    return await work();
  } catch (error) {
    if (wait === undefined || !isPassing(error)) throw error;
    await new Promise((resolve) => setTimeout(resolve, wait));
    return again(work, rest);
  }
}

/** A fault of the platform or the line that may be over at the next try: 5xx, a time-out, a cut socket. */
export function isPassing(error: unknown): boolean {
  if (error instanceof HTTPError || error instanceof DiscordAPIError) return error.status >= 500;
  if (!(error instanceof Error)) return false;
  const code = "code" in error && typeof error.code === "string" ? error.code : "";
  return error.name === "AbortError" || /^(UND_ERR_|ECONN|ETIMEDOUT|EPIPE|ENOTFOUND|EAI_AGAIN)/u.test(code) || isPassing(error.cause);
}

/** The platform's own number for what went wrong; null when it gave none. */
export const codeOf = (error: unknown): number | null => (error instanceof DiscordAPIError && typeof error.code === "number" ? error.code : null);

/** The token is not, or no longer, good: nothing more can be done until the operator has a new one. After the first refusal the library itself has forgotten it. */
export const isUnauthorised = (error: unknown): boolean =>
  error instanceof DiscordAPIError || error instanceof HTTPError
    ? error.status === 401
    : error instanceof Error && /^Expected token to be set/u.test(error.message);

/** The platform will not take this request, now or later. */
export const isRefused = (error: unknown): boolean => error instanceof DiscordAPIError && error.status >= 400 && error.status < 500;

/** Numbers of the platform that are answered differently. Source: its documentation, opcodes and status codes. */
export const CODES = {
  unknownChannel: 10_003,
  unknownMember: 10_007,
  unknownMessage: 10_008,
  unknownWebhook: 10_015,
  unknownInteraction: 10_062,
  directMessagesTooFast: 40_003,
  missingAccess: 50_001,
  cannotMessageUser: 50_007,
  missingPermissions: 50_013,
  invalidToken: 50_027,
  alreadyAcknowledged: 40_060,
  noMutualServer: 50_278,
  replyNeedsHistory: 160_002,
} as const;
