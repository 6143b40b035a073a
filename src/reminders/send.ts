// Sending: claims the deliveries whose moment has come, gathers what is still true, hands it to the face.
// What is gathered is marked in the same transaction; a delivery taken up again says the same things under the same id.

import type { Where } from "../chat/inbound.ts";
import type { Reply } from "../chat/reply.ts";
import type { Group, Member } from "../core/bike.ts";
import type { Instant, Zone } from "../core/calendar/dates.ts";
import { addDuration, addMinutes, localDateAt } from "../core/calendar/zones.ts";
import type { GroupId, MemberId } from "../core/ids.ts";
import type { NoticeKind } from "../core/reminding.ts";
import { USUAL_WISHES } from "../store/members.ts";
import type { Delivery, Ended, Notice } from "../store/notices.ts";
import type { Repos, Store } from "../store/store.ts";
import { asidesOf } from "../usecases/asides.ts";
import { zoneOfBike } from "../usecases/context.ts";
import { dueBike } from "../usecases/due.ts";
import { garage } from "../usecases/garage.ts";
import { kindRow, NOTICE_KINDS } from "../usecases/notice-kinds.ts";
import type { Words } from "../words/en/english.ts";
import type { Address, Begin, Sent } from "./deliver.ts";
import { drawDigest } from "./digest.ts";
import { reminderReply, type Told, waitingReply } from "./draw.ts";
import type { Sending } from "./sending.ts";
import { firstOf, tellingsOf } from "./tellings.ts";
import { nextWindow, notQuiet } from "./windows.ts";

type Drawn = {
  readonly told: readonly Told[];
  readonly words: Words;
  readonly home: Group | null;
  readonly member: Member | null;
  /** In whose channel; null: to the member alone. */
  readonly group: GroupId | null;
  readonly recipient: MemberId;
  readonly zone: Zone;
};

/** Longer than every HTTP time-out and retry together: no other process takes the delivery meanwhile. */
const LEASE_MINUTES = 10;
const BATCH = 20;
/** What goes wrong so often is our own fault, and trying on does not mend it. A platform that is away is waited for without end. */
const ATTEMPTS = 12;
/** So many in a row that did not get out: the platform is away, and the rest waits for the next tick. */
const AWAY = 3;
/** A delivery waits so long for the one before it. */
const BEHIND_MINUTES = 5;
/** From one message of the week to the next at least: a week but for a clock that was put on. */
const WEEK = "P6D";
const WEEKLY = (Object.keys(NOTICE_KINDS) as NoticeKind[]).filter((kind) => kindRow(kind).when === "weekly");

/** Sends what is ready. Answers how many messages went out. One that goes wrong does not hold up the others. */
export async function sendReady(store: Store, sending: Sending, now: Instant): Promise<number> {
  let sent = 0;
  let away = 0;
  for (;;) {
    // A lease counts from the claim: many slow messages before it do not use it up.
    const at = [now, sending.clock()].reduce((a, b) => (a > b ? a : b));
    const claimed = await store.change((q) => q.notices.claim(at, addMinutes(at, LEASE_MINUTES), BATCH));
    for (const [n, delivery] of claimed.entries()) {
      const outcome = await sendOne(store, sending, delivery, now);
      if (outcome === "sent") sent++;
      away = outcome === "later" ? away + 1 : 0;
      if (away < AWAY) continue;
      await store.change((q) => q.notices.giveBack(claimed.slice(n + 1)));
      return sent;
    }
    if (claimed.length < BATCH) return sent;
  }
}

type Outcome = Ended | "later" | "waits" | "taken";

async function sendOne(store: Store, sending: Sending, delivery: Delivery, now: Instant): Promise<Outcome> {
  try {
    return await settle(store, sending, delivery, await reach(store, sending, delivery, now), now);
  } catch (error) {
    sending.log.error({ err: error, delivery: delivery.id, attempt: delivery.attempt }, "a reminder went wrong");
    return settle(store, sending, delivery, delivery.attempt < ATTEMPTS ? { is: "later", why: "went wrong" } : { is: "failed", why: "went wrong" }, now);
  }
}

/** How a try ended: `first` is why the first way was closed, where there was a second. */
type Reached =
  | (Sent & { readonly first?: string })
  | { readonly is: "failed" | "unconfirmed"; readonly why: string; readonly first?: string }
  /** Nothing to send, or not now; that is written already. */
  | { readonly is: "empty" | "waits" };

async function settle(store: Store, sending: Sending, delivery: Delivery, reached: Reached, now: Instant): Promise<Outcome> {
  switch (reached.is) {
    case "empty":
    case "waits":
    case "taken":
      return reached.is;
    case "later":
      await store.change((q) => q.notices.postpone(delivery, addMinutes(now, Math.min(60, 2 ** delivery.attempt)), true));
      return "later";
    case "sent":
      await store.change((q) => q.notices.finish(delivery, "sent", reached.message, reached.first ?? null));
      return "sent";
    default: {
      const why = [reached.first, reached.why].filter((each) => each !== undefined).join(", ");
      await store.change((q) => q.notices.finish(delivery, reached.is, null, why));
      sending.log.error({ delivery: delivery.id, member: delivery.member, why }, reached.is === "failed" ? FAILED : UNCONFIRMED);
      return reached.is;
    }
  }
}

