// Messages that tell what only a command takes: the command is named, and nothing is saved.

import { expect, test } from "vitest";
import { forCommand } from "../../src/message/for-a-command.ts";
import { talk } from "../support/talk.ts";

test.each([
  ["laid it up for the winter", "laid up"],
  ["put the bike away for the winter", "laid up"],
  ["Heron ist eingewintert", "laid up"],
  ["it's out of storage", "riding again"],
  ["chain is a 525 with 112 links", "chain size"],
  ["my recovery number is 0800 123456", "recovery number"],
  ["make me a roadside card", "roadside card"],
  ["added 3 psi to the front", "air changed"],
  ["let 4 psi out of the rear", "air changed"],
  ["hinten 0,2 bar nachgefüllt", "air changed"],
  ["is 31 psi ok for the front?", "value asked"],
  ["is 3 mm tread enough on the rear", "value asked"],
  ["2,1 bar vorne noch gut?", "value asked"],
  ["what is 36 psi in bar?", null],
  ["is it laid up?", null],
  ["the chain costs 120", null],
])("%s", (say, what) => {
  expect(forCommand(say)).toBe(what);
});

test("said to the bot, the answer names the command and the bike", async () => {
  const t = await talk("2026-11-01T09:00:00Z");
  const dm = { as: "Ines", in: "dm" };
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  const answer = await t.one({ ...dm, say: "laid it up for the winter" });
  expect(answer.data).toMatchObject({ is: "not understood", command: "laid up" });
  expect(answer.text).toContain("/bike change bike:Heron state:laid up");
  await t.close();
});
