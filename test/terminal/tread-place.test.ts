// Another place, another tread law: what is noted by it is looked at again at once.
// Sources: StVZO section 36 (Germany): 1.6 mm; Road Vehicles (Construction and Use) Regulations 1986, reg. 27 (United Kingdom): 1.0 mm; 49 CFR 571.119 S6.4 (United States): bars of 1/32 in.

import { afterEach, beforeEach, expect, test } from "vitest";
import { button, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
});
afterEach(() => t.close());

const group = (typed: string) => t.one({ as: "Ines", admin: true, run: `/group place:${typed}` });
const due = async (as: string) => (await t.one({ as, in: "dm", run: "/due" })).text ?? "";

test.each([
  ["uk", "United Kingdom"],
  ["U.K.", "United Kingdom"],
  ["Great Britain", "United Kingdom"],
  ["us", "United States"],
  ["USA", "United States"],
  ["u.s.a.", "United States"],
  ["Deutschland", "Germany"],
  ["Österreich", "Austria"],
  ["germany", "Germany"],
])("the place %s", async (typed, place) => {
  expect((await group(typed)).data.place).toBe(place);
});

test("a place that the table has not is refused with those it has", async () => {
  expect((await group("Atlantis")).text).toBe("That is no choice for “place”. Choose United Kingdom, Germany, Austria or United States.");
});

test("a stricter law notes what must not be ridden on by it, a milder one lifts it, and the answer tells", async () => {
  await group("uk");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  await t.one({ as: "Ines", in: "dm", say: "tread 1.2 mm rear on Heron" });
  expect(await due("Ines")).not.toContain("Do not ride:");
  const stricter = await group("Germany");
  expect(stricter.text).toContain("Heron: “rear tread 1.2 mm”. Noted.");
  expect(stricter.text).toContain("Tyres: set pressures cold");
  expect(stricter.data.looked).toMatchObject({ noted: [{ nickname: "Heron", grade: "do not ride" }], lapsed: [], others: 0 });
  expect((await t.one({ as: "Ines", press: button(stricter, "Heron: rear tread") })).text).toContain("do not ride: “rear tread 1.2 mm”");
  expect(await due("Ines")).toContain("Do not ride: “rear tread 1.2 mm”");
  const milder = await group("uk");
  expect(milder.text).toContain("“Heron: rear tread 1.2 mm” stands no longer: no figure says so any more.");
  expect(milder.data.looked).toMatchObject({ noted: [], lapsed: [{ nickname: "Heron" }], others: 0 });
  expect(await due("Ines")).not.toContain("Do not ride:");
  expect((await t.one({ as: "Ines", admin: true, run: "/group season:south" })).data.looked).toBeUndefined();
});

test("of another rider's bike the answer says only that there is one; its owner sees the defect", async () => {
  await group("uk");
  await t.one({ as: "Bram", run: "/bike add name:Otter kind:chain-drive twin odometer:8,000 mi" });
  await t.one({ as: "Bram", in: "dm", say: "tread 1.2 mm rear on Otter" });
  const stricter = await group("Germany");
  expect(stricter.text).toContain("the tread of another rider's bike stands otherwise than before: its owner sees it in /due.");
  expect(stricter.text).not.toContain("Otter");
  expect(stricter.data.looked).toEqual({ noted: [], lapsed: [], others: 1 });
  expect(await due("Bram")).toContain("Do not ride: “rear tread 1.2 mm”");
});

test("a tyre that was replaced since is not looked at", async () => {
  await group("uk");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  await t.one({ as: "Ines", in: "dm", say: "tread 1.2 mm rear on Heron" });
  await t.send({ advance: "P1D" });
  await t.one({ as: "Ines", in: "dm", run: "/work did:rear tyre age at:8,000 mi outcome:replaced" });
  expect((await group("Germany")).data.looked).toEqual({ noted: [], lapsed: [], others: 0 });
});

