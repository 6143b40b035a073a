// An open database, whichever it is.

import type { Kysely, LogEvent } from "kysely";
import type { DatabaseKind } from "./columns.ts";
import type { Tables } from "./tables.ts";

export type Db = Kysely<Tables>;
/** An open database and how to let go of it. `name` is said to people: no password. */
export type Opened = {
  readonly db: Db;
  readonly kind: DatabaseKind;
  readonly name: string;
  /** Nothing was in it before. */
  readonly fresh: boolean;
  /** Copies what is in it, as it stands, into a file; null where the server has tools of its own for that. */
  readonly copyTo: ((target: string) => Promise<void>) | null;
  readonly close: () => Promise<void>;
};

export type OpenOptions = {
  /** Told of every statement, for tests that count them. */
  readonly onQuery?: ((event: LogEvent) => void) | undefined;
  /** The folder of migrations, when not the release's own. */
  readonly migrations?: string;
  /** The last migration to take, for opening a file as an older release did. */
  readonly upTo?: string;
};
