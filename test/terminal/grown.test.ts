// What wears and was read as more than before is asked about, and what is new is told with its depth.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("tread that grew with no new tyre on record is held until it is confirmed; with one it is logged", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, say: "front tread 2.1 mm, rear pads 3 mm" });
  await t.send({ advance: "P30D" });
  const held = await t.one({ ...dm, say: "front tread 5 mm" });
  expect(held.text).toContain("is more than the 2.1 mm of 1 April, and nothing new is on record since. Is it right?");
  expect(held.data.logged).toEqual([]);
  const yes = await t.one({ ...dm, press: button(held, "Yes, it is right") });
  expect(yes.text).toContain("front tread depth 5 mm");
  // Within what a gauge is off by it is no growth.
  expect((await t.one({ ...dm, say: "rear pads 3.6 mm" })).text).toContain("Logged");
  const fresh = await t.one({ ...dm, say: "new rear tyre 1026 at 14,300 mi, 7.5 mm" });
  expect(fresh.text).toContain("rear tread depth 7.5 mm (as left)");
  await t.send({ advance: "P30D" });
  expect((await t.one({ ...dm, say: "rear pads swapped, 5 mm on the new ones" })).text).toContain("Logged");
  await t.close();
});

test("a plug is watched by itself, and a new tyre at its own end alone closes it", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const plug = await t.one({ ...dm, say: "front tyre plugged" });
  expect(plug.data.defects).toMatchObject([{ kind: "plugged tyre", grade: "watch" }]);
  const rear = await t.one({ ...dm, say: "new rear tyre at 14,300 mi" });
  expect(rear.actions.map(({ label }: { label: string }) => label).join()).not.toContain("plugged");
  const front = await t.one({ ...dm, say: "new front tyre at 14,310 mi" });
  expect(front.data.closed).toMatchObject([{ kind: "plugged tyre", state: "closed" }]);
  await t.close();
});
