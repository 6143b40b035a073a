// What a picture of what comes next shows of a bike: each item's likely day, else its odometer, within a year.

import { addMonths, type Grain } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import { worstFirst } from "../core/defect.ts";
import type { BikeId, ItemKey } from "../core/ids.ts";
import type { DistanceUnit, Ridden } from "../core/quantity/distance.ts";
import type { Due } from "../core/schedule/facts.ts";
import { type Falling, outlook, rangeOf } from "../core/schedule/outlook.ts";
import { type ChargeBy, chargeDay } from "./charge.ts";
import type { Ctx } from "./context.ts";
import { duesOf, type Garaged, itemsOf } from "./garage.ts";
import { daysFrom, type LaidUp, layUpsWithin } from "./picture-odometer.ts";

/** Items that fall due on the same day at the same odometer. */
export type NextRow = {
  readonly items: readonly { readonly item: ItemKey; readonly name: string }[];
  readonly status: Due["status"];
  /** The likely day with its 80 % range; null where nothing says. `to` is null, too, when it may not come for years. */
  readonly on: LocalDate | null;
  readonly from: LocalDate | null;
  readonly to: LocalDate | null;
  /** How coarsely the day is known, where it falls due by date. */
  readonly grain: Grain;
  /** Where it falls due by distance; null by date, and for what is due already. */
  readonly at: Ridden | null;
  /** Which of the two came first, of an item that has both; null of one that goes by the plan alone. */
  readonly by: "wear" | "plan" | null;
};

export type NextShown = {
  readonly bike: BikeId;
  readonly nickname: string;
  readonly unit: DistanceUnit;
  readonly offset: number;
  readonly today: LocalDate;
  readonly until: LocalDate;
  readonly now: Ridden | null;
  /** Soonest first. */
  readonly rows: readonly NextRow[];
  /** Items that fall due until then and found no room. */
  readonly more: number;
  /** Measured near their limit, of which neither plan nor wear comes round until then as far as is known. */
  readonly near: readonly string[];
  /** Items of which nothing is known. */
  readonly unknown: number;
  readonly likely: readonly { readonly on: LocalDate; readonly ridden: Ridden }[];
  readonly layUps: readonly LaidUp[];
  /** Of a bike that stands: by when to charge its battery; null where that is not asked for. */
  readonly charge: ChargeBy | null;
  /** What stands open and is not only watched, do not ride first, as typed; for the owner alone. */
  readonly found: readonly { readonly words: string; readonly grade: "do not ride" | null }[];
};

const MONTHS = 12;
/** Lanes that a phone shows without much scrolling. */
const MOST = 12;

/** Works out what is drawn; pure of the bike's facts. @param until the last day shown */
export function nextOf({ itemName }: Pick<Ctx, "itemName">, g: Garaged, until: LocalDate = addMonths(g.today, MONTHS)): NextShown {
  const { forecast, ridden: now } = g.at;
  const called = new Map(itemsOf(g).map((item) => [item.key, item.called]));
  const nameOf = (item: ItemKey): string => itemName(item, called.get(item) ?? null);
  const falling = outlook(g.facts, g.at, { on: until, ridden: forecast.riddenOn(until) }).filter(({ likely }) => likely);
  const known = new Set(falling.map(({ item }) => item));
  const dues = duesOf(g).filter((due) => !due.habit && !known.has(due.item));
  const rows = together([
    ...falling.map((each) => fallingRow(g, each, nameOf)),
    ...(forecast.basis.from === "nothing" ? dues.flatMap((due) => byDistance(due, nameOf)) : []),
  ]);
  const drawn = new Set(rows.flatMap(({ items }) => items.map(({ item }) => item)));
  return {
    bike: g.bike.id,
    nickname: g.bike.nickname,
    unit: g.unit,
    offset: g.track.epochs.at(-1)?.offset ?? 0,
    today: g.today,
    until,
    now,
    rows: rows.slice(0, MOST),
    more: rows.slice(MOST).reduce((sum, row) => sum + row.items.length, 0),
    near: dues.filter((due) => isNear(due) && !drawn.has(due.item)).map((due) => nameOf(due.item)),
    unknown: dues.filter((due) => due.status === "no record").length,
    likely: daysFrom(g.today, until).flatMap((on) => {
      const then = forecast.riddenOn(on);
      return then === null ? [] : [{ on, ridden: then.likely }];
    }),
    layUps: layUpsWithin(g, g.today, until),
    charge: chargeDay(g, g.series),
    found: g.defects.toSorted(worstFirst).flatMap(({ words, grade }) => (grade === "watch" ? [] : [{ words, grade }])),
  };
}

function fallingRow(g: Garaged, falling: Falling, nameOf: (item: ItemKey) => string): NextRow {
  const { item, now, on, at, by } = falling;
  const pressing = now.status === "due" || now.status === "overdue";
  const range = rangeOf(falling, g.at);
  const leg = now.legs.find((each) => each.by === "date" && each.dueOn === on);
  return {
    items: [{ item, name: nameOf(item) }],
    status: now.status,
    on,
    from: pressing || range === null ? on : later(range.from, g.today),
    to: pressing || range === null ? on : range.to,
    grain: leg?.by === "date" ? leg.grain : "day",
    at: pressing ? null : at,
    by: now.legs.some((each) => each.by === "wear") ? by : null,
  };
}

const isNear = ({ governs, legs }: Due): boolean => {
  const leg = governs === null ? undefined : legs[governs];
  return leg?.by === "verdict" && leg.state === "soon";
};

/** Rows that stand at the same place, equally near, become one; the order stays. */
function together(rows: readonly NextRow[]): readonly NextRow[] {
  const groups = new Map<string, NextRow>();
  for (const row of rows) {
    const place = [row.status === "no record" ? "good" : row.status, row.on, row.from, row.to, row.grain, row.at, row.by].join();
    const group = groups.get(place);
    groups.set(place, group === undefined ? row : { ...group, items: [...group.items, ...row.items] });
  }
  return [...groups.values()];
}

/** Without a forecast: where an item falls due by distance, by plan or by wear, as far as that is known. */
function byDistance(due: Due, nameOf: (item: ItemKey) => string): readonly NextRow[] {
  if (due.status === "no record") return [];
  const legs = due.legs.flatMap((leg) => ((leg.by === "distance" || leg.by === "wear") && leg.toGo !== null && leg.state !== "cannot tell" ? [leg] : []));
  const [first, ...rest] = legs;
  if (first === undefined) return [];
  const leg = rest.reduce((a, b) => (b.dueAt < a.dueAt ? b : a), first);
  const by = leg.by === "wear" ? "wear" : due.legs.some((each) => each.by === "wear") ? "plan" : null;
  return [{ items: [{ item: due.item, name: nameOf(due.item) }], status: due.status, on: null, from: null, to: null, grain: "day", at: leg.dueAt, by }];
}

const later = (a: LocalDate, b: LocalDate): LocalDate => (a > b ? a : b);
