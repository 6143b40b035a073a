// A file dropped on a plain message: never passed over where the bot is spoken to, and never in the way of what is written beside it.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
});
afterEach(() => t.close());

test.each([
  ["heron.json", "/plan import"],
  ["Chart.CSV", "/plan read-chart"],
  ["service.pdf", "/plan read-chart"],
  ["IMG_0042.jpeg", "I cannot read pictures"],
  ["valves.stl", "/plan read-chart"],
])("%s: it is said which command takes it, and nothing is saved", async (name, says) => {
  for (const spoken of [{ in: "dm" }, { in: "g1", mention: true }])
    for (const say of ["", "here is my chart"]) {
      const answer = await t.one({ as: "Ines", say, files: [name], ...spoken });
      expect(answer.text).toContain(says);
      expect(answer.data.is).toBe("file sent");
    }
  expect((await t.one({ as: "Ines", run: "/plan history" })).data.edits).toEqual([]);
});

test("what is written beside a file is logged as ever, and files among members are left alone", async () => {
  const logged = await t.one({ as: "Ines", in: "dm", say: "14,250 mi on Heron", files: ["dial.jpg"] });
  expect(logged.data.is).toBe("logged");
  expect((await t.send({ as: "Ines", in: "g1", say: "look at this", files: ["trip.csv"] })).filter(({ text }) => text !== null)).toEqual([]);
});

const ROWS = [
  ["Item", "1000 km", "6000 km", "12000 km"],
  ["Engine oil", "R", "R", "R"],
  ["Valve clearance", "", "I", "I"],
  ["Spark plugs", "", "", "R"],
];
const parted = (by: string): string => ROWS.map((row) => row.join(by)).join("\n");
const CHART = parted(" | ");

test("a whole chart as a message is answered with the command that takes it; no figure of it is taken for an odometer", async () => {
  for (const pasted of [CHART, parted("\t"), parted(";"), parted(",")]) {
    const answer = await t.one({ as: "Ines", in: "dm", say: pasted });
    expect(answer.data).toMatchObject({ is: "file sent", file: "chart" });
    expect(answer.text).toContain("/plan read-chart");
  }
  // Among members, and not to the bot, it is left alone.
  expect((await t.send({ as: "Ines", in: "g1", say: CHART })).filter(({ text, react }) => text !== null || react !== null)).toEqual([]);
  expect((await t.one({ as: "Ines", in: "dm", run: "/reading" })).text).not.toContain("12,000");
  // Readings over several lines are readings.
  expect((await t.one({ as: "Ines", in: "dm", say: "14,300 mi on Heron\nfront 33 psi\nrear 38 psi" })).data.is).toBe("logged");
});
