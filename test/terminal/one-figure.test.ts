// A manual that gives one figure gives no window: the one taken is named as what it is.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

test("the figure is the member's own, the window around it is said to be taken, and the charging verdict names its side", async () => {
  const t = await talk();
  const dm = { as: "Ines", in: "dm" };
  const run = (line: string) => t.one({ ...dm, run: line });
  const say = async (line: string) => (await t.one({ ...dm, say: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await run("/spec what:chain slack value:30 mm");
  const taken = "(30 mm by your own figure; 25 mm to 35 mm is taken around it, common practice, until you enter the manual's window).";
  expect(await say("chain slack 32 mm upright")).toContain(`Chain slack 32 mm: within ${taken}`);
  expect(await say("chain slack 37 mm upright")).toContain(`Chain slack 37 mm: beyond limit, too slack ${taken}`);
  expect(await say("charging 13.1 V at 5000 rpm")).toContain("beyond limit, too low (13.5 V to 14.8 V, common practice)");
  expect(await say("charging 15.3 V at 5000 rpm")).toContain("beyond limit, too high (13.5 V to 14.8 V, common practice)");
  await t.close();
});
