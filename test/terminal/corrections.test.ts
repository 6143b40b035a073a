// Slips, corrections and second thoughts: everything logged can be undone, and nothing that was said is lost on the way.

import { describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function withHeron(use: (t: Talk) => Promise<void>, odometer = "14,210 mi"): Promise<void> {
  const t = await talk();
  try {
    await t.one({ ...dm, run: `/bike add name:Heron kind:chain-drive twin odometer:${odometer}` });
    await use(t);
  } finally {
    await t.close();
  }
}
const say = (t: Talk, text: string, more: Readonly<Record<string, unknown>> = {}): Promise<Shown> => t.one({ ...dm, say: text, ...more });
const typed = async (t: Talk): Promise<string[]> => (await t.one({ ...dm, run: "/reading" })).data.bikes[0].readings.map((r: { typed: string }) => r.typed);
const figure = async (t: Talk): Promise<number> => (await t.one({ ...dm, run: "/due" })).data.bikes[0].odometer.figure;
const line = async (t: Talk, item: string) => (await t.one({ ...dm, run: "/due" })).data.bikes[0].dues.find((each: { item: string }) => each.item === item);
const statuses = async (t: Talk): Promise<string[]> => (await t.one({ ...dm, run: "/due" })).data.bikes[0].dues.map((each: { status: string }) => each.status);

describe("work with a date as vague as the truth", () => {
  test.each([
    ["changed brake fluid in May 2025", "brake-fluid.replace", "2025-05-01", "2025-05-31"],
    ["coolant changed spring 2025", "coolant.replace", "2025-03-01", "2025-05-31"],
    ["did the oil last spring", "engine-oil.replace", "2026-03-01", "2026-05-31"],
    ["did the oil in 2024", "engine-oil.replace", "2024-01-01", "2024-12-31"],
    ["changed the oil last week", "engine-oil.replace", "2026-11-16", "2026-11-22"],
  ])("%s", async (text, item, from, to) => {
    await withHeron(async (t) => {
      const { data } = await say(t, text);
      expect([data.work[0].items[0].item, data.work[0].on.from, data.work[0].on.to]).toEqual([item, from, to]);
    });
  });

  test("a reading needs its day: a span is asked about, a day to come is said to be one", async () => {
    await withHeron(async (t) => {
      expect((await say(t, "14,820 mi on Heron last spring")).text).toContain("“last spring”: which day is that?");
      expect((await say(t, "14,950 mi on Heron tomorrow")).text).toContain("that day is still to come");
      expect(await typed(t)).toEqual(["14,210 mi"]);
    });
  });

  test("work from before the first reading leaves its distance leg unjudged, and is never overdue for it", async () => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/work did:oil on:spring 2026 how:receipt" });
      const oil = await line(t, "engine-oil.replace");
      expect([oil.status, oil.legs.map((leg: { by: string; state: string }) => `${leg.by} ${leg.state}`)]).toEqual([
        "good",
        ["distance cannot tell", "date ahead"],
      ]);
      await t.one({ ...dm, run: "/work did:valves on:spring 2026" });
      expect(await line(t, "valve-clearance.adjust")).toMatchObject({ status: "no record", because: { why: "unplaced" } });
      expect((await t.one({ ...dm, run: "/due" })).text).toContain("Last done spring 2026, at what odometer is not known; due at 22,210 mi at the latest");
      // An interval beyond the first reading it is due whatever the figure was.
      await say(t, "15,600 mi");
      await t.send({ advance: "P2D" });
      await say(t, "18,210 mi");
      expect((await line(t, "engine-oil.replace")).status).toBe("due");
    });
  });
});

