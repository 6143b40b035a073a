// A group's settings as words.

import type { Said } from "../../src/chat/reply.ts";
import type { GroupShown } from "../../src/usecases/settings.ts";
import type { Words } from "../../src/words/en/english.ts";
import { showEach } from "./defects.ts";
import { said } from "./said.ts";

export function sayGroup(g: GroupShown, words: Words): Said {
  const { noted, lapsed, others } = g.looked ?? { noted: [], lapsed: [], others: 0 };
  return said(
    [
      ...(g.changed ? [words.settings.saved()] : []),
      ...words.settings.group(g),
      ...noted.map((defect) => words.defects.noted(defect)),
      ...(lapsed.length === 0 ? [] : [words.defects.lapsed(lapsed.map((defect) => `${defect.nickname}: ${defect.words}`))]),
      ...(others === 0 ? [] : [words.settings.treadOfOthers(others)]),
      words.digest.setting(g.digest, g.hasChannel),
      ...words.settings.off(g.off, "/group"),
      words.settings.reads(g),
    ],
    { caution: noted.length === 0 ? null : words.caution("tyres"), actions: showEach(noted, words) },
  );
}
