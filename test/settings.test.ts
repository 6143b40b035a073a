// Settings: read once, each fault named in one sentence that says what to do.

import { describe, expect, test } from "vitest";
import { readSettings } from "../src/settings.ts";

const settings = (env: Record<string, string>, ...args: string[]) => {
  const read = readSettings(env, args);
  if (read.is === "faults") throw new Error(read.faults.join(" "));
  return read.settings;
};
const faults = (env: Record<string, string>, ...args: string[]) => {
  const read = readSettings(env, args);
  return read.is === "faults" ? read.faults : [];
};

describe("what is chosen", () => {
  test("nothing given opens the practice room on practice.sqlite", () => {
    expect(settings({})).toEqual({
      face: "terminal",
      database: "practice.sqlite",
      clock: null,
      logLevel: "error",
      discord: { token: "", api: null, readChannels: false, part: null },
    });
  });
  test("a token means the server's face, an empty one does not, and --lines comes before both", () => {
    expect(settings({ DISCORD_TOKEN: "abc" }).face).toBe("discord");
    expect(settings({ DISCORD_TOKEN: "" }).face).toBe("terminal");
    expect(settings({ DISCORD_TOKEN: "abc" }, "--lines").face).toBe("lines");
  });
  test("the server's face has a file of its own, another address when one is named, and asks for the privilege only when told to", () => {
    const { database, discord } = settings({ DISCORD_TOKEN: "abc", DISCORD_API_URL: "http://127.0.0.1:8080/api", TAPPET_READ_CHANNELS: "yes" });
    expect([database, discord]).toEqual(["tappet.sqlite", { token: "abc", api: "http://127.0.0.1:8080/api", readChannels: true, part: null }]);
    expect(settings({ DISCORD_TOKEN: "abc" }).discord.readChannels).toBe(false);
  });
  test("several processes on one PostgreSQL database each serve a part", () => {
    const { database, discord } = settings({ DISCORD_TOKEN: "abc", TAPPET_DATABASE: "postgres://tappet@localhost/tappet", TAPPET_PART: "1/2" });
    expect([database, discord.part]).toEqual(["postgres://tappet@localhost/tappet", { nth: 1, of: 2 }]);
  });
  test("--db comes before TAPPET_DATABASE", () => {
    expect(settings({ TAPPET_DATABASE: "a.sqlite" }).database).toBe("a.sqlite");
    expect(settings({ TAPPET_DATABASE: "a.sqlite" }, "--db", "b.sqlite").database).toBe("b.sqlite");
  });
  test("--clock takes any moment with its offset, and keeps it as UTC", () => {
    expect(settings({}, "--clock", "2027-03-01T09:00:00+01:00").clock).toBe("2027-03-01T08:00:00.000Z");
  });
});

describe("what is wrong", () => {
  test.each<[string, Record<string, string>, string[], string[]]>([
    ["a moment that is none", {}, ["--clock", "yesterday"], ["--clock is not a moment: yesterday. Write it as 2027-03-01T09:00:00Z."]],
    ["an option that is none", {}, ["--fast"], ["The options are --lines, --db FILE and --clock ISO; something else was given."]],
    ["a log level that is none", { TAPPET_LOG: "loud" }, [], ["TAPPET_LOG is one of silent, error, warn, info, debug; it is loud."]],
    [
      "an address of no database we know",
      { TAPPET_DATABASE: "mysql://here/tappet" },
      [],
      ["TAPPET_DATABASE is the path of a file, or an address such as postgres://tappet@localhost/tappet; it is neither."],
    ],
    ["a part that is none", { TAPPET_PART: "3/2" }, [], ["TAPPET_PART says which of how many processes this is, such as 1/2; it is 3/2."]],
    [
      "a part of a file",
      { TAPPET_PART: "1/2", DISCORD_TOKEN: "x" },
      [],
      ["TAPPET_PART is for several processes on one PostgreSQL database; a file is one process's own."],
    ],
  ])("%s", (_, env, args, sentences) => {
    expect(faults(env, ...args)).toEqual(sentences);
  });
  test("every fault is named, not only the first", () => {
    expect(faults({ TAPPET_LOG: "loud" }, "--clock", "soon")).toHaveLength(2);
  });
});
