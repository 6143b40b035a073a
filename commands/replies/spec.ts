// Specs as words: what was asked, one line each; where nothing is known, what is typical and the way to enter it.

import type { Action, Form, Said } from "../../src/chat/reply.ts";
import type { SpecUse } from "../../src/core/spec/spec.ts";
import type { LookedUp } from "../../src/trade/looked-up.ts";
import type { SpecKey } from "../../src/trade/spec-keys.ts";
import type { SpecAnswer, SpecLine } from "../../src/usecases/spec-ask.ts";
import type { SpecSaved } from "../../src/usecases/spec-set.ts";
import { isTreadLimit } from "../../src/usecases/specs.ts";
import type { Words } from "../../src/words/en/english.ts";
import { showEach } from "./defects.ts";
import { judgedLines } from "./judge.ts";
import { formButton, press, said } from "./said.ts";
import { soonerActions } from "./sooner.ts";

/** An open table, with the caution of what is told there. */
export const sayLookedUp = (table: LookedUp, words: Words): Said =>
  said(words.lookUp.lines(table), { caution: table.table === "brake fluid" || table.table === "brake fluids" ? words.caution("brake fluid") : null });

export function saySpecs(answer: SpecAnswer, words: Words): Said {
  const { specs } = words;
  if (!answer.asked) {
    if (answer.lines.length === 0) return said([specs.none(answer.nickname)]);
    return said([specs.title(answer.nickname, answer.model, answer.lines.length), "", ...answer.lines.flatMap((line) => known(line, answer.use, words))]);
  }
  const [there, missing] = [answer.lines.filter(({ specs: all }) => all.length > 0), answer.lines.filter(({ specs: all }) => all.length === 0)];
  const lines = there.flatMap((line) => known(line, answer.use, words));
  if (there.length > 0 && missing.length > 0) lines.push(specs.missingToo(missing.map(({ key }) => key)));
  const [only] = missing;
  if (there.length === 0) lines.push(...missing.slice(0, MOST_ASKED).flatMap((line) => unknown(line, answer, words)));
  if (there.length === 0 && missing.length === 1 && only !== undefined) lines.push(specs.how(only.key, answer.use));
  const caution = answer.lines.find((line) => line.caution !== null)?.caution ?? null;
  const differing = there.filter(({ settled }) => !settled).map(({ key, specs: [first] }) => lookButton(answer, key, answer.use ?? first?.use ?? null, words));
  return said(lines, {
    caution: words.caution(caution),
    actions: [
      ...differing.slice(0, MOST_ASKED),
      ...missing.slice(0, MOST_ASKED).map(({ key }) => enterButton(answer, key, answer.use, words, missing.length > 1)),
    ],
  });
}
const MOST_ASKED = 4;

/** The same of several bikes, each by its name. */
export function sayEachSpec(answers: readonly SpecAnswer[], words: Words): Said {
  const each = answers.map((answer) => ({ answer, told: saySpecs(answer, words) }));
  const [only, ...others] = each;
  if (only === undefined || others.length === 0) return only?.told ?? said([]);
  return said(
    each.flatMap(({ answer, told }, n) => [...(n === 0 ? [] : [""]), words.specs.of(answer.nickname), ...told.lines]),
    { caution: each.find(({ told }) => told.caution !== null)?.told.caution ?? null, actions: each.flatMap(({ told }) => told.actions).slice(0, MOST_ASKED) },
  );
}

function known({ key, settled, specs: all, others, byPage, afterwards, fluid }: SpecLine, use: SpecUse | null, words: Words): readonly string[] {
  const { specs } = words;
  const [first] = all;
  if (first === undefined) return [];
  const mixing = fluid === null ? [] : words.fluidOfSpec(fluid);
  if (!settled)
    return [specs.differ(key, use ?? first.use, byPage), ...all.map((each) => specs.says(each)), ...(all.every(withPage) ? [specs.lookAgain()] : [])];
  return [specs.line(key, first, afterwards), ...mixing, ...(others.length === 0 ? [] : [specs.otherwise(), ...others.map((each) => specs.says(each))])];
}

const withPage = ({ source }: SpecLine["specs"][number]): boolean => source !== null && source.page !== null;

function unknown({ key, typical, unit, solo }: SpecLine, answer: SpecAnswer, words: Words): readonly string[] {
  const { specs } = words;
  const known = solo === null ? [] : [specs.onlySolo(solo)];
  return [specs.missing(key, answer.use, answer.nickname), ...known, ...(typical === null || unit === null ? [] : [specs.typical(typical, unit)])];
}

function enterButton(answer: SpecAnswer, key: SpecKey, use: SpecUse | null, words: Words, several: boolean): Action {
  const label = several ? `${words.specs.labels.enter}: ${words.specs.name(key)}` : words.specs.labels.enter;
  return specButton(answer, key, use, label, words);
}

const lookButton = (answer: SpecAnswer, key: SpecKey, use: SpecUse | null, words: Words): Action =>
  specButton(answer, key, use, words.specs.labels.look(key), words);

/** A button that opens the form for one spec of a bike, for the load it is for. */
export const specButton = (of: { readonly bike: string; readonly nickname: string }, key: SpecKey, use: SpecUse | null, label: string, words: Words): Action =>
  formButton("spec-enter", `${of.bike}/${key}/${use ?? ""}`, label, specForm(key, use, of.nickname, words));

export function specForm(key: SpecKey, use: SpecUse | null, nickname: string, words: Words): Form {
  const form = words.specs.form(key, use, nickname);
  const line = (name: string, label: string, required = false) => ({ name, label, kind: "line" as const, required, value: null, hint: null, options: [] });
  return { title: form.title, fields: [line("value", form.value, true), line("manual", form.manual), line("edition", form.edition), line("page", form.page)] };
}

export function saySaved({ answer, also, judged, defects, lapsed, closed, overruled, ...entry }: SpecSaved, words: Words): Said {
  const { specs } = words;
  const gone = lapsed.length === 0 ? [] : [words.defects.lapsed(lapsed.map((defect) => defect.words))];
  const [line] = answer.lines;
  const own = line?.specs.concat(line.others).find((each) => each.id === entry.spec);
  if (line === undefined || own === undefined) return said([specs.takenBack(answer.nickname), ...gone]);
  const warn = line.byPage && !isTreadLimit(entry.key) && (own.source === null || own.source.page === null) ? [specs.noPage()] : [];
  const share = answer.model === null && !isTreadLimit(entry.key) ? [specs.shareHint()] : [];
  const entries = also === null ? [entry] : [entry, also];
  const undo = (key: SpecKey): string => (also === null ? specs.labels.undo : `${specs.labels.undo}: ${specs.name(key)}`);
  return said(
    [
      ...answer.lines.flatMap((each) => known(each, answer.use, words)),
      "",
      specs.saved(answer.nickname, entry.rev > 1),
      ...(overruled === undefined ? [] : [specs.overruled(overruled)]),
      ...judgedLines(judged, words),
      ...defects.map((defect) => words.defects.noted(defect)),
      ...closed.map((defect) => words.defects.readRight(defect)),
      ...gone,
      ...warn,
      ...share,
    ],
    {
      caution: words.caution(line.caution),
      actions: [
        ...entries.map((each) => press("spec-undo", each.spec, undo(each.key), each.rev)),
        ...(warn.length > 0 ? [enterButton(answer, entry.key, answer.use, words, false)] : []),
        ...soonerActions(
          judged.map((each) => ({ ...each, bike: answer.bike })),
          words,
        ),
        ...showEach(defects, words),
      ],
    },
  );
}
