// What the platform is told of the commands, from the same data that parses them.

import type { CommandWords, Option, Options } from "./command.ts";

export type RegisteredOption = {
  readonly name: string;
  readonly description: string;
  readonly required: boolean;
  readonly takes: Option["takes"];
  readonly choices: readonly string[];
  readonly completes: boolean;
};
export type RegisteredCommand = {
  readonly name: string;
  readonly description: string;
  readonly adminOnly: boolean;
  readonly options: readonly RegisteredOption[];
  readonly subcommands: readonly RegisteredCommand[];
};
type Described = { readonly name: string; readonly sub: string | null; readonly options: Options; readonly adminOnly: boolean };

/**
 * One entry a command name, with its subcommands. Required options come first, as the platform asks.
 * @param wordsOf help texts by full name ("bike add")
 * @param parentDoes what a command with subcommands is about
 */
export function registration(
  commands: readonly Described[],
  wordsOf: (fullName: string) => CommandWords,
  parentDoes: (name: string) => string,
): readonly RegisteredCommand[] {
  return [...new Set(commands.map((command) => command.name))].map((name) => {
    const own = commands.filter((command) => command.name === name);
    const single = own.find((command) => command.sub === null);
    if (single !== undefined) return entry(single, name, wordsOf(name));
    return {
      name,
      description: parentDoes(name),
      adminOnly: own.every((command) => command.adminOnly),
      options: [],
      subcommands: own.map((command) => entry(command, command.sub ?? name, wordsOf(fullName(command)))),
    };
  });
}

/** "bike add", or "due" for a command without subcommands. */
export const fullName = (command: { readonly name: string; readonly sub: string | null }): string =>
  command.sub === null ? command.name : `${command.name} ${command.sub}`;

function entry(command: Described, name: string, words: CommandWords): RegisteredCommand {
  const options = Object.entries(command.options).map(([option, takes]) => ({
    name: option,
    description: words.options[option] ?? "",
    required: takes.required,
    takes: takes.takes,
    choices: takes.takes === "choice" ? takes.choices : [],
    completes: takes.takes === "text" && takes.complete !== undefined,
  }));
  return {
    name,
    description: words.does,
    adminOnly: command.adminOnly,
    options: options.sort((a, b) => Number(b.required) - Number(a.required)),
    subcommands: [],
  };
}
