// Answering, retyping and letting go of a draft; and the list of what is unanswered.

import { type DistanceUnit, dialOf } from "../core/quantity/distance.ts";
import type { Refusal } from "../core/refusal.ts";
import { read } from "../message/read.ts";
import type { Draft } from "../store/drafts.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import { answered, sourceOf, withoutOwn } from "./answer-question.ts";
import type { Ctx } from "./context.ts";
import { withdrawSlips } from "./corrections.ts";
import { beginDial } from "./dials.ts";
import { logged, settle } from "./log-set.ts";
import type { MessageOutcome } from "./message-outcome.ts";
import { knownOf, ownGarage } from "./own-garage.ts";
import { askedOf, type Question, questionOf } from "./question.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";

/** Answers the open question of a draft. A press on an older question shows the one that stands now. */
export async function answerDraft(ctx: Ctx, input: { readonly draft: string; readonly rev: number; readonly choice: string }): Promise<Result<MessageOutcome>> {
  return withDraft(ctx, input.draft, async (q, draft) => {
    const all = await ownGarage(q, ctx);
    if (draft.rev !== input.rev) return done<MessageOutcome>(await askedOf(q, draft, all));
    if (input.choice === "earlier") return done(await withoutSlips(q, ctx, draft));
    if (input.choice === "rolled over") return dialBegun(q, ctx, draft, "rolled over", undefined);
    return done(await answered(q, ctx, all, draft, input.choice));
  });
}

/** The dial was replaced: it starts again at the figure typed, and the bike's distance goes on from where the old one ended. */
export async function draftNewDial(ctx: Ctx, input: { readonly draft: string; readonly last: string | undefined }): Promise<Result<MessageOutcome>> {
  return withDraft(ctx, input.draft, (q, draft) => dialBegun(q, ctx, draft, "replaced", input.last));
}

async function dialBegun(q: Repos, ctx: Ctx, draft: Draft, cause: "replaced" | "rolled over", last: string | undefined): Promise<Result<MessageOutcome>> {
  const { all, g, read } = await dialAsked(q, ctx, draft);
  if (g === null || read === null) return refused({ why: "gone" });
  const begun = await beginDial(q, ctx, all, g, { firstOfNew: read.dial, unit: read.unit, cause, on: read.on, last, source: sourceOf(draft) });
  return begun.is === "refused" ? begun : done(await logSure(q, ctx, draft, []));
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
    return done(await askedOf(q, draft, await ownGarage(q, ctx)));
  });
}

/** What is still asked about a message as it reads now; null when nothing is. */
export async function questionAbout(ctx: Ctx, heard: { readonly message: string; readonly text: string }): Promise<MessageOutcome | null> {
  return ctx.store.read(async (q): Promise<MessageOutcome | null> => {
    const draft = await q.drafts.openOfMessage(heard.message);
    if (draft === null || draft.owner !== ctx.who.member || draft.typed !== heard.text) return null;
    return askedOf(q, draft, await ownGarage(q, ctx));
  });
}

/** Unanswered questions of the speaker, oldest first. */
export async function unanswered(q: Repos, ctx: Ctx): Promise<Question[]> {
  const drafts = await q.drafts.openOf(ctx.who.member);
  if (drafts.length === 0) return [];
  const all = await ownGarage(q, ctx);
  return Promise.all(drafts.map(async (draft) => (await askedOf(q, draft, all)).question));
}

async function withDraft<T>(ctx: Ctx, id: string, work: (q: Repos, draft: Draft) => Promise<Result<T>>): Promise<Result<T>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<T>> => {
    const draft = await q.drafts.byId(id);
    if (draft === null) return refused({ why: "gone" } satisfies Refusal);
    if (draft.owner !== ctx.who.member) return refused({ why: "not yours" });
    if (draft.state !== "open") return refused({ why: "already done" });
    return work(q, draft);
  });
  return onceHeard(acted);
}

/** What stood before was the slip: it is withdrawn, and what was typed now stands. */
async function withoutSlips(q: Repos, ctx: Ctx, draft: Draft): Promise<MessageOutcome> {
  const { g, read } = await dialAsked(q, ctx, draft);
  return logSure(q, ctx, draft, g === null || read === null ? [] : await withdrawSlips(q, ctx, g, read, sourceOf(draft)));
}

/** The dial figure that a draft's question is about. */
async function dialAsked(q: Repos, ctx: Ctx, draft: Draft) {
  const all = await withoutOwn(q, draft, await ownGarage(q, ctx));
  const { intent } = questionOf(draft, all);
  const g = all.find((each) => each.bike.id === intent.bike) ?? null;
  if (intent.do !== "log reading" || intent.kind !== "odometer" || g === null) return { all, g, read: null };
  const unit = (intent.unit ?? g.unit) as DistanceUnit;
  return { all, g, read: { dial: dialOf(intent.value, unit), unit, on: intent.on } };
}

/** With the cause settled, the set is held against the new history and logged, or asked about again. */
async function logSure(q: Repos, ctx: Ctx, draft: Draft, slips: readonly ReadingRecord[]): Promise<MessageOutcome> {
  const all = await withoutOwn(q, draft, await ownGarage(q, ctx));
  const { at } = questionOf(draft, all);
  const intents = draft.intents.map((intent, n) => (n === at ? { ...intent, sure: true as const, gaps: intent.gaps.slice(1) } : intent));
  const open = intents.some((intent) => intent.gaps.length > 0);
  const next: Draft = { ...draft, intents, rev: draft.rev + 1, state: open ? "open" : "logged" };
  await q.drafts.change(next);
  if (open) return askedOf(q, next, all);
  const outcome = await logged(q, ctx, all, intents, sourceOf(draft), true);
  return outcome.is === "logged" ? { ...outcome, withdrawn: slips } : outcome;
}
