// Sending: claims the deliveries whose moment has come, gathers what is still true, hands it to the face.
// What is gathered is marked in the same transaction; a delivery taken up again says the same things under the same id.

import type { Where } from "../chat/inbound.ts";
import type { Group, Member } from "../core/bike.ts";
import type { Instant, LocalDate, Zone } from "../core/calendar/dates.ts";
import { addMinutes, localDateAt } from "../core/calendar/zones.ts";
import type { MemberId } from "../core/ids.ts";
import { USUAL_WISHES } from "../store/members.ts";
import type { Delivery, Notice } from "../store/notices.ts";
import type { Repos, Store } from "../store/store.ts";
import { zoneOfBike } from "../usecases/context.ts";
import { dueBike } from "../usecases/due.ts";
import { duesOf, garage } from "../usecases/garage.ts";
import type { Words } from "../words/en/english.ts";
import type { Deliver, Sent } from "./deliver.ts";
import { reminderReply, type Told, waitingReply } from "./draw.ts";
import { noticeKey, stageOf } from "./keys.ts";
import { untilOf } from "./sweep.ts";
import { notQuiet } from "./windows.ts";

/** What sending needs besides the store. */
export type Sending = {
  readonly deliver: Deliver;
  /** Words for a member in their own place, or for a group's channel. */
  readonly wordsFor: (member: Member | null, home: Group | null, today: LocalDate) => Words;
  readonly itemName: (key: string, called: string | null) => string;
  /** For the operator. */
  readonly log: { readonly error: (facts: Readonly<Record<string, unknown>>, what: string) => void };
};

type Drawn = { readonly told: readonly Told[]; readonly words: Words; readonly home: Group | null; readonly member: Member | null };

/** Longer than every HTTP time-out and retry together: no other process takes the delivery meanwhile. */
const LEASE_MINUTES = 10;
const BATCH = 20;
/** What goes wrong so often is our own fault, and trying on does not mend it. A platform that is away is waited for without end. */
const ATTEMPTS = 12;

/** Sends what is ready. Answers how many messages went out. One that goes wrong does not hold up the others. */
export async function sendReady(store: Store, sending: Sending, now: Instant): Promise<number> {
  let sent = 0;
  for (;;) {
    const claimed = await store.change((q) => q.notices.claim(now, addMinutes(now, LEASE_MINUTES), BATCH));
    for (const delivery of claimed) if (await sendOne(store, sending, delivery, now)) sent++;
    if (claimed.length < BATCH) return sent;
  }
}

async function sendOne(store: Store, sending: Sending, delivery: Delivery, now: Instant): Promise<boolean> {
  try {
    const drawn = await store.change((q) => gather(q, sending, delivery, now));
    if (drawn === null) return false;
    return await settle(store, sending, delivery, await reach(sending, delivery, drawn), now);
  } catch (error) {
    sending.log.error({ err: error, delivery: delivery.id, attempt: delivery.attempt }, "a reminder went wrong");
    return settle(store, sending, delivery, delivery.attempt < ATTEMPTS ? { is: "later", why: "went wrong" } : { is: "failed", why: "went wrong" }, now);
  }
}

/** How a delivery ended: `first` is why the first way was closed, where there was a second. */
type Reached = (Sent | { readonly is: "failed"; readonly why: "went wrong" }) & { readonly first?: string };

async function settle(store: Store, sending: Sending, delivery: Delivery, reached: Reached, now: Instant): Promise<boolean> {
  if (reached.is === "later") {
    await store.change((q) => q.notices.postpone(delivery.id, addMinutes(now, Math.min(60, 2 ** delivery.attempt))));
    return false;
  }
  if (reached.is === "sent") {
    await store.change((q) => q.notices.finish(delivery.id, "sent", reached.message, reached.first ?? null));
    return true;
  }
  const why = [reached.first, reached.why].filter((each) => each !== undefined).join(", ");
  await store.change((q) => q.notices.finish(delivery.id, "failed", null, why));
  sending.log.error({ delivery: delivery.id, member: delivery.member, why }, "a reminder could not be delivered");
  return false;
}

