// What was found stands until something that can be judged says otherwise: a reading of which nothing can be told takes nothing back.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const DM = { as: "Ines", in: "dm" };

async function bike(...first: readonly string[]) {
  const t = await talk();
  await t.one({ ...DM, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 km" });
  for (const run of first) await t.one({ ...DM, run });
  const status = async (item: string): Promise<string> =>
    (await t.one({ ...DM, run: "/due" })).data.bikes[0].dues.find((due: { item: string }) => due.item === item).status;
  return { t, status };
}

test.each([[""], ["P2D"]])("a battery read low and rested stays due after a reading straight off the charger (%s later)", async (later) => {
  const { t, status } = await bike();
  await t.one({ ...DM, say: "battery 12.0 V rested 8 h" });
  expect(await status("battery.test")).toBe("due");
  if (later !== "") await t.send({ advance: later });
  expect((await t.one({ ...DM, say: "battery 12.9 V straight off the charger" })).text).toContain("cannot tell");
  expect(await status("battery.test")).toBe("due");
  if (later !== "") await t.send({ advance: later });
  await t.one({ ...DM, say: "battery 12.8 V rested 8 h" });
  expect(await status("battery.test")).not.toBe("due");
  await t.close();
});

test("a tight valve found cold stays due after another was read hot, and one read hot itself takes nothing back", async () => {
  const { t, status } = await bike("/spec what:intake valve clearance value:0.10-0.20 mm", "/spec what:exhaust valve clearance value:0.22-0.31 mm");
  await t.one({ ...DM, say: "intake valve 0.15 mm cold, exhaust valve 0.18 mm cold" });
  expect(await status("valve-clearance.adjust")).toBe("due");
  await t.send({ advance: "P1D" });
  await t.one({ ...DM, say: "exhaust valve 0.25 mm hot" });
  expect(await status("valve-clearance.adjust")).toBe("due");
  await t.send({ advance: "P1D" });
  await t.one({ ...DM, say: "exhaust valve 0.25 mm cold" });
  expect(await status("valve-clearance.adjust")).not.toBe("due");
  await t.close();
});

test("how a reading was taken stays with it: another taken otherwise neither changes it nor is a habit", async () => {
  const { t, status } = await bike("/spec what:intake valve clearance value:0.10-0.20 mm");
  await t.one({ ...DM, say: "brake fluid front full, upright, bars straight" });
  await t.one({ ...DM, say: "brake fluid rear below min, bars straight" });
  expect(await status("brake-fluid.inspect")).toBe("due");
  await t.send({ advance: "P1D" });
  await t.one({ ...DM, say: "front brake fluid at the low mark, on the side stand, bars straight" });
  expect(await status("brake-fluid.inspect")).toBe("due");
  await t.one({ ...DM, say: "intake valve 0.15 mm cold" });
  await t.one({ ...DM, say: "intake valve 0.15 mm hot" });
  expect((await t.one({ ...DM, say: "intake valve 0.15 mm" })).text).toContain("Intake valve clearance 0.15 mm: within");
  await t.close();
});

test("what its owner watches is not to be ridden on again once it reads worse, and not before", async () => {
  const { t } = await bike();
  const worn = await t.one({ ...DM, say: "rear tread 0.5 mm" });
  expect(worn.data.defects).toMatchObject([{ grade: "do not ride" }]);
  await t.one({ ...DM, press: button(worn, "Watch") });
  await t.send({ advance: "P1D" });
  expect((await t.one({ ...DM, say: "rear tread 0.5 mm" })).data.defects).toEqual([]);
  expect((await t.one({ ...DM, say: "rear tread 0.3 mm" })).data.defects).toMatchObject([{ grade: "do not ride", words: "rear tread 0.3 mm" }]);
  expect((await t.one({ ...DM, run: "/due" })).text).toContain("Do not ride: “rear tread 0.3 mm”");
  await t.close();
});

test("a defect that was a misreading says that what was read counts until it is read right", async () => {
  const { t } = await bike();
  const thin = await t.one({ ...DM, say: "front pads 0.5 mm" });
  const closed = await t.one({ ...DM, fill: button(thin, "It was nothing"), fields: { why: "misread the ruler" } });
  expect(closed.text).toContain("What was read still counts until the right figure is logged: the next reading there takes its place.");
  const asked = await t.one({ ...DM, say: "front pads 3.5 mm" });
  await t.one({ ...DM, press: button(asked, "Yes, it is right") });
  expect((await t.one({ ...DM, run: "/due" })).text).not.toContain("0.5 mm");
  await t.close();
});
