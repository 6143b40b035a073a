// Pictures end to end: asked for by command, with words that say the same, as files with alternative text; and a group sees only what owners let it.

import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { sql } from "kysely";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Instant } from "../../src/core/calendar/dates.ts";
import type { BikeId, GroupId, MemberId } from "../../src/core/ids.ts";
import { openSqlite } from "../../src/store/sqlite.ts";
import { storeOn } from "../../src/store/store.ts";
import { button, type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
});
afterEach(() => t.close());

const run = (as: string, line: string, more: Readonly<Record<string, unknown>> = {}) => t.one({ as, run: line, ...more });
const add = (as: string, name: string) => run(as, `/bike add name:${name} kind:chain-drive twin odometer:8,000 mi`);
const pngOf = async (file: { readonly path: string } | undefined): Promise<Buffer> => readFile(file?.path ?? "");

describe("what comes next", () => {
  test("is drawn when asked for, one picture a bike, each with what it shows in words; the words stand as ever", async () => {
    await add("m1", "Heron");
    await add("m1", "Wren");
    const plain = await run("m1", "/due bike:Heron");
    expect([plain.files, plain.data.next]).toEqual([[], undefined]);
    const drawn = await run("m1", "/due picture:yes");
    expect(drawn.files.map(({ name, type }) => [name.replace(/-\w{12}(?=\.)/u, ""), type])).toEqual([
      ["what-comes-next-1.png", "image/png"],
      ["what-comes-next-2.png", "image/png"],
    ]);
    const png = await pngOf(drawn.files[0]);
    expect([png.subarray(1, 4).toString("latin1"), png.readUInt32BE(16), png.length < 200_000]).toEqual(["PNG", 900, true]);
    expect(drawn.files[0]?.alt).toContain("Heron");
    expect((await run("m1", "/due bike:Heron picture:yes")).text).toBe(plain.text);
  });
  test("rows are those that /due until: lists, at the days it gives", async () => {
    await add("m1", "Heron");
    await run("m1", "/work did:brake fluid on:2026-03-05 at:7,500 mi");
    const { data } = await run("m1", "/due until:2027-11-26 bike:Heron picture:yes");
    const drawn = data.next[0].rows.flatMap((row: { items: { item: string }[]; on: string | null }) => row.items.map(({ item }) => [item, row.on]));
    const listed = data.bikes[0].evenings.flatMap((each: { items: { on: string; due: { item: string } }[] }) =>
      each.items.map(({ on, due }) => [due.item, on]),
    );
    expect(listed.length).toBeGreaterThan(2);
    for (const each of listed) expect(drawn).toContainEqual(each);
    expect(drawn.length + data.next[0].more).toBe(listed.length);
  });
  test("by when to charge the battery of a bike laid up is told in it as beside it: among its notes, and first where it is now", async () => {
    await add("m1", "Heron");
    await run("m1", "/bike change bike:Heron state:laid up");
    const drawn = async (): Promise<string> => (await run("m1", "/due bike:Heron picture:yes")).files[0]?.alt ?? "";
    // AGM at rest: 60 days (trade/battery CHARGE_DAYS, common practice).
    expect(await drawn()).toContain("Charge the battery by 25 January 2027: nothing was read of it");
    await t.one({ as: "m1", in: "dm", say: "battery 12.3 V rested 8 h on Heron" });
    expect((await drawn()).startsWith("Charge the battery now: 12.3 V at rest today.")).toBe(true);
  });
  test("what the bike must not be ridden on stands first, in the picture and in its words, and is nobody else's business", async () => {
    await add("m1", "Heron");
    const say = (words: string) => t.one({ as: "m1", in: "dm", say: words });
    await say("front brake feels spongy");
    await t.one({ as: "m1", in: "dm", press: button(await say("mirror is loose"), "Watch") });
    await say("fork seal is leaking");
    const drawn = await run("m1", "/due bike:Heron picture:yes");
    const first = "Do not ride: “front brake feels spongy”. Found wrong, not graded yet: “fork seal is leaking”. ";
    expect(drawn.files[0]?.alt.startsWith(first)).toBe(true);
    expect(drawn.files[0]?.alt).not.toContain("mirror");
    expect((await run("m1", "/due bike:Heron until:2027-03-01 picture:yes")).files[0]?.alt.startsWith(first)).toBe(true);
    for (const line of ["/due bike:Heron picture:yes share:yes", "/due bike:Heron until:2027-03-01 picture:yes share:yes"]) {
      const shared = await run("m1", line);
      expect(shared.files[0]?.alt).not.toContain("spongy");
      expect(JSON.stringify(shared.data)).not.toContain("spongy");
    }
    for (const words of ["chain has a stiff link", "rear tyre has a bulge", "fuel is leaking"]) await say(words);
    expect((await run("m1", "/due bike:Heron picture:yes")).files[0]?.alt).toMatch(/^Do not ride, 4 things: “[^”]+”, “[^”]+”, “[^”]+” and 1 more on \/due\. /u);
  });
});

