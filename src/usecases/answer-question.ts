// An open question's answer, by press or by plain reply: fills the gap, and logs the set or asks on.

import { nicknameKey } from "../core/bike.ts";
import { type DistanceUnit, dialOf } from "../core/quantity/distance.ts";
import type { Gap, Intent, LogReading, RecordWork } from "../core/reading/intent.ts";
import { kindRow, type Level, type ReadingKind } from "../core/reading/kinds.ts";
import type { Vocabulary } from "../core/reading/vocabulary.ts";
import type { Draft } from "../store/drafts.ts";
import type { Repos } from "../store/store.ts";
import { NOT_ITEMISED } from "./bill.ts";
import { learnt } from "./by-names.ts";
import { type Ctx, todayOf } from "./context.ts";
import { type Garaged, without } from "./garage.ts";
import { logged } from "./log-set.ts";
import type { Heard, MessageOutcome } from "./message-outcome.ts";
import { askedOf, questionOf } from "./question.ts";
import { isServiceBehind, servicesNamed } from "./services.ts";
import { heldAgainst } from "./settle.ts";
import { withOwnTicks } from "./ticks.ts";
import { whenAtDial } from "./when-at.ts";

/** A short plain reply to a question: the name of one of its options. Said by itself it answers the one question that it fits; where it fits several, the question is put again. */
export async function answeredPlainly(q: Repos, ctx: Ctx, all: readonly Garaged[], { text, answers }: Heard): Promise<MessageOutcome | null> {
  if (text.length > 40) return null;
  const open = (await q.drafts.openOf(ctx.who.member)).filter((draft) => answers === null || isAbout(draft, answers));
  const fitting = open.flatMap((draft) => {
    const question = questionOf(draft, all);
    const chosen = question.options.findIndex(
      (option) => nicknameKey(option) === nicknameKey(text) || synonyms(ctx, question.gap, option).includes(nicknameKey(text)),
    );
    if (chosen < 0 && question.both === true && saysBoth(ctx, text)) return [{ draft, question, chosen: BOTH }];
    if (chosen < 0 && saysOne(ctx, question.gap, text)) return [{ draft, question, chosen: ONE }];
    return chosen < 0 ? [] : [{ draft, question, chosen: String(chosen) }];
  });
  const last = fitting.at(-1);
  if (last === undefined) return null;
  return fitting.length > 1 ? { is: "asked", question: last.question, several: fitting.length } : answered(q, ctx, all, last.draft, last.chosen);
}

/** What answers that it was the item of either end, and that it was the one end that was named and no more. */
export const BOTH = "both";
export const ONE = "one";
/** What stands with the record of one end, which is of no line of the plan and restarts none. */
const ONE_END = { front: "only the front one", rear: "only the rear one" } as const;
const saysOne = (ctx: Ctx, gap: Gap, text: string): boolean => {
  const end = gap.need === "item" ? gap.end : undefined;
  return end !== undefined && [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].some(({ places }) => places[end].includes(nicknameKey(text)));
};
const saysBoth = (ctx: Ctx, text: string): boolean =>
  [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].some(({ places }) => places.both.includes(nicknameKey(text)));

/** Was the question about the message replied to, or asked in it? */
const isAbout = (draft: Draft, { message, subjects }: NonNullable<Heard["answers"]>): boolean =>
  draft.message === message || subjects.some((subject) => subject.split(".")[0] === draft.id);

/** What may be typed for an option, in any language that messages are read in. */
const synonyms = (ctx: Ctx, gap: Gap, option: string): readonly string[] =>
  [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)].flatMap((vocabulary) => synonymsIn(vocabulary, gap, option));

