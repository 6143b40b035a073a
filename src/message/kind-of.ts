// Which kind of reading a figure is: by the word it stands with, its unit, its place, and what a bike can show.

import { unitsNamed } from "../core/quantity/parse.ts";
import { dimensionOf, toCanonical } from "../core/quantity/units.ts";
import { kindRow, type ReadingKind } from "../core/reading/kinds.ts";
import { among, under } from "./among.ts";
import { isDifference, isMoved, isOfDisc } from "./changed-said.ts";
import type { Part } from "./clauses.ts";
import { wordAt } from "./clauses.ts";
import { unitAlone } from "./figures.ts";
import { conditionsOf, howParts, isOfCharging, saysCharged, stoodHours } from "./how-said.ts";
import { bikeAt, type Layout, phrasesInside } from "./layout.ts";
import { isPairAlone, type Measurable } from "./measured-figures.ts";
import { standsBeside } from "./phrases.ts";
import { isVerb, oncePerPart, tokensOf } from "./pieces.ts";
import { isBehindChain, isPitch, overPitches, pitchesIn } from "./pitches.ts";
import { withoutSign } from "./sign-behind.ts";
import { namesThing } from "./things-named.ts";
import { possibleUnits, typedDimension, unitsFor } from "./value-units.ts";

/** A word that names kinds, where it stands. */
export type KindWord = { readonly at: number; readonly are: readonly ReadingKind[] };

/** The kinds that a part names, in order. "Intake" names a valve, "cylinder" a compression. */
export const kindWordsIn = oncePerPart((layout: Layout, part: Part): readonly KindWord[] => {
  const named = phrasesInside(layout.phrases.kind, part).filter(
    (word) => !layout.taken.has(word.at) && !isOtherBelt(layout, word) && !isOfCharging(layout, word),
  );
  const implied = phrasesInside(layout.phrases.place, part).flatMap(({ at, are }): KindWord[] =>
    are.some((place) => place === "intake" || place === "exhaust")
      ? [{ at, are: ["valve clearance"] }]
      : are.includes("cylinder")
        ? [{ at, are: ["compression"] }]
        : [],
  );
  const pitches =
    named.some(({ are }) => are.includes("chain slack")) &&
    tokensOf(part).some((at) => among(layout.known.vocabulary.measuring.pitches, wordAt(layout.tokens, at)));
  return [...named.map(({ at, are }) => ({ at, are: pitches && are.includes("chain slack") ? [...are, "chain length" as const] : are })), ...implied].sort(
    (a, b) => a.at - b.at,
  );
});

/** "10 to 15 mm": the unit behind the second is that of both. */
const leadsToUnit = ({ tokens, known }: Layout, { at }: Measurable): boolean => {
  const next = tokens[at + 2];
  return among(known.vocabulary.measuring.left, wordAt(tokens, at + 1)) && next?.is === "number" && next.units.length > 0;
};

/** "Belt 21.5 mm wide", "drive belt width 21.5 mm". */
const namesWidth = ({ tokens, known }: Layout, part: Part): boolean => {
  const { belt, wide } = known.vocabulary.measuring;
  const has = (words: readonly string[]): boolean => tokensOf(part).some((at) => among(words, wordAt(tokens, at)));
  return has(belt) && has(wide);
};

/** "Timing belt tension": not the drive belt's. */
const isOtherBelt = ({ tokens, known }: Layout, { at, are }: KindWord): boolean =>
  are.includes("belt deflection") && among(known.vocabulary.measuring.otherBelts, wordAt(tokens, at - 1));

