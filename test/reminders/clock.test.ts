// The clock misbehaves, or the zone's does: nothing is told twice, nothing is left out.
// Transitions: IANA tz database (tzdata 2025b), rows transition/Europe/Berlin/* and transition/America/New_York/* of the reference pack.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import { addDuration } from "../../src/core/calendar/zones.ts";
import { newId } from "../../src/ids.ts";
import { sweep } from "../../src/reminders/sweep.ts";
import { button, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
let t: Talk;
const BEGIN = "2026-11-05T10:00:00.000Z" as Instant;
beforeEach(async () => {
  t = await talk(BEGIN);
});
afterEach(() => t.close());

/** A bike whose brake fluid is due two years after a day. */
async function withFluid(done: string, name = "Heron"): Promise<void> {
  const added = await t.one({ ...dm, run: `/bike add name:${name} kind:chain-drive twin odometer:14,210 mi` });
  await t.one({ ...dm, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": done } });
}
const wish = (options: string) => t.one({ ...dm, run: `/remind ${options}` });

/** Ticks every so many minutes from one moment to another; answers when something was sent. */
async function ticks(from: Instant, to: Instant, minutes = 60): Promise<Instant[]> {
  const sent: Instant[] = [];
  for (let at = from; at <= to; at = addDuration(at, `PT${minutes}M`)) if ((await t.open.bot.reminders.tick(at)).sent > 0) sent.push(at);
  return sent;
}
const days = (from: Instant, n: number): Instant => addDuration(from, `P${n}D`);
/** What was told so far, one entry an item. */
const told = async (): Promise<string[]> =>
  (await t.open.store.read((q) => q.room.deliveredSince("1970-01-01T00:00:00.000Z" as Instant))).flatMap(({ reply }) =>
    (JSON.parse(reply) as { data: { told: { items: { item: string; status: string }[] }[] } }).data.told.flatMap(({ items }) =>
      items.map(({ item, status }) => `${item} ${status}`),
    ),
  );

describe("the computer's clock", () => {
  test("set back by hours or days: what was told is not told again, and the next stage comes in its time", async () => {
    await withFluid("10 December 2024");
    const first = await ticks(BEGIN, days(BEGIN, 14));
    expect(first).toHaveLength(1);
    expect(await ticks(days(BEGIN, 11), days(BEGIN, 32))).toEqual([]);
    // Due on 10 December, overdue the day after; told in the week's window that follows.
    // And again a week later, and two weeks after that.
    expect(await ticks(days(BEGIN, 32), days(BEGIN, 60))).toEqual(["2026-12-12T09:00:00.000Z", "2026-12-19T09:00:00.000Z", "2027-01-02T09:00:00.000Z"]);
    expect(await told()).toEqual(["soon", "overdue", "overdue", "overdue"].map((status) => `brake-fluid.replace ${status}`));
  });

  test("years ahead for a moment: what comes in the meantime is told in its time, and once", async () => {
    await withFluid("10 December 2024");
    await t.open.bot.reminders.tick(BEGIN);
    // One tick on a night in 2031: what it plans waits for the morning, which does not come.
    await t.open.bot.reminders.tick("2031-03-04T02:00:00.000Z" as Instant);
    expect(await told()).toEqual([]);
    expect(await ticks(addDuration(BEGIN, "PT1H"), days(BEGIN, 40))).toHaveLength(2);
    expect(await told()).toEqual(["brake-fluid.replace soon", "brake-fluid.replace overdue"]);
  });

  test("years ahead long enough to tell: that stays told, and what was told so is not repeated when its time comes", async () => {
    await withFluid("10 December 2024");
    await t.open.bot.reminders.tick(BEGIN);
    await ticks("2027-03-01T00:00:00.000Z" as Instant, "2027-03-09T00:00:00.000Z" as Instant);
    const early = await told();
    expect(early).toContain("brake-fluid.replace overdue");
    await ticks(addDuration(BEGIN, "PT1H"), days(BEGIN, 60));
    expect((await told()).filter((each) => each === "brake-fluid.replace overdue")).toHaveLength(1);
    expect(await told()).toContain("brake-fluid.replace soon");
  });

  test("years ahead when a process claimed a reminder and died: it is taken up now, not in years", async () => {
    await withFluid("10 December 2022");
    const ahead = "2031-03-04T10:00:00.000Z" as Instant;
    const now = days(BEGIN, 14);
    await t.open.store.change(async (q) => {
      await q.room.setMeta("ticked", ahead);
    });
    await sweep(t.open.store, BEGIN, newId);
    const claimed = await t.open.store.change((q) => q.notices.claim(ahead, addDuration(ahead, "PT10M"), 20));
    expect(claimed).toHaveLength(1);
    expect(await ticks(now, addDuration(now, "PT5M"), 1)).toHaveLength(1);
  });

  test("ahead by a little less than two processes may differ: nothing is planned anew", async () => {
    await withFluid("10 December 2024");
    await ticks(BEGIN, days(BEGIN, 14));
    expect((await t.open.bot.reminders.tick(addDuration(days(BEGIN, 14), "-PT9M"))).looked).toBe(0);
    expect((await t.open.bot.reminders.tick(addDuration(days(BEGIN, 14), "-PT30M"))).looked).toBe(1);
  });

  test("set forward over several windows: one message, of what is so by then", async () => {
    await withFluid("10 December 2024");
    await t.open.bot.reminders.tick(BEGIN);
    expect(await ticks(days(BEGIN, 50), days(BEGIN, 51))).toHaveLength(1);
    expect(await told()).toEqual(["brake-fluid.replace overdue"]);
  });
});

describe("a zone's clock", () => {
  test("a time that does not exist on the day: the first moment after it, once; the week after at its own time again", async () => {
    await withFluid("26 March 2025");
    await withFluid("5 April 2025", "Otter");
    await wish("day:Sunday time:02:30 zone:Europe/Berlin quiet-from:12:00 quiet-to:12:00");
    const from = "2027-03-21T00:00:00.000Z" as Instant;
    // The gap of 28 March 2027: 02:00 becomes 03:00 at 01:00Z.
    const sent = await ticks(from, "2027-04-11T06:00:00.000Z" as Instant, 15);
    expect(sent).toContain("2027-03-28T01:00:00.000Z");
    expect(sent.filter((at) => at.startsWith("2027-03-28"))).toEqual(["2027-03-28T01:00:00.000Z"]);
    expect(sent.filter((at) => at.startsWith("2027-04-11"))).toEqual(["2027-04-11T00:30:00.000Z"]);
  });

  test("a time that comes twice on the day: the first, and not again an hour later", async () => {
    await withFluid("29 October 2024");
    await wish("day:Sunday time:01:30 zone:America/New_York quiet-from:12:00 quiet-to:12:00");
    // The overlap of 7 November 2027: 02:00 becomes 01:00 at 06:00Z, so that 01:30 is first 05:30Z.
    await ticks(BEGIN, "2026-12-30T00:00:00.000Z" as Instant, 360);
    await t.one({ ...dm, run: "/work did:brake fluid on:12 November 2025 at:14,210 mi" });
    await ticks("2026-12-30T00:00:00.000Z" as Instant, "2027-11-01T00:00:00.000Z" as Instant, 360);
    expect(await ticks("2027-11-01T00:00:00.000Z" as Instant, "2027-11-08T00:00:00.000Z" as Instant, 15)).toEqual(["2027-11-07T05:30:00.000Z"]);
  });

  test("a zone changed between the noting and the telling, by member or by group: told once, and never in the quiet hours of where it is now", async () => {
    await withFluid("10 December 2024");
    await t.one({ as: "Ines", admin: true, run: "/group zone:Pacific/Auckland" });
    await ticks(BEGIN, days(BEGIN, 4));
    await t.one({ as: "Ines", admin: true, run: "/group zone:America/New_York" });
    const sent = await ticks(days(BEGIN, 4), days(BEGIN, 20), 30);
    expect(sent).toHaveLength(1);
    await wish("zone:Asia/Tokyo");
    expect(await ticks(days(BEGIN, 20), days(BEGIN, 30), 30)).toEqual([]);
    expect(await told()).toEqual(["brake-fluid.replace soon"]);
  });

  test("a week's day or hour chosen anew between the noting and the telling, or another zone: at the new one, and not at the old", async () => {
    await withFluid("10 December 2024");
    // Coming up from Tuesday 10 November, to be told on Saturday at nine.
    expect(await t.send({ advance: "P7D" })).toEqual([]);
    await wish("day:Sunday time:18:00");
    expect(await t.send({ advance: "P3DT7H" })).toEqual([]);
    expect(t.open.clock.now()).toBe("2026-11-15T17:00:00.000Z");
    await wish("zone:America/New_York");
    // There it is noon: six o'clock is six hours off.
    expect(await t.send({ advance: "PT5H" })).toEqual([]);
    expect(await t.send({ advance: "PT1H" })).toHaveLength(1);
    expect(await told()).toEqual(["brake-fluid.replace soon"]);
  });
});
