// A piece that came off and went on again has what was ridden on it: the sum of the spans it was on.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import { FIRST_PIECE, piecesOf, refitIn, refitKey, refittedParts } from "../../../src/core/parts/pieces.ts";
import { riddenOf } from "../../../src/core/quantity/distance.ts";
import { PART_ROWS } from "../../../src/trade/parts.ts";
import { aJob, anItem, dueMiles, every, facts, moment, only } from "../schedule/builders.ts";

const START = { date: localDate("2025-01-01"), ridden: riddenOf(10_000, "mi") };
const CHAIN = "chain.replace" as ItemKey;
const mi = (figure: number) => riddenOf(figure, "mi");
const renewed = (id: string, on: string, at: number) => aJob(CHAIN, on, at, { id, outcome: "replaced" });
const back = (piece: string, on: string, at: number) => aJob(refitKey({ part: "chain and sprockets", piece, label: "" }), on, at, { id: `back ${at}` });
const partsOf = (jobs: Parameters<typeof refittedParts>[1]) => refittedParts(PART_ROWS, jobs, ({ ridden }) => ridden, START);

describe("pieces put back on", () => {
  const jobs = [renewed("new", "2025-06-01", 12_000), back(FIRST_PIECE, "2026-03-01", 14_500)];

  test("each has the sum of its spans", () => {
    const [chain] = partsOf(jobs);
    const pieces = piecesOf(chain?.fittings ?? [], START.ridden, mi(15_000));
    // On from 10,000 to 12,000 and since 14,500: 2,500 by hand; the other from 12,000 to 14,500.
    expect(pieces.map(({ piece, ridden, fitted }) => [piece, ridden, fitted])).toEqual([
      [FIRST_PIECE, mi(2500), true],
      ["new", mi(2500), false],
    ]);
  });

  test("where none was put back, nothing is kept of it", () => {
    expect(partsOf([renewed("new", "2025-06-01", 12_000)])).toEqual([]);
  });

  test("a name that was made is read back, whatever its label holds", () => {
    fc.assert(
      fc.property(fc.string(), (label) => {
        const said = { part: "battery", piece: "01a2", label };
        expect(refitIn(refitKey(said))).toEqual(said);
      }),
    );
    expect(refitIn("chain.replace")).toBeNull();
  });

  test("whatever goes on and off, all that was ridden was ridden on one of the pieces", () => {
    const step = fc.record({ piece: fc.integer({ min: 0, max: 4 }), miles: fc.integer({ min: 0, max: 3000 }) });
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), (steps) => {
        let at = 10_000;
        const made = steps.map(({ piece, miles }, n) => {
          at += miles;
          const on = addDays(START.date, n * 10 + 10);
          return piece === 0 ? renewed(`p${n}`, on, at) : back(piece === 1 ? FIRST_PIECE : `p${piece}`, on, at);
        });
        const end = mi(at + 500);
        const parts = partsOf(made);
        if (parts.length === 0) return;
        const total = piecesOf(parts[0]?.fittings ?? [], START.ridden, end).reduce((sum, { ridden }) => sum + ridden, 0);
        expect(total).toBe(end - START.ridden);
      }),
    );
  });
});

describe("what is due of it", () => {
  const item = anItem({ key: CHAIN, anchor: "last done", repeat: { by: "interval", every: every(10_000, null) } });
  const due = (jobs: Parameters<typeof refittedParts>[1]) =>
    only(facts([item], { jobs, refitted: partsOf(jobs), knownFrom: { ...START, wholeSinceNew: false } }), moment("2026-07-01", 15_000), CHAIN);

  test("counts from the work that first put it on, less what was ridden on the other", () => {
    const jobs = [renewed("one", "2025-02-01", 11_000), renewed("two", "2025-06-01", 12_000), back("one", "2026-03-01", 14_500)];
    // 10,000 mi of life from 11,000, and 2,500 of the road since were on the other: 23,500.
    expect(dueMiles(due(jobs))).toBe(23_500);
    expect(dueMiles(due(jobs.slice(0, 2)))).toBe(22_000);
  });

  test("the one that the bike came with counts from there", () => {
    expect(dueMiles(due([renewed("new", "2025-06-01", 12_000), back(FIRST_PIECE, "2026-03-01", 14_500)]))).toBe(22_500);
  });
});
