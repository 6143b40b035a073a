// Entering a spec, and taking one back. A bike has one entry a key and load; another takes its place and the one before stays on record.

import { forceIn } from "../core/belt/force.ts";
import { shareRange, shareTyped } from "../core/chain/elongation.ts";
import { withoutPitches } from "../core/chain/pitches.ts";
import { standIn } from "../core/chain/stand.ts";
import type { BikeId } from "../core/ids.ts";
import { type Dimension, dimensionOf, fromCanonical, toCanonical, type UnitId } from "../core/quantity/units.ts";
import type { Refusal } from "../core/refusal.ts";
import type { SpecFigure, SpecSource, SpecUse } from "../core/spec/spec.ts";
import { underIn, withoutConditions } from "../core/spec/under.ts";
import { measureTyped, readSpecFigure, readSpecSource, splitSpec } from "../message/read-spec.ts";
import type { SpecRecord } from "../store/specs.ts";
import { Conflict, type Repos } from "../store/store.ts";
import { judgedRow } from "../trade/judged.ts";
import { unknownClass } from "../trade/spec-classes.ts";
import { isOtherEnd, isSpecKey, SPEC_KEY_NAMES, SPEC_KEYS, type SpecKey } from "../trade/spec-keys.ts";
import { TREAD_LAW, type TreadLaw } from "../trade/tread-law.ts";
import { keepMember } from "./add-bike.ts";
import type { Ctx } from "./context.ts";
import type { DefectShown } from "./defect-shown.ts";
import { type Garaged, pick } from "./garage.ts";
import type { Judged } from "./judged.ts";
import { shownOn } from "./log-set.ts";
import { noneLeft, ownGarage } from "./own-garage.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { rigsOf } from "./rig.ts";
import { type GroupShown, setUpGroup, TREAD_PLACES } from "./settings.ts";
import { touch } from "./settle.ts";
import { answerOf, keysMeant, type SpecAnswer } from "./spec-ask.ts";
import { isTreadLimit } from "./specs.ts";
import { judgedAnew } from "./square-verdicts.ts";
import { overruled, type TreadOverruled } from "./tread-limit.ts";
import { whichBike } from "./which-bike.ts";

/** One entry that was saved, to take back. */
export type SavedEntry = { readonly spec: string; readonly rev: number; readonly key: SpecKey };
/** What was saved: the answer as it now stands, and the entries to take back. `also`: the words that stood behind the figure. */
export type SpecSaved = SavedEntry & {
  readonly also: SavedEntry | null;
  readonly answer: SpecAnswer;
  /** What stands read of the bike and is judged by it. */
  readonly judged: readonly Judged[];
  /** What must not be ridden on by that, noted. */
  readonly defects: readonly DefectShown[];
  /** What was noted by the figure that stood before, and no figure speaks for any more. */
  readonly lapsed: readonly DefectShown[];
  /** What was noted before, and what was read since is right by it. */
  readonly closed: readonly DefectShown[];
  /** A tread limit that does not count, since more is asked for. */
  readonly overruled?: TreadOverruled;
};
type Entry = { readonly key: SpecKey; readonly holds: SpecRecord["holds"]; readonly typed: string };

const LONGEST_WORDS = 120;

/** `source` as typed: "workshop manual, 2019 edition, p. 142". */
export type SpecInput = { readonly what: string; readonly value: string; readonly source?: string; readonly bike?: string };

