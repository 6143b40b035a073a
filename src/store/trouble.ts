// When a database takes nothing more: a full disk, or one that may not be written.

export type WriteTrouble = "no room" | "read only";

/** Source: SQLite's result codes; PostgreSQL's documentation, appendix A. */
const CODES: Readonly<Record<string, WriteTrouble>> = {
  SQLITE_FULL: "no room",
  SQLITE_IOERR_WRITE: "no room",
  SQLITE_READONLY: "read only",
  SQLITE_READONLY_DBMOVED: "read only",
  ENOSPC: "no room",
  EROFS: "read only",
  EACCES: "read only",
  EPERM: "read only",
  "53100": "no room",
  "25006": "read only",
};

/** What keeps it from being written; null when that is not what went wrong. Nothing of what was to be written is there. */
export function writeTrouble(error: unknown): WriteTrouble | null {
  if (!(error instanceof Error)) return null;
  const code = "code" in error && typeof error.code === "string" ? error.code : "";
  return CODES[code] ?? writeTrouble(error.cause);
}

export const isOutOfRoom = (error: unknown): boolean => writeTrouble(error) === "no room";