/** The kinds that a figure can be; several ask; none: it is no reading. @param all the figures of its part, in order @param carried: the kinds named before in the clause. */
export function kindsOf(layout: Layout, figure: Measurable, all: readonly Measurable[], carried: readonly ReadingKind[]): readonly ReadingKind[] {
  const { part } = figure;
  // "319 mm, 21 pins".
  const isLength = figure.units.some((unit) => dimensionOf(unit) === "length") || figure.token.unitText === "in";
  // A belt worn narrow is no deflection.
  if (isLength && namesWidth(layout, part)) return [];
  const counted = isLength ? overPitches(layout, part) : null;
  if (counted !== null && isOfChain(layout, part)) return isPitch(figure, counted) ? ["chain length"] : [];
  if (isDifference(layout, figure) || (figure.units.length === 0 && isPrice(layout, figure))) return [];
  const words: KindWord[] = [];
  // A part may name one kind many times over.
  let before: KindWord = { at: -1, are: [] };
  let fit: readonly ReadingKind[] = [];
  for (const word of near(kindWordsIn(layout, part), figure.at)) {
    // On a clock a bare figure is a distance; hours must be called so.
    if (figure.units.length === 0 && word.are.includes("odometer")) continue;
    if (word.are !== before.are) fit = word.are.filter((kind) => canBe(kind, figure) && !(kind === "ambient temperature" && isBesideDegrees(figure, all)));
    before = word;
    if (fit.length > 0) words.push({ at: word.at, are: fit });
  }
  // "Battery 12.4 resting, 14.1 running": the second is what it is charged with.
  if (words.length === 0 && carried.includes("battery voltage") && isRunning(layout, part) && canBe("charging voltage", figure)) return ["charging voltage"];
  const found =
    words.length > 0
      ? nearest(words, figure, all)
      : carried.filter((kind) => canBe(kind, figure) && !isBareStrength(kind, figure) && !isElsewhere(layout, kind, figure));
  const [first] = found;
  if (first !== undefined) return settledBySaid(layout, figure, found).filter((kind) => isBelieved(layout, figure, kind));
  return isOverruled(layout, figure, all) ? [] : withoutWord(layout, figure);
}

/** "34f 38r psi, 6 degrees outside": a bare figure beside one with degrees is no temperature. */
const isBesideDegrees = ({ units }: Measurable, all: readonly Measurable[]): boolean =>
  units.length === 0 && all.some((other) => other.units.some((unit) => unit === "°" || dimensionOf(unit) === "temperature"));

/** Names nothing, or the chain. */
const isOfChain = (layout: Layout, part: Part): boolean => kindWordsIn(layout, part).every(({ are }) => are.some((kind) => kind.startsWith("chain")));

/** "Rear tread 28": the only figure of its part behind the name of a kind that it cannot be is a slip, and nothing else. */
function isOverruled(layout: Layout, figure: Measurable, all: readonly Measurable[]): boolean {
  if (all.length !== 1 || figure.units.length > 0) return false;
  const [first] = kindWordsIn(layout, figure.part);
  // "Coolant -30": no level is below zero.
  if (figure.value < 0 && first?.are.includes("coolant level") === true) return false;
  return first !== undefined && first.at < figure.at && !first.are.includes("odometer") && !first.are.includes("cold pressure");
}

/** "Coolant checked, front 34": a bare figure in a part of its own is no frost point, unless it is below zero. */
const isBareStrength = (kind: ReadingKind, { units, value }: Measurable): boolean => kind === "coolant strength" && units.length === 0 && value >= 0;

/** "Chain slack 30 mm, front 33": a bare figure by a wheel is of no kind that is measured elsewhere. */
const isElsewhere = (layout: Layout, kind: ReadingKind, { units, part }: Measurable): boolean =>
  units.length === 0 && namesWheel(layout, part) && !kindRow(kind).places.some((place) => place.startsWith("front") || place.startsWith("rear"));

/** Of a part that names very many kinds, those around a figure: the rest say nothing of it. */
function near(words: readonly KindWord[], at: number): readonly KindWord[] {
  if (words.length <= 2 * MANY) return words;
  const next = firstBehind(words, at);
  return words.slice(Math.max(0, next - MANY), next + MANY);
}
const MANY = 8;

