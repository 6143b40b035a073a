// /plan sheet: everything that a service asks of this bike, in a technician's order, an evening at a time.

import { given } from "../src/usecases/given.ts";
import { type SheetShown, showSheet } from "../src/usecases/sheet.ts";
import { define, shapeOf } from "./define.ts";
import { saySheet } from "./replies/sheet.ts";
import { sheetShown } from "./replies/sheet-shapes.ts";

export const planSheet = define({
  name: "plan",
  sub: "sheet",
  options: {
    at: { takes: "text", required: false },
    until: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<SheetShown>(sheetShown),
  run: (ctx, { at, until, bike, share }) => showSheet(ctx, given({ at, until, bike, share })),
  say: saySheet,
});
