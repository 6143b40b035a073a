// The buttons of a service sheet and of the job that works through it.

import type { ActionName } from "../../src/chat/action-names.ts";
import type { Form } from "../../src/chat/reply.ts";
import type { BikeId } from "../../src/core/ids.ts";
import { OUTCOMES } from "../../src/core/schedule/facts.ts";
import type { Ctx } from "../../src/usecases/context.ts";
import { given } from "../../src/usecases/given.ts";
import {
  backOnTheBill,
  finishJob,
  type JobShown,
  type JobWorked,
  leaveJob,
  notOnTheBill,
  reopenJob,
  shopDid,
  showJob,
  startJob,
  tick,
} from "../../src/usecases/jobs.ts";
import { type Result, refused } from "../../src/usecases/refusals.ts";
import { type SheetShown, showSheet } from "../../src/usecases/sheet.ts";
import type { Words } from "../../src/words/en/english.ts";
import { type BotHandler, handler, shapeOf } from "../define.ts";
import { press } from "../replies/said.ts";
import { sayJob, sayJobItem, saySheet, sayWorked } from "../replies/sheet.ts";
import { jobItem, jobShown, jobWorked, sheetShown } from "../replies/sheet-shapes.ts";

const jobData = shapeOf<JobShown>(jobShown);
const workedData = shapeOf<JobWorked>(jobWorked);

const evening = handler<SheetShown>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: shapeOf<SheetShown>(sheetShown),
  run: (ctx, { subject }) => {
    const [bike = "", at = "", n = "1"] = subject.split("/");
    return showSheet(ctx, { bike, at, evening: Number(n) });
  },
  say: saySheet,
});
const start = handler<JobShown>({
  kind: "press",
  visibility: "private",
  data: jobData,
  run: (ctx, { subject }) => {
    const [bike = "", at = ""] = subject.split("/");
    return startJob(ctx, { bike: bike as BikeId, at });
  },
  say: sayJob,
});

/** What changes a job by a press alone. */
const changes = (run: (ctx: Ctx, input: { readonly job: string }) => Promise<Result<JobShown>>): BotHandler =>
  handler<JobShown>({ kind: "press", settles: true, visibility: "private", data: jobData, run: (ctx, { subject }) => run(ctx, { job: subject }), say: sayJob });

/** An item picked from the list, with what can be said of it. */
type Picked = { readonly job: JobShown; readonly line: number };
const item = handler<Picked>({
  kind: "pick",
  visibility: "private",
  data: shapeOf<Picked>(jobItem),
  run: async (ctx, { subject, values: [line] }) => {
    const job = await showJob(ctx, { job: subject });
    return job.is === "refused" ? job : { is: "done", value: { job: job.value, line: Number(line) } };
  },
  say: sayJobItem,
});

/** The job and the key of the item that a button names by its place. */
async function lineOf(ctx: Ctx, subject: string): Promise<Result<{ readonly job: string; readonly item: string; readonly name: string }>> {
  const [id = "", n = ""] = subject.split("/");
  const job = await showJob(ctx, { job: id });
  if (job.is === "refused") return job;
  const line = job.value.lines[Number(n)];
  return line === undefined ? refused({ why: "gone" }) : { is: "done", value: { job: id, item: line.item, name: line.name } };
}

const tickOff = handler<JobWorked>({
  kind: "press",
  visibility: "private",
  data: workedData,
  run: async (ctx, { subject }) => {
    const line = await lineOf(ctx, subject);
    return line.is === "refused" ? line : tick(ctx, line.value);
  },
  say: sayWorked,
});
const values = handler<JobWorked>({
  kind: "form",
  open: async (ctx, { subject }, words) => {
    const line = await lineOf(ctx, subject);
    return line.is === "refused" ? line : { is: "done", value: words.sheet.itemForm(line.value.name, words.p.date(words.today, words.today)) };
  },
  visibility: "private",
  data: workedData,
  run: async (ctx, { subject, fields }) => {
    const line = await lineOf(ctx, subject);
    if (line.is === "refused") return line;
    const typed = fields["outcome"]?.trim() ?? "";
    const outcome = OUTCOMES.find((each) => each === typed);
    if (typed !== "" && outcome === undefined) return refused({ why: "option", option: "outcome", problem: "not a choice", choices: OUTCOMES });
    return tick(ctx, { ...line.value, ...given({ outcome, found: fields["found"], left: fields["left"], at: fields["at"], on: fields["on"] }) });
  },
  say: sayWorked,
});

/** Forms that are the same whatever the job. */
const opens =
  (form: (words: Words) => Form) =>
  async (ctx: Ctx, { subject }: { readonly subject: string }, words: Words) => {
    const job = await showJob(ctx, { job: subject });
    return job.is === "refused" ? job : ({ is: "done", value: form(words) } as const);
  };
const finish = handler<JobShown>({
  kind: "form",
  open: opens((words) => words.sheet.finishForm()),
  visibility: "private",
  data: jobData,
  run: (ctx, { subject, fields }) => finishJob(ctx, { job: subject, ...given({ note: fields["note"] }) }),
  say: sayJob,
});
const shop = handler<JobWorked>({
  kind: "form",
  open: opens((words) => words.sheet.shopForm()),
  visibility: "private",
  data: workedData,
  run: (ctx, { subject, fields }) => {
    const [cost, name] = [fields["cost"], fields["shop"]].map((typed) => typed?.trim() || undefined);
    return shopDid(ctx, { job: subject, ...given({ at: fields["at"], on: fields["on"], cost, shop: name }) });
  },
  say: sayWorked,
});

type Amended = { readonly job: JobShown; readonly record: string; readonly rev: number };
const amendedData = shapeOf<Amended>(jobItem.omit({ line: true }).loose());
const sayAmended = ({ job, record, rev }: Amended, words: Words) => {
  const shown = sayJob(job, words);
  return { ...shown, actions: [press("sheet-bill-back", `${job.job}/${record}`, words.sheet.labels.back, rev), ...shown.actions] };
};
const bill = handler<Amended>({
  kind: "pick",
  visibility: "private",
  data: amendedData,
  run: async (ctx, { subject, rev, values: items }) => {
    const [job = "", record = ""] = subject.split("/");
    const amended = await notOnTheBill(ctx, { job, record, rev, items });
    return amended.is === "refused" ? amended : { is: "done", value: { job: amended.value, record, rev: rev + 1 } };
  },
  say: sayAmended,
});
const billBack = handler<JobShown>({
  kind: "press",
  settles: true,
  visibility: "private",
  data: jobData,
  run: (ctx, { subject, rev }) => {
    const [job = "", record = ""] = subject.split("/");
    return backOnTheBill(ctx, { job, record, rev });
  },
  say: sayJob,
});

export const SHEET_HANDLERS = {
  "sheet-evening": evening,
  "sheet-start": start,
  "sheet-job": changes(showJob),
  "sheet-item": item,
  "sheet-done": tickOff,
  "sheet-values": values,
  "sheet-finish": finish,
  "sheet-reopen": changes(reopenJob),
  "sheet-leave": changes(leaveJob),
  "sheet-shop": shop,
  "sheet-bill": bill,
  "sheet-bill-back": billBack,
} as const satisfies { readonly [K in Extract<ActionName, `sheet-${string}`>]: BotHandler };
