// When reminders come, as members type it: times of day, zones, quiet hours, matters switched off.

import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Talk, talk } from "../support/talk.ts";

const dm = { as: "Ines", in: "dm" };
let t: Talk;
beforeEach(async () => {
  t = await talk("2026-11-25T10:00:00Z");
});
afterEach(() => t.close());
const remind = async (options: string) => t.one({ ...dm, run: `/remind ${options}` });

describe("a time of day", () => {
  test.for([
    ["9", "09:00"],
    ["9am", "09:00"],
    ["9 a.m.", "09:00"],
    ["6:30pm", "18:30"],
    ["12 pm", "12:00"],
    ["12am", "00:00"],
    ["18.30", "18:30"],
    ["18h", "18:00"],
    ["18 Uhr", "18:00"],
    ["0:05", "00:05"],
  ])("%s is %s", async ([typed, time]) => {
    expect((await remind(`time:${typed}`)).data.reminders.time).toBe(time);
  });
  test.for(["24:00", "13pm", "0 am", "9:60", "nine", "9:5", "-1", "noonish"])("%s is none, and nothing is changed", async (typed) => {
    const shown = await remind(`time:${typed}`);
    expect(shown.data.refused).toEqual({ why: "not a time", typed });
    expect((await t.one({ ...dm, run: "/remind" })).data.reminders.time).toBe("09:00");
  });
});

describe("a zone", () => {
  test("by its city alone is not taken, but offered by its whole name", async () => {
    expect((await remind("zone:Berlin")).text).toBe("“Berlin” is not a time zone's whole name. Did you mean Europe/Berlin?");
    expect((await remind("zone:new york")).text).toContain("Did you mean America/New_York?");
    expect((await remind("zone:kath")).text).toContain("Did you mean Asia/Kathmandu?");
    expect((await t.one({ as: "Ines", in: "g1", admin: true, run: "/group zone:lisbon" })).text).toContain("Did you mean Europe/Lisbon?");
    expect((await t.one({ ...dm, run: "/remind" })).text).toContain("Time zone: UTC");
  });
  test("that resembles none is refused with how one looks", async () => {
    expect((await remind("zone:Mars/Base")).text).toBe("“Mars/Base” is not a time zone I know. Use a name such as Europe/Berlin or America/Chicago.");
    expect((await remind("zone:GM")).text).toContain("not a time zone I know");
  });
});

test("quiet hours with equal ends are none, and it is said so", async () => {
  await remind("quiet-from:0:00 quiet-to:0:00");
  expect((await remind("time:2:30")).text).toContain("Reminders come by direct message, Saturday at 02:30; no hour is quiet.");
  expect((await remind("quiet-from:21:00 quiet-to:8:00")).text).toContain("Saturday at 02:30, held until 08:00");
});

test("what is switched off is said with the words that switch it on again, for a member and for a group", async () => {
  await remind("off:charging");
  expect((await remind("off:dates")).text).toContain("Not told of: charging and dates. To hear of it again: /remind on:charging, /remind on:dates.");
  expect((await remind("on:charging")).text).toContain("Not told of: dates. To hear of it again: /remind on:dates.");
  expect((await t.one({ as: "Ines", in: "g1", admin: true, run: "/group off:season" })).text).toContain(
    "Not told of: season. To hear of it again: /group on:season.",
  );
});
