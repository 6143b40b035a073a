// The form about a bike's past: vague answers are welcome, and one that cannot be read comes back as it was typed beside what is kept.

import { afterEach, beforeEach, expect, test } from "vitest";
import { historyOf } from "../../commands/replies/history.ts";
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

test("what cannot be read comes back in the form as it was typed; the rest is kept", async () => {
  const asked = added.actions.find(({ kind }) => kind === "form")?.fields?.map(({ name }) => name) ?? [];
  const tyres = asked.find((name) => name.includes("+")) ?? TYRES;
  const shown = await fill(added, "Fill in", {
    "brake-fluid.replace": "spring 2023",
    "engine-oil.replace": "when it rained",
    [tyres]: "front 2021, rear last autumn",
  });
  expect(shown.data.recorded.flatMap(({ items }: { items: string[] }) => items)).toEqual(["brake-fluid.replace"]);
  const again = shown.actions.find(({ label }) => label === "Put it right");
  expect(again?.fields?.map(({ name }) => name)).toEqual(["engine-oil.replace", tyres]);
  // The button's form holds what was typed, as far as an id does; so does the form when it is opened by the id alone.
  expect(again?.id.length).toBeLessThanOrEqual(100);
  expect(historyOf(again?.id.replace(/^1\.history\.|\.0$/gu, "") ?? "").typed.get(asked.indexOf("engine-oil.replace"))).toBe("when it rained");
  const right = await fill(shown, "Put it right", { "engine-oil.replace": "spring 2026", [tyres]: "2021" });
  expect(right.data).toMatchObject({ unread: [], unknown: [] });
  expect(right.data.recorded).toHaveLength(2);
});
