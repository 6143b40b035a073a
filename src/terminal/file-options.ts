// In the terminal a file is named by its path: `/plan import file:heron.json`.

import { open } from "node:fs/promises";
import type { TypedCommand } from "../chat/command-line.ts";
import { type FileRead, LARGEST_FILE, textOfBytes } from "../chat/files.ts";
import type { Inbound } from "../chat/inbound.ts";
import type { Room } from "./room.ts";

type Run = Extract<Inbound, { kind: "run" }>;

/** A command as typed, with the texts of the files that it names. */
export async function withFiles(commands: Room["commands"], typed: TypedCommand): Promise<TypedCommand & Pick<Run, "unread">> {
  const options = commands.find(({ name, sub }) => name === typed.command && sub === typed.sub)?.options ?? {};
  let filled: TypedCommand & Pick<Run, "unread"> = typed;
  for (const [name, value] of Object.entries(typed.options)) {
    if (options[name]?.takes !== "file" || value.trim() === "") continue;
    const read = await textOfFile(value.trim());
    filled = read.is === "text" ? { ...filled, options: { ...filled.options, [name]: read.text } } : { ...filled, unread: { option: name, problem: read.why } };
  }
  return filled;
}

async function textOfFile(path: string): Promise<FileRead> {
  try {
    const file = await open(path);
    try {
      const bytes = Buffer.alloc(LARGEST_FILE + 1);
      const { bytesRead } = await file.read(bytes, 0, bytes.length, 0);
      return textOfBytes(bytes.subarray(0, bytesRead));
    } finally {
      await file.close();
    }
  } catch {
    return { is: "trouble", why: "file not there" };
  }
}
