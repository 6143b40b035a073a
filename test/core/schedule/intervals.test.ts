import { describe, expect, test } from "vitest";
import { addDays, localDate, vagueDate } from "../../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import { ahead, riddenOf, stretchOf } from "../../../src/core/quantity/distance.ts";
import { doTheseFirst } from "../../../src/core/schedule/do-these-first.ts";
import { firstMarks } from "../../../src/core/schedule/marks.ts";
import { dueList } from "../../../src/core/schedule/status.ts";
import type { Forecast } from "../../../src/core/usage/forecast.ts";
import { buildTrack } from "../../../src/core/usage/track.ts";
import { aJob, anItem, dueMiles, every, facts, moment, noForecast, only, stretchMiles } from "./builders.ts";

const oil = anItem();
const done = (on: string, at: number, book = false) =>
  only(facts([oil], { jobs: [aJob("oil.replace", on, at)], byTheBook: book ? { firstRegistered: null } : null }), moment("2026-06-01", at + 1));
const dateOf = (due: ReturnType<typeof done>) => due.legs.find((leg) => leg.by === "date");

describe("oil, every 4,000 mi or 12 months, by marks", () => {
  test.each([
    ["done by its date at 2,600 mi: next at 6,600", 2600, 6600, null],
    ["done late at 7,500 mi: next at 11,500", 7500, 11_500, null],
    ["done before a trip at 10,900 mi with the next service at 12,000: it counts, next at 14,900", 10_900, 14_900, null],
    ["done at 7,870 mi: counts for 8,000, next at 12,000", 7870, 12_000, 8000],
    ["done exactly on the mark at 8,000 mi: next at 12,000", 8000, 12_000, null],
    ["done 400 mi late at 8,400 mi: counts for 8,000, next at 12,000", 8400, 12_000, 8000],
    ["done 400 mi early, the edge of the window: counts", 7600, 12_000, 8000],
    ["done 401 mi early: the next mark is too far, so an interval from the job", 7599, 11_599, null],
  ])("%s", (_, at, next, countsFor) => {
    const due = done("2026-05-01", at);
    expect(dueMiles(due)).toBe(next);
    const leg = due.legs[0];
    expect(leg?.by === "distance" && leg.anchor.from === "job" ? leg.anchor.countsFor : undefined).toBe(countsFor === null ? null : riddenOf(countsFor, "mi"));
    expect(dateOf(due)?.by === "date" && dateOf(due)).toMatchObject({ dueOn: "2027-05-01" });
  });

  // The same four under a warranty: marks never move.
  test.each([
    ["work at 2,600 mi is earlier than the window and does not count: next still 4,000", 2600, 4000],
    ["late work at 7,500 mi counts for the 4,000 passed: next 8,000", 7500, 8000],
    ["work at 10,900 mi does not count for 12,000", 10_900, 12_000],
    ["work at 7,870 mi counts for 8,000: next 12,000", 7870, 12_000],
  ])("by the book, %s", (_, at, next) => {
    const due = done("2026-05-01", at, true);
    expect(dueMiles(due)).toBe(next);
    expect(due.because).toMatchObject({ why: "leg", byTheBook: true });
  });

  // 14 CFR 91.409(b): every 100 hours, the overrun (up to 10) counts into the next interval: due 100, done 107, next 200. Worked here in miles.
  test.each([
    [107, 200],
    [110, 200],
    [120, 200],
  ])("by the book an overrun counts into the next interval: due at 100, done at %i, next at %i", (at, next) => {
    const hundred = anItem({ repeat: { by: "interval", every: every(100, null) } });
    expect(
      dueMiles(only(facts([hundred], { jobs: [aJob("oil.replace", "2026-05-01", at)], byTheBook: { firstRegistered: null } }), moment("2026-06-01", at))),
    ).toBe(next);
  });

  test("yearly legs by the book run from first registration", () => {
    const f = facts([oil], { jobs: [aJob("oil.replace", "2026-05-01", 3900)], byTheBook: { firstRegistered: localDate("2025-05-20") } });
    expect(dateOf(only(f, moment("2026-06-01", 3950)))).toMatchObject({ dueOn: "2027-05-20" });
  });

  test("falls due by date when the bike never leaves the garage", () => {
    const f = facts([oil], { jobs: [aJob("oil.replace", "2025-05-01", 4000)] });
    expect(only(f, moment("2026-03-31", 4000)).status).toBe("good");
    expect(only(f, moment("2026-04-01", 4000)).status).toBe("soon");
    expect(only(f, moment("2026-05-01", 4000))).toMatchObject({ status: "due", governs: 1 });
    expect(only(f, moment("2026-05-31", 4000)).status).toBe("due");
    expect(only(f, moment("2026-06-01", 4000)).status).toBe("overdue");
  });

  test("is due at exactly its distance and overdue strictly beyond the window", () => {
    const f = facts([oil], { jobs: [aJob("oil.replace", "2026-05-01", 8000)] });
    const status = (at: number) => only(f, moment("2026-06-01", at)).status;
    expect([status(11_599.9), status(11_600), status(11_999.9), status(12_000), status(12_400), status(12_400.1)]).toEqual([
      "good",
      "soon",
      "soon",
      "due",
      "due",
      "overdue",
    ]);
  });

  test("work that could not be done leaves it undone", () => {
    const f = facts([oil], { jobs: [aJob("oil.replace", "2026-05-01", 8000, { outcome: "could not do" })] });
    expect(dueMiles(only(f, moment("2026-06-01", 8100)))).toBe(4000);
  });
});

