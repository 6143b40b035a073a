// A check as it is shown: one section at a time with the point that is looked at now, and at the end what it came to.

import type { Action, Form, Said } from "../../src/chat/reply.ts";
import { CHECKLISTS, FAULT_GRADES } from "../../src/core/check/checklist.ts";
import { callsForWork } from "../../src/core/judgement/verdict.ts";
import type { CheckStep } from "../../src/usecases/check-answer.ts";
import type { CheckMenu, CheckMine } from "../../src/usecases/check-finish.ts";
import type { CheckShown, PointShown } from "../../src/usecases/check-view.ts";
import type { Words } from "../../src/words/en/english.ts";
import { judgedLines } from "./judge.ts";
import { formButton, pickOne, press, said } from "./said.ts";

export const isLooked = ({ answer }: PointShown): boolean => answer !== null && answer !== "later";
export const pointsOf = (shown: CheckShown): readonly PointShown[] => shown.sections.flatMap((section) => section.points);

export function sayStep(step: CheckStep, words: Words): Said {
  if (step.state === "left") return said([words.checks.putAway(step.called, step.list)]);
  const told = step.state === "open" ? sayCard(step, words) : sayResult(step, words);
  return step.stale === true ? { ...told, lines: [words.checks.stale(), "", ...told.lines] } : told;
}

/** The card: the section of the point that is looked at now. */
function sayCard(step: CheckStep, words: Words): Said {
  const { checks } = words;
  const { at, result } = step;
  const lines: string[] = [checks.progress(result)];
  if (step.standing.length > 0 && result.looked === 0) lines.push(checks.standing(), ...step.standing.map(checks.stood));
  const actions: Action[] = [];
  if (step.logged?.is === "asked") {
    lines.push(checks.asked());
    actions.push(press("show-question", step.logged.question.draft, checks.labels.question, step.logged.question.rev));
  }
  // What was just read is judged on the spot, though the next point is up already.
  const isUp = step.logged?.is === "logged" && step.logged.readings.some(({ id }) => at?.measured.some((reading) => reading.id === id) === true);
  if (step.logged?.is === "logged" && !isUp) lines.push(...judgedLines(step.logged.judged ?? [], words));
  const section = step.sections.find(({ points }) => points.some((point) => point.key === at?.key));
  if (at === null || section === undefined) {
    lines.push("", checks.allAnswered(result.left.length));
  } else {
    lines.push("", checks.section(section.key, section.points.filter(isLooked).length, section.points.length));
    lines.push(...section.points.map((point) => checks.line(point, point.key === at.key)), "", ...checks.ask(at), ...about(at, words));
    actions.push(...answers(step, at, words));
    const several = section.points.filter((point) => point.answer === null && point.item === null && !point.measures.some((each) => each.optional !== true));
    if (several.length > 1) actions.push(pickSeveral(step, several, words));
  }
  actions.push(...elsewhere(step, words));
  return said(lines, { title: checks.title(step.called, step.list), caution: words.caution(at?.caution ?? null), actions });
}

/** What is known of a point beside its two lines. */
function about(point: PointShown, words: Words): string[] {
  const { checks } = words;
  const noted = checks.noted(point);
  return [
    ...(point.before === null ? [] : [checks.before(point.before, words.today)]),
    ...(point.measured.length === 0 ? [] : [checks.measured(point.measured.map(words.readings.reading))]),
    ...judgedLines(point.judged, words),
    ...(point.figures === null ? [] : [checks.figures(point.figures, point.answer === null)]),
    ...(noted === null ? [] : [noted]),
    ...(point.measures.length > 0 && point.measured.length === 0 && point.figures === null ? [checks.plainly()] : []),
  ];
}

function answers(step: CheckStep, point: PointShown, words: Words): Action[] {
  const { labels } = words.checks;
  const subject = `${step.check}.${point.n}`;
  const of = (answer: string, label: string): Action => press("check-answer", `${subject}.${answer}`, label, step.rev);
  return [
    of("good", point.item === null ? labels.good : labels.done),
    formButton("check-fault", subject, labels.needsWork, faultForm(point, words), step.rev),
    ...(point.everybodys ? [] : [of("not fitted", labels.notFitted)]),
    of("later", labels.later),
    ...(point.measures.length === 0 ? [] : [formButton("check-measure", subject, labels.measure, measureForm(point, words), step.rev)]),
    formButton("check-note", subject, labels.note, noteForm(point, words), step.rev),
    ...(words.checks.more(point.key) === null ? [] : [press("check-more", subject, labels.more, step.rev)]),
  ];
}

