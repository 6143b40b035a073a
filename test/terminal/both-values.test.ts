// Several values typed at one item of work, not all of them with a unit: each is logged, judged, and kept in the record and in its table.

import { readFile } from "node:fs/promises";
import { afterEach, expect, test } from "vitest";
import { type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const begun = async (): Promise<void> => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
};
type Read = { readonly kind: string; readonly place: string | null; readonly typed: string; readonly detail: { readonly state: string } | null };
const readingsOf = (shown: Shown): readonly string[] =>
  ((shown.data.outcome ?? shown.data).readings as Read[]).filter(({ kind }) => kind !== "odometer").map(({ detail, typed }) => `${detail?.state} ${typed}`);

test.each([
  ["front brake pads", "4.5 mm inner, 0.8 outer", "found wrong", "found inner 4.5 mm and outer 0.8 mm"],
  ["front brake pads", "4.5 inner, 3.9 mm outer", "inspected, within limits", "found inner 4.5 mm and outer 3.9 mm"],
  ["valve clearance", "0.04 mm intake, 0.18 exhaust", "inspected", "found intake 0.04 mm and exhaust 0.18 mm"],
])("%s found %s", async (item, found, outcome, recorded) => {
  await begun();
  expect(readingsOf(await run(`/work did:${item} found:${found}`))).toHaveLength(2);
  const records = await run("/records");
  expect(records.text).toContain(`(${outcome}; ${recorded})`);
  expect(await readFile(records.files[0]?.path ?? "", "utf8")).toContain(recorded.replace("found ", ""));
});

test("two gaps found and one left: the found ones are logged as found, the left one as left, and nothing is asked", async () => {
  await begun();
  const done = await run("/work did:spark plugs found:0.9 mm, 0.85 mm left:0.8");
  expect(readingsOf(done)).toEqual(["found 0.9 mm", "found 0.85 mm", "left 0.8"]);
  expect((await run("/records")).text).toContain("found 0.9 mm and 0.85 mm; left 0.8 mm");
});

test("of both pads found the worn one is the trend's, in whichever order they are typed", async () => {
  await begun();
  await run("/work did:front brake pads found:4.5 mm inner, 4.1 outer at:15,700 mi");
  await t.send({ advance: "P30D" });
  expect(readingsOf(await run("/work did:front brake pads found:2.9 outer, 3.6 mm inner at:17,700 mi"))).toEqual(["found 2.9", "found 3.6 mm"]);
  const pictured = await run("/reading picture:pads");
  expect((pictured.data.shown.panels as { points: { value: number }[] }[])[0]?.points.map(({ value }) => value)).toEqual([4.1, 2.9]);
});
