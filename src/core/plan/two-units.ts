// A distance printed in both units is one distance: manuals round each column for itself, and no further.

import { TENTHS_OF_MM } from "../quantity/distance.ts";
import type { Columns, PlanItem } from "./plan.ts";

/** What rounding makes of 1.609 km to the mile in printed charts: 4,000 mi / 6,000 km to 100 mi / 180 km. Common practice, widened. */
const PRINTED = { least: 0.8, most: 1.2 } as const;

/** Both units given, and further apart than rounding goes? */
export function isTornApart({ miles, km }: Columns): boolean {
  if (miles === null || km === null) return false;
  const share = (km * TENTHS_OF_MM.km) / (miles * TENTHS_OF_MM.mi);
  return share < PRINTED.least || share > PRINTED.most;
}

/** Every distance that a trigger names. */
export function columnsIn({ repeat, first, shortened }: Pick<PlanItem, "repeat" | "first" | "shortened">): readonly Columns[] {
  const own =
    repeat.by === "interval"
      ? [repeat.every]
      : repeat.by === "nth mark"
        ? [repeat.base]
        : repeat.by === "mark list"
          ? [...repeat.at, ...(repeat.thenEvery === null ? [] : [repeat.thenEvery])]
          : [];
  return [...own, ...(first === null ? [] : [first]), ...Object.values(shortened)];
}
