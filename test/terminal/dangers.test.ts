// Ordinary sentences of what can hurt: each is read as a defect or asked about, and never passed over or taken for a conversion.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const DM = { as: "Ines", in: "dm" };
const heron = async (kind = "chain-drive twin") => {
  const t = await talk();
  await t.one({ ...DM, run: `/bike add name:Heron kind:${kind} odometer:14,210 mi` });
  return { t, say: (say: string) => t.one({ ...DM, say }), run: (run: string) => t.one({ ...DM, run }) };
};

const SAID = [
  "front brake lever comes right back to the bar",
  "rear brake does nothing",
  "no brakes at the rear",
  "brake pedal goes to the floor",
  "lost the pin of the front caliper",
  "brake disc bolt missing",
  "caliper hanging off its bracket",
  "brake hose rubbing on the tyre",
  "brake line is leaking at the banjo",
  "front wheel locks by itself",
  "brake lever snapped",
  "abs light stays on and rear brake locks",
  "handlebar clamp bolt loose",
  "bars are bent after the drop",
  "steering locks to the left",
  "fork clamp bolt missing",
  "fork leg bent",
  "steering damper seized",
  "axle nut missing",
  "rear axle nut came off",
  "split pin missing from the axle nut",
  "front axle loose",
  "wheel is wobbling",
  "rear wheel not straight",
  "spoke snapped in the rear",
  "rim has a crack",
  "tyre has a bulge in the sidewall",
  "tyre came off the rim",
  "screw in the front tyre",
  "tyre fitted the wrong way round",
  "fuel dripping onto the exhaust",
  "petrol smell under the tank",
  "fuel cap does not close",
  "fuel hose came off",
  "tank is rusted through",
  "side stand drops while riding",
  "side stand does not stay up",
  "side stand spring missing",
  "centre stand hangs down",
  "throttle does not close by itself",
  "throttle cable frayed",
  "clutch cable about to snap",
  "footpeg loose",
  "engine mount bolt snapped",
  "frame cracked at the headstock",
  "swingarm cracked",
  "chain guard rubbing on the chain",
  "front sprocket nut loose",
  "chain jumped off the sprocket",
  "oil on the rear tyre",
  "oil on the front brake disc",
  "brake pads fell out",
  "wheel bearing collapsed",
  "front mudguard touches the tyre",
  "suspension linkage bolt missing",
  "shock bolt loose",
  "headlight goes out when braking",
  "brake light stuck on",
  "rear brake rod fell off",
  "brake drum cracked",
  "brake cable snapped",
  "drum brake torque arm loose",
  "no fluid in the rear brake reservoir",
  "grease on the brake pads",
  "tyre rubbing on the swingarm",
  "exhaust hanging off",
  "chain master link clip missing",
  "lost the chain clip",
  "chain link is cracked",
  "chain plate cracked",
  "belt has a missing tooth",
  "belt tooth broken",
  "belt is missing two teeth",
  "adjuster at the end of its marks",
  "Kettenschloss-Clip fehlt",
  "Öl auf dem Hinterreifen",
  "Hinterreifen schleift",
];

test("what can hurt is noted, whatever part it is of", async () => {
  const { t, say } = await heron();
  const passedOver: string[] = [];
  for (const each of SAID) {
    const { data } = await say(each);
    if (data?.is === "asked" || (data?.is === "logged" && data.defects.length > 0)) continue;
    passedOver.push(each);
  }
  expect(passedOver).toEqual([]);
  await t.close();
}, 60_000);

test.each([
  ["chain is rusty", "rusty chain"],
  ["chain too loose", "chain tension"],
  ["chain has a tight spot", "chain"],
  ["sprockets are worn", "worn sprockets"],
  ["clutch lever feels spongy", "soft clutch"],
  ["clutch has no free play", "no clutch play"],
  ["Kupplung hat kein Spiel", "no clutch play"],
  ["oil on the rear tyre", "oily tyre"],
] as const)("“%s” is of the kind %s", async (said, kind) => {
  const { t, say } = await heron();
  const told = await say(said);
  expect(told.data.defects).toMatchObject([{ kind }]);
  expect(told.text).not.toMatch(/clutch.*drum/u);
  await t.close();
});

test("a belt on a bike that has none is noted, and said; a timing belt is meant where there is one", async () => {
  const { t, say, run } = await heron();
  expect((await say("belt has a missing tooth")).text).toContain("fitted otherwise (final drive: chain)");
  const fitted = await run("/bike fitted part:cam drive choice:timing belt");
  expect(fitted.text).toContain("a timing belt");
  expect((await say("belt is cracked")).data.defects).toMatchObject([{ kind: "timing belt" }]);
  await t.close();
});

// Common practice: setting or oil takes no tight spot out of a chain; a sprocket alone makes no chain new.
test("setting, oiling or charging closes nothing that is broken", async () => {
  const { t, say } = await heron();
  await say("chain has a tight spot");
  for (const work of ["adjusted the chain, 30 mm upright", "lubed the chain", "cleaned the chain"]) expect((await say(work)).data?.closed ?? []).toEqual([]);
  await say("battery is swollen");
  expect((await say("charged the battery")).data?.closed ?? []).toEqual([]);
  await say("head bearings are notchy");
  expect((await say("adjusted the head bearings")).data?.closed ?? []).toEqual([]);
  await t.close();
});

