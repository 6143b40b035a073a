// What both terminal faces stand on: the conversation, the room's own channel, its clock and its reminders.
// Wired by main; nothing here knows the database.

import type { Answer, Inbound, Where } from "../chat/inbound.ts";
import type { Reply } from "../chat/reply.ts";
import type { Instant } from "../core/calendar/dates.ts";
import type { EventId, GroupId, MemberId } from "../core/ids.ts";
import type { KeepFile } from "./files.ts";

/** A message said in the room, kept for edits and the message menu. */
export type Said = { readonly id: string; readonly author: string; readonly place: string; readonly text: string };
/** A reminder that has arrived in the room. */
export type Arrived = { readonly delivery: string; readonly to: MemberId; readonly where: Where; readonly reply: Reply };

export type Room = {
  readonly hear: (inbound: Inbound) => Promise<readonly Answer[]>;
  readonly now: () => Instant;
  readonly newId: () => string;
  readonly remember: (said: Said) => Promise<void>;
  readonly said: (id: string) => Promise<Said | null>;
  /** Moves the clock on, awake (each due moment in order) or asleep (one jump), and answers what arrived. @throws RangeError when the duration cannot be read */
  readonly advance: (duration: string, asleep: boolean) => Promise<readonly Arrived[]>;
  /** Does what is due now. */
  readonly tick: () => Promise<readonly Arrived[]>;
  /** Keeps a file of an answer, and says where. */
  readonly keep: KeepFile;
  /** The commands, for reading a line. */
  readonly commands: Parameters<typeof import("../chat/command-line.ts").parseCommandLine>[1];
};

/** "dm", "g1" (the reading channel of g1) or "g1/other". Null when it is none of them. */
export function whereOf(place: string): Where | null {
  if (place === "dm") return { group: null, channel: "dm", id: place };
  const found = /^([\w-]{1,40})(\/other)?$/u.exec(place);
  return found === null ? null : { group: found[1] as GroupId, channel: found[2] === undefined ? "reading" : "other", id: place };
}

export const placeOf = (where: Where): string => where.id;

/** A reply as plain text: title, lines, caution. */
export const textOf = (reply: Reply): string =>
  [...(reply.title === null ? [] : [reply.title]), ...reply.lines, ...(reply.caution === null ? [] : [reply.caution])].join("\n");

export const eventOf = (id: string): EventId => id as EventId;
export const memberOf = (name: string): MemberId => name as MemberId;
