// What a value at or beyond its limit makes due: a line that some starter plan has, and, where it can hurt, a defect that keeps the bike off the road.

import { describe, expect, test } from "vitest";
import { callsForWork } from "../../src/core/judgement/verdict.ts";
import { kindRow } from "../../src/core/reading/kinds.ts";
import { DEFECTS, defectRow } from "../../src/trade/defects.ts";
import { isJudged, JUDGED, type JudgedKind, judgedRow } from "../../src/trade/judged.ts";
import { STARTER_PLANS } from "../../src/trade/starter-plans.ts";

/** Judged, and of no line of a plan: why. */
const NO_LINE: Partial<Record<JudgedKind, string>> = {
  "brake pedal height": "set where it stands; no plan has a line for it",
  "static sag": "set by preload where it stands",
  "rider sag": "set by preload where it stands",
  compression: "says that something is worn, and not what",
};
const PLANNED = new Set(Object.values(STARTER_PLANS).flatMap(({ items }) => items.map(({ key }) => key as string)));
const KINDS = Object.keys(JUDGED).filter((kind): kind is JudgedKind => isJudged(kind as JudgedKind));

describe.each(KINDS)("%s", (kind) => {
  const { items, defects, doNotRide, caution } = judgedRow(kind);
  test("makes a line due that starter plans have, at every end that it is read at", () => {
    if (kind in NO_LINE) return expect(items).toEqual({});
    expect(Object.values(items).every((item) => PLANNED.has(item))).toBe(true);
    const ends = kindRow(kind).places.some((place) => place.startsWith("front")) ? (["front", "rear"] as const) : (["any"] as const);
    for (const end of ends) expect(items[end] ?? items.any, end).toBeDefined();
  });
  test("keeps the bike off the road by a defect that work mends, and says a caution, where it can hurt", () => {
    if (!doNotRide) return expect(defects).toEqual({});
    expect(caution).not.toBeNull();
    expect(Object.keys(defects).length).toBeGreaterThan(0);
    for (const defect of Object.values(defects)) {
      expect(defectRow(defect)?.usual).toBe("do not ride");
      // A pressure is right again by the next reading alone.
      const { mends = [], mayMend = [] } = defectRow(defect) ?? {};
      // New shoes may come with a new drum, and may not.
      // No plan has a line for the brake of a sidecar: its owner says when it is mended.
      if (kind !== "cold pressure" && defect !== "worn sidecar brake")
        expect([...mends, ...(kind === "drum diameter" ? mayMend : [])].length).toBeGreaterThan(0);
    }
  });
});

test("what is seen to be at its end makes due what mends it", () => {
  const seen = Object.keys(DEFECTS).flatMap((kind) => (defectRow(kind)?.due === undefined ? [] : [defectRow(kind)]));
  expect(seen.length).toBeGreaterThan(0);
  for (const row of seen) {
    expect(row?.mends).toContain(row?.due);
    expect(PLANNED).toContain(row?.due);
  }
});

test("at the limit is work as beyond it is", () => {
  for (const is of ["at limit", "beyond limit"] as const) expect(callsForWork({ is })).toBe(true);
  expect(callsForWork({ is: "near limit" })).toBe(false);
});
