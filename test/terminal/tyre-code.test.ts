// The date code of a tyre that is on, as a rider says it, types it and reads it back. Week and year: 49 CFR 574.5; ages: common practice.

import { expect, test } from "vitest";
import { button, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-11-25T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const say = (text: string) => t.one({ ...dm, say: text });
  const run = async (line: string) => t.one({ ...dm, run: line });
  return { t, say, run };
}

test("said by message: kept as typed, with what it means, by end; undone, and typed anew", async () => {
  const { t, say, run } = await heron();
  const logged = await say("front 2319 rear 0120 date codes");
  expect(logged.text).toContain("Heron: front tyre date code 2319 and rear tyre date code 0120, today. Logged.");
  expect(logged.text).toContain("Rear tyre: made in week 1 of 2020, 6 years old. Past five years: have it looked at once a year");
  expect(logged.data.logged).toMatchObject([
    { kind: "tyre date code", place: "front", value: 2319, unit: "date code", typed: "2319" },
    { kind: "tyre date code", place: "rear", value: 120, unit: "date code", typed: "0120" },
  ]);
  const shown = await run("/tyre show");
  expect(shown.text).toContain("- Front tyre: made in week 23 of 2019, 7 years old. Past five years");
  expect(shown.data.aged).toMatchObject([
    { place: "front", age: "look yearly", work: null, on: "2026-11-25" },
    { place: "rear", age: "look yearly" },
  ]);
  await t.one({ ...dm, press: button(logged, "Undo") });
  expect((await run("/tyre show")).data.aged).toEqual([]);
  // What it calls for is in the plan, in the same words: ten years from week 14 of 2017 are April 2027, and it comes up half a year before.
  const due = await say("rear tyre DOT 1417");
  expect(due.text).toContain("Heron: Rear tyre age, now coming up.");
  expect((await run("/due")).text).toContain(
    "Rear tyre age: made in week 14 of 2017, 9 years old: at ten it is replaced whatever its tread, by common practice; by age, from week 14 of 2017, 3 April.",
  );
  expect((await say("rear tyre DOT 148")).text).toContain("Rear tyre: made before 2000, at least 28 years old. Replace it whatever its tread");
  const all = (await run("/due")).text;
  expect(all).toContain("Rear tyre age: due long since: made before 2000 by its date code; at least 28 years old: at ten");
  expect(all).toContain(
    "Its age is not known: read the last four digits behind DOT off its sidewall, week and year, and write them such as “rear tyre DOT 2223”: front tyre age.",
  );
  await say("new front tyre at 14,300");
  expect((await run("/due")).text).toContain("counted from then as its date code is not noted: it may be older, so read it off the sidewall");
  await say("front tyre DOT 2021");
  expect((await run("/due")).text).toContain(
    "Front tyre age: due on 17 May 2031, 10 years by plan from week 20 of 2021, its date code, and past five it is looked at once a year for cracks and hard rubber; in 4 years.",
  );
  await t.close();
});

test("a maker that asks for less is heard everywhere alike; one that is silent is not", async () => {
  const { t, say, run } = await heron();
  const change = await run("/plan change item:rear tyre age every:6 years why:manual p. 12");
  await t.one({ ...dm, press: button(change, "Save") });
  const read = await say("rear tyre DOT 1419");
  expect(read.text).toContain(
    "made in week 14 of 2019, 7 years old. Replace it whatever its tread: six years by your plan; ten at the latest by common practice.",
  );
  expect(read.text).toContain("Heron: Rear tyre age, now overdue.");
  expect((await run("/due")).text).toContain("Rear tyre age: was due on 1 April 2025, 6 years by plan from week 14 of 2019, its date code");
  expect((await run("/tyre show")).text).toContain("7 years old. Replace it whatever its tread: six years by your plan");
  expect((await say("rear tyre DOT 2621")).text).toContain(
    "5 years old. Past five years: have it looked at once a year for cracks and hard rubber, and replace it at six years by your plan.",
  );
  await t.close();
});

