// A spec as it is typed: its value ("98 Nm", "25-35 mm", "at least 4.5 mm", "36 psi (2.5 bar)"), and where it stands ("workshop manual, 2019 edition, p. 142").

import type { NumberStyle } from "../core/quantity/number.ts";
import { parseAmount } from "../core/quantity/parse.ts";
import { type Dimension, dimensionOf, toCanonical, type UnitId } from "../core/quantity/units.ts";
import type { Vocabulary } from "../core/reading/vocabulary.ts";
import type { SpecFigure, SpecSource } from "../core/spec/spec.ts";

export type ReadFigure = SpecFigure | "not read" | "unit missing" | "other dimension" | "two figures" | "less than none";
type Wants = { readonly holds: Dimension; readonly end: "value" | "least" | "most"; readonly unit: UnitId | null };

/** Two figures for one value may differ by what printing rounds away. */
const ROUNDED = 0.03;

/** @param usual the unit of a bare figure, where the member or the spec has one */
export function readSpecFigure(typed: string, wants: Wants, usual: UnitId | null, { units, asking }: Vocabulary, numbers: NumberStyle): ReadFigure {
  const { bound, left } = boundedBy(typed, asking.atLeast, asking.atMost);
  const amount = parseAmount(left, units, numbers);
  if (amount.is === "ambiguous") return "unit missing";
  if (amount.is === "refused" || amount.other !== null) return "not read";
  const unit = amount.unit ?? usual;
  if (unit === null) return "unit missing";
  if (dimensionOf(unit) !== wants.holds) return "other dimension";
  const [from, to] = [toCanonical(amount.from, unit), toCanonical(amount.to, unit)].sort((a, b) => a - b) as [number, number];
  if (from < 0 && wants.holds !== "length" && wants.holds !== "temperature") return "less than none";
  if (amount.rest !== "") {
    // The same again in another unit, as plates print it.
    const again = parseAmount(amount.rest.replace(/^[(/=,\s]+/u, "").replace(/\)$/u, ""), units, numbers);
    if (again.is !== "amount" || again.unit === null || again.rest !== "" || dimensionOf(again.unit) !== wants.holds) return "not read";
    if (Math.abs(toCanonical(again.from, again.unit) - from) > ROUNDED * Math.abs(from)) return "two figures";
  }
  const nominal = amount.nominal === null ? null : toCanonical(amount.nominal, unit);
  const end = bound ?? (from === to ? wants.end : "value");
  return { is: "figure", low: end === "most" ? null : from, high: end === "least" ? null : to, nominal, unit, step: amount.step };
}

/** The whole of a text as a measured value, its unit named; null where there is more or less to it. */
export function measureTyped(
  typed: string,
  { units, asking }: Vocabulary,
  numbers: NumberStyle,
): { readonly dimension: Dimension; readonly value: number } | null {
  const amount = parseAmount(boundedBy(typed, asking.atLeast, asking.atMost).left, units, numbers);
  if (amount.is !== "amount" || amount.unit === null || amount.rest !== "" || amount.other !== null) return null;
  return { dimension: dimensionOf(amount.unit), value: toCanonical(amount.from, amount.unit) };
}

/** A figure and words typed in one, in either order: "3.9 L 10W-40". Null where it is not both. */
export function splitSpec(
  typed: string,
  holds: Dimension,
  { units }: Vocabulary,
  numbers: NumberStyle,
): { readonly figure: string; readonly words: string } | null {
  const isFigure = (text: string): boolean => {
    const amount = parseAmount(text, units, numbers);
    return amount.is === "amount" && amount.rest === "" && amount.unit !== null && dimensionOf(amount.unit) === holds;
  };
  const bare = (text: string): string => text.replace(/^[\s,;:+]+|[\s,;:+]+$/gu, "");
  const ends = [...typed.matchAll(/[\s,;]+/gu)].map(({ index }) => index);
  // The longest figure first: "3.9 L" before "3.9".
  for (const at of ends.toReversed()) {
    const [head, tail] = [bare(typed.slice(0, at)), bare(typed.slice(at))];
    if (tail !== "" && isFigure(head)) return { figure: head, words: tail };
  }
  for (const at of ends) {
    const [head, tail] = [bare(typed.slice(0, at)), bare(typed.slice(at))];
    if (head !== "" && isFigure(tail)) return { figure: tail, words: head };
  }
  return null;
}

function boundedBy(typed: string, least: readonly string[], most: readonly string[]): { readonly bound: "least" | "most" | null; readonly left: string } {
  const text = typed.trim();
  for (const [bound, words] of [
    ["least", least],
    ["most", most],
  ] as const)
    for (const word of [...words].sort((a, b) => b.length - a.length)) {
      const lower = text.toLowerCase();
      if (lower.startsWith(`${word} `) || (/^\W+$/u.test(word) && lower.startsWith(word)))
        return { bound, left: text.slice(word.length).replace(/^\./u, "").trim() };
      if (lower.endsWith(` ${word}`)) return { bound, left: text.slice(0, -word.length).trim() };
    }
  return { bound: null, left: text };
}

/** "Workshop manual, 2nd edition, p. 142": null when nothing was typed. A page alone is of "the manual". */
export function readSpecSource(typed: string): SpecSource | null {
  const page = /(?:^|[\s,;(])(?:pages?|pp?\.?|sheet|s\.)\s*(\d[\w.-]*)\)?/iu.exec(typed);
  const left = page === null ? typed : `${typed.slice(0, page.index)} ${typed.slice(page.index + page[0].length)}`;
  const parts = left
    .split(/[,;]/u)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const edition = parts.find((part, n) => n > 0 && /\b(?:ed(?:ition|n)?\.?|rev(?:ision)?\.?|issue|print(?:ing)?|(?:19|20)\d\d)\b/iu.test(part)) ?? null;
  const manual = parts.filter((part) => part !== edition).join(", ");
  if (manual === "" && page === null) return null;
  return { manual: manual === "" ? "manual" : manual, edition, page: page?.[1]?.replace(/[.]$/u, "") ?? null };
}
