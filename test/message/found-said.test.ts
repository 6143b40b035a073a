// What was found at an item, told from a note.

import { expect, test } from "vitest";
import { type FoundAt, foundSaid } from "../../src/message/found-said.ts";
import { GERMAN_VOCABULARY } from "../../src/words/de/vocabulary.ts";
import { HERON, knownWith } from "./work-known.ts";

const known = { ...knownWith([HERON]), also: [{ vocabulary: GERMAN_VOCABULARY, numbers: { decimal: ",", group: "." } }] } as const;
const said = (text: string, names: readonly string[] = ["Wheel bearings"], more: Partial<FoundAt> = {}) =>
  foundSaid(text, { names, action: "inspect", tight: false, ...more }, known);

test.each([
  ...["cracked", "a bit of play", "some play at the rear", "fine, but a small crack", "not good: split", "leaking"],
  // A denial before praise turns it round, in either language and across both.
  ...[
    "not ok",
    "not good",
    "nicht ok",
    "nicht in ordnung",
    "not quite right, not ok",
    "does not snap back",
    "doesn't work",
    "isn't smooth",
    "tight spot",
    "one stripped",
  ],
  ...["switch does not cut the engine", "schnappt nicht zurück, nicht gut"],
])("%s is a fault", (text) => {
  expect(said(text)).toMatchObject({ is: "fault" });
});

test.each([
  ...[
    "no play",
    "ok",
    "all good",
    "no sign of a crack",
    "fine",
    "not cracked",
    "smooth, no leaks",
    "without play",
    "nothing loose",
    "both look good",
    "still ok",
  ],
  ...[
    "no cracks or leaks",
    "no wear",
    "checked for play, all good",
    "free of cracks",
    "sieht gut aus",
    "kein Spiel, alles ok",
    "i.o.",
    "no oil leaks",
    "snaps back, cuts the engine",
  ],
])("%s is well", (text) => {
  expect(said(text)).toEqual({ is: "fine" });
});

test.each([
  ...["some grease came out", "a bit rusty", "done by the book", "12"],
  // Praise with a word beside it that is not known is none for certain.
  ...["ok for another 1000", "almost ok", "good enough", "fine until spring", "bit tight", "tight", "milky", "metal flakes", "no grease left", "ok I think"],
])("%s is neither for certain", (text) => {
  expect(said(text)).toEqual({ is: "unclear" });
});

test("beside a name the words are of a kind; what setting, cleaning or renewing is for is put right by it, and nothing else is", () => {
  expect(said("sticks open", ["throttle"])).toEqual({ is: "fault", kind: "sticking throttle" });
  expect(said("loose", ["chain"])).toEqual({ is: "fault", kind: "chain tension" });
  expect(said("loose", ["chain"], { action: "adjust" })).toEqual({ is: "put right" });
  expect(said("very dark", ["oil"], { action: "replace" })).toEqual({ is: "put right" });
  expect(said("dirty", ["air filter"], { action: "clean" })).toEqual({ is: "put right" });
  expect(said("worn out", ["chain"], { action: "adjust" })).toMatchObject({ is: "fault" });
  expect(said("metal flakes", ["oil"], { action: "replace" })).toEqual({ is: "unclear" });
  expect(said("one loose, one stripped", ["fasteners"], { action: "check tightness", tight: true })).toMatchObject({ is: "fault" });
  // A name that itself holds a sign says nothing of what was found.
  expect(said("greased", ["swingarm play"])).toEqual({ is: "unclear" });
  expect(said("greased", ["swingarm"], { left: true })).toEqual({ is: "fine" });
});

test("tight and dry are praise of what may neither move nor leak, and of nothing else", () => {
  for (const text of ["tight", "all tight", "dry", "tight, no leaks", "dicht und trocken"])
    expect([text, said(text, [], { tight: true })]).toEqual([text, { is: "fine" }]);
  expect(said("not tight", [], { tight: true })).toMatchObject({ is: "fault" });
});
