// The season as a group and its members meet it: the two lists in time, the silent bike, the days of papers.

import { describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const ines = { as: "Ines", in: "g1", admin: true };
const dm = { as: "Ines", in: "dm" };

/** A group with a season, and a bike at home in it whose history is whole, so that nothing else is told. */
async function withSeason(clock: string, riding = "north"): Promise<Talk> {
  const t = await talk(clock);
  await t.one({ ...ines, run: `/group riding:${riding}` });
  const added = await t.one({ ...ines, run: "/bike add name:Heron kind:chain-drive twin odometer:0 mi" });
  await t.one({ ...ines, press: button(added, "It is new") });
  return t;
}
const about = (shown: readonly Shown[], what: string): readonly Shown[] => shown.filter(({ text }) => text?.includes(what) === true);

describe("the season of a group", () => {
  test("is shown and changed by whoever manages it, and refused when it cannot be read", async () => {
    const t = await talk("2026-11-26T09:00:00Z");
    expect((await t.one({ ...ines, run: "/group" })).text).toContain("Riding season: none set");
    expect((await t.one({ ...ines, run: "/group riding:1 April to 15 October" })).text).toContain("Riding season: 1 April to 15 October.");
    expect((await t.one({ ...ines, run: "/group riding:when it is warm" })).text).toContain("I cannot read “when it is warm” as a riding season");
    expect((await t.one({ ...ines, admin: false, run: "/group riding:none" })).data.refused.why).toBe("admins only");
    expect((await t.one({ ...ines, run: "/group riding:none" })).text).toContain("Riding season: none set");
    await t.close();
  });

  test("asks for lay-up once before its end, with a button that begins the list; then in spring, once, for the list out of storage", async () => {
    const t = await withSeason("2026-10-01T09:00:00Z");
    const autumn = about(await t.send({ advance: "P30D" }), "The season ends on 31 October");
    expect(autumn).toHaveLength(1);
    const card = await t.one({ ...dm, press: button(autumn[0] as Shown, "Lay-up: Heron") });
    expect(card.text).toContain("Heron, lay-up");
    const good = await t.one({ ...dm, press: button(card, "Good") });
    const end = await t.one({ ...dm, press: button(good, "Finish") });
    await t.one({ ...dm, press: button(end, "Heron is laid up now") });
    const winter = await t.send({ advance: "P110D", asleep: true });
    expect(about(winter, "season")).toEqual([]);
    const spring = about(await t.send({ advance: "P60D" }), "The season begins on 15 March");
    expect(spring).toHaveLength(1);
    expect(button(spring[0] as Shown, "Out of storage: Heron")).toContain("check-begin");
    await t.close();
  });

  test("asks once whether a bike that nobody logs was laid up; both answers are taken", async () => {
    const t = await withSeason("2026-10-12T09:00:00Z");
    const asked = about(await t.send({ advance: "P45D" }), "Heron: not logged since 12 October. Laid up?");
    expect(asked).toHaveLength(1);
    expect((await t.one({ ...dm, press: button(asked[0] as Shown, "Still riding") })).text).toContain("Heron rides on.");
    expect((await t.one({ ...dm, press: button(asked[0] as Shown, "Heron is laid up") })).data.state).toBe("laid up");
    await t.close();
  });

  test("without a season nothing is asked", async () => {
    const t = await withSeason("2026-10-12T09:00:00Z", "none");
    expect(about(await t.send({ advance: "P40D" }), "eason")).toEqual([]);
    await t.close();
  });
});

describe("the days of a bike's papers", () => {
  test("are told a month and a week before, of a bike laid up too, and can be moved and taken off", async () => {
    const t = await withSeason("2027-02-10T09:00:00Z", "none");
    expect((await t.one({ ...dm, run: "/bike date" })).text).toContain("No day is noted.");
    expect((await t.one({ ...dm, run: "/bike date what:insurance on:31 March" })).text).toContain(
      "Heron: insurance on 31 March 2027. I say so a month before and a week before.",
    );
    await t.one({ ...dm, run: "/bike date what:Insurance on:2027-03-20" });
    expect((await t.one({ ...dm, run: "/bike date" })).text).toBe("Heron: Insurance 20 March 2027.");
    await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" });
    expect(about(await t.send({ advance: "P35D" }), "Insurance on 20 March")).toHaveLength(2);
    expect((await t.one({ ...dm, run: "/bike date what:insurance on:none" })).text).toContain("is taken off");
    expect((await t.one({ ...dm, run: "/bike date what:insurance on:31 March 2020" })).data.refused.why).toBe("not ahead");
    await t.close();
  });
});

describe("the battery of a bike laid up", () => {
  const due = async (t: Talk): Promise<string> => (await t.one({ ...dm, run: "/due bike:Heron" })).text ?? "";
  const volts = (t: Talk, said: string) => t.one({ ...dm, say: `battery ${said} rested on Heron` });
  test("is to be charged by a day: by how long it stands, then by its volts, and anew once they have risen", async () => {
    const t = await withSeason("2026-11-01T09:00:00Z", "none");
    expect(await due(t)).not.toContain("Charge the battery");
    // An AGM battery at rest: looked at after 60 days (trade/battery CHARGE_DAYS, common practice).
    expect((await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" })).text).toContain("Charge the battery by 31 December: nothing was read of it");
    await volts(t, "12.8 V");
    // 12.80 V less 12.50 V, at which AGM is charged, at 0.0025 V a day: 120 days from 1 November (common practice).
    expect(await due(t)).toContain("Charge the battery by about 1 March 2027: by one reading, and what such batteries lose.");
    await t.send({ advance: "P20D", asleep: true });
    await volts(t, "12.65 V");
    expect(await due(t)).toMatch(/Charge the battery by about \d+ December: by 2 readings since it was charged\./u);
    await t.send({ advance: "P10D", asleep: true });
    await volts(t, "12.5 V");
    expect(await due(t)).toContain("Charge the battery now: 12.5 V at rest today.");
    await t.send({ advance: "P1D", asleep: true });
    await volts(t, "12.85 V");
    expect(await due(t)).toMatch(/Charge the battery by about \d+ April 2027: by one reading/u);
    await t.one({ ...dm, run: "/bike change bike:Heron state:riding" });
    expect(await due(t)).not.toContain("Charge the battery");
    await t.close();
  });
  test("of lithium says which charger, and that it is never charged in frost", async () => {
    const t = await withSeason("2026-11-01T09:00:00Z", "none");
    await t.one({ ...dm, run: "/bike fitted bike:Heron part:battery choice:lithium" });
    expect((await t.one({ ...dm, run: "/bike change bike:Heron state:laid up" })).text).toContain(
      "Charge the battery by 30 January 2027 with a charger made for lithium, never below 0 °C:",
    );
    await t.close();
  });
});
