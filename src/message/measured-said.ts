// The measured values of one clause: pressures, depths, thicknesses, slack, voltages, clearances and the rest.

import { dimensionOf, type UnitId } from "../core/quantity/units.ts";
import type { ConditionRead, ReadingDetail } from "../core/reading/detail.ts";
import type { Gap, LogReading } from "../core/reading/intent.ts";
import { hasSides, kindRow, type Place, type ReadingKind } from "../core/reading/kinds.ts";
import { ENDS } from "../core/reading/places.ts";
import { among, under } from "./among.ts";
import { isAfterCharge, isAfterPut, isOfCharge } from "./charged-said.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { aheadOf, partBefore } from "./counted.ts";
import { unitAlone } from "./figures.ts";
import { conditionsOf, forceSaid, howParts, isWarmAt, loadOf, saysCharged, stoodHours } from "./how-said.ts";
import { isPlainPart, kindsOf, kindWordsIn, namesWheel } from "./kind-of.ts";
import { bikeAt, dayAt, inside, type Layout, type MeantDay, phrasesInside, type SaidAt } from "./layout.ts";
import { boundOf, type Measurable, measurablesIn } from "./measured-figures.ts";
import { standsBeside } from "./phrases.ts";
import { isAnd, isVerb, tokensOf } from "./pieces.ts";
import { pitchesBehind, pitchesIn, revsIn } from "./pitches.ts";
import { type Kinded, placesOf, type Where, WORN } from "./placed.ts";
import { namesThing } from "./things-named.ts";
import { unitOf } from "./value-units.ts";
import { unreadDayGap } from "./work-when.ts";

/** `or`: what it was corrected to. */
type Said = Kinded & { readonly or?: number } & { readonly kinds: readonly ReadingKind[]; readonly points: readonly Measurable[] };

/**
 * @param isTaken figures that something else has accounted for
 * @param heading kinds that the line before named and said nothing else of: "Tread:"
 */
export function measuredSaid(layout: Layout, clause: Clause, isTaken: ReadonlySet<number>, heading: Heading): readonly SaidAt[] {
  const said: Said[] = [];
  let carried = heading.kinds;
  let placedOnly = heading.placedOnly;
  let ofManual = false;
  const [opening] = clause.parts;
  const ahead = opening === undefined ? null : aheadOf(layout, clause, opening);
  if (ahead !== null) carried = kindWordsIn(layout, ahead).at(-1)?.are ?? carried;
  for (const part of clause.parts) {
    const named = kindWordsIn(layout, part);
    const last = named.at(-1);
    // "Front pads 3 mm, rear tyre 4 mm": a part that names something else goes on with nothing.
    if (named.length === 0 && namesThing(layout, part) && !saysCharged(layout, part)) carried = [];
    const goesOn = named.length > 0 || !placedOnly || (namesWheel(layout, part) && isPlainPart(layout, part));
    // "Manual says 36 psi front, 42 rear": what goes on with nothing but figures and places is the manual's too.
    ofManual = isOfManual(layout, part) || (ofManual && named.length === 0 && isBare(layout, part));
    const figures = ofManual ? [] : measurablesIn(layout, part, isTaken, named.length + carried.length > 0 || saysPlay(layout, part));
    for (const figure of figures) {
      const kinds: readonly ReadingKind[] = isOfCharge(layout, figure) ? ["battery voltage"] : kindsOf(layout, figure, figures, goesOn ? carried : []);
      const last = said.at(-1);
      if (last !== undefined && kinds.length === 0 && figure.units.length === 0 && isCorrection(layout, figure)) {
        said[said.length - 1] = { ...last, or: figure.value };
        continue;
      }
      const [kind = setTo(layout, figure, last)] = kinds;
      if (kind === undefined) continue;
      said.push({ figure, kind, kinds: kinds.length > 0 ? kinds : [kind], state: null, points: [] });
      // "Front tyre 3 mm, rear 2.5": what was told by its unit goes on where nothing else is named.
      if (named.length === 0 && (figure.units.length > 0 || figure.token.fraction !== null) && kinds.includes("tread")) carried = kinds;
    }
    // "4.6 mm (min 4.5 mm), rear 5.1 mm": what stands in brackets ends with them.
    const close = layout.tokens[part.to + 1];
    if (close?.is === "break" && close.mark === ")") ofManual = false;
    if (last !== undefined) {
      carried = last.are;
      placedOnly = false;
    }
  }
  if (said.length === 0) return [];
  const rows = pointsJoined(layout, said);
  const stated = withStates(layout, rows);
  const places = placesOf(layout, stated);
  const byKind = new Map([...new Set(stated.map(({ kind }) => kind))].map((kind) => [kind, stated.filter((each) => each.kind === kind)]));
  const inherited = new Map([...byKind].map(([kind, same]) => [kind, inheritedUnit(layout, kind, same)]));
  const shared = new Map([...byKind].map(([kind, same]) => [kind, [...new Set(same.map(({ figure }) => figure.part))]]));
  return stated.flatMap((each, n) => readingsOf(layout, each, places[n] ?? null, inherited.get(each.kind) ?? null, shared.get(each.kind) ?? []));
}