const FAILED = "a reminder could not be delivered";
const UNCONFIRMED = "a reminder may or may not have arrived; it is not sent again";

/** Looks first for what was begun and not settled, then draws what is still true and sends it. */
async function reach(store: Store, sending: Sending, delivery: Delivery, now: Instant): Promise<Reached> {
  if (delivery.trace !== null) {
    const found = await sending.deliver.find(delivery.id, delivery.trace);
    if (found.is === "there") return { is: "sent", message: found.message };
    if (found.is === "later") return found;
    if (found.is === "cannot tell") return { is: "unconfirmed", why: found.why };
    const went = found.parts.length === 0 ? null : await goOn(store, sending, delivery, found.parts, now);
    // Where it was begun is closed by now: all of it goes another way.
    if (went !== null && went.is !== "failed") return went;
  }
  if (delivery.member === null) return reachGroup(store, sending, delivery, now);
  const drawn = await store.change((q) => gather(q, sending, delivery, now));
  if (typeof drawn === "string") return { is: drawn };
  const { told, words, home, member, group, zone } = drawn;
  const where: Where = group === null ? DIRECT : { group, channel: "reading", id: home?.readingChannel ?? group };
  const rider = group === null ? null : (member?.name ?? drawn.recipient);
  const saying: Saying = { to: { member: drawn.recipient, where }, reply: reminderReply(delivery.id, told, words, rider), zone };
  const outcome = await sending.deliver.send(delivery.id, delivery.id, saying.to, saying.reply, beginning(store, delivery, saying));
  if (outcome.is !== "failed") return outcome;
  const other = await otherwise(store, sending, delivery, drawn);
  return other === null ? outcome : { ...other, first: outcome.why };
}

/** A group's digest has one way. A channel that is gone ends it until another is named. */
async function reachGroup(store: Store, sending: Sending, delivery: Delivery, now: Instant): Promise<Reached> {
  const drawn = await store.change((q) => drawDigest(q, sending, delivery, now));
  if (typeof drawn === "string") return { is: drawn };
  const begin: Begin = { parts: [], begun: (trace) => store.change((q) => q.notices.begun(delivery, trace, null)) };
  const outcome = await sending.deliver.send(delivery.id, delivery.id, { member: null, where: drawn.where }, drawn.reply, begin);
  const { group } = delivery;
  if (outcome.is === "failed" && outcome.why === "channel gone" && group !== null) await store.change((q) => q.digests.plan(group, null));
  return outcome;
}

/** What a delivery says, where. A long one is kept so until it is settled: drawn anew, its parts would hold other bikes. `zone`: by which quiet hours are told. */
type Saying = { readonly to: Address; readonly reply: Reply; readonly zone: Zone };

const beginning = (store: Store, delivery: Delivery, saying: Saying, parts: readonly number[] = []): Begin => ({
  parts,
  begun: (trace, messages) => store.change((q) => q.notices.begun(delivery, trace, messages > 1 ? JSON.stringify(saying) : null)),
});

/** The rest of a delivery of which some parts are there, as it was begun; null where that is not to be, since it was not kept or is no longer wished. */
async function goOn(store: Store, sending: Sending, delivery: Delivery, parts: readonly number[], now: Instant): Promise<Reached | null> {
  if (delivery.drawn === null) return null;
  const saying = JSON.parse(delivery.drawn) as Saying;
  const { member } = saying.to;
  if (member === null) return null;
  const wishes = (await store.read((q) => q.members.byIds([member]))).get(member)?.reminders ?? USUAL_WISHES;
  if (wishes.by === "off") return null;
  const allowed = notQuiet(wishes, saying.zone, now);
  if (allowed > now) {
    await store.change((q) => q.notices.postpone(delivery, allowed, false));
    return { is: "waits" };
  }
  return sending.deliver.send(delivery.id, delivery.id, saying.to, saying.reply, beginning(store, delivery, saying, parts));
}

const DIRECT: Where = { group: null, channel: "dm", id: "dm" };

/** The other way to a member: a word in their home group's channel where direct messages are closed, a direct message where the channel is gone. Null: there is none. */
async function otherwise(store: Store, sending: Sending, delivery: Delivery, drawn: Drawn): Promise<Sent | null> {
  const { told, words, home, group, recipient, zone } = drawn;
  const by = (where: Where, reply: Reply): Promise<Sent> => {
    const saying: Saying = { to: { member: recipient, where }, reply, zone };
    return sending.deliver.send(delivery.id, `${delivery.id}/otherwise`, saying.to, reply, beginning(store, delivery, saying));
  };
  if (group !== null) return by(DIRECT, reminderReply(delivery.id, told, words, null));
  if (home === null || home.readingChannel === null) return null;
  return by({ group: home.id, channel: "reading", id: home.readingChannel }, waitingReply(delivery.id, words));
}

