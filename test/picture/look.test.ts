// Colours that everybody can read: contrast by the published formula, and distance as colour-blind readers see it, both by a general library.

import { type Color, differenceCiede2000, filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit, formatHex, parse, wcagContrast } from "culori";
import { describe, expect, test } from "vitest";
import { INK } from "../../src/picture/look.ts";

// W3C, Web Content Accessibility Guidelines 2.2: 1.4.3 asks 4.5:1 of text, 1.4.11 asks 3:1 of graphics that are needed to understand the content.
const OF_TEXT = 4.5;
const OF_GRAPHICS = 3;
const parsed = (color: string): Color => parse(color) as Color;

describe("the inks", () => {
  test("contrast is worked out as the guidelines do: black on white is 21:1, #767676 on white the known 4.54:1", () => {
    expect(wcagContrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
    expect(wcagContrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
  });
  test.each(["line", "quiet"] as const)("text in %s can be read on the ground, and on areas", (ink) => {
    for (const ground of ["ground", "firstArea", "rest"] as const) expect(wcagContrast(INK[ink], INK[ground])).toBeGreaterThanOrEqual(OF_TEXT);
  });
  test.each([
    ["first", ["ground", "firstArea", "rest"]],
    // Nothing in the second ink lies on the area of the first.
    ["second", ["ground", "rest"]],
    // Edges of areas.
    ["quiet", ["ground", "rest"]],
  ] as const)("marks in %s stand out from the ground, and from areas", (ink, grounds) => {
    for (const ground of grounds) expect(wcagContrast(INK[ink], INK[ground])).toBeGreaterThanOrEqual(OF_GRAPHICS);
  });
  test("an area is seen by itself, too, on a screen in daylight", () => {
    // Our own figure, by eye: the paler one before, at 1.19, was missed on a phone.
    expect(wcagContrast(INK.firstArea, INK.ground)).toBeGreaterThanOrEqual(1.4);
  });
  // CIEDE2000; a difference of 2.3 is just noticeable (Mahy and others, 1994), ten times that is plain.
  test.each([
    ["full colour sight", (color: string) => parsed(color)],
    ["no red", (color: string) => filterDeficiencyProt(1)(parsed(color))],
    ["no green", (color: string) => filterDeficiencyDeuter(1)(parsed(color))],
    ["no blue", (color: string) => filterDeficiencyTrit(1)(parsed(color))],
  ] as const)("the two colours are plainly apart with %s", (_, seen) => {
    const [a, b] = [INK.first, INK.second].map((color) => formatHex(seen(color)) ?? color);
    expect(differenceCiede2000()(a ?? "", b ?? "")).toBeGreaterThan(23);
  });
});