/** "2-3 mm play". */
const saysPlay = ({ tokens, known }: Layout, part: Part): boolean => tokensOf(part).some((at) => among(known.vocabulary.measuring.plays, wordAt(tokens, at)));

/** What is set: a figure behind "to" or "now" is what it was set to. */
const SET: readonly ReadingKind[] = ["cold pressure", "chain slack", "belt deflection", "clutch free play", "throttle free play", "brake free play"];

/** "Front was 28 so pumped it to 33", "found 28 psi front, set it to 33": of the kind read before it, where it is of its size. */
function setTo(layout: Layout, { at, value, units }: Measurable, before: Said | undefined): ReadingKind | undefined {
  if (before === undefined || !SET.includes(before.kind) || !isLedTo(layout, at)) return undefined;
  // "Moved to 34 Mill Lane".
  const next = wordAt(layout.tokens, at + 1);
  if (next !== null && next !== undefined && !standsBeside(next, layout.known.vocabulary) && !isVerb(layout, at + 1)) return undefined;
  const alike = value > before.figure.value / 3 && value < before.figure.value * 3;
  return alike && (units.length === 0 || units.every((unit) => before.figure.units.length === 0 || before.figure.units.includes(unit)))
    ? before.kind
    : undefined;
}

/** "Rear 38, no, 40": right behind a word that takes back what was said. */
const isCorrection = ({ tokens, known }: Layout, { at }: Measurable): boolean =>
  [at - 1, at - 2, at - 3].some((n) => among(known.vocabulary.measuring.corrections, wordAt(tokens, n)));

/** Behind "to", "now", "now has" or an arrow. */
function isLedTo({ tokens, known }: Layout, at: number): boolean {
  const { left, arrows } = known.vocabulary.measuring;
  const mark = tokens[at - 1];
  return [at - 1, at - 2].some((n) => among(left, wordAt(tokens, n))) || (mark?.is === "break" && among(arrows, mark.mark));
}

/** "The manual says 33 front", "limit 1.6 mm": nothing of that part was read off the bike. */
const isOfManual = (layout: Layout, part: Part): boolean =>
  phrasesInside(layout.phrases.spec, part).some(
    ({ at }) => !layout.phrases.condition.some((how) => at >= how.at && at <= how.to) && !isLeftOut(layout, part, at) && !isMinutes(layout, at),
  );

/** "Rested 30 min", "5000 U/min", "5000/min". */
function isMinutes({ tokens, known }: Layout, at: number): boolean {
  const before = tokens[at - 1];
  const counted = before?.is === "break" && before.mark === "/" ? tokens[at - 2] : before;
  // "4.6 mm / min 4.5 mm".
  const isCounted = counted?.is === "number" ? counted.units.length === 0 : counted !== before && counted?.is === "word";
  return isCounted && among(known.vocabulary.measuring.minutes, wordAt(tokens, at));
}

/** "Without the backing plate": what is left out is no plate with a figure on it. */
const isLeftOut = (layout: Layout, part: Part, at: number): boolean =>
  tokensOf({ from: Math.max(part.from, at - 3), to: at - 1 }).some((each) => among(layout.known.vocabulary.details.without, wordAt(layout.tokens, each)));