test("an end of which no code is noted is told how to give one", async () => {
  const { t, say, run } = await heron();
  expect((await run("/tyre show")).text).toContain("- Front and rear tyre: their age is not known. Read the last four digits behind DOT off each sidewall");
  await say("front tyre DOT 3424");
  const shown = await run("/tyre show");
  expect(shown.text).toContain(
    "- Rear tyre: its age is not known. Read the last four digits behind DOT off its sidewall, week and year, and write them such as “rear tyre DOT 2223”.",
  );
  expect(shown.data.undated).toEqual(["rear"]);
  await t.close();
});

test("a code of later than the fitting of its tyre is asked about, in the message that says both and beside what is on record", async () => {
  const { t, say, run } = await heron();
  const both = await say("new rear tyre 3026 on 1 May 2026");
  expect(both.text).toContain("the code 3026 is of later than 1 May, when that tyre was fitted.");
  expect(both.text).toContain("Nothing is saved until you answer.");
  await t.one({ ...dm, press: button(both, "Let it go") });
  expect((await say("new rear tyre 1826 on 1 May 2026")).text).toContain("Recorded.");
  expect((await say("rear tyre DOT 1926")).text).toContain("the code 1926 is of later than 1 May, when that tyre was fitted.");
  expect((await run("/tyre date code:2026 end:rear")).text).toContain("If another tyre was fitted since, let this go and say that first");
  expect((await run("/tyre show")).data.aged).toMatchObject([{ place: "rear", date: { week: 18, year: 2026 } }]);
  // The other end's was never fitted anew.
  expect((await say("front tyre DOT 1926")).text).toContain("Logged.");
  await t.close();
});

test("week and year in words are its code; a year or an age alone is not noted, and says what it already tells", async () => {
  const { t, say, run } = await heron();
  const read = await say("rear tyre made in week 12 of 2019");
  expect(read.text).toContain("Heron: rear tyre date code week 12 of 2019, today. Logged.\nRear tyre: made in week 12 of 2019, 7 years old.");
  expect((await run("/tyre show")).data.aged).toMatchObject([{ place: "rear", date: { week: 12, year: 2019 } }]);
  const fitted = await say("new front tyre made in week 10 of 2026 at 14,300");
  expect(fitted.text).toContain("Heron: New front tyre, done today at 14,300 mi, with front tyre made in week 10 of 2026. Recorded.");
  expect((await run("/tyre date code:12/19")).text).toContain("Made in week 12 of 2019");
  const year = await say("tyres are from 2014");
  expect(year.text).toContain(
    "a year or an age alone is not noted, since the plan counts from the week. It is at least 11 years old by that. Replace it whatever its tread",
  );
  expect(year.text).toContain("Nothing is saved until you answer.");
  await t.one({ ...dm, press: button(year, "Let it go") });
  const old = await say("the rear tyre is 6 years old");
  expect(old.text).toContain("It is at least 6 years old by that. Past five years: have it looked at once a year");
  await t.one({ ...dm, press: button(old, "Let it go") });
  expect((await run("/tyre show")).data.aged).toHaveLength(2);
  // Said to others, and not to the bot.
  expect(await t.send({ as: "Ines", say: "tyres are from 2014" })).toEqual([]);
  await t.close();
});

