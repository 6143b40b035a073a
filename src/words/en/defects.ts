// What was found wrong, in English: noted, graded, closed.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { Defect, Grade } from "../../core/defect.ts";
import type { Dial, DistanceUnit } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";
import { ENGLISH_DEFECTS } from "./defect-kinds.ts";
import { capital } from "./text.ts";

type SaidDefect = {
  readonly state: "open" | "closed" | "withdrawn";
  readonly kind: string | null;
  readonly words: string;
  readonly grade: Grade | null;
  readonly on: LocalDate;
  readonly dial: Dial | null;
  readonly unit: DistanceUnit;
  readonly nickname: string;
  readonly closedBecause: string | null;
  /** What it was noted from: "verdict" where a reading says so. */
  readonly from: Defect["from"];
};

const LONGEST_LABEL = 80;
const fitting = (label: string): string => ([...label].length > LONGEST_LABEL ? `${[...label].slice(0, LONGEST_LABEL - 1).join("")}…` : label);

/** The sentence that matters for a kind; null for what has no kind. */
const sentence = (kind: string | null): string | null => (kind === null ? null : ((ENGLISH_DEFECTS as Readonly<Record<string, string>>)[kind] ?? null));
const after = (text: string | null): string => (text === null ? "" : ` ${text}`);

/** What has to be so before it is closed. */
const CLOSED_ONLY: Readonly<Record<string, string>> = {
  "attacked brake seals": "Only if the seals and hoses were renewed too, not the fluid alone.",
  "attacked clutch seals": "Only if the seals were renewed too, not the fluid alone.",
  "mixed brake fluid": "Only if all of it was flushed out and changed: bleeding leaves some in.",
  "mixed clutch fluid": "Only if all of it was flushed out and changed: bleeding leaves some in.",
};

const MENDED = "It is mended";
const LINE = { kind: "line", value: null, options: [] } as const;

export const defectWords = (p: Printer) => {
  const when = (d: SaidDefect, today: LocalDate): string =>
    `found ${d.on === today ? "today" : p.date(d.on, today)}${d.dial === null ? "" : ` at ${p.point(d.dial, d.unit)}`}`;
  const heading = (grade: Grade | null): string => (grade === null ? "not graded yet" : grade);
  return {
    /** "Do not ride: “front brake feels spongy”, found today. Do not ride until it is found: air, a leak or old fluid, or a drum out of adjustment." */
    due: (d: SaidDefect, today: LocalDate): string => `${capital(heading(d.grade))}: “${d.words}”, ${when(d, today)}.${after(sentence(d.kind))}`,
    /** Just noted. */
    noted: (d: SaidDefect): string =>
      `${d.nickname}: “${d.words}”. Noted.${after(sentence(d.kind))}${d.from === "verdict" && d.grade === "do not ride" ? " Until then it stands first on /due." : ""}`,
    howBad: (): string => "How bad is it?",
    shown: (d: SaidDefect, today: LocalDate): string => {
      switch (d.state) {
        case "open":
          return `${d.nickname}, ${heading(d.grade)}: “${d.words}”, ${when(d, today)}.${after(sentence(d.kind))}`;
        case "closed":
          return `${d.nickname}: “${d.words}”, ${when(d, today)}. Closed${d.closedBecause === null ? " by work" : `: ${d.closedBecause}`}.`;
        case "withdrawn":
          return `${d.nickname}: “${d.words}” was taken back.`;
      }
    },
    /** Watched against what its sentence says, that is its owner's choice. */
    graded: (grade: Grade, kind: string | null): string =>
      grade === "do not ride"
        ? "It stays first on /due until work closes it."
        : sentence(kind)?.startsWith("Do not ride") === true
          ? "You chose to watch it; what is said of it above stays so. It stays on /due until work closes it."
          : "It stays on /due, to be watched, until work closes it.",
    nothing: (d: SaidDefect): string =>
      `${d.nickname}: “${d.words}” is closed${d.closedBecause === null ? "" : `: ${d.closedBecause}`}. The record of it stays.${d.from === "verdict" ? " What was read still counts until the right figure is logged: the next reading there takes its place. If it was misread, take it back, and what it made due is as it was." : ""}`,
    /** The form behind "mended". */
    mendedForm: {
      title: MENDED,
      fields: [
        { ...LINE, name: "did", label: "What was done?", required: true, hint: "Such as: new bulb" },
        { ...LINE, name: "at", label: "Odometer at the time, if you know it", required: false, hint: null },
        { ...LINE, name: "on", label: "Day, if not today", required: false, hint: null },
      ],
    } as const,
    mended: (d: SaidDefect): string =>
      d.closedBecause === null
        ? `${d.nickname}: “${d.words}” is closed by that work. Try it gently, close to home, before you trust it.`
        : `${d.nickname}: “${d.words}” is closed by what you read now.`,
    /** Nothing that was read now says whether it is right: what was noted before stands. */
    staying: (defects: readonly SaidDefect[]): string =>
      `${p.list(defects.map(({ words }) => `“${words}”`))} ${defects.length === 1 ? "stays" : "stay"} open: what you read now does not show yet whether it is right.`,
    /** By a limit that was entered later. */
    readRight: (d: SaidDefect): string => `${d.nickname}: “${d.words}” is closed: what was read since is right by that.`,
    /** Work that may have been done about an open defect. */
    closesIt: (d: SaidDefect): string => `Does this close: “${d.words}”?${after(d.kind === null ? null : (CLOSED_ONLY[d.kind] ?? null))}`,
    /** What a figure noted that was taken back or put right. */
    lapsed: (words: readonly string[]): string =>
      `${p.list(words.map((each) => `“${each}”`))} ${words.length === 1 ? "stands" : "stand"} no longer: no figure says so any more.`,
    /** What went with the reading that was taken back, and another says still. */
    stillSaid: (words: readonly string[]): string => `Another reading says the same, so it stands: ${p.list(words.map((each) => `“${each}”`))}.`,
    reopened: (words: readonly string[]): string => `Open again: ${p.list(words.map((each) => `“${each}”`))}.`,
    /** @param asks there is something to answer, and not only to read */
    inChannel: (asks: boolean): string => `Noted. There is ${asks ? "a question about it" : "a word about it"}, for you alone.`,
    labels: {
      grade: (grade: Grade): string => capital(grade),
      nothing: "It was nothing",
      mended: MENDED,
      /** Where several may be named together. */
      mendedOf: (words: string): string => fitting(`Mended: ${words}`),
      gradeOf: (words: string): string => fitting(`How bad: ${words}`),
      note: "Note it",
      show: (d: SaidDefect): string => fitting(`${d.nickname}: ${d.words}`),
      closes: (words: string): string => fitting(`Closes: ${words}`),
      /** A figure that was misread. */
      takeBack: (reading: string): string => fitting(`Take back: ${reading}`),
      why: "What was it?",
      whyHint: "Such as: lever had been left adjusted wide",
    },
  };
};
