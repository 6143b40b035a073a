// "Front tyre pressure two-up?": what is known for the member's bike, with its source; where nothing is, what is typical, and the way to enter it.

import { type Equipment, isFitted } from "../core/equipment.ts";
import type { BikeId, MemberId } from "../core/ids.ts";
import { dimensionOf, type UnitId } from "../core/quantity/units.ts";
import { findSpecs } from "../core/spec/find.ts";
import type { Spec, SpecUse } from "../core/spec/spec.ts";
import { specAsked, withoutUnit } from "../message/spec-asked.ts";
import type { Repos } from "../store/store.ts";
import { isSpecKey, SPEC_KEYS, type SpecKey, type SpecKeyRow } from "../trade/spec-keys.ts";
import { type Ctx, languagesOf } from "./context.ts";
import { type FluidNamed, fluidOfSpec } from "./fluids.ts";
import { type Garaged, pick } from "./garage.ts";
import { knownOf, noneLeft, ownGarage } from "./own-garage.ts";
import { done, type Result, refused } from "./refusals.ts";
import { specFor, specsOf } from "./specs.ts";
import { whichBike } from "./which-bike.ts";

/** A spec as it is shown: `byName` null for the asker's own. `asUnit`: the unit that the asker reads such values in. */
export type SpecShown = Pick<Spec, "id" | "rev" | "use" | "holds" | "typed" | "source" | "at"> & {
  readonly byName: string | null;
  readonly mine: boolean;
  readonly asUnit: UnitId | null;
};
/** What is known of one key. `settled` false: members differ, and only a named page will settle it where `byPage`. */
export type SpecLine = {
  readonly key: SpecKey;
  readonly settled: boolean;
  readonly specs: readonly SpecShown[];
  readonly others: readonly SpecShown[];
  /** Where another load was asked for and nothing is entered for it: what stands for riding solo. */
  readonly solo: SpecShown | null;
  readonly byPage: boolean;
  readonly typical: readonly [number, number] | null;
  readonly unit: UnitId | null;
  readonly afterwards: SpecKeyRow["afterwards"] | null;
  readonly caution: string | null;
  /** Of the brakes' fluid, where its class is named: what never mixes with it. */
  readonly fluid: FluidNamed | null;
};
export type SpecAnswer = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly model: string | null;
  readonly use: SpecUse | null;
  /** What was asked for by name; false for the whole list. */
  readonly asked: boolean;
  readonly lines: readonly SpecLine[];
};

/** @param input.what null: all that is known */
export async function askSpecs(ctx: Ctx, input: { readonly what?: string; readonly bike?: string }): Promise<Result<SpecAnswer>> {
  return ctx.store.read(async (q) => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    const { text: what, unit } = input.what === undefined ? { text: undefined, unit: null } : withoutUnit(input.what, ctx);
    const found = what === undefined || which.is === "refused" ? null : keysMeant(ctx, which.value, what);
    if (which.is === "done" && found?.is !== "refused") return done(await answerOf(q, ctx, which.value, found?.value ?? null, unit));
    const beside = input.what === undefined || input.bike !== undefined ? null : withBikeNamed(ctx, all, input.what);
    if (beside !== null) return done(await answerOf(q, ctx, beside.g, beside.meant, unit));
    return which.is === "refused" ? which : (found as Extract<typeof found, { is: "refused" }>);
  });
}

/** "How much oil does Heron take": a bike named among the words; null where none is, or the rest means no spec. */
function withBikeNamed(ctx: Ctx, all: readonly Garaged[], what: string): { readonly g: Garaged; readonly meant: Meant } | null {
  const asked = specAsked(`${what}?`, knownOf(ctx, all));
  const [only] = asked?.bikes ?? [];
  const g = asked === null || asked.bikes.length !== 1 || only === undefined ? null : pick(all, only);
  const meant = g === null || asked === null ? null : keysMeant(ctx, g, asked.what);
  return g !== null && meant?.is === "done" ? { g, meant: meant.value } : null;
}

/** What words mean on a bike; `own`: the key whose name was typed in full, where others share it. */
export type Meant = { readonly keys: readonly SpecKey[]; readonly own: SpecKey | null; readonly exact: boolean; readonly use: SpecUse | null };

/** The keys that words mean on this bike: what it is not fitted with is left out. */
export function keysMeant(ctx: Pick<Ctx, "vocabulary">, g: Garaged, what: string): Result<Meant> {
  const { keys, own, exact, use, nearest } = findSpecs(what, ctx.vocabulary.specs);
  const ours = keys.filter(isSpecKey);
  const fitted = ours.filter((key) => isFitted(SPEC_KEYS[key].fits ?? {}, g.bike.equipment));
  if (fitted.length > 0) return done({ keys: fitted, own: fitted.find((key) => key === own) ?? null, exact, use });
  if (ours.length > 0) return refused({ why: "not fitted", keys: ours, nickname: g.bike.nickname });
  return refused({ why: "no such spec", typed: what, nearest });
}

