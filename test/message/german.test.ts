// German messages against their corpus, and the language that each message of the corpora is taken for.

import { expect, test } from "vitest";
import { read } from "../../src/message/read.ts";
import { NOTHING, ONE_BIKE } from "./corpus.ts";
import { GERMAN, NOTHING_GERMAN } from "./german-corpus.ts";
import { MEASURED } from "./measured-corpus.ts";
import { BRAMBLE, HERON, knownWith } from "./riders.ts";
import { shortOf } from "./shorthand.ts";

test.each(GERMAN.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
  expect(read(say, knownWith([BRAMBLE])).intents.map(shortOf)).toEqual(means);
});

test.each(NOTHING_GERMAN.map((say) => [say] as const))("%s", (say) => {
  expect(read(say, knownWith([BRAMBLE])).intents.map(shortOf)).toEqual([]);
});

test("an English message is read alike whether German is read beside it or not", () => {
  const both = knownWith([HERON]);
  const { also: _also, ...english } = both;
  const says = [...[...ONE_BIKE, ...MEASURED].map((each) => each.say), ...NOTHING];
  const heard = (known: typeof both) => says.map((say) => [say, read(say, known).intents.map(shortOf)]);
  expect(heard(both)).toEqual(heard(english));
}, 60_000);
