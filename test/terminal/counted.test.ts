// Readings that count as the check of an item: told in the reply, whole or with what is lacking. Which check is a figure alone, and which is more: common practice.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-11-25T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  const say = (text: string) => t.one({ ...dm, say: text });
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,990 mi");
  await run("/spec what:intake valve clearance value:0.10-0.20 mm");
  await run("/spec what:exhaust valve clearance value:0.20-0.30 mm");
  await run("/spec what:clutch free play value:10-15 mm");
  await run("/spec what:plug gap value:0.8-0.9 mm");
  await say("16,010 mi");
  const status = async (item: string): Promise<string | undefined> => {
    const { data } = await run("/due");
    const all: { item: string; status: string }[] = data.bikes.flatMap((each: { dues: { item: string; status: string }[] }) => each.dues);
    return all.find((line) => line.item === item)?.status;
  };
  return { t, run, say, status };
}

test("a figure within limits under its conditions is the check; one beyond them makes it due again, and undone it is not there", async () => {
  const { t, say, status } = await heron();
  expect(await status("clutch-free-play.adjust")).toBe("due");
  const within = await say("clutch free play 12 mm");
  expect(within.text).toContain("That counts as looked at, within limits: clutch free play. Nothing is renewed by it.");
  expect(within.data.counted).toMatchObject([{ item: "clutch-free-play.adjust", lacks: null }]);
  expect(await status("clutch-free-play.adjust")).toBe("good");
  await t.one({ ...dm, press: button(within, "Undo") });
  expect(await status("clutch-free-play.adjust")).toBe("due");
  await say("clutch free play 12 mm");
  const wide = await say("clutch free play 20 mm");
  expect(wide.data.counted).toEqual([]);
  expect(await status("clutch-free-play.adjust")).toBe("due");
  // A battery that has not rested shows nothing.
  expect((await say("battery 12.7 V")).data.counted).toEqual([]);
  expect(await status("battery.test")).toBe("no record");
  expect((await say("battery 12.7 V rested 8 h")).text).toContain("That counts as looked at, within limits: battery.");
  expect(await status("battery.test")).toBe("good");
  await t.close();
});

test("valves count once they were all of them and cold, a chain with its sprockets, a caliper with the other; new plugs by nothing but new plugs", async () => {
  const { t, say, status } = await heron();
  expect((await say("intake 0.15 0.14 cold")).text).toContain("Valve clearance: counts as looked at once intake and exhaust valves are all read.");
  const warm = await say("intake 0.15 0.14 exhaust 0.25 0.24");
  // The engine is taken to be cold as it was the first time.
  expect(warm.text).toContain("Valve clearance: counts as looked at once every valve is read. Were these all of them?");
  expect(await status("valve-clearance.adjust")).toBe("due");
  const all = await t.one({ ...dm, press: button(warm, "These were all the valves") });
  expect(all.data.work).toMatchObject([{ items: [{ item: "valve-clearance.adjust", outcome: "inspected, within limits" }] }]);
  expect(await status("valve-clearance.adjust")).toBe("good");
  const chain = await say("chain 318 mm over 20 pitches");
  expect(chain.data.counted).toMatchObject([{ item: "chain.measure", lacks: "sprockets" }]);
  await t.one({ ...dm, press: button(chain, "Sprockets are sound too") });
  expect(await status("chain.measure")).toBe("good");
  const left = await say("front left pads 4 mm");
  expect(left.text).toContain("Front brake pads: counts as looked at once the other side is read too.");
  expect((await say("front right pads 4 mm")).data.counted).toMatchObject([{ item: "front-pads.measure", lacks: null }]);
  expect((await say("plug gap 0.85 mm")).text).toContain("Spark plugs: this line is for new ones, so a reading leaves it as it stood.");
  expect(await status("spark-plugs.replace")).toBe("due");
  await t.close();
});

test("what the plan was not asking for is not told of, and one end says nothing of the other", async () => {
  const { t, say } = await heron();
  expect((await say("rear tread 1 mm")).data.counted).toMatchObject([{ item: "rear-tread.measure" }]);
  expect((await say("front tread 5 mm")).data.counted).toMatchObject([{ item: "front-tread.measure", lacks: null }]);
  expect((await say("front tread 4.9 mm")).data.counted).toEqual([]);
  await t.close();
});
