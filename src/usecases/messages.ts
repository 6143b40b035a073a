// A plain message: read, held against history, and either logged whole, asked about, or passed over in silence.

import { nicknameKey } from "../core/bike.ts";
import type { Defect } from "../core/defect.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import type { Conversion } from "../core/quantity/conversion.ts";
import { askConvert } from "../core/quantity/convert-question.ts";
import { type DistanceUnit, TENTHS_OF_MM } from "../core/quantity/distance.ts";
import type { Gap, Intent } from "../core/reading/intent.ts";
import { kindRow, LEVELS, type Level, type ReadingKind } from "../core/reading/kinds.ts";
import type { Known } from "../core/reading/vocabulary.ts";
import type { Refusal } from "../core/refusal.ts";
import type { Due, Status } from "../core/schedule/facts.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { dialAt } from "../core/usage/track.ts";
import { read } from "../message/read.ts";
import type { Draft } from "../store/drafts.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { defectRow } from "../trade/defects.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type ConvertAnswer, withTools } from "./convert.ts";
import { allOf, recordsOf, withdrawAll } from "./corrections.ts";
import { type DefectShown, defectShown } from "./defect-shown.ts";
import { type FluidPut, fluidsPut } from "./fluids.ts";
import { duesOf, figureOfLast, type Garaged, garage, itemOf, itemsOf, pick, withMore, without } from "./garage.ts";
import { type JudgedOn, judgeTaken, type Rig } from "./judge.ts";
import { refused } from "./refusals.ts";
import { rigsFor } from "./rig.ts";
import { asMeasured, asOdometers, heldAgainst, type Saved, save, strangeAgainst } from "./settle.ts";
import { noteVerdicts } from "./verdict-defects.ts";

/** An item that this message made more urgent. */
export type News = { readonly bike: BikeId; readonly nickname: string; readonly item: ItemKey; readonly called: string; readonly status: Status };

/** A bike as an answer names it. */
export type NamedBike = { readonly id: BikeId; readonly nickname: string; readonly unit: DistanceUnit };

export type Question = {
  readonly draft: string;
  readonly rev: number;
  readonly typed: string;
  /** The intent asked about, and which of its gaps. */
  readonly intent: Intent;
  readonly at: number;
  readonly gap: Gap;
  /** What each option of the gap is called. */
  readonly options: readonly string[];
  /** For a strange odometer figure: what is on record. */
  readonly last: { readonly figure: number; readonly unit: DistanceUnit; readonly on: string } | null;
  readonly nickname: string | null;
};

/** A nickname and an odometer, as typed. */
export type FirstSeen = { readonly name: string | null; readonly odometer: string | null };

export type MessageOutcome =
  | { readonly is: "silence" }
  /** `gone`: bikes there were, now sold or retired. `seen`: what the message says of a first one. */
  | { readonly is: "no bikes"; readonly gone: readonly string[]; readonly seen: FirstSeen }
  | { readonly is: "too long" }
  | { readonly is: "not understood"; readonly bikes: readonly string[] }
  | { readonly is: "seen before" }
  /** What was asked is of a bike sold or retired since. */
  | { readonly is: "bike gone" }
  /** An edit without anything to log; what the message logged before still stands. */
  | {
      readonly is: "stands";
      readonly source: string;
      readonly readings: readonly ReadingRecord[];
      readonly work: readonly WorkRecord[];
      readonly defects: readonly DefectShown[];
      readonly bikes: readonly NamedBike[];
    }
  /** An edit of a message whose log was taken back. */
  | { readonly is: "taken back" }
  /** Another member's message. */
  | { readonly is: "not yours" }
  | {
      readonly is: "logged";
      readonly source: string;
      readonly readings: readonly ReadingRecord[];
      readonly work: readonly WorkRecord[];
      readonly defects: readonly DefectShown[];
      /** Open defects that the work closed, and those that it may have. */
      readonly closed: readonly DefectShown[];
      readonly mayClose: readonly { readonly defect: DefectShown; readonly work: string }[];
      readonly bikes: readonly NamedBike[];
      readonly news: readonly News[];
      /** What came of judging these readings. */
      readonly judged?: readonly JudgedOn[];
      /** Fluids put into brakes that are fitted with another. */
      readonly fluids?: readonly FluidPut[];
      /** Earlier readings that were withdrawn as slips for this one's sake. */
      readonly withdrawn: readonly ReadingRecord[];
    }
  | { readonly is: "asked"; readonly question: Question }
  /** A question about units, asked of the bot by name. */
  | { readonly is: "converted"; readonly conversion: ConvertAnswer }
  /** A question about units that has no answer as it was put. */
  | { readonly is: "cannot convert"; readonly why: Refusal };

