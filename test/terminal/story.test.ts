// The main job, end to end, as a script drives it.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { button, type Shown, type Talk, talk } from "../support/talk.ts";

const ADD = { as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" };
const status = (due: Shown, item: string): string => due.data.bikes[0].dues.find((each: { item: string }) => each.item === item).status;
const dm = { as: "Ines", in: "dm" };

async function withBike(use: (t: Talk, added: Shown) => Promise<void>, clock?: string): Promise<void> {
  const t = await talk(clock);
  try {
    await use(t, await t.one(ADD));
  } finally {
    await t.close();
  }
}

describe("a rider adds a bike, logs, works, is reminded and comes back", () => {
  test("the whole story, over a restart", async () => {
    const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
    const file = path.join(folder, "practice.sqlite");
    let t = await talk("2026-11-25T10:00:00Z", file);
    const added = await t.one(ADD);
    expect(added.data).toMatchObject({ nickname: "Heron", kind: "chain-drive twin", unit: "mi", figure: 14_210 });
    expect(added.data.items).toBeGreaterThanOrEqual(25);
    const form = added.actions.find((action) => action.kind === "form");
    expect(form?.fields?.length).toBeLessThanOrEqual(5);
    const history = await t.one({
      as: "Ines",
      fill: button(added, "Fill in"),
      fields: { "brake-fluid.replace": "spring 2023", "engine-oil.replace": "spring 2026 at 12,000, receipt", "chain.replace": "don't know" },
    });
    expect(history.data.recorded.flatMap((each: { items: string[] }) => each.items)).toEqual(["brake-fluid.replace", "engine-oil.replace"]);
    expect(history.data.unknown).toEqual(["New chain and sprockets"]);

    expect(await t.one({ as: "Ines", say: "14,820 mi on Heron" })).toMatchObject({ react: "logged", text: null, to: null, visibility: "shared" });
    const before = await t.one({ as: "Ines", run: "/due" });
    expect(before).toMatchObject({ visibility: "private", to: "Ines" });
    expect(status(before, "chain.replace")).toBe("no record");
    // Two years after spring 2023.
    expect(status(before, "brake-fluid.replace")).toBe("overdue");
    expect(status(before, "engine-oil.replace")).toBe("good");
    expect(before.text).toContain("Brake fluid: was due spring 2025, last done spring 2023");
    // 12,000 is the 12,000 mi mark, the next is 16,000: 1,180 mi from 14,820; the year since spring 2026 comes first.
    expect(before.text).toContain("Engine oil and filter: due spring 2027, last done spring 2026; by distance at 16,000 mi, 1,180 mi to go");

    const work = await t.one({ as: "Ines", run: "/work did:brake fluid at:14,820 mi bike:Heron" });
    expect(work.text).toBe("Heron: Brake fluid, done today at 14,820 mi. Recorded.");
    expect(status(await t.one({ as: "Ines", run: "/due" }), "brake-fluid.replace")).toBe("good");

    await t.one({ as: "Ines", say: "15,700 mi on Heron" });
    const undo = await t.one({ ...dm, say: "15,750 mi" });
    expect(status(await t.one({ as: "Ines", run: "/due" }), "engine-oil.replace")).toBe("soon");
    const [reminder, ...others] = await t.send({ advance: "P60D" });
    expect(others).toEqual([]);
    expect(reminder).toMatchObject({ to: "Ines", in: "dm", visibility: "private" });
    expect(reminder?.text).toContain("Engine oil and filter: due at 16,000 mi");
    const undone = await t.one({ ...dm, press: button(undo, "Undo") });
    expect(undone.text).toBe("Undone for Heron: odometer 15,750 mi. It no longer counts; the record of it stays.");

    const put = await t.one({ ...dm, pick: button(reminder as Shown, "Put off"), values: ["a month"] });
    expect(put.data.until).toBe("2027-02-24");
    await t.close();

    // The same file, later: all is there, and nothing is told twice until the month is over.
    t = await talk("2027-01-26T10:00:00Z", file);
    expect(status(await t.one({ as: "Ines", run: "/due" }), "engine-oil.replace")).toBe("soon");
    expect(await t.send({ advance: "P20D" })).toEqual([]);
    const again = await t.send({ advance: "P30D" });
    // Put off until 24 February; on 1 March the year since spring 2026 is over.
    expect(again.map((each) => each.data.told[0].items[0].status)).toEqual(["soon", "due"]);
    const finished = await t.one({ ...dm, fill: button(again[1] as Shown, "Done"), fields: { what: "engine-oil.replace", at: "15,900 mi", on: "yesterday" } });
    expect(finished.text).toContain("Engine oil and filter, done 16 March at 15,900 mi. Recorded.");
    expect(status(await t.one({ as: "Ines", run: "/due" }), "engine-oil.replace")).toBe("good");
    await t.close();
    await rm(folder, { recursive: true });
  });

  test("asleep for weeks, all that was missed comes as one digest", async () => {
    await withBike(async (t, added) => {
      await t.one({ as: "Ines", fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "10 December 2024", "coolant.replace": "20 December 2024" } });
      await t.one({ as: "Ines", run: "/bike add name:Bramble kind:dual-purpose single odometer:8,640 km" });
      const arrived = await t.send({ advance: "P40D", asleep: true });
      expect(arrived).toHaveLength(1);
      expect(arrived[0]?.text).toContain("Brake fluid");
      expect(arrived[0]?.text).toContain("Coolant");
      expect(await t.send({ advance: "P3D" })).toEqual([]);
    });
  });

  test("awake, each stage is told once and in its own week", async () => {
    await withBike(async (t, added) => {
      await t.one({ as: "Ines", fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "10 January 2025" } });
      const arrived = await t.send({ advance: "P90D" });
      const stages = arrived.map((each) => each.data.told[0].items.map((item: { status: string }) => item.status));
      // Coming up from 30 days before 10 January 2027, due on the day, overdue the day after: no window after for brake fluid.
      // Again a week later, and two weeks after that.
      expect(stages).toEqual([["soon"], ["overdue"], ["overdue"], ["overdue"]]);
    });
  });

  test("reminders come at the member's hour, in their zone, and by the group's channel when they wish", async () => {
    await withBike(async (t, added) => {
      await t.one({ as: "Ines", run: "/remind day:Sunday time:18:00 by:channel zone:America/Chicago" });
      await t.one({ as: "Ines", fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "spring 2023" } });
      await t.send({ advance: "P4DT13H" });
      // Sunday 29 November, 18:00 in Chicago is midnight UTC.
      const [arrived] = await t.send({ advance: "PT2H" });
      expect(arrived).toMatchObject({ to: null, in: "g1", visibility: "shared" });
    });
  });

  test("a tread depth logged is the tread measured, and undone it is not", async () => {
    await withBike(async (t) => {
      const treads = async () => {
        const due = await t.one({ as: "Ines", run: "/due" });
        return [status(due, "front-tread.measure"), status(due, "rear-tread.measure")];
      };
      expect(await treads()).toEqual(["no record", "no record"]);
      await t.one({ ...dm, say: "front tread 4.5 mm" });
      const rear = await t.one({ ...dm, say: "rear tread 3 mm" });
      expect(await treads()).toEqual(["good", "good"]);
      await t.one({ ...dm, press: button(rear, "Undo") });
      expect(await treads()).toEqual(["good", "no record"]);
    });
  });

  test("a bike laid up is quiet, and speaks again when it rides", async () => {
    await withBike(async (t, added) => {
      await t.one({ as: "Ines", fill: button(added, "Fill in"), fields: { "brake-fluid.replace": "spring 2023" } });
      await t.one({ as: "Ines", run: "/bike change bike:Heron state:laid up" });
      expect(await t.send({ advance: "P60D" })).toEqual([]);
      await t.one({ as: "Ines", run: "/bike change bike:Heron state:riding" });
      expect(await t.send({ advance: "P8D" })).toHaveLength(1);
    });
  });
});

