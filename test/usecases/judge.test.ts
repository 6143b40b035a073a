// Readings judged by what is known of a bike: its specs, the law of its place, the trade.

import { describe, expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { Instant } from "../../src/core/calendar/dates.ts";
import type { BikeId, MemberId } from "../../src/core/ids.ts";
import { toCanonical, type UnitId } from "../../src/core/quantity/units.ts";
import type { ReadingDetail } from "../../src/core/reading/detail.ts";
import type { Place, ReadingKind } from "../../src/core/reading/kinds.ts";
import type { Taken } from "../../src/core/schedule/measured.ts";
import type { Spec } from "../../src/core/spec/spec.ts";
import { KINDS } from "../../src/trade/kinds.ts";
import type { SpecKey } from "../../src/trade/spec-keys.ts";
import { endsNew, judgeAll, judgeTaken, verdictsOf } from "../../src/usecases/judge.ts";
import type { Rig } from "../../src/usecases/judged.ts";

const BIKE = { kind: "chain-drive twin", id: "b1" as BikeId, equipment: KINDS["chain-drive twin"].equipment };
const rig = (specs: readonly Spec[] = [], place: string | null = null, use: Rig["use"] = null): Rig => ({
  bike: BIKE,
  specs,
  place,
  use,
  trips: [],
  homed: true,
  ways: new Map(),
  air: new Map(),
  otherBattery: null,
  looked: true,
});

const airOn = (day: string, celsius: number, message = "said together"): Rig["air"] => new Map([[localDate(day), [{ celsius, message }]]]);

let n = 0;
const taken = (kind: ReadingKind, value: number, more: { place?: Place; on?: string; detail?: ReadingDetail; unit?: UnitId; at?: string } = {}): Taken => ({
  ...{ id: `r${n++}`, kind, place: more.place ?? null, on: localDate(more.on ?? "2026-11-26"), value, unit: more.unit ?? "mm" },
  ...{ typed: "", detail: more.detail ?? null, loggedAt: more.at ?? "2026-11-26T09:00:00.000Z", ordinal: n, message: "said together" },
});
const figure = (key: SpecKey, low: number | null, high: number | null, use: Spec["use"] = null): Spec => ({
  ...{ id: `s${n++}`, rev: 1, bike: BIKE.id, key, use, typed: "", by: "m1" as MemberId, at: "2026-11-01T00:00:00.000Z" as Instant },
  holds: { is: "figure", low, high, nominal: null, unit: "mm", step: 1 },
  source: { manual: "Heron workshop manual", edition: null, page: "4-12" },
});
const words = (key: SpecKey, typed: string): Spec => ({ ...figure(key, null, null), holds: { is: "words" }, typed });
const verdict = (each: Taken, r: Rig = rig()) => {
  const judged = judgeTaken(each, r);
  return judged?.judgement.is === "cannot tell" ? judged.judgement.missing[0] : judged?.judgement.is;
};

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

test("what was left stands, even where what was found is said behind it", () => {
  const detail = (state: "found" | "left"): ReadingDetail => ({ conditions: ["upright"], state });
  const all = judgeAll(
    [taken("chain slack", 30, { detail: detail("left") }), taken("chain slack", 45, { detail: detail("found") })],
    rig([figure("chain slack", 25, 35)]),
  );
  expect(all.map(({ value, judgement }) => [value, judgement.is])).toEqual([[30, "within"]]);
});

test("a low battery says at which frost it bursts; a lithium one does not freeze but is never charged in frost", () => {
  const low = taken("battery voltage", 11.89, { unit: "V" });
  // US Army TM 5-1185 at the specific gravity of an empty battery, 1.120: +13 °F, by a straight line between 1.100 (+19 °F) and 1.150 (+5 °F).
  const flooded = { ...BIKE, equipment: { ...BIKE.equipment, battery: "flooded" as const } };
  expect(judgeTaken(low, { ...rig(), bike: flooded })?.freezes).toBeCloseTo((13.4 - 32) / 1.8, 6);
  const lithium = { ...BIKE, equipment: { ...BIKE.equipment, battery: "lithium" as const } };
  expect(judgeTaken(low, { ...rig(), bike: lithium })).toMatchObject({ judgement: { is: "beyond limit" }, freezes: null });
});

test("a lead battery read in frost has the charge that its volts mean there; a lithium one is taken as it is", () => {
  const read = taken("battery voltage", 12.45, { unit: "V", detail: { conditions: ["rested"] } });
  const flooded = { ...rig(), bike: { ...BIKE, equipment: { ...BIKE.equipment, battery: "flooded" as const } } };
  const cold = { ...flooded, air: airOn(read.on, 0) };
  // Battery Council International: 12.45 V is three quarters at 80 °F; 0.04 V more is a fifth of the step to full.
  expect(judgeTaken(read, flooded)).toMatchObject({ share: expect.closeTo(0.75, 9), air: null });
  expect(judgeTaken(read, cold)).toMatchObject({ share: expect.closeTo(0.8, 9), air: 0 });
  expect(judgeTaken({ ...read, on: localDate("2026-11-27") }, cold)).toMatchObject({ air: null });
  // What was noted otherwise that day sets no volts right; where it may have frozen at that, it is told whose cold that was.
  const elsewhere = (celsius: number): Rig => ({ ...flooded, air: airOn(read.on, celsius, "of a ride") });
  expect(judgeTaken(read, elsewhere(-20))).toMatchObject({ share: expect.closeTo(0.75, 9), air: null, airKept: null, alarm: null });
  expect(judgeTaken({ ...read, value: 11.9 }, elsewhere(-20))).toMatchObject({ air: null, airKept: -20, alarm: "frozen" });
  const lithium = { ...cold, bike: { ...BIKE, equipment: { ...BIKE.equipment, battery: "lithium" as const } } };
  expect(judgeTaken({ ...read, value: 12.8 }, lithium)).toMatchObject({ judgement: { is: "at limit" }, air: null });
});

describe("brake fluid by a tester", () => {
  const filled = (brakeFluid: Rig["bike"]["equipment"]["brakeFluid"]): Rig => ({ ...rig(), bike: { ...BIKE, equipment: { ...BIKE.equipment, brakeFluid } } });
  // 49 CFR 571.116 S5.1.2: least wet boiling points of 140, 155 and 180 °C. DOT 5.1 meets what is asked of DOT 5.
  test.each([
    ["DOT 3", 139, "beyond limit"],
    ["DOT 3", 140, "at limit"],
    ["DOT 3", 150, "near limit"],
    ["DOT 4", 150, "beyond limit"],
    ["DOT 4", 155, "at limit"],
    ["DOT 4", 190, "within"],
    ["DOT 5.1", 170, "beyond limit"],
    ["DOT 5", 179, "beyond limit"],
    ["mineral oil", 150, "fluid figure"],
    ["none", 150, "fitted"],
  ] as const)("%s that boils at %d °C: %s", (fluid, celsius, is) => {
    expect(verdict(taken("brake fluid boiling point", celsius, { unit: "°C" }), filled(fluid))).toBe(is);
  });
  // Common practice: changed from 3 % on; 49 CFR 571.116 S6.2 tests as wet at about 3.7 %. Silicone takes up none.
  test.each([
    ["DOT 4", 1, "within"],
    ["DOT 4", 2.5, "near limit"],
    ["DOT 4", 3, "at limit"],
    ["DOT 5.1", 4, "beyond limit"],
    ["DOT 5", 4, "fluid figure"],
  ] as const)("%s with %d %% of water: %s", (fluid, percent, is) => {
    expect(verdict(taken("brake fluid water", percent), filled(fluid))).toBe(is);
  });
  test("makes the change of fluid due", () => {
    expect(judgeTaken(taken("brake fluid boiling point", 150, { unit: "°C" }), filled("DOT 4"))).toMatchObject({ item: "brake-fluid.replace", by: "spec" });
  });
});

test("a disc's runout and the points' gap go by the bike's own figure alone", () => {
  const runout = taken("disc runout", 0.25, { place: "front left" });
  expect(verdict(runout)).toBe("limit");
  expect(verdict(runout, rig([figure("front disc runout limit", null, 0.3)]))).toBe("near limit");
  expect(judgeTaken(runout, rig([figure("front disc runout limit", null, 0.2)]))).toMatchObject({
    ...{ judgement: { is: "beyond limit", side: "high" }, item: "front-discs.measure" },
  });
  const points = { ...rig([figure("points gap", 0.3, 0.4)]), bike: { ...BIKE, equipment: { ...BIKE.equipment, ignition: "points" as const } } };
  expect([0.25, 0.35, 0.45].map((mm) => verdict(taken("points gap", mm), points))).toEqual(["beyond limit", "within", "beyond limit"]);
});

test("one figure of a manual is a window around itself, no narrower than the tool's step, and outside it is beyond it", () => {
  const of =
    (kind: ReadingKind, key: SpecKey, only: number, detail: ReadingDetail = {}, place?: Place) =>
    (mm: number) =>
      verdict(taken(kind, mm, { detail, ...(place === undefined ? {} : { place }) }), rig([figure(key, only, only)]));
  const gap = of("plug gap", "spark plug gap", 1);
  expect([0.9, 0.93, 0.95, 1, 1.05, 1.07, 1.1].map(gap)).toEqual([
    ...["beyond limit", "beyond limit", "near limit", "within", "near limit", "beyond limit", "beyond limit"],
  ]);
  // With no play at all it is never within, however little the manual asks for.
  expect([0, 0.5].map(of("throttle free play", "throttle free play", 1))).toEqual(["beyond limit", "near limit"]);
  // Common practice: chains are set within some 5 mm, small valve clearances within 0.02 mm.
  expect([24, 26, 30, 32, 36].map(of("chain slack", "chain slack", 30, { conditions: ["upright"] }))).toEqual([
    ...["beyond limit", "within", "within", "within", "beyond limit"],
  ]);
  expect([0.02, 0.04, 0.05, 0.08].map(of("valve clearance", "intake valve clearance", 0.05, { conditions: ["cold"] }, "intake"))).toEqual([
    ...["beyond limit", "within", "within", "beyond limit"],
  ]);
});

test.each([
  // Common practice, where the manual's own window is not known; the limits of trade/battery.ts told from outside.
  ["flooded", 13.4, "beyond limit", "low"],
  ["flooded", 13.5, "near limit", "low"],
  ["flooded", 14.4, "within", null],
  ["flooded", 15, "near limit", "high"],
  ["flooded", 15.1, "beyond limit", "high"],
  ["AGM", 14.9, "beyond limit", "high"],
  ["gel", 14.6, "beyond limit", "high"],
  ["lithium", 14.6, "near limit", "high"],
  ["lithium", 14.7, "beyond limit", "high"],
  ["lithium", 13.5, "beyond limit", "low"],
] as const)("a charging circuit of a %s battery at %d V and 5,000 rpm is %s", (battery, volts, is, side) => {
  const bike = { ...BIKE, equipment: { ...BIKE.equipment, battery } };
  const read = taken("charging voltage", volts, { unit: "V", detail: { rpm: 5000 } });
  expect(judgeTaken(read, { ...rig(), bike })?.judgement).toMatchObject({ is, side });
});

// A single figure of a manual has 5 % around it, yet never more than the battery bears: 14.8, 14.5 and 14.6 V (common practice).
test.each([
  ["AGM", 14.4, 14.9, "beyond limit"],
  ["gel", 14.5, 14.7, "beyond limit"],
  ["gel", 14.5, 14.5, "within"],
  ["lithium", 14.4, 15.1, "beyond limit"],
  ["lithium", 14.4, 14.5, "within"],
  ["lithium", 14.4, 13.4, "beyond limit"],
  // The manual's own figure has the last word.
  ["lithium", 14.8, 14.8, "within"],
] as const)("a charging circuit of a %s battery, %d V by its manual, is at %d V %s", (battery, manual, volts, is) => {
  const spec: Spec = { ...figure("battery charging voltage", manual, manual), typed: `${manual} V` };
  const of: Rig = { ...rig([spec]), bike: { ...BIKE, equipment: { ...BIKE.equipment, battery } } };
  expect(verdict(taken("charging voltage", volts, { unit: "V", detail: { rpm: 5000 } }), of)).toBe(is);
});

test("what a circuit of 6 V charges with is no fault of one of 12 V; its manual's own window judges it", () => {
  const read = taken("charging voltage", 7.2, { unit: "V", detail: { rpm: 3000 } });
  expect(verdict(read)).toBe("six volts");
  expect(verdict(read, rig([figure("battery charging voltage", 6.8, 7.5)]))).toBe("within");
});

test.each([
  // A flooded battery wants charging at 12.4 V, one with its acid bound at 12.5 V (common practice).
  ["flooded", 12.4, "at limit"],
  ["flooded", 12.5, "near limit"],
  ["AGM", 12.5, "at limit"],
  ["AGM", 12.45, "beyond limit"],
  ["gel", 12.5, "at limit"],
] as const)("a %s battery at rest at %d V is %s", (battery, volts, is) => {
  const bike = { ...BIKE, equipment: { ...BIKE.equipment, battery } };
  expect(verdict(taken("battery voltage", volts, { unit: "V", detail: { conditions: ["rested"] } }), { ...rig(), bike })).toBe(is);
});

test("near the end of a window is at most a fifth of it: of 25 to 35 mm of slack, 2 mm", () => {
  const slack = (mm: number) => verdict(taken("chain slack", mm, { detail: { conditions: ["upright"] } }), rig([figure("chain slack", 25, 35)]));
  expect([27, 27.5, 32.5, 33].map(slack)).toEqual(["near limit", "within", "within", "near limit"]);
  // 0.10 to 0.15 mm: a hundredth, although the row says two.
  const specs = [figure("intake valve clearance", 0.1, 0.15)];
  const valve = (mm: number) => verdict(taken("valve clearance", mm, { place: "intake 1", detail: { conditions: ["cold"] } }), rig(specs));
  expect([0.11, 0.12, 0.125, 0.13, 0.14].map(valve)).toEqual(["near limit", "within", "within", "within", "near limit"]);
});

describe("nothing is called good that is not", () => {
  test("a member's tread limit below the law's does not stand: the law's does", () => {
    const own = figure("rear tread limit", 1, null);
    expect(judgeTaken(taken("tread", 1.3, { place: "rear" }), rig([own], "Germany"))).toMatchObject({ judgement: { is: "beyond limit" }, by: "law" });
    expect(judgeTaken(taken("tread", 1.3, { place: "rear" }), rig([own], "United Kingdom"))).toMatchObject({ judgement: { is: "near limit" }, by: "spec" });
  });
  test("two up, a pressure right for one is not called good; one too low for one is told", () => {
    const solo = figure("front tyre pressure", toCanonical(34, "psi"), toCanonical(34, "psi"), "solo");
    const psi = (value: number) => taken("cold pressure", toCanonical(value, "psi"), { place: "front", unit: "psi" });
    expect(verdict(psi(34), rig([solo], null, "two-up"))).toBe("load");
    expect(verdict(psi(38), rig([solo], null, "two-up"))).toBe("load");
    expect(verdict(psi(20), rig([solo], null, "two-up"))).toBe("beyond limit");
    expect(verdict(psi(34), rig([solo]))).toBe("within");
  });
  test("two up, a sag right for one says nothing", () => {
    const sag = (use: Rig["use"]) => verdict(taken("rider sag", 35, { place: "rear" }), rig([figure("rear rider sag", 30, 40, "solo")], null, use));
    expect([sag(null), sag("two-up")]).toEqual(["within", "load"]);
  });
  test("beyond 60 % of antifreeze a share says nothing sure", () => {
    // US Army ordnance lesson on coolant solutions: 60 % protects best, more and less do so less.
    const share = (percent: number) => verdict(taken("antifreeze share", percent), rig([figure("coolant strength", null, -37)]));
    expect([share(40), share(50), share(60), share(61)]).toEqual(["beyond limit", "near limit", "within", "frost point"]);
  });
  test("a cable without play is told whatever the manual; with play only the manual tells", () => {
    expect(judgeTaken(taken("throttle free play", 0), rig())).toMatchObject({ judgement: { is: "beyond limit", side: "low" }, item: "throttle-cable.adjust" });
    expect(verdict(taken("clutch free play", 0), rig())).toBe("beyond limit");
    expect(verdict(taken("throttle free play", 3), rig())).toBe("limit");
  });
  test("oil above the full mark is told upright, and not on the side stand", () => {
    expect(judgeTaken(taken("oil level", 5, { detail: { conditions: ["upright"] } }), rig())?.judgement).toMatchObject({ is: "beyond limit", side: "high" });
    expect(verdict(taken("oil level", 5, { detail: { conditions: ["on the side stand"] } }), rig())).toBe("stood upright");
    expect(verdict(taken("oil level", 4, { detail: { conditions: ["upright"] } }), rig())).toBe("within");
  });
});

test("a chain's limit is told as a length over the pitches measured", () => {
  // 3 % of 20 pitches of 15.875 mm is 327.025 mm (chain makers' engineering pages).
  const judged = judgeTaken(taken("chain length", 329, { detail: { pitches: 20 } }), rig());
  expect(judged?.judgement).toMatchObject({ is: "beyond limit", side: "high", room: expect.closeTo(-1.975, 6), limit: { max: expect.closeTo(327.025, 6) } });
});

test("coolant that stands less frost than its spec asks for is told, and makes the coolant due; one degree of the tester is no matter", () => {
  const spec = figure("coolant strength", null, -37);
  const read = (celsius: number) => judgeTaken(taken("coolant strength", celsius, { unit: "°C" }), rig([spec]));
  expect(read(-45)?.judgement.is).toBe("within");
  expect(read(-39)?.judgement).toMatchObject({ is: "near limit", side: "high" });
  expect(read(-37)?.judgement.is).toBe("near limit");
  expect(read(-20)).toMatchObject({ judgement: { is: "beyond limit", side: "high", room: -17 }, item: "coolant.replace" });
  expect(verdict(taken("coolant strength", -20, { unit: "°C" }), rig())).toBe("limit");
});

test("a tyre on one end alone is told from a pair, and one that was not put on is none", () => {
  const did = (...items: readonly (readonly [string, "replaced" | "could not do"])[]) => endsNew(items.map(([item, outcome]) => ({ item, outcome })));
  expect(did(["rear-tyre.replace", "replaced"])).toBe(1);
  expect(did(["rear-tyre.replace", "replaced"], ["front-tyre.replace", "replaced"])).toBe(2);
  expect(did(["rear-tyre.replace", "replaced"], ["front-tyre.replace", "could not do"])).toBe(1);
  expect(did(["chain.replace", "replaced"])).toBe(0);
});
