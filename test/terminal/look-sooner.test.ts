// A valve near the tight end of its window: an earlier look is offered, shown before it is saved, and can be taken back.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ as: "Ines", run: "/spec what:intake valve clearance value:0.10-0.20 mm source:manual, p. 88" });
});
afterEach(() => t.close());

const say = (text: string) => t.one({ as: "Ines", in: "dm", say: text });
const press = (shown: Shown, label: string) => t.one({ as: "Ines", in: "dm", press: shown.actions.find((each) => each.label === label)?.id ?? `no ${label}` });
const plan = async () => (await t.one({ as: "Ines", run: "/plan list" })).text?.split("\n").find((line) => line.includes("Valve clearance:"));
const SOONER = "Check valve clearance twice as often";

test("near the tight end: offered, shown beside what is in force, saved, taken back", async () => {
  expect(await plan()).toContain("every 8,000 mi");
  const said = await say("intake 1 0.11 mm, intake 2 0.12 mm, cold");
  expect(said.actions.filter(({ label }) => label === SOONER)).toHaveLength(1);
  const shown = await press(said, SOONER);
  expect(shown.text).toContain("every 4,000 mi");
  expect(await plan()).toContain("every 8,000 mi");
  const saved = await press(shown, "Save");
  expect(saved.data.saved).toBe(true);
  expect(await plan()).toContain("every 4,000 mi");
  await press(saved, "Undo");
  expect(await plan()).toContain("every 8,000 mi");
});

test("near the tight end by a limit that is entered later: offered under the spec", async () => {
  await say("exhaust 1 0.21 mm, cold");
  const entered = await t.one({ as: "Ines", in: "dm", run: "/spec what:exhaust valve clearance value:0.20-0.30 mm source:manual, p. 88" });
  expect(entered.text).toContain("near limit");
  expect(entered.actions.filter(({ label }) => label === SOONER)).toHaveLength(1);
  expect((await press(entered, SOONER)).text).toContain("every 4,000 mi");
  const wider = await t.one({ as: "Ines", in: "dm", run: "/spec what:exhaust valve clearance value:0.15-0.27 mm source:manual, p. 90" });
  expect(wider.actions.map(({ label }) => label)).not.toContain(SOONER);
});

test.each([
  ["in the middle", "intake 1 0.15 mm cold"],
  ["near the wide end, where a valve gets no worse", "intake 1 0.19 mm cold"],
  ["too tight: that is adjusted now", "intake 1 0.07 mm cold"],
])("%s, nothing is offered", async (_where, text) => {
  expect((await say(text)).actions.map(({ label }) => label)).not.toContain(SOONER);
});
