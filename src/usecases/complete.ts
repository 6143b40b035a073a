// Suggestions while a member types an option.

import { nicknameKey } from "../core/bike.ts";
import { zoneNames } from "../core/calendar/zones.ts";
import { symbolOf, UNIT_IDS } from "../core/quantity/units.ts";
import { findSpecs } from "../core/spec/find.ts";
import type { Ctx } from "./context.ts";
import { itemsOf } from "./garage.ts";
import { ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";

/** The most that the platform shows. */
const MOST = 25;

/** Values for an option that begin like what is typed, then those that hold it. */
export async function completions(ctx: Ctx, of: "bike" | "item" | "unit" | "zone" | "spec" | "model", typed: string): Promise<readonly string[]> {
  const fits = fitting(await valuesOf(ctx, of), typed);
  return of === "spec" ? withMeant(ctx, fits, typed) : fits;
}

/** What a spec is called beside its name, and what slips of the pen mean: "sump plug", "rear axel", "front tire". */
function withMeant({ vocabulary: { specs } }: Ctx, fits: readonly string[], typed: string): readonly string[] {
  if (typed.trim().length < LEAST) return fits;
  const { keys, nearest } = findSpecs(typed, specs);
  const called = fitting(Object.values(specs.names).flat(), typed).flatMap((name) =>
    Object.keys(specs.names).filter((key) => specs.names[key]?.includes(name)),
  );
  const meant = [...keys, ...called, ...nearest].map((key) => specs.names[key]?.[0] ?? "");
  return [...new Set([...fits, ...meant])].filter((name) => name !== "").slice(0, MOST);
}
/** Letters from which a word says what is meant. */
const LEAST = 3;

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
