// What is due on one bike: a plan of 40 items, three years of work and 200 odometer readings. The pure part of /due, and the parts it is made of.

import { addDays, localDate } from "../../src/core/calendar/arithmetic.ts";
import { dialOf, riddenOf } from "../../src/core/quantity/distance.ts";
import { dueList } from "../../src/core/schedule/status.ts";
import { forecast } from "../../src/core/usage/forecast.ts";
import { buildTrack, type Epoch, type OdometerReading } from "../../src/core/usage/track.ts";
import { aJob, anItem, every, facts, moment } from "../core/schedule/builders.ts";
import { type Bench, compare } from "./harness.ts";

const ITEMS = 40;
const READINGS = 200;
const FROM = localDate("2023-11-01");
const TODAY = localDate("2026-11-01");
const AT_START = 3000;
const AT_END = 15_000;
const INTERVALS = [every(4000, 12), every(8000, 24), every(600, null), every(null, 24), every(16_000, 48)];

const epochs: readonly Epoch[] = [{ id: "e", from: FROM, lastOfOld: null, firstOfNew: dialOf(AT_START, "mi"), unit: "mi", cause: "as bought" }];
const readings: readonly OdometerReading[] = Array.from({ length: READINGS }, (_, n) => ({
  id: `r${n}`,
  on: addDays(FROM, Math.floor((n * 1090) / READINGS)),
  order: n,
  dial: dialOf(AT_START + Math.floor((n * (AT_END - AT_START)) / (READINGS - 1)), "mi"),
}));
const items = Array.from({ length: ITEMS }, (_, n) =>
  anItem({
    key: `item-${n}.replace`,
    anchor: n % 3 === 0 ? "last done" : "marks",
    parked: n % 4 === 0 ? "pauses" : "counts",
    repeat: { by: "interval", every: INTERVALS[n % INTERVALS.length] ?? every(4000, 12) },
  }),
);
// Every seventh item was never recorded.
const jobs = items.flatMap((item, n) =>
  n % 7 === 6 ? [] : [200, 560, 920].map((days, time) => aJob(item.key, addDays(FROM, days + n), AT_START + 2200 + time * 3900 + n * 5)),
);

const track = buildTrack(epochs, readings);
const ahead = () => forecast(track, { layUps: [], trips: [] }, { perYear: null }, null, TODAY);
const known = facts(items, { jobs, odometer: track, knownFrom: { date: FROM, ridden: riddenOf(AT_START, "mi"), wholeSinceNew: false } });
const now = moment(TODAY, AT_END, "mi", ahead());

export const schedule: Bench = {
  name: "schedule",
  async rows() {
    const statuses = new Set(dueList(known, now).map((each) => each.status));
    if (dueList(known, now).length !== ITEMS || statuses.size < 3) throw new Error(`a list of one kind measures little: ${[...statuses].join(", ")}`);
    const bench = `${ITEMS} items, ${READINGS} readings`;
    return compare(bench, null, {
      "track of the readings": () => buildTrack(epochs, readings),
      "forecast from the track": ahead,
      "due list, forecast made once": () => dueList(known, now),
      "due list from bare readings": () => {
        const odometer = buildTrack(epochs, readings);
        return dueList({ ...known, odometer }, { ...now, forecast: forecast(odometer, { layUps: [], trips: [] }, { perYear: null }, null, TODAY) });
      },
    });
  },
};
