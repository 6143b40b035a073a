// The sentences of a due list: what they say, and that their arithmetic can be checked by hand.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localDate, vagueDate } from "../../src/core/calendar/arithmetic.ts";
import type { ItemKey } from "../../src/core/ids.ts";
import { type Ridden, riddenOf, stretchOf } from "../../src/core/quantity/distance.ts";
import type { Anchor, Due, Leg } from "../../src/core/schedule/facts.ts";
import { dueWords } from "../../src/words/en/due.ts";
import { makePrinter } from "../../src/words/printer.ts";

const TODAY = localDate("2026-11-25");
const KNOWN = { from: "readings", readings: 14, days: 335 } as const;
const ON = { unit: "mi", offset: 0, today: TODAY, perWeek: stretchOf(95, "mi"), basis: KNOWN, odometer: { figure: 11_820, on: TODAY } } as const;
const words = dueWords(makePrinter({ locale: "en-GB", distance: null }));

const job = (mi: number, counts: number | null = null, about = false): Anchor => ({
  from: "job",
  job: "j",
  on: vagueDate(localDate("2026-03-03"), localDate("2026-03-03"), ""),
  ridden: riddenOf(mi, "mi"),
  about,
  countsFor: counts === null ? null : riddenOf(counts, "mi"),
  off: stretchOf(0, "mi"),
});
const unplaced: Anchor = { ...(job(0) as Extract<Anchor, { from: "job" }>), ridden: null, about: true };
const distance = (dueAt: number, toGo: number | null, anchor: Anchor, more: Partial<Extract<Leg, { by: "distance" }>> = {}): Leg => ({
  by: "distance",
  state: "ahead",
  anchor,
  dueAt: riddenOf(dueAt, "mi"),
  toGo: toGo === null ? null : stretchOf(toGo, "mi"),
  interval: stretchOf(4000, "mi"),
  window: stretchOf(400, "mi"),
  likely: null,
  converted: false,
  ...more,
});
const date = (dueOn: string, daysToGo: number, more: Partial<Extract<Leg, { by: "date" }>> = {}): Leg => ({
  by: "date",
  state: "ahead",
  anchor: job(7870),
  dueOn: localDate(dueOn),
  grain: "day",
  daysToGo,
  months: 12,
  legDays: 365,
  windowDays: 30,
  pausedDays: 0,
  ...more,
});
const due = (legs: readonly Leg[], because: Partial<Extract<Due["because"], { why: "leg" }>> = {}, status: Due["status"] = "good"): Due & { name: string } => ({
  item: "engine-oil.replace" as ItemKey,
  name: "Engine oil and filter",
  status,
  habit: false,
  governs: 0,
  legs,
  mark: null,
  because: { why: "leg", leg: 0, shortenedBy: null, runningIn: false, byTheBook: false, askOdometer: false, ...because },
});

