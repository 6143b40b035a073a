// A brake fluid's age by its class. Checked against: the classes of 49 CFR 571.116; that silicone is kept longer is common practice.

import { afterEach, beforeEach, expect, test } from "vitest";
import { FLUID_CLASSES } from "../../src/trade/fluids.ts";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ as: "Ines", in: "dm", say: "changed the brake fluid on 1 June 2024" });
});
afterEach(() => t.close());

const run = (line: string) => t.one({ as: "Ines", run: line });
const fluidLine = async () => (await run("/plan list")).text?.split("\n").find((line) => line.includes("Brake fluid:"));
const duePart = async () => (await run("/due")).text?.split("\n").find((line) => line.includes("Brake fluid"));

test.each(["DOT 4", "DOT 5.1", "DOT 3"] as const)("%s is due after two years", async (fluid) => {
  if (fluid !== "DOT 4") await run(`/bike fitted part:brake fluid choice:${fluid}`);
  expect(await fluidLine()).toContain("every 2 years");
  expect(await duePart()).toContain("was due on 1 June");
});

test("silicone is due after four, and says by which class; the table says the same", async () => {
  await run("/bike fitted part:brake fluid choice:DOT 5");
  expect(await fluidLine()).toContain(`every ${FLUID_CLASSES["DOT 5"].months / 12} years`);
  expect(await duePart()).toContain("1 June 2028");
  expect((await run("/spec what:DOT 5")).text).toContain(`Changed every ${FLUID_CLASSES["DOT 5"].months / 12} years`);
});

test("an interval of the member's own stands, whatever is in the circuit", async () => {
  const preview = await run("/plan change item:brake fluid every:12 months");
  await t.one({ as: "Ines", press: preview.actions.find(({ label }) => label === "Save")?.id ?? "" });
  await run("/bike fitted part:brake fluid choice:DOT 5");
  expect(await fluidLine()).toContain("every 12 months");
});
