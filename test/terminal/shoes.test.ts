// Drum brakes: the lining of shoes is measured, judged and renewed as that of pads is.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

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

// The figure that a drum may wear to is cast into it ("MAX DIA."), common practice; 1 in is 25.4 mm exactly.
test("a drum's diameter is read as that, judged by the figure in the drum, and no new shoes put it right", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = (text: string) => t.one({ ...dm, say: text });
  await t.one({ ...dm, run: "/bike add name:Wren kind:classic odometer:8,000 mi" });
  const first = await say("rear drum 140.6 mm");
  expect(first.data.logged).toMatchObject([{ kind: "drum diameter", place: "rear", value: 140.6, unit: "mm" }]);
  expect(first.text).toContain("Rear drum diameter: cannot tell yet; I need the figure");
  expect((await say("Bremstrommel hinten 140,6 mm")).data.logged).toMatchObject([{ kind: "drum diameter", place: "rear" }]);
  // What lines the shoes is no drum.
  expect((await say("drum lining 3 mm rear")).data.logged).toMatchObject([{ kind: "shoe thickness", place: "rear" }]);
  await t.one({ ...dm, run: "/spec what:rear drum limit value:141 mm source:cast in the drum" });
  expect((await say("rear drum 140.2 mm")).text).toContain("Rear drum diameter 140.2 mm: within");
  expect((await say("rear drum 5.55 in")).text).toContain("Rear drum diameter 5.55 in: at limit");
  const worn = await say("rear drum 141.2 mm");
  expect(worn.text).toContain("Replace the drum or its hub, with new shoes");
  expect(worn.text).toContain("Do not ride on it.");
  expect(worn.data.defects).toMatchObject([{ kind: "worn rear drum", grade: "do not ride" }]);
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Rear brake shoes: rear drum diameter 141.2 mm, read today: beyond limit, 141 mm");
  // New shoes alone close nothing: whether the drum is new too is asked.
  const shoes = await say("new rear shoes at 8,100");
  expect(shoes.data.closed).toEqual([]);
  expect(shoes.data.mayClose).toMatchObject([{ defect: { kind: "worn rear drum" } }]);
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Do not ride: “rear drum diameter 141.2 mm”");
  await t.close();
});

test("two drums have no brake fluid, and one disc has it at its own end", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  const say = (text: string) => t.one({ ...dm, say: text });
  await run("/bike add name:Wren kind:classic odometer:8,000 mi");
  const none = await say("brake fluid low");
  expect(none.text).toContain("by my record it has none of that there, so nothing is saved.");
  expect(none.actions.map(({ label }) => label)).not.toContain("front");
  await t.one({ ...dm, press: button(none, "Let it go") });
  expect((await run("/due")).text).not.toContain("rake fluid");
  await run("/bike add name:Wasp kind:small commuter odometer:3,000 km");
  const low = await say("brake fluid low on Wasp");
  expect(low.text).toContain("The front brake fluid level “low” on Wasp: at the low mark, or below it?");
  await t.one({ ...dm, press: button(low, "Let it go") });
  expect((await say("pads 2.6 mm on Wasp")).data.logged).toMatchObject([{ kind: "pad thickness", place: "front" }]);
  expect((await say("shoes 3 mm on Wasp")).data.logged).toMatchObject([{ kind: "shoe thickness", place: "rear" }]);
  // A drum in front takes the fluid out of it, so that none can be mixed with what is not there.
  const drums = await run("/bike fitted bike:Wasp part:front brake choice:drum");
  expect(drums.text).toContain("Two drums are worked by cable or rod: Wasp is entered without brake fluid");
  expect(drums.data.equipment).toMatchObject({ frontBrake: "drum", brakeFluid: "none" });
  expect((await say("topped up the brake fluid with DOT 5 on Wasp")).text).toContain("by my record Wasp has none of that (brake fluid: none)");
  const disc = await run("/bike fitted bike:Wasp part:front brake choice:disc");
  expect(disc.text).toContain("A disc has brake fluid: Wasp is entered with DOT 4");
  expect(disc.data.equipment).toMatchObject({ brakeFluid: "DOT 4" });
  await t.close();
});
