// A tyre that holds next to nothing, typed off the gauge: logged, not to be ridden on, whatever is known of the bike.

import { expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
async function withHeron(): Promise<Talk> {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return t;
}
const due = async (t: Talk): Promise<string> => (await t.one({ ...dm, run: "/due" })).text ?? "";

// Common practice: on less than 8 psi no road motorcycle is ridden.
test("next to nothing is flat without a figure of the manual, and only a pressure that is known to be right closes that", async () => {
  const t = await withHeron();
  const read = await t.one({ ...dm, say: "front 5 psi" });
  expect(read.text).toContain("Front cold tyre pressure 5 psi: flat (no road motorcycle is ridden on less than 8 psi, common practice). Do not ride on it");
  expect(read.data.defects).toMatchObject([{ kind: "wrong front pressure", grade: "do not ride", from: "verdict" }]);
  expect(await due(t)).toContain("Do not ride: “front cold pressure 5 psi”");
  expect(await due(t)).toContain("front cold tyre pressure 5 psi, read today: flat, under the 8 psi that no road motorcycle is ridden on");
  // 9 psi may be a trail bike's, and nobody knows of which.
  for (const say of ["front 9 psi", "front 33 psi"]) {
    const pumped = await t.one({ ...dm, say });
    expect(pumped.data).toMatchObject({ defects: [], closed: [], staying: [{ words: "front cold pressure 5 psi" }] });
    expect(pumped.text).toContain("“front cold pressure 5 psi” stays open: what you read now does not show yet whether it is right");
  }
  expect(await due(t)).toContain("Do not ride: “front cold pressure 5 psi”");
  const saved = await t.one({ ...dm, run: "/spec what:front tyre pressure value:33 psi" });
  expect(saved.text).toContain("“front cold pressure 5 psi” is closed: what was read since is right by that.");
  expect(await due(t)).not.toContain("Do not ride: ");
  await t.close();
});

test("with a figure too: nothing, a fifth of a bar; and what no gauge shows is asked about", async () => {
  const t = await withHeron();
  await t.one({ ...dm, run: "/spec what:rear tyre pressure value:40 psi" });
  for (const say of ["rear 0 psi", "rear 0.2 bar"]) expect((await t.one({ ...dm, say })).text).toContain(`Rear cold tyre pressure ${say.slice(5)}: flat (`);
  for (const say of ["rear -3 psi", "rear 300 psi"]) expect((await t.one({ ...dm, say })).text).toContain("is outside what a motorcycle shows");
  await t.close();
});

test("said to be flat beside its pressure it is one thing, at the end that was said", async () => {
  const t = await withHeron();
  const said = await t.one({ ...dm, say: "front tyre is flat, 0 psi" });
  expect(said.text).toContain("front cold tyre pressure 0 psi, today");
  expect(said.data.defects).toMatchObject([{ kind: "puncture", grade: "do not ride", words: "front tyre is flat" }]);
  expect((await due(t)).match(/Do not ride: /gu)).toHaveLength(1);
  // The other end is another thing.
  expect((await t.one({ ...dm, say: "rear 0 psi" })).data.defects).toMatchObject([{ kind: "wrong rear pressure" }]);
  await t.close();
});
