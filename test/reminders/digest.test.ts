// A group's digest of the week: when it comes, what it says and what it never says, and that it comes once.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import { addDuration } from "../../src/core/calendar/zones.ts";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  // A Wednesday.
  t = await talk("2026-11-25T10:00:00Z");
});
afterEach(() => t.close());

const admin = (options: string, group = "g1") => t.one({ as: "Ines", admin: true, in: group, run: `/group ${options}` });
/** A bike whose brake fluid fell due long ago. */
async function bike(as: string, name: string, shown: boolean, at = "g1"): Promise<void> {
  const added = await t.one({ as, in: at, run: `/bike add name:${name} kind:chain-drive twin odometer:14,210 mi` });
  await t.one({ as, in: at, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "10 December 2022" } });
  if (shown) await t.one({ as, in: at, run: `/bike change bike:${name} group-picture:yes` });
}
/** What was posted for everyone while the clock moved on, with the moment of each. */
async function posted(duration: string, asleep = false): Promise<Shown[]> {
  return (await t.send({ advance: duration, ...(asleep ? { asleep } : {}) })).filter(({ data }) => data?.digest !== undefined);
}
const postedAt = async (): Promise<string[]> =>
  (await t.open.store.read((q) => q.room.deliveredSince("" as Instant))).filter(({ member }) => member === null).map(({ at }) => at);
const sundays = (all: readonly string[]): string[] => all.map((at) => at.slice(0, 16));

describe("when it comes", () => {
  test("not without a channel; with one on Sunday evening by the group's clock, once a week, and not after off", async () => {
    await bike("Mara", "Heron", true);
    expect(await posted("P14D")).toEqual([]);
    await admin("zone:America/New_York");
    expect(await posted("P7D")).toEqual([]);
    const named = await admin("reading:here");
    expect(named.text).toContain("The digest of the week comes Sunday at 18:00 into the reading channel; /group digest:off stops it.");
    await posted("P14D");
    // 16 December 2026 is a Wednesday; 18:00 in New York is 23:00 UTC in winter.
    expect(sundays(await postedAt())).toEqual(["2026-12-20T23:00", "2026-12-27T23:00"]);
    expect((await admin("digest:off")).text).toContain("The digest of the week is off");
    expect(await posted("P21D")).toEqual([]);
  });

  test("on the day and at the hour that the admin says; nobody else may", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here zone:Europe/Berlin");
    expect((await t.one({ as: "Mara", run: "/group digest:off" })).text).toContain("Only members who may manage the server");
    await admin("digest:Thursday digest-time:7.30").then(({ text }) =>
      expect(text).toBe("“7.30” is in the quiet hours of the channel. Choose a time from 08:00 until 21:00."),
    );
    expect((await admin("digest:Thursday digest-time:19h15")).text).toContain("Thursday at 19:15");
    await posted("P9D");
    expect(sundays(await postedAt())).toEqual(["2026-11-26T18:15", "2026-12-03T18:15"]);
  });

  test("moved to the day after it came, it comes a week later and not twice in one", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here");
    await posted("P5D");
    await admin("digest:Monday");
    await posted("P9D");
    expect(sundays(await postedAt())).toEqual(["2026-11-29T18:00", "2026-12-07T18:00"]);
  });

  test("moved to a zone of other hours in between: at the new zone's hour", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here zone:Europe/Berlin");
    await posted("PT24H");
    await admin("zone:Asia/Tokyo");
    await posted("P7D");
    expect(sundays(await postedAt())).toEqual(["2026-11-29T09:00"]);
  });

  test("asleep over its hour: a few hours late it is posted in the morning, after a day it is left out, and the next comes in its time", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here");
    await posted("PT1H");
    // To Sunday 22:00, which is quiet.
    await posted("P4DT11H", true);
    expect(await postedAt()).toEqual([]);
    await posted("PT12H");
    expect(sundays(await postedAt())).toEqual(["2026-11-30T08:00"]);
    await posted("P8D", true);
    await posted("P14D");
    expect(sundays(await postedAt()).slice(1)).toEqual(["2026-12-13T18:00", "2026-12-20T18:00"]);
  });

  test("a clock that ran ahead, or back, posts none twice", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here");
    const tick = (at: Instant) => t.open.bot.reminders.tick(at);
    const begin = "2026-11-25T10:00:00.000Z" as Instant;
    await tick(begin);
    await tick("2031-03-04T02:00:00.000Z" as Instant);
    const sent: string[] = [];
    for (let at = begin; at < "2026-12-14T00:00:00.000Z"; at = addDuration(at, "PT2H")) {
      await tick(at);
      for (const each of (await postedAt()).slice(sent.length)) if (each !== undefined) sent.push(at);
    }
    expect(sundays(sent)).toEqual(["2026-11-29T18:00", "2026-12-06T18:00", "2026-12-13T18:00"]);
  });

  test("over the end of summer time it keeps to the group's clock", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here zone:Australia/Lord_Howe digest:Sunday digest-time:08:00");
    await posted("P110D", true);
    await posted("P40D");
    const all = await postedAt();
    // IANA tz database: +11 until 4 April 2027, then +10:30.
    expect(sundays(all).filter((at) => at >= "2027-03-20" && at < "2027-04-20")).toEqual([
      "2027-03-20T21:00",
      "2027-03-27T21:00",
      "2027-04-03T21:30",
      "2027-04-10T21:30",
      "2027-04-17T21:30",
    ]);
  });
});

