// 300 crashes in sending: 20 at each step, the rest at moments spread over it; and 20 of each other kind. The report says how many of each were really killed.

import { afterAll, beforeAll, expect, test } from "vitest";
import {
  crashAt,
  crashWhileBackingUp,
  crashWhileLogging,
  crashWhileUpdating,
  FAR_STEPS,
  type Judged,
  OWN_STEPS,
  type Template,
  template,
} from "../crash/crash.ts";

const AT_EACH = 20;
const IN_ALL = 300;
const LONG = 3_600_000;

let from: Template;
beforeAll(async () => {
  from = await template();
});
afterAll(() => from.drop());

const times = <T>(what: (n: number) => T): T[] => Array.from({ length: AT_EACH }, (_, n) => what(n));

test(
  "300 crashes in sending: nothing lost, nothing twice",
  async () => {
    const steps: [string, number][] = [
      ...OWN_STEPS.flatMap(([step, of]) => times((n): [string, number] => [step, (n % of) + 1])),
      ...FAR_STEPS.flatMap((step) => times((n): [string, number] => [step, (n % 5) + 1])),
    ];
    // Spread evenly over the time in which it sends, rather than by chance, so that a failure can be had again.
    const spread = Array.from({ length: IN_ALL - steps.length }, (_, n): [string, number] => ["at random", n * 6]);
    const judged: Judged[] = [];
    for (const [step, nth] of [...steps, ...spread]) judged.push(await crashAt(step, nth, from));
    const report = [...new Set(judged.map(({ step }) => step))].map((step) => {
      const those = judged.filter((each) => each.step === step);
      const sum = (of: (each: Judged) => number): number => those.reduce((total, each) => total + of(each), 0);
      return { step, runs: those.length, killed: sum(({ killed }) => (killed ? 1 : 0)), lost: sum(({ lost }) => lost), doubled: sum(({ doubled }) => doubled) };
    });
    console.table(report);
    expect(report.filter(({ killed, step }) => killed < (step === "at random" ? 1 : AT_EACH))).toEqual([]);
    expect([judged.length, judged.filter(({ lost, doubled }) => lost + doubled > 0)]).toEqual([IN_ALL, []]);
  },
  LONG,
);

test(
  "20 crashes each in logging before and after it is kept, in updating and in backing up",
  async () => {
    for (let n = 0; n < AT_EACH; n++) {
      for (const step of ["before the commit", "after the commit"] as const) expect(await crashWhileLogging(step, from)).toEqual({ killed: true, readings: 1 });
      expect(await crashWhileUpdating((n % 4) + 1)).toEqual({ killed: true, kept: true, whole: true });
      expect(await crashWhileBackingUp((n % 6) + 1, from)).toEqual({ killed: true, left: ["tappet-DATE.sqlite"], whole: true });
    }
  },
  LONG,
);
