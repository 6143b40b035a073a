// The record of work as lines, newest first, and whole as a table.

import type { Said } from "../../src/chat/reply.ts";
import type { LookBack } from "../../src/usecases/look-back.ts";
import { csvOf } from "../../src/words/csv.ts";
import type { Words } from "../../src/words/en/english.ts";
import { said } from "./said.ts";

/** Lines of one bike before the rest is left to the table. */
const MOST = 15;

export function sayRecords({ bikes }: LookBack, words: Words): Said {
  const { records, defects } = words;
  const lines = bikes.flatMap((bike, n) => [
    ...(n > 0 ? [""] : []),
    records.heading(bike.nickname, bike.work.length),
    ...bike.work.slice(0, MOST).map((record) => `- ${records.line(record, bike.unit, words.today)}`),
    ...(bike.work.length > MOST ? [records.more(bike.work.length - MOST)] : []),
    ...bike.defects.map((defect) => `- ${defects.shown(defect, words.today)}`),
    ...(bike.costs.length > 0 ? [records.costs(bike.costs)] : []),
  ]);
  const rows = bikes.flatMap((bike) => bike.work.flatMap((record) => records.rows(bike.nickname, bike.unit, record)));
  if (rows.length === 0) return said(lines);
  const bytes = new TextEncoder().encode(csvOf([records.columns, ...rows]));
  return said(lines, { files: [{ name: "records.csv", type: "text/csv", bytes, alt: records.tableAlt(rows.length) }] });
}
