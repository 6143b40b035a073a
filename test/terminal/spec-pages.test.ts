// Two members who each name a page of a manual and differ: neither counts until one has looked at the page again, and both stay to be seen.

import { afterEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());

test("both are shown, with the way to settle it; who enters theirs anew with its page settles it", async () => {
  t = await talk("2026-11-26T09:00:00Z");
  const run = (line: string, as: string) => t.one({ as, in: "g1", run: line });
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi model:Ostler Tarn 650", "Ines");
  await run("/bike add name:Wren kind:chain-drive twin odometer:9,000 km model:Ostler Tarn 650", "Odo");
  await run("/spec what:front tyre pressure value:36 psi source:owner's manual, p. 88", "Ines");
  await t.send({ advance: "PT1M" });
  await run("/spec what:front tyre pressure value:33 psi source:workshop manual, p. 12", "Odo");
  const differ = await run("/spec what:front tyre pressure", "Ines");
  expect(differ.text).toContain("members differ, so I give none of these as the value.");
  expect(differ.text).toContain("Each names a page, so look at yours again");
  const look = differ.actions.find(({ label }) => label === "Front tyre pressure: I looked at the page");
  await t.send({ advance: "PT1M" });
  const settled = await t.one({ as: "Ines", in: "g1", fill: look?.id, fields: { value: "36 psi", manual: "owner's manual", edition: "2019", page: "88" } });
  expect(settled.text).toMatch(/^Front tyre pressure: 36 psi/u);
  const both = await run("/spec what:front tyre pressure", "Odo");
  expect(both.text).toMatch(/^Front tyre pressure: 36 psi/u);
  expect(both.text).toContain("33 psi");
});
