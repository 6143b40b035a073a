// What a message came to, as words: in full where the member is alone with the bot, almost nothing in a channel.

import type { Action, Form, MessageAnswer, Said } from "../../src/chat/reply.ts";
import { callsForWork } from "../../src/core/judgement/verdict.ts";
import { dialOf } from "../../src/core/quantity/distance.ts";
import { isQuantity } from "../../src/core/reading/value.ts";
import { mayRollOver } from "../../src/core/usage/roll-over.ts";
import { BOTH, ONE } from "../../src/usecases/answer-question.ts";
import type { JudgedOn } from "../../src/usecases/judged.ts";
import type { LimitSaid } from "../../src/usecases/limits-said.ts";
import type { MessageOutcome, News } from "../../src/usecases/message-outcome.ts";
import type { Question } from "../../src/usecases/question.ts";
import type { Words } from "../../src/words/en/english.ts";
import { firstBikes } from "./added.ts";
import { notDoneLists } from "./bill.ts";
import { sayConversion } from "./conversion.ts";
import { countedActions, countedLines } from "./counted.ts";
import { defectActions, showEach } from "./defects.ts";
import { cautionOfJudged, judgedLines, treadLawActions } from "./judge.ts";
import { kitActions, kitLines } from "./kit.ts";
import { dataOf } from "./message-data.ts";
import { formButton, pickOne, press, said } from "./said.ts";
import { lackingActions } from "./say-how.ts";
import { soonerActions } from "./sooner.ts";
import { sayEachSpec, sayLookedUp } from "./spec.ts";

/** The item that a brake reservoir's level is. */
const BRAKE_FLUID: readonly string[] = ["brake-fluid.inspect", "brake-fluid.replace"];
const CLUTCH_FLUID = "clutch-fluid.replace";

type Logged = Extract<MessageOutcome, { is: "logged" }>;

/** The whole answer: for a command, a direct message, a press. */
export function sayOutcome(outcome: MessageOutcome, words: Words): Said {
  switch (outcome.is) {
    case "silence":
      return said([]);
    case "no bikes":
      return outcome.gone.length > 0
        ? said([words.refusal({ why: "all gone", bikes: outcome.gone })])
        : said([words.readings.noBikes(outcome.seen.length)], { actions: firstBikes(words, outcome.seen) });
    case "too long":
      return said([words.readings.tooLong()]);
    case "file sent":
      return said([words.readings.fileSent(outcome.file)]);
    case "not understood":
      if (outcome.command !== undefined) return said([words.readings.forCommand(outcome.command, outcome.bikes)]);
      return said([outcome.otherwise === undefined ? words.readings.notUnderstood(outcome.bikes) : words.refusal(outcome.otherwise)]);
    case "seen before":
      return said([words.readings.seenBefore()]);
    case "not yours":
      return said([words.readings.notYours()]);
    case "bike gone":
      return said([words.refusal({ why: "gone" })]);
    case "taken back":
      return said([words.readings.takenBack()]);
    case "stands": {
      const still = sayLogged({ ...outcome, is: "logged", closed: [], mayClose: [], news: [], withdrawn: [] }, words);
      return { ...still, lines: [words.readings.stillStands(), ...still.lines] };
    }
    case "logged":
      return sayLogged(outcome, words);
    case "asked": {
      const asks = sayQuestion(outcome.question, words);
      const before = [
        ...(outcome.learnt === undefined ? [] : [words.bikes.learnt(outcome.learnt)]),
        ...(outcome.several === undefined ? [] : [words.readings.severalFit(outcome.several)]),
      ];
      const unread = outcome.unread === undefined ? [] : [words.readings.unread(outcome.unread)];
      return { ...asks, lines: [...before, ...asks.lines, ...unread] };
    }
    case "specs":
      return sayEachSpec(outcome.answers, words);
    case "indoors":
      return said(words.tyres.indoors(outcome.answer), { caution: words.caution("tyres") });
    case "battery told": {
      const others = outcome.bikes.filter(({ other }) => other);
      const label = ({ nickname, kind }: (typeof others)[number]): string =>
        others.length === 1 ? words.bikes.labels.fitBattery(kind) : words.bikes.labels.fitBatteryOf(nickname, kind);
      return said(outcome.bikes.map(words.bikes.batteryTold), {
        actions: others.map((each) => press("fit-battery", `${each.bike}.${each.kind}`, label(each))),
      });
    }
    case "not indoors":
      return said([words.refusal(outcome.why)]);
    case "how to":
      return said(outcome.kinds.map(words.judge.howToOf));
    case "looked up":
      return sayLookedUp(outcome.table, words);
    case "tyre marks":
      return sayMarks(outcome, words);
    case "converted":
      return sayConversion(outcome.conversion, words);
    case "cannot convert":
      return said([words.refusal(outcome.why)]);
  }
}

