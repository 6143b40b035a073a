// A defect by plain message: noted, graded, first on the due list, closed by work, opened again when that is undone; nothing of it is shown to the group.

import { expect, test } from "vitest";
import { button, type Talk, talk } from "../support/talk.ts";

const DM = { as: "Ines", in: "dm" };

async function withHeron(use: (t: Talk) => Promise<void>): Promise<void> {
  const t = await talk();
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  await use(t);
  await t.close();
}

test("noted, graded by what it is and otherwise by its owner, first on /due, closed by work that names it, open again when the work is undone", async () => {
  await withHeron(async (t) => {
    const noted = await t.one({ ...DM, say: "front brake feels spongy on Heron" });
    expect(noted.text).toMatch(
      /^Heron: “front brake feels spongy”\. Noted\. Do not ride until it is found: air, a leak or old fluid, or a drum out of adjustment\./u,
    );
    // Its sentence says not to ride, and so it stands: nothing is asked.
    expect(noted.text).toContain("It stays first on /due until work closes it.");
    expect(noted.text).not.toContain("How bad");
    expect(noted.data.defects).toMatchObject([{ kind: "soft brake", grade: "do not ride", state: "open", on: "2026-11-25" }]);
    const watched = await t.one({ ...DM, press: button(noted, "Watch") });
    expect(watched.data.grade).toBe("watch");
    const graded = await t.one({ ...DM, press: button(watched, "Do not ride") });
    expect(graded.data.grade).toBe("do not ride");
    // A second press on the first showing changes nothing, and shows it as it stands.
    const stale = await t.one({ ...DM, press: button(noted, "Watch") });
    expect(stale.data.grade).toBe("do not ride");
    const due = await t.one({ ...DM, run: "/due" });
    expect(due.text?.split("\n")[1]).toBe(
      "- Do not ride: “front brake feels spongy”, found today. Do not ride until it is found: air, a leak or old fluid, or a drum out of adjustment.",
    );
    expect(due.text).toContain("Brakes: keep pads, discs and linings free of oil");
    // A reading closes nothing.
    await t.one({ ...DM, say: "14,300 mi" });
    expect((await t.one({ ...DM, run: "/due" })).data.bikes[0].defects).toHaveLength(1);
    const mended = await t.one({ ...DM, say: "bled the front brake at 14,310 mi", id: "m9" });
    expect(mended.data.closed).toMatchObject([{ words: "front brake feels spongy", state: "closed", closedBy: mended.data.work[0].id }]);
    expect((await t.one({ ...DM, run: "/due" })).data.bikes[0].defects).toEqual([]);
    const undone = await t.one({ ...DM, press: button(mended, "Undo") });
    expect(undone.text).toContain("Open again: “front brake feels spongy”.");
    expect((await t.one({ ...DM, run: "/due" })).data.bikes[0].defects).toMatchObject([{ grade: "do not ride" }]);
  });
});

test("in the group's channel nothing of a defect is said; its owner sees it behind a button", async () => {
  await withHeron(async (t) => {
    const shared = await t.one({ as: "Ines", say: "front brake feels spongy" });
    expect(shared.visibility).toBe("shared");
    expect(shared.text).toBe("Noted. There is a word about it, for you alone.");
    const own = await t.one({ as: "Ines", press: button(shared, "Show me") });
    expect([own.visibility, own.actions.map(({ label }) => label)]).toEqual(["private", ["It is mended", "Watch", "It was nothing", "Undo"]]);
    // What the owner has to grade is a question.
    const asked = await t.one({ as: "Ines", say: "rear brake light out" });
    expect(asked.text).toBe("Noted. There is a question about it, for you alone.");
    const labels = (await t.one({ as: "Ines", press: button(asked, "Show me") })).actions.map(({ label }) => label);
    expect(labels).toEqual(["Do not ride", "Watch", "It was nothing", "Undo"]);
    await t.one({ as: "Mara", run: "/bike add name:Wren kind:chain-drive twin odometer:9,000 mi" });
    const other = await t.one({ as: "Mara", press: button(own, "Watch") });
    expect(other.text).toBe("Only the bike's owner can do that.");
    // A shared list is for everyone's eyes.
    const list = await t.one({ as: "Ines", run: "/due share:yes" });
    expect([list.text?.includes("spongy"), list.data.bikes[0].defects]).toEqual([false, []]);
  });
});