/** `again`: the message was heard before, so that records of it may be there, withdrawn ones included. */
export type Heard = {
  readonly message: string;
  readonly text: string;
  readonly addressed: boolean;
  readonly again?: true;
  /** What it replies to: the message, and the subjects of what can be pressed there. Null: it replies to nothing. */
  readonly answers: { readonly message: string; readonly subjects: readonly string[] } | null;
};

/** The speaker's bikes that are still ridden or kept, with their facts. */
export async function ownGarage(q: Repos, ctx: Ctx): Promise<Garaged[]> {
  const bikes = (await q.bikes.ofOwner(ctx.who.member)).filter((bike) => bike.state === "riding" || bike.state === "laid up");
  return garage(q, bikes, ctx.now, () => ({ member: ctx.who.self, home: ctx.who.home }));
}

/** Why there is nothing to speak of: no bike was ever added, or all are sold. */
export async function noneLeft(q: Repos, ctx: Ctx): Promise<{ readonly is: "refused"; readonly why: Refusal }> {
  const bikes = await q.bikes.ofOwner(ctx.who.member);
  return refused(bikes.length === 0 ? { why: "no bikes yet" } : { why: "all gone", bikes: bikes.map((bike) => bike.nickname) });
}

/** What the reader may know of this speaker. */
export function knownOf(ctx: Ctx, all: readonly Garaged[]): Known {
  return {
    today: todayOf(ctx),
    south: ctx.who.south,
    bikes: all.map((g) => ({
      id: g.bike.id,
      nickname: g.bike.nickname,
      unit: g.unit,
      lastFigure: figureOfLast(g),
      items: itemsOf(g).map((item) => ({ key: item.key, called: item.called, action: item.action, system: item.system })),
      defects: g.defects.map(({ id, kind, words }) => ({ id, kind, words })),
    })),
    numbers: ctx.who.numbers,
    pressureUnit: ctx.who.pressure,
    depthUnit: ctx.who.depth,
    vocabulary: ctx.vocabulary,
  };
}

/** Reads a message and acts on it once. */
export async function hear(ctx: Ctx, heard: Heard): Promise<MessageOutcome> {
  // Small talk is by far the most of what is said in a channel: it is read without touching the database.
  if (!heard.addressed && !mayHoldAReading(heard.text)) return { is: "silence" };
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<MessageOutcome> => {
    const all = await ownGarage(q, ctx);
    const question = heard.addressed ? unitsAsked(ctx, heard.text) : null;
    // Whoever names the unit wanted asks; a figure alone may be a reading.
    if (question?.is === "converted" && question.named) return answeredIn(q, ctx, question);
    if (all.length === 0) {
      const { intents } = read(heard.text, knownOf(ctx, []));
      const nothing = intents.length === 0;
      const answer = nothing && question !== null ? await unitsAnswered(q, ctx, question, heard.text) : null;
      if (answer !== null) return answer;
      if (nothing && !heard.addressed) return { is: "silence" };
      return { is: "no bikes", gone: (await q.bikes.ofOwner(ctx.who.member)).map((bike) => bike.nickname), seen: firstSeen(intents) };
    }
    const meant = read(heard.text, knownOf(ctx, all));
    if (heard.again === true && meant.intents.length === 0) await q.drafts.letGoOfMessage(heard.message);
    if (meant.tooLong) return heard.addressed ? { is: "too long" } : { is: "silence" };
    if (meant.intents.length === 0)
      return (
        (await answeredPlainly(q, ctx, all, heard)) ??
        (question === null ? null : await unitsAnswered(q, ctx, question, heard.text)) ??
        (heard.addressed ? { is: "not understood", bikes: all.map((g) => g.bike.nickname) } : { is: "silence" })
      );
    return settle(q, ctx, all, meant.intents, {
      source: heard.message,
      typed: heard.text,
      message: heard.message,
      ...(heard.again === true ? { again: true } : {}),
    });
  });
  return acted.first ? acted.value : { is: "seen before" };
}

