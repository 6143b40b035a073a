// A garage told in one message by someone who has no bike yet.

import { expect, test } from "vitest";
import { bikesTold } from "../../src/message/first-bikes.ts";
import { knownWith } from "./riders.ts";

const told = (text: string): readonly string[] => bikesTold(text, knownWith([])).map(({ name, odometer }) => `${name} ${odometer}`);

test.each([
  ["two bikes, Heron 14,820 mi, Bramble 41,950 km", ["Heron 14,820 mi", "Bramble 41,950 km"]],
  ["Heron 14,820 mi, Bramble 41,950 km", ["Heron 14,820 mi", "Bramble 41,950 km"]],
  ["my bikes: heron at 14,820 mi / bramble: 820 km / otter is 20,450 mi", ["heron 14,820 mi", "bramble 820 km", "otter 20,450 mi"]],
  ["zwei Motorräder, Heron 14.820 km, Bramble hat 41.950 km", ["Heron 14.820 km", "Bramble 41.950 km"]],
  ["my bike is Heron, Heron 14,820 mi", ["Heron 14,820 mi"]],
] as const)("%s", (text, bikes) => {
  expect(told(text)).toEqual(bikes);
});

test.each([
  "Berlin 300 km, Paris 900 km",
  "14,820 mi",
  "rode 14,820 mi last year and 12,000 mi before",
  "oil at 13,900 mi, chain lubed at 14,100 mi",
  "front 33 rear 36",
  "it lasted 11,400 km, the last one 12,000 km",
  "new bikes cost 9,000 this year",
])("tells of no bike: %s", (text) => {
  expect(told(text)).toEqual([]);
});
