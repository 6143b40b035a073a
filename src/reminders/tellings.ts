// What there is to tell of one bike on its day, each by a name of its own, and the next day on which that can change by itself.
// The sweep notes it, and the moment of sending asks the same again: what is no longer so is not said.

import type { Group, Member } from "../core/bike.ts";
import { addDays } from "../core/calendar/arithmetic.ts";
import type { LocalDate } from "../core/calendar/dates.ts";
import type { ItemKey } from "../core/ids.ts";
import type { NoticeKind } from "../core/reminding.ts";
import { isWished } from "../core/reminding.ts";
import type { Due } from "../core/schedule/facts.ts";
import { nextEdge } from "../core/schedule/look-again.ts";
import type { PutOff } from "../store/notices.ts";
import type { Aside, Asides } from "../usecases/asides.ts";
import { duesOf, type Garaged, itemOf } from "../usecases/garage.ts";
import { AGAIN, kindRow } from "../usecases/notice-kinds.ts";
import { isPutOff } from "../usecases/put-off.ts";
import { noticeKey, stageOf } from "./keys.ts";

export type Owned = { readonly member: Member | null; readonly home: Group | null };

export type Telling = {
  /** The name without how often it was told: that of the first telling. */
  readonly key: string;
  readonly kind: NoticeKind;
  readonly item: ItemKey | null;
  readonly aside: Aside | null;
};
export type Tellings = { readonly now: readonly Telling[]; readonly next: LocalDate | null };

/** @param asides what stands beside its plan @param put what was put off */
export function tellingsOf(g: Garaged, { member, home }: Owned, put: readonly PutOff[], asides: Asides): Tellings {
  const dues = duesOf(g);
  const own = put.filter((each) => each.bike === g.bike.id);
  const items = dues.flatMap((due): Telling[] => {
    const stage = stageOf(due);
    const last = own.find((each) => each.item === due.item) ?? null;
    if (stage === null || (last !== null && isPutOff(last, due, g))) return [];
    const kind = stage !== "soon" && due.legs.some((leg) => leg.by === "recheck") ? "look again" : (`item ${stage}` as const);
    if (g.bike.state !== "riding" && !(kindRow(kind).standing === "ageing" && agesStanding(g, due))) return [];
    return [{ key: noticeKey(g.bike.id, due, stage, last === null ? null : last.until), kind, item: due.item, aside: null }];
  });
  const besides = asides.now.map(({ key, kind, aside }): Telling => ({ key, kind, item: null, aside }));
  const told = [...items, ...besides].filter(
    ({ kind }) => isWished(kindRow(kind).topic, member?.reminders.topics, home?.topics) && (kindRow(kind).standing !== "no" || g.bike.state === "riding"),
  );
  const days = [nextEdge(dues, g.facts, g.at), asides.next, ...own.map((each) => each.until)].filter((day) => day !== null && day > g.today) as LocalDate[];
  return { now: told, next: days.sort()[0] ?? null };
}

/** Due by the day alone, and of what counts on while the bike stands: fluids, belts, tyres, the battery. */
function agesStanding(g: Garaged, due: Due): boolean {
  return itemOf(g, due.item)?.parked === "counts" && due.because.why === "leg" && due.legs[due.because.leg]?.by === "date";
}

/** When something was told, by its name. */
export type ToldOn = { readonly key: string; readonly on: LocalDate };

/** The name of the first telling. */
export const firstOf = (key: string): string => key.split(AGAIN)[0] as string;

/**
 * The name under which it is told next: its own when it never was, else that of the next time, from its day on.
 * @param told what was told of this bike @returns null key: not to be told now; `from`: the day from which it is told again
 */
export function nextTelling(
  { key, kind }: Telling,
  told: readonly ToldOn[],
  today: LocalDate,
): { readonly key: string | null; readonly from: LocalDate | null } {
  const { again } = kindRow(kind);
  const before = told.filter((each) => firstOf(each.key) === key).sort((a, b) => (a.on < b.on ? -1 : 1));
  const last = before.at(-1);
  if (last === undefined || again.length === 0) return { key, from: null };
  const weeks = again[Math.min(before.length, again.length) - 1] as number;
  const from = addDays(last.on, 7 * weeks);
  return { key: today >= from ? `${key}${AGAIN}${before.length}` : null, from };
}
