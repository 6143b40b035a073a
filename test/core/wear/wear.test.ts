// Distance left on tyres and pads: the range must hold as often as it promises, on tyres whose wear nobody told it.

import { describe, expect, test } from "vitest";
import { type Stretch, stretchOf } from "../../../src/core/quantity/distance.ts";
import { type WearReading, wearOf } from "../../../src/core/wear/wear.ts";
import { WEAR_HABITS, type WearKind } from "../../../src/trade/wear.ts";
import { type Chance, chance } from "../../backtest/random.ts";

const km = (n: number): Stretch => stretchOf(n, "km");

type Worn = { readonly readings: readonly WearReading[]; readonly left: number; readonly sinceNew: boolean };

/** A part ridden down to its limit by its own rider: its wear differs from stretch to stretch, it is read now and then, by a gauge of tenths of a millimetre or of 1/32 in. */
function ridden(of: Population, c: Chance): Worn | null {
  const fresh = c.between(...of.fresh);
  const life = "life" in of ? c.around(of.life[0], of.life[1]) : Math.exp(c.between(Math.log(of.between[0]), Math.log(of.between[1])));
  const rate = (fresh - of.limit) / life;
  const step = c.u() < 0.25 ? 25.4 / 32 : 0.1;
  const sinceNew = c.u() < 0.7;
  const depths: number[] = [fresh];
  // Every 100 km; the pace of wear is of its own for each 400 to 1,500 km.
  let [pace, until] = [1, 0];
  for (let n = 1; (depths.at(-1) ?? 0) > of.limit && n < 6000; n++) {
    if (n * 100 > until) [pace, until] = [Math.max(0.3, 1 + 0.25 * c.normal()), n * 100 + c.between(400, 1500)];
    depths.push((depths.at(-1) ?? 0) - rate * pace * 100);
  }
  const went = (depths.length - 1) * 100;
  const begins = sinceNew ? 0 : Math.floor(c.between(0.1, 0.5) * went);
  const stop = begins + c.between(0.25, 0.9) * (went - begins);
  const readings: WearReading[] = [];
  for (let at = begins + c.between(0, 1500); at <= stop; at += c.between(700, 3000)) {
    const read = (depths[Math.round(at / 100)] ?? 0) + 0.18 * c.normal();
    const value = Math.max(0, Math.round(read / step) * step);
    readings.push({ ridden: km(at - begins), value });
  }
  const last = readings.at(-1);
  return last === undefined ? null : { readings, left: went - begins - last.ridden / 10_000_000, sinceNew };
}

/** New depth in mm from and to; the life either round a mean, with its relative spread, or anywhere between two ends, as likely in each octave; the limit. */
type Population = { readonly fresh: readonly [number, number]; readonly limit: number } & (
  | { readonly life: readonly [number, number] }
  | { readonly between: readonly [number, number] }
);

// Lives by common practice; those between two ends are as wide as riders tell of, and no belief of the trade's table is drawn so.
const POPULATIONS: readonly (Population & { readonly kind: WearKind })[] = [
  { kind: "rear tread", fresh: [5.5, 8.5], life: [11_000, 0.4], limit: 1.6 },
  { kind: "front tread", fresh: [3.8, 6], life: [17_000, 0.4], limit: 1.6 },
  { kind: "front pads", fresh: [3.6, 5.6], life: [24_000, 0.4], limit: 1.5 },
  { kind: "rear tread", fresh: [5.5, 8.5], between: [4000, 25_000], limit: 1.6 },
  { kind: "front tread", fresh: [3.8, 6], between: [6000, 40_000], limit: 1.6 },
  { kind: "front pads", fresh: [3.6, 5.6], between: [5000, 60_000], limit: 1 },
  { kind: "front pads", fresh: [3.6, 5.6], between: [8000, 40_000], limit: 1.5 },
  { kind: "rear pads", fresh: [3.6, 6], between: [5000, 60_000], limit: 1 },
];

test.each(POPULATIONS)("$kind, %j: the 80 percent range of the remaining distance covers 77 to 83 percent of 4,000 ridden down", (of) => {
  const c = chance(11);
  let [held, told] = [0, 0];
  for (let n = 0; n < 4000; n++) {
    const worn = ridden(of, c);
    if (worn === null) continue;
    const wear = wearOf(worn.readings, of.limit, WEAR_HABITS[of.kind], worn.sinceNew);
    if (wear.is !== "line") continue;
    told++;
    const [low, high] = [wear.left.low / 10_000_000, wear.left.high === null ? Number.POSITIVE_INFINITY : wear.left.high / 10_000_000];
    if (worn.left >= low && worn.left <= high) held++;
  }
  expect(told).toBeGreaterThan(2000);
  expect(held / told).toBeGreaterThan(0.77);
  expect(held / told).toBeLessThan(0.83);
});

