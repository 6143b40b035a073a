// What the platform tells of a group and of messages, without a member asking for anything.

import type { Instant } from "../core/calendar/dates.ts";
import type { EventId, MemberId } from "../core/ids.ts";
import type { Store } from "../store/store.ts";

/** Who logged from a message; null when nothing stands as logged from it. */
export const authorOf = (store: Store, message: string): Promise<MemberId | null> =>
  store.read(async (q) => (await q.readings.ofMessage(message))[0]?.by ?? (await q.work.ofMessage(message))[0]?.by ?? null);

/** True the first time that the bot finds itself in a group, over restarts and replays. */
export const welcomeOnce = async (store: Store, now: Instant, group: string): Promise<boolean> =>
  (await store.act(`welcome/${group}` as EventId, now, async () => undefined)).first;