describe("running-in at 600 mi", () => {
  const first = anItem({ first: every(600, 1), repeat: { by: "interval", every: every(4000, null) } });
  const at = (miles: number, jobs = [] as ReturnType<typeof aJob>[]) => only(facts([first], { jobs }), moment("2025-02-01", miles));
  test("has a window of 500 to 700 mi", () => {
    expect([at(499).status, at(500).status, at(600).status, at(700).status, at(700.1).status]).toEqual(["good", "soon", "due", "due", "overdue"]);
    expect(at(500).because).toMatchObject({ runningIn: true });
  });
  test("a job at 520 counts for running-in only: the first regular mark stays at 4,000", () => {
    expect(dueMiles(at(530, [aJob("oil.replace", "2025-02-01", 520)]))).toBe(4000);
    expect(dueMiles(at(530, [aJob("oil.replace", "2025-02-01", 499)]))).toBe(600);
  });
  test("is still ahead of a used bike that came before it, and of which nothing else is known: it is due there, and no record is missed", () => {
    const dated = anItem({ first: every(600, 1), repeat: { by: "interval", every: every(4000, 12) } });
    const came = facts([dated], { knownFrom: { date: localDate("2026-01-01"), ridden: riddenOf(300, "mi"), wholeSinceNew: false } });
    const due = only(came, moment("2026-02-01", 350));
    expect([due.status, dueMiles(due), due.because]).toMatchObject(["good", 600, { why: "leg", runningIn: true }]);
    // Its year still runs, from the day it came at the latest.
    expect(due.legs[1]).toMatchObject({ by: "date", state: "ahead", dueOn: "2027-01-01" });
    expect(only(came, moment("2027-01-01", 350)).status).toBe("due");
    const after = { ...came, knownFrom: { ...came.knownFrom, ridden: riddenOf(800, "mi") } };
    expect(only(after, moment("2026-02-01", 850))).toMatchObject({ status: "no record", because: { passedAt: riddenOf(600, "mi") } });
  });
  test("is not asked of a bike that came with more on the clock", () => {
    expect(
      dueMiles(
        only(facts([first], { knownFrom: { date: localDate("2026-01-01"), ridden: riddenOf(2000, "mi"), wholeSinceNew: false } }), moment("2026-02-01", 2100)),
      ),
    ).toBe(4000);
  });
});

