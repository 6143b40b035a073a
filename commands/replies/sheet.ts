// A service sheet as words, one evening at a time, with the whole of it as a table to print; and the job that works through it.

import type { ActionName } from "../../src/chat/action-names.ts";
import type { Action, Attached, Said } from "../../src/chat/reply.ts";
import { unreachable } from "../../src/core/brand.ts";
import type { Outcome } from "../../src/core/schedule/facts.ts";
import type { JobShown, JobWorked } from "../../src/usecases/jobs.ts";
import type { SheetEvening, SheetShown, SheetStep } from "../../src/usecases/sheet.ts";
import { csvOf } from "../../src/words/csv.ts";
import type { Words } from "../../src/words/en/english.ts";
import { billLists } from "./bill.ts";
import { sayOutcome } from "./message.ts";
import { formButton, pickOne, press, said } from "./said.ts";

type ItemStep = Extract<SheetStep, { step: "item" }>;
const itemsOf = ({ steps }: SheetEvening): ItemStep[] => steps.filter((step): step is ItemStep => step.step === "item");

export function saySheet(shown: SheetShown, words: Words): Said {
  const { sheet } = words;
  const { bike, mark, on, evenings, evening, adds } = shown;
  const job = shown.job === null ? [] : [press("sheet-job", shown.job, sheet.labels.go)];
  if (shown.items === 0)
    return said([sheet.empty(bike.nickname, mark, on, shown, bike), ...blind(shown, words), ...sheet.nearest(shown.nearest), ...meanwhile(shown, words)], {
      actions: job,
    });
  const here = evenings[evening - 1] as SheetEvening;
  const before = evenings.slice(0, evening - 1).reduce((sum, each) => sum + itemsOf(each).length, 0);
  const lines = [
    sheet.title(bike.nickname, mark, on, shown, shown.items, shown.minutes, shown.unsaid, evenings.length, bike),
    ...shown.stops.map((defect) => words.defects.due(defect, words.today)),
    ...(shown.engine === "ride" ? [] : [sheet.notRidden(shown.engine, shown.stops.length > 0)]),
    ...(evening > 1 ? [] : blind(shown, words)),
    ...[sheet.when(on, bike.today)].filter((line) => line !== null),
    ...(adds === null || evening > 1 ? [] : [sheet.adds(adds.at, adds.ordinary, adds.names, bike.unit)]),
    ...(shown.note === null ? [] : [sheet.note(shown.note)]),
    "",
    sheet.evening(
      evening,
      evenings.length,
      here.starts,
      shown.engine,
      here.minutes,
      here.unsaid,
      evening > 1 || itemsOf(here).some((item) => item.engine === "cold"),
    ),
    ...stepsOf(here, before, shown, words),
    ...(evenings[evening]?.starts === "cold" ? [sheet.overnight()] : []),
    ...lookedUp(here, words),
    ...(evening > 1
      ? []
      : [
          "",
          ...(shown.tools.length === 0 ? [] : [sheet.tools(shown.tools)]),
          ...(shown.uses.length === 0 ? [] : [sheet.uses(shown.uses)]),
          ...(shown.lookFirst.length === 0 ? [] : [sheet.lookFirst(shown.lookFirst)]),
          ...shown.covered.map(({ name, by }) => sheet.covered(name, by)),
          ...meanwhile(shown, words),
        ]),
  ];
  const told = cautionsOf(here, shown)
    .map((each) => words.caution(each))
    .filter((each) => each !== null);
  const pages = evenings.flatMap((_each, n): Action[] =>
    n + 1 === evening ? [] : [press("sheet-evening", `${bike.bike}/${shown.at}/${n + 1}`, sheet.labels.evening(n + 1))],
  );
  const begin = shown.job === null ? [press("sheet-start", `${bike.bike}/${shown.at}`, sheet.labels.start)] : job;
  // What it is not to be ridden with hurts first.
  const stops = shown.stops.map(({ caution }) => words.caution(caution)).filter((each) => each !== null);
  told.unshift(...[...new Set(stops)].filter((each) => !told.includes(each)).slice(0, 2));
  return said(lines, { caution: told.length === 0 ? null : told.join(" "), actions: [...begin, ...pages], files: [tableOf(shown, words)] });
}

/** Every caution of an evening once, what hurts worst first; a wheel off the ground wants one of its own. */
function cautionsOf(evening: SheetEvening, { brakes }: SheetShown): readonly string[] {
  const items = itemsOf(evening);
  // Where no brake is a disc, nothing is said of what is pumped.
  const allDrums = brakes.front !== "disc" && brakes.rear !== "disc";
  const own = items.flatMap(({ due }) => (due.caution === null ? [] : [due.caution === "brakes" && allDrums ? "drum brakes" : due.caution]));
  const all = new Set([...(items.some(({ position }) => position === "weight off") ? ["lifting"] : []), ...own]);
  const rank = (caution: string): number => (WORST_FIRST.includes(caution) ? WORST_FIRST.indexOf(caution) : WORST_FIRST.length);
  return [...all].sort((a, b) => rank(a) - rank(b));
}
const WORST_FIRST: readonly string[] = [
  "high voltage",
  "fuel",
  "brakes",
  "drum brakes",
  "drum dust",
  "brake fluid",
  "lifting",
  "steering",
  "throttle",
  "tyres",
];

