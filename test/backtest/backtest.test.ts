// A small walk forward in the suite: that the proof itself is sound, and that the forecast's ranges hold about what they promise.

import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { expect, test } from "vitest";
import { backtest, POOLED } from "./backtest.ts";

const RIDERS = 20;
const rows = backtest(RIDERS);
const pooled = (method: string) => rows.filter((row) => row.population === POOLED && row.method === method && row.horizon >= 30 && row.horizon <= 120);

test("the same riders give the same rows", () => {
  expect(backtest(2)).toEqual(backtest(2));
});

test("a range of 80 % holds about that", () => {
  for (const { coverage } of pooled("tappet")) {
    expect(coverage).toBeGreaterThan(0.72);
    expect(coverage).toBeLessThan(0.88);
  }
});

test("who knows how each rider rides is right as often as promised, and beats everybody", () => {
  const score = (method: string) => pooled(method).reduce((sum, row) => sum + row.intervalScore, 0);
  for (const { coverage } of pooled("oracle")) expect(Math.abs(coverage - 0.8)).toBeLessThan(0.12);
  for (const method of ["tappet", "lifetime average", "last 90 days", "last two readings", "same days last year"])
    expect(score("oracle"), method).toBeLessThan(score(method));
  expect(score("tappet")).toBeLessThan(score("lifetime average"));
});

test("riders and forecast share no code", async () => {
  for (const name of ["random.ts", "simulate.ts"]) expect(await readFile(path.join(import.meta.dirname, name), "utf8")).not.toContain("src/");
  const folder = path.join(import.meta.dirname, "../../src/core/usage");
  for (const name of await readdir(folder)) expect(await readFile(path.join(folder, name), "utf8")).not.toContain("backtest/");
});
