// What readings count for of the plan, in English.

import type { CheckLacks } from "../../trade/checked.ts";
import type { Printer } from "../printer.ts";
import { lowered } from "./text.ts";

const LACKS: Record<CheckLacks, { readonly line: string; readonly label: string | null }> = {
  "every valve": { line: "counts as looked at once every valve is read. Were these all of them?", label: "These were all the valves" },
  "other valves": { line: "counts as looked at once intake and exhaust valves are all read.", label: null },
  sprockets: {
    line: "counts as looked at once the sprockets are looked at too, for hooked or thin teeth. Were they, and are they sound?",
    label: "Sprockets are sound too",
  },
  "other side": { line: "counts as looked at once the other side is read too.", label: null },
  "new ones": { line: "this line is for new ones, so a reading leaves it as it stood.", label: null },
};

export const countedWords = (p: Printer) => ({
  /** "That counts as looked at, within limits: clutch free play." */
  counts: (called: readonly string[]): string => `That counts as looked at, within limits: ${p.list(called.map(lowered))}. Nothing is renewed by it.`,
  countsWith: (called: string, lacks: CheckLacks): string => `${called}: ${LACKS[lacks].line}`,
  /** Null where a press cannot settle it. */
  label: (lacks: CheckLacks): string | null => LACKS[lacks].label,
});
