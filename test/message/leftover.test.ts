// A figure said with a job is never lost: what no reading and no job takes up is kept with the job, in the member's own words.

import { expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { LogReading } from "../../src/core/reading/intent.ts";
import { withTwiceAsked } from "../../src/message/leftover.ts";
import { read } from "../../src/message/read.ts";
import { HERON, knownWith } from "./riders.ts";

test.each([
  ["cleaned the air filter at 15,310, 45 mm thick", "cleaned the air filter at 15,310, 45 mm thick"],
  ["adjusted the chain at 15,310, 45 mm found, 30 mm left", undefined],
  ["adjusted the valves at 15,310, intake 0.09 mm found, 0.15 mm left", undefined],
  ["did the oil and filter at 14,820, 3.2 L 20W-50, 48.60", undefined],
])("%s", (say, note) => {
  const work = read(say, knownWith([HERON])).intents.filter((intent) => intent.do === "record work");
  expect(work.map((intent) => intent.note)).toEqual([note]);
});

test("many figures of one place are held against each other in time that grows with their number, not its square", () => {
  const figures = (n: number): LogReading[] =>
    Array.from({ length: n }, (_, at) => ({
      ...{ do: "log reading", bike: HERON.id, kind: "chain slack", place: null, value: 20 + (at % 30), unit: "mm", on: localDate("2026-11-25") },
      ...{ typed: { text: `${at}`, unit: null }, gaps: [] },
    }));
  const took = (n: number): number => {
    const all = figures(n);
    const began = performance.now();
    expect(withTwiceAsked(all)).toHaveLength(1);
    return performance.now() - began;
  };
  took(2000);
  // Ten times the figures took a hundred times as long; the room between leaves for a busy machine.
  expect(took(20_000)).toBeLessThan(40 * Math.max(1, took(2000)));
});
