// One answer for what was said together: both ends of a pair of pressures, one day for several readings.

import { afterEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const press = (shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
const begun = async (): Promise<void> => {
  t = await talk("2026-11-01T09:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.send({ advance: "P25D", asleep: true });
};
const logged = (shown: Shown): readonly string[] =>
  (shown.data.readings as { place: string; typed: string; on: string }[]).map(({ place, typed, on }) => `${place} ${typed} ${on}`);

test("of a lone pair of pressures the answer for one end is that of the other", async () => {
  await begun();
  const asked = await t.one({ ...dm, say: "34/38" });
  expect(asked.text).toContain("The cold tyre pressure “34” on Heron: front or rear?");
  expect(logged(await press(asked, "front"))).toEqual(["front 34 2026-11-26", "rear 38 2026-11-26"]);
  const other = await t.one({ ...dm, say: "36/32" });
  expect(logged(await press(other, "rear"))).toEqual(["rear 36 2026-11-26", "front 32 2026-11-26"]);
});

test("a day said of the figure before is asked about once for all that stands behind it", async () => {
  await begun();
  const asked = await t.one({ ...dm, say: "oil changed yesterday, front 33 rear 36" });
  expect(asked.text).toContain("The front cold tyre pressure “33” on Heron, “yesterday”: which day is that?");
  const done = await press(asked, "26 November 2026");
  expect(logged(done)).toEqual(["front 33 2026-11-26", "rear 36 2026-11-26"]);
  expect(done.data.work).toHaveLength(1);
});