const pickSeveral = (step: CheckStep, points: readonly PointShown[], words: Words): Action => ({
  ...pickOne(
    "check-answer",
    `${step.check}..good`,
    words.checks.labels.several,
    points.map((point) => ({ value: String(point.n), label: words.checks.name(point) })),
    step.rev,
  ),
  kind: "pick",
  options: points.map((point) => ({ value: String(point.n), label: words.checks.name(point) })),
  min: 1,
  max: points.length,
});

/** Finishing, and the way to the other sections. */
function elsewhere(step: CheckStep, words: Words): Action[] {
  const { checks } = words;
  const sections = step.sections.map(({ key, points }, n) => ({
    value: String(n),
    label: checks.sectionName(key, points.filter(isLooked).length, points.length),
  }));
  return [press("check-finish", step.check, checks.labels.finish, step.rev), pickOne("check-section", step.check, checks.labels.section, sections, step.rev)];
}

const LINE = { kind: "line", required: false, value: null, hint: null, options: [] } as const;

export function faultForm(point: PointShown, words: Words): Form {
  const { forms } = words.checks;
  return {
    title: forms.title(point),
    fields: [
      { ...LINE, name: "what", label: forms.what, kind: "paragraph", required: true, value: point.note ?? words.checks.name(point) },
      {
        ...LINE,
        name: "grade",
        label: forms.how,
        kind: "choice",
        required: true,
        value: point.grade ?? point.onFail,
        options: FAULT_GRADES.map((value) => ({ value, label: forms.grades[value] })),
      },
      { ...LINE, name: "link", label: forms.link, value: point.link, hint: forms.linkHint },
    ],
  };
}

export function measureForm(point: PointShown, words: Words): Form {
  const { forms } = words.checks;
  return {
    title: forms.title(point),
    fields: point.measures.map(({ kind, place }, n) => ({ ...LINE, name: `figure${n}`, label: forms.figure(kind, place), hint: forms.figureHint(kind) })),
  };
}

export function noteForm(point: PointShown, words: Words): Form {
  const { forms } = words.checks;
  return {
    title: forms.title(point),
    fields: [
      { ...LINE, name: "note", label: forms.note, kind: "paragraph", value: point.note },
      { ...LINE, name: "link", label: forms.link, value: point.link, hint: forms.linkHint },
    ],
  };
}

/** What a run came to. @param shared where others read it: what is not to be ridden on is counted there, never named */
export function sayResult(step: CheckShown, words: Words, shared = false): Said {
  const { checks } = words;
  const { result } = step;
  const all = pointsOf(step);
  const of = (keys: readonly string[]): PointShown[] => all.filter(({ key }) => keys.includes(key));
  const [stop, watch, left] = [of(result.stop), of(result.watch), of(result.left)];
  const lines = [checks.when(step.finishedOn ?? step.begunOn, words.today)];
  const stops = stopsOf(step);
  if (shared && stops > 0) lines.push(checks.inGroup(stops));
  else {
    lines.push(checks.says(step.called, result, stood(step)));
    lines.push(...stop.flatMap((point) => [checks.stop(point), ...failed(point, words)]));
    if (!shared && step.standing.length > 0) lines.push(checks.standing(), ...step.standing.map(checks.stood));
  }
  if (!shared && result.vitalLeft.length > 0) lines.push(checks.vitalLeft(of(result.vitalLeft.map(({ key }) => key)).map(checks.name)));
  lines.push(checks.looked(result, left.map(checks.name)));
  const nearing = shared ? [] : nearingIn(step);
  if (watch.length + nearing.length > 0) lines.push(checks.watch(), ...watch.flatMap((point) => [checks.stop(point), ...failed(point, words)]));
  lines.push(...nearing.flatMap((point) => wanting(point, words)));
  const measured = measuredIn(step, shared);
  if (measured.length > 0) lines.push(checks.wasMeasured(measured.map(words.readings.reading)));
  const figures = all.flatMap((point) => (point.figures === null ? [] : [`${checks.name(point)} ${point.figures}`]));
  if (figures.length > 0) lines.push(checks.wasMeasured(figures));
  const buy = shared ? null : checks.buy([...stop, ...watch, ...nearing]);
  if (buy !== null) lines.push(buy);
  if (step.recorded.length > 0) lines.push(checks.recorded(step.recorded.map(({ called }) => called)));
  const notes = all.flatMap((point) => {
    const noted = point.answer === "needs work" ? (point.link ?? null) : [point.note, point.link].filter((each) => each !== null).join(" ");
    return noted === null || noted === "" ? [] : [{ name: checks.name(point), said: noted }];
  });
  if (!shared && notes.length > 0) lines.push(checks.notesTitle(), ...checks.notes(notes));
  lines.push(checks.noCertificate());
  if (!shared && step.bike !== null) lines.push(checks.shareHow(step.called));
  const caution = shared ? null : words.caution(stop.find((point) => point.caution !== null)?.caution ?? null);
  return said(lines, { title: checks.title(step.called, step.list), caution, actions: shared ? [] : afterwards(step, words) });
}

