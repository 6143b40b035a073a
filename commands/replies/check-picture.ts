// A finished check as a picture, to keep or to show.

import type { Attached } from "../../src/chat/reply.ts";
import { drawCheck } from "../../src/picture/check-drawing.ts";
import type { CheckShown, PointShown } from "../../src/usecases/check-view.ts";
import type { Words } from "../../src/words/en/english.ts";
import { isLooked, measuredIn, pointsOf, stood, stopsOf } from "./check.ts";
import { drawn } from "./drawn.ts";

/** None of one that is open or was put away. @param shared where others see it: what stops the ride is counted there, and marked as looked at */
export async function drawResult(step: CheckShown, words: Words, shared: boolean): Promise<readonly Attached[]> {
  if (step.state !== "finished") return [];
  const { checks } = words;
  const { result } = step;
  const of = (keys: readonly string[]): PointShown[] => pointsOf(step).filter(({ key }) => keys.includes(key));
  const [stop, watch] = [of(shared ? [] : result.stop), of(result.watch)];
  const faults = [...stop, ...watch];
  const measured = measuredIn(step, shared);
  const { drawing, alt } = words.pictures.check({
    title: checks.title(step.called, step.list),
    on: step.finishedOn ?? step.begunOn,
    says: shared && stopsOf(step) > 0 ? checks.inGroup(stopsOf(step)) : checks.says(step.called, result, stood(step)),
    stops: stop.map(checks.fault),
    sections: step.sections.map(({ key, points }) => ({
      name: checks.sectionTitle(key),
      marks: points
        .filter(({ answer }) => answer !== "not fitted")
        .map((point) => (isLooked(point) ? (faults.includes(point) ? "needs work" : "looked") : "left")),
    })),
    told: [
      ...watch.map(checks.found),
      ...(measured.length === 0 ? [] : [checks.wasMeasured(measured.map(words.readings.reading))]),
      checks.looked(result, of(result.left).map(checks.name)),
    ],
    note: checks.noCertificate(),
  });
  return [await drawn("check", drawCheck(drawing), alt, words)];
}
