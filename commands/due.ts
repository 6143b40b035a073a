// /due: what is due, coming up and good, each with its reason.

import { type DueReport, whatIsDue } from "../src/usecases/due.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { sayDue } from "./replies/due.ts";
import { dueReport } from "./shapes.ts";

export const due = define({
  name: "due",
  sub: null,
  options: { bike: { takes: "text", required: false, complete: "bike" }, share: { takes: "flag", required: false } },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<DueReport>(dueReport),
  run: (ctx, { bike }) => whatIsDue(ctx, given({ bike })),
  say: ({ bikes }, words) => sayDue(bikes, words),
});
