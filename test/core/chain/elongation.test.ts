// Chain wear against published lengths over 20 pitches.

import { describe, expect, test } from "vitest";
import { elongation, judgeElongation, otherCount, ownLimit, pitchMeasured, pitchOf, shareTyped } from "../../../src/core/chain/elongation.ts";
import { pitchesIn, withoutPitches } from "../../../src/core/chain/pitches.ts";
import { ELONGATION } from "../../../src/trade/chain.ts";

test.each([
  ["1.5 %", 0.015],
  ["1,5%", 0.015],
  ["at most 2 percent", 0.02],
  ["3 % longer", 0.03],
  ["321 mm", null],
  ["1.5", null],
])("a limit typed %s", (typed, share) => expect(shareTyped(typed)).toBe(share));

describe("a chain's length", () => {
  // ISO 606, ANSI B29.1: 1/2 in for the 4xx, 5/8 in for the 5xx.
  test.each([
    ["415", 12.7],
    ["420", 12.7],
    ["428", 12.7],
    ["520", 15.875],
    ["525", 15.875],
    ["530 x-ring", 15.875],
    // ANSI B29.1: 3/4 in, from memory.
    ["630", 19.05],
  ])("%s has a pitch of %d mm", (size, pitch) => expect(pitchOf(size)).toBeCloseTo(pitch, 9));
  test("what is no size of a motorcycle chain has none", () => expect(pitchOf("chain")).toBeNull());

  // 20 pitches, 21 pins: 317.5 mm new (5xx), 254.0 mm (428); 3 % is 327.0 and 261.6 mm as printed.
  test.each([
    ["520", 317.5, 0],
    ["520", 319.0875, 0.005],
    ["520", 320.675, 0.01],
    ["520", 322.2625, 0.015],
    ["520", 323.85, 0.02],
    ["530", 325.4375, 0.025],
    ["520", 327.025, 0.03],
    ["428", 254, 0],
    ["428", 260.35, 0.025],
    ["428", 261.62, 0.03],
  ])("20 pitches of %s at %d mm are longer by %d", (size, length, longer) => {
    expect(elongation(length, 20, pitchOf(size) ?? 0)).toBeCloseTo(longer, 9);
  });
  test("a chain maker's general limit of 3 %, good to 66 teeth on the larger sprocket, is the most of the rule, and no published one is below its least", () => {
    // Chain makers' engineering pages: 3 %, or 200 / N % of a larger sprocket of N teeth; 1.5 % where nothing takes up the slack. Bike makers' own: common practice, from 1 %.
    expect(ELONGATION.most).toBe(0.03);
    for (const teeth of [30, 45, 66]) expect(200 / teeth / 100).toBeGreaterThanOrEqual(ELONGATION.most);
    expect(ELONGATION.least).toBe(0.01);
  });
  test("1.5 % is 0.18 in a foot", () => expect(elongation(12.18, 12 / 0.625, 0.625)).toBeCloseTo(0.015, 9));
});

