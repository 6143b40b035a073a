// A figure said with a job is never lost: what no reading and no job takes up is kept with the job, in the member's own words.

import { expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { HERON, knownWith } from "./riders.ts";

test.each([
  ["adjusted the chain at 15,310, 45 mm found, 30 mm left", "adjusted the chain at 15,310, 45 mm found, 30 mm left"],
  ["adjusted the valves at 15,310, intake 0.09 mm found, 0.15 mm left", undefined],
  ["did the oil and filter at 14,820, 3.2 L 20W-50, 48.60", undefined],
])("%s", (say, note) => {
  const work = read(say, knownWith([HERON])).intents.filter((intent) => intent.do === "record work");
  expect(work.map((intent) => intent.note)).toEqual([note]);
});
