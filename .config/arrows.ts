// Checks the arrows between the parts of the house. A check that saw almost nothing is no check.

import { createRequire } from "node:module";
import { cruise, type ICruiseOptions, type ICruiseResult } from "dependency-cruiser";
import extractTSConfig from "dependency-cruiser/config-utl/extract-ts-config";

const LEAST = 60;
const PARTS = [
  "src/core/",
  "src/words/",
  "src/store/",
  "src/usecases/",
  "src/chat/",
  "src/reminders/",
  "src/picture/",
  "src/terminal/",
  "commands/",
  "migrations/",
];
const rules = createRequire(import.meta.url)("./arrows.cjs") as {
  forbidden: NonNullable<NonNullable<ICruiseOptions["ruleSet"]>["forbidden"]>;
  options: ICruiseOptions;
};
const result = await cruise(["src", "commands", "migrations"], { ...rules.options, validate: true, ruleSet: { forbidden: rules.forbidden } }, undefined, {
  tsConfig: extractTSConfig("tsconfig.json"),
});
const { modules, summary } = result.output as ICruiseResult;
const ours = modules.map((each) => each.source).filter((source) => /^(src|commands|migrations)\//.test(source));
const faults = summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`);
if (ours.length < LEAST) faults.push(`Only ${ours.length} modules were seen; at least ${LEAST} are expected.`);
for (const part of PARTS) if (!ours.some((source) => source.startsWith(part))) faults.push(`No module of ${part} was seen.`);
for (const fault of faults) process.stdout.write(`${fault}\n`);
process.stdout.write(`arrows: ${ours.length} modules, ${summary.totalDependenciesCruised} imports, ${faults.length} against the rules\n`);
process.exitCode = faults.length > 0 ? 1 : 0;
