// A chain's limit in per cent, as the trade prints it. 20 pitches of 5/8 in (ISO 606) are 317.5 mm: 1.5 % longer is 322.3 mm, 1 % 320.7.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

test("a limit typed in per cent is kept as typed, and a chain is judged by it", async () => {
  const t = await talk();
  const run = async (line: string) => (await t.one({ as: "Ines", in: "dm", run: line })).text ?? "";
  const say = async (text: string) => (await t.one({ as: "Ines", in: "dm", say: text })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:8,000 mi");
  expect(await run("/spec what:chain length limit value:1.5 % source:manual, p. 60")).toContain("Chain length limit: 1.5 %. Manual, p. 60");
  expect(await say("chain 323 mm over 20 pitches")).toMatch(/1\.7 % longer than new: beyond limit.* \(322\.3 mm, manual, p\. 60\)/u);
  expect(await say("chain 319 mm over 20 pitches")).toContain("within");
  // Entered later, it judges what stands read.
  expect(await run("/spec what:chain length limit value:0.5 %")).toContain("319 mm");
  await t.close();
});

test("a per cent that no manual prints is refused with those that are", async () => {
  const t = await talk();
  const run = async (line: string) => (await t.one({ as: "Ines", in: "dm", run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:8,000 mi");
  expect(await run("/spec what:chain length limit value:15 %")).toBe(
    "Chain length limit: no manual prints “15 %”; published limits run from 1 to 3 %. Nothing is saved. Look again at the page.",
  );
  expect(await run("/spec what:chain length limit")).toContain("nothing is entered");
  await t.close();
});