function firstSeen(intents: readonly Intent[]): FirstSeen {
  const odometer = intents.find((intent) => intent.do === "log reading" && intent.kind === "odometer");
  const named = intents.flatMap((intent) => intent.gaps).find((gap) => gap.need === "bike");
  return { name: named?.need === "bike" ? named.named : null, odometer: odometer?.do === "log reading" ? odometer.typed.text : null };
}

/** "60-80 in-lb in Nm?", "what's 7/16 in metric": answered where it is a question, or says into what. */
function unitsAsked(ctx: Ctx, text: string): Conversion | null {
  return text.length > LONGEST_QUESTION || !/\p{Nd}|[¼½¾⅛⅜⅝⅞]/u.test(text) ? null : askConvert(text, null, ctx.vocabulary, ctx.who.numbers);
}

const answeredIn = async (q: Repos, ctx: Ctx, question: Extract<Conversion, { is: "converted" }>): Promise<MessageOutcome> => ({
  is: "converted",
  conversion: await withTools(question, () => q.wrenches.ofOwner(ctx.who.member)),
});

/** A question that cannot be answered says why, if it is certainly one or only the unit is in doubt; else it is none. */
async function unitsAnswered(q: Repos, ctx: Ctx, question: Conversion, typed: string): Promise<MessageOutcome | null> {
  if (question.is === "converted") return answeredIn(q, ctx, question);
  const { why: because, candidates, word, said } = question;
  if (!question.named && candidates.length === 0) return null;
  return { is: "cannot convert", why: { why: "cannot convert", typed: said ?? typed, because, to: null, candidates, word } };
}
const LONGEST_QUESTION = 80;

/** Anything with a digit, or long enough to name work; the reader decides the rest. */
const mayHoldAReading = (text: string): boolean => /\p{Nd}|[¼½¾⅛⅜⅝⅞]/u.test(text) || /\b\w{3,}\s+\w{3,}/u.test(text);

/** Where intents came from: `source` marks the records, `message` is the message to link to. */
export type Origin = {
  readonly source: string;
  readonly typed: string;
  readonly message: string | null /** records of this source may be there from before */;
  readonly again?: true;
};

/** Logs a whole set, or keeps it as a draft and asks the first question. */
export async function settle(q: Repos, ctx: Ctx, all: readonly Garaged[], intents: readonly Intent[], origin: Origin): Promise<MessageOutcome> {
  const held = heldAgainst(intents, all, todayOf(ctx));
  // What an earlier version of the message left open is asked no more.
  if (origin.again === true && origin.message !== null) await q.drafts.letGoOfMessage(origin.message);
  if (held.every((intent) => intent.gaps.length === 0)) return logged(q, ctx, all, held, origin.source, origin.again ?? false);
  const draft: Draft = {
    id: ctx.newId(),
    owner: ctx.who.member,
    group: ctx.who.group,
    channel: ctx.who.channel,
    message: origin.message,
    typed: origin.typed,
    intents: held,
    state: "open",
    rev: 1,
    at: ctx.now,
  };
  await q.drafts.add(draft);
  return { is: "asked", question: questionOf(draft, all) };
}

