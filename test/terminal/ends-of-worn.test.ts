// What is worn or found at an end of the bike: of a drum, of a sidecar, of a tyre that came off, and of a part that it is fitted with only since.

import { expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
async function withA(kind: string): Promise<Talk> {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: `/bike add name:Heron kind:${kind} odometer:14,210 mi` });
  return t;
}
const due = async (t: Talk): Promise<string> => (await t.one({ ...dm, run: "/due" })).text ?? "";

// Common practice: with its adjuster at its end, or its pointer past the mark, a drum's shoes are worn.
test.each([
  ["rear brake adjuster at its end", "worn rear shoes"],
  ["brake arm past the wear mark", "worn shoes"],
  ["Bremsnachsteller hinten am Ende", "worn rear shoes"],
  ["chain adjuster at its end", "chain at its end"],
])("“%s” is of %s", async (say, kind) => {
  const t = await withA("classic");
  expect((await t.one({ ...dm, say })).data.defects).toMatchObject([{ kind }]);
  await t.close();
});

test("the free play of a brake is judged by its spec", async () => {
  const t = await withA("classic");
  await t.one({ ...dm, say: "rear brake pedal play 25 mm" });
  expect((await t.one({ ...dm, run: "/spec what:rear brake free play value:20-30 mm" })).text).toContain("Rear brake free play 25 mm: within");
  expect((await t.one({ ...dm, say: "rear brake free play 35 mm" })).text).toContain("beyond limit, too much play");
  expect(await due(t)).toContain("Rear drum brake adjustment: rear brake free play 35 mm");
  await t.close();
});

test("a sidecar's tyre and brake keep the outfit off the road, and its code is noted", async () => {
  const t = await withA("sidecar outfit");
  const worn = await t.one({ ...dm, say: "sidecar tread 0.7 mm" });
  expect(worn.data.defects).toMatchObject([{ kind: "worn sidecar tyre", grade: "do not ride" }]);
  expect((await t.one({ ...dm, say: "sidecar pads 0.8 mm" })).data.defects).toMatchObject([{ kind: "worn sidecar brake" }]);
  expect(await due(t)).toContain("Sidecar tread depth: sidecar tread depth 0.7 mm, read today: beyond limit");
  expect((await t.one({ ...dm, run: "/spec what:sidecar tread limit value:1.6 mm" })).text).toContain("Sidecar tread limit: at least 1.6 mm");
  expect((await t.one({ ...dm, say: "sidecar tyre DOT 1417" })).text).toContain("Sidecar tyre: made in week 14 of 2017");
  expect((await t.one({ ...dm, run: "/tyre date code:1417 end:sidecar" })).text).toContain("sidecar tyre date code 1417");
  expect((await t.one({ ...dm, say: "new sidecar tyre at 14,210 mi" })).text).toContain("“sidecar tread 0.7 mm” is closed by that work");
  await t.close();
});

test("what was read of a part counts when the bike is entered with it, and lapses when it is not", async () => {
  const t = await withA("scooter");
  expect((await t.one({ ...dm, say: "rear brake shoes 1 mm" })).data.defects).toEqual([]);
  const drum = await t.one({ ...dm, run: "/bike fitted part:rear brake choice:drum" });
  expect(drum.text).toContain("“rear shoe thickness 1 mm”. Noted.");
  expect(await due(t)).toContain("Do not ride: “rear shoe thickness 1 mm”");
  const disc = await t.one({ ...dm, run: "/bike fitted part:rear brake choice:disc" });
  expect(disc.text).toContain("“rear shoe thickness 1 mm” stands no longer");
  await t.close();
});

test("what was read before a bike came home is held against the law of that place", async () => {
  const t = await withA("chain-drive twin");
  await t.one({ ...dm, say: "front tread 0.9 mm" });
  await t.one({ as: "Ines", in: "group", admin: true, run: "/group place:United Kingdom" });
  await t.send({ as: "Ines", in: "group", say: "rear tread 0.9 mm" });
  const said = await due(t);
  // Road Vehicles (Construction and Use) Regulations 1986, reg. 27: 1 mm.
  expect(said).toContain("Do not ride: “rear tread 0.9 mm”");
  expect(said).toContain("Do not ride: “front tread 0.9 mm”");
  await t.close();
});

test("a new tyre closes all that was found on the old one, and nothing of the other end; a repair leaves a watch", async () => {
  const t = await withA("chain-drive twin");
  const found = ["cracked", "plugged", "squared off", "worn"];
  for (const end of ["front", "rear"]) for (const sign of found) await t.one({ ...dm, say: `${end} tyre ${sign}` });
  const fresh = await t.one({ ...dm, say: "new front tyre at 14,210 mi" });
  expect(fresh.data.closed.map(({ words }: { words: string }) => words).sort()).toEqual(found.map((sign) => `front tyre ${sign}`).sort());
  const after = await due(t);
  for (const sign of found) expect(after).toContain(`“rear tyre ${sign}”`);
  const patched = await t.one({ ...dm, say: "rear tyre repaired with a patch" });
  expect(patched.data).toMatchObject({ closed: [], defects: [{ kind: "plugged tyre", grade: "watch" }] });
  await t.close();
});

// Common practice: the full mark leaves the fluid room to expand.
test("brake fluid above its full mark is too much, and no low level", async () => {
  const t = await withA("chain-drive twin");
  const over = await t.one({ ...dm, say: "front brake fluid above max, upright" });
  expect(over.text).toContain("above the full mark: beyond limit. Draw some off down to the full mark");
  expect(over.data.defects).toEqual([]);
  await t.close();
});

test("a code past ten years brings the caution", async () => {
  const t = await withA("chain-drive twin");
  expect((await t.one({ ...dm, say: "rear tyre DOT 0910" })).text).toContain("Do not ride on cords");
  await t.close();
});
