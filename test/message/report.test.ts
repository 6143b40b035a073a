// The rates of the reader on the corpora, printed, and held to their targets. None wrong of some hundreds bounds the rate only below about 3 / n.

import { expect, test } from "vitest";
import { CORPUS, ratesOf, reportOf, TALK } from "./report.ts";
import { HERON, knownWith } from "./riders.ts";
import { shortOf } from "./shorthand.ts";
import { STRANGERS, STRANGERS_TALK } from "./strangers.ts";

test("nothing wrong is saved in silence, clear messages are read as meant, talk is seldom asked about", () => {
  const rates = ratesOf(CORPUS, TALK);
  console.info(reportOf("corpus", rates));
  expect(rates.messages + rates.talk).toBeGreaterThanOrEqual(500);
  expect(rates.talk).toBeGreaterThanOrEqual(150);
  expect([...rates.wrong, ...rates.savedTalk]).toEqual([]);
  expect(rates.exactOfClear).toBeGreaterThanOrEqual(0.98);
  expect(rates.alarms).toBeLessThanOrEqual(0.02);
}, 60_000);

test("what strangers wrote, reported apart: nothing wrong is saved in silence", () => {
  const known = knownWith([HERON]);
  const as = (say: string, means: readonly string[]) => ({ say, means, known, short: shortOf });
  const rates = ratesOf(
    STRANGERS.map(({ say, means }) => as(say, means)),
    STRANGERS_TALK.map((say) => as(say, [])),
  );
  if (rates.messages + rates.talk > 0) console.info(reportOf("strangers", rates));
  expect([...rates.wrong, ...rates.savedTalk]).toEqual([]);
}, 60_000);
