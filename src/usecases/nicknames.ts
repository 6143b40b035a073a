// What a bike may be called.

import { nicknameKey } from "../core/bike.ts";
import type { Refusal } from "../core/refusal.ts";
import { read } from "../message/read.ts";
import type { Ctx } from "./context.ts";
import { knownOf } from "./own-garage.ts";

const LONGEST_NICKNAME = 32;
type Unusable = Extract<Refusal, { why: "nickname unusable" }>["because"];

/** A bike called "oil" or "front" could not be told from the job or the place. */
function isVocabulary(ctx: Ctx, nickname: string): boolean {
  const { items, kinds, places, units, workDone, dateWords, onBike, at, beside, seasons, unknown } = ctx.vocabulary;
  const key = nicknameKey(nickname);
  const lists = [items, kinds, places, units].flatMap((group) => Object.values<readonly string[]>(group));
  return [...lists, Object.keys(workDone), Object.keys(seasons), dateWords, onBike, at, beside, unknown].some((list) => list.includes(key));
}

/** Why a nickname cannot serve, null when it can. */
export function whyUnusable(ctx: Ctx, nickname: string): Unusable | null {
  if (nickname === "" || !/[\p{L}\p{N}]/u.test(nickname)) return "empty";
  if ([...nickname].length > LONGEST_NICKNAME) return "too long";
  if (/@(everyone|here)\b|<[@#]/iu.test(nickname)) return "mentions everyone";
  if (/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}]/u.test(nickname)) return "hidden marks";
  if (isVocabulary(ctx, nickname)) return "word of its own";
  // A nickname that reads as a figure would turn every mention of it into a reading.
  if (/^[\d.,\s]+$/u.test(nickname) || read(nickname, knownOf(ctx, [])).intents.length > 0) return "looks like a reading";
  return null;
}
