// Sets of tyres by command: what is on, what rests, and what a slip is answered.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("a road and an off-road set keep their own distance, in what is shown and in what is due", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  await run("/bike add name:Heron kind:dual-purpose single odometer:14,210 mi");
  await t.send({ advance: "P10D" });
  await t.one({ ...dm, say: "14,300 mi on Heron, tread 4.5mm front 4 mm rear" });
  await t.send({ advance: "P10D" });
  expect((await run("/bike tyres set:off-road off:road at:15,200 mi")).text).toContain(
    "Heron: off-road tyres are on, since today; 0 mi on them while they were yours.\nResting: road, 990 mi on them.",
  );
  await t.send({ advance: "P10D" });
  const back = await run("/bike tyres set:Road at:16,000 mi");
  expect(back.text).toContain("Heron: road tyres are on, since today; 990 mi on them while they were yours.\nResting: off-road, 800 mi on them.");
  expect((await run("/due")).text).toContain("Rear tread depth: due at 17,100 mi, last done at 14,300 mi, and 800 mi since were on others; 1,100 mi to go");
  expect((await t.one({ ...dm, press: button(back, "Undo") })).text).toContain("Undone for Heron: odometer 16,000 mi and Tyres fitted: road");
  expect((await run("/bike tyres")).text).toContain("off-road tyres are on");
  await t.close();
});

test("a slip is answered with what to do, and nothing is saved", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const said = async (line: string) => (await t.one({ ...dm, run: line })).text;
  await t.one({ ...dm, run: "/bike add name:Heron kind:dual-purpose single odometer:14,210 mi" });
  await t.send({ advance: "P10D" });
  expect(await said("/bike tyres")).toContain("one set of tyres as far as I know");
  expect(await said("/bike tyres set:off-road at:15,200 mi")).toBe(
    "Which tyres came off for “off-road”? Name them once, such as off:road; from then on I know.",
  );
  expect(await said("/bike tyres set:off-road off:Off-Road at:15,200 mi")).toContain("is on already");
  expect(await said("/bike tyres set:off-road off:road")).toContain("I cannot read");
  expect(await said("/bike tyres set:off-road off:road at:12,200 mi")).toContain("is below the last reading, 14,210 mi");
  expect(await said("/bike tyres set:off-road off:road at:152,000 mi")).toContain("a long way from the last reading");
  expect(await said("/bike tyres")).toContain("one set of tyres as far as I know");
  await said("/bike tyres set:off-road off:road at:14,800 mi");
  expect(await said("/bike tyres set:road off:winter at:14,900 mi")).toContain("By my record “off-road” is on.");
  expect(await said("/bike tyres set:road at:14,800 mi on:yesterday")).toMatch(/was put on later than that|is a long way|below/u);
  await t.close();
});

test("what was measured on a set is known again when it goes on again, and only what was ridden on it counts", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  await run("/bike add name:Heron kind:chain-drive twin odometer:10,000 mi");
  await t.one({ ...dm, say: "tread 4 mm rear on Heron" });
  await t.send({ advance: "P10D" });
  await run("/bike tyres set:off-road off:road at:11,000 mi");
  await t.one({ ...dm, say: "tread 6 mm rear" });
  await t.send({ advance: "P60D" });
  await run("/bike tyres set:road at:12,000 mi");
  const due = await run("/due");
  // Measured at 10,000 mi, 1,000 on it since: 1,000 of 2,000 to go, and not due now.
  expect(due.text).toContain("Rear tread depth: due at 13,000 mi, last done at 10,000 mi, and 1,000 mi since were on others; 1,000 mi to go");
  // Of the front nothing is known; it too has been ridden 1,000 mi since it came.
  expect(due.text).toContain("front tread depth at 13,000 mi");
  await t.close();
});

test("on the day of a swap, what was read before it is of the set that came off", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  await run("/bike add name:Heron kind:dual-purpose single odometer:9,000 mi");
  await run("/bike tyres set:off-road off:road at:9,000 mi");
  await t.send({ advance: "P20D" });
  await t.one({ ...dm, say: "10,100 mi on Heron, tread rear 8 mm front 7 mm" });
  await t.send({ advance: "PT10M" });
  await run("/bike tyres set:road at:10,100 mi");
  expect((await run("/tyre show bike:Heron")).text).not.toContain("8 mm");
  await t.send({ advance: "PT10M" });
  await t.one({ ...dm, say: "tread rear 3.5 mm front 4 mm on Heron" });
  expect((await run("/tyre show bike:Heron")).text).toContain("3.5 mm");
  await t.send({ advance: "PT10M" });
  await run("/bike tyres set:off-road at:10,300 mi");
  const shown = (await run("/tyre show bike:Heron")).text;
  expect(shown).toContain("8 mm");
  expect(shown).not.toContain("3.5 mm");
  await t.close();
});
