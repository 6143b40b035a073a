// Does a job put right what was found? Looking, measuring and trying find out how it is; they mend nothing.

import type { WorkAction } from "../plan/plan.ts";
import type { Outcome } from "./facts.ts";

/** Work that finds out how a thing is, and no more. */
export const isLook = (action: WorkAction): boolean => action === "inspect" || action === "measure" || action === "test";

/** Does it leave the item as it stood? Looked at in vain, or found wrong and not put right. */
export const isLeft = (outcome: Outcome): boolean => outcome === "could not do" || outcome === "found wrong";

/**
 * May what was wrong be right again by this?
 * @param action what the item asks for; null where that is not known
 */
export function mends(outcome: Outcome, action: WorkAction | null): boolean {
  switch (outcome) {
    case "adjusted":
    case "replaced":
      return true;
    // Adding to what should be changed leaves in what was wrong with it.
    case "topped up":
      return action !== "replace";
    case "done":
      return action === null || !isLook(action);
    case "inspected, within limits":
    case "inspected":
    case "found wrong":
    case "could not do":
      return false;
  }
}
