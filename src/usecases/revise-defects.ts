// The next revision of a defect: graded, closed, opened again, taken back.

import type { Defect } from "../core/defect.ts";
import { Conflict, type Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";

/** Closes open defects by a work record, inside the caller's transaction, which touches the bike. @throws Conflict */
export async function closedByWork(q: Repos, ctx: Ctx, defects: readonly Defect[], work: string): Promise<Defect[]> {
  const closed: Defect[] = [];
  for (const defect of defects) closed.push(await revised(q, ctx, defect, { state: "closed", closedBy: work, why: "work" }));
  return closed;
}

/** Writes the next revision of a defect. @throws Conflict when somebody else's came first */
export async function revised(q: Repos, ctx: Ctx, defect: Defect, next: Partial<Defect>): Promise<Defect> {
  const written: Defect = { ...defect, ...next, rev: defect.rev + 1, by: ctx.who.member, at: ctx.now };
  if (!(await q.defects.revise(written))) throw new Conflict("defect changed meanwhile");
  return written;
}

/** Opens again what work closed that is taken back. @throws Conflict */
export async function reopened(q: Repos, ctx: Ctx, work: readonly { readonly id: string }[]): Promise<Defect[]> {
  const open: Defect[] = [];
  for (const defect of await q.defects.closedBy(work.map(({ id }) => id)))
    open.push(await revised(q, ctx, defect, { state: "open", closedBy: null, why: "work undone" }));
  return open;
}
