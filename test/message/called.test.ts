// Bikes by make, model or kind, as their owner would call them.

import { expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { BRAMBLE, HERON, knownWith, OTTER } from "./riders.ts";
import { shortOf } from "./shorthand.ts";

const BIKES = [
  { ...HERON, model: "Marlow Kestrel 700", kind: "chain-drive twin" },
  { ...BRAMBLE, model: "Marlow Fen 250", kind: "dual-purpose single" },
  { ...OTTER, model: null, kind: "belt-drive cruiser" },
];

test.each([
  ["14,820 mi on the Kestrel", ["odometer 14820 mi@Heron"]],
  ["did the oil on my fen", ["W engine-oil.replace=done@Bramble"]],
  ["20,700 mi on the cruiser", ["odometer 20700 mi@Otter"]],
  ["33 psi front 36 psi rear on my Kestrel", ["cold pressure/front 33 psi@Heron", "cold pressure/rear 36 psi@Heron"]],
  ["Öl gewechselt auf der Kestrel", ["W engine-oil.replace=replaced@Heron"]],
  // Two of one make: which, is asked.
  ["14,820 mi on the Marlow", ["odometer 14820 mi@? ?bike"]],
  ["14,820 mi on my scrambler", ["odometer 14820 mi@? ?bike"]],
  ["14820 on the scrambler, 33 front 36 rear", ["odometer 14820 ?@? ?bike", "cold pressure/front 33 psi@? ?bike", "cold pressure/rear 36 psi@? ?bike"]],
  ["14,820 mi on the big one", ["odometer 14820 mi@? ?bike"]],
  // Only behind a word that says that a bike is meant.
  ["a kestrel flew over, 14,820 mi", ["odometer 14820 mi@? ?bike"]],
] as const)("%s", (say, means) => {
  expect(read(say, knownWith(BIKES)).intents.map(shortOf)).toEqual(means);
});

test("the only bike is meant by whatever it is called", () => {
  for (const say of ["14,820 mi on my scrambler", "14,820 on the big one", "14820 on the red bike"])
    expect([say, read(say, knownWith([HERON])).intents.map(shortOf)]).toEqual([say, ["odometer 14820 mi@Heron"]]);
});

test("two of a make offer those two only", () => {
  const [intent] = read("14,820 mi on the Marlow", knownWith(BIKES)).intents;
  expect(intent?.gaps).toEqual([{ need: "bike", options: [HERON.id, BRAMBLE.id], named: null }]);
});
