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

  test("what is said of one bike stands in the unit of its dial, points and distances alike, whatever the member reads distances in", async () => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/remind distance:km" });
      const done = await t.one({ ...dm, run: "/work did:oil at:14,300 mi" });
      expect(done.text).toContain("done today at 14,300 mi");
      expect((await t.one({ ...dm, run: "/due" })).text).toContain("Engine oil and filter: due at 18,300 mi, last done at 14,300 mi; 4,000 mi to go");
      for (const [run, more] of [
        ["/due", {}],
        ["/due until:2027-11-25", {}],
        ["/due until:20,000 mi", {}],
        ["/bike parts", {}],
        ["/due", { in: "g1" }],
      ] as const) {
        const { text } = await t.one({ ...dm, run, ...more });
        expect([run, /\d km\b/u.exec(text ?? "")?.[0]]).toEqual([run, undefined]);
      }
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

describe("several jobs, dates and bikes in one message", () => {
  const jobs = (shown: Shown): string[] =>
    shown.data.work.map(
      (work: { items: { item: string }[]; on: { from: string }; dialTyped?: string; dial: number | null }) =>
        `${work.items.map((each) => each.item).join("+")} ${work.on.from} ${work.dial === null ? "-" : Math.round(work.dial / 16_093_440)}`,
    );

  test.each([
    ["did the oil at 14,100 in October", ["engine-oil.replace 2026-10-01 14100"]],
    [
      "did the oil and filter at 13,900 in October, brake fluid spring 2025 and coolant last week; 14,300 mi today",
      ["engine-oil.replace 2026-10-01 13900", "brake-fluid.replace 2025-03-01 -", "coolant.replace 2026-11-16 -"],
    ],
    [
      "changed the oil in March, coolant last week and the plugs in 2024",
      ["engine-oil.replace 2026-03-01 -", "coolant.replace 2026-11-16 -", "spark-plugs.replace 2024-01-01 -"],
    ],
    ["replaced front tyre yesterday and rear tyre last month", ["front-tyre.replace 2026-11-24 -", "rear-tyre.replace 2026-10-01 -"]],
    ["oil at 13,900 last May, tyres 2022", ["engine-oil.replace 2026-05-01 13900", "front-tyre.replace+rear-tyre.replace 2022-01-01 -"]],
  ])("%s", async (text, expected) => {
    await withHeron(async (t) => {
      expect(jobs(await say(t, text))).toEqual(expected);
    });
  });

  test.each([
    ["changed the oil on Heron and Wren", ["Heron engine-oil.replace", "Wren engine-oil.replace"]],
    ["did the oil on Heron and the belt on Wren", ["Heron engine-oil.replace", "Wren drive-belt.replace"]],
    ["changed the oil on Heron at 14,330 and changed the belt on Wren at 20,070 km", ["Heron engine-oil.replace 14330", "Wren drive-belt.replace 20070"]],
    ["Heron: oil changed at 14,330, Wren: belt changed at 20,070 km", ["Heron engine-oil.replace 14330", "Wren drive-belt.replace 20070"]],
  ])("%s", async (text, expected) => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/bike add name:Wren kind:belt-drive cruiser odometer:20,000 km" });
      let answer = await say(t, text);
      // "The belt" may be a new one or a look at it: asked, and answered.
      if (answer.data.is === "asked") answer = await t.one({ ...dm, press: button(answer, "New drive belt") });
      const bikes = new Map(answer.data.bikes.map((bike: { id: string; nickname: string; unit: string }) => [bike.id, bike]));
      const said = answer.data.work.map((work: { bike: string; items: { item: string }[]; dial: number | null }) => {
        const bike = bikes.get(work.bike) as { nickname: string; unit: string };
        const figure = work.dial === null ? "" : ` ${Math.round(work.dial / (bike.unit === "mi" ? 16_093_440 : 10_000_000))}`;
        return `${bike.nickname} ${work.items.map((each) => each.item).join("+")}${figure}`;
      });
      expect(said).toEqual(expected);
    });
  });

  test.each([
    "14,318 mi on Heron, replaced the frobnicator and the oil",
    "did the widget at 14,317 on Heron",
    "14,340 mi and 34 psi front, did the frobnicator",
  ])("%s is held whole", async (text) => {
    await withHeron(async (t) => {
      expect((await say(t, text)).data.is).toBe("asked");
      expect(await typed(t)).toEqual(["14,210 mi"]);
    });
  });

  test("a command names what it does not know", async () => {
    await withHeron(async (t) => {
      expect((await t.one({ ...dm, run: "/work did:oil and unicorn" })).text).toContain("I find no “unicorn”");
    });
  });

  test.each(["32 front 40 rear after ride", "front 35 psi straight off the motorway"])("%s is no cold pressure", async (text) => {
    await withHeron(async (t) => {
      expect((await say(t, text)).text).toContain("was read warm");
    });
  });
});

