// What a planned trip asks for by itself: before it in three stages, and on the way back; once each, and nothing of one called off.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
let t: Talk;
beforeEach(async () => {
  t = await talk("2027-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/remind off:services" });
});
afterEach(() => t.close());

async function bike(fluid = "10 June 2025", name = "Heron"): Promise<void> {
  const added = await t.one({ ...dm, run: `/bike add name:${name} kind:chain-drive twin odometer:14,210 mi` });
  await t.one({ ...dm, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": fluid } });
}
const plan = (text: string, options = "") => t.one({ ...dm, run: `/trip plan:${text}${options}` });
type Trip = { readonly day: string; readonly text: string; readonly want: string };
/** What of trips arrives, with the day on which it does. */
async function days(n: number): Promise<Trip[]> {
  const arrived = await t.send({ advance: `P${n}D` });
  const at = new Map((await t.open.store.read((q) => q.room.deliveredSince("" as Instant))).map((each) => [each.delivery, each.at.slice(0, 10)]));
  return arrived.flatMap(({ text, data }) =>
    data.told
      .flatMap(({ asides }: { asides: { want: string }[] }) => asides.map(({ want }) => want))
      .filter((want: string) => want.startsWith("trip"))
      .map((want: string): Trip => ({ day: at.get(data.delivery) ?? "", text: text ?? "", want })),
  );
}
const pressures = async (use: "solo" | "loaded", front: string, rear: string): Promise<void> => {
  for (const [what, value] of [
    ["front tyre pressure", front],
    ["rear tyre pressure", rear],
  ])
    await t.one({ ...dm, run: `/spec what:${what} value:${value} for:${use} source:owner's manual page 12 bike:Heron` });
};
const came = (all: readonly Trip[]): string[] => all.map(({ day, want }) => `${day} ${want}`);

describe("before a trip", () => {
  test("three weeks, a week and a day before: what falls due before it and on the way, and on the eve the pressures", async () => {
    await bike("14 June 2025");
    await pressures("loaded", "36 psi", "42 psi");
    await plan("600 mi from 12 June to 20 June", " load:loaded");
    const told = await days(71);
    expect(came(told)).toEqual(["2027-05-22 trip ahead", "2027-06-05 trip ahead", "2027-06-11 trip ahead"]);
    expect(told[0]?.text).toContain("Heron: the trip begins on 12 June, in 3 weeks.\n- Falls due on the way: Brake fluid.\n/trip shows all of it.");
    expect(told[1]?.text).not.toContain("pressures");
    expect(told[2]?.text).toContain("the trip begins on 12 June, tomorrow.");
    expect(told[2]?.text).toContain("- Cold pressures loaded: front 36 psi and rear 42 psi.");
  });

  test("what is done is no longer named, and what falls due by the first day is to be done before it", async () => {
    await bike("2 June 2025");
    await plan("600 mi from 12 June to 20 June");
    const [first] = await days(52);
    expect(first?.text).toContain("- Before you go: Brake fluid.");
    await t.one({ ...dm, run: "/work did:brake fluid at:14,300 mi" });
    expect((await days(20)).map(({ text }) => text).join("\n")).not.toContain("Brake fluid");
  });

  test("a defect that stops the ride stands first, to its rider alone and in no channel; of many things eight are named and the rest counted", async () => {
    await t.one({ as: "Ines", in: "g1", admin: true, run: "/group reading:here digest:off" });
    await t.one({ as: "Ines", in: "g1", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    await plan("2,800 mi from 12 June to 30 June");
    await days(52);
    await t.one({ ...dm, say: "front brake spongy on Heron" });
    const alone = (await t.send({ advance: "P13D" })).find(({ data }) => data.told[0].asides.some(({ want }: { want: string }) => want === "trip ahead"));
    const lines = alone?.text?.split("\n") ?? [];
    expect(lines[2]).toBe("- One defect is not to be ridden on: /due names it. First of all put that right.");
    expect(lines.find((line) => line.startsWith("- Falls due on the way: "))).toMatch(/^- Falls due on the way: ([^,]+, ){7}[^,]+ and 15 more\.$/u);
    await t.one({ ...dm, run: "/remind by:channel" });
    const inChannel = (await t.send({ advance: "P6D" })).find(({ in: where }) => where === "g1");
    expect(inChannel?.text).toContain("the trip begins on 12 June, tomorrow.");
    expect(inChannel?.text).not.toContain("defect");
    expect(JSON.stringify(inChannel?.data)).not.toContain('"defects":1');
  });

  test("with nothing to do three weeks before, the first word comes a week before, with the list to go through", async () => {
    await bike("10 March 2027");
    await plan("200 mi from 12 June to 13 June");
    await days(64);
    const [shown] = await t.send({ advance: "P1D" });
    expect(shown?.text).toContain("in 7 days");
    expect((await t.one({ ...dm, press: button(shown as Shown, "Check before the trip") })).text).toContain("Heron");
  });

  test("planned ten days before: what its answer said is not said again the morning after", async () => {
    await bike("2 April 2025");
    await plan("200 mi from 11 April to 13 April");
    expect(came(await days(10))).toEqual(["2027-04-04 trip ahead", "2027-04-10 trip ahead"]);
  });

  test("called off, moved, or with the bike laid up: nothing of the old plan", async () => {
    await bike("2 June 2025");
    const planned = await plan("600 mi from 12 June to 20 June");
    await days(50);
    await t.one({ ...dm, press: button(planned, "Call it off") });
    expect(await days(30)).toEqual([]);
    await plan("600 mi from 12 August to 20 August");
    await plan("600 mi from 14 August to 22 August");
    await t.one({ ...dm, run: "/bike change state:laid up" });
    expect(await days(50)).toEqual([]);
  });

  test("a member who switched trips off hears of none; switched on again, of what stands then", async () => {
    await bike("2 June 2025");
    await plan("600 mi from 12 June to 20 June");
    await t.one({ ...dm, run: "/remind off:trips" });
    expect(await days(60)).toEqual([]);
    await t.one({ ...dm, run: "/remind on:trips" });
    expect(came(await days(12))).toEqual(["2027-06-01 trip ahead", "2027-06-05 trip ahead", "2027-06-11 trip ahead"]);
  });
});

describe("after a trip", () => {
  test("asks once for the odometer, and sets the pressures back to those of one rider", async () => {
    await bike("10 March 2027");
    await pressures("solo", "33 psi", "36 psi");
    await pressures("loaded", "36 psi", "42 psi");
    await plan("600 mi from 12 April to 20 April", " load:loaded");
    const told = (await days(60)).filter(({ want }) => want === "trip back");
    expect(came(told)).toEqual(["2027-04-21 trip back"]);
    expect(told[0]?.text).toContain(
      "Heron: the trip ended on 20 April. What does the odometer say? Just write it. Cold pressures go back to normal for one rider (front 33 psi and rear 36 psi).",
    );
  });

  test("read on the last evening, one rider: nothing is asked", async () => {
    await bike("10 March 2027");
    await plan("600 mi from 12 April to 20 April");
    await days(19);
    await t.one({ ...dm, say: "14,830 mi" });
    expect((await days(20)).filter(({ want }) => want === "trip back")).toEqual([]);
  });

  test("why it came, and how to hear no more of trips", async () => {
    await bike("10 March 2027");
    await plan("600 mi from 12 April to 20 April");
    await days(19);
    const shown = (await t.send({ advance: "P1D" }))[0] as Shown;
    const why = await t.one({ ...dm, press: button(shown, "Why") });
    expect(why.text).toContain("a trip you planned has ended; asked once");
    expect(why.text).toContain("/remind off:trips");
  });
});
