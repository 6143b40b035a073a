// Checks in English: the card that is walked through, and what a run came to. It says what was looked at, and never that a bike is fit to ride.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { ChecklistName, FaultGrade } from "../../core/check/checklist.ts";
import type { CheckAnswer, CheckResult } from "../../core/check/result.ts";
import type { Before } from "../../core/check/tailor.ts";
import type { Place, ReadingKind } from "../../core/reading/kinds.ts";
import type { SectionKey } from "../../trade/checklists/listed.ts";
import type { Printer } from "../printer.ts";
import { POINT_WORDS } from "./check-points.ts";
import type { PointWords } from "./check-points-rare.ts";
import { KIND_WORDS } from "./kinds.ts";
import { capital } from "./text.ts";

export const LIST_NAMES = {
  "out of storage": "out of storage",
  "lay-up": "lay-up",
  "pre-ride": "before a ride",
  "pre-trip": "before a trip",
  "buying used": "buying a used one",
  "after a fall": "after a fall",
} as const satisfies Record<ChecklistName, string>;

export const SECTION_WORDS = {
  "from the plan": "From the plan",
  "before the key": "Before the key",
  battery: "Battery",
  "tyres and wheels": "Tyres and wheels",
  brakes: "Brakes",
  "at the bars": "At the bars",
  lights: "Lights",
  levels: "Levels",
  "chain, belt or shaft": "Drive and fixings",
  "engine running": "Engine running",
  "wheels off the ground": "Wheels off the ground",
  "the first ride": "The first ride",
  "clean and dry": "Clean and dry",
  "fuel and oil": "Fuel and oil",
  "while it cools": "While it cools",
  "once it is cold": "Once it is cold",
  "closed up": "Closed up",
  "from a step back": "From a step back",
  "springs and drive": "Springs and drive",
  "key on": "Key on",
  "load and papers": "Load and papers",
  "papers first": "Papers first",
  "cold, on its stand": "Cold, on its stand",
  "on the road": "On the road",
  "you first": "You first",
  "before it is started": "Before it is started",
  steering: "Steering",
  "brakes and controls": "Brakes and controls",
  wheels: "Wheels",
  "frame and lights": "Frame and lights",
  "on the move": "On the move",
} as const satisfies Record<SectionKey, string>;
const SECTIONS: Readonly<Record<string, string>> = {
  ...SECTION_WORDS,
  "found last time": "Found last time",
  "found last time, warm": "Found last time, engine warm",
};
const POINTS: Readonly<Record<string, PointWords>> = POINT_WORDS;

/** A point as words need it. */
export type SaidPoint = {
  readonly key: string;
  readonly called: string | null;
  readonly status: "soon" | "due" | "overdue" | "no record" | null;
  readonly answer: CheckAnswer | null;
  readonly byReading: boolean;
  readonly grade: FaultGrade | null;
  readonly note: string | null;
  readonly link: string | null;
  readonly figures: string | null;
  readonly engine: "cold" | "warm" | "any";
  readonly position: "upright" | "side stand" | "weight off" | "any";
  readonly before: Before | null;
};

const STATUS = { soon: "coming up", due: "due", overdue: "overdue", "no record": "no record" } as const;
const POSITION = { upright: "bike upright", "side stand": "on the side stand", "weight off": "wheel off the ground, on a safe stand" } as const;

