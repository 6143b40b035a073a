// Every checklist by its name. A list is one file and one line here.

import type { Checklist, ChecklistName } from "../../core/check/checklist.ts";
import { AFTER_A_FALL } from "./after-a-fall.ts";
import { BUYING_USED } from "./buying-used.ts";
import { LAY_UP } from "./lay-up.ts";
import { OUT_OF_STORAGE } from "./out-of-storage.ts";
import { PRE_RIDE } from "./pre-ride.ts";
import { PRE_TRIP } from "./pre-trip.ts";

export const LISTS: Readonly<Record<ChecklistName, Checklist>> = {
  "out of storage": OUT_OF_STORAGE,
  "lay-up": LAY_UP,
  "pre-ride": PRE_RIDE,
  "pre-trip": PRE_TRIP,
  "buying used": BUYING_USED,
  "after a fall": AFTER_A_FALL,
};
