// Every reason can be checked by hand: the figures in the sentence, read back from it, make the sum that it claims.

import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, addMonths, daysBetween, localDate } from "../../src/core/calendar/arithmetic.ts";
import { dialOf, riddenOf, stretchOf } from "../../src/core/quantity/distance.ts";
import { forecast } from "../../src/core/usage/forecast.ts";
import { buildTrack } from "../../src/core/usage/track.ts";
import { dueWords } from "../../src/words/en/due.ts";
import { makePrinter } from "../../src/words/printer.ts";
import { aJob, anItem, every, facts, moment, only } from "../core/schedule/builders.ts";

const words = dueWords(makePrinter({ locale: "en-GB", distance: null }));
const START = localDate("2026-01-05");
const MONTHS = "January February March April May June July August September October November December".split(" ");

const miles = (text: string | undefined): number => Number((text ?? "").replace(/,/gu, ""));
/** "8 December" or "8 December 2027": what was is behind today, what is due ahead of it. */
function dayIn(text: string, today: string, tense: "was" | "will be"): string {
  const [, day = "", month = "", year] = /(\d{1,2}) (\w+)(?: (\d{4}))?/u.exec(text) ?? [];
  const of = (y: number) => `${y}-${String(MONTHS.indexOf(month) + 1).padStart(2, "0")}-${day.padStart(2, "0")}`;
  if (year !== undefined) return of(Number(year));
  const y = Number(today.slice(0, 4));
  const [before = "", same = "", after = ""] = [y - 1, y, y + 1].map(of);
  if (tense === "was") return same <= today ? same : before;
  return same >= today ? same : after;
}

const item = fc.record({ interval: fc.constantFrom(1000, 3000, 4000, 6000, 12_000), anchor: fc.constantFrom("marks" as const, "last done" as const) });

test("by distance: due less the odometer is what is to go, and due is the job, or the mark it counts for, and an interval", () => {
  let counted = 0;
  fc.assert(
    fc.property(item, fc.integer({ min: 0, max: 60_000 }), fc.integer({ min: 0, max: 15_000 }), ({ interval, anchor }, done, since) => {
      const f = facts([anItem({ anchor, repeat: { by: "interval", every: every(interval, null) } })], { jobs: [aJob("oil.replace", START, done)] });
      const odometer = done + since;
      const due = only(f, moment(addDays(START, 60), odometer));
      const on = {
        unit: "mi",
        offset: 0,
        today: addDays(START, 60),
        perWeek: null,
        basis: { from: "nothing" },
        odometer: { figure: odometer, on: START },
      } as const;
      const sentence = words.reason(due, on);
      const dueAt = miles(/due (?:now )?at ([\d,.]+) mi/u.exec(sentence)?.[1]);
      const last = miles(/last done at ([\d,.]+) mi/u.exec(sentence)?.[1]);
      const counts = /counts for ([\d,.]+) mi/u.exec(sentence)?.[1];
      const toGo = /([\d,.]+) mi to go/u.exec(sentence)?.[1];
      const past = /now ([\d,.]+) mi past/u.exec(sentence)?.[1];
      expect(last).toBe(done);
      expect(dueAt - odometer).toBe(toGo !== undefined ? miles(toGo) : past !== undefined ? -miles(past) : 0);
      const window = Math.min(500, interval / 10);
      if (counts !== undefined) {
        counted++;
        expect([miles(counts) % interval, Math.abs(miles(counts) - done) <= window, dueAt]).toEqual([0, true, miles(counts) + interval]);
      } else if (anchor === "last done") expect(dueAt).toBe(done + interval);
      else expect(dueAt % interval === 0 ? dueAt > done && dueAt <= done + interval + window : dueAt === done + interval).toBe(true);
      expect(due.legs[0]).toMatchObject({ dueAt: riddenOf(dueAt, "mi") });
    }),
    { numRuns: 1000 },
  );
  expect(counted).toBeGreaterThan(20);
});

