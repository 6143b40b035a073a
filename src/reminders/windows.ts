// When a member's reminders may come: their weekday and time of day in their zone, never in quiet hours.

import { isQuiet, type ReminderWishes } from "../core/bike.ts";
import { addDays, weekdayOf } from "../core/calendar/arithmetic.ts";
import type { Instant, LocalDate, LocalTime, Zone } from "../core/calendar/dates.ts";
import { instantOf, localDateAt, localTimeAt } from "../core/calendar/zones.ts";

/** The first moment at or after `after` that the wishes name; moved to the end of quiet hours when it lies in them. */
export const nextWindow = (wishes: ReminderWishes, zone: Zone, after: Instant): Instant =>
  nextOn(wishes, zone, after, (day) => weekdayOf(day) === wishes.weekday);

/** The same on any day of the week: for what cannot wait. */
export const nextHour = (wishes: ReminderWishes, zone: Zone, after: Instant): Instant => nextOn(wishes, zone, after, () => true);

function nextOn(wishes: ReminderWishes, zone: Zone, after: Instant, isDay: (day: LocalDate) => boolean): Instant {
  // A window of the day before may be moved past midnight by quiet hours, so the search begins there.
  let day = addDays(localDateAt(after, zone), -1);
  for (let n = 0; n < 9; n++, day = addDays(day, 1)) {
    if (!isDay(day)) continue;
    const at = outOfQuiet(wishes, zone, day, wishes.time as LocalTime);
    if (at >= after) return at;
  }
  return outOfQuiet(wishes, zone, day, wishes.time as LocalTime);
}

/** Now when it is not quiet, else the end of the quiet hours. */
export const notQuiet = (wishes: ReminderWishes, zone: Zone, now: Instant): Instant =>
  isQuiet(wishes.quiet, localTimeAt(now, zone)) ? outOfQuiet(wishes, zone, localDateAt(now, zone), localTimeAt(now, zone)) : now;

function outOfQuiet(wishes: ReminderWishes, zone: Zone, day: LocalDate, time: LocalTime): Instant {
  if (!isQuiet(wishes.quiet, time)) return instantOf(day, time, zone);
  const ends = wishes.quiet.to as LocalTime;
  return instantOf(ends <= time ? addDays(day, 1) : day, ends, zone);
}
