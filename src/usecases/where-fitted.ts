// A reading of what only one end has, or neither: the end is not asked for where there is but one, nor anything else of what is not there.

import { isFitted } from "../core/equipment.ts";
import type { LogReading } from "../core/reading/intent.ts";
import { AT_ENDS } from "../trade/ends.ts";
import { endOf, isJudged, judgedRow } from "../trade/judged.ts";
import type { Garaged } from "./garage.ts";

/** The reading with the only end that its bike has such a thing at, or with the question that comes of there being none. */
export function whereFitted(intent: LogReading, { bike: { equipment } }: Pick<Garaged, "bike">): LogReading {
  const { kind, place, gaps } = intent;
  const none: LogReading = { ...intent, gaps: [{ need: "sure", because: "not fitted" }] };
  // What is said whole is kept, and told to be of nothing that the bike has.
  if (isJudged(kind) && !isFitted(judgedRow(kind).fits, equipment)) return gaps.length > 0 || kind === "brake fluid level" ? none : intent;
  const rules = AT_ENDS[kind];
  if (rules === undefined) return intent;
  const ends = (["front", "rear"] as const).filter((end) => isFitted(rules[end], equipment));
  const [only, ...others] = ends;
  // Hydraulic drums are rare, and entered by their owner's word: nothing says at which end.
  if (only === undefined && kind === "brake fluid level") return intent;
  if (place !== null) return kind === "brake fluid level" && !ends.some((end) => end === endOf(place)) ? none : intent;
  if (only === undefined) return none;
  return others.length > 0 ? intent : { ...intent, place: only, gaps: gaps.filter(({ need }) => need !== "place") };
}
