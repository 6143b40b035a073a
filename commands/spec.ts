// /spec: a value from the manual, looked up or entered with its source.

import { z } from "zod";
import { SPEC_USES } from "../src/core/spec/spec.ts";
import type { LookedUp } from "../src/trade/looked-up.ts";
import { given } from "../src/usecases/given.ts";
import { lookUp } from "../src/usecases/look-up.ts";
import { refused } from "../src/usecases/refusals.ts";
import { askSpecs, type SpecAnswer } from "../src/usecases/spec-ask.ts";
import { enterSpec, type SpecSaved } from "../src/usecases/spec-set.ts";
import { define, shapeOf } from "./define.ts";
import { sayLookedUp, saySaved, saySpecs } from "./replies/spec.ts";
import { lookedUp, specAnswer, specSaved } from "./replies/spec-shapes.ts";

export const spec = define({
  name: "spec",
  sub: null,
  options: {
    what: { takes: "text", required: false, complete: "spec" },
    value: { takes: "text", required: false },
    source: { takes: "text", required: false },
    for: { takes: "choice", required: false, choices: SPEC_USES },
    bike: { takes: "text", required: false, complete: "bike" },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<SpecAnswer | SpecSaved | LookedUp>(z.union([specSaved, specAnswer, lookedUp])),
  run: async (ctx, { what, value, source, for: use, bike }) => {
    const named = what === undefined || use === undefined ? what : `${what} ${use}`;
    if (value === undefined) {
      if (source !== undefined) return refused({ why: "option", option: "value", problem: "missing", choices: [] });
      const table = named === undefined ? null : lookUp(ctx, named);
      if (table !== null) return { is: "done", value: table };
      return askSpecs(ctx, given({ what: named, bike }));
    }
    if (named === undefined) return refused({ why: "option", option: "what", problem: "missing", choices: [] });
    return enterSpec(ctx, { what: named, value, ...given({ source, bike }) });
  },
  say: (out, words) => ("table" in out ? sayLookedUp(out, words) : "spec" in out ? saySaved(out, words) : saySpecs(out, words)),
});
