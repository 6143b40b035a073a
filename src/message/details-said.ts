// The details of a job in a message: how much of what, the code of a new tyre, what it cost, who did it, what new pads and tyres measure.
// What they account for is no reading of the bike.

import type { ItemKey } from "../core/ids.ts";
import { dimensionOf, type UnitId } from "../core/quantity/units.ts";
import type { LogReading, RecordWork } from "../core/reading/intent.ts";
import type { Place } from "../core/reading/kinds.ts";
import { tyreCodeIn } from "../core/tyre/date-code.ts";
import { type Cost, NO_DETAIL, type PartFitted, type Quantity, type WorkDetail } from "../core/work-detail.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { constructionsIn } from "./construction-said.ts";
import { fluidsSaid, isOfFluids } from "./fluids-said.ts";
import { kindWordsIn, namesWheel } from "./kind-of.ts";
import { keptSaid } from "./kit-kept.ts";
import { type Layout, phrasesInside } from "./layout.ts";
import { mark, tokensOf } from "./pieces.ts";
import type { NumberToken } from "./scan.ts";
import type { WorkSaid } from "./work-said.ts";

/** Behind a quantity, what it was of: an oil grade (SAE J300: "20W-50"), a gear oil ("75W-90"), a fluid class ("DOT 4"). */
const GRADE = /^ {0,2}(?:of )?(\d{1,2}[wW]-?\d{2,3}|SAE \d{2}|DOT ?[345](?:\.1)?)(?![\p{L}\p{N}])/u;
/** The week and the year of a tyre's code. Source: 49 CFR 574.5, date code: week and year, two digits each. */
const TYRE_CODE = /^(0[1-9]|[1-4]\d|5[0-3])(\d{2})$/u;

/** A clause's work with its details, and the readings that come with it. */
export type Detailed = { readonly work: WorkSaid; readonly readings: readonly LogReading[] };

export function withDetails(layout: Layout, clause: Clause, said: WorkSaid): Detailed {
  const work = withOneSize(layout, clause, said);
  const [first] = work.intents;
  if (first === undefined) return { work, readings: [] };
  const used = new Set(work.used);
  const at = tokensOf(clause).filter((each) => !used.has(each) && !layout.taken.has(each));
  const by = shopSaid(layout, at, used);
  const quantities = quantitiesSaid(layout, at, used);
  const poured = Math.max(0, work.intents.findIndex(isOfFluids));
  const fluids = fluidsSaid(layout, clause, at, work.intents[poured] ?? first, used, work.used);
  const battery = batterySaid(layout, clause, first, used);
  const parts = [...tyresSaid(layout, clause, at, first, used), ...(poured === 0 ? fluids : []), ...battery, ...keptSaid(layout, clause, first, used)];
  const cost = costSaid(layout, at, by !== null, used);
  const readings = freshSaid(layout, clause, at, first, used);
  const detail: WorkDetail = { ...(first.detail ?? NO_DETAIL), quantities, parts, cost, by };
  if (quantities.length + parts.length + fluids.length === 0 && cost === null && by === null) return { work: { ...work, used }, readings };
  // What was said once belongs to the first job of the clause, a fluid to the first that it goes into; who did it, to all of them.
  const told = work.intents.map((intent, n): RecordWork => {
    if (n === 0) return { ...intent, detail };
    const own = n === poured ? fluids : [];
    return by === null && own.length === 0 ? intent : { ...intent, detail: { ...(intent.detail ?? NO_DETAIL), parts: own, by } };
  });
  // "Swapped it for a lithium one": which battery it is, and no work of its own.
  const isItsKind = ({ items, words }: RecordWork): boolean => battery.length > 0 && items.length === 0 && isBatteryKind(layout, words);
  const [intents, missing] = [told, work.missing].map((each) => each.filter((intent) => !isItsKind(intent)));
  return { work: { ...work, intents: intents ?? [], missing: missing ?? [], used }, readings };
}

const isBatteryKind = ({ known: { vocabulary } }: Layout, words: string): boolean => {
  const left = words
    .toLowerCase()
    .split(/[^\p{L}\p{N}-]+/u)
    .filter((word) => !among(vocabulary.articles, word) && !among(vocabulary.refitted.one, word));
  return Object.values(vocabulary.details.batteries).some((names) => names.includes(left.join(" ")));
};

