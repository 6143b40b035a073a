// A drum is worked by a rod or a cable: nothing of it pumps firm. What its bike is told is the free play, the torque arm and the shoes centred (common practice); discs keep the pump.

import { afterEach, expect, test } from "vitest";
import { type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });

const HYDRAULIC = /pump|firm|bleed|fluid|caliper|\bpads?\b|\bdiscs?\b/iu;
/** Every evening of a sheet, as told. */
const evenings = async (line: string): Promise<readonly string[]> => {
  const first = await run(line);
  const pages: Shown[] = [first];
  for (const { id, label } of first.actions) if (label.startsWith("Evening")) pages.push(await t.one({ ...dm, press: id }));
  return pages.map(({ text }) => text ?? "");
};

test("all drums: no evening of any sheet and no job says a hydraulic word of the brakes", async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Bess kind:classic odometer:9,900 km");
  const told = (await evenings("/plan sheet at:10,000 km")).join("\n");
  expect(told).toContain("Front wheel in: torque arm fastened, the brake held on while the axle is tightened to its torque so that the shoes centre");
  expect(told).toContain("Each drum brake, before the bike moves: set its free play, see that the wheel turns freely, and that the brake holds it.");
  const hydraulic = told.split("\n").filter((line) => HYDRAULIC.test(line));
  expect(hydraulic).toEqual([]);
  await run("/spec set:front axle torque value:60 Nm source:Handbook, p. 12");
  const shoes = await run("/work did:front brake shoes outcome:replaced at:9,900 km");
  expect(shoes.text).not.toMatch(/pump/iu);
});

test("a drum behind and a disc in front: each is told its own", async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Mink kind:small commuter odometer:5,900 km");
  const told = (await evenings("/plan sheet at:6,000 km")).join("\n");
  expect(told).toContain("Rear wheel in: torque arm fastened, the brake held on");
  expect(told).toContain("The front brake, before the bike moves: pump it hard until it is firm.");
  expect(told).toContain("The rear drum brake likewise: set its free play");
  expect(told).not.toMatch(/Rear wheel in:[^\n]*pump/u);
});

test("discs at both ends are pumped", async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
  expect((await evenings("/plan sheet")).join("\n")).toContain("Pump the brake lever and pedal hard until they are firm, before the bike moves.");
});
