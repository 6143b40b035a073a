// Measured values against a corpus of messages, with the rates that the reader is held to.

import { describe, expect, test } from "vitest";
import type { Intent } from "../../src/core/reading/intent.ts";
import { KIND_KEYS } from "../../src/core/reading/kinds.ts";
import type { Known } from "../../src/core/reading/vocabulary.ts";
import { read } from "../../src/message/read.ts";
import type { Case } from "./corpus.ts";
import { NOTHING } from "./corpus.ts";
import { MEASURED, MEASURED_ON_THREE, NOT_MEASURED } from "./measured-corpus.ts";
import { BRAMBLE, HERON, knownWith, OTTER, TODAY } from "./riders.ts";

/** An intent in the shorthand of the corpus. */
function short(intent: Intent): string {
  if (intent.do !== "log reading") return intent.do;
  const where = intent.place === null ? "" : `/${intent.place}`;
  const on = intent.on === TODAY ? "" : ` on ${intent.on}`;
  const detail = intent.detail === undefined ? "" : ` ${JSON.stringify(intent.detail)}`;
  const asks = intent.gaps.map((gap) => ` ?${gap.need}`).join("");
  return `${intent.kind}${where} ${intent.value} ${intent.unit ?? "?"}@${intent.bike ?? "?"}${on}${detail}${asks}`;
}

const ONE = knownWith([HERON]);
const THREE = knownWith([HERON, BRAMBLE, OTTER]);
const heard = (say: string, known: Known): readonly string[] => read(say, known).intents.map(short);

describe("one bike", () => {
  test.each(MEASURED.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(heard(say, ONE)).toEqual(means);
  });
});
describe("three bikes", () => {
  test.each(MEASURED_ON_THREE.map(({ say, means }) => [say, means] as const))("%s", (say, means) => {
    expect(heard(say, THREE)).toEqual(means);
  });
});
describe("nothing was measured", () => {
  test.each(NOT_MEASURED.map((say) => [say] as const))("%s", (say) => {
    expect(heard(say, ONE)).toEqual([]);
    expect(heard(say, THREE)).toEqual([]);
  });
});

test("every kind of reading is in the corpus", () => {
  const means = MEASURED.flatMap((each) => each.means).join("\n");
  expect(KIND_KEYS.filter((kind) => !means.includes(`${kind} `) && !means.includes(`${kind}/`))).toEqual([]);
});

test("the rates: nothing wrong is saved in silence, and small talk is seldom asked about", () => {
  const asks = (means: readonly string[]): boolean => means.some((each) => each.includes(" ?"));
  const rates = (cases: readonly Case[], known: Known) => {
    const results = cases.map(({ say, means }) => ({ means, came: heard(say, known) }));
    const wrong = results.filter(({ means, came }) => came.join("|") !== means.join("|"));
    return { exact: 1 - wrong.length / results.length, silent: wrong.filter(({ came }) => came.length > 0 && !asks(came)).length };
  };
  for (const { exact, silent } of [rates(MEASURED, ONE), rates(MEASURED_ON_THREE, THREE)]) {
    expect(exact).toBeGreaterThanOrEqual(0.98);
    expect(silent).toBe(0);
  }
  const talk = [...NOTHING, ...NOT_MEASURED];
  expect(talk.filter((say) => heard(say, ONE).some((came) => !came.includes(" ?")))).toEqual([]);
  expect(talk.filter((say) => heard(say, ONE).length > 0).length / talk.length).toBeLessThanOrEqual(0.02);
});
