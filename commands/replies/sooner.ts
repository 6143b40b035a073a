// A value near the end at which it gets worse: the button that asks for an earlier look.

import type { Action } from "../../src/chat/reply.ts";
import { type JudgedOn, looksSooner } from "../../src/usecases/judged.ts";
import type { Words } from "../../src/words/en/english.ts";
import { press } from "./said.ts";

/** One button a bike and line, however many values call for it. */
export function soonerActions(judged: readonly Omit<JudgedOn, "first">[], words: Words): readonly Action[] {
  const found = judged.filter(looksSooner).flatMap(({ bike, item, kind }) => (item === null ? [] : [{ subject: `${bike}.${item}`, kind }]));
  return found
    .filter(({ subject }, n) => found.findIndex((other) => other.subject === subject) === n)
    .map(({ subject, kind }) => press("look-sooner", subject, words.judge.sooner(kind)));
}