const blind = ({ blind: what, bike }: SheetShown, { outlook }: Words): string[] => (what === null ? [] : [outlook.blind(what, bike)]);

const meanwhile = (shown: SheetShown, { sheet }: Words): string[] => (shown.meanwhile.length === 0 ? [] : [sheet.meanwhile(shown.meanwhile)]);

function stepsOf(evening: SheetEvening, before: number, shown: SheetShown, { sheet }: Words): string[] {
  let n = before;
  return evening.steps.flatMap((step): string[] => {
    switch (step.step) {
      case "item":
        n++;
        return [sheet.item(n, step.name, step.minutes, step.position, step.why), ...valuesOf(step, sheet).map((line) => `   ${line}`)];
      case "open":
        return [`- ${sheet.open(step.part)}`];
      case "close":
        return [`- ${sheet.close(step.part, shown.brakes)}`];
      case "stays apart":
        return [`- ${sheet.staysApart(step.parts)}`];
      case "warm up":
        return [`- ${sheet.warmUp(shown.engine)}`];
      case "tension":
        return shown.tension === null ? [] : [`- ${sheet.tension(shown.tension)}`];
      case "brakes":
        return sheet.brakes(shown.brakes).map((line) => `- ${line}`);
      case "last look":
        return [`- ${sheet.lastLook(shown.habits)}`];
      case "test ride":
        return [`- ${sheet.testRide(shown.engine)}`];
      default:
        return unreachable(step);
    }
  });
}

/** The values that are known, and what is noted. */
function valuesOf({ specs, measures }: ItemStep, sheet: Words["sheet"]): string[] {
  const known = specs.filter((spec) => spec.is !== "none");
  return [...known.map(sheet.spec), ...(measures.length === 0 ? [] : [sheet.measure(measures)])];
}

/** What of an evening has to be looked up, once for all of it. */
function lookedUp(evening: SheetEvening, { sheet }: Words): string[] {
  const unknown = itemsOf(evening).flatMap(({ specs }) => specs.filter((spec) => spec.is === "none").map((spec) => spec.key));
  return unknown.length === 0 ? [] : ["", sheet.look([...new Set(unknown)])];
}

function tableOf(shown: SheetShown, { sheet }: Words): Attached {
  let n = 0;
  const rows = shown.evenings.flatMap((evening, e) =>
    itemsOf(evening).map((item) => {
      n++;
      const values = item.specs.filter((spec) => spec.is !== "none").map(sheet.spec);
      return [String(e + 1), String(n), item.name, item.minutes === null ? "" : String(item.minutes), values.join("; "), "", "", ""];
    }),
  );
  return {
    ...{ name: "service-sheet.csv", type: "text/csv", alt: sheet.tableAlt(shown.bike.nickname) },
    bytes: new TextEncoder().encode(csvOf([sheet.tableHead(), ...rows])),
  };
}

export function sayJob(job: JobShown, words: Words): Said {
  const { sheet } = words;
  const { bike, lines, labels } = { ...job, labels: sheet.labels };
  const open = lines.filter((line) => line.open);
  const [waiting, fresh] = [open.filter((line) => line.ticked !== null), open.filter((line) => line.ticked === null)];
  const isOpen = job.state === "open";
  const here = isOpen ? fresh.filter((line) => line.evening === job.evening) : fresh;
  const count = { fresh: fresh.length, waiting: waiting.length, of: lines.length, came: cameTo(lines) };
  const text = [
    sheet.jobTitle(bike.nickname, job.mark, job.begunOn, count, job.state, bike),
    ...job.stops.map((defect) => words.defects.due(defect, words.today)),
    ...(job.standOvernight && isOpen ? [sheet.standOvernight()] : []),
    ...(here.length === 0
      ? []
      : ["", isOpen ? sheet.jobEvening(job.evening, job.evenings) : sheet.jobLeft(), ...here.map((line) => sheet.jobOpen(line.name, line.engine))]),
    ...(fresh.length > here.length ? [sheet.later(fresh.length - here.length)] : []),
    ...(waiting.length === 0 ? [] : ["", sheet.jobWaits(isOpen), ...waiting.flatMap((line) => waitingOf(line, job, words))]),
    ...lines.filter((line) => line.gone && line.ticked === null).map((line) => sheet.jobGone(line.name)),
    ...(lines.some((line) => line.ticked !== null && !line.open) ? ["", sheet.ticked()] : []),
    ...tickedOf(job, words),
    ...(job.note === null ? [] : ["", sheet.jobNote(job.note)]),
  ];
  const options = [...fresh, ...waiting].map((line) => ({ value: String(lines.indexOf(line)), label: line.name })).slice(0, 25);
  const actions: Action[] = !isOpen
    ? [press("sheet-reopen", job.job, labels.reopen)]
    : [
        ...(options.length === 0 ? [] : [pickOne("sheet-item", job.job, labels.tick, options)]),
        formButton("sheet-finish", job.job, labels.finish, sheet.finishForm()),
        ...(options.length === 0 ? [] : [formButton("sheet-shop", job.job, labels.shop, sheet.shopForm())]),
        ...(lines.every((line) => line.ticked === null) ? [press("sheet-leave", job.job, labels.leave)] : []),
      ];
  const caution = here.find((line) => line.caution !== null)?.caution ?? null;
  return said(text, { caution: isOpen ? words.caution(caution) : null, actions });
}

