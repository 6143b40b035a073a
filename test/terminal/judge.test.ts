// From a number to a judgement, as a rider meets it: in the answer, on the due list, in the channel.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("a worn tyre is told at once, stands on the due list with its reason, and a new one clears it", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await t.one({ as: "Ines", admin: true, run: "/group place:Germany" });
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const worn = await t.one({ ...dm, say: "14,300 mi on Heron, tread 4.5 mm front 1.2 mm rear" });
  expect(worn.text).toContain("Front tread depth 4.5 mm: within (1.6 mm by law, StVZO section 36).");
  expect(worn.text).toContain(
    "Rear tread depth 1.2 mm: beyond limit (1.6 mm by law, StVZO section 36). Replace the tyre now. Do not ride on it. The moulded bars, 0.8 mm, lie below that.",
  );
  expect(worn.text).toContain("Do not ride on cords, cuts or bulges.");
  expect(worn.data.judged[1]).toMatchObject({ kind: "tread", place: "rear", judgement: { is: "beyond limit" }, by: "law", doNotRide: true });
  expect(await run("/due")).toContain("- Rear tread depth: rear tread depth 1.2 mm, read today: beyond limit, 1.6 mm");
  await t.one({ ...dm, press: button(worn, "Undo") });
  expect(await run("/due")).not.toContain("beyond limit");
  await t.one({ ...dm, say: "14,300 mi on Heron, tread 1.2 mm rear" });
  await t.send({ advance: "P1D" });
  await run("/work did:rear tyre age at:14,300 mi");
  expect(await run("/due")).not.toContain("beyond limit");
  await t.close();
});

test("what is worn stays due until a new one is fitted or it is read anew: looking at the old one again mends nothing", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await t.one({ ...dm, say: "tread 0.5 mm rear, front pads 0.4 mm" });
  for (const work of ["did:rear tread depth", "did:front brake pads"]) {
    await t.send({ advance: "P1D", asleep: true });
    await run(`/work ${work} at:14,300 mi`);
    expect(await run("/due")).toContain("Rear tread depth: rear tread depth 0.5 mm, read on 1 April: beyond limit, 0.8 mm");
    expect(await run("/due")).toContain("Front brake pads: front pad thickness 0.4 mm, read on 1 April: beyond limit, 1 mm");
  }
  expect(await run("/due")).toContain("Do not ride: “front pad thickness 0.4 mm”");
  await run("/work did:front brake pads at:14,300 mi outcome:replaced");
  expect(await run("/due")).not.toContain("front pad thickness 0.4 mm");
  await t.one({ ...dm, press: button(await t.one({ ...dm, say: "tread 5 mm rear" }), "Yes, it is right") });
  expect(await run("/due")).not.toContain("read on 1 April: beyond limit");
  await t.close();
});

test("clearances and discs are told to the hundredth of a millimetre", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  for (const spec of ["intake valves value:0.10-0.15 mm", "front disc limit value:4.5 mm", "plug gap value:0.80-0.90 mm"]) await run(`/spec what:${spec}`);
  const read = await t.one({ ...dm, say: "intake valves 0.14 mm 0.17 cold, front disc 4.56 mm, plug gap 0.84 mm" });
  expect(read.text).toContain("Intake 1 valve clearance 0.14 mm: near limit, nearly too wide (0.10 mm to 0.15 mm by your own figure).");
  expect(read.text).toContain("Intake 2 valve clearance 0.17 mm: beyond limit, too wide (0.10 mm to 0.15 mm by your own figure).");
  expect(read.text).toContain("Front disc thickness 4.56 mm: near limit (4.50 mm by your own figure).");
  expect(read.text).toContain("Spark plug gap 0.84 mm: within (0.80 mm to 0.90 mm by your own figure).");
  expect((await run("/due")).text).toContain("intake 2 valve clearance 0.17 mm, read today: beyond limit, too wide, 0.15 mm");
  await t.close();
});

test("in the channel only that something wants a look; the figures are for the rider", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const said = await t.one({ as: "Ines", say: "tread 0.5 mm rear" });
  expect(said.text).toBe("Logged. Something on Heron wants a look.");
  const fine = await t.one({ as: "Ines", say: "tread 5 mm front" });
  expect(fine).toMatchObject({ react: "logged", text: null });
  await t.close();
});