/** Nothing but figures, places and loads. */
const isBare = (layout: Layout, part: Part): boolean => {
  const said = [...phrasesInside(layout.phrases.place, part), ...phrasesInside(layout.phrases.load, part)];
  return tokensOf(part).every((at) => wordAt(layout.tokens, at) == null || isAnd(layout, at) || said.some((phrase) => at >= phrase.at && at <= phrase.to));
};

const POINTS: readonly ReadingKind[] = ["tread", "pad thickness", "shoe thickness", "disc thickness", "chain slack", "belt deflection"];

/** Several figures of one kind with nothing but marks between them, and at most one place said: points of one measurement. */
function pointsJoined(layout: Layout, said: readonly Said[]): readonly Said[] {
  const rows: Said[][] = [];
  for (const each of said) {
    const row = rows.at(-1);
    const before = row?.at(-1);
    // "Found 0.8, left 5": of an old tyre and of a new one.
    const isAnew = before !== undefined && stateOf(layout, before, said) === "found" && stateOf(layout, each, said) === "left";
    const joins = before !== undefined && !isAnew && before.kind === each.kind && POINTS.includes(each.kind) && areJoined(layout, before.figure, each.figure);
    if (joins) row?.push(each);
    else rows.push([each]);
  }
  return rows.flatMap((row): readonly Said[] => {
    const [first, last] = [row[0], row.at(-1)];
    if (first === undefined || last === undefined || row.length < 2) return row;
    const span: Part = { from: first.figure.part.from, to: last.figure.part.to };
    const ends = new Set(
      phrasesInside(layout.phrases.place, span).flatMap(({ are }) => are.filter((place) => ["front", "rear", "both", "sidecar"].includes(place))),
    );
    if (ends.size > 1 || (row.length === 2 && ends.size === 0 && !isTurned(layout, first, last))) return row;
    // Left and right are two calipers, but for the rear, which has one; inner and outer two pads.
    const sided =
      phrasesInside(layout.phrases.side, span).length > 0 ||
      phrasesInside(layout.phrases.place, span).some(({ are }) => are.some((place) => /left|right/u.test(place)));
    const isRear = ends.size === 1 && ends.has("rear");
    if (sided && hasSides(first.kind) && !(isRear && phrasesInside(layout.phrases.side, span).length === 0)) return bySides(layout, row);
    return [asPoints(layout, first, row)];
  });
}

/** One measurement of several points: the least of them is what counts. */
function asPoints(layout: Layout, first: Said, row: readonly Said[]): Said {
  if (row.length < 2) return first;
  const figures = row.map(({ figure }) => figure);
  const least = figures.reduce((a, b) => (b.value < a.value ? b : a));
  const typed = layout.text.slice(first.figure.token.start, figures.at(-1)?.token.end);
  const units = [...new Set(figures.flatMap(({ units: own }) => own))];
  return {
    ...first,
    figure: { ...first.figure, token: least.token, value: least.value, units: units.length > 0 ? units : first.figure.units, typed },
    points: figures,
  };
}

/** "Front pads 4.0 and 3.8 left, 1.9 and 1.8 right": in each part the pads of one caliper, where it names one side and no pad of a pair. */
function bySides(layout: Layout, row: readonly Said[]): readonly Said[] {
  return [...new Set(row.map(({ figure }) => figure.part))].flatMap((part): readonly Said[] => {
    const here = row.filter(({ figure }) => figure.part === part);
    const sides = phrasesInside(layout.phrases.place, part).filter(({ are }) => are.some((place) => /left|right/u.test(place)));
    const [first] = here;
    return first === undefined || sides.length !== 1 || phrasesInside(layout.phrases.side, part).length > 0 ? here : [asPoints(layout, first, here)];
  });
}

/** "28 mm at the tight spot, 45 mm at the loose one": the slack of one chain at two spots. */
function isTurned(layout: Layout, first: Said, last: Said): boolean {
  if (first.kind !== "chain slack") return false;
  const { spots } = layout.known.vocabulary.measuring;
  const beside = tokensOf({ from: Math.max(first.figure.part.from, first.figure.at - 3), to: Math.min(last.figure.part.to, last.figure.at + 4) });
  return beside.filter((at) => among(spots, wordAt(layout.tokens, at))).length > 1;
}