describe("windows", () => {
  const window = (miles: number | null, km: number | null, column: "mi" | "km", noLateWindow = false) => {
    const leg = only(facts([anItem({ noLateWindow, repeat: { by: "interval", every: every(miles, null, km) } })], { column }), moment("2026-01-01", 10, column))
      .legs[0];
    return leg?.by === "distance" ? Math.round(leg.window / stretchOf(1, column)) : null;
  };
  test("are a tenth of the interval, at most 500 mi or 800 km", () => {
    expect(window(4000, null, "mi")).toBe(400);
    expect(window(24_000, null, "mi")).toBe(500);
    expect(window(null, 36_000, "km")).toBe(800);
    expect(window(3755, null, "mi")).toBe(375);
  });
  test("valves at 24,000 mi are due, not overdue, 500 mi on and overdue at 501", () => {
    const valves = facts([anItem({ repeat: { by: "interval", every: every(24_000, null) } })]);
    expect(only(valves, moment("2026-01-01", 24_500)).status).toBe("due");
    expect(only(valves, moment("2026-01-01", 24_500.1)).status).toBe("overdue");
  });
  test("do-not-ride items and timing belts have none after", () => {
    const belt = facts([anItem({ noLateWindow: true })]);
    expect(only(belt, moment("2025-02-01", 4000)).status).toBe("due");
    expect(only(belt, moment("2025-02-01", 4000.1)).status).toBe("overdue");
  });
});

describe("printed columns", () => {
  const both = anItem({ repeat: { by: "interval", every: every(4000, null, 6000) } });
  test("a kilometre bike is served by the kilometre column", () => {
    const due = only(facts([both], { column: "km" }), moment("2026-01-01", 100, "km"));
    expect(dueMiles(due, "km")).toBe(6000);
    expect(due.legs[0]).toMatchObject({ converted: false });
  });
  test("a missing column is converted and the leg says so", () => {
    const single = anItem({ repeat: { by: "interval", every: every(4000, null) } });
    const due = only(facts([single], { column: "km" }), moment("2026-01-01", 100, "km"));
    expect(due.legs[0]).toMatchObject({ converted: true, dueAt: riddenOf(4000, "mi"), window: stretchOf(400, "mi") });
  });
});

describe("an uneven list: 600, 4,000, 10,000, 14,000 mi, then every 4,000", () => {
  const list = anItem({
    repeat: {
      by: "mark list",
      at: [600, 4000, 10_000, 14_000].map((miles) => ({ miles, km: null })),
      thenEvery: every(4000, null),
      thenFrom: "last mark",
    },
  });
  test.each([
    ["the interval at a job is the gap between the marks either side of it: done at 6,000, half of 6,000 on is 9,000", 6000, 10_000],
    ["done before a trip at 8,500: an interval of 6,000 on would be 14,500, but a job at 10,000 leads to 14,000", 8500, 14_000],
    ["done at 9,700, inside the window of the 4,000 that begin there: counts for 10,000", 9700, 14_000],
    ["done at 3,700 counts for 4,000", 3700, 10_000],
    ["beyond the list the marks go on from the last", 18_100, 22_000],
  ])("%s", (_, at, next) => {
    expect(dueMiles(only(facts([list], { jobs: [aJob("oil.replace", "2026-01-01", at)] }), moment("2026-02-01", at + 1)))).toBe(next);
  });
});

describe("every third mark of 4,000 mi", () => {
  const third = anItem({ first: every(600, null), repeat: { by: "nth mark", nth: 3, base: { miles: 4000, km: 6000 }, months: null } });
  test("is 12,000 mi, running-in not counted", () => {
    expect(firstMarks(third.repeat, "mi", 3).map((mark) => mark / riddenOf(1, "mi"))).toEqual([12_000, 24_000, 36_000]);
    expect(dueMiles(only(facts([third], { jobs: [aJob("oil.replace", "2025-02-01", 600)] }), moment("2025-02-02", 700)))).toBe(12_000);
  });
});

