// A set of intents: held against history, and logged whole or kept as a draft that asks.

import type { Defect } from "../core/defect.ts";
import type { ItemKey } from "../core/ids.ts";
import { lackingIn } from "../core/judgement/verdict.ts";
import type { Intent } from "../core/reading/intent.ts";
import type { Due, Outcome, Status } from "../core/schedule/facts.ts";
import type { Taken } from "../core/schedule/measured.ts";
import { isLeft, mends } from "../core/schedule/mending.ts";
import type { Draft } from "../store/drafts.ts";
import type { ReadingRecord } from "../store/readings.ts";
import type { Repos } from "../store/store.ts";
import type { WorkRecord } from "../store/work.ts";
import { defectRow } from "../trade/defects.ts";
import { batteriesPut } from "./battery-put.ts";
import { type Counted, countedFor } from "./checked.ts";
import { type Ctx, languagesOf, todayOf } from "./context.ts";
import { allOf, recordsOf, withdrawAll } from "./corrections.ts";
import { type DefectShown, defectShown } from "./defect-shown.ts";
import { agePlanOf, ofPartsOn, ofTheSetOn, type TyreAged, tyresAged } from "./fitted.ts";
import { fluidsPut, fluidsUnknown, namesWrongInNote } from "./fluids.ts";
import { type FuelShown, fuelOf } from "./fuel.ts";
import { duesOf, type Garaged, itemOf, pick, withMore } from "./garage.ts";
import { renews } from "./grown.ts";
import { judgeTaken } from "./judge.ts";
import type { JudgedOn, Rig } from "./judged.ts";
import { leaksOn } from "./leaks.ts";
import { limitsSaid } from "./limits-said.ts";
import type { MessageOutcome, NamedBike, News } from "./message-outcome.ts";
import { askedOf } from "./question.ts";
import { rigsFor } from "./rig.ts";
import { asMeasured, asOdometers, heldAgainst, type Saved, save } from "./settle.ts";
import { judgedAnew } from "./square-verdicts.ts";
import { tyresBuilt } from "./tyres-built.ts";
import { noteMixed, noteVerdicts } from "./verdict-defects.ts";

/** Where intents came from: `source` marks the records, `message` is the message to link to. */
export type Origin = {
  readonly source: string;
  readonly typed: string;
  readonly message: string | null /** records of this source may be there from before */;
  readonly again?: true;
  /** What else it says of a bike and nobody understood. */
  readonly unread?: readonly string[];
};

/** Logs a whole set, or keeps it as a draft and asks the first question. */
export async function settle(q: Repos, ctx: Ctx, all: readonly Garaged[], intents: readonly Intent[], origin: Origin): Promise<MessageOutcome> {
  const outcome = await settled(q, ctx, all, intents, origin);
  const { unread = [] } = origin;
  if (unread.length === 0 || (outcome.is !== "logged" && outcome.is !== "asked")) return outcome;
  const said = outcome.is === "logged" ? limitsSaid(ctx, outcome.readings, unread) : [];
  const limits = said.map(({ bike, key, value }) => ({ bike, key, value }));
  // What one press saves was understood.
  const left = unread.filter((text) => !said.some(({ typed }) => typed === text));
  return { ...outcome, ...(left.length === 0 ? {} : { unread: left }), ...(limits.length === 0 ? {} : { limits }) };
}

async function settled(q: Repos, ctx: Ctx, all: readonly Garaged[], intents: readonly Intent[], origin: Origin): Promise<MessageOutcome> {
  const earlier = origin.again === true ? await q.readings.ofMessage(origin.source) : [];
  const held = heldAgainst(intents, all, todayOf(ctx), earlier);
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
  return askedOf(q, draft, all);
}

