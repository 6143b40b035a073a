// A new part closes what was wrong with the old one; what may as well be right again with the old is asked about.

import { describe, expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const say = (line: string) => t.one({ ...dm, say: line });
  return { t, say, due: async () => (await t.one({ ...dm, run: "/due" })).text ?? "" };
}

describe("a new one closes what was found on the old", () => {
  test.each([
    ["chain adjuster at its end", "new chain at 14,230 mi"],
    ["chain is rusty", "new chain and sprockets"],
    ["battery case is swollen", "new battery fitted"],
    ["battery leaking acid", "swapped the battery"],
    ["rear tyre is cracked", "new rear tyre at 14,230 mi"],
    ["rear tyre punctured", "rear tyre replaced"],
    ["squared off rear tyre", "new rear tyre"],
    ["front pads worn out", "new front pads"],
    ["brake hose cracked", "new brake hoses"],
  ])("“%s”, then “%s”", async (found, work) => {
    const { t, say, due } = await heron();
    await say(found);
    const said = await say(work);
    expect(said.data.closed).toMatchObject([{ words: found, state: "closed" }]);
    expect(said.data.mayClose).toEqual([]);
    expect(said.text).toContain("is closed by that work");
    expect(await due()).not.toContain(found);
    await t.one({ ...dm, press: button(said, "Undo") });
    expect(await due()).toContain(`“${found}”`);
    await t.close();
  });

  test.each([
    // At the other end, at an end that nobody named, by a look, and with a sprocket that may have stayed on.
    ["front tyre is cracked", "new rear tyre"],
    ["tyre is cracked", "new rear tyre"],
    ["battery is swollen", "checked the battery"],
    ["rear sprocket hooked", "new chain"],
    ["front pads worn out", "checked the front pads"],
  ])("“%s”, then “%s”: not by itself", async (found, work) => {
    const { t, say, due } = await heron();
    await say(found);
    expect((await say(work)).data.closed).toEqual([]);
    expect(await due()).toContain(`“${found}”`);
    await t.close();
  });

  test("what is found on the new one the same day stays open", async () => {
    const { t, say, due } = await heron();
    await say("new rear tyre at 14,230 mi");
    await say("rear tyre is cracked");
    expect(await due()).toContain("rear tyre is cracked");
    await t.close();
  });
});

describe("“It is mended”", () => {
  const mended = async (found: string, did: string) => {
    const { t, say } = await heron();
    let said = await say(found);
    if (said.actions.every(({ label }) => label !== "It is mended")) said = await t.one({ ...dm, press: button(said, "Watch") });
    const form = await t.one({ ...dm, fill: button(said, "It is mended"), fields: { did, at: "", on: "" } });
    await t.close();
    return { form, outcome: form.data.work?.[0]?.items?.[0]?.outcome };
  };
  test.each([
    ["front pads 0.5 mm", "new front pads", "replaced"],
    ["rear pads worn out", "rear pads", "replaced"],
    ["battery is swollen", "battery", "replaced"],
    ["battery is flat", "new battery", "replaced"],
  ])("of “%s” by “%s” is %s", async (found, did, outcome) => {
    expect((await mended(found, did)).outcome).toBe(outcome);
  });
  test("a flat battery may be charged or new: it is asked", async () => {
    const { form, outcome } = await mended("battery is flat", "battery");
    expect(form.data.refused).toMatchObject({ why: "new or mended" });
    expect(form.text).toContain("a new one, or is the old one right again?");
    expect(outcome).toBeUndefined();
  });
});

describe("a figure that was misread", () => {
  test("is taken back where its defect was nothing, and its line is as it was", async () => {
    const { t, say, due } = await heron();
    const before = await due();
    const said = await say("front pads 0.5 mm");
    expect(await due()).toContain("Front brake pads: front pad thickness 0.5 mm");
    const nothing = await t.one({ ...dm, fill: button(said, "It was nothing"), fields: { why: "misread" } });
    expect(nothing.data.figures).toMatchObject([{ kind: "pad thickness", place: "front" }]);
    expect(await due()).toContain("Front brake pads: front pad thickness 0.5 mm");
    await t.one({ ...dm, press: button(nothing, "Take back: front pad thickness 0.5 mm") });
    expect(await due()).toBe(before);
    await t.close();
  });
});

test("what its owner watches against what is said of it is called their choice", async () => {
  const { t, say } = await heron();
  const watched = await t.one({ ...dm, press: button(await say("front pads 0.5 mm"), "Watch") });
  expect(watched.text).toContain("You chose to watch it");
  expect(watched.text).not.toContain("first on /due");
  const light = await say("horn does not work");
  expect((await t.one({ ...dm, press: button(light, "Watch") })).text).toContain("It stays on /due, to be watched");
  await t.close();
});