/** "New tyres 120/70-17": one size is that of one tyre, and which one is asked. */
function withOneSize(layout: Layout, clause: Part, work: WorkSaid): WorkSaid {
  const [first, ...others] = work.intents;
  const marks = layout.marks.filter(({ from, to }) => from >= clause.from && to <= clause.to);
  if (first === undefined || marks.length !== 1 || first.items.length !== TYRES.length || !TYRES.every((tyre) => first.items.some((item) => item === tyre)))
    return work;
  return { ...work, intents: [{ ...first, items: [], gaps: [...first.gaps, { need: "item", options: first.items }] }, ...others] };
}

const numberAt = (layout: Layout, at: number): NumberToken | null => {
  const token = layout.tokens[at];
  return token?.is === "number" ? token : null;
};

/** Who works on bikes for others, named as the one who did it. Marks the word as accounted for. */
export function shopSaid(layout: Layout, at: readonly number[], used: Set<number>): string | null {
  const { details } = layout.known.vocabulary;
  for (const each of at) {
    const word = wordAt(layout.tokens, each);
    if (word === null || !details.shops.includes(word) || !details.byWhom.includes(wordAt(layout.tokens, each - 1) ?? "")) continue;
    // "In the garage" is where one's own bike stands.
    if (among(details.within, wordAt(layout.tokens, each - 2))) continue;
    used.add(each);
    return word;
  }
  return null;
}

function quantitiesSaid(layout: Layout, at: readonly number[], used: Set<number>): readonly Quantity[] {
  return at.flatMap((each): readonly Quantity[] => {
    const token = numberAt(layout, each);
    const unit = token?.units.find((one) => dimensionOf(one) === "volume") ?? null;
    if (token === null || unit === null) return [];
    const behind = GRADE.exec(layout.text.slice(token.end, token.end + 20));
    mark(layout, at, token.start, token.end + (behind?.[0].length ?? 0), used);
    return [{ value: token.value, unit, of: behind?.[1] ?? null, typed: token.text }];
  });
}

const BATTERY = "battery.test";
const TYRES = ["front-tyre.replace", "rear-tyre.replace"] as const;

/** "New rear tyre 3725", "new rear tyre 180/55ZR17 (73W)": four digits that are a week and a year not later than now, and what else is moulded on it. */
function tyresSaid(layout: Layout, clause: Part, at: readonly number[], intent: RecordWork, used: Set<number>): readonly PartFitted[] {
  const said = intent.items.filter((item) => (TYRES as readonly string[]).includes(item));
  // Which tyre it is may still be asked.
  const asked = intent.gaps.some((gap) => gap.need === "item" && gap.options.some((item) => (TYRES as readonly string[]).includes(item)));
  const items: readonly (ItemKey | null)[] = said.length === 0 && asked ? [null] : said;
  if (items.length === 0) return [];
  const year = Number(layout.known.today.slice(2, 4));
  const codes = at.filter((each) => {
    const token = numberAt(layout, each);
    const code = token === null || token.units.length > 0 ? null : TYRE_CODE.exec(token.code === "said" ? (tyreCodeIn(token.text) ?? "") : token.text);
    // "Rear tyre fitted 2019" is the year, not a week of it.
    return code !== null && intent.on.typed !== token?.text && Number(code[2]) <= year && !among(layout.known.vocabulary.at, wordAt(layout.tokens, each - 1));
  });
  const marks = layout.marks.filter(({ from, to }) => from >= clause.from && to <= clause.to);
  const built = builtSaid(layout, clause, used);
  return items.flatMap((item, n): readonly PartFitted[] => {
    const [code, mark] = [codes[n], markOf(layout, item, marks) ?? marks[n]];
    const token = code === undefined ? null : numberAt(layout, code);
    if (code !== undefined) used.add(code);
    const kind = new Set(built.map(({ is }) => is)).size === 1 ? built[0] : markOf(layout, item, built);
    const typed = [mark?.typed, kind?.typed].filter((each) => each !== undefined);
    return token === null && typed.length === 0
      ? []
      : [{ words: typed.length > 0 ? typed.join(" ") : intent.words, item, made: token === null ? null : (tyreCodeIn(token.text) ?? token.text) }];
  });
}

