// What could not be done on an evening is told apart from what is ticked; a shop's bill is shown whole whatever was done besides; a look again is not taken before its time.

import { afterEach, beforeEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const press = (shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
const fill = (shown: Shown, label: string, fields: Record<string, string>) => t.one({ ...dm, fill: button(shown, label), fields });
/** The lines below a heading, up to the next empty one. */
const below = (shown: Shown, heading: string): readonly string[] => (shown.text ?? "").split(`${heading}\n`)[1]?.split("\n\n")[0]?.split("\n") ?? [];
const line = ({ data }: Shown, item: string) => (data.job?.lines ?? data.lines).find((each: { item: string }) => each.item === item);
const dueOf = async (item: string) => (await run("/due")).data.bikes[0].dues.find((each: { item: string }) => each.item === item);

beforeEach(async () => {
  t = await talk("2026-04-10T17:00:00Z");
  await run("/bike add name:Wren kind:chain-drive twin odometer:15,940 mi");
  await press(await run("/plan sheet at:16,000 mi"), "Begin this job");
});
afterEach(() => t.close());

test("what could not be done stays to go, with its reason, and keeps nobody at its evening", async () => {
  const of = (await run("/plan job")).data.lines.length;
  const tried = await run("/plan job done:spark plugs outcome:could not do found:no plug spanner");
  expect(tried.text).toContain(`${of} of ${of} items to go, 1 of them tried and not done yet.`);
  expect(below(tried, "Could not be done yet:")).toEqual(["- Spark plugs, engine cold: no plug spanner; today at 15,940 mi"]);
  expect(tried.text).not.toContain("Ticked:");
  expect(line(tried, "spark-plugs.replace")).toMatchObject({ open: true, ticked: { note: "no plug spanner" } });
  expect(await dueOf("spark-plugs.replace")).toMatchObject({ status: "no record" });
  // It is offered again, behind what nobody tried.
  const list = tried.actions.find(({ label }) => label === "Tick off or note an item");
  expect(list?.options?.at(-1)?.label).toBe("Spark plugs");
  // All the rest of the first evening in vain: the second is next.
  const first = (await run("/plan job")).data.lines.filter(({ evening }: { evening: number }) => evening === 1);
  for (const { name } of first) await run(`/plan job done:${name} outcome:could not do`);
  expect((await run("/plan job")).data.evening).toBe(2);
  // Done on another evening it is ticked, once, and what was tried stands below it.
  await t.send({ advance: "P3D", asleep: true });
  const done = await run("/plan job done:spark plugs outcome:replaced at:15,950 mi");
  expect(done.data.again).toEqual([]);
  expect(done.text).not.toContain("stands on record twice");
  expect(below(done, "Ticked:")).toEqual([
    "- Spark plugs: replaced, today at 15,950 mi",
    "  Before that: could not be done, no plug spanner, 10 April at 15,940 mi",
  ]);
  // Tried once more in vain, what was done is done.
  const after = await run("/plan job done:spark plugs outcome:could not do found:dropped it");
  expect(line(after, "spark-plugs.replace")).toMatchObject({ open: false, ticked: { outcome: "replaced" } });
  expect(below(after, "Ticked:")).toContain("  After that: could not be done, dropped it, today at 15,950 mi");
});

test("at the end it is told apart from what was done and from what was never begun", async () => {
  await run("/plan job done:spark plugs outcome:could not do found:no plug spanner");
  const job = await run("/plan job done:rims");
  const over = await fill(job, "Finish the job", {});
  const of = over.data.lines.length;
  expect(over.text).toContain(`${of - 2} items left, which stay due as before.`);
  expect(over.text).toContain("1 could not be done. What could not be done stays due as before.");
  expect(below(over, "Could not be done:")).toEqual(["- Spark plugs, engine cold: no plug spanner; today at 15,940 mi"]);
  expect(below(over, "Left:")).toHaveLength(of - 2);
});

test("a shop's bill takes in what could not be done at home, and stays whole when an item of it is done again by oneself", async () => {
  await run("/plan job done:valve clearance outcome:could not do found:no gauge");
  const billed = await fill(await run("/plan job"), "A shop did it", { at: "15,950 mi", cost: "380" });
  expect(billed.data.outcome.work[0].items.map(({ item }: { item: string }) => item)).toContain("valve-clearance.adjust");
  const bill = (shown: Shown): string =>
    below(shown, "Ticked:").find((each) => each.startsWith("- By the shop (not itemised; 380), today at 15,950 mi: ")) ?? "";
  expect(bill(billed)).toContain("valve clearance");
  expect(below(billed, "Ticked:")).toEqual(
    expect.arrayContaining(["- Valve clearance: done by the shop", "  Before that: could not be done, no gauge, today at 15,940 mi"]),
  );
  const own = await run("/plan job done:wheel bearings outcome:replaced at:15,955 mi");
  expect(bill(own)).toBe(bill(billed));
  expect(bill(own)).toContain("wheel bearings");
  expect(below(own, "Ticked:")).toEqual(
    expect.arrayContaining(["- Wheel bearings: replaced, today at 15,955 mi", "  Before that: by the shop, today at 15,950 mi"]),
  );
  // Read back in the record it is the same shop.
  expect((await run("/records")).text).toContain("by the shop");
});

test("a look again after work is on no sheet before half its distance, where looking would close it untimely", async () => {
  await run("/bike change yearly:6,000 mi");
  await run("/work did:new chain and sprockets at:15,950 mi outcome:replaced");
  const listed = async (at: string): Promise<string[]> =>
    (await run(`/plan sheet ${at}`)).data.evenings.flatMap(({ steps }: { steps: { item?: string }[] }) => steps.flatMap(({ item }) => item ?? []));
  // Due at 16,250: at 16,000 the chain has run 50 mi, and the axle nut is due there.
  expect(await listed("at:16,000 mi")).not.toContain("new-chain.look-again");
  expect(await listed("at:16,000 mi")).toContain("rear-axle.look-again");
  expect(await listed("until:midsummer")).not.toContain("new-chain.look-again");
  await t.one({ ...dm, say: "16,110 mi" });
  expect(await listed("at:16,000 mi")).toContain("new-chain.look-again");
});
