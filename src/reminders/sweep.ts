// The sweep: looks at the bikes whose moment has come, notes what there is to tell, and says when to look again.
// It reads no other bikes, however many there are.

import type { Group } from "../core/bike.ts";
import { addDays } from "../core/calendar/arithmetic.ts";
import type { Instant, LocalDate, LocalTime } from "../core/calendar/dates.ts";
import { addDuration, instantOf, localDateAt } from "../core/calendar/zones.ts";
import type { MemberId } from "../core/ids.ts";
import type { NoticeKind } from "../core/reminding.ts";
import { USUAL_WISHES } from "../store/members.ts";
import type { Delivery, Notice } from "../store/notices.ts";
import type { Repos, Store } from "../store/store.ts";
import { asidesOf } from "../usecases/asides.ts";
import { zoneOfBike } from "../usecases/context.ts";
import { type Garaged, garage } from "../usecases/garage.ts";
import { kindRow, NOTICE_KINDS } from "../usecases/notice-kinds.ts";
import { nextTelling, type Owned, type Tellings, type ToldOn, tellingsOf } from "./tellings.ts";
import { nextHour, nextWindow } from "./windows.ts";

/** Bikes looked at in one transaction. */
const SLICE = 100;
/** Kinds that are told more than once. */
const TOLD_AGAIN = (Object.keys(NOTICE_KINDS) as NoticeKind[]).filter((kind) => kindRow(kind).again.length > 0);

/** Looks at every bike whose moment has come by now. Answers how many were looked at. */
export async function sweep(store: Store, now: Instant, newId: () => string): Promise<number> {
  let looked = 0;
  for (;;) {
    const slice = await store.change((q) => sweepSlice(q, now, newId));
    looked += slice;
    if (slice < SLICE) return looked;
  }
}

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
  const told = await q.notices.toldOf(
    kept.map(({ bike }) => bike.id),
    TOLD_AGAIN,
  );
  const notices: Notice[] = [];
  const looks = new Map<string, Instant>();
  const dates = await q.dates.ofBikes(kept.map(({ bike }) => bike.id));
  for (const g of all) {
    const owner = owned(g.bike);
    // What should have been noticed while nobody looked keeps the moment at which it came, so that it is told at once.
    const since = due.find(({ bike }) => bike.id === g.bike.id)?.lookAt ?? now;
    const tellings = tellingsOf(g, owner, putOffs, await asidesOf(q, g, owner.home, dates));
    const zone = zoneOfBike(owner.member, owner.home);
    const before = told.filter(({ bike }) => bike === g.bike.id).map(({ key, sent }) => ({ key, on: localDateAt(sent, zone) }));
    const found = noticesOf(g, tellings, before, owner, since, now, newId);
    notices.push(...found.notices);
    looks.set(g.bike.id, nextLook(g, [tellings.next, ...found.again], owner, now));
  }
  const waiting = new Set(await q.notices.addNew(notices, now));
  await q.notices.queue(
    deliveriesFor(
      notices.filter((notice) => waiting.has(notice.key)),
      all,
      owned,
      newId,
    ),
  );
  for (const { bike } of due) await q.bikes.lookAgainAt(bike.id, bike.factsRev, looks.get(bike.id) ?? null);
  return due.length;
}

/** What is new to tell, and the day from which something is told again. */
function noticesOf(
  g: Garaged,
  { now: tellings }: Tellings,
  told: readonly ToldOn[],
  owner: Owned,
  since: Instant,
  now: Instant,
  newId: () => string,
): { readonly notices: readonly Notice[]; readonly again: readonly LocalDate[] } {
  const wishes = owner.member?.reminders ?? USUAL_WISHES;
  if (wishes.by === "off") return { notices: [], again: [] };
  const zone = zoneOfBike(owner.member, owner.home);
  const windows = { weekly: nextWindow(wishes, zone, since), daily: nextHour(wishes, zone, since) };
  const notices: Notice[] = [];
  const again: LocalDate[] = [];
  for (const telling of tellings) {
    const { kind, item } = telling;
    const { key, from } = nextTelling(telling, told, g.today);
    const notBefore = windows[kindRow(kind).when];
    // What is about to be told for the first time, or once more, comes again after its span.
    const [weeks] = kindRow(kind).again;
    if (weeks !== undefined) again.push(from !== null && key === null ? from : addDays(localDateAt(notBefore, zone), 7 * weeks));
    if (key === null) continue;
    notices.push({ id: newId(), key, member: g.bike.owner, bike: g.bike.id, kind, item, notBefore, state: "waiting", delivery: null, why: null, at: now });
  }
  return { notices, again };
}

/** One delivery for each member and window that has something new to tell. */
function deliveriesFor(notices: readonly Notice[], all: readonly Garaged[], owned: (bike: Garaged["bike"]) => Owned, newId: () => string): Delivery[] {
  const found = new Map<string, Delivery>();
  for (const notice of notices) {
    const g = all.find((each) => each.bike.id === notice.bike);
    if (g === undefined) continue;
    const { member, home } = owned(g.bike);
    const group = (member?.reminders ?? USUAL_WISHES).by === "channel" && !kindRow(notice.kind).alone ? (home?.id ?? g.bike.homeGroup) : null;
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
function nextLook(g: Garaged, own: readonly (LocalDate | null)[], owner: Owned, now: Instant): Instant {
  const zone = zoneOfBike(owner.member, owner.home);
  const days = own.filter((day) => day !== null && day > g.today) as LocalDate[];
  const [first = addDays(g.today, 30)] = days.sort();
  const at = instantOf(first, "00:00" as LocalTime, zone);
  const latest = addDuration(now, "P30D");
  return at < latest ? at : latest;
}