function synonymsIn({ units, places, kinds, measuring, items }: Vocabulary, gap: Gap, option: string): readonly string[] {
  if (gap.need === "unit") return units[option as keyof typeof units] ?? [];
  if (gap.need === "place") return places[option as "front" | "rear" | "intake" | "exhaust"] ?? [];
  if (gap.need === "kind") return kinds[option as ReadingKind] ?? [];
  if (gap.need === "level") return measuring.levels[option as Level] ?? [];
  return gap.need === "item" ? (items[option] ?? []) : [];
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
export async function answered(q: Repos, ctx: Ctx, whole: readonly Garaged[], asked: Draft, choice: string): Promise<MessageOutcome> {
  const all = await withoutOwn(q, asked, whole);
  const draft: Draft = { ...asked, intents: await withOwnTicks(q, all, asked.intents) };
  const { at, gap } = questionOf(draft, all);
  const filled = draft.intents.map((intent, n) => {
    if (n === at || sharesGap(intent, gap, draft.intents)) return fill(intent, gap, choice, all);
    return isOtherEnd(draft.intents[at], intent, gap, draft.intents) ? fill(intent, gap, choice === "0" ? "1" : "0", all) : intent;
  });
  // A bike sold or retired since the question was asked: nothing more is logged for it.
  if (filled.some((intent) => intent.bike !== null && !all.some((g) => g.bike.id === intent.bike))) {
    await q.drafts.change({ ...draft, state: "let go", rev: draft.rev + 1 });
    return { is: "bike gone" };
  }
  const held = heldAgainst(filled, all, todayOf(ctx), draft.message === null ? [] : await q.readings.ofMessage(draft.message));
  const open = held.some((intent) => intent.gaps.length > 0);
  const next: Draft = { ...draft, intents: held, rev: draft.rev + 1, state: open ? "open" : "logged" };
  await q.drafts.change(next);
  const word = gap.need === "bike" ? await learnt(q, ctx, all, gap, gap.options[Number(choice)] ?? null) : null;
  const outcome: MessageOutcome = open ? await askedOf(q, next, all) : await logged(q, ctx, all, held, sourceOf(draft), true);
  return word !== null && (outcome.is === "asked" || outcome.is === "logged") ? { ...outcome, learnt: word } : outcome;
}

/** One answer fills the same gap of every part of the message: the bike, or the unit of both pressures. */
function sharesGap(intent: Intent, gap: Gap, all: readonly Intent[]): boolean {
  const first = intent.gaps[0];
  if (first === undefined || first.need !== gap.need) return false;
  if (gap.need === "bike" && first.need === "bike") return first.named === gap.named;
  if (gap.need === "place") return isPair(intent, all);
  if (gap.need === "sure" && first.need === "sure") return gap.because === "warm" && first.because === "warm";
  // "14,300 yesterday, front 33 rear 36": one day for both.
  if (gap.need === "date" && first.need === "date") return gap.typed === first.typed && gap.options.join() === first.options.join();
  return gap.need === "unit" && first.need === "unit" && first.options.join() === gap.options.join();
}

/** "33/36": of two values of a kind, each for one of two ends, the answer for one is the answer for both. */
function isOtherEnd(asked: Intent | undefined, intent: Intent, gap: Gap, all: readonly Intent[]): boolean {
  const [first] = intent.gaps;
  if (asked?.do !== "log reading" || intent.do !== "log reading" || gap.need !== "place" || first?.need !== "place" || gap.options.length !== 2) return false;
  const alike = all.filter((each) => each.do === "log reading" && each.kind === asked.kind && each.bike === asked.bike && each.on === asked.on);
  return alike.length === 2 && intent.kind === asked.kind && first.options.join() === gap.options.join();
}

/** One value found and one left, of one kind on one bike: what was left is where it was found. */
function isPair(intent: Intent, all: readonly Intent[]): boolean {
  if (intent.do !== "log reading") return false;
  const those = all.filter((each): each is LogReading => each.do === "log reading" && each.kind === intent.kind && each.bike === intent.bike);
  return those.length === 2 && new Set(those.map(({ detail }) => detail?.state ?? null)).size === 2 && those.every(({ detail }) => detail?.state !== undefined);
}

/** One end was done: what was said of it, and no item of the plan. */
function onlyOne(intent: RecordWork, end: "front" | "rear", gaps: readonly Gap[]): RecordWork {
  const note = [intent.note, ONE_END[end]].filter((each) => each !== undefined).join("; ");
  return { ...intent, items: [], note, gaps };
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
      // "Rear tyre 1200": as the dial's figure it has no place, and the unit of the dial.
      if (kind === "odometer")
        return {
          ...intent,
          kind,
          place: null,
          unit: all.find((g) => g.bike.id === intent.bike)?.unit ?? null,
          gaps: rest.filter(({ need }) => need !== "place"),
        };
      const asks = intent.place === null && ask.length > 0 && !rest.some(({ need }) => need === "place");
      return { ...intent, kind, gaps: [...(asks ? [{ need: "place" as const, options: ask }] : []), ...rest] };
    }
    case "level":
      return intent.do === "log reading" ? { ...intent, value: gap.options[n] ?? intent.value, gaps: rest } : intent;
    case "place":
      return intent.do === "log reading" ? { ...intent, place: gap.options[n] ?? null, gaps: rest } : intent;
    case "found": {
      if (intent.do !== "record work") return intent;
      // What was renewed is renewed, whatever else was found.
      if (gap.options[n] === "found wrong") return { ...intent, outcome: intent.outcome === "replaced" ? "replaced" : "found wrong", gaps: rest };
      const { fault: _fault, ...noted } = intent;
      return { ...noted, gaps: rest };
    }
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
      if (choice === BOTH && intent.do === "record work") return { ...intent, items: [...gap.options], gaps: rest };
      if (choice === ONE && gap.end !== undefined && intent.do === "record work") return onlyOne(intent, gap.end, rest);
      const item = gap.options[n];
      return intent.do === "record work" && item !== undefined ? { ...intent, items: [item], gaps: rest } : intent;
    }
    case "service": {
      const g = all.find((each) => each.bike.id === intent.bike);
      if (intent.do !== "record work" || g === undefined) return intent;
      const service = servicesNamed(g, gap, intent.odometer)[n];
      if (service === undefined) return intent;
      // One that lies behind, of which nothing says when: it was not done today.
      const isUndated = gap.figure === null && intent.odometer === null && intent.on.typed === "" && isServiceBehind(g, service);
      const when: readonly Gap[] = isUndated ? [{ need: "date", options: [], typed: intent.words }] : [];
      // Of a shop's bill nothing more is known than that it was this service.
      return { ...intent, items: service.items, gaps: [...when, ...rest], ...(intent.detail?.by == null ? {} : { note: NOT_ITEMISED }) };
    }
    case "date": {
      const on = gap.options[n];
      if (on === undefined) return intent;
      return intent.do !== "record work" ? { ...intent, on, gaps: rest } : { ...intent, on: { from: on, to: on, typed: gap.typed }, gaps: rest };
    }
    case "sure":
      if (choice === "no figure" && intent.do !== "log reading") return { ...intent, odometer: null, gaps: rest };
      if (choice === "back then" && intent.do === "record work" && intent.odometer !== null) {
        const g = all.find((each) => each.bike.id === intent.bike);
        const on = g === undefined ? null : whenAtDial(g, dialOf(intent.odometer.value, intent.odometer.unit ?? g.unit), intent.on.typed);
        return on === null ? intent : { ...intent, on, gaps: rest };
      }
      // Read cold after all: the figure itself is still held against what a bike can show.
      return gap.because === "warm" || gap.because === "trip" ? { ...intent, gaps: rest } : { ...intent, sure: true, gaps: rest };
  }
}