test("a bike added in a direct message goes by the group that its owner writes in, then everywhere, and the group is shown nothing of it", async () => {
  await group("Germany");
  await t.one({ as: "Bram", in: "dm", run: "/bike add name:Otter kind:chain-drive twin odometer:8,000 mi" });
  const alone = await t.one({ as: "Bram", in: "dm", say: "rear tread 1.4 mm" });
  expect(alone.text).toContain("the moulded bars");
  expect(alone.text).toContain("Or write a reading where your group is, once its place is said with /group place:…");
  const here = await t.one({ as: "Bram", in: "g1", run: "/reading log:rear tread 1.4 mm" });
  expect(here.text).toContain("1.6 mm by law");
  expect(here.data.defects).toMatchObject([{ grade: "do not ride" }]);
  expect(here.text).toContain("Otter goes by your group's time zone, seasons and tread law from now on; the group is shown nothing by that.");
  expect(await due("Bram")).toContain("beyond limit, 1.6 mm");
  const again = await t.one({ as: "Bram", in: "dm", say: "rear tread 1.4 mm" });
  expect([again.data.home, again.text]).toEqual([[], expect.stringContaining("1.6 mm by law")]);
  // A bike of the same rider, added later where no group is, goes by that of the first.
  await t.one({ as: "Bram", in: "dm", run: "/bike add name:Wren kind:chain-drive twin odometer:8,000 mi" });
  const other = await t.one({ as: "Bram", in: "dm", say: "rear tread 1.4 mm on Wren" });
  expect([other.data.home, other.text]).toEqual([["Wren"], expect.stringContaining("1.6 mm by law")]);
  // What its group's admin changes is looked at again on both.
  expect((await t.one({ as: "Ines", admin: true, run: "/group place:uk" })).data.looked).toMatchObject({ others: 2 });
  expect((await t.one({ as: "Ines", admin: true, run: "/group picture:yes" })).text).not.toContain("Otter");
});

test("a bike that is at home in one group stays so, wherever its owner writes", async () => {
  await group("uk");
  await t.one({ as: "Ines", in: "g2", admin: true, run: "/group place:Germany" });
  await t.one({ as: "Bram", in: "g1", run: "/bike add name:Otter kind:chain-drive twin odometer:8,000 mi" });
  const there = await t.one({ as: "Bram", in: "g2", run: "/reading log:rear tread 1.4 mm" });
  expect([there.data.home, there.text]).toEqual([[], expect.stringContaining("1 mm by law")]);
});

