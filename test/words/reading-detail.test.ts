// A reading is said back as finely as it was typed, with what was said beside it.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

test("clearances, points across, pitches and levels are said back as they were typed", async () => {
  const t = await talk();
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const first = async (say: string): Promise<string> => (await t.one({ as: "Ines", in: "dm", say })).text?.split("\n")[0] ?? "";
  expect(await first("intake 0.09 mm found, 0.15 left")).toBe(
    "Heron: intake valve clearance 0.09 mm (as found) and intake valve clearance 0.15 mm (as left), today. Logged.",
  );
  expect(await first("rear tread 4/32, 5/32, 6/32")).toContain("rear tread depth 0.125 in (the least of 0.125, 0.156 and");
  expect(await first("20 links 318.2 mm")).toBe("Heron: chain length 318.2 mm (over 20 pitches), today. Logged.");
  expect(await first("oil between the marks")).toBe("Heron: oil level between the marks, today. Logged.");
  expect(await first("14.2 V at 5,000 rpm")).toBe("Heron: charging voltage 14.2 V (at 5,000 rpm), today. Logged.");
  await t.close();
});
