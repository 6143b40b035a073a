// The details of a job in a message: how much of what, the code of a new tyre, what it cost, who did it, what the new pads measure.
// What they account for is no reading of the bike.

import type { ItemKey } from "../core/ids.ts";
import { dimensionOf } from "../core/quantity/units.ts";
import type { LogReading, RecordWork } from "../core/reading/intent.ts";
import type { Place } from "../core/reading/kinds.ts";
import { type Cost, NO_DETAIL, type PartFitted, type Quantity, type WorkDetail } from "../core/work-detail.ts";
import { among } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import type { Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import type { NumberToken } from "./scan.ts";
import type { WorkSaid } from "./work-said.ts";

/** Behind a quantity, what it was of: an oil grade (SAE J300: "20W-50"), a gear oil ("75W-90"), a fluid class ("DOT 4"). */
const GRADE = /^ {0,2}(?:of )?(\d{1,2}[wW]-?\d{2,3}|SAE \d{2}|DOT ?[345](?:\.1)?)(?![\p{L}\p{N}])/u;
/** The week and the year of a tyre's code. Source: 49 CFR 574.5, date code: week and year, two digits each. */
const TYRE_CODE = /^(0[1-9]|[1-4]\d|5[0-3])(\d{2})$/u;

/** A clause's work with its details, and the readings that come with it. */
export type Detailed = { readonly work: WorkSaid; readonly readings: readonly LogReading[] };

export function withDetails(layout: Layout, clause: Clause, work: WorkSaid): Detailed {
  const [first] = work.intents;
  if (first === undefined) return { work, readings: [] };
  const used = new Set(work.used);
  const at = tokensOf(clause).filter((each) => !used.has(each) && !layout.taken.has(each));
  const by = shopSaid(layout, at, used);
  const quantities = quantitiesSaid(layout, at, used);
  const parts = [...tyresSaid(layout, at, first, used), ...fluidsSaid(layout, at, first, used)];
  const cost = costSaid(layout, at, by !== null, used);
  const readings = padsSaid(layout, at, first, used);
  const detail: WorkDetail = { quantities, parts, cost, by };
  if (quantities.length + parts.length === 0 && cost === null && by === null) return { work: { ...work, used }, readings };
  // What was said once belongs to the first job of the clause; who did it, to all of them.
  const intents = work.intents.map(
    (intent, n): RecordWork => (n === 0 ? { ...intent, detail } : by === null ? intent : { ...intent, detail: { ...NO_DETAIL, by } }),
  );
  return { work: { ...work, intents, used }, readings };
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

/** Marks the tokens of a stretch of the text as accounted for. */
function mark(layout: Layout, at: readonly number[], start: number, end: number, used: Set<number>): void {
  for (const each of at) {
    const token = layout.tokens[each];
    if (token !== undefined && token.start >= start && token.start < end) used.add(each);
  }
}

/** A fluid class by its label. Source: 49 CFR 571.116. */
const FLUID = /(?<![\p{L}\p{N}])DOT ?([34]|5(?:\.1)?)(?![\p{L}\p{N}])/giu;
const FLUIDS = /^(?:brake|clutch)-fluid\./u;
const TYRES = ["front-tyre.replace", "rear-tyre.replace"] as const;

/** "New rear tyre 3725": four digits that are a week and a year not later than now. */
function tyresSaid(layout: Layout, at: readonly number[], intent: RecordWork, used: Set<number>): readonly PartFitted[] {
  const said = intent.items.filter((item) => (TYRES as readonly string[]).includes(item));
  // Which tyre it is may still be asked.
  const asked = intent.gaps.some((gap) => gap.need === "item" && gap.options.some((item) => (TYRES as readonly string[]).includes(item)));
  const items: readonly (ItemKey | null)[] = said.length === 0 && asked ? [null] : said;
  if (items.length === 0) return [];
  const year = Number(layout.known.today.slice(2, 4));
  const codes = at.filter((each) => {
    const token = numberAt(layout, each);
    const code = token === null || token.units.length > 0 ? null : TYRE_CODE.exec(token.text);
    return code !== null && Number(code[2]) <= year && !among(layout.known.vocabulary.at, wordAt(layout.tokens, each - 1));
  });
  return codes.slice(0, items.length).flatMap((each, n): readonly PartFitted[] => {
    const token = numberAt(layout, each);
    if (token === null) return [];
    used.add(each);
    return [{ words: intent.words, item: items[n] ?? null, made: token.text }];
  });
}

/** "Topped up with DOT 4": the class of a fluid of which no amount was said. */
function fluidsSaid(layout: Layout, at: readonly number[], intent: RecordWork, used: Set<number>): readonly PartFitted[] {
  const item = intent.items.find((each) => FLUIDS.test(each));
  const [first, last] = [layout.tokens[at[0] ?? -1], layout.tokens[at.at(-1) ?? -1]];
  if (item === undefined || first === undefined || last === undefined) return [];
  return [...layout.text.slice(first.start, last.end).matchAll(FLUID)].flatMap((found): readonly PartFitted[] => {
    const [start, end] = [first.start + found.index, first.start + found.index + found[0].length];
    const taken = at.some((each) => used.has(each) && (layout.tokens[each]?.start ?? -1) >= start && (layout.tokens[each]?.start ?? -1) < end);
    if (taken) return [];
    mark(layout, at, start, end, used);
    return [{ words: `DOT ${found[1]}`, item, made: null }];
  });
}

/** An amount beside a sign or word of money; else a bare figure with two decimals, or any bare figure that ends the message where a shop did it. */
export function costSaid(layout: Layout, at: readonly number[], byShop: boolean, used: Set<number>): Cost | null {
  const { currencies } = layout.known.vocabulary.details;
  for (const each of at) {
    const token = numberAt(layout, each);
    if (token === null || used.has(each) || token.units.length > 0) continue;
    const beside = [each - 1, each + 1].flatMap((n) => currencies[markOrWord(layout, n)] ?? []);
    const alone = isAlone(layout, each);
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

/** Between commas or ends by itself. */
function isAlone(layout: Layout, at: number): boolean {
  const edge = (n: number): boolean => layout.tokens[n] === undefined || layout.tokens[n]?.is === "break";
  return edge(at - 1) && edge(at + 1);
}

const PADS: Readonly<Record<string, Place>> = { "front-pads.measure": "front", "rear-pads.measure": "rear" };

/** "Front pads swapped, 5 mm on the new ones": what the new pads measure, as left. */
function padsSaid(layout: Layout, at: readonly number[], intent: RecordWork, used: Set<number>): readonly LogReading[] {
  const places = intent.items.flatMap((item) => PADS[item] ?? []);
  if (places.length === 0 || intent.outcome !== "replaced") return [];
  const fresh = at.some((each) => among(layout.known.vocabulary.details.fresh, wordAt(layout.tokens, each)));
  const lengths = at.filter((each) => numberAt(layout, each)?.units.some((unit) => dimensionOf(unit) === "length"));
  const [only] = lengths;
  const token = only === undefined ? null : numberAt(layout, only);
  const unit = token?.units.find((each) => dimensionOf(each) === "length") ?? null;
  if (!fresh || lengths.length !== 1 || token === null || unit === null || only === undefined || intent.on.from !== intent.on.to) return [];
  used.add(only);
  return places.map((place) => ({
    ...{ do: "log reading", bike: intent.bike, kind: "pad thickness", place, value: token.value, unit, on: intent.on.from },
    ...{ typed: { text: token.text, unit: token.unitText }, detail: { state: "left" }, gaps: intent.gaps.filter((gap) => gap.need === "bike") },
  }));
}
