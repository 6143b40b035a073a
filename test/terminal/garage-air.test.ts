// A tyre read in a warm garage before a cold road: kept as typed, judged as it will be out there.
// Gay-Lussac on absolute pressure: 36 psi are 248.2 kPa, (248.2 + 101.3) × 275.15 / 293.15 - 101.3 = 226.7 kPa, which are 32.9 psi;
// and (248.2 + 101.3) × 293.15 / 275.15 - 101.3 = 271.1 kPa, which are 39.3 psi.

import { expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
async function withHeron(): Promise<Talk> {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/spec what:front tyre pressure value:36 psi" });
  return t;
}

test("both temperatures said: judged at the road's, with what to set indoors", async () => {
  const t = await withHeron();
  for (const say of [
    "front 36 psi garage 20 °C, road 2 °C",
    "front 36 psi, in the garage at 20 °C, outside 2 °C",
    "front set to 36 psi in the shed, 20 C inside, 2 C outside",
  ]) {
    const { text, data } = await t.one({ ...dm, say });
    expect(text).toContain("front cold tyre pressure 36 psi (garage 20 °C, road 2 °C), today");
    expect(text).toContain("Front cold tyre pressure 36 psi at 20 °C is about 32.9 psi at 2 °C on the road: 3 psi low (36 psi wanted by your own figure).");
    expect(text).toContain("Set 39 psi indoors, or 36 psi where the ride starts, cold.");
    expect(data.readings).toMatchObject([{ kind: "cold pressure", typed: "36 psi" }]);
  }
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Tyre pressures: front cold tyre pressure");
  expect((await t.one({ ...dm, say: "front 39 psi, garage 20 °C, road 2 °C" })).text).toContain("on the road: good (36 psi wanted");
  expect((await t.one({ ...dm, say: "set front 36 in the garage at 68F, it's 35F outside" })).text).toContain(
    "is about 32.8 psi at 35 °F on the road: 3 psi low",
  );
  expect((await t.one({ ...dm, say: "vorne 2,5 bar, Garage 20 °C, draußen 2 °C" })).text).toContain("2.5 bar at 20 °C is about 2.28 bar at 2 °C on the road");
  await t.close();
});

test("a garage that is no warmer corrects nothing, and one alone lets nothing out", async () => {
  const t = await withHeron();
  const colder = await t.one({ ...dm, say: "front 38 psi, garage 5 °C, road 20 °C" });
  expect(colder.text).toContain("36 psi wanted where the ride starts, at 20 °C, with the tyre cold from standing there");
  expect(colder.text).not.toContain("let out");
  const alone = await t.one({ ...dm, say: "front 40 psi in the garage at 20 °C" });
  expect(alone.text).toContain("4 psi high (36 psi wanted by your own figure). Where the ride starts colder it will be lower, so let nothing out by this");
  expect(alone.text).toContain("/tyre pressure want:36 psi garage:20 °C road:…");
  expect(alone.text).not.toContain("let out 4 psi");
  await t.close();
});

test("which is which is never guessed, and what to set is answered and logs nothing", async () => {
  const t = await withHeron();
  const open = await t.one({ ...dm, say: "front 36 psi, in the garage at 20 °C, 2 °C" });
  expect(open.text).toContain("which of the temperatures is the garage's, and which the road's?");
  expect(open.text).toContain("Nothing is saved");
  for (const say of ["want 36 on the road, garage 20 C road 2 C, what do I set?", "garage 20 °C, road 2 °C, spec 36"])
    expect((await t.one({ ...dm, say })).text).toContain("Set 39 psi indoors at 20 °C: on the road at 2 °C that is the 36 psi wanted.");
  expect((await t.one({ ...dm, run: "/reading" })).text).not.toContain("- Front cold tyre pressure");
  await t.close();
});
