// A part that came off put back on: it goes on with the distance that it had.

import type { ItemKey } from "../core/ids.ts";
import type { RecordWork } from "../core/reading/intent.ts";
import { pieceMeant } from "../message/refit-said.ts";
import { foldWord } from "../message/scan.ts";
import { PART_ROWS } from "../trade/parts.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { settle } from "./log-set.ts";
import type { MessageOutcome } from "./message-outcome.ts";
import { ownGarage } from "./own-garage.ts";
import { knownPieces } from "./pieces.ts";
import { dateTyped, dialTyped } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type RefitInput = { readonly part: string; readonly piece?: string; readonly at: string; readonly on?: string; readonly bike?: string };

/** Parts of which a used one may go on again. */
export const PARTS_AGAIN: readonly string[] = PART_ROWS.filter(({ again }) => again).map(({ part }) => part);

/** Tyres that are swapped as sets go on and off as sets. */
const ofTyres = (g: Garaged, part: string): boolean => PART_ROWS.some((row) => row.part === part && row.items.some((item) => g.facts.ofTyres.has(item)));

/** Records that a piece of a part went on again. Where the words leave open which piece, it is asked. */
export async function refit(ctx: Ctx, { part, piece, at, on, bike }: RefitInput): Promise<Result<MessageOutcome>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<MessageOutcome>> => {
    const all = await ownGarage(q, ctx);
    const which = whichBike(all, bike);
    if (which.is === "refused") return which;
    const g = which.value;
    if (g.facts.fittings.length > 0 && ofTyres(g, part)) return refused({ why: "tyres", because: "by set", set: "" });
    const known = knownPieces(g).find((each) => each.part === part);
    if (known === undefined || !known.pieces.some(({ fitted }) => !fitted)) return refused({ why: "nothing to put back", part, nickname: g.bike.nickname });
    const day = dateTyped(ctx, all, on);
    if (day.is === "refused") return day;
    const odometer = dialTyped(ctx, all, g, at);
    if (odometer.is === "refused") return odometer;
    // Whoever names none means one that had come off.
    const off = known.pieces.filter(({ fitted }) => !fitted).map(({ key }) => key);
    const options = piece === undefined ? off : pieceMeant(piece.split(/\s+/u).map(foldWord), known, ctx.vocabulary.refitted);
    const [only] = options;
    const sure: readonly ItemKey[] = options.length === 1 && only !== undefined ? [only] : [];
    const intent: RecordWork = {
      ...{ do: "record work", bike: g.bike.id, items: sure, words: piece ?? part, on: day.value, odometer: odometer.value },
      ...{ outcome: "done", how: "did it", gaps: sure.length > 0 ? [] : [{ need: "item", options }] },
    };
    const typed = `${part} ${piece ?? ""} ${at} ${on ?? ""}`.replaceAll(/ +/gu, " ").trim();
    return done(await settle(q, ctx, all, [intent], { source: ctx.event, typed, message: null }));
  });
  return onceHeard(acted);
}