describe("readings", () => {
  test("without any there are words and no picture, with some both; a tread that grew is another tyre", async () => {
    await add("m1", "Heron");
    const none = await run("m1", "/reading picture:tread");
    expect([none.files.length, none.text]).toEqual([0, expect.stringContaining("no tread reading yet")]);
    for (const [on, dial, rear] of [
      ["2026-11-02", "6,000 mi", "1.9"],
      ["2026-11-08", "6,600 mi", "6.9"],
      ["2026-11-14", "7,200 mi", "6.5"],
      ["2026-11-20", "7,800 mi", "6.0"],
    ])
      await t.open.store.change(async (q) => {
        const bike = (await q.bikes.ofOwner("m1" as MemberId))[0];
        if (bike === undefined) throw new Error("no bike");
        const row = {
          rev: 1,
          state: "live",
          bike: bike.id,
          on,
          message: null,
          ordinal: 0,
          loggedAt: `${on}T10:00:00.000Z`,
          by: "m1",
          at: `${on}T10:00:00.000Z`,
          why: null,
          detail: null,
        };
        const [miles, depth] = [Number(dial?.replace(/\D/gu, "")), Number(rear)];
        await q.readings.log([
          { ...row, id: `o${on}`, kind: "odometer", place: null, dial: miles * 16_093_440, value: null, typed: dial, unit: "mi" },
          { ...row, id: `t${on}`, kind: "tread", place: "rear", dial: null, value: depth, typed: rear, unit: "mm" },
        ] as never);
      });
    const drawn = await run("m1", "/reading picture:tread");
    const [rear] = drawn.data.shown.panels.filter(({ place }: { place: string }) => place === "rear");
    expect(rear.points.map(({ value }: { value: number }) => value)).toEqual([6.9, 6.5, 6]);
    expect([drawn.files.length, drawn.files[0]?.alt]).toEqual([1, expect.stringContaining("Rear 6 mm")]);
    const track = await run("m1", "/reading picture:odometer");
    expect([track.data.shown.points.length, track.files.length]).toEqual([5, 1]);
  });
});

