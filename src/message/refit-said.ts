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
  let named: string | null = null;
  let off: Part | null = null;
  for (const segment of segments) {
    const words = tokensOf(segment).map((at) => wordAt(layout.tokens, at) ?? "");
    const found = partIn(words, refitted);
    const here = found?.part ?? null;
    // "Put new back pads in": the back of a name is no way back.
    const around = found === null ? words : ` ${words.join(" ")} `.replace(` ${found.name} `, " ").split(" ");
    const isOne = words.some((word) => among(refitted.one, word));
    const part = here ?? (isOne ? named : null);
    named = here ?? named;
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
    const isNew = here === null && isRenewed;
    const meant = bikeFor(layout, segment, part, isBack);
    const known = meant.bike?.pieces?.find((each) => each.part === part);
    if (isTaken && !isBack) {
      off = segment;
      continue;
    }
    if (isBack && known?.pieces.some(({ fitted }) => !fitted) === true) {
      const options = pieceMeant(words, known, refitted);
      intents.push(recordOf(layout, options, segment, off, meant, "done"));
    } else if (isBack && known !== undefined && words.some((word) => among(refitted.old, word))) {
      // Of no earlier one anything is known: what was done is asked, since it must not be passed over.
      intents.push(recordOf(layout, [known.renew], segment, off, meant, "replaced", false));
    } else if (isNew && off !== null && known !== undefined) intents.push(recordOf(layout, [known.renew], segment, off, meant, "replaced"));
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

const maySay = ({ back, refit, taken }: RefitWords, word: string | null): boolean => among(back, word) || among(refit, word) || among(taken, word);

/** A part of a message, cut where "and" begins another thing done. */
function segmentsOf(layout: Layout, part: Part): readonly Part[] {
  const cuts = tokensOf(part).filter((at) => at > part.from && at < part.to && isAnd(layout, at));
  return [
    ...cuts.map((cut, n) => ({ from: n === 0 ? part.from : (cuts[n - 1] ?? 0) + 1, to: cut - 1 })),
    { from: (cuts.at(-1) ?? part.from - 1) + 1, to: part.to },
  ];
}

/** The position that words name, by the longest name. */
function partIn(words: readonly string[], { parts }: RefitWords): { readonly part: string; readonly name: string } | null {
  const text = ` ${words.join(" ")} `;
  const found = Object.entries(parts).flatMap(([part, names]) => names.filter((name) => text.includes(` ${name} `)).map((name) => ({ part, name })));
  return found.reduce<{ part: string; name: string } | null>((best, each) => (best === null || each.name.length > best.name.length ? each : best), null);
}

type Meant = { readonly bike: KnownBike | null; readonly gap: Gap | null };

/** The bike spoken of; with none named, the only one of which such a part came off. */
function bikeFor(layout: Layout, segment: Part, part: string, isBack: boolean): Meant {
  const meant = bikeAt(layout, segment);
  if (meant.bike !== null || meant.gap?.named !== null) return meant;
  const able = layout.known.bikes.filter((bike) => {
    const known = bike.pieces?.find((each) => each.part === part);
    return known !== undefined && (!isBack || known.pieces.some(({ fitted }) => !fitted));
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
