// What TAPPET_DATABASE names.

/** Is it the address of a PostgreSQL server, not the path of a file? */
export const isPostgres = (address: string): boolean => /^postgres(ql)?:\/\//u.test(address);
