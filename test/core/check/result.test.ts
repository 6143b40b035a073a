// What a run came to: never a good word while brakes, tyres or steering have no answer.

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FAULT_GRADES, VITAL } from "../../../src/core/check/checklist.ts";
import { ANSWERS, type Answered, nextOpen, resultOf } from "../../../src/core/check/result.ts";

const at = (key: string, answer: Answered["answer"], more: Partial<Answered> = {}): Answered => ({ key, vital: null, grade: null, answer, ...more });

describe("what is said of a bike", () => {
  test("nothing stops the ride when all that brakes, tyres and steering need was looked at, whatever else is left", () => {
    const result = resultOf([at("brake-feel", "good", { vital: "brakes" }), at("horn", null), at("mirrors", "later"), at("centre-stand", "not fitted")], 0);
    expect(result).toMatchObject({ says: "nothing stops the ride", points: 3, looked: 1, left: ["horn", "mirrors"], vitalLeft: [] });
  });
  test("a tyre left for later takes the good word away", () => {
    const result = resultOf([at("horn", "good"), at("tyre-condition", "later", { vital: "tyres" })], 0);
    expect(result).toMatchObject({ says: "cannot say", vitalLeft: [{ vital: "tyres", key: "tyre-condition" }] });
  });
  test("a fault not to be ridden on comes before everything else; a fault without a grade counts as one", () => {
    expect(resultOf([at("brake-feel", "needs work", { vital: "brakes" }), at("tyre-condition", null, { vital: "tyres" })], 0)).toMatchObject({
      says: "do not ride",
      stop: ["brake-feel"],
    });
  });
  test("so does a defect that stands from before", () => {
    expect(resultOf([at("brake-feel", "good", { vital: "brakes" })], 1).says).toBe("do not ride");
  });
  test("what is to be watched does not stop the ride", () => {
    expect(resultOf([at("brake-feel", "good", { vital: "brakes" }), at("mirrors", "needs work", { grade: "watch" })], 0)).toMatchObject({
      says: "nothing stops the ride",
      watch: ["mirrors"],
    });
  });
  test("a list that asks nothing of brakes, tyres and steering says nothing about riding", () => {
    expect(resultOf([at("cover", "good")], 0).says).toBe("no word");
  });
});

const answered = fc.record({
  key: fc.string({ minLength: 1 }),
  vital: fc.option(fc.constantFrom(...VITAL)),
  answer: fc.option(fc.constantFrom(...ANSWERS)),
  grade: fc.option(fc.constantFrom(...FAULT_GRADES)),
});
const runs = fc.uniqueArray(answered, { selector: ({ key }) => key });

describe("laws", () => {
  test("no good word while a vital point is open, and every point is looked at, left or not fitted", () => {
    fc.assert(
      fc.property(runs, fc.nat(2), (points, open) => {
        const result = resultOf(points, open);
        if (result.says === "nothing stops the ride") {
          expect(points.filter(({ vital, answer }) => vital !== null && (answer === null || answer === "later"))).toEqual([]);
          expect(open).toBe(0);
        }
        expect(result.looked + result.left.length + points.filter(({ answer }) => answer === "not fitted").length).toBe(points.length);
      }),
    );
  });
  test("walking on from any point comes by everything that is open, and ends when nothing is", () => {
    fc.assert(
      fc.property(runs, (points) => {
        const left = new Set(points.filter(({ answer }) => answer === null || answer === "later").map(({ key }) => key));
        let state = points;
        let at: string | null = null;
        for (let n = 0; n <= points.length; n++) {
          at = nextOpen(state, at);
          if (at === null) break;
          const here = at;
          left.delete(here);
          state = state.map((each) => (each.key === here ? { ...each, answer: "good" } : each));
        }
        expect([...left]).toEqual([]);
        expect(nextOpen(state, at)).toBeNull();
      }),
    );
  });
});
