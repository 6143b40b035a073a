// A pasted chart as words and what can be pressed about it: first its letters, then its lines beside the plan.

import type { Action, Form, Said } from "../../src/chat/reply.ts";
import type { ChartProposal, LineOutcome } from "../../src/usecases/chart-proposal.ts";
import type { ChartReading, ChartSaved } from "../../src/usecases/read-chart.ts";
import type { Words } from "../../src/words/en/english.ts";
import { formButton, pickOne, press, said } from "./said.ts";

export function chartForm({ readChart }: Words, typed: string | null): Form {
  const { title, field, hint } = readChart.form;
  return { title, fields: [{ name: "chart", label: field, kind: "paragraph", required: true, value: typed, hint, options: [] }] };
}

export function sayReading(reading: ChartReading, words: Words): Said {
  const { readChart } = words;
  const { labels } = readChart;
  switch (reading.is) {
    case "asked": {
      const { open, bike } = reading;
      const paste = formButton("paste-chart", bike, labels.paste, chartForm(words, null));
      if (open === null) return said(readChart.ask(reading.nickname), { actions: [paste] });
      const actions = [press("show-chart", open.draft, labels.goOn), paste, press("leave-chart", open.draft, labels.leave)];
      return said([readChart.waits(words.p.date(open.on, words.today)), "", ...readChart.ask(reading.nickname)], { actions });
    }
    case "not a chart":
      return said(readChart.notAChart(), { actions: [again(reading.bike, reading.draft, words), press("leave-chart", reading.draft, labels.leave)] });
    case "chart":
      return reading.confirmed ? sayPreview(reading, words) : sayLetters(reading, words);
  }
}

const again = (bike: string, draft: string, words: Words): Action =>
  formButton("paste-chart", `${bike}.${draft}`, words.readChart.labels.again, chartForm(words, null));

function headOf({ nickname, rows, services, units, column }: ChartProposal, { readChart }: Words): readonly string[] {
  const hasColumn = services.every((mark) => (column === "mi" ? mark.miles : mark.km) !== null);
  return [
    readChart.found(nickname, rows, services),
    ...(units.length === 0 ? [readChart.unitTaken(column)] : []),
    ...(hasColumn ? [] : [readChart.otherColumn(column)]),
  ];
}

function sayLetters(chart: ChartProposal, words: Words): Said {
  const { readChart } = words;
  const { labels } = readChart;
  const { letters, draft, rev } = chart;
  const asked = letters.flatMap(({ letter, ask }, at) =>
    ask ? [pickOne("answer-chart", `${draft}.letter.${at}`, labels.standsFor(letter), readChart.meanings, rev)] : [],
  );
  const others = letters.flatMap(({ letter, ask }, at) =>
    ask ? [] : [{ value: String(at), label: readChart.letter(letters[at] ?? { letter, meaning: null, from: "unknown", others: [] }).slice(2) }],
  );
  const known = letters.every(({ meaning }) => meaning !== null);
  return said(
    [
      ...headOf(chart, words),
      ...(letters.length === 0 ? [] : ["", readChart.letters, ...letters.map(readChart.letter)]),
      ...(chart.unread.length === 0
        ? []
        : ["", ...chart.unread.map(({ line, text }) => readChart.unread(line, text)), readChart.unreadHow(chart.services.length)]),
      ...["", readChart.confirm],
    ],
    {
      actions: [
        ...(known ? [press("answer-chart", `${draft}.right`, labels.right, rev)] : []),
        ...[again(chart.bike, draft, words), press("leave-chart", draft, labels.leave)],
        ...asked,
        ...(others.length === 0 ? [] : [pickOne("answer-chart", `${draft}.ask`, labels.other, others, rev)]),
      ],
    },
  );
}

