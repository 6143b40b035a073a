// What is read twice in a day, or on the day on which something else went on: the least of what wears stands, of the part that is on.

import { expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
async function withHeron(): Promise<Talk> {
  const t = await talk("2026-04-01T08:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return t;
}
const show = async (t: Talk): Promise<string> => (await t.one({ ...dm, run: "/tyre show" })).text ?? "";
const due = async (t: Talk): Promise<string> => (await t.one({ ...dm, run: "/due" })).text ?? "";

test("of one day the least of what wears stands, whichever was read last", async () => {
  for (const both of [
    ["1.4", "1.0"],
    ["1.0", "1.4"],
  ]) {
    const t = await withHeron();
    for (const depth of both) {
      await t.one({ ...dm, say: `rear tread ${depth} mm, rear pads ${depth} mm` });
      await t.send({ advance: "PT1H" });
    }
    expect(await show(t)).toContain("Rear tread depth 1 mm: near limit");
    expect(await due(t)).toContain("rear tread depth 1 mm, read today");
    expect(await due(t)).toContain("rear pad thickness 1 mm, read today: at limit");
    await t.close();
  }
});

test("well within and beyond its limit too, but not of a tyre that was new in between", async () => {
  const t = await withHeron();
  for (const say of ["front tread 2.5 mm", "front tread 2.1 mm", "rear tread 0.7 mm", "rear tread 0.2 mm"]) await t.one({ ...dm, say });
  expect(await show(t)).toContain("Front tread depth 2.1 mm: within");
  expect(await show(t)).toContain("Rear tread depth 0.2 mm: beyond limit");
  await t.one({ ...dm, say: "new rear tyre at 14,210 mi" });
  await t.one({ ...dm, say: "rear tread 7.4 mm" });
  expect(await show(t)).toContain("Rear tread depth 7.4 mm: within");
  await t.close();
});

test("on the day of a swap each set has its own depth, though the clock stood still meanwhile", async () => {
  const t = await withHeron();
  await t.one({ ...dm, say: "rear tread 7.2 mm" });
  await t.one({ ...dm, run: "/bike tyres set:knobbly off:road at:14,210 mi" });
  expect(await show(t)).not.toContain("7.2 mm");
  await t.one({ ...dm, say: "rear tread 9.5 mm" });
  expect(await show(t)).toContain("Rear tread depth 9.5 mm");
  await t.one({ ...dm, run: "/bike tyres set:road at:14,230 mi" });
  expect(await show(t)).toContain("Rear tread depth 7.2 mm");
  await t.close();
});

test("beyond its limit it is told without the distance to the next look, which would read as life left", async () => {
  const t = await withHeron();
  await t.one({ ...dm, say: "rear tread 0 mm, front tread 1.2 mm" });
  const said = await due(t);
  expect(said).toMatch(/rear tread depth 0 mm, read today: beyond limit, 0\.8 mm\.\n/u);
  // Near it the next look is soon, and not after all that the plan leaves.
  expect(said).toMatch(/front tread depth 1\.2 mm, read today: near limit, 0\.8 mm; look again at 14,710 mi or on 1 May, whichever comes first\./u);
  await t.close();
});