test("whose law holds is asked with the first reading, and what the manual must say with the first of its kind", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  // Known in a direct message only, no group's place can be said: its rider enters the limit.
  const alone = (await t.one({ ...dm, say: "tread 5 mm front" })).text;
  expect(alone).toContain(
    "so the moulded bars count; where you ride the law may ask for more. Press whose it is, or enter what it asks for, once an end: /spec what:front tread limit value:…",
  );
  expect(alone).toContain("Or write a reading where your group is, once its place is said with /group place:…");
  expect((await t.one({ ...dm, say: "tread 4.9 mm front" })).text).not.toContain("/spec");
  await t.one({ ...dm, run: "/spec what:rear tread limit value:1.6 mm" });
  expect((await t.one({ ...dm, say: "tread 1.5 mm rear" })).text).toContain("Rear tread depth 1.5 mm: beyond limit (1.6 mm by your own figure)");
  await t.one({ as: "Odo", run: "/bike add name:Wren kind:chain-drive twin odometer:9,000 mi" });
  expect((await t.one({ as: "Odo", in: "dm", say: "tread 5 mm front" })).text).toContain(
    "so the moulded bars count; the law may ask for more. Press whose it is, once; whoever runs the group may say it with /group place:… too.",
  );
  await t.close();
});

test("without its manual's figure a reading is told as one that cannot be judged, with the way to give it; again the same day in short, whole on another day", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (words: string) => (await t.one({ ...dm, say: words })).text ?? "";
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const whole = "Chain slack: cannot tell yet; I need the figure of your manual, once: /spec what:chain slack value:…";
  expect(await say("chain slack 15 mm")).toContain(whole);
  const again = await say("chain slack 16 mm");
  expect(again).toContain("Chain slack: cannot tell yet without your manual's figure.");
  expect(again).not.toContain("/spec");
  await t.send({ advance: "P7D" });
  expect(await say("chain slack 17 mm")).toContain(whole);
  expect(await say("33 psi front 36 rear")).toContain(
    "Front and rear cold tyre pressure: cannot tell yet; I need the figures of your manual, once: /spec what:front tyre pressure value:…",
  );
  expect(await say("32 psi front 36 rear")).toContain("Front and rear cold tyre pressure: cannot tell yet without your manual's figures.");
  // Entered as it was asked for, it is asked for no more.
  await t.one({ ...dm, run: "/spec what:chain slack value:25-35 mm" });
  expect(await say("chain slack 30 mm upright")).toContain("Chain slack 30 mm: within (25 mm to 35 mm by your own figure).");
  await t.close();
});

test("where each state has its own law the place is not asked for again: the moulded bars count, and the state's figure can be entered", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ as: "Ines", admin: true, run: "/group place:United States" });
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const first = await t.one({ ...dm, say: "tread 5 mm front" });
  expect(first.text).toContain("Front tread depth 5 mm: within (0.8 mm, the moulded bars).");
  expect(first.text).toContain("In the United States the least tread in use is each state's own law; what counts here is the moulded bars (49 CFR 571.119).");
  expect(first.text).not.toContain("/group place");
  expect((await t.one({ ...dm, say: "tread 4.9 mm front" })).text).not.toContain("state's own law");
  const shown = await t.one({ ...dm, run: "/tyre show" });
  expect(shown.text).toContain("each state's own law");
  expect(shown.text).not.toContain("I do not know");
  await t.one({ ...dm, run: "/spec what:front tread limit value:1.6 mm" });
  expect((await t.one({ ...dm, run: "/tyre show" })).text).not.toContain("each state's own law");
  await t.close();
});

test("what must not be ridden on is noted once as a defect, and the work that mends it closes it", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const worn = await t.one({ ...dm, say: "tread 0.5 mm rear" });
  expect(worn.data.defects).toMatchObject([{ kind: "worn rear tyre", grade: "do not ride", from: "verdict", words: "rear tread 0.5 mm" }]);
  expect((await t.one({ ...dm, say: "tread 0.4 mm rear" })).data.defects).toEqual([]);
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Do not ride: “rear tread 0.5 mm”, found today.");
  await t.send({ advance: "P1D" });
  const mended = await t.one({ ...dm, run: "/work did:rear tyre age at:14,300 mi outcome:replaced" });
  expect(mended.data.closed).toMatchObject([{ kind: "worn rear tyre", state: "closed" }]);
  expect((await t.one({ ...dm, run: "/due" })).text).not.toContain("Do not ride: “");
  await t.one({ ...dm, press: button(mended, "Undo") });
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Do not ride: “rear tread 0.5 mm”");
  await t.close();
});

