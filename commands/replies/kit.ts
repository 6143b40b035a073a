// A kit of which the words of a job name only a part: were the others changed too?

import type { Action } from "../../src/chat/reply.ts";
import { changedOf, kitIn } from "../../src/usecases/kits.ts";
import type { Words } from "../../src/words/en/english.ts";
import { press } from "./said.ts";

type Work = Parameters<typeof kitIn>[0] & Parameters<typeof changedOf>[1] & { readonly id: string; readonly rev: number; readonly words: string };
type Asked = { readonly work: Work; readonly changed: readonly string[]; readonly others: readonly string[] };

function asked(all: readonly Work[], { parts }: Words): readonly Asked[] {
  return all.slice(0, 1).flatMap((work) => {
    const kit = kitIn(work);
    if (kit === null || changedOf(kit, work) !== null) return [];
    const changed = parts.kitNamed(kit.kit, work.words);
    const others = kit.kit.filter((each) => !changed.includes(each));
    return others.length === 0 ? [] : [{ work, changed, others }];
  });
}

export const kitLines = (all: readonly Work[], words: Words): string[] => asked(all, words).map(({ changed, others }) => words.parts.kitAsk(changed, others));

export const kitActions = (all: readonly Work[], words: Words): Action[] =>
  asked(all, words).map(({ work, changed, others }) => press("kit-part", [work.id, ...changed].join("/"), words.parts.labels.stayed(others), work.rev));
