// Changes of a plan as words: saved with a way back, told as a record, another plan beside the one in force.

import { z } from "zod";
import type { Action, Attached, Said } from "../../src/chat/reply.ts";
import type { BaseChange } from "../../src/usecases/plan-base.ts";
import type { PlanEdited, PlanHistory } from "../../src/usecases/plan-edits.ts";
import type { PlanOffer } from "../../src/usecases/plan-offers.ts";
import type { PlanShared } from "../../src/usecases/plan-share.ts";
import type { Words } from "../../src/words/en/english.ts";
import { unit } from "../shapes.ts";
import { press, said } from "./said.ts";

const trigger = { anchor: z.enum(["marks", "last done"]), first: z.unknown(), repeat: z.unknown(), shortened: z.unknown() };
export const planEdited = z.object({
  ...{ bike: z.string(), nickname: z.string(), did: z.enum(["added", "dropped", "brought back", "taken back"]), name: z.string(), every: z.unknown() },
  ...{ column: unit, caution: z.string().nullable(), rev: z.number().int() },
});
export const planHistoryShape = z.object({
  ...{ bike: z.string(), nickname: z.string(), column: unit, rev: z.number().int() },
  edits: z.array(
    z.object({
      ...{
        change: z.enum(["interval", "add", "drop", "restore", "base"]),
        name: z.string(),
        repeat: z.unknown(),
        shortened: z.unknown(),
        by: z.string().nullable(),
      },
      ...{ at: z.string(), why: z.string().nullable() },
    }),
  ),
});
export const baseChange = z.object({
  ...{ bike: z.string(), nickname: z.string(), column: unit, was: z.string(), name: z.string(), source: z.string(), sharedBy: z.string().nullable() },
  ...{ hash: z.string(), rev: z.number().int(), added: z.array(z.object({ name: z.string(), ...trigger })), gone: z.array(z.string()) },
  ...{ goneSafety: z.array(z.string()), of: z.number().int() },
  changed: z.array(z.object({ name: z.string(), was: z.object(trigger), will: z.object(trigger) })),
  ...{ conflicts: z.array(z.string()), same: z.boolean(), saved: z.boolean() },
  kept: z.array(z.object({ name: z.string(), now: z.object(trigger).nullable(), there: z.object(trigger).nullable() })),
});
const shared = { nickname: z.string(), model: z.string(), items: z.number().int(), manual: z.string() };
const groupPlan = z.object({ by: z.string().nullable(), manual: z.string() });
export const planShared = z.discriminatedUnion("is", [
  z.object({ is: z.literal("shared"), ...shared, share: z.string(), before: groupPlan.nullable() }),
  z.object({
    ...{ is: z.literal("asked"), ...shared, bike: z.string(), column: unit, hash: z.string(), rev: z.number().int(), before: groupPlan },
    beside: z.object({
      ...{ added: z.array(z.object({ name: z.string(), ...trigger })), gone: z.array(z.string()) },
      changed: z.array(z.object({ name: z.string(), was: z.object(trigger), will: z.object(trigger) })),
    }),
  }),
  z.object({ is: z.literal("taken back"), ...shared, before: groupPlan.nullable() }),
]);

export function sayEdited(edited: PlanEdited, words: Words): Said {
  const { planEdits } = words;
  const warn = edited.did === "dropped" && edited.caution !== null ? [planEdits.droppedSafety()] : [];
  return said([planEdits.edited(edited), ...warn], {
    caution: edited.did === "dropped" ? words.caution(edited.caution) : null,
    actions: edited.did === "taken back" ? [] : [press("plan-undo", edited.bike, planEdits.labels.undo, edited.rev)],
  });
}

export function sayHistory({ bike, nickname, column, rev, edits }: PlanHistory, words: Words): Said {
  const { planEdits } = words;
  return said([planEdits.history(nickname, edits.length), ...edits.map((each) => planEdits.told(each, column))], {
    actions: edits.length === 0 ? [] : [press("plan-undo", bike, planEdits.labels.undo, rev)],
  });
}

