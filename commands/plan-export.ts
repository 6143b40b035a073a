// /plan export: a plan as a file of the plan format.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { planFor } from "../src/usecases/plan-base.ts";
import { planText } from "../src/usecases/plan-file.ts";
import { define, shapeOf } from "./define.ts";
import { planFileOf } from "./replies/plan-edits.ts";
import { said } from "./replies/said.ts";

type Exported = { readonly nickname: string; readonly items: number; readonly text: string };

export const planExport = define({
  name: "plan",
  sub: "export",
  options: { bike: { takes: "text", required: false, complete: "bike" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Exported>(z.object({ nickname: z.string(), items: z.number().int(), text: z.string() })),
  run: async (ctx, { bike }) => {
    const plan = await planFor(ctx, given({ bike }));
    if (plan.is === "refused") return plan;
    const { nickname, base } = plan.value;
    return { is: "done", value: { nickname, items: base.items.length, text: planText(base) } };
  },
  say: ({ nickname, items, text }, words) =>
    said([words.planEdits.exported(nickname, items), words.planEdits.exportedHow()], { files: [planFileOf(nickname, text, words)] }),
});
