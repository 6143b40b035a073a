// /group: the group's zone, units, seasons, tread law and reading channel. Anyone may look; changing needs the manage-server permission.

import { z } from "zod";
import { TOPICS } from "../src/core/reminding.ts";
import { given } from "../src/usecases/given.ts";
import { type GroupPictured, groupPicture } from "../src/usecases/picture-group.ts";
import type { Result } from "../src/usecases/refusals.ts";
import { type GroupShown, setGroup, TREAD_PLACES } from "../src/usecases/settings.ts";
import { TREAD_PLACE_NAMES } from "../src/words/en/spec-names.ts";
import { WEEKDAYS } from "../src/words/en/weekdays.ts";
import { define, shapeOf } from "./define.ts";
import { sayGroup } from "./replies/group.ts";
import { groupPictured } from "./replies/picture-shapes.ts";
import { drawGroupPicture } from "./replies/pictures.ts";
import { said } from "./replies/said.ts";
import { groupShown } from "./shapes.ts";

type Out = GroupShown | GroupPictured;

export const group = define({
  name: "group",
  sub: null,
  options: {
    reading: { takes: "choice", required: false, choices: ["here", "nowhere"] },
    zone: { takes: "text", required: false, complete: "zone" },
    distance: { takes: "choice", required: false, choices: ["mi", "km"] },
    pressure: { takes: "choice", required: false, choices: ["psi", "bar", "kPa"] },
    place: { takes: "choice", required: false, choices: TREAD_PLACES, also: TREAD_PLACE_NAMES },
    season: { takes: "choice", required: false, choices: ["north", "south"] },
    riding: { takes: "text", required: false },
    digest: { takes: "choice", required: false, choices: ["off", ...WEEKDAYS] },
    "digest-time": { takes: "text", required: false },
    off: { takes: "choice", required: false, choices: TOPICS },
    on: { takes: "choice", required: false, choices: TOPICS },
    reads: { takes: "flag", required: false },
    picture: { takes: "flag", required: false },
    share: { takes: "flag", required: false },
  },
  adminOnly: false,
  // Settings are answered privately; a picture is posted where it is asked for so.
  visibility: ({ picture, share }) => (picture === true && share === true ? "shared" : "private"),
  data: shapeOf<Out>(z.union([groupPictured, groupShown])),
  run: (ctx, { picture, share: _share, digest, "digest-time": digestTime, ...settings }): Promise<Result<Out>> => {
    const day = digest === undefined || digest === "off" ? digest : WEEKDAYS.indexOf(digest) + 1;
    const change = given({ ...settings, digest: day, digestTime });
    return picture === true && Object.keys(change).length === 0 ? groupPicture(ctx) : setGroup(ctx, change);
  },
  say: (out, words) => ("is" in out ? said([...words.pictures.group(out).lines]) : sayGroup(out, words)),
  draw: async (out, words) => ("is" in out ? drawGroupPicture(out, words) : []),
});
