// Killed once at each step: nothing is lost, nothing comes twice.

import { afterAll, beforeAll, expect, test } from "vitest";
import { crashAt, crashWhileLogging, crashWhileUpdating, FAR_STEPS, OWN_STEPS, type Template, template } from "./crash.ts";

let from: Template;
beforeAll(async () => {
  from = await template();
});
afterAll(() => from.drop());

const once = { killed: true, lost: 0, doubled: 0 };

test.each([...OWN_STEPS.map(([step, of]) => [step, Math.min(of, 2)] as const), ...FAR_STEPS.map((step) => [step, 3] as const)])(
  "%s (%i)",
  async (step, nth) => {
    expect(await crashAt(step, nth, from)).toMatchObject(once);
  },
);

test.each(["before the commit", "after the commit"] as const)("logging a message, %s: it is logged once", async (step) => {
  expect(await crashWhileLogging(step, from)).toEqual({ killed: true, readings: 1 });
});

test.each([1, 3])("updating the database, at change %i: it is updated whole at the next start, and what was in it is there", async (nth) => {
  expect(await crashWhileUpdating(nth)).toEqual({ killed: true, kept: true, whole: true });
});

test("without looking for what is in doubt, a message comes twice: the test can see it", async () => {
  expect(await crashAt("stored, unanswered", 1, from, { readBack: false })).toMatchObject({ killed: true, doubled: 1 });
});
