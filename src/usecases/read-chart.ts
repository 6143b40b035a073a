// A chart pasted by a member: kept as a draft, its letters confirmed, its lines settled, then saved as changes of the plan, all together.

import { nicknameKey } from "../core/bike.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { localDateAt } from "../core/calendar/zones.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import { fold } from "../core/plan/fold.ts";
import type { PlanEdit, PlanItem, WorkAction } from "../core/plan/plan.ts";
import type { Meaning } from "../core/reading/chart-words.ts";
import type { Unread } from "../message/read-chart.ts";
import type { ChartAnswers, ChartDraft } from "../store/charts.ts";
import type { Repos } from "../store/store.ts";
import { keepMember } from "./add-bike.ts";
import { type ChartProposal, type LineOutcome, proposalOf } from "./chart-proposal.ts";
import type { Ctx } from "./context.ts";
import { editPlan } from "./edit-plan.ts";
import { type Garaged, pick } from "./garage.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { nameIn } from "./record-work.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { whichBike } from "./which-bike.ts";

export type ChartReading =
  /** Nothing was pasted yet; `open`: a chart of this bike that waits. */
  | { readonly is: "asked"; readonly bike: BikeId; readonly nickname: string; readonly open: { readonly draft: string; readonly on: LocalDate } | null }
  | { readonly is: "not a chart"; readonly draft: string; readonly bike: BikeId; readonly nickname: string }
  | ChartProposal;
export type ChartSaved = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly rev: number;
  /** How many edits were saved together. */
  readonly edits: number;
  readonly changed: readonly string[];
  readonly added: readonly string[];
  /** Lines of the chart of which nothing was saved, as they were pasted. */
  readonly leftOut: readonly Unread[];
  readonly undone: boolean;
};

/** A form's paragraph holds 4,000 characters; a file may hold a large chart. */
const LONGEST_CHART = 20_000;
const LONGEST_NAME = 60;

/** Asks for a chart, or reads the one typed. */
export async function beginChart(ctx: Ctx, input: { readonly bike?: string; readonly chart?: string }): Promise<Result<ChartReading>> {
  const asked = await ctx.store.read(async (q): Promise<Result<Extract<ChartReading, { is: "asked" }>>> => {
    const all = await ownGarage(q, ctx);
    if (all.length === 0) return noneLeft(q, ctx);
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const { id, nickname } = which.value.bike;
    const open = (await q.charts.openOf(ctx.who.member)).find((chart) => chart.answers.bike === id);
    return done({ is: "asked", bike: id, nickname, open: open === undefined ? null : { draft: open.id, on: localDateAt(open.at, ctx.who.zone) } });
  });
  return asked.is === "refused" || input.chart === undefined ? asked : pasteChart(ctx, { bike: asked.value.bike, text: input.chart });
}

/** Keeps what was pasted, and reads it. @param draft the chart that it is pasted in place of */
export async function pasteChart(ctx: Ctx, input: { readonly bike: BikeId; readonly text: string; readonly draft?: string }): Promise<Result<ChartReading>> {
  if (input.text.length > LONGEST_CHART) return refused({ why: "too long", limit: LONGEST_CHART });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<ChartReading>> => {
    const all = await ownGarage(q, ctx);
    const g = pick(all, input.bike);
    if (g === null) return refused({ why: "not yours" });
    await keepMember(q, ctx);
    const before = input.draft === undefined ? null : await q.charts.byId(input.draft);
    if (before !== null && before.owner === ctx.who.member && before.state === "chart open")
      await q.charts.change({ ...before, state: "chart left", rev: before.rev + 1 });
    const answers: ChartAnswers = { bike: g.bike.id, legend: {}, asked: [], confirmed: false, items: {}, own: [] };
    const draft: ChartDraft = {
      ...{ id: ctx.newId(), owner: ctx.who.member, group: ctx.who.group, channel: ctx.who.channel },
      ...{ typed: input.text, answers, state: "chart open", rev: 0, at: ctx.now },
    };
    await q.charts.add(draft);
    return done(readingOf(ctx, all, g, draft));
  });
  return onceHeard(acted);
}

/** What was pasted, for pasting it again. */
export async function pastedChart(ctx: Ctx, input: { readonly draft: string }): Promise<Result<string>> {
  return ctx.store.read(async (q) => {
    const draft = await openDraft(q, ctx, input.draft);
    return draft.is === "refused" ? draft : done(draft.value.typed);
  });
}

/** A chart as it stands. */
export async function showReading(ctx: Ctx, input: { readonly draft: string }): Promise<Result<ChartReading>> {
  return ctx.store.read(async (q) => {
    const draft = await openDraft(q, ctx, input.draft);
    if (draft.is === "refused") return draft;
    const all = await ownGarage(q, ctx);
    const g = pick(all, draft.value.answers.bike);
    return g === null ? refused({ why: "gone" }) : done(readingOf(ctx, all, g, draft.value));
  });
}

