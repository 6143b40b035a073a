// By which day the battery of a bike laid up is charged. Figures of trade/battery, common practice: AGM is looked at after 60 days, charged at 12.5 V, and loses 2.5 mV a day.

import { describe, expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { Taken } from "../../src/core/schedule/measured.ts";
import { KINDS } from "../../src/trade/kinds.ts";
import { chargeDay } from "../../src/usecases/charge.ts";

type Facts = Parameters<typeof chargeDay>[0];
const since = localDate("2026-11-01");
const equipment = KINDS["chain-drive twin"].equipment;
const standing = (
  more: { state?: string; battery?: string; work?: readonly unknown[]; layUps?: readonly unknown[]; points?: readonly unknown[] } = {},
): Facts =>
  ({
    bike: { state: more.state ?? "laid up", equipment: { ...equipment, battery: more.battery ?? "AGM" } },
    track: { points: more.points ?? [], epochs: [] },
    layUps: more.layUps ?? [{ id: "l1", from: since, to: null }],
    work: more.work ?? [],
  }) as unknown as Facts;
const volts = (value: number, on: string, kind: Taken["kind"] = "battery voltage"): Taken =>
  ({ id: on, kind, place: null, on: localDate(on), value, unit: "V", detail: null, loggedAt: on, ordinal: 0 }) as Taken;

test("with nothing read it is how long it stands, from the lay-up or from the last work on the battery", () => {
  expect(chargeDay(standing(), [])).toMatchObject({ on: "2026-12-31", readings: 0, lithium: false, riding: false });
  const worked = (item: string) => [{ on: { from: localDate("2026-12-20") }, items: [{ item, outcome: "done" }] }];
  expect(chargeDay(standing({ work: worked("battery.test") }), [])?.on).toBe("2027-02-18");
  expect(chargeDay(standing({ work: worked("battery.charge") }), [])?.on).toBe("2027-02-18");
  expect(chargeDay(standing({ work: worked("coolant.replace") }), [])?.on).toBe("2026-12-31");
});

describe("by its volts", () => {
  test("12.75 V on 10 November are 12.50 V a hundred days on; what was read before it stood, or of the charging, says nothing", () => {
    const read = [volts(12.2, "2026-10-20"), volts(14.2, "2026-11-05", "charging voltage"), volts(12.75, "2026-11-10")];
    expect(chargeDay(standing(), read)).toMatchObject({ on: "2027-02-18", readings: 1, lithium: false, riding: false });
  });
  const dayOf = (battery: string, at: number, on = "2026-11-10") => chargeDay(standing({ battery }), [volts(at, on)])?.on;
  test("a gel battery loses 2.5 mV a day and is charged at 12.5 V, a flooded one 3.5 mV and at 12.4 V (common practice)", () => {
    expect(dayOf("gel", 12.75)).toBe("2027-02-18");
    // 60 days: 0.21 V.
    expect(dayOf("flooded", 12.61)).toBe("2027-01-09");
  });
  test("what lies above full by the table is no more than full: 12.8 V of AGM, 120 days from 12.5 V; and however slowly it falls, AGM is charged after 180 days", () => {
    expect(dayOf("AGM", 12.8)).toBe("2027-03-10");
    expect(dayOf("AGM", 12.95)).toBe("2027-03-10");
    const slow = [volts(12.78, "2026-11-10"), volts(12.775, "2027-01-10")];
    expect(chargeDay(standing(), slow)?.on).toBe("2027-07-09");
  });
  test("charts of lithium disagree between 12.8 and 13.4 V, so there the days that it stands tell: 90 of them, or 45 from the reading; near its limit it is two weeks", () => {
    expect(dayOf("lithium", 13.3)).toBe("2027-01-30");
    expect(dayOf("lithium", 13.3, "2027-01-25")).toBe("2027-03-11");
    expect(dayOf("lithium", 13.5)).toBe("2027-02-08");
    expect(dayOf("lithium", 12.88)).toBe("2026-11-24");
    expect(chargeDay(standing({ battery: "lithium" }), [volts(13.3, "2026-11-10")])).toMatchObject({ by: "flat part", readings: 1 });
  });
  test("a rise of more than a tenth of a volt is a charge, less is the weather", () => {
    const risen = (to: number) => chargeDay(standing(), [volts(12.6, "2026-11-10"), volts(to, "2026-11-20")])?.readings;
    expect([risen(12.75), risen(12.68)]).toEqual([1, 2]);
    // It holds: looked at after as many days as one of which nothing was read.
    expect(chargeDay(standing(), [volts(12.6, "2026-11-10"), volts(12.68, "2026-11-20")])).toMatchObject({ on: "2027-01-19", by: "days" });
  });
  test("what was read on the day it was laid up counts", () => expect(chargeDay(standing(), [volts(12.75, "2026-11-01")])?.readings).toBe(1));
  test("already down it is the day it was read", () => expect(chargeDay(standing(), [volts(12.4, "2026-11-12")])?.on).toBe("2026-11-12"));
});

describe("volts that are not at rest", () => {
  const under = (value: number, on: string, detail: Taken["detail"]): Taken => ({ ...volts(value, on), detail });
  const rest = volts(12.75, "2026-11-10");
  test("under load, running and above what any such battery rests at they count for nothing, low or high", () => {
    for (const other of [
      under(12, "2026-11-13", { conditions: ["under draw"] }),
      under(14.2, "2026-11-13", { conditions: ["running"] }),
      under(13.4, "2026-11-13", { conditions: ["rested"] }),
      under(12.9, "2026-11-13", { stood: 1 }),
    ])
      expect(chargeDay(standing(), [rest, other])).toMatchObject({ on: "2027-02-18", readings: 1 });
  });
  test("just off the charger, or on it, it is being charged: counted from that day", () => {
    for (const condition of ["charged", "on the charger"] as const)
      expect(chargeDay(standing(), [rest, under(13.4, "2026-11-20", { conditions: [condition] })])).toMatchObject({ on: "2027-01-19", readings: 0 });
  });
  test("low is low, rested or not", () =>
    expect(chargeDay(standing(), [rest, under(12.1, "2026-11-20", { stood: 1 })])).toMatchObject({ on: "2026-11-20", low: { on: "2026-11-20" } }));
  test("what was read before the charge of the same day is over, what was read after it is not", () => {
    const work = [
      { id: "b", loggedAt: "2026-11-20T10", ordinal: 0, on: { from: localDate("2026-11-20") }, items: [{ item: "battery.charge", outcome: "done" }] },
    ];
    const low = (loggedAt: string): Taken => ({ ...volts(12.2, "2026-11-20"), id: "a", loggedAt });
    expect(chargeDay(standing({ work }), [low("2026-11-20T09")])).toMatchObject({ on: "2027-01-19", readings: 0 });
    expect(chargeDay(standing({ work }), [low("2026-11-20T11")])?.low).not.toBeNull();
  });
});

describe("a bike that is not laid up", () => {
  const rested = (value: number, on: string): Taken => ({ ...volts(value, on), detail: { conditions: ["rested"] } }) as Taken;
  const falling = [rested(12.8, "2026-11-10"), rested(12.75, "2026-11-24"), rested(12.7, "2026-12-08"), rested(12.65, "2026-12-22")];
  const riding = { state: "riding", layUps: [] } as const;
  test("four rested readings that fall by 0.05 V in 14 days are at 12.5 V six weeks on", () => {
    // A line of 0.0036 V a day; with what AGM batteries usually lose (0.0025) taken in some 0.0034 V a day, 12.5 V 43 days after the last.
    expect(chargeDay(standing(riding), falling)).toMatchObject({ on: "2027-02-03", readings: 4, lithium: false, riding: true });
  });
  test("two readings, steady ones, and those not known to be rested say nothing", () => {
    expect(chargeDay(standing(riding), falling.slice(0, 2))).toBeNull();
    expect(chargeDay(standing(riding), [rested(12.7, "2026-11-10"), rested(12.71, "2026-11-24"), rested(12.69, "2026-12-08")])).toBeNull();
    expect(
      chargeDay(
        standing(riding),
        falling.map((each) => ({ ...each, detail: null })),
      ),
    ).toBeNull();
  });
  test("a ride or a charge in between begins anew", () => {
    const points = [
      { on: localDate("2026-11-01"), ridden: 0, reading: "a" },
      { on: localDate("2026-12-01"), ridden: 1000, reading: "b" },
    ];
    expect(chargeDay(standing({ ...riding, points }), falling)).toBeNull();
    expect(chargeDay(standing(riding), [...falling, rested(12.85, "2026-12-24")])).toBeNull();
  });
});

test("of a battery of 6 V, of none, and of a bike that rides nothing is said", () => {
  // Three cells that are full show 6.4 V; of 12 V one is dead at 7.5 V, which is told as it is told when it is read.
  expect(chargeDay(standing(), [volts(6.4, "2026-11-10")])).toBeNull();
  expect(chargeDay(standing(), [volts(7, "2026-11-10")])).toBeNull();
  expect(chargeDay(standing(), [volts(7.5, "2026-11-10")])?.on).toBe("2026-11-10");
  expect(chargeDay(standing(), [volts(11.8, "2026-11-10")])?.on).toBe("2026-11-10");
  expect(chargeDay(standing({ battery: "none" }), [])).toBeNull();
  expect(chargeDay(standing({ state: "riding" }), [])).toBeNull();
  expect(chargeDay(standing({ layUps: [{ id: "l1", from: since, to: localDate("2026-11-20") }] }), [])).toBeNull();
  expect(chargeDay(standing({ battery: "lithium" }), [])).toMatchObject({ on: "2027-01-30", readings: 0, lithium: true, riding: false });
});
