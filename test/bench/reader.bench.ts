// The reader on the corpora: messages a second, the slowest texts of 2,000 characters, and general libraries on the part that they can do.

import Qty from "js-quantities";
import { unit as mathUnit } from "mathjs";
import { read } from "../../src/message/read.ts";
import { CORPUS, TALK } from "../message/report.ts";
import { BRAMBLE, HERON, knownWith, OTTER } from "../message/riders.ts";
import { SLOW_PIECES } from "../message/slow-pieces.ts";
import { type Bench, compare, type Row, rowOf } from "./harness.ts";

const ALL = [...CORPUS, ...TALK];
const THREE = knownWith([HERON, BRAMBLE, OTTER]);

/** Rounds until the engine has compiled what it will, and rounds that count. */
const [WARM, COUNTED] = [40, 60];

/** Messages a second of processor time, over whole rounds of the corpora. */
function perSecond(): Row {
  const rounds: number[] = [];
  for (let n = 0; n < WARM + COUNTED; n++) {
    const from = process.cpuUsage();
    for (const { say, known } of ALL) read(say, known);
    const { user, system } = process.cpuUsage(from);
    if (n >= WARM) rounds.push((ALL.length * 1_000_000) / (user + system));
  }
  return rowOf("reader", `${ALL.length} messages and talk, one core`, "1/s", rounds);
}

export const reader: Bench = {
  name: "reader",
  rows: async () => [
    perSecond(),
    ...(await compare("reader", "mathjs: 36 psi", {
      "33 psi front 36 rear": () => read("33 psi front 36 rear", THREE),
      "36 psi rear on Heron": () => read("36 psi rear on Heron", THREE),
      "mathjs: 36 psi": () => mathUnit("36 psi"),
      "js-quantities: 36 psi": () => Qty("36 psi"),
    })),
    ...(await compare(
      "reader, 2,000 characters",
      null,
      Object.fromEntries(SLOW_PIECES.map((piece) => [JSON.stringify(piece), () => read(piece.repeat(2000).slice(0, 2000), THREE)])),
    )),
  ],
};
