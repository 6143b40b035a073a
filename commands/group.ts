// /group: the group's zone, units and reading channel. Anyone may look; changing needs the manage-server permission.

import { z } from "zod";
import { given } from "../src/usecases/given.ts";
import { type GroupShown, setGroup } from "../src/usecases/settings.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";
import { unit } from "./shapes.ts";

export const group = define({
  name: "group",
  sub: null,
  options: {
    zone: { takes: "text", required: false, complete: "zone" },
    distance: { takes: "choice", required: false, choices: ["mi", "km"] },
    pressure: { takes: "choice", required: false, choices: ["psi", "bar", "kPa"] },
    reads: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<GroupShown>(
    z.object({ zone: z.string(), distance: unit.nullable(), pressure: z.string().nullable(), reads: z.boolean(), changed: z.boolean() }),
  ),
  run: (ctx, input) => setGroup(ctx, given(input)),
  say: (g, words) => said([...(g.changed ? [words.settings.saved()] : []), ...words.settings.group(g), words.settings.reads(g.reads)]),
});