/** "New rear tyre, radial": how it is built, at its tokens. */
function builtSaid(layout: Layout, clause: Part, used: Set<number>) {
  const start = layout.tokens[clause.from]?.start ?? 0;
  const said = constructionsIn(layout.text.slice(start, layout.tokens[clause.to]?.end), layout.known.vocabulary.details.constructions);
  return said.map(({ is, typed, ...at }) => {
    const inside = tokensOf(clause).filter((each) => {
      const token = layout.tokens[each];
      return token !== undefined && token.end > start + at.from && token.start < start + at.to;
    });
    for (const each of inside) used.add(each);
    return { is, typed, from: inside[0] ?? clause.from, to: inside.at(-1) ?? clause.from };
  });
}

/** "180/55 rear and 120/70 front": the size by whose side the end of a tyre is said, where each has one. */
function markOf<T extends Part>(layout: Layout, item: ItemKey | null, marks: readonly T[]): T | undefined {
  const ends = marks.map(({ from, to }) => {
    const beside = [
      ...phrasesInside(layout.phrases.place, { from: to + 1, to: to + 2 }),
      ...phrasesInside(layout.phrases.place, { from: from - 2, to: from - 1 }),
    ];
    return beside.flatMap(({ are }) => are).find((end) => end === "front" || end === "rear");
  });
  if (new Set(ends).size !== marks.length || ends.includes(undefined)) return undefined;
  return marks[ends.findIndex((end) => end !== undefined && item?.startsWith(`${end}-`) === true)];
}

/** "New battery, lithium", "a new gel battery": of which kind it is, by the name of the kind in the trade's table. */
function batterySaid(layout: Layout, clause: Clause, intent: RecordWork, used: Set<number>): readonly PartFitted[] {
  const item = intent.items.find((each) => each === BATTERY);
  const all = tokensOf(clause);
  const [first, last] = [layout.tokens[all[0] ?? -1], layout.tokens[all.at(-1) ?? -1]];
  if (item === undefined || intent.outcome !== "replaced" || first === undefined || last === undefined) return [];
  const text = layout.text.slice(first.start, last.end).toLowerCase();
  const named = Object.entries(layout.known.vocabulary.details.batteries).flatMap(([kind, names]) =>
    names.flatMap((name) => {
      const at = ` ${text.replace(/[^\p{L}\p{N}-]/gu, " ")} `.indexOf(` ${name} `);
      return at < 0 ? [] : [{ kind, start: first.start + at, end: first.start + at + name.length }];
    }),
  );
  // "The gel one out, lithium in" names two, and which is in is not for us to say.
  if (new Set(named.map(({ kind }) => kind)).size !== 1) return [];
  for (const { start, end } of named) mark(layout, all, start, end, used);
  return named.slice(0, 1).map(({ kind }) => ({ words: kind, item, made: null }));
}

/** An amount beside a sign or word of money; else a bare figure with two decimals, or any bare figure that ends the message where a shop did it. */
export function costSaid(layout: Layout, at: readonly number[], byShop: boolean, used: Set<number>): Cost | null {
  const { currencies, forCost } = layout.known.vocabulary.details;
  for (const each of at) {
    const token = numberAt(layout, each);
    if (token === null || used.has(each) || token.units.length > 0) continue;
    const beside = [each - 1, each + 1].flatMap((n) => currencies[markOrWord(layout, n)] ?? []);
    // "For 210", of a shop.
    const alone = isAlone(layout, each) || (byShop && among(forCost, wordAt(layout.tokens, each - 1)));
    const bare = alone && (token.decimals === 2 || (byShop && token.decimals === 0 && token.value < 100_000));
    if (beside.length === 0 && !bare) continue;
    used.add(each);
    return { minor: Math.round(token.value * 100), currency: beside[0] ?? null, typed: token.text };
  }
  return null;
}

function markOrWord(layout: Layout, at: number): string {
  const token = layout.tokens[at];
  return token?.is === "break" ? token.mark : (wordAt(layout.tokens, at) ?? "");
}

