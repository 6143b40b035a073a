// /plan recheck: what is looked at again after work, and how far after it; changed to what your manual says.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type RechecksShown, rechecks } from "../src/usecases/rechecks.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { unit } from "./shapes.ts";
import { columns } from "./shapes-plan.ts";

export const planRecheck = define({
  name: "plan",
  sub: "recheck",
  options: {
    item: { takes: "text", required: false },
    every: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<RechecksShown>(
    z.object({
      ...{ bike: z.string(), nickname: z.string(), column: unit },
      lines: z.array(z.object({ item: z.string(), name: z.string(), distance: columns, changed: z.boolean(), dropped: z.boolean() })),
      later: z.object({ name: z.string(), usual: columns, never: z.boolean(), caution: z.string().nullable() }).nullable(),
    }),
  ),
  run: (ctx, { item, every, bike }) => rechecks(ctx, given({ item, every, bike })),
  say: ({ nickname, column, lines, later }, { parts, caution }) =>
    said(
      [
        parts.rechecksTitle(nickname),
        ...lines.map((line) => parts.recheck(line, column)),
        ...(later === null ? [] : ["", parts.recheckLater(later, column)]),
        parts.rechecksHow(),
      ],
      { caution: caution(later?.caution ?? null) },
    ),
});