describe("a pad set on a line of its own", () => {
  /** Read every so many km on a line that falls by `per1000` mm in 1,000 km, from 4.5 mm down to a limit of 1 mm; where it is reached by the line, and by the forecast. */
  const onLine = (per1000: number, every: number, count: number) => {
    const readings = Array.from({ length: count }, (_, n) => ({ ridden: km(n * every), value: 4.5 - (n * every * per1000) / 1000 }));
    const wear = wearOf(readings, 1, WEAR_HABITS["front pads"], false);
    if (wear.is !== "line") throw new Error(wear.is);
    const at = (stretch: Stretch | null): number => (count - 1) * every + (stretch ?? Number.POSITIVE_INFINITY) / 10_000_000;
    return { wear, readings, line: (3.5 / per1000) * 1000, likely: at(wear.left.likely), low: at(wear.left.low), high: at(wear.left.high) };
  };
  // The share of the whole life by which the forecast may miss the line: three readings over a millimetre leave a fifth open, six next to nothing.
  test.each([
    [0.5, 1000, 3, 0.2],
    [0.5, 1000, 6, 0.03],
    [0.3, 1000, 6, 0.06],
    [0.3, 2000, 3, 0.15],
    [0.15, 4000, 3, 0.06],
    [0.1, 4000, 3, 0.06],
  ] as const)(
    "%s mm in 1,000 km, read every %i km, %i times: the forecast is within %f of the line, and its range holds it",
    (per1000, every, count, within) => {
      const { line, likely, low, high } = onLine(per1000, every, count);
      expect(Math.abs(likely - line) / line).toBeLessThan(within);
      expect(low).toBeLessThan(line);
      expect(high).toBeGreaterThan(line);
    },
  );
  test("the line drawn passes what was read, by less than a gauge is off", () => {
    const { wear, readings } = onLine(0.5, 1000, 6);
    expect(Math.abs(wear.start - 4.5)).toBeLessThan(0.1);
    expect(Math.abs(wear.now - (readings.at(-1)?.value ?? 0))).toBeLessThan(0.1);
    expect(wear.per1000km).toBeCloseTo(0.5, 1);
  });
  test("two readings a thousand kilometres apart are too few", () => {
    const two = [4.5, 4.2].map((value, n) => ({ ridden: km(n * 1000), value }));
    expect(wearOf(two, 1, WEAR_HABITS["front pads"], false)).toEqual({ is: "too few", readings: 2, wide: true });
  });
});