export async function enterSpec(ctx: Ctx, input: SpecInput): Promise<Result<SpecSaved>> {
  return writing(ctx, async (q, all) => {
    const which = whichBike(all, input.bike);
    if (which.is === "refused") return which;
    const meant = keysMeant(ctx, which.value, input.what);
    if (meant.is === "refused") return meant;
    const { keys, own, use } = meant.value;
    const read = keys.map((key) => entriesOf(ctx, key, input.value));
    const fitting = read.flatMap((each) => (each.is === "done" ? [each.value] : []));
    // Anything can be words, so a figure that fits goes before them: "oil 3.2 L" is a fill, "plug QX-8" the plug, "coolant 50 %" its strength; and so does one that is a slip.
    const shares = fitting.filter(([first]) => first !== undefined && isShare(first));
    const figures = shares.length > 0 ? shares : fitting.filter(([first]) => first?.holds.is === "figure");
    const slip = read.find((each) => each.is === "refused" && (each.why.why === "spec out of range" || each.why.why === "wrong end"));
    if (figures.length === 0 && slip?.is === "refused") return slip;
    const able = figures.length > 0 ? figures : fitting;
    const only = able.length === 1 ? able[0] : able.find(([first]) => first?.key === own);
    const [first] = read;
    // Where nothing takes it, what is the matter with the figure says more than the names.
    const nonsense = NONSENSE.map((why) => read.find((each) => each.is === "refused" && isNonsense(each.why, why))).find((each) => each !== undefined);
    if (only === undefined && able.length === 0 && nonsense?.is === "refused") return nonsense;
    if (only === undefined)
      return first?.is === "refused" && read.length === 1
        ? first
        : refused({ why: "which spec", typed: input.what, value: input.value, keys: able.length > 0 ? able.flatMap(([each]) => each?.key ?? []) : keys });
    return save(q, ctx, which.value, only, use, readSpecSource(input.source ?? ""));
  });
}

/** Refusals that tell of the figure itself, the plainest first. */
const NONSENSE = ["less than none", "volts at rest", "spec in words"] as const;
const isNonsense = (refusal: Refusal, is: (typeof NONSENSE)[number]): boolean => refusal.why === is || (refusal.why === "not a spec" && refusal.because === is);

/** From a form, where each part has a field of its own. */
export async function enterSpecParts(
  ctx: Ctx,
  input: {
    readonly bike: BikeId;
    readonly key: SpecKey;
    readonly use: SpecUse | null;
    readonly value: string;
    readonly manual: string;
    readonly edition: string;
    readonly page: string;
  },
): Promise<Result<SpecSaved>> {
  return writing(ctx, async (q, all) => {
    const g = pick(all, input.bike);
    if (g === null) return refused({ why: "not yours" });
    const entries = entriesOf(ctx, input.key, input.value);
    if (entries.is === "refused") return entries;
    const [manual, edition, page] = [input.manual, input.edition, input.page].map((each) => each.trim());
    const source = manual === "" && page === "" ? null : { manual: manual || "manual", edition: edition || null, page: page || null };
    return save(q, ctx, g, entries.value, input.use, source);
  });
}

/** Whose tread law holds, pressed where it was not known: for the group by whoever runs it, else as the limit of both ends of the bike. @param place a place of the table, else by the bars */
export async function enterTreadLaw(ctx: Ctx, input: { readonly bike: BikeId; readonly place: string }): Promise<Result<SpecSaved | GroupShown>> {
  const place = TREAD_PLACES.find((each) => each === input.place);
  const home = await ctx.store.read(async (q) => pick(await ownGarage(q, ctx), input.bike)?.bike.homeGroup ?? null);
  if (place !== undefined && home !== null && (await ctx.mayManage(home))) return setUpGroup(ctx, home, { place });
  return writing(ctx, async (q, all) => {
    const g = pick(all, input.bike);
    if (g === null) return refused({ why: "not yours" });
    const law = place === undefined ? null : (TREAD_LAW[place] as TreadLaw);
    const bars = judgedRow("tread").usual;
    const least = law?.millimetres ?? bars?.min ?? 0;
    const source = { manual: law === null ? "the moulded bars" : `${place}, ${law.source}`, edition: null, page: null };
    const typed = `${least.toFixed(1)} mm`;
    const ends = (["front tread limit", "rear tread limit"] as const).map((key) => entriesOf(ctx, key, typed));
    return save(
      q,
      ctx,
      g,
      ends.flatMap((each) => (each.is === "done" ? each.value : [])),
      null,
      source,
    );
  });
}

