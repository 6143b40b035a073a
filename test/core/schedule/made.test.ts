// A tyre ages from the week it was made in, not from the day it was fitted. Weeks are held against luxon; ages are common practice.

import { DateTime } from "luxon";
import { expect, test } from "vitest";
import { localDate } from "../../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../../src/core/ids.ts";
import { TYRE_AGE_ITEMS, tyreMade } from "../../../src/core/tyre/age.ts";
import { readTyreDate } from "../../../src/core/tyre/date-code.ts";
import { TYRE_AGE } from "../../../src/trade/tyres.ts";
import { aJob, anItem, every, facts, moment, only } from "./builders.ts";

const TODAY = "2026-11-25";
const rear = TYRE_AGE_ITEMS.rear as string as ItemKey;
const age = anItem({ key: rear, anchor: "last done", noLateWindow: true, repeat: { by: "interval", every: every(null, TYRE_AGE.replace) } });
const made = (code: string) => {
  const date = readTyreDate(code, localDate(TODAY));
  if (date.is === "refused") throw new Error(date.why);
  return new Map([[rear, tyreMade(date, "reading-1", TYRE_AGE)]]);
};
const stands = (code: string | null, jobs = [aJob(rear, "2026-11-25", 9000)]) =>
  only(facts([age], { jobs, ...(code === null ? {} : { made: made(code) }) }), moment(TODAY, 9000), rear);

test.each([
  ["3725", 2025, 37, "good"],
  ["2417", 2017, 24, "good"],
  ["5116", 2016, 51, "soon"],
  ["2416", 2016, 24, "overdue"],
])("%s, fitted today: ten years run from its week", (code, year, week, status) => {
  const due = stands(code);
  const monday = DateTime.fromObject({ weekYear: year, weekNumber: week, weekday: 1 });
  expect(due.status).toBe(status);
  expect(due.legs).toMatchObject([{ by: "date", dueOn: monday.plus({ years: 10 }).toISODate(), anchor: { from: "made", on: monday.toISODate(), week, year } }]);
});

test("three digits leave the decade open: the latest that it can be counts, and no year is told", () => {
  expect(stands("148").legs).toMatchObject([{ state: "overdue", anchor: { from: "made", week: 14, year: null } }]);
});

test("without a code it counts from the day it was fitted; with one and nothing else on record it is known all the same", () => {
  expect(stands(null).legs).toMatchObject([{ dueOn: "2036-11-25", anchor: { from: "job" } }]);
  expect(stands("3725", []).status).toBe("good");
});