describe("what wears", () => {
  test("pads have a panel a caliper, a chain one of its own; picture, words and /due tell the same line", async () => {
    await add("m1", "Heron");
    const log = (text: string) => run("m1", `/reading log:${text}`);
    const [pads, chain] = [
      ["4.1 mm", "3.8 mm", "3.4 mm"],
      ["317.9", "318.6", "319.2"],
    ];
    for (const [n, miles] of ["8,000 mi", "10,000 mi", "12,000 mi"].entries()) {
      await log(miles);
      await log(`front left pads ${pads[n]}`);
      await log(`rear pads ${pads[n]}`);
      await log(`chain ${chain[n]} mm over 20 pitches`);
      await t.send({ advance: "P40D", asleep: true });
    }
    const drawn = await run("m1", "/reading picture:pads");
    expect(drawn.data.shown.panels.map(({ place }: { place: string }) => place)).toEqual(["front left", "rear"]);
    expect(drawn.text).toMatch(/- Front left 3\.4 mm, limit 1 mm \(common practice\); likely reached at about [\d,]+ mi, eight times in ten between/u);
    expect(drawn.files[0]?.alt).toContain("Brake pad lining against the odometer");
    const links = await run("m1", "/reading picture:chain");
    // 319.2 mm over 20 pitches of 15.875 mm (ISO 606): 319.2 / 317.5 - 1 = 0.535 %. Published limits begin at 1 %.
    expect(links.data.shown.panels[0].points.at(-1).value).toBeCloseTo(0.005354, 6);
    expect(links.data.shown.panels[0].limit).toEqual({ value: expect.closeTo(0.01, 9), by: "practice" });
    expect(links.text).toContain("- Now 0.5 %, limit 1 % (common practice); likely reached at about");
    const { line } = links.data.shown.panels[0];
    const due = await run("m1", "/due bike:Heron");
    const told = due.data.bikes[0].worn.find(({ part }: { part: string }) => part === "chain");
    expect(line.likely - links.data.shown.panels[0].points.at(-1).ridden).toBeCloseTo(told.wear.left.likely, 0);
    expect(due.text).toMatch(/Chain: about [\d,]+ mi left/u);
    await t.one({ as: "m1", press: button(await log("front left pads 5 mm"), "Yes, it is right") });
    expect((await run("m1", "/reading picture:pads")).data.shown.panels[0]).toMatchObject({ points: [{ value: 5 }], line: null });
  });
  test("what was found at a job is of the part that came off: the new one's line begins without it", async () => {
    const life = async (as: string, found: string) => {
      await run(as, "/bike add name:Heron kind:chain-drive twin odometer:12,000 mi");
      if (found !== "") await t.one({ as, in: "dm", say: found });
      await run(as, "/work did:rear tyre age at:12,000 mi outcome:replaced");
      for (const said of ["13,000 mi, tread 6.3 mm rear", "14,000 mi, tread 5.5 mm rear"]) {
        await t.send({ advance: "P30D", asleep: true });
        await t.one({ as, in: "dm", say: said });
      }
      return (await run(as, "/tyre show")).data.worn.map(({ wear }: { wear: unknown }) => wear);
    };
    const [without, beside] = [await life("m1", ""), await life("m2", "tread found 1.8 mm rear")];
    expect(without).toMatchObject([{ is: "line", readings: 2 }]);
    expect(beside).toEqual(without);
  });
  test("a chain only lengthens: a jump up is of the same one, one that is shorter again is another", async () => {
    await add("m1", "Heron");
    const read = async (miles: string, mm: string): Promise<number> => {
      await t.send({ advance: "P30D", asleep: true });
      await run("m1", `/reading log:${miles}`);
      await run("m1", `/reading log:chain ${mm} mm over 20 pitches`);
      return (await run("m1", "/reading picture:chain")).data.shown.panels[0].points.length;
    };
    expect([await read("9,000 mi", "317.6"), await read("10,500 mi", "319.5"), await read("12,000 mi", "320.1"), await read("12,500 mi", "317.7")]).toEqual([
      1, 2, 3, 1,
    ]);
  });
  test("a chain whose pitches nobody counted has no picture; words say what to log", async () => {
    await add("m1", "Heron");
    await run("m1", "/reading log:chain length 1020 mm");
    const drawn = await run("m1", "/reading picture:chain");
    expect([drawn.files.length, drawn.text]).toEqual([
      0,
      "Heron has no chain reading that tells its wear yet. Log one: chain 318.2 mm over 20 pitches on Heron.\nNever clean or oil a chain with the engine turning it: it takes fingers. Push the bike or turn the wheel by hand.",
    ]);
  });
});

