// Figures that stand in sentences are those that the tables judge by: words know the trade by type alone, so nothing but this holds the two together.

import { afterEach, beforeEach, expect, test } from "vitest";
import { freezesAt } from "../../src/core/battery/rest.ts";
import { usualAccuracy } from "../../src/core/torque/wrench.ts";
import { CHARGING, FREEZING, GRAVITY, REST_TABLES, RESTED_HOURS } from "../../src/trade/battery.ts";
import { ELONGATION } from "../../src/trade/chain.ts";
import { MOST_GLYCOL } from "../../src/trade/coolant.ts";
import { BAR } from "../../src/trade/judged.ts";
import { TYRE_AGE } from "../../src/trade/tyres.ts";
import { POINT_WORDS } from "../../src/words/en/check-points.ts";
import { COMMAND_WORDS } from "../../src/words/en/commands.ts";
import { KIND_WORDS } from "../../src/words/en/kinds.ts";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:8,000 mi" });
});
afterEach(() => t.close());

const said = async (words: string): Promise<string> => (await t.send({ as: "Ines", in: "dm", say: words })).map(({ text }) => text ?? "").join("\n");

test("how far a chain may go, and how much antifreeze helps", async () => {
  expect(await said("chain 322 mm over 20 pitches on Heron")).toContain(`published limits run from ${ELONGATION.least * 100} to ${ELONGATION.most * 100} %`);
  expect(await said(`antifreeze ${MOST_GLYCOL + 5} % on Heron`)).toContain(`beyond ${MOST_GLYCOL} % it protects less`);
});

test("how high the bars of a tyre stand", async () => {
  await t.one({ as: "Ines", admin: true, run: "/group place:Germany" });
  expect(await said("tread 1.7 mm rear on Heron")).toContain(`The moulded bars, ${BAR.toFixed(1)} mm, lie below that.`);
  expect(POINT_WORDS["tyre-tread"].more).toContain(`${BAR.toFixed(1)} mm`);
});

test("how old a tyre may be: looked at yearly from five years on, replaced at ten", async () => {
  const years = (months: number) => ["five", "ten"][[60, 120].indexOf(months)];
  const old = await t.one({ as: "Ines", in: "dm", run: "/tyre date code:0120" });
  expect(old.text).toContain(`Past ${years(TYRE_AGE.look)} years: have it looked at once a year`);
  expect(old.text).toContain(`replace it at ${years(TYRE_AGE.replace)} at the latest`);
  expect((await t.one({ as: "Ines", in: "dm", run: "/tyre date code:0116" })).text).toContain(`at ${years(TYRE_AGE.replace)} years rubber is too hard`);
});

test("how long a battery rests, what it then shows, at what cold it freezes, what it is charged with", async () => {
  const hours = `${["six"][[6].indexOf(RESTED_HOURS)]} hours`;
  expect(await said("battery 12.7 V on Heron")).toContain(hours);
  expect(KIND_WORDS["battery voltage"].howTo).toContain(hours);
  expect((await t.one({ as: "Ines", in: "dm", run: "/spec what:flooded battery" })).text).toContain(hours);
  // Words are rounded down, and never say it is fuller than it is.
  const [full, , half] = REST_TABLES.flooded.points.map(({ volts }) => (Math.floor(volts * 10) / 10).toFixed(1));
  expect(POINT_WORDS["battery-volts"].good).toContain(`${full} V is full, ${half} V is half`);
  // Empty is what judging takes it to be: the gravity of the one table, in the other.
  const empty = GRAVITY.find(({ x }) => x === 0)?.y ?? 0;
  const freezes = Math.round(freezesAt(0, GRAVITY, FREEZING));
  expect(POINT_WORDS["battery-frozen"].more).toContain(`near ${freezes} °C (US Army TM 5-1185, specific gravity ${empty.toFixed(3)})`);
  expect(POINT_WORDS["charging-volts"].good).toContain(`between ${CHARGING.AGM.min} and ${CHARGING.AGM.max} V`);
});

test("how far a torque wrench may be out where its owner does not say", () => {
  const percent = (full: number) => Math.round(usualAccuracy(full, "N·m") * 100);
  expect(COMMAND_WORDS["torque wrench-add"].options.accuracy).toBe(`In percent; ${percent(11)} if not said, ${percent(10)} for one up to 10 N·m`);
});