describe("what a rider does by mistake", () => {
  const refused = async (t: Talk, input: Readonly<Record<string, unknown>>, sentence: string | RegExp): Promise<Shown> => {
    const answer = await t.one({ as: "Ines", ...input });
    expect(answer.text).toMatch(sentence);
    return answer;
  };

  test("each gets one clear sentence, and nothing is saved", async () => {
    await withBike(async (t) => {
      await refused(t, { run: "/due bike:Gull" }, /^You have no bike called “Gull”\. Yours: Heron\.$/);
      await refused(t, { run: "/bike add name:heron kind:chain-drive twin odometer:3 mi" }, /already have a bike called heron/);
      await refused(t, { run: "/bike add name:@everyone kind:chain-drive twin odometer:3 mi" }, /cannot mention people/);
      await refused(t, { run: "/bike add name:14,820 kind:chain-drive twin odometer:3 mi" }, /reads as a figure/);
      await refused(t, { run: `/bike add name:${"x".repeat(40)} kind:chain-drive twin odometer:3 mi` }, /at most 32 characters/);
      await refused(t, { run: "/bike add name:Otter kind:tricycle odometer:3 mi" }, /no choice for “kind”\. Choose chain-drive twin/);
      await refused(t, { run: "/bike add name:Otter kind:chain-drive twin" }, /Please add the option “odometer”/);
      await refused(t, { run: "/bike add name:Otter kind:chain-drive twin odometer:lots" }, /cannot read “lots” as a distance/);
      await refused(t, { run: "/bike add name:Otter kind:chain-drive twin odometer:3000" }, /miles or kilometres/);
      await refused(t, { run: "/bike add name:Otter kind:chain-drive twin odometer:3,000,000 mi" }, /outside what an odometer shows/);
      await refused(t, { run: "/work did:oil on:3 May 2031" }, /still to come/);
      await refused(t, { run: "/work did:oil on:the day before never" }, /cannot read “the day before never” as a date/);
      await refused(t, { run: "/work did:flux capacitor" }, /find no “flux capacitor”/);
      await refused(t, { run: "/work did:chain" }, /could be Chain lubrication, /);
      await refused(t, { run: "/work oil colour:red" }, /no option “colour”/);
      await refused(t, { run: "/dew" }, /Do you mean \/due/);
      await refused(t, { run: "/remind zone:Mars/Base" }, /not a time zone/);
      await refused(t, { run: "/remind time:25:99" }, /as a time of day/);
      await refused(t, { run: "/group zone:Europe/Berlin" }, /may manage the server/);
      await refused(t, { run: "/convert 14 blorp to:mi" }, /unit/);
      await refused(t, { press: "1.undo.nothing.0" }, /done already/);
      await refused(t, { press: "9.bomb" }, /no longer there/);
      const bikes = await t.one({ as: "Ines", run: "/bike list" });
      expect(bikes.data.bikes).toHaveLength(1);
      expect((await t.one({ as: "Ines", run: "/reading" })).data.bikes[0].readings).toHaveLength(1);
    });
  });

  test("a strange figure is asked about, never used in silence, never lost", async () => {
    await withBike(async (t) => {
      const backwards = await t.one({ ...dm, say: "1,420 mi on Heron" });
      expect(backwards.react).toBe("asked");
      expect(backwards.text).toContain("below what the dial showed before");
      const jump = await t.one({ ...dm, say: "41,820 mi on Heron" });
      expect(jump.text).toContain("a long way from the last one");
      const wrongUnit = await t.one({ ...dm, say: "14,820 km on Heron" });
      expect(wrongUnit.text).toContain("in which unit?");
      const pressure = await t.one({ ...dm, say: "front 330 psi" });
      expect(pressure.text).toContain("outside what a motorcycle shows");
      const future = await t.one({ ...dm, say: "14,820 mi on Heron on 3 May 2031" });
      expect(future.text).toContain("still to come");
      const list = await t.one({ as: "Ines", run: "/reading" });
      expect(list.data.open).toHaveLength(5);
      expect(list.data.bikes[0].readings).toHaveLength(1);
      // The jump was right after all.
      expect((await t.one({ ...dm, press: button(jump, "Yes") })).data.is).toBe("logged");
      expect((await t.one({ ...dm, press: button(jump, "Yes") })).text).toContain("done already");
      expect((await t.one({ ...dm, press: button(future, "Let it go") })).text).toContain("Nothing of it was saved");
    });
  });

  test("a new dial and a slip are told apart by the member", async () => {
    await withBike(async (t) => {
      await t.one({ ...dm, say: "14,800 mi" });
      const asked = await t.one({ ...dm, say: "12 mi on Heron" });
      const logged = await t.one({ ...dm, press: button(asked, "The odometer was replaced") });
      expect(logged.data.is).toBe("logged");
      await t.one({ ...dm, say: "212 mi on Heron" });
      const due = await t.one({ as: "Ines", run: "/due" });
      // 14,800 on the old dial, 200 on the new one: tread 2,000 mi after 14,210 falls due at 1,422 on the new dial.
      expect(due.data.bikes[0].odometer.figure).toBe(212);
      expect(due.text).toContain("tread depth at 1,422 mi");
      expect(due.text).toContain("- 8,000 mi (ridden, before this dial) passed before it came to you; next at 1,212 mi");
      const slip = await t.one({ ...dm, say: "1,190 mi on Heron" });
      expect(slip.data.is).toBe("logged");
      const lower = await t.one({ ...dm, say: "219 mi on Heron" });
      expect((await t.one({ ...dm, press: button(lower, "The earlier reading was wrong") })).data.is).toBe("logged");
      expect((await t.one({ as: "Ines", run: "/due" })).data.bikes[0].odometer.figure).toBe(219);
    });
  });

  test("junk, emoji, right-to-left text and everyone's name break nothing", async () => {
    await withBike(async (t) => {
      const long = await t.one({ ...dm, say: "x7 ".repeat(1334) });
      expect(long.text).toContain("longer than I read");
      for (const text of [
        "🏍️🔥🔥 14 🤘",
        "مرحبا بالعالم ١٤٨٢٠",
        "@everyone 14,820 mi was the price",
        "``` 14,820 mi on Heron ```",
        "> 14,820 mi on Heron",
        "https://example.org/14820",
        "\u0000\u0001",
        "a".repeat(1999),
      ]) {
        const answers = await t.send({ as: "Ines", say: text });
        expect(answers.map((each) => each.data?.is).filter((is) => is === "logged")).toEqual([]);
      }
      expect((await t.one({ as: "Ines", run: "/reading" })).data.bikes[0].readings).toHaveLength(1);
    });
  });

  test("small talk is met with silence; who is addressed is answered", async () => {
    await withBike(async (t) => {
      expect(await t.send({ as: "Ines", say: "see you all at the lake on Sunday at 7" })).toEqual([]);
      expect((await t.one({ as: "Ines", say: "hello there", mention: true })).text).toContain("I found no reading");
      expect(await t.send({ as: "Ines", say: "14,820 mi on Heron", in: "g1/other" })).toEqual([]);
    });
  });

  test("two bikes and none named: the bike is asked for, by button or by name", async () => {
    await withBike(async (t) => {
      await t.one({ as: "Ines", run: "/bike add name:Bramble kind:dual-purpose single odometer:8,640 km" });
      const asked = await t.one({ ...dm, say: "14,820" });
      expect(asked.text).toContain("Which bike");
      expect((await t.one({ ...dm, say: "heron" })).text).toBe("Heron: odometer 14,820 mi, today. Logged.");
      const inChannel = await t.one({ as: "Ines", say: "33 psi front" });
      expect(inChannel).toMatchObject({ react: "asked", to: null });
      expect(inChannel.text).not.toMatch(/33/);
      const question = await t.one({ as: "Ines", press: button(inChannel, "Show the question") });
      expect(question).toMatchObject({ to: "Ines", visibility: "private" });
      expect((await t.one({ as: "Ines", press: button(question, "Bramble") })).data.readings[0]).toMatchObject({ kind: "cold pressure", place: "front" });
    });
  });
});

