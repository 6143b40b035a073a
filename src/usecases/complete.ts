// Suggestions while a member types an option.

import { nicknameKey } from "../core/bike.ts";
import { zoneNames } from "../core/calendar/zones.ts";
import { symbolOf, UNIT_IDS } from "../core/quantity/units.ts";
import type { Ctx } from "./context.ts";
import { itemsOf } from "./garage.ts";
import { ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";

/** The most that the platform shows. */
const MOST = 25;

/** Values for an option that begin like what is typed, then those that hold it. */
export async function completions(ctx: Ctx, of: "bike" | "item" | "unit" | "zone" | "spec" | "model", typed: string): Promise<readonly string[]> {
  return fitting(await valuesOf(ctx, of), typed);
}

async function valuesOf(ctx: Ctx, of: "bike" | "item" | "unit" | "zone" | "spec" | "model"): Promise<readonly string[]> {
  switch (of) {
    case "bike":
      return ctx.store.read(async (q) => (await q.bikes.ofOwner(ctx.who.member)).map((bike) => bike.nickname));
    case "item":
      return ctx.store.read(async (q) => [...new Set((await ownGarage(q, ctx)).flatMap((g) => itemsOf(g).map((item) => nameIn(ctx, g, item.key))))]);
    case "unit":
      return UNIT_IDS.map(symbolOf);
    case "zone":
      return zoneNames();
    case "model":
      return ctx.who.group === null ? [] : ctx.store.one((q) => q.specs.modelsIn(ctx.who.group ?? ("" as never)));
    case "spec":
      return Object.values(ctx.vocabulary.specs.names).map(([name = ""]) => name);
  }
}

function fitting(values: readonly string[], typed: string): readonly string[] {
  const key = nicknameKey(typed);
  const begins = values.filter((value) => nicknameKey(value).startsWith(key));
  const holds = values.filter((value) => !begins.includes(value) && nicknameKey(value).includes(key));
  return [...begins, ...holds].slice(0, MOST);
}