/** Takes an entry back: what it replaced stands again, else nothing does. */
export async function undoSpec(ctx: Ctx, input: { readonly spec: string; readonly rev: number }): Promise<Result<SpecSaved>> {
  return writing(ctx, async (q, all) => {
    const record = await q.specs.byId(input.spec);
    if (record === null) return refused({ why: "gone" });
    const g = pick(all, record.bike);
    if (g === null || record.by !== ctx.who.member) return refused({ why: "not yours" });
    if (record.rev !== input.rev || record.state === "withdrawn") return refused({ why: "already done" });
    const before = (await q.specs.history(record.id)).find(({ rev }) => rev === record.rev - 1);
    const stands = before === undefined || before.state === "withdrawn" ? { ...record, state: "withdrawn" as const } : before;
    return kept(q, ctx, g, [{ ...stands, rev: record.rev + 1, by: ctx.who.member, at: ctx.now, why: "undone" }]);
  });
}

/** What a value says for a key: one entry; two where words stand beside the figure, such as an oil's grade beside its fill. */
function entriesOf(ctx: Ctx, key: SpecKey, typed: string): Result<readonly Entry[]> {
  const { holds, beside } = SPEC_KEYS[key];
  const fills = SPEC_KEY_NAMES.filter((each) => SPEC_KEYS[each].beside === key);
  if (fills.length > 0 && splitSpec(typed, "volume", ctx.vocabulary, ctx.who.numbers) !== null)
    return refused({ why: "which spec", typed, value: typed, keys: fills });
  const whole = holdsOf(ctx, key, typed);
  const entry = (of: SpecKey, said: string, held: SpecRecord["holds"]): Entry => ({ key: of, typed: said, holds: held });
  if (whole.is === "done") return done([entry(key, typed, whole.value)]);
  const both = beside === undefined || holds === "words" ? null : splitSpec(typed, holds, ctx.vocabulary, ctx.who.numbers);
  if (both === null || beside === undefined || !isSpecKey(beside)) return whole;
  const figure = holdsOf(ctx, key, both.figure);
  return figure.is === "refused" ? figure : done([entry(key, both.figure, figure.value), entry(beside, both.words, { is: "words" })]);
}

/** Is it a share, of a key that is printed so too? */
const isShare = ({ key, typed }: Entry): boolean => SPEC_KEYS[key].shares !== undefined && sharesTyped(key, typed) !== null;

/** A share, or both ends of a range of them: of a mix, which is right anywhere between. */
function sharesTyped(key: SpecKey, typed: string): readonly number[] | null {
  const one = shareTyped(typed);
  return one !== null ? [one] : SPEC_KEYS[key].holds === "temperature" ? shareRange(typed) : null;
}

function holdsOf(ctx: Ctx, key: SpecKey, typed: string): Result<SpecRecord["holds"]> {
  const { holds, end, unit, shares, atForce, stands, under, overPitches } = SPEC_KEYS[key];
  if (typed.trim() === "" || typed.length > LONGEST_WORDS) return refused({ why: "not a spec", key, typed, because: "not read" });
  const measured = holds === "words" ? measureTyped(typed, ctx.vocabulary, ctx.who.numbers) : null;
  if (
    measured?.dimension === "voltage" &&
    isSize(key, "voltage") &&
    isAtRest("battery charging voltage", measured.value, measured.value, typed) &&
    !isNominal(measured.value)
  )
    return refused({ why: "not a spec", key, typed, because: "volts at rest" });
  // A torque is no fluid's name: what is measured so and can be that is named instead.
  if (measured !== null && !isSize(key, measured.dimension)) return refused({ why: "spec in words", key, typed, meant: meantBy(key, measured) });
  if (holds === "words") return unknownClass(key, typed) ? refused({ why: "not a spec", key, typed, because: "no such class" }) : done({ is: "words" });
  const typedShares = sharesTyped(key, typed);
  if (typedShares !== null && shares !== undefined)
    return typedShares.every((share) => share >= shares[0] && share <= shares[1])
      ? done({ is: "words" })
      : refused({ why: "not a spec", key, typed, because: "no such share" });
  const usual = unit ?? (holds === "pressure" ? ctx.who.pressure : holds === "torque" ? ctx.who.torque : null);
  const taken = (atForce === true || stands === true) && holds === "length" ? splitSpec(typed, holds, ctx.vocabulary, ctx.who.numbers) : null;
  const isHow = (words: string): boolean => (atForce === true && forceIn(words) !== null) || (stands === true && standIn(words) !== null);
  const figure =
    taken !== null && isHow(taken.words) ? taken.figure : withoutConditions(overPitches === true ? withoutPitches(typed) : typed, under ?? []).figure;
  const read = readSpecFigure(figure, { holds, end, unit }, usual, ctx.vocabulary, ctx.who.numbers);
  if (typeof read === "string") return refused({ why: "not a spec", key, typed, because: read });
  if (isAtRest(key, read.low, read.high, typed)) return refused({ why: "not a spec", key, typed, because: "volts at rest" });
  if (outOfRange(key, read)) return refused(rangeRefusal(key, typed, read));
  return isOtherEnd(key, read) ? refused({ why: "wrong end", key, typed, end, alone: aloneOf(end, read), unit: read.unit }) : done(read);
}

