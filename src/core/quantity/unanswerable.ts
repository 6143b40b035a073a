// What looks like a question about units and is none that arithmetic answers: ways to write figures that are not read, and questions that another command answers.

import type { Conversion } from "./conversion.ts";
import type { ParsedAmount } from "./parse.ts";
import type { Tidied } from "./question-words.ts";
import { dimensionOf } from "./units.ts";

const EXPONENT = /^[-+]?[\d.,]+(?:e[-+]?\d|\^\d| ?[x×*] ?10 ?\^)/iu;
const PAIR = /^(\d+(?:[.,]\d+)?) ?\/ ?(\d+(?:[.,]\d+)?)(?![\d/])/u;
/** A fraction's figures stay small; a tyre's pressure in psi or kPa has two digits or more, and one in bar a decimal mark. */
const isPressureSaid = (figure: string): boolean => /[.,]|\d\d/u.test(figure);

/** Why the figure at the beginning of `text` is not read; null when it is. */
export function unreadable(text: string, amount: ParsedAmount, rest: string): "exponent" | "pair" | null {
  if (EXPONENT.test(text)) return "exponent";
  const pressure = amount.is === "amount" && amount.unit !== null && dimensionOf(amount.unit) === "pressure";
  if (pressure && /^\/ ?\d/u.test(rest)) return "pair";
  const [, front = "", rear = ""] = PAIR.exec(text) ?? [];
  const twoDecimals = /[.,]/u.test(front) && rear !== "";
  return (pressure || twoDecimals) && isPressureSaid(front) && isPressureSaid(rear) ? "pair" : null;
}

/** M8, 5/16-18, 3/8 UNF. */
const THREAD = /(?<![\p{L}\p{N}])(?:m\d{1,2}(?!\d)|\d\/\d{1,2}-\d\d|un[cf](?!\p{L}))/iu;

/** The other question that is asked: what to tighten a fastener to, or which spanner goes on a hex. Null where it is about units after all. */
export function otherTask({ said }: Tidied, text: string, answer: Conversion): "torque of a fastener" | "spanner for a hex" | null {
  if (!said.has("spanner") && !said.has("torque")) return null;
  if (answer.is === "refused" ? answer.candidates.length > 0 : dimensionOf(answer.unit) === "torque") return null;
  const named = answer.is === "converted" && answer.named;
  if (said.has("spanner") && (said.has("fit") || (said.has("which") && !named))) return "spanner for a hex";
  return said.has("torque") && !named && (said.has("fastener") || THREAD.test(text)) ? "torque of a fastener" : null;
}
