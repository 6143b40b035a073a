// Tyres looked at: what stands of each, what is moulded on them, what to set in a warm garage.

import { type Defect, worstFirst } from "../core/defect.ts";
import type { BikeId } from "../core/ids.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import { parseAmount } from "../core/quantity/parse.ts";
import { type Dimension, dimensionOf, fromCanonical, toCanonical, type UnitId } from "../core/quantity/units.ts";
import type { Refusal } from "../core/refusal.ts";
import type { TyreEnd } from "../core/tyre/age.ts";
import { builtAlike, markingsApart, readMarking, type TyreMarking } from "../core/tyre/marking.ts";
import { setIndoors } from "../core/tyre/pressure.ts";
import type { Repos } from "../store/store.ts";
import { TYRE_POINTS } from "../trade/checklists/points.ts";
import { TYRE_CONDITION } from "../trade/defects.ts";
import { SPEC_KEYS } from "../trade/spec-keys.ts";
import { LOAD_KILOGRAMS, MOST_OVER, SPEED_KMH } from "../trade/tyres.ts";
import type { Ctx } from "./context.ts";
import { type DefectShown, defectShown } from "./defect-shown.ts";
import { agePlanOf, type TyreAged, tyresAged, undatedEnds } from "./fitted.ts";
import type { Garaged } from "./garage.ts";
import type { Judged } from "./judged.ts";
import { type LeakOn, leaksOn } from "./leaks.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { done, type Result, refused } from "./refusals.ts";
import { lastTyres, type WornPart, wornParts } from "./wear.ts";
import { whichBike } from "./which-bike.ts";

export type TyreReport = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly unit: DistanceUnit;
  /** Treads and pressures as they stand. */
  readonly judged: readonly Judged[];
  readonly worn: readonly WornPart[];
  /** What the tyre before went, by end; only where it is on record. */
  readonly lasted: ReturnType<typeof lastTyres>;
  /** What stands open of them, do not ride first, whatever was read of their depth since; for the owner alone. */
  readonly defects: readonly DefectShown[];
  /** How old they are, where their date code was said. */
  readonly aged: readonly TyreAged[];
  /** The ends of which it was not. */
  readonly undated: readonly TyreEnd[];
  /** A slow leak or none, by end; only where it can be told. */
  readonly leaks: readonly LeakOn[];
};

/** The tyres of one bike: judged, with what is left of them. */
export async function tyresJudged(ctx: Ctx, input: { readonly bike?: string }): Promise<Result<TyreReport>> {
  return ctx.store.read(async (q): Promise<Result<TyreReport>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const g = which.value;
    const aged = agedOn(g);
    return done({
      ...{
        bike: g.bike.id,
        nickname: g.bike.nickname,
        unit: g.unit,
        worn: wornParts(g, ["tread"]),
        lasted: lastTyres(g),
        aged,
        undated: undatedEnds(aged, g.bike.equipment),
      },
      defects: (await defectsOfTyres(q, g)).map((defect) => defectShown(g, defect)),
      judged: g.judged.filter(({ kind }) => kind === "tread" || kind === "cold pressure"),
      leaks: await leaksOn(q, g),
    });
  });
}

/** How old the tyres on a bike are. */
const agedOn = (g: Garaged): readonly TyreAged[] =>
  tyresAged({ work: g.work, measured: g.measured, refitted: g.facts.refitted, fittings: g.facts.fittings, plan: agePlanOf(g) }, g.today);

/** What stands open of the tyres, do not ride first: by its kind, or found at a point of a check that looks at them. */
async function defectsOfTyres(q: Repos, g: Garaged): Promise<readonly Defect[]> {
  const checks = new Set(g.defects.flatMap(({ from, message }) => (from === "check" && message !== null ? [message] : [])));
  const answers = (await Promise.all([...checks].map((id) => q.checks.answersOf(id)))).flat();
  const points: readonly string[] = TYRE_POINTS;
  const found = new Set(answers.flatMap(({ point, defect }) => (defect !== null && points.includes(point) ? [defect] : [])));
  return g.defects.filter(({ id, kind }) => found.has(id) || TYRE_CONDITION.some((each) => each === kind)).toSorted(worstFirst);
}

export type TyreMarked = { readonly typed: string; readonly marking: TyreMarking; readonly other: TyreMarking | null; readonly alike: boolean | null };

