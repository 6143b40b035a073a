// Looking ahead, and what falls due while a bike stands, as a script asks.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await run("/work did:oil and filter at:12,000 mi on:15 January 2026 bike:Heron");
  await run("/work did:brake fluid on:20 April 2025 bike:Heron");
  await run("/bike change yearly:3,650 mi");
});
afterEach(() => t.close());
const run = (line: string) => t.one({ as: "Ines", run: line });
const names = (shown: Awaited<ReturnType<typeof run>>): string[] =>
  shown.data.bikes[0].evenings.flatMap(({ items }: { items: { due: { name: string } }[] }) => items.map(({ due }) => due.name));

test("until a day: where the bike will be, what falls due when, and nothing is changed by asking", async () => {
  const before = await run("/due");
  const shown = await run("/due until:1 may");
  expect(shown.visibility).toBe("private");
  expect(shown.text).toMatch(/^Heron until 1 May, then likely at about 15,\d00 mi \(1\d,\d00 mi to 1\d,\d00 mi\)\./u);
  expect(names(shown)).toEqual(["Engine oil and filter", "Brake fluid"]);
  expect(shown.text).toContain("About 15 January (about 45 min):\n- Engine oil and filter: due on 15 January");
  expect(shown.text).toContain("About 20 April (about 1 h):\n- Brake fluid: due on 20 April");
  expect((await run("/due")).data).toEqual(before.data);
});

test("until an odometer, or so far on, in the unit of the dial or another", async () => {
  const at = (await run("/due until:16,000 mi")).data.bikes[0];
  expect([at.byDistance, at.ridden.likely / 16_093_440]).toEqual([true, 16_000]);
  const more = (await run("/due until:+1,790 mi")).data.bikes[0];
  expect(more.ridden.likely).toBe(at.ridden.likely);
  expect((await run("/due until:+1000 km")).data.bikes[0].ridden.likely).toBe(14_210 * 16_093_440 + 1000 * 10_000_000);
});

test("several bikes: so far on for each, but an odometer is one bike's", async () => {
  await run("/bike add name:Wren kind:belt-drive cruiser odometer:9,000 mi");
  expect((await run("/due until:+500 mi")).data.bikes.map(({ ridden }: { ridden: { likely: number } }) => ridden.likely / 16_093_440)).toEqual([14_710, 9500]);
  expect((await run("/due until:18,000 mi")).data.refused).toMatchObject({ why: "which bike" });
  expect((await run("/due until:18,000 mi bike:Wren")).data.bikes).toHaveLength(1);
});

test.each([
  ["until:banana", "not read"],
  ["until:yesterday", "past"],
  ["until:25 November 2026", "past"],
  ["until:spring 2031", "too far"],
  ["until:12,000 mi", "past"],
])("%s is refused with a way on", async (option, because) => {
  const shown = await run(`/due ${option}`);
  expect(shown.data.refused).toMatchObject({ why: "not ahead", because });
  expect(shown.text).toContain("Type a day such as 1 June");
});

test("oil that falls due in January while the bike stands is offered at lay-up, and in spring", async () => {
  const laid = await run("/bike change state:laid up");
  const offer = "By 1 March 2027, while it stands, this falls due: engine oil and filter. Do it before it stands, or in spring before the first ride.";
  expect(laid.text).toContain(offer);
  expect((await run("/due")).text).toContain(offer);
  expect((await run("/due until:midsummer")).text).toContain("All of this can be done while it stands.");
  await run("/work did:oil and filter at:14,210 mi bike:Heron");
  expect((await run("/due")).text).not.toContain("while it stands, this");
});

test("a bike of which nothing is known is not said to be in order, and as many items are unknown as the due list says", async () => {
  await run("/bike add name:Otter kind:chain-drive twin odometer:14,210 mi");
  const due = await run("/due bike:Otter");
  const unknown = Number(/^No record: (\d+)$/mu.exec(due.text ?? "")?.[1]);
  expect((await run("/due until:+1,500 mi bike:Otter")).text).toContain(`but of ${unknown} items nothing is known, so I cannot say for them`);
  const midsummer = await run("/due until:midsummer bike:Otter");
  expect(midsummer.text).toContain(`Of ${unknown - names(midsummer).length} more items nothing is known`);
});
