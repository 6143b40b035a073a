// Shares of a clause, in per cent: how much longer than new a chain is, and how much antifreeze is in the coolant.

import type { Gap, LogReading } from "../core/reading/intent.ts";
import type { ReadingKind } from "../core/reading/kinds.ts";
import { kindRow } from "../core/reading/kinds.ts";
import { among, under } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { bikeAt, dayAt, type Layout, phrasesInside, type SaidAt } from "./layout.ts";
import { standsBeside } from "./phrases.ts";
import { tokensOf } from "./pieces.ts";

/** What a clause says in per cent, and the parts that are about nothing else. */
export type Shares = { readonly said: readonly SaidAt[]; readonly rest: Clause };

/** Where a share is said no part is left to be read as a fault or a job: "chain worn 2 %" is measured. */
export function sharesSaid(layout: Layout, clause: Clause): Shares {
  const said: SaidAt[] = [];
  const parts = clause.parts.flatMap((whole, n): readonly Part[] => {
    const part = ownPart(layout, whole);
    const share = shareIn(layout, part);
    const kind =
      share === null ? null : (kindOf(layout, part, share, whole) ?? (isOfCoolant(layout, part, share, clause.parts[n - 1]) ? "antifreeze share" : null));
    if (share === null || kind === null) return [whole];
    // Of "60/40" either may be the water: which is which is asked.
    const [first = 0, second = 0] = share.typed.split("/").map(Number);
    const gap: readonly Gap[] = share.value === null ? [{ need: "number", options: [first, second], share: true }] : [];
    const reading = readingOf(layout, part, kind, { ...share, value: share.value ?? first });
    said.push({ at: share.at, reading: { ...reading, gaps: [...reading.gaps, ...gap] } });
    const around = [
      { from: whole.from, to: part.from - 1 },
      { from: part.to + 1, to: whole.to },
    ];
    return around.filter(({ from, to }) => from <= to);
  });
  return said.length === 0 && parts.length === clause.parts.length ? { said, rest: clause } : { said, rest: { ...clause, parts } };
}

/** "Slack 30 mm 1.5 % stretch": of a part of several figures, what stands behind the one before the only share and up to what names it; else all of the part. */
function ownPart(layout: Layout, part: Part): Part {
  const { tokens, known } = layout;
  const figures = tokensOf(part).filter((at) => tokens[at]?.is === "number" && !layout.taken.has(at));
  const shares = figures.length > 1 ? figures.filter((at) => signBehind(layout, at) !== null) : [];
  const [at, another] = shares;
  if (at === undefined || another !== undefined) return part;
  const { elongated, elongation, mixes } = known.vocabulary.measuring;
  const before = figures.findLast((other) => other < at);
  let to = signBehind(layout, at) ?? at;
  const isNext = [elongated, elongation, mixes].some((list) => among(list, wordAt(tokens, to + 1)));
  if (figures.some((other) => other > at)) to += isNext ? 1 : 0;
  else to = part.to;
  return { from: before === undefined ? part.from : before + 1, to };
}

/** The figure at a token, the last token of its sign or word, and how it is typed. `value` null: parts of two things, and not which is of which. */
type Share = { readonly at: number; readonly to: number; readonly value: number | null; readonly typed: string };

/** The only figure of a part, where it is a share. */
function shareIn(layout: Layout, part: Part): Share | null {
  const figures = tokensOf(part).filter((at) => layout.tokens[at]?.is === "number" && !layout.taken.has(at));
  const [at, another] = figures;
  const token = layout.tokens[at ?? -1];
  if (at === undefined || another !== undefined || token?.is !== "number" || token.code !== undefined || token.units.length > 0) return null;
  const [, first, second] = /^(\d{2})\/(\d{2})$/u.exec(token.text) ?? [];
  // "50/50" is half and half; of "60/40" either may be the water.
  if (first !== undefined && Number(first) + Number(second) === 100) return { at, to: at, value: first === second ? 50 : null, typed: token.text };
  if (token.fraction !== null) return null;
  const to = signBehind(layout, at);
  return to === null ? null : { at, to, value: token.value, typed: layout.text.slice(token.start, layout.tokens[to]?.end) };
}

/** The last token of "%", "percent" or "per cent" right behind a figure. */
function signBehind({ tokens, known }: Layout, at: number): number | null {
  const { percent } = known.vocabulary.measuring;
  const mark = tokens[at + 1];
  if (mark?.is === "break") return mark.mark === "%" ? at + 1 : null;
  const [word, next] = [wordAt(tokens, at + 1), wordAt(tokens, at + 2)];
  return among(percent, word) ? at + 1 : among(percent, `${word ?? ""} ${next ?? ""}`) ? at + 2 : null;
}

