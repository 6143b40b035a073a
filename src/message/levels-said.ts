// Levels said in words: "oil between the marks", "front brake fluid low".

import type { Gap, LogReading } from "../core/reading/intent.ts";
import { kindRow, LEVELS, type Place, type ReadingKind } from "../core/reading/kinds.ts";
import { ENDS } from "../core/reading/places.ts";
import { among, under } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { conditionsOf } from "./how-said.ts";
import { isPlainPart } from "./kind-of.ts";
import { bikeAt, dayAt, type Layout, phrasesInside, type SaidAt } from "./layout.ts";
import type { Phrase } from "./phrases.ts";
import { tokensOf } from "./pieces.ts";

/** @param used tokens that work has accounted for: what was topped up or replaced is no level read */
export function levelsSaid(layout: Layout, clause: Clause, used: ReadonlySet<number>): readonly SaidAt[] {
  const found: Stated[] = [];
  if (layout.phrases.level.length === 0 && !layout.levelSaid && !layout.phrases.kind.some(({ are }) => are.some(isLevel))) return found;
  let carried: readonly Phrase<"kind">[] = [];
  let carriedTo: readonly (Place | null)[] = [null];
  for (const part of clause.parts) {
    const named = phrasesInside(layout.phrases.kind, part).filter(({ at, are }) => are.some(isLevel) && !layout.taken.has(at));
    const said = phrasesInside(layout.phrases.level, part);
    const kinds = named.length > 0 ? named : carried;
    // "Antifreeze good to -25 °C, level ok": the level of what was named before.
    const levels = said.length > 0 ? said : fineIn(layout, part, kinds);
    const [only] = named;
    if (levels.length === 0 && only !== undefined && isPlainPart(layout, part) && !hasFigure(layout, part) && !isFilled(layout, part, used))
      for (const at of saysFine(layout, part, named))
        found.push(
          ...paired(layout, part, [only], [{ at, to: at, are: ["between"] }], [null]).map((each) => ({ ...each, reading: withLevelAsked(each.reading) })),
        );
    if (levels.length > 0 && kinds.length > 0 && isPlainPart(layout, part) && !hasFigure(layout, part) && !isFilled(layout, part, used))
      found.push(...paired(layout, part, kinds, levels, named.length > 0 ? [null] : carriedTo));
    if (named.length > 0) {
      carried = named;
      carriedTo = ENDS.filter((end) => phrasesInside(layout.phrases.place, part).some(({ are }) => are.includes(end)));
    }
  }
  return withStates(found);
}

/** "Found at the low mark, left at the full mark": only where both are said of one thing. */
function withStates(found: readonly Stated[]): readonly SaidAt[] {
  return found.map(({ state, ...said }) => {
    const { reading: read } = said;
    const isBoth =
      state !== null &&
      found.some((other) => other.state !== null && other.state !== state && other.reading.kind === read.kind && other.reading.place === read.place);
    return isBoth ? { ...said, reading: { ...read, detail: { ...read.detail, state } } } : said;
  });
}
type Stated = SaidAt & { readonly reading: LogReading; readonly state: "found" | "left" | null };

const isLevel = (kind: ReadingKind): boolean => kindRow(kind).dimension === "level";
const hasFigure = (layout: Layout, part: Part): boolean => tokensOf(part).some((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at));

/** "Oil level ok": where the level is called one, what is well with it is between its marks. */
function fineIn(layout: Layout, part: Part, named: readonly Phrase<"kind">[]): readonly Phrase<"level">[] {
  const { measuring, maybe } = layout.known.vocabulary;
  const last = named.at(-1);
  if (!layout.levelSaid || last === undefined || !tokensOf(part).some((at) => among(measuring.levelWords, wordAt(layout.tokens, at)))) return [];
  return tokensOf(part)
    .filter((at) => at > last.to && among(maybe.ok, wordAt(layout.tokens, at)))
    .slice(0, 1)
    .map((at) => ({ at, to: at, are: ["between"] }));
}