/** What the marks of a sidewall mean, and whether the other end's tyre is built alike. */
export function tyreMarked(input: { readonly mark: string; readonly other?: string }): Result<TyreMarked> {
  const read = (typed: string): TyreMarking | null => readMarking(typed, { loads: LOAD_KILOGRAMS, speeds: SPEED_KMH });
  const apart = markingsApart(input.mark);
  // Both tyres in one text are the two ends; of more than that one would be dropped unseen.
  if (apart.length > (input.other === undefined ? 2 : 1) || (input.other !== undefined && markingsApart(input.other).length > 1))
    return refused({ why: "not a tyre code", typed: input.mark, because: "several marks" });
  const [mark = "", otherMark = input.other] = apart;
  const marking = read(mark);
  if (marking === null) return refused({ why: "not a tyre code", typed: input.mark, because: "no mark" });
  const other = otherMark === undefined ? null : read(otherMark);
  if (otherMark !== undefined && other === null) return refused({ why: "not a tyre code", typed: otherMark, because: "no mark" });
  return done({ typed: input.mark, marking, other, alike: other === null ? null : builtAlike(marking.construction, other.construction) });
}

type Amount = { readonly value: number; readonly unit: UnitId };
export type SetIndoors = {
  readonly want: Amount;
  readonly garage: Amount;
  readonly road: Amount;
  /** Which way it is between the garage and the road; only a warmer garage asks for another figure indoors. "too far apart": the figure would be too far over what is wanted. */
  readonly garageIs: "warmer" | "as warm" | "colder" | "too far apart";
  /** What to set, in the unit of `want`: indoors where the garage is warmer, else where the ride starts. */
  readonly set: number;
};

/** °C between which somebody works at a bike or sets out on it; beyond it a slip is more likely. Common practice, widened. */
const AIR = [-20, 50] as const;

/** What to set in a garage so that the pressure is right where the ride starts. */
export function pressureIndoors(ctx: Ctx, input: { readonly want: string; readonly garage: string; readonly road: string }): Result<SetIndoors> {
  const want = amountOf(ctx, input.want, "pressure", ctx.who.pressure, { why: "not a pressure", typed: input.want });
  if (want.is === "refused") return want;
  const garage = amountOf(ctx, input.garage, "temperature", null, { why: "not a temperature", typed: input.garage });
  if (garage.is === "refused") return garage;
  const road = amountOf(ctx, input.road, "temperature", garage.value.unit, { why: "not a temperature", typed: input.road });
  if (road.is === "refused") return road;
  const tyre = SPEC_KEYS["front tyre pressure"].plausible ?? [0, 0];
  const odd =
    beyond("pressure", want.value, input.want, tyre) ??
    beyond("temperature", garage.value, input.garage, AIR) ??
    beyond("temperature", road.value, input.road, AIR);
  if (odd !== null) return refused(odd);
  const amounts = { want: want.value, garage: garage.value, road: road.value };
  const [wanted, inside, outside] = [canonical(want.value), canonical(garage.value), canonical(road.value)];
  const set = setIndoors(wanted, inside, outside);
  if (set > Math.min(tyre[1], wanted * (1 + MOST_OVER))) return done({ ...amounts, garageIs: "too far apart", set: want.value.value });
  const garageIs = inside > outside ? "warmer" : inside < outside ? "colder" : "as warm";
  return done({ ...amounts, garageIs, set: garageIs === "warmer" ? fromCanonical(set, want.value.unit) : want.value.value });
}

const canonical = ({ value, unit }: Amount): number => toCanonical(value, unit);

function beyond(of: "pressure" | "temperature", amount: Amount, typed: string, [low, high]: readonly [number, number]): Refusal | null {
  const { unit } = amount;
  const value = canonical(amount);
  if (value >= low && value <= high) return null;
  return { why: "no tyre so", of, typed, low: fromCanonical(low, unit), high: fromCanonical(high, unit), unit };
}

function amountOf(ctx: Ctx, typed: string, dimension: Dimension, bare: UnitId | null, why: Refusal): Result<Amount> {
  const amount = parseAmount(typed, ctx.vocabulary.units, ctx.who.numbers);
  if (amount.is !== "amount" || amount.from !== amount.to || amount.rest !== "") return refused(why);
  const unit = amount.unit ?? bare;
  return unit === null || dimensionOf(unit) !== dimension ? refused(why) : done({ value: amount.from, unit });
}
