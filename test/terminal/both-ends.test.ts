// "Changed the pads": front, rear, or both.

import { expect, test } from "vitest";
import { type Shown, talk } from "../support/talk.ts";

type Work = { readonly items: readonly { readonly item: string; readonly outcome: string }[] };
const itemsOf = (shown: Shown): readonly string[] => shown.data.work.flatMap(({ items }: Work) => items.map(({ item, outcome }) => `${item} ${outcome}`));

test("which pads were changed is asked, and both is an answer, pressed or written", async () => {
  const t = await talk();
  await t.one({ as: "Ines", in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const asked = await t.one({ as: "Ines", in: "dm", say: "changed the pads" });
  expect(asked.react).toBe("asked");
  const both = asked.actions.find(({ label }) => label === "Both");
  const pressed = await t.one({ as: "Ines", in: "dm", press: both?.id });
  expect(itemsOf(pressed)).toEqual(["front-pads.measure replaced", "rear-pads.measure replaced"]);
  await t.one({ as: "Ines", in: "dm", say: "swapped the brake pads" });
  expect(itemsOf(await t.one({ as: "Ines", in: "dm", say: "both" }))).toEqual(["front-pads.measure replaced", "rear-pads.measure replaced"]);
  await t.close();
});

test("between things that are no ends of a bike there is no both", async () => {
  const t = await talk();
  await t.one({ as: "Ines", in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const asked = await t.one({ as: "Ines", in: "dm", say: "changed the flux hose" });
  expect(asked.actions.some(({ label }) => label === "Both")).toBe(false);
  await t.close();
});
