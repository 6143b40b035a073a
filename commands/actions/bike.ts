// What a bike just added is asked: its past, and what it is fitted with.

import { z } from "zod";
import { EQUIPMENT, type EquipmentPart } from "../../src/core/equipment.ts";
import type { BikeId } from "../../src/core/ids.ts";
import type { Refusal } from "../../src/core/refusal.ts";
import { type Added, addBike } from "../../src/usecases/add-bike.ts";
import { type BikeShown, setFitted, showBike } from "../../src/usecases/change-bike.ts";
import type { DueBike } from "../../src/usecases/due.ts";
import { type History, historyQuestions, recordHistory, wholeSinceNew } from "../../src/usecases/first-history.ts";
import { done, type Result, refused } from "../../src/usecases/refusals.ts";
import { type SeveralBikes, severalBikes } from "../../src/usecases/several-bikes.ts";
import { handler, shapeOf } from "../define.ts";
import { addForm, begunOf, firstBike, sayAdded, saySeveral } from "../replies/added.ts";
import { sayChanged } from "../replies/bikes.ts";
import { sayDue } from "../replies/due.ts";
import { historyForm, historyOf, sayHistory } from "../replies/history.ts";
import { pickOne, said } from "../replies/said.ts";
import { addedBike, bikeShown, dueBike, KINDS, severalNamed, vagueDate } from "../shapes.ts";

const historyData = shapeOf<History>(
  z.object({
    nickname: z.string(),
    recorded: z.array(z.object({ items: z.array(z.string()), called: z.string(), on: vagueDate })),
    unknown: z.array(z.string()),
    kept: z.string().nullable(),
    unread: z.array(z.object({ item: z.string(), called: z.string(), typed: z.string() })),
    due: dueBike,
  }),
);
const shown = shapeOf<BikeShown>(bikeShown);

type FirstAdded =
  | Added
  | SeveralBikes
  | { readonly is: "again"; readonly why: Refusal; readonly name: string; readonly kind: string; readonly odometer: string };

/** A slip in the form is said, and the form is there again as it was filled in. */
export const addFirst = handler<FirstAdded>({
  kind: "form",
  open: async (_ctx, { subject }, words) => ({ is: "done", value: addForm(words, begunOf(subject)) }),
  visibility: "private",
  data: shapeOf<FirstAdded>(
    z.union([
      z.union([addedBike, severalNamed]),
      z.object({ is: z.literal("again"), why: z.looseObject({ why: z.string() }), name: z.string(), kind: z.string(), odometer: z.string() }),
    ]),
  ),
  run: async (ctx, { subject, fields }): Promise<Result<FirstAdded>> => {
    const { name = "", odometer = "" } = fields;
    const kind = KINDS.find((each) => each === fields["kind"]);
    if (kind === undefined) return refused({ why: "option", option: "kind", problem: "not a choice", choices: KINDS });
    const several = begunOf(subject).one === true ? null : severalBikes(ctx, { name, odometer, kind });
    if (several !== null) return done(several);
    const added = await addBike(ctx, { name, kind, odometer });
    return added.is === "refused" && added.why.why !== "heard already" ? done({ is: "again", why: added.why, name, kind, odometer }) : added;
  },
  say: (added, words) => {
    if (!("is" in added)) return sayAdded(added, words);
    if (added.is === "several") return saySeveral(added, words);
    return said([words.refusal(added.why)], { actions: [firstBike(words, added)] });
  },
});
export const history = handler<History>({
  kind: "form",
  open: async (ctx, { subject }, words) => {
    const { bike, kept } = historyOf(subject);
    const asked = await historyQuestions(ctx, { bike: bike as BikeId, ...(kept === null ? {} : { kept }) });
    return asked.is === "refused" ? asked : { is: "done", value: historyForm(asked.value.nickname, asked.value.items, words) };
  },
  visibility: "private",
  data: historyData,
  run: (ctx, { subject, fields }) => recordHistory(ctx, { bike: historyOf(subject).bike as BikeId, answers: fields }),
  say: sayHistory,
});
export const historyUnknown = handler<History>({
  kind: "press",
  visibility: "private",
  data: historyData,
  run: async (ctx, { subject }) => {
    const asked = await historyQuestions(ctx, { bike: subject as BikeId });
    return asked.is === "refused"
      ? asked
      : recordHistory(ctx, { bike: subject as BikeId, answers: Object.fromEntries(asked.value.items.map(({ item }) => [item, ""])) });
  },
  say: sayHistory,
});
export const historyWhole = handler<DueBike>({
  kind: "press",
  visibility: "private",
  data: shapeOf<DueBike>(dueBike),
  run: (ctx, { subject }) => wholeSinceNew(ctx, { bike: subject as BikeId }),
  say: (bike, words) => {
    const list = sayDue([bike], words);
    return { ...list, lines: [words.bikes.whole(bike.nickname), "", ...list.lines] };
  },
});

/** First the part that is different, then what it is. */
export const fitPart = handler<{ readonly bike: BikeShown; readonly part: EquipmentPart | null }>({
  kind: "pick",
  visibility: "private",
  data: shapeOf(z.object({ bike: bikeShown, part: z.string().nullable() })),
  run: async (ctx, { subject, values }) => {
    const bike = await showBike(ctx, { bike: subject });
    if (bike.is === "refused") return bike;
    const part = (Object.keys(EQUIPMENT) as EquipmentPart[]).find((each) => each === values[0]) ?? null;
    return { is: "done", value: { bike: bike.value, part } };
  },
  say: ({ bike, part }, words) => {
    if (part === null) {
      const parts = (Object.keys(EQUIPMENT) as EquipmentPart[]).map((each) => ({ value: each, label: words.bikes.part(each, bike.equipment[each]) }));
      return said([words.bikes.pickPart(bike.nickname)], { actions: [pickOne("fit-part", bike.bike, words.bikes.pickPart(bike.nickname), parts)] });
    }
    const choices = EQUIPMENT[part].map((choice) => ({ value: choice, label: choice }));
    return said([words.bikes.pickChoice(bike.nickname, part)], {
      actions: [pickOne("fit-choice", `${bike.bike}.${part}`, words.bikes.pickChoice(bike.nickname, part), choices)],
    });
  },
});
export const fitChoice = handler<BikeShown>({
  kind: "pick",
  visibility: "private",
  data: shown,
  run: async (ctx, { subject, values }) => {
    const [bike = "", typed] = subject.split(".");
    const part = (Object.keys(EQUIPMENT) as EquipmentPart[]).find((each) => each === typed);
    return part === undefined ? refused({ why: "gone" }) : setFitted(ctx, { bike, part, choice: values[0] ?? "" });
  },
  say: sayChanged,
});

/** A new battery whose kind was said with the work. */
export const fitBattery = handler<BikeShown>({
  kind: "press",
  visibility: "private",
  data: shown,
  run: (ctx, { subject }) => {
    const [bike = "", kind = ""] = subject.split(".");
    return setFitted(ctx, { bike, part: "battery", choice: kind });
  },
  say: sayChanged,
});