/** Saves and says what became more urgent by it. */
export async function logged(q: Repos, ctx: Ctx, all: readonly Garaged[], intents: readonly Intent[], source: string, again: boolean): Promise<MessageOutcome> {
  const first = again ? await nextOf(q, source) : 0;
  // What an earlier version of the message logged gives way to this one.
  const before = again ? await recordsOf(q, source) : null;
  const reopened = before === null ? [] : await withdrawAll(q, ctx, before, "amended");
  const open = (g: Garaged): readonly Defect[] => [
    ...g.defects.filter(({ id }) => before?.defects.some((gone) => gone.id === id) !== true),
    ...reopened.filter((d) => d.bike === g.bike.id),
  ];
  const bikes = before === null ? all : all.map((g) => ({ ...g, defects: open(g) }));
  const saved = await save(q, ctx, intents, bikes, source, first);
  const touched = bikes.filter((g) => allOf(saved).some((record) => record.bike === g.bike.id));
  const rigs = await rigsFor(q, touched, saved.readings);
  const afters = touched.map((g) =>
    withMore(
      { ...g, rig: rigs.get(g.bike.id) ?? g.rig },
      {
        odometers: asOdometers(saved.readings, g.bike.id),
        measured: asMeasured(saved.readings, g.bike.id),
        work: saved.work.filter((w) => w.bike === g.bike.id),
      },
    ),
  );
  const taken = touched.map((g, n) => onAndOff(standing(asMeasured(saved.readings, g.bike.id), saved.work), afters[n] ?? g));
  const judged = touched.flatMap((g, n) =>
    (taken[n]?.on ?? []).flatMap((each) => judgedOn(g, each, { ...(rigs.get(g.bike.id) ?? g.rig), otherBattery: afters[n]?.rig.otherBattery ?? null })),
  );
  const news = touched.flatMap((g, n) => newsBetween(ctx, g, afters[n] ?? g));
  const fluids = fluidsPut(saved.work, touched, languagesOf(ctx));
  const unknownFluids = fluidsUnknown(saved.work, touched, languagesOf(ctx));
  // What must not be in there mends nothing, nor what nobody knows.
  const wrong = new Set([...fluids.filter(({ worth }) => worth === null), ...unknownFluids].map((each) => each.work));
  const mending = saved.work.filter(({ id }) => !wrong.has(id));
  const next = first + saved.readings.length + saved.work.length + saved.defects.length;
  // What the words closed already stands open no more, whatever else would close it.
  const still = touched.map((g) => ({ ...g, defects: [...openBut(g, saved.closed), ...saved.defects.filter(({ bike }) => bike === g.bike.id)] }));
  const verdicts = await noteVerdicts(
    q,
    ctx,
    still,
    { judged, readings: saved.readings, work: mending.filter((record) => !namesWrongInNote(record, touched, languagesOf(ctx))) },
    source,
    next,
  );
  const closed = [...saved.closed, ...verdicts.closed];
  const mixed = await noteMixed(q, ctx, still, fluids, saved.work, source, next + verdicts.noted.length);
  // What was read before it came home is held now against the law of that place.
  const home = touched.flatMap((g, n) => {
    const noted = [...saved.defects, ...verdicts.noted, ...mixed].filter(({ bike }) => bike === g.bike.id);
    return g.comesHome === true && g.rig.place !== null ? [{ ...(afters[n] ?? g), defects: [...openBut(g, closed), ...noted] }] : [];
  });
  const isEarlier = ({ kind, id }: { readonly kind: string; readonly id: string }): boolean =>
    kind === "tread" && !saved.readings.some((reading) => reading.id === id);
  const anew = home.length === 0 ? [] : (await judgedAnew(q, ctx, home, isEarlier, source, next + verdicts.noted.length + mixed.length)).noted;
  const fuel: FuelShown[] = [];
  const leaks: NonNullable<Extract<MessageOutcome, { is: "logged" }>["leaks"]>[number][] = [];
  for (const [n, g] of touched.entries()) leaks.push(...(await leaksRead(q, afters[n] ?? g, saved.readings)));
  for (const g of touched) fuel.push(...(await fuelOf(q, g, saved.readings)));
  const built = await tyresBuilt(q, ctx, afters, saved.work);
  return {
    ...{
      is: "logged",
      source,
      readings: saved.readings,
      work: saved.work,
      defects: shownOn(touched, [...saved.defects, ...verdicts.noted, ...mixed, ...anew]),
    },
    ...{
      closed: shownOn(touched, closed),
      mayClose: mayClose(ctx, touched, { ...saved, work: mending, closed }),
      bikes: touched.map(named),
      home: touched.filter(({ comesHome }) => comesHome).map(({ bike }) => bike.nickname),
      news,
      judged,
      counted: touched.flatMap((g, n) => countedOn(ctx, g, afters[n] ?? g, judged, saved)),
      aged: touched.flatMap((g) => agedBy(saved, g)),
      ofPartsOff: taken.flatMap(({ off }) => off.map(({ id, kind, place, value, unit, typed }) => ({ id, kind, place, value, unit, typed }))),
      fluids,
      ...(unknownFluids.length === 0 ? {} : { unknownFluids }),
      batteries: batteriesPut(saved.work, touched),
      ...(built.length === 0 ? {} : { built }),
      fuel,
      ...(verdicts.staying.length === 0 ? {} : { staying: shownOn(touched, verdicts.staying) }),
      ...(leaks.length === 0 ? {} : { leaks }),
      withdrawn: [],
    },
  };
}

const openBut = ({ defects }: Garaged, closed: readonly Defect[]): readonly Defect[] => defects.filter(({ id }) => !closed.some((each) => each.id === id));