/** Marks, "and" and the words for across the tyre may stand between points. */
function areJoined(layout: Layout, a: Measurable, b: Measurable): boolean {
  if (a.at === b.at) return true;
  for (let at = a.at + 1; at < b.at; at++) {
    const token = layout.tokens[at];
    if (token?.is === "number") return false;
    if (token?.is === "break" ? !["/", ",", "-", "|", "&"].includes(token.mark) : !isAcross(layout, at)) return false;
  }
  return true;
}
const isAcross = (layout: Layout, at: number): boolean => {
  const { joins, articles, at: atWords, onBike, details, measuring } = layout.known.vocabulary;
  const word = wordAt(layout.tokens, at) ?? "";
  return [joins, articles, atWords, onBike, details.within, measuring.levels.between, measuring.across, measuring.spots].some((list) => among(list, word));
};

/** "Found" and "left", "was" and "now": only where both are said, or of a clearance. */
function withStates(layout: Layout, said: readonly Said[]): readonly Said[] {
  const states = said.map((each) => stateOf(layout, each, said));
  // "Chain adjusted 32 mm to 28 mm": what stands before a "to" was found, where what stands behind it was left. With nothing adjusted it may be a range.
  said.forEach((each, n) => {
    const next = said[n + 1];
    const arrow = next === undefined ? undefined : layout.tokens[next.figure.at - 1];
    if (next?.kind === each.kind && arrow?.is === "break" && among(layout.known.vocabulary.measuring.arrows, arrow.mark)) {
      states[n] = "found";
      states[n + 1] = "left";
    }
    if (states[n] !== "found" && states[n + 1] === "left" && next?.kind === each.kind && (isToward(layout, each.figure, next.figure) || isSetTo(layout, next)))
      states[n] = "found";
  });
  // "Front 30 psi, now 34": what was said right before of the same thing was found.
  said.forEach((each, n) => {
    const next = said[n + 1];
    if (next !== undefined && states[n] == null && states[n + 1] === "left" && goesOnTo(layout, each, next)) states[n] = "found";
  });
  // Of a battery what it showed before it was charged was found, and what it shows after was left.
  const charged = said.map(({ kind, figure }) => kind === "battery voltage" && isAfterCharge(layout, figure, said));
  if (charged.includes(true))
    said.forEach(({ kind }, n) => {
      if (charged[n] === true) states[n] = "left";
      else if (kind === "battery voltage") states[n] ??= "found";
    });
  const saidOf = new Set(said.map((each, n) => `${states[n] ?? ""}/${each.kind}`));
  return said.map((each, n) => {
    const state = states[n] ?? null;
    const other = state !== null && saidOf.has(`${state === "found" ? "left" : "found"}/${each.kind}`);
    return state !== null && (other || each.kind === "valve clearance" || (state === "left" && isSetTo(layout, each))) ? { ...each, state } : each;
  });
}

/** Does a figure in a later part, right behind "now" or "set to", stand for what the one before it became? With a day said they are two readings, and with an end said it is of that. */
function goesOnTo(layout: Layout, { kind, figure: a }: Said, { kind: next, figure: b }: Said): boolean {
  if (kind !== next || a.part === b.part || !(SET.includes(kind) || WORN.includes(kind) || kind === "battery voltage")) return false;
  if ([a.part, b.part].some((part) => layout.dates.some((dated) => inside(dated, part))) || phrasesInside(layout.phrases.place, b.part).length > 0)
    return false;
  return phrasesInside(layout.phrases.state, b.part).some(({ to, are }) => to === b.at - 1 && are.includes("left"));
}

/** "Set the belt to 11 mm": of what is adjusted at the bike the figure behind the work is how it was left. */
const isSetTo = (layout: Layout, { kind, figure: { at, part } }: Said): boolean =>
  kind !== "cold pressure" &&
  SET.includes(kind) &&
  tokensOf(part).some((each) => each < at && under(layout.known.vocabulary.workDone, wordAt(layout.tokens, each))?.includes("adjust") === true);

