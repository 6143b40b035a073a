// Sentences that were wrong for the bike or the day: what is left by now, what is tightened again on this drive, which of two is meant.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("what is left of a tyre is less by what was ridden since it was read", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:20,000 km");
  await t.one({ ...dm, say: "new rear tyre at 20,000 km, 7 mm" });
  for (const say of ["21,500 km, rear tread 6 mm", "23,000 km, rear tread 5 mm"]) {
    await t.send({ advance: "P20D", asleep: true });
    await t.one({ ...dm, say });
  }
  const left = async (): Promise<number> => Number(/Rear tyre: about ([\d,]+) km left/u.exec(await run("/tyre show"))?.[1]?.replace(",", "") ?? Number.NaN);
  const before = await left();
  expect(before).toBeGreaterThan(3000);
  await t.send({ advance: "P20D", asleep: true });
  await t.one({ ...dm, say: "25,000 km" });
  expect(before - (await left())).toBeGreaterThanOrEqual(1900);
  expect(before - (await left())).toBeLessThanOrEqual(2100);
  await t.send({ advance: "P90D", asleep: true });
  await t.one({ ...dm, say: "34,000 km" });
  expect(await run("/tyre show")).toContain("Rear tyre: by its wear it has reached its limit since it was last read. Measure it before you ride on.");
  await t.close();
});

test("after a rear axle the chain or the belt is looked at again where there is one", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  for (const [name, kind, again] of [
    ["Heron", "chain-drive twin", "Chain slack checked again after tightening."],
    ["Otter", "belt-drive cruiser", "Belt tension checked again after tightening."],
    ["Larch", "shaft-drive tourer", ""],
  ] as const) {
    await run(`/bike add name:${name} kind:${kind} odometer:8,000 km`);
    const told = await run(`/spec bike:${name} what:rear axle value:98 Nm source:manual p. 9`);
    expect(told).toContain("98");
    if (again === "") expect(told).not.toContain("checked again after tightening");
    else expect(told).toContain(again);
  }
  await t.close();
});

test("one tyre is asked about, and both are both", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:4,700 km" });
  const one = await t.one({ ...dm, run: "/work did:tyre at:4,800 km" });
  expect(one.data.work ?? []).toEqual([]);
  const both = await t.one({ ...dm, run: "/work did:tyres at:4,800 km" });
  expect(both.text).toContain("done today at 4,800 km. Recorded.");
  await t.close();
});

test("a motor is neither warmed nor left to cool for its sheet", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Finch kind:electric odometer:14,000 km" });
  const sheet = (await t.one({ ...dm, run: "/plan sheet at:next" })).text ?? "";
  expect(sheet).toMatch(/In this order|Evening 1 of/u);
  expect(sheet).not.toMatch(/engine/iu);
  await t.close();
});
