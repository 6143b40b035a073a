// Reading, converting and printing quantities, beside general-purpose libraries from the registry. Each is shown to give the same answer before it is timed.

import Qty from "js-quantities";
import * as math from "mathjs";
import { parseAmount } from "../../src/core/quantity/parse.ts";
import { printFigure } from "../../src/core/quantity/print.ts";
import { convert } from "../../src/core/quantity/units.ts";
import { ENGLISH_UNIT_NAMES } from "../../src/words/en/unit-names.ts";
import { type Bench, compare } from "./harness.ts";

const STYLE = { decimal: ".", group: "," } as const;

const converting = {
  tappet: () => {
    const converted = convert(36, "psi", "bar");
    return converted.is === "converted" ? converted.value : Number.NaN;
  },
  mathjs: () => math.unit(36, "psi").toNumber("bar"),
  "js-quantities": () => Qty(36, "psi").to("bar").scalar,
};
const reading = {
  tappet: () => {
    const read = parseAmount("36.5 psi", ENGLISH_UNIT_NAMES, STYLE);
    return read.is === "amount" && read.unit === "psi" ? read.from : Number.NaN;
  },
  mathjs: () => math.unit("36.5 psi").toNumber("psi"),
};
const printing = {
  tappet: () => printFigure(14_820.25, 1, "en-GB"),
  "Number.toLocaleString": () => (14_820.25).toLocaleString("en-GB", { maximumFractionDigits: 1 }),
};

export const quantities: Bench = {
  name: "quantities",
  async rows() {
    agree("36 psi in bar", converting);
    agree("read '36.5 psi'", reading);
    agree("print 14,820.3", printing);
    return [
      ...(await compare("36 psi in bar", "mathjs", converting)),
      ...(await compare("read '36.5 psi'", "mathjs", reading)),
      ...(await compare("print 14,820.3", "Number.toLocaleString", printing)),
    ];
  },
};

/** Libraries round their factors differently from about the sixth figure on. @throws Error when a subject answers something else */
function agree(bench: string, subjects: Readonly<Record<string, () => number | string>>): void {
  const answers = new Set(Object.values(subjects).map((work) => (typeof work() === "number" ? Number(work()).toPrecision(5) : work())));
  if (answers.size !== 1) throw new Error(`${bench}: ${[...answers].join(" is not ")}`);
}