/** Its figure alone, as it would be typed. */
const aloneOf = (end: "value" | "least" | "most", { low, high }: SpecFigure): number => (end === "most" ? (high ?? low) : (low ?? high)) ?? 0;

/** Are these volts that no charging circuit shows at speed? */
function isAtRest(key: SpecKey, low: number | null, high: number | null, typed: string): boolean {
  const { atRest } = SPEC_KEYS[key];
  const least = low ?? high;
  if (atRest === undefined || least === null || least < atRest.from) return false;
  return least < (low === high && underIn(typed).rpm === null ? atRest.figure : atRest.window) - 1e-9;
}

/** 6 V, 12 V: what a battery is called by. */
const isNominal = (volts: number): boolean => volts % 6 === 0;

/** What words may not be alone. */
const MEASURES: readonly Dimension[] = ["length", "pressure", "torque", "temperature", "volume", "mass", "voltage"];
const isSize = (key: SpecKey, dimension: Dimension): boolean => !MEASURES.includes(dimension) || SPEC_KEYS[key].sizes?.includes(dimension) === true;

const MOST_MEANT = 3;

/** What is measured so where the key belongs, and can be that value: by the same first word before all. */
function meantBy(key: SpecKey, { dimension, value }: { readonly dimension: Dimension; readonly value: number }): readonly SpecKey[] {
  const near = SPEC_KEY_NAMES.filter((each) => SPEC_KEYS[each].holds === dimension && SPEC_KEYS[each].system === SPEC_KEYS[key].system && within(each, value));
  const [word = ""] = key.split(" ");
  const own = near.filter((each) => each.startsWith(`${key} `));
  const alike = own.length > 0 ? own : near.filter((each) => each.startsWith(`${word} `));
  return (alike.length > 0 ? alike : near).slice(0, MOST_MEANT);
}

const ends = ({ low, high }: SpecFigure): readonly number[] => [low, high].flatMap((end) => end ?? []);
const within = (key: SpecKey, value: number): boolean => {
  const { plausible } = SPEC_KEYS[key];
  return plausible === null || (value >= plausible[0] - 1e-9 && value <= plausible[1] + 1e-9);
};
const outOfRange = (key: SpecKey, figure: SpecFigure): boolean => ends(figure).some((end) => !within(key, end));

