// Options as typed, checked against what a command takes: one reading for every face.

import { z } from "zod";
import type { Option, Options } from "./command.ts";
import { type FileTrouble, LARGEST_FILE } from "./files.ts";

/** What is wrong with the options typed, as data. */
export type OptionProblem = {
  readonly option: string;
  readonly problem: "missing" | "unknown" | "not a choice" | "too long" | FileTrouble;
  readonly choices: readonly string[];
};
export type ParsedOptions =
  | { readonly is: "parsed"; readonly input: Readonly<Record<string, string | boolean>> }
  | { readonly is: "problem"; readonly why: OptionProblem };

/** The longest text that an option takes; beyond it a figure or a name is certainly a slip. */
const LONGEST = 300;
const FLAGS: Readonly<Record<string, boolean>> = { yes: true, true: true, on: true, no: false, false: false, off: false };

/** Checks what was typed. Choices and option names are compared without regard to case; empty values count as left out. */
export function parseOptions(options: Options, typed: Readonly<Record<string, string>>): ParsedOptions {
  const names = Object.keys(options);
  const input: Record<string, string | boolean> = {};
  for (const [name, raw] of Object.entries(typed)) {
    const option = options[name.toLowerCase()];
    if (option === undefined) return problem(name, "unknown", names);
    const value = raw.trim();
    if (value === "") continue;
    const read = shapeOf(option).safeParse(value);
    if (!read.success) return problem(name.toLowerCase(), value.length > LONGEST && option.takes === "text" ? "too long" : "not a choice", choicesOf(option));
    input[name.toLowerCase()] = read.data;
  }
  const missing = names.find((name) => options[name]?.required === true && input[name] === undefined);
  return missing === undefined ? { is: "parsed", input } : problem(missing, "missing", choicesOf(options[missing] as Option));
}

/** The parser of one option. */
export function shapeOf(option: Option): z.ZodType<string | boolean> {
  switch (option.takes) {
    case "text":
      return z.string().max(LONGEST);
    case "file":
      return z.string().max(LARGEST_FILE);
    case "choice":
      return z.string().transform((typed, check) => {
        const plain = typed.toLowerCase().replaceAll(".", "").replace(/\s+/gu, " ");
        const found =
          option.choices.find((choice) => choice.toLowerCase() === typed.toLowerCase()) ??
          option.choices.find((choice) => option.also?.[choice]?.includes(plain) === true);
        if (found === undefined) check.addIssue({ code: "custom" });
        return found ?? z.NEVER;
      });
    case "flag":
      return z.string().transform((typed, check) => {
        const found = FLAGS[typed.toLowerCase()];
        if (found === undefined) check.addIssue({ code: "custom" });
        return found ?? z.NEVER;
      });
  }
}

const choicesOf = (option: Option): readonly string[] => (option.takes === "choice" ? option.choices : option.takes === "flag" ? ["yes", "no"] : []);
const problem = (option: string, what: OptionProblem["problem"], choices: readonly string[]): ParsedOptions => ({
  is: "problem",
  why: { option, problem: what, choices },
});
