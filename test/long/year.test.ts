// A simulated year of two hundred groups in ten zones at full speed. The report says what became of each thing that was noted.

import { expect, test } from "vitest";
import { instant } from "../../src/core/calendar/zones.ts";
import { aYear } from "./year/year.ts";

test("200 groups over a year: every message is accounted for, and nothing that stands is left untold", async () => {
  const from = performance.now();
  const year = await aYear({ begin: instant("2026-11-25T10:00:00Z"), groups: 200, days: 365, seed: 7, thorough: 20 });
  const minutes = Math.round((performance.now() - from) / 6000) / 10;
  process.stdout.write(`${JSON.stringify({ ...year, breaches: year.breaches.length, minutes }, null, 1)}\n`);
  expect(year.breaches).toEqual([]);
  expect(year.counts.messages).toBeGreaterThan(4000);
  expect(year.counts.digests).toBeGreaterThan(1000);
}, 7_200_000);
