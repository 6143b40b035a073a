// Parts that are on: tyres by the code they were fitted with, and readings of what came off. Week and year: 49 CFR 574.5.

import { describe, expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { LocalDate } from "../../src/core/calendar/dates.ts";
import type { ItemKey } from "../../src/core/ids.ts";
import type { Outcome } from "../../src/core/schedule/facts.ts";
import type { Taken } from "../../src/core/schedule/measured.ts";
import type { WorkRecord } from "../../src/store/work.ts";
import { TYRE_AGE } from "../../src/trade/tyres.ts";
import { tyresAged as agedOf, ageVerdicts, ofPartsOn, type TyreFacts } from "../../src/usecases/fitted.ts";
import { anItem, every } from "../core/schedule/builders.ts";

const TODAY = localDate("2026-11-26");
/** By a plan of nothing but tyres that last so many months. */
const planned = (months: number | null) => ({
  items: [anItem({ key: "rear-tyre.replace" as ItemKey, repeat: { by: "interval", every: every(null, months) } })],
  conditions: [],
  column: "mi" as const,
});
const tyresAged = (of: Omit<TyreFacts, "plan">, today: LocalDate, months: number | null = TYRE_AGE.replace) => agedOf({ ...of, plan: planned(months) }, today);
let n = 0;
const work = (item: string, on: string, more: { made?: string; outcome?: Outcome; at?: string } = {}): WorkRecord =>
  ({
    ...{ id: `w${n++}`, on: { from: localDate(on), to: localDate(on), typed: "" }, loggedAt: more.at ?? `${on}T09:00:00.000Z` },
    items: [{ item, outcome: more.outcome ?? "done" }],
    detail: more.made === undefined ? null : { quantities: [], parts: [{ words: "rear tyre", item, made: more.made }], cost: null, by: null },
  }) as unknown as WorkRecord;
const read = (kind: Taken["kind"], place: Taken["place"], on: string, at = `${on}T08:00:00.000Z`): Taken =>
  ({ id: `r${n++}`, kind, place, on: localDate(on), value: 3, unit: "mm", detail: null, loggedAt: at, ordinal: 0 }) as Taken;

describe("a tyre's age by its code", () => {
  const newTyre = (made: string) => work("rear-tyre.replace", "2026-11-20", { made });
  test.each([
    ["3725", "within", undefined],
    ["2519", "look yearly", undefined],
    ["3717", "look yearly", undefined],
    // Five years are week 46 of 2021 and not week 48.
    ["4621", "look yearly", undefined],
    ["4821", "within", undefined],
    ["1017", "look yearly", "near limit"],
    ["3715", "replace", "beyond limit"],
  ])("%s asks for %s, and makes the tyre %s", (made, age, is) => {
    expect(tyresAged({ work: [newTyre(made)], measured: [] }, TODAY)).toMatchObject([{ place: "rear", age }]);
    expect(ageVerdicts(tyresAged({ work: [newTyre(made)], measured: [] }, TODAY))[0]?.is).toBe(is);
  });
  test("the last one fitted tells, whatever the order in which they were noted; one without a code tells nothing", () => {
    const old = work("rear-tyre.replace", "2020-05-01", { made: "1010" });
    expect(tyresAged({ work: [newTyre("3725"), old], measured: [] }, TODAY)).toMatchObject([{ age: "within" }]);
    expect(tyresAged({ work: [old, work("rear-tyre.replace", "2024-05-01")], measured: [] }, TODAY)).toEqual([]);
    expect(tyresAged({ work: [work("rear-tyre.replace", "2024-05-01", { made: "1010", outcome: "could not do" })], measured: [] }, TODAY)).toEqual([]);
  });
});

describe("a plan that has a tyre replaced sooner is kept to, one that has it later is not", () => {
  const of = { work: [work("rear-tyre.replace", "2026-11-20", { made: "4619" })], measured: [] };
  test.each([
    [72, 72, "replace"],
    [96, 96, "look yearly"],
    [180, TYRE_AGE.replace, "look yearly"],
    [null, TYRE_AGE.replace, "look yearly"],
  ])("%s months: replaced at %s, and at seven years it is to %s", (months, replaceAt, age) => {
    expect(tyresAged(of, TODAY, months)).toMatchObject([{ months: 84, replaceAt, age }]);
  });
  test("at ten it is due by its age whatever the plan has, and comes up half a year before", () => {
    const old = { work: [work("rear-tyre.replace", "2026-11-20", { made: "1717" })], measured: [] };
    expect(ageVerdicts(tyresAged(old, TODAY, 180))[0]?.is).toBe("near limit");
    expect(ageVerdicts(tyresAged(old, localDate("2027-04-23"), 180))[0]?.is).toBe("near limit");
    expect(ageVerdicts(tyresAged(old, localDate("2027-04-24"), 180))[0]?.is).toBe("at limit");
  });
});

describe("a code read off a tyre that is on", () => {
  const code = (typed: string, on: string) => ({ ...read("tyre date code", "rear", on), typed });
  test("tells without any work, and until another tyre is fitted", () => {
    const measured = [code("1014", "2026-11-01"), code("1417", "2026-11-02")];
    expect(tyresAged({ work: [], measured }, TODAY)).toMatchObject([{ place: "rear", date: { week: 14, year: 2017 }, age: "look yearly", work: null }]);
    expect(tyresAged({ work: [work("rear-tyre.replace", "2026-11-20")], measured }, TODAY)).toEqual([]);
    expect(tyresAged({ work: [work("rear-tyre.replace", "2026-11-20", { made: "3725" })], measured }, TODAY)).toMatchObject([{ date: { year: 2025 } }]);
    expect(tyresAged({ work: [work("front-tyre.replace", "2026-11-20", { made: "3725" })], measured }, TODAY)).toHaveLength(2);
  });
  test("goes before the one that its fitting was noted with", () => {
    const fit = work("rear-tyre.replace", "2026-10-20", { made: "3725" });
    expect(tyresAged({ work: [fit], measured: [code("3724", "2026-11-02")] }, TODAY)).toMatchObject([{ date: { year: 2024 } }]);
  });
  test("three digits are of before 2000, and at their end whatever the decade", () => {
    const of = { work: [], measured: [code("148", "2026-11-02")] };
    expect(tyresAged(of, TODAY)).toMatchObject([{ date: { is: "before 2000", week: 14, digit: 8 }, age: "replace" }]);
    expect(ageVerdicts(tyresAged(of, TODAY))).toMatchObject([{ item: "rear-tyre.replace", is: "beyond limit" }]);
  });
  test("goes with its set of tyres, and with its piece", () => {
    const measured = [code("1417", "2026-10-01"), code("2323", "2026-11-10")];
    const set = (name: string, on: string) => ({ set: name, on: localDate(on), ridden: null });
    const fittings = [set("road", "2026-01-01"), set("off-road", "2026-11-05")];
    expect(tyresAged({ work: [], measured, fittings }, TODAY)).toMatchObject([{ date: { year: 2023 } }]);
    expect(tyresAged({ work: [], measured, fittings: [...fittings, set("road", "2026-11-20")] }, TODAY)).toMatchObject([{ date: { year: 2017 } }]);
    // The first piece came off for a new one, and was put back on.
    const job = work("rear-tyre.replace", "2026-11-05", { made: "3725" });
    const back = [set("first", "2026-01-01"), set(job.id, "2026-11-05"), set("first", "2026-11-20")];
    const refitted = [{ part: "rear-tyre", items: new Set(["rear-tyre.replace"]) as never, fittings: back }];
    expect(tyresAged({ work: [job], measured: measured.slice(0, 1), refitted }, TODAY)).toMatchObject([{ date: { year: 2017 } }]);
    expect(tyresAged({ work: [job], measured: [], refitted }, TODAY)).toEqual([]);
    const again = [{ part: "rear-tyre", items: new Set(["rear-tyre.replace"]) as never, fittings: back.slice(0, 2) }];
    expect(tyresAged({ work: [job], measured: measured.slice(0, 1), refitted: again }, TODAY)).toMatchObject([{ date: { year: 2025 } }]);
  });
});

describe("readings of what came off", () => {
  test("a tread read before a new tyre went on is not of the new one", () => {
    const [before, after, front] = [read("tread", "rear", "2026-11-01"), read("tread", "rear", "2026-11-21"), read("tread", "front", "2026-11-01")];
    expect(ofPartsOn([before, after, front], [work("rear-tyre.replace", "2026-11-20")])).toEqual([after, front]);
  });
  test("of one day, what was found is of the old and what was left of the new; else the order in which they were noted tells, in one moment too", () => {
    const job = work("rear-tyre.replace", "2026-11-20", { at: "2026-11-20T09:00:00.000Z" });
    const before = read("tread", "rear", "2026-11-20", "2026-11-20T08:59:00.000Z");
    const at = (id: string, state?: "found" | "left"): Taken => ({
      ...read("tread", "rear", "2026-11-20", "2026-11-20T09:00:00.000Z"),
      ...{ id: `${id}-tread`, detail: state === undefined ? null : { state } },
    });
    // Ids begin with the machine's own clock, where the bot's stands still.
    const then = { ...job, id: "019ab000-0005-new", ordinal: 0 };
    const [earlier, later] = [at("019ab000-0004"), at("019ab000-0006")];
    const [found, left] = [at("019ab000-0006", "found"), at("019ab000-0004", "left")];
    expect(ofPartsOn([before, earlier, later, found, left], [then])).toEqual([later, left]);
  });
  test("pads looked at are still the same pads; pads replaced are not; a pressure belongs to no part", () => {
    const all = [read("pad thickness", "front left", "2026-11-01"), read("cold pressure", "rear", "2026-11-01")];
    expect(ofPartsOn(all, [work("front-pads.measure", "2026-11-20", { outcome: "done" })])).toEqual(all);
    expect(ofPartsOn(all, [work("front-pads.measure", "2026-11-20", { outcome: "replaced" }), work("rear-tyre.replace", "2026-11-20")])).toEqual([all[1]]);
  });
});
