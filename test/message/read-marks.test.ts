// Services as a manual lists them.

import { expect, test } from "vitest";
import { readMarks } from "../../src/message/read-marks.ts";
import { knownWith } from "./riders.ts";

const known = knownWith([]);
const mi = (...figures: number[]) => figures.map((miles) => ({ miles, km: null }));

test.each([
  ["600, 4,000, 8,000 mi", mi(600, 4000, 8000)],
  ["600; 4000; 8000", mi(600, 4000, 8000)],
  ["600 mi, 8,000 and 20,000 mi", mi(600, 8000, 20_000)],
  ["1000, 6000, 12 000 km", [1000, 6000, 12_000].map((km) => ({ miles: null, km }))],
  ["600 mi / 1,000 km, 4,000 mi / 6,000 km", [600, 4000].map((miles, n) => ({ miles, km: [1000, 6000][n] }))],
] as const)("%s", (typed, marks) => {
  expect(readMarks(typed, known, "mi")).toEqual(marks);
});

test.each(["", "banana", "8,000, 600 mi", "600, 600 mi", "10, 4,000 mi", "600 mi / 1,000 km, 4,000 mi", "600 mi / 900 mi", "600.5 mi"])(
  "no services: %s",
  (typed) => {
    expect(readMarks(typed, known, "mi")).toBeNull();
  },
);
