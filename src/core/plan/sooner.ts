// An interval twice as often as it is.

import type { Columns, Interval, Repeat } from "./plan.ts";

/** The half of a printed distance, as a manual would round it; of months, the next whole one. */
const half = (whole: number | null, step: number): number | null => (whole === null ? null : Math.max(step, Math.floor(whole / 2 / step) * step));
const halfColumns = ({ miles, km }: Columns): Columns => ({ miles: half(miles, 50), km: half(km, 50) });
const halfInterval = ({ miles, km, months, hours }: Interval): Interval => ({
  ...halfColumns({ miles, km }),
  months: months === null ? null : Math.max(1, Math.ceil(months / 2)),
  hours: half(hours, 1),
});

/** The same trigger at half its stretch: half the interval, or every service where it was every second one. Null where it cannot come any sooner. */
export function twiceAsOften(repeat: Repeat): Repeat | null {
  switch (repeat.by) {
    case "interval":
      return { by: "interval", every: halfInterval(repeat.every) };
    case "nth mark":
      return repeat.nth > 1 ? { ...repeat, nth: Math.floor(repeat.nth / 2) } : { ...repeat, base: halfColumns(repeat.base) };
    case "nth time":
      return repeat.nth > 1 ? { ...repeat, nth: Math.floor(repeat.nth / 2) } : null;
    case "mark list":
      return repeat.thenEvery === null ? null : { ...repeat, thenEvery: halfInterval(repeat.thenEvery) };
  }
}
