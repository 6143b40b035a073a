// A spec in the unit that is asked for, a torque that no fastener of its kind has, and what an evening can hurt.

import { afterEach, expect, test } from "vitest";
import { completions } from "../../src/usecases/complete.ts";
import type { Ctx } from "../../src/usecases/context.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk | null = null;
afterEach(async () => {
  await t?.close();
  t = null;
});
const dm = { as: "Ines", in: "dm" };
const begun = async (kind: string): Promise<Talk> => {
  t = await talk("2026-11-26T09:00:00Z");
  await t.one({ ...dm, run: `/bike add name:Heron kind:${kind} odometer:23,500 mi` });
  return t;
};

test("a spec is told in the unit that the question names, with the one of the manual beside it", async () => {
  const bot = await begun("chain-drive twin");
  await bot.one({ ...dm, run: "/spec what:rear axle value:98 Nm" });
  // 98 N·m / 1.3558179483 = 72.28 ft-lb (NIST SP 811, appendix B.8).
  for (const said of [{ say: "rear axle torque in ft-lb?" }, { run: "/spec what:rear axle in ft-lb" }])
    expect((await bot.one({ ...dm, ...said })).text).toContain("Rear axle: 72.3 ft-lb (98 N·m)");
  expect((await bot.one({ ...dm, say: "rear axle torque in a hurry?" })).text).not.toContain("ft-lb");
});

test.each([
  ["oil drain plug", "240 Nm"],
  ["spark plug torque", "130 Nm"],
  ["front axle torque", "400 Nm"],
])("a slip of the torque of the %s is told, and nothing is saved", async (what, value) => {
  const bot = await begun("chain-drive twin");
  const told = await bot.one({ ...dm, run: `/spec what:${what} value:${value}` });
  expect(told.text).toContain("Nothing is saved");
  expect((await bot.one({ ...dm, run: `/spec what:${what}` })).text).not.toContain(value);
});

test("an evening says every caution of what is done on it, fuel before what is only hot", async () => {
  const bot = await begun("chain-drive twin");
  const sheet = await bot.one({ ...dm, run: "/plan sheet at:24,000 mi" });
  const pages = [sheet];
  for (const action of sheet.actions.filter(({ label }) => label.startsWith("Evening"))) pages.push(await bot.one({ ...dm, press: action.id }));
  const ofFuel = pages.filter(({ text }) => text?.includes("Fuel hoses") === true);
  expect(ofFuel.length).toBeGreaterThan(0);
  for (const { text } of ofFuel) expect(text).toContain("Fuel vapour burns");
  for (const { text } of pages.filter((page) => page.text?.includes("wheel off the ground") === true)) expect(text).toContain("Lift only at the points");
});

test("what is typed at a spec is completed by its other names and past a slip too", async () => {
  // Specs are completed from the vocabulary alone.
  const ctx = { vocabulary: ENGLISH_VOCABULARY } as unknown as Ctx;
  for (const [typed, name] of [
    ["sump", "Oil drain plug"],
    ["rear axel", "Rear axle"],
    ["front tyr pres", "Front tyre pressure"],
    ["tire", "Front tyre pressure"],
  ] as const)
    expect(await completions(ctx, "spec", typed)).toContain(name);
});
