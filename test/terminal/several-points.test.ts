// Several pads of one end, and what was found of the old part and left of the new one, in one message.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
const say = (text: string) => t.one({ as: "Ines", in: "dm", say: text });
const run = (line: string) => t.one({ as: "Ines", in: "dm", run: line });
beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
});
afterEach(() => t.close());

test.each([
  ["front pads left 3 right 0.8 inner 2.5", ["front left pad thickness 3 mm", "front right pad thickness 0.8 mm", "front pad thickness 2.5 mm (inner)"]],
  ["front pads 3 left 0.8 right 2.5 inner", ["front left pad thickness 3 mm", "front right pad thickness 0.8 mm", "front pad thickness 2.5 mm (inner)"]],
  ["rear pads inner 3, outer 2.8", ["rear pad thickness 3 mm (inner)", "rear pad thickness 2.8 mm (outer)"]],
  ["front tread found 0.8 left 5 mm", ["front tread depth 0.8 mm (as found)", "front tread depth 5 mm (as left)"]],
  ["new rear pads, found 1.2 mm, left 5 mm", ["rear pad thickness 1.2 mm (as found)", "rear pad thickness 5 mm (as left)", "Rear brake pads, done today"]],
  [
    "new front tyre fitted, found 0.9 mm left 4.5 mm",
    ["front tread depth 0.9 mm (as found)", "front tread depth 4.5 mm (as left)", "New front tyre, done today"],
  ],
  [
    "brake fluid front found at the low mark, left at the full mark",
    ["front brake fluid level at the low mark (as found)", "front brake fluid level at the full mark (as left)"],
  ],
])("%s", async (text, readings) => {
  const logged = await say(text);
  expect(logged.react).toBe("logged");
  for (const reading of readings) expect(logged.text).toContain(reading);
});

test("what was left is judged, and nothing of what was found is due any more", async () => {
  for (const text of ["front tread found 0.8 left 5 mm", "new rear pads, found 0.6 mm, left 5 mm"]) expect((await say(text)).text).not.toContain("Do not ride");
  expect((await run("/due")).text).not.toMatch(/limit|Do not ride/u);
});

test.each([
  ["front pads 3 mm", "front pads 0.8 mm and 2.5 mm"],
  ["front pads left 3 right 0.8 inner 2.5", "front pads 1.4 mm"],
  ["rear tread 0.6 mm", "rear tread 1.4 mm"],
])("of what was measured of one end on one day the least stands: %s, then %s", async (first, then) => {
  await say(first);
  await say(then);
  expect((await run("/due")).text).toMatch(/Due: 1\n- .*: (?:front (?:right )?pad thickness 0\.8 mm|rear tread depth 0\.6 mm), read today: beyond limit/u);
});
