// A small walk forward in the suite: that the proof itself is sound, and that the forecast's ranges hold about what they promise.

import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { backtest, POOLED } from "./backtest.ts";
import { rivals } from "./rivals.ts";
import { clusteredError, holds, intervalScore } from "./score.ts";

const rows = backtest(15);
const pooled = (method: string, unit: "days" | "miles" = "days") =>
  rows.filter(
    (row) => row.population === POOLED && row.method === method && row.unit === unit && (unit === "miles" || (row.horizon >= 30 && row.horizon <= 120)),
  );
const RULES = ["lifetime average", "last 90 days", "last two readings", "same days last year"];

test("the same riders give the same rows, one for each population, question and method", () => {
  expect(backtest(1, undefined, rivals)).toEqual(backtest(1, undefined, rivals));
  expect(rows).toHaveLength(7 * 9 * 6);
});

test("a range of 80 % holds about that, by the riders' own scatter", () => {
  for (const { coverage, coverageWithin } of pooled("tappet")) {
    // Twice the 95 % interval: three questions of one small run must all pass by more than luck.
    expect(coverage + 2 * coverageWithin).toBeGreaterThan(0.77);
    expect(coverage - 2 * coverageWithin).toBeLessThan(0.83);
    expect(coverageWithin).toBeLessThan(0.08);
  }
});

test("who knows how each rider rides is right as often as promised, and beats everybody; the forecast beats the lifetime average", () => {
  const score = (method: string, unit: "days" | "miles") => pooled(method, unit).reduce((sum, row) => sum + row.intervalScore, 0);
  for (const { coverage, coverageWithin } of pooled("oracle")) expect(Math.abs(coverage - 0.8)).toBeLessThan(2 * coverageWithin);
  for (const unit of ["days", "miles"] as const) {
    for (const method of ["tappet", ...RULES]) expect(score("oracle", unit), `${method}, ${unit}`).toBeLessThan(score(method, unit));
    expect(score("tappet", unit), unit).toBeLessThan(score("lifetime average", unit));
  }
});

test("what is not reached within the simulated future is counted, and left out of the error", () => {
  const [near, far] = [pooled("tappet", "miles")[0], pooled("tappet", "miles").at(-1)];
  expect([near?.horizon, far?.horizon]).toEqual([100, 1000]);
  expect(far?.censored).toBeGreaterThan(near?.censored ?? 0);
  expect(far?.censored).toBeLessThan(far?.n ?? 0);
  expect([near?.medianErrorDistance, pooled("tappet")[0]?.medianErrorDays]).toEqual([null, null]);
});

describe("does a range hold what came?", () => {
  const rare = { below: 0, on: 0 };
  test("between its ends, and on them", () => {
    expect(holds({ low: 10, likely: 15, high: 20 }, 20, rare, 0)).toBe(true);
    expect(holds({ low: 10, likely: 15, high: 20 }, 21, rare, 0)).toBe(false);
  });
  test("unreached: only a range that is open to the right, or ends beyond the simulated future", () => {
    expect(holds({ low: 10, likely: 15, high: Number.POSITIVE_INFINITY }, Number.POSITIVE_INFINITY, rare, 0)).toBe(true);
    expect(holds({ low: 10, likely: 15, high: 364 }, Number.POSITIVE_INFINITY, rare, 0)).toBe(true);
    expect(holds({ low: 10, likely: 15, high: 363 }, Number.POSITIVE_INFINITY, rare, 0)).toBe(false);
  });
  const share = (said: { low: number; high: number }, came: number, oracle: { below: number; on: number }) =>
    Array.from({ length: 1000 }, (_, n) => holds({ ...said, likely: 0 }, came, oracle, n / 1000)).filter(Boolean).length / 1000;
  test("a bike certainly parked: to say exactly nothing is right 80 % of the time, as promised; to leave room above, 90 %", () => {
    const parked = { below: 0, on: 1 };
    expect(share({ low: 0, high: 0 }, 0, parked)).toBeCloseTo(0.8, 2);
    expect(share({ low: 0, high: 50 }, 0, parked)).toBeCloseTo(0.9, 2);
    expect(share({ low: 5, high: 50 }, 0, parked)).toBe(0);
  });
  test("any value that is likely for itself, not only nothing: a day on which the trip begins", () => {
    // 30 % before it, 50 % on it: a range that ends there leaves 20 % beyond, of which it may leave 10.
    expect(share({ low: 3, high: 7 }, 7, { below: 0.3, on: 0.5 })).toBe(1);
    expect(share({ low: 3, high: 7 }, 7, { below: 0.5, on: 0.5 })).toBeCloseTo(0.8, 2);
    expect(share({ low: 3, high: 9 }, 7, { below: 0.5, on: 0.5 })).toBe(1);
  });
  test("a value that is not likely for itself is never drawn for", () => {
    expect(share({ low: 0, high: 50 }, 0, { below: 0, on: 0.09 })).toBe(1);
  });
});

test("the score is the width and ten times the miss of an 80 % range (Gneiting and Raftery, 2007)", () => {
  expect([8, 15, 23].map((came) => intervalScore({ low: 10, likely: 15, high: 20 }, came))).toEqual([30, 10, 40]);
});

test("riders are what is drawn: three answers of one rider that always agree say no more than one", () => {
  const alone = Array.from({ length: 100 }, (_, n) => ({ held: n < 80 ? 1 : 0, n: 1 }));
  // The usual standard error of a share, sqrt(p (1 - p) / (n - 1)).
  expect(clusteredError(alone)).toBeCloseTo(Math.sqrt((0.8 * 0.2) / 99), 10);
  expect(clusteredError(alone.map(({ held }) => ({ held: 3 * held, n: 3 })))).toBeCloseTo(clusteredError(alone), 10);
});

test("riders and forecast share no code", async () => {
  for (const name of ["random.ts", "simulate.ts"]) expect(await readFile(path.join(import.meta.dirname, name), "utf8")).not.toContain("src/");
  const folder = path.join(import.meta.dirname, "../../src/core/usage");
  for (const name of await readdir(folder)) expect(await readFile(path.join(folder, name), "utf8")).not.toContain("backtest/");
});