/** In a channel: a reaction, and at most one line that names no figure, with a button whose answer is private. */
export function answerInChannel(outcome: MessageOutcome, words: Words): MessageAnswer | null {
  switch (outcome.is) {
    case "silence":
    case "seen before":
    case "stands":
    case "taken back":
      return null;
    case "logged": {
      const wants = outcome.news[0]?.nickname ?? nicknameOfPressing(outcome);
      const found = outcome.defects.filter(({ from }) => from !== "verdict");
      const asks = found.some(({ grade }) => grade === null) || outcome.mayClose.length > 0;
      const noted = asks || found.length > 0;
      const learnt = outcome.learnt === undefined ? [] : [words.bikes.learnt(outcome.learnt)];
      const unread = outcome.unread === undefined ? [] : [words.readings.unreadInChannel()];
      if (wants === null && !noted && learnt.length + unread.length === 0) return { react: "logged", reply: null, data: dataOf(outcome) };
      const reply = {
        ...said([...(noted ? [words.defects.inChannel(asks)] : wants === null ? [] : [words.readings.newsInChannel(wants)]), ...unread, ...learnt], {
          actions: [press("show-logged", outcome.source, words.readings.labels.logged)],
        }),
        visibility: "shared",
        data: dataOf(outcome),
      } as const;
      return { react: "logged", reply, data: dataOf(outcome) };
    }
    case "asked": {
      const reply = {
        ...said([words.readings.askInChannel()], {
          actions: [press("show-question", outcome.question.draft, words.readings.labels.question, outcome.question.rev)],
        }),
        visibility: "shared",
        data: dataOf(outcome),
      } as const;
      return { react: "asked", reply, data: dataOf(outcome) };
    }
    case "no bikes": {
      if (outcome.gone.length > 0) return answerInFull(outcome, words);
      const reply = {
        ...said([words.readings.noBikesInChannel(outcome.seen.length)], { actions: firstBikes(words, outcome.seen) }),
        visibility: "shared",
        data: dataOf(outcome),
      } as const;
      return { react: "asked", reply, data: dataOf(outcome) };
    }
    case "specs":
    case "indoors":
    case "battery told":
    case "not indoors":
    case "how to":
    case "looked up":
    case "tyre marks":
    case "converted":
    case "cannot convert":
      return { react: null, reply: { ...sayOutcome(outcome, words), visibility: "shared", data: dataOf(outcome) }, data: dataOf(outcome) };
    default:
      return answerInFull(outcome, words);
  }
}

/** Alone with the bot, or by the message menu: always one answer, and only the member sees it. */
export function answerInFull(outcome: MessageOutcome, words: Words): MessageAnswer | null {
  if (outcome.is === "silence") return null;
  const reply = { ...sayOutcome(outcome, words), visibility: "private", data: dataOf(outcome) } as const;
  return { react: outcome.is === "logged" ? "logged" : outcome.is === "asked" ? "asked" : null, reply, data: dataOf(outcome) };
}

