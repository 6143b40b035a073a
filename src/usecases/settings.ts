// A member's and a group's choices: units, zone, when reminders come.

import { type Group, isQuiet, type Member, type ReminderWishes } from "../core/bike.ts";
import type { LocalDate, Zone } from "../core/calendar/dates.ts";
import { addDuration, isZone, localDateAt, zonesLike } from "../core/calendar/zones.ts";
import type { GroupId } from "../core/ids.ts";
import type { DistanceUnit } from "../core/quantity/distance.ts";
import type { UnitId } from "../core/quantity/units.ts";
import { offOf, type Topic, type Topics, USUAL_DIGEST, type WeekHour } from "../core/reminding.ts";
import { type SeasonWindow, windowOf } from "../core/season/season.ts";
import { readSeason } from "../message/read-season.ts";
import { USUAL_WISHES } from "../store/members.ts";
import type { Repos } from "../store/store.ts";
import { TREAD_LAW, type TreadLaw, type TreadLawPlace } from "../trade/tread-law.ts";
import { type Ctx, isSouth } from "./context.ts";
import type { DefectShown } from "./defect-shown.ts";
import { garage } from "./garage.ts";
import { shownOn } from "./log-set.ts";
import { done, onceHeard, type Result, refused } from "./refusals.ts";
import { judgedAnew } from "./square-verdicts.ts";

export type RemindChange = {
  readonly by?: ReminderWishes["by"];
  /** A matter no longer told of, and one that is told again. */
  readonly off?: Topic;
  readonly on?: Topic;
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
  /** Matters that are not told of, by the member's word or the group's. */
  readonly off: readonly Topic[];
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  readonly depth: UnitId | null;
  /** Reminders of the last month that did not arrive, or may not have. */
  readonly troubles: readonly Trouble[];
  readonly changed: boolean;
};
export type Trouble = { readonly on: LocalDate; readonly state: "failed" | "unconfirmed"; readonly why: string | null };

/** Changes when and where the member's reminders come and how they see figures; with nothing given, shows them. */
export async function remindMe(ctx: Ctx, input: RemindChange): Promise<Result<MemberShown>> {
  const { self } = ctx.who;
  for (const time of [input.time, input.quietFrom, input.quietTo])
    if (time !== undefined && clockTime(time) === null) return refused({ why: "not a time", typed: time });
  if (input.zone !== undefined && !isZone(input.zone)) return refused({ why: "not a zone", typed: input.zone, near: zonesLike(input.zone) });
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
      ...switched(self.reminders.topics, input),
      quiet: { from: clockTime(input.quietFrom) ?? self.reminders.quiet.from, to: clockTime(input.quietTo) ?? self.reminders.quiet.to },
    },
  };
  const zone = next.zone ?? ctx.who.zone;
  const show = async (q: Repos): Promise<Result<MemberShown>> =>
    done({
      zone,
      ownZone: next.zone !== null,
      reminders: next.reminders,
      off: offOf(next.reminders.topics, ctx.who.home?.topics),
      distance: next.distance ?? ctx.who.distance,
      pressure: next.pressure ?? ctx.who.pressure,
      depth: next.depth,
      troubles: (await q.notices.troubles(self.id, addDuration(ctx.now, TROUBLES_SINCE))).map((delivery) => ({
        on: localDateAt(delivery.notBefore, zone),
        state: delivery.state === "failed" ? "failed" : "unconfirmed",
        why: delivery.why,
      })),
      changed,
    });
  if (!changed) return ctx.store.read(show);
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    await q.members.save(next);
    await q.bikes.touchedOf({ owner: self.id }, ctx.now);
    return show(q);
  });
  return onceHeard(acted);
}

function switched(topics: Topics | undefined, { off, on }: { readonly off?: Topic; readonly on?: Topic }): { readonly topics?: Topics } {
  if (off === undefined && on === undefined) return topics === undefined ? {} : { topics };
  return { topics: { ...topics, ...(off === undefined ? {} : { [off]: false }), ...(on === undefined ? {} : { [on]: true }) } };
}

const TROUBLES_SINCE = "-P30D";

