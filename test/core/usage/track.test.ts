import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromDayNumber, localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { LocalDate } from "../../../src/core/calendar/dates.ts";
import { dialOf, figureIn, riddenOf } from "../../../src/core/quantity/distance.ts";
import { judgeReading } from "../../../src/core/usage/judge-reading.ts";
import { buildTrack, dialAt, type Epoch, type OdometerReading, riddenAtDial, riddenOnDay } from "../../../src/core/usage/track.ts";

const bought: Epoch = { id: "e1", from: localDate("2024-01-01"), lastOfOld: null, firstOfNew: dialOf(1000, "mi"), unit: "mi", cause: "as bought" };
let order = 0;
const read = (on: string, miles: number, unit: "mi" | "km" = "mi"): OdometerReading => ({
  id: `${on}-${miles}`,
  on: localDate(on),
  order: order++,
  dial: dialOf(miles, unit),
});
const miles = (ridden: number) => Math.round(ridden / 1_609_344) / 10;

describe("an odometer that was replaced", () => {
  const replaced: Epoch = {
    id: "e2",
    from: localDate("2025-06-01"),
    lastOfOld: dialOf(15_300, "mi"),
    firstOfNew: dialOf(12, "km"),
    unit: "km",
    cause: "replaced",
  };
  const track = buildTrack([bought, replaced], [read("2025-05-01", 15_000), read("2025-07-01", 1012, "km")]);

  test("goes on from where the old dial ended", () => {
    // 15,300 mi and then 1,000 km.
    expect(track.points.map((point) => point.ridden)).toEqual([dialOf(15_000, "mi"), dialOf(15_300, "mi") + dialOf(1000, "km")]);
  });

  test("shows figures of the present dial again", () => {
    expect(figureIn(dialAt(track, (dialOf(15_300, "mi") + dialOf(2000, "km")) as never), "km")).toBe(2012);
  });

  test("a reading of the old dial on the day of the change belongs to the old dial", () => {
    expect(riddenAtDial(track, dialOf(15_298, "mi"), localDate("2025-06-01"))).toBe(dialOf(15_298, "mi"));
    expect(riddenAtDial(track, dialOf(15, "km"), localDate("2025-06-01"))).toBe(dialOf(15_300, "mi") + dialOf(3, "km"));
  });
});

test("a dial that rolls over at 99,999.9 starts again at zero and the distance goes on", () => {
  const rolled: Epoch = {
    id: "e2",
    from: localDate("2025-06-01"),
    lastOfOld: dialOf(100_000, "mi"),
    firstOfNew: dialOf(0, "mi"),
    unit: "mi",
    cause: "rolled over",
  };
  const track = buildTrack([bought, rolled], [read("2025-05-30", 99_990), read("2025-06-10", 25)]);
  expect(track.points.map((point) => miles(point.ridden))).toEqual([99_990, 100_025]);
});

test("two readings on one day are taken in the order they were logged", () => {
  const track = buildTrack([bought], [read("2025-05-01", 2000), read("2025-05-01", 2040)]);
  expect(track.points.map((point) => miles(point.ridden))).toEqual([2000, 2040]);
});

test("the line never falls, and the order in which readings arrive does not matter", () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ day: fc.integer({ min: 20_000, max: 20_400 }), miles: fc.integer({ min: 1000, max: 9000 }) }), { maxLength: 30 }),
      (raw) => {
        const readings = raw.map((r, n) => ({ id: `r${n}`, on: fromDayNumber(r.day), order: n, dial: dialOf(r.miles, "mi") }));
        const track = buildTrack([bought], readings);
        expect(buildTrack([bought], [...readings].reverse())).toEqual(track);
        track.points.forEach((point, n) => {
          expect(point.ridden).toBeGreaterThanOrEqual(track.points[n - 1]?.ridden ?? 0);
        });
      },
    ),
  );
});

test("between two readings the odometer is taken in proportion, and its range is what lies between them", () => {
  const track = buildTrack([bought], [read("2025-05-01", 2000), read("2025-05-11", 3000)]);
  const on = riddenOnDay(track, localDate("2025-05-04"));
  expect([on?.low, on?.likely, on?.high].map((r) => miles(r ?? 0))).toEqual([2000, 2300, 3000]);
  expect(riddenOnDay(track, localDate("2024-12-01"))?.low).toBe(0);
  expect(riddenOnDay(buildTrack([bought], []), localDate("2025-01-01"))).toBeNull();
});

