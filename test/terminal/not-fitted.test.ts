// Work named that a bike cannot have is told so, kindly, and not as if nothing had been said.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
const dm = { as: "Ines", in: "dm" };
const say = (text: string) => t.one({ ...dm, say: text });
const run = (line: string) => t.one({ ...dm, run: line });

beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:14,210 mi");
});
afterEach(() => t.close());

test.each([
  ["spokes trued at 14,300", "Spokes: by my record Heron has none of that (wheels: cast)"],
  ["adjusted the contact breaker points at 14,300", "(ignition: electronic)"],
])("%s", async (text, told) => {
  const answer = await say(text);
  expect(answer.text).toContain(told);
  expect(answer.data).toMatchObject({ is: "not understood", otherwise: { why: "item not fitted", nickname: "Heron" } });
});

test("what it would take is a command that works, and then the same is recorded", async () => {
  const { text } = await run("/work did:spokes at:14,300 mi");
  const command = /\/bike fitted .*$/u.exec(text ?? "")?.[0] ?? "";
  expect(command).toBe("/bike fitted bike:Heron part:wheels choice:wire-spoked");
  await run(command);
  const done = await say("spokes trued at 14,300");
  expect([done.react, done.text]).toEqual(["logged", expect.stringContaining("Spokes")]);
});

test("what another of the bikes has is no mistake, and talk is only talk", async () => {
  await run("/bike add name:Otter kind:classic odometer:900 mi");
  expect((await say("spokes trued at 920")).text).not.toContain("none of that");
  expect((await say("thanks, see you at the lake")).data.otherwise).toBeUndefined();
});

test("in the reading channel it is told too, where it says that the work was done, and what is moulded on both tyres is explained", async () => {
  const heard = async (text: string) => (await t.send({ as: "Ines", in: "g1", say: text })).map((answer) => answer.data.is).filter((is) => is !== "silence");
  expect(await heard("timing belt was done 2021 by previous owner at 8000")).toEqual(["not understood"]);
  expect(await heard("timing belts changed at 15,100, tensioner too")).toEqual(["not understood"]);
  expect(await heard("rear 180/55ZR17 73W front 120/70ZR17 58W")).toEqual(["tyre marks"]);
  for (const talk of [
    "they say timing belts need changing early",
    "my mate changed his timing belt",
    "180/55ZR17 is a big tyre",
    "changed jobs, no time for spokes",
  ])
    expect(await heard(talk)).toEqual([]);
});
