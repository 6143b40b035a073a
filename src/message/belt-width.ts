// A drive belt's width in a message: no kind of reading holds it, and it is no deflection.

import type { Vocabulary } from "../core/reading/vocabulary.ts";

/** "Drive belt width 21.5 mm", "belt is 21.5 mm wide". */
export function tellsBeltWidth(text: string, { measuring }: Pick<Vocabulary, "measuring">): boolean {
  const words: readonly string[] = text.toLowerCase().match(/\p{L}+/gu) ?? [];
  const has = (those: readonly string[]): boolean => those.some((word) => words.includes(word));
  return has(measuring.belt) && has(measuring.wide);
}
