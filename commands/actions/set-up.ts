// What a new server's admin is asked in a direct message: one choice a press, each changed later with /group.

import type { GroupId } from "../../src/core/ids.ts";
import { given } from "../../src/usecases/given.ts";
import { type GroupChange, type GroupShown, setUpGroup, TREAD_PLACES } from "../../src/usecases/settings.ts";
import { handler, shapeOf } from "../define.ts";
import { sayGroup } from "../replies/group.ts";
import { zoneForm } from "../replies/set-up.ts";
import { groupShown } from "../shapes.ts";

const data = shapeOf<GroupShown>(groupShown);
const oneOf = <T extends string>(choices: readonly T[], value: string | undefined): T | undefined => choices.find((choice) => choice === value);

/** A pick's subject is the group and what is chosen. */
export const setUp = handler<GroupShown>({
  kind: "pick",
  visibility: "private",
  data,
  run: (ctx, { subject, values: [value] }) => {
    const [group = "", what] = subject.split(".");
    const change: GroupChange = given({
      place: what === "place" ? oneOf(TREAD_PLACES, value) : undefined,
      distance: what === "distance" ? oneOf(["mi", "km"] as const, value) : undefined,
      season: what === "season" ? oneOf(["north", "south"] as const, value) : undefined,
      pressure: what === "pressure" ? oneOf(["psi", "bar", "kPa"] as const, value) : undefined,
    });
    return setUpGroup(ctx, group as GroupId, change);
  },
  say: sayGroup,
});
export const setUpZone = handler<GroupShown>({
  kind: "form",
  open: async (_ctx, _pressed, words) => ({ is: "done", value: zoneForm(words) }),
  visibility: "private",
  data,
  run: (ctx, { subject, fields }) => setUpGroup(ctx, subject as GroupId, { zone: fields["zone"]?.trim() ?? "" }),
  say: sayGroup,
});
