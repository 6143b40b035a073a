// The reader against a corpus of messages, and against figures printed in many styles.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { NOTHING, ONE_BIKE, THREE_BIKES } from "./corpus.ts";
import { BRAMBLE, bike, HERON, knownWith, OTTER } from "./riders.ts";
import { shortOfFirst } from "./shorthand.ts";

describe("one bike", () => {
  test.each(ONE_BIKE.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(read(say, knownWith([HERON])).intents.map(shortOfFirst)).toEqual(means);
  });
});

describe("three bikes", () => {
  test.each(THREE_BIKES.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(read(say, knownWith([HERON, BRAMBLE, OTTER])).intents.map(shortOfFirst)).toEqual(means);
  });
});

describe("nothing to log", () => {
  test.each(NOTHING.map((say) => [say] as const))("%s", (say) => {
    expect(read(say, knownWith([HERON])).intents.map(shortOfFirst)).toEqual([]);
    expect(read(say, knownWith([HERON, BRAMBLE, OTTER])).intents.map(shortOfFirst)).toEqual([]);
  });
});

test("a member's own pressure unit is taken for bare figures that it fits", () => {
  const own = { ...knownWith([HERON]), pressureUnit: "psi" as const };
  expect(read("front 33 rear 36", own).intents.map(shortOfFirst)).toEqual(["P front 33psi@Heron", "P rear 36psi@Heron"]);
  expect(read("front 2.3", own).intents.map(shortOfFirst)).toEqual(["P front 2.3?@Heron ?unit"]);
});

test("a nickname of several words, and one that is a common word", () => {
  const bikes = [bike("Old Blue", "chain-drive twin", "mi", 14_210), bike("May", "chain-drive twin", "mi", 3000)];
  expect(read("14,820 mi on old blue", knownWith(bikes)).intents.map(shortOfFirst)).toEqual(["14820mi@Old Blue"]);
});

test("odometer figures in any style people write come back as they were", () => {
  const styles = [
    (n: number) => `${n}`,
    (n: number) => n.toLocaleString("en-GB"),
    (n: number) => n.toLocaleString("en-GB").replace(/,/g, " "),
    (n: number) => n.toLocaleString("en-GB").replace(/,/g, "'"),
    (n: number) => n.toLocaleString("en-GB").replace(/,/g, "\u202f"),
  ];
  const frames = [
    (f: string) => `${f} mi on Heron`,
    (f: string) => `Heron ${f}`,
    (f: string) => `odo ${f}`,
    (f: string) => `now at ${f} miles`,
    (f: string) => `${f}mi`,
  ];
  fc.assert(
    fc.property(fc.integer({ min: 14_211, max: 17_000 }), fc.constantFrom(...styles), fc.constantFrom(...frames), (n, style, frame) => {
      expect(read(frame(style(n)), knownWith([HERON])).intents.map(shortOfFirst)).toEqual([`${n}mi@Heron`]);
    }),
    { numRuns: 500 },
  );
});

test("pressures in any style and order come back as they were", () => {
  const frames = [
    (f: string, r: string, u: string) => `${f} ${u} front ${r} ${u} rear`,
    (f: string, r: string, u: string) => `front ${f}${u}, rear ${r}${u}`,
    (f: string, r: string, u: string) => `${f}${u} front, ${r}${u} rear on Heron`,
    (f: string, r: string, u: string) => `tyres: rear ${r} ${u} front ${f} ${u}`,
    (f: string, r: string, u: string) => `${f} front ${r} rear ${u}`,
  ];
  fc.assert(
    fc.property(fc.integer({ min: 20, max: 45 }), fc.integer({ min: 20, max: 45 }), fc.constantFrom(...frames), (f, r, frame) => {
      const said = read(frame(String(f), String(r), "psi"), knownWith([HERON]))
        .intents.map(shortOfFirst)
        .sort();
      expect(said).toEqual([`P front ${f}psi@Heron`, `P rear ${r}psi@Heron`]);
    }),
    { numRuns: 300 },
  );
});

test("any text is read without a crash, and what is longer than 2,000 characters is not read", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 300 }), (text) => {
      read(text, knownWith([HERON, BRAMBLE, OTTER]));
    }),
    { numRuns: 500 },
  );
  expect(read("1".repeat(2001), knownWith([HERON]))).toMatchObject({ intents: [], tooLong: true });
});

test("time grows with the length of a text, not with its square", () => {
  const known = knownWith([HERON, BRAMBLE, OTTER]);
  const took = (text: string): number => {
    let least = Number.POSITIVE_INFINITY;
    // The processor's time, not the clock's: other tests run beside this one.
    for (let n = 0; n < 8; n++) {
      const start = process.cpuUsage();
      read(text, known);
      const { user, system } = process.cpuUsage(start);
      least = Math.min(least, user + system);
    }
    return least;
  };
  for (const unit of ["14,820 mi on Heron, ", "the oil and the chain and ", "front 33 rear 36 ", "(((((", "9 9 9 9 ", "a-b-c-d-"]) {
    // Five times the text in at most fifteen times the time: a square would take twenty-five. What a busy machine adds to one try it does not add to all.
    const tries = Array.from({ length: 4 }, () => took(unit.repeat(1990 / unit.length)) - took(unit.repeat(400 / unit.length)) * 15);
    expect(Math.min(...tries), unit).toBeLessThan(4000);
  }
}, 60_000);
