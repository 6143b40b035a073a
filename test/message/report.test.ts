// The rates of the reader on the corpora, printed, and held to their targets. None wrong of some hundreds bounds the rate only below about 3 / n.

import { expect, test } from "vitest";
import { CORPUS, ratesOf, reportOf, TALK } from "./report.ts";

test("nothing wrong is saved in silence, clear messages are read as meant, talk is seldom asked about", () => {
  const rates = ratesOf(CORPUS, TALK);
  console.info(reportOf("corpus", rates));
  expect(rates.messages + rates.talk).toBeGreaterThanOrEqual(500);
  expect(rates.talk).toBeGreaterThanOrEqual(150);
  expect([...rates.wrong, ...rates.savedTalk]).toEqual([]);
  expect(rates.exactOfClear).toBeGreaterThanOrEqual(0.98);
  expect(rates.alarms).toBeLessThanOrEqual(0.02);
}, 60_000);
