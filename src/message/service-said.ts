// A whole service said as one: "16,000 service at the shop, 380", "did the 12,000 mi service at 12,040". Which items it was is asked once, of the plan.

import type { Gap, RecordWork } from "../core/reading/intent.ts";
import { NO_DETAIL } from "../core/work-detail.ts";
import { among } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import { costSaid, shopSaid } from "./details-said.ts";
import { type Figure, figureAt, measures } from "./figures.ts";
import { asSpan, bikeAt, dayAt, type Layout } from "./layout.ts";
import { isVerb, tokensOf } from "./pieces.ts";
import { figuresOf } from "./work-when.ts";
import { mayStandBeside } from "./work-words.ts";

/** Does a word for a service stand behind a number? */
function saysService({ tokens, known: { vocabulary } }: Layout, { from, to }: Clause): boolean {
  for (let at = from; at <= to; at++) if (tokens[at]?.is === "number" && among(vocabulary.details.service, wordAt(tokens, at + 1))) return true;
  return false;
}

/** Null where no service is said to have been done. `used`: the tokens that it accounts for. */
export function serviceSaid(layout: Layout, clause: Clause): { readonly intent: RecordWork; readonly used: ReadonlySet<number> } | null {
  const { details, articles } = layout.known.vocabulary;
  const isService = (at: number): boolean => among(details.service, wordAt(layout.tokens, at));
  if (!saysService(layout, clause)) return null;
  const named = clause.parts.flatMap(tokensOf).flatMap((at): Figure[] => {
    const figure = isService(at + 1) ? figureAt(layout, at) : null;
    const of = figure === null ? null : measures(figure);
    return figure !== null && (of === "distance" || (of === null && figure.units.length === 0 && figure.token.value >= 100)) ? [figure] : [];
  });
  const [figure] = named;
  if (figure === undefined || named.length > 1) return null;
  const part = clause.parts.find(({ from, to }) => from <= figure.at && figure.at <= to) ?? clause;
  const all = tokensOf(clause);
  const used = new Set([figure.at, figure.at + 1]);
  const isShop = (at: number): boolean => details.shops.includes(wordAt(layout.tokens, at) ?? "");
  const shop = all.find(isShop);
  const by = shopSaid(layout, all, used) ?? (shop === undefined ? null : (wordAt(layout.tokens, shop) ?? null));
  // Who has it done by a shop need not say that it was done; but then nothing else may be said of it, since "the shop quoted 380" is no service done.
  const isDone = clause.parts.some((each) => tokensOf(each).some((at) => isVerb(layout, at)));
  const isPlain = all.every((at) => {
    const word = wordAt(layout.tokens, at) ?? "";
    return (
      used.has(at) ||
      isShop(at) ||
      isService(at) ||
      details.byWhom.includes(word) ||
      articles.includes(word) ||
      details.currencies[word] !== undefined ||
      mayStandBeside(layout, at)
    );
  });
  if (!isDone && (by === null || !isPlain)) return null;
  const { bike, gap } = bikeAt(layout, part);
  const [dial] = figuresOf(layout, clause.parts, bike).filter((each) => each.figure.at !== figure.at);
  if (dial !== undefined) used.add(dial.figure.at);
  const cost = costSaid(layout, all, by !== null, used);
  const day = dayAt(layout, part, clause.parts);
  const unit = measures(figure) === "distance" ? (figure.units[0] as "mi" | "km") : null;
  const words = layout.text.slice(figure.token.start, layout.tokens[figure.at + 1]?.end);
  const gaps: Gap[] = [
    ...(gap === null ? [] : [gap]),
    ...(day.gap === null || day.span !== null ? [] : [day.gap]),
    { need: "service", figure: figure.token.value, unit },
  ];
  const intent: RecordWork = {
    ...{ do: "record work", bike: bike?.id ?? null, items: [], words, on: asSpan(day), outcome: "done", how: "did it", gaps },
    odometer:
      dial === undefined
        ? null
        : { value: dial.figure.token.value, unit: dial.unit, typed: { text: dial.figure.token.text, unit: dial.figure.token.unitText } },
    ...(by === null && cost === null ? {} : { detail: { ...NO_DETAIL, by, cost } }),
  };
  return { intent, used };
}
