// What to buy: for all that falls due on the speaker's bikes until a day, or within a month, each thing once.

import { addMonths } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { outlook } from "../core/schedule/outlook.ts";
import { PLAIN } from "../core/sheet/how.ts";
import { readUntil } from "../message/read-until.ts";
import { howWorked, isKeptAtHand } from "../trade/workshop.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type Garaged, itemOf } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";
import { type SheetUse, usesOf } from "./sheet.ts";
import { specsOf } from "./specs.ts";
import { whichBike } from "./which-bike.ts";

/** One thing to buy: for each bike how much of it. */
export type Wanted = { readonly what: string; readonly for: readonly (SheetUse & { readonly nickname: string })[] };
export type Shopping = {
  readonly until: LocalDate;
  readonly bikes: readonly { readonly nickname: string; readonly items: readonly string[] }[];
  readonly wanted: readonly Wanted[];
  /** What lasts for many jobs: looked for on the shelf first. */
  readonly atHand: readonly string[];
};

/** The list for one bike or all of the speaker's. */
export async function shopping(ctx: Ctx, input: { readonly until?: string; readonly bike?: string }): Promise<Result<Shopping>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const one = input.bike === undefined ? null : whichBike(all, input.bike);
    if (one?.is === "refused") return one;
    const until = dayOf(ctx, all, input.until);
    if (until.is === "refused") return until;
    const bikes: Shopping["bikes"][number][] = [];
    const lists = new Map<string, Wanted["for"][number][]>();
    for (const g of one === null ? all : [one.value]) {
      const falling = outlook(g.facts, g.at, { on: until.value, ridden: g.at.forecast.riddenOn(until.value) }).filter(({ likely }) => likely);
      if (falling.length === 0) continue;
      const keys = falling.map(({ item }) => item).filter((key) => !falling.some(({ item }) => itemOf(g, item)?.covers.includes(key)));
      bikes.push({ nickname: g.bike.nickname, items: keys.map((key) => nameIn(ctx, g, key)) });
      const consumables = keys.flatMap((key) => (howWorked(key) ?? PLAIN).consumables);
      for (const use of usesOf(consumables, await specsOf(q, g.bike, ctx.who.group), g)) {
        const list = lists.get(use.what) ?? [];
        list.push({ ...use, nickname: g.bike.nickname });
        lists.set(use.what, list);
      }
    }
    const wanted = [...lists].map(([what, each]): Wanted => ({ what, for: each }));
    return done({
      ...{ until: until.value, bikes },
      wanted: wanted.filter(({ what }) => !isKeptAtHand(what)),
      atHand: wanted.filter(({ what }) => isKeptAtHand(what)).map(({ what }) => what),
    });
  });
}

function dayOf(ctx: Ctx, all: readonly Garaged[], typed: string | undefined): Result<LocalDate> {
  const today = todayOf(ctx);
  if (typed === undefined) return done(addMonths(today, 1));
  const until = readUntil(typed, knownOf(ctx, all), ctx.who.distance ?? "mi");
  if (until === null || until.is !== "day") return refused({ why: "not ahead", typed, because: "not read" });
  if (until.on <= today) return refused({ why: "not ahead", typed, because: "past" });
  return until.on > addMonths(today, MOST_MONTHS) ? refused({ why: "not ahead", typed, because: "too far" }) : done(until.on);
}

/** As far as looking ahead goes. */
const MOST_MONTHS = 36;