test("a mark list goes on from zero or from its last mark, as it says", () => {
  const list = (thenFrom: "zero" | "last mark") =>
    firstMarks(
      {
        by: "mark list",
        at: [
          { miles: 600, km: null },
          { miles: 7500, km: null },
        ],
        thenEvery: every(6000, null),
        thenFrom,
      },
      "mi",
    ).map((mark) => mark / riddenOf(1, "mi"));
  expect(list("last mark")).toEqual([600, 7500, 13_500, 19_500, 25_500]);
  expect(list("zero")).toEqual([600, 7500, 12_000, 18_000, 24_000]);
});

test("every second oil change counts completions since it was last done", () => {
  const filter = anItem({ key: "filter.replace", anchor: "last done", repeat: { by: "nth time", nth: 2, of: "oil.replace" as ItemKey, months: null } });
  const jobs = [aJob("oil.replace", "2025-03-01", 1000), aJob("filter.replace", "2025-03-01", 1000), aJob("oil.replace", "2025-09-01", 5000)];
  expect(only(facts([oil, filter], { jobs }), moment("2026-01-01", 6000), "filter.replace").status).toBe("good");
  expect(only(facts([oil, filter], { jobs: [...jobs, aJob("oil.replace", "2026-02-01", 9000)] }), moment("2026-03-01", 9100), "filter.replace").status).toBe(
    "due",
  );
});

describe("a used bike bought at 11,000 mi with nothing known", () => {
  const items = [
    anItem({ key: "valves.inspect", repeat: { by: "interval", every: every(4000, null) } }),
    anItem({ key: "fluid.replace", anchor: "last done", firstOnUsedBike: 2, repeat: { by: "interval", every: every(null, 24) } }),
    anItem({ key: "tyres.inspect", anchor: "last done", firstOnUsedBike: 1, repeat: { by: "interval", every: every(null, 12) } }),
    anItem({ key: "far.inspect", repeat: { by: "interval", every: every(20_000, null) } }),
  ];
  const used = facts(items, { knownFrom: { date: localDate("2026-01-01"), ridden: riddenOf(11_000, "mi"), wholeSinceNew: false } });
  test("shows no record for marks passed before, never good and never overdue", () => {
    expect(only(used, moment("2026-02-01", 11_900), "valves.inspect")).toMatchObject({
      status: "no record",
      because: { why: "never recorded", passedAt: riddenOf(8000, "mi"), nextMark: riddenOf(12_000, "mi") },
    });
    expect(only(used, moment("2026-02-01", 11_900), "fluid.replace").status).toBe("no record");
  });
  test("a mark that nobody passed yet is simply ahead", () => {
    expect(only(used, moment("2026-02-01", 11_900), "far.inspect").status).toBe("good");
  });
  test("the running-in mark passed unrecorded as well", () => {
    const late = {
      ...used,
      plan: { items: [anItem({ key: "head.inspect", first: every(600, null), repeat: { by: "interval", every: every(16_000, null) } })] },
    };
    expect(only(late, moment("2026-02-01", 11_900), "head.inspect")).toMatchObject({
      status: "no record",
      because: { why: "never recorded", passedAt: riddenOf(600, "mi"), nextMark: riddenOf(16_000, "mi") },
    });
  });
  test("a mark reached after becomes due and then overdue", () => {
    expect(only(used, moment("2026-02-01", 12_000), "valves.inspect").status).toBe("due");
    expect(only(used, moment("2026-02-01", 12_500), "valves.inspect").status).toBe("overdue");
    expect(only(used, moment("2028-01-01", 11_900), "fluid.replace").status).toBe("due");
  });
  test("ranks what to do first", () => {
    expect(doTheseFirst(dueList(used, moment("2026-02-01", 11_900)), used.plan)).toEqual(["tyres.inspect", "fluid.replace"]);
  });
});

