// A limit has its side: the least that wears down, the most that stretches. The other side, or a window, is refused with how to type it.

import { afterEach, beforeEach, expect, test } from "vitest";
import { isOtherEnd, onItsSide, SPEC_KEY_NAMES, SPEC_KEYS } from "../../src/trade/spec-keys.ts";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
const run = (line: string) => t.one({ as: "Ines", in: "dm", run: line });
beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
});
afterEach(() => t.close());

test.each([
  ["rear pad limit", "at most 1.5 mm", "the least that may be left", "1.5 mm"],
  ["rear pad limit", "1-2 mm", "the least that may be left", "1 mm"],
  ["rear disc limit", "at most 5 mm", "the least that may be left", "5 mm"],
  ["rear tread limit", "max 1.6 mm", "the least that may be left", "1.6 mm"],
  ["chain length limit", "at least 321 mm", "the most that it may come to", "321 mm"],
  ["front tyre pressure", "at least 36 psi", "the figure, or both ends", "36 psi"],
  ["front tyre pressure", "at most 36 psi", "the figure, or both ends", "36 psi"],
])("%s %s", async (what, value, says, alone) => {
  const refusal = await run(`/spec what:${what} value:${value}`);
  expect(refusal.data.refused).toMatchObject({ why: "wrong end", key: what });
  expect(refusal.text).toContain(says);
  expect(refusal.text).toContain("Nothing is saved.");
  const typed = `/spec what:${what} value:${alone}`;
  expect(refusal.text).toMatch(new RegExp(`${typed}$`, "u"));
  expect((await run(`/spec what:${what}`)).text).toContain("nothing is entered");
  // What it says to type is taken.
  expect((await run(typed)).data.refused).toBeUndefined();
});

test.each([
  ["rear pad limit", "at least 1.5 mm"],
  ["chain length limit", "at most 321 mm"],
  ["front tyre pressure", "33-36 psi"],
  ["chain slack", "at most 35 mm"],
])("its own side is taken: %s %s", async (what, value) => {
  expect((await run(`/spec what:${what} value:${value}`)).data.refused).toBeUndefined();
});

test("every limit that a reading is held against refuses its other side", () => {
  for (const key of SPEC_KEY_NAMES.filter((name) => name.endsWith(" limit"))) {
    const least = SPEC_KEYS[key].end === "least";
    expect(SPEC_KEYS[key].end).not.toBe("value");
    expect(isOtherEnd(key, { low: 1, high: 1 })).toBe(true);
    expect(isOtherEnd(key, { low: 1, high: null })).toBe(!least);
    expect(isOtherEnd(key, { low: null, high: 1 })).toBe(least);
    expect(onItsSide(key, { low: 1, high: 2 })).toEqual(least ? { low: 1, high: null } : { low: null, high: 2 });
  }
});
