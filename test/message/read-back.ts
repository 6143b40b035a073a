// A generated message read back.

import { expect } from "vitest";
import type { Intent } from "../../src/core/reading/intent.ts";
import { read } from "../../src/message/read.ts";
import type { Generated } from "./generated.ts";
import { HERON, knownWith } from "./riders.ts";

const KNOWN = knownWith([HERON]);
const plainly = (intent: Intent): string =>
  intent.do === "log reading"
    ? `${intent.kind}${intent.place === null ? "" : `/${intent.place}`} ${intent.value} ${intent.unit ?? "?"}${intent.gaps.map((gap) => ` ?${gap.need}`).join("")}`
    : intent.do;

/** Is it read as what was printed? */
export function readBack({ say, means }: Generated): void {
  expect([say, ...read(say, KNOWN).intents.map(plainly)]).toEqual([say, ...means]);
}
