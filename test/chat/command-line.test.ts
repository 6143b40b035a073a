// Command lines as typed, options as checked, and what the platform is told: one table serves all three.

import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../commands/index.ts";
import { actionId, parseAction } from "../../src/chat/action-names.ts";
import { parseCommandLine, parseSoFar } from "../../src/chat/command-line.ts";
import { parseOptions } from "../../src/chat/options.ts";
import { fullName, registration } from "../../src/chat/registration.ts";
import { COMMAND_WORDS } from "../../src/words/en/commands.ts";

const line = (text: string) => parseCommandLine(text, COMMANDS);

describe("a line", () => {
  test("a value runs to the next option, spaces and all", () => {
    expect(line("/bike add name:Old Blue kind:chain-drive twin odometer:14,210 mi")).toEqual({
      command: "bike",
      sub: "add",
      options: { name: "Old Blue", kind: "chain-drive twin", odometer: "14,210 mi" },
    });
  });
  test("quotes keep what looks like an option", () => {
    expect(line('/work did:"oil on:the cold side" on:yesterday').options).toEqual({ did: "oil on:the cold side", on: "yesterday" });
  });
  test("leading text is the first option", () => {
    expect(line("/convert 60-80 in-lb to:N·m").options).toEqual({ what: "60-80 in-lb", to: "N·m" });
    expect(line("/work oil and filter at:14,820").options).toEqual({ did: "oil and filter", at: "14,820" });
    expect(line("/due Heron").options).toEqual({ bike: "Heron" });
    expect(line("/help bike add").options).toEqual({ command: "bike add" });
  });
  test("an unknown option is kept to be told of; a time of day is no option", () => {
    expect(line("/work oil colour:red").options).toEqual({ did: "oil", colour: "red" });
    expect(line("/remind time:18:30").options).toEqual({ time: "18:30" });
  });
  test("a command that is none, and one without its subcommand", () => {
    expect(line("/dew")).toEqual({ command: "dew", sub: null, options: {} });
    expect(line("/bike fly")).toMatchObject({ command: "bike", sub: "fly" });
  });
  test("while typing, the option at the end is the one to complete", () => {
    expect(parseSoFar("/due bike:He", COMMANDS)).toMatchObject({ command: "due", option: "bike", typed: "He" });
  });
});

describe("options", () => {
  const options = {
    kind: { takes: "choice", required: true, choices: ["Chain", "Belt"] },
    note: { takes: "text", required: false },
    share: { takes: "flag", required: false },
  } as const;
  test("choices are compared without regard to case", () => {
    expect(parseOptions(options, { kind: "chain", share: "YES" })).toEqual({ is: "parsed", input: { kind: "Chain", share: true } });
  });
  test.each([
    [{}, "kind", "missing"],
    [{ kind: " " }, "kind", "missing"],
    [{ kind: "rope" }, "kind", "not a choice"],
    [{ kind: "Belt", colour: "red" }, "colour", "unknown"],
    [{ kind: "Belt", share: "perhaps" }, "share", "not a choice"],
    [{ kind: "Belt", note: "x".repeat(301) }, "note", "too long"],
  ])("%o is refused", (typed, option, problem) => {
    expect(parseOptions(options, typed as Record<string, string>)).toMatchObject({ is: "problem", why: { option, problem } });
  });
});

describe("registration", () => {
  // The platform's published limits: names of 1 to 32 lower-case letters and dashes, descriptions of 1 to 100 characters, 25 options and 25 choices, required options first.
  const words = (name: string) => COMMAND_WORDS[name as keyof typeof COMMAND_WORDS];
  const registered = registration(COMMANDS, words, () => "Bikes");
  const all = registered.flatMap((command) => (command.subcommands.length > 0 ? command.subcommands : [command]));

  test("every command and option has a name and a description that the platform takes", () => {
    expect(registered.map((command) => command.name)).toEqual([
      ...["bike", "reading", "work", "records", "due", "check", "trip", "plan", "spec", "tyre", "convert", "torque", "remind", "group", "help"],
    ]);
    for (const command of all) {
      expect(command.name).toMatch(/^[a-z-]{1,32}$/);
      expect(command.description.length, command.name).toBeGreaterThan(0);
      expect(command.description.length, command.name).toBeLessThanOrEqual(100);
      expect(command.options.length).toBeLessThanOrEqual(25);
      for (const option of command.options) {
        expect(option.name).toMatch(/^[a-z-]{1,32}$/);
        expect(option.description.length, `${command.name} ${option.name}`).toBeGreaterThan(0);
        expect(option.description.length).toBeLessThanOrEqual(100);
        expect(option.choices.length).toBeLessThanOrEqual(25);
      }
      const firstOptional = command.options.findIndex((option) => !option.required);
      expect(command.options.slice(firstOptional === -1 ? command.options.length : firstOptional).every((option) => !option.required)).toBe(true);
    }
  });
  test("every command's example is one that it takes", () => {
    for (const command of COMMANDS) {
      const typed = line(words(fullName(command)).example);
      expect(fullName({ name: typed.command, sub: typed.sub })).toBe(fullName(command));
      expect(parseOptions(command.options, typed.options), fullName(command)).toMatchObject({ is: "parsed" });
    }
  });
});

describe("action ids", () => {
  test("come back as they were, and never grow beyond what the platform takes", () => {
    const id = actionId("answer", "01a213ef-c45f-755f-9859-80e284a33dce.3", 7);
    expect(parseAction(id)).toEqual({ action: "answer", subject: "01a213ef-c45f-755f-9859-80e284a33dce.3", rev: 7 });
    expect(() => actionId("undo", "x".repeat(100))).toThrow(RangeError);
  });
  test.each(["", "1.undo", "2.undo.x.0", "1.explode.x.0", "1.undo.x.-1", "1.undo.x.y"])("%s is none of ours", (id) => {
    expect(parseAction(id)).toBeNull();
  });
});