// StVZO section 36 and KDV section 4(4): 1.0 mm of mopeds, in Germany of light motorcycles too.
test.each(["Germany", "Austria"])("%s asks less of the lightest: where the owner enters that limit it holds, and nothing below it does", async (place) => {
  await group(place);
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:small commuter odometer:8,000 km" });
  expect((await t.one({ as: "Ines", in: "dm", say: "rear tread 1.3 mm" })).text).toContain("beyond limit (1.6 mm by law");
  await t.one({ as: "Ines", in: "dm", run: "/spec what:rear tread limit value:1.0 mm source:StVZO 36, light motorcycle" });
  expect((await t.one({ as: "Ines", in: "dm", say: "rear tread 1.3 mm" })).text).toMatch(/Rear tread depth 1\.3 mm: (?:within|near limit) \(1 mm/u);
  await t.one({ as: "Ines", in: "dm", run: "/spec what:rear tread limit value:0.8 mm" });
  expect((await t.one({ as: "Ines", in: "dm", say: "rear tread 1.3 mm" })).text).toContain("beyond limit (1.6 mm by law");
});

test("a limit of one's own below the law of the place is saved and said not to count; the lightest may go by their own", async () => {
  await group("Germany");
  await t.one({ as: "Ines", run: "/bike add name:Otter kind:shaft-drive tourer odometer:8,000 km" });
  await t.one({ as: "Ines", run: "/bike add name:Bee kind:scooter odometer:8,000 km" });
  const limit = async (value: string, bike: string) => (await t.one({ as: "Ines", run: `/spec what:rear tread limit value:${value} bike:${bike}` })).text ?? "";
  expect(await limit("1.0 mm", "Otter")).toContain("It does not count: the law of Germany asks for at least 1.6 mm, so that holds.");
  expect(await limit("1.6 mm", "Otter")).not.toContain("It does not count");
  expect(await limit("1.0 mm", "Bee")).not.toContain("It does not count");
  // Of no place is anything known: the moulded bars.
  await t.one({ as: "Ann", in: "dm", run: "/bike add name:Elk kind:shaft-drive tourer odometer:8,000 km" });
  const alone = await t.one({ as: "Ann", in: "dm", run: "/spec what:front tread limit value:0.5 mm" });
  expect(alone.text).toContain("It does not count: the moulded bars stand at 0.8 mm");
});

test("where no place is known each tread that a law would not let on the road says so, and one press settles whose law holds", async () => {
  await t.one({ as: "Ines", in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  const say = (line: string) => t.one({ as: "Ines", in: "dm", say: line });
  const front = await say("front tread 0.9 mm");
  expect(front.text).toContain(
    "Front tread depth 0.9 mm is beyond the law's limit in United Kingdom (1 mm), Germany (1.6 mm) and Austria (1.6 mm): there do not ride on it.",
  );
  const rear = await say("rear tread 1.4 mm");
  expect(rear.text).toContain("in Germany (1.6 mm; 1 mm of the lightest classes) and Austria (1.6 mm; 1 mm of the lightest classes)");
  expect((await say("rear tread 1.6 mm")).text).not.toContain("beyond the law's limit");
  const pressed = await t.one({ as: "Ines", in: "dm", press: button(rear, "Law: Germany") });
  expect(pressed.text).toContain("Rear tread limit: at least 1.6 mm. Germany, StVZO section 36");
  expect(pressed.text).toContain("Front tread depth 0.9 mm: beyond limit (1.6 mm, Germany, StVZO section 36)");
  const after = await say("rear tread 1.5 mm");
  expect(after.text).toContain("beyond limit (1.6 mm, Germany, StVZO section 36)");
  expect(after.text).not.toContain("Whose tread law");
  expect(after.actions?.map(({ label }: { label: string }) => label).join()).not.toContain("Law:");
});

test("who runs the group presses for the whole group, any other rider for their own bike; by the bars is an answer too", async () => {
  await t.one({ as: "Ines", admin: true, run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  await t.one({ as: "Bram", run: "/bike add name:Otter kind:chain-drive twin odometer:8,000 mi" });
  const other = await t.one({ as: "Bram", in: "dm", say: "rear tread 1.4 mm" });
  const bars = await t.one({ as: "Bram", in: "dm", press: button(other, "Elsewhere: by the bars") });
  expect(bars.text).toContain("Rear tread limit: at least 0.8 mm. The moulded bars");
  expect((await t.one({ as: "Bram", in: "dm", say: "rear tread 1.3 mm" })).text).not.toContain("Whose tread law");
  const own = await t.one({ as: "Ines", admin: true, run: "/reading log:rear tread 1.4 mm on Heron" });
  const pressed = await t.one({ as: "Ines", admin: true, press: button(own, "Law: Germany") });
  expect(pressed.text).toContain("Tread law, Germany: at least 1.6 mm");
  expect(pressed.text).toContain("Of mopeds, small motorcycles and light motorcycles at least 1 mm");
  // The group's law is the stricter: it goes before the bars.
  expect((await t.one({ as: "Bram", in: "dm", say: "rear tread 1.2 mm" })).text).toContain("1.6 mm by law");
});

// Source: StVZO section 36, KDV section 4(4), as in the published summaries of both.
test("the exceptions of the lightest are told where the law is looked up", async () => {
  await t.one({ as: "Ines", in: "dm", run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  const law = (await t.one({ as: "Ines", in: "dm", run: "/spec what:tread law" })).text;
  expect(law).toContain("Germany: 1.6 mm, main grooves of the middle; of mopeds, small motorcycles and light motorcycles 1 mm (StVZO section 36).");
  expect(law).toContain("Austria: 1.6 mm, middle three quarters; of mopeds 1 mm (KDV section 4(4)).");
});

test("a tread limit without a page of a manual is its owner's, and nobody else's bike of the model is held to it", async () => {
  for (const [as, name] of [
    ["Ines", "Heron"],
    ["Bram", "Otter"],
  ] as const) {
    await t.one({ as, run: `/bike add name:${name} kind:chain-drive twin odometer:8,000 mi model:Tern 500` });
  }
  await t.one({ as: "Bram", in: "dm", run: "/spec what:rear tread limit value:2 mm" });
  const other = await t.one({ as: "Ines", in: "dm", say: "rear tread 1.4 mm" });
  await t.one({ as: "Ines", in: "dm", press: button(other, "Elsewhere: by the bars") });
  expect((await t.one({ as: "Bram", in: "dm", say: "rear tread 1.9 mm" })).text).toContain("beyond limit (2 mm by your own figure)");
  expect((await t.one({ as: "Ines", in: "dm", say: "rear tread 1.3 mm" })).text).toContain("(0.8 mm, the moulded bars)");
});
