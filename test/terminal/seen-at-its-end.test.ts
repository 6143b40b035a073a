// What is seen to be at its end makes its line due, as a measured value does, until work mends it. That an adjuster at its end means a new chain is common practice.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
});
afterEach(() => t.close());

const due = async () => (await t.one({ as: "Ines", run: "/due" })).text?.split("\n").find((line) => line.includes("New chain and sprockets:"));

test("a chain adjuster at its end: the chain is due, and no more once it is new", async () => {
  expect(await due()).toBeUndefined();
  const noted = await t.one({ as: "Ines", in: "dm", say: "chain adjuster at its end" });
  expect(noted.data.defects).toMatchObject([{ kind: "chain at its end" }]);
  expect(await due()).toContain("“chain adjuster at its end”, found today");
  await t.one({ as: "Ines", in: "dm", say: "new chain and sprockets fitted at 14,250" });
  expect(await due()).not.toContain("found today");
});
