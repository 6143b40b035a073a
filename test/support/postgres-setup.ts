// Once a run with PostgreSQL: the template that each test's database is copied from.

import { openPostgres } from "../../src/store/postgres.ts";
import { addressOf, asAdmin, HAS_SERVER, TEMPLATE } from "./database.ts";

export async function setup(): Promise<void> {
  if (!HAS_SERVER) return;
  await asAdmin(`drop database if exists ${TEMPLATE} with (force)`);
  await asAdmin(`create database ${TEMPLATE}`);
  await (await openPostgres(addressOf(TEMPLATE))).close();
}
export const teardown = async (): Promise<void> => {
  if (HAS_SERVER) await asAdmin(`drop database if exists ${TEMPLATE} with (force)`);
};
