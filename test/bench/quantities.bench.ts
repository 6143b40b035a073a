// Reading, converting and printing quantities, beside general-purpose libraries from the registry. Each is shown to give the same answer before it is timed.

import Qty from "js-quantities";
import * as math from "mathjs";
import { askConvert } from "../../src/core/quantity/convert-question.ts";
import { parseAmount } from "../../src/core/quantity/parse.ts";
import { printFigure } from "../../src/core/quantity/print.ts";
import { convert, type UnitId } from "../../src/core/quantity/units.ts";
import { convertWords } from "../../src/words/en/convert.ts";
import { ENGLISH_UNIT_NAMES } from "../../src/words/en/unit-names.ts";
import { ENGLISH_VOCABULARY } from "../../src/words/en/vocabulary.ts";
import { makePrinter } from "../../src/words/printer.ts";
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
const words = convertWords(makePrinter({ locale: "en-GB", distance: null }), "en-GB");
/** The same work for each: a figure with its unit read from text, converted, and printed with its unit. */
const answering = (typed: string, into: { readonly tappet: UnitId; readonly mathjs: string; readonly jsq: string }, places: number) => ({
  tappet: () => {
    const read = parseAmount(typed, ENGLISH_UNIT_NAMES, STYLE);
    if (read.is !== "amount" || read.unit === null) return read.is;
    const converted = convert(read.from, read.unit, into.tappet);
    return converted.is === "converted" ? `${printFigure(converted.value, places, "en-GB", true)} ${into.tappet}` : converted.why;
  },
  mathjs: () => `${math.format(math.unit(typed).toNumber(into.mathjs), { notation: "fixed", precision: places })} ${into.mathjs}`,
  "js-quantities": () => `${Qty(typed).to(into.jsq).scalar.toFixed(places)} ${into.jsq}`,
});
/** A question as a rider asks it, to the line that is shown: more than the libraries can do, so beside none. */
const asking = (question: string) => () => {
  const asked = askConvert(question, null, ENGLISH_VOCABULARY, STYLE);
  return asked.is === "converted" ? words.answer(asked) : asked.why;
};
const printing = {
  tappet: () => printFigure(14_820.25, 1, "en-GB"),
  "Number.toLocaleString": () => (14_820.25).toLocaleString("en-GB", { maximumFractionDigits: 1 }),
};

const pressure = answering("36 psi", { tappet: "bar", mathjs: "bar", jsq: "bar" }, 2);
const distance = answering("148 mi", { tappet: "km", mathjs: "km", jsq: "km" }, 0);

export const quantities: Bench = {
  name: "quantities",
  async rows() {
    agree("36 psi in bar", converting);
    agree("read '36.5 psi'", reading);
    agree("print 14,820.3", printing);
    agree("36 psi in bar", pressure);
    agree("148 mi in km", distance);
    return [
      ...(await compare("36 psi in bar", "mathjs", converting)),
      ...(await compare("read '36.5 psi'", "mathjs", reading)),
      ...(await compare("36 psi in bar: read, convert, print", "mathjs", pressure)),
      ...(await compare("148 mi in km: read, convert, print", "mathjs", distance)),
      ...(await compare("question to line", null, {
        "what's 36 psi in bar?": asking("what's 36 psi in bar?"),
        "60-80 in-lb in Nm?": asking("60-80 in-lb in Nm?"),
        "what's 7/16 in metric": asking("what's 7/16 in metric"),
      })),
      ...(await compare("print 14,820.3", "Number.toLocaleString", printing)),
    ];
  },
};

/** Libraries round their factors differently from about the sixth figure on. @throws Error when a subject answers something else */
function agree(bench: string, subjects: Readonly<Record<string, () => number | string>>): void {
  const answers = new Set(Object.values(subjects).map((work) => (typeof work() === "number" ? Number(work()).toPrecision(5) : work())));
  if (answers.size !== 1) throw new Error(`${bench}: ${[...answers].join(" is not ")}`);
}
