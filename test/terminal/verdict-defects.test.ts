// What must not be ridden on by a measured value stands while its figures do, and no longer.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return {
    t,
    run: (line: string) => t.one({ ...dm, run: line }),
    say: (line: string, id?: string) => t.one({ ...dm, say: line, ...(id === undefined ? {} : { id }) }),
    due: async () => (await t.one({ ...dm, run: "/due" })).text ?? "",
  };
}

test("a limit taken back takes its do-not-ride with it; entered again it stands again", async () => {
  const { t, run, say, due } = await heron();
  await say("front disc 4.4 mm");
  const entered = await run("/spec what:front disc limit value:4.5 mm");
  expect(entered.data.defects).toMatchObject([{ kind: "worn disc", grade: "do not ride" }]);
  expect(await due()).toContain("Do not ride: “front disc thickness 4.4 mm”");
  const back = await t.one({ ...dm, press: button(entered, "Undo") });
  expect(back.text).toContain("“front disc thickness 4.4 mm” stands no longer");
  expect(await due()).not.toContain("Do not ride");
  expect((await run("/spec what:front disc limit value:4.5 mm")).data.defects).toMatchObject([{ kind: "worn disc" }]);
  expect(await due()).toContain("Do not ride: “front disc thickness 4.4 mm”");
  await t.close();
});

