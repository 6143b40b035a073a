// Grading what was found wrong, and closing it.

import { z } from "zod";
import type { DefectShown } from "../../src/usecases/defect-shown.ts";
import { type ClosedAsNothing, closeAsNothing, closeByWork, gradeDefect, showDefect } from "../../src/usecases/defects.ts";
import { given } from "../../src/usecases/given.ts";
import type { MessageOutcome } from "../../src/usecases/message-outcome.ts";
import { recordMended } from "../../src/usecases/record-work.ts";
import { refused } from "../../src/usecases/refusals.ts";
import { handler, shapeOf } from "../define.ts";
import { GRADE_OF, nothingForm, sayDefect } from "../replies/defects.ts";
import { sayOutcome } from "../replies/message.ts";
import { press, said } from "../replies/said.ts";
import { defect, judged, messageOutcome } from "../shapes.ts";

const data = shapeOf<DefectShown>(defect);

export const defectShow = handler<DefectShown>({
  kind: "press",
  visibility: "private",
  data,
  run: (ctx, { subject }) => showDefect(ctx, { defect: subject }),
  say: sayDefect,
});
export const defectGrade = handler<DefectShown>({
  kind: "press",
  settles: true,
  visibility: "private",
  data,
  run: async (ctx, { subject, rev }) => {
    const [id = "", chosen] = subject.split(".");
    const grade = chosen === "stop" || chosen === "watch" ? GRADE_OF[chosen] : null;
    return grade === null ? refused({ why: "gone" }) : gradeDefect(ctx, { defect: id, rev, grade });
  },
  say: sayDefect,
});
export const defectNothing = handler<ClosedAsNothing>({
  kind: "form",
  settles: true,
  open: async (_ctx, _pressed, words) => ({ is: "done", value: nothingForm(words) }),
  visibility: "private",
  data: shapeOf<ClosedAsNothing>(
    defect.and(z.object({ figures: z.array(judged.pick({ id: true, kind: true, place: true, value: true, unit: true, typed: true })) })),
  ),
  run: (ctx, { subject, fields }) => closeAsNothing(ctx, { defect: subject, why: fields["why"] ?? "" }),
  say: (out, words) =>
    said([words.defects.nothing(out)], {
      actions: out.figures.map((each) => press("undo-reading", each.id, words.defects.labels.takeBack(words.readings.judged(each)))),
    }),
});
export const defectMended = handler<MessageOutcome>({
  kind: "form",
  settles: true,
  open: async (_ctx, _pressed, words) => ({ is: "done", value: words.defects.mendedForm }),
  visibility: "private",
  data: shapeOf<MessageOutcome>(messageOutcome),
  run: (ctx, { subject, fields }) => recordMended(ctx, { defect: subject, did: fields["did"] ?? "", ...given({ at: fields["at"], on: fields["on"] }) }),
  say: sayOutcome,
});
/** The subject is the defect and the work that closes it. */
export const defectCloses = handler<DefectShown>({
  kind: "press",
  visibility: "private",
  data: shapeOf<DefectShown>(defect.and(z.object({ closedBy: z.string().nullable() }))),
  run: (ctx, { subject }) => {
    const [id = "", work = ""] = subject.split(".");
    return closeByWork(ctx, { defect: id, work });
  },
  say: (out, words) => said([words.defects.mended(out)], { caution: words.caution(out.caution) }),
});
