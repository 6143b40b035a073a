// What of a kit stayed on while the rest was changed: "new chain, sprockets stayed on".

import type { RecordWork } from "../core/reading/intent.ts";
import type { PartFitted } from "../core/work-detail.ts";
import { among } from "./among.ts";
import { type Clause, wordAt } from "./clauses.ts";
import { inside, type Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";

/** What was changed of a kit, where a part of the clause says that the rest stayed on. Its tokens are added to `used`. */
export function keptSaid(layout: Layout, clause: Clause, { items, outcome }: RecordWork, used: Set<number>): readonly PartFitted[] {
  const { kit } = layout.known.vocabulary.refitted;
  const item = items.find((each) => each === kit.item);
  if (item === undefined || (outcome !== "replaced" && outcome !== "done")) return [];
  for (const part of clause.parts) {
    const words = tokensOf(part).filter((at) => !used.has(at));
    const said = words.map((at) => wordAt(layout.tokens, at) ?? "");
    if (!said.some((word) => among(kit.stayed, word)) || layout.named.some((name) => inside(name, part))) continue;
    const text = ` ${said.join(" ")} `;
    const stayed = Object.keys(kit.pieces).filter((piece) => kit.pieces[piece]?.some((name) => text.includes(` ${name} `)) === true);
    const changed = Object.keys(kit.pieces).filter((piece) => !stayed.includes(piece));
    if (stayed.length === 0 || changed.length === 0) continue;
    for (const at of words) used.add(at);
    return changed.map((piece) => ({ words: piece, item, made: null }));
  }
  return [];
}
