// What to buy for all that falls due until a day, or within a month, each thing once: on the speaker's bikes, or on those brought to the group's wrench evening.

import type { LocalDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { parseAmount } from "../core/quantity/parse.ts";
import type { UnitId } from "../core/quantity/units.ts";
import { PLAIN } from "../core/sheet/how.ts";
import type { Blind } from "../core/sheet/select.ts";
import type { Repos } from "../store/store.ts";
import { neededFor } from "../trade/defect-needs.ts";
import { fitsNew, renewalOf } from "../trade/renewal.ts";
import { howWorked, isKeptAtHand } from "../trade/workshop.ts";
import { type Ctx, todayOf } from "./context.ts";
import { dueBike } from "./due.ts";
import { broughtTo } from "./evening.ts";
import { dayAhead, distanceAhead, fallingUntil } from "./falling.ts";
import type { Garaged } from "./garage.ts";
import { horizonOf } from "./outlook.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { neededOn, renewedUntil } from "./parts-due.ts";
import { nameIn } from "./record-work.ts";
import { done, type Result, refused } from "./refusals.ts";
import { type SheetUse, usesOf } from "./sheet.ts";
import { specsOf } from "./specs.ts";
import { whichBike } from "./which-bike.ts";

/** One thing to buy: for each bike how much of it, and in all where it adds up: pieces, or an amount of one kind. */
export type Wanted = {
  readonly what: string;
  readonly for: readonly (SheetUse & { readonly nickname: string })[];
  readonly total: { readonly value: number; readonly unit: UnitId | null } | null;
};
export type Shopping = {
  readonly until: LocalDate;
  /** The span was a distance: as it was typed. */
  readonly far: string | null;
  /** What it is for: items, and parts that are at their end or will be. */
  readonly bikes: readonly {
    readonly nickname: string;
    readonly items: readonly string[];
    /** Of the next service, near enough to be done with them. */
    readonly next: readonly string[];
    readonly worn: readonly string[];
    readonly wrong: readonly string[];
  }[];
  readonly wanted: readonly Wanted[];
  /** What lasts for many jobs: looked for on the shelf first. */
  readonly atHand: readonly string[];
  /** Bikes of which nothing says how far they are ridden, and what the list cannot know of each. */
  readonly blind: readonly { readonly nickname: string; readonly unit: DistanceUnit; readonly offset: number; readonly what: Blind }[];
  /** What nothing is on record of: bought only where a look shows that it is wanted. */
  readonly unknown: readonly { readonly nickname: string; readonly items: readonly string[]; readonly uses: readonly string[] }[];
};

/** A bike with the name it goes by in a list. */
type Listed = { readonly g: Garaged; readonly called: string };

/** The list for one bike, for all of the speaker's, or for those brought to the evening of the group spoken in. */
export async function shopping(
  ctx: Ctx,
  input: { readonly until?: string; readonly bike?: string; readonly group?: boolean; readonly share?: boolean },
): Promise<Result<Shopping>> {
  return ctx.store.read(async (q) => {
    const far = distanceAhead(ctx, input.until);
    const until = far === null ? dayAhead(ctx, input.until) : done(todayOf(ctx));
    if (until.is === "refused") return until;
    const listed = input.group === true ? await ofGroup(q, ctx) : await ofOwn(q, ctx, input.bike);
    if (listed.is === "refused") return listed;
    // What is wrong with a bike is its owner's alone.
    const own = input.group !== true && input.share !== true;
    const bikes: Shopping["bikes"][number][] = [];
    const unknown: Shopping["unknown"][number][] = [];
    const blind: Shopping["blind"][number][] = [];
    const lists = new Map<string, Wanted["for"][number][]>();
    for (const { g, called } of listed.value) {
      const reach = far === null ? null : horizonOf(g, far);
      if (typeof reach === "string") return refused({ why: "not ahead", typed: input.until ?? "", because: reach });
      const by = reach?.on ?? until.value;
      const falling = fallingUntil(g, reach ?? until.value);
      const keys = [...falling.keys, ...falling.next];
      // How far another's bike has gone is its owner's to tell.
      const { unit, offset } = dueBike(ctx, g);
      const next = input.group === true ? null : (falling.blind?.next ?? null);
      if (falling.blind !== null) blind.push({ nickname: called, unit, offset, what: { ...falling.blind, next } });
      const worn = renewedUntil(g, by);
      const wrong = own ? g.defects.filter(({ kind }) => neededFor(kind).length > 0) : [];
      const names = (those: readonly ItemKey[]): readonly string[] => those.map((key) => nameIn(ctx, g, key));
      const first = falling.unknown.filter((key) => !worn.includes(key));
      const uses = [...new Set(first.flatMap((key) => (howWorked(key) ?? PLAIN).consumables.map(({ what }) => what)))].filter((what) => !isKeptAtHand(what));
      if (uses.length > 0) unknown.push({ nickname: called, items: names(first), uses });
      if (keys.length + worn.length + wrong.length === 0) continue;
      const atLimit = worn.filter((key) => !keys.includes(key));
      bikes.push({
        nickname: called,
        // What was measured is the owner's too: others read what is due, and not why.
        items: names(own ? falling.keys : [...falling.keys, ...atLimit]),
        next: names(falling.next),
        worn: own ? names(atLimit.map((key) => measuredAt(g, key))) : [],
        wrong: wrong.map(({ words }) => words),
      });
      const consumables = [
        ...keys.filter((key) => !worn.includes(key)).flatMap((key) => (howWorked(key) ?? PLAIN).consumables),
        ...worn.flatMap(renewalOf),
        ...neededOn({ defects: wrong }),
      ];
      for (const use of usesOf(consumables, await specsOf(q, g.bike, ctx.who.group), g)) {
        const list = lists.get(use.what) ?? [];
        list.push({ ...use, nickname: called });
        lists.set(use.what, list);
      }
    }
    const wanted = [...lists].map(([what, each]): Wanted => ({ what, for: each, total: totalOf(ctx, each) }));
    return done({
      ...{ until: until.value, far: far === null ? null : (input.until ?? null), bikes },
      wanted: wanted.filter(({ what }) => !isKeptAtHand(what)),
      unknown,
      blind,
      atHand: wanted.filter(({ what }) => isKeptAtHand(what)).map(({ what }) => what),
    });
  });
}

/** The line by which a part is known to be at its limit: "rear tread depth", where what fits the new tyre goes by its age. */
const measuredAt = ({ facts }: Garaged, key: ItemKey): ItemKey => [...facts.verdicts, ...facts.wearing].find(({ item }) => fitsNew(item) === key)?.item ?? key;

async function ofOwn(q: Repos, ctx: Ctx, bike: string | undefined): Promise<Result<readonly Listed[]>> {
  const all = await ownGarage(q, ctx);
  if (all.length === 0) return noneLeft(q, ctx);
  const one = bike === undefined ? null : whichBike(all, bike);
  if (one?.is === "refused") return one;
  return done((one === null ? all : [one.value]).map((g) => ({ g, called: g.bike.nickname })));
}

/** Two members may call their bikes the same: the owner stands with it. */
async function ofGroup(q: Repos, ctx: Ctx): Promise<Result<readonly Listed[]>> {
  const { group } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  const { brought } = await broughtTo(q, ctx, group);
  return done(brought.map(({ g, owner }) => ({ g, called: owner === null ? g.bike.nickname : `${g.bike.nickname} (${owner})` })));
}

/** Pieces add up where each bike's are counted and all are of one kind; amounts where all are in one unit and of one kind. */
function totalOf(ctx: Ctx, uses: Wanted["for"]): Wanted["total"] {
  const kinds = new Set(uses.map(({ kind }) => kind?.trim().toLowerCase() ?? null));
  if (uses.length < 2 || kinds.size > 1) return null;
  if (uses.every(({ count }) => count !== null)) return { value: uses.reduce((sum, { count }) => sum + (count ?? 0), 0), unit: null };
  const amounts = uses.map(({ amount }) => (amount === null ? null : parseAmount(amount, ctx.vocabulary.units, ctx.who.numbers)));
  let [sum, unit] = [0, null as UnitId | null];
  for (const amount of amounts) {
    if (amount === null || amount.is !== "amount" || amount.unit === null || amount.from !== amount.to || amount.rest !== "") return null;
    if (unit !== null && amount.unit !== unit) return null;
    [sum, unit] = [sum + amount.from, amount.unit];
  }
  return { value: Math.round(sum * 1000) / 1000, unit };
}
