// What falls due on a bike until a day, and the day as it was typed.

import { addMonths } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import { type Horizon, outlook } from "../core/schedule/outlook.ts";
import { type Blind, blindUntil, ofNext, unknownFirst } from "../core/sheet/select.ts";
import { readUntil, type Until } from "../message/read-until.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type Garaged, itemOf } from "./garage.ts";
import { knownOf } from "./own-garage.ts";
import { done, type Result, refused } from "./refusals.ts";

/** As far as looking ahead goes. */
const MOST_MONTHS = 36;

/**
 * `keys`: due, or likely to fall due. `next`: of the next service, where nothing says how far the bike is ridden and it is near enough to be done with them.
 * `unknown`: nothing is on record of them, and they cannot wait for their next mark. `blind`: what cannot be foreseen.
 */
export type FallingUntil = {
  readonly keys: readonly ItemKey[];
  readonly next: readonly ItemKey[];
  readonly unknown: readonly ItemKey[];
  readonly blind: Blind | null;
};

/** The items that fall due until a day, or a point, without those that another of them does as well. */
export function fallingUntil(g: Garaged, until: LocalDate | Horizon): FallingUntil {
  const byDay = typeof until === "string";
  const horizon = byDay ? { on: until, ridden: g.at.forecast.riddenOn(until) } : until;
  const falling = outlook(g.facts, g.at, horizon).flatMap(({ item, likely }) => (likely ? [item] : []));
  const blind = blindUntil(g.facts, g.at, horizon, byDay ? "day" : "point");
  const ofService = ofNext(g.facts, g.at, blind, new Set(falling)).map(({ item }) => item);
  const all = [...falling, ...ofService];
  const covered = new Set(all.flatMap((key) => itemOf(g, key)?.covers ?? []));
  const apart = (keys: readonly ItemKey[]): readonly ItemKey[] => keys.filter((key) => !covered.has(key));
  const unknown = unknownFirst(g.facts, g.at).map(({ item }) => item);
  return { keys: apart(falling), next: apart(ofService), unknown: apart(unknown).filter((key) => !all.includes(key)), blind };
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

/** A distance ahead as it was typed; null where it is a day, or cannot be read. */
export function distanceAhead(ctx: Ctx, typed: string | undefined): Extract<Until, { is: "distance" }> | null {
  const until = typed === undefined ? null : readUntil(typed, knownOf(ctx, []), ctx.who.distance ?? "mi");
  return until?.is === "distance" ? until : null;
}
