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
