// A pasted chart in English: its letters printed back, then what it would change.

import type { Columns, Interval, PlanItem, Repeat, WorkAction } from "../../core/plan/plan.ts";
import type { DistanceUnit, Ridden } from "../../core/quantity/distance.ts";
import { MEANINGS, type Meaning } from "../../core/reading/chart-words.ts";
import type { Printer } from "../printer.ts";
import type { planWords } from "./plan.ts";
import { lowered } from "./text.ts";

type Letter = {
  readonly letter: string;
  readonly meaning: Meaning | null;
  readonly from: "chosen" | "the chart" | "usual" | "unknown";
  readonly others: readonly Meaning[];
};
type Trigger = { readonly anchor: PlanItem["anchor"]; readonly first: Interval | null; readonly repeat: Repeat; readonly marks: readonly Ridden[] };
type Line = { readonly line: number; readonly called: string; readonly meaning: Meaning | null };
type After = "same again" | "same again, replacements counted" | "last gap again" | "nothing";

const MEANING: Readonly<Record<Exclude<Meaning, WorkAction>, string>> = {
  "as the item": "whatever your plan does to the item",
  nothing: "nothing that matters here",
};
const said = (meaning: Meaning): string => (meaning === "as the item" || meaning === "nothing" ? MEANING[meaning] : meaning);
const unclear = {
  "whose interval": "has more than one letter and one interval beside them; name the letter before the interval, as in R: 2 years",
  "distance twice": "says how far in the grid and beside it",
  "nothing printed": "has no letter and no interval",
  "with what": "goes with work that I cannot find in your plan",
} as const;