test("what was done and what it was are asked for again where they were left blank, and nothing is recorded", async () => {
  await withHeron(async (t) => {
    const noted = await t.one({ ...DM, say: "rear brake light out" });
    const graded = await t.one({ ...DM, press: button(noted, "Watch") });
    for (const did of ["", "   ", "–"]) {
      const refused = await t.one({ ...DM, fill: button(graded, "It is mended"), fields: { did } });
      expect(refused.text).toBe("What was done? Say it in a word or two, such as “new bulb”; nothing is recorded before.");
    }
    expect((await t.one({ ...DM, fill: button(graded, "It was nothing"), fields: { why: " " } })).text).toMatch(/^What was it\? Say it in a word or two/u);
    expect((await t.one({ ...DM, run: "/due" })).text).toContain("Watch: “rear brake light out”");
    const mended = await t.one({ ...DM, fill: button(graded, "It is mended"), fields: { did: "new bulb" } });
    expect(mended.data.closed).toMatchObject([{ words: "rear brake light out", state: "closed" }]);
  });
});

test("it was nothing, with what it was; and work of its kind asks whether it closes it", async () => {
  await withHeron(async (t) => {
    const noted = await t.one({ ...DM, say: "rear brake light out" });
    const closed = await t.one({ ...DM, fill: button(noted, "It was nothing"), fields: { why: "switch had come unplugged" } });
    expect(closed.text).toBe("Heron: “rear brake light out” is closed: switch had come unplugged. The record of it stays.");
    await t.one({ ...DM, say: "fork seal leaking" });
    const worked = await t.one({ ...DM, run: "/work did:fork oil at:14,400 mi" });
    expect(worked.text).toContain("Does this close: “fork seal leaking”?");
    const done = await t.one({ ...DM, press: button(worked, "Closes: fork seal leaking") });
    expect(done.data).toMatchObject({ state: "closed", closedBy: worked.data.work[0].id });
    await t.one({ ...DM, say: "horn doesn't work" });
    const due = await t.one({ ...DM, run: "/due" });
    const card = await t.one({ ...DM, press: button(due, "Heron: horn") });
    const watched = await t.one({ ...DM, press: button(card, "Watch") });
    const mended = await t.one({ ...DM, fill: button(watched, "It is mended"), fields: { did: "new fuse" } });
    expect(mended.data).toMatchObject({ work: [{ words: "new fuse", items: [] }], closed: [{ words: "horn doesn't work" }] });
  });
});

test("where it is in doubt the member is asked, and nothing is noted until the answer", async () => {
  await withHeron(async (t) => {
    const asked = await t.one({ ...DM, say: "left pannier lock broken on Heron" });
    expect(asked.data.is).toBe("asked");
    expect((await t.one({ ...DM, run: "/due" })).data.bikes[0].defects).toEqual([]);
    const noted = await t.one({ ...DM, press: button(asked, "Note it") });
    expect(noted.data.defects).toMatchObject([{ kind: null, words: "left pannier lock broken" }]);
    expect(await t.send({ as: "Ines", say: "why would a brake feel spongy?" })).toEqual([]);
  });
});

test("each of seven defects said at once has its button, and each on the due list", async () => {
  await withHeron(async (t) => {
    const wrong = [
      "front brake spongy",
      "headlight is out",
      "horn not working",
      "brake light not working",
      "left indicator not working",
      "oil leak",
      "chain is rusty",
    ];
    for (const each of wrong) await t.one({ ...DM, say: `${each} on Heron` });
    const due = await t.one({ ...DM, run: "/due" });
    const { defects } = due.data.bikes[0];
    expect(defects.length).toBeGreaterThan(5);
    expect(due.actions.filter(({ id }) => id.includes("defect-show"))).toHaveLength(defects.length);
  });
});
