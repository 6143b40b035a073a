// Files that members send with a command: text, of bounded length, read by the face before the command is heard.

/** The longest file that is read, in bytes: a plan or a service chart is a tenth of it. */
export const LARGEST_FILE = 200_000;

/** What a file that came with a plain message is by its name: only a command takes one. */
export type FileKind = "plan" | "table" | "picture" | "other";
const KINDS: Readonly<Record<string, FileKind>> = {
  ...{ json: "plan", csv: "table", tsv: "table", txt: "table", xls: "table", xlsx: "table", ods: "table", pdf: "table" },
  ...{ png: "picture", jpg: "picture", jpeg: "picture", webp: "picture", gif: "picture", heic: "picture" },
};
export const kindOfFile = (name: string): FileKind => KINDS[/\.([a-z]+)$/iu.exec(name)?.[1]?.toLowerCase() ?? ""] ?? "other";

/** Why a file could not be taken. */
export type FileTrouble = "file too large" | "file not text" | "file not there";

/** A file's text, or what is the matter with it. */
export type FileRead = { readonly is: "text"; readonly text: string } | { readonly is: "trouble"; readonly why: FileTrouble };

/** Bytes as text: UTF-8, or UTF-16 with its mark, as spreadsheets save it. Bytes that are neither are no text. */
export function textOfBytes(bytes: Uint8Array): FileRead {
  if (bytes.length > LARGEST_FILE) return { is: "trouble", why: "file too large" };
  const [first, second] = bytes;
  const encoding = first === 0xff && second === 0xfe ? "utf-16le" : first === 0xfe && second === 0xff ? "utf-16be" : "utf-8";
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return text.includes("\0") ? { is: "trouble", why: "file not text" } : { is: "text", text };
  } catch {
    return { is: "trouble", why: "file not text" };
  }
}