/** Saves and says what became more urgent by it. */
export async function logged(q: Repos, ctx: Ctx, all: readonly Garaged[], intents: readonly Intent[], source: string, again: boolean): Promise<MessageOutcome> {
  const first = again ? await nextOf(q, source) : 0;
  // What an earlier version of the message logged gives way to this one.
  const reopened = again ? await withdrawAll(q, ctx, await recordsOf(q, source), "amended") : [];
  const standing = reopened.length === 0 ? all : all.map((g) => ({ ...g, defects: [...g.defects, ...reopened.filter((d) => d.bike === g.bike.id)] }));
  const saved = await save(q, ctx, intents, standing, source, first);
  const touched = standing.filter((g) => allOf(saved).some((record) => record.bike === g.bike.id));
  const rigs = await rigsFor(q, touched, saved.readings);
  const judged = touched.flatMap((g) => asMeasured(saved.readings, g.bike.id).flatMap((taken) => judgedOn(g, taken, rigs.get(g.bike.id) ?? g.rig)));
  const news = touched.flatMap((g) => {
    const after = withMore(
      { ...g, rig: rigs.get(g.bike.id) ?? g.rig },
      {
        odometers: asOdometers(saved.readings, g.bike.id),
        measured: asMeasured(saved.readings, g.bike.id),
        work: saved.work.filter((w) => w.bike === g.bike.id),
      },
    );
    return newsBetween(ctx, g, after);
  });
  const fluids = fluidsPut(saved.work, touched);
  // What must not be in there mends nothing.
  const mending = saved.work.filter(({ bike }) => !fluids.some((each) => each.bike === bike && each.worth === null));
  const next = first + saved.readings.length + saved.work.length + saved.defects.length;
  const verdicts = await noteVerdicts(q, ctx, touched, { judged, readings: saved.readings, work: mending }, source, next);
  const closed = [...saved.closed, ...verdicts.closed];
  return {
    ...{ is: "logged", source, readings: saved.readings, work: saved.work, defects: shownOn(touched, [...saved.defects, ...verdicts.noted]) },
    ...{
      closed: shownOn(touched, closed),
      mayClose: mayClose(touched, { ...saved, work: mending, closed }),
      bikes: touched.map(named),
      news,
      judged,
      fluids,
      withdrawn: [],
    },
  };
}

function judgedOn(g: Garaged, taken: Taken, rig: Rig): readonly JudgedOn[] {
  const judged = judgeTaken(taken, rig);
  return judged === null ? [] : [{ bike: g.bike.id, ...judged, first: !g.measured.some(({ kind }) => kind === judged.kind) }];
}

/** Open defects that work of this kind can mend, and that it did not name: the member says whether it did. */
function mayClose(bikes: readonly Garaged[], saved: Saved): { readonly defect: DefectShown; readonly work: string }[] {
  return saved.work.flatMap((record) => {
    const g = pick(bikes, record.bike);
    const worked = new Set<string>(record.items.filter(({ outcome }) => outcome !== "could not do").map(({ item }) => item));
    const open = g?.defects.filter((defect) => !saved.closed.some(({ id }) => id === defect.id)) ?? [];
    const mended = open.filter((defect) => defectRow(defect.kind)?.mends.some((item) => worked.has(item)) === true);
    return mended.slice(0, 3).flatMap((defect) => shownOn(bikes, [defect]).map((shown) => ({ defect: shown, work: record.id })));
  });
}

/** Where to go on counting the records of a source, withdrawn ones included. */
export const nextOf = async (q: Repos, source: string): Promise<number> =>
  Math.max(await q.readings.nextOrdinal(source), await q.work.nextOrdinal(source), await q.defects.nextOrdinal(source));

/** Defects with what an answer needs of their bikes. */
export const shownOn = (bikes: readonly Garaged[], defects: readonly Defect[]): DefectShown[] =>
  defects.flatMap((defect) => {
    const g = pick(bikes, defect.bike);
    return g === null ? [] : [defectShown(g, defect)];
  });

export const named = (g: Garaged): NamedBike => ({ id: g.bike.id, nickname: g.bike.nickname, unit: g.unit });

const RANK: Record<Status, number> = { "no record": 0, good: 0, soon: 1, due: 2, overdue: 3 };

/** Items worth a word by themselves: coming up, due or overdue, and no habit. */
export const isPressing = (due: Due): boolean => !due.habit && RANK[due.status] > 0;

/** What became more urgent between two states of a bike. Mostly nothing presses after, and what was before need not be worked out. */
function newsBetween(ctx: Ctx, before: Garaged, after: Garaged): News[] {
  const pressing = duesOf(after).filter(isPressing);
  if (pressing.length === 0) return [];
  const was = new Map(duesOf(before).map((due) => [due.item, due.status]));
  return newsOf(
    ctx,
    before,
    pressing.filter((due) => RANK[due.status] > RANK[was.get(due.item) ?? "good"]),
  );
}

/** Items of a bike as news. */
export const newsOf = (ctx: Ctx, g: Garaged, dues: readonly Due[]): News[] =>
  dues.map((due) => ({
    bike: g.bike.id,
    nickname: g.bike.nickname,
    item: due.item,
    called: ctx.itemName(due.item, itemOf(g, due.item)?.called ?? null),
    status: due.status,
  }));

