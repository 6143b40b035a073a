// Two sizes said of new tyres: each is that of the end it is said with, in whatever order.

import { expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { HERON, knownWith } from "./riders.ts";

test.each(["new tyres 180/55-17 rear and 120/70-17 front", "new tyres 120/70-17 front and 180/55-17 rear", "new tyres, front 120/70-17, rear 180/55-17"])(
  "%s",
  (said) => {
    const [work] = read(said, knownWith([HERON])).intents;
    const parts = work?.do === "record work" ? (work.detail?.parts ?? []) : [];
    expect(parts.map(({ words, item }) => `${item}: ${words}`)).toEqual(["front-tyre.replace: 120/70-17", "rear-tyre.replace: 180/55-17"]);
  },
);
