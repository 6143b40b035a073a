// What can be pressed about what is told beside a bike's plan. The same buttons stand on a reminder and where it is shown again.

import { actionId } from "./action-names.ts";
import type { Action, Form } from "./reply.ts";

/** From words/, for one bike. */
export type AsideLabels = {
  readonly out: string;
  readonly away: string;
  readonly laidUp: string;
  readonly riding: string;
  readonly check: string;
  readonly due: string;
  readonly mended: string;
  readonly mendedForm: Form;
  readonly grade: string;
};
export type PressableAside =
  | { readonly want: "out of storage" | "lay-up" | "silent" | "trip ahead" | "date" | "reading" | "charge" | "trip back" }
  | { readonly want: "defect"; readonly id: string; readonly rev: number; readonly graded: boolean };

/** The list that is asked for begins with a press; a defect is mended, or graded, on the spot. */
export function asideActions(bike: string, aside: PressableAside, labels: AsideLabels): readonly Action[] {
  switch (aside.want) {
    case "out of storage":
      return [{ id: actionId("check-begin", `${bike}.out of storage`), label: labels.out, kind: "press" }];
    case "lay-up":
      return [{ id: actionId("check-begin", `${bike}.lay-up`), label: labels.away, kind: "press" }];
    case "silent":
      return [
        { id: actionId("check-state", `${bike}.laid up`), label: labels.laidUp, kind: "press" },
        { id: actionId("check-riding", bike), label: labels.riding, kind: "press" },
      ];
    case "trip ahead":
      return [{ id: actionId("check-begin", `${bike}.pre-trip`), label: labels.check, kind: "press" }];
    case "date":
    case "reading":
    case "charge":
    case "trip back":
      return [];
    case "defect":
      return [
        aside.graded
          ? { id: actionId("defect-mended", aside.id, aside.rev), label: labels.mended, kind: "form", form: labels.mendedForm }
          : { id: actionId("defect-show", aside.id, aside.rev), label: labels.grade, kind: "press" },
        { id: actionId("show-due", bike), label: labels.due, kind: "press" },
      ];
  }
}

/** The same may be asked for by several lines: each button stands once. */
export const eachOnce = (actions: readonly Action[]): readonly Action[] => actions.filter(({ id }, n) => actions.findIndex((each) => each.id === id) === n);
