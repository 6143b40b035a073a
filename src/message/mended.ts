// Work that mends what stands open: it closes the defect that it names, whether or not it is an item of the plan.

import type { RecordWork } from "../core/reading/intent.ts";
import type { Clause } from "./clauses.ts";
import { mendedIn } from "./defects-mended.ts";
import { asSpan, bikeAt, dayAt, type Layout } from "./layout.ts";
import type { WorkSaid } from "./work-said.ts";
import { figuresOf } from "./work-when.ts";

/** The work of a clause with what it closes: on the job said with it, else as a record of its own. */
export function withMended(layout: Layout, clause: Clause, work: WorkSaid): WorkSaid {
  if (layout.known.bikes.every(({ defects = [] }) => defects.length === 0)) return work;
  let { intents, missing } = work;
  const used = new Set(work.used);
  for (const part of clause.parts) {
    const { bike } = bikeAt(layout, part);
    const closes = bike === null ? [] : mendedIn(layout, part, bike);
    if (bike === null || closes.length === 0) continue;
    const sure = intents.find((intent) => intent.bike === bike.id && intent.items.length > 0);
    if (sure !== undefined) {
      intents = intents.map((intent) => (intent === sure ? { ...intent, closes: [...(intent.closes ?? []), ...closes] } : intent));
      continue;
    }
    const [figure] = figuresOf(layout, [part], bike);
    if (figure !== undefined) used.add(figure.figure.at);
    const day = dayAt(layout, part, [part]);
    const mended: RecordWork = {
      ...{ do: "record work", bike: bike.id, items: [], words: layout.text.slice(layout.tokens[part.from]?.start, layout.tokens[part.to]?.end) },
      ...{ on: asSpan(day), outcome: "done", how: "did it", closes, gaps: day.gap === null || day.span !== null ? [] : [day.gap] },
      odometer:
        figure === undefined
          ? null
          : { value: figure.figure.token.value, unit: figure.unit, typed: { text: figure.figure.token.text, unit: figure.figure.token.unitText } },
    };
    // What the plan does not name was asked about; now it is known what it was.
    const inIt = (intent: RecordWork): boolean => intent.items.length === 0 && mended.words.includes(intent.words);
    intents = [...intents.filter((intent) => !inIt(intent)), mended];
    missing = missing.filter((intent) => !inIt(intent));
  }
  return { ...work, intents, missing, used };
}