describe("brake fluid, every 24 months", () => {
  const fluid = anItem({ key: "fluid.replace", anchor: "last done", covers: ["fluid.level"], repeat: { by: "interval", every: every(null, 24) } });
  const level = anItem({ key: "fluid.level", action: "top up", anchor: "last done", repeat: { by: "interval", every: every(null, 3) } });
  const jobs = [aJob("fluid.replace", "2025-03-01", 1000), aJob("fluid.level", "2026-03-01", 5000)];
  test("topping up leaves its clock alone, and replacing covers the level", () => {
    const f = facts([fluid, level], { jobs });
    expect(only(f, moment("2026-04-01", 5100), "fluid.replace").legs[0]).toMatchObject({ dueOn: "2027-03-01" });
    expect(only(facts([fluid, level], { jobs: jobs.slice(0, 1) }), moment("2025-04-01", 1100), "fluid.level").legs[0]).toMatchObject({ dueOn: "2025-06-01" });
  });
});

describe("six months laid up", () => {
  const layUps = [{ from: localDate("2025-10-01"), to: localDate("2026-04-01") }];
  const item = (parked: "counts" | "pauses") => anItem({ parked, anchor: "last done", repeat: { by: "interval", every: every(null, 12) } });
  const dueOn = (parked: "counts" | "pauses") =>
    only(facts([item(parked)], { layUps, jobs: [aJob("oil.replace", "2025-09-01", 100)] }), moment("2026-05-01", 100)).legs[0];
  test("fluids and belts count it, lubrication pauses", () => {
    expect(dueOn("counts")).toMatchObject({ dueOn: "2026-09-01", pausedDays: 0 });
    expect(dueOn("pauses")).toMatchObject({ dueOn: addDays(localDate("2026-09-01"), 182), pausedDays: 182 });
  });
});

describe("dates and odometers that are not known to the day", () => {
  test("a vague date runs from the start of its span and is printed as coarsely", () => {
    const job = aJob("oil.replace", "2023-03-01", null, { on: vagueDate(localDate("2023-03-01"), localDate("2023-05-31"), "spring 2023") });
    expect(only(facts([anItem({ repeat: { by: "interval", every: every(null, 24) } })], { jobs: [job] }), moment("2024-01-01", 100)).legs[0]).toMatchObject({
      dueOn: "2025-03-01",
      grain: "season",
    });
  });
  test("a missing odometer is taken at the low end of what it can have been, and said to be about", () => {
    const odometer = buildTrack(
      [],
      [
        { id: "a", on: localDate("2025-03-01"), order: 0, dial: riddenOf(1000, "mi") as never },
        { id: "b", on: localDate("2025-05-01"), order: 1, dial: riddenOf(3000, "mi") as never },
      ],
    );
    const leg = only(facts([anItem({ anchor: "last done" })], { odometer, jobs: [aJob("oil.replace", "2025-04-01", null)] }), moment("2025-06-01", 3100))
      .legs[0];
    expect(leg).toMatchObject({ dueAt: riddenOf(5000, "mi"), anchor: { about: true } });
  });
});

describe("legs that cannot be judged", () => {
  test.each([
    [44, "good"],
    [45, "soon"],
    [50, "due"],
    [55, "due"],
    [56, "overdue"],
  ])("every 50 engine hours, at %i h: %s, with a window of a tenth each way", (hours, status) => {
    const engine = anItem({ repeat: { by: "interval", every: { miles: null, km: null, months: null, hours: 50 } } });
    expect(only(facts([engine]), { ...moment("2026-01-01", 100), hours }).status).toBe(status);
  });

  test("hours unread leave that leg open and the other standing", () => {
    const due = only(facts([anItem({ repeat: { by: "interval", every: { miles: 4000, km: null, months: null, hours: 50 } } })]), moment("2026-01-01", 100));
    expect(due.legs.map((leg) => [leg.by, leg.state])).toEqual([
      ["distance", "ahead"],
      ["hours", "cannot tell"],
    ]);
    expect(due.status).toBe("good");
  });
  test("with none to judge by there is no record, and the reason names what is missing", () => {
    expect(only(facts([anItem({ repeat: { by: "interval", every: every(4000, null) } })]), moment("2026-01-01", null))).toMatchObject({
      status: "no record",
      governs: null,
      because: { why: "no reading", needs: "odometer" },
    });
    expect(
      only(facts([anItem({ repeat: { by: "interval", every: { miles: null, km: null, months: null, hours: 50 } } })]), moment("2026-01-01", null)).because,
    ).toEqual({ why: "no reading", needs: "hours" });
  });
});

