// What riders say beside a reading, and ask about one: kept, answered, and never taken for a value.

import { expect, test } from "vitest";
import { leakOf } from "../../src/core/tyre/leak.ts";
import { LEAK_RULE } from "../../src/trade/tyres.ts";
import { KIND_WORDS } from "../../src/words/en/kinds.ts";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
const heron = async (clock = "2026-04-01T10:00:00Z") => {
  const t = await talk(clock);
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return { t, say: (text: string) => t.one({ ...dm, say: text }), run: (line: string) => t.one({ ...dm, run: line }) };
};

test.each([
  ["how do I measure chain slack", "chain slack"],
  ["How do I measure the brake pads?", "pad thickness"],
  ["Wie messe ich den Kettendurchhang?", "chain slack"],
] as const)("“%s” is answered with how %s is measured", async (asked, kind) => {
  const { t, say } = await heron();
  expect((await say(asked)).text).toContain(KIND_WORDS[kind].howTo);
  expect((await say("how do I measure chain slack? I got 30 mm")).text).not.toContain(KIND_WORDS["chain slack"].howTo.slice(0, 20));
  await t.close();
});

test("bars straight is kept with a level, and how the bike stood holds on", async () => {
  const { t, say } = await heron();
  const told = await say("front brake fluid at the max mark, upright, bars straight");
  expect(told.data).toMatchObject({ readings: [{ detail: { conditions: ["upright", "bars straight"] } }], judged: [{ judgement: { is: "within" } }] });
  expect(told.data.unread).toBeUndefined();
  expect((await say("front brake fluid full, bars straight")).data).toMatchObject({ judged: [{ judgement: { is: "within" } }] });
  await t.close();
});

test.each([
  ["front disc thickness", "Front disc limit"],
  ["rear disc minimum thickness", "Rear disc limit"],
] as const)("/spec knows “%s”", async (what, name) => {
  const { t, run } = await heron();
  expect((await run(`/spec what:${what}`)).text).toMatch(new RegExp(`^${name}: nothing is entered`, "u"));
  await t.close();
});

test.each([
  ["exhaust valve 2 0.30 mm cold", [["exhaust 2", 0.3]]],
  ["exhaust valve 2: 0.30 mm cold", [["exhaust 2", 0.3]]],
  [
    "intake valve 1 0.15 exhaust valve 1 0.25 mm cold",
    [
      ["intake 1", 0.15],
      ["exhaust 1", 0.25],
    ],
  ],
] as const)("“%s”: the number of a valve is no clearance", async (said, values) => {
  const { t, say } = await heron();
  const { data } = await say(said);
  expect(data.readings.map(({ place, value }: { place: string; value: number }) => [place, value])).toEqual(values);
  await t.close();
});

// 1 psi is 6.895 kPa.
const at = (day: number, psi: number, more: { readonly over?: boolean; readonly under?: boolean } = {}) => ({ day, gauge: psi * 6.895, celsius: 15, ...more });
test("what was told too high and is right the next time was let down; what is too low the next time was lost", () => {
  expect(leakOf([at(0, 40, { over: true }), at(1, 34), at(21, 34)], LEAK_RULE)).toMatchObject({ is: "sound", readings: 2, days: 20 });
  expect(leakOf([at(0, 40), at(1, 34), at(21, 34)], LEAK_RULE)).toMatchObject({ is: "leaks" });
  expect(leakOf([at(0, 40, { over: true }), at(15, 28, { under: true })], LEAK_RULE)).toMatchObject({ is: "leaks" });
  expect(leakOf([at(0, 40, { over: true }), at(1, 34), at(21, 28, { under: true })], LEAK_RULE)).toMatchObject({ is: "leaks", readings: 2 });
});

test("/tyre show tells no leak of a tyre that was let down from too high", async () => {
  const { t, say, run } = await heron("2026-04-30T10:00:00Z");
  await run("/spec what:front tyre pressure value:34 psi");
  for (const each of ["front 40 psi at 15 °C on 1 April", "front 34 psi at 15 °C on 2 April", "front 34 psi at 15 °C on 22 April"]) await say(each);
  expect((await run("/tyre show")).text).not.toContain("leak");
  await t.close();
});

test("/tyre show tells a leak though solo and two-up take turns, whether they want the same or not", async () => {
  for (const twoUp of ["34", "40"]) {
    const { t, say, run } = await heron("2026-04-30T10:00:00Z");
    await run("/spec what:front tyre pressure value:34 psi");
    await run(`/spec what:front tyre pressure for:two-up value:${twoUp} psi`);
    const texts: string[] = [];
    for (const each of ["34 psi solo on 1 April", "32 psi two-up on 8 April", "30.5 psi solo on 15 April", "28.5 psi two-up on 22 April"])
      texts.push((await say(`front ${each}`)).text ?? "");
    // Told where it shows, at the bike.
    expect(texts.map((text) => text.includes("slow leak is likely"))).toEqual([false, false, false, true]);
    expect((await run("/tyre show")).text).toContain("lost 5.5 psi in 21 days");
    const pictured = await run("/reading picture:pressure");
    expect(pictured.text).toContain("lost 5.5 psi in 21 days");
    expect(pictured.files[0]?.alt).toContain("slow leak is likely");
    await t.close();
  }
});

test.each([
  ["new rear tyre 180/55ZR17 (73W) at 14,300", ["rear-tyre.replace"], [["180/55ZR17 (73W)", null]]],
  ["new rear tyre 0326 180/55ZR17 (73W) at 14,300", ["rear-tyre.replace"], [["180/55ZR17 (73W)", "0326"]]],
  ["new front tyre 3.25-19 54H 1525", ["front-tyre.replace"], [["3.25-19 54H", "1525"]]],
  ["fitted a 120/70 ZR17 front tyre", ["front-tyre.replace"], [["120/70 ZR17", null]]],
  ["new rear tyre MT90B16 M/C 74H", ["rear-tyre.replace"], [["MT90B16 M/C 74H", null]]],
  [
    "new tyres 120/70ZR17 (58W) and 180/55ZR17 (73W) at 14,300",
    ["front-tyre.replace", "rear-tyre.replace"],
    [
      ["120/70ZR17 (58W)", null],
      ["180/55ZR17 (73W)", null],
    ],
  ],
] as const)("“%s”: what is moulded on a tyre is kept with it, and is no reading", async (said, items, parts) => {
  const { t, say } = await heron("2026-11-25T10:00:00Z");
  const { data } = await say(said);
  expect(data).toMatchObject({ is: "logged", work: [{ items: items.map((item) => ({ item })) }] });
  expect(data.work[0].detail.parts.map(({ words, made }: { words: string; made: string | null }) => [words, made])).toEqual(parts);
  expect(data.unread).toBeUndefined();
  for (const { kind } of data.readings) expect(kind).toBe("odometer");
  await t.close();
});

test("pressures and depths that look like a size are read as ever", async () => {
  const { t, say } = await heron();
  expect((await say("tyres: front 33 psi rear 36 psi")).data.readings).toHaveLength(2);
  expect((await say("rear tyre 5.25 mm tread")).data).toMatchObject({ readings: [{ kind: "tread", value: 5.25 }] });
  await t.close();
});
