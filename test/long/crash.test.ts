// 300 crashes: 20 at each step, the rest at random moments of sending. The report says how many of each were really killed.

import { afterAll, beforeAll, expect, test } from "vitest";
import { crashAt, FAR_STEPS, type Judged, OWN_STEPS, type Template, template } from "../crash/crash.ts";

const AT_EACH = 20;
const IN_ALL = 300;

let from: Template;
beforeAll(async () => {
  from = await template();
});
afterAll(() => from.drop());

test("300 crashes: nothing lost, nothing twice", async () => {
  const steps: [string, number][] = [
    ...OWN_STEPS.flatMap(([step, of]) => Array.from({ length: AT_EACH }, (_, n): [string, number] => [step, (n % of) + 1])),
    ...FAR_STEPS.flatMap((step) => Array.from({ length: AT_EACH }, (_, n): [string, number] => [step, (n % 6) + 1])),
  ];
  // Spread evenly over the time in which it sends, rather than by chance, so that a failure can be had again.
  const random = Array.from({ length: IN_ALL - steps.length }, (_, n): [string, number] => ["at random", n * 8]);
  const judged: Judged[] = [];
  for (const [step, nth] of [...steps, ...random]) judged.push(await crashAt(step, nth, from));
  const report = [...new Set(judged.map(({ step }) => step))].map((step) => {
    const those = judged.filter((each) => each.step === step);
    const sum = (of: (each: Judged) => number): number => those.reduce((total, each) => total + of(each), 0);
    return { step, runs: those.length, killed: sum(({ killed }) => (killed ? 1 : 0)), lost: sum(({ lost }) => lost), doubled: sum(({ doubled }) => doubled) };
  });
  console.table(report);
  expect(report.every(({ killed, step }) => (step === "at random" ? killed > 0 : killed >= AT_EACH))).toBe(true);
  expect([judged.length, judged.filter(({ lost, doubled }) => lost + doubled > 0)]).toEqual([IN_ALL, []]);
}, 3_600_000);
