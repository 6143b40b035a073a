// /bike fitted: one thing the bike is fitted with; equipment decides which items its plan has.

import type { EquipmentPart } from "../src/core/equipment.ts";
import { EQUIPMENT } from "../src/core/equipment.ts";
import { type BikeShown, setFitted } from "../src/usecases/change-bike.ts";
import { given } from "../src/usecases/given.ts";
import { PART_NAMES } from "../src/words/en/bikes.ts";
import { define, shapeOf } from "./define.ts";
import { sayChanged } from "./replies/bikes.ts";
import { bikeShown } from "./shapes.ts";

const PARTS = Object.keys(PART_NAMES) as EquipmentPart[];

export const bikeFitted = define({
  name: "bike",
  sub: "fitted",
  options: {
    part: { takes: "choice", required: true, choices: PARTS.map((part) => PART_NAMES[part]) },
    choice: { takes: "text", required: true },
    bike: { takes: "text", required: false, complete: "bike" },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<BikeShown>(bikeShown),
  run: (ctx, input) => {
    const part = PARTS.find((each) => PART_NAMES[each] === input.part) ?? "finalDrive";
    const choices: readonly string[] = EQUIPMENT[part];
    const choice = choices.find((each) => each.toLowerCase() === input.choice.toLowerCase()) ?? input.choice;
    return setFitted(ctx, { part, choice, ...given({ bike: input.bike }) });
  },
  say: sayChanged,
});
