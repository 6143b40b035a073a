// Too little is known of a new bike: its group's median year serves, and is named.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

test("a new rider's likely dates come from what the group's bikes ride in a year, until they say their own", async () => {
  const t = await talk("2025-01-01T10:00:00Z");
  for (const [as, name] of [
    ["Ines", "Heron"],
    ["Odo", "Bramble"],
    ["Una", "Wren"],
  ] as const)
    await t.one({ as, run: `/bike add name:${name} kind:chain-drive twin odometer:10,000 mi` });
  await t.send({ advance: "P365D" });
  for (const [as, at] of [
    ["Ines", "11,000 mi"],
    ["Odo", "13,000 mi"],
    ["Una", "19,000 mi"],
  ] as const)
    await t.one({ as, say: `${at} today` });
  await t.one({ as: "Mara", run: "/bike add name:Otter kind:chain-drive twin odometer:14,210 mi" });
  expect((await t.one({ as: "Mara", run: "/due" })).data.bikes[0].basis).toMatchObject({ from: "group median" });
  await t.one({ as: "Mara", run: "/work did:oil and filter at:14,210 mi" });
  // 3,000 in 365 days are 3,002 in a year of 365.25.
  expect((await t.one({ as: "Mara", run: "/due" })).text).toContain("Likely dates from the group's usual 3,002 mi a year.");
  await t.one({ as: "Mara", run: "/bike change yearly:6,000 mi" });
  expect((await t.one({ as: "Mara", run: "/due" })).text).toContain("Likely dates from your own figure, 6,000 mi a year.");
  // Shown in no group of theirs, it says nothing.
  await t.one({ as: "Lone", in: "dm", run: "/bike add name:Finch kind:chain-drive twin odometer:14,210 mi" });
  expect((await t.one({ as: "Lone", in: "dm", run: "/due" })).data.bikes[0].basis).toEqual({ from: "nothing" });
  await t.close();
});
