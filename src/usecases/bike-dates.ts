// The days of a bike's papers, noted by its owner and told in time.

import { addDays } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { readUntil } from "../message/read-until.ts";
import { type Ctx, todayOf } from "./context.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { touch } from "./settle.ts";
import { whichBike } from "./which-bike.ts";

export type BikeDates = {
  readonly bikes: readonly { readonly bike: string; readonly nickname: string; readonly dates: readonly { readonly what: string; readonly on: LocalDate }[] }[];
  readonly changed: { readonly nickname: string; readonly what: string; readonly on: LocalDate | null } | null;
};

const LONGEST = 40;
const MOST_YEARS = 3700;

/** Notes or moves a day; "none" takes it away; with nothing named, lists them. */
export async function bikeDate(ctx: Ctx, input: { readonly bike?: string; readonly what?: string; readonly on?: string }): Promise<Result<BikeDates>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<BikeDates>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const listed = async (changed: BikeDates["changed"]): Promise<Result<BikeDates>> => {
      const dates = await q.dates.ofBikes(all.map((g) => g.bike.id));
      return done({
        bikes: all.map((g) => ({
          bike: g.bike.id,
          nickname: g.bike.nickname,
          dates: dates.filter(({ bike }) => bike === g.bike.id).map(({ what, on }) => ({ what, on })),
        })),
        changed,
      });
    };
    const what = input.what?.normalize("NFKC").trim().replace(/\s+/gu, " ") ?? "";
    if (what === "") return listed(null);
    if (what.length > LONGEST) return refused({ why: "too long", limit: LONGEST });
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const { bike } = which.value;
    const typed = input.on?.trim() ?? "";
    if (typed.toLowerCase() === "none") {
      if (!(await q.dates.remove(bike.id, what))) return refused({ why: "gone" });
      await touch(q, ctx, [bike.id]);
      return listed({ nickname: bike.nickname, what, on: null });
    }
    const day = readUntil(typed, knownOf(ctx, all), which.value.unit);
    const today = todayOf(ctx);
    if (day?.is !== "day") return refused({ why: "not ahead", typed, because: "not read" });
    if (day.on < today) return refused({ why: "not ahead", typed, because: "past" });
    if (day.on > addDays(today, MOST_YEARS)) return refused({ why: "not ahead", typed, because: "too far" });
    await q.dates.put({ bike: bike.id, what, on: day.on }, ctx.who.member, ctx.now);
    await touch(q, ctx, [bike.id]);
    return listed({ nickname: bike.nickname, what, on: day.on });
  });
  return onceHeard(acted);
}
