// Checks as a member walks through them: one section at a time, left and gone on with, and what they come to.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
const HERON = "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi";
type Point = { readonly key: string; readonly n: number; readonly answer: string | null; readonly vital: string | null };
const stepOf = (shown: Shown) => shown.data.step ?? shown.data;
const pointsOf = (shown: Shown): readonly Point[] => stepOf(shown).sections.flatMap((section: { points: readonly Point[] }) => section.points);
const answerTo = (shown: Shown, key: string): string | null => pointsOf(shown).find((point) => point.key === key)?.answer ?? null;

const withHeron = async (clock = "2026-11-26T09:00:00Z", file?: string): Promise<Talk> => {
  const t = await talk(clock, file);
  await t.one({ ...dm, run: HERON });
  return t;
};
const begin = (t: Talk, list: string, more = "") => t.one({ ...dm, run: `/check list:${list} bike:Heron${more}` });
const press = (t: Talk, shown: Shown, label: string) => t.one({ ...dm, press: button(shown, label) });
/** Answers every point of the list that is open as good, but for those named: one of them is put off, then what the plan wants is left. */
async function goodBut(t: Talk, shown: Shown, leave: readonly string[] = []): Promise<Shown> {
  const { check, rev } = stepOf(shown);
  const open = pointsOf(shown).filter(({ answer, key }) => answer === null && !leave.includes(key) && !key.startsWith("plan:"));
  const card = await t.one({ ...dm, pick: `1.check-answer.${check}..good.${rev}`, values: open.map(({ n }) => String(n)) });
  return press(t, card, "Later");
}

