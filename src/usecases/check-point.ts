// A plain figure while a check is open: of what it can be, it is what the point in front of the member asks for.

import type { Intent } from "../core/reading/intent.ts";
import type { Repos } from "../store/store.ts";
import { rowOf } from "./check-view.ts";
import type { Ctx } from "./context.ts";

/** Intents of which only the kind is in doubt, with the kind that the open point of their bike's check measures. */
export async function asOpenPointAsks(q: Repos, ctx: Ctx, intents: readonly Intent[]): Promise<readonly Intent[]> {
  if (!intents.some(({ gaps }) => gaps[0]?.need === "kind")) return intents;
  const open = await q.checks.openOf(ctx.who.member);
  return intents.map((intent): Intent => {
    const [gap, ...rest] = intent.gaps;
    if (intent.do !== "log reading" || gap?.need !== "kind") return intent;
    const asked = open.filter(({ bike }) => bike === intent.bike).flatMap(({ atPoint }) => (atPoint === null ? [] : rowOf(atPoint).measures));
    const one = asked.filter(({ kind }) => gap.options.includes(kind));
    const [measure] = one;
    return measure === undefined || one.length > 1 ? intent : { ...intent, kind: measure.kind, place: intent.place ?? measure.place, gaps: rest };
  });
}
