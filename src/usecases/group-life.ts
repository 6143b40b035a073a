// What the platform tells of a group and of messages, without a member asking for anything.

import type { GroupId, MemberId } from "../core/ids.ts";
import type { Store } from "../store/store.ts";

/** Who logged from a message; null when nothing stands as logged from it. */
export const authorOf = (store: Store, message: string): Promise<MemberId | null> =>
  store.read(async (q) => (await q.readings.ofMessage(message))[0]?.by ?? (await q.work.ofMessage(message))[0]?.by ?? null);

/** True the first time that the bot finds itself in a group, over restarts and replays: it is noted before anything is sent, so that nothing is sent twice. */
export const beginWelcome = (store: Store, group: GroupId): Promise<boolean> =>
  store.change(async (q) => {
    if ((await q.room.meta(keyOf(group))) !== null) return false;
    await q.room.setMeta(keyOf(group), "begun");
    return true;
  });

/** It certainly did not get through: the next start tries again. */
export const forgetWelcome = (store: Store, group: GroupId): Promise<void> => store.change((q) => q.room.dropMeta(keyOf(group)));

const keyOf = (group: GroupId): string => `welcome/${group}`;
