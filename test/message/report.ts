// The corpora together, and the rates that the reader is held to.

import type { Intent } from "../../src/core/reading/intent.ts";
import type { Known } from "../../src/core/reading/vocabulary.ts";
import { read } from "../../src/message/read.ts";
import { type Case, NOTHING, ONE_BIKE, THREE_BIKES } from "./corpus.ts";
import { DEFECTS_ONE_BIKE, DEFECTS_THREE_BIKES, DETAILS, NO_DEFECT } from "./corpus-work.ts";
import { GERMAN, NOTHING_GERMAN } from "./german-corpus.ts";
import { MEASURED, MEASURED_ON_THREE, NOT_MEASURED } from "./measured-corpus.ts";
import { BRAMBLE, HERON, knownWith, OTTER } from "./riders.ts";
import { RIDERS_ON_THREE, RIDERS_SAY, RIDERS_TALK } from "./riders-corpus.ts";
import { NO_SERVICE, SERVICES, SERVICES_GERMAN } from "./services-corpus.ts";
import { shortOf, shortOfFirst, shortOfMeasured } from "./shorthand.ts";
import { short as shortOfWork, THREE as WORK_THREE, knownWith as workKnown } from "./work-known.ts";

/** One message of a corpus, whoever says it, and how its outcome is written there. */
export type Said = Case & { readonly known: Known; readonly short: (intent: Intent) => string };

const ONE = knownWith([HERON]);
const ALL = knownWith([HERON, BRAMBLE, OTTER]);
const on = (cases: readonly Case[], known: Known, short: Said["short"]): readonly Said[] => cases.map((each) => ({ ...each, known, short }));
const silent = (says: readonly string[], known: Known): readonly Said[] => says.map((say) => ({ say, means: [], known, short: shortOf }));

export const CORPUS: readonly Said[] = [
  ...on(ONE_BIKE, ONE, shortOfFirst),
  ...on(THREE_BIKES, ALL, shortOfFirst),
  ...on(MEASURED, ONE, shortOfMeasured),
  ...on(MEASURED_ON_THREE, ALL, shortOfMeasured),
  ...on([...DEFECTS_ONE_BIKE, ...DETAILS], workKnown([HERON]), shortOfWork),
  ...on(DEFECTS_THREE_BIKES, workKnown(WORK_THREE), shortOfWork),
  ...on([...RIDERS_SAY, ...SERVICES], ONE, shortOf),
  ...on(RIDERS_ON_THREE, ALL, shortOf),
  ...on([...GERMAN, ...SERVICES_GERMAN], knownWith([BRAMBLE]), shortOf),
];
export const TALK: readonly Said[] = [
  ...silent([...NOTHING, ...NOT_MEASURED, ...NO_DEFECT, ...RIDERS_TALK, ...NO_SERVICE], ONE),
  ...silent([...NOTHING, ...NOT_MEASURED], ALL),
  ...silent(NOTHING_GERMAN, knownWith([BRAMBLE])),
];

const isQuestion = (means: readonly string[]): boolean => means.some((each) => / \?\w/u.test(each));

/** Shares of a set of messages; `wrong` names what was saved and is not what was meant. */
export function ratesOf(cases: readonly Said[], talk: readonly Said[]) {
  const results = cases.map((each) => ({ ...each, came: read(each.say, each.known).intents.map(each.short) }));
  const exact = results.filter(({ means, came }) => came.join("|") === means.join("|"));
  const clear = results.filter(({ means }) => means.length > 0 && !isQuestion(means));
  const wrong = results.filter(({ means, came }) => !isQuestion(came) && came.some((each) => !means.includes(each)));
  const needless = clear.filter(({ came }) => isQuestion(came));
  const answers = talk.map((each) => ({ ...each, came: read(each.say, each.known).intents.map(each.short) })).filter(({ came }) => came.length > 0);
  return {
    messages: cases.length,
    talk: talk.length,
    exact: exact.length / Math.max(1, cases.length),
    exactOfClear: clear.filter((each) => exact.includes(each)).length / Math.max(1, clear.length),
    wrong: wrong.map(({ say, came }) => `${say} -> ${came.join("; ")}`),
    needless: needless.length / Math.max(1, clear.length),
    alarms: answers.length / Math.max(1, talk.length),
    savedTalk: answers.filter(({ came }) => !isQuestion(came)).map(({ say, came }) => `${say} -> ${came.join("; ")}`),
    missed: results
      .filter(({ means, came }) => came.join("|") !== means.join("|"))
      .map(({ say, means, came }) => `${say}: ${came.join("; ") || "-"} (meant ${means.join("; ")})`),
  };
}

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

/** The report as lines. */
export function reportOf(name: string, rates: ReturnType<typeof ratesOf>): string {
  return [
    `${name}: ${rates.messages} messages, ${rates.talk} of talk`,
    `  exactly as meant: ${percent(rates.exact)}, of the clear ones ${percent(rates.exactOfClear)}`,
    `  wrong and silent: ${rates.wrong.length + rates.savedTalk.length}; needless questions: ${percent(rates.needless)}; false alarms: ${percent(rates.alarms)}`,
    ...[...rates.wrong, ...rates.savedTalk].map((each) => `  wrong: ${each}`),
    ...rates.missed.map((each) => `  missed: ${each}`),
  ].join("\n");
}