test("a limit put right takes the do-not-ride of the slip with it", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:rear pad limit value:2.5 mm");
  await say("rear pads 2.2 mm");
  expect(await due()).toContain("Do not ride: “rear pad thickness 2.2 mm”");
  expect((await run("/spec what:rear pad limit value:1.5 mm")).text).toContain("“rear pad thickness 2.2 mm” stands no longer");
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("what else was read keeps it standing: the other pads, and the day before", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:front pad limit value:2.5 mm");
  const first = await say("front left pads 2 mm");
  expect(first.data.defects).toMatchObject([{ kind: "worn front pads" }]);
  await say("front right pads 1.8 mm");
  // The first message is taken back with what it noted; the second still says the same of these pads.
  await t.one({ ...dm, press: button(first, "Undo") });
  expect(await due()).toContain("Do not ride: “front right pad thickness 1.8 mm”");
  await run("/spec what:front pad limit value:1.9 mm");
  expect(await due()).toContain("Do not ride");
  await run("/spec what:front pad limit value:1.5 mm");
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("an edited message keeps what must not be ridden on, and drops it when the figure was a slip", async () => {
  const { t, say, due } = await heron();
  const said = await say("tread 0.5 mm rear", "msg-1");
  expect(said.data.defects).toMatchObject([{ kind: "worn rear tyre" }]);
  await t.one({ ...dm, edit: "msg-1", say: "tread 0.4 mm rear" });
  expect(await due()).toContain("Do not ride: “rear tread 0.4 mm”");
  await t.one({ ...dm, edit: "msg-1", say: "tread 5.4 mm rear" });
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("one reading taken back on its own takes what it noted with it", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:front disc limit value:4.5 mm");
  await say("tread 5 mm rear, front disc 4.4 mm");
  expect(await due()).toContain("Do not ride: “front disc thickness 4.4 mm”");
  const listed = await run("/reading");
  const undone = await t.one({ ...dm, press: button(listed, "Undo front disc thickness 4.4 mm of Heron") });
  expect(undone.text).toContain("“front disc thickness 4.4 mm” stands no longer");
  expect(undone.data).toMatchObject({ lapsed: [{ kind: "worn disc" }], noted: [] });
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("what was closed by its rider stays closed when something else is taken back", async () => {
  const { t, say, due } = await heron();
  const worn = await say("tread 0.5 mm rear");
  const nothing = worn.actions.find(({ label }) => label.startsWith("It was nothing"))?.id ?? "";
  await t.one({ ...dm, fill: nothing, fields: { why: "read on a bar" } });
  expect(await due()).not.toContain("Do not ride: “");
  const other = await say("front pads 5 mm");
  await t.one({ ...dm, press: button(other, "Undo") });
  expect(await due()).not.toContain("Do not ride: “");
  await t.close();
});

test.each([
  ["front tyre pressure", "34 psi", "20 psi front", "wrong front pressure", "front cold pressure 20 psi", "33 psi front"],
  ["chain slack", "25-35 mm", "chain slack 55 mm upright", "slack chain", "chain slack 55 mm", "chain slack 30 mm"],
  ["chain slack", "25-35 mm", "chain slack 3 mm", "tight chain", "chain slack 3 mm", "chain slack 30 mm upright"],
  ["throttle free play", "2-4 mm", "throttle free play 0 mm", "no throttle play", "throttle free play 0 mm", "throttle free play 3 mm"],
] as const)("%s of %s: “%s” is not ridden on, until the next reading is right", async (spec, value, wrong, kind, words, right) => {
  const { t, run, say, due } = await heron();
  await run(`/spec what:${spec} value:${value}`);
  const said = await say(wrong);
  expect(said.data.defects).toMatchObject([{ kind, grade: "do not ride", from: "verdict", words }]);
  expect(await due()).toContain(`Do not ride: “${words}”`);
  const mended = await say(right);
  expect(mended.data.closed).toMatchObject([{ kind, state: "closed" }]);
  expect(mended.text).toContain(`“${words}” is closed by what you read now.`);
  expect(await due()).not.toContain("Do not ride");
  // Taken back, what was read before is how it is.
  const back = await t.one({ ...dm, press: button(mended, "Undo") });
  expect(back.text).toContain("Another reading says the same");
  expect(await due()).toContain(`Do not ride: “${words}”`);
  await t.close();
});

test("a regulator that overcharges stops the ride until it is read right at speed; idling shows nothing, and does not become how it is measured", async () => {
  const { t, say, due } = await heron();
  // AGM: 14.8 V at most; from 15.5 V on the regulator has let go (common practice, from memory).
  expect((await say("charging 15.4 V at 5000 rpm")).data.defects).toEqual([]);
  const said = await say("charging 15.6 V at 5000 rpm");
  expect(said.data.defects).toMatchObject([{ kind: "overcharging", grade: "do not ride", from: "verdict", words: "charging voltage 15.6 V" }]);
  expect(said.text).toContain("beyond limit, too high (13.5 V to 14.8 V, common practice). It overcharges the battery and ruins it");
  expect(said.text).toContain("Do not ride before that.");
  expect(said.text).toContain("Battery acid burns and the gas explodes");
  const idle = await say("charging 14.1 V at 1500 rpm");
  expect(idle.text).toContain("cannot tell yet; idling or so slow it already charges as it should");
  expect(await due()).toContain("Do not ride: “charging voltage 15.6 V”");
  const right = await say("charging 14.3 V");
  expect(right.text).toContain("Charging voltage 14.3 V, taken at 5,000 rpm as before: within");
  expect(right.data.closed).toMatchObject([{ kind: "overcharging", state: "closed" }]);
  await t.close();
});

test("a chain slackened too far is tight no more, and slack instead; taken back, it is tight again", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:chain slack value:25-35 mm");
  const tight = await say("chain slack 2 mm upright");
  expect(tight.text).toContain("can break and lock the wheel");
  const slack = await say("chain slack 60 mm upright");
  expect(slack.data.closed).toMatchObject([{ kind: "tight chain" }]);
  expect(slack.data.defects).toMatchObject([{ kind: "slack chain", grade: "do not ride" }]);
  await t.one({ ...dm, press: button(slack, "Undo") });
  expect(await due()).toContain("Do not ride: “chain slack 2 mm”");
  await t.close();
});

test("a drive belt far too slack stops the ride until it is set", async () => {
  const { t, run, say, due } = await heron();
  await run("/bike fitted part:final drive choice:belt");
  await run("/spec what:belt deflection value:8-13 mm at 45 N");
  const slack = await say("belt deflection 25 mm at 45 N");
  expect(slack.data.defects).toMatchObject([{ kind: "slack belt", grade: "do not ride" }]);
  expect(slack.text).toContain("jumps teeth");
  expect(slack.text).toContain("it takes fingers");
  expect(await due()).toContain("Do not ride: “belt deflection 25 mm");
  expect((await say("belt deflection 11 mm at 45 N")).data.closed).toMatchObject([{ kind: "slack belt" }]);
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("oil below the low mark stops the ride until it is topped up; too full is to be let out and no more", async () => {
  const { t, run, say, due } = await heron();
  const low = await say("oil level below the low mark, upright");
  expect(low.data.defects).toMatchObject([{ kind: "low engine oil", grade: "do not ride" }]);
  expect(low.text).toContain("Top up before the engine runs again. Do not ride before that.");
  await run("/work did:engine oil level outcome:topped up");
  expect(await due()).not.toContain("Do not ride");
  const full = await say("oil above the full mark, upright");
  expect(full.text).toContain("Oil level above the full mark: beyond limit.");
  expect(full.data.defects).toEqual([]);
  await t.close();
});

test("a level below its mark of which nobody said how the bike stood is not told, but for what it would mean; said so, it is judged then and there, and asked no more", async () => {
  const { t, say, due } = await heron();
  const low = await say("oil level below the low mark");
  expect(low.text).toContain(
    "Oil level below the low mark: cannot tell yet; say “upright” if the bike stood so. I keep it for this bike. If it reads so upright too: do not ride. Top up before the engine runs again.",
  );
  expect(low.data.defects).toEqual([]);
  const doubt = await due();
  expect(doubt).toContain("- Oil level below the low mark: cannot tell yet;");
  expect(doubt).not.toContain("- Do not ride");
  expect(doubt).not.toContain("beyond limit");
  const told = await t.one({ ...dm, press: button(low, "Bike stood upright") });
  expect(told.text).toContain("Oil level below the low mark: beyond limit. Top up before the engine runs again. Do not ride before that.");
  expect(told.data.defects).toMatchObject([{ kind: "low engine oil", grade: "do not ride", from: "verdict" }]);
  const known = await due();
  expect(known).toContain("- Do not ride: “oil level below the low mark”");
  expect(known).toContain("- Engine oil level: oil level below the low mark, read today: beyond limit");
  expect(known).not.toContain("cannot tell");
  expect((await say("oil level between the marks")).data.closed).toMatchObject([{ kind: "low engine oil" }]);
  expect((await say("oil level below the low mark")).data.defects).toMatchObject([{ kind: "low engine oil", grade: "do not ride" }]);
  await t.close();
});

test("coolant is read cold: said to be low and no more it is not told, and becomes due once that is known", async () => {
  const { t, say, due } = await heron();
  const low = await say("coolant level at the low mark");
  expect(low.text).toContain("If it reads so cold too: top up the overflow tank cold, and look for a leak.");
  expect(await due()).not.toContain("- Coolant level: coolant level at the low mark, read today");
  await t.one({ ...dm, press: button(low, "Engine was cold") });
  expect(await due()).toContain("- Coolant level: coolant level at the low mark, read today: at limit");
  await t.close();
});

test("in the channel a level that may be low wants a look, and what it may mean is shown to the rider who looks", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const said = await t.one({ as: "Ines", say: "oil level below the low mark" });
  expect(said.text).toBe("Logged. Something on Heron wants a look.");
  const shown = await t.one({ as: "Ines", press: button(said, "Show me") });
  expect(shown.text).toContain("If it reads so upright too: do not ride.");
  expect((await t.one({ as: "Ines", press: button(shown, "Bike stood upright") })).data.defects).toMatchObject([{ kind: "low engine oil" }]);
  await t.close();
});

test("a slack or a play a little off is set, and the bike may be ridden to where that is done", async () => {
  const { t, run, say } = await heron();
  await run("/spec what:chain slack value:25-35 mm");
  await run("/spec what:throttle free play value:2-4 mm");
  for (const words of ["chain slack 54 mm upright", "chain slack 15 mm", "throttle free play 1 mm"]) {
    const said = await say(words);
    expect(said.text).toContain("beyond limit");
    expect(said.data.defects).toEqual([]);
  }
  await t.close();
});

test("a chain longer than its limit is not ridden on until another is on; adjusting it mends nothing", async () => {
  const { t, run, say, due } = await heron();
  const worn = await say("chain 329 mm over 20 pitches");
  expect(worn.data.defects).toMatchObject([{ kind: "worn chain", grade: "do not ride" }]);
  await say("chain 320 mm over 20 pitches");
  await run("/work did:chain slack");
  expect(await due()).toContain("Do not ride: “chain length 329 mm”");
  await run("/work did:new chain and sprockets at:14,300 mi");
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("a brake fluid that must not meet what is in there is noted, and the right one put in anew closes it", async () => {
  const { t, say, due } = await heron();
  const mixed = await say("topped up brake fluid with DOT 5");
  expect(mixed.text).toContain("the two never mix");
  expect(mixed.data.defects).toMatchObject([{ kind: "mixed brake fluid", grade: "do not ride", words: "DOT 5 with DOT 4" }]);
  expect(await due()).toContain("Do not ride: “DOT 5 with DOT 4”");
  expect((await say("topped up brake fluid with DOT 5")).data.defects).toEqual([]);
  const right = await say("changed the brake fluid, DOT 4, at 14,300");
  expect(right.data.closed).toMatchObject([{ kind: "mixed brake fluid" }]);
  expect(await due()).not.toContain("Do not ride");
  await t.one({ ...dm, press: button(right, "Undo") });
  await t.one({ ...dm, press: button(mixed, "Undo") });
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("what is beyond its limit and in no line of the plan stands on the due list by itself, and is nobody else's business", async () => {
  const { t, run, say, due } = await heron();
  await run("/spec what:rear rider sag value:30-40 mm");
  await say("rear rider sag 45 mm");
  const line = "- Rear rider sag 45 mm: beyond limit, too much sag (30 mm to 40 mm by your own figure). Add preload, or a stiffer spring.";
  expect(await due()).toContain(line);
  expect((await t.one({ as: "Ines", run: "/due bike:Heron share:yes" })).text).not.toContain("sag");
  await say("rear rider sag 36 mm");
  expect(await due()).not.toContain("sag");
  await t.close();
});

test("what the bike has not as it is entered is kept and not judged, and the way to put that right is said", async () => {
  const { t, say, due } = await heron();
  const said = await say("clutch fluid below the low mark");
  expect(said.text).toContain(
    "Clutch fluid level below the low mark: cannot tell; as it is entered here the bike has none; if it has, say so with /bike fitted.",
  );
  expect(said.text).not.toContain("How to measure");
  await t.one({ ...dm, run: "/bike fitted part:clutch choice:hydraulic brake fluid" });
  expect(await due()).toContain("- Clutch fluid level below the low mark: cannot tell yet; say “upright” if the bike stood so.");
  await say("clutch fluid below the low mark, upright");
  expect(await due()).toContain("- Clutch fluid: clutch fluid level below the low mark, read today: beyond limit");
  await t.close();
});

test.each([
  ["front pads 0.5 mm", "front pads swapped"],
  ["front pads 0.5 mm", "replaced the front brake pads"],
  ["front pads 0.5 mm", "front pads swapped, 5 mm on the new ones"],
  ["front pads 0.5 mm", "fixed the front pads, swapped the front pads"],
  ["rear pads 0.5 mm", "rear pads swapped at 14,250 mi"],
  ["rear tread 0.5 mm", "rear tyre swapped"],
  ["rear tread 0.5 mm", "rear tyre swapped, replaced the rear tyre"],
  ["front disc 4.4 mm", "replaced the front discs"],
  ["chain slack 55 mm upright", "fixed the slack chain, chain slack 30 mm"],
  ["chain slack 55 mm upright", "replaced the chain, fixed the slack chain, chain slack 30 mm upright"],
] as const)("“%s” is closed once by “%s”, whatever else would close it", async (wrong, work) => {
  const { t, run, say, due } = await heron();
  await run("/spec what:front disc limit value:4.5 mm");
  await run("/spec what:chain slack value:25-35 mm");
  const noted = await say(wrong);
  expect(noted.data.defects).toMatchObject([{ grade: "do not ride" }]);
  expect((await say(work)).data.closed).toMatchObject([{ id: noted.data.defects[0].id, state: "closed" }]);
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test("new pads as thin as the old ones are noted anew where the words closed the old", async () => {
  const { t, say, due } = await heron();
  const [old] = (await say("front pads 0.5 mm")).data.defects;
  const swapped = await say("front pads swapped, 0.6 mm on the new ones");
  expect(swapped.data.closed).toMatchObject([{ id: old.id }]);
  expect(swapped.data.defects).toMatchObject([{ kind: "worn front pads", state: "open" }]);
  expect(await due()).toContain("Do not ride");
  await t.close();
});

test("pads named in answer to “It is mended” close it once", async () => {
  const { t, say, due } = await heron();
  const noted = await say("front pads 0.5 mm");
  const mended = await t.one({ ...dm, fill: button(noted, "It is mended"), fields: { did: "front brake pads", at: "", on: "" } });
  expect(mended.data.closed).toMatchObject([{ id: noted.data.defects[0].id }]);
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test.each([
  ["rear tread 0.5 mm", "new rear tyre at 14,230 mi", "/tyre show", "worn to its limit"],
  ["front pads 0.5 mm", "new front pads", "/reading picture:pads", "change them now"],
] as const)("“%s” says nothing of what was put in by “%s” on the same day", async (wrong, work, shown, condemned) => {
  const { t, run, say, due } = await heron();
  await say("14,220 mi on 20 March");
  await say(wrong);
  expect((await run(shown)).text).toContain(condemned);
  await say(work);
  expect((await run(shown)).text).not.toMatch(/0\.5 mm|worn|\bnow\b/u);
  expect((await run("/trip plan:600 mi 10-14 June")).text).not.toMatch(/tread|pads/iu);
  expect(await due()).not.toContain("Do not ride");
  await t.close();
});

test.each([
  ["new rear tyre on 20 March", "rear tread 0.6 mm on 10 March", "rear tread 7 mm"],
  ["new front pads on 20 March", "front pads 0.6 mm on 10 March", "front pads 5 mm"],
] as const)("after “%s”, “%s” is kept and stops no ride", async (work, before, now) => {
  const { t, say, due } = await heron();
  await say(work);
  const read = await say(before);
  expect(read.data).toMatchObject({ readings: [{ value: 0.6 }], judged: [], ofPartsOff: [{ value: 0.6 }], defects: [] });
  expect(read.text).toContain("was of the one that came off since");
  expect(await due()).not.toContain("Do not ride");
  expect((await say(now)).data).toMatchObject({ judged: [{ judgement: { is: "within" } }], ofPartsOff: [] });
  await t.close();
});

test("a value beside a new one is of the old where nobody would fit it so, or where it has not grown; else of the new", async () => {
  const { t, say } = await heron();
  const states = async (text: string) => (await say(text)).data.readings.map((reading: { detail: { state?: string } | null }) => reading.detail?.state);
  expect(await states("rear tread 0.6 mm, new rear tyre")).toEqual(["found"]);
  expect(await states("rear tread 7 mm, replaced the rear tyre")).toEqual(["left"]);
  expect(await states("rear tread 6 mm")).toEqual([undefined]);
  expect(await states("rear tread 6 mm, replaced the rear tyre")).toEqual(["found"]);
  await t.close();
});