/** Where in a list in order the first that stands behind a token is. */
export function firstBehind(list: readonly { readonly at: number }[], at: number): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((list[middle]?.at ?? 0) <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Of several, those that stand nearest: before the figure where the first word does, else behind it. */
function nearest(words: readonly KindWord[], figure: Measurable, all: readonly Measurable[]): readonly ReadingKind[] {
  const [first] = words;
  if (first === undefined || words.length === 1) return first?.are ?? [];
  const before = first.at < (all[0]?.at ?? 0);
  const next = all[firstBehind(all, figure.at)]?.at ?? Number.POSITIVE_INFINITY;
  const meant = before
    ? words.findLast(({ at }) => at < figure.at)
    : (words.find(({ at }) => at > figure.at && at < next) ?? words.findLast(({ at }) => at < figure.at));
  // "Chain free play 30": both words may mean one thing.
  const shared = words.every(({ are }) => are.some((kind) => first.are.includes(kind)))
    ? first.are.filter((kind) => words.every(({ are }) => are.includes(kind)))
    : [];
  return shared.length > 0 ? shared : (meant?.are ?? first.are);
}

function canBe(kind: ReadingKind, figure: Measurable): boolean {
  if (kind === "odometer" || kind === "fuel" || kindRow(kind).dimension === "level") return false;
  return unitsFor(kind, figure) !== null;
}

/** What was said beside it settles between kinds: pitches make it a length, revolutions a charging voltage. */
function settledBySaid(layout: Layout, figure: Measurable, kinds: readonly ReadingKind[]): readonly ReadingKind[] {
  const { part } = figure;
  // "A 525 with 112 links" is its size.
  const over = kinds.includes("chain length") ? pitchesIn(layout, part) : null;
  if (over !== null) return isPitch(figure, over) ? ["chain length"] : [];
  // With the engine running it is what it is charged with, whatever it was called.
  if (kinds.length === 1) return kinds[0] === "battery voltage" && isRunning(layout, part) ? ["charging voltage"] : kinds;
  const sag = kinds.includes("static sag") ? (sagSaid(layout, figure) ?? (conditionsOf(layout, part).includes("under load") ? "rider sag" : null)) : null;
  if (sag !== null && kinds.includes(sag)) return [sag];
  const control = kinds.every((kind) => PLAYS.includes(kind)) ? controlSaid(layout, part) : null;
  if (control !== null && kinds.includes(control)) return [control];
  const lining = liningOf(layout, part, kinds);
  if (lining !== null) return [lining];
  if (kinds.includes("battery voltage") && saysCharged(layout, part)) return ["battery voltage"];
  if (!kinds.includes("charging voltage")) return kinds;
  if (isRunning(layout, part)) return ["charging voltage"];
  return kinds.includes("battery voltage") && isRested(layout, part) ? ["battery voltage"] : kinds;
}

/** A lining is a pad's or a shoe's: which, by what the bike has at that end. Null where both may be meant, or something else. */
function liningOf(layout: Layout, part: Part, kinds: readonly ReadingKind[]): "pad thickness" | "shoe thickness" | null {
  if (!kinds.every((kind) => kind === "pad thickness" || kind === "shoe thickness")) return null;
  const ends = phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are.filter((end) => end === "front" || end === "rear"));
  const items = bikeAt(layout, part).bike?.items ?? [];
  const has = (what: "pads" | "shoes"): boolean =>
    (ends.length === 0 ? ["front", "rear"] : ends).some((end) => items.some(({ key }) => key === `${end}-${what}.measure`));
  const [pads, shoes] = [has("pads"), has("shoes")];
  return pads === shoes ? null : pads ? "pad thickness" : "shoe thickness";
}

const PLAYS: readonly ReadingKind[] = ["clutch free play", "throttle free play", "brake free play"];

/** The only control that a part names, or else its clause: "clutch cable adjusted, 3 mm play". */
function controlSaid(layout: Layout, part: Part): ReadingKind | null {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to) ?? part;
  const { controls } = layout.known.vocabulary.measuring;
  for (const span of [part, clause]) {
    const named = Object.entries(controls).filter(([, words]) => tokensOf(span).some((at) => among(words, wordAt(layout.tokens, at))));
    const [only, ...others] = named;
    if (only !== undefined) return others.length === 0 ? (only[0] as ReadingKind) : null;
  }
  return null;
}

/** "Clutch 12 mm at lever end, throttle 3", "2-3 mm play": the free play of the control that stands right before a length, or that the clause names where the figure is called play. */
function playOf(layout: Layout, figure: Measurable): ReadingKind | null {
  const { controls, plays, leverEnds, levers } = layout.known.vocabulary.measuring;
  const { part, at, units, rangeTo } = figure;
  const isLength = units.some((unit) => dimensionOf(unit) === "length");
  const behind = at + (rangeTo === null ? 1 : 3);
  const isLever = among(levers, wordAt(layout.tokens, at - 1));
  const word = wordAt(layout.tokens, isLever ? at - 2 : at - 1);
  const found = Object.entries(controls).find(([, words]) => among(words, word))?.[0] as ReadingKind | undefined;
  // "Rear brake 3 mm" may be its pads.
  const before = found === "brake free play" && !isLever ? undefined : found;
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to) ?? part;
  const isListed = tokensOf(clause).some((n) => {
    const token = layout.tokens[n];
    return n < at && token?.is === "number" && token.units.some((unit) => dimensionOf(unit) === "length");
  });
  const kind = isLength && among(plays, wordAt(layout.tokens, behind)) ? controlSaid(layout, part) : isLength || (isListed && at === part.to) ? before : null;
  return kind != null && PLAYS.includes(kind) && canBe(kind, figure) && isPlainWith(layout, part, leverEnds) ? kind : null;
}

