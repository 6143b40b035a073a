// How a bike is loaded when its tyres are set: said once it is of both ends, and with more load nothing is let out by the figure for less.

import { expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
async function withHeron(): Promise<Talk> {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  for (const [end, solo, two] of [
    ["front", 36, 38],
    ["rear", 40, 44],
  ]) {
    await t.one({ ...dm, run: `/spec what:${end} tyre pressure value:${solo} psi for:solo` });
    await t.one({ ...dm, run: `/spec what:${end} tyre pressure value:${two} psi for:two-up` });
  }
  return t;
}

test("a load said once is of both ends: behind, before or by itself", async () => {
  const t = await withHeron();
  for (const say of ["front 38 psi, rear 44 psi two-up", "two-up: front 38 psi, rear 44 psi", "front 38 psi, rear 44 psi with my wife on the back"]) {
    const { text } = await t.one({ ...dm, say });
    expect(text).toContain("Front cold tyre pressure 38 psi: good, 38 psi wanted");
    expect(text).toContain("Rear cold tyre pressure 44 psi: good, 44 psi wanted");
  }
  const own = await t.one({ ...dm, say: "front 36 psi solo, rear 40 psi two-up" });
  expect(own.text).toContain("Front cold tyre pressure 36 psi: good, 36 psi wanted");
  expect(own.text).toContain("Rear cold tyre pressure 40 psi: 4 psi low, add 4 psi");
  await t.close();
});

test("with a passenger and luggage it is the fuller load: the figure for two alone tells what is too little, never what is enough or too much", async () => {
  const t = await withHeron();
  const little = await t.one({ ...dm, say: "front 36/rear 42 two up with panniers" });
  expect(little.text).toContain("Front cold tyre pressure 36 psi: 2 psi low, add 2 psi where it stands (38 psi wanted");
  expect(little.text).toContain("Rear cold tyre pressure 42 psi: 2 psi low, add 2 psi where it stands (44 psi wanted");
  const right = await t.one({ ...dm, say: "front 38 psi, rear 44 psi, two up with panniers" });
  expect(right.text).toContain("Rear cold tyre pressure 44 psi: cannot tell yet; the figure I know is for less load");
  expect(right.text).not.toContain("let out");
  await t.one({ ...dm, run: "/spec what:rear tyre pressure value:46 psi for:loaded" });
  expect((await t.one({ ...dm, say: "front 38 psi, rear 44 psi, two up with panniers" })).text).toContain(
    "Rear cold tyre pressure 44 psi: 2 psi low, add 2 psi where it stands (46 psi wanted",
  );
  await t.close();
});

test("which load's figure it was held against is said, with how the missing one is entered; the one for more load is held against nothing", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/spec what:rear tyre pressure value:40 psi for:two-up" });
  const low = await t.one({ ...dm, say: "rear 38 psi loaded" });
  expect(low.text).toContain(
    "2 psi low, add 2 psi where it stands (40 psi wanted by your own figure). That is the figure for two-up; the one for loaded is not entered",
  );
  expect(low.text).toContain("/spec what:rear tyre pressure value:… for:loaded");
  const right = await t.one({ ...dm, say: "rear 40 psi loaded" });
  expect(right.text).toContain(
    "cannot tell yet; the figure I know is for less load, two-up; enter the one for loaded once: /spec what:rear tyre pressure value:… for:loaded",
  );
  // What is wanted with more load says nothing of less.
  await t.one({ ...dm, run: "/spec what:front tyre pressure value:38 psi for:loaded" });
  const less = await t.one({ ...dm, say: "front 36 psi two-up" });
  expect(less.text).toContain("Front cold tyre pressure: cannot tell yet without your manual's figure for two-up.");
  expect(less.text).not.toContain("low");
  await t.one({ ...dm, run: "/bike add name:Egret kind:chain-drive twin odometer:14,210 mi" });
  expect((await t.one({ ...dm, say: "Egret front 36 psi two-up" })).text).toContain("once: /spec what:front tyre pressure value:… for:two-up");
  const own = await t.one({ ...dm, say: "Heron rear 38 psi two-up" });
  expect(own.text).toContain("40 psi wanted");
  expect(own.text).not.toContain("not entered");
  await t.close();
});
