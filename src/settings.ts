// Settings from the environment and the command line, each checked once; one clear sentence per fault.

import { parseArgs } from "node:util";
import { z } from "zod";
import type { Instant } from "./core/calendar/dates.ts";
import { instant } from "./core/calendar/zones.ts";
import { isPostgres } from "./store/address.ts";

/** Which part of the groups this process serves, where several processes share one database: the first of two is 1 of 2. */
export type Part = { readonly nth: number; readonly of: number };
export type Settings = {
  readonly face: "terminal" | "lines" | "discord";
  readonly database: string;
  readonly clock: Instant | null;
  readonly logLevel: string;
  readonly discord: { readonly token: string; readonly api: string | null; readonly readChannels: boolean; readonly part: Part | null };
};
export type ReadSettings = { readonly is: "read"; readonly settings: Settings } | { readonly is: "faults"; readonly faults: readonly string[] };

const YES_NO: Readonly<Record<string, boolean>> = { "": false, yes: true, true: true, "1": true, no: false, false: false, "0": false };
const LEVELS = ["silent", "error", "warn", "info", "debug"] as const;
const environment = z.object({
  DISCORD_TOKEN: z.string().optional(),
  TAPPET_DATABASE: z.string().optional(),
  TAPPET_LOG: z.string().optional(),
  DISCORD_API_URL: z.string().optional(),
  TAPPET_READ_CHANNELS: z.string().optional(),
  TAPPET_PART: z.string().optional(),
});

/** Reads both; every fault is named, not only the first. */
export function readSettings(env: Readonly<Record<string, string | undefined>>, args: readonly string[]): ReadSettings {
  const faults: string[] = [];
  const { DISCORD_TOKEN = "", TAPPET_DATABASE, TAPPET_LOG, DISCORD_API_URL = "", TAPPET_READ_CHANNELS = "", TAPPET_PART = "" } = environment.parse(env);
  let typed: { lines?: boolean | undefined; db?: string | undefined; clock?: string | undefined } = {};
  try {
    typed = parseArgs({ args: [...args], options: { lines: { type: "boolean" }, db: { type: "string" }, clock: { type: "string" } } }).values;
  } catch {
    faults.push("The options are --lines, --db FILE and --clock ISO; something else was given.");
  }
  let clock: Instant | null = null;
  try {
    clock = typed.clock === undefined ? null : instant(typed.clock);
  } catch {
    faults.push(`--clock is not a moment: ${typed.clock}. Write it as 2027-03-01T09:00:00Z.`);
  }
  const logLevel = TAPPET_LOG ?? "error";
  if (!LEVELS.some((level) => level === logLevel)) faults.push(`TAPPET_LOG is one of ${LEVELS.join(", ")}; it is ${logLevel}.`);
  const face = typed.lines === true ? "lines" : DISCORD_TOKEN !== "" ? "discord" : "terminal";
  const database = typed.db ?? TAPPET_DATABASE ?? (face === "discord" ? "tappet.sqlite" : "practice.sqlite");
  if (/^\w{2,}:/u.test(database) && !(isPostgres(database) && URL.canParse(database)) && database !== ":memory:")
    faults.push("TAPPET_DATABASE is the path of a file, or an address such as postgres://tappet@localhost/tappet; it is neither.");
  if (DISCORD_API_URL !== "" && !/^https?:\/\//u.test(DISCORD_API_URL))
    faults.push(`DISCORD_API_URL is an address such as https://example.org/api; it is ${DISCORD_API_URL}.`);
  const readChannels = YES_NO[TAPPET_READ_CHANNELS.toLowerCase()];
  if (readChannels === undefined) faults.push(`TAPPET_READ_CHANNELS is yes or no; it is ${TAPPET_READ_CHANNELS}.`);
  const part = partOf(TAPPET_PART);
  if (part === "none") faults.push(`TAPPET_PART says which of how many processes this is, such as 1/2; it is ${TAPPET_PART}.`);
  else if (part !== null && !isPostgres(database)) faults.push("TAPPET_PART is for several processes on one PostgreSQL database; a file is one process's own.");
  const discord = {
    token: DISCORD_TOKEN,
    api: DISCORD_API_URL === "" ? null : DISCORD_API_URL,
    readChannels: readChannels === true,
    part: part === "none" ? null : part,
  };
  return faults.length > 0 ? { is: "faults", faults } : { is: "read", settings: { face, database, clock, logLevel, discord } };
}

function partOf(typed: string): Part | null | "none" {
  if (typed === "") return null;
  const [, nth, of] = /^([1-9]\d?)\/([1-9]\d?)$/u.exec(typed) ?? [];
  return nth === undefined || Number(nth) > Number(of) ? "none" : { nth: Number(nth), of: Number(of) };
}