describe("what it says", () => {
  test("names only bikes of members who said so, with counts and days, and no item", async () => {
    await bike("Mara", "Heron", true);
    await bike("Jonas", "Bramble", false);
    await bike("Tess", "Wren", true);
    await admin("reading:here");
    const [digest] = await posted("P5D");
    expect(digest?.text?.split("\n")).toEqual([
      "This week in the group",
      "3 readings and 3 jobs logged on 3 bikes.",
      "Due now: Heron (Mara), 1 item; Wren (Tess), 1 item.",
    ]);
    expect(digest?.to).toBeNull();
    expect(digest?.text).not.toMatch(/brake|fluid|Bramble|Jonas/iu);
    await t.one({ as: "Tess", run: "/bike change bike:Wren group-picture:no" });
    const [next] = await posted("P7D");
    expect(next?.text).not.toContain("Wren");
  });

  test("counts of fewer than three members are not given, since they would say what one of them did", async () => {
    await bike("Mara", "Heron", true);
    await bike("Jonas", "Bramble", false);
    await admin("reading:here");
    const [digest] = await posted("P5D");
    expect(digest?.text).not.toContain("logged on");
  });

  test("nothing found wrong, nothing of a bike laid up or sold, nothing that a newcomer lacks; with nothing to say nothing comes", async () => {
    await admin("reading:here");
    await t.one({ as: "Mara", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    await t.one({ as: "Mara", run: "/bike change bike:Heron group-picture:yes" });
    await t.one({ as: "Mara", say: "front brake spongy on Heron" });
    await bike("Tess", "Wren", true);
    await t.one({ as: "Tess", run: "/bike change bike:Wren state:laid up" });
    expect(await posted("P5D")).toEqual([]);
  });

  test("counts the days to the season, near its beginning and its end only", async () => {
    await admin("reading:here riding:15 March to 31 October");
    expect(await posted("P40D")).toEqual([]);
    const spring = await posted("P75D");
    expect(spring.map(({ text }) => text?.split("\n").at(-1))).toEqual([
      "The riding season begins on 15 March, in 7 weeks.",
      "The riding season begins on 15 March, in 6 weeks.",
      "The riding season begins on 15 March, in 5 weeks.",
      "The riding season begins on 15 March, in 4 weeks.",
      "The riding season begins on 15 March, in 3 weeks.",
      "The riding season begins on 15 March, in 15 days.",
      "The riding season begins on 15 March, in 8 days.",
      "The riding season begins on 15 March, tomorrow.",
    ]);
  });

  test("three weeks before the season each member begins the list for their own bikes from it, alone; at its end the other list", async () => {
    await admin("reading:here riding:15 March to 31 October");
    await bike("Mara", "Heron", false);
    await bike("Mara", "Wren", false);
    await bike("Jonas", "Bramble", false);
    await t.one({ as: "Mara", run: "/bike change bike:Heron state:laid up" });
    const spring = await posted("P115D");
    expect(spring.map(({ actions }) => actions.map(({ label }) => label).includes("Bring my bikes out"))).toEqual([
      ...Array.from({ length: 5 }, () => false),
      ...Array.from({ length: 3 }, () => true),
    ]);
    const out = button(spring.at(-1) as Shown, "Bring my bikes out");
    const mara = await t.one({ as: "Mara", press: out });
    // What she rides need not be brought out.
    expect([mara.visibility, mara.actions.map(({ label }) => label)]).toEqual(["private", ["Heron, out of storage"]]);
    expect((await t.one({ as: "Jonas", press: out })).actions.map(({ label }) => label)).toEqual(["Bramble, out of storage"]);
    expect((await t.one({ as: "Tess", press: out })).data.refused.why).toBe("no bikes yet");
    expect((await t.one({ as: "Mara", press: button(mara, "Heron") })).text).toContain("Heron, out of storage\n");
    const autumn = (await posted("P230D")).filter(({ actions }) => actions.some(({ label }) => label === "Put my bikes away"));
    expect(autumn.length).toBeGreaterThan(0);
    const away = await t.one({ as: "Mara", press: button(autumn[0] as Shown, "Put my bikes away") });
    expect(away.actions.map(({ label }) => label)).toEqual(["Wren, lay-up"]);
  });

  test("never more than five lines, however many bikes", async () => {
    await admin("reading:here riding:15 January to 31 October");
    for (let n = 0; n < 9; n++) await bike(`m${n}`, `Bike ${n}`, true);
    const [digest] = await posted("P5D");
    const lines = digest?.text?.split("\n") ?? [];
    expect(lines.length).toBeLessThanOrEqual(5);
    expect(lines[2]).toMatch(/; and 5 more bikes\.$/u);
  });

  test("says to whoever presses why it came, in this group and in no other", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here");
    const [digest] = await posted("P5D");
    const why = await t.one({ as: "Jonas", press: button(digest as Shown, "Why") });
    expect([why.visibility, why.text]).toEqual(["private", expect.stringContaining("Sunday at 18:00 by the group's clock")]);
    expect(why.text).toContain("/group digest:off");
    expect((await t.one({ as: "Jonas", in: "g2", press: button(digest as Shown, "Why") })).text).not.toContain("digest");
  });

  test("one group's bikes are not in another's", async () => {
    await bike("Mara", "Heron", true);
    await admin("reading:here", "g2");
    expect(await posted("P14D")).toEqual([]);
  });
});