/** Marks what is still true as told by this delivery, and drops the rest with the reason. */
async function gather(q: Repos, sending: Sending, delivery: Delivery, now: Instant): Promise<Drawn | "empty" | "waits"> {
  if (delivery.member === null) throw new Error("a delivery without a member");
  // One word after a long silence, not one for each window that passed.
  if (await q.notices.isBehind(delivery)) {
    await q.notices.postpone(delivery, addMinutes(now, BEHIND_MINUTES), false);
    return "waits";
  }
  const member = (await q.members.byIds([delivery.member])).get(delivery.member) ?? null;
  const wishes = member?.reminders ?? USUAL_WISHES;
  const group = wishes.by === "channel" ? delivery.group : null;
  const begun = await q.notices.ofDelivery(delivery.id);
  const open = [...begun.filter((notice) => notice.state === "told"), ...(await q.notices.waitingOfMember(delivery.member, now))];
  const owned = await q.bikes.ofOwner(delivery.member);
  // In a group's channel nothing is told of a bike that is at home in another.
  const elsewhere = new Set(owned.filter((bike) => group !== null && bike.homeGroup !== group).map((bike) => bike.id));
  const alone = wishes.by === "channel" && delivery.group === null;
  const atHome = new Set(owned.filter((bike) => bike.homeGroup !== null).map((bike) => bike.id));
  const here = ({ bike, kind }: Notice): boolean => {
    if (elsewhere.has(bike) || (group !== null && kindRow(kind).alone)) return false;
    // What is told in a channel does not come along with what is for the member alone.
    return !alone || kindRow(kind).alone || !atHome.has(bike);
  };
  const waiting = open.filter(here);
  const bikes = owned.filter((bike) => waiting.some((notice) => notice.bike === bike.id));
  const groups = await q.members.groupsByIds([...new Set(bikes.flatMap((bike) => (bike.homeGroup === null ? [] : [bike.homeGroup])))]);
  const homeOf = (id: GroupId | null): Group | null => (id === null ? null : (groups.get(id) ?? null));
  const home = homeOf(group ?? bikes[0]?.homeGroup ?? null);
  const zone: Zone = zoneOfBike(member, home);
  // A delivery that comes late may fall into quiet hours: it waits for their end.
  const allowed = notQuiet(wishes, zone, now);
  if (allowed > now) {
    await q.notices.postpone(delivery, allowed, false);
    return "waits";
  }
  // Once a week, however the week is named: its hour may have been moved since the last.
  const last = waiting.some(({ kind }) => kindRow(kind).when === "daily") ? null : await q.notices.lastSent(delivery.recipient, WEEKLY, delivery.id);
  // One that a clock running ahead has sent says nothing of this week.
  const week = last === null || last > now ? null : nextWindow(wishes, zone, addDuration(last, WEEK));
  if (week !== null && week > now && last !== null && addDuration(last, WEEK) > now) {
    await q.notices.postpone(delivery, week, false);
    return "waits";
  }
  const all = await garage(q, bikes, now, (bike) => ({ member, home: homeOf(bike.homeGroup) }));
  const putOffs = await q.notices.putOffsOf(bikes.map((bike) => bike.id));
  const dates = await q.dates.ofBikes(bikes.map((bike) => bike.id));
  const told: Told[] = [];
  const kept: Notice[] = [];
  for (const g of all) {
    const owner = { member, home: homeOf(g.bike.homeGroup) };
    const so = new Map(tellingsOf(g, owner, putOffs, await asidesOf(q, g, owner.home, dates)).now.map((telling) => [telling.key, telling]));
    const mine = waiting.filter((notice) => notice.bike === g.bike.id && so.has(firstOf(notice.key)) && wishes.by !== "off");
    if (mine.length === 0) continue;
    const shown = dueBike({ itemName: sending.itemName }, g);
    const tellings = mine.flatMap((notice) => so.get(firstOf(notice.key)) ?? []);
    const items = new Set(tellings.map(({ item }) => item));
    kept.push(...mine);
    told.push({
      bike: shown,
      lines: shown.dues.filter((line) => items.has(line.item)),
      asides: tellings.flatMap(({ aside }) => aside ?? []),
      notices: mine,
    });
  }
  const ids = (notices: readonly Notice[]): string[] => notices.map((notice) => notice.id);
  await q.notices.tell(ids(kept), delivery.id);
  const dropped = waiting.filter((notice) => !kept.includes(notice));
  for (const kind of new Set(dropped.map((notice) => notice.kind)))
    await q.notices.drop(ids(dropped.filter((notice) => notice.kind === kind)), delivery.id, kindRow(kind).dropped);
  if (told.length === 0) {
    await q.notices.finish(delivery, "empty", null, "nothing left to tell");
    return "empty";
  }
  return { told, words: sending.wordsFor(member, home, localDateAt(now, zone)), home, member, group, recipient: delivery.member, zone };
}
