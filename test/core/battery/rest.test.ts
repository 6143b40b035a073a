// Batteries against the Battery Council International table and the US Army's table of freezing points.

import { describe, expect, test } from "vitest";
import { asInTable, chargeAt, chargeBy, falls, freezesAt, judgeResting } from "../../../src/core/battery/rest.ts";
import { fromCanonical } from "../../../src/core/quantity/units.ts";
import { FREEZING, GRAVITY, LOST_A_DAY, REST_TABLES, RESTED_HOURS } from "../../../src/trade/battery.ts";

const judged = (volts: number, chemistry: keyof typeof REST_TABLES, rested: number | null = 12) =>
  judgeResting(volts, REST_TABLES[chemistry], rested, RESTED_HOURS);

describe("resting volts", () => {
  // Battery Council International, 12 V at rest, 80 °F: 12.65, 12.45, 12.24, 12.06, 11.89 V for 100, 75, 50, 25, 0 %.
  test.each([
    [12.65, 1],
    [12.45, 0.75],
    [12.24, 0.5],
    [12.06, 0.25],
    [11.89, 0],
    [12.345, 0.625],
    [13.1, 1],
    [11, 0],
  ])("flooded: %d V is a charge of %d", (volts, charge) => expect(chargeAt(volts, REST_TABLES.flooded)).toBeCloseTo(charge, 9));

  test("12.4 V and less wants charging; a little more is near it", () => {
    expect(judged(12.7, "flooded").judgement.is).toBe("within");
    expect(judged(12.45, "flooded").judgement.is).toBe("near limit");
    expect(judged(12.4, "flooded").judgement.is).toBe("at limit");
    expect(judged(11.9, "flooded").judgement.is).toBe("beyond limit");
  });
  test("fresh off the charger it cannot tell, but low is low", () => {
    expect(judged(12.9, "AGM", 0.5)).toEqual({ judgement: { is: "cannot tell", missing: ["rested"] }, charge: null });
    expect(judged(12.9, "AGM", null).judgement.is).toBe("cannot tell");
    expect(judged(12.1, "AGM", null).judgement.is).toBe("beyond limit");
  });
  test("lithium: no share where the published charts disagree", () => {
    for (const volts of [12.8, 12.9, 13, 13.1, 13.2, 13.3, 13.4]) expect(judged(volts, "lithium").charge).toBeNull();
    expect(judged(13.2, "lithium").judgement.is).toBe("within");
    expect(judged(12.5, "lithium").judgement.is).toBe("beyond limit");
  });
});

test("cold lowers the volts of one charge by a third of what the trade's hydrometer figure says: 26.7 K colder is 0.04 V for six cells", () => {
  // 0.25 mV for each kelvin and cell (Bode, Lead-Acid Batteries; Linden, Handbook of Batteries; from memory); the table is for 80 °F.
  expect(asInTable(12.45, (80 - 32) / 1.8)).toBeCloseTo(12.45, 9);
  expect(asInTable(12.45, 0)).toBeCloseTo(12.45 + 0.04, 9);
  expect(asInTable(12.45, 40)).toBeCloseTo(12.43, 9);
});

describe("freezing", () => {
  // The US Army's table (TM 5-1185, OD 1002) at the specific gravity of each charge, in °F: -76, -39, -12, 3, 13.
  test.each([
    [1, -76],
    [0.75, -39],
    [0.5, -12],
    [0.25, 3],
    [0, 13],
  ])("at a charge of %d it freezes at %d °F", (charge, fahrenheit) => {
    expect(Math.round(fromCanonical(freezesAt(charge, GRAVITY, FREEZING), "°F"))).toBe(fahrenheit);
  });
  test("an empty battery freezes at -10 °C, not at the -10 °F (-23 °C) of the much-copied table", () => {
    expect(freezesAt(0, GRAVITY, FREEZING)).toBeCloseTo((13.4 - 32) / 1.8, 9);
  });
});

