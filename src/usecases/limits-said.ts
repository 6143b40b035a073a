// A manual's figure said beside a reading, such as "disc stamped 6.0" or "limit 1.5 mm": no reading, but it may be saved as the spec that it is judged by.

import type { BikeId } from "../core/ids.ts";
import type { UnitId } from "../core/quantity/units.ts";
import { readSpecFigure } from "../message/read-spec.ts";
import { foldWord } from "../message/scan.ts";
import type { ReadingRecord } from "../store/readings.ts";
import { endOf, isJudged, judgedRow } from "../trade/judged.ts";
import { isSpecKey, SPEC_KEYS, type SpecKey } from "../trade/spec-keys.ts";
import type { Ctx } from "./context.ts";

/** `value`: as it would be saved, with its unit. */
export type LimitSaid = { readonly bike: BikeId; readonly key: SpecKey; readonly value: string };
/** `typed`: the words that say it. */
type LimitIn = LimitSaid & { readonly typed: string };

/** Longer ones would not fit a button. */
const LONGEST = 12;

/** What of the words that were not understood is the figure of a limit of what was just read; only where it can be but one. */
export function limitsSaid(ctx: Ctx, readings: readonly ReadingRecord[], unread: readonly string[]): readonly LimitIn[] {
  return unread.flatMap((text): readonly LimitIn[] => {
    const said = ` ${foldWord(text).replace(/[^\p{L}\p{N}.,/]+/gu, " ")} `;
    const vocabularies = [ctx.vocabulary, ...ctx.also.map(({ vocabulary }) => vocabulary)];
    const says = (of: (vocabulary: Ctx["vocabulary"]) => readonly string[]): boolean =>
      vocabularies.some((each) => of(each).some((word) => said.includes(` ${word} `)));
    // What holds the lining is no limit of it.
    if (!says(({ measuring }) => measuring.ofSpec) || says(({ measuring }) => measuring.noLimit)) return [];
    const [figure, ...more] = [...text.matchAll(/\d+(?:[.,]\d+)?(?:\s*\/\s*\d+)?(?:\s*[\p{L}"]+)?/gu)].map(([each]) => each.trim());
    if (figure === undefined || more.length > 0) return [];
    const ends = (["front", "rear"] as const).filter((end) => says(({ places }) => places[end]));
    const candidates = readings.flatMap(({ kind, place, unit, bike }): readonly LimitIn[] => {
      const key = isJudged(kind) ? judgedRow(kind).specs[endOf(place)] : undefined;
      if (key === undefined || !isSpecKey(key) || (ends.length > 0 && !ends.some((end) => end === place))) return [];
      const value = typedWhole(ctx, key, figure, unit);
      return value === null ? [] : [{ bike, key, value, typed: text }];
    });
    const [only] = candidates;
    return only === undefined || new Set(candidates.map(({ bike, key }) => `${bike}/${key}`)).size > 1 ? [] : [only];
  });
}

/** A figure with its unit: its own, else that of the reading beside it. */
function typedWhole(ctx: Ctx, key: SpecKey, typed: string, unit: ReadingRecord["unit"]): string | null {
  const { holds, end, unit: usual, plausible } = SPEC_KEYS[key];
  if (holds === "words" || unit === "level") return null;
  const bare = /^[\d.,/\s]+/u.exec(typed)?.[0].trim() ?? "";
  const isRead = (value: string): boolean => {
    const figure = readSpecFigure(value, { holds, end, unit: usual }, null, ctx.vocabulary, ctx.who.numbers);
    const low = typeof figure === "string" ? null : (figure.low ?? figure.high);
    return low !== null && (plausible === null || (low >= plausible[0] && low <= plausible[1]));
  };
  return [typed, `${bare} ${unit as UnitId}`].find((value) => value.length <= LONGEST && isRead(value)) ?? null;
}
