// A list from its sections, in the order in which they are walked.

import type { Checklist, ChecklistName } from "../../core/check/checklist.ts";
import { POINTS, type PointKey } from "./points.ts";
import { CHECK_PRACTICE, checklistOf } from "./row.ts";

export type SectionKey =
  | "from the plan"
  | "before the key"
  | "battery"
  | "tyres and wheels"
  | "brakes"
  | "at the bars"
  | "lights"
  | "levels"
  | "chain, belt or shaft"
  | "engine running"
  | "wheels off the ground"
  | "the first ride"
  | "clean and dry"
  | "fuel and oil"
  | "while it cools"
  | "once it is cold"
  | "closed up"
  | "from a step back"
  | "springs and drive"
  | "key on"
  | "load and papers"
  | "papers first"
  | "cold, on its stand"
  | "on the road"
  | "you first"
  | "before it is started"
  | "steering"
  | "brakes and controls"
  | "wheels"
  | "frame and lights"
  | "on the move";

/** @throws ZodError on a slip in the data */
export const listed = (name: ChecklistName, sections: Readonly<Partial<Record<SectionKey, readonly PointKey[]>>>, source: string = CHECK_PRACTICE): Checklist =>
  checklistOf({ name, sections: Object.entries(sections).map(([key, points]) => ({ key, points })), source }, POINTS);