/** Does a part say that the engine ran, or how fast? */
const isRunning = oncePerPart((layout: Layout, part: Part): boolean => {
  const { rpm } = layout.known.vocabulary.measuring;
  const how = conditionsOf(layout, part);
  return how.includes("running") || how.includes("idling") || tokensOf(part).some((at) => among(rpm, wordAt(layout.tokens, at)));
});

/** "Sag: static 12, rider 34": the last word before the figure that says which, with no other figure between; else the one directly behind it. */
function sagSaid(layout: Layout, { at, part }: Measurable): "static sag" | "rider sag" | null {
  const { sags } = layout.known.vocabulary.measuring;
  const which = (n: number): "static sag" | "rider sag" | null => {
    const word = wordAt(layout.tokens, n);
    return among(sags["static sag"], word) ? "static sag" : among(sags["rider sag"], word) ? "rider sag" : null;
  };
  for (let n = at - 1; n >= part.from && layout.tokens[n]?.is !== "number"; n--) {
    const said = which(n);
    if (said !== null) return said;
  }
  return at < part.to ? which(at + 1) : null;
}

/** "36 of us came, front 20": one bare figure in a message that goes on about other things may be anything. */
const isInCompany = oncePerPart((layout: Layout, part: Part): boolean => {
  const figures = tokensOf(part).filter((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at)).length;
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);
  return figures > 1 || clause === undefined || strangersIn(layout, clause).every((other) => other === part);
});
/** The parts of a clause that are about something else; two are enough to know. */
const strangersIn = oncePerPart((layout: Layout, clause: Part): readonly Part[] => {
  const found: Part[] = [];
  for (const part of layout.clauses.find((each) => each === clause)?.parts ?? []) {
    if (!isPlainPart(layout, part) && !holdsMore(layout, part)) found.push(part);
    if (found.length > 1) break;
  }
  return found;
});
/** Work, a place, a unit or something wrong beside it: the part is about the bike. */
const holdsMore = (layout: Layout, part: Part): boolean =>
  namesWheel(layout, part) ||
  namesThing(layout, part) ||
  tokensOf(part).some((at) => {
    const token = layout.tokens[at];
    return layout.taken.has(at) || (token?.is === "number" ? token.units.length > 0 : isVerb(layout, at));
  });

/** A battery is rested with the engine off. */
const isRested = (layout: Layout, part: Part): boolean => phrasesInside(layout.phrases.condition, part).some(({ are }) => are.includes("rested"));

/** Whole volts that batteries are sold as. */
const isSoldAs = ({ value, token }: Measurable): boolean => token.decimals === 0 && [6, 12, 24].includes(value);

/** "12 V rested", "reads 12 V": what a meter shows; not "12 V battery". */
function isShown(layout: Layout, { part, at }: Measurable): boolean {
  const { tokens, known } = layout;
  const how = howParts(layout, part, part);
  const isBattery = kindWordsIn(layout, part).some((word) => word.at === at + 1 && word.are.includes("battery voltage"));
  if (isBattery && !phrasesInside(layout.phrases.condition, part).some((said) => said.at === at + 1)) return false;
  if (how.some((each) => isRested(layout, each)) || stoodHours(layout, how) !== null) return true;
  return among(known.vocabulary.measuring.shows, wordAt(tokens, at - 1));
}

