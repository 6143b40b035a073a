// What was seen that says a part is at its end, as the schedule takes it: its line is due until work closes the defect.

import type { Defect } from "../core/defect.ts";
import type { ItemKey } from "../core/ids.ts";
import type { Verdict } from "../core/schedule/facts.ts";
import { defectRow } from "../trade/defects.ts";

/** @param open the open defects of one bike */
export const seenVerdicts = (open: readonly Defect[]): readonly Verdict[] =>
  open.flatMap(({ id, kind, words, on }): readonly Verdict[] => {
    const due = defectRow(kind)?.due;
    return due === undefined ? [] : [{ item: due as string as ItemKey, on, is: "at limit", reading: id, seen: words }];
  });
