// One of two processes on one PostgreSQL database is killed: the other takes over when the lease is over.

import { afterAll, beforeAll, expect, test } from "vitest";
import { crashAt, FAR_STEPS, OWN_STEPS, type Template, template } from "./crash.ts";

let from: Template;
beforeAll(async () => {
  from = await template();
});
afterAll(() => from.drop());

test.each([...OWN_STEPS.map(([step]) => step), ...FAR_STEPS])("%s", async (step) => {
  expect(await crashAt(step, 1, from, { two: true })).toMatchObject({ killed: true, lost: 0, doubled: 0 });
});
