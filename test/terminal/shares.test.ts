// Shares in per cent, as a rider says them: how much longer than new a chain is, and how much antifreeze is in the coolant.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-11-25T10:00:00Z");
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const say = async (text: string) => (await t.one({ ...dm, say: text })).text ?? "";
  const run = async (line: string) => t.one({ ...dm, run: line });
  return { t, say, run };
}

test("a chain's elongation is held against its own limit in per cent, as a length over its pitches is", async () => {
  const { t, say, run } = await heron();
  // Published limits run from 1 to 3 %: below all of them it is good, beyond all of them at its end.
  expect(await say("chain stretch 0.5 %")).toContain("Chain elongation 0.5 %: within (1 %, common practice)");
  const perhaps = await t.one({ ...dm, say: "chain stretch 1.5 %" });
  expect(perhaps.text).toContain("Chain elongation 1.5 %: near limit (published limits run from 1 to 3 %). Look for the bike's own limit");
  expect(perhaps.text).toContain("/spec what:chain length limit value:… Until that is known, treat it as at its end.");
  expect(perhaps.text).toContain("Never clean or oil a chain with the engine turning it");
  expect(perhaps.actions.map(({ label }) => label)).toContain("Enter chain length limit");
  expect(await say("chain 324 mm over 20 pitches")).toContain("2 % longer than new: near limit (published limits run from 1 to 3 %, here 320.7 mm to 327 mm)");
  expect((await run("/reading picture:chain")).text).toContain("past the least that its limit can be");
  await run("/spec what:chain length limit value:2 %");
  const said = await t.one({ ...dm, say: "chain stretch 1.55 %" });
  expect(said.text).toContain("Chain elongation 1.55 %: near limit (2 % by your own figure).");
  expect(said.data.logged).toMatchObject([{ kind: "chain elongation", value: 1.55, unit: "%", typed: "1.55 %" }]);
  const worn = await say("chain worn 2 %");
  expect(worn).toContain("Chain elongation 2 %: at limit (2 % by your own figure). Replace chain and both sprockets together. Do not ride on it.");
  expect((await run("/due")).text).toContain("chain elongation 2 %, read today: at limit, 2 %");
  await t.close();
});

test("it is judged alike by a length over its pitches, and the later of both stands", async () => {
  const { t, say, run } = await heron();
  await run("/spec what:chain size value:525");
  // Twenty pitches of 15.875 mm (ISO 606) are 317.5 mm; 323.9 is two per cent more.
  await run("/spec what:chain length limit value:323.9 mm");
  expect(await say("chain worn 2.2 %")).toContain("beyond limit (2 % by your own figure)");
  await t.send({ advance: "P1D", asleep: true });
  await say("new chain at 14,250");
  await t.send({ advance: "P1D", asleep: true });
  expect(await say("chain 318.5 mm over 20 pitches")).toContain("within");
  expect((await run("/due")).text).not.toContain("beyond limit");
  await t.close();
});

test("a share of antifreeze is told as the frost that ethylene glycol stands, and held against what the bike asks for", async () => {
  const { t, say, run } = await heron();
  // US Army TM 5-3895-382-24: 30 % ethylene glycol protects to -15 °C, 50 % to -37 °C.
  expect(await say("coolant 30 %")).toContain("good to about -15 °C if its antifreeze is ethylene glycol");
  await run("/spec what:coolant strength value:-30 °C");
  const weak = await t.one({ ...dm, say: "coolant 30 %" });
  expect(weak.text).toContain("Share of antifreeze in the coolant 30 %: beyond limit, too weak (");
  expect(weak.text).toContain(
    "Good to about -15 °C if its antifreeze is ethylene glycol, by the published table; others differ, and a refractometer shows it surely.",
  );
  expect(weak.text).toContain("frozen coolant bursts the engine");
  expect(weak.data.logged).toMatchObject([{ kind: "antifreeze share", value: 30, unit: "%", typed: "30 %" }]);
  expect((await run("/due")).text).toContain("share of antifreeze in the coolant 30 %, read today: beyond limit, too weak");
  expect(await say("antifreeze 50/50")).toContain("Share of antifreeze in the coolant 50 %: within");
  expect((await run("/due")).text).not.toContain("too weak");
  // Beyond sixty per cent it protects less again: the tester tells.
  expect(await say("antifreeze 70 %")).toContain("say what a coolant tester shows, such as “coolant good to -25 °C”");
  expect(await say("coolant good to -34 °C")).toContain("within");
  await t.close();
});
