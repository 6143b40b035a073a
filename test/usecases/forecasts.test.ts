// A forecast kept must be the one that would be learnt anew: whatever it follows from, a change of it is seen.

import { describe, expect, test } from "vitest";
import { localDate } from "../../src/core/calendar/arithmetic.ts";
import type { BikeId } from "../../src/core/ids.ts";
import { dialOf, riddenOf, type Stretch, stretchOf } from "../../src/core/quantity/distance.ts";
import { type Forecast, forecast, type Known } from "../../src/core/usage/forecast.ts";
import { buildTrack, type Track } from "../../src/core/usage/track.ts";
import { forecastFor } from "../../src/usecases/forecasts.ts";

const HERON = "heron" as BikeId;
const TODAY = localDate("2026-06-01");

type Asked = {
  readonly track: Track;
  readonly known: Known;
  readonly perYear: Stretch | null;
  readonly groupYear: Stretch | null;
  readonly today: typeof TODAY;
};

function trackTo(miles: number, days = 150): Track {
  const from = localDate("2026-01-01");
  const epochs = [{ id: "e", from, lastOfOld: null, firstOfNew: dialOf(3000, "mi"), unit: "mi", cause: "as bought" }] as const;
  const to = localDate(days === 150 ? "2026-05-31" : "2026-01-08");
  return buildTrack(epochs, [
    { id: "a", on: from, order: 0, dial: dialOf(3000, "mi") },
    { id: "b", on: to, order: 1, dial: dialOf(miles, "mi") },
  ]);
}

const asked: Asked = { track: trackTo(4000), known: { layUps: [], trips: [] }, perYear: null, groupYear: null, today: TODAY };
const kept = ({ track, known, perYear, groupYear, today }: Asked): Forecast => forecastFor(HERON, track, known, perYear, groupYear, today);
const anew = ({ track, known, perYear, groupYear, today }: Asked): Forecast =>
  forecast(track, known, { perYear }, groupYear === null ? null : { perYear: groupYear }, today);
const said = (of: Forecast) => [of.basis, of.perWeek, of.dateOf(riddenOf(5000, "mi")), of.riddenOn(localDate("2026-09-01"))];

const layUp = { from: localDate("2026-06-01"), to: localDate("2026-08-01") };
const trip = { from: localDate("2026-07-01"), to: localDate("2026-07-10"), distance: stretchOf(1500, "mi") };
const short = trackTo(3100, 7);

describe("a kept forecast", () => {
  test("is given again while nothing has changed", () => {
    const first = kept(asked);
    expect(kept({ ...asked, track: trackTo(4000) })).toBe(first);
  });

  test.each<[string, Asked, Asked]>([
    ["a reading", asked, { ...asked, track: trackTo(4600) }],
    ["a lay-up", asked, { ...asked, known: { layUps: [layUp], trips: [] } }],
    ["the end of a lay-up", { ...asked, known: { layUps: [layUp], trips: [] } }, { ...asked, known: { layUps: [{ ...layUp, to: null }], trips: [] } }],
    ["a trip", asked, { ...asked, known: { layUps: [], trips: [trip] } }],
    [
      "the length of a trip",
      { ...asked, known: { layUps: [], trips: [trip] } },
      { ...asked, known: { layUps: [], trips: [{ ...trip, distance: stretchOf(400, "mi") }] } },
    ],
    ["the yearly figure", { ...asked, track: short }, { ...asked, track: short, perYear: stretchOf(9000, "mi") }],
    ["the group's figure", { ...asked, track: short }, { ...asked, track: short, groupYear: stretchOf(900, "mi") }],
    ["whose figure it is", { ...asked, track: short, perYear: stretchOf(900, "mi") }, { ...asked, track: short, groupYear: stretchOf(900, "mi") }],
    ["the day", { ...asked, known: { layUps: [layUp], trips: [] } }, { ...asked, known: { layUps: [layUp], trips: [] }, today: localDate("2026-08-02") }],
  ])("sees a change of %s", (_, before, after) => {
    expect(said(anew(after))).not.toEqual(said(anew(before)));
    kept(before);
    expect(said(kept(after))).toEqual(said(anew(after)));
  });

  test("of bikes without end keeps a bounded number", () => {
    const first = kept(asked);
    for (let n = 0; n < 500; n++) forecastFor(`bike ${n}` as BikeId, asked.track, asked.known, null, null, TODAY);
    expect(kept(asked)).not.toBe(first);
  });
});
