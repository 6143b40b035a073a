// Readings judged by what is known of a bike: its specs, the law of its place, the trade.

import { describe, expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import { toCanonical } from "../../src/core/quantity/units.ts";
import type { ReadingDetail } from "../../src/core/reading/detail.ts";
import type { Place, ReadingKind } from "../../src/core/reading/kinds.ts";
import type { Spec } from "../../src/core/spec/spec.ts";
import { judgeAll, judgeTaken, verdictsOf } from "../../src/usecases/judge.ts";
import type { Rig } from "../../src/usecases/judged.ts";

import { airOn, BIKE, figure, rig, taken, verdict, words } from "./judging.ts";

describe("tread", () => {
  const rear = (mm: number) => taken("tread", mm, { place: "rear" });
  // United Kingdom 1.0 mm, Germany and Austria 1.6 mm (C&U Regulations 1986 reg. 27; StVZO section 36; KDV section 4(4)); United States: the bars of 1/32 in.
  test.each([
    ["Germany", 1.7, "near limit"],
    ["Germany", 1.6, "at limit"],
    ["Germany", 1.4, "beyond limit"],
    ["United Kingdom", 1.4, "near limit"],
    ["United Kingdom", 0.9, "beyond limit"],
    ["United States", 1, "near limit"],
    ["United States", 0.8, "at limit"],
    [null, 0.6, "beyond limit"],
    [null, 4, "within"],
  ])("in %s %d mm is %s", (place, mm, is) => expect(verdict(rear(mm), rig([], place))).toBe(is));
  test("the bike's own limit goes before the law", () => {
    expect(verdict(rear(1.8), rig([figure("rear tread limit", 2, null)], "Germany"))).toBe("beyond limit");
  });
  test("at it or beyond it is not ridden on, and makes that tyre due", () => {
    expect(judgeTaken(rear(0.5), rig())).toMatchObject({ doNotRide: true, item: "rear-tread.measure", by: "bars", caution: "tyres" });
    expect(judgeTaken(rear(0.8), rig())).toMatchObject({ judgement: { is: "at limit" }, doNotRide: true, item: "rear-tread.measure" });
    expect(judgeTaken(rear(1), rig())).toMatchObject({ judgement: { is: "near limit" }, doNotRide: false });
  });
});

test("a limit that was stored as its other side is not judged by, and a window by the side that it has", () => {
  const pads = (mm: number) => taken("pad thickness", mm, { place: "rear" });
  // What holds then is the trade's own: 1 mm of lining, common practice.
  expect(judgeTaken(pads(0.6), rig([figure("rear pad limit", null, 1.5)]))).toMatchObject({ judgement: { is: "beyond limit", side: "low" }, by: "practice" });
  expect(judgeTaken(pads(1), rig([figure("rear pad limit", 1, 2)]))).toMatchObject({ judgement: { is: "at limit", side: "low" }, by: "spec", doNotRide: true });
  expect(judgeTaken(pads(5), rig([figure("rear pad limit", 1, 2)]))).toMatchObject({ judgement: { is: "within" } });
  expect(verdict(taken("disc thickness", 4.5, { place: "rear" }), rig([figure("rear disc limit", null, 5)]))).toBe("limit");
});

describe("pressure", () => {
  const psi = (value: number, place: Place = "front") => taken("cold pressure", toCanonical(value, "psi"), { place, unit: "psi" });
  const specs = [34, 40].map((value, two) => figure("front tyre pressure", toCanonical(value, "psi"), toCanonical(value, "psi"), two ? "two-up" : "solo"));
  test("solo is taken unless the bike is ridden two-up", () => {
    expect(judgeTaken(psi(34), rig(specs))).toMatchObject({ judgement: { is: "within" }, add: 0 });
    expect(judgeTaken(psi(34), rig(specs, null, "two-up"))).toMatchObject({ judgement: { is: "at limit", side: "low" } });
    expect((judgeTaken(psi(31), rig(specs))?.add ?? 0) / toCanonical(1, "psi")).toBeCloseTo(3, 9);
  });
  test("on a planned trip it is what that load asks for, and solo again after it", () => {
    const away: Rig = { ...rig(specs), trips: [{ from: localDate("2026-11-20"), to: localDate("2026-11-27"), use: "two-up" }] };
    expect(judgeTaken(psi(34), away)).toMatchObject({ judgement: { is: "at limit", side: "low" }, use: "two-up" });
    expect(judgeTaken({ ...psi(34), on: localDate("2026-11-28") }, away)).toMatchObject({ judgement: { is: "within" }, use: null });
    const solo: Rig = { ...rig(specs, null, "two-up"), trips: [{ from: localDate("2026-11-20"), to: localDate("2026-11-27"), use: "solo" }] };
    expect(verdict(psi(34), solo)).toBe("within");
  });
  test("without a spec it cannot tell", () => expect(verdict(psi(34, "rear"), rig(specs))).toBe("limit"));
});

describe("what a measure needs to be known", () => {
  const slack = figure("chain slack", 25, 35);
  test("a slack is judged when it is known how the bike stood; one that hangs down is told either way", () => {
    expect(verdict(taken("chain slack", 30), rig([slack]))).toBe("upright");
    expect(verdict(taken("chain slack", 30, { detail: { conditions: ["on the side stand"] } }), rig([slack]))).toBe("within");
    expect(verdict(taken("chain slack", 15), rig([slack]))).toBe("upright");
    expect(judgeTaken(taken("chain slack", 70), rig([slack]))).toMatchObject({ judgement: { is: "beyond limit", side: "high" }, doNotRide: true });
    expect(verdict(taken("chain slack", 15, { detail: { conditions: ["under load", "upright"] } }), rig([slack]))).toBe("unladen");
  });
  test("said to be taken the wrong way it proves nothing", () => {
    const rigged = rig([figure("intake valve clearance", 0.1, 0.15)]);
    expect(verdict(taken("valve clearance", 0.02, { place: "intake", detail: { conditions: ["warm"] } }), rigged)).toBe("cooled");
    expect(verdict(taken("brake fluid level", 1, { place: "front", detail: { conditions: ["on the side stand"] } }), rig())).toBe("stood upright");
    // Empty it is whichever way it stands.
    expect(judgeTaken(taken("brake fluid level", 0, { place: "front", detail: { conditions: ["on the side stand"] } }), rig())).toMatchObject({
      doNotRide: true,
    });
  });
  test("a charging voltage is judged at more than an idle, and by an idle that is said whatever was kept", () => {
    const kept: Rig = { ...rig(), ways: new Map([["charging voltage", { rpm: 5000 }]]) };
    const volts = (value: number, detail: ReadingDetail) => taken("charging voltage", value, { unit: "V", detail });
    expect(verdict(volts(13.2, { rpm: 900 }), kept)).toBe("revs");
    expect(verdict(volts(13.2, { conditions: ["idling"] }), kept)).toBe("revs");
    // Idling within its window it charges; whether it overcharges shows at speed.
    expect(verdict(volts(14.4, { conditions: ["idling"] }), kept)).toBe("more revs");
    expect(verdict(volts(13.2, { rpm: 4000 }), kept)).toBe("beyond limit");
    // From 2,000 a minute on it is no idle (common practice).
    expect([1999, 2000].map((rpm) => verdict(volts(13.2, { rpm }), kept))).toEqual(["revs", "beyond limit"]);
    // Too high it is at any speed.
    expect(verdict(volts(15.6, { rpm: 900 }), kept)).toBe("beyond limit");
  });
  test("a figure that its manual prints for a warm engine is judged warm, and one for so many revolutions at those", () => {
    const warm = rig([{ ...figure("exhaust valve clearance", 0.1, 0.15), typed: "0.10-0.15 mm warm" }]);
    const exhaust = (conditions: NonNullable<ReadingDetail["conditions"]>) =>
      verdict(taken("valve clearance", 0.12, { place: "exhaust", detail: { conditions } }), warm);
    expect([exhaust(["warm"]), exhaust(["cold"])]).toEqual(["within", "warmed"]);
    const charging = rig([{ ...figure("battery charging voltage", 14, 14.8), typed: "14.0-14.8 V at 5000 rpm" }]);
    const volts = (value: number, rpm: number) => verdict(taken("charging voltage", value, { unit: "V", detail: { rpm } }), charging);
    // Slower than that it proves nothing when it is low; what it reaches slower it reaches there.
    expect([volts(13.6, 3000), volts(14.2, 3000), volts(13.6, 4500), volts(15.2, 3000)]).toEqual(["revs", "within", "beyond limit", "beyond limit"]);
  });
  test("a belt is judged at the force that its manual names, not at another one", () => {
    const belt = rig([figure("belt deflection", 8, 13)]);
    const driven: Rig = { ...belt, bike: { ...belt.bike, equipment: { ...belt.bike.equipment, finalDrive: "belt" } } };
    const kept: Rig = { ...driven, ways: new Map([["belt deflection", { conditions: ["at force"] }]]) };
    expect(verdict(taken("belt deflection", 20, { detail: { force: "100 N" } }), kept)).toBe("at force");
    expect(verdict(taken("belt deflection", 20), kept)).toBe("beyond limit");
  });
  test("a battery is rested after six hours; so cold or so low that it is more than flat it says so", () => {
    const volts = (value: number, detail: ReadingDetail) => taken("battery voltage", value, { unit: "V", detail });
    expect(verdict(volts(13, { conditions: ["rested"], stood: 2 }), rig())).toBe("longer rest");
    expect(verdict(volts(12.8, { conditions: ["rested"], stood: 8 }), rig())).toBe("within");
    const cold: Rig = { ...rig(), air: airOn("2026-11-26", -25) };
    const rested: ReadingDetail = { conditions: ["rested"] };
    expect(judgeTaken(volts(12, rested), cold)?.alarm).toBe("frozen");
    expect(judgeTaken(volts(12.7, rested), cold)?.alarm).toBe(null);
    expect(judgeTaken(volts(10.2, rested), rig())?.alarm).toBe("more than flat");
    expect(judgeTaken(volts(5.8, rested), rig())?.alarm).toBe("six volts");
  });
  test("of air within 3 degrees of where its acid freezes it may be frozen; which volts are more than flat goes by its cells", () => {
    const of = (battery: "flooded" | "AGM" | "lithium", value: number, air: number | null = null) =>
      judgeTaken(taken("battery voltage", value, { unit: "V", detail: { conditions: ["rested"] } }), {
        ...{ ...rig(), bike: { ...BIKE, equipment: { ...BIKE.equipment, battery } } },
        air: air === null ? new Map() : airOn("2026-11-26", air),
      })?.alarm;
    // Empty, of a gravity of 1.120, it freezes at 13.4 °F, -10.3 °C (US Army TM 5-1185); the 3 degrees are common practice.
    expect([of("flooded", 11.5, -7.4), of("flooded", 11.5, -7.2)]).toEqual(["frozen", null]);
    // Common practice: a lead-acid battery has lost a cell below 11 V; four lithium iron phosphate cells are harmed below 2.5 V each.
    expect([of("AGM", 11), of("AGM", 10.9), of("lithium", 10), of("lithium", 9.9)]).toEqual([null, "more than flat", null, "more than flat"]);
    expect([of("lithium", 7), of("AGM", 7), of("AGM", 7.1)]).toEqual(["six volts", "six volts", "more than flat"]);
  });
  test("a slack chain is not ridden on from 20 mm beyond its window on (common practice, from memory)", () => {
    const grave = (mm: number) => judgeTaken(taken("chain slack", mm, { detail: { conditions: ["upright"] } }), rig([slack]))?.doNotRide;
    expect([36, 40, 54, 55].map(grave)).toEqual([false, false, false, true]);
  });
  test("a chain with less than half the slack that it needs, or next to none, is not ridden on either (common practice, from memory)", () => {
    const told = (mm: number, conditions: NonNullable<ReadingDetail["conditions"]>, specs = [slack]) =>
      judgeTaken(taken("chain slack", mm, { detail: { conditions } }), rig(specs));
    expect([25, 20, 13, 12.5, 12, 3].map((mm) => told(mm, ["upright"])?.doNotRide)).toEqual([false, false, false, true, true, true]);
    // With nobody on it, that is so whichever way it stood; half the window is not.
    expect([0, 5, 6, 12].map((mm) => told(mm, [])?.doNotRide)).toEqual([true, true, false, false]);
    expect([0, 5].map((mm) => told(mm, ["under load"])?.doNotRide)).toEqual([true, false]);
    expect(told(12, [])).toMatchObject({ judgement: { is: "cannot tell" }, ifSo: { doNotRide: true } });
    // Less than 5 mm is wrong on any bike, so its window need not be known.
    expect([0, 4, 5, 8].map((mm) => told(mm, [], [])?.judgement.is)).toEqual(["beyond limit", "beyond limit", "cannot tell", "cannot tell"]);
    expect(told(0, [], [])).toMatchObject({ doNotRide: true, by: "practice", item: "chain.adjust" });
    // A window that reaches down there is its manual's word.
    expect(told(5, ["upright"], [figure("chain slack", 5, 15)])).toMatchObject({ judgement: { is: "near limit" }, doNotRide: false });
  });
  test("a belt half as slack again as its most is not ridden on, at its force alone (common practice, from memory)", () => {
    const belt = rig([figure("belt deflection", 8, 13)]);
    const driven: Rig = { ...belt, bike: { ...belt.bike, equipment: { ...belt.bike.equipment, finalDrive: "belt" } } };
    const told = (mm: number, conditions: NonNullable<ReadingDetail["conditions"]>) =>
      judgeTaken(taken("belt deflection", mm, { detail: { conditions } }), driven);
    expect([14, 19, 19.5, 25, 2].map((mm) => told(mm, ["at force"])?.doNotRide)).toEqual([false, false, true, true, false]);
    expect(told(25, [])).toMatchObject({ judgement: { is: "cannot tell" }, doNotRide: false, ifSo: { doNotRide: true } });
  });
  test("a pressure is judged by the load that was said with it", () => {
    const both = rig(
      [34, 40].map((value, two) => figure("front tyre pressure", toCanonical(value, "psi"), toCanonical(value, "psi"), two ? "two-up" : "solo")),
    );
    const psi = (value: number, detail: ReadingDetail) => taken("cold pressure", toCanonical(value, "psi"), { place: "front", unit: "psi", detail });
    expect(judgeTaken(psi(40, { load: "two-up" }), both)).toMatchObject({ judgement: { is: "within" }, use: "two-up" });
    expect(verdict(psi(40, { load: "loaded" }), both)).toBe("load");
    expect(judgeTaken(psi(34, { load: "solo" }), { ...both, use: "two-up" })).toMatchObject({ judgement: { is: "within" } });
  });
  test("how it is taken is said once and kept for the bike; that a battery rested is said of each reading", () => {
    const kept = (kind: ReadingKind, detail: ReadingDetail): Rig => ({ ...rig([slack]), ways: new Map([[kind, detail]]) });
    expect(verdict(taken("chain slack", 30), kept("chain slack", { conditions: ["upright"] }))).toBe("within");
    expect(verdict(taken("charging voltage", 14.2, { unit: "V" }), kept("charging voltage", { rpm: 5000 }))).toBe("within");
    expect(verdict(taken("battery voltage", 12.8, { unit: "V" }), kept("battery voltage", { conditions: ["rested"] }))).toBe("rested");
  });
  test("a level says nothing until the bike stood upright, but that it may be low; an empty one is empty however it stands", () => {
    const level = (value: number, detail?: ReadingDetail) => taken("brake fluid level", value, { place: "front", ...(detail === undefined ? {} : { detail }) });
    expect(verdict(level(3))).toBe("upright");
    expect(verdict(level(3, { conditions: ["upright"] }))).toBe("within");
    expect(judgeTaken(level(3), rig())?.ifSo).toBe(null);
    expect(judgeTaken(level(2), rig())).toMatchObject({ judgement: { missing: ["upright"] }, doNotRide: false, ifSo: { judgement: { is: "at limit" } } });
    expect(judgeTaken(level(1), rig())).toMatchObject({
      ...{ judgement: { is: "cannot tell", missing: ["upright"] }, doNotRide: false },
      ifSo: { judgement: { is: "beyond limit" }, doNotRide: true },
    });
    expect(judgeTaken(level(1, { conditions: ["upright"] }), rig())).toMatchObject({ judgement: { is: "beyond limit" }, doNotRide: true, ifSo: null });
    const kept: Rig = { ...rig(), ways: new Map([["brake fluid level", { conditions: ["upright"] }]]) };
    expect(judgeTaken(level(1), kept)).toMatchObject({ judgement: { is: "beyond limit" }, doNotRide: true });
    expect(judgeTaken(level(0), rig())).toMatchObject({ judgement: { is: "beyond limit" }, doNotRide: true, ifSo: null });
  });
  test("compression is judged with the engine warm and the throttle open: closed it reads low, so neither good nor bad is told without", () => {
    const specs = [figure("compression", 1000, 1300)];
    const read = (kPa: number, ...conditions: NonNullable<ReadingDetail["conditions"]>) =>
      judgeTaken(taken("compression", kPa, { unit: "kPa", detail: { conditions } }), rig(specs))?.judgement;
    expect(read(1150)).toEqual({ is: "cannot tell", missing: ["temperature", "throttle open"] });
    expect(read(700, "warm")).toEqual({ is: "cannot tell", missing: ["throttle open"] });
    expect(read(700, "throttle open")).toEqual({ is: "cannot tell", missing: ["temperature"] });
    expect(read(1150, "warm", "throttle open")?.is).toBe("within");
    expect(read(700, "warm", "throttle open")).toMatchObject({ is: "beyond limit", side: "low" });
  });
  test("of what is kept of a way to measure, only what a reading says otherwise gives way", () => {
    const kept: Rig = { ...rig([figure("compression", 1000, 1300)]), ways: new Map([["compression", { conditions: ["warm", "throttle open"] }]]) };
    expect(verdict(taken("compression", 1150, { unit: "kPa", detail: { conditions: ["warm"] } }), kept)).toBe("within");
  });
  test("charging volts need the engine speed, unless they are too high at any", () => {
    const volts = (value: number, rpm?: number) => taken("charging voltage", value, { unit: "V", ...(rpm === undefined ? {} : { detail: { rpm } }) });
    expect(verdict(volts(14.2))).toBe("rpm");
    expect(verdict(volts(14.2, 5000))).toBe("within");
    expect(verdict(volts(15.4))).toBe("beyond limit");
  });
  test("valves are measured cold, and at the tight end are near their limit", () => {
    const valve = (value: number) => taken("valve clearance", value, { place: "exhaust 2", detail: { conditions: ["cold"] } });
    const specs = [figure("exhaust valve clearance", 0.2, 0.3)];
    expect(verdict(valve(0.25), rig(specs))).toBe("within");
    expect(judgeTaken(valve(0.21), rig(specs))?.judgement).toMatchObject({ is: "near limit", side: "low" });
    expect(judgeTaken(valve(0.18), rig(specs))?.judgement).toMatchObject({ is: "beyond limit", side: "low" });
    expect(verdict(taken("valve clearance", 0.25, { place: "intake 1" }), rig(specs))).toBe("limit");
  });
});

describe("a chain's length", () => {
  const length = (mm: number, detail?: ReadingDetail) => taken("chain length", mm, detail === undefined ? {} : { detail });
  test("by its pitches and size, and by the manual's own length", () => {
    const size = words("chain size", "525 x 112");
    expect(judgeTaken(length(319, { pitches: 20 }), rig([size]))).toMatchObject({ judgement: { is: "within" } });
    expect(verdict(length(329, { pitches: 20 }), rig([size]))).toBe("beyond limit");
    expect(verdict(length(322, { pitches: 20 }), rig([size]))).toBe("near limit");
    expect(judgeTaken(length(302.5, { pitches: 20 }), rig([size]))).toMatchObject({ miscounted: true });
    expect(judgeTaken(length(334, { pitches: 20 }), rig([size]))).toMatchObject({ judgement: { is: "cannot tell" }, miscounted: true });
    expect(verdict(length(319))).toBe("pitch");
    expect(verdict(length(321), rig([figure("chain length limit", null, 320.7)]))).toBe("beyond limit");
  });
  test("a count that is one off is told by the length alone, with what it comes to by the count that fits", () => {
    // ISO 606: 19 pitches of 15.875 mm are 301.625 mm, so 308 mm over them is 2.1 % longer than new; over 20 it is shorter than any.
    for (const specs of [[], [figure("chain length limit", null, 321)]])
      expect(judgeTaken(length(308, { pitches: 20 }), rig(specs))).toMatchObject({ judgement: { is: "cannot tell" }, miscounted: true, doNotRide: false });
    expect(judgeTaken(length(308, { pitches: 20 }), rig([figure("chain length limit", null, 321)]))?.ifSo).toMatchObject({
      judgement: { is: "beyond limit" },
      doNotRide: true,
    });
    expect(judgeTaken(length(303, { pitches: 20 }), rig([figure("chain length limit", null, 321)]))?.ifSo).toBeNull();
    expect(verdict(length(285, { pitches: 20 }), rig())).toBe("no such chain");
  });
  test("per cent are held against the bike's own longest length, whatever chain it is of, where that comes to the same", () => {
    const percent = (value: number, specs: Spec[]) => judgeTaken({ ...taken("chain elongation", value), unit: "%" as const }, rig(specs));
    // 317.5 mm are 20 pitches of 15.875 mm and 25 of 12.7 mm (ISO 606): of either 321 mm is 1.1 % longer.
    const own = [figure("chain length limit", null, 321)];
    expect(percent(0.75, own)).toMatchObject({ judgement: { is: "within" }, by: "spec" });
    expect(percent(1.3, own)).toMatchObject({ judgement: { is: "beyond limit" }, by: "spec" });
    // 370 mm are 1.3 % of 23 pitches of 15.875 mm, and 0.5 % of 29 of 12.7 mm.
    const either = figure("chain length limit", null, 370);
    expect([0.2, 0.75, 2.5].map((value) => percent(value, [either])?.judgement)).toMatchObject([
      { is: "within" },
      { is: "near limit", limit: { unsettled: { lacks: "chain size" } } },
      { is: "beyond limit" },
    ]);
    expect(percent(0.75, [either, words("chain size", "525")])?.judgement.is).toBe("within");
    // By the pitches that its manual names.
    expect(percent(1.75, [{ ...figure("chain length limit", null, 323.9), typed: "323.9 mm over 20 pitches" }])?.judgement.is).toBe("near limit");
    // A length of another chain says nothing of this one.
    const other = [{ ...figure("chain length limit", null, 259), typed: "259 mm / 21 pins" }, words("chain size", "525")];
    expect([0.5, 0.75, 3.2].map((value) => percent(value, other)?.judgement.is)).toEqual(["cannot tell", "near limit", "beyond limit"]);
  });
});

describe("what stands of several readings", () => {
  test("the latest day; of that day what was left after adjusting; of two pads the worse", () => {
    const slack = figure("chain slack", 25, 35);
    const at = (conditions: NonNullable<ReadingDetail["conditions"]>) => ({ conditions: conditions ?? [] });
    const stand = at(["upright"]);
    const all = judgeAll(
      [
        taken("chain slack", 50, { on: "2026-11-20", detail: stand }),
        taken("chain slack", 45, { detail: { ...stand, state: "found" } }),
        taken("chain slack", 30, { detail: { ...stand, state: "left" } }),
        taken("pad thickness", 3, { place: "rear", detail: { side: "outer" } }),
        taken("pad thickness", 0.8, { place: "rear", detail: { side: "inner" } }),
        taken("pad thickness", 2.5, { place: "rear", detail: { side: "outer" } }),
        taken("odometer", 5),
      ],
      rig([slack]),
    );
    expect(all.map(({ kind, value }) => [kind, value])).toEqual([
      ["chain slack", 30],
      ["pad thickness", 0.8],
    ]);
    expect(verdictsOf(all)).toMatchObject([
      { item: "chain.adjust", is: "within" },
      { item: "rear-pads.measure", is: "beyond limit", measured: { value: 0.8, limit: 1, side: "low" } },
    ]);
  });
});
