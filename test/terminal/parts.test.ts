// Parts fitted and what to buy, as a member sees them.

import { afterEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const run = (line: string) => t.one({ as: "Ines", in: "dm", run: line });

test("a tyre taken off and put on again keeps its own distance; nothing is made up for what was never recorded", async () => {
  t = await talk("2026-04-01T10:00:00Z");
  await run("/bike add name:Heron kind:dual-purpose single odometer:14,210 mi");
  await run("/work did:rear tyre at:14,210 mi outcome:replaced");
  await t.send({ advance: "P10D" });
  await run("/bike tyres set:off-road off:road at:15,210 mi");
  await t.send({ advance: "P10D" });
  await run("/bike tyres set:road at:16,210 mi");
  await t.send({ advance: "P10D" });
  await t.one({ as: "Ines", in: "dm", say: "16,710 mi on Heron" });
  const parts = await run("/bike parts");
  // 1,000 mi before they came off and 500 mi since: the 1,000 mi on the others are not theirs.
  expect(parts.text).toMatch(/- Rear tyre.*: since 1 April, 1,500 mi on it/u);
  expect(parts.text).toContain("Nothing on record of: front tyre, ");
  expect(parts.data.parts.find((each: { part: string }) => each.part === "front tyre").ridden).toBeNull();
});

test("a new chain names its kit", async () => {
  t = await talk("2026-11-26T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await run("/work did:new chain and sprockets at:14,210 mi outcome:replaced");
  expect((await run("/bike parts")).text).toContain("Chain and sprockets are changed as one: chain, front sprocket and rear sprocket.");
});

test("what to buy is listed once for all bikes, with what each needs, and nothing where nothing falls due", async () => {
  t = await talk("2026-11-26T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  expect((await run("/plan shopping")).text).toContain("Nothing falls due by 26 December that something has to be bought for.");
  await run("/work did:oil and filter at:12,000 mi on:1 December 2025 bike:Heron");
  await run("/bike add name:Wren kind:belt-drive cruiser odometer:9,000 mi");
  await run("/work did:oil and filter at:8,000 mi on:5 December 2025 bike:Wren");
  const list = await run("/plan shopping");
  expect(list.text).toContain("To buy for what falls due by 26 December on 2 bikes:");
  expect(list.text?.match(/^- Engine oil: Heron; Wren$/gmu)).toHaveLength(1);
  expect(list.text).toContain("- Oil filter, 2 in all: Heron 1 ×; Wren 1 ×");
  expect(list.text).toContain("For Heron: engine oil and filter.");
  expect((await run("/plan shopping bike:Heron")).text).toContain("- Oil filter: Heron 1 ×");
  expect((await run("/plan shopping until:yesterday")).data.refused).toMatchObject({ why: "not ahead", because: "past" });
  expect((await run("/plan shopping until:banana")).data.refused).toMatchObject({ why: "not ahead", because: "not read" });
});

const measured = async (...lines: readonly string[]): Promise<void> => {
  t = await talk("2026-11-26T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  for (const line of lines) await t.one({ as: "Ines", in: "dm", say: line });
};

test("what was measured at its limit, near it or beyond is bought, each thing once, and so is what was found wrong; of another's list nothing wrong is told", async () => {
  await measured("front pads 0.6 mm", "rear pads 1.4 mm", "rear tread 1.1 mm");
  await run("/work did:brake hoses found:cracked");
  const list = await run("/plan shopping");
  const wanted = (list.data.wanted as { what: string }[]).map(({ what }) => what);
  expect(wanted).toEqual(expect.arrayContaining(["front brake pads", "rear brake pads", "rear tyre", "brake hose set"]));
  expect(wanted.filter((what) => what === "front brake pads")).toHaveLength(1);
  expect(list.text).toContain("at its limit by then, as measured: ");
  expect(list.text).toContain("found wrong: ");
  expect(list.text).toContain("“Brake hoses: cracked”");
  const shared = await run("/plan shopping share:yes");
  expect(shared.text).not.toContain("cracked");
  expect(shared.text).not.toContain("as measured");
  expect((shared.data.wanted as { what: string }[]).map(({ what }) => what)).toContain("rear brake pads");
  // What is set and not renewed is nothing to buy.
  await t.one({ as: "Ines", in: "dm", say: "oil level low on Heron" });
  expect((await run("/plan shopping share:yes")).text).not.toContain("engine oil level");
  // And the sheet that renews nothing by itself has them among what to have ready.
  expect((await run("/plan sheet")).text).toMatch(/To have ready: .*rear brake pads/u);
});

test("pads that wear down to their limit within the span are bought, those that last beyond it are not", async () => {
  await measured(
    "12,000 mi on 2026-02-01",
    "front pads 4.0 mm on 2026-02-01",
    "13,000 mi on 2026-06-01",
    "front pads 3.2 mm on 2026-06-01",
    "14,200 mi on 2026-11-20",
    "front pads 2.3 mm on 2026-11-20",
  );
  const buys = async (until: string) => ((await run(`/plan shopping until:${until}`)).data.wanted as { what: string }[]).map(({ what }) => what);
  expect(await buys("in 2 weeks")).not.toContain("front brake pads");
  expect(await buys("2028-09-01")).toContain("front brake pads");
});

test("a distance ahead is a span to buy for as a day is, and a sheet too", async () => {
  t = await talk("2026-11-26T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
  const list = await run("/plan shopping until:+1,500 mi");
  expect(list.text).toContain("To buy for what falls due until “+1,500 mi”:");
  expect((list.data.wanted as { what: string }[]).map(({ what }) => what)).toContain("oil filter");
  const sheet = await run("/plan sheet until:+1,500 mi");
  expect(sheet.text).toMatch(/^Heron, all that falls due by 17,200 mi, done now: \d+ items/u);
  expect((await run("/plan shopping until:9,000 mi")).data.refused).toMatchObject({ why: "not ahead", because: "past" });
});

test("what nothing is on record of is named, to be looked at before it is bought", async () => {
  await measured();
  const list = await run("/plan shopping");
  expect(list.text).toMatch(/Nothing on record on Heron of front tyre age, .*: look first, and buy only what is wanted: front tyre;/u);
  expect(list.data.wanted).toEqual([]);
});

test("the owner's own distance for a look again, never, and again", async () => {
  t = await talk("2026-11-26T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await run("/work did:new chain and sprockets at:14,210 mi outcome:replaced");
  const dueAt = async () => (await run("/due")).text?.match(/Slack of the new chain: look again at ([\d,]+) mi/u)?.[1] ?? null;
  expect(await dueAt()).toBe("14,510");
  expect((await run("/plan recheck")).text).toContain("- Slack of the new chain: 300 mi after it");
  expect((await run("/plan recheck item:new chain every:200 mi")).text).toContain("- Slack of the new chain: 200 mi after it (yours)");
  expect(await dueAt()).toBe("14,410");
  const never = await run("/plan recheck item:new chain every:never");
  expect(never.text).toContain("Slack of the new chain: common practice looks 300 mi after the work. I remind of it no more, so look at it yourself");
  expect(never.text).toContain("Never clean or oil a chain with the engine turning it");
  expect(await dueAt()).toBeNull();
  await run("/plan recheck item:new chain every:again");
  expect(await dueAt()).toBe("14,410");
  const far = await run("/plan recheck item:new front pads every:5000 mi");
  expect(far.text).toContain("common practice looks 200 mi after the work. I remind of it only so far on");
  expect(far.text).toContain("a disc brake pumped hard first");
  for (const none of ["item:new front pads every:200 mi", "item:new front pads every:300 km", "item:new front pads every:100 mi"])
    expect((await run(`/plan recheck ${none}`)).data.later).toBeNull();
  expect((await run("/plan recheck item:rear axle every:never")).text).toContain("do not guess for brakes, axles and steering");
  expect((await run("/plan recheck item:new chain every:200 mi or 5000 km")).data.refused).toEqual({ why: "two distances", miles: 200, km: 5000 });
  expect((await run("/plan recheck item:banana every:200 mi")).data.refused).toMatchObject({ why: "no such item" });
  expect((await run("/plan recheck item:new chain every:soon")).data.refused).toMatchObject({ why: "not a distance" });
});

test("of a kit named in part it is asked whether the rest was changed; what stayed on is kept, and what was not changed does not start anew", async () => {
  t = await talk("2026-11-26T10:00:00Z");
  const press = (shown: Shown, label: string) => t.one({ as: "Ines", in: "dm", press: button(shown, label) });
  const say = (text: string) => t.one({ as: "Ines", in: "dm", say: text });
  type Due = { readonly item: string; readonly legs: readonly { readonly by: string; readonly anchor: { readonly from: string } }[] };
  const counted = async () =>
    ((await run("/due")).data.bikes[0].dues as Due[]).find(({ item }) => item === "chain.replace")?.legs.find(({ by }) => by === "distance")?.anchor.from;
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  // Sprockets alone: the chain goes on as before.
  const sprockets = await say("new sprockets at 14,210");
  expect(sprockets.text).toContain("Chain too? It is changed with the front sprocket and rear sprocket");
  expect(await counted()).toBe("job");
  expect((await press(sprockets, "Chain stayed on")).text).toContain("only front sprocket and rear sprocket changed. Noted; the chain goes on as before");
  expect(await counted()).toBe("known from");
  expect((await run("/records")).text).toContain("sprocket");
  // The same press again: the record has changed since.
  expect((await press(sprockets, "Chain stayed on")).data.refused).toEqual({ why: "changed meanwhile" });
  const chain = await say("new chain at 14,230");
  expect(chain.text).toContain("Front sprocket and rear sprocket too?");
  await press(chain, "Front sprocket and rear sprocket stayed on");
  expect(await counted()).toBe("job");
  expect((await run("/bike parts")).text).toContain("Only chain was changed; front sprocket and rear sprocket stayed on: look at them at each check.");
  // Named whole, nothing is asked.
  for (const whole of ["new chain and sprockets at 14,240", "new chain kit at 14,250"]) expect((await say(whole)).text).not.toContain("too?");
  await press(chain, "Undo");
  expect((await run("/records")).text).toContain("Taken back");
});

test("some of a kit named by position is of the kit, and the rest is asked about; of what is one line for both ends one end is asked about", async () => {
  t = await talk("2026-11-26T10:00:00Z");
  const dm = { as: "Ines", in: "dm" };
  await t.one({ ...dm, run: "/bike add name:Otter kind:chain-drive twin odometer:15,900 mi" });
  const say = (text: string) => t.one({ ...dm, say: text });
  const said = await say("new chain and front sprocket at 15,905 on Otter, rear sprocket stayed");
  expect(said.text).toContain("Otter: New chain and sprockets, done today at 15,905 mi, with chain and front sprocket. Recorded.");
  expect(said.text).not.toContain("Rear sprocket too?");
  const chain = await say("new chain and front sprocket at 15,910 on Otter");
  expect(chain.text).toContain("Otter: New chain and sprockets, done today at 15,910 mi.");
  expect(chain.text).toContain("Rear sprocket too?");
  const kept = await t.one({ ...dm, press: button(chain, "Rear sprocket stayed on") });
  expect(kept.text).toContain("Otter: only chain and front sprocket changed; rear sprocket stayed on.");
  for (const text of ["new front brake hose at 15,950 on Otter", "Otter rear brake line replaced at 15,950"]) {
    const asked = await say(text);
    expect([asked.react, asked.actions[0]?.label], text).toEqual(["asked", "New brake hoses"]);
    await t.one({ ...dm, press: button(asked, "Let it go") });
  }
  // One end alone is on record with its figure and part, and the line for both does not start anew.
  const lineOf = async () =>
    (await t.one({ ...dm, run: "/due bike:Otter" })).data.bikes[0].dues.find((each: { item: string }) => each.item === "brake-hoses.replace");
  const before = await lineOf();
  expect(before).toMatchObject({ status: "no record" });
  const half = await say("new front brake hose at 15,952 on Otter");
  expect(half.text).toContain("only at the front?");
  const one = await t.one({ ...dm, press: button(half, "Only the front one") });
  expect(one.data.work).toMatchObject([{ items: [], note: "only the front one", words: "front brake hose" }]);
  expect(await lineOf()).toMatchObject({ status: "no record" });
  expect((await t.one({ ...dm, run: "/records bike:Otter" })).text).toMatch(/15,952 mi: front brake hose\. By Ines; “only the front one”/u);
  // Written instead of pressed.
  await say("rear brake line replaced at 15,955 on Otter");
  expect((await say("rear")).data.work).toMatchObject([{ items: [], note: "only the rear one" }]);
  expect(await lineOf()).toMatchObject({ status: "no record" });
  expect((await t.one({ ...dm, run: "/work did:front brake hose outcome:replaced bike:Otter" })).data.refused).toMatchObject({ why: "which item" });
  expect((await t.one({ ...dm, run: "/bike parts bike:Otter" })).text).not.toMatch(/- Brake hoses/u);
  expect((await say("new brake hoses front and rear at 15,960 on Otter")).text).toContain("Otter: New brake hoses, done today at 15,960 mi.");
});
