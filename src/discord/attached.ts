// Files sent with a command: fetched from where the platform keeps them, within bounds of size and time.

import type { Attachment, ChatInputCommandInteraction } from "discord.js";
import { type FileRead, LARGEST_FILE, textOfBytes } from "../chat/files.ts";
import type { Inbound } from "../chat/inbound.ts";

/** Milliseconds that fetching may take. */
const PATIENCE = 10_000;

type Run = Extract<Inbound, { kind: "run" }>;

/** The same, with the texts of the files that came with it as options. Nothing is fetched where none came. */
export async function withFiles(i: ChatInputCommandInteraction, inbound: Run): Promise<Run> {
  const sub = i.options.getSubcommand(false);
  const given = sub === null ? i.options.data : (i.options.data[0]?.options ?? []);
  let heard = inbound;
  for (const { name, attachment } of given) {
    if (attachment === undefined || attachment === null) continue;
    const read = await fetched(attachment);
    heard = read.is === "text" ? { ...heard, options: { ...heard.options, [name]: read.text } } : { ...heard, unread: { option: name, problem: read.why } };
  }
  return heard;
}

async function fetched({ url, size }: Attachment): Promise<FileRead> {
  if (size > LARGEST_FILE) return { is: "trouble", why: "file too large" };
  try {
    const answer = await fetch(url, { signal: AbortSignal.timeout(PATIENCE) });
    return answer.ok && answer.body !== null ? await bounded(answer.body) : { is: "trouble", why: "file not there" };
  } catch {
    return { is: "trouble", why: "file not there" };
  }
}

/** No more is read than may be kept, whatever the sender said of its size. */
async function bounded(body: ReadableStream<Uint8Array>): Promise<FileRead> {
  const chunks: Uint8Array[] = [];
  const reader = body.getReader();
  for (let size = 0; ; ) {
    const { done, value } = await reader.read();
    if (done) break;
    chunks.push(value);
    size += value.length;
    if (size <= LARGEST_FILE) continue;
    await reader.cancel();
    return { is: "trouble", why: "file too large" };
  }
  return textOfBytes(Buffer.concat(chunks));
}
