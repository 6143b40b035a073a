// /plan import: a plan file, sent along or pasted into a form.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type BaseChange, planFor, proposeFile } from "../src/usecases/plan-base.ts";
import { pasteForm } from "./actions/plan-base.ts";
import { define, shapeOf } from "./define.ts";
import { baseChange, sayBase } from "./replies/plan-edits.ts";
import { formButton, said } from "./replies/said.ts";

type Asked = { readonly bike: string; readonly nickname: string };

export const planImport = define({
  name: "plan",
  sub: "import",
  options: { bike: { takes: "text", required: false, complete: "bike" }, file: { takes: "file", required: false } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Asked | BaseChange>(z.union([baseChange, z.object({ bike: z.string(), nickname: z.string() })])),
  run: async (ctx, { bike, file }) => {
    if (file !== undefined) return proposeFile(ctx, { text: file, ...given({ bike }) });
    const plan = await planFor(ctx, given({ bike }));
    return plan.is === "refused" ? plan : { is: "done", value: { bike: plan.value.bike, nickname: plan.value.nickname } };
  },
  say: (out, words) =>
    "hash" in out
      ? sayBase(out, words)
      : said([words.planEdits.importAsk(out.nickname)], { actions: [formButton("plan-paste", out.bike, words.planEdits.labels.paste, pasteForm(words))] }),
});
