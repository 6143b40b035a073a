// A finished check as a picture: a mark a point in its section, what stops the ride first, and to others never its name.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CheckDrawing, drawCheck, type PointMark } from "../../src/picture/check-drawing.ts";
import { INK } from "../../src/picture/look.ts";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";
import { circlesOf, polygonsOf, soundly, textsOf } from "./read-svg.ts";

const drawing: CheckDrawing = {
  title: "Heron, out of storage, 26 November 2026",
  says: "Do not ride Heron until this is put right: Leaks: drip at the tap.",
  rows: [
    { name: "Before the key", beside: "3 of 4", marks: ["looked", "needs work", "looked", "left"] },
    { name: "Lights", beside: "0 of 2", marks: ["left", "left"] },
  ],
  meaning: { looked: "looked at", "needs work": "needs work", left: "not looked at yet" },
  told: ["Measured: front cold tyre pressure 33 psi."],
  notes: ["This is what you saw on the day, no certificate."],
};

describe("the drawing", () => {
  test("has a mark a point, one of each kind in the legend, and all that is told", () => {
    const svg = drawCheck(drawing);
    soundly(svg);
    expect(circlesOf(svg).filter(({ color }) => color === INK.first)).toHaveLength(2 + 1);
    expect(polygonsOf(svg).filter(({ color }) => color === INK.second)).toHaveLength(1 + 1);
    const said = textsOf(svg)
      .map(({ text }) => text)
      .join(" ");
    for (const each of [drawing.title, drawing.says, "3 of 4", ...drawing.told, ...drawing.notes, "not looked at yet"]) expect(said).toContain(each);
  });
  test("whatever is in it stays on the page", () => {
    const text = fc.string({ minLength: 1, maxLength: 90, unit: fc.constantFrom(..."Wi 1/-&<é") }).filter((each) => each.trim() !== "");
    const mark = fc.constantFrom<PointMark>("looked", "needs work", "left");
    const row = fc.record({ name: text, beside: fc.constant("12 of 40"), marks: fc.array(mark, { minLength: 1, maxLength: 60 }) });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 12 }), text, fc.array(text, { maxLength: 5 }), (rows, says, told) =>
        soundly(drawCheck({ ...drawing, rows, says, told })),
      ),
      { numRuns: 40 },
    );
  });
  test("drawn as it was", () => {
    expect(drawCheck(drawing).replaceAll("><", ">\n<")).toMatchSnapshot();
  });
});

describe("the picture of a check", () => {
  const dm = { as: "Ines", in: "dm" };
  async function finished(t: Talk): Promise<Shown> {
    await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    let card = await t.one({ ...dm, run: "/check list:out of storage bike:Heron" });
    card = await t.one({ ...dm, press: button(card, "Good") });
    card = await t.one({ ...dm, fill: button(card, "Needs work"), fields: { what: "drip at the tap", grade: "do not ride", link: "" } });
    return t.one({ ...dm, press: button(card, "Finish") });
  }
  test("names to its rider what stops the ride, and to others only that something does", async () => {
    const t = await talk("2026-11-26T09:00:00Z");
    expect((await finished(t)).text).toContain("To show it to your group, without what stops the ride: /check bike:Heron share:yes.");
    const own = await t.one({ ...dm, run: "/check bike:Heron" });
    const shared = await t.one({ as: "Ines", run: "/check bike:Heron share:yes" });
    expect([own.visibility, shared.visibility]).toEqual(["private", "shared"]);
    const [ownAlt, sharedAlt] = [own.files[0]?.alt ?? "", shared.files[0]?.alt ?? ""];
    expect(ownAlt).toContain("Do not ride Heron until this is put right: Leaks: drip at the tap. Before the key: 3 of");
    expect(sharedAlt).toContain("One thing has to be put right before it is ridden; its rider knows which. Before the key: 3 of");
    expect(`${shared.text} ${sharedAlt}`).not.toMatch(/leak|drip/iu);
    await t.close();
  });
});
