// What was found at an item, told from a note.

import { expect, test } from "vitest";
import { foundSaid } from "../../src/message/found-said.ts";
import { HERON, knownWith } from "./work-known.ts";

const known = knownWith([HERON]);
const said = (text: string, names: readonly string[] = ["Wheel bearings"], works = false) => foundSaid(text, names, works, known);

test.each(["cracked", "a bit of play", "some play at the rear", "fine, but a small crack", "not good: split", "leaking"])("%s is a fault", (text) => {
  expect(said(text)).toMatchObject({ is: "fault" });
});

test.each(["no play", "ok", "all good", "no sign of a crack", "fine", "not cracked", "tight, no leaks", "without play"])("%s is well", (text) => {
  expect(said(text)).toEqual({ is: "fine" });
});

test.each(["some grease came out", "a bit rusty", "not good", "done by the book", "12"])("%s is neither for certain", (text) => {
  expect(said(text)).toEqual({ is: "unclear" });
});

test("beside a name the words are of a kind; what setting is for is no fault once it is set", () => {
  expect(said("sticks open", ["throttle"])).toEqual({ is: "fault", kind: "sticking throttle" });
  expect(said("loose", ["chain"])).toEqual({ is: "fault", kind: "chain" });
  expect(said("loose", ["chain"], true)).toEqual({ is: "unclear" });
  // A name that itself holds a sign says nothing of what was found.
  expect(said("greased", ["swingarm play"])).toEqual({ is: "unclear" });
});
