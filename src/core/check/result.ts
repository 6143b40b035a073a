// What a run of a checklist came to. It says what was looked at and found, and never more than that:
// while anything of brakes, tyres or steering has no answer, nothing good is said of the bike.

import type { FaultGrade, Vital } from "./checklist.ts";

export const ANSWERS = ["good", "needs work", "not fitted", "later"] as const;
export type CheckAnswer = (typeof ANSWERS)[number];

/** A point with what is known of it now. `answer` null: not looked at. `grade` of what needs work. */
export type Answered = { readonly key: string; readonly vital: Vital | null; readonly answer: CheckAnswer | null; readonly grade: FaultGrade | null };

export type CheckResult = {
  /** "no word": the list asks nothing of brakes, tyres and steering, so that nothing can be said about riding. */
  readonly says: "do not ride" | "cannot say" | "nothing stops the ride" | "no word";
  /** Points that the bike has. */
  readonly points: number;
  readonly looked: number;
  /** Keys of what has no answer, or was left for later. */
  readonly left: readonly string[];
  /** Of those, what must be looked at first. */
  readonly vitalLeft: readonly { readonly vital: Vital; readonly key: string }[];
  readonly stop: readonly string[];
  readonly watch: readonly string[];
};

/** @param open "do not ride" defects of the bike that stand from before: they weigh as much as what was found now */
export function resultOf(points: readonly Answered[], open: number): CheckResult {
  const has = points.filter(({ answer }) => answer !== "not fitted");
  const isLeft = ({ answer }: Answered): boolean => answer === null || answer === "later";
  const left = has.filter(isLeft);
  const failed = has.filter(({ answer }) => answer === "needs work");
  const stop = failed.filter(({ grade }) => grade !== "watch");
  const vitalLeft = left.flatMap(({ key, vital }) => (vital === null ? [] : [{ key, vital }]));
  return {
    says:
      stop.length + open > 0
        ? "do not ride"
        : vitalLeft.length > 0
          ? "cannot say"
          : has.some(({ vital }) => vital !== null)
            ? "nothing stops the ride"
            : "no word",
    points: has.length,
    looked: has.length - left.length,
    left: left.map(({ key }) => key),
    vitalLeft,
    stop: stop.map(({ key }) => key),
    watch: failed.filter(({ grade }) => grade === "watch").map(({ key }) => key),
  };
}

/** The next point without an answer after one, going round; what was left for later comes when nothing else is open. Null: all are answered. */
export function nextOpen(points: readonly Answered[], after: string | null): string | null {
  const at = points.findIndex(({ key }) => key === after);
  const round = [...points.slice(at + 1), ...points.slice(0, at + 1)];
  const open = round.find(({ answer }) => answer === null);
  return open?.key ?? round.find(({ answer, key }) => answer === "later" && key !== after)?.key ?? points.find(({ answer }) => answer === "later")?.key ?? null;
}