describe("what readings are held against", () => {
  test("a tread's limit is the one that its verdict names: the law of the place, where it is known", async () => {
    await add("m1", "Heron");
    const limit = async () => (await run("m1", "/reading picture:tread")).data.shown.panels[0].limit;
    await run("m1", "/reading log:tread 4.6 mm front");
    expect(await limit()).toEqual({ value: 25.4 / 32, by: "bars" });
    await run("m1", "/group place:Germany", { admin: true });
    expect(await limit()).toEqual({ value: 1.6, by: "law" });
    await run("m1", "/spec what:front tread limit value:2 mm");
    expect(await limit()).toEqual({ value: 2, by: "spec" });
  });
  test("a pressure is shown at one temperature where the air's was noted, by the gas law, and beside what the manual asks for", async () => {
    await add("m1", "Heron");
    await run("m1", "/reading log:33 psi front");
    await t.open.store.change(async (q) => {
      const [bike] = await q.bikes.ofOwner("m1" as MemberId);
      const moment = "2026-11-26T09:00:00.000Z";
      const row = {
        id: "air",
        rev: 1,
        state: "live",
        bike: bike?.id,
        kind: "ambient temperature",
        place: null,
        dial: null,
        value: 2,
        typed: "2 °C",
        unit: "°C",
        detail: null,
      };
      await q.readings.log([{ ...row, on: "2026-11-26", message: null, ordinal: 1, loggedAt: moment, by: "m1", at: moment, why: null }] as never);
    });
    const drawn = await run("m1", "/reading picture:pressure");
    const [front] = drawn.data.shown.panels;
    // 33 psi over 101.325 kPa at 275.15 K, by absolute pressure over absolute temperature: 36.13 psi at 293.15 K. Textbook law (Gay-Lussac), worked by hand.
    expect(front.points[0].read / 6.894757).toBeCloseTo(33, 5);
    expect(front.points[0].levelled / 6.894757).toBeCloseTo(((33 + 14.6959) * 293.15) / 275.15 - 14.6959, 3);
    expect(front.wanted).toEqual([]);
    await run("m1", "/spec what:front tyre pressure value:36 psi for:solo");
    expect((await run("m1", "/reading picture:pressure")).data.shown.panels[0].wanted[0].value / 6.894757).toBeCloseTo(36, 5);
  });
});

describe("pressures at several loads", () => {
  test("are all drawn, each held against what the specs ask for at its own load; loads that want the same share a line", async () => {
    await add("m1", "Heron");
    for (const spec of ["36 psi for:solo", "42 psi for:two-up", "42 psi for:loaded"]) await run("m1", `/spec what:rear tyre pressure value:${spec}`);
    await run("m1", "/spec what:front tyre pressure value:33 psi for:solo");
    for (const said of ["cold 32 psi front 36 rear", "two-up cold 33 psi front 41 rear", "loaded cold 33 psi front 42 rear"]) {
      await t.send({ advance: "P20D", asleep: true });
      await run("m1", `/reading log:${said}`);
    }
    const { data, text } = await run("m1", "/reading picture:pressure");
    const [front, rear] = data.shown.panels;
    expect([front, rear].map(({ points }) => points.map(({ load }: { load: string }) => load))).toEqual([
      ["solo", "two-up", "loaded"],
      ["solo", "two-up", "loaded"],
    ]);
    const psi = (each: { value: number }) => Math.round(each.value / 6.894757);
    expect(rear.wanted.map((each: { loads: string[]; value: number }) => [each.loads, psi(each)])).toEqual([
      [["solo"], 36],
      [["two-up", "loaded"], 42],
    ]);
    expect(front.wanted.map((each: { loads: string[]; value: number }) => [each.loads, psi(each)])).toEqual([[["solo"], 33]]);
    expect(text).toContain("- Rear two-up 41 psi");
    expect(text).toContain("- Front loaded 33 psi on 25 January, no pressure loaded on record, solo wants 33 psi cold.");
  });
});