// UN Regulation No. 75, Annex 4 and 2.33: load index 69 is 325 kg, symbol V is 240 km/h; 59 is 243 kg.
test("what is moulded on a sidewall is explained, and kept as the size of that end by one press", async () => {
  const { t, say, run } = await heron();
  const rear = await say("rear tyre 150/70R17 69V");
  expect(rear.text).toContain("150/70R17: radial construction, load index 69: 325 kg (717 lb) and speed symbol V: 240 km/h (149 mph).");
  expect(rear.text).toContain("Load and speed by UN Regulation No. 75");
  expect(rear.actions.map(({ label }) => label)).toEqual(["Save as spec: rear tyre size 150/70R17 69V"]);
  await t.one({ ...dm, press: button(rear, "Save as spec: rear tyre size 150/70R17 69V") });
  expect((await run("/spec what:rear tyre size")).text).toContain("150/70R17 69V");
  const both = await say("front 110/80R19 59V, rear 150/70R17 69V");
  expect(both.data.tyres).toMatchObject([
    { place: "front", marking: { size: "110/80R19", load: { index: 59, kilograms: 243 } } },
    { place: "rear", marking: { size: "150/70R17", speed: { symbol: "V", kmh: 240 } } },
  ]);
  expect((await say("Hinterreifen 150/70R17 69V")).data.tyres).toMatchObject([{ place: "rear" }]);
  expect((await say("150/70R17 69V")).actions).toHaveLength(2);
  // Of two bikes, with none named, it is not guessed whose.
  await run("/bike add name:Otter kind:belt-drive cruiser odometer:1,180 mi");
  expect((await say("rear tyre 150/70R17 69V")).actions).toEqual([]);
  expect((await say("rear tyre 150/70R17 69V on Otter")).actions).toHaveLength(1);
  await t.close();
});

test("a tyre fitted since has its own age, or none while its code is not said", async () => {
  const { t, say, run } = await heron();
  await say("tyres are 1417 both");
  await t.send({ advance: "P1D", asleep: true });
  await say("new rear tyre at 14,300");
  expect((await run("/tyre show")).data.aged).toMatchObject([{ place: "front", date: { year: 2017 } }]);
  await say("rear tyre DOT 3725");
  expect((await run("/tyre show")).data.aged).toMatchObject([{ place: "front" }, { place: "rear", date: { week: 37, year: 2025 }, age: "within" }]);
  // Of one moment: what was said with the fitting is the new one's.
  await say("new front tyre, DOT 3625, at 14,300");
  expect((await run("/tyre show")).data.aged).toMatchObject([{ place: "front", date: { week: 36, year: 2025 } }, { place: "rear" }]);
  await t.close();
});

test("what no tyre can bear is asked about, and so is what may be the odometer", async () => {
  const { t, say, run } = await heron();
  const week = await say("rear tyre DOT 5417");
  expect(week.text).toContain("names a week that no year has");
  expect(week.text).toContain("Nothing is saved until you answer.");
  await t.one({ ...dm, press: button(week, "Let it go") });
  expect((await run("/tyre show")).data.aged).toEqual([]);
  expect((await say("tyre code 1430")).text).toContain("is a week still to come");
  const asked = await say("rear tyre 1200");
  expect(asked.text).toContain("which of these is it?");
  const code = await t.one({ ...dm, press: button(asked, "tyre date code") });
  expect(code.data.readings).toMatchObject([{ kind: "tyre date code", place: "rear", typed: "1200", unit: "date code" }]);
  await run("/bike add name:Otter kind:belt-drive cruiser odometer:1,180 mi");
  const dial = await say("rear tyre 1200 on Otter");
  const read = await t.one({ ...dm, press: button(dial, "odometer") });
  expect(read.data.readings).toMatchObject([{ kind: "odometer", place: null, unit: "mi", typed: "1200" }]);
  await t.close();
});

test("by command: explained, and noted where an end is named", async () => {
  const { t, run } = await heron();
  expect((await run("/tyre date code:1417")).text).toContain("Made in week 14 of 2017: 9 years old.");
  expect((await run("/tyre show")).data.aged).toEqual([]);
  const noted = await run("/tyre date code:DOT 4B9X ABCD 0712 end:rear");
  expect(noted.text).toContain("Heron: rear tyre date code DOT 4B9X ABCD 0712, today. Logged.\nRear tyre: made in week 7 of 2012, 14 years old.");
  expect((await run("/reading")).text).toContain("Rear tyre date code DOT 4B9X ABCD 0712");
  expect((await run("/tyre date code:2223 end:both")).data.readings).toHaveLength(2);
  expect((await run("/tyre show")).data.aged).toMatchObject([
    { place: "front", age: "within" },
    { place: "rear", age: "within" },
  ]);
  expect((await run("/tyre date code:5412 end:rear")).text).toContain("names a week that no year has");
  await t.close();
});
