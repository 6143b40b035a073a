// A battery on its charger: the charge is work, volts before and after it are found and left, and what kind it is may be told.

import { describe, expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-11-25T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return { t, run: (line: string) => t.one({ ...dm, run: line }), say: (line: string) => t.one({ ...dm, say: line }) };
}

describe("volts before and after a charge in one message", () => {
  test.each([
    ["battery 12.2 V before, 12.8 V after charging", 12.2, 12.8],
    ["12.2 before, 12.8 after charging", 12.2, 12.8],
    ["battery was 11.9 V, after a night on the charger 12.7", 11.9, 12.7],
    ["Batterie vorher 12,1 V, nach dem Laden 12,8 V", 12.1, 12.8],
  ])("“%s”", async (words, found, left) => {
    const { t, say } = await heron();
    const said = await say(words);
    expect(said.data.readings).toMatchObject([
      { kind: "battery voltage", value: found, detail: { state: "found" } },
      { kind: "battery voltage", value: left, detail: { state: "left", conditions: ["charged"] } },
    ]);
    // Common practice: volts stay up for hours after charging; rested is six hours and more.
    expect(said.data.judged).toMatchObject([{ value: left, judgement: { is: "cannot tell", missing: ["longer rest"] } }]);
    expect(said.text).toContain("read it again after six hours");
    await t.close();
  });
  test("after days off the charger it has rested, and on it it has not", async () => {
    const { t, say } = await heron();
    expect((await say("battery 12.9 V, 2 days off the charger")).data.judged).toMatchObject([{ judgement: { is: "within" } }]);
    expect((await say("battery 12.9 V on the charger")).data.judged).toMatchObject([{ judgement: { missing: ["at rest"] } }]);
    await t.close();
  });
});

describe("a charge is work", () => {
  test.each(["charged the battery", "battery charged overnight", "put the battery on the charger", "battery hooked up to the charger", "Batterie geladen"])(
    "“%s”",
    async (words) => {
      const { t, say } = await heron();
      expect((await say(words)).data.work).toMatchObject([{ items: [{ item: "battery.charge", called: "Battery charge" }] }]);
      await t.close();
    },
  );
  test("beside other work it is a job of its own, and does not count as the battery's test", async () => {
    const { t, say } = await heron();
    const { work } = (await say("did the oil and charged the battery")).data;
    expect(work.map(({ items }: { items: { item: string }[] }) => items.map(({ item }) => item))).toEqual([["engine-oil.replace"], ["battery.charge"]]);
    await t.close();
  });
  test.each(["battery is not charged", "need to charge the battery", "battery charged?", "fitted a charged battery", "Batterie muss geladen werden"])(
    "“%s” is none",
    async (words) => {
      const { t, say } = await heron();
      const { work = [] } = (await say(words)).data;
      expect(work.flatMap(({ items }: { items: { item: string }[] }) => items).filter(({ item }: { item: string }) => item === "battery.charge")).toEqual([]);
      await t.close();
    },
  );
  test("of a flat one it is asked whether that closes it", async () => {
    const { t, say } = await heron();
    await say("battery is flat");
    expect((await say("charged the battery")).data.mayClose).toMatchObject([{ defect: { words: "battery is flat" } }]);
    await t.close();
  });
});

test("volts that cannot be judged count for nothing, whatever was read before on the day", async () => {
  const { t, say } = await heron();
  expect((await say("battery 12.6 V rested 8 h")).text).toContain("That counts as looked at, within limits: battery");
  for (const words of ["battery 12.9 V rested 1 h", "battery 12.6 V on the maintainer", "battery 13.4 V rested 8 h"]) {
    const { data, text } = await say(words);
    expect(data.judged, words).toMatchObject([{ judgement: { is: "cannot tell" } }]);
    expect(text, words).not.toContain("counts as looked at");
  }
  await t.close();
});

test("the charge of AGM is said as typical, that of a flooded battery by its published table", async () => {
  const { t, run, say } = await heron();
  expect((await say("battery 12.8 V rested 8 h")).text).toContain("about 100 % charged (typical; makers differ by 0.1 V): within");
  await run("/bike fitted bike:Heron part:battery choice:flooded");
  expect((await say("battery 12.65 V rested 8 h")).text).toContain("about 100 % charged: within");
  await t.close();
});

describe("what kind a battery is", () => {
  test.each(["battery is lithium", "my battery is lithium", "the bike has a lithium battery", "Heron's battery is lithium", "Batterie ist Lithium"])(
    "“%s” is confirmed with a press",
    async (words) => {
      const { t, run, say } = await heron();
      const told = await say(words);
      expect(told.data).toMatchObject({ is: "battery told", bikes: [{ kind: "lithium", other: true }] });
      await t.one({ ...dm, press: button(told, "Enter lithium battery") });
      expect((await run("/bike list")).text).toContain("lithium battery");
      expect((await say(words)).text).toContain("entered as lithium already");
      await t.close();
    },
  );
  test.each(["battery is lithium?", "battery is dead", "the battery is lithium and dead", "gel or lithium battery is better"])(
    "“%s” tells none",
    async (words) => {
      const { t, say } = await heron();
      expect((await say(words)).data.is).not.toBe("battery told");
      await t.close();
    },
  );
  test("swapped for one of another kind, its kind is kept with the work", async () => {
    const { t, say } = await heron();
    const swapped = await say("swapped the battery for a lithium one");
    expect(swapped.data.work).toMatchObject([{ items: [{ item: "battery.test", outcome: "replaced" }], detail: { parts: [{ words: "lithium" }] } }]);
    expect(swapped.actions.map(({ label }) => label)).toContain("Enter lithium battery");
    await t.close();
  });
});
