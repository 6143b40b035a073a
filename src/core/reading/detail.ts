// What is known of a reading beside its value: under which conditions, at how many points, of which part.

import type { DistanceUnit } from "../quantity/distance.ts";
import type { UnitId } from "../quantity/units.ts";
import type { SpecUse } from "../spec/spec.ts";

/** Conditions that a reading can be taken under, where they change what it says. */
export const CONDITIONS_READ = [
  "cold",
  "warm",
  "upright",
  "on the side stand",
  "under load",
  "rested",
  "at force",
  "throttle open",
  "running",
  "idling",
  "under draw",
  "on the charger",
  "charged",
  "with backing plate",
  "bars straight",
] as const;
export type ConditionRead = (typeof CONDITIONS_READ)[number];

/** Temperatures as typed. `road`: null where only the garage's was said. */
export type AirSaid = { readonly garage: Warmth; readonly road: Warmth | null };
type Warmth = { readonly value: number; readonly unit: UnitId };

/** Only what was said. In an intent `points` are in the unit typed, in a record in the canonical unit of the kind. */
export type ReadingDetail = {
  readonly conditions?: readonly ConditionRead[];
  /** How readings of its kind were taken on that bike when this one was logged, the latest said first: it stays so, whatever is said of later ones. */
  readonly kept?: readonly ConditionRead[];
  /** How the bike is loaded, where it was said: what is wanted of a pressure or a sag goes by it. */
  readonly load?: SpecUse;
  /** Of a pressure: how warm the garage was in which it was read, and how warm it is where the ride starts, where that was said. */
  readonly air?: AirSaid;
  /** Of a battery: for how many hours it had stood, where that was said; 0 for some minutes. */
  readonly stood?: number;
  /** With what force a belt was pressed, as typed. */
  readonly force?: string;
  /** Every point measured across; the reading's value is the one that governs, the least. */
  readonly points?: readonly number[];
  /** Of a pad: which of the pair. */
  readonly side?: "inner" | "outer";
  /** Of a chain: over how many pitches it was measured. */
  readonly pitches?: number;
  /** Of a charging voltage: engine speed in revolutions a minute. */
  readonly rpm?: number;
  /** Of what is set by adjusting: as it was found, or as it was left. */
  readonly state?: "found" | "left";
  /** Of fuel: was the tank filled to the same mark as always? */
  readonly full?: boolean;
  /** Of fuel: what it cost, in hundredths of the currency, with the currency as typed. */
  readonly price?: { readonly minor: number; readonly currency: string | null; readonly typed: string };
  /** Of fuel or of an odometer: the distance since the last fill, or the trip meter, as typed. */
  readonly trip?: { readonly value: number; readonly unit: DistanceUnit | null; readonly typed: string };
};

/** Said of one reading alone; how it was taken otherwise, said once, holds for those behind it. */
const OF_ONE_READING: readonly ConditionRead[] = ["with backing plate", "bars straight", "charged"];

/** How a kind is taken on a bike once this was said too. */
export function waysAfter(before: ReadingDetail | undefined, said: ReadingDetail | null): ReadingDetail {
  const conditions = said?.conditions?.filter((each) => !OF_ONE_READING.includes(each)) ?? [];
  // Once hot is no habit: what was said before is kept behind it.
  // Nor is a slower engine: what it idled at once is not what it is measured at.
  const [slower, faster] = [said?.rpm, before?.rpm].filter((rpm) => rpm !== undefined).sort((a, b) => a - b);
  const rpm = faster ?? slower;
  return {
    ...before,
    ...said,
    ...(rpm === undefined ? {} : { rpm }),
    conditions: [...conditions, ...(before?.conditions ?? []).filter((each) => !conditions.includes(each))],
  };
}