/** A "12V battery" is what it is sold as, not what it shows; a bare figure counts only where nothing strange stands beside it. */
function isBelieved(layout: Layout, figure: Measurable, kind: ReadingKind): boolean {
  const { value, token, part } = figure;
  if (kind === "battery voltage" && isSoldAs(figure)) return isShown(layout, figure);
  // Compressors, washers and airlines have pressures too: one of a tyre stands by its wheel, or alone.
  if (kind === "cold pressure" && figure.units.length > 0) return isAtTyre(layout, figure);
  // Rims run out of true too.
  if (kind === "disc runout" && !isOfDisc(layout, part)) return false;
  // "Beer at 4 °C in the garage fridge".
  if (kind === "ambient temperature") return isPlainPart(layout, part) || isPlainButFor(layout, part);
  if (figure.units.length > 0 || kind === "cold pressure" || kind === "tread" || leadsToUnit(layout, figure)) return true;
  // "Valves done: in 0.12 ex 0.22": nothing else has hundredths of a millimetre.
  const isValve = phrasesInside(layout.phrases.place, part).some(({ are }) => are.includes("intake") || are.includes("exhaust"));
  if (kind === "valve clearance" && isValve && token.decimals >= 2 && value < 1) return true;
  return isPlainPart(layout, part) || (kind === "chain slack" && isPlainWith(layout, part, layout.known.vocabulary.measuring.spots));
}

/** Nothing but words that may stand beside a reading, and some of its own: "chain slack 35 at the tight spot". */
const isPlainWith = (layout: Layout, part: Part, own: readonly string[]): boolean =>
  tokensOf(part).every((at) => {
    const word = wordAt(layout.tokens, at);
    return word === null || layout.taken.has(at) || standsBeside(word, layout.known.vocabulary) || among(own, word);
  });

/** A figure with no kind named: a pressure by its unit or its place, a voltage where nothing else is said. */
function withoutWord(layout: Layout, figure: Measurable): readonly ReadingKind[] {
  const { part, units, value, token } = figure;
  const dimension = typedDimension(figure);
  if (dimension === "pressure") return isAtTyre(layout, figure) ? ["cold pressure"] : [];
  const play = playOf(layout, figure);
  if (play !== null) return [play];
  if (dimension === "voltage") {
    if (!isPlainPart(layout, part) || (isSoldAs(figure) && !isShown(layout, figure))) return [];
    if (isRunning(layout, part)) return ["charging voltage"];
    return isRested(layout, part) ? ["battery voltage"] : ["battery voltage", "charging voltage"];
  }
  // "Chain 30 mm", "chain was 45 mm": a length beside its name is its slack.
  if (dimension === "length" && isBehindChain(layout, figure) && canBe("chain slack", figure)) {
    const [unit] = figure.units;
    return [unit !== undefined && toCanonical(value, unit) > MOST_SAG ? "chain length" : "chain slack"];
  }
  // "Plugs 0.85 mm": what is set at a plug is its gap.
  if (dimension === "length" && among(layout.known.vocabulary.measuring.plugs, wordAt(layout.tokens, figure.at - 1)) && canBe("plug gap", figure))
    return isPlainPart(layout, part) ? ["plug gap"] : [];
  // "Chain 35" among other readings.
  const { chain } = layout.known.vocabulary.measuring;
  const isSlack = units.length === 0 && token.decimals === 0 && token.fraction === null && value >= LEAST_SLACK && value <= MOST_SLACK;
  if (isSlack && among(chain, wordAt(layout.tokens, figure.at - 1)) && figure.at === part.to && isPlainPart(layout, part)) return ["chain slack"];
  if (dimension === "length" && among(layout.known.vocabulary.measuring.belt, wordAt(layout.tokens, figure.at - 1)) && canBe("belt deflection", figure))
    return ["belt deflection"];
  if (dimension === "length" && canBe("tread", figure) && saysTyre(layout, part)) return ["tread"];
  // "5 thirty-seconds on the front".
  if (units.includes("1/32 in") && canBe("tread", figure) && namesWheel(layout, part) && isPlainPart(layout, part)) return ["tread"];
  // "Rear 3.5 mm": of what an end has, a tread or pads.
  if (dimension === "length" && canBe("tread", figure) && isPlainPart(layout, part)) {
    const tyre = clauseSaysTyre(layout, part);
    // "New front tyre, found 0.9 mm, left 4.5 mm": of a tyre nothing else is found and left in millimetres.
    if (tyre && (isAcrossSaid(layout, part) || phrasesInside(layout.phrases.state, part).length > 0)) return ["tread"];
    if (placeBeside(layout, figure)) return tyre || isAcrossSaid(layout, part) ? ["tread"] : ["tread", "pad thickness"];
  }
  // Below zero a coolant is only told by what it is good to.
  const isDegrees = dimension === "temperature" || units.includes("°");
  const isCoolant = isDegrees ? saysCoolant(layout, part) : units.length === 0 && namesCoolant(layout, part);
  if (value < 0 && isCoolant && isPlainPart(layout, part)) return ["coolant strength"];
  if (dimension === "temperature")
    return (isPlainPart(layout, part) || isPlainButFor(layout, part)) && isBesideAir(layout, part) ? ["ambient temperature"] : [];
  if (isOfOther(layout, part)) return [];
  if (isPairAlone(layout, part)) return ["cold pressure"];
  // "Front 4 centre 5 edges": no tyre has its pressure there.
  if (units.length === 0 && (isAcrossSaid(layout, part) || (clauseSaysTyre(layout, part) && isAcrossIn(layout, part))))
    return canBe("tread", figure) ? ["tread"] : [];
  // "Front tyre 4/32": only treads are told in 32nds of an inch.
  if (token.fraction === 32 && value < 1 && isPlainPart(layout, part) && (clauseSaysTyre(layout, part) || namesWheel(layout, part))) return ["tread"];
  const slang = units.includes("lb") && placeBeside(layout, figure);
  const bare = units.length === 0 || (token.unitText !== null && token.unitText.toLowerCase() === "in") || figure.place !== null;
  if (!slang && !bare) return [];
  if (token.fraction !== null && figure.value === token.value) return [];
  if (possibleUnits("cold pressure", value).length === 0) return [];
  // "Set 36 in the garage at 68 °F, 35 °F outside".
  if (layout.airs?.is === "said" && isSet(layout, figure)) return ["cold pressure"];
  // "Tickets 33 each, front row": a bare figure is a pressure where its part is about nothing else, or names the unit.
  const unitSaid = bare && unitAlone(layout, part, "pressure") !== null;
  // "Front tyre 89.90": a price.
  if (!unitSaid && units.length === 0 && token.decimals >= 2 && value > MOST_BAR) return [];
  // "Rear tyre 4": its pressure in bar, or its tread in millimetres?
  if (!unitSaid && units.length === 0 && value <= MOST_TREAD && saysTyre(layout, part)) return ["cold pressure", "tread"];
  const isPlain = (isPlainPart(layout, part) && isInCompany(layout, part)) || isMoved(layout, part);
  return unitSaid || (placeBeside(layout, figure) && (slang || isPlain)) || (namesWheel(layout, part) && isMoved(layout, part)) ? ["cold pressure"] : [];
}

