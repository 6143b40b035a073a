// What a message came to, in English: logged, asked about, undone.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Dial, DistanceUnit } from "../../core/quantity/distance.ts";
import type { ReadingDetail } from "../../core/reading/detail.ts";
import type { Gap } from "../../core/reading/intent.ts";
import { LEVELS, type Level, type Place, type ReadingKind, type ReadingUnit } from "../../core/reading/kinds.ts";
import { isQuantity } from "../../core/reading/value.ts";
import type { Outcome, Status } from "../../core/schedule/facts.ts";
import type { TooLow } from "../../core/tyre/too-low.ts";
import type { WorkDetail } from "../../core/work-detail.ts";
import type { Printer } from "../printer.ts";
import { englishItemName, englishWorkName } from "./item-names.ts";
import { KIND_WORDS, LEVEL_WORDS } from "./kinds.ts";
import { readWarm } from "./read-warm.ts";
import { detailTail, valueAsTyped, valueJudged } from "./reading-detail.ts";
import { capital } from "./text.ts";
import { adviceAt } from "./tyres.ts";
import { workDetailWords } from "./work-detail.ts";

/** A reading as it is said back. */
export type SaidReading = {
  readonly kind: ReadingKind;
  readonly place: Place | null;
  readonly dial: Dial | null;
  readonly value: number | null;
  readonly unit: ReadingUnit;
  readonly typed: string;
  readonly on: LocalDate;
  readonly detail?: ReadingDetail | null;
};
type SaidWork = {
  readonly items: readonly { readonly called: string; readonly outcome: Outcome }[];
  /** What named it, as typed: said back for work that is no item of the plan. */
  readonly words: string;
  readonly detail: WorkDetail;
  readonly on: { readonly from: LocalDate; readonly to: LocalDate; readonly typed: string };
  readonly dial: Dial | null;
};

/** Decimals of a figure that is asked about: as many as anybody types. */
const AS_TYPED = 4;