test("a limit of one's own below the moulded bars does not let a tyre go on: 49 CFR 571.119 S6.4", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/spec what:front tread limit value:0.5 mm source:manual p. 2" });
  const { text } = await t.one({ ...dm, say: "front tread 0.7 mm" });
  expect(text).toContain("Front tread depth 0.7 mm: beyond limit (0.8 mm, the moulded bars)");
  expect(text).toContain("Do not ride on it.");
  await t.close();
});

test("a pressure is judged cold, by the plate, where it stands", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/spec what:front tyre pressure value:34 psi source:owner's manual p. 12" });
  const low = await t.one({ ...dm, say: "31 psi front" });
  expect(low.text).toContain("Front cold tyre pressure 31 psi: 3 psi low, add 3 psi where it stands (34 psi wanted, owner's manual, p. 12).");
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Tyre pressures: front cold tyre pressure 31 psi, read today: 3 psi below spec, 34 psi");
  expect((await t.one({ ...dm, say: "20 psi front" })).text).toContain("Do not ride before it is set, and look for what let it out.");
  expect((await t.one({ ...dm, say: "60 psi front" })).text).not.toContain("let it out");
  expect((await t.one({ ...dm, say: "34 psi front" })).text).toContain("Front cold tyre pressure 34 psi: good, 34 psi wanted, owner's manual, p. 12.");
  expect((await t.one({ ...dm, run: "/due" })).text).not.toContain("below spec");
  await t.close();
});

test("a reading is told as finely as it was typed, and what it is off by adds up with it, wherever it is told", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (words: string) => (await t.one({ ...dm, say: words })).text ?? "";
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
  await run("/spec what:rear tyre pressure value:36 psi");
  await run("/spec what:front tyre pressure value:2.5 bar");
  expect(await say("rear 34.5 psi")).toContain(
    "Rear cold tyre pressure 34.5 psi: 1.5 psi low, add 1.5 psi where it stands (36 psi wanted by your own figure).",
  );
  expect(await say("rear 31.5 psi")).toContain("Rear cold tyre pressure 31.5 psi: 4.5 psi low, add 4.5 psi where it stands (36 psi wanted");
  expect(await run("/due")).toContain("rear cold tyre pressure 31.5 psi, read today: 4.5 psi below spec, 36 psi");
  expect(await run("/tyre show")).toContain("Rear cold tyre pressure 31.5 psi: 4.5 psi low");
  expect(await run("/reading picture:pressure")).toContain("Rear 31.5 psi on 1 April, wanted 36 psi cold");
  // 2.5 bar is 36.26 psi: 34 is 2 under 36, 33.5 is 2.8 under 36.3.
  expect(await say("front 34 psi")).toContain("34 psi: 2 psi low, add 2 psi where it stands (36 psi wanted");
  expect(await say("front 33.5 psi")).toContain("33.5 psi: 2.8 psi low, add 2.8 psi where it stands (36.3 psi wanted");
  expect(await say("front 2.3 bar")).toContain("2.3 bar: 0.2 bar low, add 0.2 bar where it stands (2.5 bar wanted");
  await run("/spec what:rear tyre pressure value:36.5 psi");
  expect(await say("rear 34 psi")).toContain("34 psi: 2.5 psi low, add 2.5 psi where it stands (36.5 psi wanted");
  expect(await say("rear tread 0.85 mm")).toContain("Rear tread depth 0.85 mm: near limit");
  expect(await run("/reading picture:tread")).toContain("Rear 0.85 mm, limit");
  expect(await say("front left pads 4.25 mm, front right pads 2.5 mm")).toContain("Front pads differ by 1.75 mm");
  await t.close();
});