describe("conditions of use", () => {
  const filter = anItem({
    key: "air-filter.replace",
    shortened: { dust: every(2000, null), wet: every(9000, 6) },
    repeat: { by: "interval", every: every(8000, 24) },
  });
  test("shorten, and are named in the reason", () => {
    const due = only(facts([filter], { conditions: ["dust"] }), moment("2025-02-01", 1900), "air-filter.replace");
    expect(dueMiles(due)).toBe(2000);
    expect(due.because).toMatchObject({ shortenedBy: "dust" });
  });
  test("never lengthen a leg", () => {
    const due = only(facts([filter], { conditions: ["wet"] }), moment("2025-02-01", 100), "air-filter.replace");
    expect(dueMiles(due)).toBe(8000);
    expect(due.legs[1]).toMatchObject({ months: 6 });
  });
});

describe("the forecast", () => {
  const reaching = (on: string): Forecast => ({ ...noForecast, dateOf: () => ({ on: localDate(on), from: localDate(on), to: null }) });
  const status = (at: number, today: string, on: string) =>
    only(facts([anItem({ repeat: { by: "interval", every: every(4000, null) } })]), moment(today, at, "mi", reaching(on)));
  test("makes an item coming up within a month, once the last quarter of the interval has begun", () => {
    expect(status(3000, "2026-03-01", "2026-03-31").status).toBe("soon");
    expect(status(3000, "2026-03-01", "2026-04-01").status).toBe("good");
    expect(status(2999, "2026-03-01", "2026-03-31").status).toBe("good");
  });
  test("never makes it due: it asks for the odometer instead", () => {
    expect(status(3900, "2026-03-01", "2026-02-01")).toMatchObject({ status: "soon", because: { askOdometer: true } });
  });
});

test("a chain lubricated every 300 mi is a habit and not for ever coming up", () => {
  const lube = anItem({ key: "chain.lubricate", action: "lubricate", anchor: "last done", repeat: { by: "interval", every: every(300, null, 500) } });
  const due = only(facts([lube], { jobs: [aJob("chain.lubricate", "2026-01-01", 1000)] }), moment("2026-01-08", 1095), "chain.lubricate");
  expect(due).toMatchObject({ habit: true, status: "good" });
  expect(only(facts([oil]), moment("2026-01-01", 1)).habit).toBe(false);
});

test("a habit that was measured and found wanting is due by that, also where its own distance is reached or long past", () => {
  const level = anItem({ key: "brake-fluid.inspect", anchor: "last done", repeat: { by: "interval", every: every(500, null, 800) } });
  const verdicts = [{ item: "brake-fluid.inspect" as ItemKey, on: localDate("2026-02-01"), is: "at limit", reading: "r1" } as const];
  const jobs = [aJob("brake-fluid.inspect", "2026-01-01", 1000)];
  for (const miles of [1100, 1500, 1510, 9000]) {
    const due = only(facts([level], { verdicts, jobs }), moment("2026-02-01", miles), "brake-fluid.inspect");
    expect([due.habit, due.status, due.legs[due.governs ?? -1]?.by]).toEqual([false, "due", "verdict"]);
    expect(only(facts([level], { jobs }), moment("2026-02-01", miles), "brake-fluid.inspect").habit).toBe(true);
  }
});

