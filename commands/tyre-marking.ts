// /tyre marking: what is moulded on a sidewall.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type TyreMarked, tyreMarked } from "../src/usecases/judge-tyres.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";

const marking = z.object({
  size: z.string(),
  construction: z.enum(["radial", "bias belted", "bias ply"]).nullable(),
  load: z.object({ index: z.number().int(), kilograms: z.number() }).nullable(),
  speed: z.object({ symbol: z.string(), kmh: z.number(), above: z.boolean() }).nullable(),
});

export const tyreMarking = define({
  name: "tyre",
  sub: "marking",
  options: { mark: { takes: "text", required: true }, other: { takes: "text", required: false } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<TyreMarked>(z.object({ typed: z.string(), marking, other: marking.nullable(), alike: z.boolean().nullable() })),
  run: async (_ctx, { mark, other }) => tyreMarked({ mark, ...given({ other }) }),
  say: ({ marking: one, other, alike }, { tyres }) =>
    said([tyres.marked(one), ...(other === null ? [] : [tyres.marked(other), tyres.alike(alike)]), tyres.least()]),
});
