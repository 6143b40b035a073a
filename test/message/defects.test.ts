// What is read as a defect, and what is only talk.

import { describe, expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { DEFECTS_ONE_BIKE, DEFECTS_THREE_BIKES, DETAILS, NO_DEFECT } from "./corpus-work.ts";
import { HERON, knownWith, short, THREE } from "./work-known.ts";

describe("one bike", () => {
  test.each(DEFECTS_ONE_BIKE.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(read(say, knownWith([HERON])).intents.map(short)).toEqual(means);
  });
});

describe("three bikes", () => {
  test.each(DEFECTS_THREE_BIKES.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(read(say, knownWith(THREE)).intents.map(short)).toEqual(means);
  });
});

describe("nothing is wrong", () => {
  test.each(NO_DEFECT.map((say) => [say] as const))("%s", (say) => {
    expect(read(say, knownWith([HERON])).intents.map(short)).toEqual([]);
  });
});

describe("work with what went into it", () => {
  test.each(DETAILS.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(read(say, knownWith([HERON])).intents.map(short)).toEqual(means);
  });
});

describe("what mends an open defect closes it", () => {
  const open = {
    ...HERON,
    defects: [
      { id: "d1", kind: "brake light", words: "rear brake light out" },
      { id: "d2", kind: "soft brake", words: "front brake feels spongy" },
      { id: "d3", kind: "worn rear tyre", words: "rear tyre is bald" },
    ],
  };
  test.each([
    ["fixed the rear brake light", ["d1"]],
    ["replaced the brake light bulb", ["d1"]],
    ["bled the front brake", ["d2"]],
    ["bled the rear brake", []],
    ["replaced the rear tyre", ["d3"]],
    ["replaced the front tyre", []],
    ["the brake light is still out, must be fixed", []],
    ["washed the bike", []],
  ] as const)("%s", (say, closes) => {
    const { intents } = read(say, knownWith([open]));
    expect(intents.flatMap((intent) => (intent.do === "record work" ? (intent.closes ?? []) : []))).toEqual(closes);
  });
});
