// Sets of tyres swapped back and forth, such as for the road and off it: which is on, and how far each was ridden.

import { nicknameKey } from "../core/bike.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { BikeId } from "../core/ids.ts";
import { type Dial, type DistanceUnit, dialOf, type Ridden, type Stretch } from "../core/quantity/distance.ts";
import type { RecordWork } from "../core/reading/intent.ts";
import { TYRES_FITTED, tyreSets } from "../core/schedule/tyre-sets.ts";
import { judgeReading } from "../core/usage/judge-reading.ts";
import { readDial } from "../message/read-dial.ts";
import type { Ctx } from "./context.ts";
import { figureOfLast, type Garaged, pick } from "./garage.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { dateTyped } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { save } from "./settle.ts";
import { whichBike } from "./which-bike.ts";

export type TyresShown = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly unit: DistanceUnit;
  readonly sets: readonly { readonly set: string; readonly ridden: Stretch; readonly fitted: boolean; readonly since: LocalDate }[];
  /** Undoes the swap; null where none was noted just now. */
  readonly source: string | null;
};
export type TyresInput = { readonly set?: string; readonly off?: string; readonly at?: string; readonly on?: string; readonly bike?: string };

/** A set's name holds at most so many characters: it stands in the middle of sentences. */
const LONGEST_NAME = 32;

/** Notes that a set was put on; with none named, shows what is on. The first swap also names what came off, which was on since the bike came. */
export async function tyres(ctx: Ctx, { set, off, at, on, bike }: TyresInput): Promise<Result<TyresShown>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<TyresShown>> => {
    const all = await ownGarage(q, ctx);
    const which = whichBike(all, bike);
    if (which.is === "refused") return which;
    const g = which.value;
    if (set === undefined) return done(shown(g, null));
    const names = namesOf(g, set, off);
    if (names.is === "refused") return names;
    const day = dateTyped(ctx, all, on);
    if (day.is === "refused") return day;
    const latest = g.facts.fittings.at(-1);
    if (day.value.from !== day.value.to) return refused({ why: "not a date", typed: on ?? "" });
    const dial = at === undefined ? null : readDial(at, knownOf(ctx, all), g.unit);
    if (dial === null) return refused({ why: "not a distance", typed: at ?? "", unit: g.unit });
    const swap: RecordWork = {
      ...{ do: "record work", bike: g.bike.id, items: [TYRES_FITTED], words: names.value.on, on: day.value, outcome: "done", how: "did it", gaps: [] },
      odometer: { value: dial.value, unit: dial.unit, typed: { text: at ?? "", unit: dial.unit } },
    };
    const odd = strange(g, dialOf(dial.value, dial.unit), day.value.from, at ?? "");
    if (odd !== null) return odd;
    if (latest !== undefined && latest.on > day.value.from) return refused({ why: "tyres", because: "earlier", set: latest.set });
    const { from } = names.value;
    const began: RecordWork = { ...swap, words: from ?? "", on: { from: g.bike.knownFrom.date, to: g.bike.knownFrom.date, typed: "" }, odometer: null };
    await save(q, ctx, from === null ? [swap] : [began, swap], all, ctx.event);
    const after = pick(await ownGarage(q, ctx), g.bike.id);
    return after === null ? refused({ why: "gone" }) : done(shown(after, ctx.event));
  });
  return onceHeard(acted);
}

/** The set that goes on, as it was first written, and at the first swap the one that came off. */
function namesOf(g: Garaged, set: string, off: string | undefined): Result<{ readonly on: string; readonly from: string | null }> {
  for (const name of [set, off ?? "-"]) if (name.trim() === "" || name.length > LONGEST_NAME) return refused({ why: "tyres", because: "name", set: name });
  const { fittings } = g.facts;
  const known = (name: string): string => fittings.find((each) => nicknameKey(each.set) === nicknameKey(name))?.set ?? name.trim();
  const now = fittings.at(-1);
  if (now === undefined && off === undefined) return refused({ why: "tyres", because: "what came off", set });
  const before = now?.set ?? known(off ?? "");
  if (nicknameKey(before) === nicknameKey(set)) return refused({ why: "tyres", because: "on already", set: before });
  if (now !== undefined && off !== undefined && nicknameKey(off) !== nicknameKey(now.set)) return refused({ why: "tyres", because: "other on", set: now.set });
  return done({ on: known(set), from: now === undefined ? before : null });
}

/** Why an odometer figure does not fit the bike's readings. */
function strange(g: Garaged, dial: Dial, on: LocalDate, typed: string): Result<never> | null {
  const judged = judgeReading(g.track, dial, on, []);
  if (judged.is === "fine") return null;
  const figure = figureOfLast(g);
  return refused({
    why: judged.is === "implausible jump" ? "implausible jump" : "runs backwards",
    typed,
    last: figure === null ? null : { figure, unit: g.unit },
  });
}

function shown(g: Garaged, source: string | null): TyresShown {
  const upTo = g.at.ridden ?? g.bike.knownFrom.ridden;
  return { bike: g.bike.id, nickname: g.bike.nickname, unit: g.unit, sets: tyreSets(g.facts.fittings, g.bike.knownFrom.ridden, upTo as Ridden), source };
}
