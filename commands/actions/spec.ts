// Entering a spec by a form, and taking an entry back.

import { z } from "zod";
import type { BikeId } from "../../src/core/ids.ts";
import { SPEC_USES, type SpecUse } from "../../src/core/spec/spec.ts";
import { showBike } from "../../src/usecases/change-bike.ts";
import { refused } from "../../src/usecases/refusals.ts";
import type { GroupShown } from "../../src/usecases/settings.ts";
import { enterSpecParts, enterTreadLaw, type SpecSaved, undoSpec } from "../../src/usecases/spec-set.ts";
import { isSpecKey } from "../../src/usecases/specs.ts";
import { handler, shapeOf } from "../define.ts";
import { sayGroup } from "../replies/group.ts";
import { saySaved, specForm } from "../replies/spec.ts";
import { specSaved } from "../replies/spec-shapes.ts";
import { groupShown } from "../shapes.ts";

const data = shapeOf<SpecSaved>(specSaved);
const useOf = (said: string): SpecUse | null => SPEC_USES.find((each) => each === said) ?? null;

export const enterSpecForm = handler<SpecSaved>({
  kind: "form",
  visibility: "private",
  data,
  open: async (ctx, { subject }, words) => {
    const [bike = "", key = "", use = ""] = subject.split("/");
    if (!isSpecKey(key)) return refused({ why: "gone" });
    const shown = await showBike(ctx, { bike });
    return shown.is === "refused" ? shown : { is: "done", value: specForm(key, useOf(use), shown.value.nickname, words) };
  },
  run: async (ctx, { subject, fields }) => {
    const [bike = "", key = "", use = ""] = subject.split("/");
    if (!isSpecKey(key)) return refused({ why: "gone" });
    const { value = "", manual = "", edition = "", page = "" } = fields;
    return enterSpecParts(ctx, { bike: bike as BikeId, key, use: useOf(use), value, manual, edition, page });
  },
  say: saySaved,
});
/** A limit said beside a reading: saved as it was said, with no page of a manual to it. */
export const saveLimit = handler<SpecSaved>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: async (ctx, { subject }) => {
    const [bike = "", key = "", value = ""] = subject.split("/").map(decodeURIComponent);
    if (!isSpecKey(key)) return refused({ why: "gone" });
    return enterSpecParts(ctx, { bike: bike as BikeId, key, use: null, value, manual: "", edition: "", page: "" });
  },
  say: saySaved,
});
/** Whose tread law holds; settled for the group by whoever runs it, else for the bike. */
export const treadLaw = handler<SpecSaved | GroupShown>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf<SpecSaved | GroupShown>(z.union([specSaved, groupShown])),
  run: (ctx, { subject }) => {
    const [bike = "", place = ""] = subject.split("/").map(decodeURIComponent);
    return enterTreadLaw(ctx, { bike: bike as BikeId, place });
  },
  say: (out, words) => ("zone" in out ? sayGroup(out, words) : saySaved(out, words)),
});
export const takeSpecBack = handler<SpecSaved>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: (ctx, { subject, rev }) => undoSpec(ctx, { spec: subject, rev }),
  say: saySaved,
});
