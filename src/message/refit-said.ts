// A part that came off and went on again, or gave way to a new one: "put the old battery back at 14,500", "took the chain off at 12,000, new one on".

import type { ItemKey } from "../core/ids.ts";
import type { Gap, RecordWork } from "../core/reading/intent.ts";
import type { KnownBike, KnownPieces, RefitWords } from "../core/reading/vocabulary.ts";
import type { Outcome } from "../core/schedule/facts.ts";
import { readTyreDate } from "../core/tyre/date-code.ts";
import { NO_DETAIL, type PartFitted } from "../core/work-detail.ts";
import { among } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { asSpan, bikeAt, dayAt, type Layout } from "./layout.ts";
import { isAnd, tokensOf } from "./pieces.ts";
import { foldWord } from "./scan.ts";
import { figuresOf, gapsOfFigure } from "./work-when.ts";

/** What a clause says of parts that went on again; `rest`: the clause without it. */
export type RefitSaid = { readonly intents: readonly RecordWork[]; readonly used: ReadonlySet<number>; readonly rest: Clause };

/** Null where nothing is said to have gone on again. */
export function refitSaid(layout: Layout, clause: Clause): RefitSaid | null {
  const { refitted } = layout.known.vocabulary;
  if (!clause.parts.some((part) => tokensOf(part).some((at) => maySay(refitted, wordAt(layout.tokens, at))))) return null;
  const segments = clause.parts.flatMap((part) => segmentsOf(layout, part));
  const intents: RecordWork[] = [];
  const used = new Set<number>();
  const told = new Set<Part>();
  let named: Named | null = null;
  let off: Part | null = null;
  for (const segment of segments) {
    const words = tokensOf(segment).map((at) => wordAt(layout.tokens, at) ?? figureAt(layout, at));
    const found = partIn(words, refitted) ?? endIn(layout, words);
    // "Put new back pads in": the back of a name is no way back.
    const around = found === null ? words : ` ${words.join(" ")} `.replace(` ${found.name} `, " ").split(" ");
    const isOne = words.some((word) => among(refitted.one, word));
    const part: Named | null = found ?? (isOne ? named : null);
    named = found ?? named;
    if (part === null) continue;
    const isOff = words.some((word) => among(refitted.off, word));
    // "Rear tyre off, new one on": nothing but the thing, and that it is off.
    const isTaken = isOff && (words.some((word) => among(refitted.taken, word)) || (found !== null && around.every((word) => isIdle(layout, word))));
    const isRenewed = around.some((word) => among(layout.known.vocabulary.renewed, word));
    // "Old battery back in": without a word for an earlier one, what is back in may be anything.
    const isOld = words.some((word) => among(refitted.old, word) || among(refitted.original, word));
    const isBack =
      !isRenewed &&
      (around.some((word) => among(refitted.refit, word)) ||
        (around.some((word) => among(refitted.back, word)) &&
          (around.some((word) => among(refitted.put, word)) || (isOld && around.some((word) => among(refitted.on, word))))));
    const isNew = found === null && isRenewed;
    const meant = bikeFor(layout, segment, part.parts, isBack);
    const known = meant.bike?.pieces?.filter((each) => part.parts.includes(each.part)) ?? [];
    const able = known.filter(cameOff);
    if (isTaken && !isBack) {
      off = segment;
      continue;
    }
    const renewals = known.map(({ renew }) => renew);
    if (isBack && able.length > 0) {
      const options = able.flatMap((each) => pieceMeant(words, each, refitted));
      // A sprocket that went back brings no chain with it.
      intents.push(recordOf(layout, options, segment, off, meant, "done", !among(refitted.some, part.name)));
    } else if (isBack && known.length > 0 && words.some((word) => among(refitted.old, word))) {
      // Of no earlier one anything is known: what was done is asked, since it must not be passed over.
      intents.push(recordOf(layout, renewals, segment, off, meant, "replaced", false));
    } else if (isNew && off !== null && known.length > 0) {
      const renewal = recordOf(layout, renewals, segment, off, meant, "replaced");
      const code = codeOf(layout, renewal, part.name, segments);
      if (code !== null) told.add(code.segment);
      intents.push(code === null ? renewal : { ...renewal, detail: { ...NO_DETAIL, parts: [code.fitted] } });
    } else continue;
    for (const each of off === null ? [segment] : [off, segment]) {
      told.add(each);
      for (const at of tokensOf(each)) used.add(at);
    }
    off = null;
  }
  return intents.length === 0 ? null : { intents, used, rest: { ...clause, parts: segments.filter((segment) => !told.has(segment)) } };
}

/** The pieces that words can mean: one where they leave no doubt, else all that are to be asked about. @param words folded */
export function pieceMeant(words: readonly string[], { pieces }: KnownPieces, refitted: RefitWords): readonly ItemKey[] {
  const off = pieces.filter(({ fitted }) => !fitted);
  const noted = off.filter(({ label }) => {
    const own = label.split(/\s+/u).map(foldWord);
    return label !== "" && own.every((word) => words.includes(word));
  });
  if (noted.length === 1) return noted.map(({ key }) => key);
  const first = off.filter(({ label }) => label === "");
  if (words.some((word) => among(refitted.original, word)) && first.length === 1) return first.map(({ key }) => key);
  if (words.some((word) => among(refitted.old, word))) return off.map(({ key }) => key);
  // "Put the battery back" may be the one that was on all the while, after a winter on the charger.
  return [...off, ...pieces.filter(({ fitted }) => fitted)].map(({ key }) => key);
}

