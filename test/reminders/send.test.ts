// Sending by way of a face that does as the test says: leases, waits, the order of a member's messages, and giving up.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import { addMinutes } from "../../src/core/calendar/zones.ts";
import { newId } from "../../src/ids.ts";
import type { Deliver, Sent } from "../../src/reminders/deliver.ts";
import { sendReady } from "../../src/reminders/send.ts";
import { sweep } from "../../src/reminders/sweep.ts";
import { english } from "../../src/words/en/english.ts";
import { englishItemName } from "../../src/words/en/item-names.ts";
import { button, type Talk, talk } from "../support/talk.ts";

const BEGIN = "2026-11-05T10:00:00.000Z" as Instant;
/** A week on: everybody's hour has come. */
const READY = "2026-11-12T10:00:00.000Z" as Instant;
const LATER: Sent = { is: "later", why: "away" };

let t: Talk;
let tries: { readonly delivery: string; readonly member: string; readonly at: Instant }[];
let logged: string[];
/** The moment it is, where a tick takes long. */
let clock: Instant;
/** What the face answers to the next tries; "sent" when it has no more to say. */
let answers: (Sent | (() => Promise<Sent>) | Error)[];
beforeEach(async () => {
  t = await talk(BEGIN);
  [tries, logged, answers, clock] = [[], [], [], BEGIN];
});
afterEach(() => t.close());

