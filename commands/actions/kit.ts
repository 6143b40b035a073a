// Of a kit only a part was changed.

import { z } from "zod";
import { type KitKept, keptOfKit } from "../../src/usecases/kits.ts";
import { handler, shapeOf } from "../define.ts";
import { said } from "../replies/said.ts";

/** The subject is the record, and which of the kit were changed, by name. */
export const kitPart = handler<KitKept>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf<KitKept>(
    z.object({
      ...{ bike: z.string(), nickname: z.string(), record: z.string(), rev: z.number().int() },
      ...{ changed: z.array(z.string()), stayed: z.array(z.string()), counts: z.boolean() },
    }),
  ),
  run: (ctx, { subject, rev }) => {
    const [record = "", ...changed] = subject.split("/");
    return keptOfKit(ctx, { record, rev, changed });
  },
  say: ({ nickname, changed, stayed, counts }, { parts, caution }) =>
    said([parts.kept(nickname, changed, stayed, counts)], { caution: caution("moving chain") }),
});