/** The first open question of a draft, with what is needed to ask it. */
export function questionOf(draft: Draft, all: readonly Garaged[]): Question {
  const at = draft.intents.findIndex((intent) => intent.gaps.length > 0);
  const intent = draft.intents[at];
  const gap = intent?.gaps[0];
  if (intent === undefined || gap === undefined) throw new Error("a draft without a question");
  const g = all.find((each) => each.bike.id === intent.bike) ?? null;
  const last = g === null ? null : (strangeAgainst(intent, g) ?? g.track.points.at(-1) ?? null);
  return {
    draft: draft.id,
    rev: draft.rev,
    typed: draft.typed,
    intent,
    at,
    gap,
    options: optionsOf(gap, all),
    last: g === null || last === null ? null : { figure: dialAt(g.track, last.ridden) / TENTHS_OF_MM[g.unit], unit: g.unit, on: last.on },
    nickname: g?.bike.nickname ?? null,
  };
}

function optionsOf(gap: Gap, all: readonly Garaged[]): readonly string[] {
  if (gap.need === "sure" || gap.need === "defect") return [];
  if (gap.need === "bike") return gap.options.map((id) => all.find((g) => g.bike.id === id)?.bike.nickname ?? id);
  if (gap.need === "item") return gap.options.map((key) => all.flatMap(itemsOf).find((item) => item.key === key)?.called ?? key);
  if (gap.need === "level") return gap.options.map((n) => LEVELS[n] ?? String(n));
  return gap.options.map(String);
}

/** A short plain reply to a question: the name of one of its options. Said by itself it answers the one question that it fits; where it fits several, the question is put again. */
async function answeredPlainly(q: Repos, ctx: Ctx, all: readonly Garaged[], { text, answers }: Heard): Promise<MessageOutcome | null> {
  if (text.length > 40) return null;
  const open = (await q.drafts.openOf(ctx.who.member)).filter((draft) => answers === null || isAbout(draft, answers));
  const fitting = open.flatMap((draft) => {
    const question = questionOf(draft, all);
    const chosen = question.options.findIndex(
      (option) => nicknameKey(option) === nicknameKey(text) || synonyms(ctx, question.gap, option).includes(nicknameKey(text)),
    );
    return chosen < 0 ? [] : [{ draft, question, chosen }];
  });
  const last = fitting.at(-1);
  if (last === undefined) return null;
  return fitting.length > 1 ? { is: "asked", question: last.question } : answered(q, ctx, all, last.draft, String(last.chosen));
}

/** Was the question about the message replied to, or asked in it? */
const isAbout = (draft: Draft, { message, subjects }: NonNullable<Heard["answers"]>): boolean =>
  draft.message === message || subjects.some((subject) => subject.split(".")[0] === draft.id);

function synonyms(ctx: Ctx, gap: Gap, option: string): readonly string[] {
  if (gap.need === "unit") return ctx.vocabulary.units[option as keyof typeof ctx.vocabulary.units] ?? [];
  if (gap.need === "place") return ctx.vocabulary.places[option as "front" | "rear" | "intake" | "exhaust"] ?? [];
  if (gap.need === "kind") return ctx.vocabulary.kinds[option as ReadingKind] ?? [];
  if (gap.need === "level") return ctx.vocabulary.measuring.levels[option as Level] ?? [];
  if (gap.need === "item") return ctx.vocabulary.items[option] ?? [];
  return [];
}

/** What a draft's records are logged under. */
export const sourceOf = (draft: Draft): string => draft.message ?? draft.id;

/** The bikes without what an earlier version of the draft's own message logged: the new version is not held against the old. */
export async function withoutOwn(q: Repos, draft: Draft, all: readonly Garaged[]): Promise<readonly Garaged[]> {
  if (draft.message === null) return all;
  const [readings, work] = [await q.readings.ofMessage(draft.message), await q.work.ofMessage(draft.message)];
  return all.map((g) => without(g, readings, work));
}