describe("work said with a reading", () => {
  test.each([
    ["new front tyre on Heron, 14,260", ["front-tyre.replace"]],
    ["replaced brake pads on Heron at 14,270", ["front-pads.measure", "rear-pads.measure"]],
    ["new battery on Heron", ["battery.test"]],
    ["changed front pads and rear pads at 14,300", ["front-pads.measure", "rear-pads.measure"]],
  ])("%s", async (text, items) => {
    await withHeron(async (t) => {
      const { data } = await say(t, text);
      expect(data.work[0].items.map((each: { item: string; outcome: string }) => each.item)).toEqual(items);
      expect(data.work[0].items[0].outcome).toBe("replaced");
    });
  });

  test("work on something that the plan does not name holds the reading with it: all or none", async () => {
    await withHeron(async (t) => {
      expect((await say(t, "replaced the flux hose on Heron, 14,270 mi")).text).toContain("I find nothing of that name in its plan");
      expect(await typed(t)).toEqual(["14,210 mi"]);
    });
  });

  test("a verb that does not fit the thing is asked about, with what is near it", async () => {
    await withHeron(async (t) => {
      const asked = await say(t, "bled the front brake");
      expect(asked.text).toContain("which of these was done?");
      expect(asked.actions.flatMap((action) => action.options?.map((option) => option.label) ?? [action.label])).toContain("Brake fluid");
      expect((await t.one({ ...dm, press: button(asked, "Brake fluid") })).text).toBe("Heron: Brake fluid, done today. Recorded.");
    });
  });

  test("what could not be done is not called done", async () => {
    await withHeron(async (t) => {
      const noted = await t.one({ ...dm, run: "/work did:valves at:14,300 mi outcome:could not do" });
      expect(noted.text).toBe("Heron: Valve clearance, could not be done today at 14,300 mi. Noted; it stays as it stood.");
    });
  });

  test("a pressure read warm is not kept as a cold one", async () => {
    await withHeron(async (t) => {
      const asked = await say(t, "33 psi front 36 rear, tyres warm");
      expect(asked.text).toContain("was read warm, and a pressure is judged cold");
      expect(await typed(t)).toEqual(["14,210 mi"]);
      expect((await t.one({ ...dm, press: button(asked, "It was read cold") })).data.readings).toHaveLength(2);
    });
  });
});

describe("figures that do not fit", () => {
  test("above a later reading is said so, and the later one can be the slip", async () => {
    await withHeron(async (t) => {
      await say(t, "14,820 mi");
      const asked = await say(t, "14,900 mi yesterday");
      expect(asked.text).toContain("is above what the dial showed later. A later one was 14,210 mi, today");
      await t.one({ ...dm, press: button(asked, "Let it go") });
      const work = await say(t, "did the oil yesterday at 14,900");
      expect(work.actions.map((action) => action.label)).toContain("Record it without the figure");
      const recorded = await t.one({ ...dm, press: button(work, "Record it without") });
      expect(recorded.data.work[0]).toMatchObject({ dial: null, on: { from: "2026-11-24" } });
    });
  });

  test("work typed again from a command brings back all that was typed", async () => {
    await withHeron(async (t) => {
      const asked = await t.one({ ...dm, run: "/work did:coolant at:99,000 mi on:yesterday" });
      const form = asked.actions.find((action) => action.label === "Type it again") as unknown as { fields: { value: string }[] };
      expect(form.fields[0]?.value).toBe("did coolant at 99,000 mi yesterday");
    });
  });

  test("the earlier reading was wrong: it says what no longer counts, and undo restores it", async () => {
    await withHeron(async (t) => {
      await say(t, "14,900 mi");
      const asked = await say(t, "14,500 mi");
      const logged = await t.one({ ...dm, press: button(asked, "The earlier reading was wrong") });
      expect(logged.text).toBe("Heron: odometer 14,500 mi, today. Logged.\nOdometer 14,900 mi of today no longer counts.");
      const undone = await t.one({ ...dm, press: button(logged, "Undo") });
      expect(undone.text).toContain("Odometer 14,900 mi stands again.");
      expect(await figure(t)).toBe(14_900);
    });
  });
});

