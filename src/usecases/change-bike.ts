// Changing a bike: its name, what it is fitted with, its state, its odometer, how it is used.

import { type Bike, type BikeState, nicknameKey } from "../core/bike.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { EQUIPMENT, type Equipment, type EquipmentPart } from "../core/equipment.ts";
import type { BikeId } from "../core/ids.ts";
import { CONDITIONS, type Condition } from "../core/plan/plan.ts";
import { type DistanceUnit, dialOf, type Stretch, stretchOf } from "../core/quantity/distance.ts";
import { readDial } from "../message/read-dial.ts";
import { Conflict, type Repos } from "../store/store.ts";
import { USUAL_BRAKE_FLUID } from "../trade/kinds.ts";
import { keepMember, modelTyped } from "./add-bike.ts";
import { renamed } from "./by-names.ts";
import { type Ctx, todayOf } from "./context.ts";
import type { DefectShown } from "./defect-shown.ts";
import { beginDial, type OldDial } from "./dials.ts";
import { type FluidEntered, fluidEntered } from "./fluids.ts";
import { figureOfLast, type Garaged, garage, pick } from "./garage.ts";
import { given } from "./given.ts";
import { shownOn } from "./log-set.ts";
import { whyUnusable } from "./nicknames.ts";
import { knownOf } from "./own-garage.ts";
import { dateTyped } from "./record-work.ts";
import { odometerRecord } from "./records.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { isJudgedOtherwise, judgedAnew } from "./square-verdicts.ts";
import { type Standing, whileItStands } from "./standing.ts";
import { whichBike } from "./which-bike.ts";

/** A bike as it is shown. */
export type BikeShown = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly kind: string;
  readonly state: BikeState;
  readonly unit: DistanceUnit;
  readonly column: DistanceUnit;
  readonly odometer: { readonly figure: number; readonly on: LocalDate } | null;
  readonly equipment: Equipment;
  readonly conditions: readonly Condition[];
  readonly perYear: Stretch | null;
  readonly byTheBook: boolean;
  /** From which yearly services run, by the book; null where they run from the last time. */
  readonly registered: LocalDate | null;
  readonly model: string | null;
  /** What its owner calls it beside the nickname. */
  readonly byNames: readonly string[];
  readonly items: number;
  readonly laidUpSince: LocalDate | null;
  readonly standing?: Standing | null;
  /** Just changed: does the group's picture show it, is it brought to its wrench evening? */
  readonly pictured?: boolean;
  readonly brought?: boolean;
  /** Just entered: which fluid is in its brakes or its clutch. */
  readonly fluid?: FluidEntered;
  /** What was read before, looked at again by what it is fitted with now: noted, and what stands no longer. */
  readonly looked?: { readonly noted: readonly DefectShown[]; readonly lapsed: readonly DefectShown[] };
  /** What other brakes than before are entered with by themselves. */
  readonly brakesNow?: Equipment["brakeFluid"];
};

export function shown(g: Garaged): BikeShown {
  const last = g.track.points.at(-1);
  const figure = figureOfLast(g);
  return {
    bike: g.bike.id,
    nickname: g.bike.nickname,
    kind: g.bike.kind,
    state: g.bike.state,
    unit: g.unit,
    column: g.bike.column,
    odometer: last === undefined || figure === null ? null : { figure, on: last.on },
    equipment: g.bike.equipment,
    conditions: g.bike.conditions,
    perYear: g.bike.perYear,
    byTheBook: g.bike.byTheBook !== null,
    registered: g.bike.byTheBook?.firstRegistered ?? null,
    model: g.bike.model,
    byNames: g.bike.byNames ?? [],
    items: g.plan.items.length,
    laidUpSince: g.layUps.find((layUp) => layUp.to === null)?.from ?? null,
  };
}

/** All the speaker's bikes, those sold and retired too. */
export async function listBikes(ctx: Ctx): Promise<Result<{ readonly bikes: readonly BikeShown[] }>> {
  return ctx.store.read(async (q) => done({ bikes: (await wholeGarage(q, ctx)).map(shown) }));
}

export async function wholeGarage(q: Repos, ctx: Ctx): Promise<Garaged[]> {
  return garage(q, await q.bikes.ofOwner(ctx.who.member), ctx.now, () => ({ member: ctx.who.self, home: ctx.who.home }));
}

/** One bike of the speaker's as it is shown. */
export async function showBike(ctx: Ctx, input: { readonly bike: string }): Promise<Result<BikeShown>> {
  return ctx.store.read(async (q): Promise<Result<BikeShown>> => {
    const which = whichBike(await wholeGarage(q, ctx), input.bike);
    return which.is === "refused" ? which : done(shown(which.value));
  });
}

