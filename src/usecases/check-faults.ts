// What a check finds wrong is a defect of the bike: noted with the answer, changed with it, and taken back when the answer is.
// Closed by work or as nothing it is left alone: then the answer was right, and what became of it is on record.

import type { FaultGrade } from "../core/check/checklist.ts";
import type { CheckRun, PointAnswer } from "../store/checks.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import { todayOf } from "./context.ts";
import { noteDefects } from "./defects.ts";
import type { Garaged } from "./garage.ts";
import { revised } from "./revise-defects.ts";
import { touch } from "./settle.ts";

/** Makes the bike's defects follow an answer. Answers the id of the defect that goes with it; null when there is none. */
export async function followFault(q: Repos, ctx: Ctx, run: CheckRun, g: Garaged, answer: PointAnswer): Promise<string | null> {
  const noted = answer.defect === null ? null : await q.defects.byId(answer.defect);
  const open = noted?.state === "open" ? noted : null;
  if (answer.answer !== "needs work") {
    if (open === null) return null;
    await revised(q, ctx, open, { state: "withdrawn", why: "answered otherwise in the check" });
    await touch(q, ctx, [g.bike.id]);
    return null;
  }
  const words = answer.note ?? wordsOf(answer.point);
  const grade: FaultGrade | null = answer.grade;
  if (open !== null) {
    if (open.words !== words || open.grade !== grade) {
      await revised(q, ctx, open, { words, grade, why: "answered anew in the check" });
      await touch(q, ctx, [g.bike.id]);
    }
    return open.id;
  }
  const found = { bike: g.bike.id, kind: null, words, grade, on: todayOf(ctx), dial: null, from: "check" } as const;
  const [defect] = await noteDefects(q, ctx, [found], run.id, await q.defects.nextOrdinal(run.id));
  return defect?.id ?? null;
}

/** A point's key as plain words: its form offers better ones. */
const wordsOf = (key: string): string => key.replaceAll("-", " ");
