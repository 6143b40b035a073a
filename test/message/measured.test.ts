// Measured values against a corpus of messages.

import { describe, expect, test } from "vitest";
import { KIND_KEYS } from "../../src/core/reading/kinds.ts";
import type { Known } from "../../src/core/reading/vocabulary.ts";
import { read } from "../../src/message/read.ts";
import { MEASURED, MEASURED_ON_THREE, NOT_MEASURED } from "./measured-corpus.ts";
import { BRAMBLE, HERON, knownWith, OTTER } from "./riders.ts";
import { shortOfMeasured } from "./shorthand.ts";

const ONE = knownWith([HERON]);
const THREE = knownWith([HERON, BRAMBLE, OTTER]);
const heard = (say: string, known: Known): readonly string[] => read(say, known).intents.map(shortOfMeasured);

describe("one bike", () => {
  test.each(MEASURED.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(heard(say, ONE)).toEqual(means);
  });
});
describe("three bikes", () => {
  test.each(MEASURED_ON_THREE.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(heard(say, THREE)).toEqual(means);
  });
});
describe("nothing was measured", () => {
  test.each(NOT_MEASURED.map((say) => [say] as const))("%s", (say) => {
    expect(heard(say, ONE)).toEqual([]);
    expect(heard(say, THREE)).toEqual([]);
  });
});

test("every kind of reading is in the corpus", () => {
  const means = MEASURED.flatMap((each) => each.means).join("\n");
  expect(KIND_KEYS.filter((kind) => !means.includes(`${kind} `) && !means.includes(`${kind}/`))).toEqual([]);
});