export type BikeChange = {
  readonly bike?: string;
  readonly name?: string;
  readonly state?: BikeState;
  readonly used?: Condition;
  readonly notUsed?: Condition;
  readonly perYear?: string;
  readonly byTheBook?: boolean;
  /** The day of first registration, as typed: it says that the bike is kept by the book. */
  readonly registered?: string;
  readonly model?: string;
  /** Does the group's picture show it? The group spoken in, else its home. */
  readonly pictured?: boolean;
  /** Is it brought to that group's wrench evening? */
  readonly brought?: boolean;
  /** A name that it is called by as well, and one that it is called by no more. */
  readonly called?: string;
  readonly notCalled?: string;
};

/** Changes what is named and leaves the rest. */
export async function changeBike(ctx: Ctx, input: BikeChange): Promise<Result<BikeShown>> {
  return acting(ctx, input.bike, async (q, all, g) => {
    const { name, state, used, notUsed, perYear, byTheBook, registered, model, pictured, brought, called, notCalled } = input;
    if ([name, state, used, notUsed, perYear, byTheBook, registered, model, pictured, brought, called, notCalled].every((given) => given === undefined))
      return refused({ why: "nothing to change" });
    if (name !== undefined) {
      const unusable = whyUnusable(ctx, name);
      if (unusable !== null) return refused({ why: "nickname unusable", because: unusable });
      if (all.some((other) => other !== g && nicknameKey(other.bike.nickname) === nicknameKey(name))) return refused({ why: "nickname taken", nickname: name });
    }
    let yearly = g.bike.perYear;
    if (perYear !== undefined) {
      const figure = readDial(perYear, knownOf(ctx, all), g.unit);
      if (figure === null || figure.value > 200_000) return refused({ why: "not a distance", typed: perYear, unit: g.unit });
      yearly = stretchOf(figure.value, figure.unit);
    }
    const first = registered === undefined ? null : dateTyped(ctx, all, registered);
    if (first?.is === "refused") return first;
    // From a month on, nobody knows the anniversary.
    if (first !== null && first.value.from !== first.value.to) return refused({ why: "not a date", typed: registered ?? "" });
    const book = g.bike.byTheBook ?? { firstRegistered: null };
    const group = ctx.who.group ?? g.bike.homeGroup;
    if ((pictured !== undefined || brought !== undefined) && group === null) return refused({ why: "not in a group" });
    if (state !== undefined && state === g.bike.state) return refused({ why: "already so", state });
    const unnamed = await renamed(q, ctx, all, g, { called, notCalled });
    if (unnamed !== null) return refused(unnamed);
    if (state !== undefined) await moved(q, ctx, g, state);
    const conditions = CONDITIONS.filter((c) => (g.bike.conditions.includes(c) || c === used) && c !== notUsed);
    const changed: Bike = {
      ...g.bike,
      nickname: name?.normalize("NFKC").trim().replace(/\s+/gu, " ") ?? g.bike.nickname,
      state: state ?? g.bike.state,
      conditions,
      perYear: yearly,
      byTheBook: byTheBook === false ? null : first !== null ? { firstRegistered: first.value.from } : byTheBook === true ? book : g.bike.byTheBook,
      model: model === undefined ? g.bike.model : modelTyped(model),
    };
    if (pictured !== undefined && group !== null) await q.bikes.picture(g.bike.id, group, pictured);
    if (brought !== undefined && group !== null) await q.bikes.bring(g.bike.id, group, brought);
    const after = await written(q, ctx, changed);
    return after.is === "refused" ? after : done({ ...after.value, ...given({ pictured, brought }) });
  });
}

/** A lay-up begins or ends with the state. */
async function moved(q: Repos, ctx: Ctx, g: Garaged, state: BikeState): Promise<void> {
  const open = g.layUps.find((layUp) => layUp.to === null);
  if (state === "laid up" && open === undefined) await q.bikes.addLayUp(g.bike.id, ctx.newId(), todayOf(ctx), ctx.who.member, ctx.now);
  if (state !== "laid up" && open !== undefined) await q.bikes.endLayUp(open.id, todayOf(ctx));
}