test("a belt's figure is entered with its force; pressed with that one it is judged, pressed with another it is asked anew", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (words: string) => (await t.one({ ...dm, say: words })).text ?? "";
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await run("/bike add name:Kite kind:belt-drive cruiser odometer:14,210 mi");
  expect(await run("/spec what:belt deflection value:10-13 mm at 45 N")).toContain("Belt deflection: 10-13 mm at 45 N.");
  expect(await run("/spec what:belt deflection")).toContain("Belt deflection: 10-13 mm at 45 N.");
  expect(await say("belt deflection 12 mm at 45 N")).toContain("Belt deflection 12 mm: within (10 mm to 13 mm at 45 N by your own figure).");
  // 10 lbf are 44.5 N.
  expect(await say("belt deflection 15 mm at 10 lb")).toContain("Belt deflection 15 mm: beyond limit, too slack");
  expect(await run("/due")).toContain("belt deflection 15 mm, read today: beyond limit, too slack, 13 mm");
  expect(await say("belt deflection 15 mm at 20 N")).toContain(
    "Belt deflection 15 mm: cannot tell; its figure holds at 45 N. Press it with that and read it again, such as “belt deflection 10 mm at 45 N”.",
  );
  const unsaid = await t.one({ ...dm, say: "belt deflection 12 mm" });
  expect(unsaid.text).toContain("cannot tell yet; its figure holds at 45 N. Say how it was pressed, such as “at 45 N”, or “at force” if that was it.");
  expect((await t.one({ ...dm, press: button(unsaid, "At the force named") })).text).toContain("Belt deflection 12 mm: within");
  // A bare figure stays one, and what is no force is not taken for one.
  expect(await run("/spec what:belt deflection value:10-13 mm midway")).toContain("I cannot read “10-13 mm midway”");
  expect(await run("/spec what:belt deflection value:9-12 mm")).toContain("Belt deflection: 9 to 12 mm.");
  await t.close();
});

test("a tyre too low even warm is told as too low before anything is saved; no air is let out of a warm one", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (words: string) => t.one({ ...dm, say: words });
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/spec what:rear tyre pressure value:36 psi" });
  const far = await say("rear 24 psi after the ride");
  expect(far.text).toContain(
    "was read warm. Even so it is 12 psi under the 36 psi wanted, and cold it is lower still: certainly too low. Put air in before you ride on, and look for what let it out; never let air out of a warm tyre.",
  );
  expect(far.text).toContain("Nothing is saved until you answer.");
  const low = await say("rear 34.5 psi hot");
  expect(low.text).toContain("Even so it is 1.5 psi under the 36 psi wanted");
  expect(low.text).not.toContain("look for what let it out");
  // Within what is wanted, or over it, a warm tyre says nothing; without a figure nothing is known to be wanted.
  for (const fine of ["rear 36 psi after the ride", "rear 41 psi after the ride", "front 24 psi after the ride"]) {
    const { text } = await say(fine);
    expect(text).not.toContain("too low");
    expect(text).toContain("Never let air out of a warm tyre.");
  }
  const cold = await t.one({ ...dm, press: button(far, "It was read cold after all") });
  expect(cold.text).toContain("Do not ride before it is set, and look for what let it out.");
  await t.close();
});

test("pads of one axle that differ are told together, and so is one new tyre beside an old one", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const pads = await t.one({ ...dm, say: "front left pads 4 mm, front right pads 2.5 mm" });
  expect(pads.text).toContain("Front pads differ by 1.5 mm: a piston or a slide pin sticks.");
  expect((await t.one({ ...dm, say: "front pads 4 mm 2.5 mm" })).text).toContain("Front pads differ by 1.5 mm");
  expect((await t.one({ ...dm, say: "rear pads inner 3 mm outer 2.2 mm" })).text).not.toContain("differ");
  expect((await t.one({ ...dm, say: "rear pads inner 3 mm outer 2 mm" })).text).toContain("Rear pads differ by 1 mm");
  expect((await t.one({ ...dm, say: "front left pads 4 mm, front right pads 3.5 mm" })).text).not.toContain("differ");
  expect((await t.one({ ...dm, run: "/work did:rear tyre age at:14,300 mi outcome:replaced" })).text).toContain(
    "One end is new: keep both of one construction",
  );
  await t.close();
});

