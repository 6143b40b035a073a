// The four kinds of column that migrations may use, the same in meaning on SQLite and PostgreSQL.

import { type CreateTableBuilder, type Expression, sql } from "kysely";

export type DatabaseKind = "sqlite" | "postgres";

/** Column types of one database, and how its tables are closed. */
export type Columns = {
  /** A whole number up to 2^53. */
  readonly whole: Expression<unknown>;
  /** A double. */
  readonly decimal: Expression<unknown>;
  readonly text: Expression<unknown>;
  /** 0 or 1; the CHECK is added by `flag`. */
  readonly flag: (column: string) => Expression<unknown>;
  /** Refuses values of the wrong type where the database would let them in. */
  readonly strict: <T extends string, C extends string>(table: CreateTableBuilder<T, C>) => CreateTableBuilder<T, C>;
};

/** The column helpers for a kind of database. */
export function columnsFor(kind: DatabaseKind): Columns {
  const sqlite = kind === "sqlite";
  return {
    whole: sqlite ? sql`integer` : sql`bigint`,
    decimal: sqlite ? sql`real` : sql`double precision`,
    // Compared by character everywhere, so that both databases sort alike.
    text: sqlite ? sql`text` : sql`text collate "C"`,
    flag: (column) => (sqlite ? sql`integer check (${sql.ref(column)} in (0, 1))` : sql`bigint check (${sql.ref(column)} in (0, 1))`),
    strict: (table) => (sqlite ? table.modifyEnd(sql`strict`) : table),
  };
}