/** Sets one thing fitted; the plan follows, since equipment decides which items exist. */
export async function setFitted(
  ctx: Ctx,
  input: { readonly bike?: string; readonly part: EquipmentPart; readonly choice: string },
): Promise<Result<BikeShown>> {
  return acting(ctx, input.bike, async (q, _all, g) => {
    const choices: readonly string[] = EQUIPMENT[input.part];
    if (!choices.includes(input.choice)) return refused({ why: "option", option: input.part, problem: "not a choice", choices });
    if (g.bike.equipment[input.part] === input.choice) return refused({ why: "already so", state: input.choice });
    const equipment = { ...g.bike.equipment, [input.part]: input.choice } as Equipment;
    const filled = brakesFilled(g.bike.equipment, equipment);
    const fluid =
      filled === null ? fluidEntered(input.part, g.bike.equipment[input.part], input.choice) : fluidEntered("brakeFluid", g.bike.equipment.brakeFluid, filled);
    const after = await written(q, ctx, { ...g.bike, equipment: filled === null ? equipment : { ...equipment, brakeFluid: filled } });
    if (after.is === "refused") return after;
    // What was read of a part that it was not fitted with counts now, and the other way round.
    const now = (await wholeGarage(q, ctx)).filter(({ bike }) => bike.id === g.bike.id);
    const { noted, lapsed } = await judgedAnew(q, ctx, now, isJudgedOtherwise(g), ctx.event);
    const looked = noted.length + lapsed.length === 0 ? {} : { looked: { noted: shownOn(now, noted), lapsed: shownOn(now, lapsed) } };
    return done({ ...after.value, ...looked, ...(fluid === null ? {} : { fluid }), ...(filled === null ? {} : { brakesNow: filled }) });
  });
}

/** What other brakes make of their fluid: two drums are worked by cable or rod and hold none, the first disc brings some; null where it stays. */
function brakesFilled(before: Equipment, { frontBrake, rearBrake, brakeFluid }: Equipment): Equipment["brakeFluid"] | null {
  const isDrums = (of: Pick<Equipment, "frontBrake" | "rearBrake">): boolean => of.frontBrake === "drum" && of.rearBrake === "drum";
  const now = isDrums({ frontBrake, rearBrake });
  if (now === isDrums(before)) return null;
  if (now) return brakeFluid === "none" ? null : "none";
  return brakeFluid === "none" ? USUAL_BRAKE_FLUID : null;
}

/** A bike with its new dial; `source` undoes it, `replaced` says that it took the place of another noted the same day. */
export type DialNoted = BikeShown & { readonly source: string; readonly replaced: boolean; readonly old: OldDial | null };

/** A new dial: what the old one last showed, what the new one shows now, and in which unit it counts. */
export async function newDial(
  ctx: Ctx,
  input: {
    readonly bike?: string;
    readonly last?: string;
    readonly now: string;
    readonly unit?: DistanceUnit;
    readonly cause: "replaced" | "rolled over" | "unit changed";
  },
): Promise<Result<DialNoted>> {
  return acting(ctx, input.bike, async (q, all, g): Promise<Result<DialNoted>> => {
    const first = readDial(input.now, knownOf(ctx, all), input.unit ?? g.unit);
    if (first === null || first.value > 999_999) return refused({ why: "not a distance", typed: input.now, unit: input.unit ?? g.unit });
    const on = todayOf(ctx);
    const firstOfNew = dialOf(first.value, first.unit);
    const begun = await beginDial(q, ctx, all, g, { firstOfNew, unit: first.unit, cause: input.cause, on, last: input.last, source: ctx.event });
    if (begun.is === "refused") return begun;
    await q.readings.log([odometerRecord(ctx, { bike: g.bike.id, dial: firstOfNew, unit: first.unit, typed: input.now, on }, ctx.event, 0)]);
    const after = await written(q, ctx, g.bike);
    return after.is === "refused" ? after : done({ ...after.value, source: ctx.event, ...begun.value });
  });
}

async function acting<T>(ctx: Ctx, bike: string | undefined, work: (q: Repos, all: readonly Garaged[], g: Garaged) => Promise<Result<T>>): Promise<Result<T>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<T>> => {
    const all = await wholeGarage(q, ctx);
    const which = whichBike(all, bike);
    return which.is === "refused" ? which : work(q, all, which.value);
  });
  return onceHeard(acted);
}

async function written(q: Repos, ctx: Ctx, bike: Bike): Promise<Result<BikeShown>> {
  await keepMember(q, ctx);
  if (!(await q.bikes.change(bike, ctx.now))) throw new Conflict("bike changed meanwhile");
  const after = pick(await wholeGarage(q, ctx), bike.id);
  return after === null
    ? refused({ why: "gone" })
    : done({
        ...shown(after),
        standing: whileItStands(ctx, after),
      });
}