/** Does nothing but a word for what was left stand between two figures of one part? */
const isToward = (layout: Layout, a: Measurable, b: Measurable): boolean =>
  a.part === b.part &&
  b.at - a.at === 2 &&
  among(layout.known.vocabulary.measuring.left, wordAt(layout.tokens, a.at + 1)) &&
  tokensOf(a.part).some((at) => under(layout.known.vocabulary.workDone, wordAt(layout.tokens, at))?.includes("adjust") === true);

/** The state word beside a figure, directly before it or behind it in its part: on the side on which the first figure of its part has one. */
function stateOf(layout: Layout, { figure }: Said, others: readonly Said[]): "found" | "left" | null {
  const beside = ({ at, part }: Pick<Measurable, "at" | "part">) => {
    const here = phrasesInside(layout.phrases.state, around({ at, part }));
    return { behind: here.find((each) => each.at > at && each.at - at <= 1), before: here.findLast(({ to }) => to < at && at - to <= 2) };
  };
  const { behind, before } = beside(figure);
  const first = others.find((each) => each.figure.part === figure.part)?.figure ?? figure;
  // "Exhaust left 0.22 right 0.18": a side, where the other one is said too.
  const isSided = phrasesInside(layout.phrases.place, figure.part).some(({ are }) => are.includes("right"));
  if (isSided && [before, behind].some((phrase) => phrase?.are[0] === "left" && wordAt(layout.tokens, phrase.at) === wordAt(layout.tokens, phrase.to)))
    return null;
  const trails = first !== figure && beside(first).before === undefined && beside(first).behind?.are[0] === "found";
  return (trails ? (behind ?? before) : (before ?? behind))?.are[0] ?? null;
}

/** The tokens of its part that a word beside a figure can stand at, the longest phrase included. */
const around = ({ at, part }: Pick<Measurable, "at" | "part">): Part => ({ from: Math.max(part.from, at - 5), to: Math.min(part.to, at + 5) });

/** The one unit typed for figures of this kind in the clause, or standing alone in one of their parts. */
function inheritedUnit(layout: Layout, kind: ReadingKind, same: readonly Said[]): UnitId | null {
  const { dimension } = kindRow(kind);
  const typed = [...new Set(same.flatMap(({ figure }) => figure.units.filter((unit) => dimensionOf(unit) === dimension)))];
  const [only] = typed;
  if (only !== undefined) return typed.length === 1 ? only : null;
  if (dimension === "level" || dimension === "share" || dimension === "date code") return null;
  for (const { figure } of same) {
    const alone = unitAlone(layout, figure.part, dimension);
    if (alone !== null) return alone;
  }
  return null;
}

function readingsOf(layout: Layout, said: Said, where: Where, inherited: UnitId | null, shared: readonly Part[]): readonly SaidAt[] {
  const { at } = said.figure;
  if (where === "both") return ENDS.map((place) => ({ at, reading: one(layout, said, place, inherited, shared) }));
  return [{ at, reading: one(layout, said, where, inherited, shared) }];
}

function one(layout: Layout, said: Said, place: Place | null, inherited: UnitId | null, shared: readonly Part[]): LogReading {
  const { figure, kind, kinds } = said;
  const { known } = layout;
  const meant = bikeAt(layout, { from: figure.at, to: figure.at });
  const day = dayAt(layout, figure.part, shared, figure.at);
  // "Front 4/32, rear 3": of an inch typed as a fraction a whole figure has none.
  const typedUnit = kind === "tread" && inherited === "in" && figure.value >= 1 ? null : inherited;
  const { unit, options } = unitOf(kind, figure, typedUnit, kind === "tread" ? known.depthUnit : kind === "cold pressure" ? known.pressureUnit : null);
  const value = pedal(layout, said);
  const numbers = numberOptions(layout, said, value);
  const { ask } = kindRow(kind);
  const asked = place === null && ask.length > 0 && said.kinds.length === 1;
  const detail = detailOf(layout, said, shared);
  const gaps: Gap[] = [
    ...(meant.gap === null ? [] : [meant.gap]),
    ...(kinds.length > 1 ? [{ need: "kind" as const, options: kinds }] : []),
    ...(asked ? [{ need: "place" as const, options: ask }] : []),
    ...(unit === null ? [{ need: "unit" as const, options }] : []),
    ...(numbers.length === 0 ? [] : [{ need: "number" as const, options: numbers }]),
    ...dayGaps(layout, figure.part, day),
    ...boundGaps(layout, figure),
    ...(kind === "cold pressure" && layout.airs?.is === "unsure" ? [{ need: "sure" as const, because: layout.airs.because }] : []),
    ...(kind === "cold pressure" && isWarmAt(layout, figure.part, figure.at) ? [{ need: "sure" as const, because: "warm" as const }] : []),
  ];
  return {
    do: "log reading",
    bike: meant.bike?.id ?? null,
    kind,
    place: place !== null && (kindRow(kind).places as readonly string[]).includes(place) ? place : null,
    value,
    unit,
    typed: { text: figure.typed, unit: figure.token.unitText },
    on: day.on,
    ...(Object.keys(detail).length === 0 ? {} : { detail }),
    gaps,
  };
}