describe("judged", () => {
  const of = (length: number, own: number | null = null) => judgeElongation(length, 20, 15.875, own, ELONGATION);
  test("by the bike's own limit when it is known", () => {
    expect(of(319, 0.01).judgement).toMatchObject({ is: "within" });
    expect(of(320, 0.01).judgement).toMatchObject({ is: "near limit", side: "high" });
    expect(of(321.2, 0.01).judgement).toMatchObject({ is: "beyond limit" });
    // Near is the last quarter of it: 317.5 mm x 1.0074 and x 1.0076.
    expect(of(319.85, 0.01).judgement.is).toBe("within");
    expect(of(319.92, 0.01).judgement.is).toBe("near limit");
  });
  test("without one: good below every published limit, worn beyond every one, and in between near its limit until the manual says", () => {
    expect(of(319).judgement.is).toBe("within");
    expect(of(319.92).judgement.is).toBe("near limit");
    expect(of(320.4).judgement.is).toBe("near limit");
    // From one per cent on, to the step of the rule, the first manuals say stop and others do not.
    const perhaps = { is: "near limit", side: "high", limit: { max: 0.01, unsettled: { upTo: 0.03, lacks: "limit" } } };
    for (const length of [320.6, 320.7, 323, 326.7]) expect(of(length).judgement).toMatchObject(perhaps);
    expect(of(327.1).judgement.is).toBe("at limit");
    expect(of(329).judgement.is).toBe("beyond limit");
  });
  test("the longer of two chains is never judged the milder, whatever is known of its limit", () => {
    const order = ["within", "near limit", "at limit", "beyond limit"];
    for (const own of [null, 0.01, 0.015, 0.03]) {
      const ranks = Array.from({ length: 130 }, (_, n) => order.indexOf(of(317.5 + n * 0.1, own).judgement.is));
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
      expect(ranks[0]).toBe(0);
      expect(ranks.at(-1)).toBe(3);
    }
  });
  test("twenty pins counted instead of twenty-one show as a pitch too few", () => {
    // The usual slip: 19 pitches are 301.625 mm.
    expect(of(313.5)).toMatchObject({ judgement: { is: "cannot tell", missing: ["readings"] } });
    expect(of(314.5).judgement.is).toBe("within");
    expect(of(303)).toMatchObject({ judgement: { is: "cannot tell" }, miscounted: true });
    expect(of(250)).toMatchObject({ miscounted: false });
  });
  test("a pitch more than was counted is no chain worn by a twentieth: it is counted again", () => {
    // 21 pitches are 333.375 mm.
    expect(of(333.4)).toMatchObject({ judgement: { is: "cannot tell" }, miscounted: true });
    expect(of(331).judgement.is).toBe("beyond limit");
  });
});

describe("without the chain's size", () => {
  // ISO 606: 12.7, 15.875 and 19.05 mm are a fifth and more apart.
  test.each([
    [322, 20, 15.875],
    [257, 20, 12.7],
    [381, 20, 19.05],
    [303, 20, null],
    [280, 20, null],
  ])("%d mm over %d pitches is a pitch of %s", (length, pitches, pitch) => {
    const found = pitchMeasured(length, pitches);
    if (pitch === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(pitch, 9);
  });
});

describe("a printed longest length", () => {
  test("stands for the same share over the pitches measured or over the manual's own", () => {
    // 3 % of 20 pitches lies nearer to 21 pitches than to 20.
    expect(ownLimit(20 * 15.875 * 1.03, 20, 15.875)).toBeCloseTo(0.03, 9);
    expect(ownLimit(20 * 15.875 * 1.03, 10, 15.875)).toBeCloseTo(0.03, 9);
    expect(ownLimit(20 * 15.875 * 1.01, 16, 15.875)).toBeCloseTo(0.01, 9);
  });
  test("is not taken where no count of pitches fits it", () => {
    expect(ownLimit(10 * 15.875 * 1.07, 10, 15.875)).toBeNull();
    expect(ownLimit(10 * 15.875 * 1.05, 10, 15.875)).toBeNull();
  });
});

describe("the pitches that a manual's length names", () => {
  test.each([
    ["321 mm over 20 pitches", 20, "321 mm"],
    ["259 mm / 21 pins", 20, "259 mm"],
    ["323.9 mm (20 links)", 20, "323.9 mm"],
    ["321 mm über 20 Glieder", 20, "321 mm"],
    ["321 mm", null, "321 mm"],
    ["1.5 %", null, "1.5 %"],
  ])("“%s”: %s", (typed, pitches, alone) => {
    expect(pitchesIn(typed)).toBe(pitches);
    expect(withoutPitches(typed)).toBe(alone);
  });
});

test("a count that is one off is found where but one fits", () => {
  const rule = { most: 0.03 };
  expect(otherCount(308, 20, null, rule)).toMatchObject({ pitches: 19, pitch: 15.875 });
  expect(otherCount(334, 20, 15.875, rule)).toMatchObject({ pitches: 21 });
  expect(otherCount(285, 20, null, rule)).toBeNull();
});
