// The tyre commands, as a rider types them.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

test("how far a tyre still goes, from what was read since it was fitted, and what the last one went", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await t.one({ as: "Ines", admin: true, run: "/group place:Germany" });
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  expect(await run("/tyre show")).toContain("Nothing read yet.");
  await run("/work did:rear tyre age at:8,000 mi outcome:replaced");
  const read = async (miles: string, mm: string) => {
    await t.send({ advance: "P40D" });
    await t.one({ ...dm, say: `${miles} mi on Heron, tread ${mm} mm rear` });
  };
  await read("14,000", "2.2");
  await run("/work did:rear tyre age at:14,200 mi outcome:replaced");
  await read("14,300", "7");
  expect(await run("/tyre show")).toContain("Rear tyre: one reading is too few to say how far it goes.");
  await read("15,600", "6");
  await read("16,900", "5");
  const shown = await t.one({ ...dm, run: "/tyre show" });
  // (5 - 1.6) mm at 1 mm in 1,300 mi: some 4,400 mi.
  expect(shown.text).toMatch(
    /- Rear tyre: about 4,[2-7]\d0 mi left \([\d,]+ mi to [\d,]+ mi with eight chances in ten\), likely until [^(;]+ \(between [^(;]+ and [^(;]+ with eight chances in ten\); from 3 readings\.\n- The last rear tyre lasted 6,200 mi\./u,
  );
  expect(shown.data.worn).toMatchObject([{ part: "rear tread", wear: { is: "line", readings: 3 } }]);
  const due = await t.one({ ...dm, run: "/due" });
  expect(due.text).toMatch(/Rear tyre: about 4,[2-7]\d0 mi left \(.*\), likely until .* \(between .* and .* with eight chances in ten\)/u);
  const [{ likely }] = shown.data.worn;
  expect(likely.from < likely.on && likely.on < likely.to).toBe(true);
  await t.close();
});

test("how a tyre is goes before how deep it is: cracks, a squared-off middle, a plug, until another is on", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  await t.one({ ...dm, say: "tread 5 mm front 4 mm rear" });
  const show = async () => (await t.one({ ...dm, run: "/tyre show" })).text ?? "";
  expect(await show()).toContain("Heron, tyres\nLook before you measure: cracks, cuts, a squared-off middle, plugs. None is noted");
  const found = [
    ["front tyre has cracks", "cracked tyre", "Do not ride"],
    ["rear tyre squared off", "squared-off tyre", "Watch"],
    // To be watched by itself.
    ["plugged the rear tyre", "plugged tyre", null],
  ] as const;
  for (const [say, kind, grade] of found) {
    const noted = await t.one({ ...dm, say });
    expect(noted.data.defects).toMatchObject([{ kind }]);
    if (grade !== null) await t.one({ ...dm, press: button(noted, grade) });
  }
  const shown = await show();
  for (const [say] of found) expect(shown.indexOf(`“${say}”`)).toBeGreaterThan(0);
  expect(shown.indexOf("squared off”")).toBeLessThan(shown.indexOf("Rear tread depth"));
  expect(shown).toContain("- Do not ride: “front tyre has cracks”");
  await t.close();
});

test("everything that stands open of a tyre is told before its depth, do not ride first: by eye, by figure, by a check", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  const show = async () => (await t.one({ ...dm, run: "/tyre show" })).text ?? "";
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  await t.one({ ...dm, run: "/spec what:front tyre pressure value:34 psi" });
  await t.one({ ...dm, press: button(await t.one({ ...dm, say: "rear tyre squared off" }), "Watch") });
  await t.one({ ...dm, say: "rear tyre is at the wear bars" });
  await t.one({ ...dm, say: "front tyre has a nail in it" });
  await t.one({ ...dm, say: "front tyre is cracked" });
  await t.one({ ...dm, say: "rear tread 4.2 mm, front tread 0.5 mm, 20 psi front" });
  let card = await t.one({ ...dm, run: "/check list:pre-ride bike:Heron" });
  const to = card.actions.find(({ label }) => label === "Another section");
  card = await t.one({ ...dm, pick: to?.id, values: [to?.options?.find(({ label }) => label.startsWith("Tyres and wheels"))?.value] });
  await t.one({ ...dm, fill: button(card, "Needs work"), fields: { what: "valve stem perished", grade: "do not ride" } });
  await t.one({ ...dm, say: "mirror is loose" });
  const shown = await show();
  expect(shown).not.toContain("None is noted");
  expect(shown).not.toContain("mirror");
  const stop = ["rear tyre is at the wear bars", "front tread 0.5 mm", "front cold pressure 20 psi", "valve stem perished", "front tyre has a nail in it"];
  const at = (words: string): number => {
    expect(shown).toContain(words);
    return shown.indexOf(words);
  };
  const [cracked, squared] = [at("Not graded yet: “front tyre is cracked”"), at("Watch: “rear tyre squared off”")];
  expect(Math.max(...stop.map((words) => at(`Do not ride: “${words}”`)))).toBeLessThan(cracked);
  expect(cracked).toBeLessThan(squared);
  expect(squared).toBeLessThan(at("- Rear tread depth 4.2 mm"));
  await t.close();
});

