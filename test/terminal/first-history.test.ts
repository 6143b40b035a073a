// The form about a bike's past: vague answers are welcome, and one that cannot be read comes back as it was typed beside what is kept.

import { afterEach, beforeEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
let added: Shown;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  added = await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
});
afterEach(() => t.close());
const fill = (shown: Shown, label: string, fields: Record<string, string>) => t.one({ as: "Ines", fill: button(shown, label), fields });
const TYRES = "front-tyre.replace+rear-tyre.replace";

test.each(["2 years ago or so", "spring 2024 roughly", "about 2 years ago, I think", "2024, maybe"])("“%s” is a day as vague as it is", async (typed) => {
  const shown = await fill(added, "Fill in", { "brake-fluid.replace": typed });
  expect(shown.data.unread).toEqual([]);
  expect(shown.data.recorded).toHaveLength(1);
});

test.each(["ages ago", "a long time ago", "who knows"])("“%s” counts as unknown", async (typed) => {
  const shown = await fill(added, "Fill in", { "brake-fluid.replace": typed });
  expect(shown.data).toMatchObject({ unread: [], recorded: [], unknown: ["Brake fluid"] });
});

test("what cannot be read comes back in the form as it was typed, however long; the rest is kept", async () => {
  const asked = added.actions.find(({ kind }) => kind === "form")?.fields?.map(({ name }) => name) ?? [];
  const tyres = asked.find((name) => name.includes("+")) ?? TYRES;
  const long = `when it rained, on the way back from the lakes, ${"and then again ".repeat(200)}`.trim();
  const shown = await fill(added, "Fill in", {
    "brake-fluid.replace": "spring 2023",
    "engine-oil.replace": long,
    [tyres]: "front 2021, rear when it wore out",
  });
  expect(shown.data.recorded.flatMap(({ items }: { items: string[] }) => items)).toEqual(["brake-fluid.replace"]);
  const again = shown.actions.find(({ label }) => label === "Put it right");
  expect(again?.fields?.map(({ name, value }) => [name, value])).toEqual([
    ["engine-oil.replace", long],
    [tyres, "front 2021, rear when it wore out"],
  ]);
  expect(again?.id.length).toBeLessThanOrEqual(100);
  const right = await fill(shown, "Put it right", { "engine-oil.replace": "spring 2026", [tyres]: "2021" });
  expect(right.data).toMatchObject({ unread: [], unknown: [] });
  expect(right.data.recorded).toHaveLength(2);
  // It asks nothing: no question is left open by it.
  expect((await t.one({ as: "Ines", run: "/due" })).text).not.toContain("Nothing is saved until you answer");
});

test.each([
  ["front 2021, rear last autumn", ["2021-01-01", "2026-09-01"]],
  ["front tyre 2021 and rear tyre last autumn", ["2021-01-01", "2026-09-01"]],
  ["rear: last autumn; front: 2021, receipt", ["2021-01-01", "2026-09-01"]],
  ["front 2021 / back last autumn at 13,000", ["2021-01-01", "2026-09-01"]],
  ["front and rear 2021", ["2021-01-01", "2021-01-01"]],
  ["vorne 2021, hinten 2023", ["2021-01-01", "2023-01-01"]],
  ["2021", ["2021-01-01", "2021-01-01"]],
  ["front 2021", ["2021-01-01", null]],
  ["front 2021, rear don't know", ["2021-01-01", null]],
] as const)("“%s” is what is known of either tyre", async (typed, [front, rear]) => {
  const { data } = await fill(added, "Fill in", { [TYRES]: typed });
  expect(data.unread).toEqual([]);
  const on = (key: string): string | null =>
    data.recorded.find(({ items }: { items: string[] }) => items.includes(key))?.on.from ?? (data.unknown.length > 0 ? null : "nowhere");
  expect([on("front-tyre.replace"), on("rear-tyre.replace")]).toEqual([front, rear]);
  const due = (await t.one({ as: "Ines", run: "/due bike:Heron" })).data.bikes[0].dues as { item: string; status: string }[];
  expect(due.find(({ item }) => item === "rear-tyre.replace")?.status === "no record").toBe(rear === null);
});
