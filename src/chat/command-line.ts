// A command as it is typed in a line: `/bike add name:Heron kind:chain-drive twin odometer:14,210 mi`.

import type { Options } from "./command.ts";

/** What a command needs to be told from another in a line. */
type Named = { readonly name: string; readonly sub: string | null; readonly options: Options };

export type TypedCommand = { readonly command: string; readonly sub: string | null; readonly options: Readonly<Record<string, string>> };
/** A command line still being typed: the option the caret is in. */
export type TypedSoFar = TypedCommand & { readonly option: string | null; readonly typed: string };

/**
 * Reads a line that begins with "/". A value runs to the next ` name:` of an option of that command, or is quoted.
 * Text before the first option goes to the first required text option, else to the first text option.
 * An unknown word followed by a colon and no space ends a value too, so that a slip in an option's name is seen as one.
 */
export function parseCommandLine(line: string, commands: readonly Named[]): TypedCommand {
  const words = line.trim().replace(/^\//u, "").split(/\s+/u);
  const command = (words[0] ?? "").toLowerCase();
  const subs = commands.filter((each) => each.name === command);
  const sub = subs.find((each) => each.sub !== null && each.sub === words[1]?.toLowerCase())?.sub ?? null;
  const found = subs.find((each) => each.sub === sub) ?? null;
  const head = sub === null ? 1 : 2;
  const rest = line
    .trim()
    .replace(/^\//u, "")
    .replace(new RegExp(`^(?:\\S+\\s*){${head}}`, "u"), "");
  return {
    command,
    sub: sub ?? (subs.length > 0 && found === null && words[1] !== undefined && !words[1].includes(":") ? words[1].toLowerCase() : null),
    options: optionsIn(rest, found?.options ?? {}),
  };
}

/** The option at the end of a line, for suggestions while typing. */
export function parseSoFar(line: string, commands: readonly Named[]): TypedSoFar {
  const typed = parseCommandLine(line, commands);
  const names = Object.keys(typed.options);
  const last = names.at(-1) ?? null;
  return { ...typed, option: last, typed: last === null ? "" : (typed.options[last] ?? "") };
}

function optionsIn(text: string, options: Options): Record<string, string> {
  const found: Record<string, string> = {};
  const marks = [...text.matchAll(/(?:^|\s)([a-z][a-z-]*):(?=\S|\s|$)/giu)].filter((mark) => isOptionMark(text, mark, options));
  const lead = text.slice(0, marks[0]?.index ?? text.length).trim();
  if (lead !== "") found[leadOption(options) ?? lead.split(/\s/u)[0] ?? lead] = unquoted(lead);
  marks.forEach((mark, n) => {
    const start = mark.index + mark[0].length;
    const end = marks[n + 1]?.index ?? text.length;
    found[(mark[1] ?? "").toLowerCase()] = unquoted(text.slice(start, end).trim());
  });
  return found;
}

/** Inside quotes nothing is a mark; a known option always is; an unknown word is one when its value follows at once. */
function isOptionMark(text: string, mark: RegExpMatchArray, options: Options): boolean {
  const before = text.slice(0, mark.index);
  if ((before.match(/"/gu)?.length ?? 0) % 2 === 1) return false;
  const name = (mark[1] ?? "").toLowerCase();
  return name in options || /^\S/u.test(text.slice((mark.index ?? 0) + mark[0].length));
}

function leadOption(options: Options): string | null {
  const texts = Object.entries(options).filter(([, option]) => option.takes !== "flag" && option.takes !== "file");
  return (texts.find(([, option]) => option.required) ?? texts.find(([, option]) => option.takes === "text") ?? texts[0])?.[0] ?? null;
}

const unquoted = (value: string): string => (value.length >= 2 && value.startsWith('"') && value.endsWith('"') ? value.slice(1, -1) : value);
