// Drum brakes: the lining of shoes is measured, judged and renewed as that of pads is.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("the lining of a drum's shoes is judged, not ridden on at its end, and new shoes close it", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Wren kind:classic odometer:8,000 mi" });
  const near = await t.one({ ...dm, say: "rear lining 2 mm" });
  expect(near.data.logged).toMatchObject([{ kind: "shoe thickness", place: "rear" }]);
  expect(near.text).toContain("Rear brake shoe lining 2 mm: near limit (1.5 mm, common practice). Have the next shoes ready.");
  const worn = await t.one({ ...dm, say: "front shoes 1.4 mm" });
  expect(worn.text).toContain("beyond limit (1.5 mm, common practice). Replace the shoes of that drum, both together. Do not ride on it.");
  expect(worn.text).toContain("never blow it out");
  expect(worn.data.defects).toMatchObject([{ kind: "worn front shoes", grade: "do not ride" }]);
  const fresh = await t.one({ ...dm, say: "new front shoes at 8,100" });
  expect(fresh.text).toContain("is closed by that work");
  expect((await t.one({ ...dm, run: "/due" })).text).not.toContain("Do not ride");
  await t.close();
});
