// What members typed, made harmless. Which marks format is the platform's documentation (message formatting) and its markdown guide; the backslash before each is common practice.

import { describe, expect, test } from "vitest";
import { escaped, escapedLines, wrapped } from "../../src/discord/plain.ts";

const NOTHING = "\u200b";

describe("a line", () => {
  test.each([..."\\*_~`|>#[]<"])("shows %s as it is", (mark) => {
    expect(escaped(`a${mark}b`)).toBe(`a\\${mark}b`);
  });
  test.each([
    ["nobody is named by it", "@everyone <@1>", `@${NOTHING}everyone \\<@${NOTHING}1\\>`],
    ["no address is a link", "see https://x.example", `see https:${NOTHING}//x.example`],
    ["no link is hidden under other words", "[free](https://x.example)", `\\[free\\](https:${NOTHING}//x.example)`],
    ["no heading", "# Heron", "\\# Heron"],
    ["no small print", "-# Heron", "\\-\\# Heron"],
    ["no quotation", "> Heron", "\\> Heron"],
    ["no numbered list", "1. Heron", "1\\. Heron"],
    ["no other numbered list", "12) Heron", "12\\) Heron"],
    ["no list by a plus sign", "+ Heron", "\\+ Heron"],
    ["a list of our own stays one", "- Heron", "- Heron"],
    ["and what stands in it is plain", "- # Heron", "- \\# Heron"],
    ["a list in a list is none", "- - Heron", "- \\- Heron"],
    ["a figure below zero stays as it is", "-5 °C", "-5 °C"],
    ["a backslash escapes nothing", "\\*a*", "\\\\\\*a\\*"],
  ])("%s", (_, typed, shown) => {
    expect(escaped(typed)).toBe(shown);
  });
  test("each line of a text is a line by itself, whatever parts them", () => {
    expect(escapedLines("a\r\n# b\n- c\u2028> d\re")).toEqual(["a", "\\# b", "- c", "\\> d", "e"]);
  });
});

describe("a text too long for one message", () => {
  test("is parted at spaces, and every word is there", () => {
    const words = Array.from({ length: 400 }, (_, n) => `w${n}`);
    const pieces = wrapped(words.join(" "), 100);
    expect(pieces.every((piece) => piece.length <= 100)).toBe(true);
    expect(pieces.flatMap((piece) => piece.split(" "))).toEqual(words);
  });
  test.each([4, 5, 7, 10])("is parted in no escape and in no pair, at %i characters", (most) => {
    const text = escaped(`${"*".repeat(20)}${"🏍".repeat(20)}${"\\".repeat(20)}x`);
    const pieces = wrapped(text, most);
    expect(pieces.join("")).toBe(text);
    for (const piece of pieces) {
      expect(piece.length).toBeLessThanOrEqual(most);
      expect(piece).not.toMatch(/[\uD800-\uDBFF]$|^[\uDC00-\uDFFF]/u);
      expect((/\\*$/u.exec(piece)?.[0] ?? "").length % 2).toBe(0);
    }
  });
});