test("a leak is likely where more was lost than the cold would take, though nobody noted the temperature; each load by itself, until another tyre is on", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  const say = (words: string) => t.one({ ...dm, say: words });
  const leak = async () => /- Rear tyre: lost .*/u.exec((await t.one({ ...dm, run: "/tyre show" })).text ?? "")?.[0] ?? null;
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  for (const reading of ["rear 42 psi two-up", "rear 36 psi solo", "rear 34 psi solo"]) {
    await say(reading);
    await t.send({ advance: "P10D", asleep: true });
  }
  expect(await leak()).toBeNull();
  await say("rear 32 psi solo");
  await t.send({ advance: "P10D", asleep: true });
  await say("rear 29.5 psi solo");
  expect(await leak()).toBe(
    "- Rear tyre: lost 6.5 psi in 30 days. The air temperature was not noted each time; had it grown colder by 25 °C, that alone would take about 4.3 psi. So a slow leak is likely: valve, bead or a nail. Look before you ride, and note the temperature beside the next readings, such as “rear 36 psi at 12 °C”.",
  );
  const shown = await t.one({ ...dm, run: "/tyre show" });
  expect(shown.data.leaks).toMatchObject([{ place: "rear", leak: { is: "leak likely", days: 30, fills: 1, fall: 25 } }]);
  await t.send({ advance: "P1D", asleep: true });
  await t.one({ ...dm, run: "/work did:rear tyre age at:8,100 mi outcome:replaced" });
  expect(await leak()).toBeNull();
  await t.close();
});