describe("second thoughts", () => {
  test("a reminder's Done asks which, takes one, and only once", async () => {
    const t = await talk("2026-11-05T10:00:00Z");
    const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    await t.one({ ...dm, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "10 December 2024", "coolant.replace": "10 December 2024" } });
    const [reminder] = await t.send({ advance: "P14D" });
    const done = button(reminder as Shown, "Done");
    for (const what of ["nonsense", ""]) expect((await t.one({ ...dm, fill: done, fields: { what } })).text).toContain("no choice for “what”");
    expect((await t.one({ ...dm, fill: done, fields: { what: "coolant.replace" } })).text).toMatch(/^Heron: Coolant, done today/);
    expect((await t.one({ ...dm, fill: done, fields: { what: "all" } })).text).toMatch(/^Heron: Brake fluid, done today/);
    expect((await t.one({ ...dm, fill: done, fields: { what: "all" } })).text).toContain("done already");
    await t.close();
  });

  test("what was filled in about the past and sent twice, as from two devices, is on record once", async () => {
    const t = await talk("2026-11-05T10:00:00Z");
    const added = await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
    const fill = button(added, "Fill in");
    const fields = { "brake-fluid.replace": "spring 2023", "engine-oil.replace": "at 12,080, last May, receipt" };
    const first = await t.one({ ...dm, fill, fields });
    expect((await t.one({ ...dm, fill, fields })).text).toBe(first.text);
    const records = () => t.open.store.read(async (q) => [...(await q.work.ofBikes([added.data.bike])).values()].flat());
    expect(await records()).toHaveLength(2);
    // Another answer about the same job is news.
    await t.one({ ...dm, fill, fields: { "brake-fluid.replace": "spring 2024" } });
    expect(await records()).toHaveLength(3);
    await t.close();
  });

  test("a refused new odometer changes nothing, and names figures with their unit", async () => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/bike odometer last:14,300 mi now:12 km unit:km" });
      const refused = await t.one({ ...dm, run: "/bike odometer last:11 mi now:0 km unit:km" });
      expect(refused.text).toBe("“11 mi” is below the last reading, 14,210 mi. Check the figure and type it again.");
      expect((await typed(t)).toSorted()).toEqual(["12 km", "14,210 mi"]);
      expect(await figure(t)).toBe(12);
    });
  });

  test("a new odometer that was read since is not undone under its readings", async () => {
    await withHeron(async (t) => {
      await t.send({ advance: "P2D" });
      const noted = await t.one({ ...dm, run: "/bike odometer last:14,300 mi now:12 mi" });
      await t.send({ advance: "P2D" });
      const later = await say(t, "500 mi");
      expect((await t.one({ ...dm, press: button(noted, "Undo") })).text).toContain("logged on that new odometer since");
      await t.one({ ...dm, press: button(later, "Undo") });
      await t.one({ ...dm, press: button(noted, "Undo") });
      expect(await figure(t)).toBe(14_210);
    });
  });

  test("a message taken back and edited stays so and says how to log it; taken from the menu it is logged anew", async () => {
    await withHeron(async (t) => {
      await say(t, "14,320 mi on Heron", { id: "x3" });
      const asked = await t.one({ ...dm, delete: "x3" });
      await t.one({ ...dm, press: button(asked, "Withdraw") });
      const edit = await t.one({ ...dm, edit: "x3", say: "14,330 mi on Heron" });
      expect([edit.data.is, edit.text]).toEqual(["taken back", expect.stringContaining("use “Log this message” on it")]);
      expect((await t.one({ ...dm, menu: "x3" })).data.readings[0].typed).toBe("14,330 mi");
    });
  });

  test("a sold bike is said to be sold", async () => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/bike change bike:Heron state:sold" });
      for (const input of [{ say: "14,500 mi on Heron" }, { run: "/due" }, { run: "/reading" }])
        expect((await t.one({ ...dm, ...input })).text).toBe(
          "Heron: sold or retired. If it is back, say so with /bike change state:riding; a new one comes with /bike add.",
        );
    });
  });

  test("reminders in a channel name their rider; another's button is refused in plain words", async () => {
    const t = await talk("2026-11-05T10:00:00Z");
    for (const as of ["Ines", "Tomasz"]) {
      await t.one({ as, run: "/remind by:channel" });
      const added = await t.one({ as, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
      await t.one({ as, fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "10 December 2024" } });
    }
    const arrived = await t.send({ advance: "P14D" });
    expect(arrived.map((each) => each.text?.split("\n")[0]).toSorted()).toEqual(["For Ines's Heron", "For Tomasz's Heron"]);
    const hers = arrived.find((each) => each.text?.startsWith("For Ines")) as Shown;
    expect((await t.one({ as: "Tomasz", press: button(hers, "What is due") })).text).toBe("Only the bike's owner can do that.");
    await t.close();
  });

  test("reminders at a quiet hour say when they really come", async () => {
    await withHeron(async (t) => {
      const shown = await t.one({ ...dm, run: "/remind time:23:30 quiet-from:22:00 quiet-to:07:00 day:Sunday" });
      expect(shown.text).toContain("Sunday at 23:30, held until 07:00 since that is in your quiet hours, 22:00 to 07:00.");
    });
  });

  test("a bike whose name holds a word of denial is understood", async () => {
    await withHeron(async (t) => {
      await t.one({ ...dm, run: "/bike add name:Oil Can kind:belt-drive cruiser odometer:20,000 km" });
      const { data } = await say(t, "20,050 km on Oil Can, 14,310 mi on Heron");
      expect(data.readings.map((r: { typed: string }) => r.typed)).toEqual(["20,050 km", "14,310 mi"]);
    });
  });
});
