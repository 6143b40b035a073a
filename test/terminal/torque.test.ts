// Torque, mid-job: what a member with one clean finger types, and what comes back.

import { expect, test } from "vitest";
import { COMMANDS } from "../../commands/index.ts";
import { type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
async function withTalk(use: (t: Talk) => Promise<void>): Promise<void> {
  const t = await talk();
  try {
    await use(t);
  } finally {
    await t.close();
  }
}
const run = (t: Talk, command: string) => t.one({ ...dm, run: command });

test("a member lists wrenches once, and is told which to take and where to set it", async () => {
  await withTalk(async (t) => {
    expect((await run(t, "/torque set target:60-80 in-lb")).text).toContain("You have listed no torque wrench yet");
    await run(t, "/torque wrench-add name:Small one range:5-25 Nm step:0.5");
    await run(t, "/torque wrench-add name:Big one range:20-100 ft-lb step:1 accuracy:3 %");
    expect((await run(t, "/torque wrench-list")).text).toBe("Small one: 5 to 25 N·m in steps of 0.5, ±4 %\nBig one: 20 to 100 ft-lb in steps of 1, ±3 %");
    const set = await run(t, "/torque set target:60-80 in-lb");
    expect(set.text).toMatch(
      /^Small one: set 8 N·m \(its steps are 0\.5\)\.\nBy its ±4 % that is 7\.68 to 8\.32 N·m, all inside the window\.\nFor 60 to 80 in-lb, which is 6\.78 to 9\.04 N·m\./u,
    );
    // 65 N·m at the fastener, 400 mm of wrench and 50 mm of adapter: 57.8 at the wrench, 42.6 ft-lb.
    expect((await run(t, "/torque set target:65 Nm adapter:50 mm lever:400 mm")).text).toMatch(/^Big one: set 43 ft-lb/u);
    expect((await run(t, "/torque set target:150 Nm")).text).toContain("None of yours does it. Borrow one");
    await run(t, "/torque wrench-drop name:small ONE");
    expect((await run(t, "/torque wrench-list")).data.wrenches).toHaveLength(1);
    expect((await t.one({ as: "Tomasz", in: "dm", run: "/torque wrench-list" })).data.wrenches).toEqual([]);
  });
});

test("what cannot be read, or must not be guessed, is said in one sentence", async () => {
  await withTalk(async (t) => {
    const cases: readonly (readonly [string, RegExp])[] = [
      ["/torque set target:24 lb", /could be ft-lb or in-lb\. Say which/],
      ["/torque set target:36 psi", /cannot read “36 psi” as a torque/],
      ["/torque set target:24", /as a torque/],
      ["/torque set target:24 Nm adapter:50 mm", /needs two lengths/],
      ["/torque set target:24 Nm adapter:50 mm lever:40 psi", /as a length/],
      ["/torque set target:24 Nm adapter:50 mm lever:400 mm angle:200", /between 0° \(in line\) and 180°/],
      ["/torque set target:24 Nm adapter:390 mm lever:400 mm angle:180", /take the lever away/],
      ["/torque wrench-add name:X range:25 Nm step:1", /Type both ends/],
      ["/torque wrench-add name:X range:5-25 Nm step:1 ft-lb", /as a wrench's range/],
      ["/torque wrench-drop name:X", /You have listed no wrench yet/],
      ["/torque estimate thread:M8 grade:8.8 threads:dry joint:rear axle nut", /No figure without your manual for axles and wheels/],
      ["/torque estimate thread:M8 grade:8.8 threads:dry joint:handlebar clamp", /No figure without your manual/],
      ["/torque estimate thread:M8 grade:8.8 threads:dry joint:spark plug", /No figure without your manual/],
      ["/torque estimate thread:M6 grade:8.8 threads:dry joint:bracket into:aluminium engaged:10 mm", /that is what people strip/],
      ["/torque estimate thread:M8 grade:8.8 threads:dry joint:bracket into:aluminium", /add engaged:/],
      ["/torque estimate thread:huge grade:8.8 threads:dry joint:bracket", /as a thread/],
      ["/torque stages target:24 Nm fasteners:2", /no number of fasteners/],
      ["/torque hex size:13", /as a hex size/],
    ];
    for (const [command, sentence] of cases) expect((await run(t, command)).text, command).toMatch(sentence);
  });
});

test("an estimate is called one, says how friction changes it, and puts the manual first", async () => {
  await withTalk(async (t) => {
    const { text } = await run(t, "/torque estimate thread:M8 grade:8.8 threads:oiled joint:luggage rack");
    expect(text).toMatch(/^An estimate only: M8x1\.25, 8\.8, oiled: about 22\.9 N·m/u);
    expect(text).toContain("would load the bolt to 135 % of its proof load: begin at 12.7.");
    expect(text).toContain("The maker's manual comes first.");
  });
});

test("a question about units, asked of the bot, is answered where it was asked; small talk with figures is not", async () => {
  await withTalk(async (t) => {
    const asked = await t.one({ as: "Ines", mention: true, say: "60-80 in-lb in Nm?" });
    expect(asked).toMatchObject({ to: null, visibility: "shared" });
    expect(asked.text).toContain("60 to 80 in-lb = 6.8 to 9.0 N·m");
    expect((await t.one({ ...dm, say: "what's 7/16 in metric" })).text).toContain("11.11 mm");
    expect(await t.send({ as: "Ines", say: "torqued it to 24 Nm yesterday" })).toEqual([]);
  });
});

test("every answer's data has the shape its command promises", async () => {
  await withTalk(async (t) => {
    await run(t, "/torque wrench-add name:Small one range:5-25 Nm step:0.5");
    for (const line of [
      "/torque set target:60-80 in-lb adapter:50 mm lever:300 mm",
      "/torque stages target:20-24 Nm fasteners:4 angle:90",
      "/torque estimate thread:M8 grade:8.8 threads:oiled joint:rack",
      "/torque hex size:11 mm",
      "/torque wrench-list",
      "/torque wrench-drop name:Small one",
    ]) {
      const { data, text } = await run(t, line);
      const command = COMMANDS.find((each) => each.sub !== null && line.startsWith(`/${each.name} ${each.sub}`));
      expect(command?.data.safeParse(data).error?.issues, `${line}: ${text}`).toBeUndefined();
    }
  });
});