/** Says between what it lies on any bike, and what may have been meant: a point left out or put in, or the same figure in another unit. */
function rangeRefusal(key: SpecKey, typed: string, figure: SpecFigure): Refusal {
  const { plausible } = SPEC_KEYS[key];
  const [low, high] = plausible ?? [0, 0];
  const only = figure.low === figure.high || figure.low === null || figure.high === null ? (figure.low ?? figure.high) : null;
  const said = only === null ? null : fromCanonical(only, figure.unit);
  const others = UNITS_OF_SLIPS.filter((unit) => unit !== figure.unit && dimensionOf(unit) === dimensionOf(figure.unit));
  const meant =
    said === null ? [] : [{ value: said / 10, unit: figure.unit }, { value: said * 10, unit: figure.unit }, ...others.map((unit) => ({ value: said, unit }))];
  const fits = meant.filter(({ value, unit }) => within(key, toCanonical(value, unit)));
  return { why: "spec out of range", key, typed, low, high, unit: figure.unit, fits };
}
/** Units that are taken for one another. */
const UNITS_OF_SLIPS = ["psi", "bar", "kPa", "N·m", "ft-lb", "in-lb", "mm", "in", "L", "mL", "V"] as const satisfies readonly UnitId[];

async function save(q: Repos, ctx: Ctx, g: Garaged, entries: readonly Entry[], said: SpecUse | null, source: SpecSource | null): Promise<Result<SpecSaved>> {
  const standing = await q.specs.ofBikes([g.bike.id]);
  const records = entries.map(({ key, holds, typed }): SpecRecord => {
    const use = SPEC_KEYS[key].byUse === true ? said : null;
    const before = standing.find((spec) => spec.key === key && spec.use === use);
    const rest = { bike: g.bike.id, key, use, holds, typed: typed.trim(), source, by: ctx.who.member, at: ctx.now, state: "live", why: null } as const;
    return { ...rest, id: before?.id ?? ctx.newId(), rev: (before?.rev ?? 0) + 1 };
  });
  return kept(q, ctx, g, records);
}

async function kept(q: Repos, ctx: Ctx, g: Garaged, records: readonly SpecRecord[]): Promise<Result<SpecSaved>> {
  await keepMember(q, ctx);
  for (const record of records) {
    if (record.rev === 1) await q.specs.add(record);
    else if (!(await q.specs.revise(record))) throw new Conflict("spec changed meanwhile");
  }
  await touch(q, ctx, [g.bike.id]);
  const [first, also] = records.map(({ id, rev, key }): SavedEntry => ({ spec: id, rev, key: key as SpecKey }));
  if (first === undefined) throw new RangeError("nothing to keep");
  const keys = records.map(({ key }) => key as SpecKey);
  const after = pick(await ownGarage(q, ctx), g.bike.id) ?? g;
  const judged = after.judged.filter(({ spec, judgement }) => spec !== null && keys.includes(spec) && judgement.is !== "cannot tell");
  const own = records.find(({ key }) => isTreadLimit(key))?.holds;
  const more = own?.is !== "figure" || own.low === null ? null : await overruledOn(q, after, own.low);
  const { noted, lapsed, closed } = await judgedAnew(q, ctx, [after], ({ spec }) => spec !== null && keys.includes(spec), ctx.event);
  return done({
    ...first,
    judged,
    defects: shownOn([after], noted),
    lapsed: shownOn([after], lapsed),
    closed: shownOn([after], closed),
    ...(more === null ? {} : { overruled: more }),
    also: also ?? null,
    answer: await answerOf(q, ctx, g, { keys, use: records[0]?.use ?? null }),
  });
}

/** What counts instead of an owner's tread limit, in mm; null where that counts. A bike of which nothing was measured has had nothing looked up yet. */
async function overruledOn(q: Repos, { bike, rig }: Garaged, own: number): Promise<TreadOverruled | null> {
  const place = (rig.looked ? rig : (await rigsOf(q, [bike])).get(bike.id))?.place ?? null;
  return overruled(own, { place, kind: bike.kind }, judgedRow("tread").usual?.min ?? 0);
}

async function writing(ctx: Ctx, work: (q: Repos, all: readonly Garaged[]) => Promise<Result<SpecSaved>>): Promise<Result<SpecSaved>> {
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q): Promise<Result<SpecSaved>> => {
    const all = await ownGarage(q, ctx);
    return all.length === 0 ? noneLeft(q, ctx) : work(q, all);
  });
  return onceHeard(acted);
}
