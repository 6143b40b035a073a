// /bike list: the member's bikes, what they are fitted with and how they are used.

import { z } from "zod";
import { type BikeShown, listBikes } from "../src/usecases/change-bike.ts";
import { define, shapeOf } from "./define.ts";
import { sayBikes } from "./replies/bikes.ts";
import { bikeShown } from "./shapes.ts";

export const bikeList = define({
  name: "bike",
  sub: "list",
  options: {},
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<{ readonly bikes: readonly BikeShown[] }>(z.object({ bikes: z.array(bikeShown) })),
  run: (ctx) => listBikes(ctx),
  say: ({ bikes }, words) => sayBikes(bikes, words),
});
