// A whole service told in a message: what it comes to, and what of it is kept.

import { expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { BRAMBLE, HERON, knownWith, OTTER } from "./riders.ts";
import { NO_SERVICE, SERVICES, SERVICES_GERMAN } from "./services-corpus.ts";
import { shortOf } from "./shorthand.ts";

const cases = [...SERVICES.map((each) => ({ ...each, bike: HERON })), ...SERVICES_GERMAN.map((each) => ({ ...each, bike: BRAMBLE }))];
const work = (say: string) => read(say, knownWith([HERON])).intents.filter((intent) => intent.do === "record work");

test.each(cases.map(({ say, means, bike }) => [say, means, bike] as const))("%s", (say, means, bike) => {
  expect(read(say, knownWith([bike])).intents.map(shortOf)).toEqual(means);
});

test.each(NO_SERVICE.map((say) => [say] as const))("nothing: %s", (say) => {
  expect(read(say, knownWith([HERON])).intents).toEqual([]);
});

test("the figure that names it is told from the dial's, and how it is known is kept", () => {
  expect(work("16,000 mi service at the shop, receipt")).toMatchObject([
    { how: "receipt", odometer: null, gaps: [{ need: "service", figure: 16_000, unit: "mi" }] },
  ]);
  expect(work("had it serviced at 14,300 mi")).toMatchObject([{ odometer: { value: 14_300 }, gaps: [{ need: "service", figure: null }] }]);
  expect(work("serviced last spring at 12,000 by the previous owner")).toMatchObject([{ how: "seller's word", on: { from: "2026-03-01", to: "2026-05-31" } }]);
});

test("which bike is asked before which service", () => {
  expect(read("big service done yesterday", knownWith([HERON, BRAMBLE, OTTER])).intents.map(shortOf)).toEqual(["W ?=done on 2026-11-24@? ?bike ?service"]);
});

test("a service that is not understood is told back beside what was logged", () => {
  for (const say of ["service went well, 14,300 mi now", "Heron is serviced and MOTed, 14,300 mi"]) {
    const { intents, unread } = read(say, knownWith([HERON]));
    expect([intents.map(shortOf), unread]).toEqual([["odometer 14300 mi@Heron"], [say.slice(0, say.indexOf(","))]]);
  }
});
