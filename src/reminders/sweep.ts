// The sweep: looks at the bikes whose moment has come, notes what there is to tell, and says when to look again.
// It reads no other bikes, however many there are.

import type { Group, Member } from "../core/bike.ts";
import { addDays } from "../core/calendar/arithmetic.ts";
import type { Instant, LocalDate, LocalTime } from "../core/calendar/dates.ts";
import { addDuration, instantOf } from "../core/calendar/zones.ts";
import type { ItemKey, MemberId } from "../core/ids.ts";
import type { Due } from "../core/schedule/facts.ts";
import { nextEdge } from "../core/schedule/look-again.ts";
import { USUAL_WISHES } from "../store/members.ts";
import type { Delivery, Notice, PutOff } from "../store/notices.ts";
import type { Repos, Store } from "../store/store.ts";
import { type Asides, asidesOf } from "../usecases/asides.ts";
import { zoneOfBike } from "../usecases/context.ts";
import { duesOf, type Garaged, garage } from "../usecases/garage.ts";
import { noticeKey, stageOf } from "./keys.ts";
import { nextWindow } from "./windows.ts";

/** Bikes looked at in one transaction. */
const SLICE = 100;

/** Looks at every bike whose moment has come by now. Answers how many were looked at. */
export async function sweep(store: Store, now: Instant, newId: () => string): Promise<number> {
  let looked = 0;
  for (;;) {
    const slice = await store.change((q) => sweepSlice(q, now, newId));
    looked += slice;
    if (slice < SLICE) return looked;
  }
}

type Owned = { readonly member: Member | null; readonly home: Group | null };

async function sweepSlice(q: Repos, now: Instant, newId: () => string): Promise<number> {
  const due = await q.bikes.toLookAt(now, SLICE);
  if (due.length === 0) return 0;
  const members = await q.members.byIds([...new Set(due.map(({ bike }) => bike.owner))]);
  const groups = await q.members.groupsByIds([...new Set(due.flatMap(({ bike }) => (bike.homeGroup === null ? [] : [bike.homeGroup])))]);
  const owned = (bike: { owner: MemberId; homeGroup: Group["id"] | null }): Owned => ({
    member: members.get(bike.owner) ?? null,
    home: bike.homeGroup === null ? null : (groups.get(bike.homeGroup) ?? null),
  });
  const kept = due.filter(({ bike }) => bike.state === "riding" || bike.state === "laid up");
  const all = await garage(
    q,
    kept.map(({ bike }) => bike),
    now,
    owned,
  );
  const putOffs = await q.notices.putOffsOf(kept.map(({ bike }) => bike.id));
  const notices: Notice[] = [];
  const looks = new Map<string, Instant>();
  const dates = await q.dates.ofBikes(kept.map(({ bike }) => bike.id));
  for (const g of all) {
    const owner = owned(g.bike);
    // What should have been noticed while nobody looked keeps the moment at which it came, so that it is told at once.
    const since = due.find(({ bike }) => bike.id === g.bike.id)?.lookAt ?? now;
    const dues = duesOf(g);
    const put = putOffs.filter((each) => each.bike === g.bike.id);
    const asides = await asidesOf(q, g, owner.home, dates);
    notices.push(...noticesOf(g, dues, put, owner, since, now, newId), ...besides(g, asides, owner, since, now, newId));
    looks.set(g.bike.id, nextLook(g, dues, put, owner, now, asides.next));
  }
  const fresh = new Set(await q.notices.addNew(notices));
  await q.notices.queue(
    deliveriesFor(
      notices.filter((notice) => fresh.has(notice.key)),
      all,
      owned,
      newId,
    ),
  );
  for (const { bike } of due) await q.bikes.lookAgainAt(bike.id, bike.factsRev, looks.get(bike.id) ?? null);
  return due.length;
}

function noticesOf(g: Garaged, dues: readonly Due[], put: readonly PutOff[], owner: Owned, since: Instant, now: Instant, newId: () => string): Notice[] {
  const wishes = owner.member?.reminders ?? USUAL_WISHES;
  if (g.bike.state !== "riding" || wishes.by === "off") return [];
  const zone = zoneOfBike(owner.member, owner.home);
  const notBefore = nextWindow(wishes, zone, since);
  const found: Notice[] = [];
  for (const due of dues) {
    const stage = stageOf(due);
    const until = untilOf(put, due.item);
    if (stage === null || (until !== null && until > g.today)) continue;
    found.push({
      id: newId(),
      key: noticeKey(g.bike.id, due, stage, until),
      member: g.bike.owner,
      bike: g.bike.id,
      kind: `item ${stage}`,
      item: due.item,
      notBefore,
      state: "waiting",
      delivery: null,
      why: null,
      at: now,
    });
  }
  return found;
}

/** What is told beside the plan, of a bike laid up too. */
function besides(g: Garaged, { now: asides }: Asides, owner: Owned, since: Instant, now: Instant, newId: () => string): Notice[] {
  const wishes = owner.member?.reminders ?? USUAL_WISHES;
  if (wishes.by === "off") return [];
  const notBefore = nextWindow(wishes, zoneOfBike(owner.member, owner.home), since);
  const rest = { kind: "aside", item: null, notBefore, state: "waiting", delivery: null, why: null, at: now } as const;
  return asides.map(({ key }) => ({ id: newId(), key, member: g.bike.owner, bike: g.bike.id, ...rest }));
}

/** The day until which an item was put off, still to come or past. */
export const untilOf = (put: readonly PutOff[], item: ItemKey): LocalDate | null => put.find((each) => each.item === item)?.until ?? null;

/** One delivery for each member and window that has something new to tell. */
function deliveriesFor(notices: readonly Notice[], all: readonly Garaged[], owned: (bike: Garaged["bike"]) => Owned, newId: () => string): Delivery[] {
  const found = new Map<string, Delivery>();
  for (const notice of notices) {
    const g = all.find((each) => each.bike.id === notice.bike);
    if (g === undefined) continue;
    const { member, home } = owned(g.bike);
    const group = (member?.reminders ?? USUAL_WISHES).by === "channel" ? (home?.id ?? g.bike.homeGroup) : null;
    const recipient = group === null ? `member/${notice.member}` : `group/${group}/${notice.member}`;
    const key = `${recipient} ${notice.notBefore}`;
    if (!found.has(key))
      found.set(key, {
        id: newId(),
        recipient,
        window: notice.notBefore,
        member: notice.member,
        group,
        notBefore: notice.notBefore,
        state: "queued",
        attempt: 0,
        sentFrom: null,
        leaseUntil: null,
        messageId: null,
        why: null,
        trace: null,
        drawn: null,
      });
  }
  return [...found.values()];
}

/** The next local midnight at which something can change by itself; at most 30 days ahead. */
function nextLook(g: Garaged, dues: readonly Due[], put: readonly PutOff[], owner: Owned, now: Instant, aside: LocalDate | null): Instant {
  const zone = zoneOfBike(owner.member, owner.home);
  const days = [nextEdge(dues, g.facts, g.at), aside, ...put.map((each) => each.until)].filter((day) => day !== null && day > g.today) as LocalDate[];
  const [first = addDays(g.today, 30)] = days.sort();
  const at = instantOf(first, "00:00" as LocalTime, zone);
  const latest = addDuration(now, "P30D");
  return at < latest ? at : latest;
}