/** "Less than 1 mm": what was read is not said. */
function boundGaps(layout: Layout, figure: Measurable): readonly Gap[] {
  const bound = boundOf(layout, figure);
  return bound === null ? [] : [{ need: "sure", because: bound }];
}

/** What is open about the day of a reading. */
const dayGaps = (layout: Layout, part: Part, day: MeantDay): readonly Gap[] =>
  [day.gap ?? (day.typed === "" ? unreadDayGap(layout, part) : null)].filter((gap) => gap !== null);

/** A pedal is above the footrest or below it; which, must be said. */
function pedal(layout: Layout, { figure, kind }: Said): number {
  if (kind !== "brake pedal height" || figure.value < 0) return figure.value;
  return phrasesInside(layout.phrases.sign, figure.part).some(({ are }) => are.includes("lower")) ? -figure.value : figure.value;
}

function numberOptions(layout: Layout, { figure, kind, points, or }: Said, value: number): readonly number[] {
  if (or !== undefined) return [value, or];
  if (figure.token.slip === true) return [value];
  // "3.3 psi": a flat tyre, or a slip of the point.
  if (kind === "cold pressure" && figure.units.includes("psi") && figure.token.decimals > 0 && value > 0 && value < LEAST_PSI) return [value, value * 10];
  if (figure.rangeTo !== null && points.length === 0 && !POINTS.includes(kind)) return [figure.value, figure.rangeTo];
  if (kind === "brake pedal height" && value > 0 && !phrasesInside(layout.phrases.sign, figure.part).some(({ are }) => are.includes("higher")))
    return [value, -value];
  return figure.other !== null && kindRow(kind).dimension !== "distance" && figure.value >= 1000 ? [value, figure.other] : [];
}

/** Below it a tyre is flat. */
const LEAST_PSI = 8;

function detailOf(layout: Layout, { figure, kind, state, points }: Said, shared: readonly Part[]): ReadingDetail {
  const { part, rangeTo } = figure;
  const across = points.length > 0 ? points.map(({ value }) => value) : rangeTo !== null && POINTS.includes(kind) ? [figure.value, rangeTo] : [];
  const how = howParts(layout, part, shared.at(-1) ?? part);
  const earlier = partBefore(layout, part, kind);
  const stood = kind === "battery voltage" ? stoodHours(layout, [...how, ...earlier]) : null;
  const heard = conditionsOf(layout, part, shared.at(-1)).filter(
    (each) => saysSomething(kind, each) && !(each === "cold" && isWarmAt(layout, part, figure.at)),
  );
  if (kind === "battery voltage" && isAfterPut(layout, figure) && !heard.includes("charged")) heard.push("charged");
  // Well rested it is, no matter that it was charged before; what was found was not charged yet.
  const said = stood !== null || heard.includes("rested") || state === "found" ? heard.filter((each) => each !== "charged") : heard;
  // "Stood 2 days" says that it was rested, and for how long.
  const conditions = stood === null || said.includes("rested") ? said : [...said, "rested" as const];
  const load = BY_LOAD.includes(kind) ? loadOf(layout, part, figure.at, shared.at(-1)) : null;
  const force = kind === "belt deflection" ? forceSaid(layout, how, figure.at) : null;
  const side = kind === "pad thickness" ? sideOf(layout, figure) : null;
  const pitches =
    kind === "chain length"
      ? ([part, ...earlier, pitchesBehind(layout, part) ?? part].map((each) => pitchesIn(layout, each)).find((each) => each !== null) ?? null)
      : null;
  const rpm = kind === "charging voltage" ? (revsIn(layout, part)?.value ?? null) : null;
  return {
    ...(conditions.length === 0 ? {} : { conditions }),
    ...(kind === "cold pressure" && layout.airs?.is === "said" ? { air: layout.airs.air } : {}),
    ...(stood === null ? {} : { stood }),
    ...(load === null || (kind !== "cold pressure" && load === "loaded") ? {} : { load }),
    ...(force === null ? {} : { force }),
    ...(across.length === 0 ? {} : { points: across }),
    ...(side === null ? {} : { side }),
    ...(pitches === null ? {} : { pitches }),
    ...(rpm === null ? {} : { rpm }),
    ...(state === null ? {} : { state }),
  };
}

