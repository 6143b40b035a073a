// What falls due by date while a bike stands: to be done at lay-up, or in spring before the first ride; and when its battery wants a charge.

import { addMonths, localDate, monthOf, yearOf } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { outlook } from "../core/schedule/outlook.ts";
import { type ChargeBy, chargeDay } from "./charge.ts";
import type { Ctx } from "./context.ts";
import { type Garaged, itemsOf } from "./garage.ts";

export type Standing = { readonly until: LocalDate; readonly items: readonly string[]; readonly charge: ChargeBy | null };

/**
 * The items that fall due until spring begins, by name; null when nothing does. Of a bike that is not laid up only a battery whose volts at rest fall.
 */
export function whileItStands({ itemName, who }: Pick<Ctx, "itemName" | "who">, g: Garaged): Standing | null {
  const until = nextSpring(g.today, who.south);
  if (g.bike.state !== "laid up") {
    const falling = chargeDay(g, g.series);
    return falling === null ? null : { until, items: [], charge: falling };
  }
  const called = new Map(itemsOf(g).map((item) => [item.key, item.called]));
  const charge = chargeDay(g, g.series);
  const items = outlook(g.facts, g.at, { on: until, ridden: null }).flatMap(({ item, on }) =>
    // The day by which to charge it says more, and sooner.
    on !== null && on > g.today && !(charge !== null && item === BATTERY) ? [itemName(item, called.get(item) ?? null)] : [],
  );
  return items.length === 0 && charge === null ? null : { until, items, charge };
}

const BATTERY: string = "battery.test";

/** The next first of March, of September in the south. */
function nextSpring(today: LocalDate, south: boolean): LocalDate {
  const begins = localDate(`${yearOf(today)}-${south ? "09" : "03"}-01`);
  return monthOf(today) < monthOf(begins) ? begins : addMonths(begins, 12);
}