describe("what a wear line says", () => {
  const rear = (...readings: readonly (readonly [number, number])[]) =>
    wearOf(
      readings.map(([at, value]) => ({ ridden: km(at), value })),
      1.6,
      WEAR_HABITS["rear tread"],
      true,
    );

  test("one reading is too few, and so are two close together that say nothing of the pace", () => {
    expect(rear([0, 7])).toEqual({ is: "too few", readings: 1, wide: false });
    expect(
      wearOf(
        [
          { ridden: km(0), value: 5 },
          { ridden: km(20), value: 5 },
        ],
        1,
        { ...WEAR_HABITS["rear tread"], rate: { median: 0.0005, times: 8 } },
        false,
      ),
    ).toEqual({
      is: "too few",
      readings: 2,
      wide: true,
    });
  });

  test("read again and again at one place of the road it says nothing of the pace", () => {
    expect(rear([3000, 5], [3000, 5.1], [3000, 5])).toEqual({ is: "too few", readings: 3, wide: true });
  });

  test("a tyre worn by half a millimetre every thousand kilometres has what the sum says left, and a range round it", () => {
    const wear = rear([0, 7], [2000, 6], [4000, 5], [6000, 4]);
    if (wear.is !== "line") throw new Error(wear.is);
    // (4 - 1.6) mm at 0.5 mm per 1,000 km: 4,800 km by hand; what is known of other tyres may move it a little.
    expect(wear.left.likely / 10_000_000).toBeGreaterThan(4500);
    expect(wear.left.likely / 10_000_000).toBeLessThan(5100);
    expect(wear.left.low).toBeLessThan(wear.left.likely);
    expect(wear.left.high ?? 0).toBeGreaterThan(wear.left.likely);
    expect(wear.per1000km).toBeCloseTo(0.5, 1);
  });

  test("more readings narrow the range", () => {
    const width = (wear: ReturnType<typeof rear>) => (wear.is === "line" && wear.left.high !== null ? wear.left.high - wear.left.low : Number.NaN);
    const few = width(rear([0, 7], [6000, 4]));
    const many = width(rear([0, 7], [1500, 6.3], [3000, 5.5], [4500, 4.7], [6000, 4]));
    expect(many).toBeLessThan(few);
  });

  test("at the limit it is worn", () => {
    expect(rear([0, 7], [9000, 1.6]).is).toBe("worn");
  });

  test("of two readings a range is told while its ends are at most five times apart, and no further", () => {
    const loose = { ...WEAR_HABITS["rear tread"], rate: { median: 0.0005, times: 2.3 } };
    const of = (gap: number, sinceNew = false) =>
      wearOf(
        [
          { ridden: km(0), value: 6 },
          { ridden: km(gap), value: 6 - gap * 0.0005 },
        ],
        1.6,
        loose,
        sinceNew,
      );
    const told = Array.from({ length: 300 }, (_, n) => of(20 + n * 20)).map((wear) =>
      wear.is === "line" ? (wear.left.high ?? Number.POSITIVE_INFINITY) / wear.left.low : null,
    );
    const [ratios, unsure] = [told.filter((ratio) => ratio !== null), told.filter((ratio) => ratio === null)];
    expect(Math.max(...ratios)).toBeLessThanOrEqual(5);
    expect(Math.max(...ratios)).toBeGreaterThan(4.5);
    expect(unsure.length).toBeGreaterThan(10);
    // Further apart they say more, never less.
    expect(told.lastIndexOf(null)).toBe(unsure.length - 1);
  });

  test("a third reading makes a line whose far end may be open: it may never be reached", () => {
    const slow = wearOf(
      [0, 300, 600].map((at) => ({ ridden: km(at), value: 5 })),
      1.6,
      { ...WEAR_HABITS["rear tread"], rate: { median: 0.0005, times: 8 } },
      false,
    );
    if (slow.is !== "line") throw new Error(slow.is);
    expect(slow.left.high).toBeNull();
    expect(slow.left.likely).toBeGreaterThan(slow.left.low);
  });

  test("eight lives of a new one away, it is never: nearer, a figure is told", () => {
    // A life is 7 mm at 0.5 mm in 1,000 km: 14,000 km. The pace is read so well that the range is narrow.
    const sure = {
      ...WEAR_HABITS["rear tread"],
      fresh: { mean: 7, sd: 0.5 },
      rate: { median: 0.0005, times: 10 },
      noise: 0.001,
      wander: { share: 0.01, over: 1000 },
    };
    const gone = (lives: number) => {
      const pace = 3.4 / (lives * 14_000);
      return wearOf(
        [0, 20_000, 40_000, 60_000].map((at) => ({ ridden: km(at), value: 5 + (60_000 - at) * pace })),
        1.6,
        sure,
        false,
      );
    };
    const told = gone(7);
    if (told.is !== "line") throw new Error(told.is);
    expect(told.left.likely / 10_000_000 / 14_000).toBeCloseTo(7, 1);
    expect(told.left.high).not.toBeNull();
    // No likely place within eight lives: what can be said is too little.
    expect(gone(9)).toEqual({ is: "too few", readings: 4, wide: true });
  });

  test("the road ahead widens the range as it grows longer than the road behind: the square root of 1 + ahead / behind", () => {
    // Nothing uncertain but the riding: 1 mm in 1,000 km for certain, read without error at 0 and 4,000 km, 4 mm left to go.
    const only = { ...WEAR_HABITS["rear tread"], rate: { median: 0.001, times: 1 + 1e-9 }, noise: 1e-5, wander: { share: 0.25, over: 1000 } };
    const behind = (km0: number) =>
      wearOf(
        [0, km0 / 2, km0].map((at) => ({ ridden: km(at), value: 5 + (km0 - at) * 0.001 })),
        1,
        only,
        false,
      );
    // Where the line may be reached with one chance in ten: 4 - m = 1.2816 x 0.25 x sqrt(m (1 + m / behind)), in mm and thousands of km.
    for (const road of [1000, 2000, 4000, 16_000]) {
      const wear = behind(road);
      if (wear.is !== "line") throw new Error(wear.is);
      const m = wear.left.low / 10_000_000 / 1000;
      expect(4 - m).toBeCloseTo(1.2816 * 0.25 * Math.sqrt(m * (1 + m / (road / 1000))), 2);
    }
  });

  test("that it was new when it was fitted is known of it, and narrows the range", () => {
    const since = (sinceNew: boolean) =>
      wearOf(
        [
          { ridden: km(1000), value: 6 },
          { ridden: km(2000), value: 5.6 },
        ],
        1.6,
        WEAR_HABITS["rear tread"],
        sinceNew,
      );
    const [known, unknown] = [since(true), since(false)];
    if (known.is !== "line" || unknown.is !== "line") throw new Error("two lines");
    // Fresh 7 ± 1.2 mm says what two readings a thousand kilometres apart leave open: the range is narrower.
    const width = ({ left }: typeof known) => (left.high ?? Number.POSITIVE_INFINITY) - left.low;
    expect(width(known)).toBeLessThan(width(unknown));
    expect(known.start).not.toBeCloseTo(unknown.start, 2);
  });
});