describe("once only, and one's own", () => {
  test("the same message and the same press act once", async () => {
    await withBike(async (t) => {
      expect(await t.send({ as: "Ines", say: "14,820 mi on Heron", id: "55" })).toHaveLength(1);
      expect(await t.send({ as: "Ines", say: "14,820 mi on Heron", id: "55" })).toEqual([]);
      expect((await t.one({ as: "Ines", run: "/reading" })).data.bikes[0].readings).toHaveLength(2);
    });
  });

  test("an edit amends what stands, a delete asks once", async () => {
    await withBike(async (t) => {
      await t.one({ ...dm, say: "14,802 mi on Heron", id: "60" });
      const amended = await t.one({ ...dm, edit: "60", say: "14,820 mi on Heron" });
      expect(amended.text).toContain("14,820 mi");
      const readings = (await t.one({ as: "Ines", run: "/reading" })).data.bikes[0].readings.map((r: { typed: string }) => r.typed);
      expect(readings).toEqual(["14,820 mi", "14,210 mi"]);
      const asked = await t.one({ ...dm, delete: "60" });
      expect(asked.text).toContain("was deleted. The record stands unless you withdraw it");
      expect((await t.one({ ...dm, press: button(asked, "Withdraw") })).data.readings).toHaveLength(1);
    });
  });

  test("nobody acts on another's bike", async () => {
    await withBike(async (t) => {
      const logged = await t.one({ ...dm, say: "14,820 mi" });
      expect((await t.one({ as: "Tomasz", press: button(logged, "Undo") })).text).toContain("Only the bike's owner");
      expect((await t.one({ as: "Tomasz", run: "/due" })).text).toContain("no bike here yet");
    });
  });
});