/** The bike on which a reading is near its limit or beyond, or may be, whose tyre leaks, or into which a fluid went that must not; null when none is. */
function nicknameOfPressing({ judged = [], fluids = [], unknownFluids = [], leaks = [], bikes }: Logged): string | null {
  const wrong = fluids.find(({ worth }) => worth === null) ?? unknownFluids[0];
  if (wrong !== undefined) return wrong.nickname;
  const pressing = judged.find(({ judgement, ifSo }) => callsForWork(judgement) || judgement.is === "near limit" || ifSo !== null);
  const bike = pressing?.bike ?? leaks[0]?.bike;
  return bikes.find(({ id }) => id === bike)?.nickname ?? null;
}

const saveAsSpecs = (limits: readonly LimitSaid[], words: Words): readonly Action[] =>
  limits.map(({ bike, key, value }) =>
    press("spec-save", [bike, key, value].map((each) => encodeURIComponent(each).replace(/\./gu, "%2E")).join("/"), words.specs.labels.saveAs(key, value)),
  );

function sayMarks({ tyres }: Extract<MessageOutcome, { is: "tyre marks" }>, words: Words): Said {
  const saves = tyres.flatMap((tyre) => tyre.saves);
  return said([...tyres.map((tyre) => words.tyres.marked(tyre.marking)), words.tyres.marksBy(), words.tyres.least(), words.tyres.notNoted(saves.length > 0)], {
    actions: saveAsSpecs(saves, words),
    caution: words.caution("tyres"),
  });
}

function sayLogged(outcome: Logged, words: Words): Said {
  const lines: string[] = [];
  for (const bike of outcome.bikes) {
    const readings = outcome.readings.filter((reading) => reading.bike === bike.id && !beside(reading, outcome));
    if (readings.length > 0) lines.push(words.readings.logged(bike.nickname, readings, words.today));
    for (const work of outcome.work.filter((each) => each.bike === bike.id)) lines.push(words.readings.worked(bike.nickname, work, bike.unit, words.today));
  }
  const isTopped = (which: readonly string[]): boolean =>
    outcome.work.some(({ items }) => items.some(({ item, outcome: came }) => which.includes(item) && came === "topped up"));
  const [topped, clutch] = [isTopped(BRAKE_FLUID), isTopped([CLUTCH_FLUID])];
  if (topped) lines.push(words.workDetail.lookAtPads());
  if (clutch) lines.push(words.workDetail.lookForLeak());
  for (const fluid of outcome.fluids ?? []) lines.push(words.fluidPut(fluid));
  for (const fluid of outcome.unknownFluids ?? []) lines.push(words.fluidUnknown(fluid));
  for (const put of outcome.batteries ?? []) lines.push(words.bikes.otherBattery(put));
  for (const used of outcome.fuel ?? []) lines.push(words.fuel.used(used, outcome.bikes.find(({ id }) => id === used.bike) ?? { unit: "km" }));
  if (outcome.unread !== undefined) lines.push(words.readings.unread(outcome.unread));
  lines.push(...judgedLines(outcome.judged ?? [], words));
  lines.push(...countedLines(outcome.counted ?? [], words));
  for (const { place, leak, unit } of outcome.leaks ?? []) lines.push(words.tyres.leak(place, leak, unit !== null && isQuantity(unit) ? unit : "kPa"));
  for (const off of outcome.ofPartsOff ?? []) lines.push(words.judge.ofPartOff(off));
  for (const built of outcome.built ?? []) lines.push(words.tyres.oneEndNew(built, outcome.bikes.length > 1));
  for (const tyre of outcome.aged ?? []) lines.push(words.tyres.aged(tyre));
  for (const defect of outcome.defects) {
    lines.push(words.defects.noted(defect));
    if (defect.grade !== null && defect.from !== "verdict") lines.push(words.defects.graded(defect.grade, defect.kind));
  }
  for (const defect of outcome.closed) lines.push(words.defects.mended(defect));
  const { staying = [] } = outcome;
  if (staying.length > 0) lines.push(words.defects.staying(staying));
  for (const { defect } of outcome.mayClose) lines.push(words.defects.closesIt(defect));
  if (outcome.withdrawn.length > 0) lines.push(words.readings.withdrawn(outcome.withdrawn, words.today));
  if (outcome.learnt !== undefined) lines.push(words.bikes.learnt(outcome.learnt));
  if (outcome.home !== undefined && outcome.home.length > 0) lines.push(words.bikes.cameHome(outcome.home));
  lines.push(...kitLines(outcome.work, words));
  for (const news of outcome.news.slice(0, 6)) lines.push(words.readings.news(news.nickname, news.called, news.status, endsOf(news, outcome.judged ?? [])));
  if (outcome.news.length > 6) lines.push(words.reminders.more(outcome.news.length - 6));
  const [defect, ...others] = outcome.defects;
  if (defect !== undefined && others.length === 0 && defect.state === "open" && defect.grade === null) lines.push(words.defects.howBad());
  const actions: Action[] = [
    ...(defect === undefined ? [] : others.length === 0 ? defectActions(defect, words) : showEach(outcome.defects, words)),
    ...showEach(staying, words),
    ...outcome.mayClose.map((each) => press("defect-closes", `${each.defect.id}.${each.work}`, words.defects.labels.closes(each.defect.words))),
    press("undo", outcome.source, words.readings.labels.undo),
    ...saveAsSpecs(outcome.limits ?? [], words),
    ...(outcome.batteries ?? []).map(({ bike, kind }) => press("fit-battery", `${bike}.${kind}`, words.bikes.labels.fitBattery(kind))),
    ...kitActions(outcome.work, words),
    ...notDoneLists(outcome.work, words),
    ...lackingActions(
      (outcome.judged ?? []).filter(({ first, judgement }) => first || needsSaying(judgement)),
      outcome.bikes,
      words,
    ),
    ...treadLawActions(outcome.judged ?? [], words),
    ...soonerActions(outcome.judged ?? [], words),
    ...countedActions(outcome.counted ?? [], words),
  ];
  const [bike] = outcome.bikes;
  if (bike !== undefined && outcome.news.length > 0) actions.push(press("show-due", bike.id, words.readings.labels.due));
  const [hurts] = [...outcome.defects, ...staying, ...outcome.closed].filter((each) => each.caution !== null);
  return said(lines, {
    actions,
    caution:
      words.caution(hurts?.caution ?? (topped || clutch ? "brake fluid" : null)) ??
      cautionOfJudged(outcome.judged ?? [], words) ??
      words.caution(outcome.aged?.some(({ age }) => age !== "within") === true ? "tyres" : null),
  });
}