/** Between commas or ends by itself; the day or the bike may be said behind it: "380 on 20 November". */
function isAlone(layout: Layout, at: number): boolean {
  const { tokens, taken, known } = layout;
  const edge = (n: number): boolean => tokens[n] === undefined || tokens[n]?.is === "break";
  const behind = among(known.vocabulary.onBike, wordAt(tokens, at + 1)) ? at + 2 : at + 1;
  return edge(at - 1) && (edge(at + 1) || taken.has(behind));
}

/** What is measured of a part that was put in new. `bare`: a length that stands by itself beside it can be nothing else. */
const FRESH: Readonly<Record<string, { readonly kind: "pad thickness" | "tread"; readonly place: Place; readonly bare: boolean }>> = {
  "front-pads.measure": { kind: "pad thickness", place: "front", bare: false },
  "rear-pads.measure": { kind: "pad thickness", place: "rear", bare: false },
  "front-tyre.replace": { kind: "tread", place: "front", bare: true },
  "rear-tyre.replace": { kind: "tread", place: "rear", bare: true },
};

/** "Front pads swapped, 5 mm on the new ones", "new rear tyre, 7.5 mm", "new tyres, 7 mm rear 5 mm front": what the new parts measure, as left. */
function freshSaid(layout: Layout, clause: Clause, at: readonly number[], intent: RecordWork, used: Set<number>): readonly LogReading[] {
  const fresh = intent.items.flatMap((item) => FRESH[item] ?? []);
  const kind = fresh[0]?.kind;
  if (kind === undefined || intent.outcome !== "replaced" || fresh.some((each) => each.kind !== kind) || intent.on.from !== intent.on.to) return [];
  const lengths = at.flatMap((each): readonly { readonly at: number; readonly token: NumberToken; readonly unit: UnitId }[] => {
    const token = numberAt(layout, each);
    const unit = token?.units.find((one) => dimensionOf(one) === "length");
    return token === null || unit === undefined ? [] : [{ at: each, token, unit }];
  });
  const parts = clause.parts.filter(({ from, to }) => lengths.some((length) => length.at >= from && length.at <= to));
  const named = parts.flatMap((part) => kindWordsIn(layout, part).flatMap(({ are }) => are));
  const isNew = at.some((each) => among(layout.known.vocabulary.details.fresh, wordAt(layout.tokens, each)));
  // A place beside the name of the kind says by itself where it was read; another kind, what.
  const isBare = (named.length === 0 || named.includes(kind)) && !parts.some((part) => namesWheel(layout, part) && named.length > 0);
  const beside = endsBeside(layout, parts);
  // "Front tyre new, rear 4 mm": of the end that is said, and that is not the new one.
  if (lengths.length === 1 && beside.length > 0 && !beside.some((end) => fresh.some(({ place }) => place === end))) return [];
  const places = lengths.length === 1 ? fresh.map(({ place }) => place) : beside;
  if (!(fresh[0]?.bare === true ? isBare : isNew) || lengths.length === 0 || (lengths.length > 1 && places.length !== lengths.length)) return [];
  for (const length of lengths) used.add(length.at);
  // "Rear tyre replaced, 1.5 mm left": what was left of the one that came off.
  const remained = lengths.some((length) =>
    phrasesInside(layout.phrases.state, { from: length.at + 1, to: length.at + 1 }).some(({ are }) => are.includes("left")),
  );
  const isOld = remained || parts.some((part) => tokensOf(part).some((each) => among(layout.known.vocabulary.details.old, wordAt(layout.tokens, each))));
  return places.flatMap((place, n): readonly LogReading[] => {
    const length = lengths[lengths.length === 1 ? 0 : n];
    if (length === undefined || !fresh.some((each) => each.place === place)) return [];
    const { token, unit } = length;
    return [
      {
        ...{ do: "log reading", bike: intent.bike, kind, place, value: token.value, unit, on: intent.on.from },
        ...{
          typed: { text: token.text, unit: token.unitText },
          detail: { state: isOld ? "found" : "left" },
          gaps: intent.gaps.filter((gap) => gap.need === "bike"),
        },
      },
    ];
  });
}

/** The ends that stand beside lengths, in order: one for each, front and rear. */
const endsBeside = (layout: Layout, parts: readonly Part[]): readonly Place[] => {
  const ends = parts.flatMap((part) => phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are.filter((end) => end === "front" || end === "rear")));
  return new Set(ends).size === ends.length ? ends : [];
};