/** Statements of the bot's own: the room's channel stands for the platform. */
const cost = (t: Talk): number => t.statements().filter((sql) => !/^(begin|commit|start transaction|set transaction)|"room_messages"/.test(sql)).length;

describe("what an answer costs", () => {
  test("a due list takes at most 8 statements, what was put off being one, and a reading message at most 12, the group's median year being one, however many bikes and readings", async () => {
    await withBike(async (t) => {
      await t.one({ as: "Ines", run: "/due" });
      const few = cost(t);
      expect(few).toBeLessThanOrEqual(8);
      for (let n = 0; n < 5; n++) await t.one({ as: "Ines", run: `/bike add name:Bike ${"abcde"[n]} kind:chain-drive twin odometer:1${n}00 mi` });
      for (let n = 0; n < 30; n++) await t.one({ as: "Ines", say: `${14_300 + n * 10} mi on Heron` });
      await t.one({ as: "Ines", run: "/due" });
      expect(cost(t)).toBe(few);
      await t.one({ as: "Ines", say: "14,820 mi on Heron" });
      expect(cost(t)).toBeLessThanOrEqual(12);
    });
  });

  test("every answer's data has the shape its command promises", async () => {
    await withBike(async (t) => {
      const { COMMANDS } = await import("../../commands/index.ts");
      for (const run of [
        "/due",
        "/bike list",
        "/reading",
        "/convert 60-80 in-lb",
        "/remind",
        "/group",
        "/help",
        "/help due",
        "/work did:oil at:14,300 mi",
        "/bike change yearly:4,000 mi",
        "/bike fitted part:wheels choice:wire-spoked",
        "/bike odometer now:3 mi last:14,400 mi",
      ]) {
        const answer = await t.one({ as: "Ines", run });
        const command = COMMANDS.find((each) => run.startsWith(each.sub === null ? `/${each.name}` : `/${each.name} ${each.sub}`));
        const parsed = command?.data.safeParse(answer.data);
        expect(parsed?.success, `${run}: ${JSON.stringify(parsed?.error?.issues ?? answer.text)}`).toBe(true);
      }
    });
  });
});
