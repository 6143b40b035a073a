// /spec: a value from the manual, looked up or entered with its source.

import { z } from "zod";
import { SPEC_USES } from "../src/core/spec/spec.ts";
import { given } from "../src/usecases/given.ts";
import { refused } from "../src/usecases/refusals.ts";
import { askSpecs, type SpecAnswer } from "../src/usecases/spec-ask.ts";
import { enterSpec, type SpecSaved } from "../src/usecases/spec-set.ts";
import { define, shapeOf } from "./define.ts";
import { saySaved, saySpecs } from "./replies/spec.ts";
import { specAnswer, specSaved } from "./replies/spec-shapes.ts";

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
  data: shapeOf<SpecAnswer | SpecSaved>(z.union([specSaved, specAnswer])),
  run: async (ctx, { what, value, source, for: use, bike }) => {
    const named = what === undefined || use === undefined ? what : `${what} ${use}`;
    if (value === undefined) {
      if (source !== undefined) return refused({ why: "option", option: "value", problem: "missing", choices: [] });
      return askSpecs(ctx, given({ what: named, bike }));
    }
    if (named === undefined) return refused({ why: "option", option: "what", problem: "missing", choices: [] });
    return enterSpec(ctx, { what: named, value, ...given({ source, bike }) });
  },
  say: (out, words) => ("spec" in out ? saySaved(out, words) : saySpecs(out, words)),
});