test("a new sprocket closes no worn chain, whether or not it is said that the rest stayed on; a new chain does", async () => {
  const { t, say, run } = await heron();
  await run("/spec what:chain wear limit value:2 %");
  expect((await say("chain wear 2.5 %")).data.defects).toMatchObject([{ kind: "worn chain", grade: "do not ride" }]);
  const sprocket = await say("new front sprocket fitted");
  expect(sprocket.data?.closed ?? []).toEqual([]);
  const stayed = sprocket.actions.find(({ label }: { readonly label: string }) => label === "Chain and rear sprocket stayed on");
  await t.one({ ...DM, press: stayed?.id ?? "" });
  expect((await run("/due")).text).toContain("Do not ride: “chain elongation 2.5 %”");
  expect((await say("new chain and sprockets fitted")).data.closed).toMatchObject([{ kind: "worn chain" }]);
  await t.close();
});

test("of two parts of a mix, which is the antifreeze is asked", async () => {
  const { t, say } = await heron();
  const asked = await say("antifreeze 40/60");
  expect(asked.data).toMatchObject({ is: "asked" });
  expect(asked.text).toContain("Which of them is the antifreeze");
  await t.close();
});

// Which rubber oil and brake fluid spoil: common practice. Classes: 49 CFR 571.116.
test.each([
  ["topped up the brake fluid with engine oil", "engine oil", "attacked brake seals"],
  ["topped up the brake fluid with ATF", "automatic transmission fluid", "attacked brake seals"],
  ["topped up the brake fluid, ATF by mistake", "automatic transmission fluid", "attacked brake seals"],
  ["topped up the front brake with WD-40", "penetrating oil", "attacked brake seals"],
  ["topped up the brake fluid with power steering fluid", "power steering fluid", "attacked brake seals"],
  ["topped up the brake fluid with LHM", "mineral oil", "attacked brake seals"],
  ["changed the brake fluid with hydraulic oil", "mineral oil", "attacked brake seals"],
  ["put engine oil in the brake reservoir", "engine oil", "attacked brake seals"],
  ["engine oil ended up in the rear brake reservoir", "engine oil", "attacked brake seals"],
  ["changed the oil and topped up the brake fluid with engine oil", "engine oil", "attacked brake seals"],
  ["topped up the brake with water", "water", "mixed brake fluid"],
  ["mixed DOT 4 and DOT 5 in the brake", "DOT 5", "mixed brake fluid"],
  ["DOT 5 went into the front brake", "DOT 5", "mixed brake fluid"],
  ["the shop put DOT 5 in", "DOT 5", "mixed brake fluid"],
  ["Bremsflüssigkeit mit Motoröl aufgefüllt", "engine oil", "attacked brake seals"],
  ["Motoröl in die Bremse gekippt", "engine oil", "attacked brake seals"],
] as const)("“%s” stops the ride", async (said, added, kind) => {
  const { t, say, run } = await heron();
  const told = await say(said);
  expect(told.data).toMatchObject({ is: "logged", fluids: [{ added, worth: null }], defects: [{ kind, grade: "do not ride" }] });
  expect((await run("/due")).text).toContain("Do not ride");
  // Bleeding leaves some of it in, and the seals as they are.
  expect((await say("bled the brakes")).data?.closed ?? []).toEqual([]);
  await t.close();
});

test("a fluid that nobody knows is told back and kept; two jobs are two jobs, and a tool is no fluid", async () => {
  const { t, say, run } = await heron();
  for (const [said, words] of [
    ["topped up the brake fluid with DOT 6", "DOT 6"],
    ["topped up the brake fluid with Zorbo yesterday", "Zorbo"],
  ] as const) {
    const told = await say(said);
    expect(told.data.unknownFluids).toMatchObject([{ words }]);
    expect(told.text).toContain(`I know no brake fluid “${words}”; kept as typed.`);
    expect((await run("/records")).text).toContain(words);
  }
  for (const said of [
    "topped up the brake fluid and engine oil",
    "added engine oil and brake fluid",
    "bled the brakes with a syringe",
    "brake fluid DOT 5.1 topped up",
  ])
    expect((await say(said)).data).toMatchObject({ is: "logged", defects: [] });
  expect((await say("bled the brakes with a syringe")).data.unknownFluids).toBeUndefined();
  await t.close();
});

test("a clutch's spec that must not meet what it is entered with is said, both ways", async () => {
  const { t, run } = await heron();
  await run("/bike fitted part:clutch choice:hydraulic mineral oil");
  expect((await run("/spec what:clutch fluid value:DOT 4")).text).toContain("By /bike fitted its clutch has mineral oil: look at the cap");
  await run("/bike fitted part:clutch choice:hydraulic brake fluid");
  for (const value of ["mineral oil", "DOT 5"])
    expect((await run(`/spec what:clutch fluid value:${value}`)).text).toContain("By /bike fitted its clutch has DOT 4: look at the cap");
  expect((await run("/spec what:clutch fluid value:DOT 5.1")).text).not.toContain("By /bike fitted");
  await t.close();
});

test("fluid on a bike whose brakes have none is told by what was changed, and with the class that was named", async () => {
  const { t, say } = await heron("classic");
  expect((await say("brake fluid changed with DOT 4")).text).toMatch(/^Brake fluid: .*choice:DOT 4$/u);
  await t.close();
});
