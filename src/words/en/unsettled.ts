// A part that may be past its limit, where only the least and the most of what that limit can be are known: how it stands, and how to settle it.

import type { Unsettled } from "../../core/judgement/verdict.ts";
import type { SpecKey } from "../../trade/spec-keys.ts";
import { englishSpecName } from "./spec-names.ts";
import { lowered } from "./text.ts";

/** "1 to 3 %"; `here`: the same as a rule shows it, where that is what was read. */
type Ends = { readonly shares: string; readonly here: string | null };

/** In the place of the limit, behind the verdict. */
export const unsettledLimit = ({ lacks }: Unsettled, { shares, here }: Ends): string =>
  lacks === "chain size"
    ? `your own figure comes to ${shares}, by which chain it is of`
    : `published limits run from ${shares}${here === null ? "" : `, here ${here}`}`;

/** What to do until it is known. */
export function unsettledWhat({ lacks }: Unsettled, spec: SpecKey | null): string {
  const settle =
    lacks === "chain size"
      ? "Enter the chain's size once: /spec what:chain size value:…, such as 525."
      : `Look for the bike's own limit, in its manual or on the chain maker's sheet, and enter it once: /spec${spec === null ? "" : ` what:${lowered(englishSpecName(spec))} value:…`}`;
  return `${settle} Until that is known, treat it as at its end.`;
}