describe("a new reading beside the old ones", () => {
  const track = buildTrack([bought], [read("2025-05-01", 2000), read("2025-06-01", 3000)]);
  const judge = (miles: number, on: string, trips: { from: string; to: string }[] = []) =>
    judgeReading(
      track,
      dialOf(miles, "mi"),
      localDate(on),
      trips.map((t) => ({ from: localDate(t.from), to: localDate(t.to) })),
    ).is;

  test("is fine when it goes on, or stays", () => {
    expect(judge(3000, "2025-06-01")).toBe("fine");
    expect(judge(3100, "2025-06-05")).toBe("fine");
  });
  test("does not fit when below an earlier one, or above a later one, and says which", () => {
    expect(judge(2999, "2025-06-02")).toBe("runs backwards");
    expect(judge(3001, "2025-05-20")).toBe("beyond a later one");
    expect(judge(2500, "2025-05-20")).toBe("fine");
  });
  test("is held as well when the next reading would need more than 1,500 miles a day", () => {
    const jumpy = buildTrack([bought], [read("2025-05-01", 2000), read("2025-06-01", 9000)]);
    const back = (miles: number, trips: { from: LocalDate; to: LocalDate }[] = []) =>
      judgeReading(jumpy, dialOf(miles, "mi"), localDate("2025-05-30"), trips).is;
    expect([back(6000), back(5999)]).toEqual(["fine", "implausible jump"]);
    expect(back(5999, [{ from: localDate("2025-05-31"), to: localDate("2025-06-03") }])).toBe("fine");
  });
  test("is held above 1,500 miles a day for three days, 300 for a month and 120 from then on, exactly, unless a trip explains it", () => {
    expect(judge(4500, "2025-06-02")).toBe("fine");
    // The last figure is 3,000 mi on 1 June; 61 days hold 3 * 1,500, 27 * 300 and 31 * 120 miles.
    expect([judge(3000 + 16_320, "2025-08-01"), judge(3000 + 16_321, "2025-08-01")]).toEqual(["fine", "implausible jump"]);
    expect(judge(4501, "2025-06-02")).toBe("implausible jump");
    expect(judge(4501, "2025-06-02", [{ from: "2025-06-01", to: "2025-06-10" }])).toBe("fine");
  });
});

test("a figure far on while the bike is laid up is held: moved by more than 100 miles, and 30 for each day until it was laid up (common practice)", () => {
  const track = buildTrack([bought], [read("2025-05-01", 2000), read("2025-06-01", 3000)]);
  const rests = [{ from: localDate("2025-06-11"), to: localDate("2025-09-01") }];
  const judge = (miles: number, on: string, more: object = { rests }) => judgeReading(track, dialOf(miles, "mi"), localDate(on), [], more).is;
  // Ten days of 30 miles until then, and 100 since.
  expect([judge(3400, "2025-07-01"), judge(3401, "2025-07-01")]).toEqual(["fine", "moved while laid up"]);
  expect([judge(3401, "2025-06-10"), judge(3401, "2025-09-01"), judge(3401, "2025-07-01", {})]).toEqual(["fine", "fine", "fine"]);
  const open = { rests: [{ from: localDate("2025-05-20"), to: null }] };
  expect([judge(3100, "2025-12-01", open), judge(3101, "2025-12-01", open)]).toEqual(["fine", "moved while laid up"]);
});

test("whole miles and kilometres to 200,000 come back exactly", () => {
  for (let n = 0; n <= 200_000; n++) {
    // Thrown, not expected: 200,000 expectations take longer than what they check.
    if (figureIn(dialOf(n, "mi"), "mi") !== n || figureIn(riddenOf(n, "km"), "km") !== n) throw new Error(`${n} does not come back`);
  }
});

test("two new dials one after the other: the distance goes on through both", () => {
  const second: Epoch = {
    id: "e2",
    from: localDate("2025-02-01"),
    lastOfOld: dialOf(15_000, "mi"),
    firstOfNew: dialOf(0, "mi"),
    unit: "mi",
    cause: "replaced",
  };
  const third: Epoch = { ...second, id: "e3", from: localDate("2025-04-01"), lastOfOld: dialOf(700, "mi"), firstOfNew: dialOf(20, "mi") };
  const track = buildTrack([bought, third, second], [read("2025-03-01", 500), read("2025-05-01", 120)]);
  expect(track.points.map((point) => miles(point.ridden))).toEqual([15_500, 15_800]);
});

test("after the last reading a bike stood no lower than there", () => {
  const track = buildTrack([bought], [read("2025-05-01", 2000), read("2025-05-11", 3000)]);
  expect(Object.values(riddenOnDay(track, localDate("2025-08-01")) ?? {}).map(miles)).toEqual([3000, 3000, 3000]);
});

test("the most of a day is counted over the days between", () => {
  const track = buildTrack([bought], [read("2025-05-01", 2000)]);
  const judged = (at: number, on: string) => judgeReading(track, dialOf(at, "mi"), localDate(on), []).is;
  expect([judged(2000 + 6600, "2025-05-11"), judged(2000 + 6601, "2025-05-11"), judged(3501, "2025-05-01")]).toEqual([
    "fine",
    "implausible jump",
    "implausible jump",
  ]);
});