/** What a share is of: only where its part is about nothing else. @param whole the part that it was cut from: a chain may be named in the rest of it */
function kindOf(layout: Layout, part: Part, share: Share, whole: Part): ReadingKind | null {
  const { measuring, refitted } = layout.known.vocabulary;
  const { chain, elongated, elongation, shareBeside, mixes, coolant, levelWords, wetFluid } = measuring;
  if (phrasesInside(layout.phrases.spec, part).length > 0) return null;
  const words = tokensOf(part).flatMap((at) => ((at > share.at && at <= share.to) || layout.taken.has(at) ? [] : (wordAt(layout.tokens, at) ?? [])));
  const says = (list: readonly string[]): boolean => words.some((word) => among(list, word));
  const saysChain = tokensOf(whole).some((at) => among(chain, wordAt(layout.tokens, at)));
  // "Brake fluid 3 % water", "brake fluid tester says 3 %".
  const isWet = says(wetFluid.named) && says(wetFluid.moisture);
  const own = [...(isWet ? [wetFluid.named, wetFluid.moisture, wetFluid.beside] : []), chain, elongated, elongation, shareBeside, mixes, coolant];
  if (!words.every((word) => own.some((list) => among(list, word)) || standsBeside(word, layout.known.vocabulary))) return null;
  // How full it is has words of its own, and none of them is in it.
  if (isWet && phrasesInside(layout.phrases.level, part).length === 0) return share.value === null ? null : "brake fluid water";
  if (phrasesInside(layout.phrases.level, part).length > 0 || says(levelWords)) return null;
  // What was poured in or done is work; a look is read by what it showed.
  if (tokensOf(part).some((at) => isWork(layout, at) && !among(elongated, wordAt(layout.tokens, at)))) return null;
  // "Coolant reservoir 50 %" is how full it is.
  const isOfTank = ({ at, to, are }: { readonly at: number; readonly to: number; readonly are: readonly ReadingKind[] }): boolean =>
    are.includes("coolant level") && (at < to || !among(coolant, wordAt(layout.tokens, at)));
  if (phrasesInside(layout.phrases.kind, part).some(isOfTank)) return null;
  // "20 % off chains".
  if (among(refitted.off, wordAt(layout.tokens, share.to + 1))) return null;
  if (share.value !== null && share.typed !== "" && !/\//u.test(share.typed) && (says(elongation) || (saysChain && says(elongated))))
    // "Chain 50 % worn" is how much of its life is gone.
    return says(elongation) || share.value <= kindRow("chain elongation").plausible[1] ? "chain elongation" : null;
  return says(mixes) || (says(coolant) && isRightBehind(layout, part, share.at)) ? "antifreeze share" : null;
}

/** "Changed the coolant, 50/50": parts of two things that make a whole, with nothing beside them, right behind the coolant. */
function isOfCoolant(layout: Layout, part: Part, { at, to, typed }: Share, before: Part | undefined): boolean {
  const { coolant } = layout.known.vocabulary.measuring;
  return (
    /\//u.test(typed) &&
    at === part.from &&
    to === part.to &&
    before !== undefined &&
    tokensOf(before).some((each) => among(coolant, wordAt(layout.tokens, each)))
  );
}

/** Does a word say that something was done, and more than looked at? */
function isWork({ tokens, known }: Layout, at: number): boolean {
  const actions = under(known.vocabulary.workDone, wordAt(tokens, at));
  return actions !== undefined && !(actions.length > 0 && actions.every((each) => each === "inspect" || each === "measure" || each === "test"));
}

/** "Coolant 30 %", "coolant is 50/50": of what stands "at" 30 % it may be the level. */
function isRightBehind({ tokens, known }: Layout, part: Part, at: number): boolean {
  const { coolant, change } = known.vocabulary.measuring;
  const { at: dial } = known.vocabulary;
  return (
    at > part.from &&
    !among(dial, wordAt(tokens, at - 1)) &&
    [at - 1, at - 2].some((n) => among(coolant, wordAt(tokens, n))) &&
    !among(change.past, wordAt(tokens, at - 1))
  );
}

/** Each end has fluid of its own; "both" is told of neither. */
function endSaid(layout: Layout, part: Part, kind: ReadingKind): LogReading["place"] {
  const ends = phrasesInside(layout.phrases.place, part).flatMap(({ are }) => are.filter((place) => place === "front" || place === "rear"));
  const [end = null, other] = [...new Set(ends)];
  return kindRow(kind).places.length > 0 && other === undefined ? end : null;
}

function readingOf(layout: Layout, part: Part, kind: ReadingKind, { at, value, typed }: Share & { readonly value: number }): LogReading {
  const meant = bikeAt(layout, { from: at, to: at });
  const day = dayAt(layout, part, [part], at);
  const gaps: readonly Gap[] = [...(meant.gap === null ? [] : [meant.gap]), ...(day.gap === null ? [] : [day.gap])];
  return {
    do: "log reading",
    bike: meant.bike?.id ?? null,
    kind,
    place: endSaid(layout, part, kind),
    value,
    unit: "%",
    typed: { text: typed, unit: "%" },
    on: day.on,
    gaps,
  };
}
