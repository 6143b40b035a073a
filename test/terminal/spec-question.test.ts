// A spec asked for in a plain message to the bot, answered as /spec answers it.

import { afterEach, beforeEach, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

let t: Talk;
const dm = { as: "Ines", in: "dm" };
const say = (text: string) => t.one({ ...dm, say: text });
const run = (line: string) => t.one({ ...dm, run: line });

beforeEach(async () => {
  t = await talk("2026-11-26T09:00:00Z");
  await run("/bike add name:Heron kind:chain-drive twin odometer:15,700 mi");
  await run("/spec what:rear axle value:98 Nm source:workshop manual, p. 142");
});
afterEach(() => t.close());

test.each(["Heron rear axle torque?", "what's the rear axle torque on Heron", "rear axle?", "rear axel torque", "Heron's rear axle?"])("%s", async (text) => {
  const [asked, command] = [await say(text), await run("/spec what:rear axle")];
  expect(asked.text?.split("\n")[0]).toBe(command.text?.split("\n")[0]);
  expect(asked.data).toMatchObject({ is: "specs", answers: [{ nickname: "Heron" }] });
});

test.each(["Heron Hinterachse?", "Drehmoment Hinterachse?", "welches Drehmoment hat die Hinterachse?", "Achse hinten an der Heron?"])(
  "in German: %s",
  async (text) => {
    expect((await say(text)).text).toContain("Rear axle: 98 N·m.");
  },
);

test.each([
  ["welcher Reifendruck vorne?", ["front tyre pressure"]],
  ["Reifendruck hinten mit Sozius?", ["rear tyre pressure"]],
  ["wie viel Öl?", ["engine oil with filter", "engine oil without filter", "engine oil dry"]],
  ["Oelsorte?", ["engine oil grade"]],
  ["wie viel Motoröl kommt rein?", ["engine oil with filter", "engine oil without filter", "engine oil dry"]],
  ["Kettendurchhang?", ["chain slack"]],
  ["Tankinhalt?", ["fuel tank"]],
] as const)("asked in German and not entered, it is asked for: %s", async (text, keys) => {
  const { data } = await say(text);
  expect(data).toMatchObject({ is: "specs" });
  expect((data.answers as { lines: { key: string }[] }[]).flatMap(({ lines }) => lines.map(({ key }) => key))).toEqual(keys);
});

test.each(["ist die Bremse vorne ok?", "wie geht es euch?", "wer fährt am Sonntag mit?"])("no question about a spec: %s", async (text) => {
  expect((await say(text)).data.is).toBe("not understood");
});

test("in a channel it is answered when the bot is named, and passed over when it is not", async () => {
  const named = await t.one({ as: "Ines", in: "g1", say: "Heron rear axle torque?", mention: true });
  expect(named.text).toContain("Rear axle: 98 N·m.");
  expect(await t.send({ as: "Ines", in: "g1", say: "Heron rear axle torque?" })).toEqual([]);
});

test("what is not entered is asked for by its very name only; a question about something else is none", async () => {
  expect((await say("front tyre pressure two-up?")).text).toContain("Front tyre pressure two-up: nothing is entered for Heron.");
  for (const text of ["is the front brake ok?", "how are you today?", "hello", "shall we ride to the rear of the hall on Sunday?"]) {
    expect((await say(text)).data.is, text).toBe("not understood");
  }
  // A reading is a reading.
  expect((await say("33 psi front 36 rear")).data.is).toBe("logged");
  expect((await say("60-80 in-lb in Nm?")).data.is).toBe("converted");
});

test("with several bikes, the one named answers, else those of which something is known", async () => {
  await run("/bike add name:Otter kind:belt-drive cruiser odometer:9,700 mi");
  expect((await say("rear axle?")).data.answers).toMatchObject([{ nickname: "Heron" }]);
  expect((await say("rear axle on Otter?")).text).toContain("Rear axle: nothing is entered for Otter.");
  await run("/spec what:rear axle value:80 Nm source:handbook, p. 9 bike:Otter");
  expect((await say("rear axle?")).text).toMatch(/^Heron:\nRear axle: 98 N·m\..*\n\nOtter:\nRear axle: 80 N·m\./u);
});

test("an open table needs no bike", async () => {
  expect((await say("10W-40?")).text).toBe((await run("/spec what:10W-40")).text);
});

test("the torque for the rear axle is the rear axle's alone, with the bike named in the words too", async () => {
  t = await talk("2026-11-26T09:00:00Z");
  const dm = { as: "Ines", in: "dm" };
  await t.one({ ...dm, run: "/bike add name:Otter kind:chain-drive twin odometer:15,700 mi" });
  await t.one({ ...dm, run: "/bike add name:Heron kind:chain-drive twin odometer:9,700 mi" });
  await t.one({ ...dm, run: "/spec bike:Otter what:rear axle torque value:98 Nm source:Handbook, p. 142" });
  for (const line of [{ run: "/spec what:what is the torque for the rear axle on Otter?" }, { say: "what is the torque for the rear axle on Otter?" }]) {
    const { text } = await t.one({ ...dm, ...line });
    expect(text).toContain("Rear axle: 98 N·m.");
    expect(text).not.toContain("front axle");
  }
  expect((await t.one({ ...dm, run: "/spec what:tread law France" })).text).toMatch(
    /^I have no tread law of “France”; look it up there\. What I have: United Kingdom, Germany, Austria and United States\./u,
  );
});

test.each(["how much oil does Heron take?", "how much oil does it need?", "/spec what:how much oil does Heron take"])(
  "how much goes in is asked as people ask: %s",
  async (text) => {
    await run("/spec what:engine oil with filter value:3.2 L source:workshop manual, p. 40");
    await run("/bike add name:Otter kind:chain-drive twin odometer:1,000 mi");
    const answer = await (text.startsWith("/") ? run(text) : say(text));
    expect(answer.text).toContain("Engine oil with filter: 3.2 L");
    expect(answer.text).not.toContain("grade");
  },
);

test("who says that it needs oil asks for no figure", async () => {
  expect((await say("Heron needs oil")).data?.is).not.toBe("specs");
});