/** A condition is wanted of each reading until it is kept; a limit is asked for with the first of its kind alone. */
const needsSaying = (judgement: JudgedOn["judgement"]): boolean => judgement.is === "cannot tell" && judgement.missing[0] !== "limit";

/** The odometer that came with work is said in the work's own line. */
const beside = (reading: Logged["readings"][number], outcome: Logged): boolean =>
  reading.kind === "odometer" && outcome.work.some((work) => work.bike === reading.bike && work.dial === reading.dial);

/** A question with its answers as buttons, or as a list when there are many. */
export function sayQuestion(question: Question, words: Words): Said {
  const { intent, gap } = question;
  const about = intent.do === "log reading" ? words.readings.about(intent) : words.readings.aboutWork(intent.words, intent.odometer?.typed.text ?? null);
  const ask =
    gap.need === "date" && gap.options.length === 0 && intent.do === "record work"
      ? words.readings.askWhen(gap.typed, question.nickname)
      : gap.need === "service"
        ? words.readings.askService(question.typed, question.nickname, gap, question.services ?? [])
        : words.readings.ask(
            gap,
            intent.do === "record work" && (gap.need === "item" || gap.need === "found")
              ? (intent.fault?.words ?? intent.words)
              : intent.do === "log reading"
                ? intent.typed.text
                : question.typed,
            about,
            question.nickname,
            question.last === null ? null : { ...question.last, on: question.last.on as typeof words.today },
            words.today,
            question.tooLow,
          );
  return said([ask, words.readings.held()], {
    actions: [...answers(question, words), retype(question, words), press("let-go", question.draft, words.readings.labels.letGo, question.rev)],
    caution: question.tooLow === undefined ? null : words.caution("tyres"),
  });
}

