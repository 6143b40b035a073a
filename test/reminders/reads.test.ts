// A reminder as its rider reads it: short with twelve things, clear about what to do, kind to who is away.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
});
afterEach(() => t.close());

const heron = async (): Promise<void> => {
  const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, press: button(added, "Don't know") });
};
/** The 16,000 mi service passed by in two days. */
const twentyOne = async (): Promise<Shown | undefined> => {
  await t.one({ ...dm, say: "15,000 mi" });
  await t.send({ advance: "P1D" });
  await t.one({ ...dm, say: "16,100 mi" });
  return (await t.send({ advance: "P3D" }))[0];
};
const linesOf = (shown: Shown | undefined): readonly string[] => shown?.text?.split("\n") ?? [];

describe("with many things at once", () => {
  test("what shares a status and a reason is one line, its reason first, and every thing is named", async () => {
    await heron();
    const told = await twentyOne();
    const lines = linesOf(told);
    expect(lines).toContain(
      "- Was due at 16,000 mi, the first such mark since it came to you; now 100 mi past: chain and sprocket wear, front brake pads, rear brake pads, rims, throttle cable free play, fasteners, front brake discs, rear brake disc, wheel bearings, steering head bearings and swingarm bearings. Overdue.",
    );
    // Twenty-one things in a handful of lines, and none left out.
    expect(lines.filter((line) => line.startsWith("- ")).length).toBeLessThanOrEqual(8);
    const names: string[] = told?.data.told[0].items.map(({ name }: { name: string }) => name);
    expect(names).toHaveLength(21);
    for (const name of names) expect(told?.text?.toLowerCase()).toContain(name.toLowerCase());
  });

  test("why it came is one line for what came for one reason", async () => {
    await heron();
    const told = await twentyOne();
    const why = linesOf(await t.one({ ...dm, press: button(told as Shown, "Why did I get this") }));
    expect(why).toHaveLength(3);
    expect(why.filter((line) => /: overdue; again after a week, then two, then every four, until it is done or put off\.$/u.test(line))).toHaveLength(1);
    expect(why.filter((line) => /: due; told once\.$/u.test(line))).toHaveLength(1);
  });
});

test("the one line of caution is that of the most urgent thing, whichever bike it is on", async () => {
  await heron();
  const added = await t.one({ ...dm, run: "/bike add name:Wren kind:dual-purpose single odometer:8,000 km" });
  await t.one({ ...dm, press: button(added, "Don't know") });
  await t.one({ ...dm, run: "/work did:coolant on:20 December 2024 at:12,000 mi bike:Heron" });
  await t.one({ ...dm, run: "/work did:brake fluid on:20 November 2024 bike:Wren" });
  const [told] = await t.send({ advance: "P6D" });
  expect(
    linesOf(told)
      .filter((line) => line.startsWith("- "))
      .map((line) => line.slice(2, line.indexOf(":"))),
  ).toEqual(["Coolant", "Brake fluid"]);
  expect(linesOf(told).at(-1)).toMatch(/^Brake fluid harms paint/u);
});

test("a thing chosen in a form that was done elsewhere meanwhile is no other thing: nothing is recorded, nothing put off", async () => {
  await heron();
  await t.one({ ...dm, run: "/work did:coolant on:20 December 2024 at:12,000 mi" });
  await t.one({ ...dm, run: "/work did:brake fluid on:20 November 2024" });
  const told = (await t.send({ advance: "P6D" }))[0] as Shown;
  const asked = await t.one({ ...dm, pick: button(told, "Put off"), values: ["another"] });
  await t.one({ ...dm, run: "/work did:brake fluid at:14,210 mi" });
  for (const late of [
    await t.one({ ...dm, fill: button(told, "Done on Heron"), fields: { what: "brake-fluid.replace", on: "", at: "", by: "" } }),
    await t.one({ ...dm, fill: button(asked, "Put off until"), fields: { what: "brake-fluid.replace", until: "1 March" } }),
  ])
    expect(late.text).toBe("That was done already, so nothing changed.");
  expect((await t.one({ ...dm, run: "/due" })).text).toMatch(/^- Coolant: due on 20 December, last done .*to go\.$/mu);
});

