// A reading is a measuring: what the plan asks to measure at that end is done by it, for as long as it stands.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("pads and discs read today are done by plan, and no more once the reading is undone; a chain's line asks for its sprockets too", async () => {
  const t = await talk("2026-11-25T10:00:00Z");
  const say = (text: string) => t.one({ ...dm, say: text });
  const due = async () => (await t.one({ ...dm, run: "/due" })).text;
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const logged = await say("front pads 3.5 mm");
  expect(await due()).toContain("Front brake pads: due at 18,210 mi, last done at 14,210 mi; 4,000 mi to go.");
  await t.one({ ...dm, press: button(logged, "Undo") });
  expect(await due()).not.toContain("Front brake pads: due");
  await say("rear disc 4.8 mm");
  await say("chain length 318 mm over 20 links");
  const text = await due();
  expect(text).toContain("Rear brake disc: due at");
  expect(text).toMatch(/12,000 mi passed before it came to you; .*chain and sprocket wear/u);
  await t.close();
});