describe("a check out of storage", () => {
  test("shows one section at a time, the point that is next, what good looks like and how far it is", async () => {
    const t = await withHeron();
    const card = await begin(t, "out of storage");
    expect(card.text).toContain("Heron, out of storage\n");
    expect(card.text).toContain("Before the key, ");
    expect(card.text).toContain("Now: Mice and nests (engine cold)\n");
    expect(card.text).toContain("Good: No nest, no droppings, no gnawed wire or hose.");
    expect(card.text).not.toContain("Brakes,");
    expect(card.actions.map(({ label }) => label)).toEqual(
      expect.arrayContaining(["Good", "Needs work", "Later", "Note or photo", "Finish", "Another section"]),
    );
    await t.close();
  });

  test("a figure typed into the form, or written as a plain message, answers its point and is a reading like any other", async () => {
    const t = await withHeron();
    let card = await begin(t, "out of storage");
    const section = (name: string): string => {
      const to = card.actions.find(({ label }) => label === "Another section");
      return to?.options?.find(({ label }) => label.startsWith(name))?.value ?? "";
    };
    card = await t.one({ ...dm, pick: button(card, "Another"), values: [section("Tyres and wheels")] });
    card = await t.one({ ...dm, fill: button(card, "Write a figure"), fields: { figure0: "33 psi", figure1: "36 psi" } });
    expect(card.text).toContain("Read: front cold tyre pressure 33 psi and rear cold tyre pressure 36 psi.");
    expect((await t.one({ ...dm, run: "/reading" })).text).toContain("Front cold tyre pressure 33 psi, today");
    const logged = await t.one({ ...dm, say: "tread 4 mm front 3.5 mm rear on Heron" });
    card = await begin(t, "out of storage");
    expect(card.text).toContain("- Tread depth: measured");
    // What was read before a check began says nothing of today.
    await t.send({ advance: "P1D", asleep: true });
    expect(answerTo(await begin(t, "pre-trip"), "tyre-tread")).toBeNull();
    // Undone, it is open again.
    await press(t, logged, "Undo");
    expect(answerTo(await begin(t, "out of storage"), "tyre-tread")).toBeNull();
    await t.close();
  });

  test("a figure that cannot be read, and a strange one, save nothing and say what to do", async () => {
    const t = await withHeron();
    let card = await begin(t, "out of storage");
    card = await t.one({ ...dm, pick: button(card, "Another"), values: ["2"] });
    const refused = await t.one({ ...dm, fill: button(card, "Write a figure"), fields: { figure0: "soft", figure1: "" } });
    expect(refused.text).toContain("I cannot read “soft” as that. Type the figure with its unit");
    const asked = await t.one({ ...dm, fill: button(card, "Write a figure"), fields: { figure0: "330 psi", figure1: "" } });
    expect(asked.text).toContain("One of the figures is a question");
    expect(answerTo(asked, "tyre-pressures")).toBeNull();
    expect((await press(t, asked, "Answer the question")).text).toContain("outside what a motorcycle shows");
    await t.close();
  });

  test("ends with what stops the ride first, what was measured, what to buy and what was recorded; that can be undone", async () => {
    const t = await withHeron();
    let card = await begin(t, "out of storage");
    card = await press(t, card, "Good");
    card = await t.one({
      ...dm,
      fill: button(card, "Needs work"),
      fields: { what: "drip at the tap", grade: "do not ride", link: "https://example.org/photo" },
    });
    expect(card.text).toContain("- Leaks: needs work, do not ride “drip at the tap”");
    card = await goodBut(t, card, ["mirrors"]);
    const end = await press(t, card, "Finish");
    const lines = (end.text ?? "").split("\n");
    expect(lines.slice(1, 4)).toEqual(["Finished today.", "Do not ride Heron until this is put right:", "- Leaks: drip at the tap"]);
    expect(end.text).toMatch(/\n\d+ of \d+ points looked at, \d+ left: Mirrors, Engine oil and filter/u);
    expect(end.text).toContain("Measured: odometer 14,210 mi.");
    expect(end.text).toMatch(/Recorded into the plan: .*Brake fluid level/u);
    expect(end.text).toContain("no certificate");
    expect(end.text).toContain("https://example.org/photo");
    const due = async () => (await t.one({ ...dm, run: "/due bike:Heron" })).text ?? "";
    expect(await due()).toMatch(/Steering head bearings.*last done at 14,210 mi/u);
    expect((await press(t, end, "Undo what was recorded")).text).toContain("Undone for Heron");
    expect(await due()).not.toMatch(/Steering head bearings.*last done/u);
    await t.close();
  });

  test("with everything that matters looked at, nothing stops the ride; one tyre left open takes the word away", async () => {
    const t = await withHeron();
    let end = await press(t, await goodBut(t, await begin(t, "pre-ride"), ["horn"]), "Finish");
    expect(end.text).toContain("Nothing found that stops the ride.");
    expect(end.text).toMatch(/1 left: Horn\./u);
    let card = await press(t, end, "Open it again");
    expect(stepOf(card).state).toBe("open");
    card = await t.one({ ...dm, press: button(card, "Finish") });
    expect(card.text).toContain("Nothing found that stops the ride.");
    end = await press(t, await goodBut(t, await begin(t, "pre-trip"), ["tyre-condition"]), "Finish");
    expect(end.text).toContain("Nothing can be said of riding Heron yet: tyres and brakes not looked at in full.");
    expect(end.text).toContain("Look at these first: Tyres all round, Brake fluid,");
    expect(end.text).not.toContain("Nothing found");
    await t.close();
  });

  test("a plan line of the brakes or tyres left unanswered takes the word away as a point of theirs does", async () => {
    const t = await withHeron();
    await t.one({ ...dm, run: "/work did:brake fluid on:1 March 2024 bike:Heron" });
    const end = await press(t, await goodBut(t, await begin(t, "pre-trip")), "Finish");
    expect(end.text).not.toContain("Nothing found");
    expect(end.text).toMatch(/Look at these first: [^\n]*Brake fluid/u);
    await t.close();
  });

  test("a bare voltage is the one that the point in front of the member asks for, and is asked about without one", async () => {
    const t = await withHeron();
    expect((await t.one({ ...dm, say: "12.1 V" })).react).toBe("asked");
    let card = await begin(t, "out of storage");
    const section = card.actions.find(({ label }) => label === "Another section")?.options?.find(({ label }) => label.startsWith("Battery"))?.value ?? "";
    card = await t.one({ ...dm, pick: button(card, "Another"), values: [section] });
    for (let n = 0; n < 6 && stepOf(card).at?.key !== "battery-volts"; n++) card = await press(t, card, "Good");
    expect(stepOf(card).at?.key).toBe("battery-volts");
    const said = await t.one({ ...dm, say: "12.1 V" });
    expect([said.react, said.data.logged[0]?.kind]).toEqual(["logged", "battery voltage"]);
    await t.close();
  });

  test("what is near its limit is told at the end, with what to buy, though its point was let pass", async () => {
    const t = await withHeron();
    const card = await begin(t, "out of storage");
    await t.one({ ...dm, say: "tread 4 mm front 0.9 mm rear on Heron" });
    const end = await press(t, card, "Finish");
    expect(end.text).toMatch(/To watch:\n[^\n]*0\.9 mm[^\n]*near limit/u);
    expect(end.text).toMatch(/To buy: [^\n]*tyre/u);
    await t.close();
  });

  test("a pressure that nobody can judge does not answer its point, however often it is written", async () => {
    const t = await withHeron();
    let card = await begin(t, "pre-ride");
    const section = card.actions.find(({ label }) => label === "Another section")?.options?.find(({ label }) => label.startsWith("Tyres"))?.value ?? "";
    card = await t.one({ ...dm, pick: button(card, "Another"), values: [section] });
    for (let n = 0; n < 2; n++) {
      card = await t.one({ ...dm, fill: button(card, "Write a figure"), fields: { figure0: "25 psi", figure1: "26 psi" } });
      expect(answerTo(card, "tyre-pressures")).toBeNull();
    }
    await t.close();
  });

  test("shared with the group, what stops the ride is counted and not named", async () => {
    const t = await withHeron();
    let card = await begin(t, "pre-ride");
    card = await t.one({ ...dm, fill: button(card, "Needs work"), fields: { what: "fuel drips", grade: "do not ride" } });
    await press(t, card, "Finish");
    const shared = await t.one({ as: "Ines", run: "/check bike:Heron share:yes" });
    expect(shared.visibility).toBe("shared");
    expect(shared.text).toContain("One thing has to be put right before it is ridden; its rider knows which.");
    expect(shared.text).not.toMatch(/fuel drips|Leaks/u);
    expect((await t.one({ ...dm, run: "/check bike:Heron" })).text).toContain("- Leaks: fuel drips");
    await t.close();
  });
});

