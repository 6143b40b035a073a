// Another plan that there is for a bike is offered where the plan is looked at: a starter plan that has changed since, the group's for the model. Seen side by side, taken or left.

import { afterEach, beforeEach, expect, test } from "vitest";
import type { PlanBase } from "../../src/core/plan/plan.ts";
import { planItem } from "../../src/trade/standard-items.ts";
import { STARTER_PLANS } from "../../src/trade/starter-plans.ts";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
const KIND = "chain-drive twin";
const plans = STARTER_PLANS as Record<string, PlanBase>;
const released = plans[KIND] as PlanBase;
const run = (line: string, as = "Ines") => t.one({ as, run: line });
const press = (shown: Shown, label: string, as = "Ines") => t.one({ as, press: button(shown, label) });
const labels = (shown: Shown): readonly string[] => shown.actions.map(({ label }) => label);

/** As a later release has it: the oil sooner, the valves later, no coolant hoses. */
const later = (): PlanBase => {
  const every = (miles: number, km: number) => ({ by: "interval" as const, every: { miles, km, months: null, hours: null } });
  const items = released.items.flatMap((item) => {
    if (item.key === "coolant-hoses.inspect") return [];
    if (item.key === "engine-oil.replace") return [planItem("engine-oil.replace", every(3000, 5000))];
    return item.key === "valve-clearance.adjust" ? [planItem("valve-clearance.adjust", every(10_000, 16_000))] : [item];
  });
  return { ...released, items };
};

beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
});
afterEach(async () => {
  plans[KIND] = released;
  await t.close();
});

test("a starter plan that a release has changed is offered, shown beside one's own changes, taken by a press and taken back", async () => {
  await run(`/bike add name:Heron kind:${KIND} odometer:14,210 mi`);
  await press(await run("/plan change item:oil and filter every:5,000 mi"), "Save");
  expect(labels(await run("/plan list"))).toEqual([]);
  plans[KIND] = later();
  const list = await run("/plan list");
  expect(list.text).toContain("The starter plan has changed since Heron was given it.");
  // Nothing is forced: until it is taken, the plan is the one that was given.
  expect(list.text).toContain("Valve clearance: every 8,000 mi");
  const beside = await press(list, "See the new starter plan");
  expect(beside.data).toMatchObject({
    changed: [{ name: "Valve clearance", was: { repeat: { every: { miles: 8000 } } }, will: { repeat: { every: { miles: 10_000 } } } }],
    gone: ["Coolant hoses and radiator"],
    conflicts: ["Engine oil and filter"],
    same: false,
  });
  await press(beside, "Leave it");
  expect((await run("/plan list")).text).toContain("Valve clearance: every 8,000 mi");
  const taken = await press(await press(await run("/plan list"), "See the new starter plan"), "Take that plan");
  const merged = await run("/plan list");
  expect(merged.text).toContain("Valve clearance: every 10,000 mi");
  // What the owner changed stands, though the new plan changed it too.
  expect(merged.text).toContain("Engine oil and filter: every 5,000 mi");
  expect(merged.text).not.toContain("Coolant hoses");
  expect(labels(merged)).toEqual([]);
  await press(taken, "Undo");
  expect((await run("/plan list")).text).toContain("Valve clearance: every 8,000 mi");
});

test("a new release that changes nothing for the bike is not offered", async () => {
  await run(`/bike add name:Heron kind:${KIND} odometer:14,210 mi`);
  // Only the other column: this bike goes by miles.
  const items = released.items.map((item) =>
    item.key === "valve-clearance.adjust"
      ? planItem("valve-clearance.adjust", { by: "interval", every: { miles: 8000, km: 13_000, months: null, hours: null } })
      : item,
  );
  plans[KIND] = { ...released, items };
  expect(labels(await run("/plan list"))).toEqual([]);
});

test("the group's plan is offered to the next owner of the model when the bike is added, and in the plan until it is taken; never to who shared it", async () => {
  await run(`/bike add name:Heron kind:${KIND} odometer:14,210 mi model:Ostler Tarn 650`);
  await press(await run("/plan change item:oil and filter every:3,000 mi or 12 months"), "Save");
  await run("/plan share manual:workshop manual, 2019 edition");
  expect(labels(await run("/plan list"))).toEqual([]);
  const added = await run(`/bike add name:Wren kind:${KIND} odometer:9,000 mi model:ostler tarn 650`, "Odo");
  expect(added.text).toContain("Your group has a plan for this make and model, shared by Ines, from: workshop manual, 2019 edition.");
  expect(labels(await run("/plan list", "Odo"))).toEqual(["See the group's plan"]);
  const beside = await press(added, "See the group's plan", "Odo");
  expect(beside.text).toContain(
    "Engine oil and filter\n  now every 4,000 mi or 12 months; first at 600 mi\n  there every 3,000 mi or 12 months; first at 600 mi\n",
  );
  await press(beside, "Take that plan", "Odo");
  const list = await run("/plan list", "Odo");
  expect(list.text).toContain("Engine oil and filter: every 3,000 mi or 12 months");
  expect(labels(list)).toEqual([]);
  expect((await t.one({ as: "Pia", press: button(added, "See the group's plan") })).data.refused).toBeDefined();
});

test("typing what the plan says already changes nothing, whichever column it is kept in, and says so; what uses shorten is shown beside", async () => {
  await run(`/bike add name:Heron kind:${KIND} odometer:14,210 mi`);
  for (const same of ["item:air filter when:dust every:6,000 mi", "item:oil and filter every:4,000 mi or 12 months"])
    expect((await run(`/plan change ${same}`)).data.refused).toMatchObject({ why: "already so" });
  expect((await run("/plan history")).data.edits).toEqual([]);
  await press(await run("/plan change item:air filter when:dust every:4,000 mi"), "Save");
  expect((await run("/plan compare with:as it was given")).text).toContain(
    "New air filter\n  now every 12,000 mi; with dust every 4,000 mi\n  there every 12,000 mi; with dust every 6,000 mi",
  );
});