export const readingWords = (p: Printer) => {
  const detail = workDetailWords(p);
  const value = (r: SaidReading): string => {
    if (r.unit === "level") return LEVEL_WORDS[LEVELS[r.value ?? 0] ?? "between"];
    return r.dial === null ? valueAsTyped(p, r.value ?? 0, r.unit, r.typed, r.kind) : p.point(r.dial, r.unit as DistanceUnit);
  };
  const named = ({ place, kind }: Pick<SaidReading, "place" | "kind">): string => `${place === null ? "" : `${place} `}${KIND_WORDS[kind].name}`;
  const reading = (r: SaidReading): string => `${named(r)} ${value(r)}${detailTail(p, r.detail ?? null, r.unit)}`;
  const day = (on: LocalDate, today: LocalDate): string => (on === today ? "today" : p.date(on, today));
  const codeTooLate = (made: Extract<Gap, { need: "sure" }>["made"], about: string, today: LocalDate): string => {
    const [code, fitted] = made === undefined ? ["", ""] : [made.code, p.vague(made.fitted, today)];
    return `${about}: the code ${code} is of later than ${fitted}, when that tyre was fitted. Of the last four digits behind DOT the first two are the week, the last two the year: read them again and type it anew, or with the day on which it was fitted. If another tyre was fitted since, let this go and say that first, such as “new rear tyre ${code} at 14,200”.`;
  };
  return {
    reading,
    /** A reading beside what is said of it. */
    judged: (r: Pick<SaidReading, "place" | "kind" | "unit" | "typed"> & { readonly value: number }): string =>
      `${named(r)} ${r.unit === "level" ? LEVEL_WORDS[LEVELS[r.value] ?? "between"] : valueJudged(p, r.value, { ...r, unit: r.unit })}`,
    /** "Heron: odometer 14,820 mi, today." */
    logged: (nickname: string, readings: readonly SaidReading[], today: LocalDate): string => {
      const [first] = readings;
      const same = first !== undefined && readings.every((r) => r.on === first.on);
      const parts = readings.map((r) => (same ? reading(r) : `${reading(r)} (${day(r.on, today)})`));
      return `${nickname}: ${p.list(parts)}${same && first !== undefined ? `, ${day(first.on, today)}` : ""}. Logged.`;
    },
    worked: (nickname: string, work: SaidWork, unit: DistanceUnit, today: LocalDate): string => {
      const when = work.on.from === work.on.to ? day(work.on.from, today) : p.vague(work.on);
      const where = work.dial === null ? "" : ` at ${p.point(work.dial, unit)}`;
      const what = work.items.length === 0 ? work.words : p.list(work.items.map((item) => item.called));
      const topped = work.items.length > 0 && work.items.every((item) => item.outcome === "topped up");
      if (work.items.some((item) => item.outcome === "found wrong"))
        return `${nickname}: ${what}, looked at and found wrong ${when}${where}${detail.tail(work.detail)}. Recorded as a look that found a fault: it counts as done once that is put right.`;
      const undone = work.items.some((item) => item.outcome === "could not do");
      return undone
        ? `${nickname}: ${what}, could not be done ${when}${where}. Noted; it stays as it stood.`
        : `${nickname}: ${what}, ${topped ? "topped up" : "done"} ${when}${where}${detail.tail(work.detail)}. Recorded.`;
    },
    news: (nickname: string, called: string, status: Status, ends: readonly string[]): string =>
      `${nickname}: ${called}${ends.length === 0 ? "" : ` (${p.list(ends)})`}, now ${status === "soon" ? "coming up" : status}.`,
    /** What was typed beside that and came to nothing. */
    unread: (typed: readonly string[]): string =>
      `Not understood: ${p.list(typed.map((each) => `“${each}”`))}. If it is of the bike, say it again in other words.`,
    unreadInChannel: (): string => "Logged, but not all of it was understood.",
    newsInChannel: (nickname: string): string => `Logged. Something on ${nickname} wants a look.`,
    /** Slips that gave way to the reading just logged. */
    withdrawn: (readings: readonly SaidReading[], today: LocalDate): string =>
      `${capital(p.list(readings.map((r) => `${reading(r)} of ${day(r.on, today)}`)))} no longer ${readings.length === 1 ? "counts" : "count"}.`,
    restored: (what: readonly string[]): string => `${capital(p.list(what))} ${what.length === 1 ? "stands" : "stand"} again.`,
    lastFigure: (last: { readonly figure: number; readonly unit: DistanceUnit }): string => `${p.figure(last.figure, 0)} ${last.unit}`,
    undone: (nickname: string, what: readonly string[]): string => `Undone for ${nickname}: ${p.list(what)}. It no longer counts; the record of it stays.`,
    ask: (
      gap: Gap,
      typed: string,
      about: string,
      nickname: string | null,
      last: { readonly figure: number; readonly unit: DistanceUnit; readonly on: LocalDate } | null,
      today: LocalDate,
      tooLow: readonly TooLow[] = [],
    ): string => {
      const of = nickname === null ? "" : ` on ${nickname}`;
      switch (gap.need) {
        case "bike":
          return gap.named === null ? `Which bike is ${about} for?` : `I know no bike of yours called “${gap.named}”. Which one is ${about} for?`;
        case "kind":
          return `${capital(about)}${of}: which of these is it?`;
        case "place":
          return `${capital(about)}${of}: ${gap.options.join(" or ")}?`;
        case "level":
          return gap.options.some((n) => LEVELS[n] === "low mark")
            ? `${capital(about)}${of}: at the low mark, or below it?`
            : `${capital(about)}${of}: between its marks, or at the full one?`;
        case "unit":
          return `${capital(about)}${of}: in which unit?`;
        case "number":
          return gap.share === true
            ? `“${typed}”${of}: a mix of two parts. Which of them is the antifreeze, in per cent?`
            : `“${typed}”${of}: which figure do you mean?`;
        case "item":
          return gap.options.length === 0
            ? `“${typed}”${of}: I find nothing of that name in its plan. Type it again in other words, or without it.`
            : gap.end !== undefined
              ? `“${typed}”${of}: its plan has one line for both ends. Was it done at both, or only at the ${gap.end}? One end alone is recorded, and the line runs on as it stood.`
              : `“${typed}”${of}: which of these was done?`;
        case "service":
          return `“${typed}”${of}: which service of its plan is that?`;
        case "date":
          return `${capital(about)}${of}, “${gap.typed}”: which day is that?`;
        case "found":
          return `“${typed}”${of}: is that something wrong with it, or only a note?`;
        case "defect":
          return `${capital(about)}${of}: is that something wrong with it, to be noted?`;
        case "sure":
          if (gap.because === "grew" && gap.before !== undefined && isQuantity(gap.before.unit)) {
            const was = p.amount(gap.before.value, gap.before.unit);
            return `${capital(about)}${of} is more than the ${was} of ${day(gap.before.on, today)}, and nothing new is on record since. Is it right? If a new one was fitted, let this go and say that first, such as “new rear tyre at 14,200”.`;
          }
          if (gap.because === "year alone") return yearAlone(gap.years ?? 0, `${capital(about)}${of}`);
          if (gap.because === "code after fitting") return codeTooLate(gap.made, `${capital(about)}${of}`, today);
          if (gap.because === "warm") return readWarm(p, `${capital(about)}${of}`, tooLow);
          return strange(gap.because, about, of, last === null ? null : { figure: p.figure(last.figure), unit: last.unit, on: day(last.on, today) });
      }
    },
    askWhen: (typed: string, nickname: string | null): string =>
      `“${typed}”${nickname === null ? "" : ` on ${nickname}`}: when was that? Type it again with the day or the figure; “spring 2025” will do.`,
    /** "The 16,000 mi service on Heron by the shop: 14 items. Was all of it done?" */
    askService: (
      typed: string,
      nickname: string | null,
      { figure, unit }: { readonly figure: number | null; readonly unit: DistanceUnit | null },
      services: readonly { readonly at: number; readonly unit: DistanceUnit; readonly items: number; readonly own: number }[],
    ): string => {
      const [only, ...others] = services;
      const on = nickname === null ? "" : ` on ${nickname}`;
      if (only === undefined) return `“${typed}”${on}: its plan prints no services. Say what was done: did the oil and filter at 14,820.`;
      if (others.length > 0 && figure === null) return `“${typed}”${on}: which service of its plan was it?`;
      if (others.length > 0 && figure !== null)
        return `“${typed}”${on}: its plan prints none at ${p.figure(figure, 0)}${unit === null ? "" : ` ${unit}`}. Which one was it?`;
      const { items, own } = only;
      const service = `the ${p.figure(only.at, 0)} ${only.unit} service`;
      if (own > 0)
        return `“${typed}”${on}: ${items + own} items belong to ${service}; the ${own === 1 ? "one" : own} that you ticked off yourself ${own === 1 ? "stays" : "stay"} yours. Mark the other ${items === 1 ? "one" : items} as done? What was not, you can take out after.`;
      return `“${typed}”${on}: ${items} items belong to ${service}. Mark them all as done? What was not, you can take out after.`;
    },
    /** "Mark all 14", "The 12,000 mi service (14)". */
    service: (
      { at, unit, items, own }: { readonly at: number; readonly unit: DistanceUnit; readonly items: number; readonly own: number },
      only: boolean,
    ): string => (only ? (own > 0 ? `Mark the other ${items}` : `Mark all ${items}`) : `The ${p.figure(at, 0)} ${unit} service (${items})`),
    /** "Taken out: valve clearance. It stands as it did before." */
    offBill: (nickname: string, changed: readonly string[], left: number): string =>
      `${nickname}: ${p.list(changed)} taken out; ${changed.length === 1 ? "it stands" : "they stand"} as before. ${left === 0 ? "Nothing is left of that record." : `${left} ${left === 1 ? "item" : "items"} stay recorded.`}`,
    onBill: (nickname: string, changed: readonly string[]): string => `${nickname}: ${p.list(changed)} put back. Recorded.`,
    /** "the odometer at 14,820 mi", "the front pressure of 33": what a question is about. */
    about: (i: { readonly kind: ReadingKind; readonly place: Place | null; readonly typed: { readonly text: string } }): string =>
      `the ${i.place === null ? "" : `${i.place} `}${KIND_WORDS[i.kind].name} “${i.typed.text}”`,
    aboutWork: (words: string, at: string | null): string => `“${words.trim()}”${at === null ? "" : ` at ${at}`}`,
    askInChannel: (): string => "I have a question about that, and nothing is saved until you answer it.",
    severalFit: (questions: number): string =>
      `That could answer ${questions} of my questions. Press the answer here, reply to the question that you mean, or see all of them with /reading.`,
    held: (): string => "Nothing is saved until you answer.",
    letGo: (typed: string): string => `Let go: “${typed}”. Nothing of it was saved.`,
    deleted: (nickname: string, what: readonly string[]): string =>
      `The message that logged ${p.list(what)} for ${nickname} was deleted. The record stands unless you withdraw it.`,
    kept: (): string => "Kept as it is.",
    list: (nickname: string): string => `${nickname}, latest readings`,
    listed: (r: SaidReading, today: LocalDate): string => `${capital(reading(r))}, ${day(r.on, today)}`,
    undoOne: (nickname: string, r: SaidReading): string => `Undo ${reading(r)} of ${nickname}`.slice(0, 80),
    questionAbout: (typed: string): string => `Answer “${[...typed].length > 40 ? `${[...typed].slice(0, 40).join("")}…` : typed}”`,
    none: (nickname: string): string => `${nickname}: no readings yet.`,
    open: (n: number): string => (n === 1 ? "One question is unanswered:" : `${n} questions are unanswered:`),
    noBikes: (told: number): string =>
      told > 1
        ? "You have no bike here yet. Add each of these with a press."
        : "You have no bike here yet. Add it, and say that again. All that I can do: /help.",
    noBikesInChannel: (told: number): string =>
      told > 1
        ? "You have no bike with me yet. Add each of these with a press."
        : "That reads like something to log, but you have no bike with me yet. Add it, and say that again.",
    notUnderstood: (bikes: readonly string[]): string =>
      `I found no reading and no work in that. Try: 14,820 mi on ${bikes[0] ?? "Heron"}, or 33 psi front 36 rear, or did the oil at 14,820. What is due: /due. All that I can do: /help.`,
    /** What a plain message told and only a command takes. */
    forCommand: (
      what: "laid up" | "riding again" | "chain size" | "recovery number" | "roadside card" | "air changed" | "value asked",
      bikes: readonly string[],
    ): string => {
      const bike = bikes[0] ?? "Heron";
      return {
        "laid up": `Nothing is saved by that. To lay a bike up for a while: /bike change bike:${bike} state:laid up. Say what its dial shows too, such as “parked at 14,820 mi”, and it is kept.`,
        "riding again": `Nothing is saved by that. To ride a bike again: /bike change bike:${bike} state:riding.`,
        "chain size": `A chain's size is kept as a spec: /spec bike:${bike} what:chain size value:525, 112 links.`,
        "recovery number": "The number of your own recovery is kept for your cards: /bike card recovery:0800 555 0100.",
        "air changed":
          "Nothing is saved by that: how much went in or out is no reading. What does it show now, measured cold? Say it with its end, such as “front 34 psi”; with what it showed before too, “front 31, now 34 psi”, a leak is seen.",
        "value asked":
          "You ask, so nothing is saved. Say it as a reading, such as “front 31 psi” or “rear tread 3 mm”, and I tell you how it stands to your manual's figure or the law; Undo takes it back. What your manual says: /spec.",
        "roadside card": `That is a picture for your phone: /bike card bike:${bike}.`,
      }[what];
    },
    fileSent: (file: "plan" | "table" | "chart" | "picture" | "other"): string =>
      ({
        plan: "I take no file with a plain message. If it is a plan: /plan import, with the file as its option file. You see what it changes before anything is saved.",
        table:
          "I take no file with a plain message. If it is your manual's service chart: /plan read-chart, with the chart as CSV or plain text as its option file, or pasted. You see what it changes before anything is saved.",
        chart:
          "That looks like a manual's service chart, and a plain message logs nothing of it. /plan read-chart takes it: pasted as its option chart or into its form, or as a file of CSV or plain text. You see what it changes before anything is saved.",
        picture: "I cannot read pictures. Write what it shows, such as 14,820 mi on Heron, or 33 psi front 36 rear.",
        other: "I cannot take that file. A plan goes with /plan import as JSON, a manual's service chart with /plan read-chart as CSV or plain text.",
      })[file],
    tooLong: (): string => "That is longer than I read. Send the readings by themselves in a short message.",
    takenBack: (): string => "What this message logged was taken back. To log it after all, say it anew, or use “Log this message” on it.",
    stillStands: (): string => "Nothing to log in that now. What the message logged before still stands:",
    notYours: (): string => "Only whoever wrote a message can log it. Log the reading yourself with a message of your own, or ask them to.",
    seenBefore: (): string => "I have that one already.",
    labels: {
      undo: "Undo",
      due: "What is due",
      both: "Both",
      letGo: "Let it go",
      notOnBill: "Not on the bill",
      notDone: "Take out what was not done",
      back: "Put it back",
      retype: "Type it again",
      yes: "Yes, it is right",
      replaced: "The odometer was replaced",
      rolledOver: "It rolled over to zero",
      lastOfOld: "Last figure on the old odometer",
      earlier: "The earlier reading was wrong",
      later: "The later reading was wrong",
      backThen: "It was done back then, at that figure",
      noFigure: "Record it without the figure",
      cold: "It was read cold after all",
      question: "Show the question",
      logged: "Show me",
      onlyOne: (end: "front" | "rear"): string => `Only the ${end} one`,
      keep: "Keep it",
      withdraw: "Withdraw it",
      retypeField: "The message, as it should read",
      pick: "Pick one",
    },
    /** @param outcome of the work that is asked about */
    option: (gap: Gap, n: number, given: string, outcome: Outcome | null): string =>
      gap.need === "number"
        ? p.figure(gap.options[n] ?? 0, AS_TYPED)
        : gap.need === "date"
          ? p.date(given as LocalDate, today0)
          : gap.need === "item"
            ? workOption(given, gap.options.length, outcome)
            : gap.need === "kind"
              ? KIND_WORDS[given as ReadingKind].name
              : gap.need === "found"
                ? capital(given)
                : gap.need === "level"
                  ? LEVEL_WORDS[given as Level]
                  : given,
  };
};