async function overdue(member: string, name = "Heron", fluid = "spring 2023"): Promise<void> {
  const at = { as: member, in: "dm" };
  const added = await t.one({ ...at, run: `/bike add name:${name} kind:chain-drive twin odometer:14,210 mi` });
  await t.one({ ...at, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": fluid } });
}
/** One tick: looks, then sends. Answers how many went out. */
async function tick(now: Instant): Promise<number> {
  const deliver: Deliver = {
    find: async () => ({ is: "not there", parts: [] }),
    async send(delivery, _once, { member }, _reply, begin) {
      if (!(await begin.begun({ channel: "c", after: null }, 1))) return { is: "taken" };
      tries.push({ delivery, member: member ?? "", at: now });
      const answer = answers.shift() ?? { is: "sent", message: delivery };
      if (answer instanceof Error) throw answer;
      return typeof answer === "function" ? answer() : answer;
    },
  };
  const sending = {
    ...{ deliver, clock: () => clock, itemName: englishItemName, log: { error: (_: unknown, what: string) => void logged.push(what) } },
    wordsFor: (_member: unknown, _home: unknown, today: Parameters<typeof english>[1]) => english({ locale: "en-GB", distance: null }, today),
  };
  await sweep(t.open.store, now, newId);
  return sendReady(t.open.store, sending, now);
}

describe("a delivery under way", () => {
  test("is no other process's for ten minutes, however slow the platform; then it is, and the slow one may not begin it any more", async () => {
    await overdue("Ines");
    let others: number[] = [];
    answers = [
      async () => {
        others = [await tick(addMinutes(READY, 1)), await tick(addMinutes(READY, 10))];
        return { is: "sent", message: "m" };
      },
    ];
    expect(await tick(READY)).toBe(1);
    expect([others, tries.length]).toEqual([[0, 0], 1]);
  });

  test("is taken over when its process is gone for longer", async () => {
    await overdue("Ines");
    let other = 0;
    answers = [
      async () => {
        other = await tick(addMinutes(READY, 11));
        return LATER;
      },
    ];
    expect(await tick(READY)).toBe(0);
    expect([other, tries.length]).toEqual([1, 2]);
  });
});

test("a lease counts from the claim, however long the messages before it took", async () => {
  for (let n = 0; n < 21; n++) await overdue(`m${n}`);
  let other = 0;
  const slow = async (): Promise<Sent> => {
    clock = addMinutes(clock < READY ? READY : clock, 1);
    return { is: "sent", message: "m" };
  };
  answers = [
    ...Array.from({ length: 20 }, () => slow),
    async () => {
      other = await tick(clock);
      return { is: "sent", message: "m" };
    },
  ];
  expect(await tick(READY)).toBe(21);
  expect([other, tries.length]).toEqual([0, 21]);
});

describe("a platform that is away", () => {
  test("is tried again after 2, 4, 8 minutes and so on, an hour at most", async () => {
    await overdue("Ines");
    answers = Array.from({ length: 9 }, () => LATER);
    for (let minute = 0; minute < 300; minute++) await tick(addMinutes(READY, minute));
    const minutes = tries.map(({ at }) => (Date.parse(at) - Date.parse(READY)) / 60_000);
    expect(minutes.slice(0, 9)).toEqual([0, 2, 6, 14, 30, 62, 122, 182, 242]);
  });

  test("after three in a row the rest waits untried, and goes at the next tick", async () => {
    for (let n = 0; n < 8; n++) await overdue(`m${n}`);
    answers = [LATER, LATER, LATER];
    expect(await tick(READY)).toBe(0);
    expect(tries).toHaveLength(3);
    const waits = await t.open.store.read((q) => q.notices.nextDelivery());
    expect(waits !== null && waits <= READY).toBe(true);
    expect(await tick(addMinutes(READY, 1))).toBe(5);
    expect(await tick(addMinutes(READY, 2))).toBe(3);
    expect(new Set(tries.map(({ member }) => member)).size).toBe(8);
  });

  test("what waits untried has not used up a try: given back, or held over quiet hours", async () => {
    for (let n = 0; n < 4; n++) await overdue(`m${n}`);
    answers = [LATER, LATER, LATER, LATER];
    await tick(READY);
    await tick(addMinutes(READY, 1));
    const last = tries.at(-1)?.member;
    expect(tries.filter(({ member }) => member === last)).toHaveLength(1);
    // Two minutes after its first try comes its second.
    await tick(addMinutes(READY, 3));
    expect(tries.filter(({ member }) => member === last)).toHaveLength(2);
  });

  test("what comes late into quiet hours waits for their end, and has not used up a try", async () => {
    await overdue("Ines");
    answers = [LATER];
    const night = "2026-11-12T23:30:00.000Z" as Instant;
    expect([await tick(night), tries.length]).toEqual([0, 0]);
    const morning = (await t.open.store.read((q) => q.notices.nextDelivery())) as Instant;
    await tick(morning);
    expect([morning > night, tries.length]).toEqual([true, 1]);
    expect(await tick(addMinutes(morning, 2))).toBe(1);
  });
});

test("what goes wrong by our own fault is tried twelve times, over a night too, then listed as failed; the others are not held up", async () => {
  await overdue("Ines");
  await overdue("Odo");
  const wrong = new Error("ours");
  for (let round = 0; round < 40; round++) {
    answers = [wrong];
    await tick(addMinutes(READY, round * 61));
  }
  const counts = ["Ines", "Odo"].map((member) => tries.filter((each) => each.member === member).length).toSorted((a, b) => a - b);
  expect(counts).toEqual([1, 12]);
  expect(logged.filter((what) => what === "a reminder could not be delivered")).toHaveLength(1);
});

test("a member's next window waits for the one before it to be settled, and one word tells of both", async () => {
  await overdue("Ines");
  await overdue("Ines", "Wren", "13 November 2024");
  answers = Array.from({ length: 7 }, () => LATER);
  for (const minutes of [0, 5, 15, 35, 70, 140]) await tick(addMinutes(READY, minutes));
  // A second bike's falls due on the 13th, and the member's hour comes again, on Saturday at nine, while the first is still not out.
  await tick("2026-11-14T08:45:00.000Z" as Instant);
  expect(tries).toHaveLength(7);
  await tick("2026-11-14T09:00:00.000Z" as Instant);
  expect(tries).toHaveLength(7);
  let sent = 0;
  for (const at of ["09:45", "10:00", "11:00", "12:00"]) sent += await tick(`2026-11-14T${at}:00.000Z` as Instant);
  expect([sent, new Set(tries.map(({ delivery }) => delivery)).size]).toEqual([1, 1]);
});

test("what is no longer so when it is to be told is dropped with its reason, and told when it is so again", async () => {
  await overdue("Ines");
  await sweep(t.open.store, BEGIN, newId);
  const at = { as: "Ines", in: "dm" };
  const done = await t.one({ ...at, run: "/work did:brake fluid at:14,300 mi bike:Heron" });
  expect(await tick(READY)).toBe(0);
  const waiting = () => t.open.store.read((q) => q.notices.waitingOfMember("Ines" as never, "2099-01-01T00:00:00.000Z" as Instant));
  expect(await waiting()).toEqual([]);
  await t.one({ ...at, press: button(done, "Undo") });
  expect(await tick(addMinutes(READY, 8 * 24 * 60))).toBe(1);
});
