// Putting an item off: it changes when it is spoken of again, never its status.

import { addDays, addMonths, weekdayOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { type Dial, type DistanceUnit, dialOf } from "../core/quantity/distance.ts";
import type { PutOff } from "../store/notices.ts";
import type { Ctx } from "./context.ts";
import { figureOfLast, pick } from "./garage.ts";
import { ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";

export const PUT_OFF_UNTIL = ["the weekend", "a week", "two weeks", "a month", "250 more", "1000 more"] as const;
export type PutOffUntil = (typeof PUT_OFF_UNTIL)[number];

/** The day on which a put-off item is spoken of again. The weekend is the next Saturday that is not today. */
export function putOffDate(today: LocalDate, until: PutOffUntil): LocalDate {
  switch (until) {
    case "the weekend":
      return addDays(today, ((6 - weekdayOf(today) + 6) % 7) + 1);
    case "a week":
      return addDays(today, 7);
    case "two weeks":
      return addDays(today, 14);
    case "a month":
      return addMonths(today, 1);
    // A dial that nobody reads does not silence it for good.
    case "250 more":
    case "1000 more":
      return addMonths(today, 6);
  }
}

/** Is it silent on a day? Until its day, or until the dial shows its figure, whichever comes first. */
export const isPutOff = (put: Pick<PutOff, "until" | "dial">, today: LocalDate, dial: Dial | null): boolean =>
  put.until > today && !(put.dial !== null && dial !== null && dial >= put.dial);

export type PutOffDone = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly items: readonly string[];
  readonly until: LocalDate;
  /** On the dial, where it is a distance that was asked for. */
  readonly figure: { readonly at: number; readonly unit: DistanceUnit } | null;
};

/** What is added to the dial's figure; null: only a day was asked for. */
const moreOf = (until: PutOffUntil): number | null => (until === "250 more" ? 250 : until === "1000 more" ? 1000 : null);

/** Puts items of one bike off until a day. */
export async function putOff(
  ctx: Ctx,
  input: { readonly bike: BikeId; readonly items: readonly ItemKey[]; readonly until: PutOffUntil },
): Promise<Result<PutOffDone>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<PutOffDone>> => {
    const g = pick(await ownGarage(q, ctx), input.bike);
    if (g === null) return refused({ why: "not yours" });
    const until = putOffDate(g.today, input.until);
    const more = moreOf(input.until);
    const last = figureOfLast(g);
    if (more !== null && last === null) return refused({ why: "not ahead", typed: input.until, because: "no reading" });
    const figure = more === null || last === null ? null : { at: Math.round(last) + more, unit: g.unit };
    const dial = figure === null ? null : dialOf(figure.at, figure.unit);
    for (const item of input.items) await q.notices.putOff({ bike: input.bike, item, until, dial }, ctx.who.member, ctx.now);
    await q.bikes.touched([input.bike], ctx.now);
    return done({ bike: input.bike, nickname: g.bike.nickname, items: input.items.map((item) => nameIn(ctx, g, item)), until, figure });
  });
  return onceHeard(acted);
}
