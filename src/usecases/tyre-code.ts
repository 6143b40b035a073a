// The date code of a tyre: what it says, and noted for the tyre that is on, at one end of a bike or at both.

import type { BikeId, ItemKey } from "../core/ids.ts";
import type { LogReading } from "../core/reading/intent.ts";
import { READING_KINDS } from "../core/reading/kinds.ts";
import { type AgeWord, ageWord, monthsOld, TYRE_AGE_ITEMS } from "../core/tyre/age.ts";
import { holdsSeveralCodes, readTyreDate, type TyreDate, tyreCodeIn } from "../core/tyre/date-code.ts";
import { TYRE_AGE } from "../trade/tyres.ts";
import { type Ctx, todayOf } from "./context.ts";
import { settle } from "./log-set.ts";
import type { MessageOutcome } from "./message-outcome.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export const TYRE_ENDS = ["front", "rear", "both", "sidecar"] as const;

export type TyreDated = {
  readonly typed: string;
  readonly date: Exclude<TyreDate, { is: "refused" }>;
  readonly months: number;
  /** Months at which it is replaced at the latest, whatever the plan of a bike has. */
  readonly replaceAt: number;
  readonly age: AgeWord;
};

/** A date code read off a sidewall, with the age that it makes. */
export function tyreDated(ctx: Ctx, input: { readonly code: string }): Result<TyreDated> {
  const today = todayOf(ctx);
  // Of two codes one would be dropped unseen.
  if (holdsSeveralCodes(input.code, today)) return refused({ why: "not a tyre code", typed: input.code, because: "several codes" });
  const date = readTyreDate(input.code, today);
  if (date.is === "refused") return refused({ why: "not a tyre code", typed: input.code, because: date.why });
  const months = monthsOld(date, today);
  return done({ typed: input.code, date, months, replaceAt: TYRE_AGE.replace, age: ageWord(months, TYRE_AGE.replace, TYRE_AGE) });
}

/** Notes a date code for the tyre that is on, as a reading of today. */
export async function noteTyreCode(
  ctx: Ctx,
  input: { readonly code: string; readonly end: (typeof TYRE_ENDS)[number]; readonly bike?: string },
): Promise<Result<MessageOutcome>> {
  const dated = tyreDated(ctx, input);
  if (dated.is === "refused") return dated;
  const typed = input.code.trim();
  const code = tyreCodeIn(typed) ?? "";
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<MessageOutcome>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const ends = input.end === "both" ? READING_KINDS["tyre date code"].ask : [input.end];
    const intents = ends.map(
      (place): LogReading => ({
        ...{ do: "log reading", bike: which.value.bike.id, kind: "tyre date code", place, value: Number(code), unit: "date code" },
        ...{ typed: { text: typed.length > LONGEST ? code : typed, unit: null }, on: todayOf(ctx), gaps: [] },
      }),
    );
    return done(await settle(q, ctx, all, intents, { source: ctx.event, typed, message: null }));
  });
  return onceHeard(acted);
}

/** A code typed alone at the plan's line of a tyre's age, as a reading of today; null for any other line, or what is no code. */
export function codeAtAge(ctx: Ctx, bike: BikeId, item: ItemKey, typed: string): LogReading | null {
  const end = (["front", "rear", "sidecar"] as const).find((each) => TYRE_AGE_ITEMS[each] === item);
  const text = typed.trim();
  if (end === undefined || !/^(?:DOT\s*)?\d{4}$/iu.test(text) || tyreDated(ctx, { code: text }).is === "refused") return null;
  return {
    ...{ do: "log reading", bike, kind: "tyre date code", place: end, value: Number(tyreCodeIn(text)), unit: "date code" },
    ...{ typed: { text, unit: null }, on: todayOf(ctx), gaps: [] },
  };
}

/** The whole of what a tyre bears behind "DOT" is no longer. */
const LONGEST = 40;