test("a date code, the marks of a sidewall, and what to set in a warm garage", async () => {
  const t = await talk("2026-11-26T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  // 49 CFR 574.5: the last four symbols are week and year.
  expect(await run("/tyre date code:DOT 4B9X ABCD 0712")).toContain("Made in week 7 of 2012: 14 years old.\nReplace it whatever its tread");
  expect(await run("/tyre date code:317")).toContain("Three digits: made before 2000, week 31 of a year ending in 7");
  expect(await run("/tyre date code:5412")).toContain("names a week that no year has");
  // UN Regulation No. 75: 58W is 236 kg at 270 km/h; 64S 280 kg at 180 km/h.
  const marked = await run("/tyre marking mark:120/70ZR17 M/C (58W) other:4.00-18 64S");
  expect(marked).toContain("load index 58: 236 kg (520 lb) and speed symbol W: 270 km/h (168 mph)");
  expect(marked).toContain("The ends are built differently");
  expect(await run("/tyre marking mark:hello")).toContain("Type it as it is moulded");
  // Gay-Lussac on absolute pressure: (36 + 14.696) x 293.15 / 275.15 - 14.696 = 39.3 psi.
  expect(await run("/tyre pressure want:36 psi garage:20 °C road:2")).toContain("Set 39 psi indoors at 20 °C: on the road at 2 °C that is the 36 psi wanted.");
  expect(await run("/tyre pressure want:36 psi garage:20 °C road:2")).toContain("Never above the maximum moulded on the sidewall. Check it again cold");
  expect(await run("/tyre pressure want:36 psi garage:warm road:2")).toBe("I cannot read “warm” as a temperature. Try 20 °C or 68 °F.");
  expect(await run("/tyre pressure want:36 mm garage:20 °C road:2")).toContain("as a pressure");
  await t.close();
});

test("a tyre is never let down by arithmetic: a garage colder than the road leaves it at what is wanted", async () => {
  const t = await talk("2026-06-26T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  // A tyre is set cold where the ride starts: common practice, and what makers' plates ask for.
  const colder = await run("/tyre pressure want:36 psi garage:2 °C road:30");
  expect(colder.text).toContain("Set the 36 psi wanted where the ride starts, at 30 °C");
  expect(colder.text).toContain("set it no lower than 36 psi: never underfill a tyre by arithmetic. Never above the maximum moulded on the sidewall.");
  expect(colder.data).toMatchObject({ garageIs: "colder", set: 36 });
  expect((await run("/tyre pressure want:2.5 bar garage:68 °F road:20 °C")).text).toContain("Set the 2.5 bar wanted: garage and road are equally warm");
  // (36 + 14.696) x 323.15 / 253.15 - 14.696 = 50 psi, far over what is wanted; (36 + 14.696) x 293.15 / 263.15 - 14.696 = 41.8 psi.
  expect((await run("/tyre pressure want:36 psi garage:50 °C road:-20 °C")).data).toMatchObject({ garageIs: "too far apart", set: 36 });
  expect((await run("/tyre pressure want:36 psi garage:20 °C road:-10 °C")).text).toContain("Set 42 psi indoors");
  // (60 + 14.696) x 313.15 / 253.15 - 14.696 = 77.7 psi, beyond what any motorcycle tyre is set to.
  const apart = await run("/tyre pressure want:60 psi garage:40 °C road:-20 °C");
  expect(apart.text).toContain("Set the 60 psi wanted where the ride starts, at -20 °C. From a garage of 40 °C that is too far to correct");
  expect(apart.data).toMatchObject({ garageIs: "too far apart", set: 60 });
  await t.close();
});

test("a pressure or a temperature that no tyre, garage or road has is refused with what to do", async () => {
  const t = await talk("2026-06-26T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  expect(await run("/tyre pressure want:360 psi garage:20 °C road:2")).toBe(
    "No motorcycle tyre is set to “360 psi”: makers ask for 9 to 65 psi. Look again at the plate or the manual, and type it with its unit.",
  );
  expect(await run("/tyre pressure want:25 bar garage:20 °C road:2")).toContain("makers ask for 0.6 to 4.5 bar");
  expect(await run("/tyre pressure want:36 psi garage:60 °C road:2")).toContain("I do not work with “60 °C”: I take garages and roads of -20 to 50 °C.");
  expect(await run("/tyre pressure want:36 psi garage:20 °C road:-30 °C")).toContain("I do not work with “-30 °C”");
  expect(await run("/tyre pressure want:36 psi garage:68 °F road:-30")).toContain("roads of -4 to 122 °F");
  await t.close();
});

test("a tyre changed on the day that the old one was measured: what was read before the work is not the new one's", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:8,000 mi");
  await t.one({ ...dm, say: "8,000 mi on Heron, tread 0.5 mm rear" });
  await t.send({ advance: "PT1H" });
  await run("/work did:rear tyre age at:8,000 mi outcome:replaced");
  expect(await run("/tyre show")).not.toMatch(/Rear (tyre|tread)/u);
  await t.send({ advance: "PT1H" });
  await t.one({ ...dm, say: "tread 7 mm rear" });
  expect(await run("/tyre show")).toContain("Rear tyre: one reading is too few to say how far it goes.");
  await t.close();
});

test("a tyre that was renewed is said and kept as a new tyre, not as its age", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  expect((await t.one({ ...dm, say: "New rear tyre on Heron" })).text).toContain("Heron: New rear tyre, done today. Recorded.");
  expect((await t.one({ ...dm, run: "/work did:front tyre at:8,000 mi outcome:replaced" })).text).toContain("Heron: New front tyre, done today at 8,000 mi.");
  await t.one({ ...dm, run: "/work did:rear tyre age outcome:could not do" });
  const records = (await t.one({ ...dm, run: "/records bike:Heron" })).text;
  expect(records).toContain("New rear tyre (replaced)");
  expect(records).toContain("New front tyre (replaced)");
  expect(records).toContain("Rear tyre age (could not do)");
  expect((await t.one({ ...dm, run: "/due bike:Heron" })).text?.toLowerCase()).toContain("rear tyre age");
  await t.close();
});

test("of both pads of a pair the thinner makes the wear line, one point a day", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  const run = (line: string) => t.one({ ...dm, run: line });
  await run("/bike add name:Heron kind:chain-drive twin odometer:8,000 mi");
  await t.one({ ...dm, say: "front pads inner 4 mm outer 4.4 mm" });
  await t.one({ ...dm, say: "front pads inner 4 mm outer 4.4 mm" });
  expect((await run("/due bike:Heron")).text).not.toContain("Front pads: about");
  await t.send({ advance: "P60D" });
  await t.one({ ...dm, say: "11,000 mi on Heron, front pads inner 3 mm outer 3.6 mm" });
  const drawn = await run("/reading picture:pads");
  expect(drawn.files[0]?.alt).toContain("Front 3 mm, limit 1 mm");
  expect((await run("/due bike:Heron")).text).toMatch(/Front pads: about [\d,]+ mi left .*from 2 readings/u);
  await t.close();
});