test("by date: last done and the interval's months make the day, and the days to go are counted from today", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 36 }), fc.integer({ min: 0, max: 700 }), fc.integer({ min: 0, max: 900 }), (months, begun, later) => {
      const on = addDays(START, begun);
      const today = addDays(on, later);
      const f = facts([anItem({ anchor: "last done", repeat: { by: "interval", every: every(null, months) } })], { jobs: [aJob("oil.replace", on, 100)] });
      const sentence = words.reason(only(f, moment(today, 200)), { unit: "mi", offset: 0, today, perWeek: null, basis: { from: "nothing" }, odometer: null });
      const due = /(?:due today)|due on ([^,]+),/u.exec(sentence);
      const last = /last done ([^,;]+)/u.exec(sentence)?.[1] ?? "";
      const lastDay = last === "today" ? today : last === "yesterday" ? addDays(today, -1) : dayIn(last, today, "was");
      expect(lastDay).toBe(on);
      expect(due?.[1] === undefined ? today : dayIn(due[1], today, sentence.startsWith("was due") ? "was" : "will be")).toBe(
        addMonths(localDate(lastDay), months),
      );
    }),
    { numRuns: 1000 },
  );
});

test("by forecast: what is to go at the pace named, from the day named, makes the day", () => {
  let [own, until, dated] = [0, 0, 0];
  const rider = fc.record({
    summer: fc.integer({ min: 10, max: 200 }),
    winter: fc.option(fc.integer({ min: 0, max: 100 }), { nil: null }),
    weeks: fc.integer({ min: 8, max: 90 }),
    unread: fc.integer({ min: 0, max: 40 }),
    interval: fc.constantFrom(500, 1000, 4000),
    laidUp: fc.option(fc.integer({ min: 30, max: 150 }), { nil: null, freq: 3 }),
  });
  fc.assert(
    fc.property(rider, ({ summer, winter, weeks, unread, interval, laidUp }) => {
      let total = 1000;
      const readings = Array.from({ length: weeks }, (_, week) => {
        const on = addDays(START, week * 7);
        total += on.slice(5, 7) >= "04" && on.slice(5, 7) <= "10" ? summer : (winter ?? summer);
        return { id: `r${week}`, on, order: week, dial: dialOf(total, "mi") };
      });
      const read = readings.at(-1)?.on ?? START;
      const today = addDays(read, unread);
      const track = buildTrack([], readings);
      const layUps = laidUp === null ? [] : [{ from: today, to: addDays(today, laidUp) }];
      const known = forecast(track, { layUps, trips: [] }, { perYear: stretchOf(3000, "mi") }, null, today);
      const f = facts([anItem({ anchor: "last done", repeat: { by: "interval", every: every(interval, null) } })], {
        jobs: [aJob("oil.replace", read, total)],
      });
      const due = only(f, { today, ridden: riddenOf(total, "mi"), hours: null, forecast: known });
      const sentence = words.reason(due, { unit: "mi", offset: 0, today, perWeek: known.perWeek, basis: known.basis, odometer: { figure: total, on: read } });
      const found = /([\d,]+) mi to go; at (your|about) ([\d,.]+) mi a week( until then)?(?:, counted from ([^,]+),)? that is about (.+)$/u.exec(sentence);
      if (found === null) return;
      const [, toGo, whose, pace, , from, on] = found;
      if (whose === "your") own++;
      else until++;
      if (from !== undefined) dated++;
      const days = (miles(toGo) / miles(pace)) * 7;
      const came = daysBetween(from === undefined ? today : localDate(dayIn(from, today, "was")), localDate(dayIn(on ?? "", today, "will be")));
      // What rounding the pace leaves open, and "about": a twentieth of the way or three days, for the pace and for the day it is counted from.
      const rounding = (days * (miles(pace) < 10 ? 0.05 : 0.5)) / miles(pace);
      expect(Math.abs(days - came)).toBeLessThanOrEqual(2 * Math.max(3, came * 0.055) + rounding + 1);
    }),
    { numRuns: 120 },
  );
  // Each kind of sentence came up.
  expect([own > 0, until > 0, dated > 0]).toEqual([true, true, true]);
});