/** One answer about a pasted chart. */
export type ChartAnswer =
  | { readonly to: "letter"; readonly at: number; readonly meaning: Meaning }
  | { readonly to: "ask"; readonly at: number }
  | { readonly to: "letters"; readonly right: boolean }
  | { readonly to: "line"; readonly n: number; readonly item: ItemKey | "leave" }
  /** Of the lines that give one item several triggers: the one that counts. */
  | { readonly to: "twice"; readonly n: number }
  | { readonly to: "own"; readonly n: number | "all" };

/** Takes an answer; a press on an older state shows the one that stands now. */
export async function answerChart(
  ctx: Ctx,
  input: { readonly draft: string; readonly rev: number; readonly answer: ChartAnswer },
): Promise<Result<ChartReading>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<ChartReading>> => {
    const draft = await openDraft(q, ctx, input.draft);
    if (draft.is === "refused") return draft;
    const all = await ownGarage(q, ctx);
    const g = pick(all, draft.value.answers.bike);
    const now = g === null ? null : proposalOf(ctx, all, g, draft.value);
    if (g === null || now === null) return refused({ why: "gone" });
    if (draft.value.rev !== input.rev) return done(now);
    const next: ChartDraft = { ...draft.value, answers: answered(draft.value.answers, now, input.answer), rev: draft.value.rev + 1 };
    await q.charts.change(next);
    return done(readingOf(ctx, all, g, next));
  });
  return onceHeard(acted);
}

/** Lets a chart go: nothing of it is saved. */
export async function leaveChart(ctx: Ctx, input: { readonly draft: string }): Promise<Result<{ readonly left: true }>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<{ readonly left: true }>> => {
    const draft = await openDraft(q, ctx, input.draft);
    if (draft.is === "refused") return draft;
    await q.charts.change({ ...draft.value, state: "chart left", rev: draft.value.rev + 1 });
    return done({ left: true });
  });
  return onceHeard(acted);
}

/** Saves what was shown, all of it or nothing. @param rev of the chart @param planRev of the plan, both as shown */
export async function saveChart(ctx: Ctx, input: { readonly draft: string; readonly rev: number; readonly planRev: number }): Promise<Result<ChartSaved>> {
  const found = await ctx.store.read((q) => openDraft(q, ctx, input.draft));
  if (found.is === "refused") return found;
  return editPlan<ChartSaved>(ctx, found.value.answers.bike, input.planRev, async (g, q, all) => {
    const draft = await openDraft(q, ctx, input.draft);
    if (draft.is === "refused") return draft;
    const now = proposalOf(ctx, all, g, draft.value);
    if (now === null) return refused({ why: "gone" });
    if (draft.value.rev !== input.rev || !now.confirmed) return refused({ why: "changed meanwhile" });
    const edits = now.lines.flatMap((line) => editOf(ctx, g, line));
    if (edits.length === 0) return refused({ why: "nothing to change" });
    await q.charts.change({ ...draft.value, state: "chart saved", rev: draft.value.rev + 1 });
    const changed = [...new Set(now.lines.flatMap((line) => (line.is === "change" ? [line.name] : [])))];
    const added = edits.flatMap((edit) => (edit.change === "add" ? [edit.item.called ?? ""] : []));
    const rev = g.bike.edits.length + edits.length;
    return done({
      edits,
      value: {
        bike: g.bike.id,
        nickname: g.bike.nickname,
        rev,
        edits: edits.length,
        changed,
        added,
        leftOut: leftOutOf(now, draft.value.typed),
        undone: false,
      },
    });
  });
}

/** Takes a saved chart back by changes of their own: the record of both stays. @param edits how many were saved together */
export async function undoChart(ctx: Ctx, input: { readonly bike: BikeId; readonly edits: number; readonly rev: number }): Promise<Result<ChartSaved>> {
  return editPlan<ChartSaved>(ctx, input.bike, input.rev, async (g, q) => {
    const all = g.bike.edits.map(({ edit }) => edit);
    if (input.edits < 1 || input.edits > all.length) return refused({ why: "gone" });
    const before = fold(await q.bikes.base(g.bike.planHash), all.slice(0, -input.edits));
    const edits = all.slice(-input.edits).flatMap((edit): PlanEdit[] => {
      if (edit.change === "add") return [{ change: "drop", item: edit.item.key }];
      const item = edit.change === "interval" ? before.items.find((each) => each.key === edit.item) : undefined;
      return item === undefined ? [] : [{ change: "interval", item: item.key, repeat: item.repeat, first: item.first, anchor: item.anchor }];
    });
    if (edits.length !== input.edits) return refused({ why: "gone" });
    const rev = g.bike.edits.length + edits.length;
    return done({ edits, value: { bike: g.bike.id, nickname: g.bike.nickname, rev, edits: edits.length, changed: [], added: [], leftOut: [], undone: true } });
  });
}