describe("what a check finds wrong is a defect", () => {
  const fault = (t: Talk, card: Shown, what: string, grade = "do not ride") => t.one({ ...dm, fill: button(card, "Needs work"), fields: { what, grade } });
  const due = async (t: Talk): Promise<string> => (await t.one({ ...dm, run: "/due bike:Heron" })).text ?? "";

  test("it stands on /due at once, follows the answer, and is taken back with it", async () => {
    const t = await withHeron();
    const card = await begin(t, "pre-ride");
    const { n } = stepOf(card).at as Point;
    const id = stepOf(card).check;
    const found = await fault(t, card, "drips at the tap");
    expect(await due(t)).toMatch(/drips at the tap/u);
    const again = await t.one({ ...dm, fill: `1.check-fault.${id}.${n}.${stepOf(found).rev}`, fields: { what: "weeps at the tap", grade: "watch" } });
    expect(await due(t)).toContain("weeps at the tap");
    expect(await due(t)).not.toContain("drips at the tap");
    await t.one({ ...dm, press: `1.check-answer.${id}.${n}.good.${stepOf(again).rev}` });
    expect(await due(t)).not.toContain("weeps at the tap");
    await t.close();
  });

  test("one that is not to be ridden on weighs on the next check until work closes it", async () => {
    const t = await withHeron();
    const card = await begin(t, "after a fall");
    await press(t, await fault(t, card, "front brake spongy"), "Finish");
    const next = await begin(t, "pre-ride");
    expect(next.text).toContain("Open from before:\n- front brake spongy: do not ride");
    const end = await press(t, await goodBut(t, next, ["horn"]), "Finish");
    expect(end.text).toContain("Do not ride Heron: a defect stands from before.");
    expect(end.text).not.toContain("Nothing found");
    await t.close();
  });
});

