// /due: what is due, coming up and good, each with its reason; or what falls due until a day or an odometer ahead.

import { z } from "zod";
import { type DueReport, whatIsDue } from "../src/usecases/due.ts";
import { given } from "../src/usecases/given.ts";
import { type Outlook, whatFallsDue } from "../src/usecases/outlook.ts";
import type { Result } from "../src/usecases/refusals.ts";
import { define, shapeOf } from "./define.ts";
import { sayDue } from "./replies/due.ts";
import { sayOutlook } from "./replies/outlook.ts";
import { nextShown } from "./replies/picture-shapes.ts";
import { drawNexts } from "./replies/pictures.ts";
import { dueReport, outlook } from "./shapes.ts";

type Out = DueReport | Outlook;
/** What its picture shows, where one was asked for. */
const pictured = { next: z.array(nextShown).optional() };

export const due = define({
  name: "due",
  sub: null,
  options: {
    bike: { takes: "text", required: false, complete: "bike" },
    until: { takes: "text", required: false },
    picture: { takes: "flag", required: false },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<Out>(z.union([outlook.extend(pictured), dueReport.extend(pictured)])),
  run: (ctx, { bike, until, picture, share }): Promise<Result<Out>> =>
    until === undefined ? whatIsDue(ctx, given({ bike, picture, share })) : whatFallsDue(ctx, { until, ...given({ bike, picture, share }) }),
  say: (out, words) => ("is" in out ? sayOutlook(out.bikes, words) : sayDue(out.bikes, words)),
  draw: (out, words) => drawNexts(out.next ?? [], words),
});
