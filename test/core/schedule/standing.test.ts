// Time laid up, hours unread, and what is known of a bike that came used: each leg says no more than it knows.

import { describe, expect, test } from "vitest";
import { localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import { riddenOf } from "../../../src/core/quantity/distance.ts";
import type { Facts } from "../../../src/core/schedule/facts.ts";
import { lookAgainAt } from "../../../src/core/schedule/look-again.ts";
import { aJob, anItem, every, facts, moment, only } from "./builders.ts";

const used = { date: localDate("2026-01-01"), ridden: riddenOf(11_000, "mi"), wholeSinceNew: false };

describe("lubrication every 12 months, last done 1 October 2025: a lay-up", () => {
  const cables = anItem({ parked: "pauses", anchor: "last done", repeat: { by: "interval", every: every(null, 12) } });
  const jobs = [aJob("oil.replace", "2025-10-01", 100)];
  const dueOn = (today: string, ...layUps: readonly [string, string | null][]) =>
    only(facts([cables], { jobs, layUps: layUps.map(([from, to]) => ({ from: localDate(from), to: to === null ? null : localDate(to) })) }), moment(today, 100))
      .legs[0];
  test("moves the day on while it lasts", () => {
    expect(dueOn("2026-02-10", ["2026-02-01", null])).toMatchObject({ dueOn: "2026-10-10", pausedDays: 9 });
    expect(dueOn("2026-06-01", ["2026-02-01", "2026-03-01"])).toMatchObject({ dueOn: "2026-10-29", pausedDays: 28 });
  });
  test("begun before the job counts from the job", () => {
    expect(dueOn("2026-06-01", ["2025-09-01", "2025-10-11"])).toMatchObject({ dueOn: "2026-10-11", pausedDays: 10 });
  });
  test("begun once it was due moves nothing: it was due before", () => {
    expect(dueOn("2026-11-20", ["2026-10-15", null])).toMatchObject({ dueOn: "2026-10-01", state: "overdue", pausedDays: 0 });
    expect(dueOn("2026-11-20", ["2026-10-01", null])).toMatchObject({ dueOn: "2026-10-01", pausedDays: 0 });
    expect(dueOn("2027-05-01", ["2026-09-30", "2026-10-30"])).toMatchObject({ dueOn: "2026-10-31", pausedDays: 30 });
  });
  test("that was due before goes from due to overdue while it stands, and is looked at then", () => {
    const f = facts([cables], { jobs, layUps: [{ from: localDate("2026-10-15"), to: null }] });
    expect(only(f, moment("2026-10-31", 100)).status).toBe("due");
    expect(lookAgainAt(f, moment("2026-10-20", 100))).toBe("2026-11-01");
    expect(only(f, moment("2026-11-01", 100)).status).toBe("overdue");
  });
  test("does not keep an anniversary of the registration from being looked at", () => {
    const f = facts([cables], { jobs, layUps: [{ from: localDate("2026-02-01"), to: null }], byTheBook: { firstRegistered: localDate("2024-10-01") } });
    expect(lookAgainAt(f, moment("2026-02-10", 100))).toBe("2026-09-01");
  });
  test("said twice counts once", () => {
    expect(dueOn("2026-06-01", ["2026-02-01", "2026-03-01"], ["2026-02-15", "2026-03-11"])).toMatchObject({ pausedDays: 38 });
  });
});

describe("every 50 engine hours", () => {
  const engine = anItem({ repeat: { by: "interval", every: { miles: 4000, km: null, months: null, hours: 50 } } });
  const read = (on: string, hours: number) => ({ on: localDate(on), hours });
  const leg = (over: Partial<Facts>, today: string, hours: number | null) =>
    only(facts([engine], over), { ...moment(today, 11_100), hours }).legs.find((each) => each.by === "hours");
  test("any job restarts them, at what the meter last showed", () => {
    const over = { hours: [read("2026-01-10", 30), read("2026-02-10", 44), read("2026-03-10", 60)] };
    expect(leg({ ...over, jobs: [aJob("oil.replace", "2026-02-20", 11_050)] }, "2026-03-12", 60)).toMatchObject({ dueAt: 94, toGo: 34, state: "ahead" });
    expect(leg({ ...over, jobs: [aJob("oil.replace", "2026-02-20", 11_050, { hours: 45 })] }, "2026-03-12", 60)).toMatchObject({ dueAt: 95 });
  });
  test("unread for a season of use it cannot tell, and the other leg stands; what was reached stays reached", () => {
    const over = { hours: [read("2026-03-10", 30)] };
    expect(leg(over, "2026-06-10", 30)).toMatchObject({ state: "ahead", toGo: 20 });
    expect(leg(over, "2026-06-11", 30)).toMatchObject({ state: "cannot tell" });
    const due = only(facts([engine], { ...over, jobs: [aJob("oil.replace", "2026-01-02", 11_000)] }), { ...moment("2026-06-11", 11_100), hours: 30 });
    expect(due).toMatchObject({ status: "good", governs: 0 });
    expect(leg({ hours: [read("2026-03-10", 51)] }, "2026-12-10", 51)).toMatchObject({ state: "due" });
    // Two months of it laid up are no use.
    expect(leg({ ...over, layUps: [{ from: localDate("2026-04-01"), to: localDate("2026-06-01") }] }, "2026-08-01", 30)).toMatchObject({ state: "ahead" });
  });
  test("is looked at again on the day from which they tell no more", () => {
    const alone = anItem({ repeat: { by: "interval", every: { miles: null, km: null, months: null, hours: 50 } } });
    const f = facts([alone], { hours: [read("2026-03-10", 30)] });
    expect(lookAgainAt(f, { ...moment("2026-04-01", 100), hours: 30 })).toBe("2026-06-11");
  });
  test("of a used bike count from the first that were read, with no record until they are reached", () => {
    const over = { knownFrom: used, hours: [read("2026-01-10", 400), read("2026-03-10", 420)] };
    expect(leg(over, "2026-03-11", 420)).toMatchObject({ state: "no record", dueAt: 450 });
    expect(leg({ ...over, hours: [...over.hours, read("2026-04-10", 450)] }, "2026-04-11", 450)).toMatchObject({ state: "due" });
    // Done before any were read: nobody knows from where they count.
    expect(leg({ ...over, jobs: [aJob("oil.replace", "2026-01-05", 11_000)] }, "2026-03-11", 420)).toMatchObject({ state: "cannot tell" });
  });
});

describe("a used bike with nothing known is never shown good", () => {
  test("of what comes with every second oil change", () => {
    const strainer = anItem({ key: "strainer", anchor: "last done", repeat: { by: "nth time", nth: 2, of: "oil.replace" as ItemKey, months: null } });
    const status = (...jobs: ReturnType<typeof aJob>[]) =>
      only(facts([anItem(), strainer], { knownFrom: used, jobs }), moment("2026-09-01", 16_000), "strainer").status;
    expect(status()).toBe("no record");
    expect(status(aJob("oil.replace", "2026-02-01", 11_500))).toBe("no record");
    expect(status(aJob("oil.replace", "2026-02-01", 11_500), aJob("oil.replace", "2026-08-01", 15_500))).toBe("due");
    expect(status(aJob("strainer", "2026-02-01", 11_500))).toBe("good");
  });
  test("of a fluid by the book from first registration, when an anniversary passed before it came", () => {
    const fluid = anItem({ anchor: "last done", repeat: { by: "interval", every: every(null, 24) } });
    const since = (registered: string, ...jobs: ReturnType<typeof aJob>[]) =>
      only(facts([fluid], { knownFrom: used, jobs, byTheBook: { firstRegistered: localDate(registered) } }), moment("2026-02-01", 11_100)).status;
    expect(since("2020-05-20")).toBe("no record");
    expect(since("2020-05-20", aJob("oil.replace", "2024-05-01", 9000))).toBe("good");
    // Registered a year before it came: none has passed.
    expect(since("2025-05-20")).toBe("good");
  });
});