/** By the way that the member chose, or by the other. */
async function reach(sending: Sending, delivery: Delivery, drawn: Drawn): Promise<Reached> {
  const { told, words, home } = drawn;
  if (delivery.member === null) throw new Error("a delivery without a member");
  const where: Where = delivery.group === null ? DIRECT : { group: delivery.group, channel: "reading", id: home?.readingChannel ?? delivery.group };
  const rider = delivery.group === null ? null : (drawn.member?.name ?? delivery.member);
  const outcome = await sending.deliver.send(delivery.id, { member: delivery.member, where }, reminderReply(delivery.id, told, words, rider));
  if (outcome.is !== "failed") return outcome;
  const other = await otherwise(sending, delivery, drawn, where);
  return other === null ? outcome : { ...other, first: outcome.why };
}

const DIRECT: Where = { group: null, channel: "dm", id: "dm" };

/** The other way to a member: a word in their home group's channel where direct messages are closed, a direct message where the channel is gone. Null: there is none. */
async function otherwise(sending: Sending, delivery: Delivery, drawn: Drawn, where: Where): Promise<Sent | null> {
  const { told, words, home } = drawn;
  const member = delivery.member as MemberId;
  if (where.channel !== "dm") return sending.deliver.send(`${delivery.id}/otherwise`, { member, where: DIRECT }, reminderReply(delivery.id, told, words, null));
  if (home === null || home.readingChannel === null) return null;
  const channel: Where = { group: home.id, channel: "reading", id: home.readingChannel };
  return sending.deliver.send(`${delivery.id}/otherwise`, { member, where: channel }, waitingReply(delivery.id, words));
}

/** Marks what is still true as told by this delivery, and drops the rest with the reason. Null: nothing to send now. */
async function gather(q: Repos, sending: Sending, delivery: Delivery, now: Instant): Promise<Drawn | null> {
  if (delivery.member === null) return null;
  const member = (await q.members.byIds([delivery.member])).get(delivery.member) ?? null;
  const again = await q.notices.ofDelivery(delivery.id);
  const waiting = again.length > 0 ? again.filter((notice) => notice.state === "told") : await q.notices.waitingOfMember(delivery.member, now);
  const bikes = (await q.bikes.ofOwner(delivery.member)).filter((bike) => waiting.some((notice) => notice.bike === bike.id));
  const groups = await q.members.groupsByIds([...new Set(bikes.flatMap((bike) => (bike.homeGroup === null ? [] : [bike.homeGroup])))]);
  const homeOf = (group: Group["id"] | null): Group | null => (group === null ? null : (groups.get(group) ?? null));
  const home = homeOf(delivery.group ?? bikes[0]?.homeGroup ?? null);
  const zone: Zone = zoneOfBike(member, home);
  const wishes = member?.reminders ?? USUAL_WISHES;
  // A delivery that comes late may fall into quiet hours: it waits for their end.
  const allowed = notQuiet(wishes, zone, now);
  if (allowed > now) {
    await q.notices.postpone(delivery.id, allowed);
    return null;
  }
  const all = await garage(q, bikes, now, (bike) => ({ member, home: homeOf(bike.homeGroup) }));
  const putOffs = await q.notices.putOffsOf(bikes.map((bike) => bike.id));
  const told: Told[] = [];
  const kept: Notice[] = [];
  for (const g of all) {
    const put = putOffs.filter((each) => each.bike === g.bike.id);
    const current = new Map(duesOf(g).flatMap((due) => keyOf(g.bike.id, due, untilOf(put, due.item), g.today)));
    const mine = waiting.filter((notice) => notice.bike === g.bike.id && current.has(notice.key) && g.bike.state === "riding" && wishes.by !== "off");
    if (mine.length === 0) continue;
    const shown = dueBike({ itemName: sending.itemName }, g);
    const items = new Set(mine.map((notice) => current.get(notice.key)));
    kept.push(...mine);
    told.push({ bike: shown, lines: shown.dues.filter((line) => items.has(line.item)), notices: mine });
  }
  const gone = waiting.filter((notice) => !kept.includes(notice));
  await q.notices.settle(
    kept.map((notice) => notice.id),
    "told",
    delivery.id,
    null,
  );
  await q.notices.settle(
    gone.map((notice) => notice.id),
    "dropped",
    null,
    "no longer so when it was to be told",
  );
  if (told.length === 0) {
    await q.notices.finish(delivery.id, "empty", null, "nothing left to tell");
    return null;
  }
  return { told, words: sending.wordsFor(member, home, localDateAt(now, zone)), home, member };
}

function keyOf(bike: Notice["bike"], due: Parameters<typeof stageOf>[0], until: LocalDate | null, today: LocalDate): [string, string][] {
  const stage = stageOf(due);
  if (stage === null || (until !== null && until > today)) return [];
  return [[noticeKey(bike, due, stage, until), due.item]];
}
