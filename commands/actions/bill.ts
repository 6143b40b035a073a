// Taking out of a record what was not done, and putting it back.

import { z } from "zod";
import { type BillAmended, backOnBill, offTheBill } from "../../src/usecases/bill.ts";
import { handler, shapeOf } from "../define.ts";
import { sayAmended } from "../replies/bill.ts";

const data = shapeOf<BillAmended>(
  z.object({
    ...{ record: z.string(), rev: z.number().int(), nickname: z.string(), changed: z.array(z.string()), back: z.boolean() },
    items: z.array(z.object({ item: z.string(), called: z.string() })),
  }),
);

export const workBill = handler<BillAmended>({
  kind: "pick",
  visibility: "private",
  data,
  run: (ctx, { subject, rev, values: items }) => offTheBill(ctx, { record: subject.split("/")[0] ?? "", rev, items }),
  say: sayAmended,
});
export const workBillBack = handler<BillAmended>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject, rev }) => backOnBill(ctx, { record: subject, rev }),
  say: sayAmended,
});