/** "Coolant -30 °C", "changed the coolant, -30 °C": its part, or the one before it. */
const saysCoolant = oncePerPart((layout: Layout, part: Part): boolean => {
  const before = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to)?.parts.findLast(({ to }) => to < part.from);
  return namesCoolant(layout, part) || (before !== undefined && namesCoolant(layout, before));
});

const namesCoolant = (layout: Layout, part: Part): boolean => phrasesInside(layout.phrases.kind, part).some(({ are }) => are.includes("coolant level"));

/** Right behind a word for setting tyres. */
const isSet = ({ tokens, known }: Layout, { at }: Measurable): boolean =>
  [at - 1, at - 2, at - 3].some((n) => among(known.vocabulary.measuring.airs.sets, wordAt(tokens, n)));

const clauseSaysTyre = oncePerPart((layout: Layout, part: Part): boolean => {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to) ?? part;
  return saysTyre(layout, clause);
});

/** "New tyres front and rear, 85 each": beside a part that was renewed a bare figure in a part of its own may be what it cost. */
function isPrice(layout: Layout, { at, part, place }: Measurable): boolean {
  if (among(layout.known.vocabulary.measuring.each, wordAt(layout.tokens, at + 1))) return true;
  if (place !== null || part.from !== part.to) return false;
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);
  return clause !== undefined && firstNewIn(layout, clause) < part.from;
}

/** The first token of a clause that says something is new; none is beyond all. */
const firstNewIn = oncePerPart(
  (layout: Layout, clause: Part): number =>
    tokensOf(clause).find((at) => among(layout.known.vocabulary.renewed, wordAt(layout.tokens, at))) ?? Number.POSITIVE_INFINITY,
);

/** "Center 4 edges 3": only a tread is told so. */
const isAcrossSaid = oncePerPart((layout: Layout, part: Part): boolean =>
  tokensOf(part).some((at) => among(layout.known.vocabulary.measuring.acrossTread, wordAt(layout.tokens, at))),
);

const isAcrossIn = oncePerPart((layout: Layout, part: Part): boolean => {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to) ?? part;
  return isAcrossSaid(layout, clause);
});

