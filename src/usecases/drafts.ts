// Answering, retyping and letting go of a draft; and the list of what is unanswered.

import type { Dial } from "../core/quantity/distance.ts";
import { dialOf } from "../core/quantity/distance.ts";
import type { Refusal } from "../core/refusal.ts";
import { read } from "../message/read.ts";
import type { Draft } from "../store/drafts.ts";
import type { Repos } from "../store/store.ts";
import type { Ctx } from "./context.ts";
import { answered, knownOf, logged, type MessageOutcome, ownGarage, type Question, questionOf, settle } from "./messages.ts";
import { done, type Result, refused } from "./refusals.ts";
import { withdrawReading } from "./undo.ts";

/** Answers the open question of a draft. A press on an older question shows the one that stands now. */
export async function answerDraft(ctx: Ctx, input: { readonly draft: string; readonly rev: number; readonly choice: string }): Promise<Result<MessageOutcome>> {
  return withDraft(ctx, input.draft, async (q, draft) => {
    const all = await ownGarage(q, ctx);
    if (draft.rev !== input.rev) return done<MessageOutcome>({ is: "asked", question: questionOf(draft, all) });
    if (input.choice === "replaced") return done(await withNewDial(q, ctx, draft));
    if (input.choice === "earlier") return done(await withoutEarlier(q, ctx, draft));
    return done(await answered(q, ctx, all, draft, input.choice));
  });
}

/** Reads the message again as corrected; what was typed first stays with the draft that it replaces. */
export async function retypeDraft(ctx: Ctx, input: { readonly draft: string; readonly text: string }): Promise<Result<MessageOutcome>> {
  return withDraft(ctx, input.draft, async (q, draft) => {
    const all = await ownGarage(q, ctx);
    const meant = read(input.text, knownOf(ctx, all));
    if (meant.intents.length === 0) return done<MessageOutcome>({ is: "not understood", bikes: all.map((g) => g.bike.nickname) });
    await q.drafts.change({ ...draft, state: "let go", rev: draft.rev + 1 });
    return done(await settle(q, ctx, all, meant.intents, { source: draft.message ?? ctx.event, typed: input.text, message: draft.message, again: true }));
  });
}

/** Lets a draft go: nothing of it is saved, and it is no longer listed. */
export async function letGo(ctx: Ctx, input: { readonly draft: string }): Promise<Result<{ readonly typed: string }>> {
  return withDraft(ctx, input.draft, async (q, draft) => {
    await q.drafts.change({ ...draft, state: "let go", rev: draft.rev + 1 });
    return done({ typed: draft.typed });
  });
}

/** The question of a draft as it stands, for its owner. */
export async function draftQuestion(ctx: Ctx, input: { readonly draft: string }): Promise<Result<MessageOutcome>> {
  return ctx.store.read(async (q): Promise<Result<MessageOutcome>> => {
    const draft = await q.drafts.byId(input.draft);
    if (draft === null) return refused({ why: "gone" });
    if (draft.owner !== ctx.who.member) return refused({ why: "not yours" });
    if (draft.state !== "open") return refused({ why: "already done" });
    return done({ is: "asked", question: questionOf(draft, await ownGarage(q, ctx)) });
  });
}

/** Unanswered questions of the speaker, oldest first. */
export async function unanswered(q: Repos, ctx: Ctx): Promise<Question[]> {
  const drafts = await q.drafts.openOf(ctx.who.member);
  if (drafts.length === 0) return [];
  const all = await ownGarage(q, ctx);
  return drafts.map((draft) => questionOf(draft, all));
}

async function withDraft<T>(ctx: Ctx, id: string, work: (q: Repos, draft: Draft) => Promise<Result<T>>): Promise<Result<T>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<T>> => {
    const draft = await q.drafts.byId(id);
    if (draft === null) return refused({ why: "gone" } satisfies Refusal);
    if (draft.owner !== ctx.who.member) return refused({ why: "not yours" });
    if (draft.state !== "open") return refused({ why: "already done" });
    return work(q, draft);
  });
  return acted.first ? acted.value : refused({ why: "already done" });
}

/** The dial was replaced: it starts again at the figure typed, and the bike's distance goes on. */
async function withNewDial(q: Repos, ctx: Ctx, draft: Draft): Promise<MessageOutcome> {
  const all = await ownGarage(q, ctx);
  const { intent } = questionOf(draft, all);
  const g = all.find((each) => each.bike.id === intent.bike);
  if (g === undefined || intent.do !== "log reading" || intent.unit === null) throw new Error("only an odometer reading can start a new dial");
  const firstOfNew: Dial = dialOf(intent.value, intent.unit as "mi" | "km");
  await q.bikes.addEpoch(
    g.bike.id,
    { id: ctx.newId(), from: intent.on, lastOfOld: g.lastDial, firstOfNew, unit: intent.unit as "mi" | "km", cause: "replaced" },
    ctx.who.member,
    ctx.now,
  );
  return logSure(q, ctx, draft);
}

/** The reading before was the slip: it is withdrawn, and what was typed now stands. */
async function withoutEarlier(q: Repos, ctx: Ctx, draft: Draft): Promise<MessageOutcome> {
  const all = await ownGarage(q, ctx);
  const { intent } = questionOf(draft, all);
  const last = all.find((each) => each.bike.id === intent.bike)?.track.points.at(-1);
  const earlier = last === undefined ? null : await q.readings.byId(last.reading);
  if (earlier !== null) await withdrawReading(q, ctx, earlier, "a later reading showed it was a slip");
  return logSure(q, ctx, draft);
}

/** With the cause settled, the set is held against the new history and logged, or asked about again. */
async function logSure(q: Repos, ctx: Ctx, draft: Draft): Promise<MessageOutcome> {
  const all = await ownGarage(q, ctx);
  const { at } = questionOf(draft, all);
  const intents = draft.intents.map((intent, n) => (n === at ? { ...intent, sure: true as const, gaps: intent.gaps.slice(1) } : intent));
  const open = intents.some((intent) => intent.gaps.length > 0);
  const next: Draft = { ...draft, intents, rev: draft.rev + 1, state: open ? "open" : "logged" };
  await q.drafts.change(next);
  return open ? { is: "asked", question: questionOf(next, all) } : logged(q, ctx, all, intents, draft.message ?? draft.id, true);
}
