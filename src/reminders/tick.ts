// One tick: look at what has come due to be looked at, then send what is ready. Ticks never overlap.

import type { Instant } from "../core/calendar/dates.ts";
import { addDuration, addMinutes } from "../core/calendar/zones.ts";
import type { Store } from "../store/store.ts";
import { queueDigests } from "./digest.ts";
import { sendReady } from "./send.ts";
import type { Sending } from "./sending.ts";
import { sweep } from "./sweep.ts";

export type Reminders = {
  /** Does all that is due by `now`; missed ticks are caught up in one. */
  readonly tick: (now: Instant) => Promise<{ readonly looked: number; readonly sent: number }>;
  /** The next moment at which a tick would find something to do; null when nothing is planned. */
  readonly next: () => Promise<Instant | null>;
};

export function remindersOf(store: Store, sending: Sending, newId: () => string): Reminders {
  let running: Promise<unknown> = Promise.resolve();
  return {
    tick(now) {
      const mine = running.then(async () => {
        await setRight(store, now);
        const looked = await sweep(store, now, newId);
        await queueDigests(store, now, newId);
        return { looked, sent: await sendReady(store, sending, now) };
      });
      running = mine.catch(() => undefined);
      return mine;
    },
    next: () =>
      store.read(async (q) => {
        const moments = [await q.bikes.nextLook(), await q.notices.nextDelivery(), await q.digests.next()].filter((at) => at !== null);
        return moments.sort()[0] ?? null;
      }),
  };
}

/** Clocks of two processes may differ by so much. */
const DIFFERENCE_MINUTES = 10;

/** A clock that was ahead has left plans for a time that has not come: they are made anew. */
async function setRight(store: Store, now: Instant): Promise<void> {
  await store.change(async (q) => {
    const last = await q.room.meta("ticked");
    const until = addMinutes(now, DIFFERENCE_MINUTES);
    if (last !== null && last > until) {
      await q.bikes.lookAtAll(now);
      await q.notices.replanned(now, until);
      // No digest is planned further ahead than two weeks.
      await q.digests.replanAfter(addDuration(now, "P15D"), now);
    }
    await q.room.setMeta("ticked", now);
  });
}