/** What the readings of a bike count for, where any was judged. */
function countedOn(ctx: Ctx, before: Garaged, after: Garaged, judged: readonly JudgedOn[], { work }: Saved): readonly Counted[] {
  const those = judged.filter(({ bike }) => bike === before.bike.id);
  if (those.length === 0) return [];
  const recorded = new Set(work.filter(({ bike }) => bike === before.bike.id).flatMap(({ items }) => items.map(({ item }) => item)));
  return countedFor(ctx, after, duesOf(before), those, recorded);
}

/** The tyres of which date codes were said. Whoever read a code off a tyre wants to know what it says; of a new one that is not old there is nothing to say. */
export function agedBy({ readings, work }: Pick<Saved, "readings" | "work">, g: Garaged): readonly TyreAged[] {
  const measured = asMeasured(readings, g.bike.id);
  const of = { work: work.filter(({ bike }) => bike === g.bike.id), measured, plan: agePlanOf(g) };
  return tyresAged(of, g.today).filter(({ age, reading }) => age !== "within" || reading !== null);
}

/** What was found is judged no more where what was left of it is said too, nor what came off for something new. */
const standing = (taken: readonly Taken[], work: readonly WorkRecord[]): readonly Taken[] =>
  taken.filter(
    ({ kind, place, detail }) =>
      detail?.state !== "found" ||
      !(
        taken.some((each) => each.detail?.state === "left" && each.kind === kind && each.place === place) ||
        work.some(({ items }) => items.some(({ item, outcome }) => outcome === "replaced" && renews({ kind, place }).includes(item)))
      ),
  );

/** Of the tyres whose cold pressure was read just now, those that leak. */
async function leaksRead(q: Repos, g: Garaged, readings: readonly ReadingRecord[]) {
  const read = readings.filter(({ bike, kind }) => bike === g.bike.id && kind === "cold pressure");
  if (read.length === 0) return [];
  return (await leaksOn(q, g)).flatMap((each) => {
    const last = read.findLast(({ place }) => place === each.place);
    return each.leak.is === "sound" || last === undefined ? [] : [{ ...each, bike: g.bike.id, unit: last.unit }];
  });
}

/** What was read of parts that are on, and what of parts that came off since: what one of those had left says nothing of the one that is on. */
function onAndOff(taken: readonly Taken[], { facts, work }: Garaged): { readonly on: readonly Taken[]; readonly off: readonly Taken[] } {
  const on = ofTheSetOn(ofPartsOn(taken, work, facts.refitted), facts.fittings);
  return { on, off: taken.filter((each) => !on.includes(each)) };
}

function judgedOn(g: Garaged, taken: Taken, rig: Rig): readonly JudgedOn[] {
  const judged = judgeTaken(taken, rig);
  if (judged === null) return [];
  const { kind, judgement } = judged;
  // What is lacking is asked for once: with the first reading, or with the first that cannot be judged where others could; a figure of the manual, once a day.
  const asked = g.judged.some(({ kind: of, on, judgement: is }) => {
    const [lacks] = lackingIn(is);
    return of === kind && lacks !== undefined && (lacks !== "limit" || on === judged.on);
  });
  return [{ bike: g.bike.id, ...judged, first: !g.measured.some((each) => each.kind === kind) || (lackingIn(judgement).length > 0 && !asked) }];
}

/** Open defects that work of this kind can mend, and that it did not name: the member says whether it did. */
function mayClose(ctx: Ctx, bikes: readonly Garaged[], saved: Saved): { readonly defect: DefectShown; readonly work: string }[] {
  const { front, rear } = ctx.vocabulary.places;
  // "Front tyre plugged" is not mended by a new rear one.
  const isSameEnd = (item: string, end: "front" | "rear" | undefined, { words }: Defect): boolean => {
    const said = words.toLowerCase().split(/[^\p{L}]+/u);
    const [isFront, isRear] = [front, rear].map((list) => said.some((word) => list.includes(word)));
    const other = isFront === true ? "rear" : "front";
    return isFront === isRear || (end !== other && !item.startsWith(`${other}-`));
  };
  return saved.work.flatMap((record) => {
    const g = pick(bikes, record.bike);
    // A top-up leaves in what should have been changed, so it is not even asked about.
    const mayMend = (item: ItemKey, outcome: Outcome): boolean =>
      outcome === "topped up" ? mends(outcome, (g === null ? null : itemOf(g, item))?.action ?? null) : !isLeft(outcome);
    const worked = new Set<string>(record.items.filter(({ item, outcome }) => mayMend(item, outcome)).map(({ item }) => item));
    const open = g?.defects.filter((defect) => defect.on <= record.on.to && !saved.closed.some(({ id }) => id === defect.id)) ?? [];
    const mended = open.filter((defect) => {
      const row = defectRow(defect.kind);
      return [...(row?.mends ?? []), ...(row?.mayMend ?? [])].some((item) => worked.has(item) && isSameEnd(item, record.detail.end, defect));
    });
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
