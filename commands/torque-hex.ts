// /torque hex: a spanner of the other system.

import { z } from "zod";
import { hexFits } from "../src/usecases/fasteners.ts";
import { define, shapeOf } from "./define.ts";
import { said } from "./replies/said.ts";

const size = z.object({ name: z.string(), width: z.number() });
type Answer = Extract<ReturnType<typeof hexFits>, { is: "done" }>["value"];

export const torqueHex = define({
  name: "torque",
  sub: "hex",
  options: { size: { takes: "text", required: true } },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<Answer>(
    z.object({ head: size, fits: z.array(z.object({ spanner: size, clearance: z.number(), grip: z.enum(["safe", "loose", "tight", "no"]) })) }),
  ),
  run: async (ctx, input) => hexFits(ctx, input),
  say: ({ head, fits }, { torque }) =>
    said([torque.hex(head.name, head.width), ...(fits.length === 0 ? [torque.noCross()] : fits.map(torque.cross))], { caution: torque.hexCaution }),
});
