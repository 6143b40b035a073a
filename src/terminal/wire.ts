// The room over a bot: its channel, its clock and the reminders that arrive in it.

import type { Conversation } from "../chat/inbound.ts";
import type { Instant } from "../core/calendar/dates.ts";
import type { MemberId } from "../core/ids.ts";
import { type Arrived, type Room, type Said, whereOf } from "./room.ts";

/** What the room needs from the house: small functions, so that it knows neither database nor commands. */
export type Wires = {
  readonly conversation: Conversation;
  readonly commands: Room["commands"];
  readonly keep: Room["keep"];
  readonly now: () => Instant;
  readonly newId: () => string;
  /** When a span typed by hand ends. @throws RangeError */
  readonly later: (from: Instant, span: string) => Instant;
  readonly moveTo: (at: Instant) => Promise<void>;
  readonly tick: (now: Instant) => Promise<unknown>;
  /** The next moment at which a tick would find something to do. */
  readonly next: () => Promise<Instant | null>;
  readonly remember: (said: Said, at: Instant) => Promise<void>;
  readonly said: (id: string) => Promise<Said | null>;
  /** Deliveries in the room from a moment on, oldest first. */
  readonly delivered: (
    from: Instant,
  ) => Promise<readonly { readonly delivery: string; readonly place: string; readonly member: string | null; readonly reply: string }[]>;
};

/** More due moments than this in one go would be a fault of ours. */
const MOST_STEPS = 100_000;

export async function roomOn(wires: Wires): Promise<Room> {
  // What was delivered before the room was opened was printed then.
  const printed = new Set((await wires.delivered("" as Instant)).map((each) => each.delivery));
  const fresh = async (since: Instant): Promise<Arrived[]> => {
    const arrived: Arrived[] = [];
    for (const each of await wires.delivered(since)) {
      const where = whereOf(each.place);
      if (printed.has(each.delivery) || where === null) continue;
      printed.add(each.delivery);
      arrived.push({ delivery: each.delivery, to: (each.member ?? "") as MemberId, where, reply: JSON.parse(each.reply) as Arrived["reply"] });
    }
    return arrived;
  };
  return {
    hear: wires.conversation.hear,
    commands: wires.commands,
    keep: wires.keep,
    now: wires.now,
    newId: wires.newId,
    remember: (said) => wires.remember(said, wires.now()),
    said: wires.said,
    async tick() {
      const at = wires.now();
      await wires.tick(at);
      return fresh(at);
    },
    async advance(duration, asleep) {
      const from = wires.now();
      const end = wires.later(from, duration);
      if (end < from) throw new RangeError(`the clock does not run back: ${duration}`);
      let visited = from;
      // First what is due already: it is told before time moves on.
      if (!asleep) await wires.tick(from);
      for (let step = 0; !asleep && step < MOST_STEPS; step++) {
        const next = await wires.next();
        if (next === null || next > end) break;
        if (next > visited) await wires.moveTo(next);
        else if (step > 0 && next <= visited) break;
        visited = next > visited ? next : visited;
        await wires.tick(visited);
      }
      await wires.moveTo(end);
      await wires.tick(end);
      return fresh(from);
    },
  };
}
