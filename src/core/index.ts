// The workshop as a library: pure functions of facts. Import from "tappet/core".

export { addDays, addMonths, daysBetween, isLocalDate, localDate, vagueDate } from "./calendar/arithmetic.ts";
export type { Instant, LocalDate, LocalTime, VagueDate, Zone } from "./calendar/dates.ts";
export { EQUIPMENT, type Equipment, type EquipmentRule, isFitted } from "./equipment.ts";
export { fold } from "./plan/fold.ts";
export { ACTIONS, CONDITIONS, type Plan, type PlanBase, type PlanEdit, type PlanItem, SYSTEMS } from "./plan/plan.ts";
export type { Conversion } from "./quantity/conversion.ts";
export { askConvert } from "./quantity/convert-question.ts";
export { type Dial, type DistanceUnit, dialOf, figureIn, type Ridden, riddenOf, type Stretch, stretchOf } from "./quantity/distance.ts";
export { type Exact, exactly } from "./quantity/exact.ts";

export type { NumberStyle } from "./quantity/number.ts";
export { type ParsedAmount, parseAmount, type UnitNames } from "./quantity/parse.ts";
export { convert, dimensionOf, UNITS, type UnitId } from "./quantity/units.ts";
export { doTheseFirst } from "./schedule/do-these-first.ts";
export type { Due, Facts, Job, Leg, Moment, Reason, Status } from "./schedule/facts.ts";
export { lookAgainAt } from "./schedule/look-again.ts";
export { firstMarks } from "./schedule/marks.ts";
export { dueList } from "./schedule/status.ts";
export { type Forecast, forecast } from "./usage/forecast.ts";
export { judgeReading } from "./usage/judge-reading.ts";
export { buildTrack, type Epoch, type OdometerReading, type Track } from "./usage/track.ts";