/** How many defects from before are not to be ridden on, and how many with those found now. */
export const stood = ({ standing }: CheckShown): number => standing.filter(({ grade }) => grade === "do not ride").length;
export const stopsOf = (step: CheckShown): number => step.result.stop.length + stood(step);

/** Each reading of a run once. Where others read it, what was measured on a point that stops the ride would name it. */
export function measuredIn(step: CheckShown, shared: boolean): PointShown["measured"] {
  const told = pointsOf(step).filter(({ key }) => !shared || !step.result.stop.includes(key));
  return [...new Map(told.flatMap((point) => point.measured).map((reading) => [reading.id, reading])).values()];
}

/** Points that were let pass, of which something read is near its limit, or beyond. */
const isWanting = ({ judgement }: PointShown["judged"][number]): boolean => judgement.is === "near limit" || callsForWork(judgement);
const nearingIn = (step: CheckShown): PointShown[] => pointsOf(step).filter(({ answer, judged }) => answer !== "needs work" && judged.some(isWanting));
const wanting = ({ judged }: PointShown, words: Words): string[] => judgedLines(judged.filter(isWanting), words);

/** The verdicts that a point failed by. */
const failed = (point: PointShown, words: Words): string[] =>
  judgedLines(
    point.judged.filter(({ judgement }) => callsForWork(judgement)),
    words,
  );

function afterwards(step: CheckShown, words: Words): Action[] {
  const { labels } = words.checks;
  const moves = step.bike !== null && step.list === "lay-up" && step.bikeState === "riding" ? "laid up" : null;
  const back = step.bike !== null && step.list === "out of storage" && step.bikeState === "laid up" ? "riding" : null;
  return [
    ...(step.source === null ? [] : [press("undo", step.source, labels.undo)]),
    press("check-reopen", step.check, labels.reopen, step.rev),
    ...(moves === null ? [] : [press("check-state", `${step.bike}.${moves}`, labels.laidUp(step.called))]),
    ...(back === null ? [] : [press("check-state", `${step.bike}.${back}`, labels.riding(step.called))]),
    ...(step.bike === null ? [] : [press("show-due", step.bike, words.readings.labels.due)]),
  ];
}

/** A platform's message holds so many buttons; whoever has more bikes finds the rest by /check. */
const MOST_BUTTONS = 20;

/** The speaker's bikes before a list, a button each. */
export function sayMine({ list, bikes }: CheckMine, words: Words): Said {
  const { menu } = words.checks;
  return said([menu.mine(list, bikes.length > MOST_BUTTONS)], {
    actions: bikes.slice(0, MOST_BUTTONS).map(({ bike, nickname }) => press("check-begin", `${bike}.${list}`, menu.option(nickname, list).slice(0, 80))),
  });
}

/** Lists that an owner begins at a bike of theirs. */
const BEGUN = CHECKLISTS.filter((list) => list !== "buying used");

export function sayMenu(menu: CheckMenu, words: Words): Said {
  const { menu: said0 } = words.checks;
  const lines = menu.open.length === 0 ? [said0.none()] : [said0.open(), ...menu.open.map((run) => said0.openLine(run.called, run.list, run.result))];
  if (menu.finished.length > 0)
    lines.push("", said0.finished(), ...menu.finished.map((run) => said0.finishedLine(run.called, run.list, run.finishedOn ?? run.begunOn, words.today)));
  const [first] = menu.bikes;
  lines.push("", ...(first === undefined ? [] : [said0.begin(first.nickname)]), said0.buying());
  const options = menu.bikes.flatMap(({ bike, nickname }) => BEGUN.map((list) => ({ value: `${bike}.${list}`, label: said0.option(nickname, list) })));
  return said(lines, {
    actions: [
      ...menu.open.map((run) => press("check-show", run.check, said0.goOn(run.called, run.list))),
      ...menu.finished.map((run) => press("check-show", run.check, said0.show(run.called, run.list))),
      ...(options.length === 0 ? [] : [pickOne("check-begin", "any", said0.pick(), options.slice(0, 50))]),
    ],
  });
}
