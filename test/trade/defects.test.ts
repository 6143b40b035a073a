import { expect, test } from "vitest";
import { DEFECTS, defectRow } from "../../src/trade/defects.ts";
import { ENGLISH_DEFECTS } from "../../src/words/en/defect-kinds.ts";

/** Found by a figure or by what was put in, and graded where that is noted. */
const BY_FIGURE = [
  "low brake fluid",
  "low front brake fluid",
  "low rear brake fluid",
  "no throttle play",
  "worn chain",
  "mixed brake fluid",
  "mixed clutch fluid",
];
/** Their sentence says when they stop the ride, and not that they do: their owner is asked. */
const DEPENDS = ["fork leak", "side stand"];

test("what says by itself not to ride is graded so at once, and of nothing else is that taken for granted", () => {
  const kinds = Object.keys(DEFECTS) as (keyof typeof DEFECTS)[];
  const says = kinds.filter((kind) => /^Do not ride/u.test(ENGLISH_DEFECTS[kind]) && !BY_FIGURE.includes(kind) && !DEPENDS.includes(kind));
  const graded = kinds.filter((kind) => defectRow(kind)?.always === true && defectRow(kind)?.usual === "do not ride");
  expect(says.length).toBeGreaterThan(20);
  expect(graded).toEqual(says);
});
