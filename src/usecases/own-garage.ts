// The speaker's bikes, and what the reader may know of them.

import type { GroupId } from "../core/ids.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { Refusal } from "../core/refusal.ts";
import type { Repos } from "../store/store.ts";
import { type Ctx, todayOf } from "./context.ts";
import { figureOfLast, type Garaged, garage, itemsOf } from "./garage.ts";
import { knownPieces } from "./pieces.ts";
import { refused } from "./refusals.ts";

/**
 * The speaker's bikes that are still ridden or kept, with their facts.
 * A bike added in a direct message goes by the group spoken in, else by that of its owner's first bike: it is kept so with the next thing logged of it.
 */
export async function ownGarage(q: Repos, ctx: Ctx): Promise<Garaged[]> {
  const bikes = (await q.bikes.ofOwner(ctx.who.member)).filter((bike) => bike.state === "riding" || bike.state === "laid up");
  const home = homeHere(ctx);
  const homeless = home === null ? [] : bikes.filter((bike) => bike.homeGroup === null).map(({ id }) => id);
  const all = await garage(
    q,
    bikes.map((bike) => (homeless.includes(bike.id) ? { ...bike, homeGroup: home } : bike)),
    ctx.now,
    () => ({ member: ctx.who.self, home: ctx.who.home }),
  );
  return all.map((g) => (homeless.includes(g.bike.id) ? { ...g, comesHome: true } : g));
}

/** The group whose choices govern where the speaker is. */
const homeHere = ({ who }: Ctx): GroupId | null => who.group ?? who.home?.id ?? null;

/** Why there is nothing to speak of: no bike was ever added, or all are sold. */
export async function noneLeft(q: Repos, ctx: Ctx): Promise<{ readonly is: "refused"; readonly why: Refusal }> {
  const bikes = await q.bikes.ofOwner(ctx.who.member);
  return refused(bikes.length === 0 ? { why: "no bikes yet" } : { why: "all gone", bikes: bikes.map((bike) => bike.nickname) });
}

/** What the reader may know of this speaker. */
export function knownOf(ctx: Ctx, all: readonly Garaged[]): Known {
  return {
    today: todayOf(ctx),
    south: ctx.who.south,
    bikes: all.map((g) => ({
      id: g.bike.id,
      nickname: g.bike.nickname,
      model: g.bike.model,
      kind: g.bike.kind,
      ...(g.bike.byNames === undefined ? {} : { byNames: g.bike.byNames }),
      unit: g.unit,
      lastFigure: figureOfLast(g),
      items: itemsOf(g).map((item) => ({ key: item.key, called: item.called, action: item.action, system: item.system })),
      pieces: knownPieces(g),
      defects: g.defects.map(({ id, kind, words }) => ({ id, kind, words })),
    })),
    numbers: ctx.who.numbers,
    pressureUnit: ctx.who.pressure,
    depthUnit: ctx.who.depth,
    vocabulary: ctx.vocabulary,
    also: ctx.also,
  };
}
