// /check: walk through a checklist; go on with one; see what the last came to.

import { z } from "zod";
import { CHECKLISTS } from "../src/core/check/checklist.ts";
import type { CheckStep } from "../src/usecases/check-answer.ts";
import { beginCheck } from "../src/usecases/check-begin.ts";
import { type CheckMenu, checkMenu, lastCheck } from "../src/usecases/check-finish.ts";
import { given } from "../src/usecases/given.ts";
import { done, type Result } from "../src/usecases/refusals.ts";
import { define, shapeOf } from "./define.ts";
import { sayMenu, sayResult, sayStep } from "./replies/check.ts";
import { drawResult } from "./replies/check-picture.ts";
import { checkStep, checkMenu as menuShape } from "./replies/check-shapes.ts";
import { KINDS } from "./shapes.ts";

type Out = { readonly menu: CheckMenu } | { readonly step: CheckStep; readonly shared: boolean };

export const check = define({
  name: "check",
  sub: null,
  options: {
    list: { takes: "choice", required: false, choices: CHECKLISTS },
    bike: { takes: "text", required: false, complete: "bike" },
    kind: { takes: "choice", required: false, choices: KINDS },
    coldest: { takes: "text", required: false },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: ({ list, share }) => (share === true && list === undefined ? "shared" : "private"),
  // What is walked through over days is a message that stays.
  lasting: ({ list }) => list !== undefined,
  data: shapeOf<Out>(z.union([z.object({ menu: menuShape }), z.object({ step: checkStep, shared: z.boolean() })])),
  run: async (ctx, { list, bike, kind, coldest, share }): Promise<Result<Out>> => {
    if (list !== undefined) {
      const begun = await beginCheck(ctx, { list, ...given({ bike, kind, coldest }) });
      return begun.is === "refused" ? begun : done({ step: { ...begun.value, logged: null }, shared: false });
    }
    if (bike === undefined && share !== true) {
      const menu = await checkMenu(ctx);
      return menu.is === "refused" ? menu : done({ menu: menu.value });
    }
    const last = await lastCheck(ctx, given({ bike }));
    return last.is === "refused" ? last : done({ step: last.value, shared: share === true });
  },
  draw: async (out, words) => ("menu" in out ? [] : drawResult(out.step, words, out.shared)),
  say: (out, words) => ("menu" in out ? sayMenu(out.menu, words) : out.shared ? sayResult(out.step, words, true) : sayStep(out.step, words)),
});