test("a verdict beyond its limit makes the item due, until work is done", () => {
  const pads = anItem({ key: "pads.inspect", noLateWindow: true });
  const verdicts = [{ item: "pads.inspect" as ItemKey, on: localDate("2026-02-01"), is: "beyond limit", reading: "r1" } as const];
  expect(only(facts([pads], { verdicts, jobs: [aJob("pads.inspect", "2026-01-01", 3900)] }), moment("2026-03-01", 4100), "pads.inspect").status).toBe("due");
  expect(only(facts([pads], { verdicts, jobs: [aJob("pads.inspect", "2026-02-02", 3950)] }), moment("2026-03-01", 4100), "pads.inspect").status).toBe("good");
  // The measuring itself is work of that day, and does not take back what it found.
  expect(only(facts([pads], { verdicts, jobs: [aJob("pads.inspect", "2026-02-01", 3950)] }), moment("2026-03-01", 4100), "pads.inspect").status).toBe("due");
});

test("a recheck falls due a distance after the work", () => {
  const rechecks = [{ id: "k1", item: "oil.replace" as ItemKey, dueAt: riddenOf(4100, "mi"), because: "axle", after: riddenOf(4000, "mi") }];
  const f = facts([oil], { rechecks, jobs: [aJob("oil.replace", "2026-01-01", 4000)] });
  expect(only(f, moment("2026-02-01", 4099)).status).toBe("soon");
  expect(only(f, moment("2026-02-01", 4100)).status).toBe("due");
});

test("equipment decides which items exist", () => {
  const spokes = anItem({ key: "spokes.check", fits: { wheels: ["wire-spoked"] } });
  expect(dueList(facts([oil, spokes]), moment("2026-01-01", 1)).map((due) => due.item)).toEqual(["oil.replace"]);
});

test("the interval is counted in stretches that survive the trip through text", () => {
  expect(stretchMiles(stretchOf(4000, "mi"))).toBe(4000);
  expect(ahead(riddenOf(1, "mi"), stretchOf(2, "mi"))).toBe(riddenOf(3, "mi"));
});