const saysTyre = oncePerPart((layout: Layout, part: Part): boolean =>
  tokensOf(part).some((at) => among(layout.known.vocabulary.measuring.tyre, wordAt(layout.tokens, at))),
);

/** mm; no chain hangs so far. */
const MOST_SAG = 150;

/** Slacks that riders name by a bare figure, mm. */
const [LEAST_SLACK, MOST_SLACK] = [12, 70];

/** Gauges show hundredths of bars alone. */
const MOST_BAR = 5;

/** mm; what a figure by a tyre is more of is its pressure. */
const MOST_TREAD = 9;

/** A temperature beside a pressure or a voltage is the one at which it was read. */
const isBesideAir = (layout: Layout, part: Part): boolean => {
  const clause = layout.clauses.find(({ from, to }) => part.from >= from && part.to <= to);
  return (
    clause?.parts.flatMap(tokensOf).some((at) => {
      const token = layout.tokens[at];
      return token?.is === "number" && token.units.some((unit) => dimensionOf(unit) === "pressure" || dimensionOf(unit) === "voltage");
    }) === true
  );
};

/** "Fork air 34 psi": a pressure, and none of a tyre. */
const isOfOther = oncePerPart((layout: Layout, part: Part): boolean => {
  const { notTyres, tyre } = layout.known.vocabulary.measuring;
  const has = (list: readonly string[]): boolean => tokensOf(part).some((at) => among(list, wordAt(layout.tokens, at)));
  return has(notTyres) && !has(tyre);
});

/** Is a place of a wheel said in the figure's part, or nothing but what may stand beside a reading? */
const isAtTyre = (layout: Layout, figure: Measurable): boolean =>
  !isOfOther(layout, figure.part) && (figure.place !== null || namesWheel(layout, figure.part) || isPlainPart(layout, figure.part));
export const namesWheel = oncePerPart((layout: Layout, part: Part): boolean =>
  phrasesInside(layout.phrases.place, part).some(({ are }) => are.some((place) => WHEELS.includes(place))),
);
/** Words in the longest phrase for a place. */
const LONGEST_PLACE = 4;
const WHEELS: readonly string[] = ["front", "rear", "both", "sidecar"];

/** Does a place of a wheel stand next to the figure (one word between allowed)? */
function placeBeside(layout: Layout, figure: Measurable): boolean {
  if (figure.place !== null) return true;
  const around = { from: Math.max(figure.part.from, figure.at - LONGEST_PLACE - 2), to: Math.min(figure.part.to, figure.at + LONGEST_PLACE + 2) };
  return phrasesInside(layout.phrases.place, around).some(
    ({ at, to, are }) => are.some((place) => WHEELS.includes(place)) && !layout.taken.has(at) && at - figure.at <= 2 && figure.at - to <= 2,
  );
}

/** "12.1 V rested 3 days at -20 °C": nothing strange but how long the battery had stood. */
const isPlainButFor = oncePerPart((layout: Layout, part: Part): boolean => {
  const { vocabulary } = layout.known;
  const { spans, hours, minutes, stood } = vocabulary.measuring;
  if (!kindWordsIn(layout, part).some(({ are }) => are.includes("battery voltage")) || stoodHours(layout, [part]) === null) return false;
  const isSpan = (word: string): boolean => under(spans, word) !== undefined || [hours, minutes, stood.words, stood.after].some((list) => among(list, word));
  return tokensOf(part).every((at) => {
    const word = wordAt(layout.tokens, at);
    return word === null || layout.taken.has(at) || standsBeside(word, vocabulary) || isSpan(word);
  });
});

/** Nothing but words that may stand beside a reading, and perhaps what is wrong with what was read behind it. */
export const isPlainPart = oncePerPart((layout: Layout, part: Part): boolean =>
  tokensOf(withoutSign(layout, part)).every((at) => {
    const word = wordAt(layout.tokens, at);
    // "34 front 38 rear psi": a unit by itself is that of its figures.
    return word === null || layout.taken.has(at) || standsBeside(word, layout.known.vocabulary) || isPressureUnit(layout, word);
  }),
);
const isPressureUnit = ({ known }: Layout, word: string): boolean => {
  const units = unitsNamed(word, known.vocabulary.units);
  return units.length === 1 && units.every((unit) => dimensionOf(unit) === "pressure");
};
