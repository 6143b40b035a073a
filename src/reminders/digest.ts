// A group's digest of the week: planned for the group's hour, drawn when it is posted, and at most one a week however its hour is moved.

import { actionId } from "../chat/action-names.ts";
import type { Where } from "../chat/inbound.ts";
import type { Reply } from "../chat/reply.ts";
import type { Group, ReminderWishes } from "../core/bike.ts";
import type { Instant } from "../core/calendar/dates.ts";
import { addDuration, localDateAt } from "../core/calendar/zones.ts";
import type { GroupId } from "../core/ids.ts";
import { USUAL_DIGEST } from "../core/reminding.ts";
import { digestRecipient } from "../store/digests.ts";
import { USUAL_WISHES } from "../store/members.ts";
import type { Delivery } from "../store/notices.ts";
import type { Repos, Store } from "../store/store.ts";
import { digestOf } from "../usecases/digest.ts";
import type { Words } from "../words/en/english.ts";
import type { Sending } from "./sending.ts";
import { nextWindow, notQuiet } from "./windows.ts";

/** Groups planned in one transaction. */
const SLICE = 100;
/** From one digest to the next at least: a week but for a clock that was put on. */
const WEEK = "P6D";
/** One that could not be posted for so long is left out: what it would say comes with the next, and that a week after the last. */
const LATEST = "P1D";
const TOO_LATE = "a day late or more: the next one says it";

/** Queues the digests whose moment has come, and plans each group's next. One whose hour went by long ago is left out, never made up for. */
export async function queueDigests(store: Store, now: Instant, newId: () => string): Promise<void> {
  // Most ticks find none, and open no transaction.
  while ((await store.one((q) => q.digests.due(now, 1))).length > 0) await store.change((q) => slice(q, now, newId));
}

async function slice(q: Repos, now: Instant, newId: () => string): Promise<void> {
  const due = await q.digests.due(now, SLICE);
  const groups = await q.members.groupsByIds(due.map(({ group }) => group));
  for (const { group, at } of due) {
    const home = groups.get(group);
    const wishes = home === undefined ? null : wishesOf(home);
    if (home === undefined || wishes === null) {
      await q.digests.plan(group, null);
      continue;
    }
    // A moment that is none of its hours only asks to be planned: the group's choice changed, or its zone's law.
    const isHour = nextWindow(wishes, home.zone, at) === at;
    const before = await q.digests.lastOf(group);
    const isFree = before === null || addDuration(before, WEEK) <= at;
    if (isHour && isFree && addDuration(at, LATEST) > now) await q.notices.queue([deliveryOf(newId(), group, at)]);
    const after = isHour && at >= now ? addDuration(at, "PT1M") : now;
    await q.digests.plan(group, nextWindow(wishes, home.zone, after));
  }
}

/** When it may come; null: it is off, or there is no channel for it. It keeps the usual quiet hours, also when it is late. */
function wishesOf({ digest, readingChannel }: Group): ReminderWishes | null {
  if (digest === "off" || readingChannel === null) return null;
  return { by: "channel", ...(digest ?? USUAL_DIGEST), quiet: USUAL_WISHES.quiet };
}

const deliveryOf = (id: string, group: GroupId, at: Instant): Delivery => ({
  ...{ id, recipient: digestRecipient(group), window: at, member: null, group, notBefore: at, state: "queued", attempt: 0 },
  ...{ sentFrom: null, leaseUntil: null, messageId: null, why: null, trace: null, drawn: null },
});

/** What one says and where, drawn now; "empty" and "waits" are written already. */
export async function drawDigest(
  q: Repos,
  sending: Sending,
  delivery: Delivery,
  now: Instant,
): Promise<{ readonly where: Where; readonly reply: Reply } | "empty" | "waits"> {
  const end = async (why: string): Promise<"empty"> => {
    await q.notices.finish(delivery, "empty", null, why);
    return "empty";
  };
  const group = delivery.group;
  const home = group === null ? undefined : (await q.members.groupsByIds([group])).get(group);
  const wishes = home === undefined ? null : wishesOf(home);
  if (home === undefined || wishes === null || home.readingChannel === null) return end("switched off before it was posted");
  if (addDuration(delivery.window as Instant, LATEST) <= now) return end(TOO_LATE);
  const allowed = notQuiet(wishes, home.zone, now);
  if (allowed > now) {
    await q.notices.postpone(delivery, allowed, false);
    return "waits";
  }
  const digest = await digestOf(q, home, now);
  if (digest === null) return end("nothing to say this week");
  const words = sending.wordsFor(null, home, localDateAt(now, home.zone));
  return { where: { group: home.id, channel: "reading", id: home.readingChannel }, reply: digestReply(delivery.id, digest, words) };
}

const digestReply = (delivery: string, digest: NonNullable<Awaited<ReturnType<typeof digestOf>>>, words: Words): Reply => ({
  ...{ title: words.digest.title, lines: words.digest.lines(digest), caution: null, files: [], visibility: "shared", data: { delivery, digest } },
  actions: [
    // Whoever presses it sees their own bikes, alone.
    ...(digest.season?.list == null
      ? []
      : [{ id: actionId("check-mine", digest.season.list), label: words.digest.mine(digest.season.list), kind: "press" } as const]),
    { id: actionId("remind-why", delivery), label: words.reminders.whyButton, kind: "press" },
  ],
});