test("a tyre fitted with an old code is due by its age, and the tread of the one before is not shown as its own", async () => {
  const t = await talk("2026-11-26T09:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, say: "14,300 mi on Heron, tread 1.2 mm rear" });
  await t.send({ advance: "P1D" });
  const fitted = await t.one({ ...dm, say: "new rear tyre 3715 at 14,310" });
  expect(fitted.text).toContain("Rear tyre: made in week 37 of 2015, 11 years old. Replace it whatever its tread: at ten years rubber is too hard to trust.");
  expect((await t.one({ ...dm, run: "/due" })).text).toContain(
    "was due on 7 September 2025, 10 years by plan from week 37 of 2015, its date code; 15 months ago; 11 years old: at ten it is replaced whatever its tread, by common practice",
  );
  const shown = await t.one({ ...dm, run: "/tyre show" });
  expect(shown.text).toContain("Rear tyre: made in week 37 of 2015, 11 years old.");
  expect(shown.text).not.toContain("1.2 mm");
  expect(shown.data.aged).toMatchObject([{ place: "rear", age: "replace" }]);
  await t.close();
});

test("compression is asked how it was measured, engine warm and throttle open, once, and both are kept", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (words: string) => t.one({ ...dm, say: words });
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, run: "/spec what:compression value:140-170 psi" });
  const first = await say("compression 120 psi");
  expect(first.text).toContain(
    "Compression 120 psi: cannot tell yet; say “warm” if the engine was and say “throttle open” if it was held wide open. I keep it for this bike.",
  );
  expect(first.text).toContain("How to measure it: Engine warm, throttle wide open, the same gauge each time.");
  const half = await t.one({ ...dm, press: button(first, "Throttle was wide open") });
  expect(half.text).toContain("Compression 120 psi: cannot tell yet; say “warm” if the engine was.");
  const whole = await t.one({ ...dm, press: button(half, "Engine was warm") });
  expect(whole.text).toContain("Compression 120 psi: beyond limit");
  expect((await say("compression 150 psi")).text).toContain("Compression 150 psi: within (140 psi to 170 psi by your own figure).");
  expect((await say("compression 150 psi, wide open, warm")).text).toContain("(throttle open, warm)");
  await t.close();
});

test("a chain between the published limits is told how much longer it is and that only its manual knows; what lacks is asked once", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (words: string) => (await t.one({ ...dm, say: words })).text ?? "";
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  expect(await say("chain 319 mm over 21 pins")).toContain("Chain length 319 mm, 0.5 % longer than new: within (320.7 mm, common practice).");
  expect(await say("chain 322 mm over 20 pitches")).toContain(
    "Chain length 322 mm, 1.4 % longer than new: near limit (published limits run from 1 to 3 %, here 320.7 mm to 327 mm). Look for the bike's own limit",
  );
  await t.one({ ...dm, run: "/spec what:chain size value:525" });
  expect(await say("chain 333.4 mm over 20 pitches")).toContain("that fits one pitch more or fewer than you counted");
  expect(await say("clutch free play 0 mm")).toContain("Clutch free play 0 mm: beyond limit, too little play");
  expect(await say("clutch free play 12 mm")).toContain(
    "Clutch free play: cannot tell yet; I need the figure of your manual, once: /spec what:clutch free play",
  );
  expect(await say("clutch free play 11 mm")).not.toContain("/spec");
  await t.close();
});

test("a slack's figure may name how the bike stands: read otherwise it is not judged by it, unsaid it is asked for once and kept; a chain that hangs down is told either way", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const say = async (words: string) => (await t.one({ ...dm, say: words })).text ?? "";
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const saved = await t.one({ ...dm, run: "/spec what:chain slack value:25-35 mm on the side stand" });
  expect(saved.text).toContain("Chain slack: 25-35 mm on the side stand.");
  expect(await say("chain slack 38 mm upright")).toContain("Chain slack 38 mm: cannot tell; its figure holds on the side stand. Measure it so.");
  expect((await t.one({ ...dm, run: "/due" })).text).not.toContain("beyond limit");
  const unsaid = await t.one({ ...dm, say: "chain slack 30 mm" });
  expect(unsaid.text).toContain(
    "Chain slack 30 mm: cannot tell yet; its figure holds on the side stand. Say “on the side stand” if it was measured so. I keep that for this bike.",
  );
  expect(unsaid.actions.map(({ label }) => label)).toEqual(["Undo", "On the side stand"]);
  const within = "Chain slack 30 mm: within (25 mm to 35 mm on the side stand by your own figure).";
  expect((await t.one({ ...dm, press: button(unsaid, "On the side stand") })).text).toContain(within);
  expect(await say("chain slack 30 mm")).toContain(within);
  expect(await say("chain slack 30 mm with the rider on")).toContain("cannot tell; its figure holds on the side stand.");
  expect(await say("chain slack 60 mm upright")).toContain("Do not ride before that.");
  // Another figure on another stand.
  await t.one({ ...dm, run: "/spec what:chain slack value:20-30 mm with the rider on" });
  const laden = await t.one({ ...dm, say: "chain slack 25 mm, rider on" });
  expect(laden.text).toContain("Chain slack 25 mm: within (20 mm to 30 mm with the rider on by your own figure).");
  expect((await t.one({ ...dm, run: "/spec what:chain slack value:25-35 mm on the moon" })).text).toContain("I cannot read");
  await t.close();
});