function answers(question: Question, words: Words): Action[] {
  const { gap, draft, rev } = question;
  const { labels } = words.readings;
  if (gap.need === "sure") {
    const isDial = question.intent.do === "log reading" && question.intent.kind === "odometer";
    const choice = (value: string, label: string): Action => press("answer", `${draft}.${value}`, label, rev);
    switch (gap.because) {
      case "runs backwards":
        return isDial
          ? [...(mayHaveRolled(question) ? [choice("rolled over", labels.rolledOver)] : []), newDial(question, words), choice("earlier", labels.earlier)]
          : [...(isUndatedWork(question) ? [choice("back then", labels.backThen)] : []), choice("no figure", labels.noFigure)];
      case "beyond a later one":
        return isDial ? [choice("earlier", labels.later)] : [choice("no figure", labels.noFigure)];
      case "implausible jump":
      case "moved while laid up":
        return isDial ? [choice("yes", labels.yes), choice("earlier", labels.earlier)] : [choice("yes", labels.yes), choice("no figure", labels.noFigure)];
      case "trip":
      case "grew":
        return [choice("yes", labels.yes)];
      case "warm":
        return [choice("yes", labels.cold)];
      default:
        return [];
    }
  }
  if (gap.need === "service") {
    const services = question.services ?? [];
    const only = services.length === 1;
    return services.map((service, n) => press("answer", `${draft}.${n}`, words.readings.service(service, only), rev));
  }
  if (gap.need === "defect") return [press("answer", `${draft}.yes`, words.defects.labels.note, rev)];
  const named = question.options.map((given, n) => ({
    value: String(n),
    label: words.readings.option(gap, n, given, question.intent.do === "record work" ? question.intent.outcome : null),
  }));
  if (named.length === 0) return [];
  if (named.length > 4) return [pickOne("answer", draft, words.readings.labels.pick, named, rev)];
  const one = gap.need === "item" && gap.end !== undefined ? [press("answer", `${draft}.${ONE}`, labels.onlyOne(gap.end), rev)] : [];
  const both = question.both === true ? [press("answer", `${draft}.${BOTH}`, labels.both, rev)] : [];
  return [...named.map(({ value, label }) => press("answer", `${draft}.${value}`, label, rev)), ...both, ...one];
}

/** Work at a figure that lies behind, with no day: it was done when the dial showed that. */
const isUndatedWork = ({ intent }: Question): boolean => intent.do === "record work" && intent.on.typed === "";

const mayHaveRolled = ({ last }: Question): boolean => last !== null && mayRollOver(dialOf(last.figure, last.unit), last.unit);

const newDial = (question: Question, words: Words): Action =>
  formButton("new-dial", question.draft, words.readings.labels.replaced, newDialForm(question, words), question.rev);

/** A new dial goes on from where the old one ended, which may be beyond its last reading. */
export function newDialForm(question: Question, words: Words): Form {
  const { labels } = words.readings;
  const hint = question.last === null ? null : words.readings.lastFigure(question.last);
  return { title: labels.replaced, fields: [{ name: "last", label: labels.lastOfOld, kind: "line", required: false, value: null, hint, options: [] }] };
}

const retype = (question: Question, words: Words): Action =>
  formButton("retype", question.draft, words.readings.labels.retype, retypeForm(question, words), question.rev);

export function retypeForm(question: Question, words: Words): Form {
  const { labels } = words.readings;
  const value = question.typed.slice(0, 2000);
  return { title: labels.retype, fields: [{ name: "text", label: labels.retypeField, kind: "paragraph", required: true, value, hint: null, options: [] }] };
}

/** One line of the plan looks at both reservoirs: which of them the news is of. */
const endsOf = ({ bike, item }: News, judged: readonly JudgedOn[]): readonly string[] =>
  item === "brake-fluid.inspect"
    ? judged.flatMap(({ bike: of, kind, place, judgement }) =>
        of === bike && kind === "brake fluid level" && judgement.is !== "within" && (place === "front" || place === "rear") ? [place] : [],
      )
    : [];