/** "Front brake fluid ok": nothing but the fluid and that it is well. How high it stands is asked. */
function saysFine(layout: Layout, part: Part, named: readonly Phrase<"kind">[]): readonly number[] {
  const { maybe, workDone } = layout.known.vocabulary;
  const [only, another] = named;
  if (only === undefined || another !== undefined || tokensOf(part).some((at) => under(workDone, wordAt(layout.tokens, at)) !== undefined)) return [];
  return tokensOf(part)
    .filter((at) => at > only.to && among(maybe.ok, wordAt(layout.tokens, at)))
    .slice(0, 1);
}

const withLevelAsked = (reading: LogReading): LogReading => ({
  ...reading,
  gaps: [...reading.gaps, { need: "level", options: [LEVELS.indexOf("between"), LEVELS.indexOf("full")] }],
});

/** Work that fills: the level it left is its own. */
function isFilled(layout: Layout, part: Part, used: ReadonlySet<number>): boolean {
  return (
    tokensOf(part).some((at) => used.has(at)) &&
    tokensOf(part).some((at) => {
      const actions = under(layout.known.vocabulary.workDone, wordAt(layout.tokens, at));
      return actions !== undefined && (actions.includes("top up") || (!actions.includes("measure") && !actions.includes("inspect")));
    })
  );
}

/** As many levels as kinds: in order. One level for all of them. Else nothing is sure enough to say. */
function paired(
  layout: Layout,
  part: Part,
  kinds: readonly Phrase<"kind">[],
  levels: readonly Phrase<"level">[],
  carriedTo: readonly (Place | null)[],
): readonly Stated[] {
  const [state = null] = [...new Set(phrasesInside(layout.phrases.state, part).flatMap(({ are }) => are.slice(0, 1)))];
  const [only] = levels;
  if (only === undefined || (levels.length > 1 && levels.length !== kinds.length)) return [];
  return kinds.flatMap((phrase, n) => {
    const kind = phrase.are.find(isLevel);
    const level = levels.length === 1 ? only : (levels[n] ?? only);
    return kind === undefined
      ? []
      : places(layout, part, kind, carriedTo).map((place) => ({ at: phrase.at, state, reading: reading(layout, part, kind, place, phrase, level) }));
  });
}

function places(layout: Layout, part: Part, kind: ReadingKind, carriedTo: readonly (Place | null)[]): readonly (Place | null)[] {
  if (kindRow(kind).places.length === 0) return [null];
  const said = phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are);
  if (said.includes("both") || (said.includes("front") && said.includes("rear"))) return ["front", "rear"];
  // "Brake fluid front found at the low mark, left at the full mark": of the end that was said with the thing.
  const [carried = null] = carriedTo.length === 1 ? carriedTo : [];
  return [said.includes("front") ? "front" : said.includes("rear") ? "rear" : carried];
}

function reading(layout: Layout, part: Part, kind: ReadingKind, place: Place | null, phrase: Phrase<"kind">, level: Phrase<"level">): LogReading {
  const meant = bikeAt(layout, { from: phrase.at, to: level.to });
  const day = dayAt(layout, part, [part]);
  const [word] = level.are;
  const low = word === "low";
  const conditions = conditionsOf(layout, part);
  const { ask } = kindRow(kind);
  const gaps: Gap[] = [
    ...(meant.gap === null ? [] : [meant.gap]),
    ...(place === null && ask.length > 0 ? [{ need: "place" as const, options: ask }] : []),
    ...(low ? [{ need: "level" as const, options: [LEVELS.indexOf("low mark"), LEVELS.indexOf("below")] }] : []),
    ...(day.gap === null ? [] : [day.gap]),
  ];
  return {
    do: "log reading",
    bike: meant.bike?.id ?? null,
    kind,
    place,
    value: LEVELS.indexOf(word === undefined || word === "low" ? "low mark" : word),
    unit: "level",
    typed: { text: layout.text.slice(layout.tokens[level.at]?.start, layout.tokens[level.to]?.end), unit: null },
    on: day.on,
    ...(conditions.length === 0 ? {} : { detail: { conditions } }),
    gaps,
  };
}