test("the air noted beside a battery's volts is taken out of them, and said", async () => {
  const t = await talk("2026-01-10T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const said = await t.one({ ...dm, say: "battery 12.55 V rested at 0 °C" });
  // 12.59 V at 80 °F by the AGM table (12.55 V three quarters, 12.80 V full).
  expect(said.text).toContain("Battery voltage at rest 12.55 V, about 80 % charged by its volts at 0 °C (typical; makers differ by 0.1 V): near limit");
  // A cold said of something else sets later volts no more right than any other's; one that can have frozen it is named as what it is.
  await t.one({ ...dm, say: "air temperature -20 °C on Heron" });
  expect((await t.one({ ...dm, say: "battery 12.6 V rested overnight" })).text).toContain(
    "12.6 V, about 80 % charged (typical; makers differ by 0.1 V): near limit",
  );
  const low = (await t.one({ ...dm, say: "battery 11.9 V rested overnight" })).text ?? "";
  expect(low).toContain("At the -20 °C noted that day it may be frozen: never charge or jump a frozen battery.");
  expect(low).toContain("Where it stood warmer, say so with its volts, such as “battery 12.6 V rested at 15 °C”.");
  expect((await t.one({ ...dm, say: "battery 11.9 V rested overnight at 15 °C" })).text).not.toContain("frozen:");
  await t.close();
});

test("of what is read twice in one moment the last counts, in what is due and in what was read", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, say: "14,220 mi on Heron, tread 4 mm front 1.2 mm rear" });
  for (const mm of [1.1, 1, 0.9, 0.5]) await t.one({ ...dm, say: `rear tread ${mm} mm` });
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("- Rear tread depth: rear tread depth 0.5 mm, read today: beyond limit, 0.8 mm");
  expect(/Rear tread depth [\d.]+ mm/u.exec((await t.one({ ...dm, run: "/reading" })).text ?? "")?.[0]).toBe("Rear tread depth 0.5 mm");
  const pictured = await t.one({ ...dm, run: "/reading picture:tread" });
  expect(pictured.data.shown.panels.map(({ points }: { points: { value: number }[] }) => points.map(({ value }) => value))).toEqual([[4], [0.5]]);
  await t.close();
});

test("what was measured on the day a bike came is put where the odometer stood with it", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await t.one({ ...dm, say: "14,820 mi on Heron, tread 4.5 mm rear" });
  const pictured = await t.one({ ...dm, run: "/reading picture:tread" });
  expect(pictured.data.shown.panels[0].points).toEqual([{ ridden: 14_820 * 16_093_440, value: 4.5, typed: "4.5 mm" }]);
  await t.close();
});

test("what is overdue by its distance still says what was measured and found wanting", async () => {
  const t = await talk("2026-04-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  expect(await run("/bike add name:Finch kind:belt-drive cruiser odometer:30,000 km")).toContain("just write: 30,980 km on Finch.");
  await run("/spec what:belt deflection value:10-13 mm source:manual p. 9");
  await t.one({ ...dm, say: "belt deflection 15 mm at force" });
  await t.send({ advance: "P120D", asleep: true });
  await t.one({ ...dm, say: "42,000 km on Finch" });
  expect(await run("/due")).toMatch(/Drive belt tension and wear: was due at .* past; belt deflection 15 mm, read on 1 April: beyond limit, too slack, 13 mm/u);
  await t.close();
});
