// /plan import: a plan file, pasted into a form.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { planFor } from "../src/usecases/plan-base.ts";
import { pasteForm } from "./actions/plan-base.ts";
import { define, shapeOf } from "./define.ts";
import { formButton, said } from "./replies/said.ts";

type Asked = { readonly bike: string; readonly nickname: string };

export const planImport = define({
  name: "plan",
  sub: "import",
  options: { bike: { takes: "text", required: false, complete: "bike" } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Asked>(z.object({ bike: z.string(), nickname: z.string() })),
  run: async (ctx, { bike }) => {
    const plan = await planFor(ctx, given({ bike }));
    return plan.is === "refused" ? plan : { is: "done", value: { bike: plan.value.bike, nickname: plan.value.nickname } };
  },
  say: ({ bike, nickname }, words) =>
    said([words.planEdits.importAsk(nickname)], { actions: [formButton("plan-paste", bike, words.planEdits.labels.paste, pasteForm(words))] }),
});
