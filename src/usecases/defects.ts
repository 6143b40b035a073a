// What was found wrong with a bike: noted, graded by its owner, closed by work or as nothing; what a measured value noted of a thing that is set, by the next reading that is right. It is shown to its owner alone.

import type { Defect, FoundBy, Grade } from "../core/defect.ts";
import type { BikeId } from "../core/ids.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import { type DefectShown, defectShown } from "./defect-shown.ts";
import { type Garaged, pick } from "./garage.ts";
import type { Judged } from "./judged.ts";
import { ownGarage } from "./own-garage.ts";
import { defectRecord } from "./records.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { closedByWork, revised } from "./revise-defects.ts";
import { touch } from "./settle.ts";
import { defectOf } from "./verdict-defects.ts";

/** Something found, by a check or a verdict, ready to be noted. */
export type Found = Pick<Defect, "bike" | "kind" | "words" | "grade" | "on" | "dial"> & { readonly from: FoundBy };

/** Notes defects inside the caller's transaction. @param source the check, command or message they came from @param first where to go on counting its defects */
export async function noteDefects(q: Repos, ctx: Ctx, found: readonly Found[], source: string, first = 0): Promise<Defect[]> {
  if (found.length === 0) return [];
  const defects = found.map((each, n) => defectRecord(ctx, each, source, first + n));
  await q.defects.note(defects);
  await touch(q, ctx, [...new Set(defects.map(({ bike }) => bike))]);
  return defects;
}

/** A defect as it stands, for its owner. */
export async function showDefect(ctx: Ctx, input: { readonly defect: string }): Promise<Result<DefectShown>> {
  return ctx.store.read(async (q): Promise<Result<DefectShown>> => {
    const found = await owned(q, ctx, input.defect);
    return found.is === "refused" ? found : done(defectShown(found.value.g, found.value.defect));
  });
}

/** Grades an open defect. A press on an older showing of it changes nothing and shows it as it stands. */
export async function gradeDefect(ctx: Ctx, input: { readonly defect: string; readonly rev: number; readonly grade: Grade }): Promise<Result<DefectShown>> {
  return change(ctx, input.defect, async (q, g, defect) => {
    if (defect.rev !== input.rev || defect.state !== "open" || defect.grade === input.grade) return done(defectShown(g, defect));
    return done(defectShown(g, await revised(q, ctx, defect, { grade: input.grade, why: "graded" })));
  });
}

/** `figures`: what was read that says so still, by which its line stays due until it is taken back or read anew. */
export type ClosedAsNothing = DefectShown & { readonly figures: readonly Pick<Judged, "id" | "kind" | "place" | "value" | "unit" | "typed">[] };

/** Closes a defect that was none, with what it was. */
export async function closeAsNothing(ctx: Ctx, input: { readonly defect: string; readonly why: string }): Promise<Result<ClosedAsNothing>> {
  const because = input.why.trim();
  return change(ctx, input.defect, async (q, g, defect): Promise<Result<ClosedAsNothing>> => {
    if (!saysSomething(because)) return refused({ why: "left blank", field: "what it was" });
    if (defect.state !== "open") return refused({ why: "already done" });
    const figures = defect.from !== "verdict" ? [] : g.judged.filter((judged) => judged.doNotRide && defectOf(judged) === defect.kind);
    const closed = defectShown(g, await revised(q, ctx, defect, { state: "closed", closedBecause: because, why: "was nothing" }));
    return done({ ...closed, figures: figures.map(({ id, kind, place, value, unit, typed }) => ({ id, kind, place, value, unit, typed })) });
  });
}

/** A letter or a figure at least: blanks and dots are nothing to put on record. */
export const saysSomething = (text: string): boolean => /[\p{L}\p{N}]/u.test(text);

/** Closes a defect by work that is on record. */
export async function closeByWork(ctx: Ctx, input: { readonly defect: string; readonly work: string }): Promise<Result<DefectShown>> {
  return change(ctx, input.defect, async (q, g, defect) => {
    const work = await q.work.byId(input.work);
    if (work === null || work.state !== "live" || work.bike !== defect.bike) return refused({ why: "gone" });
    if (defect.state !== "open") return refused({ why: "already done" });
    const [closed] = await closedByWork(q, ctx, [defect], work.id);
    return closed === undefined ? refused({ why: "gone" }) : done(defectShown(g, closed));
  });
}

type Owned = { readonly g: Garaged; readonly defect: Defect };

async function owned(q: Repos, ctx: Ctx, id: string): Promise<Result<Owned>> {
  const defect = await q.defects.byId(id);
  if (defect === null) return refused({ why: "gone" });
  const g = pick(await ownGarage(q, ctx), defect.bike as BikeId);
  return g === null ? refused({ why: "not yours" }) : done({ g, defect });
}

async function change<T extends DefectShown>(ctx: Ctx, id: string, work: (q: Repos, g: Garaged, defect: Defect) => Promise<Result<T>>): Promise<Result<T>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<T>> => {
    const found = await owned(q, ctx, id);
    if (found.is === "refused") return found;
    const answer = await work(q, found.value.g, found.value.defect);
    if (answer.is === "done" && answer.value.rev !== found.value.defect.rev) await touch(q, ctx, [found.value.defect.bike]);
    return answer;
  });
  return onceHeard(acted);
}
