// npm run bench -- [--json] [--only NAME]: every *.bench.ts beside this file, in the order of their names.

import { readdirSync } from "node:fs";
import { parseArgs } from "node:util";
import { type Bench, isBench, printed } from "./harness.ts";

const { json = false, only } = parseArgs({ options: { json: { type: "boolean" }, only: { type: "string" } } }).values;
const all: Bench[] = [];
for (const file of readdirSync(import.meta.dirname)
  .filter((name) => name.endsWith(".bench.ts"))
  .sort()) {
  const benches = Object.values((await import(`./${file}`)) as Record<string, unknown>).filter(isBench);
  if (benches.length === 0) throw new Error(`${file} exports no bench`);
  all.push(...benches);
}
const chosen = all.filter((bench) => only === undefined || bench.name === only);
if (chosen.length === 0) throw new Error(`no such bench: ${only}; there are ${all.map((bench) => bench.name).join(", ")}`);
for (const bench of chosen) for (const row of await bench.rows()) process.stdout.write(`${printed(row, json)}\n`);