export const checkWords = (p: Printer) => {
  const name = ({ key, called }: Pick<SaidPoint, "key" | "called">): string => called ?? POINTS[key]?.name ?? key;
  const quoted = (note: string | null): string => (note === null ? "" : ` “${note}”`);
  const ownNote = (point: SaidPoint): string | null => (point.note === name(point) ? null : point.note);
  const fault = (point: SaidPoint): string => `${name(point)}${ownNote(point) === null ? "" : `: ${ownNote(point)}`}`;
  /** What an answer is called; a plan line is done, not good. */
  const answer = (point: SaidPoint): string => {
    if (point.answer === null) return "open";
    if (point.answer === "good") return point.byReading ? "measured" : point.called === null ? "good" : "done";
    return point.answer === "needs work" ? `needs work, ${point.grade ?? "watch"}${quoted(ownNote(point))}` : point.answer;
  };
  return {
    name,
    listName: (list: ChecklistName): string => LIST_NAMES[list],
    title: (called: string, list: ChecklistName): string => `${called}, ${LIST_NAMES[list]}`,
    progress: (result: CheckResult): string => {
      const found = result.stop.length + result.watch.length;
      return `${result.looked} of ${result.points} looked at${found === 0 ? "" : `, ${found} ${found === 1 ? "needs" : "need"} work`}.`;
    },
    sectionTitle: (key: string): string => SECTIONS[key] ?? key,
    section: (key: string, looked: number, of: number): string => `${SECTIONS[key] ?? key}, ${looked} of ${of}:`,
    sectionName: (key: string, looked: number, of: number): string => `${SECTIONS[key] ?? key} (${looked} of ${of})`,
    line: (point: SaidPoint, here: boolean): string => `- ${name(point)}: ${here && point.answer === null ? "now" : answer(point)}`,
    /** The point that is looked at now: what to do, what good looks like, under which conditions. */
    ask: (point: SaidPoint): readonly string[] => {
      const words = POINTS[point.key];
      const under = [...(point.engine === "any" ? [] : [`engine ${point.engine}`]), ...(point.position === "any" ? [] : [POSITION[point.position]])];
      return [
        `Now: ${name(point)}${under.length === 0 ? "" : ` (${under.join(", ")})`}`,
        ...(words === undefined
          ? [
              point.status === null
                ? "Look at it, and answer."
                : `${capital(STATUS[point.status])} by the plan. “Done” records it as done today; “later” leaves it as it stands.`,
            ]
          : [words.look, `Good: ${words.good}`]),
      ];
    },
    more: (key: string): string | null => POINTS[key]?.more ?? null,
    nothingMore: (): string => "There is no more to say of it than the two lines. Your maker's manual has the rest.",
    before: ({ list, on, found, note }: Before, today: LocalDate): string =>
      found === "done"
        ? `Done at ${LIST_NAMES[list]}, ${p.date(on, today)}; undo it now.${quoted(note)}`
        : `Last time (${LIST_NAMES[list]}, ${p.date(on, today)}): needs work.${quoted(note)}`,
    measured: (readings: readonly string[]): string => `Read: ${p.list(readings)}.`,
    figures: (figures: string, isOpen: boolean): string =>
      `Read: ${figures}.${isOpen ? " Now say whether that is good: nobody else judges a bike that is not yours." : ""}`,
    noted: ({ note, link }: Pick<SaidPoint, "note" | "link">): string | null =>
      note === null && link === null ? null : `Noted:${quoted(note)}${link === null ? "" : ` ${link}`}`,
    plainly: (): string => "Figures can be written to me as a plain message too.",
    asked: (): string => "One of the figures is a question, and none of them is saved until you answer it:",
    allAnswered: (left: number): string =>
      left === 0 ? "Every point has an answer. Finish to see what it comes to." : `${left} left for later. Go to them, or finish.`,
    /** The first line of a result. Never that a bike is fit to ride. */
    says: (called: string, result: CheckResult, standing: number): string => {
      switch (result.says) {
        case "do not ride":
          return result.stop.length === 0
            ? `Do not ride ${called}: ${standing === 1 ? "a defect stands" : "defects stand"} from before.`
            : `Do not ride ${called} until this is put right:`;
        case "cannot say":
          return `Nothing can be said of riding ${called} yet: ${p.list([...new Set(result.vitalLeft.map(({ vital }) => vital))])} not looked at in full.`;
        case "nothing stops the ride":
          return "Nothing found that stops the ride.";
        case "no word":
          return result.left.length === 0 ? "All of it is done." : "Not all of it is done.";
      }
    },
    looked: (result: CheckResult, left: readonly string[]): string =>
      `${result.looked} of ${result.points} points looked at${left.length === 0 ? "." : `, ${left.length} left: ${p.list(left.slice(0, MOST_LEFT))}${left.length > MOST_LEFT ? ` and ${left.length - MOST_LEFT} more` : ""}.`}`,
    vitalLeft: (names: readonly string[]): string => `Look at these first: ${p.list(names)}.`,
    stop: (point: SaidPoint): string => `- ${fault(point)}`,
    /** "Leaks: drip at the tap. Do not ride.", where no heading says how bad it is. */
    found: (point: SaidPoint): string => `${fault(point)}: ${point.grade ?? "watch"}.`,
    watch: (): string => "To watch:",
    /** A press on a card that is not the newest. */
    stale: (): string => "That button was on an older card, so it changed nothing. This is how the check stands:",
    /** What stands open from before. */
    standing: (): string => "Open from before:",
    stood: ({ words, grade }: { readonly words: string; readonly grade: FaultGrade | null }): string => `- ${words}: ${grade ?? "not graded yet"}`,
    inGroup: (stop: number): string =>
      stop === 0 ? "" : `${stop === 1 ? "One thing has" : `${stop} things have`} to be put right before it is ridden; its rider knows which.`,
    wasMeasured: (readings: readonly string[]): string => `Measured: ${p.list(readings)}.`,
    buy: (points: readonly SaidPoint[]): string | null => {
      const things = [...new Set(points.flatMap(({ key }) => POINTS[key]?.buy ?? []))];
      return things.length === 0 ? null : `To buy: ${p.list(things)}.`;
    },
    recorded: (names: readonly string[]): string => `Recorded into the plan: ${p.list(names)}.`,
    notes: (notes: readonly { readonly name: string; readonly said: string }[]): readonly string[] => notes.map(({ name: of, said }) => `- ${of}: ${said}`),
    notesTitle: (): string => "Noted:",
    when: (on: LocalDate, today: LocalDate): string => `Finished ${on === today ? "today" : p.date(on, today)}.`,
    shareHow: (called: string): string => `To show it to your group, without what stops the ride: /check bike:${called} share:yes.`,
    noCertificate: (): string => "This is what you saw on the day, no certificate. Your maker's manual has the last word.",
    putAway: (called: string, list: ChecklistName): string => `${called}, ${LIST_NAMES[list]}: nothing was answered, so there is nothing to keep.`,
    menu: {
      open: (): string => "Open checks:",
      openLine: (called: string, list: ChecklistName, result: CheckResult): string =>
        `- ${called}, ${LIST_NAMES[list]}: ${result.looked} of ${result.points} looked at`,
      finished: (): string => "Finished lately:",
      finishedLine: (called: string, list: ChecklistName, on: LocalDate, today: LocalDate): string =>
        `- ${called}, ${LIST_NAMES[list]}: ${on === today ? "today" : p.date(on, today)}`,
      begin: (nickname: string): string => `Pick a list below, or write /check list:pre-ride bike:${nickname}.`,
      none: (): string => "No check is open.",
      buying: (): string => "Looking at one to buy: /check list:buying used bike:Red one kind:chain-drive twin.",
      goOn: (called: string, list: ChecklistName): string => `Go on: ${called}, ${LIST_NAMES[list]}`.slice(0, 80),
      show: (called: string, list: ChecklistName): string => `Show ${called}, ${LIST_NAMES[list]}`.slice(0, 80),
      pick: (): string => "Begin a check",
      mine: (list: ChecklistName, more: boolean): string =>
        `${capital(LIST_NAMES[list])}: press a bike, and the check comes to you alone.${more ? " The rest: /check." : ""}`,
      option: (nickname: string, list: ChecklistName): string => `${nickname}, ${LIST_NAMES[list]}`.slice(0, 100),
    },
    labels: {
      good: "Good",
      done: "Done",
      needsWork: "Needs work",
      notFitted: "Not fitted",
      later: "Later",
      measure: "Write a figure",
      note: "Note or photo",
      more: "More",
      finish: "Finish",
      several: "Several of these are good",
      section: "Another section",
      reopen: "Open it again",
      undo: "Undo what was recorded",
      result: "What it came to",
      question: "Answer the question",
      laidUp: (nickname: string): string => `${nickname} is laid up now`.slice(0, 80),
      riding: (nickname: string): string => `${nickname} is ridden again`.slice(0, 80),
    },
    forms: {
      title: (point: SaidPoint): string => fitting(name(point)),
      what: "What is wrong with it?",
      how: "How bad is it?",
      grades: { "do not ride": "Do not ride until it is put right", watch: "Watch it" } as const satisfies Record<FaultGrade, string>,
      link: "Link to a photo or message",
      linkHint: "https://",
      note: "Note",
      figure: (kind: ReadingKind, place: Place | null): string => fitting(capital(`${place === null ? "" : `${place} `}${KIND_WORDS[kind].name}`)),
      figureHint: (kind: ReadingKind): string => KIND_WORDS[kind].howTo.slice(0, 100),
    },
    /** Words for a defect that a fail makes. */
    fault,
  };
};

const MOST_LEFT = 10;
/** A form's title and labels hold 45 characters. */
const fitting = (text: string): string => ([...text].length > 45 ? `${[...text].slice(0, 44).join("")}…` : text);