function sayPreview(chart: ChartProposal, words: Words): Said {
  const { readChart } = words;
  const { labels } = readChart;
  const { draft, rev, lines, planRev } = chart;
  const end = chart.services.at(-1);
  const saves = lines.filter((line) => line.is === "change" || (line.is === "unknown" && line.own));
  const leftOut =
    new Set(lines.filter((line) => !saves.includes(line) && line.is !== "same" && line.is !== "habit").map((line) => line.n)).size + chart.unread.length;
  const changes = new Set(lines.flatMap((line) => (line.is === "change" ? [line.name] : [])));
  const same = new Set(lines.flatMap((line) => (line.is === "same" || line.is === "habit" ? [line.name] : [])));
  const cautions = [...new Set(lines.flatMap((line) => (line.is === "change" ? [words.caution(line.caution)] : [])))].filter((each) => each !== null);
  const pickers = lines.flatMap((line): Action[] => {
    if (line.is !== "several") return [];
    const options = [...line.options.map(({ item, name }) => ({ value: item as string, label: name })), { value: "leave", label: labels.leaveOut }];
    return [pickOne("answer-chart", `${draft}.line.${line.n}`, labels.which(line), options, rev)];
  });
  // One item from several lines: which of them counts.
  const twice = [...new Set(lines.flatMap((line) => (line.is === "twice" ? [line.item] : [])))].flatMap((item): Action[] => {
    const rivals = lines.flatMap((line) => (line.is === "twice" && line.item === item ? [line] : []));
    const [first] = rivals;
    if (first === undefined) return [];
    const options = rivals.map((line) => ({ value: String(line.n), label: labels.counts(line, line.will, chart.column) }));
    return [pickOne("answer-chart", `${draft}.twice.${first.n}`, labels.whichCounts(first.name), options, rev)];
  });
  // A line that names no item of the plan may mean one under another name.
  const meant = lines
    .flatMap((line) => (line.is === "unknown" && !line.own ? [line] : []))
    .slice(0, Math.max(0, MOST_LISTS - pickers.length - twice.length))
    .map((line) => {
      const options = [...line.nearest.map(({ item, name }) => ({ value: item as string, label: name })), { value: "leave", label: labels.leaveOut }];
      return pickOne("answer-chart", `${draft}.line.${line.n}`, labels.meant(line), options, rev);
    });
  const open = lines.filter((line) => line.is === "unknown" && line.canBeOwn && !line.own);
  const ownOptions = [
    ...(open.length > 1 ? [{ value: "all", label: labels.all }] : []),
    ...open.map((line) => ({ value: String(line.n), label: labels.which(line) })),
  ];
  return said(
    [
      readChart.summary(chart.nickname, changes.size, same.size, chart.untouched),
      ...headOf(chart, words).slice(1),
      ...lines.flatMap((line) => changeLines(line, chart, words)),
      ...section(lines.flatMap((line) => otherLine(line, chart, words, end))),
      ...section(chart.unread.map(({ line, text }) => readChart.unread(line, text))),
      ...section(chart.keepsMonths ? [readChart.keepsMonths()] : []),
      ...["", saves.length === 0 ? readChart.nothingToSave() : words.plan.notSaved()],
    ],
    {
      caution: cautions.length === 1 ? (cautions[0] ?? null) : cautions.length === 0 ? null : words.help.caution,
      actions: [
        ...(saves.length === 0 ? [] : [press("save-chart", `${draft}.${planRev}`, labels.save(leftOut), rev)]),
        ...[press("leave-chart", draft, labels.leave), press("answer-chart", `${draft}.wrong`, labels.letters, rev)],
        ...twice,
        ...pickers,
        ...meant,
        ...(open.length === 0 ? [] : [pickOne("answer-chart", `${draft}.own`, labels.own, ownOptions, rev)]),
      ],
    },
  );
}

/** Beside the buttons and the list of items of one's own, as many as one message takes. */
const MOST_LISTS = 3;

const section = (lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ["", ...lines]);

function changeLines(line: LineOutcome, { column, services }: ChartProposal, { readChart }: Words): readonly string[] {
  if (line.is !== "change") return [];
  const does = line.does === null ? [] : [readChart.does(line.meaning, line.does)];
  return ["", line.name, readChart.now(line.was, column), readChart.will(line.will, line.after, column, services.at(-1)), ...does];
}

function otherLine(line: LineOutcome, { column }: ChartProposal, { readChart }: Words, end: ChartProposal["services"][number] | undefined): readonly string[] {
  switch (line.is) {
    case "habit":
      return [readChart.habit(line.name)];
    case "unknown":
      return [readChart.unknown(line, line.will, line.after, line.own, column, end)];
    case "several":
      return [
        readChart.several(
          line,
          line.options.map(({ name }) => name),
        ),
      ];
    case "left":
      return [readChart.left(line)];
    case "twice":
      return [readChart.twice(line, line.name)];
    case "unclear":
      return [readChart.unclear(line, line.because)];
    default:
      return [];
  }
}

export function saySaved({ bike, nickname, rev, edits, changed, added, leftOut, undone }: ChartSaved, { readChart }: Words): Said {
  if (undone) return said([readChart.undone(nickname)]);
  return said(readChart.saved(nickname, changed, added, leftOut), { actions: [press("undo-chart", `${bike}.${edits}`, readChart.labels.undo, rev)] });
}
