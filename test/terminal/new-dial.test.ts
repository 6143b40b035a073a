// A new dial by command and by answer: the bike's own distance goes on by what was ridden, whoever forgot to say how the old one ended.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function bike(odometer: string) {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  await run(`/bike add name:Heron kind:chain-drive twin odometer:${odometer}`);
  await t.send({ advance: "P9D" });
  /** What the bike has ridden, in tenths of a millimetre: the dial's figure and what the dial began with. */
  const ridden = async (): Promise<number> => {
    const [shown] = (await run("/due")).data.bikes;
    return shown.odometer.figure * (shown.unit === "mi" ? 16_093_440 : 10_000_000) + shown.offset;
  };
  return { t, run, ridden };
}
const MILE = 16_093_440;

test("rolled over: the old figures ended at 100,000, and what was ridden since counts", async () => {
  const { t, run, ridden } = await bike("99,900 mi");
  const said = await run("/bike odometer now:25 mi why:rolled over");
  expect(said.text).toContain("Heron's new odometer is noted; the bike's own distance goes on. The old figures ended at 100,000 mi.");
  expect(await ridden()).toBe(100_025 * MILE);
  const { text } = await run("/due");
  expect(text).toContain("next at 4,000 mi");
  // The mark at the roll-over itself, which the dial showed as noughts.
  expect(text).toContain("was due at 100,000 mi (ridden, where this dial began)");
  expect(text).not.toContain("at 0 mi");
  await t.one({ ...dm, press: button(said, "Undo") });
  expect(await ridden()).toBe(99_900 * MILE);
  // A dial that was nowhere near its end did not roll over.
  await run("/bike add name:Otter kind:chain-drive twin odometer:14,210 mi");
  expect((await run("/bike odometer bike:Otter now:25 mi why:rolled over")).data.refused).toMatchObject({ why: "implausible jump" });
  await t.close();
});

test("a low figure written in a message can be answered so, where the dial was near its end", async () => {
  const { t, ridden } = await bike("99,900 mi");
  const asked = await t.one({ ...dm, say: "25 mi on Heron" });
  await t.one({ ...dm, press: button(asked, "It rolled over to zero") });
  expect(await ridden()).toBe(100_025 * MILE);
  await t.close();
  const far = await bike("14,820 mi");
  const other = await far.t.one({ ...dm, say: "25 mi on Heron" });
  expect(other.actions.map(({ label }: { label: string }) => label)).not.toContain("It rolled over to zero");
  await far.t.close();
});

test("another unit on the same dial shows the same distance, none is lost between the last reading and now", async () => {
  const { t, run, ridden } = await bike("14,820 mi");
  const said = await run("/bike odometer now:23,979 km why:unit changed");
  expect(said.text).toContain("It shows the same distance as the old one at 14,900 mi.");
  expect(await ridden()).toBe(23_979 * 10_000_000);
  await t.close();
});

test("an old dial of which nobody said how it ended is taken at its last reading, and that is said", async () => {
  const { t, run, ridden } = await bike("14,820 mi");
  const said = await run("/bike odometer now:12 mi");
  expect(said.text).toContain("The old one is taken to have ended at its last reading, 14,820 mi; if it showed more, undo this");
  expect(await ridden()).toBe(14_820 * MILE);
  await t.one({ ...dm, press: button(said, "Undo") });
  expect((await run("/bike odometer now:12 mi last:14,900 mi")).text).not.toContain("is taken to have ended");
  expect(await ridden()).toBe(14_900 * MILE);
  await t.close();
});

test("the service at which the dial rolled over is named by what was ridden, never as the service at nought", async () => {
  const { t, run } = await bike("99,700 mi");
  await run("/bike odometer bike:Heron last:99,999 mi now:10 mi why:rolled over");
  const sheet = await run("/plan sheet bike:Heron");
  expect(sheet.text).toContain("Heron, the 100,000 mi (ridden, where this dial began) service: ");
  expect(sheet.data.items).toBeGreaterThan(5);
  await t.close();
});
