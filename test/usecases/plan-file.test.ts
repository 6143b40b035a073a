// The plan format: every starter plan goes out and comes back the same; the published schema is the one that is checked; a bad file is refused by its line.

import { readFileSync, writeFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import type { LocalDate } from "../../src/core/calendar/dates.ts";
import type { PlanBase } from "../../src/core/plan/plan.ts";
import { STARTER_PLANS } from "../../src/trade/starter-plans.ts";
import { planSchema, planText, readPlanFile } from "../../src/usecases/plan-file.ts";
import { english } from "../../src/words/en/english.ts";

const FILE = new URL("../../src/usecases/plan-file.schema.json", import.meta.url);
const published = (): object => JSON.parse(readFileSync(FILE, "utf8"));
const starters = Object.entries(STARTER_PLANS) as [string, PlanBase][];

test("the schema beside the format is the one that files are checked by", () => {
  if (process.env["TAPPET_SCHEMA"] === "write") writeFileSync(FILE, `${JSON.stringify(planSchema(), null, 2)}\n`);
  expect(published()).toEqual(JSON.parse(JSON.stringify(planSchema())));
});

// Against a JSON Schema validator that knows nothing of ours: draft 2020-12.
const valid = new Ajv2020({ strict: false }).compile(published());

describe.each(starters)("%s", (_kind, plan) => {
  test("goes out as a file that the published schema allows, and comes back the same", () => {
    const text = planText(plan);
    expect(valid(JSON.parse(text)), JSON.stringify(valid.errors)).toBe(true);
    expect(readPlanFile(text)).toEqual({ is: "done", value: plan });
  });
});

test("a form holds the file of any starter plan: what a platform's field takes is 4,000 characters", () => {
  for (const [kind, plan] of starters) expect(planText(plan).length, kind).toBeLessThan(10_000);
});

describe("a bad file", () => {
  const [, plan] = starters[0] as [string, PlanBase];
  const text = planText(plan);
  test.each([
    ["a wrong version", text.replace('"version": 1', '"version": 2'), 3],
    ["an item nobody knows", text.replace('"item":"coolant.inspect"', '"item":"coolant.taste"'), 14],
    ["a missing comma", text.replace('"engine-oil.replace"},', '"engine-oil.replace"}'), 8],
    ["an item that stands there twice", text.replace('"engine-oil.inspect"', '"engine-oil.replace"'), 8],
    ["a field of its own", text.replace('"engine-oil.replace"', '"engine-oil.replace","colour":"red"'), 7],
    ["a negative interval", text.replace('"engine-oil.replace"', '"engine-oil.replace","first":{"miles":-1,"km":null,"months":null,"hours":null}'), 7],
  ])("%s is refused with its line", (_what, bad, line) => {
    expect(bad).not.toBe(text);
    const read = readPlanFile(bad);
    expect(read).toMatchObject({ is: "refused", why: { why: "bad plan file", line } });
    expect(valid.schema).toBeTruthy();
  });
});

test("the reason is said in plain words, never in those of the library that checks", () => {
  const [, plan] = starters[0] as [string, PlanBase];
  const words = english({ locale: "en-GB", distance: null }, "2026-11-25" as LocalDate).refusal;
  const said = (from: string, to: string): string => {
    const text = planText(plan);
    expect(text).toContain(from);
    const read = readPlanFile(text.replace(from, to));
    return read.is === "refused" ? words(read.why) : "";
  };
  const oil = '"engine-oil.replace"';
  const every = (of: string) => `${oil},"repeat":{"by":"interval","every":${of}}`;
  expect(said(oil, every('{"miles":"many","km":null,"months":null,"hours":null}'))).toContain(
    "That plan cannot be read. Line 7: items.0.repeat.every.miles has to be a number. Nothing was changed.",
  );
  expect(said(oil, every('{"miles":2.5,"km":null,"months":null,"hours":null}'))).toContain("items.0.repeat.every.miles has to be a whole number.");
  expect(said(oil, every('{"miles":-4,"km":null,"months":null,"hours":null}'))).toContain("items.0.repeat.every.miles has to be greater than 0.");
  expect(said(oil, every('{"miles":9000000,"km":null,"months":null,"hours":null}'))).toContain("has to be 1000000 or less.");
  expect(said(oil, every('{"miles":null,"km":null,"months":null,"hours":null}'))).toContain("items.0.repeat.every needs a distance, months or hours.");
  expect(said(oil, `${oil},"colour":"red"`)).toContain('items.0 has "colour", which the format does not know.');
  expect(said(oil, `${oil},"anchor":"moon"`)).toContain('items.0.anchor has to be "marks" or "last done".');
  // An item of one's own is held against what such an item has, and not against the catalogue.
  expect(said(oil, '"own.rack","called":"Rack","system":"moon","action":"inspect"')).toMatch(/items\.\d+\.system has to be "engine", /u);
  expect(said('"engine-oil.replace"', '"engine-oil.drink"')).toContain("items.0.item is none that I know.");
});
