// /plan evening: a wrench evening of the group, for the bikes whose owners bring them.

import { z } from "zod";
import { type GroupEvening, groupEvening } from "../src/usecases/evening.ts";
import { given } from "../src/usecases/given.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { localDate } from "./shapes.ts";

const item = z.object({ item: z.string(), name: z.string(), minutes: z.number().nullable(), engine: z.enum(["cold", "warm", "any"]) });
const bike = z.object({
  nickname: z.string(),
  owner: z.string().nullable(),
  items: z.array(item),
  unknown: z.array(z.string()),
  minutes: z.number(),
  unsaid: z.number().int(),
});

export const planEvening = define({
  name: "plan",
  sub: "evening",
  options: { until: { takes: "text", required: false }, share: { takes: "flag", required: false } },
  adminOnly: false,
  visibility: ({ share }) => (share === true ? "shared" : "private"),
  data: shapeOf<GroupEvening>(
    z.object({
      ...{
        until: localDate,
        far: z.string().nullable(),
        today: localDate,
        bikes: z.array(bike),
        idle: z.array(z.string()),
        byDate: z.array(z.string()),
        more: z.number().int(),
      },
      tools: z.array(z.object({ tool: z.string(), bikes: z.array(z.string()) })),
    }),
  ),
  run: (ctx, { until }) => groupEvening(ctx, given({ until })),
  say: (out, { evening, caution }) => said(evening.lines(out), { caution: out.bikes.length === 0 ? null : caution("lifting") }),
});