describe("a figure is judged on the spot", () => {
  const at = (shown: Shown, key: string): number => pointsOf(shown).find((point) => point.key === key)?.n ?? -1;
  const measured = (t: Talk, card: Shown, key: string, figures: readonly string[]) =>
    t.one({
      ...dm,
      fill: `1.check-measure.${stepOf(card).check}.${at(card, key)}.${stepOf(card).rev}`,
      fields: Object.fromEntries(figures.map((figure, n) => [`figure${n}`, figure])),
    });

  test("tread on the bars fails its point, stops the ride and is a defect until work closes it", async () => {
    const t = await withHeron();
    const card = await measured(t, await begin(t, "pre-trip"), "tyre-tread", ["4 mm", "0.5 mm"]);
    expect(card.text).toMatch(/rear tread/iu);
    expect(answerTo(card, "tyre-tread")).toBe("needs work");
    const end = await press(t, await goodBut(t, card, ["horn"]), "Finish");
    expect(end.text).toContain("Do not ride Heron until this is put right:\n- Tread depth\n");
    expect(end.text).toMatch(/0\.5 mm/u);
    expect(end.text).not.toContain("Nothing found");
    expect((await t.one({ as: "Ines", run: "/check bike:Heron share:yes" })).text).not.toMatch(/tread depth|0\.5 mm|beyond limit/iu);
    expect((await t.one({ ...dm, run: "/due bike:Heron" })).text).toMatch(/do not ride/iu);
    await t.close();
  });

  test("a battery that was only measured is not recorded as looked at by the check", async () => {
    const t = await withHeron();
    const card = await measured(t, await begin(t, "pre-trip"), "battery-volts", ["12.7 V"]);
    const end = await press(t, await press(t, card, "Good"), "Finish");
    expect(end.data.recorded.map(({ item }: { item: string }) => item)).not.toContain("battery.test");
    await t.close();
  });

  test("pressures that nobody can judge leave the word to the member", async () => {
    const t = await withHeron();
    let card = await measured(t, await begin(t, "pre-ride"), "tyre-pressures", ["33 psi", "36 psi"]);
    expect(answerTo(card, "tyre-pressures")).toBeNull();
    card = await t.one({ ...dm, press: `1.check-answer.${stepOf(card).check}.${at(card, "tyre-pressures")}.good.${stepOf(card).rev}` });
    expect(answerTo(card, "tyre-pressures")).toBe("good");
    await t.close();
  });
});

describe("left and gone on with", () => {
  test("days later, after a restart at every step, no answer is lost", async () => {
    const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
    const file = path.join(folder, "a.sqlite");
    let t = await withHeron("2026-11-26T09:00:00Z", file);
    let card = await begin(t, "out of storage");
    const said = new Map<string, string>();
    const steps = ["Good", "Needs work", "Good", "Later", "Not fitted", "Good"];
    for (const [n, label] of steps.entries()) {
      const at = stepOf(card).at as Point;
      card =
        label === "Needs work"
          ? await t.one({ ...dm, fill: button(card, label), fields: { what: "looks odd", grade: "watch" } })
          : await press(t, card, card.actions.some((action) => action.label === label) ? label : "Good");
      said.set(at.key, answerTo(card, at.key) ?? "");
      await t.close();
      t = await talk(`2026-12-0${n + 1}T09:00:00Z`, file);
      const again = await begin(t, "out of storage");
      expect([...said].map(([key]) => answerTo(again, key))).toEqual([...said.values()]);
      expect(stepOf(again).at.key).toBe(stepOf(card).at.key);
      card = again;
    }
    expect(new Set(said.values())).toEqual(new Set(["good", "needs work", "later", "not fitted"]));
    expect((await t.one({ ...dm, run: "/check" })).text).toContain("- Heron, out of storage: 5 of ");
    await t.close();
    await rm(folder, { recursive: true });
  });

  test("a press told of twice acts once, and one on an old card overwrites nothing", async () => {
    const t = await withHeron();
    const first = await begin(t, "pre-ride");
    const { key } = stepOf(first).at as Point;
    await t.one({ ...dm, press: button(first, "Good"), id: "p1" });
    const twice = await t.one({ ...dm, press: button(first, "Later"), id: "p1" });
    expect(answerTo(await begin(t, "pre-ride"), key)).toBe("good");
    expect(twice.data).toMatchObject({ refused: { why: "heard already" } });
    const stale = await press(t, first, "Later");
    expect(answerTo(stale, key)).toBe("good");
    await t.close();
  });

  test("Finish and “open it again” on an old card finish and open nothing, and say so", async () => {
    const t = await withHeron();
    const first = await begin(t, "pre-ride");
    const second = await press(t, first, "Good");
    const stale = await press(t, first, "Finish");
    expect(stale.text).toContain("That button was on an older card, so it changed nothing.");
    expect(stepOf(stale)).toMatchObject({ state: "open", rev: stepOf(second).rev });
    const finished = await press(t, stale, "Finish");
    expect(stepOf(finished).state).toBe("finished");
    expect(finished.text).not.toContain("older card");
    // A second press of it finds it finished, and changes nothing.
    expect((await press(t, stale, "Finish")).text).toContain("older card");
    const open = await press(t, finished, "Open it again");
    expect(stepOf(open).state).toBe("open");
    const again = await press(t, open, "Finish");
    expect(stepOf(await press(t, finished, "Open it again"))).toMatchObject({ state: "finished", rev: stepOf(again).rev });
    await t.close();
  });

  test("nobody else answers it", async () => {
    const t = await withHeron();
    const card = await begin(t, "pre-ride");
    expect((await t.one({ as: "Tom", in: "dm", press: button(card, "Good") })).data.refused.why).toBe("not yours");
    await t.close();
  });
});