describe("edges in kilometres, and of what is seldom asked", () => {
  test("running-in at 1,000 km has a window of 850 to 1,150 km, and one late within it is that and no more", () => {
    const first = anItem({ first: every(600, null, 1000), repeat: { by: "interval", every: every(4000, null, 6000) } });
    const at = (km: number, jobs = [] as ReturnType<typeof aJob>[]) => only(facts([first], { column: "km", jobs }), moment("2025-02-01", km, "km"));
    expect([849.9, 850, 1000, 1150, 1150.1].map((km) => at(km).status)).toEqual(["good", "soon", "due", "due", "overdue"]);
    const done = (km: number) => dueMiles(at(km, [aJob("oil.replace", "2025-02-01", km, {}, "km")]), "km");
    // At the edge of the window before and after it; a running-in job never leads to an interval of its own.
    expect([849, 850, 1150].map(done)).toEqual([1000, 6000, 6000]);
  });
  test("a job at either edge of the running-in window never stands in for the first of a close table", () => {
    const close = anItem({ first: every(600, null), repeat: { by: "interval", every: every(1200, null) } });
    const next = (at: number) => dueMiles(only(facts([close], { jobs: [aJob("oil.replace", "2025-02-01", at)] }), moment("2025-02-02", at)));
    // At 701 it is a job like any other: 1,200 lies less than half an interval ahead.
    expect([500, 700, 701].map(next)).toEqual([1200, 1200, 1901]);
  });
  test("a bike that came at the end of its running-in window is still asked about it, beyond it not", () => {
    const first = anItem({ first: every(600, null), repeat: { by: "interval", every: every(4000, null) } });
    const came = (at: number) =>
      dueMiles(
        only(facts([first], { knownFrom: { date: localDate("2026-01-01"), ridden: riddenOf(at, "mi"), wholeSinceNew: false } }), moment("2026-02-01", at)),
      );
    expect([came(700), came(701)]).toEqual([600, 4000]);
  });
  test("habits: under 1,000 mi or 1,600 km, or under two months", () => {
    const habit = (column: "mi" | "km", miles: number | null, months: number | null, km: number | null = null) =>
      only(facts([anItem({ repeat: { by: "interval", every: every(miles, months, km) } })], { column }), moment("2026-01-01", 1)).habit;
    expect([habit("mi", 999, null), habit("mi", 1000, null), habit("km", null, null, 1599), habit("km", null, null, 1600)]).toEqual([true, false, true, false]);
    expect([habit("mi", null, 1), habit("mi", null, 2)]).toEqual([true, false]);
  });
  test("a forecast that has passed only asks, however far the last reading was from the window", () => {
    const reached: Forecast = { ...noForecast, dateOf: () => ({ on: localDate("2026-02-01"), from: localDate("2026-01-01"), to: null }) };
    const oils = facts([anItem({ repeat: { by: "interval", every: every(4000, null) } })]);
    expect(only(oils, moment("2026-03-01", 1000, "mi", reached))).toMatchObject({ status: "soon", because: { askOdometer: true } });
  });
  test("done at an odometer that nobody knows: it cannot tell, until the latest point at which it can fall due", () => {
    const odometer = buildTrack([], [{ id: "a", on: localDate("2026-01-01"), order: 0, dial: riddenOf(11_000, "mi") as never }]);
    const f = facts([anItem({ anchor: "last done", repeat: { by: "interval", every: every(4000, null) } })], {
      odometer,
      knownFrom: { date: localDate("2026-01-01"), ridden: riddenOf(11_000, "mi"), wholeSinceNew: false },
      jobs: [aJob("oil.replace", "2025-05-01", null)],
    });
    expect(only(f, moment("2026-06-01", 14_999))).toMatchObject({ status: "no record", because: { why: "unplaced" } });
    expect(only(f, moment("2026-06-01", 15_000)).status).toBe("due");
    // Whole since new, it was done at no less than zero.
    const whole = { ...f, knownFrom: { date: localDate("2024-01-01"), ridden: riddenOf(0, "mi"), wholeSinceNew: true } };
    expect(dueMiles(only(whole, moment("2026-06-01", 11_500)))).toBe(4000);
  });
  test("between two readings a job whose odometer was not noted is taken at the earlier one, never in the middle", () => {
    const odometer = buildTrack(
      [],
      ["2026-01-01", "2026-03-01"].map((on, n) => ({ id: on, on: localDate(on), order: n, dial: riddenOf(1000 + 2000 * n, "mi") as never })),
    );
    const f = facts([anItem({ anchor: "last done" })], { odometer, jobs: [aJob("oil.replace", "2026-02-01", null)] });
    expect(dueMiles(only(f, moment("2026-06-01", 3100)))).toBe(5000);
  });
});

describe("which leg speaks", () => {
  test("of two legs alike, the one expected sooner, whichever is written first", () => {
    const due = (ridden: number) => only(facts([oil], { jobs: [aJob("oil.replace", "2026-01-10", 8000)] }), moment("2026-08-01", ridden));
    // 3,900 of 4,000 mi to go against 162 days: by date. 1,000 to go, a quarter of a year as its share goes: by distance.
    expect([due(8100).governs, due(11_000).governs]).toEqual([1, 0]);
  });
  test("what is coming up speaks before what has no record", () => {
    const f = facts([oil], { knownFrom: { date: localDate("2026-01-01"), ridden: riddenOf(3500, "mi"), wholeSinceNew: false } });
    // By distance the first mark lies ahead and is near; by date nothing is known of the last time.
    expect(only(f, moment("2026-02-01", 3700))).toMatchObject({ status: "soon", governs: 0 });
  });
});
