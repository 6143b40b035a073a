// Which outcomes put right what was found.

import { expect, test } from "vitest";
import { ACTIONS } from "../../../src/core/plan/plan.ts";
import { OUTCOMES } from "../../../src/core/schedule/facts.ts";
import { mends } from "../../../src/core/schedule/mending.ts";

test("what was set, renewed or filled up is mended; what was looked at or could not be done is not, nor what was filled up where all of it should be changed", () => {
  for (const action of [...ACTIONS, null]) {
    expect(OUTCOMES.filter((outcome) => outcome !== "done" && mends(outcome, action))).toEqual(
      action === "replace" ? ["adjusted", "replaced"] : ["adjusted", "replaced", "topped up"],
    );
  }
});

test("“done” mends where the item is work, and not where it is a look", () => {
  expect(ACTIONS.filter((action) => !mends("done", action))).toEqual(["inspect", "measure", "test"]);
});
