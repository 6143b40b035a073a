// /plan shopping: what to buy for all that falls due within a month, or until a day.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type Shopping, shopping } from "../src/usecases/shopping.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { blindAhead } from "./replies/sheet-shapes.ts";
import { localDate, unit } from "./shapes.ts";

const use = z.object({
  ...{ nickname: z.string(), what: z.string(), count: z.number().nullable(), amount: z.string().nullable(), kind: z.string().nullable() },
});

const total = z.object({ value: z.number(), unit: z.string().nullable() }).nullable();

export const planShopping = define({
  name: "plan",
  sub: "shopping",
  options: {
    until: { takes: "text", required: false },
    bike: { takes: "text", required: false, complete: "bike" },
    group: { takes: "flag", required: false },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<Shopping>(
    z.object({
      ...{
        until: localDate,
        far: z.string().nullable(),
        bikes: z.array(
          z.object({ nickname: z.string(), items: z.array(z.string()), next: z.array(z.string()), worn: z.array(z.string()), wrong: z.array(z.string()) }),
        ),
        atHand: z.array(z.string()),
      },
      blind: z.array(z.object({ nickname: z.string(), unit, offset: z.number(), what: blindAhead.unwrap() })),
      unknown: z.array(z.object({ nickname: z.string(), items: z.array(z.string()), uses: z.array(z.string()) })),
      wanted: z.array(z.object({ what: z.string(), for: z.array(use), total })),
    }),
  ),
  run: (ctx, { until, bike, group, share }) => shopping(ctx, given({ until, bike, group, share })),
  say: ({ until, far, bikes, wanted, atHand, unknown, blind }, { parts: words, outlook, today }) => {
    const unforeseen = blind.map(({ nickname, what, ...dial }) => words.ofBike(nickname, outlook.blind(what, dial)));
    return wanted.length + atHand.length === 0
      ? said([words.nothing(until, today, far), ...unforeseen, ...unknown.map(words.perhaps)])
      : said([
          words.shoppingTitle(until, today, bikes.length, far),
          ...wanted.map((each) => words.wanted(each.what, each.for, each.total)),
          ...(atHand.length === 0 ? [] : [words.atHand(atHand)]),
          "",
          ...bikes.map((each) => words.because(each)),
          ...unforeseen,
          ...unknown.map(words.perhaps),
          words.check(),
        ]);
  },
});
