// Fasteners tightened to a value that are no item of the plan: kept as work in the member's own words, the torque with them.

import type { RecordWork } from "../core/reading/intent.ts";
import { among, under } from "./among.ts";
import { type Clause, type Part, wordAt } from "./clauses.ts";
import { asSpan, bikeAt, dayAt, type Layout } from "./layout.ts";
import { tokensOf } from "./pieces.ts";
import type { WorkSaid } from "./work-said.ts";
import { figuresOf } from "./work-when.ts";

const LONGEST = 3;

/** The work of a clause, and what it says was tightened beside it: "tightened the rear axle to 100 Nm". */
export function withJoints(layout: Layout, clause: Clause, work: WorkSaid): WorkSaid {
  // Who says that something was tightened has said a verb of work.
  if (!work.heard) return work;
  const used = new Set(work.used);
  const intents = [...work.intents];
  for (const part of clause.parts) {
    const joint = isTightened(layout, part) ? jointIn(layout, part) : null;
    if (joint === null || used.has(joint)) continue;
    const { bike, gap } = bikeAt(layout, part);
    const [figure] = figuresOf(layout, [part], bike);
    const day = dayAt(layout, part, clause.parts);
    for (const at of tokensOf(part)) if (layout.tokens[at]?.is === "number") used.add(at);
    const wrongUnit = figure?.unit != null && bike !== null && figure.unit !== bike.unit;
    intents.push({
      ...{ do: "record work", bike: bike?.id ?? null, items: [], words: layout.text.slice(layout.tokens[part.from]?.start, layout.tokens[part.to]?.end) },
      ...{ on: asSpan(day), outcome: "done", how: "did it" },
      odometer:
        figure === undefined
          ? null
          : { value: figure.figure.token.value, unit: figure.unit, typed: { text: figure.figure.token.text, unit: figure.figure.token.unitText } },
      gaps: [
        ...(gap === null ? [] : [gap]),
        ...(wrongUnit && figure.unit !== null ? [{ need: "unit" as const, options: [figure.unit, bike.unit] }] : []),
        ...(day.gap === null || day.span !== null ? [] : [day.gap]),
      ],
    } satisfies RecordWork);
  }
  return { ...work, intents, used };
}

/** The token at which a part names a fastener, null when it names none. */
function jointIn(layout: Layout, part: Part): number | null {
  const { joints } = layout.known.vocabulary;
  for (const at of tokensOf(part)) {
    for (let length = LONGEST; length > 0; length--) {
      const words = at + length - 1 > part.to ? [] : tokensOf({ from: at, to: at + length - 1 }).map((each) => wordAt(layout.tokens, each));
      if (words.length > 0 && among(joints, words.join(" "))) return at;
    }
  }
  return null;
}

const isTightened = (layout: Layout, part: Part): boolean =>
  tokensOf(part).some((at) => under(layout.known.vocabulary.workDone, wordAt(layout.tokens, at))?.includes("check tightness") === true);
