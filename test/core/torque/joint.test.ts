// Which joints are estimated: a short list, and no way round it.

import { describe, expect, test } from "vitest";
import { readJoint } from "../../../src/core/torque/joint.ts";
import { JOINTS } from "../../../src/trade/joints.ts";

const read = (typed: string) => readJoint(typed, JOINTS);
const kindOf = (typed: string): string | null => {
  const joint = read(typed);
  return joint.is === "refused" ? joint.kind : "harmless";
};

describe("every name in the tables is read as what it stands for, in one word, in the plural and beside other words", () => {
  test.each(Object.entries(JOINTS.harmless))("%s", (_, names) => {
    for (const name of names)
      for (const typed of [name, name.toUpperCase(), `${name}s`, name.replaceAll(" ", "-"), name.replaceAll(" ", ""), `the rear ${name} bolts, M8`])
        expect(read(typed), typed).toEqual({ is: "harmless" });
  });
  test.each(Object.entries(JOINTS.dangerous))("%s", (kind, { words, within }) => {
    for (const name of [...words, ...within])
      for (const typed of [name, name.endsWith("s") ? name : `${name}s`, name.replaceAll(" ", "-"), name.replaceAll(" ", ""), `the rear ${name}, on the left`])
        expect(kindOf(typed), typed).toBe(kind);
    for (const part of within) for (const typed of [`front${part}`, `${part}nut`]) expect(kindOf(typed), typed).not.toBe("harmless");
  });
});

// Common practice: nobody guesses at these; the kind is what is said for the reason.
test.each([
  ["clip-ons", "handlebars and controls"],
  ["top bridge", "steering and fork"],
  ["headstock nut", "steering and fork"],
  ["rear sets", "footrests and stands"],
  ["floorboard", "footrests and stands"],
  ["torque arm", "brakes and brake discs"],
  ["reaction arm", "brakes and brake discs"],
  ["monoshock", "suspension and pivots"],
  ["trailing arm", "suspension and pivots"],
  ["pivot bolt", "suspension and pivots"],
  ["driveshaft", "sprockets and final drive"],
  ["engine mounting bolt", "frame and engine mounts"],
  ["rocker arm", "the engine, clutch and gearbox"],
  ["exhaust header nuts", "exhausts, whose studs shear and strip"],
  ["exhaust clamp", "exhausts, whose studs shear and strip"],
  ["oil pan bolt", "drain plugs and covers, which people strip"],
  ["frontaxle", "axles and wheels"],
  ["sprocketnut", "sprockets and final drive"],
  ["brakecaliper", "brakes and brake discs"],
  ["rear axel", "axles and wheels"],
  ["calipper", "brakes and brake discs"],
  ["sproket", "sprockets and final drive"],
  ["spindel", "axles and wheels"],
  ["clutch lever", "handlebars and controls"],
  ["cam sprocket", "the engine, clutch and gearbox"],
  ["mirror stem", "mirrors"],
  ["seat bracket", "seats and grab rails"],
  ["workshop stand", "footrests and stands"],
  ["front mudguard", "front mudguards, which stop the wheel when they come off"],
  // Said beside something harmless, the dangerous one counts.
  ["rack on the fork clamp", "steering and fork"],
  ["rack bolt to subframe", "frame and engine mounts"],
  ["crash bar on the axle", "axles and wheels"],
  ["crash bar to engine mount", "frame and engine mounts"],
  ["chain guard and chain adjuster", "sprockets and final drive"],
])("%s: refused for %s", (typed, kind) => {
  expect(kindOf(typed)).toBe(kind);
});

test.each([
  "bolt",
  "?",
  "",
  "   ",
  "bracket",
  "M8",
  "the bolt on the left",
  "gizmo",
  "rack and gizmo",
  "crack",
  "track",
  "plate",
  "front left mudguard",
  "mudguard, front",
  "mudgaurd",
])("%j is not known to be harmless, and no reason is made up", (typed) => {
  expect(read(typed)).toEqual({ is: "refused", kind: null });
});

test.each([
  "crash bar",
  "crash bars left",
  "chain guard",
  "sump guard",
  "brake light bracket",
  "front number plate",
  "headlight bracket",
  "M8 rack bolts",
  "pannier frame",
  "fairing stay",
])("%s is harmless, whatever its name holds", (typed) => {
  expect(read(typed)).toEqual({ is: "harmless" });
});

test("no name is in both tables, nor in two kinds", () => {
  const folded = [
    ...Object.values(JOINTS.harmless),
    ...Object.values(JOINTS.dangerous).map(({ words, within }) => [...new Set([...words, ...within].map(fold))]),
  ].flatMap((names) => [...new Set(names.map(fold))]);
  expect(folded.filter((name, n) => folded.indexOf(name) !== n)).toEqual([]);
  expect(JOINTS.beside.map(fold).filter((name) => folded.includes(name))).toEqual([]);
});
const fold = (name: string): string => name.replaceAll(" ", "");