describe("one sentence each", () => {
  const likely = { on: localDate("2026-12-08"), from: localDate("2026-12-01"), to: localDate("2026-12-20") };
  test.each([
    [
      due([distance(12_000, 180, job(7870, 8000), { likely })]),
      "Engine oil and filter: due at 12,000 mi, last done at 7,870 mi, counts for 8,000 mi; 180 mi to go; at your 95 mi a week that is about 8 December.",
    ],
    [
      due([distance(12_000, 180, job(7870, 8000)), date("2027-05-01", 157, { grain: "month" })]),
      "Engine oil and filter: due at 12,000 mi, last done at 7,870 mi, counts for 8,000 mi; 180 mi to go; by date May 2027.",
    ],
    [due([distance(12_000, 0, job(8000))]), "Engine oil and filter: due now at 12,000 mi, last done at 8,000 mi."],
    [due([distance(11_000, -820, job(7000, null, true))]), "Engine oil and filter: was due at 11,000 mi, last done at about 7,000 mi; now 820 mi past."],
    [
      due([distance(12_000, 180, { from: "new" }, { converted: true })], { runningIn: true }),
      "Engine oil and filter: due at 12,000 mi, counted from new; 180 mi to go (running-in, only the km column is printed; converted).",
    ],
    [
      due([distance(12_000, 180, job(8000))], { shortenedBy: "dust", byTheBook: true }),
      "Engine oil and filter: due at 12,000 mi, last done at 8,000 mi; 180 mi to go (shortened for dust, by the book).",
    ],
    [
      due([distance(12_000, 180, job(8000), { likely: { ...likely, on: localDate("2026-11-20") } })], { askOdometer: true }),
      "Engine oil and filter: 12,000 mi was probably reached about 20 November, last done at 8,000 mi; what does the odometer say?",
    ],
    [due([date("2026-12-08", 13)]), "Engine oil and filter: due on 8 December, last done 3 March; in 13 days."],
    [due([date("2027-03-03", 98)]), "Engine oil and filter: due on 3 March, last done 3 March 2026; in 3 months."],
    [due([date("2026-11-25", 0)]), "Engine oil and filter: due today, last done 3 March."],
    [
      due([date("2026-10-01", -55, { pausedDays: 40 }), distance(12_000, 180, job(8000))]),
      "Engine oil and filter: was due on 1 October, last done 3 March, 40 days laid up not counted; 8 weeks ago; by distance at 12,000 mi, 180 mi to go.",
    ],
    [due([date("2028-05-01", 523, { grain: "month" })]), "Engine oil and filter: due May 2028, last done 3 March."],
    // Autumn 2026 is not over on 25 November.
    [
      due([date("2026-09-01", -85, { grain: "season" })]),
      "Engine oil and filter: due since 1 September, last done 3 March, counted from the first day of that.",
    ],
    [due([date("2026-06-01", -177, { grain: "season" })]), "Engine oil and filter: was due summer 2026, last done 3 March."],
    // Done before the first reading: only the latest point at which it can fall due is known.
    [
      due([date("2026-12-08", 13), distance(18_210, 4000, unplaced, { state: "cannot tell" })]),
      "Engine oil and filter: due on 8 December, last done 3 March; in 13 days; by distance it cannot tell, since the odometer then is not known: 18,210 mi at the latest.",
    ],
    [
      due([distance(18_210, -10, unplaced)]),
      "Engine oil and filter: was due at 18,210 mi at the latest, last done 3 March, at what odometer is not known; now 10 mi past.",
    ],
    [
      due([distance(12_000, null, job(8000)), date("2026-12-08", 13)], { leg: 1 }),
      "Engine oil and filter: due on 8 December, last done 3 March; in 13 days; by distance at 12,000 mi, which needs an odometer reading.",
    ],
    [
      due([distance(4000, 1400, job(2600))], { byTheBook: true }),
      "Engine oil and filter: due at 4,000 mi, last done at 2,600 mi, too early to count for 4,000 mi; 1,400 mi to go (by the book).",
    ],
  ])("%#", (given, sentence) => {
    expect(words.line(given, ON)).toBe(sentence);
  });

  test("a pace that makes another day than the likely one is not said to make it; an old reading is named", () => {
    const to = (on: string, read = TODAY) =>
      words.reason(due([distance(12_000, 950, job(8000), { likely: { ...likely, on: localDate(on) } })]), { ...ON, odometer: { figure: 11_050, on: read } });
    // Ten weeks at 95 mi a week are 3 February; nineteen weeks until 7 April make it 50.
    expect(to("2027-02-03")).toContain("950 mi to go; at your 95 mi a week that is about 3 February");
    // What the group rides is not the member's own.
    const usual = { ...ON, basis: { from: "group median", perYear: stretchOf(4957, "mi") } } as const;
    expect(words.reason(due([distance(12_000, 950, job(8000), { likely: { ...likely, on: localDate("2027-02-03") } })]), usual)).toContain(
      "at the group's usual 95 mi a week",
    );
    expect(to("2027-04-07")).toContain("950 mi to go; at about 50 mi a week until then that is about 7 April");
    expect(to("2027-01-13", localDate("2026-11-04"))).toContain("at your 95 mi a week, counted from 4 November, that is about 13 January");
  });

  test("how it knows: the pace of now, and none while the bike stands", () => {
    expect(words.basis(ON)).toBe("Likely dates from 14 readings over 11 months, about 95 mi a week now.");
    expect(words.basis({ ...ON, perWeek: stretchOf(0, "mi") })).toBe("Likely dates from 14 readings over 11 months.");
    expect(words.basis({ ...ON, perWeek: null, basis: { from: "nothing" } })).toContain(
      "until readings over some weeks show how you ride, one interval counts as a year",
    );
  });

  test("no record says what passed, and how it ends", () => {
    const never = (passedAt: Ridden | null, nextMark: Ridden | null): Due & { name: string } => ({
      ...due([]),
      status: "no record",
      because: { why: "never recorded", passedAt, nextMark, nextOn: null },
    });
    expect(words.line(never(riddenOf(8000, "mi"), riddenOf(16_000, "mi")), ON)).toBe(
      "Engine oil and filter: 8,000 mi passed before it came to you; next at 16,000 mi unless you record when it was done.",
    );
    expect(words.line(never(null, null), ON)).toBe("Engine oil and filter: nothing is known of the last time; record when it was done, or do it.");
  });
  test("after a new dial, figures are the dial's", () => {
    // Ridden 15,000 when the new dial stood at 0: 16,000 ridden is 1,000 on the dial.
    expect(words.reason(due([distance(16_000, 800, job(12_000))]), { ...ON, offset: riddenOf(15_000, "mi") })).toContain("due at 1,000 mi");
  });
});

test("last done + interval = due, due - now = to go, as printed", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 90_000 }),
      fc.constantFrom(500, 3000, 4000, 12_000),
      fc.integer({ min: 0, max: 90_000 }),
      (done, interval, ridden) => {
        const sentence = words.reason(due([distance(done + interval, done + interval - ridden, job(done))]), ON);
        const figures = [...sentence.matchAll(/([\d,]+) mi/g)].map((found) => Number((found[1] ?? "").replace(/,/g, "")));
        const [dueAt, last, gap = 0] = figures;
        expect(dueAt).toBe(done + interval);
        expect(last).toBe(done);
        expect(Math.abs((dueAt ?? 0) - ridden)).toBe(gap);
        expect(sentence).not.toMatch(/undefined|NaN|null|!/);
        expect(sentence.length).toBeLessThan(200);
      },
    ),
    { numRuns: 500 },
  );
});
