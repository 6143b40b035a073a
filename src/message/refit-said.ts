// A part that came off and went on again, or gave way to a new one: "put the old battery back at 14,500", "took the chain off at 12,000, new one on".

import type { ItemKey } from "../core/ids.ts";
import type { Gap, RecordWork } from "../core/reading/intent.ts";
import type { KnownBike, KnownPieces, RefitWords } from "../core/reading/vocabulary.ts";
import type { Outcome } from "../core/schedule/facts.ts";
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
    const found = partIn(words, refitted);
    // "Put new back pads in": the back of a name is no way back.
    const around = found === null ? words : ` ${words.join(" ")} `.replace(` ${found.name} `, " ").split(" ");
    const isOne = words.some((word) => among(refitted.one, word));
    const part: Named | null = found ?? (isOne ? named : null);
    named = found ?? named;
    if (part === null) continue;
    const isTaken = words.some((word) => among(refitted.taken, word)) && words.some((word) => among(refitted.off, word));
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
    } else if (isNew && off !== null && known.length > 0) intents.push(recordOf(layout, renewals, segment, off, meant, "replaced"));
    else continue;
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

const maySay = ({ back, refit, taken }: RefitWords, word: string | null): boolean => among(back, word) || among(refit, word) || among(taken, word);

/** A part of a message, cut where "and" begins another thing done. */
function segmentsOf(layout: Layout, part: Part): readonly Part[] {
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