/** `9:00`, `09.00`, `21h30`, `9`, `9am` or `6:30 p.m.` as `HH:MM`; null when it is no time of day. Without am or pm the clock has 24 hours. */
function clockTime(typed: string | undefined): string | null {
  const found = /^(\d{1,2})(?:[:.h](\d{2}))?\s*(?:(a|p)\.?m\.?|h|uhr)?$/iu.exec(typed?.trim() ?? "");
  if (found === null) return null;
  const half = found[3]?.toLowerCase();
  const said = Number(found[1]);
  if (half !== undefined && (said < 1 || said > 12)) return null;
  const hour = half === undefined ? said : (said % 12) + (half === "p" ? 12 : 0);
  const minute = Number(found[2] ?? 0);
  return hour > 23 || minute > 59 ? null : `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
}

/** Places whose tread law is known. */
export const TREAD_PLACES = Object.keys(TREAD_LAW) as readonly TreadLawPlace[];

export type GroupChange = {
  /** A matter that members are told of only if they say so themselves, and one that is told again. */
  readonly off?: Topic;
  readonly on?: Topic;
  readonly zone?: string;
  readonly distance?: DistanceUnit;
  readonly pressure?: UnitId;
  readonly reads?: boolean;
  /** The channel spoken in becomes the reading channel, or there is none. */
  readonly reading?: "here" | "nowhere";
  readonly place?: TreadLawPlace;
  readonly season?: "north" | "south";
  /** The riding season as typed. */
  readonly riding?: string;
  /** The weekday of the digest (1 Monday to 7 Sunday), or none; its time of day as typed. */
  readonly digest?: number | "off";
  readonly digestTime?: string;
};
export type GroupShown = {
  readonly zone: Zone;
  readonly distance: DistanceUnit | null;
  readonly pressure: UnitId | null;
  readonly reads: boolean;
  readonly reading: "here" | "elsewhere" | "nowhere";
  readonly hearsChannels: boolean;
  readonly place: TreadLawPlace | null;
  readonly law: TreadLaw | null;
  readonly south: boolean;
  /** Null: nothing said, or none. */
  readonly riding: SeasonWindow | null;
  readonly off: readonly Topic[];
  readonly digest: WeekHour | "off";
  /** Has it a reading channel, whichever it is? */
  readonly hasChannel: boolean;
  readonly changed: boolean;
  /** After a change of place: the tread of the group's bikes looked at again. */
  readonly looked?: TreadLooked;
};
/** Of the speaker's own bikes what is noted and what stands no longer; of the others' only how many it is so of, since defects are shown to their owners alone. */
export type TreadLooked = { readonly noted: readonly DefectShown[]; readonly lapsed: readonly DefectShown[]; readonly others: number };

/** Shows the group's settings, and changes them for those who may manage the server. */
export async function setGroup(ctx: Ctx, input: GroupChange): Promise<Result<GroupShown>> {
  const { group, home, admin } = ctx.who;
  if (group === null) return refused({ why: "not in a group" });
  const changed = Object.values(input).some((given) => given !== undefined);
  if (changed && !admin) return refused({ why: "admins only" });
  if (input.zone !== undefined && !isZone(input.zone)) return refused({ why: "not a zone", typed: input.zone, near: zonesLike(input.zone) });
  if (!changed) return done(groupShown(ctx, home ?? newGroup(group), false));
  return changeGroup(ctx, group, input);
}

/** Changes a group from elsewhere, as the set-up message in a direct message does; the platform is asked whether the speaker may. */
export async function setUpGroup(ctx: Ctx, group: GroupId, input: GroupChange): Promise<Result<GroupShown>> {
  if (!(await ctx.mayManage(group))) return refused({ why: "admins only" });
  if (input.zone !== undefined && !isZone(input.zone)) return refused({ why: "not a zone", typed: input.zone, near: zonesLike(input.zone) });
  return changeGroup(ctx, group, input);
}

async function changeGroup(ctx: Ctx, group: GroupId, input: GroupChange): Promise<Result<GroupShown>> {
  const time = clockTime(input.digestTime);
  if (input.digestTime !== undefined && time === null) return refused({ why: "not a time", typed: input.digestTime });
  if (input.digestTime !== undefined && time !== null && isQuiet(USUAL_WISHES.quiet, time))
    return refused({ why: "quiet time", typed: input.digestTime, ...USUAL_WISHES.quiet });
  const riding = input.riding === undefined ? null : readSeason(input.riding, ctx.vocabulary);
  if (input.riding !== undefined && riding === null) return refused({ why: "check", because: "not a season", typed: input.riding });
  const acted = await ctx.store.act(ctx.event, ctx.now, async (q) => {
    const before = (await q.members.groupsByIds([group])).get(group) ?? newGroup(group);
    const next: Group = {
      ...before,
      zone: (input.zone as Zone | undefined) ?? before.zone,
      distance: input.distance ?? before.distance,
      pressure: input.pressure ?? before.pressure,
      reads: input.reads ?? before.reads,
      readingChannel: input.reading === undefined ? before.readingChannel : input.reading === "here" ? ctx.who.place : null,
      place: input.place ?? before.place,
      season: input.season ?? before.season,
      riding: riding ?? before.riding,
      ...switched(before.topics, input),
      ...digestOf(before.digest, input.digest, time),
    };
    await q.members.saveGroup(next);
    if ([input.digest, input.digestTime, input.zone, input.reading].some((given) => given !== undefined)) await q.digests.replan(next, ctx.now);
    await q.bikes.touchedOf({ homeGroup: group }, ctx.now);
    const looked = next.place === before.place ? null : await treadAnew(q, ctx, next);
    return done({ ...groupShown(ctx, next, true), ...(looked === null ? {} : { looked }) });
  });
  return onceHeard(acted);
}

/** The tread of the bikes at home in a group, looked at again by the law of its new place. */
async function treadAnew(q: Repos, ctx: Ctx, home: Group): Promise<TreadLooked> {
  const homed = await q.bikes.homedIn(home.id);
  const read = await q.readings.everyTaken(
    homed.map(({ id }) => id),
    ["tread"],
  );
  const all = await garage(
    q,
    homed.filter(({ id }) => (read.get(id)?.length ?? 0) > 0),
    ctx.now,
    () => ({ member: null, home }),
  );
  const { noted, lapsed } = await judgedAnew(q, ctx, all, ({ kind }) => kind === "tread", ctx.event);
  const changed = [...noted, ...lapsed];
  await q.bikes.touched([...new Set(changed.map(({ bike }) => bike))], ctx.now);
  const own = all.filter((g) => g.bike.owner === ctx.who.member);
  const isOwn = (bike: string): boolean => own.some((g) => g.bike.id === bike);
  return {
    noted: shownOn(own, noted),
    lapsed: shownOn(own, lapsed),
    others: new Set(changed.map(({ bike }) => bike).filter((bike) => !isOwn(bike))).size,
  };
}

/** A weekday keeps the hour, an hour keeps the weekday; either switches it on. */
function digestOf(before: Group["digest"], day: number | "off" | undefined, time: string | null): Pick<Group, "digest"> {
  if (day === undefined && time === null) return before === undefined ? {} : { digest: before };
  if (day === "off") return { digest: "off" };
  const was = before === undefined || before === "off" ? USUAL_DIGEST : before;
  return { digest: { weekday: day ?? was.weekday, time: time ?? was.time } };
}

const newGroup = (id: GroupId): Group => ({
  ...{ id, zone: "UTC" as Zone, language: "en", distance: null, pressure: null, reads: true },
  ...{ readingChannel: null, place: null, season: null, riding: null },
});

function groupShown(ctx: Ctx, g: Group, changed: boolean): GroupShown {
  const named = g.readingChannel === null ? "nowhere" : g.readingChannel === ctx.who.place ? "here" : "elsewhere";
  const place = TREAD_PLACES.find((each) => each === g.place) ?? null;
  return {
    ...{ zone: g.zone, distance: g.distance, pressure: g.pressure, reads: g.reads, changed },
    reading: g.readingChannel === null && ctx.who.channel === "reading" ? "here" : named,
    hearsChannels: ctx.hearsChannels,
    place,
    law: place === null ? null : TREAD_LAW[place],
    south: isSouth(g, g.zone),
    riding: windowOf(g.riding),
    off: offOf(undefined, g.topics),
    digest: g.digest ?? USUAL_DIGEST,
    hasChannel: g.readingChannel !== null,
  };
}
