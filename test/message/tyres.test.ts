// Tyres and brakes against a corpus of messages.

import { describe, expect, test } from "vitest";
import type { Known } from "../../src/core/reading/vocabulary.ts";
import { read } from "../../src/message/read.ts";
import { BRAMBLE, HERON, knownWith, OTTER } from "./riders.ts";
import { shortOf } from "./shorthand.ts";
import { TALK_OF_TYRES, TYRES_AND_BRAKES, TYRES_AND_BRAKES_ON_THREE } from "./tyres-corpus.ts";

const ONE = knownWith([HERON]);
const THREE = knownWith([HERON, BRAMBLE, OTTER]);
const heard = (say: string, known: Known): readonly string[] => read(say, known).intents.map(shortOf);

describe("one bike", () => {
  test.each(TYRES_AND_BRAKES.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(heard(say, ONE)).toEqual(means);
  });
});
describe("three bikes", () => {
  test.each(TYRES_AND_BRAKES_ON_THREE.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(heard(say, THREE)).toEqual(means);
  });
});
describe("nothing was read", () => {
  test.each(TALK_OF_TYRES.map((say) => [say] as const))("%s", (say) => {
    expect(heard(say, ONE)).toEqual([]);
  });
});