/** The lines that came to no change, and are not as the plan has them already. */
function leftOutOf({ lines, unread }: ChartProposal, typed: string): readonly Unread[] {
  const came = (line: LineOutcome): boolean => line.is === "change" || line.is === "same" || line.is === "habit" || (line.is === "unknown" && line.own);
  const rows = typed.split(/\r?\n/u);
  const told = new Set(lines.filter(came).map(({ line }) => line));
  const left = new Map(lines.filter((line) => !told.has(line.line)).map(({ line, called }) => [line, rows[line - 1]?.trim() || called]));
  return [...[...left].map(([line, text]) => ({ line, text })), ...unread].sort((a, b) => a.line - b.line);
}

const readingOf = (ctx: Ctx, all: readonly Garaged[], g: Garaged, draft: ChartDraft): ChartReading =>
  proposalOf(ctx, all, g, draft) ?? { is: "not a chart", draft: draft.id, bike: g.bike.id, nickname: g.bike.nickname };

async function openDraft(q: Repos, ctx: Ctx, id: string): Promise<Result<ChartDraft>> {
  const draft = await q.charts.byId(id);
  if (draft === null) return refused({ why: "gone" });
  if (draft.owner !== ctx.who.member) return refused({ why: "not yours" });
  return draft.state === "chart open" ? done(draft) : refused({ why: "already done" });
}

/** Lines are numbered by what the letters mean: a change of those asks about the lines anew. */
function answered(answers: ChartAnswers, now: ChartProposal, answer: ChartAnswer): ChartAnswers {
  switch (answer.to) {
    case "letter": {
      const letter = now.letters[answer.at]?.letter;
      if (letter === undefined) return answers;
      const asked = answers.asked.filter((each) => each !== letter);
      return { ...answers, legend: { ...answers.legend, [letter]: answer.meaning }, asked, confirmed: false, items: {}, own: [] };
    }
    case "ask": {
      const letter = now.letters[answer.at]?.letter;
      return letter === undefined ? answers : { ...answers, asked: [...answers.asked.filter((each) => each !== letter), letter], confirmed: false };
    }
    case "letters":
      return { ...answers, confirmed: answer.right && now.letters.every((letter) => letter.meaning !== null) };
    case "line":
      return { ...answers, items: { ...answers.items, [answer.n]: answer.item } };
    case "twice": {
      const kept = now.lines.find((line) => line.n === answer.n && line.is === "twice");
      const others = now.lines.filter((line) => line.is === "twice" && kept?.is === "twice" && line.item === kept.item && line.n !== kept.n);
      return { ...answers, items: { ...answers.items, ...Object.fromEntries(others.map(({ n }) => [n, "leave"])) } };
    }
    case "own": {
      const lines = now.lines.filter((line) => line.is === "unknown" && line.canBeOwn && (answer.n === "all" || line.n === answer.n)).map((line) => line.n);
      return { ...answers, own: [...new Set([...answers.own, ...lines])] };
    }
  }
}

function editOf(ctx: Ctx, g: Garaged, line: LineOutcome): readonly PlanEdit[] {
  if (line.is === "change") {
    const { anchor, first, repeat } = line.will;
    return [{ change: "interval", item: line.item, repeat, first, anchor }];
  }
  return line.is === "unknown" && line.own ? [{ change: "add", item: ownItem(ctx, g, line) }] : [];
}

/** An item of the member's own, with nothing assumed that could make it due later than the chart says. */
function ownItem(ctx: Ctx, g: Garaged, { called, meaning, will }: Extract<LineOutcome, { is: "unknown" }>): PlanItem {
  // "Spark plugs, inspect" beside the plan's "Spark plugs": a name finds one item.
  const taken = g.plan.items.some((item) => nicknameKey(nameIn(ctx, g, item.key)) === nicknameKey(called));
  const name = `${[...called].slice(0, LONGEST_NAME).join("")}${taken ? `, ${meaning}` : ""}`;
  return {
    ...{ key: `own.${ctx.newId()}` as ItemKey, called: name, action: meaning as WorkAction },
    // A chart does not say where on the bike a thing belongs: it is listed last.
    ...{ system: "frame and stands", anchor: will.anchor, first: will.first, repeat: will.repeat, parked: "counts", noLateWindow: false, shortened: {} },
    ...{ measuredBy: null, covers: [], fits: {}, engine: "any", position: "any", minutes: null, caution: null, firstOnUsedBike: null },
    source: "a chart that its owner pasted",
  };
}
