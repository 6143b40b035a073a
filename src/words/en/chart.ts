// A service chart in English: line by line for a phone, as a table, and as a drawing.

import { type Beside, type Chart, type ChartRow, runningInOf } from "../../core/plan/chart.ts";
import { ACTIONS, type Condition, type Repeat } from "../../core/plan/plan.ts";
import type { DistanceUnit } from "../../core/quantity/distance.ts";
import type { Printer } from "../printer.ts";
import { CHART_HEADS, CHART_LETTERS, FROM_LAST_TIME } from "./chart-letters.ts";
import { CONDITION_WORDS, lowered } from "./text.ts";

/** A line of a chart with what the item is called. */
export type NamedRow = ChartRow & { readonly name: string };
type Named = Omit<Chart, "rows" | "below"> & { readonly rows: readonly NamedRow[]; readonly below: readonly NamedRow[] };
type Shown = Named & { readonly nickname: string; readonly planName: string; readonly conditions: readonly Condition[] };

export const chartWords = (p: Printer, repeats: (repeat: Repeat, column: DistanceUnit) => string) => {
  const point = (mark: number, unit: DistanceUnit): string => `${p.figure(mark, 0)} ${unit}`;
  const letter = (row: ChartRow): string => CHART_LETTERS[row.action];
  const listed = (rows: readonly NamedRow[]): string => rows.map((row) => `${lowered(row.name)} ${letter(row)}`).join(", ");
  /** "every 12 months", "every 300 mi from the last time". */
  const beside = ({ anchor, repeat }: Beside, unit: DistanceUnit): string =>
    `${repeats(repeat, unit)}${anchor === "last done" && repeat.by === "interval" ? ` ${FROM_LAST_TIME}` : ""}`;
  const legend = ({ rows, below }: Named): readonly string[] => {
    const used = new Set([...rows, ...below].map((row) => row.action));
    return ACTIONS.filter((action) => used.has(action)).map((action) => `${CHART_LETTERS[action]} = ${action}`);
  };
  const regular = ({ marks }: Named): readonly number[] => (runningInOf(marks) === null ? marks : marks.slice(1));
  const always = (chart: Named): readonly NamedRow[] => chart.rows.filter((row) => regular(chart).every((mark) => row.at.includes(mark)));
  const service = (mark: number, chart: Named): string => {
    const every = runningInOf(chart.marks) === mark ? [] : always(chart);
    const here = chart.rows.filter((row) => row.at.includes(mark) && !every.includes(row));
    return `- ${point(mark, chart.unit)}${runningInOf(chart.marks) === mark ? ", running-in" : ""}: ${here.length === 0 ? "nothing else" : listed(here)}`;
  };
  const besides = ({ rows, below, unit }: Named): readonly string[] => [
    ...rows.flatMap((row) => (row.beside === null ? [] : [`- ${row.name}: also ${beside(row.beside, unit)}`])),
    ...below.map((row) => `- ${row.name} ${letter(row)}: ${row.beside === null ? "" : beside(row.beside, unit)}`),
  ];
  const notes = ({ rows, below, conditions, cut, unit, marks }: Shown): readonly string[] => {
    const converted = [...rows, ...below].filter((row) => row.converted);
    return [
      ...(cut ? [`More services than fit; this shows those to ${point(marks.at(-1) ?? 0, unit)}.`] : []),
      ...(conditions.length === 0 ? [] : [`Your use is counted in: ${p.list(conditions.map((each) => CONDITION_WORDS[each]))}.`]),
      ...(converted.length === 0 ? [] : [`Converted from the other column, to whole ${unit}: ${p.list(converted.map((row) => lowered(row.name)))}.`]),
    ];
  };
  const title = ({ nickname, planName, marks, unit }: Shown): string => {
    const last = marks.at(-1);
    return last === undefined
      ? `${nickname}'s plan, “${planName}”, has nothing that goes by services.`
      : `${nickname}'s service chart to ${point(last, unit)}, from the plan “${planName}”.`;
  };
  /** Where every service is in whole hundreds, a narrow head counts in thousands. */
  const inThousands = (marks: readonly number[]): boolean => marks.every((mark) => mark % 100 === 0);

  return {
    beside,
    lines: (shown: Shown): readonly string[] => {
      const every = always(shown);
      const [first, ...more] = besides(shown);
      return [
        title(shown),
        ...(every.length === 0 ? [] : [`At every service: ${listed(every)}.`]),
        ...(shown.marks.length === 0 ? [] : ["", ...shown.marks.map((mark) => service(mark, shown))]),
        ...(first === undefined ? [] : ["", "Beside the services:", first, ...more]),
        ...["", `${legend(shown).join(", ")}.`, ...notes(shown)],
      ];
    },
    /** The table: a head, a line an item, and the legend. Figures stand bare, so that any spreadsheet reads them. */
    table: (chart: Named): readonly (readonly string[])[] => [
      [CHART_HEADS.corner(chart.unit), ...chart.marks.map(String), CHART_HEADS.last],
      ...chart.rows.map((row) => [
        row.name,
        ...chart.marks.map((mark) => (row.at.includes(mark) ? letter(row) : "")),
        row.beside === null ? "" : beside(row.beside, chart.unit),
      ]),
      ...chart.below.map((row) => [row.name, ...chart.marks.map(() => ""), row.beside === null ? "" : `${letter(row)}: ${beside(row.beside, chart.unit)}`]),
      ...legend(chart).map((line) => [line]),
    ],
    drawing: (shown: Shown) => {
      const { marks, rows, below, unit } = shown;
      const small = inThousands(marks);
      const said = below.map((row) => (row.beside === null ? letter(row) : `${letter(row)} ${beside(row.beside, unit)}`));
      // What goes for every line is said once, over them.
      const same = said.length > 0 && said.every((each) => each.endsWith(` ${FROM_LAST_TIME}`));
      return {
        title: title(shown),
        corner: small ? `× 1,000 ${unit}` : unit,
        marks: marks.map((mark) => (small ? p.figure(mark / 1000) : p.figure(mark, 0))),
        rows: rows.map((row) => ({
          name: row.name,
          cells: marks.map((mark) => (row.at.includes(mark) ? letter(row) : "")),
          last: row.beside === null ? "" : beside(row.beside, unit).replace(/^every /u, ""),
        })),
        last: "or every",
        legend: legend(shown),
        belowTitle: `Beside the services${same ? `, ${FROM_LAST_TIME} each` : ""}`,
        below: below.map((row, n) => ({ name: row.name, said: (said[n] ?? "").slice(0, same ? -FROM_LAST_TIME.length - 1 : undefined) })),
        notes: notes(shown),
        alt: `A table of ${rows.length} items against ${marks.length} services from ${point(marks[0] ?? 0, unit)} to ${point(marks.at(-1) ?? 0, unit)}; a letter says what is done. Under it ${below.length === 0 ? "" : `${below.length} more items and how often they come round, and `}what the letters mean. The text says the same service by service.`,
      };
    },
    tableAlt: (nickname: string): string => `${nickname}'s chart as comma-separated values`,
  };
};
