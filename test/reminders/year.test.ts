// A spring of a few groups in several zones, over the days on which their clocks change; test:long has a year of two hundred.

import { expect, test } from "vitest";
import { instant } from "../../src/core/calendar/zones.ts";
import { aYear } from "../long/year/year.ts";

test("every message is accounted for by a reason, none comes twice, in quiet hours, or of a bike that rests, and nothing is left out", async () => {
  const spring = await aYear({ begin: instant("2027-02-20T10:00:00Z"), groups: 3, days: 60, seed: 11, thorough: 2 });
  expect(spring.breaches).toEqual([]);
  expect(spring.counts.messages).toBeGreaterThan(40);
  expect(spring.counts.digests).toBeGreaterThan(5);
  expect(spring.counts.why).toBeGreaterThan(10);
}, 120_000);
