// Settings from the environment and the command line, each checked once; one clear sentence per fault.

import { parseArgs } from "node:util";
import { z } from "zod";
import type { Instant } from "./core/calendar/dates.ts";
import { instant } from "./core/calendar/zones.ts";

export type Settings = {
  readonly face: "terminal" | "lines" | "discord";
  readonly database: string;
  readonly clock: Instant | null;
  readonly logLevel: string;
  readonly discord: { readonly token: string; readonly api: string | null; readonly readChannels: boolean };
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
});

/** Reads both; every fault is named, not only the first. */
export function readSettings(env: Readonly<Record<string, string | undefined>>, args: readonly string[]): ReadSettings {
  const faults: string[] = [];
  const { DISCORD_TOKEN = "", TAPPET_DATABASE, TAPPET_LOG, DISCORD_API_URL = "", TAPPET_READ_CHANNELS = "" } = environment.parse(env);
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
  if (/^postgres(ql)?:/u.test(database)) faults.push("TAPPET_DATABASE names PostgreSQL, which this version does not open yet. Name a SQLite file.");
  if (DISCORD_API_URL !== "" && !/^https?:\/\//u.test(DISCORD_API_URL))
    faults.push(`DISCORD_API_URL is an address such as https://example.org/api; it is ${DISCORD_API_URL}.`);
  const readChannels = YES_NO[TAPPET_READ_CHANNELS.toLowerCase()];
  if (readChannels === undefined) faults.push(`TAPPET_READ_CHANNELS is yes or no; it is ${TAPPET_READ_CHANNELS}.`);
  const discord = { token: DISCORD_TOKEN, api: DISCORD_API_URL === "" ? null : DISCORD_API_URL, readChannels: readChannels === true };
  return faults.length > 0 ? { is: "faults", faults } : { is: "read", settings: { face, database, clock, logLevel, discord } };
}
