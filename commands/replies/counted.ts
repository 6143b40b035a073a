// What readings count for of the plan, and one press for what they leave open.

import type { Action } from "../../src/chat/reply.ts";
import type { Counted } from "../../src/usecases/checked.ts";
import type { Words } from "../../src/words/en/english.ts";
import { press } from "./said.ts";

/** One line for all that is looked at by them, and one for each that lacks something. */
export function countedLines(counted: readonly Counted[], words: Words): readonly string[] {
  const looked = counted.filter(({ lacks }) => lacks === null).map(({ called }) => called);
  return [
    ...(looked.length === 0 ? [] : [words.counted.counts([...new Set(looked)])]),
    ...counted.flatMap(({ called, lacks }) => (lacks === null ? [] : [words.counted.countsWith(called, lacks)])),
  ];
}

export const countedActions = (counted: readonly Counted[], words: Words): readonly Action[] =>
  counted.flatMap(({ bike, item, lacks }) => {
    const label = lacks === null ? null : words.counted.label(lacks);
    return label === null ? [] : [press("count-looked", `${bike}/${item.replaceAll(".", "%2E")}`, label)];
  });
