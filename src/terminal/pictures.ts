// Pictures in a terminal: kept as files, in a folder beside the database.

import { createHash } from "node:crypto";
import { mkdir, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Picture } from "../chat/reply.ts";

/** Keeps a picture and answers where. The same picture is the same file, so that asking again leaves one. */
export type KeepPicture = (picture: Picture) => Promise<string>;

/** A keeper for the database in `file`; one that is no file (in memory, or at an address) has its pictures among the system's temporary files. */
export function picturesBeside(file: string): KeepPicture {
  let folder: Promise<string> | null = null;
  const made = async (): Promise<string> => {
    if (file === ":memory:" || file.includes("://")) return mkdtemp(path.join(tmpdir(), "tappet-"));
    const beside = `${file}.pictures`;
    await mkdir(beside, { recursive: true });
    return beside;
  };
  return async ({ name, png }) => {
    folder ??= made();
    const { name: stem, ext } = path.parse(name);
    const kept = path.join(await folder, `${stem}-${createHash("sha256").update(png).digest("hex").slice(0, 12)}${ext}`);
    await writeFile(kept, png);
    return kept;
  };
}
