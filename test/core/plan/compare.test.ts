// Another plan beneath a member's own changes: what differs, what conflicts, and that the changes stay.

import fc from "fast-check";
import { expect, test } from "vitest";
import type { ItemKey } from "../../../src/core/ids.ts";
import { differences, isSameTrigger, rebased } from "../../../src/core/plan/compare.ts";
import { fold } from "../../../src/core/plan/fold.ts";
import type { PlanBase, PlanEdit } from "../../../src/core/plan/plan.ts";
import { planItem } from "../../../src/trade/standard-items.ts";
import { STARTER_PLANS } from "../../../src/trade/starter-plans.ts";

const every = (miles: number) => ({ by: "interval" as const, every: { miles, km: null, months: null, hours: null } });
const oil = (miles: number) => planItem("engine-oil.replace", every(miles));
const valves = (miles: number) => planItem("valve-clearance.adjust", every(miles));
const base = (...items: PlanBase["items"]): PlanBase => ({ name: "a plan", source: "a test", items });
const KEY = oil(1).key;
const changed: PlanEdit = { change: "interval", item: KEY, repeat: every(3000) };

test("a change of the owner's stays on the new plan, and is named where the new plan differs there too", () => {
  const { difference, conflicts } = rebased(base(oil(4000), valves(8000)), [changed], base(oil(5000), valves(12_000)));
  expect(conflicts).toEqual([KEY]);
  expect(difference.changed.map(({ will }) => will.key)).toEqual([valves(1).key]);
});
test("where the new plan leaves the item as it was there is no conflict", () => {
  expect(rebased(base(oil(4000)), [changed], base(oil(4000), valves(8000)))).toMatchObject({ conflicts: [], difference: { added: [{ key: valves(1).key }] } });
});
test("an item that the owner dropped stays dropped; one that the new plan has no more is gone, and named", () => {
  const dropped: PlanEdit = { change: "drop", item: KEY };
  expect(fold(base(oil(5000)), [dropped]).items).toEqual([]);
  expect(rebased(base(oil(4000)), [changed], base())).toMatchObject({ conflicts: [KEY], difference: { gone: [{ key: KEY }] } });
});

test("a plan differs from itself in nothing, and taking the one it has changes nothing, whatever was edited", () => {
  const plan = STARTER_PLANS.classic;
  const keys = plan.items.map((item) => item.key);
  const edit: fc.Arbitrary<PlanEdit> = fc.oneof(
    fc.record({ change: fc.constant("drop" as const), item: fc.constantFrom(...keys) }),
    fc.record({ change: fc.constant("restore" as const), item: fc.constantFrom(...keys) }),
    fc.record({ change: fc.constant("interval" as const), item: fc.constantFrom(...keys), repeat: fc.integer({ min: 1, max: 50_000 }).map(every) }),
    fc.constant({ change: "base" as const, from: "a", to: "b" }),
  );
  fc.assert(
    fc.property(fc.array(edit, { maxLength: 20 }), (edits) => {
      expect(rebased(plan, edits, plan)).toEqual({ difference: { added: [], gone: [], changed: [] }, conflicts: [] });
      const { added, gone, changed: others } = differences(plan, fold(plan, edits));
      expect(added).toEqual([]);
      for (const item of gone) expect(edits.some((each) => each.change === "drop" && each.item === (item.key as ItemKey))).toBe(true);
      for (const { was, will } of others) expect(isSameTrigger(was, will)).toBe(false);
    }),
    { numRuns: 100 },
  );
});
