// What pictures of readings say: each sentence where it is true, and not where it is not.

import { describe, expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { type Ridden, riddenOf } from "../../src/core/quantity/distance.ts";
import { cardWords } from "../../src/words/en/card.ts";
import { readingPictureWords } from "../../src/words/en/reading-pictures.ts";
import { makePrinter } from "../../src/words/printer.ts";

const words = readingPictureWords(makePrinter({ locale: "en-GB", distance: null }));
const today = localDate("2026-11-26");
const km = (figure: number): Ridden => riddenOf(figure, "km") as Ridden;

const FITTED = { finalDrive: "chain", frontBrake: "disc", rearBrake: "disc", sidecar: "none" } as const;
type Wear = Parameters<typeof words.wear>[1];
const rear = {
  ...{ part: "rear tread", place: "rear" as const, worn: false, limit: { value: 1.6, by: "law" as const } },
  points: [10_000, 12_000].map((at, n) => ({ ridden: km(at), value: 5 - n, typed: String(5 - n) })),
  line: { from: km(10_000), start: 5, likely: km(16_800), low: km(15_000), high: km(19_000) },
};
const tread = (panel: Partial<Wear["panels"][number]>, more: Partial<Wear> = {}) =>
  words.wear("tread", {
    nickname: "Heron",
    unit: "km",
    offset: 0,
    today,
    typedIn: "mm",
    now: km(12_000),
    fitted: FITTED,
    panels: [{ ...rear, ...panel }],
    ...more,
  });
const worn = (value: number): Partial<Wear["panels"][number]> => ({
  ...{ worn: true, line: null, points: [{ ridden: km(12_000), value, typed: String(value) }] },
});

describe("wear", () => {
  test("ahead of its limit says when it is likely reached; a range without an end says after what", () => {
    expect(tread({}).lines[1]).toBe(
      "- Rear 4 mm, limit 1.6 mm (the law here); likely reached at about 16,800 km, eight times in ten between 15,000 km and 19,000 km.",
    );
    expect(tread({ line: { ...rear.line, high: null } }).lines[1]).toContain("eight times in ten after 15,000 km.");
  });
  test("at its limit is changed; beyond it the bike is not ridden on it", () => {
    expect(tread(worn(1.6)).lines[1]).toBe("- Rear 1.6 mm, limit 1.6 mm (the law here): at the limit, change it now.");
    expect(tread(worn(1.5)).lines[1]).toBe("- Rear 1.5 mm, limit 1.6 mm (the law here): beyond the limit. Do not ride on it, change it now.");
    // What grows is beyond it above.
    const chain = (value: number) =>
      words.wear("chain", {
        ...{ nickname: "Heron", unit: "km", offset: 0, today, typedIn: null, now: km(12_000), fitted: FITTED },
        panels: [{ ...rear, ...worn(value), place: null, limit: { value: 0.01, by: "practice" } }],
      }).lines[1];
    expect(chain(0.01)).toBe("- Now 1 %, limit 1 % (common practice): at the limit, replace chain and sprockets.");
    expect(chain(0.012)).toContain("beyond the limit. Do not ride on it, replace chain and sprockets.");
    expect(chain(0.01 + 1e-12)).toContain("at the limit");
  });
  test("whose limit lies behind where the bike stands says so, and has its mark there; at the very place, too", () => {
    const behind = tread({}, { now: km(17_240) });
    expect(behind.lines[1]).toBe(
      "- Rear 4 mm, limit 1.6 mm (the law here); by its wear it reached its limit at about 16,800 km, and the odometer was last read at 17,240 km. Measure it before you ride on.",
    );
    expect([behind.drawing.panels[0]?.behind, behind.drawing.now]).toEqual([true, { x: 17_240, text: "last read 17,240 km" }]);
    expect(tread({}, { now: km(16_800) }).drawing.panels[0]?.behind).toBe(true);
    const before = tread({}, { now: km(16_799) });
    expect([before.drawing.panels[0]?.behind, before.lines[1]?.includes("stands")]).toEqual([false, false]);
    // What is known to be worn needs no line to say so, and nothing is ahead of it without a line.
    expect(tread(worn(1.5), { now: km(17_240) }).drawing.panels[0]?.behind).toBe(false);
  });
  test("measured where the bike stands, or before any dial was read, draws no place of its own", () => {
    expect([tread({}).drawing.now, tread({}, { now: null }).drawing.now]).toEqual([null, null]);
    // Where a pace is known, the days that it comes to.
    const days = { on: localDate("2027-05-12"), from: localDate("2027-04-02"), to: localDate("2027-07-20") };
    expect(tread({ days }).lines[1]).toContain("between 15,000 km and 19,000 km; as it is ridden about 12 May, between 2 April and 20 July.");
    expect(tread({ days: { ...days, from: today, to: null } }).lines[1]).toContain("19,000 km; as it is ridden about 12 May.");
    // What was ridden past is no longer ahead: the range begins where the bike stands.
    const past = { line: { from: km(10_000), start: 6, likely: km(16_800), low: km(15_100), high: km(18_000) } };
    expect(tread(past, { now: km(15_152) }).lines[1]).toContain("likely reached at about 16,800 km, eight times in ten from now on, by 18,000 km.");
    expect(tread({ line: { ...past.line, high: null } }, { now: km(15_152) }).lines[1]).toContain("eight times in ten any time from now on, or far later.");
    expect(tread({}, { now: null }).lines[1]).toContain("likely reached at about 16,800 km");
  });
  test("without a limit, or with too few readings, says which", () => {
    expect(tread({ limit: null, line: null }).lines[1]).toBe("- Rear 4 mm, no limit known; too few readings yet, so no line is drawn.");
    expect(tread({ line: null, points: rear.points.slice(0, 1) }).lines[1]).toContain("; one reading, so no line is drawn.");
  });
});

describe("a tread that was typed in inches", () => {
  // A US tread gauge is divided into 32nds: 4/32 in are 3.175 mm by the definition of the inch, 25.4 mm.
  const points = [6, 4].map((n, at) => ({ ridden: km(10_000 + at * 2000), value: (n * 25.4) / 32, typed: (n / 32).toFixed(3) }));
  const us = tread({ points, limit: { value: 25.4 / 32, by: "bars" }, line: { ...rear.line, start: (6 * 25.4) / 32 } }, { typedIn: "in" });
  test("is told and drawn in 32nds of an inch, as the gauge is divided", () => {
    expect(us.lines[1]).toMatch(/^- Rear 4\/32 in, limit 1\/32 in \(the moulded bars\); likely/u);
    const [panel] = us.drawing.panels;
    expect(panel?.name).toBe("Rear, /32 in");
    expect(panel?.points.map(({ value }) => value)).toEqual([6, 4].map((n) => expect.closeTo(n, 9)));
    expect([panel?.line?.start, panel?.limit]).toEqual([expect.closeTo(6, 9), { value: expect.closeTo(1, 9), text: "limit 1/32 in, the moulded bars" }]);
    expect(us.alt).toContain("Rear 4/32 in");
  });
  test("pads stay as they were typed: no gauge for them counts 32nds", () => {
    const pads = words.wear("pads", {
      ...{ nickname: "Heron", unit: "mi", offset: 0, today, typedIn: "in", now: null, fitted: FITTED },
      panels: [{ ...rear, points: [{ ridden: km(1), value: 3.81, typed: "0.15" }], line: null }],
    });
    expect(pads.drawing.panels[0]?.name).toBe("Rear, in");
    expect(pads.lines[1]).toContain("Rear 0.15 in");
  });
});

describe("what a bike has", () => {
  const none = (of: "pads" | "chain", fitted: Partial<Wear["fitted"]>) =>
    words.wear(of, { nickname: "Bolt", unit: "km", offset: 0, today, typedIn: "mm", now: km(3000), fitted: { ...FITTED, ...fitted }, panels: [] }).lines;
  test.each([
    ["belt", "Bolt is driven by a belt and has no chain; read the belt's deflection: belt 10 mm at 45 N."],
    ["shaft", "Bolt is driven by a shaft and has no chain;"],
    ["variator", "Bolt has a variator with a belt inside and no chain;"],
    ["hub motor", "Bolt is driven by its hub and has no chain;"],
  ] as const)("without a chain is told so, and never asked for a chain reading: %s", (finalDrive, begins) => {
    const [line, ...more] = none("chain", { finalDrive });
    expect([line?.startsWith(begins), more, line?.includes("Log one")]).toEqual([true, [], false]);
  });
  test("with a chain is asked for a chain reading", () => {
    expect(none("chain", {})).toEqual(["Bolt has no chain reading that tells its wear yet. Log one: chain 318.2 mm over 20 pitches on Bolt."]);
  });
  test("in drums is asked for shoes, in discs for pads, in both for both", () => {
    expect(none("pads", {})[0]).toContain("no pad reading yet. Log one: front pads 3.5 mm");
    expect(none("pads", { frontBrake: "drum", rearBrake: "drum" })[0]).toContain("no shoe reading yet. Log one: front shoes 3.5 mm");
    expect(none("pads", { rearBrake: "drum" })[0]).toContain("no pad or shoe reading yet. Log one: front pads 3.5 mm, rear shoes 3 mm");
  });
  test("pads and shoes on one bike are told apart by name; shoes alone need none", () => {
    const panel = (part: string, place: "front" | "rear") => ({ ...rear, part, place, limit: { value: 1, by: "practice" as const } });
    const drawn = (panels: Wear["panels"]) =>
      words.wear("pads", { nickname: "Pip", unit: "km", offset: 0, today, typedIn: "mm", now: null, fitted: { ...FITTED, rearBrake: "drum" }, panels });
    const both = drawn([panel("front pads", "front"), panel("rear shoes", "rear")]);
    expect([both.drawing.title, both.drawing.panels.map(({ name }) => name)]).toEqual(["Pip's brake linings", ["Front pads, mm", "Rear shoes, mm"]]);
    expect(both.lines[2]).toContain("- Rear shoes 4 mm, limit 1 mm");
    const shoes = drawn([{ ...panel("rear shoes", "rear"), ...worn(0.5) }]);
    expect([shoes.drawing.title, shoes.drawing.panels[0]?.name]).toEqual(["Pip's brake shoes", "Rear, mm"]);
    expect(shoes.lines[1]).toContain("change both of that drum now");
  });
});

type Pressure = Parameters<typeof words.pressure>[0];
const read = (n: number, kPa: number, load: "solo" | "two-up" | "loaded", levelled: number | null = null) => ({
  ...{ on: localDate(`2026-11-${String(n).padStart(2, "0")}`), read: kPa, typed: (kPa / 100).toFixed(1), levelled, load },
});
const pressure = (points: Pressure["panels"][number]["points"], wanted: Pressure["panels"][number]["wanted"]) =>
  words.pressure({ nickname: "Heron", today, typedIn: "bar", celsius: 20, panels: [{ place: "rear", points, wanted }] });
const SOLO = { loads: ["solo"], value: 250 } as const;

describe("pressures", () => {
  test("solo alone names no load; each load that was ridden is told for itself, the latest first, beside what it wants", () => {
    const alone = pressure([read(1, 240, "solo", 245)], [SOLO]);
    expect(alone.lines.slice(1, 2)).toEqual(["- Rear 2.4 bar on 1 November, wanted 2.5 bar cold; the same air at 20 °C: 2.45 bar."]);
    expect(alone.drawing.panels[0]?.wanted).toEqual([{ load: "solo", value: expect.closeTo(2.5, 9), text: "wanted 2.5 bar as read cold" }]);
    const both = pressure([read(1, 240, "solo"), read(2, 280, "two-up"), read(3, 250, "solo")], [SOLO, { loads: ["two-up"], value: 290 }]);
    expect(both.lines.slice(1, 3)).toEqual([
      "- Rear solo 2.5 bar on 3 November, wanted 2.5 bar cold.",
      "- Rear two-up 2.8 bar on 2 November, wanted 2.9 bar cold.",
    ]);
    expect(both.drawing.panels[0]?.wanted.map(({ text }) => text)).toEqual(["wanted 2.5 bar solo as read cold", "wanted 2.9 bar two-up as read cold"]);
    expect(both.drawing.panels[0]?.points.map(({ load }) => load)).toEqual(["solo", "two-up", "solo"]);
  });
  test("loads that want the same share a line; one of which nothing is entered is held against solo, and says so", () => {
    const shared = pressure([read(1, 240, "solo"), read(2, 250, "two-up")], [{ loads: ["solo", "two-up"], value: 250 }]);
    expect(shared.drawing.panels[0]?.wanted.map(({ text }) => text)).toEqual(["wanted 2.5 bar solo and two-up as read cold"]);
    const without = pressure([read(2, 280, "loaded")], [SOLO]);
    expect(without.lines[1]).toBe("- Rear loaded 2.8 bar on 2 November, no pressure loaded on record, solo wants 2.5 bar cold.");
    expect(without.drawing.panels[0]?.wanted[0]?.text).toBe("wanted 2.5 bar solo as read cold");
    expect(pressure([read(2, 280, "solo")], []).lines[1]).toBe("- Rear 2.8 bar on 2 November, no pressure wanted on record.");
  });
});

test("a card with every line filled has no empty list of what is blank", () => {
  const equipment = { tyres: "tubeless", wheels: "cast", battery: "AGM" } as never;
  const card = (typed: string | null) =>
    cardWords().card({
      ...{ nickname: "Heron", equipment, recovery: "0800 555 0142", saved: false },
      rows: [{ key: "fuses", said: typed === null ? [] : [{ use: null, typed }], differ: false }],
    });
  const full = card("15 A");
  expect([full.lines.join("\n").includes("Not entered"), full.alt.includes("Blank"), full.alt.includes("for .")]).toEqual([false, false, false]);
  // Where members differ, the way is to look at what they say.
  const differ = cardWords().card({
    ...{ nickname: "Heron", equipment, recovery: null, saved: false },
    rows: [{ key: "fuses", said: [], differ: true }],
  });
  expect(differ.lines).toContain("- Fuses: /spec bike:Heron what:fuses shows what members say");
  expect(differ.lines.join("\n")).toContain("- Recovery: /bike card recovery:");
  expect(differ.alt).toContain("Recovery is blank: /bike card recovery:");
  expect([card(null).lines.join("\n").includes("- Fuses: /spec bike:Heron what:fuses value:…"), card(null).alt.includes("Blank")]).toEqual([true, true]);
});
