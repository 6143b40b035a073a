import { describe, expect, test } from "vitest";
import { askConvert } from "../../../src/core/quantity/convert-question.ts";
import { ENGLISH_UNIT_NAMES as NAMES } from "../../../src/words/en/unit-names.ts";

const ask = (text: string, to: string | null = null) => askConvert(text, to, NAMES, { decimal: ".", group: "," });
const answers = (text: string, to: string | null = null) => {
  const asked = ask(text, to);
  return asked.is === "converted" ? asked.answers.map((a) => (a.from === a.to ? `${a.from} ${a.unit}` : `${a.from}-${a.to} ${a.unit}`)) : asked.why;
};

describe("questions about units", () => {
  test.each<[string, string | null, string[] | string]>([
    // 60 in-lb is 6.779 N·m and 80 in-lb is 9.039: rounded inward to the tenth that one inch-pound supports.
    ["60-80 in-lb in Nm?", null, ["6.8-9 N·m"]],
    ["what's 7/16 in metric", null, ["11.11 mm"]],
    ["2.5 bar psi", null, ["36 psi"]],
    ["36 psi", null, ["2.48 bar", "248 kPa"]],
    ["89 in-lb", "Nm", ["10.1 N·m"]],
    ["10 ± 1 Nm", "in-lb", ["80-97 in-lb"]],
    ["98 F", null, ["36.7 °C"]],
    ["3/32 in", null, ["2.38 mm"]],
    ["14,820 mi", null, ["23850 km"]],
    ["40 mpg us", null, ["5.9 L/100 km"]],
    ["1/2", "mm", ["12.7 mm"]],
    ["2 imp gal", "L", ["9 L"]],
    ["-300 C", null, "below absolute zero"],
    ["5 lb", "Nm", "other dimension"],
    ["14.820 km", "mi", "ambiguous number"],
    ["2 gal", "L", "unknown unit"],
    ["lots of torque", null, "not a quantity"],
    ["12", "mm", "unknown unit"],
    ["7 furlongs", "mm", "unknown unit"],
    ["0 mpg us", "L/100 km", "out of range"],
  ])("%s (to %s)", (text, to, expected) => {
    expect(answers(text, to)).toEqual(expected);
  });

  test("the exact value is there beside the rounded one", () => {
    const asked = ask("80 ft-lb", "Nm");
    expect(asked.is === "converted" && asked.answers[0]?.exact[0]).toBeCloseTo(108.465435867, 9);
  });
  test("a unit that can be two is answered with both names", () => {
    expect(ask("2 gal", "L")).toMatchObject({ candidates: ["US gal", "imp gal"] });
  });
});
