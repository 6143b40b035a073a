// What falls due on a bike until a day, and the day as it was typed.

import { addMonths } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import { outlook } from "../core/schedule/outlook.ts";
import { readUntil } from "../message/read-until.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type Garaged, itemOf } from "./garage.ts";
import { knownOf } from "./own-garage.ts";
import { done, type Result, refused } from "./refusals.ts";

/** As far as looking ahead goes. */
const MOST_MONTHS = 36;

/** The items that are due or likely fall due until a day, without those that another of them does as well. */
export function fallingUntil(g: Garaged, until: LocalDate): readonly ItemKey[] {
  const keys = outlook(g.facts, g.at, { on: until, ridden: g.at.forecast.riddenOn(until) }).flatMap(({ item, likely }) => (likely ? [item] : []));
  const covered = new Set(keys.flatMap((key) => itemOf(g, key)?.covers ?? []));
  return keys.filter((key) => !covered.has(key));
}

/** A day ahead as it was typed; a month from today when nothing was. */
export function dayAhead(ctx: Ctx, typed: string | undefined): Result<LocalDate> {
  const today = todayOf(ctx);
  if (typed === undefined) return done(addMonths(today, 1));
  const until = readUntil(typed, knownOf(ctx, []), ctx.who.distance ?? "mi");
  if (until === null || until.is !== "day") return refused({ why: "not ahead", typed, because: "not read" });
  if (until.on <= today) return refused({ why: "not ahead", typed, because: "past" });
  return until.on > addMonths(today, MOST_MONTHS) ? refused({ why: "not ahead", typed, because: "too far" }) : done(until.on);
}