describe("a new odometer", () => {
  test("goes on from where the old one ended, and undo brings the old one back", async () => {
    await withHeron(async (t) => {
      const before = await statuses(t);
      await t.send({ advance: "P5D" });
      const asked = await say(t, "10 mi on Heron");
      const logged = await t.one({ ...dm, fill: button(asked, "The odometer was replaced"), fields: { last: "14,300 mi" } });
      expect(await figure(t)).toBe(10);
      expect((await t.one({ ...dm, run: "/due" })).text).toContain("next at 1,710 mi");
      await t.one({ ...dm, press: button(logged, "Undo") });
      expect(await figure(t)).toBe(14_210);
      expect(await statuses(t)).toEqual(before);
      expect((await say(t, "14,250 mi on Heron")).data.is).toBe("logged");
    });
  });

  test("noted twice on one day is one dial, the second time's", async () => {
    await withHeron(async (t) => {
      const asked = await say(t, "3 mi on Heron");
      await t.one({ ...dm, fill: button(asked, "The odometer was replaced"), fields: {} });
      const noted = await t.one({ ...dm, run: "/bike odometer bike:Heron last:14,300 mi now:5 km unit:km why:replaced" });
      expect(noted.text).toContain("It takes the place of the one noted earlier that day.");
      expect(await statuses(t)).not.toContain("overdue");
      expect(await figure(t)).toBe(5);
      await t.one({ ...dm, press: button(noted, "Undo") });
      expect(await statuses(t)).not.toContain("overdue");
    });
  });

  test("an old figure that does not fit its readings is refused", async () => {
    await withHeron(async (t) => {
      expect((await t.one({ ...dm, run: "/bike odometer last:90,000 mi now:3 mi" })).text).toContain("is a long way from the last reading");
      expect((await t.one({ ...dm, run: "/bike odometer last:9,000 mi now:3 mi" })).text).toContain("is below the last reading");
      expect(await figure(t)).toBe(14_210);
    });
  });
});

describe("an edited message", () => {
  test("is read as on its own day, and what it logged stands until the new version is sure", async () => {
    await withHeron(async (t) => {
      await say(t, "15,000 mi");
      await t.send({ advance: "P2D" });
      await say(t, "15,300 mi on Heron", { id: "M1" });
      await t.send({ advance: "P3D" });
      await say(t, "15,500 mi on Heron");
      const asked = await t.one({ ...dm, edit: "M1", say: "15,600 mi on Heron" });
      expect(asked.text).toContain("is above what the dial showed later");
      await t.one({ ...dm, press: button(asked, "Let it go") });
      expect(await typed(t)).toEqual(["15,500 mi", "15,300 mi", "15,000 mi", "14,210 mi"]);
      const amended = await t.one({ ...dm, edit: "M1", say: "15,200 mi on Heron" });
      expect(amended.data.readings[0]).toMatchObject({ typed: "15,200 mi", on: "2026-11-27" });
      expect(await typed(t)).toEqual(["15,500 mi", "15,200 mi", "15,000 mi", "14,210 mi"]);
    });
  });
});

describe("small things that matter", () => {
  test("the note in a channel leads to what it is about", async () => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/work did:oil at:14,300 mi" });
      await t.send({ advance: "P2D" });
      await say(t, "16,500 mi");
      await t.send({ advance: "P2D" });
      const note = await t.one({ as: "Ines", say: "18,301 mi on Heron" });
      expect(note.text).toBe("Logged. Something on Heron wants a look.");
      const shown = await t.one({ as: "Ines", press: button(note, "Show me") });
      expect(shown.text).toContain("Heron: Front brake pads, now overdue.");
      expect(shown.actions.map((action) => action.label)).toContain("What is due");
    });
  });

  test("points stand in the unit of the dial, distances in the member's", async () => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/remind distance:km" });
      const done = await t.one({ ...dm, run: "/work did:oil at:14,300 mi" });
      expect(done.text).toContain("done today at 14,300 mi");
      expect((await t.one({ ...dm, run: "/due" })).text).toContain("Engine oil and filter: due at 18,300 mi, last done at 14,300 mi; 6,437 km to go");
    });
  });

  test.each([
    ["A\u202eB", /hidden marks/],
    ["oil", /a word that I read as a job/],
    ["front", /a word that I read as a job/],
    ["Tuesday", /a word that I read as a job/],
  ])("a bike cannot be called %s, when added or later", async (name, sentence) => {
    await withHeron(async (t) => {
      expect((await t.one({ ...dm, run: `/bike add name:${name} kind:chain-drive twin odometer:3 mi` })).text).toMatch(sentence);
      expect((await t.one({ ...dm, run: `/bike change bike:Heron name:${name}` })).text).toMatch(sentence);
    });
  });
});