/** What is wanted of these goes by the load. A sag "loaded" is one with the rider on. */
const BY_LOAD: readonly ReadingKind[] = ["cold pressure", "static sag", "rider sag"];

/** What is glued to a plate that is no lining. */
const LININGS: readonly ReadingKind[] = ["pad thickness", "shoe thickness"];

/** A warm tyre is asked about, and what charges is running. */
const saysSomething = (kind: ReadingKind, condition: ConditionRead): boolean =>
  kind !== "ambient temperature" &&
  (condition !== "with backing plate" || LININGS.includes(kind)) &&
  !(kind === "cold pressure" && condition === "warm") &&
  !(kind === "battery voltage" && condition === "idling") &&
  !(kind === "charging voltage" && condition === "running");

/** The pad of a pair that stands by a figure: directly before it, else directly behind. */
function sideOf(layout: Layout, figure: Measurable): "inner" | "outer" | null {
  const here = phrasesInside(layout.phrases.side, figure.part);
  const before = here.findLast(({ to }) => to < figure.at && figure.at - to <= 2);
  const behind = here.find(({ at }) => at > figure.at && at - figure.at <= 2);
  // "Left 3, right 0.8, inner 2.5": sides of either sort are said on one side of their figures.
  const sides = phrasesInside(layout.phrases.place, figure.part).filter(({ are }) => are.some((place) => place === "left" || place === "right"));
  const [first] = [...here, ...sides].sort((a, b) => a.at - b.at);
  const firstFigure = tokensOf(figure.part).find((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at) && !layout.indexes.has(at));
  const leads = first !== undefined && first.at < (firstFigure ?? figure.at);
  return (leads ? (before ?? null) : (behind ?? null))?.are[0] ?? null;
}

/** The kinds that a clause leaves to the line below: those it names and says nothing of, or those above it when it only went on with them. */
export function headingFor(layout: Layout, clause: Clause, above: Heading, said: boolean): Heading {
  // Of most messages no word names a kind, and no place is one of a valve or a cylinder.
  if (layout.phrases.kind.length === 0 && layout.phrases.place.length === 0) return said ? above : NO_HEADING;
  const own = headingOf(layout, clause);
  if (own.length > 0) return { kinds: own, placedOnly: false };
  const named = clause.parts.flatMap((part) => kindWordsIn(layout, part).flatMap(({ are }) => are));
  if (said && named.length === 0) return above;
  // "Tread front 4.5 mm" above "rear 3 mm": a kind that was read goes on where the next line says nothing but a place and a value.
  const [only] = named;
  return said && only !== undefined && named.length === 1 && only !== "odometer" ? { kinds: [only], placedOnly: true } : NO_HEADING;
}

/** The kinds that a line leaves to the one below. `placedOnly`: only for a line of places and values. */
export type Heading = { readonly kinds: readonly ReadingKind[]; readonly placedOnly: boolean };
export const NO_HEADING: Heading = { kinds: [], placedOnly: false };

function headingOf(layout: Layout, clause: Clause): readonly ReadingKind[] {
  const [part, second] = clause.parts;
  if (part === undefined || second !== undefined || clause.to - clause.from > 3) return [];
  if (!isPlainPart(layout, part) || tokensOf(part).some((at) => layout.tokens[at]?.is === "number")) return [];
  return kindWordsIn(layout, part).flatMap(({ are }) => are);
}
