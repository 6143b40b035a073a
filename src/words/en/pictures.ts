// What stands in pictures, and what each shows in words for whoever cannot see it.

import type { Grain } from "../../core/calendar/arithmetic.ts";
import type { LocalDate } from "../../core/calendar/dates.ts";
import { type DistanceUnit, figureIn, type Ridden } from "../../core/quantity/distance.ts";
import type { Status } from "../../core/schedule/facts.ts";
import type { Printer } from "../printer.ts";
import { cardWords } from "./card.ts";
import { checkPictureWords } from "./check-picture.ts";
import { pointAbout } from "./coarse.ts";
import { groupPictureWords } from "./group-picture.ts";
import { chargeLine, type Standing } from "./outlook.ts";
import { readingPictureWords } from "./reading-pictures.ts";
import { altOf, lowered } from "./text.ts";

type OnDial = { readonly nickname: string; readonly unit: DistanceUnit; readonly offset: number; readonly today: LocalDate };
type Span = { readonly from: LocalDate; readonly to: LocalDate };
type NextRow = {
  readonly items: readonly { readonly name: string }[];
  readonly status: Status;
  readonly on: LocalDate | null;
  readonly from: LocalDate | null;
  readonly to: LocalDate | null;
  readonly grain: Grain;
  readonly at: Ridden | null;
  readonly by: "wear" | "plan" | null;
};
type Next = OnDial & {
  readonly until: LocalDate;
  readonly now: Ridden | null;
  readonly rows: readonly NextRow[];
  readonly more: number;
  readonly near: readonly string[];
  readonly unknown: number;
  readonly likely: readonly { readonly on: LocalDate; readonly ridden: Ridden }[];
  readonly layUps: readonly Span[];
  readonly charge: Standing["charge"];
  readonly found: readonly { readonly words: string; readonly grade: "do not ride" | null }[];
};

/** What was found wrong is named up to so many, the rest counted. */
const NAMED = 3;
/** Letters of what was typed that stand in a picture. */
const LONGEST = 60;
const short = (words: string): string => ([...words].length > LONGEST ? `${[...words].slice(0, LONGEST - 1).join("")}…` : words);

/** What a mark of a lane means, in the legend. */
const MEANING = { now: "due or overdue", soon: "coming up", later: "later", range: "likely between", onward: "or later still", rest: "laid up" } as const;
const NEARNESS = { "no record": "later", good: "later", soon: "soon", due: "now", overdue: "now" } as const satisfies Record<Status, keyof typeof MEANING>;

export const pictureWords = (p: Printer) => ({
  /** Under a picture in which signs stand for letters. */
  lacking: () => "• stands for a letter that pictures cannot draw.",
  ...nextWords(p),
  ...readingPictureWords(p),
  ...cardWords(),
  ...checkPictureWords(p),
  ...groupPictureWords(p),
});

const nextWords = (p: Printer) => {
  const onDial = ({ unit, offset }: Pick<OnDial, "unit" | "offset">, ridden: Ridden): number => figureIn((ridden - offset) as Ridden, unit);
  const whole = (value: number): string => p.figure(value, 0);

  const when = (row: NextRow, b: OnDial): string => {
    const by = row.by === null ? "" : ` by ${row.by}`;
    if (row.status === "overdue") return `overdue${by}`;
    if (row.status === "due") return `due now${by}`;
    const point = row.at === null ? null : row.by === "wear" ? pointAbout(p, row.at, b) : p.point((row.at - b.offset) as Ridden, b.unit);
    const day =
      row.on === null ? null : row.at === null ? p.coarse(row.on, row.grain, b.today) : `${row.by === "wear" ? "" : "about "}${p.date(row.on, b.today)}`;
    const [first, ...rest] = [...(point === null ? [] : [point]), ...(day === null ? [] : [day])];
    return [...(row.status === "soon" ? ["coming up"] : []), ...(first === undefined ? [] : [`${first}${by}`]), ...rest].join(", ");
  };

  /** "Do not ride: “front brake spongy” and “belt teeth missing”." */
  const wrong = (heading: string, found: readonly { readonly words: string }[]): readonly string[] => {
    if (found.length === 0) return [];
    const rest = found.length - NAMED;
    const named = found.slice(0, NAMED).map(({ words }) => `“${short(words)}”`);
    return [`${heading}${rest > 0 ? `, ${found.length} things` : ""}: ${p.list(rest > 0 ? [...named, `${rest} more on /due`] : named)}.`];
  };

  return {
    next: (shown: Next) => {
      const { rows, today, until, nickname } = shown;
      const placed = rows.map((row) => ({
        names: row.items.map(({ name }, n) => (n === 0 ? name : lowered(name))),
        beside: when(row, shown),
        is: NEARNESS[row.status],
        row,
      }));
      const title =
        rows.length === 0
          ? `Nothing on record falls due on ${nickname} until ${p.date(until, today)}`
          : `What comes next for ${nickname}, until ${p.date(until, today)}`;
      const charge = shown.charge === null ? [] : [chargeLine(p, shown.charge, today)];
      const isNow = shown.charge !== null && shown.charge.on <= today;
      const notes = [
        ...(isNow ? [] : charge),
        ...(shown.more === 0 ? [] : [`And ${shown.more} more until then; /due lists them all.`]),
        ...(shown.near.length === 0 ? [] : [`Near the limit by what was measured: ${p.list(shown.near.map(lowered))}. /due says what is known of when.`]),
        ...(shown.unknown === 0 ? [] : [`Of ${shown.unknown} more nothing is known; /due names them.`]),
        ...(rows.some(({ at, on }) => at !== null && on === null) ? ["Too few readings yet to say on which day a distance comes."] : []),
      ];
      const first = [
        ...wrong(
          "Do not ride",
          shown.found.filter(({ grade }) => grade !== null),
        ),
        ...wrong(
          "Found wrong, not graded yet",
          shown.found.filter(({ grade }) => grade === null),
        ),
        ...(isNow ? charge : []),
      ];
      return {
        drawing: {
          first,
          ...{ title, today, until, notes, layUps: shown.layUps, meaning: MEANING },
          month: p.axisMonth,
          todayText: "today",
          andMore: (n: number): string => `and ${n} more`,
          byDay: placed.flatMap(({ row, names, beside, is }) =>
            row.on === null ? [] : [{ names, beside, is, on: row.on, from: row.from ?? row.on, to: row.to }],
          ),
          likely: shown.likely.map(({ on, ridden }) => ({ on, at: onDial(shown, ridden) })),
          odometerName: `Odometer, likely, ${shown.unit}`,
          byDistance: placed.flatMap(({ row, names, beside, is }) =>
            row.on === null && row.at !== null ? [{ names, beside, is, at: onDial(shown, row.at) }] : [],
          ),
          distanceName: `By the odometer, ${shown.unit}`,
          now: shown.now === null ? 0 : onDial(shown, shown.now),
          figure: whole,
        },
        alt: altOf([...first, `${title}.`, ...placed.map(({ names, beside }) => `${names.join(", ")}: ${beside}.`), ...notes].join(" ")),
      };
    },
  };
};