test("a tyre is filled indoors by no more than a fifth over what is wanted; further apart it is set where the ride starts", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
  const set = (road: number) => t.one({ ...dm, run: `/tyre pressure want:36 psi garage:20 °C road:${road} °C` });
  // Gay-Lussac on absolute pressure: 50.696 psi times 293.15 / 257.15 less 14.696 is 43.1, and for -17 °C 43.3; a fifth over 36 is 43.2.
  expect((await set(-16)).text).toContain("Set 43 psi");
  expect((await set(-17)).text).not.toContain("Set 43");
  await t.close();
});

test("a change that was recorded twice is one: what the tyre before it went is told, and no tyre of no distance", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  await run("/bike add name:Heron kind:chain-drive twin odometer:8,000 mi");
  await run("/work did:rear tyre age at:8,000 mi outcome:replaced");
  await t.send({ advance: "P200D" });
  await run("/work did:rear tyre age at:14,200 mi outcome:replaced");
  await t.send({ advance: "P2D" });
  // The bill comes two days later, with the figure of the shop.
  await run("/work did:rear tyre age at:14,210 mi outcome:replaced by:a shop");
  expect(await run("/tyre show")).toContain("The last rear tyre lasted 6,200 mi.");
  // Half a year on it is another one.
  await t.send({ advance: "P150D" });
  await run("/work did:rear tyre age at:14,230 mi outcome:replaced");
  expect(await run("/tyre show")).toContain("The last rear tyre lasted 30 mi.");
  await t.close();
});

test.each([
  ["found and left beside the new tyre", ["new rear tyre at 14,000 mi, rear tread found 1.8 mm, left 8 mm"]],
  ["found and left before the new tyre is recorded", ["rear tread was 1.8 mm now 8 mm, 14,000 mi", "new rear tyre at 14,000 mi"]],
  ["found and left after it", ["new rear tyre at 14,000 mi", "rear tread found 1.8 mm left 8 mm"]],
  ["only what is on it now", ["new rear tyre at 14,000 mi, rear tread 8 mm"]],
])("the wear line begins with the new tyre: %s", async (_how, day) => {
  const t = await talk("2026-03-01T10:00:00Z");
  const say = (line: string) => t.one({ ...dm, say: line });
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:13,000 mi" });
  await say("13,000 mi, rear tread 3 mm");
  await t.send({ advance: "P40D" });
  for (const each of day) await say(each);
  for (const reading of ["15,250 mi, rear tread 7 mm", "16,500 mi, rear tread 6 mm"]) {
    await t.send({ advance: "P60D" });
    await say(reading);
  }
  const [{ wear }] = (await t.one({ ...dm, run: "/tyre show" })).data.worn;
  // 2 mm in 2,500 mi, which are 4,023 km: 0.497 mm in 1,000 km.
  expect(wear).toMatchObject({ is: "line", readings: 3 });
  expect(wear.per1000km).toBeCloseTo(0.497, 1);
  expect(wear.start).toBeCloseTo(8, 0);
  await t.close();
});

test("marks or codes of two tyres in one text: neither is dropped unseen", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  const run = async (line: string) => (await t.one({ ...dm, run: line })).text ?? "";
  const both = await run("/tyre marking mark:front 120/70ZR17 58W rear 180/55-17 73W");
  expect(both).toContain("120/70ZR17: radial");
  expect(both).toContain("180/55-17: bias ply");
  expect(await run("/tyre marking mark:120/70ZR17 180/55ZR17 130/90-16")).toContain("One tyre at a time");
  expect(await run("/tyre date code:front 1223 rear 1417")).toContain("holds more than one date code. One at a time, each with its end");
  await t.one({ ...dm, run: "/bike add name:Gannet kind:belt-drive cruiser odometer:13,000 mi" });
  for (const say of ["belt 21.5 mm wide", "Gannet drive belt width 21.5 mm"]) expect((await t.one({ ...dm, say })).text).toContain("I keep no width of a belt");
  expect((await t.one({ ...dm, say: "belt 10 mm" })).text).toContain("belt deflection 10 mm");
  await t.close();
});

test("a code typed as found at a tyre's age is the code of the tyre that is on, and no new one", async () => {
  const t = await talk("2026-03-01T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:13,000 mi" });
  const said = await t.one({ ...dm, run: "/work did:rear tyre age found:1417" });
  expect(said.text).toContain("rear tyre date code 1417");
  expect(said.text).toContain("made in week 14 of 2017");
  // A week that no year has is none: it is asked, as any words are.
  expect((await t.one({ ...dm, run: "/work did:rear tyre age found:9917" })).text).toContain("Nothing is saved until you answer.");
  await t.close();
});