/** How many items came to each outcome. */
function cameTo(lines: JobShown["lines"]): ReadonlyMap<Outcome, number> {
  const came = new Map<Outcome, number>();
  for (const { ticked } of lines) if (ticked !== null) came.set(ticked.outcome, (came.get(ticked.outcome) ?? 0) + 1);
  return came;
}

type Line = JobShown["lines"][number];
/** All that was recorded at an item. */
const recordsOf = ({ ticked }: Line) => (ticked === null ? [] : [ticked, ...ticked.others]);

/** What could not be done yet, and why. */
function waitingOf({ name, engine, ticked }: Line, { bike }: JobShown, { sheet }: Words): string[] {
  return ticked === null ? [] : [sheet.jobWaiting(name, engine, ticked, bike), ...ticked.others.map((each) => sheet.jobOther(each, bike))];
}

/** Each item by itself; what one record holds, such as a shop's bill, on one line, whatever was done at an item of it besides. */
function tickedOf({ lines, bike }: JobShown, { sheet }: Words): string[] {
  const told = new Set<string>();
  return lines.flatMap((line): string[] => {
    const { name, ticked, open } = line;
    if (ticked === null || open) return [];
    const bills = recordsOf(line).flatMap((each) => {
      const { record } = each;
      if (record === null || each.together === 1 || told.has(record)) return [];
      told.add(record);
      const names = lines.filter((other) => recordsOf(other).some((of) => of.record === record)).map((other) => other.name);
      return [sheet.jobTogether(names, each, bike)];
    });
    const others = ticked.others.map((each) => sheet.jobOther(each, bike));
    if (ticked.together === 1) return [...bills, sheet.jobDone(name, ticked, bike), ...others];
    // On a line with others already; what else came of it stands by itself.
    return [...bills, ...(others.length === 0 ? [] : [sheet.jobBilled(name, ticked), ...others])];
  });
}

/** One item, and what can be said of it. */
export function sayJobItem({ job, line }: { readonly job: JobShown; readonly line: number }, words: Words): Said {
  const item = job.lines[line];
  if (item === undefined) return sayJob(job, words);
  const { labels, card, itemForm } = words.sheet;
  const subject = `${job.job}/${line}`;
  return said([card(item.name, item.action)], {
    caution: words.caution(item.caution),
    actions: [
      press("sheet-done", subject, labels.done),
      formButton("sheet-values", subject, labels.values, itemForm(item.name, words.p.date(words.today, words.today))),
      press("sheet-job", job.job, labels.sheet),
    ],
  });
}

/** Of what recording work offers, what is offered above the job too. */
const OF_TICKING: readonly ActionName[] = ["undo", "defect-grade", "defect-mended", "defect-show", "defect-closes"];

/** What ticking came to, then the job as it stands; with a shop's bill, what was not on it. */
export function sayWorked({ outcome, job, again }: JobWorked, words: Words): Said {
  const first = sayOutcome(outcome, words);
  if (outcome.is !== "logged") return first;
  const rest = sayJob(job, words);
  const bill = outcome.work.filter((record) => record.items.length > 1);
  const actions = bill.flatMap((record) => billLists("sheet-bill", `${job.job}/${record.id}`, record, words.sheet.labels.bill));
  // What was just found or worked at is cautioned of, not what is next on the sheet.
  const worked = job.lines.filter(({ item }) => outcome.work.some(({ items }) => items.some((each) => each.item === item)));
  const caution = first.caution ?? words.caution(worked.find((line) => line.caution !== null)?.caution ?? null);
  const kept = first.actions.filter(({ id }) => OF_TICKING.some((name) => id.split(".")[1] === name));
  const { twice, labels } = words.sheet;
  const back = again.flatMap(({ name, source }) => (source === null ? [] : [press("undo", source, labels.first(name))]));
  return {
    ...rest,
    caution,
    lines: [...first.lines, ...again.map(({ name }) => twice(name)), "", ...rest.lines],
    actions: [...kept, ...back, ...actions, ...rest.actions],
  };
}