/** Fills the first gap of a draft with the option chosen, and logs the set or asks on. */
export async function answered(q: Repos, ctx: Ctx, whole: readonly Garaged[], draft: Draft, choice: string): Promise<MessageOutcome> {
  const all = await withoutOwn(q, draft, whole);
  const { at, gap } = questionOf(draft, all);
  const filled = draft.intents.map((intent, n) => (n === at || sharesGap(intent, gap) ? fill(intent, gap, choice, all) : intent));
  // A bike sold or retired since the question was asked: nothing more is logged for it.
  if (filled.some((intent) => intent.bike !== null && !all.some((g) => g.bike.id === intent.bike))) {
    await q.drafts.change({ ...draft, state: "let go", rev: draft.rev + 1 });
    return { is: "bike gone" };
  }
  const held = heldAgainst(filled, all, todayOf(ctx));
  const open = held.some((intent) => intent.gaps.length > 0);
  const next: Draft = { ...draft, intents: held, rev: draft.rev + 1, state: open ? "open" : "logged" };
  await q.drafts.change(next);
  return open ? { is: "asked", question: questionOf(next, all) } : logged(q, ctx, all, held, sourceOf(draft), true);
}

/** One answer fills the same gap of every part of the message: the bike, or the unit of both pressures. */
function sharesGap(intent: Intent, gap: Gap): boolean {
  const first = intent.gaps[0];
  if (first === undefined || first.need !== gap.need) return false;
  if (gap.need === "bike" && first.need === "bike") return first.named === gap.named;
  if (gap.need === "sure" && first.need === "sure") return gap.because === "warm" && first.because === "warm";
  return gap.need === "unit" && first.need === "unit" && first.options.join() === gap.options.join();
}

function fill(intent: Intent, gap: Gap, choice: string, all: readonly Garaged[]): Intent {
  const rest = intent.gaps.slice(1);
  const n = Number(choice);
  switch (gap.need) {
    case "bike": {
      const bike = gap.options[n] ?? null;
      const unit = all.find((g) => g.bike.id === bike)?.unit ?? null;
      // A unit typed for a dial that counts in another is asked about, as it would have been had the bike been named.
      const typed = intent.do === "log reading" ? (intent.kind === "odometer" ? intent.unit : null) : (intent.odometer?.unit ?? null);
      const other: readonly Gap[] = typed !== null && unit !== null && typed !== unit ? [{ need: "unit", options: [typed, unit] }] : [];
      if (intent.do === "log reading") return { ...intent, bike, unit: intent.unit ?? (intent.kind === "odometer" ? unit : null), gaps: [...rest, ...other] };
      return { ...intent, bike, gaps: [...rest, ...other] };
    }
    case "kind": {
      const kind = gap.options[n];
      if (intent.do !== "log reading" || kind === undefined) return intent;
      const { ask } = kindRow(kind);
      return { ...intent, kind, gaps: [...(intent.place === null && ask.length > 0 ? [{ need: "place" as const, options: ask }] : []), ...rest] };
    }
    case "level":
      return intent.do === "log reading" ? { ...intent, value: gap.options[n] ?? intent.value, gaps: rest } : intent;
    case "place":
      return intent.do === "log reading" ? { ...intent, place: gap.options[n] ?? null, gaps: rest } : intent;
    case "defect":
      return { ...intent, gaps: rest };
    case "unit": {
      const unit = gap.options[n] ?? null;
      if (intent.do === "log reading") return { ...intent, unit, gaps: rest };
      return { ...intent, odometer: intent.odometer === null ? null : { ...intent.odometer, unit: unit as DistanceUnit }, gaps: rest };
    }
    case "number": {
      const value = gap.options[n] ?? 0;
      if (intent.do === "log reading") return { ...intent, value, gaps: rest };
      return { ...intent, odometer: intent.odometer === null ? null : { ...intent.odometer, value }, gaps: rest };
    }
    case "item": {
      const item = gap.options[n];
      return intent.do === "record work" && item !== undefined ? { ...intent, items: [item], gaps: rest } : intent;
    }
    case "date": {
      const on = gap.options[n];
      if (on === undefined) return intent;
      return intent.do !== "record work" ? { ...intent, on, gaps: rest } : { ...intent, on: { from: on, to: on, typed: gap.typed }, gaps: rest };
    }
    case "sure":
      if (choice === "no figure" && intent.do !== "log reading") return { ...intent, odometer: null, gaps: rest };
      // Read cold after all: the figure itself is still held against what a bike can show.
      return gap.because === "warm" || gap.because === "trip" ? { ...intent, gaps: rest } : { ...intent, sure: true, gaps: rest };
  }
}