test("shown again it says what it told and is still so, beside the plan too, with its buttons; and that nothing is left", async () => {
  await heron();
  await t.one({ ...dm, run: "/work did:coolant on:20 December 2024 at:12,000 mi" });
  await t.one({ ...dm, run: "/bike date what:insurance on:2026-12-28" });
  const told = (await t.send({ advance: "P6D" }))[0] as Shown;
  expect(told.text).toContain("Heron: insurance on 28 December, in 4 weeks.");
  await t.one({ ...dm, say: "front brake spongy on Heron" });
  const stop = (await t.send({ advance: "P1D" }))[0] as Shown;
  // As the button does where direct messages are closed.
  const again = (of: Shown, as = "Ines") => t.one({ as, in: "g1", press: `1.show-reminder.${of.data.delivery}.0` });
  const shown = await again(told);
  expect(linesOf(shown).slice(0, 3)).toEqual([
    "Heron at 14,210 mi, 25 November",
    expect.stringMatching(/^- Coolant: due on 20 December, .* Coming up\.$/u),
    "Heron: insurance on 28 December, in 4 weeks.",
  ]);
  expect(shown.visibility).toBe("private");
  expect((await again(stop)).text).toContain("Heron: do not ride. “front brake spongy”, found on 1 December, is still open.");
  expect((await again(stop)).actions.map(({ label }) => label)).toEqual(["Mended: front brake spongy", "What is due on Heron"]);
  expect((await again(stop, "Odo")).text).toBe("Only the bike's owner can do that.");
  await t.one({ ...dm, fill: button(await again(told), "Done on Heron"), fields: { what: "", on: "", at: "14,300 mi", by: "" } });
  await t.one({ ...dm, run: "/bike date what:insurance on:none" });
  expect((await again(told)).text).toBe("All of it is done or no longer so.");
});

describe("of a bike laid up", () => {
  test("what ages is told with the word that it stands, and that there is time until its first ride", async () => {
    await heron();
    await t.one({ ...dm, run: "/work did:brake fluid on:15 December 2024" });
    await t.one({ ...dm, run: "/work did:coolant on:20 December 2024 at:12,000 mi" });
    const laid = await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" });
    expect(laid.text).toContain("what ages by itself still falls due, and I still tell of it (fluids, belts, tyres, battery)");
    expect(laid.text).toContain("By 1 March 2027, while it stands");
    const [told] = await t.send({ advance: "P6D" });
    expect(linesOf(told).filter((line) => !line.startsWith("- "))).toEqual([
      "For Heron",
      "Heron is laid up: these age while it stands. Do them when it suits you, at the latest before its first ride.",
      expect.stringContaining("Brake fluid harms paint"),
    ]);
  });

  test("a battery that rests is to be charged, with when and how", async () => {
    await heron();
    await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" });
    // AGM at rest: 60 days (trade/battery CHARGE_DAYS, common practice).
    const told = (await t.send({ advance: "P70D" })).find(({ text }) => text?.includes("battery"));
    expect(linesOf(told)[1]).toBe(
      "Heron: charge its battery, due since 24 January, unless it hangs on a maintenance charger. Charge it where air moves, away from sparks; then measure it rested and write it, and I count that.",
    );
  });

  test("read too low while it stands it is told with its volts, and again four weeks on; charged, it is not", async () => {
    await heron();
    const about = async (days: number): Promise<string[]> =>
      (await t.send({ advance: `P${days}D` })).flatMap((each) => linesOf(each).filter((line) => line.startsWith("Heron: charge its battery")));
    await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" });
    await about(36);
    await t.one({ ...dm, say: "battery 12.3 V rested 10 days" });
    expect(await about(10)).toEqual([expect.stringContaining("charge its battery, 12.3 V at rest on 31 December, unless")]);
    expect(await about(14)).toEqual([]);
    expect(await about(14)).toHaveLength(1);
    await t.one({ ...dm, say: "charged the battery" });
    expect(await about(50)).toEqual([]);
  });
});

test("silent since the season ended: one question, not two", async () => {
  await t.one({ as: "Ines", in: "g1", admin: true, run: "/group reading:here riding:1 April to 31 October digest:off" });
  await t.one({ as: "Ines", in: "g1", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/bike change bike:Heron yearly:20,000 mi" });
  const told = (await t.send({ advance: "P32D" })).at(-1);
  expect(told?.data.told[0].asides.map(({ want }: { want: string }) => want).sort()).toEqual(["reading", "silent"]);
  expect(linesOf(told).slice(1)).toEqual(["Heron: not logged since 25 November. Laid up? If it rides, just write what the odometer says."]);
});

describe("a paper's day", () => {
  // Whatever weekday it falls on: each word waits for the member's day of the week, and is early enough all the same.
  test.for(["22", "23", "24", "25", "26", "27", "28"])("%s March: a month before and a week before at the least, two weeks at the most", async (day) => {
    await heron();
    await t.one({ ...dm, run: `/bike date what:insurance on:2027-03-${day} bike:Heron` });
    const told: string[] = [];
    await t.send({ advance: "P60D" });
    for (let n = 0; n < 70; n++)
      for (const { text } of await t.send({ advance: "P1D" })) if (text?.includes(`insurance on ${day} March, in `)) told.push(t.open.clock.now().slice(0, 10));
    const before = told.map((on) => (Date.parse(`2027-03-${day}`) - Date.parse(on)) / 86_400_000);
    expect(before).toHaveLength(2);
    expect(before[0]).toBeGreaterThanOrEqual(30);
    expect(before[0]).toBeLessThanOrEqual(36);
    expect(before[1]).toBeGreaterThanOrEqual(7);
    expect(before[1]).toBeLessThanOrEqual(13);
  });
});
