// Opening the database, whichever it is: a file of SQLite's by default, a PostgreSQL server by its address.

import { isPostgres } from "./address.ts";
import type { Opened, OpenOptions } from "./db.ts";
import { openPostgres } from "./postgres.ts";
import { openSqlite } from "./sqlite.ts";

/**
 * Opens a database, makes it where there is none, and brings it up to date. @param address a file, ":memory:" for one that is never kept, or postgres://...
 * @throws StoreRefusal with the way forward in its message
 */
export const openDatabase = (address: string, options: OpenOptions = {}): Promise<Opened> =>
  isPostgres(address) ? openPostgres(address, options) : openSqlite(address, options);
