// What was measured, told in words that a rider can act on: no figure rounded away, nothing called sound without its figure.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
const withHeron = async (clock = "2026-03-01T10:00:00Z") => {
  const t = await talk(clock);
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  const said = async (input: object) => (await t.one({ ...dm, ...input })).text ?? "";
  return { t, say: (text: string) => said({ say: text }), run: (line: string) => said({ run: line }) };
};

test("a figure that is asked about is offered as it was typed", async () => {
  const { t } = await withHeron();
  const asked = await t.one({ ...dm, say: "Heron battery 3.75 13.9" });
  expect(asked.actions.map(({ label }) => label)).toEqual(expect.arrayContaining(["3.75", "13.9"]));
  await t.close();
});

test("a chain is never said to be a share below nothing longer", async () => {
  const { t, say } = await withHeron();
  // 20 pitches of 5/8 in are 317.5 mm new (ISO 606).
  expect(await say("Heron chain 317 mm over 20 pitches")).toContain("no longer than new (shorter than a new chain by what a rule is off): within");
  expect(await say("Heron chain 317.5 mm over 20 pitches")).toContain("317.5 mm, no longer than new: within");
  expect(await say("Heron chain 318.5 mm over 20 pitches")).toContain("0.3 % longer than new: within");
  await t.close();
});

test("what a sound tyre loses is told with its figure; none lost is told so", async () => {
  const { t, say, run } = await withHeron();
  await say("Heron rear 2.9 bar front 2.5 bar, 20 °C");
  await t.send({ advance: "P75D" });
  await say("Heron rear 2.7 bar front 2.5 bar, 20 °C");
  await t.send({ advance: "P75D" });
  await say("Heron rear 2.5 bar front 2.5 bar, 20 °C");
  const shown = await run("/tyre show");
  // 0.4 bar in 150 days is 0.08 bar in 30; a sound tyre loses 14 kPa, 0.14 bar (common practice).
  expect(shown).toContain(
    "Rear tyre: loses about 0.08 bar in 30 days over 150 days once the weather is taken out, within what a sound tyre loses (up to 0.14 bar in 30 days, common practice). Top it up cold.",
  );
  expect(shown).toContain("Front tyre: no loss over 150 days once the weather is taken out.");
  await t.close();
});

test("resting volts that fall on a bike that is not laid up give the day to charge it by", async () => {
  const { t, say, run } = await withHeron("2026-11-10T10:00:00Z");
  for (const volts of ["12.80", "12.75", "12.70", "12.65"]) {
    if (volts === "12.70") expect(await run("/due bike:Heron"), "two readings").not.toContain("charge it");
    await say(`Heron battery ${volts} V rested`);
    await t.send({ advance: "P14D" });
  }
  expect(await run("/due bike:Heron")).toContain(
    "The battery's volts at rest fall over 4 readings: charge it by about 3 February if it is not ridden long enough before.",
  );
  await t.close();
});

test("a bike laid up is asked about when its odometer runs on, and says that no distance is forecast while it stands", async () => {
  const { t, say, run } = await withHeron("2026-08-10T10:00:00Z");
  for (const miles of ["14,400", "14,700", "15,000", "15,300"]) {
    await say(`${miles} mi on Heron`);
    await t.send({ advance: "P14D" });
  }
  await run("/bike change bike:Heron state:laid up");
  await t.send({ advance: "P60D" });
  const asked = await t.one({ ...dm, say: "17,300 mi on Heron" });
  expect(asked.text).toContain(
    "The odometer “17,300 mi” on Heron is a long way from the last one, and the bike is laid up. The last one was 15,300 mi, 21 September. Is it right? If it rides again, say so too: /bike change state:riding.",
  );
  expect(asked.actions.map(({ label }) => label)).toContain("Yes, it is right");
  // A fortnight was still ridden before it was laid up.
  expect(await run("/due bike:Heron until:1 June")).toContain(
    "Heron until 1 June: laid up, so no distance is forecast while it stands. As ridden until then it likely stands at about 15,700 mi (15,400 mi to 16,500 mi)",
  );
  expect(await run("/reading picture:odometer")).toContain("It is laid up: while it stands no distance is forecast. As ridden until then");
  await say("15,300 mi on Heron");
  expect(await run("/due bike:Heron until:1 June")).toContain("then at 15,300 mi still: it is laid up, and while it stands no distance is forecast.");
  expect(await run("/reading picture:odometer")).toContain("It is laid up: while it stands no distance is forecast, and it shows 15,300 mi still on");
  await t.close();
});

test("a chain's slack at two spots counts at the tightest, and a wide spread is told as the wear that it mostly is (common practice, from memory)", async () => {
  const { t, say, run } = await withHeron();
  await run("/spec what:chain slack value:25-35 mm");
  const spread = "Chain slack differs by 17 mm between its tightest and its slackest spot: so much mostly means a worn chain";
  for (const text of [
    "chain slack 28-45 mm upright",
    "chain slack 28 mm tight spot 45 mm loose spot",
    "chain slack 28 mm at the tightest spot, 45 mm at the loosest",
    "Kettendurchhang 28 mm an der straffsten Stelle, 45 mm an der lockersten",
  ]) {
    const said = await say(`${text} on Heron`);
    expect(said, text).toContain("chain slack 28 mm (the least of 28 and 45");
    expect(said, text).toContain(spread);
  }
  expect(await say("chain slack 28-37 mm on Heron")).not.toContain("differs by");
  // Of two figures with no word of where, neither is taken.
  expect(await say("chain slack 45 mm, 30 mm on Heron")).toContain("which figure do you mean?");
  await t.close();
});

test("a clearance typed as a range is asked about, and is none of two valves; what was found and left at one valve is of one", async () => {
  const { t, say, run } = await withHeron();
  for (const text of ["intake 0.10 to 0.15 mm", "exhaust valves 0.20 to 0.25 mm cold", "Einlass 0,10 bis 0,15 mm"])
    expect(await say(`${text} on Heron`), text).toContain("which figure do you mean?");
  expect(await say("adjusted the valves intake 0.10 to 0.15 mm on Heron")).toContain("0.1 mm (as found) and intake valve clearance 0.15 mm (as left)");
  const worked = await run("/work did:valve clearance found:0.09 mm intake 1 left:0.15 mm bike:Heron");
  expect(worked).toContain("intake 1 valve clearance 0.09 mm (as found, cold) and intake 1 valve clearance 0.15 mm (as left, cold)");
  await t.close();
});

test("a clearance whose own figure is for a warm engine is not told to be measured cold", async () => {
  const { t, say, run } = await withHeron();
  await run("/spec what:intake valve clearance value:0.10-0.20 mm warm");
  const said = await say("valve clearance intake 0.15 mm on Heron");
  expect(said).toContain("How to measure it: Engine warm, as your own figure asks");
  expect(said).not.toContain("stone cold");
  await t.close();
});

test("new pads close nothing that was found on a caliper or a disc: it is asked, and stays first until then", async () => {
  const { t, say, run } = await withHeron();
  for (const wrong of ["front caliper is seized", "front caliper cracked", "front brake disc cracked"]) {
    await say(`${wrong} on Heron`);
    const changed = await say("changed the front pads on Heron");
    expect(changed, wrong).toContain(`Does this close: “${wrong}”?`);
    expect(changed, wrong).not.toContain("is closed by that work");
  }
  expect(await run("/due bike:Heron")).toContain("Do not ride: “front caliper is seized”");
  await say("front pads oily on Heron");
  expect(await say("changed the front pads on Heron")).toContain("“front pads oily” is closed by that work");
  await t.close();
});
