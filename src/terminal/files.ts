// Files of answers in a terminal: kept in a folder beside the database.

import { createHash } from "node:crypto";
import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Attached } from "../chat/reply.ts";

/** Keeps a file and answers where. The same content is the same file, so that asking again leaves one. */
export type KeepFile = (file: Attached) => Promise<string>;

/** A keeper for the database in `file`; one that is no file (in memory, or at an address) has its files among the system's temporary files. */
export function filesBeside(file: string): KeepFile {
  let folder: Promise<string> | null = null;
  const made = async (): Promise<string> => {
    if (file === ":memory:" || file.includes("://")) return mkdtemp(path.join(tmpdir(), "tappet-"));
    const beside = `${file}.files`;
    await mkdir(beside, { recursive: true });
    return beside;
  };
  return async ({ name, bytes }) => {
    folder ??= made();
    const { name: stem, ext } = path.parse(name);
    const kept = path.join(await folder, `${stem}-${createHash("sha256").update(bytes).digest("hex").slice(0, 12)}${ext}`);
    await writeFile(kept, bytes);
    return kept;
  };
}
