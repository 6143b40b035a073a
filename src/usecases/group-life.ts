// What the platform tells of a group and of messages, without a member asking for anything.

import type { GroupId, MemberId } from "../core/ids.ts";
import type { Trace } from "../store/notices.ts";
import type { Store } from "../store/store.ts";

/** Who logged from a message, or was asked about it; null when nothing stands as logged from it and nothing is open. */
export const authorOf = (store: Store, message: string): Promise<MemberId | null> =>
  store.read(
    async (q) =>
      (await q.readings.ofMessage(message))[0]?.by ?? (await q.work.ofMessage(message))[0]?.by ?? (await q.drafts.openOfMessage(message))?.owner ?? null,
  );

/** What is known of a group's set-up message: null when it was sent, else where a try at it was begun. */
export const welcomeOf = (store: Store, group: GroupId): Promise<{ readonly begun: Trace | null } | null> =>
  store.read(async (q) => {
    const kept = await q.room.meta(keyOf(group));
    if (kept === null) return { begun: null };
    return kept === SENT ? null : { begun: JSON.parse(kept) as Trace };
  });

/** Noted before anything is sent, so that it can be looked for after a crash. */
export const welcomeBegun = (store: Store, group: GroupId, trace: Trace): Promise<void> =>
  store.change((q) => q.room.setMeta(keyOf(group), JSON.stringify(trace)));

/** It was sent, or never can be. */
export const welcomed = (store: Store, group: GroupId): Promise<void> => store.change((q) => q.room.setMeta(keyOf(group), SENT));

/** The bot was sent away; invited again, it begins anew. */
export const forgetWelcome = (store: Store, group: GroupId): Promise<void> => store.change((q) => q.room.dropMeta(keyOf(group)));

const SENT = "sent";
const keyOf = (group: GroupId): string => `welcome/${group}`;
