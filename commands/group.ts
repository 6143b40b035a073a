// /group: the group's zone, units, seasons, tread law and reading channel. Anyone may look; changing needs the manage-server permission.

import { given } from "../src/usecases/given.ts";
import { type GroupShown, setGroup, TREAD_PLACES } from "../src/usecases/settings.ts";
import { define, shapeOf } from "./define.ts";
import { sayGroup } from "./replies/group.ts";
import { groupShown } from "./shapes.ts";

export const group = define({
  name: "group",
  sub: null,
  options: {
    reading: { takes: "choice", required: false, choices: ["here", "nowhere"] },
    zone: { takes: "text", required: false, complete: "zone" },
    distance: { takes: "choice", required: false, choices: ["mi", "km"] },
    pressure: { takes: "choice", required: false, choices: ["psi", "bar", "kPa"] },
    place: { takes: "choice", required: false, choices: TREAD_PLACES },
    season: { takes: "choice", required: false, choices: ["north", "south"] },
    riding: { takes: "text", required: false },
    reads: { takes: "flag", required: false },
  },
  adminOnly: false,
  visibility: () => "private",
  data: shapeOf<GroupShown>(groupShown),
  run: (ctx, input) => setGroup(ctx, given(input)),
  say: sayGroup,
});
