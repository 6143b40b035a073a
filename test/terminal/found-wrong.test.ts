// What was found at an item of a job, in words: a fault is the bike's defect and never "done"; what is not understood is asked.

import { afterEach, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

let t: Talk;
afterEach(() => t.close());
const dm = { as: "Ines", in: "dm" };
const run = (line: string) => t.one({ ...dm, run: line });
const press = (shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
const begun = async (): Promise<void> => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
};
const outcomeOf = (shown: Shown): string | undefined =>
  ((shown.data.outcome?.work ?? shown.data.work) as { items: { outcome: string }[] }[])[0]?.items[0]?.outcome;

test("a fault found at a job is the bike's defect: it stands first, nothing is closed by it, and the item is due as before", async () => {
  await begun();
  await press(await run("/plan sheet"), "Begin this job");
  const before = (await run("/due")).data.bikes[0].dues as { item: string; status: string }[];
  // Each row: what is ticked, what was found, the defect, by common practice one that is not ridden on.
  for (const [done, found, kind, item] of [
    ["brake hoses", "cracked", "damaged brake hose", "brake-hoses.inspect"],
    ["rims", "cracked", "damaged wheel", "rims.inspect"],
    ["wheel bearings", "play", "wheel bearing", "wheel-bearings.inspect"],
    ["fuel hoses", "leaking", "fuel leak", "fuel-hoses.inspect"],
    ["throttle", "sticks open", "sticking throttle", "throttle-cable.adjust"],
  ] as const) {
    const ticked = await run(`/plan job done:${done} found:${found}`);
    expect(outcomeOf(ticked)).toBe("found wrong");
    expect(ticked.text).toContain("looked at and found wrong today");
    expect(ticked.text).toContain("Do not ride");
    expect(ticked.text).toContain("It stays first on /due until work closes it.");
    expect(ticked.text).toContain(`found ${found}`);
    expect(ticked.actions.filter(({ label }) => label.startsWith("Closes"))).toEqual([]);
    const [bike] = (await run("/due")).data.bikes;
    expect(bike.defects).toContainEqual(expect.objectContaining({ kind, grade: "do not ride", state: "open" }));
    const was = before.find((each) => each.item === item)?.status;
    expect((bike.dues as { item: string; status: string }[]).find((each) => each.item === item)?.status).toBe(was);
  }
  // Ticked in the job all the same, and one undo takes both back.
  const shown = await run("/plan job done:steering head bearings found:notchy");
  expect(shown.text).toContain("- Steering head bearings: looked at and found wrong, found notchy, today");
  await press(shown, "Undo");
  const due = await run("/due");
  expect((due.data.bikes[0].defects as { words: string }[]).map(({ words }) => words)).not.toContain("Steering head bearings: notchy");
  // A hose past its best makes the new one due, and the new one closes it.
  expect((due.data.bikes[0].dues as { item: string; status: string }[]).find(({ item }) => item === "brake-hoses.replace")?.status).toBe("due");
  const renewed = await run("/work did:new brake hoses");
  expect(renewed.data.closed).toMatchObject([{ words: "Brake hoses: cracked", state: "closed" }]);
});

test("a look that found a fault closes no defect of its kind that stands open", async () => {
  await begun();
  await t.one({ ...dm, say: "play in the rear wheel on Heron" });
  const looked = await run("/work did:wheel bearings found:still some play");
  expect(looked.text).not.toContain("Does this close");
  expect(looked.data.closed).toEqual([]);
  expect((await run("/work did:wheel bearings outcome:replaced")).text).toContain("Does this close");
});

test("words that are no fault for certain are asked about, with how bad it is behind it; a note alone is kept as one", async () => {
  await begun();
  const asked = await run("/work did:swingarm bearings found:some grease came out");
  expect(asked.text).toContain("“Swingarm bearings: some grease came out” on Heron: is that something wrong with it, or only a note?");
  expect((await run("/records")).text).not.toContain("Swingarm");
  const wrong = await press(asked, "Found wrong");
  expect(outcomeOf(wrong)).toBe("found wrong");
  expect(wrong.text).toContain("How bad is it?");
  const note = await press(await run("/work did:coolant hoses found:bit of surface rust on a clip"), "Only a note");
  expect(outcomeOf(note)).toBe("done");
  expect(note.data.defects).toEqual([]);
  // Ticked as well done beside a fault: one of the two is a slip.
  expect((await run("/work did:front brake pads found:soaked with oil outcome:done")).text).toContain("or only a note?");
});

test("a look told in a message beside a sign of a fault is asked about, and never recorded as done in silence", async () => {
  await begun();
  const say = (text: string) => t.one({ ...dm, say: text });
  for (const text of [
    "checked the brake hoses on Heron, found them cracked",
    "did the wheel bearings on Heron, they have play",
    "inspected the rims on Heron: bent",
  ]) {
    const asked = await say(text);
    expect([text, asked.data.is === "asked" || (asked.data.defects?.length ?? 0) > 0]).toEqual([text, true]);
    if (asked.data.is === "asked") expect(outcomeOf(await press(asked, "Found wrong"))).toBe("found wrong");
  }
  const defects = (await run("/due")).data.bikes[0].defects as { kind: string; grade: string }[];
  expect(defects.map(({ kind }) => kind).toSorted()).toEqual(["damaged brake hose", "damaged wheel", "wheel bearing"]);
  for (const text of [
    "checked the brake hoses on Heron, all good",
    "checked the steering head bearings on Heron for play",
    "checked the wheel bearings on Heron, no play",
    "did the oil and filter on Heron",
  ])
    expect([text, (await say(text)).data.is]).toEqual([text, "logged"]);
});

test("what is well is recorded so, and what the work is done for is put right by it", async () => {
  await begun();
  for (const [line, outcome] of [
    ["/work did:steering head bearings found:no play, smooth", "inspected, within limits"],
    ["/work did:brake hoses found:no cracks, no leaks", "inspected, within limits"],
    ["/work did:wheel bearings found:fine", "inspected, within limits"],
    ["/work did:chain slack found:loose", "adjusted"],
    ["/work did:clutch free play found:loose", "adjusted"],
    ["/work did:new chain found:worn out", "replaced"],
    ["/work did:spark plugs found:sooty", "replaced"],
    ["/work did:oil and filter found:very dark", "replaced"],
    ["/work did:fasteners found:loose", "inspected, within limits"],
    ["/work did:brake hoses found:tight, dry", "inspected, within limits"],
    ["/work did:front tyre found:sidewall cracked", "replaced"],
    ["/work did:brake hoses found:cracked outcome:replaced", "replaced"],
    ["/work did:wheel bearings found:play left:no play", "inspected, within limits"],
    ["/work did:side stand found:could not look, no room outcome:could not do", "could not do"],
  ] as const) {
    const shown = await run(line);
    expect([line, outcomeOf(shown), shown.data.defects]).toEqual([line, outcome, []]);
  }
});

test("only words that say nothing but good are praise: a denial of it is a fault, and what is not plainly good is asked about, whatever the work is", async () => {
  await begun();
  await press(await run("/plan sheet"), "Begin this job");
  // Each row: what is ticked, what was found, and the defect; null: it is asked, and nothing is saved.
  for (const [done, found, kind] of [
    ["rims", "not ok", "damaged wheel"],
    ["steering head bearings", "tight spot", "steering"],
    ["side stand", "switch does not cut the engine", "side stand"],
    ["throttle cable free play", "does not snap back", "sticking throttle"],
    ["fasteners", "one stripped", "fastener"],
    ["wheel bearings", "nicht ok", "wheel bearing"],
    ["valve clearance", "two tight", null],
    ["oil and filter", "very thin", null],
    ["oil and filter", "metal flakes", null],
    ["swingarm bearings", "tight", null],
  ] as const) {
    const ticked = await run(`/plan job done:${done} found:${found}`);
    if (kind === null) expect([found, ticked.text]).toEqual([found, expect.stringContaining("is that something wrong with it, or only a note?")]);
    else {
      expect([found, outcomeOf(ticked)]).toEqual([found, "found wrong"]);
      expect(ticked.data.outcome.defects).toMatchObject([{ kind, grade: "do not ride" }]);
    }
  }
  expect(outcomeOf(await run("/work did:rims found:not ok"))).toBe("found wrong");
  expect((await t.one({ ...dm, say: "checked the steering head on Heron, tight spot" })).text).toContain("or only a note?");
  // Nothing to set was found: it was looked at.
  expect(outcomeOf(await run("/plan job done:valve clearance found:all in spec"))).toBe("inspected, within limits");
});

test("oil found milky is noted as what stops the ride, and the new oil is recorded", async () => {
  await begun();
  const noted = await run("/work did:oil and filter found:milky");
  expect(outcomeOf(noted)).toBe("replaced");
  expect(noted.data.defects).toMatchObject([{ kind: "oil and coolant mixed", grade: "do not ride" }]);
});

test("what leaks is asked about though the oil is new, and stays a defect beside it", async () => {
  await begun();
  const asked = await run("/work did:oil and filter found:oil leaking from the drain plug");
  const noted = await press(asked, "Found wrong");
  expect(outcomeOf(noted)).toBe("replaced");
  expect(noted.data.defects).toMatchObject([{ kind: "oil leak", grade: "watch" }]);
});

test("a chain's wear in per cent is kept as typed and judged as a share: by the manual's limit, else by what every published one says", async () => {
  await begun();
  const outcome = async (found: string) => {
    const shown = await run(`/work did:chain wear found:${found}`);
    return [shown.data.work?.[0]?.items[0].outcome ?? "asked", shown.data.defects?.[0]?.kind ?? null];
  };
  // Published limits run from 1 to 3 % (src/trade/chain.ts): between them only the manual can tell.
  expect(await outcome("0.6 %")).toEqual(["inspected, within limits", null]);
  expect(await outcome("3.2 %")).toEqual(["found wrong", "worn chain"]);
  expect(await outcome("1.5 %")).toEqual(["asked", null]);
  await run("/spec what:chain length limit value:1.5 % source:manual, p. 80");
  expect(await outcome("1.5 %")).toEqual(["found wrong", "chain at its end"]);
  expect(await outcome("2 percent")).toEqual(["found wrong", "worn chain"]);
  expect(await outcome("1.0 %")).toEqual(["inspected, within limits", null]);
  const { text } = await run("/records");
  expect(text).toContain("“found 3.2 %”");
  expect(text).not.toContain("mm");
});

test("what is told of a tick is of that item, and not of another on the sheet", async () => {
  await begun();
  await press(await run("/plan sheet"), "Begin this job");
  expect((await run("/plan job done:clutch free play")).text).not.toContain("Hot oil");
  expect((await run("/plan job done:brake hoses found:weeping")).text).toContain("Brake fluid harms paint and eyes");
});

test("words beside a look that say neither well nor wrong are asked about before it counts; praise is not, and a value is judged by itself", async () => {
  await begun();
  for (const said of ["checked the valves, one shim needed", "checked brake hoses, starting to perish"]) {
    const asked = await t.one({ ...dm, say: said });
    expect(asked.text).toContain(`“${said}” on Heron: is that something wrong with it, or only a note?`);
    expect((await press(asked, "Found wrong")).text).toContain("found wrong");
  }
  expect((await t.one({ ...dm, say: "checked the steering head, all good" })).data.work).toHaveLength(1);
  expect((await t.one({ ...dm, say: "checked the swingarm with Tess in the garage" })).data.work).toHaveLength(1);
  const measured = await t.one({ ...dm, say: "checked the front discs, front 4.1 mm" });
  expect(measured.data.logged).toHaveLength(1);
  expect(outcomeOf(measured)).not.toBe("inspected, within limits");
});
