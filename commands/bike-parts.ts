// /bike parts: what is fitted where, since when, and how far it has gone.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type PartsShown, showParts } from "../src/usecases/parts.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { distance, dueBike, localDate, vagueDate } from "./shapes.ts";

const part = z.object({
  ...{ part: z.string(), job: z.string().nullable(), on: vagueDate.nullable(), ridden: distance.nullable() },
  ...{ kit: z.array(z.string()), words: z.string().nullable(), made: z.string().nullable() },
  changed: z.array(z.string()).nullable(),
  again: z.object({ label: z.string(), since: localDate }).nullable(),
  resting: z.array(z.object({ label: z.string(), ridden: distance })),
});

export const bikeParts = define({
  name: "bike",
  sub: "parts",
  options: { bike: { takes: "text", required: false, complete: "bike" }, share: { takes: "flag", required: false } },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<PartsShown>(z.object({ bike: dueBike.omit({ dues: true, first: true }), id: z.string(), parts: z.array(part) })),
  run: (ctx, { bike }) => showParts(ctx, given({ bike })),
  say: ({ bike, parts }, { parts: words }) => {
    const known = parts.filter((each) => each.on !== null);
    const unknown = parts.filter((each) => each.on === null).map((each) => each.part);
    const kit = ({ part: name, kit: all, changed }: (typeof known)[number]): string[] => {
      if (all.length === 0) return [];
      return [
        changed === null
          ? words.kit(name, all)
          : words.kitPart(
              changed,
              all.filter((each) => !changed.includes(each)),
            ),
      ];
    };
    const lines = known.flatMap((each) => [words.part(each, bike), ...kit(each), ...words.resting(each, bike)]);
    return said([words.title(bike.nickname), ...lines, ...(unknown.length === 0 ? [] : [words.unknown(unknown)])]);
  },
});
