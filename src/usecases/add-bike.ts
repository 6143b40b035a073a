// Adding a bike: nickname, kind, what the dial shows; the plan and the equipment come with the kind.

import { type Bike, nicknameKey } from "../core/bike.ts";
import type { Equipment } from "../core/equipment.ts";
import type { BikeId } from "../core/ids.ts";
import { type DistanceUnit, dialOf, riddenOf } from "../core/quantity/distance.ts";
import { modelKey } from "../core/spec/spec.ts";
import { readDial } from "../message/read-dial.ts";
import type { Repos } from "../store/store.ts";
import { KINDS, type KindId } from "../trade/kinds.ts";
import { STARTER_PLANS } from "../trade/starter-plans.ts";
import { type Ctx, isPlainlyHeard, todayOf } from "./context.ts";
import { type Asked, askedAbout } from "./first-history.ts";
import { pick } from "./garage.ts";
import { whyUnusable } from "./nicknames.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { hashOf } from "./plan-hash.ts";
import { offersFor, type PlanOffer } from "./plan-offers.ts";
import { odometerRecord } from "./records.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";

export type NewBike = { readonly name: string; readonly kind: KindId; readonly odometer: string; readonly unit?: DistanceUnit; readonly model?: string };
export type Added = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly kind: KindId;
  readonly unit: DistanceUnit;
  readonly figure: number;
  readonly equipment: Equipment;
  readonly items: number;
  readonly planName: string;
  readonly firstBike: boolean;
  /** Plain messages are read here, without naming the bot. */
  readonly plainly: boolean;
  /** What is asked about its past. */
  readonly asks: readonly Asked[];
  /** Other plans that there are for it: the group's for its make and model. */
  readonly offers: readonly PlanOffer[];
};

/** Adds a bike of the speaker's; it is shown in the group spoken in, which becomes its home. */
export async function addBike(ctx: Ctx, input: NewBike): Promise<Result<Added>> {
  const nickname = input.name.normalize("NFKC").trim().replace(/\s+/gu, " ");
  const unusable = whyUnusable(ctx, nickname);
  if (unusable !== null) return refused({ why: "nickname unusable", because: unusable });
  const kind = KINDS[input.kind];
  const base = STARTER_PLANS[input.kind];
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<Added>> => {
    const mine = await q.bikes.ofOwner(ctx.who.member);
    if (mine.some((bike) => nicknameKey(bike.nickname) === nicknameKey(nickname))) return refused({ why: "nickname taken", nickname });
    const dial = odometerTyped(ctx, knownOf(ctx, []), input);
    if (dial.is === "refused") return dial;
    const { figure, unit } = dial.value;
    const today = todayOf(ctx);
    const id = ctx.newId() as BikeId;
    const hash = hashOf(base);
    const bike: Bike = {
      id,
      owner: ctx.who.member,
      nickname,
      kind: input.kind,
      state: "riding",
      equipment: kind.equipment,
      column: unit,
      conditions: [],
      byTheBook: null,
      knownFrom: { date: today, ridden: riddenOf(figure, unit), wholeSinceNew: false },
      perYear: null,
      homeGroup: ctx.who.group,
      planHash: hash,
      edits: [],
      factsRev: 1,
      model: modelTyped(input.model),
    };
    await keepMember(q, ctx);
    await q.bikes.keepBase(hash, base);
    await q.bikes.add(bike, ctx.now);
    await q.bikes.addEpoch(
      id,
      { id: ctx.newId(), from: today, lastOfOld: null, firstOfNew: dialOf(figure, unit), unit, cause: "as bought" },
      ctx.event,
      ctx.who.member,
      ctx.now,
    );
    await q.readings.log([odometerRecord(ctx, { bike: id, dial: dialOf(figure, unit), unit, typed: input.odometer, on: today }, ctx.event, 0)]);
    const added = pick(await ownGarage(q, ctx), id);
    if (added === null) throw new Error("a bike just added is not there");
    const asks = askedAbout(ctx, added);
    return done({
      bike: id,
      nickname,
      kind: input.kind,
      unit,
      figure,
      equipment: kind.equipment,
      items: added.plan.items.length,
      planName: base.name,
      firstBike: mine.length === 0,
      plainly: isPlainlyHeard(ctx),
      asks,
      offers: await offersFor(q, ctx, added),
    });
  });
  return onceHeard(acted);
}

const LONGEST_MODEL = 60;
/** Make and model as typed, its spaces tidied; null when nothing is left of it. */
export function modelTyped(typed: string | undefined): string | null {
  const model = (typed ?? "").normalize("NFKC").trim().replace(/\s+/gu, " ").slice(0, LONGEST_MODEL);
  return modelKey(model) === "" ? null : model;
}

/** Saves the member's row the first time something of theirs is saved. */
export async function keepMember(q: Repos, ctx: Ctx): Promise<void> {
  if (!ctx.who.known) await q.members.save(ctx.who.self);
}

function odometerTyped(ctx: Ctx, known: ReturnType<typeof knownOf>, input: NewBike): Result<{ figure: number; unit: DistanceUnit }> {
  const unit = input.unit ?? ctx.who.distance;
  const dial = readDial(input.odometer, known, unit ?? "mi");
  if (dial === null) return refused({ why: "not a distance", typed: input.odometer, unit });
  if (dial.value < 0 || dial.value > 999_999) return refused({ why: "out of range", typed: input.odometer });
  // A bare figure takes the unit chosen before; with none chosen, guessing would misjudge every interval.
  const said = dial.unitTyped ? dial.unit : unit;
  return said === null ? refused({ why: "unit missing", typed: input.odometer }) : done({ figure: dial.value, unit: said });
}