export const readChartWords = (p: Printer, plan: ReturnType<typeof planWords>) => {
  const one = (names: readonly string[]): string => new Intl.ListFormat("en-GB", { type: "disjunction" }).format(names);
  const service = ({ miles, km }: Columns): string =>
    [miles === null ? null : `${p.figure(miles, 0)} mi`, km === null ? null : `${p.figure(km, 0)} km`].filter((each) => each !== null).join(" / ");
  const lines = (n: number): string => (n === 1 ? "1 line" : `${n} lines`);
  const items = (n: number): string => (n === 1 ? "1 item" : `${n} items`);
  const after = (how: After, end: Columns | undefined): string =>
    how === "same again" || end === undefined
      ? ""
      : how === "nothing"
        ? " By the chart nothing follows."
        : how === "same again, replacements counted"
          ? " Where the chart has it replaced instead, that does this too."
          : ` The chart ends at ${service(end)}; that its last gap goes on is my reading.`;
  const named = ({ line, called, meaning }: Line): string => `Line ${line}, “${called}”${meaning === null ? "" : ` (${said(meaning)})`}`;

  return {
    ask: (nickname: string): readonly string[] => [
      `Paste the service chart of ${nickname}'s manual: first a line with the services, then a line for each item with its letters.`,
      "Cells may be parted by commas, semicolons, tabs, upright strokes, or two or more spaces. Say mi or km in the first line; for both, give two. A last column may say every 2 years.",
      "Nothing is saved before you have seen it beside your plan.",
    ],
    waits: (on: string): string => `A chart that you pasted on ${on} still waits for you.`,
    notAChart: (): readonly string[] => [
      "I cannot find the services in that. The first line names them, rising, at least two: item, 600 mi, 4,000, 8,000. Below it comes a line for each item.",
      "What you pasted is kept: paste it again and it is there to be put right.",
    ],
    found: (nickname: string, rows: number, services: readonly Columns[]): string =>
      `${nickname}: a chart of ${lines(rows)} and ${services.length} services, ${service(services[0] ?? { miles: null, km: null })} to ${service(services.at(-1) ?? { miles: null, km: null })}.`,
    unitTaken: (column: DistanceUnit): string =>
      `It names no unit, so I take it in ${column === "mi" ? "miles" : "kilometres"}, as this bike's plan goes. If that is wrong, paste it with the unit.`,
    otherColumn: (column: DistanceUnit): string => `The chart has no ${column} column, by which this bike goes: its figures are converted.`,
    letters: "I take its letters so:",
    letter: ({ letter, meaning, from, others }: Letter): string => {
      if (meaning === null) return `- ${letter}: I do not know it. Say what it stands for.`;
      const doubt =
        others.length === 0
          ? ""
          : from === "the chart"
            ? `; the chart also says ${p.list(others.map(said))}`
            : `; some manuals mean ${one(others.map(said))} by it`;
      return `- ${letter} = ${said(meaning)}${from === "the chart" ? ", as the chart says" : from === "chosen" ? ", as you say" : ""}${doubt}`;
    },
    confirm: "Compare them with your manual's own legend. Nothing is saved yet.",
    /** Under the lines that were not read: what most likely ails them. */
    unreadHow: (services: number): string =>
      `Each line needs a name and its letters under the ${services} services: put - where there is none, or part the cells by commas or tabs.`,
    unread: (line: number, text: string): string => `Line ${line} is not read: “${[...text].slice(0, 60).join("")}”`,
    summary: (nickname: string, change: number, same: number, untouched: number): string =>
      `${nickname}: ${items(change)} would change, ${same} ${same === 1 ? "is as your plan has it" : "are as your plan has them"}, ${untouched} ${untouched === 1 ? "is not in the chart and stays as it is" : "are not in the chart and stay as they are"}.`,
    now: (was: Trigger, column: DistanceUnit): string => `- ${plan.under("now", was, column)}`,
    will: (will: Trigger, how: After, column: DistanceUnit, end: Columns | undefined): string => `- ${plan.under("changed", will, column)}${after(how, end)}`,
    does: (meaning: Meaning | null, does: WorkAction): string =>
      `- The chart says ${meaning === null ? "something else" : said(meaning)}; your plan goes on to ${does}.`,
    habit: (name: string): string => `- ${name}: stays the habit it is, which comes round sooner.`,
    unknown: (line: Line, will: Trigger, how: After, own: boolean, column: DistanceUnit, end: Columns | undefined): string =>
      `- ${named(line)} ${own ? "becomes an item of your own" : "is not in your plan and is left out"}. ${plan.under("changed", will, column).replace(/^Then: /u, "It would come ")}${after(how, end)}`,
    several: (line: Line, names: readonly string[]): string => `- ${named(line)} can be ${one(names.map(lowered))}. Until you say which, it is left out.`,
    left: (line: Line): string => `- ${named(line)} is left out.`,
    unclear: (line: Line, because: keyof typeof unclear): string => `- ${named(line)} ${unclear[because]}. It is left out.`,
    twice: (line: Line, name: string): string =>
      `- ${named(line)} is ${lowered(name)} in your plan, which another line gives a different interval. Until you say which counts, it is left out.`,
    keepsMonths: (): string => "The chart has no column for time, so limits in months and years stay as your plan has them.",
    nothingToSave: (): string => "There is nothing to save as it stands.",
    saved: (
      nickname: string,
      changed: readonly string[],
      added: readonly string[],
      leftOut: readonly { readonly line: number; readonly text: string }[],
    ): readonly string[] => [
      `${nickname}'s plan is changed by the chart.`,
      ...(changed.length === 0 ? [] : [`Changed: ${p.list(changed.map(lowered))}.`]),
      ...(added.length === 0 ? [] : [`New items of your own: ${p.list(added)}.`]),
      ...(leftOut.length === 0
        ? []
        : [
            `Left out, so look after ${leftOut.length === 1 ? "it" : "them"} yourself or add ${leftOut.length === 1 ? "it" : "them"} with /plan add:`,
            ...leftOut.map(({ line, text }) => `- Line ${line}: “${[...text].slice(0, 80).join("")}”`),
          ]),
      "What falls due by it now: /due",
    ],
    undone: (nickname: string): string => `${nickname}'s plan is again as it was before the chart. Items that came with it are dropped.`,
    meanings: MEANINGS.map((meaning) => ({ value: meaning, label: said(meaning) })),
    labels: {
      paste: "Paste the chart",
      again: "Paste it again",
      goOn: "Go on with it",
      leave: "Leave it",
      right: "The letters are right",
      letters: "Back to the letters",
      save: (left: number): string => (left === 0 ? "Save" : `Save, ${lines(left)} left out`),
      undo: "Undo",
      standsFor: (letter: string): string => `${letter} stands for`,
      other: "Change another letter",
      which: (line: Line): string => named(line),
      whichCounts: (name: string): string => `${name} goes by`,
      counts: (line: Line, { repeat }: Trigger, column: DistanceUnit): string => `${named(line)}, ${plan.repeats(repeat, column)}`,
      meant: (line: Line): string => `${named(line)} is`,
      leaveOut: "Leave the line out",
      own: "Make an item of my own",
      all: "All of them",
    },
    form: { title: "Service chart", field: "The chart, a line for each item", hint: "item; 600 mi; 4,000; 8,000" },
  };
};