/** "New rear tyre"; where it is the only answer, and its name does not say that it was renewed, that is said. */
function workOption(key: string, options: number, outcome: Outcome | null): string {
  const name = englishWorkName(key, null, outcome ?? "done");
  return options === 1 && outcome === "replaced" && name === englishItemName(key, null) && !/^new /iu.test(name) ? `${name}, replaced` : name;
}

// Dates offered as options always carry their year.
const today0 = "0001-01-01" as LocalDate;

/** A year tells the age but for a year: what is certain of it already says what to do. */
function yearAlone(years: number, about: string): string {
  const old = years < 1 ? "" : ` It is at least ${years === 1 ? "one year" : `${years} years`} old by that. ${adviceAt(years)}`.trimEnd();
  return `${about}: a year or an age alone is not noted, since the plan counts from the week.${old} Read the last four digits behind DOT off the sidewall, the week and then the year, and write them such as “rear tyre DOT 2223”. Where there are but three, it was made before 2000, and is too old.`;
}

function strange(
  because: Exclude<Extract<Gap, { need: "sure" }>["because"], "warm" | "code after fitting" | "year alone">,
  about: string,
  of: string,
  last: { readonly figure: string; readonly unit: string; readonly on: string } | null,
): string {
  const before = last === null ? "" : ` The last one was ${last.figure} ${last.unit}, ${last.on}.`;
  switch (because) {
    case "runs backwards":
      return `${capital(about)}${of} is below what the dial showed before.${before} Which is it? If it was on an earlier day, say it again with that day, such as “on 3 October”.`;
    case "beyond a later one":
      return `${capital(about)}${of} is above what the dial showed later.${before.replace("The last one", "A later one")} Which is it?`;
    case "trip":
      return `${capital(about)}${of} takes it that the trip meter was zeroed at the last reading.${before} Was it?`;
    case "implausible jump":
      return `${capital(about)}${of} is a long way from the last one.${before} Is it right?`;
    case "moved while laid up":
      return `${capital(about)}${of} is a long way from the last one, and the bike is laid up.${before} Is it right? If it rides again, say so too: /bike change state:riding.`;
    case "out of range":
      return `${capital(about)}${of} is outside what a motorcycle shows. Type it again, or let it go.`;
    case "two temperatures":
      return `${capital(about)}${of}: which of the temperatures is the garage's, and which the road's? Type it again with the words, such as “front 36 psi, garage 20 °C, road 2 °C”, or let it go.`;
    case "which degrees":
      return `${capital(about)}${of}: are its temperatures in °C or in °F? Type it again with the unit, such as “front 36 psi, garage 20 °C, road 2 °C”, or let it go.`;
    case "less than":
      return `${capital(about)}${of}: how much less than that? What is only said to be less is neither judged nor saved. Type it again with the figure that you read; until then take it for beyond its limit.`;
    case "more than":
      return `${capital(about)}${of}: how much more than that? What is only said to be more is neither judged nor saved. Type it again with the figure that you read, or let it go.`;
    case "grew":
      return `${capital(about)}${of} is more than was left before, and nothing new is on record since. Is it right?`;
    case "not fitted":
      return `${capital(about)}${of}: by my record it has none of that there, so nothing is saved. If it is fitted otherwise, say so first with /bike fitted, then type it again.`;
    case "no such code":
      return `${capital(about)}${of} names a week that no year has. Of the last four digits behind DOT the first two are the week, 01 to 53. Read it again and type it anew, or let it go.`;
    case "code to come":
      return `${capital(about)}${of} is a week still to come. Of the last four digits behind DOT the first two are the week, the last two the year; three digits are of before 2000. Read it again and type it anew, or let it go.`;
    case "future date":
      return `${capital(about)}${of}: that day is still to come. Type it again with the right date, or let it go.`;
  }
}
