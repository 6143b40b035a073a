// A job with what went into it, by message and by command; what is topped up restarts no clock.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const DM = { as: "Ines", in: "dm" };

test("quantities, cost, a tyre's code and new pads are kept with the job and said back", async () => {
  const t = await talk();
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const oil = await t.one({ ...DM, say: "did the oil and filter at 14,820, 3.2 L 20W-50, 48.60" });
  expect(oil.text).toBe("Heron: Engine oil and filter, done today at 14,820 mi, with 3.2 L 20W-50, for 48.60. Recorded.");
  const tyre = await t.one({ ...DM, say: "new rear tyre 3725 at 14,830" });
  expect(tyre.data.work[0].detail.parts).toEqual([{ words: "rear tyre", item: "rear-tyre.replace", made: "3725" }]);
  expect(tyre.text).toContain("with rear tyre made in week 37 of 2025");
  const pads = await t.one({ ...DM, say: "front pads swapped, 5 mm on the new ones" });
  expect(pads.data.readings).toMatchObject([{ kind: "pad thickness", place: "front", value: 5, unit: "mm" }]);
  expect(pads.data.work[0].items).toMatchObject([{ item: "front-pads.measure", left: [{ value: 5, unit: "mm", place: "front" }] }]);
  const command = await t.one({ ...DM, run: "/work did:coolant by:Fernlea Motors cost:380 EUR note:hose clips look tired with:1.8 L, new cap" });
  expect(command.data.work[0]).toMatchObject({
    ...{ doneBy: "Fernlea Motors", note: "hose clips look tired" },
    detail: { cost: { minor: 38_000, currency: "EUR" }, quantities: [{ value: 1.8, unit: "L" }], parts: [{ words: "new cap" }] },
  });
  const wrong = await t.one({ ...DM, run: "/work did:coolant cost:plenty of it" });
  expect(wrong.text).toBe("I cannot read “plenty of it” as what it cost. Type it as 48.60, or with its currency: 48.60 EUR.");
  await t.close();
});

test("brake fluid topped up asks for a look at the pads and restarts no clock of the fluid", async () => {
  const t = await talk();
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const fluid = async () => (await t.one({ ...DM, run: "/due" })).data.bikes[0].dues.find((due: { item: string }) => due.item === "brake-fluid.replace").status;
  const before = await fluid();
  const topped = await t.one({ ...DM, say: "topped up the front fluid" });
  expect(topped.text?.split("\n").slice(0, 2)).toEqual([
    "Heron: Brake fluid level, topped up today. Recorded.",
    "Fluid that has sunk is mostly worn pads, else a leak: look at both. A top-up restarts no clock.",
  ]);
  expect(await fluid()).toBe(before);
  await t.close();
});

test("a fluid of another family in the brakes: do not ride, and it mends nothing; one that mixes is worth the lower class", async () => {
  const t = await talk();
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...DM, say: "front brake fluid below the low mark" });
  for (const say of ["topped up the front brake fluid with DOT 5", "topped up the brake fluid with dot5", "topped up the brake fluid, 20 ml DOT 5"]) {
    const wrong = await t.one({ ...DM, say });
    expect(wrong.text).toContain("Do not ride: DOT 5 is silicone, Heron is entered with DOT 4, glycol, and the two never mix");
    expect(wrong.data.fluids).toMatchObject([{ inside: "DOT 4", added: "DOT 5", worth: null }]);
    expect(wrong.data).toMatchObject({ closed: [], mayClose: [] });
  }
  expect((await t.one({ as: "Ines", say: "topped up the front brake fluid with DOT 5" })).text).toContain("Something on Heron wants a look");
  // 49 CFR 571.116 S5.1.2: DOT 3 boils from 140 °C wet.
  const lower = await t.one({ ...DM, say: "topped up the brake fluid with DOT 3" });
  expect(lower.text).toContain("DOT 3 mixes with DOT 4; count the mix as DOT 3, which boils from 140 °C");
  expect((await t.one({ ...DM, say: "topped up the brake fluid with DOT 4" })).data.fluids).toEqual([]);
  expect((await t.one({ ...DM, say: "changed the brake fluid, DOT 5.1 at 14,310" })).data.fluids).toEqual([]);
  await t.close();
});
