// Checks the arrows between the parts of the house. A check that saw almost nothing is no check.

import { createRequire } from "node:module";
import { cruise, type ICruiseOptions, type ICruiseResult } from "dependency-cruiser";
import extractTSConfig from "dependency-cruiser/config-utl/extract-ts-config";

const LEAST = 60;
const rules = createRequire(import.meta.url)("./arrows.cjs") as {
  forbidden: NonNullable<NonNullable<ICruiseOptions["ruleSet"]>["forbidden"]>;
  options: ICruiseOptions;
};
const result = await cruise(["src", "commands", "migrations"], { ...rules.options, validate: true, ruleSet: { forbidden: rules.forbidden } }, undefined, {
  tsConfig: extractTSConfig("tsconfig.json"),
});
const { summary } = result.output as ICruiseResult;
for (const { rule, from, to } of summary.violations) process.stdout.write(`${rule.name}: ${from} -> ${to}\n`);
if (summary.totalCruised < LEAST) process.stdout.write(`Only ${summary.totalCruised} modules were seen; at least ${LEAST} are expected.\n`);
process.stdout.write(`arrows: ${summary.totalCruised} modules, ${summary.totalDependenciesCruised} imports, ${summary.violations.length} against the rules\n`);
process.exitCode = summary.violations.length > 0 || summary.totalCruised < LEAST ? 1 : 0;
