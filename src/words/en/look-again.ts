// When to look again at what was read near its limit, in English.

import type { LocalDate } from "../../core/calendar/dates.ts";
import type { DistanceUnit } from "../../core/quantity/distance.ts";
import type { Leg } from "../../core/schedule/facts.ts";
import type { Printer } from "../printer.ts";
import { pointAbout } from "./coarse.ts";
import { dialPoint } from "./dial-point.ts";

type VerdictLeg = Extract<Leg, { by: "verdict" }>;

/** "; look again at 14,720 mi or on 2 January, whichever comes first"; nothing where nothing says how soon. */
export function lookAgainAt(
  p: Printer,
  { again }: Pick<VerdictLeg, "again">,
  b: { readonly unit: DistanceUnit; readonly offset: number; readonly today: LocalDate },
): string {
  if (again === null) return "";
  const point = again.at === null ? null : again.by === "wear" ? pointAbout(p, again.at, b) : dialPoint(p, again.at, b);
  const on = again.on === null ? null : p.date(again.on, b.today);
  const due = [point === null ? null : `at ${point}`, on === null ? null : `on ${on}`].filter((each) => each !== null).join(" or ");
  const why = again.by === "wear" ? ", by its wear" : again.by === "plan" ? ", half of what the plan asks" : "";
  if (again.come) return `; look again now, due ${due}${why}`;
  return `; look again ${due}${point !== null && on !== null ? ", whichever comes first" : ""}${why}`;
}

/** Does a leg of the plan come round no sooner than what governs is looked at again, or than now where that calls for work? It is no life left, then. */
export function isNoLifeLeft(leg: Leg, governs: Leg): boolean {
  if (governs.by !== "verdict") return false;
  const { again } = governs;
  if (again === null) return governs.state === "due" && isAhead(leg);
  if (leg.by === "distance") return isAhead(leg) && again.at !== null && leg.dueAt >= again.at;
  return leg.by === "date" && isAhead(leg) && again.on !== null && leg.dueOn >= again.on;
}

/** Is it still some way or some days off? */
function isAhead(leg: Leg): boolean {
  switch (leg.by) {
    case "date":
      return leg.daysToGo > 0;
    case "distance":
    case "hours":
    case "wear":
      return leg.toGo === null || leg.toGo > 0;
    default:
      return false;
  }
}
