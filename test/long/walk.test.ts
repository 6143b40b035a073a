// A walk through a checklist, killed at every step: it comes to the same as one that nothing disturbed.

import { expect, test } from "vitest";
import { walk } from "../crash/walk.ts";

test("killed before and after each answer is kept, and each sent again: no answer lost, none twice", async () => {
  const calm = await walk(false);
  const cruel = await walk(true);
  expect([cruel.killed, cruel.of]).toEqual([16, 16]);
  expect(calm.state).toBe("finished");
  expect(Object.values(calm.answers.at(-1) ?? {}).sort()).toEqual(["good", "good", "later", "needs work"].sort());
  expect(cruel.answers).toEqual(calm.answers);
  expect(cruel.text).toBe(calm.text);
  expect(calm.text.match(/a nail in it/gu)?.length).toBeGreaterThan(0);
}, 600_000);