/** @param asked null: every key with something entered @param unit the one that was asked for */
export async function answerOf(
  q: Repos,
  ctx: Ctx,
  g: Garaged,
  asked: { readonly keys: readonly SpecKey[]; readonly use: SpecUse | null } | null,
  unit: UnitId | null = null,
): Promise<SpecAnswer> {
  const specs = await specsOf(q, g.bike, ctx.who.group);
  const names = await q.members.byIds([...new Set(specs.map((spec) => spec.by))]);
  const shown = (spec: Spec): SpecShown => ({
    ...{ id: spec.id, rev: spec.rev, use: spec.use, holds: spec.holds, typed: spec.typed, source: spec.source, at: spec.at },
    ...{
      byName: spec.by === ctx.who.member ? null : (names.get(spec.by as MemberId)?.name ?? null),
      mine: spec.bike === g.bike.id,
      asUnit: askedIn(spec, unit) ?? unitFor(ctx, spec),
    },
  });
  const keys = asked?.keys ?? (Object.keys(SPEC_KEYS) as SpecKey[]).filter((key) => specs.some((spec) => spec.key === key));
  const lines = keys.flatMap((key) => {
    const row = SPEC_KEYS[key];
    // With no load named, each load that something is entered for is shown.
    const uses = asked?.use == null || row.byUse !== true ? usesOf(specs, key) : [asked.use];
    return uses.map((use): SpecLine => {
      const settled = specFor(specs, g.bike, key, use);
      const solo = settled.is === "none" && use !== null && use !== "solo" ? specFor(specs, g.bike, key, "solo") : null;
      const [stand, others] = settled.is === "one" ? [[settled.spec], settled.others] : settled.is === "several" ? [settled.specs, []] : [[], []];
      return {
        ...{ key, settled: settled.is !== "several", specs: stand.map(shown), others: others.map(shown), byPage: row.byPage === true },
        solo: solo?.is === "one" ? shown(solo.spec) : null,
        ...{ typical: row.typical ?? null, unit: row.unit, afterwards: afterwardsOf(key, g.bike.equipment), caution: row.caution },
        fluid:
          (key === "brake fluid" || key === "clutch fluid") && stand[0] !== undefined
            ? fluidOfSpec(key === "brake fluid" ? "brakes" : "clutch", stand[0].typed, g.bike.equipment, languagesOf(ctx))
            : null,
      };
    });
  });
  return { bike: g.bike.id, nickname: g.bike.nickname, model: g.bike.model, use: asked?.use ?? null, asked: asked !== null, lines };
}

/** What is done after tightening, on this bike: an axle moves a chain or a belt, where there is one, and what pumps firm is a disc. */
function afterwardsOf(key: SpecKey, { finalDrive, frontBrake }: Equipment): SpecKeyRow["afterwards"] | null {
  const { afterwards } = SPEC_KEYS[key] as SpecKeyRow;
  if (key === "front axle torque" && frontBrake === "drum") return "drum again";
  if (afterwards !== "slack again") return afterwards ?? null;
  return finalDrive === "chain" ? afterwards : finalDrive === "belt" ? "belt again" : null;
}

function usesOf(specs: readonly Spec[], key: SpecKey): readonly (SpecUse | null)[] {
  const uses = [...new Set(specs.filter((spec) => spec.key === key).map((spec) => spec.use))];
  return uses.length === 0 ? [null] : uses.sort((a, b) => ORDER.indexOf(a) - ORDER.indexOf(b));
}
const ORDER: readonly (SpecUse | null)[] = [null, "solo", "two-up", "loaded"];

/** The unit that was asked for, where the spec is measured in such. */
const askedIn = ({ holds }: Spec, unit: UnitId | null): UnitId | null =>
  unit !== null && holds.is !== "words" && holds.unit !== unit && dimensionOf(holds.unit) === dimensionOf(unit) ? unit : null;

/** The member's unit for what a spec holds; null: as it was typed. */
function unitFor(ctx: Ctx, spec: Spec): UnitId | null {
  if (spec.holds.is === "words") return null;
  const dimension = dimensionOf(spec.holds.unit);
  const wanted = dimension === "pressure" ? ctx.who.pressure : dimension === "torque" ? ctx.who.torque : null;
  return wanted === spec.holds.unit ? null : wanted;
}
