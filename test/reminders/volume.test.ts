// How often, how much, and why: repeats, one message a week, what cannot wait, what is switched off.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-05T10:00:00Z");
});
afterEach(() => t.close());

const bike = async (fluid: string, more = ""): Promise<Shown> => {
  const added = await t.one({ ...dm, run: `/bike add name:Heron kind:chain-drive twin odometer:14,210 mi ${more}` });
  return t.one({ ...dm, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": fluid } });
};
/** Days on which something arrived. */
const days = async (span: string): Promise<readonly { readonly on: string; readonly shown: Shown }[]> => {
  const found: { on: string; shown: Shown }[] = [];
  const n = Number(/\d+/u.exec(span)?.[0]);
  for (let day = 0; day < n; day++) for (const shown of await t.send({ advance: "P1D" })) found.push({ on: t.open.clock.now().slice(0, 10), shown });
  return found;
};

test("overdue is told again after 1 week, 2 weeks and 4 weeks, then every 4 weeks, until it is done", async () => {
  await bike("10 November 2024");
  const told = (await days("P100D")).filter(({ shown }) => shown.text?.includes("verdue"));
  // Overdue from 11 November; the member's Saturday is told on by the next day's look at ten.
  expect(told.map(({ on }) => on)).toEqual(["2026-11-14", "2026-11-21", "2026-12-05", "2027-01-02", "2027-01-30"]);
  await t.one({ ...dm, run: "/work did:brake fluid at:14,300 mi" });
  expect((await days("P60D")).filter(({ shown }) => shown.text?.includes("rake fluid"))).toEqual([]);
});

test("says why it came, to its member alone, and what is switched off does not come", async () => {
  await bike("10 December 2024");
  const [first] = await days("P14D");
  const why = button(first?.shown as Shown, "Why did I get this");
  const answer = await t.one({ ...dm, press: why });
  expect(answer.text).toMatch(/^Heron, Brake fluid: coming up; told once before it is due\./u);
  expect(answer.text).toContain("/remind off:services");
  expect((await t.one({ as: "Odo", in: "dm", press: why })).text).not.toContain("Heron");
  expect((await t.one({ ...dm, run: "/remind off:services" })).text).toContain("Not told of: services.");
  expect(await days("P30D")).toEqual([]);
  await t.one({ ...dm, run: "/remind on:services" });
  expect((await days("P8D")).map(({ shown }) => shown.text)).toEqual([expect.stringContaining("Overdue")]);
});

test("what a group switched off comes only to members who say so themselves", async () => {
  await t.one({ as: "Ines", in: "g1", admin: true, run: "/group off:services" });
  await t.one({ as: "Ines", in: "g1", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/work did:brake fluid on:10 December 2024 at:9,000 mi" });
  expect(await days("P40D")).toEqual([]);
  await t.one({ ...dm, run: "/remind on:services" });
  expect((await days("P8D")).length).toBe(1);
});

test("once a week however the week's day is moved: told on Saturday, a thing that is new on Sunday waits until the week is over", async () => {
  await bike("10 November 2024");
  expect((await days("P10D")).map(({ on }) => on)).toEqual(["2026-11-07", "2026-11-14"]);
  await t.one({ ...dm, run: "/remind day:Monday" });
  await t.one({ ...dm, run: "/bike date what:insurance on:20 November bike:Heron" });
  // Of the Mondays, the 16th is two days after the last message; the 23rd is more than a week.
  expect((await days("P12D")).map(({ on }) => on)).toEqual(["2026-11-23"]);
});

test("a repeat is counted from the day on which the one before it went out, not from one on which it only waited for the week to be over", async () => {
  await bike("10 November 2024");
  await days("P10D");
  await t.one({ ...dm, run: "/remind day:Tuesday" });
  // Ready on the 17th, three days after the last message: it waits until the 24th, and the first repeat comes with it.
  await t.one({ ...dm, run: "/bike date what:insurance on:20 November bike:Heron" });
  const told = (await days("P40D")).filter(({ shown }) => shown.text?.includes("rake fluid"));
  expect(told.map(({ on }) => on)).toEqual(["2026-11-24", "2026-12-08"]);
});

test("the way it comes changed between the noting and the telling: it comes the new way, in its time and once", async () => {
  await t.one({ as: "Ines", in: "g1", admin: true, run: "/group reading:here digest:off" });
  await t.one({ as: "Ines", in: "g1", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/work did:brake fluid on:1 December 2024 at:9,000 mi" });
  expect(await days("P1D")).toEqual([]);
  await t.one({ ...dm, run: "/remind by:channel" });
  expect((await days("P6D")).map(({ on, shown }) => [on, shown.in])).toEqual([["2026-11-07", "g1"]]);
});

test("of a bike laid up nothing is told that rests with it; what ages standing is, and the rest when it is ridden again", async () => {
  await bike("10 December 2024");
  await t.one({ ...dm, run: "/work did:control cables on:1 November 2025 at:14,000 mi" });
  expect((await t.one({ ...dm, run: "/due" })).data.bikes[0].dues.find(({ item }: { item: string }) => item === "controls.lubricate").status).toBe("due");
  await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" });
  const items = (all: readonly { readonly shown: Shown }[]) => [
    ...new Set(all.flatMap(({ shown }) => shown.data.told.flatMap(({ items: of }: { items: { item: string }[] }) => of.map(({ item }) => item)))),
  ];
  expect(items(await days("P40D"))).toEqual(["brake-fluid.replace"]);
  await t.one({ ...dm, run: "/bike change bike:Heron state:riding" });
  expect(items(await days("P9D"))).toContain("controls.lubricate");
});

test("done, it is a new thing a year later, and told anew at each stage", async () => {
  await bike("10 October 2026");
  await t.one({ ...dm, run: "/work did:control cables on:1 November 2025 at:14,000 mi" });
  const told = async (span: string) =>
    (await t.send({ advance: span })).flatMap(({ data }) =>
      data.told.flatMap(({ items }: { items: { item: string; status: string }[] }) =>
        items.filter(({ item }) => item === "controls.lubricate").map(({ status }) => status),
      ),
    );
  expect(await told("P10D")).toEqual(["due"]);
  await t.one({ ...dm, run: "/work did:control cables at:14,300 mi" });
  expect(await told("P300D")).toEqual([]);
  expect(await told("P70D")).toEqual(["soon", "due"]);
});

describe("what cannot wait", () => {
  test("a bike not to be ridden is told of on the next day, to its member alone although reminders are wished in the channel, and not once it is mended", async () => {
    await t.one({ as: "Ines", in: "g1", admin: true, run: "/group reading:here digest:off" });
    // At home in the group, so that the rest of it is told in the channel.
    await t.one({ as: "Ines", in: "g1", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    await t.one({ ...dm, run: "/remind by:channel" });
    await t.one({ ...dm, say: "front brake spongy on Heron" });
    const told = await days("P9D");
    expect(told.map(({ on, shown }) => [on, shown.in])).toEqual([
      ["2026-11-06", "dm"],
      ["2026-11-13", "dm"],
    ]);
    expect(told[0]?.shown.text).toContain("do not ride");
    expect(told[0]?.shown.actions.map(({ label }) => label)).toContain("Mended: front brake spongy");
    await t.one({ ...dm, say: "bled the front brake on Heron at 14,300 mi" });
    expect((await t.one({ ...dm, run: "/due" })).text).not.toContain("spongy");
    expect((await days("P30D")).filter(({ shown }) => shown.text?.includes("spongy"))).toEqual([]);
  });
});

describe("what nobody graded", () => {
  test("and is usually not ridden with, is asked about on the next day, until it is graded; what is usually watched is not", async () => {
    await bike("1 November 2026");
    await t.one({ ...dm, say: "fork seal leaking on Heron" });
    await t.one({ ...dm, say: "mirror loose on Heron" });
    expect((await t.one({ ...dm, run: "/due" })).text).toContain("mirror");
    const told = await days("P9D");
    expect(told.map(({ on }) => on)).toEqual(["2026-11-06", "2026-11-13"]);
    expect(told[0]?.shown.text).toContain("Heron: “fork seal leaking”, found on 5 November. How bad is it? You have not said; until you know, do not ride.");
    expect(told.map(({ shown }) => shown.text).join()).not.toContain("mirror");
    const asked = await t.one({ ...dm, press: button(told[0]?.shown as Shown, "How bad: fork seal leaking") });
    await t.one({ ...dm, press: button(asked, "Watch") });
    expect(await days("P30D")).toEqual([]);
  });

  test("mended from the reminder itself, it is told no more", async () => {
    await bike("1 November 2026");
    await t.one({ ...dm, say: "front brake spongy on Heron" });
    const [told] = await days("P2D");
    const mended = button(told?.shown as Shown, "Mended: front brake spongy");
    expect((await t.one({ as: "Odo", in: "dm", fill: mended, fields: { did: "bled it" } })).text).toContain("Only the bike's owner");
    expect((await t.one({ ...dm, fill: mended, fields: { did: "bled the front brake", at: "14,300 mi", on: "" } })).text).toContain("Recorded");
    expect(await days("P30D")).toEqual([]);
  });
});

describe("what the bike asks for", () => {
  test("a reading, once, when nobody can tell any more where its odometer stands", async () => {
    await bike("1 November 2026");
    await t.one({ ...dm, say: "14,210 mi" });
    await days("P20D");
    await t.one({ ...dm, say: "15,400 mi" });
    const asked = (await days("P150D")).filter(({ shown }) => shown.text?.includes("What does it say"));
    expect(asked).toHaveLength(1);
    expect(asked[0]?.shown.text).toMatch(/Heron: last read on 25 November( 2026)?; by now it may show anything from [\d,]+ to [\d,]+ mi\./u);
  });

  test("a charge at each span while it is laid up, and none for what was measured", async () => {
    await bike("1 November 2026");
    await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" });
    const charge = (all: readonly { readonly on: string; readonly shown: Shown }[]) =>
      all.filter(({ shown }) => shown.text?.includes("charge its battery")).map(({ on }) => on);
    expect(charge(await days("P70D"))).toEqual(["2027-01-09"]);
    await t.one({ ...dm, run: "/bike change bike:Heron state:riding" });
    expect(charge(await days("P130D"))).toEqual([]);
  });
});

test("put off until a distance is silent until the dial shows it, and a shop can have done it", async () => {
  await bike("10 November 2024");
  const [first] = await days("P10D");
  const put = await t.one({ ...dm, pick: button(first?.shown as Shown, "Put off"), values: ["250 more"] });
  expect(put.text).toContain("put off until the dial shows 14,460 mi, or until 15 May 2027 if none is written before");
  await t.one({ ...dm, say: "14,459 mi" });
  expect(await days("P15D")).toEqual([]);
  await t.one({ ...dm, say: "14,460 mi" });
  const [again] = await days("P8D");
  expect(again?.shown.text).toContain("Overdue");
  const done = await t.one({ ...dm, fill: button(again?.shown as Shown, "Done"), fields: { at: "14,470 mi", on: "", by: "Marsh Lane Garage" } });
  expect(done.text).toContain("Brake fluid");
  expect((await t.one({ ...dm, run: "/records" })).text).toContain("Marsh Lane Garage");
});

test("what was put off is silent until it is done: what falls due after that was never put off", async () => {
  const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, press: button(added, "Don't know") });
  await t.one({ ...dm, say: "new rear tyre on Heron at 14,250" });
  const [first] = await days("P10D");
  expect(first?.shown.text).toContain("Rear axle nut: look again");
  const put = await t.one({ ...dm, pick: button(first?.shown as Shown, "Put off"), values: ["1000 more"] });
  expect(put.text).toContain("Rear axle nut put off until the dial shows 15,250 mi");
  await t.one({ ...dm, say: "14,310 mi" });
  expect(await days("P10D")).toEqual([]);
  await t.one({ ...dm, run: "/work did:rear axle nut at:14,320 mi" });
  // The wheel is out once more: that look was not put off.
  await t.one({ ...dm, say: "new rear tyre on Heron at 14,400" });
  await t.one({ ...dm, say: "14,460 mi" });
  expect((await days("P6D")).map(({ shown }) => shown.text)).toEqual([
    expect.stringContaining("Rear axle nut: look again now: due at 14,450 mi, 50 mi after the work at 14,400 mi, since the axle was loosened for it"),
  ]);
});

test("what is put off says so on the due list, to its owner alone; taken back, it is told in its time", async () => {
  await bike("10 November 2024");
  const [first] = await days("P10D");
  const put = await t.one({ ...dm, pick: button(first?.shown as Shown, "Put off"), values: ["a month"] });
  expect((await t.one({ ...dm, run: "/due" })).text).toMatch(/^- Brake fluid: was due .* Put off until 15 December 2026\.$/mu);
  expect((await t.one({ ...dm, run: "/due share:yes" })).text).not.toContain("Put off");
  const undo = button(put, "Undo");
  expect((await t.one({ as: "Odo", in: "dm", press: undo })).text).toBe("Only the bike's owner can do that.");
  expect((await t.one({ ...dm, press: undo })).text).toBe("Heron: Brake fluid no longer put off; told as before.");
  expect((await t.one({ ...dm, press: undo })).data.refused.why).toBe("already done");
  expect((await t.one({ ...dm, run: "/due" })).text).not.toContain("Put off");
  expect((await days("P8D")).map(({ shown }) => shown.text)).toEqual([expect.stringContaining("Brake fluid")]);
});

describe("put off until a day or a figure of one's own", () => {
  /** The reminder's list, its last choice, and the form behind the button that answers it. */
  const typed = async (shown: Shown, fields: Readonly<Record<string, string>>, as = "Ines"): Promise<Shown> => {
    const asked = await t.one({ as, in: "dm", pick: button(shown, "Put off"), values: ["another"] });
    return as === "Ines" ? t.one({ ...dm, fill: button(asked, "Put off until"), fields }) : asked;
  };

  test("a day: silent until then, and told once more on the week's day that follows", async () => {
    await bike("10 November 2024");
    const [first] = await days("P10D");
    expect((await typed(first?.shown as Shown, { until: "20 December" })).text).toContain("Brake fluid put off until 20 December");
    expect((await days("P60D")).map(({ on }) => on)[0]).toBe("2026-12-26");
  });

  test("what the dial shows, in its own unit or in another, and some distance more", async () => {
    await bike("10 November 2024");
    const [first] = await days("P10D");
    const shown = first?.shown as Shown;
    expect((await typed(shown, { until: "15,500" })).data.figure).toEqual({ at: 15_500, unit: "mi" });
    expect((await typed(shown, { until: "+300 mi" })).data.figure).toEqual({ at: 14_510, unit: "mi" });
    // 25,000 km: 25,000 / 1.609344 = 15,534.3 mi (the international mile of 1959).
    expect((await typed(shown, { until: "25,000 km" })).data.figure).toEqual({ at: 15_534, unit: "mi" });
    await t.one({ ...dm, say: "15,533 mi" });
    expect(await days("P15D")).toEqual([]);
    await t.one({ ...dm, say: "15,535 mi" });
    expect((await days("P8D")).length).toBe(1);
  });

  test("one of several things: the others go on", async () => {
    const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    await t.one({ ...dm, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "10 November 2024", "coolant.replace": "10 November 2020" } });
    const [first] = await days("P10D");
    const told = first?.shown.data.told[0].items.map(({ item }: { item: string }) => item);
    expect(told).toEqual(expect.arrayContaining(["brake-fluid.replace", "coolant.replace"]));
    await typed(first?.shown as Shown, { what: "coolant.replace", until: "1 March" });
    const later = (await days("P21D")).flatMap(({ shown }) => shown.data.told[0].items.map(({ item }: { item: string }) => item));
    expect([later.includes("brake-fluid.replace"), later.includes("coolant.replace")]).toEqual([true, false]);
  });

  test.each([
    ["yesterday", "is not ahead"],
    ["14,000 mi", "is not ahead"],
    ["1 June 2029", "more than a year ahead"],
    ["when it rains", "as a day or a distance ahead"],
  ])("“%s” puts nothing off and says what can be typed", async (until, why) => {
    await bike("10 November 2024");
    const [first] = await days("P10D");
    expect((await typed(first?.shown as Shown, { until })).text).toContain(why);
    expect((await days("P15D")).length).toBeGreaterThan(0);
  });

  test("nobody else may: neither the list, nor the form, nor done", async () => {
    await bike("10 November 2024");
    const [first] = await days("P10D");
    const shown = first?.shown as Shown;
    expect((await typed(shown, {}, "Odo")).text).toBe("Only the bike's owner can do that.");
    const subject = button(shown, "Put off").split(".")[2];
    for (const [action, fields] of [
      [`1.put-off-until.${subject}.${shown.data.told[0].bike}.0`, { until: "1 March" }],
      [button(shown, "Done"), { at: "15,000 mi" }],
    ] as const)
      expect((await t.one({ as: "Odo", in: "dm", fill: action, fields })).text).toBe("Only the bike's owner can do that.");
    expect((await days("P15D")).length).toBeGreaterThan(0);
  });
});
