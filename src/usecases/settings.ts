// A member's and a group's choices: units, zone, when reminders come.

import type { Group, Member, ReminderWishes } from "../core/bike.ts";
import type { Zone } from "../core/calendar/dates.ts";
import { isZone } from "../core/calendar/zones.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { UnitId } from "../core/quantity/units.ts";
import type { Ctx } from "./context.ts";
import { done, type Result, refused } from "./refusals.ts";

export type RemindChange = {
  readonly by?: ReminderWishes["by"];
  /** 1 Monday to 7 Sunday. */
  readonly weekday?: number;
  readonly time?: string;
  readonly quietFrom?: string;
  readonly quietTo?: string;
  readonly zone?: string;
  readonly distance?: DistanceUnit;
  readonly pressure?: UnitId;
  readonly depth?: UnitId;
};
export type MemberShown = {
  readonly zone: Zone;
  readonly ownZone: boolean;
  readonly reminders: ReminderWishes;
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  readonly depth: UnitId | null;
  readonly changed: boolean;
};

/** Changes when and where the member's reminders come and how they see figures; with nothing given, shows them. */
export async function remindMe(ctx: Ctx, input: RemindChange): Promise<Result<MemberShown>> {
  const { self } = ctx.who;
  for (const time of [input.time, input.quietFrom, input.quietTo])
    if (time !== undefined && clockTime(time) === null) return refused({ why: "not a time", typed: time });
  if (input.zone !== undefined && !isZone(input.zone)) return refused({ why: "not a zone", typed: input.zone });
  const changed = Object.values(input).some((given) => given !== undefined);
  const next: Member = {
    ...self,
    zone: (input.zone as Zone | undefined) ?? self.zone,
    distance: input.distance ?? self.distance,
    pressure: input.pressure ?? self.pressure,
    depth: input.depth ?? self.depth,
    reminders: {
      by: input.by ?? self.reminders.by,
      weekday: input.weekday ?? self.reminders.weekday,
      time: clockTime(input.time) ?? self.reminders.time,
      quiet: { from: clockTime(input.quietFrom) ?? self.reminders.quiet.from, to: clockTime(input.quietTo) ?? self.reminders.quiet.to },
    },
  };
  const show = (): Result<MemberShown> =>
    done({
      zone: next.zone ?? ctx.who.zone,
      ownZone: next.zone !== null,
      reminders: next.reminders,
      distance: next.distance ?? ctx.who.distance,
      pressure: next.pressure ?? ctx.who.pressure,
      depth: next.depth,
      changed,
    });
  if (!changed) return show();
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    await q.members.save(next);
    await q.bikes.touchedOf({ owner: self.id }, ctx.now);
    return show();
  });
  return acted.first ? acted.value : refused({ why: "already done" });
}

/** `9:00`, `09.00` or `21h30` as `HH:MM`; null when it is no time of day. */
export function clockTime(typed: string | undefined): string | null {
  const found = /^(\d{1,2})[:.h](\d{2})$/.exec(typed?.trim() ?? "");
  if (found === null) return null;
  const hour = Number(found[1]);
  const minute = Number(found[2]);
  return hour > 23 || minute > 59 ? null : `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}

export type GroupChange = { readonly zone?: string; readonly distance?: DistanceUnit; readonly pressure?: UnitId; readonly reads?: boolean };
export type GroupShown = {
  readonly zone: Zone;
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  readonly reads: boolean;
  readonly changed: boolean;
};

/** Shows the group's settings, and changes them for those who may manage the server. */
export async function setGroup(ctx: Ctx, input: GroupChange): Promise<Result<GroupShown>> {
  const { group, home, admin } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  const changed = Object.values(input).some((given) => given !== undefined);
  if (changed && !admin) return refused({ why: "admins only" });
  if (input.zone !== undefined && !isZone(input.zone)) return refused({ why: "not a zone", typed: input.zone });
  const before: Group = home ?? { id: group, zone: "UTC" as Zone, language: "en", distance: null, pressure: null, reads: true };
  const next: Group = {
    ...before,
    zone: (input.zone as Zone | undefined) ?? before.zone,
    distance: input.distance ?? before.distance,
    pressure: input.pressure ?? before.pressure,
    reads: input.reads ?? before.reads,
  };
  const { zone, distance, pressure, reads } = next;
  if (!changed) return done({ zone, distance, pressure, reads, changed });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    await q.members.saveGroup(next);
    await q.bikes.touchedOf({ homeGroup: group }, ctx.now);
    return done({ zone, distance, pressure, reads, changed });
  });
  return acted.first ? acted.value : refused({ why: "already done" });
}