describe("a bike of another build", () => {
  const measured = async (bike: string, said: (n: number) => string) => {
    for (const n of [0, 1, 2]) {
      await run("m1", `/reading log:${6000 + n * 1500} km on ${bike}`);
      const shown = await t.one({ as: "m1", in: "dm", say: said(n) });
      expect(shown.react).toBe("logged");
      await t.send({ advance: "P40D", asleep: true });
    }
  };
  test("the sidecar's tyre has a panel and a wear line of its own, its size can be entered, and the card has it", async () => {
    await run("m1", "/bike add name:Mule kind:sidecar outfit odometer:6,000 km");
    await measured("Mule", (n) => `Mule sidecar tread ${5 - n * 0.6} mm`);
    const drawn = await run("m1", "/reading picture:tread bike:Mule");
    expect(drawn.text).toMatch(/- Sidecar 3\.8 mm, limit 0\.8 mm \(the moulded bars\); likely reached at about/u);
    expect(drawn.files).toHaveLength(1);
    expect((await run("m1", "/due bike:Mule")).text).toMatch(/Sidecar tyre: about [\d,]+ km left/u);
    expect((await run("m1", "/spec bike:Mule what:sidecar tyre size value:4.00-18")).data.refused).toBeUndefined();
    expect((await run("m1", "/bike card bike:Mule")).text).toContain("- Sidecar tyre size: 4.00-18");
    await add("m1", "Heron");
    expect((await run("m1", "/bike card bike:Heron")).text).not.toContain("idecar");
    const bald = await t.one({ as: "m1", in: "dm", say: "Mule sidecar tread 0.5 mm" });
    expect(bald.data.defects).toMatchObject([{ kind: "worn sidecar tyre", grade: "do not ride", from: "verdict" }]);
  });
  test("a drum's shoes have a picture with a line, under whatever name they are asked for", async () => {
    await run("m1", "/bike add name:Pip kind:classic odometer:6,000 km");
    await measured("Pip", (n) => `Pip rear shoes ${4 - n * 0.4} mm`);
    for (const picture of ["pads", "shoes", "linings"]) {
      const drawn = await run("m1", `/reading picture:${picture} bike:Pip`);
      expect(drawn.text).toMatch(/^Pip's brake shoes:\n- Rear 3\.2 mm, limit 1\.5 mm \(common practice\); likely reached at about/u);
      expect(drawn.text).toContain("Drum dust");
      expect(drawn.files[0]?.alt).toContain("Brake shoe lining against the odometer");
    }
  });
  test("without a chain there is no advice to measure one, and no caution about it", async () => {
    await run("m1", "/bike add name:Bolt kind:electric odometer:3,000 km");
    const drawn = await run("m1", "/reading picture:chain bike:Bolt");
    expect([drawn.files, drawn.text]).toEqual([[], "Bolt is driven by a belt and has no chain; read the belt's deflection: belt 10 mm at 45 N."]);
    // What it advises is read as it says.
    expect((await t.one({ as: "m1", in: "dm", say: "belt 10 mm at 45 N" })).data.readings).toMatchObject([{ kind: "belt deflection" }]);
  });
});

describe("a roadside card", () => {
  test("is private, leaves blank what is not known, keeps the member's own number for every bike and forgets it at none", async () => {
    await add("m1", "Heron");
    await add("m1", "Wren");
    const kept = await run("m1", "/bike card bike:Heron recovery:0800 555 0142");
    expect([kept.visibility, kept.files.length, kept.text]).toEqual([
      "private",
      1,
      expect.stringContaining("Not entered yet; write it on the blank line, or enter it"),
    ]);
    expect((await run("m1", "/bike card bike:Wren")).data.recovery).toBe("0800 555 0142");
    await add("m2", "Quill");
    expect((await run("m2", "/bike card")).data.recovery).toBeNull();
    // Saving anything else of the member leaves it.
    await run("m1", "/remind distance:km");
    expect((await run("m1", "/bike card bike:Heron")).data.recovery).toBe("0800 555 0142");
    await run("m1", "/bike card bike:Heron recovery:none");
    expect((await run("m1", "/bike card bike:Heron")).data.recovery).toBeNull();
    const tooLong = await run("m1", `/bike card bike:Heron recovery:${"0".repeat(61)}`);
    expect(tooLong.data.refused).toEqual({ why: "too long", limit: 60 });
  });
  test("names for each line that is blank the very way to fill it, in words and beside the picture, and it is filled so", async () => {
    await run("m1", "/bike add name:Mule kind:sidecar outfit odometer:6,000 km");
    await add("m1", "Heron");
    for (const bike of ["Mule", "Heron"]) {
      const card = await run("m1", `/bike card bike:${bike} recovery:0800 555 0142`);
      const ways = [...(card.text ?? "").matchAll(/: (\/spec bike:\S+ what:(.+) value:)…/gu)].map(([, way = "", key = ""]) => ({ way, key }));
      expect(ways.length).toBeGreaterThan(12);
      expect(ways.map(({ key }) => key)).toEqual(card.data.rows.map(({ key }: { key: string }) => key));
      for (const { way, key } of ways) {
        if (key !== "battery") expect(card.files[0]?.alt).toContain(`what: ${key}`);
        const value = key.endsWith("pressure") ? "36 psi" : key.endsWith("torque") ? "65 Nm" : key === "chain slack" ? "30 mm" : "15 A";
        const saved = await run("m1", `${way}${value}`);
        expect([key, saved.data.refused, saved.data.key]).toEqual([key, undefined, key]);
      }
      const full = await run("m1", `/bike card bike:${bike}`);
      expect([full.text?.includes("/spec"), full.text?.includes("Not entered"), full.actions, full.files[0]?.alt.includes("Blank")]).toEqual([
        false,
        false,
        [],
        false,
      ]);
    }
  }, 30_000);
  test("the first lines that are blank have a button each, whose form fills them", async () => {
    await add("m1", "Heron");
    const card = await run("m1", "/bike card");
    expect(card.actions.map(({ label }) => label)).toEqual([
      "Enter front tyre size",
      "Enter front tyre pressure",
      "Enter rear tyre size",
      "Enter rear tyre pressure",
      "Enter front axle, torque",
    ]);
    await t.one({ as: "m1", fill: button(card, "Enter front tyre size"), fields: { value: "120/70 ZR17" } });
    const next = await run("m1", "/bike card");
    expect(next.text).toContain("- Front tyre size: 120/70 ZR17");
    expect(next.actions.map(({ label }) => label)).not.toContain("Enter front tyre size");
  });
  test("says what was entered, each load by its name, and names nothing that members disagree on", async () => {
    await add("m1", "Heron");
    const [bike] = await t.open.store.read((q) => q.bikes.ofOwner("m1" as MemberId));
    const spec = (id: string, key: string, typed: string, use: string | null) => ({
      ...{ id, rev: 1, state: "live", bike: bike?.id, key, use, typed, source: null, by: "m1", at: "2026-11-26T09:00:00.000Z", why: null },
      holds: /^\d/u.test(typed) && key.endsWith("pressure") ? { is: "figure", low: 248, high: 248, nominal: null, unit: "psi", step: 1 } : { is: "words" },
    });
    await t.open.store.change(async (q) => {
      for (const each of [
        spec("a", "rear tyre pressure", "36", "solo"),
        spec("b", "rear tyre pressure", "42 psi", "two-up"),
        spec("c", "fuses", "15 A, 10 A", null),
      ])
        await q.specs.add(each as never);
    });
    const { text } = await run("m1", "/bike card");
    expect(text).toContain("Rear tyre pressure: solo 36 psi; two-up 42 psi");
    expect(text).toContain("Fuses: 15 A, 10 A");
  });
});

describe("a group's picture", () => {
  test("shows only bikes whose owners said so, in the group where they said it, and no item by name", async () => {
    await add("m1", "Heron");
    await add("m2", "Quill");
    await run("m2", "/work did:brake fluid on:2024-03-05");
    expect((await run("m3", "/group picture:yes")).data.rows).toEqual([]);
    const said = await run("m2", "/bike change group-picture:yes");
    expect([said.data.pictured, said.text]).toEqual([true, expect.stringContaining("show Quill now")]);
    const seen = await run("m3", "/group picture:yes share:yes");
    expect([seen.visibility, seen.data.rows.map(({ nickname }: { nickname: string }) => nickname), seen.files.length]).toEqual(["shared", ["Quill"], 1]);
    expect(seen.data.rows[0].dueNow).toBe(1);
    expect(JSON.stringify(seen).toLowerCase()).not.toContain("brake fluid");
    expect((await run("m3", "/group picture:yes", { in: "g2" })).data.rows).toEqual([]);
    await run("m2", "/bike change group-picture:no");
    expect((await run("m3", "/group picture:yes")).data.rows).toEqual([]);
  });
  test("a sold bike leaves it; in no group there is none", async () => {
    await add("m1", "Heron");
    await run("m1", "/bike change group-picture:yes");
    await run("m1", "/bike change state:sold");
    expect((await run("m1", "/group picture:yes")).data.rows).toEqual([]);
    expect((await run("m1", "/group picture:yes", { in: "dm" })).data.refused).toEqual({ why: "not in a group" });
  });
});

test("a file from before there were group pictures and wrench evenings is brought up to date: no bike is in one", async () => {
  const folder = await mkdtemp(path.join(tmpdir(), "tappet-"));
  const file = path.join(folder, "practice.sqlite");
  const before = await openSqlite(file, { upTo: "202611261210-delivery-drawn" });
  await sql`pragma foreign_keys = off`.execute(before.db);
  await sql`insert into bikes (id, owner, nickname, nickname_key, kind, state, equipment, plan_column, conditions, known_date, known_ridden, whole_since_new, plan_hash, edits, facts_rev, rules_version, added_at)
    values ('b1', 'm1', 'Heron', 'heron', 'chain-drive twin', 'riding', '{}', 'mi', '[]', '2026-01-01', 0, 0, 'h', '[]', 1, 1, ${"2026-01-01T00:00:00.000Z" as Instant})`.execute(
    before.db,
  );
  await sql`insert into bike_groups (bike, group_id) values ('b1', 'g1')`.execute(before.db);
  await before.close();
  const now = await openSqlite(file);
  const rows = await now.db.selectFrom("bike_groups").selectAll().execute();
  expect(rows).toEqual([{ bike: "b1", group_id: "g1", pictured: 0, evening: 0 }]);
  expect(await storeOn(now).read((q) => q.bikes.picturedIn("g1" as GroupId))).toEqual([]);
  await sql`pragma foreign_keys = off`.execute(now.db);
  await storeOn(now).change((q) => q.bikes.picture("b1" as BikeId, "g1" as GroupId, true));
  expect((await now.db.selectFrom("bike_groups").selectAll().execute())[0]).toMatchObject({ pictured: 1, evening: 0 });
  expect(await storeOn(now).read((q) => q.bikes.broughtTo("g1" as GroupId))).toEqual([]);
  await storeOn(now).change((q) => q.bikes.bring("b1" as BikeId, "g1" as GroupId, true));
  expect((await now.db.selectFrom("bike_groups").selectAll().execute())[0]).toMatchObject({ pictured: 1, evening: 1 });
  await now.close();
  await rm(folder, { recursive: true });
});