/** A tyre may be told by its week and year. */
function figureAt({ tokens }: Layout, at: number): string {
  const token = tokens[at];
  return token?.is === "number" ? token.text : "";
}

const maySay = ({ back, refit, taken, off }: RefitWords, word: string | null): boolean => [back, refit, taken, off].some((list) => among(list, word));

const isIdle = ({ known: { vocabulary } }: Layout, word: string): boolean =>
  word === "" || among(vocabulary.articles, word) || among(vocabulary.refitted.off, word) || among(vocabulary.refitted.old, word);

/** "New one on at 14,900, 4425": behind a tyre that is new, four digits by themselves are its week and year. Source: 49 CFR 574.5. */
function codeOf(
  layout: Layout,
  { items }: RecordWork,
  words: string,
  segments: readonly Part[],
): { readonly segment: Part; readonly fitted: PartFitted } | null {
  const [item, ...others] = items;
  if (item === undefined || others.length > 0 || !TYRES.includes(item)) return null;
  for (const segment of segments) {
    const token = layout.tokens[segment.from];
    if (segment.from !== segment.to || token?.is !== "number" || token.units.length > 0 || !/^\d{4}$/u.test(token.text)) continue;
    if (readTyreDate(token.text, layout.known.today).is === "made") return { segment, fitted: { words, item, made: token.text } };
  }
  return null;
}
const TYRES = ["front-tyre.replace", "rear-tyre.replace"] as readonly string[] as readonly ItemKey[];

/** A part of a message, cut where "and" begins another thing done. */
export function segmentsOf(layout: Layout, part: Part): readonly Part[] {
  const cuts = tokensOf(part).filter((at) => at > part.from && at < part.to && isAnd(layout, at));
  return [
    ...cuts.map((cut, n) => ({ from: n === 0 ? part.from : (cuts[n - 1] ?? 0) + 1, to: cut - 1 })),
    { from: (cuts.at(-1) ?? part.from - 1) + 1, to: part.to },
  ];
}

/** What words name, by the longest name: one position, or both ends where they leave that open. */
type Named = { readonly parts: readonly string[]; readonly name: string };

function partIn(words: readonly string[], { parts }: RefitWords): Named | null {
  const text = ` ${words.join(" ")} `;
  const found = Object.values(parts).flatMap((names) => names.filter((name) => text.includes(` ${name} `)));
  const name = found.reduce((best, each) => (each.length > best.length ? each : best), "");
  return name === "" ? null : { name, parts: Object.keys(parts).filter((part) => parts[part]?.includes(name) === true) };
}

/** "Old rear back on": with no thing named, whatever of that end can come off. */
function endIn({ known: { vocabulary } }: Layout, words: readonly string[]): Named | null {
  const { refitted, places } = vocabulary;
  if (![refitted.old, refitted.back, refitted.on].every((list) => words.some((word) => among(list, word)))) return null;
  const isEnd = (end: "front" | "rear", word: string): boolean => among(places[end], word) && !among(refitted.back, word);
  const [end, ...others] = (["front", "rear"] as const).filter((each) => words.some((word) => isEnd(each, word)));
  const name = words.find((word) => end !== undefined && isEnd(end, word));
  // "Old front pegs back on" are none of these.
  const mayLead = (word: string): boolean =>
    word === name || [refitted.old, refitted.back, refitted.on, refitted.put, vocabulary.articles, vocabulary.at].some((list) => among(list, word));
  const isBare = words.slice(0, words.findLastIndex((word) => among(refitted.on, word)) + 1).every(mayLead);
  return end === undefined || name === undefined || others.length > 0 || !isBare
    ? null
    : { name, parts: Object.keys(refitted.parts).filter((part) => part.startsWith(`${end} `)) };
}

const cameOff = ({ pieces }: KnownPieces): boolean => pieces.some(({ fitted }) => !fitted);

type Meant = { readonly bike: KnownBike | null; readonly gap: Gap | null };

/** The bike spoken of; with none named, the only one of which such a part came off. */
function bikeFor(layout: Layout, segment: Part, parts: readonly string[], isBack: boolean): Meant {
  const meant = bikeAt(layout, segment);
  if (meant.bike !== null || meant.gap?.named !== null) return meant;
  const able = layout.known.bikes.filter((bike) => {
    const known = bike.pieces?.filter((each) => parts.includes(each.part)) ?? [];
    return isBack ? known.some(cameOff) : known.length > 0;
  });
  const [only] = able;
  return able.length === 1 && only !== undefined ? { bike: only, gap: null } : { bike: null, gap: meant.gap };
}

function recordOf(
  layout: Layout,
  options: readonly ItemKey[],
  segment: Part,
  off: Part | null,
  { bike, gap }: Meant,
  outcome: Outcome,
  sure = true,
): RecordWork {
  const parts = off === null ? [segment] : [segment, off];
  const [figure = null] = figuresOf(layout, parts, bike);
  const day = dayAt(layout, segment, parts);
  const token = figure?.figure.token;
  const isSure = sure && options.length === 1;
  return {
    do: "record work",
    bike: bike?.id ?? null,
    items: isSure ? options : [],
    words: layout.text.slice(layout.tokens[segment.from]?.start, layout.tokens[segment.to]?.end),
    on: asSpan(day),
    odometer: figure === null || token === undefined ? null : { value: token.value, unit: figure.unit, typed: { text: token.text, unit: token.unitText } },
    outcome,
    how: "did it",
    gaps: [
      ...(gap === null ? [] : [gap]),
      ...(isSure ? [] : [{ need: "item" as const, options }]),
      ...gapsOfFigure(figure, bike),
      ...(day.gap === null || day.span !== null ? [] : [day.gap]),
    ],
  };
}