describe("standing over winter", () => {
  test("two readings tell when to charge: 12.70 to 12.60 V in 20 days is 12.40 V forty days on", () => {
    const day = chargeBy(
      [
        { day: 0, volts: 12.7 },
        { day: 20, volts: 12.6 },
      ],
      12.4,
      { mean: 0.005, sd: 1 },
    );
    expect(day).toBe(60);
  });
  test("one reading goes by what such batteries usually lose", () => {
    expect(chargeBy([{ day: 100, volts: 12.75 }], 12.4, LOST_A_DAY.flooded)).toBe(200);
  });
  test("five readings outweigh what is known of other batteries by what a meter is off", () => {
    // Least squares through the five: 12.604 V on day 10 and 0.01 V lost a day. Readings off by 0.02 V weigh 250 / 0.0004 = 625,000 for the slope, what is known of
    // other batteries 1 / 0.0025² = 160,000: 0.00847 V a day, 12.5193 V on day 20, and 14 days to 12.4 V.
    const volts = [12.7, 12.65, 12.62, 12.55, 12.5];
    const day = chargeBy(
      volts.map((each, n) => ({ day: n * 5, volts: each })),
      12.4,
      { mean: 0.0025, sd: 0.0025 },
    );
    expect(day).toBe(34);
  });
  test("already down is today; rising is no day at all", () => {
    expect(chargeBy([{ day: 5, volts: 12.3 }], 12.4, LOST_A_DAY.flooded)).toBe(5);
    // At the volts themselves, and even where it has risen to them.
    expect(
      chargeBy(
        [
          { day: 0, volts: 12.2 },
          { day: 9, volts: 12.4 },
        ],
        12.4,
        { mean: -0.01, sd: 0.001 },
      ),
    ).toBe(9);
    expect(
      chargeBy(
        [
          { day: 0, volts: 12.5 },
          { day: 20, volts: 12.8 },
        ],
        12.4,
        { mean: 0.0035, sd: 1 },
      ),
    ).toBeNull();
    expect(chargeBy([], 12.4, LOST_A_DAY.flooded)).toBeNull();
  });
});

test("six hours to the minute are enough; without them low volts are told and no share of charge is", () => {
  const limit = { min: 12.4, max: null, near: 0.1, source: "" };
  const table = {
    points: [
      { volts: 12.65, charge: 1 },
      { volts: 11.89, charge: 0 },
    ],
    unsure: null,
    limit,
    most: 13,
    source: "",
  };
  expect(judgeResting(12.65, table, 6, 6)).toMatchObject({ judgement: { is: "within" }, charge: 1 });
  expect(judgeResting(12.65, table, 5.9, 6).judgement.is).toBe("cannot tell");
  expect(judgeResting(12, table, null, 6)).toMatchObject({ judgement: { is: "beyond limit" }, charge: null });
  // No lead-acid battery at rest shows more than it has when full (12.65 V, Battery Council International) by more than a meter is off.
  expect([13, 13.2, 14.4].map((volts) => judgeResting(volts, table, 8, 6).judgement)).toMatchObject([
    { is: "within" },
    { is: "cannot tell", missing: ["more than full"] },
    { is: "cannot tell", missing: ["more than full"] },
  ]);
});

test("a battery already down to its volts is to be charged on the day it was read, even when it has risen since", () => {
  expect(
    chargeBy(
      [
        { day: 0, volts: 12.2 },
        { day: 10, volts: 12.3 },
      ],
      12.4,
      { mean: -0.01, sd: 0.001 },
    ),
  ).toBe(10);
});

test("volts fall by more than a meter is off: three readings over a week, 0.05 V down, none up by more than 0.02 V (common practice)", () => {
  const of = (...volts: readonly (readonly [number, number])[]) => falls(volts.map(([day, each]) => ({ day, volts: each })));
  expect(of([0, 12.8], [3, 12.78], [7, 12.75])).toBe(true);
  expect(of([0, 12.8], [3, 12.78], [6, 12.75])).toBe(false);
  expect(of([0, 12.8], [7, 12.75])).toBe(false);
  expect(of([0, 12.8], [3, 12.78], [7, 12.76])).toBe(false);
  expect(of([0, 12.8], [10, 12.82], [20, 12.7])).toBe(true);
  expect(of([0, 12.8], [10, 12.83], [20, 12.7])).toBe(false);
});