describe("made for the bike", () => {
  test("what lay-up put in is asked for in spring, with the note made then; what was found is asked again", async () => {
    const t = await withHeron("2026-10-12T09:00:00Z");
    let card = await begin(t, "lay-up");
    const at = (key: string): number => pointsOf(card).find((point) => point.key === key)?.n ?? -1;
    const id = stepOf(card).check;
    card = await t.one({ ...dm, fill: `1.check-note.${id}.${at("stop-openings")}.1`, fields: { note: "red rags, two" } });
    card = await t.one({ ...dm, press: `1.check-answer.${id}.${at("stop-openings")}.good.${stepOf(card).rev}` });
    card = await t.one({ ...dm, fill: `1.check-fault.${id}.${at("bare-metal")}.${stepOf(card).rev}`, fields: { what: "rust under the tank", grade: "watch" } });
    const end = await press(t, card, "Finish");
    expect(end.text).toContain("Not all of it is done.");
    await press(t, end, "Heron is laid up now");
    await t.send({ advance: "P150D", asleep: true });
    const spring = await begin(t, "out of storage");
    expect(spring.text).toContain("Found last time, 0 of 1:\n- Bare metal: now");
    expect(spring.text).toContain("Last time (lay-up, 12 October): needs work. “rust under the tank”");
    const rags = await t.one({ ...dm, press: `1.check-answer.${stepOf(spring).check}.0.good.1` });
    const to = pointsOf(rags).find((point) => point.key === "stopped-openings")?.n;
    let walked = rags;
    while ((stepOf(walked).at as Point).n !== to) walked = await press(t, walked, "Good");
    expect(walked.text).toContain("Done at lay-up, 12 October; undo it now. “red rags, two”");
    await t.close();
  });

  test("what is overdue by the plan joins, and done there it is recorded there", async () => {
    const t = await withHeron("2026-11-26T09:00:00Z");
    await t.one({ ...dm, run: "/work did:brake fluid on:spring 2023 how:receipt" });
    let card = await begin(t, "pre-ride");
    const join = pointsOf(card).find((point) => point.key === "plan:brake-fluid.replace");
    expect(join).toBeDefined();
    const rows = card.actions.find(({ label }) => label === "Another section")?.options ?? [];
    card = await t.one({ ...dm, pick: button(card, "Another"), values: [rows.find(({ label }) => label.startsWith("From the plan"))?.value ?? ""] });
    expect(card.text).toContain("Overdue by the plan. “Done” records it as done today");
    card = await press(t, card, "Done");
    await press(t, card, "Finish");
    expect((await t.one({ ...dm, run: "/due bike:Heron" })).text).toMatch(/Brake fluid: due.*last done 26 November/u);
    await t.close();
  });

  test("a bike that is not bought yet is looked at by its kind, and nothing is logged for any of yours", async () => {
    const t = await withHeron();
    expect((await t.one({ ...dm, run: "/check list:buying used bike:Red one" })).text).toContain("say what kind it is");
    let card = await t.one({ ...dm, run: "/check list:buying used bike:Red one kind:dual-purpose single" });
    expect(card.text).toContain("Red one, buying a used one");
    expect(pointsOf(card).some((point) => point.key === "spokes")).toBe(true);
    const tread = pointsOf(card).find((point) => point.key === "tyre-tread")?.n;
    card = await t.one({ ...dm, fill: `1.check-measure.${stepOf(card).check}.${tread}.1`, fields: { figure0: "4 mm", figure1: "1.5 mm" } });
    expect(card.text).toContain("Read: front 4 mm, rear 1.5 mm.");
    expect((await t.one({ ...dm, run: "/reading" })).text).not.toContain("tread");
    expect((await press(t, card, "Finish")).text).toContain("Measured: Tread depth front 4 mm, rear 1.5 mm.");
    await t.close();
  });
});
