// A roadside card: what is wanted where there is no signal, from the bike's equipment and specs. What is not known stays blank, to be written on.

import { type Equipment, isFitted } from "../core/equipment.ts";
import type { BikeId } from "../core/ids.ts";
import { SPEC_USES, type Spec, type SpecUse } from "../core/spec/spec.ts";
import { SPEC_KEYS, type SpecKey } from "../trade/spec-keys.ts";
import { keepMember } from "./add-bike.ts";
import type { Ctx } from "./context.ts";
import type { Garaged } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { specFor, specsOf, typedWithUnit } from "./specs.ts";
import { whichBike } from "./which-bike.ts";

/** A line of the card. Empty `said`: nobody entered it. `differ`: members of the group differ, and nothing settles it. */
export type CardRow = { readonly key: SpecKey; readonly said: readonly { readonly use: SpecUse | null; readonly typed: string }[]; readonly differ: boolean };
export type CardShown = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly equipment: Equipment;
  readonly rows: readonly CardRow[];
  /** The member's own number for recovery, as typed. */
  readonly recovery: string | null;
  readonly saved: boolean;
};

/** In the order in which a stranded rider wants them. */
const KEYS = [
  ...([
    "front tyre size",
    "front tyre pressure",
    "rear tyre size",
    "rear tyre pressure",
    "sidecar tyre size",
    "sidecar tyre pressure",
    "front axle torque",
    "rear axle torque",
  ] as const),
  ...(["battery", "fuses", "headlamp bulb", "tail and brake bulb", "indicator bulb", "spark plug", "chain size", "chain slack"] as const),
  ...(["engine oil grade", "fuel grade", "axle sockets"] as const),
] satisfies readonly SpecKey[];

/** A number, and perhaps a name or a policy. */
const LONGEST = 60;

/** Shows a bike's card; keeps the member's recovery number where one is given, and forgets it at "none". */
export async function roadsideCard(ctx: Ctx, input: { readonly bike?: string; readonly recovery?: string }): Promise<Result<CardShown>> {
  const recovery = input.recovery?.normalize("NFKC").replace(/\s+/gu, " ").trim();
  if (recovery !== undefined && [...recovery].length > LONGEST) return refused({ why: "too long", limit: LONGEST });
  if (recovery === undefined) return ctx.store.read((q) => card(q, ctx, input.bike, false));
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<CardShown>> => {
    await keepMember(q, ctx);
    await q.members.setRecovery(ctx.who.member, recovery.toLowerCase() === "none" || recovery === "" ? null : recovery);
    return card(q, ctx, input.bike, true);
  });
  return onceHeard(acted);
}

async function card(q: Parameters<typeof ownGarage>[0], ctx: Ctx, bike: string | undefined, saved: boolean): Promise<Result<CardShown>> {
  const all = await ownGarage(q, ctx);
  if (all.length === 0) return noneLeft(q, ctx);
  const which = whichBike(all, bike);
  if (which.is === "refused") return which;
  const g = which.value;
  const specs = await specsOf(q, g.bike, ctx.who.group);
  return done({ ...cardOf(g, specs), recovery: await q.members.recovery(ctx.who.member), saved });
}

/** Pure of the bike and its specs. */
export function cardOf(g: Pick<Garaged, "bike">, specs: readonly Spec[]): Omit<CardShown, "recovery" | "saved"> {
  const { bike } = g;
  const rows = KEYS.filter((key) => isFitted(SPEC_KEYS[key].fits ?? {}, bike.equipment)).map((key): CardRow => {
    const uses: readonly (SpecUse | null)[] = SPEC_KEYS[key].byUse === true ? [null, ...SPEC_USES] : [null];
    const found = uses.map((use) => ({
      use,
      // Each as it was entered: what has no load named is on the card once.
      found: specFor(
        specs.filter((spec) => spec.use === use),
        bike,
        key,
        use,
      ),
    }));
    return {
      key,
      said: found.flatMap(({ use, found: each }) => (each.is === "one" ? [{ use, typed: typedWithUnit(each.spec) }] : [])),
      differ: found.some(({ found: each }) => each.is === "several"),
    };
  });
  return { bike: bike.id, nickname: bike.nickname, equipment: bike.equipment, rows };
}
