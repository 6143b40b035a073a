// What is typed beside what was understood is told back, and what was done before a fault was found closes nothing.

import { expect, test } from "vitest";
import { talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };

async function heron() {
  const t = await talk("2026-04-01T10:00:00Z");
  await t.one({ as: "Ines", run: "/bike add name:Heron kind:chain-drive twin odometer:14,210 mi" });
  return t;
}

test("a part of a message that came to nothing is named; in a channel without its words", async () => {
  const t = await heron();
  const said = await t.one({ ...dm, say: "14,530 mi on Heron, chain looks odd" });
  expect(said.text).toContain("Not understood: “chain looks odd”. If it is of the bike, say it again in other words.");
  expect(said.data).toMatchObject({ is: "logged", unread: ["chain looks odd"] });
  const all = await t.send({ as: "Ines", say: "14,540 mi on Heron, chain looks odd" });
  const told = all.map(({ text }: { text: string | null }) => text ?? "").join("\n");
  expect(told).toContain("Logged, but not all of it was understood.");
  expect(told).not.toContain("chain");
  expect((await t.one({ ...dm, say: "Heron 14,545 mi oil change" })).data.unread).toEqual(["Heron 14,545 mi oil change"]);
  // A heading, how it was read, and a look at what was then read are told by the readings.
  for (const say of ["measured the chain slack, 30 mm", "front pads, left 3.5 mm right 3 mm", "14,550 mi, what a ride"])
    expect((await t.one({ ...dm, say })).text).not.toContain("Not understood");
  await t.close();
});

test("work of before a fault was found closes nothing of it", async () => {
  const t = await heron();
  await t.one({ ...dm, say: "rear tread 0.5 mm" });
  await t.one({ ...dm, run: "/work did:new rear tyre on:spring 2024 at:8,000 mi" });
  await t.one({ ...dm, say: "new rear tyre last year at 9,000 mi" });
  expect((await t.one({ ...dm, run: "/due" })).text).toContain("Do not ride: “rear tread 0.5 mm”");
  await t.one({ ...dm, say: "new rear tyre at 14,310 mi" });
  expect((await t.one({ ...dm, run: "/due" })).text).not.toContain("Do not ride");
  await t.close();
});

test("a reading that is better and still wrong closes nothing", async () => {
  const t = await heron();
  await t.one({ ...dm, run: "/spec what:throttle free play value:2-4 mm" });
  await t.one({ ...dm, say: "throttle free play 0 mm" });
  expect((await t.one({ ...dm, say: "throttle free play 0.5 mm" })).text).not.toContain("is closed");
  expect((await t.one({ ...dm, say: "throttle free play 3 mm" })).text).toContain("is closed");
  await t.close();
});

test("a bike that was named and of which nothing came is named", async () => {
  const t = await heron();
  await t.one({ as: "Ines", run: "/bike add name:Otter kind:belt-drive cruiser odometer:20,000 mi" });
  const said = await t.one({ ...dm, say: "33 psi front on Heron, lubed Otter's chain" });
  expect(said.data.unread).toBeDefined();
  expect((await t.one({ ...dm, say: "Heron 14,600 mi, Otter 20,100 mi" })).data.unread).toBeUndefined();
  await t.close();
});