/** The button to each plan that is offered. */
export const offered = (bike: string, offers: readonly PlanOffer[], { planEdits }: Words): readonly Action[] =>
  offers.map(({ plan }) => press("plan-beside", `${bike}/${plan === "group plan" ? "group" : "starter"}`, planEdits.labels.beside(plan)));

/** More lines than a phone reads at a glance. */
const MOST_SHOWN = 25;

export function sayBase(change: BaseChange, words: Words): Said {
  const { planEdits } = words;
  const { bike, nickname, column, name, source, sharedBy, hash, rev, added, gone, goneSafety, changed, conflicts, kept, saved } = change;
  if (saved) return said([planEdits.taken(nickname, name)], { actions: [press("plan-undo", bike, planEdits.labels.undo, rev)] });
  const lines = [
    ...changed.map((each) => planEdits.changed(each.name, each.was, each.will, column)),
    ...added.map((each) => [planEdits.added(each.name, each, column)]),
    ...gone.map((each) => [planEdits.gone(each)]),
  ];
  const hidden = lines.length - MOST_SHOWN;
  // Where nothing falls due otherwise there is nothing to take.
  const same = change.same || (lines.length === 0 && conflicts.length === 0);
  const own = kept.map((each) => planEdits.kept(each.name, each.now, each.there, column));
  const listed = changed.length + added.length + gone.length <= MOST_SHOWN;
  return said(
    [
      ...[planEdits.beside(nickname, name, source, sharedBy), ""],
      ...(gone.length === 0 || change.same ? [] : [planEdits.takesOut(gone, goneSafety, change.of, listed), ""]),
      ...(lines.length === 0 ? (own.length === 0 ? [planEdits.same()] : []) : lines.slice(0, MOST_SHOWN).flat()),
      ...(hidden > 0 ? [planEdits.more(hidden)] : []),
      ...(own.length === 0 ? [] : [...(lines.length === 0 ? [] : [""]), planEdits.ownStand(lines.length === 0), ...own.slice(0, MOST_SHOWN).flat()]),
      ...(own.length > MOST_SHOWN ? [planEdits.more(own.length - MOST_SHOWN)] : []),
      ...(conflicts.length === 0 ? [] : ["", planEdits.conflicts(conflicts)]),
      ...(same ? [] : ["", planEdits.notTaken()]),
    ],
    same ? {} : { actions: [press("plan-take", `${bike}/${hash}`, planEdits.labels.take, rev), press("leave-plan", bike, planEdits.labels.leave)] },
  );
}

export function sayShared(share: PlanShared, { planEdits }: Words): Said {
  const { nickname, model, items, manual } = share;
  if (share.is === "taken back") return said([planEdits.unshared(model, share.before)]);
  if (share.is === "shared")
    return said(
      [planEdits.shared(nickname, model, items), planEdits.sharedSource(manual), ...(share.before === null ? [] : [planEdits.replaced(share.before)])],
      {
        actions: [press("plan-unshare", share.share, planEdits.labels.undo)],
      },
    );
  const { bike, column, hash, rev, before, beside } = share;
  const { changed, added, gone } = beside;
  const lines = [
    ...changed.map((each) => planEdits.wouldChange(each.name, each.was, each.will, column)),
    ...added.map((each) => [planEdits.added(each.name, each, column)]),
    ...gone.map((each) => [planEdits.goneOfYours(each)]),
  ];
  return said(
    [
      ...[planEdits.wouldReplace(nickname, model, before, manual), ""],
      ...(lines.length === 0 ? [planEdits.sameAsGroup()] : lines.slice(0, MOST_SHOWN).flat()),
      ...(lines.length > MOST_SHOWN ? [planEdits.more(lines.length - MOST_SHOWN)] : []),
      ...["", planEdits.notShared(before)],
    ],
    { actions: [press("plan-share", `${bike}/${hash}`, planEdits.labels.share, rev), press("leave-plan", bike, planEdits.labels.leave)] },
  );
}

export const planFileOf = (nickname: string, text: string, { planEdits }: Words): Attached => ({
  ...{ name: "plan.json", type: "application/json", bytes: new TextEncoder().encode(text), alt: planEdits.fileAlt(nickname) },
});
